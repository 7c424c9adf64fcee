//! Sources of any size.

use leafwright::source::{LARGEST_SOURCE, Sources};
use leafwright::syntax;
use leafwright::syntax::tree::Statement;

use crate::check::check;
use crate::generate::{cabinets_for, wall_of_cabinets};

#[test]
fn a_generated_wall_is_a_sound_plan() {
    for pieces in [7, 10, 60] {
        let count = cabinets_for(pieces);
        let checked = check("wall.wright", &wall_of_cabinets(count));
        assert_eq!(checked.report(), "", "{count} cabinets");
    }
}

#[test]
fn every_statement_of_a_large_source_is_read() {
    let count = 100;
    let text = wall_of_cabinets(count);
    let (sources, file) = Sources::single("wall.wright", &text);
    let outcome = syntax::parse(&sources, file);
    assert!(outcome.findings.is_empty());
    let steps = outcome.value.statements.iter();
    let steps = steps.filter(|statement| matches!(statement, Statement::Step(_)));
    assert_eq!(steps.count(), count);
}

#[test]
fn a_source_that_is_too_large_is_told() {
    let text = "# x\n".repeat(LARGEST_SOURCE / 4);
    assert!(
        check("large.wright", &text)
            .codes()
            .iter()
            .all(|code| !code.starts_with('S'))
    );
    let checked = check("large.wright", &format!("{text}#"));
    assert!(checked.codes().contains(&"S014"), "{}", checked.report());
}

#[test]
fn five_hundred_faults_are_enough() {
    let checked = check("endless.wright", &"}\n".repeat(2_000));
    let codes = checked.codes();
    assert_eq!(codes.len(), 500);
    assert_eq!(codes.iter().filter(|code| **code == "S014").count(), 1);
    assert!(checked.report().contains("the others are not shown"));
}
