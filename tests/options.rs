//! Options: what is in the plan, what is checked, and what a choice is told to change.

use leafwright::model::Overrides;
use leafwright::road::{self, Checked};
use leafwright::source::Sources;

const PLAN: &str = r#"plan "Box" { revision "A" on 2026-01-15 }
material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm price 60.00 EUR; density 700 kg/m3 }
hardware screw is wood_screw "Wood screw 4 x 45" { diameter 4 mm; length 45 mm; pack 50 price 5.00 EUR }
hardware peg is dowel "Dowel 8 x 40" { diameter 8 mm; length 40 mm; pack 50 price 4.00 EUR }
part side from ply "Side" { length 400 mm; width 300 mm }
part plate from ply "Plate" { length from left.right to right.left; width 300 mm }
place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
place right = side { length up; width back; right at 600 mm; front at 0 mm; bottom at 0 mm }
place floor = plate { length right; width back; left at left.right; front at 0 mm; bottom at 0 mm }
option joint "Joint" {
    choice screwed "Screws" default { join floor to left, right by screws using screw { count 3; glue } }
    choice pegged "Dowels" { join floor to left, right by dowels using peg { count 4; glue } }
}
option lid "Lid" {
    choice without "Without" default { let lids = 0 }
    choice fixed "Fixed" {
        let lids = 1
        place lid = plate { length right; width back; left at left.right; front at 0 mm; top at left.top }
        join lid to left, right by screws using screw { count 3; glue }
        step "Put the lid on" { add lid; say "Screw {lid} on."; time 10 min }
    }
}
require lids < 2
step "Make the box" { add left, right, floor; say "Join {floor} to both sides."; time 30 min }
"#;

fn choosing(text: &str, choices: &[(&str, &str)]) -> (Checked, Vec<String>) {
    let (sources, file) = Sources::single("test.wright", text);
    let mut overrides = Overrides::default();
    for (option, choice) in choices {
        let named = ((*option).to_owned(), (*choice).to_owned());
        overrides.choices.extend([named]);
    }
    let outcome = road::check_choices(&sources, file, &overrides);
    let found = outcome.findings.iter().map(|finding| {
        let related = finding.related.iter().map(|one| one.text.as_str());
        let related: Vec<&str> = related.collect();
        format!("{} {} {related:?}", finding.page.code, finding.message)
    });
    let found = found.collect();
    (outcome.value, found)
}

#[test]
fn a_plan_is_of_its_selection() {
    let counts = |choices: &[(&str, &str)]| {
        let (checked, found) = choosing(PLAN, choices);
        assert!(
            found.iter().all(|told| told.starts_with("R007")),
            "{found:?}"
        );
        let sound = checked.sound.unwrap();
        let used = sound.build().hardware.iter().map(|item| item.count);
        (sound.build().placed.len(), used.collect::<Vec<_>>())
    };
    assert_eq!(counts(&[]), (3, vec![6, 0]));
    assert_eq!(counts(&[("joint", "pegged")]), (3, vec![0, 8]));
    assert_eq!(counts(&[("lid", "fixed")]), (4, vec![12, 0]));
    assert_eq!(
        counts(&[("lid", "fixed"), ("joint", "pegged")]),
        (4, vec![6, 8])
    );
}

#[test]
fn what_a_choice_changes_is_told() {
    let (checked, _) = choosing(PLAN, &[]);
    let (joint, lid) = (&checked.changes[0], &checked.changes[1]);
    assert_eq!(joint.changes.len(), 2);
    assert!(joint.changes[0].is_none() && lid.changes[0].is_none());
    let pegged = joint.changes[1].as_ref().unwrap();
    let hardware: Vec<(&str, Option<i64>, Option<i64>)> = pegged
        .hardware
        .iter()
        .map(|one| (one.title.as_str(), one.before, one.after))
        .collect();
    assert_eq!(
        hardware,
        [
            ("Dowel 8 x 40", None, Some(8)),
            ("Wood screw 4 x 45", Some(6), None)
        ]
    );
    // A pack of screws for 5.00 against one of dowels for 4.00.
    let [before, after] = pegged.cost.clone().unwrap();
    assert_eq!(after.cents - before.cents, -100);
    assert_eq!(pegged.seconds, [1800, 1800]);
    // Drilled otherwise, but as large.
    assert!(
        pegged
            .parts
            .iter()
            .all(|part| part.after.as_ref().unwrap().cut_otherwise)
    );
    let fixed = lid.changes[1].as_ref().unwrap();
    // 564 by 300 by 18 mm at 700 kg/m3, less the pilot holes.
    let [before, after] = fixed.kg.unwrap();
    assert!((after - before - 0.564 * 0.3 * 0.018 * 700.0).abs() < 0.02);
    assert_eq!(fixed.seconds, [1800, 2400]);
    assert!(fixed.parts.iter().any(|part| part.title == "Plate"));
}

#[test]
fn a_fault_of_another_selection_says_of_which() {
    // Too short for a thick side, and only where the lid is there too.
    let text = PLAN.replace(
        "let lids = 1",
        "let lids = 1\n        require floor.thickness < 10 mm",
    );
    let (checked, found) = choosing(&text, &[]);
    let faults: Vec<&String> = found
        .iter()
        .filter(|told| told.starts_with("F003"))
        .collect();
    assert_eq!(faults.len(), 1, "{found:?}");
    assert!(
        faults[0].contains("with the choice `fixed` of `lid`"),
        "{faults:?}"
    );
    assert!(!faults[0].contains("joint"), "{faults:?}");
    assert!(checked.sound.is_none());
}

#[test]
fn what_one_choice_needs_is_not_idle() {
    // `peg` is used with one choice alone.
    let (_, found) = choosing(PLAN, &[]);
    assert!(
        !found.iter().any(|told| told.starts_with("R002")),
        "{found:?}"
    );
    let text = PLAN
        .replace("using peg", "using screw")
        .replace("by dowels", "by screws");
    let (_, found) = choosing(&text, &[]);
    assert!(
        found.iter().any(|told| told.starts_with("R002")),
        "{found:?}"
    );
}
