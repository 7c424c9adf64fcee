//! `leafwright explain CODE`: the page of a kind of finding.

use super::{Exit, ExplainArguments, say};
use crate::finding::catalogue;
use crate::wood::Wood;

/// Runs the command.
pub(super) fn run(arguments: &ExplainArguments) -> Exit {
    if arguments.list {
        let lines = catalogue::pages().into_iter().map(|page| {
            format!(
                "{}  {:7}  {}\n               {}\n",
                page.code,
                page.severity.word(),
                page.title,
                catalogue::source(page)
            )
        });
        say(&lines.collect::<String>());
        return Exit::Done;
    }
    let code = arguments.code.as_deref().unwrap_or_default();
    if code == "species" {
        say(&species());
        return Exit::Done;
    }
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

/// The words of a material's `species` line, with what they stand for.
fn species() -> String {
    let mut text = String::from(
        "Words of `species`, with density at 12 % moisture and stiffness along the grain at 18 mm \
         (about 3/4 in).\nAverages of clear wood: Wood Handbook, FPL-GTR-282; panels: \
         their standards and data sheets.\n\n",
    );
    for wood in Wood::all() {
        let density = wood
            .density_kg_m3()
            .map_or_else(String::new, |density| format!("{density:.0} kg/m3"));
        let modulus = wood.modulus_mpa(18.0, true);
        text += &format!(
            "{:24}{:10} {:6.0} MPa  {}\n",
            wood.word(),
            density,
            modulus,
            wood.name()
        );
    }
    text
}
