//! Parts over which the grain runs on: sawn as one blank, which is then parted.

use std::collections::BTreeMap;

use super::blanks::{Demand, Run};
use super::findings;
use super::packing::{Tree, Way};
use crate::build::{Build, ContinuousGrain};
use crate::finding::{Finding, Findings};
use crate::model::{MaterialId, PartId};
use crate::units::Length;

/// Takes the pieces of every run out of the demands, and puts one blank for all of them in.
pub(super) fn join(
    build: &Build,
    orders: &mut BTreeMap<MaterialId, Vec<Demand>>,
    findings: &mut Findings,
) {
    for run in &build.continuous {
        let Some(material) = common_material(build, run) else {
            let message = "pieces over which the grain runs on are not of one blank";
            findings.push(
                Finding::new(&findings::NOT_OF_ONE_BLANK, run.span, message)
                    .remedy("name two pieces or more, of one material and without layers"),
            );
            continue;
        };
        let kerf = build.material(material).map(|material| material.kerf);
        let kerf = kerf.unwrap_or_default().max(Length::ZERO);
        let Some(demands) = orders.get_mut(&material) else {
            continue;
        };
        let members: Vec<Demand> = run
            .parts
            .iter()
            .filter_map(|part| {
                let demand = demands
                    .iter_mut()
                    .find(|demand| demand.part == *part && demand.pieces > 0)?;
                demand.pieces -= 1;
                Some(Demand {
                    pieces: 1,
                    ..demand.clone()
                })
            })
            .collect();
        demands.extend(blank(run.along, members, kerf));
        demands.retain(|demand| demand.pieces > 0);
    }
}

/// The material of all parts of a run; none where they are too few, or not sawn out of one board.
fn common_material(build: &Build, run: &ContinuousGrain) -> Option<MaterialId> {
    let mut parts = run.parts.iter().map(|part| build.part(*part));
    let first = parts.next()??.material;
    let is_alike = parts.all(|part| part.is_some_and(|part| part.material == first));
    let is_single = |part: &PartId| build.part(*part).is_some_and(|part| part.layers <= 1);
    let is_run = run.parts.len() > 1 && is_alike && run.parts.iter().all(is_single);
    is_run.then_some(first)
}

/// The blank of a run: as long and as wide as its pieces with a saw cut between two.
fn blank(along: bool, members: Vec<Demand>, kerf: Length) -> Option<Demand> {
    let part = members.first()?.part;
    let cuts = i64::try_from(members.len()).unwrap_or(i64::MAX) - 1;
    let sum = |size: fn(&Demand) -> Length| members.iter().map(size).sum::<Length>() + kerf * cuts;
    let most = |size: fn(&Demand) -> Length| members.iter().map(size).max().unwrap_or_default();
    let (length, width) = if along {
        (sum(|piece| piece.along), most(|piece| piece.across))
    } else {
        (most(|piece| piece.along), sum(|piece| piece.across))
    };
    Some(Demand {
        part,
        pieces: 1,
        along: length,
        across: width,
        turned: false,
        may_turn: false,
        run: Some(Run { along, members }),
    })
}

impl Run {
    /// The cuts that part the blank, kerf included in every size; items are members by number.
    pub(super) fn cuts(&self, blank: &Demand, kerf: Length) -> Tree {
        let mut tree = Tree::new((blank.along + kerf).nm(), (blank.across + kerf).nm());
        let way = if self.along { Way::Crosscut } else { Way::Rip };
        let mut rest = Some(0);
        for (number, member) in self.members.iter().enumerate() {
            let Some(cell) = rest else { break };
            let pose = (
                (member.along + kerf).nm(),
                (member.across + kerf).nm(),
                false,
            );
            [rest, _] = tree.place(cell, number, pose, way);
        }
        tree
    }
}
