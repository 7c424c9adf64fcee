//! Sizes of materials, parts and hardware, each worked out when it is first asked for.

use super::evaluate::{Evaluator, Key};
use super::findings::{LACKING, OUTSIDE_RANGE, SAID_TWICE, WRONG_KIND};
use super::names::{Declared, Meant};
use super::scopes::ScopeId;
use super::value::Value;
use crate::finding::Finding;
use crate::geometry::PartAxis;
use crate::source::Span;
use crate::syntax::tree::{
    Expr, HardwareSettingKind, MaterialSetting, Part, PartLineKind, SizeExpr,
};
use crate::units::{Length, Quantity};

/// What a line of a material says of its cross-section.
enum Section<'t> {
    /// A sheet, which has no width of its own, or a board.
    Flat {
        thickness: &'t Expr,
        width: Option<&'t Expr>,
    },
    /// A round bar, by its diameter.
    Round(&'t Expr),
}

impl<'t> Evaluator<'t> {
    /// The value of a param, in its range.
    pub(super) fn param(&self, index: usize, span: Span) -> Option<Value> {
        let param = self.all.params.get(index)?;
        self.once(Key::Param(index), span, || {
            let replaced = self.overrides.values.get(&param.name.value);
            let quantity = match replaced.filter(|_| self.scope.get() == ScopeId::PLAN) {
                Some(quantity) => quantity.clone(),
                None => self.quantity(&param.value, None)?,
            };
            if let Some((low, high)) = &param.range {
                let (low, high) = (self.quantity(low, None)?, self.quantity(high, None)?);
                let name = &param.name.value;
                self.in_range(name, &quantity, [&low, &high], param.value.span)?;
            }
            Some(Value::Quantity(quantity))
        })
    }

    /// Checks that a value lies in its range.
    pub(super) fn in_range(
        &self,
        name: &str,
        quantity: &Quantity,
        [low, high]: [&Quantity; 2],
        span: Span,
    ) -> Option<()> {
        for bound in [low, high] {
            if let Err(fault) = quantity.same_kind(bound) {
                return self.result(Err(fault), span).map(drop);
            }
        }
        if quantity.amount < low.amount || quantity.amount > high.amount {
            let message = format!(
                "`{name}` is {}, and must be from {} to {}",
                in_words(quantity),
                in_words(low),
                in_words(high)
            );
            self.tell(Finding::new(&OUTSIDE_RANGE, span, message));
            return None;
        }
        Some(())
    }

    /// The material a part is cut from, by its place among the materials.
    pub(super) fn material_of(&self, part: &'t Part) -> Option<usize> {
        match self.find(&part.material.value) {
            Some(Declared::Material(material)) => Some(material),
            Some(Declared::Missing) => None,
            None => {
                self.tell_unknown(&part.material, "there is no such material", Meant::Material);
                None
            }
            Some(_) => {
                let message = format!("`{}` is not a material", part.material.value);
                self.tell(Finding::new(&WRONG_KIND, part.material.span, message));
                None
            }
        }
    }

    /// Thickness of a sheet or board, diameter of a round bar; missing where none is stated.
    pub(super) fn material_thickness(&self, material: usize) -> Option<Length> {
        let declared = self.all.materials.get(material)?;
        if let Some(measured) = self.overrides.thicknesses.get(&declared.name.value) {
            return Some(*measured);
        }
        let (size, name) = match self.section(material)? {
            Section::Flat { thickness, .. } => (thickness, "the thickness"),
            Section::Round(diameter) => (diameter, "the diameter"),
        };
        self.inside(self.all.materials.scope(material), || {
            self.positive_length(size, None, name)
        })
    }

    /// Width of a board's section; missing for a sheet, whose parts have widths of their own.
    pub(super) fn material_width(&self, material: usize) -> Option<Length> {
        let (size, name) = match self.section(material)? {
            Section::Flat { width, .. } => (width?, "the width"),
            Section::Round(diameter) => (diameter, "the diameter"),
        };
        self.inside(self.all.materials.scope(material), || {
            self.positive_length(size, None, name)
        })
    }

    /// The first line of a material that says how thick it is.
    fn section(&self, material: usize) -> Option<Section<'t>> {
        let declared = self.all.materials.get(material)?;
        declared.settings.iter().find_map(|setting| match setting {
            MaterialSetting::Thickness(thickness) => Some(Section::Flat {
                thickness,
                width: None,
            }),
            MaterialSetting::Section(thickness, width) => Some(Section::Flat {
                thickness,
                width: Some(width),
            }),
            MaterialSetting::Diameter(diameter) => Some(Section::Round(diameter)),
            MaterialSetting::Name(_)
            | MaterialSetting::Stock { .. }
            | MaterialSetting::Offcut { .. }
            | MaterialSetting::Price(..)
            | MaterialSetting::Waste(..)
            | MaterialSetting::Allowance(..)
            | MaterialSetting::Defects(..)
            | MaterialSetting::Stages(_)
            | MaterialSetting::Kerf(_)
            | MaterialSetting::Trim(_)
            | MaterialSetting::Grain(_)
            | MaterialSetting::Density(_)
            | MaterialSetting::Species(_)
            | MaterialSetting::Sawn(_)
            | MaterialSetting::Allow(_) => None,
        })
    }

    /// A size of an item of hardware; missing where it does not state it.
    pub(super) fn hardware_size(&self, item: usize, wanted: &str) -> Option<Length> {
        let declared = self.all.hardware.get(item)?;
        declared
            .settings
            .iter()
            .find_map(|setting| match &setting.kind {
                HardwareSettingKind::Size { word, size } if word.value == wanted => {
                    let what = format!("the {wanted}");
                    self.inside(self.all.hardware.scope(item), || {
                        self.positive_length(size, None, &what)
                    })
                }
                HardwareSettingKind::Size { .. }
                | HardwareSettingKind::Pack { .. }
                | HardwareSettingKind::Gauge(_)
                | HardwareSettingKind::Use(_)
                | HardwareSettingKind::Allow(_) => None,
            })
    }

    /// The number of layers a part is glued up from.
    pub(super) fn layers(&self, part: &'t Part) -> Option<i64> {
        for line in &part.lines {
            if let PartLineKind::Layers { count, .. } = &line.kind {
                return self.count(count, None, 1, "the number of layers");
            }
        }
        Some(1)
    }

    /// A size of a part between its joints.
    pub(super) fn part_size(&self, part: usize, axis: PartAxis, span: Span) -> Option<Length> {
        let declared = self.all.parts.get(part)?;
        let replaced = self
            .overrides
            .sizes
            .get(&(declared.name.value.clone(), axis));
        if let Some(size) = replaced.filter(|_| self.all.parts.scope(part) == ScopeId::PLAN) {
            return Some(*size);
        }
        let value = self.once(Key::PartSize(part, axis.index()), span, || {
            let size = self.stated_size(declared, axis)?;
            Some(Value::Quantity(Quantity::from_length(size)))
        })?;
        if let Value::Quantity(quantity) = value {
            quantity.length()
        } else {
            None
        }
    }

    fn stated_size(&self, part: &'t Part, axis: PartAxis) -> Option<Length> {
        let mut stated = part.lines.iter().filter_map(|line| match &line.kind {
            PartLineKind::Size {
                axis: word, size, ..
            } if word.value == axis.word() => Some((size, line.span)),
            PartLineKind::Size { .. }
            | PartLineKind::Layers { .. }
            | PartLineKind::Extra(_)
            | PartLineKind::Call { .. }
            | PartLineKind::Note(_)
            | PartLineKind::Holes { .. }
            | PartLineKind::Channel { .. }
            | PartLineKind::Rabbet { .. }
            | PartLineKind::Notch { .. }
            | PartLineKind::Outline { .. }
            | PartLineKind::Edge { .. }
            | PartLineKind::Angled { .. }
            | PartLineKind::Taper { .. }
            | PartLineKind::Tenon { .. }
            | PartLineKind::Band { .. }
            | PartLineKind::Allow(_) => None,
        });
        let first = stated.next();
        if let (Some((_, first)), Some((_, second))) = (first, stated.next()) {
            let message = format!("the {} is given twice", axis.word());
            self.tell(
                Finding::new(&SAID_TWICE, second, message).related(first, "given here first"),
            );
        }
        let what = format!("the {} of `{}`", axis.word(), part.name.value);
        match first {
            Some((SizeExpr::Given(size), _)) => self.positive_length(size, None, &what),
            Some((SizeExpr::Span(from, to), span)) => {
                let size = self.spanned(from, to)?;
                self.checked_positive(size, span, &what)
            }
            None => self.size_from_material(part, axis),
        }
    }

    /// The distance between two faces, both of one axis.
    fn spanned(&self, from: &Expr, to: &Expr) -> Option<Length> {
        let (from_value, to_value) = (self.value(from, None), self.value(to, None));
        let ends = match (from_value?, to_value?) {
            (Value::Anchor(a), Value::Anchor(b)) => match (a.as_plane(), b.as_plane()) {
                (Some((first, low)), Some((second, high))) if first == second => Some((low, high)),
                (Some(_) | None, _) => None,
            },
            (a, b) => {
                let low = self.as_quantity(a, from.span)?.length();
                let high = self.as_quantity(b, to.span)?.length();
                low.zip(high)
            }
        };
        if ends.is_none() {
            let message = "a size spans between two faces that look along one axis";
            self.tell(
                Finding::new(&WRONG_KIND, from.span.to(to.span), message)
                    .remedy("write `from left.right to right.left`"),
            );
        }
        ends.map(|(low, high)| high - low)
    }

    fn size_from_material(&self, part: &'t Part, axis: PartAxis) -> Option<Length> {
        let material = self.material_of(part)?;
        match axis {
            PartAxis::Thickness if !self.is_lumber(material) => {
                let layers = self.layers(part)?;
                Some(self.material_thickness(material)? * layers)
            }
            PartAxis::Width if self.states_section(material) => self.material_width(material),
            PartAxis::Length | PartAxis::Width | PartAxis::Thickness => {
                let message = format!("`{}` has no {}", part.name.value, axis.word());
                self.tell(
                    Finding::new(&LACKING, part.name.span, message)
                        .remedy(format!("add a line `{} …`", axis.word())),
                );
                None
            }
        }
    }

    fn is_lumber(&self, material: usize) -> bool {
        let declared = self.all.materials.get(material);
        declared.is_some_and(|material| material.kind.value == "lumber")
    }

    fn states_section(&self, material: usize) -> bool {
        self.all.materials.get(material).is_some_and(|material| {
            material.settings.iter().any(|setting| {
                matches!(
                    setting,
                    MaterialSetting::Section(..) | MaterialSetting::Diameter(_)
                )
            })
        })
    }
}

/// A quantity in words, for findings.
pub(super) fn in_words(quantity: &Quantity) -> String {
    use crate::units::Dimension;
    match quantity.dimension {
        Dimension::COUNT => {
            let number = &quantity.amount;
            if number.is_integer() {
                number.to_integer().to_string()
            } else {
                format!("{}/{}", number.numer(), number.denom())
            }
        }
        Dimension::LENGTH => quantity.length().map_or_else(String::new, Length::in_both),
        Dimension::MONEY => quantity
            .money()
            .map_or_else(String::new, |money| money.printed()),
        Dimension::MASS => quantity.mass().map_or_else(String::new, |mass| {
            format!("{:.1} kg ({:.1} lb)", mass.kg(), mass.pounds())
        }),
        Dimension::TIME => quantity.seconds().map_or_else(String::new, |seconds| {
            format!("{} min", (seconds + 30) / 60)
        }),
        Dimension::ANGLE => {
            let degrees = quantity.amount / crate::units::Number::from_integer(1_000_000);
            if degrees.is_integer() {
                format!("{}\u{b0}", degrees.to_integer())
            } else {
                let tenths = crate::units::rounding::round_ratio(
                    &(degrees * crate::units::Number::from_integer(10)),
                );
                format!("{}.{}\u{b0}", tenths / 10, (tenths % 10).abs())
            }
        }
        other => other.name().to_owned(),
    }
}
