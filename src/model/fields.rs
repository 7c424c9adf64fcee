//! What can be asked of a thing: faces of placed parts, sizes of parts, thicknesses, functions.

use super::evaluate::{Evaluator, Local};
use super::findings::{NOT_POSITIVE, UNKNOWN_FIELD, UNKNOWN_FUNCTION, WRONG_KIND};
use super::names::nearest_of;
use super::scopes::ScopeId;
use super::value::{Anchor, Value};
use crate::finding::Finding;
use crate::geometry::{Axis, Direction, PartAxis};
use crate::source::Span;
use crate::syntax::tree::{Expr, Name};
use crate::units::{Dimension, Length, Number, Quantity};

const FUNCTIONS: [&str; 8] = [
    "min", "max", "abs", "sqrt", "floor", "ceil", "gap", "diagonal",
];

impl Evaluator<'_> {
    /// `of.field`
    pub(super) fn field(&self, of: &Expr, field: &Name, local: Local<'_>) -> Option<Value> {
        let value = self.value(of, local)?;
        let found = match &value {
            Value::Placed { place, index } => self.placed_field(*place, *index, field, of.span)?,
            Value::Part(part) => self.size_field(*part, field),
            Value::Material(material) => match field.value.as_str() {
                "thickness" => self.length_value(self.material_thickness(*material)),
                "width" => self.length_value(self.material_width(*material)),
                _ => Found::No,
            },
            Value::Hardware(item) => self
                .length_value(self.hardware_size(*item, &field.value))
                .or_unknown(),
            Value::Anchor(anchor) => self.narrowed(*anchor, of, field, local)?,
            Value::Overall(scope) => self.overall_field(*scope, field),
            Value::Quantity(_) | Value::Stretch(_) => Found::No,
        };
        match found {
            Found::Yes(value) => Some(value),
            Found::Missing => None,
            Found::No => {
                self.tell_no_field(&value, field);
                None
            }
        }
    }

    fn tell_no_field(&self, value: &Value, field: &Name) {
        let known: &[&str] = match value {
            Value::Placed { .. } => &[
                "left",
                "right",
                "front",
                "back",
                "bottom",
                "top",
                "length",
                "width",
                "thickness",
                "count",
            ],
            Value::Part(_) => &["length", "width", "thickness"],
            Value::Material(_) => &["thickness", "width"],
            Value::Hardware(_) => &[
                "diameter",
                "length",
                "width",
                "thickness",
                "head",
                "pilot",
                "clearance",
            ],
            Value::Anchor(_) => &["left", "right", "front", "back", "bottom", "top"],
            Value::Overall(_) => &["width", "depth", "height"],
            Value::Quantity(_) | Value::Stretch(_) => &[],
        };
        let message = format!("{} has no `{}`", value.kind(), field.value);
        let mut finding = Finding::new(&UNKNOWN_FIELD, field.span, message);
        if let Some(near) = nearest_of(&field.value, known.iter().copied()) {
            finding = finding.edit(
                format!("did you mean `{near}`?"),
                field.span,
                near.to_owned(),
            );
        } else if !known.is_empty() {
            finding = finding.remedy(format!("it has {}", known.join(", ")));
        }
        self.tell(finding);
    }

    fn placed_field(
        &self,
        place: usize,
        index: Option<i64>,
        field: &Name,
        of: Span,
    ) -> Option<Found> {
        let declared = self.all.places.get(place)?;
        let one = || match (index, &declared.repeat) {
            (Some(index), _) => Some(index),
            (None, None) => Some(1),
            (None, Some(repeat)) => {
                let name = &declared.name.value;
                let message = format!("`{name}` stands for several parts; which one is meant?");
                let remedy = format!("write `{name}[{}]`", repeat.index.value);
                self.tell(Finding::new(&WRONG_KIND, of, message).remedy(remedy));
                None
            }
        };
        if field.value == "count" {
            let (first, last) = self.repeats(place)?;
            return Some(Found::Yes(Value::Quantity(Quantity::whole(
                last - first + 1,
            ))));
        }
        if let Some(direction) = world_face(&field.value) {
            if self.is_unknown(place) {
                return None;
            }
            let scope = self.scope.get();
            let stretch = self.seen_from(scope, place, one()?, direction.axis(), field.span)?;
            let position = if direction.is_positive() {
                stretch.high
            } else {
                stretch.low
            };
            return Some(Found::Yes(Value::Anchor(Anchor::plane(
                direction.axis(),
                position,
            ))));
        }
        if self.is_unknown(place) {
            return None;
        }
        if self.subassembly_of(place).is_some() {
            let scope = self.opened(place, one()?)?;
            return Some(self.field_inside(scope, field));
        }
        let part = self.part_of_place(place)?;
        Some(self.size_field(part, field))
    }

    /// What a sub-assembly is asked for by a name that is declared in it, or its own size.
    fn field_inside(&self, scope: ScopeId, field: &Name) -> Found {
        match self.all.own(scope, &field.value) {
            Some(declared) => self
                .declared(self.meaning(declared), field)
                .map_or(Found::Missing, Found::Yes),
            None => self.overall_field(scope, field),
        }
    }

    /// The width, depth or height of everything in a scope, in its own frame.
    fn overall_field(&self, scope: ScopeId, field: &Name) -> Found {
        let axis = match field.value.as_str() {
            "width" => Axis::Across,
            "depth" => Axis::Deep,
            "height" => Axis::High,
            _ => return Found::No,
        };
        self.whole_size(scope, axis, field.span)
            .map_or(Found::Missing, Found::Yes)
    }

    fn size_field(&self, part: usize, field: &Name) -> Found {
        let axis = PartAxis::ALL
            .into_iter()
            .find(|axis| axis.word() == field.value);
        axis.map_or(Found::No, |axis| {
            self.length_value(self.part_size(part, axis, field.span))
        })
    }

    /// `left.front.bottom`: an anchor fixed on one axis more.
    fn narrowed(&self, anchor: Anchor, of: &Expr, field: &Name, local: Local<'_>) -> Option<Found> {
        let Some(direction) = world_face(&field.value) else {
            return Some(Found::No);
        };
        if anchor.fixed().any(|(axis, _)| axis == direction.axis()) {
            return Some(Found::No);
        }
        let placed = self.placed_below(of, local)?;
        let scope = self.scope.get();
        let stretch = self.seen_from(scope, placed.0, placed.1, direction.axis(), field.span)?;
        let position = if direction.is_positive() {
            stretch.high
        } else {
            stretch.low
        };
        let mut narrowed = anchor;
        narrowed.set(direction.axis(), position);
        Some(Found::Yes(Value::Anchor(narrowed)))
    }

    /// The placed piece whose faces a chain of fields names.
    fn placed_below(&self, expr: &Expr, local: Local<'_>) -> Option<(usize, i64)> {
        use crate::syntax::tree::ExprKind;
        let mut expr = expr;
        while let ExprKind::Field { of, .. } = &expr.kind {
            expr = of;
        }
        match self.value(expr, local)? {
            Value::Placed { place, index } => Some((place, index.unwrap_or(1))),
            Value::Quantity(_)
            | Value::Anchor(_)
            | Value::Material(_)
            | Value::Part(_)
            | Value::Hardware(_)
            | Value::Overall(_)
            | Value::Stretch(_) => None,
        }
    }

    fn length_value(&self, length: Option<Length>) -> Found {
        length.map_or(Found::Missing, |length| {
            Found::Yes(Value::Quantity(Quantity::from_length(length)))
        })
    }

    /// `of[index]`
    pub(super) fn indexed(&self, of: &Expr, index: &Expr, local: Local<'_>) -> Option<Value> {
        let value = self.value(of, local)?;
        let Value::Placed { place, index: None } = value else {
            let message = format!("{} has no numbered pieces", value.kind());
            self.tell(Finding::new(&WRONG_KIND, of.span, message));
            return None;
        };
        let number = self.whole(index, local)?;
        self.checked_index(place, number, index.span)?;
        Some(Value::Placed {
            place,
            index: Some(number),
        })
    }

    /// The index, if the placement has such a piece.
    pub(super) fn checked_index(&self, place: usize, index: i64, span: Span) -> Option<i64> {
        let (first, last) = self.repeats(place)?;
        if (first..=last).contains(&index) {
            return Some(index);
        }
        let name = self
            .all
            .places
            .get(place)
            .map_or("", |place| &place.name.value);
        let message = format!("there is no `{name}[{index}]`: they run from {first} to {last}");
        self.tell(Finding::new(&NOT_POSITIVE, span, message));
        None
    }

    /// `function(a, b)`
    pub(super) fn call(
        &self,
        function: &Name,
        arguments: &[Expr],
        local: Local<'_>,
    ) -> Option<Value> {
        let name = function.value.as_str();
        if !FUNCTIONS.contains(&name) {
            let message = format!("there is no function `{name}`");
            let mut finding = Finding::new(&UNKNOWN_FUNCTION, function.span, message);
            if let Some(near) = nearest_of(name, FUNCTIONS.into_iter()) {
                finding = finding.edit(
                    format!("did you mean `{near}`?"),
                    function.span,
                    near.to_owned(),
                );
            } else {
                finding = finding.remedy(format!("there are {}", FUNCTIONS.join(", ")));
            }
            self.tell(finding);
            return None;
        }
        let (least, most) = match name {
            "min" | "max" => (1, 50),
            "gap" | "diagonal" => (2, 2),
            _ => (1, 1),
        };
        if arguments.len() < least || arguments.len() > most {
            let message = format!(
                "`{name}` takes {least} to {most} values, not {}",
                arguments.len()
            );
            self.tell(Finding::new(&UNKNOWN_FUNCTION, function.span, message));
            return None;
        }
        match name {
            "gap" | "diagonal" => self.between_anchors(name, arguments, local),
            _ => self.of_numbers(name, function.span, arguments, local),
        }
    }

    fn of_numbers(
        &self,
        name: &str,
        span: Span,
        arguments: &[Expr],
        local: Local<'_>,
    ) -> Option<Value> {
        let quantities: Vec<Option<Quantity>> = arguments
            .iter()
            .map(|argument| self.quantity(argument, local))
            .collect();
        let mut quantities = quantities
            .into_iter()
            .collect::<Option<Vec<_>>>()?
            .into_iter();
        let mut result = quantities.next()?;
        match name {
            "min" | "max" => {
                for other in quantities {
                    if let Err(fault) = result.same_kind(&other) {
                        return self.result(Err(fault), span);
                    }
                    if (other.amount < result.amount) == (name == "min") {
                        result = other;
                    }
                }
            }
            "abs" => {
                if crate::units::rounding::is_negative(&result.amount) {
                    return self.result(result.negated(), span);
                }
            }
            "sqrt" => return self.result(result.square_root(), span),
            _ => {
                if result.dimension != Dimension::COUNT {
                    let message = format!(
                        "`{name}` rounds plain numbers, this is {}",
                        result.dimension.name()
                    );
                    self.tell(
                        Finding::new(&WRONG_KIND, span, message)
                            .remedy("divide by a length first: `floor(width / 96 mm)`"),
                    );
                    return None;
                }
                let rounded: Number = if name == "floor" {
                    result.amount.floor()
                } else {
                    result.amount.ceil()
                };
                result.amount = rounded;
            }
        }
        Some(Value::Quantity(result))
    }

    /// The distance between two faces, or between two edges or corners.
    fn between_anchors(&self, name: &str, arguments: &[Expr], local: Local<'_>) -> Option<Value> {
        let anchors: Vec<Option<Anchor>> = arguments
            .iter()
            .map(|argument| self.anchor(argument, local))
            .collect();
        let [Some(a), Some(b)] = *anchors.as_slice() else {
            return None;
        };
        let span = arguments.first()?.span.to(arguments.last()?.span);
        let distances: Vec<Length> =
            a.at.iter()
                .zip(b.at)
                .filter_map(|(first, second)| Some(((*first)?, second?)))
                .map(|(first, second)| second - first)
                .collect();
        if distances.is_empty() || (name == "gap" && distances.len() != 1) {
            let message = if name == "gap" {
                "a gap is between two faces that look along one axis"
            } else {
                "a diagonal is between two edges or corners that share an axis"
            };
            self.tell(Finding::new(&WRONG_KIND, span, message));
            return None;
        }
        if let [only] = *distances.as_slice() {
            return Some(Value::Quantity(Quantity::from_length(only)));
        }
        let mut sum = Quantity {
            dimension: Dimension::AREA,
            ..Quantity::whole(0)
        };
        for distance in distances {
            let side = Quantity::from_length(distance);
            sum = side
                .times(&side)
                .and_then(|square| sum.plus(&square))
                .ok()?;
        }
        self.result(sum.square_root(), span)
    }

    pub(super) fn anchor(&self, expr: &Expr, local: Local<'_>) -> Option<Anchor> {
        let value = self.value(expr, local)?;
        if let Value::Anchor(anchor) = value {
            return Some(anchor);
        }
        let message = format!(
            "a face, an edge or a corner is needed here, this is {}",
            value.kind()
        );
        self.tell(
            Finding::new(&WRONG_KIND, expr.span, message)
                .remedy("name one: `left.front`, `left.front.bottom`"),
        );
        None
    }
}

/// Whether a thing has a property, and whether its value is known.
pub(super) enum Found {
    /// It has, and this is it.
    Yes(Value),
    /// It has, and the value is missing, which was said elsewhere.
    Missing,
    /// It has none.
    No,
}

impl Found {
    fn or_unknown(self) -> Self {
        match self {
            Self::Missing => Self::No,
            known @ (Self::Yes(_) | Self::No) => known,
        }
    }
}

/// The face of a word that names one; `up`, `above` and the like are directions, not faces.
fn world_face(word: &str) -> Option<Direction> {
    Direction::ALL
        .into_iter()
        .find(|direction| direction.word() == word)
}
