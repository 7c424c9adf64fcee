//! A look of one's own: `--templates FOLDER` with templates, words, fonts and colours.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Output;

use lopdf::content::Content;
use lopdf::{Document, Object};

use crate::shell::{folder, leafwright, stderr, stdout, text};

/// A new project in a folder of its own, and a folder for a look in it.
fn project(name: &str) -> [PathBuf; 2] {
    let place = folder(name);
    let made = leafwright(&place, &["new", "shelf"]);
    assert!(made.status.success(), "{}", stderr(&made));
    let project = place.join("shelf");
    let look = project.join("look");
    fs::create_dir_all(&look).unwrap();
    [project, look]
}

/// Builds the project's plan in a look.
fn set_in(place: &Path, look: &Path, outputs: &[&str]) -> Output {
    let build = ["build", "plan.wright", "--templates", text(look)];
    leafwright(place, &[&build, outputs].concat())
}

/// The tones that a file fills and strokes with, each once, as red, green and blue in hundredths.
fn tones(bytes: &[u8]) -> Vec<[i64; 3]> {
    let file = Document::load_mem(bytes).unwrap();
    let mut found = Vec::new();
    for page in file.page_iter() {
        let content = Content::decode(&file.get_page_content(page)).unwrap();
        for operation in content.operations {
            if matches!(operation.operator.as_str(), "rg" | "RG") {
                let part = |object: &Object| {
                    #[expect(clippy::cast_possible_truncation, reason = "hundredths of one")]
                    let whole = (object.as_float().unwrap() * 100.0).round() as i64;
                    whole
                };
                let tone = [0, 1, 2].map(|i| part(&operation.operands[i]));
                if !found.contains(&tone) {
                    found.push(tone);
                }
            }
        }
    }
    found
}

#[test]
fn a_plan_is_set_in_the_accent_that_was_asked_for() {
    let [place, look] = project("looks-accent");
    let plain = leafwright(&place, &["build", "plan.wright", "-o", "plain.pdf"]);
    assert!(plain.status.success(), "{}", stderr(&plain));
    let shipped = tones(&fs::read(place.join("plain.pdf")).unwrap());
    assert_eq!(shipped, [[14, 37, 40]]);
    fs::write(look.join("colours.toml"), "accent = \"#7a3b12\"\n").unwrap();
    let own = set_in(&place, &look, &["-o", "own.pdf", "--html", "web"]);
    assert!(own.status.success(), "{}", stderr(&own));
    // 0x7a, 0x3b and 0x12 of 0xff.
    assert_eq!(
        tones(&fs::read(place.join("own.pdf")).unwrap()),
        [[48, 23, 7]]
    );
    let page = fs::read_dir(place.join("web")).unwrap().next().unwrap();
    let page = fs::read_to_string(page.unwrap().path()).unwrap();
    assert!(page.contains(":root { --accent: #7a3b12 }"));
}

#[test]
fn what_is_no_colour_and_what_is_hard_to_read_is_told_at_its_place() {
    let [place, look] = project("looks-faults");
    for (colours, code, told) in [
        ("accent = \"teal\"\n", "X015", "`teal` is no colour"),
        ("accent = \"#12345\"\n", "X015", "`#12345` is no colour"),
        ("tint = \"#123456\"\n", "X015", "unknown field"),
        ("accent = \n", "X015", "colours.toml"),
        ("accent = \"#ffcc00\"\n", "X016", "contrast of 1.5 to 1"),
    ] {
        fs::write(look.join("colours.toml"), colours).unwrap();
        let _ = fs::remove_file(place.join("plan.pdf"));
        let run = set_in(&place, &look, &["-o", "plan.pdf"]);
        let all = format!("{}{}", stdout(&run), stderr(&run));
        assert!(all.contains(code) && all.contains(told), "{all}");
        assert!(all.contains("colours.toml"), "{all}");
        // A faint colour is a doubt; one that cannot be read stops the plan.
        assert_eq!(run.status.success(), code == "X016", "{all}");
        assert_eq!(place.join("plan.pdf").exists(), code == "X016");
    }
}
