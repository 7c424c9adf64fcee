//! Time of every stage.

fn main() {}
