//! A rabbet: a step along an edge or end of the receiving piece, the other piece let into it.

use super::Bench;
use super::channel::{self, Reach};
use crate::model::PocketKind;

/// Cuts the step where the pieces touch and lets the coming piece reach its floor.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    channel::cut(bench, PocketKind::Rabbet, Reach::AlongAnEdge);
}
