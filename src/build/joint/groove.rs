//! A groove: a channel along the grain of the receiving piece, a panel or tongue let into it.

use super::Bench;
use super::channel::{self, Reach};
use crate::model::PocketKind;

/// Cuts the channel where the pieces touch and lets the coming piece reach its floor.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    channel::cut(bench, PocketKind::Groove, Reach::AsTouching);
}
