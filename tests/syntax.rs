//! Sources into trees.
