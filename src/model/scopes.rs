//! Scopes: the plan, and every sub-assembly that is placed. Each has its own names and its own
//! frame of the world; what is placed in one is seen from outside where its placement puts it.

use std::collections::BTreeMap;

use super::evaluate::{Evaluator, Key, Local};
use super::findings::{LACKING, NOT_POSITIVE, SAID_TWICE, SELF_HOLDING, UNKNOWN_NAME, WRONG_KIND};
use super::names::{Declared, nearest_of};
use super::value::Value;
use crate::finding::Finding;
use crate::geometry::{Axis, Direction, Handedness, Interval, Orientation};
use crate::source::Span;
use crate::syntax::tree::{Formal, Given, Place, Subassembly};
use crate::units::{Dimension, Length, Quantity};

/// The most sub-assemblies a plan may hold.
const MOST_SCOPES: usize = 10_000;

/// A scope: 0 is the plan itself.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct ScopeId(pub(super) usize);

impl ScopeId {
    /// What stands outside of every sub-assembly.
    pub(super) const PLAN: Self = Self(0);
}

/// The names of a scope, and what it is.
#[derive(Debug, Default)]
pub(super) struct Scope<'t> {
    pub(super) names: BTreeMap<&'t str, (Declared, Span)>,
    /// Names taken from libraries; nobody else sees them.
    pub(super) imported: BTreeMap<&'t str, (Declared, Span)>,
    /// What is declared here is made only where it is used.
    pub(super) is_library: bool,
    /// The scope of the file that its sub-assembly is described in.
    pub(super) file: Option<ScopeId>,
    /// Which placement it is of; none for the plan.
    pub(super) holder: Option<Holder<'t>>,
}

/// The placement of a sub-assembly.
#[derive(Clone, Copy, Debug)]
pub(super) struct Holder<'t> {
    /// Its place among the placements, and which of a repeated one.
    pub(super) place: usize,
    pub(super) index: i64,
    /// The scope it is placed in.
    pub(super) outer: ScopeId,
    /// What is placed.
    pub(super) subassembly: usize,
    /// Its statement.
    pub(super) placed: &'t Place,
}

impl<'t> Evaluator<'t> {
    /// Works something out with the names of a scope.
    pub(super) fn inside<T>(&self, scope: ScopeId, work: impl FnOnce() -> T) -> T {
        let before = self.scope.replace(scope);
        let result = work();
        self.scope.set(before);
        result
    }

    /// What a name declares, as seen from the statement being worked out.
    pub(super) fn find(&self, name: &str) -> Option<Declared> {
        let found = self.all.find(self.scope.get(), name)?;
        if let Declared::Formal(index) = found
            && let Some(formal) = self.all.formals.get(index)
        {
            self.note_asked_for(formal.name.span);
        }
        Some(self.meaning(found))
    }

    /// What stands behind a parameter that is given a material or an item of hardware.
    pub(super) fn meaning(&self, declared: Declared) -> Declared {
        let Declared::Formal(index) = declared else {
            return declared;
        };
        let of_thing =
            self.all.formals.get(index).is_some_and(|formal| {
                matches!(formal.kind.value.as_str(), "material" | "hardware")
            });
        if !of_thing {
            return declared;
        }
        match self.formal(index) {
            Some(Value::Material(material)) => Declared::Material(material),
            Some(Value::Hardware(item)) => Declared::Hardware(item),
            _ => Declared::Missing,
        }
    }

    /// The sub-assembly a placement places; none where it places a part.
    pub(super) fn subassembly_of(&self, place: usize) -> Option<usize> {
        let name = &self.all.places.get(place)?.part.value;
        match self.all.find(self.all.places.scope(place), name) {
            Some(Declared::Subassembly(subassembly)) => Some(subassembly),
            _ => None,
        }
    }

    /// The holder of a scope; none for the plan.
    pub(super) fn holder(&self, scope: ScopeId) -> Option<Holder<'t>> {
        self.all.scopes.borrow().get(scope.0)?.holder
    }

    /// The scope of one placed sub-assembly, opened when it is first asked for.
    pub(super) fn opened(&self, place: usize, index: i64) -> Option<ScopeId> {
        let known = self.scopes_of.borrow().get(&(place, index)).copied();
        if let Some(known) = known {
            return known;
        }
        let scope = self.open(place, index);
        self.scopes_of.borrow_mut().insert((place, index), scope);
        scope
    }

    fn open(&self, place: usize, index: i64) -> Option<ScopeId> {
        let subassembly = self.subassembly_of(place)?;
        let placed = self.all.places.get(place)?;
        let described = self.all.subassemblies.get(subassembly)?;
        let outer = self.all.places.scope(place);
        // One that is placed in itself would never end.
        let mut around = Some(outer);
        while let Some(holder) = around.and_then(|scope| self.holder(scope)) {
            let same = self.all.subassemblies.get(holder.subassembly);
            if same.is_some_and(|same| same.span == described.span) {
                let message = format!("`{}` is placed in itself", described.name.value);
                self.tell(
                    Finding::new(&SELF_HOLDING, placed.part.span, message)
                        .related(described.name.span, "described here")
                        .remedy("place it outside, or place another one inside"),
                );
                return None;
            }
            around = Some(holder.outer);
        }
        if self.all.scopes.borrow().len() > MOST_SCOPES {
            let message = format!("more than {MOST_SCOPES} sub-assemblies are placed");
            self.tell(Finding::new(&NOT_POSITIVE, placed.part.span, message));
            return None;
        }
        let scope = self.all.open(Scope {
            file: Some(self.all.subassemblies.scope(subassembly)),
            holder: Some(Holder {
                place,
                index,
                outer,
                subassembly,
                placed,
            }),
            ..Scope::default()
        });
        for formal in &described.formals {
            if let Some(finding) = self.all.declare_formal(scope, formal) {
                self.tell(finding);
            }
        }
        for finding in self.all.declare_all(scope, &described.statements) {
            self.tell(finding);
        }
        self.check_given(placed, described);
        Some(scope)
    }

    /// Checks that what a sub-assembly is given are parameters of it, each once.
    fn check_given(&self, placed: &'t Place, described: &'t Subassembly) {
        let mut seen: BTreeMap<&str, Span> = BTreeMap::new();
        for given in &placed.given {
            let name = given.name.value.as_str();
            if let Some(first) = seen.insert(name, given.name.span) {
                let message = format!("`{name}` is given twice");
                self.tell(
                    Finding::new(&SAID_TWICE, given.name.span, message)
                        .related(first, "given here first"),
                );
            }
            let formals = || described.formals.iter().map(|it| it.name.value.as_str());
            if formals().any(|formal| formal == name) {
                continue;
            }
            let message = format!("`{}` takes no `{name}`", described.name.value);
            let mut finding = Finding::new(&UNKNOWN_NAME, given.name.span, message);
            if let Some(near) = nearest_of(name, formals()) {
                let span = given.name.span;
                finding = finding.edit(format!("did you mean `{near}`?"), span, near.to_owned());
            } else if !described.formals.is_empty() {
                let list: Vec<String> = formals().map(|name| format!("`{name}`")).collect();
                finding = finding.remedy(format!("it takes {}", list.join(", ")));
            }
            self.tell(finding.related(described.name.span, "described here"));
        }
    }

    /// The value of a sub-assembly's parameter: as given where it is placed, or its own.
    pub(super) fn formal(&self, index: usize) -> Option<Value> {
        let formal = self.all.formals.get(index)?;
        let holder = self.holder(self.all.formals.scope(index))?;
        self.once(Key::Formal(index), formal.name.span, || {
            let given = holder
                .placed
                .given
                .iter()
                .find(|given| given.name.value == formal.name.value);
            let value = match (given, &formal.preset) {
                (Some(given), _) => {
                    let local = Self::local_of(holder.placed, holder.index);
                    self.inside(holder.outer, || self.given(formal, given, local))?
                }
                (None, Some(preset)) => {
                    let value = self.value(preset, None)?;
                    self.of_formal_kind(formal, value, preset.span)?
                }
                (None, None) => {
                    let placed = holder.placed;
                    let message = format!(
                        "`{}` is not given its `{}`",
                        placed.name.value, formal.name.value
                    );
                    let remedy = format!("write `({} = …)` after its name", formal.name.value);
                    self.tell(
                        Finding::new(&LACKING, placed.part.span, message)
                            .related(formal.span, "it is asked for here")
                            .remedy(remedy),
                    );
                    return None;
                }
            };
            let written = given.map_or(formal.name.span, |given| given.value.span);
            self.in_formal_range(formal, &value, written)?;
            Some(value)
        })
    }

    fn given(&self, formal: &Formal, given: &Given, local: Local<'_>) -> Option<Value> {
        let value = self.value(&given.value, local)?;
        self.of_formal_kind(formal, value, given.value.span)
    }

    /// The value, if it is of the kind that a parameter is of.
    fn of_formal_kind(&self, formal: &Formal, value: Value, span: Span) -> Option<Value> {
        let kind = formal.kind.value.as_str();
        let dimension = match kind {
            "length" => Dimension::LENGTH,
            "angle" => Dimension::ANGLE,
            "mass" => Dimension::MASS,
            "count" => Dimension::COUNT,
            _ => {
                let fits = matches!(
                    (kind, &value),
                    ("material", Value::Material(_)) | ("hardware", Value::Hardware(_))
                );
                if !fits {
                    let what = if kind == "material" {
                        "a material"
                    } else {
                        "an item of hardware"
                    };
                    let message = format!("{what} is needed here, this is {}", value.kind());
                    self.tell(
                        Finding::new(&WRONG_KIND, span, message)
                            .related(formal.span, "the parameter is declared here"),
                    );
                }
                return fits.then_some(value);
            }
        };
        let quantity = self.as_quantity(value, span)?;
        self.checked_kind(quantity, span, dimension)
            .map(Value::Quantity)
    }

    fn in_formal_range(&self, formal: &Formal, value: &Value, span: Span) -> Option<()> {
        let (Some((low, high)), Value::Quantity(quantity)) = (&formal.range, value) else {
            return Some(());
        };
        let (low, high) = (self.quantity(low, None)?, self.quantity(high, None)?);
        self.in_range(&formal.name.value, quantity, [&low, &high], span)
    }

    /// How a placed sub-assembly stands: its own world in the one around it.
    pub(super) fn stance(&self, place: usize) -> Option<Orientation> {
        let placed = self.all.places.get(place)?;
        self.assembly_orientation(placed)
    }

    /// A direction of a scope's frame in the frame of the plan.
    pub(super) fn in_plan(&self, scope: ScopeId, direction: Direction) -> Option<Direction> {
        let mut direction = direction;
        let mut scope = scope;
        while let Some(holder) = self.holder(scope) {
            direction = turned(self.stance(holder.place)?, direction);
            scope = holder.outer;
        }
        Some(direction)
    }

    /// Where piece `index` of a placement is on an axis of the frame of `scope`, which is its own
    /// or one around it.
    pub(super) fn seen_from(
        &self,
        scope: ScopeId,
        place: usize,
        index: i64,
        axis: Axis,
        span: Span,
    ) -> Option<Interval> {
        let own = self.all.places.scope(place);
        if own == scope {
            return self.stretch(place, index, axis, span);
        }
        // The sub-assembly right in `scope` that it is in.
        let mut within = own;
        let holder = loop {
            let holder = self.holder(within)?;
            if holder.outer == scope {
                break holder;
            }
            within = holder.outer;
        };
        let stance = self.stance(holder.place)?;
        let inner_axis = axis_behind(stance, axis);
        let inside = self.seen_from(within, place, index, inner_axis, span)?;
        let whole = self.whole_of(within, inner_axis, span)?;
        let there = self.stretch(holder.place, holder.index, axis, span)?;
        Some(if turned(stance, inner_axis.high()).is_positive() {
            Interval {
                low: there.low + (inside.low - whole.low),
                high: there.low + (inside.high - whole.low),
            }
        } else {
            Interval {
                low: there.low + (whole.high - inside.high),
                high: there.low + (whole.high - inside.low),
            }
        })
    }

    /// The stretch that everything placed in a scope takes up on an axis of its frame.
    pub(super) fn whole_of(&self, scope: ScopeId, axis: Axis, span: Span) -> Option<Interval> {
        let value = self.once(Key::Whole(scope, axis.index()), span, || {
            let mut whole: Option<Interval> = None;
            let places = self.all.places.rows();
            let own = places
                .iter()
                .enumerate()
                .filter(|(_, (_, of))| *of == scope);
            for (place, _) in own {
                let (first, last) = self.repeats(place)?;
                for index in first..=last {
                    let stretch = self.stretch(place, index, axis, span)?;
                    whole = Some(whole.map_or(stretch, |so_far| so_far.hull(stretch)));
                }
            }
            if whole.is_none()
                && let Some(holder) = self.holder(scope)
            {
                let message = format!("`{}` has no parts placed in it", holder.placed.part.value);
                self.tell(
                    Finding::new(&LACKING, holder.placed.part.span, message)
                        .remedy("place its parts inside of its block"),
                );
                return None;
            }
            Some(Value::Stretch(whole.unwrap_or(Interval {
                low: Length::ZERO,
                high: Length::ZERO,
            })))
        })?;
        if let Value::Stretch(stretch) = value {
            Some(stretch)
        } else {
            None
        }
    }

    /// The size of everything in a scope along an axis of its frame.
    pub(super) fn whole_size(&self, scope: ScopeId, axis: Axis, span: Span) -> Option<Value> {
        let whole = self.whole_of(scope, axis, span)?;
        Some(Value::Quantity(Quantity::from_length(whole.size())))
    }

    /// Opens everything that is placed, so that all statements are there.
    pub(super) fn open_all(&self) {
        let mut place = 0;
        while place < self.all.places.len() {
            if self.subassembly_of(place).is_some()
                && let Some((first, last)) = self.repeats(place)
            {
                for index in first..=last {
                    self.opened(place, index);
                }
            }
            place += 1;
        }
    }
}

/// Where a direction of a sub-assembly's own frame points around it.
pub(super) fn turned(stance: Orientation, direction: Direction) -> Direction {
    let towards = match direction.axis() {
        Axis::Across => stance.length,
        Axis::Deep => stance.width,
        Axis::High => stance.thickness,
    };
    if direction.is_positive() {
        towards
    } else {
        towards.opposite()
    }
}

/// The axis of a sub-assembly's own frame that lies along an axis around it.
pub(super) fn axis_behind(stance: Orientation, axis: Axis) -> Axis {
    Axis::ALL
        .into_iter()
        .find(|own| turned(stance, own.high()).axis() == axis)
        .unwrap_or(axis)
}

/// The hand of a piece that is of one hand in a sub-assembly of another.
pub(super) fn hand_in(outer: Handedness, inner: Handedness) -> Handedness {
    if outer == inner {
        Handedness::AsDrawn
    } else {
        Handedness::Mirrored
    }
}
