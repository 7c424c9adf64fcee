//! What the build makes a builder do, and when.

use std::collections::BTreeSet;

use super::types::Occasion;
use crate::behaviour::Behaviour;
use crate::build::{Build, HardwareKind, JointKind, Part, Step, WordingPiece};
use crate::model::{Feature, FeatureShape, PartId};
use crate::stock::{CutRow, Stock};

/// A build and its stock, looked at as work.
pub(super) struct Work<'a> {
    /// What is built.
    pub(super) build: &'a Build,
    /// What it is cut from.
    pub(super) stock: &'a Stock,
    /// What it weighs.
    pub(super) behaviour: &'a Behaviour,
    /// The step in which each part is made ready.
    first_steps: Vec<Option<usize>>,
}

/// Parts that the texts of a step name.
fn named(step: &Step) -> impl Iterator<Item = PartId> {
    let pieces = step.says.iter().flat_map(|text| &text.pieces);
    pieces.filter_map(|piece| match piece {
        WordingPiece::Part(part, _) => Some(*part),
        WordingPiece::Plain(_)
        | WordingPiece::Length(_)
        | WordingPiece::Value(_)
        | WordingPiece::Message(_)
        | WordingPiece::Whole(..) => None,
    })
}

impl<'a> Work<'a> {
    /// Looks through the steps once.
    pub(super) fn new(build: &'a Build, stock: &'a Stock, behaviour: &'a Behaviour) -> Self {
        let mut first_steps: Vec<Option<usize>> = vec![None; build.parts.len()];
        for (number, step) in build.steps.iter().enumerate() {
            let added = step.adds.iter().filter_map(|id| build.piece(*id));
            let mut ready: Vec<PartId> = added.map(|piece| piece.part).collect();
            if step.adds.is_empty() {
                // A step that adds nothing prepares what it names.
                ready.extend(named(step));
            }
            for part in ready {
                if let Some(first) = first_steps.get_mut(part.0) {
                    first.get_or_insert(number);
                }
            }
        }
        Self {
            build,
            stock,
            behaviour,
            first_steps,
        }
    }

    /// When a part is machined: in the step that prepares it or first adds it, or with the
    /// cutting where no step does.
    pub(super) fn machined(&self, part: PartId) -> Occasion {
        let step = self.first_steps.get(part.0).copied().flatten();
        step.map_or(Occasion::Cutting, Occasion::Step)
    }

    /// Parts that are made, with their numbers.
    pub(super) fn parts(&self) -> impl Iterator<Item = (PartId, &'a Part)> {
        self.build
            .parts
            .iter()
            .enumerate()
            .filter(|(_, part)| part.pieces() > 0)
            .map(|(index, part)| (PartId(index), part))
    }

    /// Features of parts that are made.
    pub(super) fn features(&self) -> impl Iterator<Item = (PartId, &'a Feature)> {
        self.parts()
            .flat_map(|(id, part)| part.features.iter().map(move |feature| (id, feature)))
    }

    /// When features of some shape are made.
    pub(super) fn occasions(&self, is: impl Fn(&FeatureShape) -> bool) -> Vec<Occasion> {
        let when: BTreeSet<Occasion> = self
            .features()
            .filter(|(_, feature)| is(&feature.shape))
            .map(|(part, _)| self.machined(part))
            .collect();
        when.into_iter().collect()
    }

    /// Steps, counted from zero, for which `is` holds.
    pub(super) fn steps(&self, is: impl Fn(&Step) -> bool) -> Vec<Occasion> {
        let steps = self.build.steps.iter().enumerate();
        steps
            .filter(|(_, step)| is(step))
            .map(|(number, _)| Occasion::Step(number))
            .collect()
    }

    /// True where a step makes a joint of one of the kinds.
    pub(super) fn makes(&self, step: &Step, kinds: &[JointKind]) -> bool {
        step.joints
            .iter()
            .filter_map(|index| self.build.joints.get(*index))
            .any(|joint| kinds.contains(&joint.kind))
    }

    /// True where a step uses hardware of a kind.
    pub(super) fn uses(&self, step: &Step, kind: HardwareKind) -> bool {
        let items = step.hardware.iter();
        items
            .filter_map(|(id, _)| self.build.hardware.get(id.0))
            .any(|item| item.kind == kind)
    }

    /// When hardware of a kind is fitted: in the steps that use it, and where none does though
    /// the build has it, when the piece goes into use.
    pub(super) fn fitted(&self, kind: HardwareKind) -> Vec<Occasion> {
        let steps = self.steps(|step| self.uses(step, kind));
        let mut items = self.build.hardware.iter();
        let is_there = items.any(|item| item.kind == kind && item.count > 0);
        if steps.is_empty() && is_there {
            return vec![Occasion::Use];
        }
        steps
    }

    /// True where any joint of the build is of a kind.
    pub(super) fn has_joint(&self, kind: JointKind) -> bool {
        self.build.joints.iter().any(|joint| joint.kind == kind)
    }

    /// Rows of the cut list for which `is` holds.
    pub(super) fn rows(&self, is: impl Fn(&CutRow) -> bool) -> Vec<PartId> {
        let rows = self.stock.rows().filter(|row| is(row));
        rows.map(|row| row.part).collect()
    }
}
