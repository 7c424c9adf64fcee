//! Leafwright: from a text that describes furniture to a plan that a stranger can build from.
//!
//! The road of the data, one module a stage, is drawn in `DEVELOPERS.md`.

pub mod behaviour;
pub mod build;
pub mod caution;
pub mod cli;
pub mod diff;
pub mod display;
pub mod document;
pub mod drawing;
pub mod export;
pub mod finding;
pub mod format;
pub mod full_size;
pub mod geometry;
pub mod library;
pub mod model;
pub mod options;
pub mod page;
pub mod pdf;
pub mod road;
pub mod rules;
pub mod solid;
pub mod source;
pub mod stock;
pub mod syntax;
pub mod text;
pub mod units;
pub mod web;
pub mod wood;
pub mod words;
