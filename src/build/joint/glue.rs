//! Glue alone: nothing is cut, nothing is added.

use super::Bench;

/// Needs nothing beyond the contact.
pub(super) fn make(_bench: &mut Bench<'_, '_>) {}
