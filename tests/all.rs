//! The test binary: whole sources in, whole reports out.
//!
//! `UPDATE=1 cargo test` rewrites the expected reports; without it a missing or differing one
//! fails. Read their diff as the change of behaviour that it is.
#![expect(
    clippy::disallowed_methods,
    clippy::indexing_slicing,
    clippy::unwrap_used,
    reason = "tests read their cases, write their reports, and fail where they cannot"
)]

mod assemblies;
mod broken;
mod changes;
mod check;
mod diff;
mod exports;
mod findings;
mod format;
#[path = "benches/generate.rs"]
mod generate;
mod joints;
mod language;
mod libraries;
mod looks;
mod model;
mod options;
mod paper;
mod papers;
mod readme;
mod renderings;
mod road;
mod shell;
mod syntax;
mod templates;
mod tidy;
mod web;
mod words;
