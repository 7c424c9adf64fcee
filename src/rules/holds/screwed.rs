//! What screw rules measure: how far a screw's point gets in the second piece.

use crate::build::{Build, Fastener, Hardware, Joint, JointKind, PlacedId};
use crate::units::Length;

/// A screw or nail of a joint, and the wood on its way.
pub(super) struct Screwed<'b> {
    pub(super) joint: &'b Joint,
    pub(super) item: &'b Hardware,
    /// All of the joint, in a row.
    pub(super) all: Vec<&'b Fastener>,
    /// The piece it passes through, and the piece it bites in.
    pub(super) pieces: [PlacedId; 2],
    /// Wood from the screw's head to the contact.
    pub(super) before: Length,
    /// How far the point reaches beyond the contact.
    pub(super) bite: Length,
    /// Wood beyond the contact.
    pub(super) beyond: Length,
}

/// One screw or nail of each joint made with them: all of one joint are alike.
pub(super) fn screwed(build: &Build) -> impl Iterator<Item = Screwed<'_>> {
    build.joints.iter().filter_map(move |joint| {
        let driven = [JointKind::Screws, JointKind::PocketScrews, JointKind::Nails];
        if !driven.contains(&joint.kind) {
            return None;
        }
        let fastener: &Fastener = joint.fasteners.first()?;
        let item = build.hardware.get(fastener.hardware.0)?;
        let axis = joint.contact.direction.axis().index();
        let from = fastener.from.get(axis)?;
        let to = fastener.to.get(axis)?;
        let pieces @ [_, second] = if fastener.driven == joint.contact.direction {
            [joint.part, joint.to]
        } else {
            [joint.to, joint.part]
        };
        let same = |other: &&Fastener| other.hardware == fastener.hardware;
        let beyond = build.piece(second)?.body.get(axis)?.size();
        Some(Screwed {
            joint,
            item,
            all: joint.fasteners.iter().filter(same).collect(),
            pieces,
            before: (joint.contact.position - *from).abs(),
            bite: (*to - joint.contact.position) * fastener.driven.sign(),
            beyond,
        })
    })
}
