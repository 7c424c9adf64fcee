//! The `leafwright` command.

fn main() {}
