//! Parts: which of the earlier plan is which of the later one, what became of it, and whether one
//! that is cut already still serves.

use std::collections::BTreeSet;

use crate::build::{Build, Part};
use crate::geometry::Interval;
use crate::model::{Feature, FeatureShape, PartId};
use crate::options::Selected;
use crate::units::Length;

/// What a reader sees of a part.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PartFace {
    /// The name in the source.
    pub name: String,
    /// The printed name.
    pub title: String,
    /// Its letter.
    pub label: String,
    /// Pieces of either hand.
    pub pieces: i64,
    /// Finished length, width and thickness.
    pub size: [Length; 3],
    /// The printed name of its material.
    pub material: String,
    /// Its grain runs along its length, not along its width.
    pub grain_along_length: bool,
}

/// What became of a part.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PartChange {
    /// As it was; none for a new part.
    pub before: Option<PartFace>,
    /// As it is; none for one that is gone.
    pub after: Option<PartFace>,
    /// It is drilled, grooved or shaped otherwise.
    pub cut_otherwise: bool,
    /// What to do about one that is cut already.
    pub fate: Fate,
}

/// What to do about a part that is cut already by the earlier plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fate {
    /// It serves as it is.
    Serves,
    /// It is cut smaller, and made the rest of the way as the new one is.
    Trim,
    /// It is drilled, grooved or shaped further.
    Rework,
    /// It is made anew.
    Remake,
    /// There was none.
    New,
    /// It is not needed any more.
    NoLonger,
}

impl Fate {
    /// All, in the order they are told.
    pub const ALL: [Self; 6] = [
        Self::Remake,
        Self::Trim,
        Self::Rework,
        Self::New,
        Self::NoLonger,
        Self::Serves,
    ];

    /// A word for programs.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Serves => "serves",
            Self::Trim => "trim",
            Self::Rework => "rework",
            Self::Remake => "remake",
            Self::New => "new",
            Self::NoLonger => "no_longer",
        }
    }

    /// What to do, in words.
    pub const fn advice(self) -> &'static str {
        match self {
            Self::Serves => "serves as it is",
            Self::Trim => "can be cut to size",
            Self::Rework => "has to be cut or drilled further",
            Self::Remake => "must be made anew",
            Self::New => "is new",
            Self::NoLonger => "is not needed any more",
        }
    }
}

/// A part of the earlier plan and what it is in the later one; none on either side.
pub(super) type Pair = (Option<PartId>, Option<PartId>);

/// Whether an earlier part and a later one are taken to be the same.
type Fits<'f> = dyn Fn(&(PartId, &Part), &(PartId, &Part)) -> bool + 'f;

/// Which part is which: by name, then by shape, then by what stands where it stood, and at last by
/// its printed name.
pub(super) fn pairs(before: &Selected<'_>, after: &Selected<'_>) -> Vec<Pair> {
    let mut olds = made(before.build);
    let mut news = made(after.build);
    let mut pairs: Vec<Pair> = Vec::new();
    let same_name = |a: &Part, b: &Part| a.name == b.name;
    let same_shape = |a: &Part, b: &Part| a.size() == b.size() && shapes(a) == shapes(b);
    let same_material = |a: &Part, b: &Part| material(before, a) == material(after, b);
    let mut take = |fits: &Fits<'_>| {
        olds.retain(|old| match news.iter().position(|new| fits(old, new)) {
            Some(place) => {
                let (new, _) = news.remove(place);
                pairs.push((Some(old.0), Some(new)));
                false
            }
            None => true,
        });
    };
    take(&|(_, a), (_, b)| same_name(a, b) && same_shape(a, b) && same_material(a, b));
    take(&|(_, a), (_, b)| same_name(a, b));
    take(&|(_, a), (_, b)| same_shape(a, b) && same_material(a, b));
    take(&|(a, _), (b, _)| stands_alike((before.build, *a), (after.build, *b)));
    take(&|(_, a), (_, b)| a.title == b.title && same_material(a, b));
    pairs.extend(olds.into_iter().map(|(id, _)| (Some(id), None)));
    pairs.extend(news.into_iter().map(|(id, _)| (None, Some(id))));
    pairs.sort_by_key(|(old, new)| (new.is_none(), *new, *old));
    pairs
}

/// Parts of which pieces are made.
fn made(build: &Build) -> Vec<(PartId, &Part)> {
    let parts = build.parts.iter().enumerate();
    parts
        .filter(|(_, part)| part.pieces() > 0)
        .map(|(index, part)| (PartId(index), part))
        .collect()
}

fn material<'s>(of: &Selected<'s>, part: &Part) -> &'s str {
    of.build.material(part.material).map_or("", |it| &it.title)
}

/// True where the pieces of one stand exactly where those of the other stand.
fn stands_alike((one, a): (&Build, PartId), (other, b): (&Build, PartId)) -> bool {
    let places = |build: &Build, id: PartId| -> BTreeSet<[Interval; 3]> {
        let pieces = build.placed.iter().filter(|piece| piece.part == id);
        pieces.map(|piece| piece.body).collect()
    };
    let (a, b) = (places(one, a), places(other, b));
    !a.is_empty() && a == b
}

/// The shapes of a part's features, wherever they are written.
fn shapes(part: &Part) -> Vec<&FeatureShape> {
    part.features.iter().map(|feature| &feature.shape).collect()
}

pub(super) fn changes(
    before: &Selected<'_>,
    after: &Selected<'_>,
    pairs: &[Pair],
) -> Vec<PartChange> {
    let mut changes = Vec::new();
    for (old, new) in pairs {
        let old = old.and_then(|id| before.build.part(id));
        let new = new.and_then(|id| after.build.part(id));
        let change = PartChange {
            before: old.map(|part| face(before, part)),
            after: new.map(|part| face(after, part)),
            cut_otherwise: old.zip(new).is_some_and(|(a, b)| shapes(a) != shapes(b)),
            fate: match (old, new) {
                (Some(old), Some(new)) => fate(before, after, [old, new]),
                (Some(_), None) => Fate::NoLonger,
                _ => Fate::New,
            },
        };
        if change.before != change.after || change.cut_otherwise {
            changes.push(change);
        }
    }
    changes
}

fn face(of: &Selected<'_>, part: &Part) -> PartFace {
    PartFace {
        name: part.name.clone(),
        title: part.title.clone(),
        label: part.label.clone(),
        pieces: part.pieces(),
        size: part.size(),
        material: material(of, part).to_owned(),
        grain_along_length: part.grain_along_length,
    }
}

/// Whether a piece that is cut by the earlier plan can become one of the later.
fn fate(before: &Selected<'_>, after: &Selected<'_>, [old, new]: [&Part; 2]) -> Fate {
    let has_grain = after
        .build
        .material(new.material)
        .is_some_and(|it| it.grain != crate::model::Grain::None);
    let turned = has_grain && old.grain_along_length != new.grain_along_length;
    if material(before, old) != material(after, new) || turned || old.layers != new.layers {
        return Fate::Remake;
    }
    let (was, is) = (old.size(), new.size());
    let [was_thick, is_thick] = [was, is].map(|[_, _, thickness]| thickness);
    let larger = was.iter().zip(is).any(|(was, is)| is > *was);
    if larger || was_thick != is_thick {
        return Fate::Remake;
    }
    // What was cut into it must be in the new one too, where that still reaches.
    let kept = old
        .features
        .iter()
        .filter_map(|feature| clipped(feature, new));
    let all_wanted = kept
        .into_iter()
        .all(|shape| new.features.iter().any(|feature| feature.shape == shape));
    match (all_wanted, was == is) {
        (false, _) => Fate::Remake,
        (true, false) => Fate::Trim,
        (true, true) if shapes(old) == shapes(new) => Fate::Serves,
        (true, true) => Fate::Rework,
    }
}

/// A feature as it is left where its part is cut to the size of another one at the head and the
/// far edge; none where nothing of it is left.
fn clipped(feature: &Feature, part: &Part) -> Option<FeatureShape> {
    let mut shape = feature.shape.clone();
    if let FeatureShape::Pocket(pocket) = &mut shape {
        let [length, width, thickness] = part.extent;
        let axes = crate::model::plane_axes(pocket.side);
        let reach = axes.map(|axis| match axis {
            crate::geometry::PartAxis::Length => length,
            crate::geometry::PartAxis::Width => width,
            crate::geometry::PartAxis::Thickness => thickness,
        });
        let [first, second] = reach;
        pocket.first = pocket.first.overlap(first)?;
        pocket.second = pocket.second.overlap(second)?;
    }
    Some(shape)
}
