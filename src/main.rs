//! The `leafwright` command: arguments in, exit code out.

use std::process::ExitCode;

/// A plan is a million small pieces of geometry and text: this allocator takes a tenth off the
/// time of the whole process.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

fn main() -> ExitCode {
    leafwright::cli::run()
}
