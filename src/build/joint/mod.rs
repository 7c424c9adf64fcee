//! Joints: one file a kind, each says what it cuts into both pieces, what it adds to them and
//! where its fasteners go.
//!
//! A new kind gets its word in `model::JointKind`, its file here and its line in [`make`]; the
//! compiler points at the other places. `DEVELOPERS.md` walks through one.

mod bench;
mod bolts;
mod box_joint;
mod channel;
mod corner;
mod dado;
mod dowels;
mod glue;
mod groove;
pub(in crate::build) mod half_lap;
mod hinges;
mod holes;
mod inserted;
mod items;
mod lamination;
mod loose_tenons;
mod magnets;
mod mitre;
mod mortise_and_tenon;
mod nails;
mod pocket_screws;
mod rabbet;
mod runners;
mod screws;
mod shelf_pins;
pub(in crate::build) mod strips;
mod tongue_and_groove;

use super::piece::Piece;
use super::types::{Contact, JointKind};
use crate::model::JoinDesign;

pub(super) use bench::Bench;
pub(super) use items::items_of;

/// Makes the joint: cuts both pieces, sets the fasteners.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    match bench.join.kind {
        JointKind::Glue => glue::make(bench),
        JointKind::Screws => screws::make(bench),
        JointKind::PocketScrews => pocket_screws::make(bench),
        JointKind::Dado => dado::make(bench),
        JointKind::Groove => groove::make(bench),
        JointKind::Rabbet => rabbet::make(bench),
        JointKind::Dowels => dowels::make(bench),
        JointKind::LooseTenons => loose_tenons::make(bench),
        JointKind::MortiseAndTenon => mortise_and_tenon::make(bench),
        JointKind::HalfLap => half_lap::make(bench),
        JointKind::BoxJoint => box_joint::make(bench),
        JointKind::Mitre => mitre::make(bench),
        JointKind::TongueAndGroove => tongue_and_groove::make(bench),
        JointKind::Lamination => lamination::make(bench),
        JointKind::Bolts => bolts::make(bench),
        JointKind::Nails => nails::make(bench),
        JointKind::Hinges => hinges::make(bench),
        JointKind::Runners => runners::make(bench),
        JointKind::Strips => strips::make(bench),
        JointKind::ShelfPins => shelf_pins::make(bench),
        JointKind::Magnets => magnets::make(bench),
    }
}

/// Lets the coming piece grow by what the joint adds to it; done for all joints before any is made.
pub(super) fn grow(join: &JoinDesign, contact: &Contact, part: &mut Piece<'_>, to: &Piece<'_>) {
    match join.kind {
        JointKind::Dado
        | JointKind::Groove
        | JointKind::Rabbet
        | JointKind::MortiseAndTenon
        | JointKind::TongueAndGroove => channel::grow(join, contact, part),
        // Both reach to the outside of the corner.
        JointKind::BoxJoint | JointKind::Mitre => {
            part.grow(
                part.side(contact.direction),
                to.depth_along(contact.direction),
            );
        }
        JointKind::Glue
        | JointKind::Screws
        | JointKind::PocketScrews
        | JointKind::Dowels
        | JointKind::LooseTenons
        | JointKind::HalfLap
        | JointKind::Lamination
        | JointKind::Bolts
        | JointKind::Nails
        | JointKind::Hinges
        | JointKind::Runners
        | JointKind::Strips
        | JointKind::ShelfPins
        | JointKind::Magnets => {}
    }
}
