//! What screw rules measure: how far a screw's point gets in the second piece.

use crate::build::{Build, Fastener, Hardware, Joint, JointKind};
use crate::units::Length;

/// A screw of a joint, and the wood on its way.
pub(super) struct Screwed<'b> {
    pub(super) joint: &'b Joint,
    pub(super) item: &'b Hardware,
    /// Wood from the screw's head to the contact.
    pub(super) before: Length,
    /// How far the point reaches beyond the contact.
    pub(super) bite: Length,
    /// Wood beyond the contact.
    pub(super) beyond: Length,
}

/// One screw of each joint made with screws: all of one joint are alike.
pub(super) fn screwed(build: &Build) -> impl Iterator<Item = Screwed<'_>> {
    build.joints.iter().filter_map(move |joint| {
        if !matches!(joint.kind, JointKind::Screws | JointKind::PocketScrews) {
            return None;
        }
        let fastener: &Fastener = joint.fasteners.first()?;
        let item = build.hardware.get(fastener.hardware.0)?;
        let axis = joint.contact.direction.axis().index();
        let from = fastener.from.get(axis)?;
        let to = fastener.to.get(axis)?;
        let second = if fastener.driven == joint.contact.direction {
            joint.to
        } else {
            joint.part
        };
        let beyond = build.piece(second)?.body.get(axis)?.size();
        Some(Screwed {
            joint,
            item,
            before: (joint.contact.position - *from).abs(),
            bite: (*to - joint.contact.position) * fastener.driven.sign(),
            beyond,
        })
    })
}
