//! Two sequences side by side: what of each corresponds.

use std::ops::Range;

use similar::{Algorithm, DiffOp, capture_diff_slices};

/// A stretch of two sequences.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Stretch {
    /// The same in both: where it begins in the earlier one, and where it is in the later one.
    Same(usize, Range<usize>),
    /// Other: where it is in the earlier one and in the later one; one of them may be empty.
    Other(Range<usize>, Range<usize>),
}

/// The stretches of two sequences, in order.
pub fn stretches<T: std::hash::Hash + Ord>(before: &[T], after: &[T]) -> Vec<Stretch> {
    let operations = capture_diff_slices(Algorithm::Patience, before, after);
    operations
        .into_iter()
        .map(|operation| match operation {
            DiffOp::Equal {
                old_index,
                new_index,
                len,
            } => Stretch::Same(old_index, new_index..new_index + len),
            DiffOp::Delete {
                old_index,
                old_len,
                new_index,
            } => Stretch::Other(old_index..old_index + old_len, new_index..new_index),
            DiffOp::Insert {
                old_index,
                new_index,
                new_len,
            } => Stretch::Other(old_index..old_index, new_index..new_index + new_len),
            DiffOp::Replace {
                old_index,
                old_len,
                new_index,
                new_len,
            } => Stretch::Other(
                old_index..old_index + old_len,
                new_index..new_index + new_len,
            ),
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_left_out_replaced_and_new() {
        let found = stretches(&["a", "b", "c", "d"], &["a", "x", "d", "e"]);
        assert_eq!(
            found,
            [
                Stretch::Same(0, 0..1),
                Stretch::Other(1..3, 1..2),
                Stretch::Same(3, 2..3),
                Stretch::Other(4..4, 3..4),
            ]
        );
    }
}
