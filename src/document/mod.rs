//! The document.

pub mod tree;
