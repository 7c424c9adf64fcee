//! The test binary.
