//! What a check costs, from the text to the last rule, and how it grows.
//!
//! `cargo bench --bench checks` takes racks of about 10, 100 and 1000 parts with three joints to a
//! part, and the wall of cabinets of 1000; `cargo bench --bench checks -- 500 2000` others. The
//! best of three runs each. `growth` is seconds by joints against the size before: 1.0 is linear.
#![expect(
    clippy::disallowed_methods,
    clippy::print_stdout,
    reason = "a bench reads the clock and prints"
)]

use std::time::Instant;

use leafwright::model::Overrides;
use leafwright::road;
use leafwright::source::Sources;

#[path = "generate.rs"]
mod generate;

/// Seconds of the best of three checks, and the number of joints.
fn check(name: &str, text: &str) -> (f64, usize) {
    let (sources, file) = Sources::single(name, text);
    let mut best = f64::INFINITY;
    let (mut parts, mut joints) = (0, 0);
    for _ in 0..3 {
        let start = Instant::now();
        let checked = road::check(&sources, file, &Overrides::default());
        best = best.min(start.elapsed().as_secs_f64());
        for finding in checked.findings.iter().take(3) {
            println!("{name}: {} {}", finding.page.code, finding.message);
        }
        if let Some(sound) = &checked.value.sound {
            parts = sound.build().placed.len();
            joints = sound.build().joints.len();
        }
    }
    println!("{name}: parts={parts} joints={joints} seconds={best:.3}");
    (best, joints)
}

fn main() {
    let sizes: Vec<usize> = std::env::args()
        .skip(1)
        .filter_map(|size| size.parse().ok())
        .collect();
    let sizes = if sizes.is_empty() {
        vec![10, 100, 1000]
    } else {
        sizes
    };
    let mut before: Option<(f64, usize)> = None;
    for size in sizes {
        let (seconds, joints) = check("racks", &generate::racks_for(size));
        if let Some((least, few)) = before {
            println!(
                "racks: growth={:.2}",
                (seconds / least) / (joints as f64 / few as f64)
            );
        }
        before = Some((seconds, joints));
    }
    let wall = generate::wall_of_cabinets(generate::cabinets_for(1000));
    check("cabinets", &wall);
}
