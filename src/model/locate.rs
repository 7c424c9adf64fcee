//! Where placed pieces are: orientation, repetition, and the stretch on each world axis.

use super::evaluate::{Evaluator, Key, Local};
use super::findings::{
    AXIS_MISSING, AXIS_TWICE, NOT_POSITIVE, ORIENTATION, SAID_TWICE, WORD_OUT_OF_PLACE, WRONG_KIND,
};
use super::names::{Declared, Meant};
use super::scopes::{axis_behind, turned};
use super::value::Value;
use crate::finding::Finding;
use crate::geometry::{Axis, Direction, Handedness, Interval, Orientation, PartAxis};
use crate::source::Span;
use crate::syntax::tree::{Expr, Name, Place, PlaceLineKind, PlacedRef};

/// The most pieces one `place` may repeat.
const MOST_PIECES: i64 = 10_000;

/// One way in which a line locates a piece on an axis.
enum Location<'t> {
    Face(Direction, &'t Expr),
    Centre(Axis, &'t Expr),
}

impl<'t> Location<'t> {
    fn axis(&self) -> Axis {
        match self {
            Self::Face(direction, _) => direction.axis(),
            Self::Centre(axis, _) => *axis,
        }
    }
}

impl<'t> Evaluator<'t> {
    /// The first and last index of a placement; 1 and 1 for a single piece.
    pub(super) fn repeats(&self, place: usize) -> Option<(i64, i64)> {
        let Some(repeat) = &self.all.places.get(place)?.repeat else {
            return Some((1, 1));
        };
        let ends = self.inside(self.all.places.scope(place), || {
            let ends = [&repeat.first, &repeat.last].map(|end| self.whole(end, None));
            if let [Some(first), Some(last)] = ends {
                Some((first, last))
            } else {
                None
            }
        });
        let (first, last) = ends?;
        let pieces = last.saturating_sub(first).saturating_add(1);
        if (1..=MOST_PIECES).contains(&pieces) && first.abs() <= MOST_PIECES {
            return Some((first, last));
        }
        let message =
            format!("this repeats {pieces} times, and must repeat from 1 to {MOST_PIECES} times");
        let span = repeat.first.span.to(repeat.last.span);
        self.tell(Finding::new(&NOT_POSITIVE, span, message));
        None
    }

    /// The counting name and its value in piece `index` of a placement.
    pub(super) fn local_of(place: &'t Place, index: i64) -> Local<'t> {
        place
            .repeat
            .as_ref()
            .map(|repeat| (repeat.index.value.as_str(), index))
    }

    /// The part a placement places.
    pub(super) fn part_of_place(&self, place: usize) -> Option<usize> {
        let scope = self.all.places.scope(place);
        let place = self.all.places.get(place)?;
        match self.all.find(scope, &place.part.value) {
            Some(Declared::Part(part)) => Some(part),
            Some(Declared::Missing | Declared::Subassembly(_)) => None,
            None => {
                self.tell_unknown(&place.part, "there is no such part", Meant::Part);
                None
            }
            Some(_) => {
                let message = format!("`{}` is not a part", place.part.value);
                self.tell(Finding::new(&WRONG_KIND, place.part.span, message));
                None
            }
        }
    }

    /// True where what a placement places is not known: that is told where it is written.
    pub(super) fn is_unknown(&self, place: usize) -> bool {
        let Some(placed) = self.all.places.get(place) else {
            return true;
        };
        let found = self
            .all
            .find(self.all.places.scope(place), &placed.part.value);
        matches!(found, None | Some(Declared::Missing))
    }

    /// How a placed sub-assembly stands: where its own left, front and bottom are.
    pub(super) fn assembly_orientation(&self, place: &'t Place) -> Option<Orientation> {
        let mut said: Vec<(Direction, Direction, Span)> = Vec::new();
        for line in &place.lines {
            match &line.kind {
                PlaceLineKind::Faces { face, direction } => {
                    let (face, direction) = (self.direction(face)?, self.direction(direction)?);
                    said.push((face, direction, line.span));
                }
                PlaceLineKind::Runs { .. } => {
                    let message = "a sub-assembly has no length, width and thickness of its own";
                    self.tell(
                        Finding::new(&WORD_OUT_OF_PLACE, line.span, message)
                            .remedy("say where it looks: `front faces left`"),
                    );
                }
                PlaceLineKind::At { .. }
                | PlaceLineKind::Centre { .. }
                | PlaceLineKind::Removable
                | PlaceLineKind::Allow(_) => {}
            }
        }
        let handed = handedness(place);
        let as_it_is = |stance: &Orientation| {
            let stays = |way: Direction| turned(*stance, way) == way;
            // Upright before anything else, then with its front to the front.
            (
                stays(Direction::Top),
                stays(Direction::Front),
                stays(Direction::Right),
            )
        };
        let found = Direction::ALL
            .into_iter()
            .flat_map(|l| Direction::ALL.map(|w| (l, w)))
            .filter_map(|(l, w)| Orientation::new(l, w, handed))
            .filter(|stance| {
                said.iter()
                    .all(|(face, direction, _)| turned(*stance, *face) == *direction)
            })
            .max_by_key(as_it_is);
        if found.is_none() {
            let message = format!("`{}` cannot stand like this", place.name.value);
            let mut finding = Finding::new(&ORIENTATION, place.name.span, message)
                .remedy("say where two of its faces look that meet in an edge; a third one follows, turned round where it is `mirrored`");
            for (_, _, span) in &said {
                finding = finding.related(*span, "said here");
            }
            self.tell(finding);
        }
        found
    }

    /// How a placement's pieces lie.
    pub(super) fn orientation(&self, place: &'t Place) -> Option<Orientation> {
        if let Some(line) = place
            .lines
            .iter()
            .find(|line| matches!(line.kind, PlaceLineKind::Faces { .. }))
        {
            let message = "a part has a length, a width and a thickness that run somewhere";
            self.tell(
                Finding::new(&WORD_OUT_OF_PLACE, line.span, message)
                    .remedy("say how it lies: `length up`, `width back`"),
            );
        }
        let mut runs: [Option<(Direction, Span)>; 3] = [None; 3];
        for line in &place.lines {
            let PlaceLineKind::Runs { axis, direction } = &line.kind else {
                continue;
            };
            let part_axis = self.part_axis(axis)?;
            let direction = (self.direction(direction)?, line.span);
            let slot = runs.get_mut(part_axis.index())?;
            if let Some((_, first)) = slot.replace(direction) {
                let message = format!("where the {} runs is said twice", part_axis.word());
                self.tell(
                    Finding::new(&SAID_TWICE, line.span, message).related(first, "said here first"),
                );
            }
        }
        let handed = handedness(place);
        let [length, width, thickness] = runs.map(|run| run.map(|(direction, _)| direction));
        let found = Direction::ALL
            .into_iter()
            .flat_map(|l| Direction::ALL.map(|w| (l, w)))
            .find_map(|(l, w)| {
                let o = Orientation::new(l, w, handed)?;
                let agrees = length.is_none_or(|d| d == o.length)
                    && width.is_none_or(|d| d == o.width)
                    && thickness.is_none_or(|d| d == o.thickness);
                agrees.then_some(o)
            });
        let said = runs.iter().flatten().count();
        if said >= 2 && found.is_some() {
            return found;
        }
        let (message, remedy) = if said < 2 {
            let known: Vec<&str> = PartAxis::ALL
                .into_iter()
                .filter(|axis| runs.get(axis.index()).is_some_and(Option::is_none))
                .map(PartAxis::word)
                .collect();
            let message = format!("how `{}` lies needs two of its axes", place.name.value);
            (
                message,
                format!(
                    "say where its {} runs: `width back`",
                    known.join(" or its ")
                ),
            )
        } else {
            let message = format!(
                "the axes of `{}` do not make a part of this hand",
                place.name.value
            );
            (message, "let length and width run along different axes; a part that needs the third one turned is `mirrored`".to_owned())
        };
        let mut finding = Finding::new(&ORIENTATION, place.name.span, message).remedy(remedy);
        for (_, span) in runs.iter().flatten() {
            finding = finding.related(*span, "said here");
        }
        self.tell(finding);
        None
    }

    fn part_axis(&self, word: &Name) -> Option<PartAxis> {
        let axis = PartAxis::ALL
            .into_iter()
            .find(|axis| axis.word() == word.value);
        if axis.is_none() {
            let message = format!("`{}` is not length, width or thickness", word.value);
            self.tell(Finding::new(&WORD_OUT_OF_PLACE, word.span, message));
        }
        axis
    }

    /// A direction of the world.
    pub(super) fn direction(&self, word: &Name) -> Option<Direction> {
        let direction = Direction::from_word(&word.value);
        if direction.is_none() {
            let message = format!("`{}` is not a direction", word.value);
            self.tell(
                Finding::new(&WORD_OUT_OF_PLACE, word.span, message)
                    .remedy("there are left, right, front, back, bottom (down) and top (up)"),
            );
        }
        direction
    }

    /// The lines that locate a placement.
    fn locations(&self, place: &'t Place) -> Vec<(Location<'t>, Span)> {
        let mut locations = Vec::new();
        for line in &place.lines {
            match &line.kind {
                PlaceLineKind::At { face, position } => {
                    if let Some(direction) = self.direction(face) {
                        locations.push((Location::Face(direction, position), line.span));
                    }
                }
                PlaceLineKind::Centre { axis, position } => {
                    let found = Axis::ALL
                        .into_iter()
                        .find(|known| known.word() == axis.value);
                    if let Some(found) = found {
                        locations.push((Location::Centre(found, position), line.span));
                    } else {
                        let message = format!("`{}` is not an axis of the world", axis.value);
                        self.tell(
                            Finding::new(&WORD_OUT_OF_PLACE, axis.span, message)
                                .remedy("there are across, deep and high"),
                        );
                    }
                }
                PlaceLineKind::Runs { .. }
                | PlaceLineKind::Faces { .. }
                | PlaceLineKind::Removable
                | PlaceLineKind::Allow(_) => {}
            }
        }
        locations
    }

    /// Notes axes on which a placement is not located, or located twice.
    pub(super) fn check_locations(&self, place: &'t Place) {
        let locations = self.locations(place);
        let mut missing = Vec::new();
        for axis in Axis::ALL {
            let mut on_axis = locations
                .iter()
                .filter(|(location, _)| location.axis() == axis);
            let (low, high) = (axis.low().word(), axis.high().word());
            match (on_axis.next(), on_axis.next()) {
                (None, _) => {
                    let name = &place.name.value;
                    let message = format!("`{name}` has no place on the axis from {low} to {high}");
                    let remedy = format!(
                        "add one of `{low} at …`, `{high} at …`, `centre {} at …`",
                        axis.word()
                    );
                    missing.push((message, remedy));
                }
                (Some((_, first)), Some((_, second))) => {
                    let name = &place.name.value;
                    let message = format!(
                        "`{name}` is located a second time on the axis from {low} to {high}"
                    );
                    self.tell(
                        Finding::new(&AXIS_TWICE, *second, message)
                            .related(*first, "located here first")
                            .remedy("keep the one that stays true when sizes change; let the size follow with `from … to …` in the part"),
                    );
                }
                (Some(_), None) => {}
            }
        }
        // One finding for all axes that are missing: they are one omission.
        if let Some((message, _)) = missing.first() {
            let mut finding = Finding::new(&AXIS_MISSING, place.name.span, message);
            if missing.len() > 1 {
                finding.message = format!(
                    "`{}` has no place on {} of its axes",
                    place.name.value,
                    missing.len()
                );
            }
            for (_, remedy) in &missing {
                finding = finding.remedy(remedy);
            }
            self.tell(finding);
        }
    }

    /// Where piece `index` of a placement is on a world axis.
    pub(super) fn stretch(
        &self,
        place: usize,
        index: i64,
        axis: Axis,
        span: Span,
    ) -> Option<Interval> {
        let declared = self.all.places.get(place)?;
        self.checked_index(place, index, span)?;
        let value = self.once(Key::Stretch(place, index, axis.index()), span, || {
            let local = Self::local_of(declared, index);
            let size = if self.subassembly_of(place).is_some() {
                let own = axis_behind(self.stance(place)?, axis);
                let scope = self.opened(place, index)?;
                self.whole_of(scope, own, declared.name.span)?.size()
            } else {
                let orientation = self.orientation(declared)?;
                let part = self.part_of_place(place)?;
                self.part_size(part, orientation.part_axis(axis), declared.name.span)?
            };
            let locations = self.locations(declared);
            let (location, _) = locations
                .iter()
                .find(|(location, _)| location.axis() == axis)?;
            let low = match location {
                Location::Face(direction, position) => {
                    let position = self.position(position, local, axis)?;
                    if direction.is_positive() {
                        position - size
                    } else {
                        position
                    }
                }
                Location::Centre(_, position) => {
                    self.position(position, local, axis)? - size.half()
                }
            };
            Some(Value::Stretch(Interval {
                low,
                high: low + size,
            }))
        })?;
        if let Value::Stretch(stretch) = value {
            Some(stretch)
        } else {
            None
        }
    }

    /// The placements a reference names: one, or all of a repeated one; of parts or of whole
    /// sub-assemblies.
    pub(super) fn meant(&self, reference: &PlacedRef) -> Vec<(usize, i64)> {
        let found = self.all.find(self.scope.get(), &reference.name.value);
        let mut places = self.placed_under(found, &reference.name, reference.index.as_ref());
        for inner in &reference.inner {
            let mut inside = Vec::new();
            for (place, index) in places {
                if self.is_unknown(place) {
                    return Vec::new();
                }
                if self.subassembly_of(place).is_none() {
                    let what =
                        "a part holds no other; only what is in a sub-assembly has a dot before it";
                    self.tell(Finding::new(&WRONG_KIND, inner.name.span, what));
                    return Vec::new();
                }
                let Some(scope) = self.opened(place, index) else {
                    continue;
                };
                let found = self.all.own(scope, &inner.name.value);
                let found = self.inside(scope, || {
                    self.placed_under(found, &inner.name, inner.index.as_ref())
                });
                inside.extend(found);
            }
            places = inside;
        }
        places
    }

    /// The placements of a name, whose declaration was looked up.
    fn placed_under(
        &self,
        found: Option<Declared>,
        name: &Name,
        index: Option<&Expr>,
    ) -> Vec<(usize, i64)> {
        let place = match found {
            Some(Declared::Place(place)) => place,
            Some(Declared::Missing) => return Vec::new(),
            None => {
                self.tell_unknown(name, "nothing is placed under this name", Meant::Placed);
                return Vec::new();
            }
            Some(other) => {
                let message = format!("`{}` is not a placed part", name.value);
                let mut finding = Finding::new(&WRONG_KIND, name.span, message);
                if matches!(other, Declared::Part(_) | Declared::Subassembly(_)) {
                    let places = self.all.places.rows();
                    let names: Vec<&str> = places
                        .iter()
                        .filter(|(place, scope)| {
                            self.all.find(*scope, &place.part.value) == Some(other)
                        })
                        .map(|(place, _)| place.name.value.as_str())
                        .take(3)
                        .collect();
                    if !names.is_empty() {
                        finding = finding.remedy(format!("it is placed as {}", names.join(", ")));
                    }
                }
                self.tell(finding);
                return Vec::new();
            }
        };
        let Some((first, last)) = self.repeats(place) else {
            return Vec::new();
        };
        match index {
            None => (first..=last).map(|index| (place, index)).collect(),
            Some(index) => {
                let number = self.whole(index, None);
                let number =
                    number.and_then(|number| self.checked_index(place, number, index.span));
                number.map(|index| (place, index)).into_iter().collect()
            }
        }
    }

    /// The parts in a placement: itself, or all that is placed in its sub-assembly.
    pub(super) fn parts_in(&self, (place, index): (usize, i64)) -> Vec<(usize, i64)> {
        if self.subassembly_of(place).is_none() {
            return vec![(place, index)];
        }
        let Some(scope) = self.opened(place, index) else {
            return Vec::new();
        };
        let places = self.all.places.rows();
        let own = places
            .iter()
            .enumerate()
            .filter(|(_, (_, of))| *of == scope);
        let mut parts = Vec::new();
        for (inner, _) in own {
            if let Some((first, last)) = self.repeats(inner) {
                for number in first..=last {
                    parts.extend(self.parts_in((inner, number)));
                }
            }
        }
        parts
    }
}

/// Whether a placement mirrors its part.
pub(super) fn handedness(place: &Place) -> Handedness {
    if place.mirrored.is_some() {
        Handedness::Mirrored
    } else {
        Handedness::AsDrawn
    }
}
