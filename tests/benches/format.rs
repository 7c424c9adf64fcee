//! What the canonical form costs, as a ratio to reading the same text, and how it grows.
//!
//! `cargo bench --bench format` takes walls of cabinets of about 200, 2000 and 20000 lines; the best
//! of three runs each.
#![expect(
    clippy::disallowed_methods,
    clippy::print_stdout,
    reason = "a bench reads the clock and prints"
)]

use std::time::Instant;

use leafwright::format::format;
use leafwright::source::Sources;
use leafwright::syntax;

#[path = "generate.rs"]
mod generate;

/// Seconds of the best of three runs.
fn best<T>(mut work: impl FnMut() -> T) -> f64 {
    let runs = (0..3).map(|_| {
        let start = Instant::now();
        std::hint::black_box(work());
        start.elapsed().as_secs_f64()
    });
    runs.fold(f64::INFINITY, f64::min)
}

fn main() {
    for lines in [200_u32, 2_000, 20_000] {
        let one = generate::wall_of_cabinets(1).lines().count().max(1);
        let text = generate::wall_of_cabinets(lines as usize / one + generate::cabinets_for(1));
        let (sources, file) = Sources::single("wall.wright", &text);
        let reading = best(|| syntax::parse(&sources, file));
        let formatting = best(|| format(&sources, file));
        let bytes = u32::try_from(text.len()).map_or(0.0, f64::from);
        println!(
            "lines={} bytes={bytes} format_ms={:.2} parse_ms={:.2} ratio={:.2} mb_per_s={:.1}",
            text.lines().count(),
            formatting * 1e3,
            reading * 1e3,
            formatting / reading,
            bytes / formatting / 1e6,
        );
    }
}
