//! The test binary.

#[cfg(test)]
mod paper;
