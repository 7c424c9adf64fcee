//! Rules about the code itself, as ordinary tests: what a reviewer would otherwise repeat.

use std::fs;
use std::path::{Path, PathBuf};

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// Every Rust file of a folder, in order.
fn rust_files(folder: &Path) -> Vec<PathBuf> {
    let mut files = Vec::new();
    let mut folders = vec![folder.to_owned()];
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|extension| extension == "rs") {
                files.push(path);
            }
        }
    }
    files.sort();
    files
}

/// The ground floor, then the road: a room may use what stands before it, and itself.
///
/// `finding` is on the ground floor, but its catalogue names the pages of every room.
const ROOMS: [&str; 29] = [
    "units",
    "wood",
    "geometry",
    "source",
    "library",
    "finding",
    "words",
    "display",
    "text",
    "syntax",
    "format",
    "model",
    "build",
    "solid",
    "full_size",
    "stock",
    "export",
    "behaviour",
    "caution",
    "options",
    "diff",
    "rules",
    "drawing",
    "document",
    "page",
    "pdf",
    "web",
    "road",
    "cli",
];

/// The lines of a file's code: without comments and without its tests.
fn code(path: &Path) -> Vec<String> {
    let text = fs::read_to_string(path).unwrap();
    text.lines()
        .take_while(|line| !line.starts_with("#[cfg(test)]") || line.contains("mod"))
        .filter(|line| !line.trim_start().starts_with("//"))
        .map(str::to_owned)
        .collect()
}

fn room_of(path: &Path) -> String {
    let inside = path.strip_prefix(root().join("src")).unwrap();
    let first = inside.iter().next().unwrap().to_str().unwrap();
    first.trim_end_matches(".rs").to_owned()
}

#[test]
fn imports_go_down_the_road_only() {
    let mut faults = Vec::new();
    for path in rust_files(&root().join("src")) {
        let room = room_of(&path);
        let Some(own) = ROOMS.iter().position(|known| *known == room) else {
            assert!(
                ["lib", "main"].contains(&room.as_str()),
                "{room} has no place on the road"
            );
            continue;
        };
        if path.ends_with("finding/catalogue.rs") {
            continue;
        }
        for line in code(&path) {
            for used in line.split("crate::").skip(1) {
                let used: String = used
                    .chars()
                    .take_while(|c| c.is_alphanumeric() || *c == '_')
                    .collect();
                if ROOMS
                    .iter()
                    .position(|known| *known == used)
                    .is_some_and(|at| at > own)
                {
                    faults.push(format!("{}: {line}", path.display()));
                }
            }
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

#[test]
fn each_library_stays_in_its_room() {
    let homes = [
        ("pest", "syntax"),
        ("clap", "cli"),
        ("tempfile", "cli"),
        ("toml", "cli"),
        ("base64", "web"),
        ("similar", "diff"),
        ("fluent_bundle", "words"),
        ("fluent_syntax", "words"),
        ("unic_langid", "words"),
        ("hypher", "text"),
        ("minijinja", "document"),
        ("roxmltree", "document"),
        ("printpdf", "pdf"),
        ("lopdf", "pdf"),
        ("subsetter", "pdf"),
        ("harfrust", "text"),
        ("skrifa", "text"),
        ("unicode_linebreak", "text"),
        ("annotate_snippets", "finding"),
        ("num_integer", "stock"),
        ("num_rational", "units"),
    ];
    let mut faults = Vec::new();
    for path in rust_files(&root().join("src")) {
        let room = room_of(&path);
        // Plane booleans serve part shapes and the visible parts of their faces.
        let shapes = room == "geometry" || room == "drawing";
        // Sums are those of libraries in a project's lock, and of what a page may run.
        let sums = room == "cli" || room == "web";
        for line in code(&path) {
            let strange = !shapes && line.contains("i_overlay::");
            if strange || !sums && line.contains("sha2::") {
                faults.push(format!("{}: {line}", path.display()));
            }
            for (library, home) in homes {
                if room != home && line.contains(&format!("{library}::")) {
                    faults.push(format!("{}: {line}", path.display()));
                }
            }
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

#[test]
fn every_file_says_what_it_is_and_is_one_room() {
    for folder in ["src", "tests"] {
        for path in rust_files(&root().join(folder)) {
            let text = fs::read_to_string(&path).unwrap();
            assert!(
                text.starts_with("//!"),
                "{} does not begin with `//!`",
                path.display()
            );
            let lines = text.lines().count();
            assert!(
                lines <= 700,
                "{} has {lines} lines: which second room hides in it?",
                path.display()
            );
        }
    }
}

#[test]
fn a_room_opens_with_a_short_file() {
    for room in ROOMS {
        let path = root().join("src").join(room).join("mod.rs");
        if !path.exists() {
            continue;
        }
        // `finding`, `display`, `source` and `cli` hold their one type there.
        let limit = if ["finding", "display", "source", "cli"].contains(&room) {
            420
        } else {
            140
        };
        let lines = fs::read_to_string(&path).unwrap().lines().count();
        assert!(lines <= limit, "{} has {lines} lines", path.display());
    }
}

#[test]
fn the_top_of_the_house_is_as_drawn() {
    let known = [
        "Cargo.lock",
        "Cargo.toml",
        "DEVELOPERS.md",
        "LICENSE-APACHE",
        "LICENSE-MIT",
        "README.md",
        "examples",
        "grammar",
        "src",
        "target",
        "templates",
        "tests",
    ];
    for entry in fs::read_dir(root()).unwrap() {
        let name = entry.unwrap().file_name().into_string().unwrap();
        let hidden = name.starts_with('.');
        assert!(
            hidden || known.contains(&name.as_str()) || name == "plan.pdf",
            "{name} is not on the map"
        );
    }
}

#[test]
fn every_room_is_on_the_map() {
    let map = fs::read_to_string(root().join("DEVELOPERS.md")).unwrap();
    for room in ROOMS {
        assert!(
            map.contains(&format!("`{room}")),
            "DEVELOPERS.md does not mention `{room}`"
        );
    }
    let manifest = fs::read_to_string(root().join("Cargo.toml")).unwrap();
    let dependencies = manifest.split("[dependencies]").nth(1).unwrap();
    let dependencies = dependencies.split("[profile").next().unwrap();
    for line in dependencies
        .lines()
        .filter(|line| line.contains('=') && !line.starts_with('#'))
    {
        let name = line.split('=').next().unwrap().trim();
        assert!(
            map.contains(&format!("`{name}`")),
            "DEVELOPERS.md does not say why `{name}`"
        );
    }
}
