//! What a comparison of two builds costs, and what all selections of a plan cost to check.
//!
//! `cargo bench --bench diff` compares walls of cabinets of about 10, 100 and 1000 parts with the same
//! in another width, and checks the first example with six options of two choices, 64 selections. The
//! best of three runs each, as a ratio to checking one of the two builds.
#![expect(
    clippy::disallowed_methods,
    clippy::print_stdout,
    reason = "a bench reads the clock and prints"
)]

use std::fmt::Write;
use std::time::Instant;

use leafwright::diff::compare;
use leafwright::model::Overrides;
use leafwright::road::{self, Checked};
use leafwright::source::Sources;

#[path = "generate.rs"]
mod generate;

/// Seconds of the best of three runs, and what the last one gave.
fn best<T>(mut work: impl FnMut() -> T) -> (f64, T) {
    let mut timed = || {
        let start = Instant::now();
        let value = work();
        (start.elapsed().as_secs_f64(), value)
    };
    let (first, _) = timed();
    let (second, _) = timed();
    let (third, value) = timed();
    (first.min(second).min(third), value)
}

fn checked(text: &str) -> Checked {
    let (sources, file) = Sources::single("wall.wright", text);
    road::check(&sources, file, &Overrides::default()).value
}

fn main() {
    for parts in [10, 100, 1000] {
        let text = generate::wall_of_cabinets(generate::cabinets_for(parts));
        let other = text.replacen("300 mm", "310 mm", 3);
        let (checking, before) = best(|| checked(&text));
        let after = checked(&other);
        let (Some(one), Some(two)) = (before.selected(), after.selected()) else {
            println!("parts={parts}: one of the two is not sound");
            continue;
        };
        let (comparing, found) = best(|| compare(&one, &two));
        println!(
            "diff parts={} changes={} seconds={comparing:.4} ratio_to_check={:.3}",
            one.build.placed.len(),
            found.parts.len() + found.moved.len() + found.joints.len() + found.steps.len(),
            comparing / checking,
        );
    }
    let mut text = include_str!("../../examples/potting-bench/potting-bench.wright").to_owned();
    for option in 0..6 {
        // Writing to a string does not fail.
        let _ = writeln!(
            text,
            "option o{option} \"Option\" {{\n    choice a \"A\" default {{ let v{option} = 1 }}\n    choice b \"B\" {{ let v{option} = 2 }}\n}}\nrequire v{option} > 0"
        );
    }
    let (sources, file) = Sources::single("bench.wright", &text);
    let overrides = Overrides::default();
    let (one, _) = best(|| {
        road::check(&sources, file, &overrides)
            .value
            .sound
            .is_some()
    });
    let (all, sound) = best(|| {
        road::check_choices(&sources, file, &overrides)
            .value
            .sound
            .is_some()
    });
    println!(
        "options selections=64 sound={sound} seconds={all:.3} ratio_to_one={:.1}",
        all / one
    );
}
