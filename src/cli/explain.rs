//! `leafwright explain CODE`: the page of a kind of finding.

use super::{Exit, ExplainArguments, say};
use crate::finding::catalogue;

/// Runs the command.
pub(super) fn run(arguments: &ExplainArguments) -> Exit {
    if arguments.list {
        let lines = catalogue::pages().into_iter().map(|page| {
            format!(
                "{}  {:7}  {}\n",
                page.code,
                page.severity.word(),
                page.title
            )
        });
        say(&lines.collect::<String>());
        return Exit::Done;
    }
    let code = arguments.code.as_deref().unwrap_or_default();
    match catalogue::page(code) {
        Some(page) => {
            say(&catalogue::explain(page));
            Exit::Done
        }
        None => {
            say(&format!(
                "There is no code {code}; `leafwright explain --list` lists all.\n"
            ));
            Exit::Errors
        }
    }
}
