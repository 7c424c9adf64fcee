//! What a build holds: the parts as they are made, where they are, what joins them, in steps.

use serde::Serialize;

use crate::geometry::{Axis, Direction, Handedness, Interval, Orientation, Side};
use crate::model::{Band, Feature, Material, MaterialId, PartId};
pub use crate::model::{
    Group, GroupId, Hardware, HardwareId, HardwareKind, Instance, InstanceId, JointKind, Paper,
    PlacedId, PlanChoice, PlanHead, PlanOption, Projection, Pull, Revision, Sheet, SignalWord,
    Supply, SupplyId, SupplyKind, User,
};
use crate::source::{Span, Spanned};
use crate::units::{Area, Length};

/// A whole build: everything a plan says, worked out.
#[derive(Clone, Debug, Serialize)]
pub struct Build {
    /// Title, revisions and settings.
    pub plan: PlanHead,
    /// Materials, by [`MaterialId`].
    pub materials: Vec<Material>,
    /// Parts as made, by [`PartId`].
    pub parts: Vec<Part>,
    /// Every placed piece, by [`PlacedId`].
    pub placed: Vec<PlacedPart>,
    /// What there is to choose, and what is chosen.
    pub options: Vec<PlanOption>,
    /// Sub-assemblies that are made, by [`GroupId`].
    pub groups: Vec<Group>,
    /// Every placed sub-assembly, by [`InstanceId`].
    pub instances: Vec<Instance>,
    /// Joints, one for each pair of pieces that a `join` brings together.
    pub joints: Vec<Joint>,
    /// Hardware by [`HardwareId`], with the count the whole build uses.
    pub hardware: Vec<Hardware>,
    /// Glue, finish and abrasives, by [`SupplyId`].
    pub supplies: Vec<Supply>,
    /// Parts that are cut side by side from one blank.
    pub continuous: Vec<ContinuousGrain>,
    /// Full-size templates to be printed.
    pub templates: Vec<Template>,
    /// Steps, in order.
    pub steps: Vec<Step>,
    /// The stretch of the world that the whole build fills; none without a placed part.
    pub overall: Option<[Interval; 3]>,
}

/// A side of a part that is printed at its full size.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Template {
    /// The part.
    pub part: PartId,
    /// The side, in the part's own frame.
    pub side: Side,
    /// The one sheet it goes on; none where it is put together of sheets.
    pub sheet: Option<Sheet>,
    /// Where it is asked for.
    #[serde(skip)]
    pub span: Span,
}

/// Pieces over which the grain runs on: cut side by side from one blank.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct ContinuousGrain {
    /// The part that each piece is, in order.
    pub parts: Vec<PartId>,
    /// One after the other along the grain, not beside each other across it.
    pub along: bool,
    /// Where it is written.
    #[serde(skip)]
    pub span: Span,
}

impl Build {
    /// A part.
    pub fn part(&self, id: PartId) -> Option<&Part> {
        self.parts.get(id.0)
    }

    /// A placed piece.
    pub fn piece(&self, id: PlacedId) -> Option<&PlacedPart> {
        self.placed.get(id.0)
    }

    /// Faces to be glued: of joints, those for which `is` holds, …
    pub fn glued_joints(&self, is: impl Fn(&Joint) -> bool) -> Area {
        let joints = self.joints.iter().filter(|joint| is(joint));
        joints.map(|joint| joint.glue_area).sum()
    }

    /// … and of the layers of parts.
    pub fn glued_layers(&self, is: impl Fn(PartId) -> bool) -> Area {
        let parts = self.parts.iter().enumerate();
        parts
            .filter(|(index, _)| is(PartId(*index)))
            .map(|(_, part)| {
                let [length, width, _] = part.size();
                let faces = part.pieces().saturating_mul((part.layers - 1).max(0));
                length * width * i128::from(faces)
            })
            .sum()
    }

    /// The part a placed piece is one of.
    pub fn part_of(&self, id: PlacedId) -> Option<&Part> {
        self.part(self.piece(id)?.part)
    }

    /// The sub-assembly that stands for all that are made in a step; none for the build itself.
    pub fn shown_in(&self, step: &Step) -> Option<InstanceId> {
        self.groups.get(step.group?.0)?.instances.first().copied()
    }

    /// How many alike are made in a step.
    pub fn times(&self, step: &Step) -> usize {
        let group = step.group.and_then(|group| self.groups.get(group.0));
        group.map_or(1, |group| group.instances.len())
    }

    /// True for a piece that is in a sub-assembly, however deep.
    pub fn is_within(&self, piece: PlacedId, instance: InstanceId) -> bool {
        let mut at = self.piece(piece).and_then(|piece| piece.within);
        while let Some(id) = at {
            if id == instance {
                return true;
            }
            at = self.instances.get(id.0).and_then(|it| it.within);
        }
        false
    }

    /// The pieces that a step's picture shows coming in: of sub-assemblies that are alike, those of
    /// the first.
    pub fn shown_adds(&self, step: &Step) -> Vec<PlacedId> {
        let shown = self.shown_in(step);
        let mut adds = step.adds.clone();
        adds.retain(|piece| shown.is_none_or(|shown| self.is_within(*piece, shown)));
        adds
    }

    /// The joints that a step's picture shows, as indices of [`Build::joints`].
    pub fn shown_joints(&self, step: &Step) -> Vec<usize> {
        let shown = self.shown_in(step);
        let mut joints = step.joints.clone();
        joints.retain(|index| {
            let joint = self.joints.get(*index);
            joint.is_some_and(|joint| shown.is_none_or(|shown| self.is_within(joint.part, shown)))
        });
        joints
    }

    /// The step in which a piece comes into a sub-assembly or the build.
    pub fn comes(&self, piece: PlacedId, into: Option<InstanceId>) -> Option<usize> {
        let comings = &self.piece(piece)?.comings;
        comings.iter().find(|coming| coming.into == into)?.step
    }

    /// The sub-assembly with which a piece comes into another one or the build; none for one that
    /// comes by itself.
    pub fn comes_with(&self, piece: PlacedId, into: Option<InstanceId>) -> Option<InstanceId> {
        let comings = &self.piece(piece)?.comings;
        let level = comings.iter().position(|coming| coming.into == into)?;
        comings.get(level + 1)?.into
    }

    /// The sub-assembly with which a piece comes in in a step, counted from zero.
    pub fn whole_added(&self, piece: PlacedId, step: usize) -> Option<InstanceId> {
        let comings = &self.piece(piece)?.comings;
        let level = comings.iter().position(|it| it.step == Some(step))?;
        comings.get(level + 1)?.into
    }

    /// Width, depth and height of everything in a sub-assembly.
    pub fn size_of_whole(&self, id: InstanceId) -> Option<[Length; 3]> {
        let pieces = (0..self.placed.len()).map(PlacedId);
        let places = pieces
            .filter(|piece| self.is_within(*piece, id))
            .filter_map(|piece| Some(self.piece(piece)?.place));
        let whole = places.reduce(|mut whole, place| {
            for (stretch, other) in whole.iter_mut().zip(place) {
                *stretch = stretch.hull(other);
            }
            whole
        })?;
        Some(whole.map(Interval::size))
    }

    /// A material.
    pub fn material(&self, id: MaterialId) -> Option<&Material> {
        self.materials.get(id.0)
    }
}

/// A part as it is made: with what its joints add and cut.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Part {
    /// The name in the source.
    pub name: String,
    /// The printed name.
    pub title: String,
    /// Its letter in the plan: A to Z, then AA.
    pub label: String,
    /// What it is cut from.
    pub material: MaterialId,
    /// Along length, width and thickness, in the part's own frame (see `model::PartDesign`);
    /// reaches below zero or beyond the described size where a joint adds to the part.
    pub extent: [Interval; 3],
    /// Which of length (true) or width (false) runs along the grain.
    pub grain_along_length: bool,
    /// Layers glued up to its thickness; 1 for a part of one piece.
    pub layers: i64,
    /// How much larger on every edge the layers are cut.
    pub oversize: Length,
    /// Pieces made as drawn: placed ones and extra ones.
    pub count: i64,
    /// Pieces made as the mirror image, beside `count`.
    pub mirrored: i64,
    /// Printed in the cut list.
    pub note: Option<String>,
    /// All features: the author's first, then the joints'.
    pub features: Vec<Feature>,
    /// Edges and ends covered with edge band.
    pub bands: Vec<Band>,
    /// Where it is written.
    #[serde(skip)]
    pub span: Span,
}

impl Part {
    /// Finished length, width and thickness.
    pub fn size(&self) -> [Length; 3] {
        self.extent.map(Interval::size)
    }

    /// The broad side that more is cut into; the face, if neither.
    pub fn main_side(&self) -> Side {
        let on = |side: Side| {
            let features = self.features.iter();
            features.filter(|it| it.opens_on() == Some(side)).count()
        };
        if on(Side::Back) > on(Side::Face) {
            Side::Back
        } else {
            Side::Face
        }
    }

    /// Pieces of either hand.
    pub fn pieces(&self) -> i64 {
        self.count + self.mirrored
    }
}

/// A piece in its place.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PlacedPart {
    /// Its name, `shelves[2]` for one of several.
    pub name: String,
    /// What it is one of.
    pub part: PartId,
    /// As drawn or mirrored.
    pub handedness: Handedness,
    /// How it lies.
    pub orientation: Orientation,
    /// Where the part's described body (joints not counted) is, across, deep and high.
    pub body: [Interval; 3],
    /// Where the piece as made is: `body` and what joints add.
    pub place: [Interval; 3],
    /// Held by its place alone and taken out in use.
    pub removable: bool,
    /// The sub-assembly it is placed in.
    pub within: Option<InstanceId>,
    /// The step that adds it first: to its innermost sub-assembly.
    pub step: Option<usize>,
    /// What it is put into, from the plan inwards: of sub-assemblies, those with steps of their own.
    pub comings: Vec<Coming>,
    /// Where it is written.
    #[serde(skip)]
    pub span: Span,
}

/// How a piece comes into something: by itself, or with the sub-assembly it is part of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Coming {
    /// Into which sub-assembly; none for the whole build.
    pub into: Option<InstanceId>,
    /// In which step; none if no step adds it.
    pub step: Option<usize>,
}

/// Where two pieces touch: a rectangle square to a world axis.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Contact {
    /// The direction from the first piece to the second.
    pub direction: Direction,
    /// Where the plane is, along that direction's axis.
    pub position: Length,
    /// The touching rectangle; along the direction's own axis it is flat.
    pub area: [Interval; 3],
    /// How far they are apart: above zero where one moves on the other.
    pub gap: Length,
}

impl Contact {
    /// True where two pieces in their places swing on the high edge of what touches, along one of its axes:
    /// they swing where both end, for there a hinge's knuckle has room.
    pub fn swings_at_high(&self, places: &[[Interval; 3]; 2], across: Axis) -> bool {
        let pick = |place: &[Interval; 3]| place.get(across.index()).copied().unwrap_or_default();
        let touching = pick(&self.area);
        let beyond =
            |of: &dyn Fn(Interval) -> Length| places.iter().map(|place| of(pick(place))).max();
        let over_high = beyond(&|place| place.high - touching.high);
        let over_low = beyond(&|place| touching.low - place.low);
        over_high < over_low
    }

    /// How much touches.
    pub fn size(&self) -> Area {
        let axis = self.direction.axis().index();
        let mut sizes = self
            .area
            .iter()
            .enumerate()
            .filter(|(i, _)| *i != axis)
            .map(|(_, s)| s.size());
        let first = sizes.next().unwrap_or_default();
        first * sizes.next().unwrap_or_default()
    }
}

/// Two pieces and what holds them together.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Joint {
    /// How.
    pub kind: JointKind,
    /// The piece that comes: the shelf that enters the dado.
    pub part: PlacedId,
    /// The piece it comes to.
    pub to: PlacedId,
    /// Where they touch.
    pub contact: Contact,
    /// Room left in its cut for what moves: above a panel's edge in its groove.
    pub play: Length,
    /// Glued as well.
    pub glued: bool,
    /// Where glue goes: the contact, and what the joint's cuts add to it; nothing where dry.
    pub glue_area: Area,
    /// What is used, and where each one goes.
    pub fasteners: Vec<Fastener>,
    /// Where the statement is.
    #[serde(skip)]
    pub span: Span,
}

/// A screw, dowel or tenon in its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Fastener {
    /// What it is.
    pub hardware: HardwareId,
    /// Its head or first end, across, deep and high.
    pub from: [Length; 3],
    /// Its point or other end.
    pub to: [Length; 3],
    /// The direction a driver pushes it.
    pub driven: Direction,
}

/// A step of the work.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Step {
    /// The sub-assemblies it is about, all alike; none for the build itself. What it adds, uses and
    /// takes is for all of them.
    pub group: Option<GroupId>,
    /// Its title.
    pub title: String,
    /// Pieces that come in.
    pub adds: Vec<PlacedId>,
    /// Joints made in it, as indices of [`Build::joints`]: those whose second piece comes in here.
    pub joints: Vec<usize>,
    /// How the exploded view draws pieces away.
    pub pulls: Vec<Pull>,
    /// Where the reader looks from: up to three directions, one on each axis; empty if not said.
    pub look: Vec<Direction>,
    /// What to do, in order.
    pub says: Vec<Wording>,
    /// What to check.
    pub checks: Vec<Wording>,
    /// Tools the author names.
    pub tools: Vec<Spanned<String>>,
    /// Hardware used: counted from the joints and from `uses`.
    pub hardware: Vec<(HardwareId, i64)>,
    /// Glue, finish and abrasives that are used.
    pub supplies: Vec<SupplyId>,
    /// The author's own cautions.
    pub cautions: Vec<(SignalWord, Wording)>,
    /// Time in seconds; none if not said.
    pub seconds: Option<i64>,
    /// Where it is written.
    #[serde(skip)]
    pub span: Span,
}

/// Text with values in it, to be printed in both systems.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Wording {
    /// Its pieces, in order.
    pub pieces: Vec<WordingPiece>,
}

/// A piece of a text.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub enum WordingPiece {
    /// As it stands.
    Plain(String),
    /// A length, printed in both systems.
    Length(Length),
    /// A value that is not a length, already in words.
    Value(String),
    /// A part, printed with its name and letter, and how many are meant.
    Part(PartId, i64),
    /// A sub-assembly, printed with its name and mark, and how many are meant.
    Whole(GroupId, i64),
    /// What the plan says by itself, in the words of its language.
    Message(Message),
}

/// A message of the catalogues of words, and what stands in it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Message {
    /// Its name in the catalogues.
    pub id: &'static str,
    /// What stands in its places, by their names.
    pub given: Vec<(&'static str, Given)>,
}

/// What stands in a place of a message.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub enum Given {
    /// A length, printed in both systems.
    Length(Length),
    /// A figure with its unit.
    Figure(String),
    /// Parts, printed with their names and letters.
    Parts(Vec<PartId>),
}
