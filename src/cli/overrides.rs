//! Values given with `--set name=value`.

use super::SourceArguments;
use super::findings::BAD_SETTING;
use crate::finding::{Finding, Findings};
use crate::model::{self, Overrides};
use crate::source::{Sources, Span};
use crate::syntax;
use crate::syntax::tree::{Statement, Tree};

/// The values to put in place of the author's; findings for those that cannot be read or name
/// nothing. `sources` takes in the settings, so that findings can quote them.
pub(super) fn overrides(
    arguments: &SourceArguments,
    tree: &Tree,
    sources: &mut Sources,
) -> (Overrides, Findings) {
    let mut overrides = Overrides::default();
    let mut findings = Findings::new();
    for setting in &arguments.set {
        let Some((name, value)) = setting.split_once('=') else {
            findings.push(bad(format!("`{setting}` has no `=`")));
            continue;
        };
        let name = name.trim();
        if !declares(tree, name) {
            findings.push(bad(format!("the source has no param or let `{name}`")));
            continue;
        }
        let file = sources.add(&format!("--set {setting}"), value);
        let quantity = syntax::parse_expression(sources, file).and_then(|expr| {
            let worked_out = model::constant(&expr);
            worked_out.value.ok_or(worked_out.findings)
        });
        match quantity {
            Ok(quantity) => {
                overrides.values.insert(name.to_owned(), quantity);
            }
            Err(faults) => findings.append(faults),
        }
    }
    for choice in &arguments.choose {
        match chosen(choice, tree) {
            Ok((option, choice)) => {
                overrides.choices.insert(option, choice);
            }
            Err(finding) => findings.push(*finding),
        }
    }
    (overrides, findings)
}

/// The names of an option of the source and of one of its choices.
fn chosen(setting: &str, tree: &Tree) -> Result<(String, String), Box<Finding>> {
    let told = |message: String, remedy: String| {
        Box::new(Finding::new(&BAD_SETTING, Span::default(), message).remedy(remedy))
    };
    let form =
        || "write `--choose joint=dowels` with the names of an option and a choice".to_owned();
    let Some((option, choice)) = setting.split_once('=') else {
        return Err(told(format!("`{setting}` has no `=`"), form()));
    };
    let (option, choice) = (option.trim(), choice.trim());
    let options = || {
        tree.statements.iter().filter_map(|statement| {
            if let Statement::Choose(option) = statement {
                Some(option)
            } else {
                None
            }
        })
    };
    let listed = |names: Vec<&str>| {
        if names.is_empty() {
            form()
        } else {
            format!("there are {}", names.join(", "))
        }
    };
    let Some(found) = options().find(|known| known.name.value == option) else {
        let names = options().map(|known| known.name.value.as_str()).collect();
        let message = format!("the source has no option `{option}`");
        return Err(told(message, listed(names)));
    };
    let mut choices = found.choices.iter().map(|known| known.name.value.as_str());
    if choices.clone().any(|known| known == choice) {
        return Ok((option.to_owned(), choice.to_owned()));
    }
    let message = format!("the option `{option}` has no choice `{choice}`");
    Err(told(message, listed(choices.by_ref().collect())))
}

fn bad(message: String) -> Finding {
    Finding::new(&BAD_SETTING, Span::default(), message)
        .remedy("write `--set width=1000mm` with the name of a param or let")
}

fn declares(tree: &Tree, name: &str) -> bool {
    tree.statements.iter().any(|statement| match statement {
        Statement::Param(param) => param.name.value == name,
        Statement::Let(constant) => constant.name.value == name,
        Statement::Plan(_)
        | Statement::Material(_)
        | Statement::Part(_)
        | Statement::Place(_)
        | Statement::Join(_)
        | Statement::Hardware(_)
        | Statement::Step(_)
        | Statement::Load(_)
        | Statement::Clearance(_)
        | Statement::Hold(_)
        | Statement::Continuous(_)
        | Statement::Template(_)
        | Statement::Supply(_)
        | Statement::Subassembly(_)
        | Statement::Choose(_)
        | Statement::Import(_)
        | Statement::Library(_)
        | Statement::Require(_) => false,
    })
}
