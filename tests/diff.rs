//! What differs between two revisions: of files, of git's revisions, for people, for programs, and for
//! those who own the earlier plan.

use std::fs;
use std::path::PathBuf;
use std::process::Command;

use leafwright::diff::{Difference, Fate, Passage, compare, json, print};
use leafwright::model::Overrides;
use leafwright::road::{self, Checked};
use leafwright::source::Sources;

use crate::shell::{folder, git, leafwright, stderr, stdout};

const BENCH: &str = include_str!("../examples/potting-bench/potting-bench.wright");

fn checked(text: &str) -> Checked {
    let (sources, file) = Sources::single("plan.wright", text);
    let outcome = road::check(&sources, file, &Overrides::default());
    let found: Vec<&str> = outcome
        .findings
        .iter()
        .map(|it| it.message.as_str())
        .collect();
    assert!(outcome.value.sound.is_some(), "{found:?}");
    outcome.value
}

/// The bench with some edits, each of which must find its text.
fn edited(edits: &[(&str, &str)]) -> String {
    let mut text = BENCH.to_owned();
    for (from, to) in edits {
        assert!(text.contains(from), "{from}");
        text = text.replace(from, to);
    }
    text
}

fn difference(before: &str, after: &str) -> Difference {
    let (before, after) = (checked(before), checked(after));
    compare(&before.selected().unwrap(), &after.selected().unwrap())
}

#[test]
fn the_same_is_told_to_be_the_same() {
    let same = difference(BENCH, BENCH);
    assert!(same.is_empty());
    assert!(print(&same).contains("No change"));
    // Other comments, other blanks, another order of statements that say the same.
    let text = BENCH.replace("    ", "  ");
    assert!(difference(BENCH, &text).is_empty());
}

#[test]
fn another_name_in_the_source_is_a_part_renamed() {
    let text = edited(&[
        ("part ledge from", "part tool_shelf from"),
        ("= ledge {", "= tool_shelf {"),
        ("ledge.", "ledge."),
    ]);
    let found = difference(BENCH, &text);
    assert_eq!(found.parts.len(), 1, "{}", print(&found));
    let change = &found.parts[0];
    assert_eq!(change.fate, Fate::Serves);
    assert_eq!(change.before.as_ref().unwrap().name, "ledge");
    assert_eq!(change.after.as_ref().unwrap().name, "tool_shelf");
    assert!(found.moved.is_empty() && found.joints.is_empty() && found.goods.is_empty());
}

#[test]
fn a_narrower_bench_tells_of_every_part_what_to_do() {
    let text = edited(&[("width = 1200 mm from", "width = 1150 mm from")]);
    let found = difference(BENCH, &text);
    let fate = |title: &str| {
        let change = found
            .parts
            .iter()
            .find(|it| it.after.as_ref().is_some_and(|it| it.title == title));
        change.unwrap().fate
    };
    // Pocket holes at both ends: what is cut off takes those of one end away.
    assert_eq!(fate("Top rail"), Fate::Remake);
    // A plain bar is cut shorter.
    assert_eq!(fate("Twine rod"), Fate::Trim);
    // Legs are as they were.
    assert!(
        !found
            .parts
            .iter()
            .any(|it| it.after.as_ref().is_some_and(|it| it.title.contains("leg")))
    );
    let moved = found
        .moved
        .iter()
        .find(|it| it.name == "right_front")
        .unwrap();
    assert_eq!(moved.by.len(), 1);
    assert!((moved.by[0].1.mm() + 50.0).abs() < 1e-9);
    // Legs on the left stand where they stood.
    assert!(!found.moved.iter().any(|it| it.name == "left_front"));
}

#[test]
fn a_larger_part_is_made_anew_and_a_new_hole_is_drilled() {
    let base = r#"plan "Board" { revision "A" on 2026-01-15 }
material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
part board from ply "Board" { length 400 mm grain; width 200 mm; hole on face diameter 8 mm at 40 mm from foot, 40 mm from near }
place low = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
step "Drill it" { add low; say "Drill {low} through."; time 10 min }
"#;
    let fate = |from: &str, to: &str| {
        assert!(base.contains(from));
        difference(base, &base.replace(from, to)).parts[0].fate
    };
    assert_eq!(
        fate("length 400 mm grain", "length 410 mm grain"),
        Fate::Remake
    );
    assert_eq!(
        fate("length 400 mm grain", "length 390 mm grain"),
        Fate::Trim
    );
    assert_eq!(
        fate(
            "length 400 mm grain; width 200 mm",
            "length 400 mm; width 200 mm grain"
        ),
        Fate::Remake
    );
    assert_eq!(
        fate(
            "40 mm from near }",
            "40 mm from near; hole on face diameter 5 mm at 90 mm from foot, 40 mm from near }"
        ),
        Fate::Rework
    );
    // A hole elsewhere leaves the old one open.
    assert_eq!(fate("40 mm from near }", "60 mm from near }"), Fate::Remake);
    assert_eq!(fate("thickness 18 mm", "thickness 21 mm"), Fate::Remake);
}

#[test]
fn steps_are_compared_by_words() {
    let text = edited(&[
        (
            "Brush two coats of outdoor oil",
            "Brush three thin coats of outdoor oil",
        ),
        ("step \"Make the tray\"", "step \"Make the lift-out tray\""),
    ]);
    let found = difference(BENCH, &text);
    assert_eq!(found.steps.len(), 2, "{}", print(&found));
    let (tray, oil) = (&found.steps[0], &found.steps[1]);
    assert_eq!(tray.before.as_ref().unwrap().1, "Make the tray");
    assert!(tray.words.is_empty());
    let gone: Vec<&Passage> = oil
        .words
        .iter()
        .filter(|it| matches!(it, Passage::Gone(_)))
        .collect();
    let new: Vec<&Passage> = oil
        .words
        .iter()
        .filter(|it| matches!(it, Passage::New(_)))
        .collect();
    assert_eq!(gone, [&Passage::Gone("two".to_owned())]);
    assert_eq!(new, [&Passage::New("three thin".to_owned())]);
}

#[test]
fn another_joint_changes_joints_hardware_and_parts() {
    let text = edited(&[(
        "join dividers to back_board by glue",
        "join dividers to back_board by screws using screw { count 2 }",
    )]);
    let found = difference(BENCH, &text);
    assert_eq!(found.joints.len(), 2, "{}", print(&found));
    let [before, after] = [&found.joints[0].before[0], &found.joints[0].after[0]];
    assert_eq!((before.kind.word(), after.kind.word()), ("glue", "screws"));
    assert_eq!(after.hardware[0].1, 2);
    let screws = &found.goods.hardware;
    assert_eq!(screws.len(), 1);
    assert_eq!(screws[0].count[1] - screws[0].count[0], 4);
}

#[test]
fn programs_get_what_the_schema_says() {
    let schema = include_str!("../grammar/diff.schema.json");
    let schema: serde_json::Value = serde_json::from_str(schema).unwrap();
    let validator = jsonschema::validator_for(&schema).unwrap();
    let text = edited(&[
        ("width = 1200 mm from", "width = 1150 mm from"),
        ("Brush two coats", "Brush three coats"),
        (
            "join dividers to back_board by glue",
            "join dividers to back_board by screws using screw { count 2 }",
        ),
        (
            "revision \"B\" on",
            "revision \"C\" on 2026-05-10 \"Narrower\"\n    revision \"B\" on",
        ),
    ]);
    for found in [
        difference(BENCH, &text),
        difference(&text, BENCH),
        difference(BENCH, BENCH),
    ] {
        let value: serde_json::Value = serde_json::from_str(&json(&found)).unwrap();
        let faults: Vec<String> = validator
            .iter_errors(&value)
            .map(|fault| fault.to_string())
            .collect();
        assert!(faults.is_empty(), "{faults:?}");
    }
    assert!(!validator.is_valid(&serde_json::json!({ "same": "yes" })));
}

const SHELF: &str = r#"plan "Shelf" { revision "A" on 2026-01-15 "First issue" }
import reach from "parts/sizes.wright"
material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
part board from ply "Board" { length reach grain; width 200 mm }
place low = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
step "Oil it" { add low; say "Oil {low}." }
"#;
const SIZES: &str = "library \"Sizes\" { version \"1\"; language 1 }\nlet reach = 400 mm\n";

/// A repository with a plan in a folder and two revisions of the library beside it.
fn repository(name: &str) -> PathBuf {
    let root = folder(name);
    git(&root, &["init", "-q", "-b", "main"]);
    fs::create_dir_all(root.join("plans/parts")).unwrap();
    fs::write(root.join("plans/shelf.wright"), SHELF).unwrap();
    fs::write(root.join("plans/parts/sizes.wright"), SIZES).unwrap();
    git(&root, &["add", "."]);
    git(&root, &["commit", "-q", "-m", "First issue"]);
    git(&root, &["tag", "v1"]);
    fs::write(
        root.join("plans/parts/sizes.wright"),
        SIZES.replace("400", "380"),
    )
    .unwrap();
    git(&root, &["commit", "-q", "-a", "-m", "Shorter"]);
    git(&root, &["tag", "v2"]);
    root
}

#[test]
fn revisions_are_read_through_git_with_their_libraries() {
    let root = repository("revisions");
    fs::write(
        root.join("plans/parts/sizes.wright"),
        SIZES.replace("400", "350"),
    )
    .unwrap();
    let told = stdout(&leafwright(
        &root,
        &["diff", "--rev", "v1..v2", "plans/shelf.wright"],
    ));
    assert!(
        told.contains("380 mm") && told.contains("was 400 mm"),
        "{told}"
    );
    assert!(told.contains("can be cut to size"), "{told}");
    // From a folder below, and against the file as it is.
    let told = stdout(&leafwright(
        &root.join("plans"),
        &["diff", "--rev", "v1", "shelf.wright"],
    ));
    assert!(
        told.contains("350 mm") && told.contains("was 400 mm"),
        "{told}"
    );
    // The working tree is as it was.
    assert_eq!(
        git(&root, &["status", "--short"]),
        " M plans/parts/sizes.wright\n"
    );
}

#[test]
fn a_revision_that_cannot_be_read_is_a_finding() {
    let root = repository("unreadable");
    git(&root, &["mv", "plans/shelf.wright", "plans/board.wright"]);
    git(&root, &["commit", "-q", "-m", "Another name"]);
    git(&root, &["tag", "v3"]);
    let cases: [(&[&str], &str); 4] = [
        (
            &["diff", "--rev", "v9..v1", "plans/board.wright"],
            "no revision `v9`",
        ),
        (
            &["diff", "--rev", "--output=x..v1", "plans/board.wright"],
            "no revision",
        ),
        (
            &["diff", "--rev", "v1..v3", "plans/board.wright"],
            "is not in revision `v1`",
        ),
        (&["diff", "plans/board.wright"], "two files are compared"),
    ];
    for (arguments, told) in cases {
        let mut arguments = arguments.to_vec();
        if let Some(at) = arguments.iter().position(|it| it.starts_with("--output")) {
            arguments[at - 1] = "--rev=--output=x..v1";
            arguments.remove(at);
        }
        let output = leafwright(&root, &arguments);
        assert_eq!(output.status.code(), Some(3), "{arguments:?}");
        assert!(
            stderr(&output).contains("X008") && stderr(&output).contains(told),
            "{}",
            stderr(&output)
        );
    }
    let alone = folder("no-repository");
    fs::write(alone.join("a.wright"), SHELF).unwrap();
    let output = Command::new(env!("CARGO_BIN_EXE_leafwright"))
        .args(["diff", "--rev", "v1", "a.wright"])
        .env("GIT_CEILING_DIRECTORIES", alone.parent().unwrap())
        .current_dir(&alone)
        .output()
        .unwrap();
    assert!(
        stderr(&output).contains("in no git repository"),
        "{}",
        stderr(&output)
    );
}

#[test]
fn git_calls_it_as_a_driver_and_as_a_filter() {
    let root = repository("driver");
    let tool = env!("CARGO_BIN_EXE_leafwright");
    fs::write(root.join(".gitattributes"), "*.wright diff=wright\n").unwrap();
    fs::write(root.join("plans/parts/sizes.wright"), SIZES).unwrap();
    fs::write(
        root.join("plans/plain.wright"),
        SHELF.replace(
            "import reach from \"parts/sizes.wright\"",
            "let reach = 400 mm",
        ),
    )
    .unwrap();
    git(&root, &["add", "."]);
    git(&root, &["commit", "-q", "-m", "A plan without imports"]);
    let text = fs::read_to_string(root.join("plans/plain.wright")).unwrap();
    fs::write(
        root.join("plans/plain.wright"),
        text.replace("400 mm", "420 mm"),
    )
    .unwrap();
    let command = format!("diff.wright.command={tool} diff --driver");
    let told = git(&root, &["-c", &command, "diff", "--", "plans/plain.wright"]);
    assert!(
        told.contains("420 mm") && told.contains("must be made anew"),
        "{told}"
    );
    let filter = format!("diff.wright.textconv={tool} diff --textconv");
    let told = git(&root, &["-c", &filter, "diff", "--", "plans/plain.wright"]);
    assert!(told.contains("-part board Board: 1 of 400 mm"), "{told}");
    assert!(told.contains("+part board Board: 1 of 420 mm"), "{told}");
}

#[test]
fn owners_of_the_earlier_plan_get_a_sheet() {
    let folder = folder("errata");
    let text = edited(&[
        ("width = 1200 mm from", "width = 1150 mm from"),
        ("Brush two coats", "Brush three coats"),
        (
            "revision \"B\" on",
            "revision \"C\" on 2026-05-10 \"Narrower, for a small balcony\"\n    revision \"B\" on",
        ),
    ]);
    fs::write(folder.join("old.wright"), BENCH).unwrap();
    fs::write(folder.join("new.wright"), text).unwrap();
    let output = leafwright(
        &folder,
        &["diff", "old.wright", "new.wright", "--errata", "sheet.pdf"],
    );
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    let printed = pdf_extract::extract_text(folder.join("sheet.pdf")).unwrap();
    for told in [
        "Narrower, for a small balcony",
        "Make anew",
        "Cut to size",
        "Twine rod",
        "three",
        "serves as it is",
    ] {
        assert!(printed.contains(told), "{told}: {printed}");
    }
    // A plan that is not sound gives no sheet.
    fs::write(
        folder.join("bad.wright"),
        BENCH.replace("width = 1200 mm from", "width = 5 from"),
    )
    .unwrap();
    let output = leafwright(
        &folder,
        &["diff", "old.wright", "bad.wright", "--errata", "none.pdf"],
    );
    assert_eq!(output.status.code(), Some(1));
    assert!(!folder.join("none.pdf").exists());
}

#[test]
fn a_release_needs_a_revision_for_what_changed() {
    let root = repository("release");
    // The library has changed since v1, and the plan still says revision A.
    let build = |rev: &str| {
        leafwright(
            &root,
            &[
                "build",
                "plans/shelf.wright",
                "-o",
                "shelf.pdf",
                "--release-of",
                rev,
            ],
        )
    };
    let output = build("v1");
    assert_eq!(output.status.code(), Some(1));
    assert!(stderr(&output).contains("X009"), "{}", stderr(&output));
    assert!(!root.join("shelf.pdf").exists());
    let output = build("v2");
    assert_eq!(
        (output.status.code(), stderr(&output).as_str()),
        (Some(0), "")
    );
    let plan = SHELF.replace(
        "{ revision",
        "{ revision \"B\" on 2026-02-01 \"Shorter\"; revision",
    );
    fs::write(root.join("plans/shelf.wright"), plan).unwrap();
    let output = build("v1");
    assert_eq!(
        (output.status.code(), stderr(&output).as_str()),
        (Some(0), "")
    );
    let output = build("v2");
    assert_eq!(output.status.code(), Some(0));
    assert!(stderr(&output).contains("X010"), "{}", stderr(&output));
}

/// The history of an example: three revisions of a chest that imports a library beside it.
#[test]
fn a_plan_goes_through_three_revisions() {
    let root = folder("history");
    git(&root, &["init", "-q", "-b", "main"]);
    let shared = include_str!("../examples/hall-set/library/hall.wright");
    fs::create_dir_all(root.join("library")).unwrap();
    fs::write(root.join("library/hall.wright"), shared).unwrap();
    for (mark, text) in [
        ("a", include_str!("history/shoe-chest-a.wright")),
        ("b", include_str!("history/shoe-chest-b.wright")),
        ("c", include_str!("../examples/hall-set/shoe-chest.wright")),
    ] {
        fs::write(root.join("shoe-chest.wright"), text).unwrap();
        git(&root, &["add", "."]);
        git(&root, &["commit", "-q", "-m", mark]);
        git(&root, &["tag", mark]);
        let output = leafwright(&root, &["check", "shoe-chest.wright"]);
        assert_eq!(stderr(&output), "", "{mark}");
    }
    // B leaves a choice, and is the same to who takes what there was.
    let told = stdout(&leafwright(
        &root,
        &["diff", "--rev", "a..b", "shoe-chest.wright"],
    ));
    assert!(
        told.contains(
            "Choices that are new: Drawers: On ball-bearing runners, Drawers: On strips of oak"
        ),
        "{told}"
    );
    assert!(!told.contains("Parts"), "{told}");
    // C has lower drawers: fronts and boxes change, the case does not.
    let told = stdout(&leafwright(
        &root,
        &["diff", "--rev", "b..c", "shoe-chest.wright"],
    ));
    assert!(
        told.contains("C (2026-09-02): Drawers 6 mm lower"),
        "{told}"
    );
    assert!(
        told.contains("Drawer side") && told.contains("149 mm") && told.contains("was 155 mm"),
        "{told}"
    );
    assert!(
        !told.contains("Divider") && !told.contains("Leg ("),
        "{told}"
    );
    // Each is a revision of its own.
    let output = leafwright(
        &root,
        &[
            "build",
            "shoe-chest.wright",
            "-o",
            "chest.pdf",
            "--release-of",
            "b",
        ],
    );
    assert_eq!(
        (output.status.code(), stderr(&output).as_str()),
        (Some(0), "")
    );
    let output = leafwright(
        &root,
        &[
            "diff",
            "--rev",
            "b..c",
            "shoe-chest.wright",
            "--errata",
            "sheet.pdf",
        ],
    );
    assert_eq!(output.status.code(), Some(0), "{}", stderr(&output));
    let printed = pdf_extract::extract_text(root.join("sheet.pdf")).unwrap();
    assert!(
        printed.contains("revision B of 14\u{a0}June 2026"),
        "{printed}"
    );
    // Merged by git: one line each for what two people change.
    git(&root, &["checkout", "-q", "-b", "wider", "c"]);
    let text = fs::read_to_string(root.join("shoe-chest.wright")).unwrap();
    fs::write(
        root.join("shoe-chest.wright"),
        text.replace("width = 640 mm", "width = 700 mm"),
    )
    .unwrap();
    git(&root, &["commit", "-q", "-a", "-m", "Wider"]);
    git(&root, &["checkout", "-q", "main"]);
    fs::write(
        root.join("shoe-chest.wright"),
        text.replace("depth = 380 mm from", "depth = 400 mm from"),
    )
    .unwrap();
    git(&root, &["commit", "-q", "-a", "-m", "Higher"]);
    git(&root, &["merge", "-q", "wider"]);
    let told = stdout(&leafwright(
        &root,
        &["diff", "--rev", "c", "shoe-chest.wright"],
    ));
    assert!(told.contains("700 mm") || told.contains("676 mm"), "{told}");
    assert!(told.contains("393.5 mm"), "{told}");
}

#[test]
fn a_plan_in_a_submodule_is_compared_in_its_own_repository() {
    let shared = repository("submodule-origin");
    let root = folder("submodule");
    git(&root, &["init", "-q", "-b", "main"]);
    let url = shared.display().to_string();
    git(
        &root,
        &[
            "-c",
            "protocol.file.allow=always",
            "submodule",
            "--quiet",
            "add",
            &url,
            "workshop",
        ],
    );
    git(&root, &["commit", "-q", "-m", "The workshop's plans"]);
    let told = stdout(&leafwright(
        &root,
        &["diff", "--rev", "v1..v2", "workshop/plans/shelf.wright"],
    ));
    assert!(
        told.contains("380 mm") && told.contains("was 400 mm"),
        "{told}"
    );
}

#[test]
fn a_conflict_that_git_left_is_told_where_it_stands() {
    let root = repository("conflict");
    let file = root.join("plans/shelf.wright");
    git(&root, &["checkout", "-q", "-b", "wide"]);
    fs::write(&file, SHELF.replace("width 200 mm", "width 240 mm")).unwrap();
    git(&root, &["commit", "-q", "-a", "-m", "Wider"]);
    git(&root, &["checkout", "-q", "main"]);
    fs::write(&file, SHELF.replace("width 200 mm", "width 180 mm")).unwrap();
    git(&root, &["commit", "-q", "-a", "-m", "Narrower"]);
    let merged = Command::new("git")
        .args(["merge", "-q", "wide"])
        .current_dir(&root)
        .output()
        .unwrap();
    assert!(!merged.status.success());
    let before = fs::read_to_string(&file).unwrap();
    let output = leafwright(&root, &["diff", "--rev", "v1", "plans/shelf.wright"]);
    assert_eq!(output.status.code(), Some(1));
    assert!(
        stderr(&output).contains("shelf.wright:4"),
        "{}",
        stderr(&output)
    );
    // Nothing is written anew that cannot be read.
    let output = leafwright(&root, &["fmt", "plans/shelf.wright"]);
    assert_eq!(output.status.code(), Some(1));
    assert_eq!(fs::read_to_string(&file).unwrap(), before);
}
