//! The canonical form: it means the same, and written again it is the same.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use leafwright::format::format;
use leafwright::source::Sources;
use leafwright::syntax;

use crate::generate;

/// The canonical form of a text; none where it cannot be read.
fn formatted(text: &str) -> Option<String> {
    let (sources, file) = Sources::single("a.wright", text);
    format(&sources, file).ok()
}

/// What a text means, without the places where it is written.
fn meaning(text: &str) -> String {
    let (sources, file) = Sources::single("a.wright", text);
    let outcome = syntax::parse(&sources, file);
    let mut shown = format!("{:?}", outcome.value);
    let mut kept = String::new();
    while let Some(at) = shown.find("Span {") {
        kept.push_str(&shown[..at]);
        let end = shown[at..].find('}').unwrap();
        shown = shown[at + end + 1..].to_owned();
    }
    kept + &shown
}

/// The codes of what is wrong with a text.
fn faults(text: &str) -> Vec<&'static str> {
    let (sources, file) = Sources::single("a.wright", text);
    let findings = syntax::parse(&sources, file).findings;
    findings.iter().map(|finding| finding.page.code).collect()
}

/// The comments of a text, in order.
fn comments(text: &str) -> Vec<String> {
    let mut found = Vec::new();
    let (mut in_text, mut escaped) = (false, false);
    let mut comment: Option<String> = None;
    for c in text.chars() {
        if let Some(so_far) = &mut comment {
            if c == '\n' {
                found.push(so_far.trim_end().to_owned());
                comment = None;
            } else {
                so_far.push(c);
            }
            continue;
        }
        match c {
            _ if escaped => escaped = false,
            '\\' if in_text => escaped = true,
            '"' => in_text = !in_text,
            '#' if !in_text => comment = Some("#".to_owned()),
            _ => {}
        }
    }
    found.extend(comment.map(|comment| comment.trim_end().to_owned()));
    found
}

fn holds(name: &str, text: &str) {
    let Some(canonical) = formatted(text) else {
        return;
    };
    assert_eq!(faults(text), faults(&canonical), "{name}:\n{canonical}");
    let (before, after) = (meaning(text), meaning(&canonical));
    if before != after {
        let same = before
            .bytes()
            .zip(after.bytes())
            .take_while(|(a, b)| a == b)
            .count();
        let near = |text: &str| {
            text.chars()
                .skip(same.saturating_sub(200))
                .take(400)
                .collect::<String>()
        };
        assert_eq!(near(&before), near(&after), "{name}");
    }
    assert_eq!(comments(text), comments(&canonical), "{name}:\n{canonical}");
    let again = formatted(&canonical);
    assert_eq!(again.as_deref(), Some(canonical.as_str()), "{name}");
    assert!(canonical.is_empty() || canonical.ends_with('\n'), "{name}");
    assert!(!canonical.contains("\n\n\n"), "{name}");
}

fn sources_in(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            sources_in(&path, found);
        } else if path
            .extension()
            .is_some_and(|extension| extension == "wright")
        {
            found.push(path);
        }
    }
}

#[test]
fn every_source_of_the_house_keeps_its_meaning() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut found = Vec::new();
    for folder in ["examples", "tests", "src"] {
        sources_in(&root.join(folder), &mut found);
    }
    assert!(found.len() > 100, "{}", found.len());
    for path in found {
        if let Ok(text) = fs::read_to_string(&path) {
            holds(&path.display().to_string(), &text);
            // With other line ends and with tabs, too.
            holds(&path.display().to_string(), &text.replace('\n', "\r\n"));
            holds(&path.display().to_string(), &text.replace("    ", "\t"));
        }
    }
    for markdown in ["README.md", "grammar/LANGUAGE.md"] {
        let text = fs::read_to_string(root.join(markdown)).unwrap();
        for fence in text.split("```wright").skip(1) {
            let inside = fence.split("```").next().unwrap();
            let inside = inside.split_once('\n').map_or("", |(_, inside)| inside);
            holds(markdown, inside);
        }
    }
}

#[test]
fn generated_sources_keep_their_meaning() {
    for parts in [1, 8] {
        holds("cabinets", &generate::wall_of_cabinets(parts));
    }
}

proptest::proptest! {
    #[test]
    fn blanks_and_line_ends_do_not_matter(seed in proptest::collection::vec(0_u8..5, 1..200)) {
        // Blanks anywhere that they may stand, in other numbers.
        let text = include_str!("../examples/seed-cabinet/seed-cabinet.wright");
        let mut changed = String::new();
        let (mut in_text, mut in_comment) = (false, false);
        let mut next = seed.iter().cycle();
        for c in text.chars() {
            match c {
                '"' if !in_comment => in_text = !in_text,
                '#' if !in_text => in_comment = true,
                '\n' => in_comment = false,
                _ => {}
            }
            changed.push(c);
            if !in_text && !in_comment && c == ' ' {
                changed.extend(std::iter::repeat_n(' ', usize::from(*next.next().unwrap())));
            }
            if !in_text && c == '\n' && *next.next().unwrap() == 4 {
                changed.push('\n');
            }
        }
        holds("seed-cabinet", &changed);
    }
}

proptest::proptest! {
    #[test]
    fn drafts_with_faults_keep_their_meaning(from in 0_usize..4000, long in 1_usize..12) {
        let text = include_str!("../examples/seed-cabinet/seed-cabinet.wright");
        let kept = text.char_indices().filter(|(at, _)| !(from..from + long).contains(at));
        let damaged: String = kept.map(|(_, c)| c).collect();
        holds("seed-cabinet", &damaged);
    }
}

#[test]
fn it_reads_as_it_should() {
    let cases = [
        (
            "let a=3mm\nlet  b = -a+( 2 * a )- 1/2 in",
            "let a = 3 mm\nlet b = -a + (2 * a) - 1/2 in\n",
        ),
        (
            "let c = min( a ,b )*x[ 1 ].left.top",
            "let c = min(a, b) * x[1].left.top\n",
        ),
        ("let d = 5ft 6-1/2in", "let d = 5 ft 6-1/2 in\n"),
        (
            "plan \"A\" {revision \"A\" on 2026-01-15;author \"B\"}",
            "plan \"A\" { revision \"A\" on 2026-01-15; author \"B\" }\n",
        ),
        (
            "part a from b{length 3 mm   grain # one\n\n\n width 2 mm;thickness 1 mm\n}",
            "part a from b {\n    length 3 mm grain  # one\n\n    width 2 mm\n    thickness 1 mm\n}\n",
        ),
        ("\n\n# only\n\n\n# comments", "# only\n\n# comments\n"),
        ("", ""),
        (
            "place a[i in 1 .. n]=b(c=3 mm,d = e) mirrored{left at -2 mm}",
            "place a[i in 1..n] = b(c = 3 mm, d = e) mirrored { left at -2 mm }\n",
        ),
        (
            "subassembly s(a:length=3 mm from 1 mm to 4 mm,b :material)\"S\"{let c=a}",
            "subassembly s(a: length = 3 mm from 1 mm to 4 mm, b: material) \"S\" { let c = a }\n",
        ),
        (
            "require a<=b-3 mm because \"two\n      lines\"",
            "require a <= b - 3 mm because \"two\n    lines\"\n",
        ),
    ];
    for (text, wanted) in cases {
        assert_eq!(formatted(text).as_deref(), Some(wanted));
    }
}

#[test]
fn a_long_line_is_broken_behind_a_comma_and_stays_so() {
    let names: Vec<String> = (0..40).map(|n| format!("shelf_number_{n}")).collect();
    let text = format!("join {} to left by glue", names.join(", "));
    let canonical = formatted(&text).unwrap();
    assert!(
        canonical.lines().all(|line| line.chars().count() <= 120),
        "{canonical}"
    );
    holds("long", &text);
}

#[test]
fn files_are_rewritten_and_checked() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("format");
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).unwrap();
    let (good, odd, bad) = (
        folder.join("good.wright"),
        folder.join("odd.wright"),
        folder.join("bad.wright"),
    );
    fs::write(&good, "let a = 3 mm\n").unwrap();
    fs::write(&odd, "let a = 3 mm\nlet  b=a\n").unwrap();
    fs::write(&bad, "part a from b {\n").unwrap();
    let run = |arguments: &[&str]| {
        let mut command = Command::new(env!("CARGO_BIN_EXE_leafwright"));
        command
            .arg("fmt")
            .args(arguments)
            .current_dir(&folder)
            .output()
            .unwrap()
    };
    assert_eq!(run(&["--check", "good.wright"]).status.code(), Some(0));
    let output = run(&["--check", "good.wright", "odd.wright"]);
    assert_eq!(output.status.code(), Some(1));
    let report = String::from_utf8_lossy(&output.stderr).into_owned();
    assert!(
        report.contains("X007") && report.contains("odd.wright:2:1"),
        "{report}"
    );
    assert_eq!(
        fs::read_to_string(&odd).unwrap(),
        "let a = 3 mm\nlet  b=a\n"
    );
    assert_eq!(run(&["odd.wright", "bad.wright"]).status.code(), Some(1));
    assert_eq!(
        fs::read_to_string(&odd).unwrap(),
        "let a = 3 mm\nlet b = a\n"
    );
    assert_eq!(fs::read_to_string(&bad).unwrap(), "part a from b {\n");
    let mut command = Command::new(env!("CARGO_BIN_EXE_leafwright"));
    let mut child = command
        .args(["fmt", "-"])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    use std::io::Write;
    child.stdin.take().unwrap().write_all(b"let  a=1").unwrap();
    let output = child.wait_with_output().unwrap();
    assert_eq!(String::from_utf8_lossy(&output.stdout), "let a = 1\n");
}

#[test]
fn what_ships_is_in_canonical_form() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut found = Vec::new();
    for folder in ["examples", "tests/library", "src/library/std"] {
        sources_in(&root.join(folder), &mut found);
    }
    for path in found {
        let text = fs::read_to_string(&path).unwrap();
        assert_eq!(
            formatted(&text).as_deref(),
            Some(text.as_str()),
            "{}",
            path.display()
        );
    }
}
