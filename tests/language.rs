//! The language's reference: its examples are read, and the whole ones are sound plans.

use leafwright::source::Sources;
use leafwright::syntax;

use crate::check::check;

const REFERENCE: &str = include_str!("../grammar/LANGUAGE.md");

/// An example: the line it begins in, what its fence says behind `wright`, its text.
struct Example {
    name: String,
    tag: String,
    text: String,
}

fn examples() -> Vec<Example> {
    let mut examples: Vec<Example> = Vec::new();
    let mut open = false;
    for (number, line) in REFERENCE.lines().enumerate() {
        if let Some(tag) = line.strip_prefix("```wright") {
            examples.push(Example {
                name: format!("LANGUAGE.md:{}", number + 1),
                tag: tag.to_owned(),
                text: String::new(),
            });
            open = true;
        } else if line == "```" {
            open = false;
        } else if let (true, Some(example)) = (open, examples.last_mut()) {
            example.text.push_str(line);
            example.text.push('\n');
        }
    }
    examples
}

#[test]
fn every_example_is_read() {
    let examples = examples();
    assert!(examples.len() > 10);
    for example in examples {
        let (sources, file) = Sources::single(&example.name, &example.text);
        let outcome = syntax::parse(&sources, file);
        let report = leafwright::finding::print::print(
            &outcome.findings,
            &sources,
            leafwright::finding::print::Colour::Plain,
        );
        assert_eq!(report, "");
        assert!(!outcome.value.statements.is_empty(), "{}", example.name);
        assert!(
            ["", ",part"].contains(&example.tag.as_str()),
            "{}",
            example.tag
        );
    }
}

#[test]
fn every_whole_example_is_a_sound_plan() {
    let whole: Vec<Example> = examples()
        .into_iter()
        .filter(|e| e.tag.is_empty())
        .collect();
    assert!(!whole.is_empty());
    for example in whole {
        assert_eq!(check(&example.name, &example.text).report(), "");
    }
}

#[test]
fn the_limits_are_in_the_reference() {
    let nesting = leafwright::source::DEEPEST_NESTING.to_string();
    assert!(REFERENCE.contains(&format!("in one another | {nesting} |")));
    let mebibytes = leafwright::source::LARGEST_SOURCE / 1024 / 1024;
    assert!(REFERENCE.contains(&format!("a source | {mebibytes} MiB |")));
}
