//! Text to syntax tree.

pub mod tree;
