//! Plans that try what a library describes, written in the language.

use std::fmt::Write as _;

use crate::syntax::tree::{Expr, ExprKind, Formal, Import, Statement, Subassembly, Tree};

/// What a library declares, and with what values it is tried.
pub(super) struct Trial {
    /// How a plan beside it imports from it: its file in quotes, or `std`.
    from: String,
    /// What the library itself imports, as it is written.
    imports: String,
    /// Every name it declares.
    pub(super) names: Vec<String>,
    /// Its materials.
    pub(super) materials: Vec<String>,
    /// Sub-assemblies that can be placed.
    pub(super) wholes: Vec<Tried>,
    /// Those for which a value is missing.
    pub(super) untried: Vec<String>,
}

/// A sub-assembly with the values it is tried with.
pub(super) struct Tried {
    pub(super) name: String,
    pub(super) formals: Vec<Formal>,
    /// Name and value, as they are written.
    given: Vec<(String, String)>,
}

impl Tried {
    /// The value that a parameter is given; none where it keeps its own.
    pub(super) fn value_of(&self, formal: &str) -> Option<String> {
        let found = self.given.iter().find(|(name, _)| name == formal);
        found.map(|(_, value)| value.clone())
    }
}

/// Stands in where a library has no material of its own.
const STAND_IN: &str = "material_of_the_trial";

/// An expression as it is written.
pub(super) fn spelled(text: &str, expr: &Expr) -> String {
    let written = text.get(expr.span.range()).unwrap_or_default();
    let words: Vec<&str> = written.split_whitespace().collect();
    words.join(" ")
}

impl Trial {
    /// What is tried of a library with the text `text`, which plans import `from`.
    pub(super) fn of(tree: &Tree, text: &str, from: &str) -> Self {
        let mut trial = Self {
            from: from.to_owned(),
            imports: String::new(),
            names: Vec::new(),
            materials: Vec::new(),
            wholes: Vec::new(),
            untried: Vec::new(),
        };
        let mut hardware = None;
        let mut wholes: Vec<&Subassembly> = Vec::new();
        for statement in &tree.statements {
            let name = match statement {
                Statement::Material(it) => {
                    trial.materials.push(it.name.value.clone());
                    &it.name
                }
                Statement::Hardware(it) => {
                    hardware.get_or_insert(it.name.value.as_str());
                    &it.name
                }
                Statement::Subassembly(it) => {
                    wholes.push(it);
                    &it.name
                }
                Statement::Part(it) => &it.name,
                Statement::Let(it) => &it.name,
                Statement::Supply(it) => &it.name,
                Statement::Import(it) => {
                    trial.import(it, text);
                    continue;
                }
                Statement::Plan(_)
                | Statement::Param(_)
                | Statement::Place(_)
                | Statement::Join(_)
                | Statement::Step(_)
                | Statement::Require(_)
                | Statement::Load(_)
                | Statement::Clearance(_)
                | Statement::Hold(_)
                | Statement::Continuous(_)
                | Statement::Template(_)
                | Statement::Choose(_)
                | Statement::Library(_) => continue,
            };
            trial.names.push(name.value.clone());
        }
        for whole in wholes {
            let material = trial.materials.first().map_or(STAND_IN, String::as_str);
            match given(whole, text, material, hardware) {
                Some(given) => trial.wholes.push(Tried {
                    name: whole.name.value.clone(),
                    formals: whole.formals.clone(),
                    given,
                }),
                None => trial.untried.push(whole.name.value.clone()),
            }
        }
        trial
    }

    /// What a library imports, its values may name.
    fn import(&mut self, import: &Import, text: &str) {
        let written = text.get(import.span.range()).unwrap_or_default();
        let _ = writeln!(self.imports, "{written}");
    }

    /// A plan without a piece: the library's names and those it imports.
    fn begun(&self) -> String {
        let mut text =
            "plan \"Library\" { author \"Library\"; revision \"A\" on 2026-01-01 \"Trial\" }\n"
                .to_owned();
        if !self.names.is_empty() {
            // Writing to a string does not fail.
            let _ = writeln!(text, "import {} from {}", self.names.join(", "), self.from);
        }
        let _ = writeln!(text, "import birch_ply_18 as {STAND_IN} from std");
        text.push_str(&self.imports);
        text
    }

    /// A plan of all sub-assemblies beside each other.
    pub(super) fn of_everything(&self) -> String {
        let mut text = self.begun();
        let mut at = "0 mm".to_owned();
        for whole in &self.wholes {
            at = format!("{}.right + 500 mm", place(&mut text, whole, &at));
        }
        let names: Vec<String> = self.wholes.iter().map(placed).collect();
        look_at(&mut text, &names);
        text
    }

    /// A plan of one sub-assembly, counted from zero.
    pub(super) fn of_one(&self, number: usize) -> String {
        let mut text = self.begun();
        if let Some(whole) = self.wholes.get(number) {
            let name = place(&mut text, whole, "0 mm");
            look_at(&mut text, &[name]);
        }
        text
    }

    /// A plan of a board, for what a library has beside sub-assemblies.
    pub(super) fn of_goods(&self) -> String {
        let mut text = self.begun();
        let _ = writeln!(
            text,
            "part board_of_the_trial from {STAND_IN} {{ length 300 mm grain; width 200 mm }}\n\
             place trial_of_goods = board_of_the_trial {{ length right; width back; left at 0 mm; \
             front at 0 mm; bottom at 0 mm }}"
        );
        look_at(&mut text, &["trial_of_goods".to_owned()]);
        text
    }
}

fn placed(whole: &Tried) -> String {
    format!("trial_of_{}", whole.name)
}

/// Places a sub-assembly `at` the left; its name there.
fn place(text: &mut String, whole: &Tried, at: &str) -> String {
    let name = placed(whole);
    let given: Vec<String> = whole
        .given
        .iter()
        .map(|(name, value)| format!("{name} = {value}"))
        .collect();
    let _ = writeln!(
        text,
        "place {name} = {}({}) {{ left at {at}; front at 0 mm; bottom at 0 mm }}",
        whole.name,
        given.join(", ")
    );
    name
}

fn look_at(text: &mut String, names: &[String]) {
    if !names.is_empty() {
        let _ = writeln!(
            text,
            "step \"Put them beside each other\" {{ add {}; say \"Look at them.\" }}",
            names.join(", ")
        );
    }
}

/// With what values a sub-assembly is tried: those it is shown with, its own, else the lower ends of
/// ranges, the first material, the first hardware; none where one is still missing.
fn given(
    whole: &Subassembly,
    text: &str,
    material: &str,
    hardware: Option<&str>,
) -> Option<Vec<(String, String)>> {
    let mut given: Vec<(String, String)> = Vec::new();
    for shown in &whole.shown {
        given.push((shown.name.value.clone(), spelled(text, &shown.value)));
    }
    for formal in &whole.formals {
        let name = &formal.name.value;
        if formal.preset.is_none() && !given.iter().any(|(known, _)| known == name) {
            given.push((name.clone(), value(formal, material, hardware)?));
        }
    }
    Some(given)
}

/// What a parameter without a value of its own is given: of a range, the lower end.
fn value(formal: &Formal, material: &str, hardware: Option<&str>) -> Option<String> {
    match (formal.kind.value.as_str(), &formal.range) {
        ("material", _) => Some(material.to_owned()),
        ("hardware", _) => hardware.map(str::to_owned),
        (_, Some((low, _))) => {
            let ExprKind::Quantity(quantity) = &low.kind else {
                return None;
            };
            let nm = quantity.length()?.nm();
            Some(format!("{}.{:06} mm", nm / 1_000_000, nm % 1_000_000))
        }
        _ => None,
    }
}
