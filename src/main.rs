//! The `leafwright` command: arguments in, exit code out.

use std::process::ExitCode;

fn main() -> ExitCode {
    leafwright::cli::run()
}
