//! Parts with their values worked out: sizes, grain, layers and the author's features.

use super::evaluate::Evaluator;
use super::findings::{SAID_TWICE, WORD_OUT_OF_PLACE};
use super::material::MaterialId;
use super::part::PartDesign;
use crate::finding::Finding;
use crate::geometry::{PartAxis, Side};
use crate::source::Span;
use crate::syntax::tree::{Name, Offset, Part, PartLineKind};
use crate::units::Length;

/// A part being worked out: its statement, its sizes, and the words it has for its sides.
pub(super) struct PartFrame<'t> {
    pub(super) part: &'t Part,
    pub(super) size: [Length; 3],
}

impl PartFrame<'_> {
    /// The size along an axis.
    pub(super) fn along(&self, axis: PartAxis) -> Length {
        self.size.get(axis.index()).copied().unwrap_or_default()
    }
}

impl<'t> Evaluator<'t> {
    /// A part, by its place among the parts; `material` is what it is cut from.
    pub(super) fn part_design(&self, index: usize, material: MaterialId) -> Option<PartDesign> {
        let part = self.all.parts.get(index)?;
        let sizes = PartAxis::ALL.map(|axis| self.part_size(index, axis, part.name.span));
        let [Some(length), Some(width), Some(thickness)] = sizes else {
            return None;
        };
        let frame = PartFrame {
            part,
            size: [length, width, thickness],
        };
        let mut design = PartDesign {
            name: part.name.value.clone(),
            title: part.title.as_ref().unwrap_or(&part.name).value.clone(),
            material,
            size: frame.size,
            grain_along_length: true,
            layers: self.layers(part)?,
            oversize: Length::ZERO,
            extra: 0,
            note: None,
            features: Vec::new(),
            bands: Vec::new(),
            span: part.name.span,
        };
        self.check_part_words(part);
        let mut grain: Option<Span> = None;
        for line in &part.lines {
            match &line.kind {
                PartLineKind::Size {
                    axis,
                    grain: Some(span),
                    ..
                } => {
                    if let Some(first) = grain.replace(*span) {
                        self.tell_twice("the grain", first, *span);
                    }
                    if axis.value == "thickness" {
                        let message = "grain runs along the length or the width of a part";
                        self.tell(Finding::new(&WORD_OUT_OF_PLACE, *span, message));
                    }
                    design.grain_along_length = axis.value != "width";
                }
                PartLineKind::Layers {
                    oversize: Some(oversize),
                    ..
                } => {
                    design.oversize = self
                        .length_from_zero(oversize, None, "the oversize")
                        .unwrap_or_default();
                }
                PartLineKind::Extra(count) => {
                    design.extra = self.count(count, None, 1, "the number of extra pieces")?;
                }
                PartLineKind::Note(text) => design.note = Some(text.value.clone()),
                PartLineKind::Size { .. }
                | PartLineKind::Layers { .. }
                | PartLineKind::Call { .. }
                | PartLineKind::Band { .. }
                | PartLineKind::Allow(_) => {}
                PartLineKind::Holes { .. }
                | PartLineKind::Channel { .. }
                | PartLineKind::Rabbet { .. }
                | PartLineKind::Notch { .. }
                | PartLineKind::Outline { .. }
                | PartLineKind::Edge { .. }
                | PartLineKind::Angled { .. }
                | PartLineKind::Taper { .. }
                | PartLineKind::Tenon { .. } => {
                    design.features.extend(self.feature(&frame, line));
                }
            }
        }
        Some(design)
    }

    /// Checks the words a part gives to its own sides.
    fn check_part_words(&self, part: &Part) {
        let mut words: Vec<(&Name, &Name)> = Vec::new();
        for line in &part.lines {
            let PartLineKind::Call { side, word } = &line.kind else {
                continue;
            };
            if Side::from_word(&side.value).is_none() {
                self.tell_word(side, "a side of a part", &Side::ALL.map(Side::word));
            }
            if Side::from_word(&word.value).is_some() {
                let message = format!("`{}` is the name of another side already", word.value);
                self.tell(Finding::new(&SAID_TWICE, word.span, message));
            }
            if let Some((first, _)) = words.iter().find(|(known, _)| known.value == word.value) {
                self.tell_twice(&format!("`{}`", word.value), first.span, word.span);
            }
            words.push((word, side));
        }
    }

    /// The side of a part that a word names, the part's own words included.
    pub(super) fn side(&self, frame: &PartFrame<'_>, word: &Name) -> Option<Side> {
        self.side_of(frame.part, word)
    }

    /// The same for a part whose sizes do not matter.
    pub(super) fn side_of(&self, part: &Part, word: &Name) -> Option<Side> {
        let side = self.known_side(part, word);
        if side.is_none() {
            self.tell_word(word, "a side of this part", &Side::ALL.map(Side::word));
        }
        side
    }

    /// The side of an author's word, own words included; none for a word that is none.
    #[expect(clippy::unused_self, reason = "beside `side_of`, which tells")]
    pub(super) fn known_side(&self, part: &Part, word: &Name) -> Option<Side> {
        let own = part.lines.iter().find_map(|line| match &line.kind {
            PartLineKind::Call { side, word: known } if known.value == word.value => {
                Side::from_word(&side.value)
            }
            PartLineKind::Call { .. }
            | PartLineKind::Size { .. }
            | PartLineKind::Layers { .. }
            | PartLineKind::Extra(_)
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
        own.or_else(|| Side::from_word(&word.value))
    }

    /// The words of the author's own for sides of a part.
    pub(super) fn own_words(part: &Part) -> impl Iterator<Item = &str> {
        part.lines.iter().filter_map(|line| {
            if let PartLineKind::Call { word, .. } = &line.kind {
                Some(word.value.as_str())
            } else {
                None
            }
        })
    }

    /// A distance from a side, as a coordinate on that side's axis.
    pub(super) fn coordinate(
        &self,
        frame: &PartFrame<'_>,
        offset: &Offset,
    ) -> Option<(Side, Length)> {
        let side = self.side(frame, &offset.from);
        let distance = self.length_from_zero(&offset.distance, None, "the distance");
        let (side, distance) = (side?, distance?);
        let whole = frame.along(side.axis());
        Some((
            side,
            if side.is_high() {
                whole - distance
            } else {
                distance
            },
        ))
    }

    /// Two sides that meet in an edge.
    pub(super) fn edge_between(
        &self,
        frame: &PartFrame<'_>,
        words: &[Name],
    ) -> Option<(Side, Side)> {
        let [a, b] = words else { return None };
        let (first, second) = (self.side(frame, a), self.side(frame, b));
        let (first, second) = (first?, second?);
        if first.axis() != second.axis() {
            return Some((first, second));
        }
        let message = format!("`{}` and `{}` do not meet in an edge", a.value, b.value);
        self.tell(
            Finding::new(&WORD_OUT_OF_PLACE, a.span.to(b.span), message)
                .remedy("name two sides that meet: `near.face`, `foot.near`"),
        );
        None
    }
}
