//! Values given with `--set name=value`.

use super::SourceArguments;
use super::findings::BAD_SETTING;
use crate::finding::{Finding, Findings};
use crate::model::Overrides;
use crate::source::Span;
use crate::syntax;
use crate::syntax::tree::{Statement, Tree};

/// The values to put in place of the author's; findings for those that cannot be read or name
/// nothing.
pub(super) fn overrides(arguments: &SourceArguments, tree: &Tree) -> (Overrides, Findings) {
    let mut overrides = Overrides::default();
    let mut findings = Findings::new();
    for setting in &arguments.set {
        match read(setting, tree) {
            Ok((name, quantity)) => {
                overrides.values.insert(name, quantity);
            }
            Err(message) => findings.push(
                Finding::new(&BAD_SETTING, Span::default(), message)
                    .remedy("write `--set width=1000mm` with the name of a param or let"),
            ),
        }
    }
    (overrides, findings)
}

fn read(setting: &str, tree: &Tree) -> Result<(String, crate::units::Quantity), String> {
    let (name, value) =
        setting.split_once('=').ok_or_else(|| format!("`{setting}` has no `=`"))?;
    let name = name.trim();
    let known = tree.statements.iter().any(|statement| match statement {
        Statement::Param(param) => param.name.value == name,
        Statement::Let(constant) => constant.name.value == name,
        Statement::Plan(_)
        | Statement::Material(_)
        | Statement::Part(_)
        | Statement::Place(_)
        | Statement::Join(_)
        | Statement::Hardware(_)
        | Statement::Step(_)
        | Statement::Require(_) => false,
    });
    if !known {
        return Err(format!("the source has no param or let `{name}`"));
    }
    syntax::parse_quantity(value.trim())
        .map(|quantity| (name.to_owned(), quantity))
        .ok_or_else(|| format!("`{value}` is not a number or a measure"))
}
