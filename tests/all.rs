//! The test binary.

mod paper;
