//! Time of every stage for builds of any size, and how it grows.
//!
//! `cargo bench --bench stages` takes the example and walls of cabinets of about 10, 100 and 1000
//! parts; `cargo bench --bench stages -- 50 500` others. Each stage's time is the best of three.
//! The last column of the table is the stage's growth from the size before: seconds by parts,
//! as a ratio; 1.0 is linear, and n log n of ten times the parts is about 1.3.
#![expect(
    clippy::disallowed_methods,
    clippy::print_stdout,
    clippy::unwrap_used,
    clippy::expect_used,
    reason = "a bench reads the clock and prints, and stops where something is wrong"
)]

use std::time::Instant;

use leafwright::build::Paper;
use leafwright::document::{Stages, Templates};
use leafwright::finding::Findings;
use leafwright::model::Overrides;
use leafwright::rules::{self, Facts};
use leafwright::source::Sources;
use leafwright::text::Fonts;
use leafwright::words::Words;
use leafwright::{
    behaviour, build, caution, document, drawing, model, page, pdf, road, solid, stock, syntax,
};

#[path = "generate.rs"]
mod generate;

/// Seconds of the stages of one build, in the order of the road.
type Times = Vec<(&'static str, f64)>;

/// The best time of three runs, and what the last one gave.
fn timed<T>(times: &mut Times, stage: &'static str, mut work: impl FnMut() -> T) -> T {
    let mut best = f64::INFINITY;
    let mut made = None;
    for _ in 0..3 {
        let start = Instant::now();
        made = Some(work());
        best = best.min(start.elapsed().as_secs_f64());
    }
    times.push((stage, best));
    made.expect("three runs made something")
}

fn stages(name: &str, text: &str) -> (usize, Times) {
    let fonts = Fonts::shipped().unwrap();
    let templates = Templates::shipped();
    let (sources, file) = Sources::single(name, text);
    let mut times = Times::new();
    let tree = timed(&mut times, "syntax", || syntax::parse_all(&sources, file)).value;
    let overrides = Overrides::default();
    let model = timed(&mut times, "model", || model::resolve(&tree, &overrides)).value;
    let made = timed(&mut times, "build", || build::assemble(&model)).value;
    let solids = timed(&mut times, "solid", || solid::shape(&made)).value;
    let stock = timed(&mut times, "stock", || stock::lay_out(&made, &solids)).value;
    let behaviour = timed(&mut times, "behaviour", || {
        behaviour::work_out(&model, &made, &solids)
    });
    let cautions = timed(&mut times, "caution", || {
        caution::gather(&made, &stock, &behaviour)
    });
    timed(&mut times, "rules", || {
        let facts = Facts {
            model: &model,
            build: &made,
            solids: &solids,
            stock: &stock,
            behaviour: &behaviour,
            cautions: &cautions,
        };
        rules::check(&facts, &Findings::new())
    });
    let checked = timed(&mut times, "check, all of these and rules", || {
        road::check(&sources, file, &overrides)
    });
    let sound = checked.value.sound.expect("the build is sound");
    for finding in checked.findings.iter() {
        println!("{name}: {} {}", finding.page.code, finding.message);
    }
    timed(&mut times, "drawing: views of steps and whole", || {
        drawing::views(&sound, &solids, &fonts)
    });
    let figures = timed(&mut times, "drawing", || {
        let mut figures = drawing::draw(&sound, &solids, &fonts, &Words::english()).figures;
        figures.extend(drawing::cutting_layouts(
            &fonts,
            &made,
            &stock,
            &Words::english(),
        ));
        figures
    });
    let composed = timed(&mut times, "document", || {
        let stages = Stages {
            build: &made,
            solids: &solids,
            stock: &stock,
            cautions: &cautions,
            loads: &model.loads,
            behaviour: &behaviour,
            options: &[],
            since: None,
            allowed: &[],
        };
        document::compose(stages, figures.clone(), &templates)
    });
    let pages = timed(&mut times, "page", || {
        page::paginate(&composed.value, &fonts, Paper::A4)
    });
    let bytes = timed(&mut times, "pdf", || pdf::write(&pages.value, &fonts, None)).value;
    println!(
        "{name}: {} pieces, {} joints, {} pages, {} KB, source {} KB",
        made.placed.len(),
        made.joints.len(),
        pages.value.pages.len(),
        bytes.len() / 1024,
        text.len() / 1024
    );
    (made.placed.len(), times)
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
    let path = "examples/potting-bench/potting-bench.wright";
    let example = std::fs::read_to_string(path).unwrap();
    let mut columns = vec![("example".to_owned(), stages(path, &example))];
    for size in sizes {
        let name = format!("{size} parts");
        let text = generate::wall_of_cabinets(generate::cabinets_for(size));
        columns.push((name.clone(), stages(&name, &text)));
    }
    println!(
        "{:32}{}",
        "milliseconds",
        columns
            .iter()
            .map(|(n, _)| format!("{n:>14}"))
            .collect::<String>()
    );
    let rows = columns.first().map_or(0, |(_, (_, times))| times.len());
    for row in 0..rows {
        let mut line = String::new();
        let mut before: Option<(usize, f64)> = None;
        for (number, (_, (pieces, times))) in columns.iter().enumerate() {
            let Some((stage, seconds)) = times.get(row) else {
                continue;
            };
            if number == 0 {
                line = format!("{stage:32}");
            }
            line += &format!("{:14.2}", seconds * 1000.0);
            let growth =
                |(few, least): (usize, f64)| (seconds / least) / (*pieces as f64 / few as f64);
            if let Some(growth) = before.filter(|_| number > 1).map(growth) {
                line += &format!(" ({growth:.2})");
            }
            if number > 0 {
                before = Some((*pieces, *seconds));
            }
        }
        println!("{line}");
    }
}
