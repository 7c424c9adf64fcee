//! Findings for programs.
