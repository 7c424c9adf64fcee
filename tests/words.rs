//! Every catalogue has every message, with the same places; and all that is asked for is there.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser::parse;

use leafwright::finding::Findings;
use leafwright::source::Span;
use leafwright::words::{Catalogues, Filling, Words};

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// The messages of a catalogue and the places of each.
fn messages(language: &str) -> BTreeMap<String, BTreeSet<String>> {
    let path = root().join(format!("templates/words/{language}.ftl"));
    let text = fs::read_to_string(path).unwrap();
    let parsed = parse(text.as_str()).unwrap();
    let messages = parsed.body.iter().filter_map(|entry| {
        let Entry::Message(message) = entry else {
            return None;
        };
        let mut places = BTreeSet::new();
        each_place(message.value.as_ref().unwrap(), &mut places);
        Some((message.id.name.to_owned(), places))
    });
    messages.collect()
}

fn each_place(pattern: &Pattern<&str>, places: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        let PatternElement::Placeable { expression } = element else {
            continue;
        };
        let (asked, variants) = match expression {
            Expression::Inline(asked) => (asked, [].as_slice()),
            Expression::Select { selector, variants } => (selector, variants.as_slice()),
        };
        if let InlineExpression::VariableReference { id } = asked {
            places.insert(id.name.to_owned());
        }
        for variant in variants {
            each_place(&variant.value, places);
        }
    }
}

/// Files below a folder whose name ends so.
fn files(folder: &Path, ending: &str, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            files(&path, ending, found);
        } else if path.to_string_lossy().ends_with(ending) {
            found.push(path);
        }
    }
}

/// Texts in quotes that stand behind `before`.
fn quoted_behind(text: &str, before: &str) -> Vec<String> {
    let behind = text.split(before).skip(1);
    behind
        .filter_map(|rest| rest.trim_start().strip_prefix('"')?.split('"').next())
        .map(str::to_owned)
        .collect()
}

#[test]
fn every_language_says_all_that_english_says() {
    let english = messages("en");
    for language in Catalogues::shipped().languages() {
        let own = messages(language);
        let missing: Vec<&String> = english.keys().filter(|id| !own.contains_key(*id)).collect();
        let idle: Vec<&String> = own.keys().filter(|id| !english.contains_key(*id)).collect();
        assert!(
            missing.is_empty() && idle.is_empty(),
            "{language} lacks {missing:?}, has {idle:?}"
        );
        for (id, places) in &english {
            assert_eq!(own.get(id), Some(places), "{language}: {id}");
        }
        let words = Catalogues::shipped().words(language, Span::default());
        assert!(
            words.findings.is_empty(),
            "{language}: {:?}",
            words.findings
        );
    }
}

#[test]
fn what_is_asked_for_is_there_and_nothing_is_idle() {
    let english = messages("en");
    let mut asked = BTreeSet::new();
    let mut beginnings = BTreeSet::new();
    let mut paths = Vec::new();
    files(&root().join("templates"), ".j2", &mut paths);
    files(&root().join("src"), ".rs", &mut paths);
    // What the command line tells is not of the plan.
    let is_of_the_plan = |path: &&PathBuf| !path.starts_with(root().join("src/cli"));
    for path in paths.iter().filter(is_of_the_plan) {
        let text = fs::read_to_string(path).unwrap();
        // A choice of two: say("a" if … else "b").
        asked.extend(
            quoted_behind(&text, " else ")
                .into_iter()
                .filter(|id| english.contains_key(id)),
        );
        for before in [
            "say(",
            "told(",
            "Told::new(",
            "word(",
            "told(if has_oil {",
            "field(",
            "} else {",
            "Some(",
        ] {
            for id in quoted_behind(&text, before) {
                if english.contains_key(&id) {
                    asked.insert(id);
                } else if id.ends_with('-') || id.contains('{') {
                    beginnings.insert(id.split('{').next().unwrap_or_default().to_owned());
                } else {
                    let is_message = matches!(before, "say(" | "told(" | "Told::new(");
                    assert!(!is_message, "{}: no message `{id}`", path.display());
                }
            }
        }
    }
    let by_beginning = ["term-", "caution-", "sign-", "page-"];
    for id in english.keys().filter(|id| !asked.contains(*id)) {
        assert!(
            by_beginning.iter().any(|it| id.starts_with(it))
                || id == "decimal-mark"
                || id == "date",
            "nobody asks for `{id}`"
        );
    }
}

#[test]
fn every_hazard_has_its_words() {
    let english = messages("en");
    let mut paths = Vec::new();
    files(&root().join("src/caution"), ".rs", &mut paths);
    let mut hazards = 0;
    for path in paths.iter().filter(|path| !path.ends_with("checks.rs")) {
        let text = fs::read_to_string(path).unwrap();
        for id in quoted_behind(&text, " id: ") {
            hazards += 1;
            for part in ["", "-hazard", "-consequence", "-avoidance"] {
                assert!(
                    english.contains_key(&format!("caution-{id}{part}")),
                    "{id}{part}"
                );
            }
        }
    }
    assert!(hazards > 20, "{hazards}");
}

#[test]
fn figures_and_days_are_written_as_the_language_does() {
    let of = |language: &str| Catalogues::shipped().words(language, Span::default()).value;
    let (english, french, german) = (of("en"), of("fr"), of("de"));
    assert_eq!(german.figure("36.7 kg (81 lb)"), "36,7 kg (81 lb)");
    assert_eq!(german.date("2026-03-01"), "1.\u{a0}März 2026");
    assert_eq!(english.figure("36.7 kg (81 lb)"), "36.7 kg (81 lb)");
    assert_eq!(french.figure("36.7 kg (81 lb)."), "36,7 kg (81 lb).");
    assert_eq!(french.figure("79.00 EUR"), "79,00 EUR");
    assert_eq!(english.date("2026-03-01"), "1\u{a0}March 2026");
    assert!(french.date("2026-03-02").ends_with("mars 2026"));
    assert_eq!(french.date("soon"), "soon");
    assert_eq!(french.language(), "fr");
    assert!(of("fr-CA").date("2026-03-02").ends_with("mars 2026"));
}

/// Plural forms of the Unicode CLDR, "Language Plural Rules": English has one and other, French says one also
/// of nothing.
#[test]
fn counts_take_the_form_of_their_language() {
    let of = |language: &str| Catalogues::shipped().words(language, Span::default()).value;
    let pieces =
        |words: &Words, count: i64| words.word("pieces", &[("count", Filling::Count(count))]);
    let (english, french, german) = (of("en"), of("fr"), of("de"));
    let steps = |words: &Words, count: i64| {
        words.word(
            "steps-named",
            &[("count", Filling::Count(count)), ("steps", "4".into())],
        )
    };
    assert_eq!(steps(&german, 1), "Schritt\u{a0}4");
    assert_eq!(steps(&german, 2), "Schritte\u{a0}4");
    assert_eq!(pieces(&english, 0), "0\u{a0}pieces");
    assert_eq!(pieces(&english, 1), "1\u{a0}piece");
    assert_eq!(pieces(&french, 0), "0\u{a0}pièce");
    assert_eq!(pieces(&french, 2), "2\u{a0}pièces");
}

#[test]
fn what_cannot_be_said_is_told() {
    let words = Words::english();
    assert!(
        words
            .say("no-such-message", &[])
            .is_err_and(|fault| fault.contains("no-such-message"))
    );
    assert!(
        words
            .say("hours", &[])
            .is_err_and(|fault| fault.contains("hours"))
    );
    assert_eq!(words.word("no-such-message", &[]), "no-such-message");
}

#[test]
fn a_catalogue_of_the_users_own_stands_first() {
    let own = Catalogues::shipped()
        .with("fr", "contents = Dedans\n")
        .with("xx", "contents = xyz\n");
    let french = own.words("fr", Span::default());
    assert_eq!(french.value.word("contents", &[]), "Dedans");
    assert!(french.findings.is_empty());
    let new = own.words("xx", Span::default());
    assert_eq!(new.value.word("contents", &[]), "xyz");
    assert_eq!(new.value.word("tools", &[]), "Tools");
    let codes = |findings: &Findings| -> Vec<&str> {
        findings.iter().map(|finding| finding.page.code).collect()
    };
    assert_eq!(codes(&new.findings), ["P042"]);
    assert_eq!(codes(&own.words("yy", Span::default()).findings), ["P041"]);
    let broken = Catalogues::shipped().with("fr", "contents = { $a\ntools = Chose\n");
    assert_eq!(
        codes(&broken.words("fr", Span::default()).findings),
        ["P040"]
    );
}
