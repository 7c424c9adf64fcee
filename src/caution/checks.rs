//! Tests of the whole stage on a build made by hand.

use super::{Cautions, Occasion, Sign, gather};
use crate::behaviour::Behaviour;
use crate::build::{Given, Message, SignalWord, Wording, WordingPiece};
use crate::solid::Solids;
use crate::source::{Span, Spanned};
use crate::stock::{lay_out, sample};
use crate::words::{Filling, Words};

fn cautions() -> Cautions {
    let build = sample::shelf_unit();
    gather(
        &build,
        &lay_out(&build, &Solids::default()).value,
        &Behaviour::default(),
    )
}

/// The words of a text, lengths in millimetres.
fn words(wording: &Wording) -> String {
    let pieces = wording.pieces.iter().map(|piece| match piece {
        WordingPiece::Plain(text) | WordingPiece::Value(text) => text.clone(),
        WordingPiece::Length(length) => format!("{} mm", length.mm()),
        WordingPiece::Part(part, _) => format!("part {}", part.0),
        WordingPiece::Whole(group, _) => format!("sub-assembly {}", group.0),
        WordingPiece::Message(message) => said(message),
    });
    pieces.collect()
}

/// A message in English, lengths in millimetres.
fn said(message: &Message) -> String {
    let places = message.given.iter().map(|(place, given)| {
        let filling = match given {
            Given::Length(length) => format!("{} mm", length.mm()),
            Given::Figure(figure) => figure.clone(),
            Given::Parts(parts) => format!("{} parts", parts.len()),
        };
        (*place, Filling::Words(filling))
    });
    let places: Vec<_> = places.collect();
    Words::english().say(message.id, &places).unwrap()
}

#[test]
fn only_what_is_done_is_cautioned_of() {
    let cautions = cautions();
    let ids: Vec<&str> = cautions.list.iter().map(|caution| caution.id).collect();
    for id in [
        "sawing-sheets",
        "narrow-strips",
        "heavy-sheet",
        "crosscutting-boards",
        "small-pieces",
        "routing",
        "drilling",
        "large-bits",
        "pocket-holes",
        "driving-screws",
        "gluing",
        "dust",
        "tip-over",
    ] {
        assert!(ids.contains(&id), "{id} is missing");
    }
    // Nothing is planed, no outline is sawn, and the unit weighs less than 23 kg.
    for id in ["planing", "curves", "heavy-piece"] {
        assert!(!ids.contains(&id), "{id} has no reason");
    }
}

#[test]
fn the_worst_come_first() {
    let signals: Vec<SignalWord> = cautions().list.iter().map(|one| one.signal).collect();
    assert!(signals.is_sorted());
}

#[test]
fn every_caution_says_what_may_happen_and_what_to_do() {
    for caution in cautions().list {
        for text in [&caution.hazard, &caution.consequence, &caution.avoidance] {
            let words = words(text);
            assert!(
                words.ends_with('.') && words.len() > 10,
                "{}: {words}",
                caution.id
            );
        }
    }
}

#[test]
fn a_caution_stands_before_its_act() {
    let cautions = cautions();
    let occasions = |id: &str| {
        let caution = cautions.list.iter().find(|caution| caution.id == id);
        caution.unwrap().occasions.clone()
    };
    // The sides, with their dadoes and holes, first come in with the first step; the joints are
    // glued in the second and screwed in the third.
    assert_eq!(occasions("routing"), vec![Occasion::Step(0)]);
    assert_eq!(occasions("pocket-holes"), vec![Occasion::Step(2)]);
    assert_eq!(occasions("driving-screws"), vec![Occasion::Step(2)]);
    assert_eq!(
        occasions("gluing"),
        vec![Occasion::Step(0), Occasion::Step(1)]
    );
    assert_eq!(occasions("narrow-strips"), vec![Occasion::Cutting]);
}

#[test]
fn a_step_that_adds_nothing_prepares_what_it_names() {
    let mut build = sample::shelf_unit();
    let mut before = build.steps[0].clone();
    before.adds.clear();
    before.joints.clear();
    assert!(!before.says.is_empty(), "it names the side");
    build.steps.insert(0, before);
    let cautions = gather(
        &build,
        &lay_out(&build, &Solids::default()).value,
        &Behaviour::default(),
    );
    let routing = cautions.list.iter().find(|one| one.id == "routing");
    assert_eq!(routing.unwrap().occasions, vec![Occasion::Step(0)]);
}

#[test]
fn what_the_author_names_is_not_listed_twice() {
    let mut build = sample::shelf_unit();
    let has = |build: &crate::build::Build, text: &str| {
        let cautions = gather(
            build,
            &lay_out(build, &Solids::default()).value,
            &Behaviour::default(),
        );
        cautions
            .tools
            .iter()
            .any(|tool| words(&tool.name).contains(text))
    };
    assert!(has(&build, "Router with guide fence"));
    build.steps[0].tools = vec![Spanned::new("Router".to_owned(), Span::default())];
    assert!(has(&build, "Router") && !has(&build, "Router with guide fence"));
    assert!(has(&build, "Straight router bit, 18 mm"));
}

#[test]
fn signs_are_listed_once() {
    let signs = cautions().signs;
    assert!(signs.contains(&Sign::Eyes) && signs.contains(&Sign::Ears));
    let mut unique = signs.clone();
    unique.dedup();
    assert_eq!(signs, unique);
}

#[test]
fn tools_follow_from_the_work() {
    let cautions = cautions();
    let tools: Vec<String> = cautions
        .tools
        .iter()
        .map(|tool| words(&tool.name))
        .collect();
    let has = |text: &str| tools.iter().any(|tool| tool.contains(text));
    assert!(has("Straight router bit, 18 mm wide or less"), "{tools:?}");
    assert!(has("Flat-bottomed bit or hole saw, 25 mm"));
    assert!(has("stepped bit, 9.5 mm"));
    // Shelves and both sides hang together when the second is glued: 900 mm across.
    assert!(has("Clamps that open 900 mm"));
    assert!(has("Mallet"));
    assert!(!has("Planer"));
}

#[test]
fn an_empty_build_needs_nothing() {
    let build = sample::build_of(Vec::new(), Vec::new());
    let cautions = gather(
        &build,
        &lay_out(&build, &Solids::default()).value,
        &Behaviour::default(),
    );
    assert!(cautions.list.is_empty() && cautions.tools.is_empty());
}
