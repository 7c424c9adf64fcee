//! Libraries: `std` with a plan for each of its sub-assemblies, and imports as people write them.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use leafwright::library;

use crate::check::check;

fn leafwright(folder: &Path, arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_leafwright"))
        .args(arguments)
        .current_dir(folder)
        .output()
        .unwrap()
}

fn stderr(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

/// A folder of its own, empty, with files in it.
fn folder(name: &str, files: &[(&str, &str)]) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR"))
        .join("libraries")
        .join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).unwrap();
    for (path, text) in files {
        let path = folder.join(path);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, text).unwrap();
    }
    folder
}

/// The names that `std` declares, with the word before each.
fn declared() -> Vec<(String, String)> {
    let text = library::std_text();
    let lines = text
        .lines()
        .filter(|line| !line.starts_with([' ', '#', '}']));
    lines
        .filter_map(|line| {
            let mut words = line.split([' ', '(']);
            Some((words.next()?.to_owned(), words.next()?.to_owned()))
        })
        .filter(|(word, _)| ["material", "hardware", "subassembly"].contains(&word.as_str()))
        .collect()
}

#[test]
fn every_sub_assembly_of_std_has_a_plan_without_findings() {
    let tests = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/library");
    let mut plans = String::new();
    for entry in fs::read_dir(&tests).unwrap() {
        let path = entry.unwrap().path();
        let text = fs::read_to_string(&path).unwrap();
        let checked = check(path.file_name().unwrap().to_str().unwrap(), &text);
        assert_eq!(checked.report(), "", "{}", path.display());
        plans.push_str(&text);
    }
    for (word, name) in declared() {
        let used = plans.contains(&format!(" {name}(")) || plans.contains(&format!("= {name}("));
        assert!(word != "subassembly" || used, "no plan places `{name}`");
    }
}

#[test]
fn every_material_and_item_of_std_can_be_used() {
    let mut imports = Vec::new();
    let mut lines = String::new();
    for (word, name) in declared() {
        imports.push(name.clone());
        match word.as_str() {
            "material" => lines.push_str(&format!("require {name}.thickness > 1 mm\n")),
            "hardware" => lines.push_str(&format!(
                "part band_{name} from birch_ply_18 {{ length 400 mm; width 300 mm }}\n"
            )),
            _ => {}
        }
    }
    assert!(imports.len() > 140, "{}", imports.len());
    let text = format!(
        "plan \"All\" {{ revision \"A\" on 2026-01-15 }}\nimport {} from std\n{lines}",
        imports.join(", ")
    );
    // Nothing is used, so much is told; but nothing is wrong with any of them.
    let checked = check("all.wright", &text);
    assert!(!checked.has_errors(), "{}", checked.report());
}

#[test]
fn sizes_of_softwood_are_those_of_the_standard() {
    // ref: stock-sizes, "Softwood lumber, dry, surfaced (PS 20)" [V], actual inches.
    let actual = [
        ("1x4", "3/4", "3-1/2"),
        ("1x8", "3/4", "7-1/4"),
        ("2x4", "1-1/2", "3-1/2"),
        ("2x12", "1-1/2", "11-1/4"),
        ("4x4", "3-1/2", "3-1/2"),
    ];
    let mut text = "plan \"Lumber\" { revision \"A\" on 2026-01-15 }\n".to_owned();
    for (nominal, thickness, width) in actual {
        text.push_str(&format!(
            "import softwood_{nominal} from std\n\
             require softwood_{nominal}.thickness = {thickness} in\n\
             require softwood_{nominal}.width = {width} in\n"
        ));
    }
    let checked = check("lumber.wright", &text);
    assert!(!checked.has_errors(), "{}", checked.report());
}

const SHARED: &str = r#"library "Shared" { version "1.0"; language 1; author "Example Workshop"; about "Boards." }
import birch_ply_18 from std
let reach = 300 mm
part shelf from birch_ply_18 "Shelf" { length reach grain; width 200 mm }
"#;

const PLAN: &str = r#"plan "Shelf" { revision "A" on 2026-01-15 }
import shelf as board, reach from "parts/shared.wright"
place low = board { length right; width back; left at 0 mm; front at 0 mm; bottom at reach }
step "Put it up" { add low; say "Put {low} up." }
"#;

#[test]
fn a_part_comes_from_a_file_with_what_it_is_cut_from() {
    let folder = folder(
        "good",
        &[("plan.wright", PLAN), ("parts/shared.wright", SHARED)],
    );
    let output = leafwright(&folder, &["check", "plan.wright"]);
    assert_eq!(stderr(&output), "");
    let output = leafwright(&folder, &["export", "cut-list", "plan.wright"]);
    let table = String::from_utf8_lossy(&output.stdout).into_owned();
    assert!(table.contains("Birch plywood 18 mm"), "{table}");
    // From another folder the paths lead from the files all the same.
    let output = leafwright(folder.parent().unwrap(), &["check", "good/plan.wright"]);
    assert_eq!(stderr(&output), "");
}

#[test]
fn an_import_cannot_leave_the_folder_of_the_plan() {
    let outside = PLAN.replace("parts/shared.wright", "../shared.wright");
    let absent = PLAN.replace("parts/shared.wright", "parts/none.wright");
    let absolute = PLAN.replace("parts/shared.wright", "/etc/hostname");
    let unknown = PLAN.replace("\"parts/shared.wright\"", "elsewhere");
    let folder = folder(
        "outside/inner",
        &[
            ("../shared.wright", SHARED),
            ("outside.wright", &outside),
            ("absent.wright", &absent),
            ("absolute.wright", &absolute),
            ("unknown.wright", &unknown),
        ],
    );
    #[cfg(unix)]
    {
        std::os::unix::fs::symlink("../shared.wright", folder.join("linked.wright")).unwrap();
        let linked = PLAN.replace("parts/shared.wright", "linked.wright");
        fs::write(folder.join("link.wright"), linked).unwrap();
        let output = leafwright(&folder, &["check", "link.wright"]);
        assert!(
            stderr(&output).contains("leads out of the folder"),
            "{}",
            stderr(&output)
        );
    }
    for (name, told) in [
        ("outside", "leads out of the folder of the plan"),
        ("absent", "cannot be read"),
        ("absolute", "leads out of the folder of the plan"),
        ("unknown", "there is no library `elsewhere`"),
    ] {
        let file = format!("{name}.wright");
        let output = leafwright(&folder, &["build", &file, "-o", "plan.pdf"]);
        assert_eq!(output.status.code(), Some(1), "{name}");
        let report = stderr(&output);
        assert!(
            report.contains("X006") && report.contains(told),
            "{name}: {report}"
        );
        // What is missing is told once, and nothing that hangs on it.
        assert_eq!(report.matches("error[").count(), 1, "{name}: {report}");
        assert!(!folder.join("plan.pdf").exists());
    }
}

fn run(folder: &Path, program: &str, arguments: &[&str]) -> String {
    let output = Command::new(program)
        .args(arguments)
        .current_dir(folder)
        .output()
        .unwrap();
    assert!(
        output.status.success(),
        "{program} {arguments:?}: {}",
        stderr(&output)
    );
    String::from_utf8_lossy(&output.stdout).into_owned()
}

#[cfg(unix)]
#[test]
fn a_named_library_is_locked_to_what_it_was() {
    let plan = PLAN.replace("\"parts/shared.wright\"", "workshop");
    let folder = folder(
        "project",
        &[
            (
                "mine/leafwright.toml",
                "[libraries]\nworkshop = { path = \"../shared/library.wright\" }\n",
            ),
            ("mine/plans/plan.wright", &plan),
            ("shared/library.wright", SHARED),
        ],
    );
    let mine = folder.join("mine");
    let output = leafwright(&mine, &["check", "plans/plan.wright"]);
    assert_eq!(stderr(&output), "");
    // The same sum as the system's own tool gives.
    let sum = run(&folder, "sha256sum", &["shared/library.wright"]);
    let sum = sum.split(' ').next().unwrap().to_owned();
    let lock = fs::read_to_string(mine.join("leafwright.lock")).unwrap();
    assert!(
        lock.contains(&format!("\"library.wright\" = \"{sum}\"")),
        "{lock}"
    );
    // A changed library is a finding, and the lock stays.
    fs::write(
        folder.join("shared/library.wright"),
        SHARED.replace("300 mm", "310 mm"),
    )
    .unwrap();
    let output = leafwright(&mine.join("plans"), &["check", "plan.wright"]);
    assert_eq!(output.status.code(), Some(1));
    assert!(stderr(&output).contains("X012"), "{}", stderr(&output));
    assert_eq!(
        fs::read_to_string(mine.join("leafwright.lock")).unwrap(),
        lock
    );
    // Taken out of the lock, it is locked anew.
    fs::write(mine.join("leafwright.lock"), "").unwrap();
    let output = leafwright(&mine, &["check", "plans/plan.wright"]);
    assert_eq!(stderr(&output), "");
    let anew = fs::read_to_string(mine.join("leafwright.lock")).unwrap();
    assert!(anew != lock && anew.contains("library.wright"), "{anew}");
}

#[test]
fn a_library_comes_from_a_repository_once_and_is_kept() {
    let plan = PLAN.replace("\"parts/shared.wright\"", "shared");
    let folder = folder(
        "repository",
        &[
            ("origin/lib/library.wright", SHARED),
            ("mine/plan.wright", &plan),
        ],
    );
    let (origin, mine) = (folder.join("origin"), folder.join("mine"));
    let git = |arguments: &[&str]| {
        let own = [
            "-c",
            "user.name=Example",
            "-c",
            "user.email=maker@example.org",
        ];
        run(&origin, "git", &[&own, arguments].concat())
    };
    git(&["init", "-q", "-b", "main"]);
    git(&["add", "."]);
    git(&["commit", "-q", "-m", "First"]);
    git(&["tag", "v1"]);
    fs::write(
        origin.join("lib/library.wright"),
        SHARED.replace("300 mm", "320 mm"),
    )
    .unwrap();
    git(&["commit", "-q", "-a", "-m", "Longer"]);
    git(&["tag", "v2"]);
    let project = |revision: &str| {
        let text = format!(
            "[libraries]\nshared = {{ git = \"../origin\", revision = \"{revision}\", file = \"lib/library.wright\" }}\n"
        );
        fs::write(mine.join("leafwright.toml"), text).unwrap();
    };
    // Git takes a path from the folder that the repository is kept in.
    let url = |text: &str| text.replace("../origin", &origin.display().to_string());
    project("v1");
    let file = mine.join("leafwright.toml");
    fs::write(&file, url(&fs::read_to_string(&file).unwrap())).unwrap();
    let output = leafwright(&mine, &["export", "cut-list", "plan.wright"]);
    assert_eq!(stderr(&output), "");
    assert!(String::from_utf8_lossy(&output.stdout).contains("300"));
    // Without the network, or what stands for it here.
    fs::rename(&origin, folder.join("gone")).unwrap();
    let output = leafwright(&mine, &["check", "plan.wright"]);
    assert_eq!(stderr(&output), "");
    // Another revision is another library: the lock says so.
    let text = fs::read_to_string(&file)
        .unwrap()
        .replace("\"v1\"", "\"v2\"");
    fs::write(&file, text).unwrap();
    let output = leafwright(&mine, &["check", "plan.wright"]);
    assert!(stderr(&output).contains("X012"), "{}", stderr(&output));
    // A revision that is not kept has to be fetched, and cannot be.
    let text = fs::read_to_string(&file)
        .unwrap()
        .replace("\"v2\"", "\"v3\"");
    fs::write(&file, text).unwrap();
    let output = leafwright(&mine, &["check", "plan.wright"]);
    let report = stderr(&output);
    assert!(
        report.contains("X008") && report.contains("cannot be fetched"),
        "{report}"
    );
}

#[test]
fn a_project_file_that_cannot_be_understood_is_a_finding() {
    let plan = PLAN.replace("\"parts/shared.wright\"", "workshop");
    for (name, text, code, told) in [
        ("broken", "[libraries\n", "X011", "leafwright.toml:1"),
        (
            "unknown",
            "[libraries]\nworkshop = { pat = \"a.wright\" }\n",
            "X011",
            "unknown field `pat`",
        ),
        (
            "little",
            "[libraries]\nworkshop = { git = \"x\" }\n",
            "X011",
            "does not say where",
        ),
        (
            "other",
            "[libraries]\nshop = { path = \"a.wright\" }\n",
            "X006",
            "`leafwright.toml` names shop",
        ),
    ] {
        let folder = folder(
            &format!("bad-{name}"),
            &[("plan.wright", &plan), ("leafwright.toml", text)],
        );
        let output = leafwright(&folder, &["check", "plan.wright"]);
        assert_eq!(output.status.code(), Some(1), "{name}");
        let report = stderr(&output);
        assert!(
            report.contains(code) && report.contains(told),
            "{name}: {report}"
        );
        assert!(!folder.join("leafwright.lock").exists());
    }
}

#[test]
fn a_new_project_is_sound_and_nothing_is_overwritten() {
    let folder = folder("new", &[]);
    let output = leafwright(&folder, &["new", "shelf"]);
    assert_eq!(
        (output.status.code(), stderr(&output).as_str()),
        (Some(0), "")
    );
    let output = leafwright(
        &folder,
        &["build", "shelf/plan.wright", "-o", "shelf/plan.pdf"],
    );
    assert_eq!(
        (output.status.code(), stderr(&output).as_str()),
        (Some(0), "")
    );
    let output = leafwright(
        &folder,
        &[
            "fmt",
            "--check",
            "shelf/plan.wright",
            "shelf/parts/shared.wright",
        ],
    );
    assert_eq!(stderr(&output), "");
    let output = leafwright(&folder, &["new", "shelf"]);
    assert_eq!(output.status.code(), Some(3));
    assert!(
        stderr(&output).contains("is there already"),
        "{}",
        stderr(&output)
    );
}

#[test]
fn a_library_is_checked_by_itself() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let output = leafwright(
        root,
        &["library", "check", "examples/hall-set/library/hall.wright"],
    );
    let told = String::from_utf8_lossy(&output.stdout).into_owned();
    assert_eq!(
        (output.status.code(), stderr(&output).as_str()),
        (Some(0), ""),
        "{told}"
    );
    assert!(told.contains("1 sub-assemblies tried"), "{told}");
    let bad = format!(
        "{SHARED}subassembly broken(high: length = 3 mm, wood: material) {{\n    part a from wood {{ length high; width nothing }}\n    place it = a {{ length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }}\n}}\n"
    );
    let folder = folder(
        "library",
        &[("bad.wright", &bad), ("plain.wright", "let a = 3 mm\n")],
    );
    let output = leafwright(&folder, &["library", "check", "bad.wright"]);
    assert_eq!(output.status.code(), Some(1));
    assert!(stderr(&output).contains("`nothing`"), "{}", stderr(&output));
    let output = leafwright(&folder, &["library", "check", "plain.wright"]);
    assert_eq!(output.status.code(), Some(1));
    assert!(stderr(&output).contains("N021"), "{}", stderr(&output));
}

#[test]
fn what_a_library_holds_is_drawn_on_its_page() {
    let folder = folder("library-page", &[]);
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let hall = root.join("examples/hall-set/library/hall.wright");
    let page = |library: &str, output: &str| {
        let output = leafwright(&folder, &["library", "page", library, "-o", output]);
        (output.status.code(), stderr(&output))
    };
    assert_eq!(
        page(hall.to_str().unwrap(), "hall.pdf"),
        (Some(0), String::new())
    );
    let printed = pdf_extract::extract_text(folder.join("hall.pdf")).unwrap();
    for word in [
        "Hall",
        "End frame",
        "end_frame",
        "oak_8_4",
        "Stretcher",
        "Hard oil",
        "16 in",
    ] {
        assert!(printed.contains(word), "{word}: {printed}");
    }
    // Every sub-assembly of the shipped library says with what values it is drawn.
    assert_eq!(page("std", "std.pdf"), (Some(0), String::new()));
    let printed = pdf_extract::extract_text(folder.join("std.pdf")).unwrap();
    for part in library::std_text().split("\nsubassembly ").skip(1) {
        let name = part.split('(').next().unwrap();
        assert!(printed.contains(name), "{name}");
        let head = part.split('{').next().unwrap();
        assert!(head.contains("shown("), "{head}");
    }
    // What it is shown with must be what it can be given; nothing is written then.
    let text = fs::read_to_string(&hall).unwrap();
    let wrong = text.replace("height = 16 in", "height = 40 in");
    assert!(wrong != text);
    fs::write(folder.join("wrong.wright"), wrong).unwrap();
    let (code, told) = page("wrong.wright", "wrong.pdf");
    assert!(code == Some(1) && told.contains("N010"), "{told}");
    assert!(!folder.join("wrong.pdf").exists());
}
