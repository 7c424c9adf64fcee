//! Lazy evaluation: every value is worked out when it is first asked for, in any order.
//!
//! What was worked out is kept under its [`Key`] for the length of one run, and a key that is
//! asked for while it is being worked out is a loop. A value that cannot be known is `None`,
//! said once where the fault is, and nothing complains about it again.

use std::cell::{Cell, RefCell};
use std::collections::{BTreeMap, BTreeSet};

use super::findings::{LONG_CHAIN, LOOP, NO_RESULT, UNKNOWN_NAME, WRONG_KIND};
use super::names::{Declarations, Declared, Meant, nearest_of};
use super::overrides::Overrides;
use super::scopes::ScopeId;
use super::value::{Anchor, Value};
use crate::finding::{Finding, Findings};
use crate::geometry::Axis;
use crate::source::Span;
use crate::syntax::tree::{Expr, ExprKind, Name, Operator};
use crate::units::{ArithmeticFault, Dimension, Quantity};

/// How long a chain of values, each hanging on the next, is followed.
const LONGEST_CHAIN: usize = 300;

/// A value that is worked out once.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Key {
    /// A param.
    Param(usize),
    /// A let.
    Let(usize),
    /// A parameter of a sub-assembly.
    Formal(usize),
    /// A size of a part, by its place among the parts and its axis.
    PartSize(usize, usize),
    /// The stretch of a placed piece on a world axis: placement, index, axis.
    Stretch(usize, i64, usize),
    /// The stretch of everything placed in a scope, on an axis of its frame.
    Whole(ScopeId, usize),
}

/// What is known of a key.
#[derive(Clone, Debug)]
enum State {
    Working,
    Known(Option<Value>),
}

/// The counting name of a repeated placement and its value.
pub(super) type Local<'l> = Option<(&'l str, i64)>;

/// Works out values; its notes of what it knows live for one run.
pub(super) struct Evaluator<'t> {
    pub(super) all: &'t Declarations<'t>,
    pub(super) overrides: &'t Overrides,
    /// The scope of the statement that is being worked out.
    pub(super) scope: Cell<ScopeId>,
    /// The scopes of placed sub-assemblies; none for one that cannot be opened.
    pub(super) scopes_of: RefCell<BTreeMap<(usize, i64), Option<ScopeId>>>,
    known: RefCell<BTreeMap<Key, State>>,
    chain: RefCell<Vec<(Key, Span)>>,
    findings: RefCell<Findings>,
    told: RefCell<BTreeSet<(&'static str, Span)>>,
    asked_for: RefCell<BTreeSet<Span>>,
}

impl<'t> Evaluator<'t> {
    pub(super) fn new(all: &'t Declarations<'t>, overrides: &'t Overrides) -> Self {
        Self {
            all,
            overrides,
            scope: Cell::default(),
            scopes_of: RefCell::default(),
            known: RefCell::default(),
            chain: RefCell::default(),
            findings: RefCell::default(),
            told: RefCell::default(),
            asked_for: RefCell::default(),
        }
    }

    /// Notes that a param, a let or a parameter is asked for; its own declaration does not count.
    fn note_use(&self, name: &Name, declared: Option<Declared>) {
        let own = match declared {
            Some(Declared::Param(i)) => self.all.params.get(i).map(|param| &param.name),
            Some(Declared::Let(i)) => self.all.lets.get(i).map(|constant| &constant.name),
            Some(Declared::Formal(i)) => self.all.formals.get(i).map(|formal| &formal.name),
            Some(
                Declared::Material(_)
                | Declared::Part(_)
                | Declared::Hardware(_)
                | Declared::Supply(_)
                | Declared::Place(_)
                | Declared::Subassembly(_)
                | Declared::Missing,
            )
            | None => None,
        };
        if let Some(own) = own
            && own.span != name.span
        {
            self.note_asked_for(own.span);
        }
    }

    /// Notes that what is declared there is asked for.
    pub(super) fn note_asked_for(&self, declared: Span) {
        self.asked_for.borrow_mut().insert(declared);
    }

    /// Params, lets and parameters that nothing asked for.
    pub(super) fn idle(&self) -> Vec<Name> {
        let params = self.all.params.rows();
        let lets = self.all.lets.rows();
        let formals = self.all.formals.rows();
        let asked_for = self.asked_for.borrow();
        let mut seen = BTreeSet::new();
        params
            .iter()
            .map(|(param, _)| &param.name)
            .chain(
                lets.iter()
                    .filter(|(_, scope)| !self.all.is_library(*scope))
                    .map(|(constant, _)| &constant.name),
            )
            .chain(formals.iter().map(|(formal, _)| &formal.name))
            .filter(|name| !asked_for.contains(&name.span) && seen.insert(name.span))
            .cloned()
            .chain(self.never_placed())
            .collect()
    }

    /// Sub-assemblies of the plan, and those it imports, that are placed nowhere.
    fn never_placed(&self) -> Vec<Name> {
        let scopes = self.all.scopes.borrow();
        let placed: BTreeSet<usize> = scopes
            .iter()
            .filter_map(|scope| Some(scope.holder?.subassembly))
            .collect();
        drop(scopes);
        let own = self.all.subassemblies.rows().into_iter().enumerate();
        let own = own.filter(|(_, (_, scope))| *scope == ScopeId::PLAN);
        let own = own.map(|(index, (it, _))| (index, it.name.clone()));
        let imported = self.all.imported_in_plan().into_iter();
        let imported = imported.filter_map(|(name, declared, span)| {
            if let Declared::Subassembly(index) = declared {
                Some((index, Name::new(name.to_owned(), span)))
            } else {
                None
            }
        });
        own.chain(imported)
            .filter(|(index, _)| !placed.contains(index))
            .map(|(_, name)| name)
            .collect()
    }

    /// Everything found so far.
    pub(super) fn into_findings(self) -> Findings {
        self.findings.into_inner()
    }

    /// Notes a finding; a second one of its kind at its place is a repetition and is dropped.
    ///
    /// What is found in a sub-assembly says where that is placed.
    pub(super) fn tell(&self, finding: Finding) {
        let finding = match self.holder(self.scope.get()) {
            Some(holder) => {
                let name = &holder.placed.name;
                finding.related(name.span, format!("in `{}`, placed here", name.value))
            }
            None => finding,
        };
        if self
            .told
            .borrow_mut()
            .insert((finding.page.code, finding.span))
        {
            self.findings.borrow_mut().push(finding);
        }
    }

    /// The value of `key`, worked out by `work` when it is first asked for, at `span`.
    pub(super) fn once(
        &self,
        key: Key,
        span: Span,
        work: impl FnOnce() -> Option<Value>,
    ) -> Option<Value> {
        let state = self.known.borrow().get(&key).cloned();
        match state {
            Some(State::Known(value)) => return value,
            Some(State::Working) => {
                self.tell_loop(&key, span);
                return None;
            }
            None => {}
        }
        if self.chain.borrow().len() >= LONGEST_CHAIN {
            let message = "this hangs on a chain of more than 300 values";
            self.tell(Finding::new(&LONG_CHAIN, span, message).remedy(
                "declare the values in the order they hang on each other, first ones first",
            ));
            return None;
        }
        self.known.borrow_mut().insert(key.clone(), State::Working);
        self.chain.borrow_mut().push((key.clone(), span));
        let value = self.inside(self.scope_of(&key), work);
        self.chain.borrow_mut().pop();
        self.known
            .borrow_mut()
            .insert(key, State::Known(value.clone()));
        value
    }

    /// The scope whose names a key's value is worked out with.
    fn scope_of(&self, key: &Key) -> ScopeId {
        match key {
            Key::Param(i) => self.all.params.scope(*i),
            Key::Let(i) => self.all.lets.scope(*i),
            Key::Formal(i) => self.all.formals.scope(*i),
            Key::PartSize(i, _) => self.all.parts.scope(*i),
            Key::Stretch(i, _, _) => self.all.places.scope(*i),
            Key::Whole(scope, _) => *scope,
        }
    }

    fn tell_loop(&self, key: &Key, span: Span) {
        let chain = self.chain.borrow();
        let start = chain
            .iter()
            .position(|(other, _)| other == key)
            .unwrap_or(0);
        let round: Vec<&(Key, Span)> = chain.iter().skip(start).collect();
        // One finding a circle, wherever it was entered: its keys in order tell circles apart.
        let first = round.iter().map(|(_, at)| *at).min().unwrap_or(span);
        let mut names: Vec<String> = round.iter().map(|(k, _)| self.describe(k)).collect();
        names.push(self.describe(key));
        let message = format!(
            "a circle: {}",
            names
                .join(", which needs ")
                .replacen(", which needs", " needs", 1)
        );
        let mut finding = Finding::new(&LOOP, span, message)
            .remedy("give one of them a value that does not come from the others");
        if first != span {
            finding = finding.related(first, "the circle begins here");
        }
        drop(chain);
        self.tell(finding);
    }

    fn describe(&self, key: &Key) -> String {
        let axis = |i: &usize| Axis::ALL.get(*i).map_or("", |axis| axis.word());
        let named =
            |name: Option<&Name>| name.map_or_else(String::new, |n| format!("`{}`", n.value));
        match key {
            Key::Param(i) => named(self.all.params.get(*i).map(|it| &it.name)),
            Key::Let(i) => named(self.all.lets.get(*i).map(|it| &it.name)),
            Key::Formal(i) => named(self.all.formals.get(*i).map(|it| &it.name)),
            Key::PartSize(part, i) => {
                let name = self
                    .all
                    .parts
                    .get(*part)
                    .map_or("", |part| &part.name.value);
                let size = ["length", "width", "thickness"]
                    .get(*i)
                    .copied()
                    .unwrap_or("");
                format!("`{name}.{size}`")
            }
            Key::Stretch(place, index, i) => {
                let Some(place) = self.all.places.get(*place) else {
                    return String::new();
                };
                let name = &place.name.value;
                let name = if place.repeat.is_some() {
                    format!("{name}[{index}]")
                } else {
                    name.clone()
                };
                format!("the place of `{name}` {}", axis(i))
            }
            Key::Whole(scope, i) => match self.holder(*scope) {
                Some(holder) => format!("the size of `{}` {}", holder.placed.name.value, axis(i)),
                None => format!("the overall size {}", axis(i)),
            },
        }
    }

    /// The value of an expression.
    pub(super) fn value(&self, expr: &Expr, local: Local<'_>) -> Option<Value> {
        match &expr.kind {
            ExprKind::Number(number) => Some(Value::Quantity(Quantity::count(*number))),
            ExprKind::Quantity(quantity) => Some(Value::Quantity(quantity.clone())),
            ExprKind::Name(name) => self.named(name, local),
            ExprKind::Field { of, field } => self.field(of, field, local),
            ExprKind::Index { of, index } => self.indexed(of, index, local),
            ExprKind::Call {
                function,
                arguments,
            } => self.call(function, arguments, local),
            ExprKind::Negated(inner) => {
                let quantity = self.quantity(inner, local)?;
                self.result(quantity.negated(), expr.span)
            }
            ExprKind::Binary {
                operator,
                left,
                right,
            } => {
                let left_value = self.value(left, local);
                let right_value = self.value(right, local);
                self.binary(*operator, left_value?, right_value?, expr.span)
            }
        }
    }

    fn binary(&self, operator: Operator, left: Value, right: Value, span: Span) -> Option<Value> {
        // A face moved by a length is still a place on its axis; the distance of two faces is
        // a length.
        if let Some(value) = shifted_plane(operator, &left, &right) {
            return Some(value);
        }
        if operator == Operator::Minus
            && let (Value::Anchor(a), Value::Anchor(b)) = (&left, &right)
            && let (Some((first, _)), Some((second, _))) = (a.as_plane(), b.as_plane())
            && first != second
        {
            let message = format!(
                "a position {} cannot be taken from a position {}",
                second.word(),
                first.word()
            );
            self.tell(Finding::new(&WRONG_KIND, span, message));
            return None;
        }
        let left = self.as_quantity(left, span)?;
        let right = self.as_quantity(right, span)?;
        let result = match operator {
            Operator::Plus => left.plus(&right),
            Operator::Minus => left.minus(&right),
            Operator::Times => left.times(&right),
            Operator::Over => left.over(&right),
        };
        self.result(result, span)
    }

    /// A result of arithmetic, or the finding that there is none.
    pub(super) fn result(
        &self,
        result: Result<Quantity, ArithmeticFault>,
        span: Span,
    ) -> Option<Value> {
        let fault = match result {
            Ok(quantity) => return Some(Value::Quantity(quantity)),
            Err(fault) => fault,
        };
        let finding = match fault {
            ArithmeticFault::Kinds(left, right) => {
                let message = format!("{} and {} do not go together", left.name(), right.name());
                let finding = Finding::new(&WRONG_KIND, span, message);
                if left == Dimension::COUNT || right == Dimension::COUNT {
                    finding.remedy("write a unit after the number: `3 mm`, `1/8 in`")
                } else {
                    finding
                }
            }
            ArithmeticFault::DivisionByZero => {
                Finding::new(&NO_RESULT, span, "this divides by zero")
            }
            ArithmeticFault::TooLarge => Finding::new(
                &NO_RESULT,
                span,
                "this number is too large to be kept exactly",
            ),
            ArithmeticFault::Currencies => Finding::new(
                &NO_RESULT,
                span,
                "two currencies cannot be added or compared",
            ),
            ArithmeticFault::NegativeRoot => {
                Finding::new(&NO_RESULT, span, "nothing negative has a square root")
            }
        };
        self.tell(finding);
        None
    }

    fn named(&self, name: &Name, local: Local<'_>) -> Option<Value> {
        if let Some((counting, value)) = local
            && counting == name.value
        {
            return Some(Value::Quantity(Quantity::whole(value)));
        }
        let found = self.all.find(self.scope.get(), &name.value);
        self.note_use(name, found);
        match found {
            Some(declared) => self.declared(declared, name),
            None if name.value == "overall" => Some(Value::Overall(self.scope.get())),
            None => {
                self.tell_unknown(name, "nothing is declared under this name", Meant::Anything);
                None
            }
        }
    }

    /// The value of what a name declares.
    pub(super) fn declared(&self, declared: Declared, name: &Name) -> Option<Value> {
        match declared {
            Declared::Param(i) => self.param(i, name.span),
            Declared::Let(i) => {
                let constant = self.all.lets.get(i)?;
                self.once(Key::Let(i), name.span, || {
                    let replaced = self.overrides.values.get(&constant.name.value);
                    match replaced.filter(|_| self.scope.get() == ScopeId::PLAN) {
                        Some(quantity) => Some(Value::Quantity(quantity.clone())),
                        None => self.value(&constant.value, None),
                    }
                })
            }
            Declared::Formal(i) => self.formal(i),
            Declared::Material(i) => Some(Value::Material(i)),
            Declared::Part(i) => Some(Value::Part(i)),
            Declared::Hardware(i) => Some(Value::Hardware(i)),
            Declared::Supply(_) | Declared::Subassembly(_) => {
                self.tell_word(name, "a value", &[]);
                None
            }
            Declared::Place(i) => Some(Value::Placed {
                place: i,
                index: None,
            }),
            Declared::Missing => None,
        }
    }

    /// Notes that a name is unknown, with the nearest known one, or those that would do.
    pub(super) fn tell_unknown(&self, name: &Name, what: &str, meant: Meant) {
        let message = format!("`{}`: {what}", name.value);
        let mut finding = Finding::new(&UNKNOWN_NAME, name.span, message);
        let known = self.all.names_of(self.scope.get(), meant);
        if let Some(near) = nearest_of(&name.value, known.iter().copied()) {
            finding = finding.edit(
                format!("did you mean `{near}`?"),
                name.span,
                near.to_owned(),
            );
        } else if meant != Meant::Anything && !known.is_empty() {
            let list: Vec<String> = known
                .iter()
                .take(8)
                .map(|known| format!("`{known}`"))
                .collect();
            finding = finding.remedy(format!("there are {}", list.join(", ")));
        }
        self.tell(finding);
    }

    /// A plain value: a face stands for its position.
    pub(super) fn as_quantity(&self, value: Value, span: Span) -> Option<Quantity> {
        match value {
            Value::Quantity(quantity) => Some(quantity),
            Value::Anchor(anchor) if anchor.as_plane().is_some() => anchor
                .as_plane()
                .map(|(_, position)| Quantity::from_length(position)),
            other @ (Value::Anchor(_)
            | Value::Material(_)
            | Value::Part(_)
            | Value::Hardware(_)
            | Value::Placed { .. }
            | Value::Overall(_)
            | Value::Stretch(_)) => {
                let message = format!(
                    "a number or a measure is needed here, this is {}",
                    other.kind()
                );
                let finding = Finding::new(&WRONG_KIND, span, message);
                self.tell(match other {
                    Value::Part(_) => finding.remedy("name one of its sizes: `.length`"),
                    Value::Placed { .. } => finding.remedy("name one of its faces: `.left`"),
                    Value::Material(_) => finding.remedy("name its thickness: `.thickness`"),
                    Value::Quantity(_)
                    | Value::Anchor(_)
                    | Value::Hardware(_)
                    | Value::Overall(_)
                    | Value::Stretch(_) => finding,
                });
                None
            }
        }
    }

    /// The value of an expression that must be a number or a measure.
    pub(super) fn quantity(&self, expr: &Expr, local: Local<'_>) -> Option<Quantity> {
        let value = self.value(expr, local)?;
        self.as_quantity(value, expr.span)
    }
}

/// A face plus or minus a length, or the distance of two faces of one axis.
fn shifted_plane(operator: Operator, left: &Value, right: &Value) -> Option<Value> {
    let plane = |value: &Value| match value {
        Value::Anchor(anchor) => anchor.as_plane(),
        Value::Quantity(_)
        | Value::Material(_)
        | Value::Part(_)
        | Value::Hardware(_)
        | Value::Placed { .. }
        | Value::Overall(_)
        | Value::Stretch(_) => None,
    };
    let length = |value: &Value| match value {
        Value::Quantity(quantity) => quantity.length(),
        Value::Anchor(_)
        | Value::Material(_)
        | Value::Part(_)
        | Value::Hardware(_)
        | Value::Placed { .. }
        | Value::Overall(_)
        | Value::Stretch(_) => None,
    };
    match (operator, plane(left), plane(right)) {
        (Operator::Plus, Some((axis, at)), None) => {
            Some(Value::Anchor(Anchor::plane(axis, at + length(right)?)))
        }
        (Operator::Plus, None, Some((axis, at))) => {
            Some(Value::Anchor(Anchor::plane(axis, at + length(left)?)))
        }
        (Operator::Minus, Some((axis, at)), None) => {
            Some(Value::Anchor(Anchor::plane(axis, at - length(right)?)))
        }
        (Operator::Minus, Some((first, a)), Some((second, b))) if first == second => {
            Some(Value::Quantity(Quantity::from_length(a - b)))
        }
        (Operator::Plus | Operator::Minus | Operator::Times | Operator::Over, _, _) => None,
    }
}
