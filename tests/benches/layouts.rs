//! Layouts of published instances and of furniture, with their times.
//!
//! `cargo bench --bench layouts -- FOLDER`
//!
//! Reads every `*.json` of the folder: rectangles (`bin`, or `bins` where there are several
//! sizes) and lengths (`length`), `items` with their counts, `kerf` and `trim` of the file or of
//! an instance. A line goes to standard output for each file and orientation: instances, sheets
//! (their area where there are several sizes), best known, the proven bound, how much over the
//! best known, seconds in all and of the slowest instance. Every layout is counted again;
//! `wrong=` tells how many were at fault, and each fault has a line of its own. For sheets the
//! shop's figures follow, of the first layouts found at that cost and of the chosen ones: settings
//! of fence and stop, cuts of small pieces, largest offcut as a share of a sheet, and how many of
//! the chosen ones are better. Then the time for growing numbers of furniture parts.
#![allow(
    clippy::disallowed_methods,
    clippy::print_stdout,
    reason = "a bench reads files and the clock, and prints"
)]

use std::path::{Path, PathBuf};
use std::time::Instant;

use leafwright::stock::plain::{
    SheetPacking, SheetPart, SheetProblem, SheetStock, ShopFigures, StickPart, StickProblem,
    StickStock, cut_sticks, pack_sheets,
};
use leafwright::stock::recount::{sheet_faults, stick_faults};
use serde_json::Value;

fn main() {
    let folders = std::env::args()
        .skip(1)
        .filter(|argument| !argument.starts_with('-'));
    for folder in folders {
        for path in instance_files(Path::new(&folder)) {
            measure(&path);
        }
    }
    for parts in [50, 100, 200, 500, 1000, 10_000] {
        grow(parts);
    }
}

/// Every `*.json` of a folder, in order.
fn instance_files(folder: &Path) -> Vec<PathBuf> {
    let Ok(entries) = std::fs::read_dir(folder) else {
        println!("{} cannot be read", folder.display());
        return Vec::new();
    };
    let mut files: Vec<PathBuf> = entries
        .filter_map(|entry| Some(entry.ok()?.path()))
        .filter(|path| path.extension().is_some_and(|end| end == "json"))
        .collect();
    files.sort();
    files
}

/// Measures a file in all orientations that it has instances for.
fn measure(path: &Path) {
    let name = path
        .file_name()
        .map_or_else(String::new, |name| name.to_string_lossy().into_owned());
    let text = std::fs::read_to_string(path).unwrap_or_default();
    let Ok(file) = serde_json::from_str::<Value>(&text) else {
        println!("{name} is no file of instances");
        return;
    };
    let instances = file
        .get("instances")
        .or(Some(&file))
        .and_then(Value::as_array);
    let (mut sticks, mut oriented, mut rotatable) =
        (Line::default(), Line::default(), Line::default());
    for instance in instances.into_iter().flatten() {
        if let Some(problem) = stick_problem(&file, instance) {
            sticks.cut(&problem, instance);
        }
        if let Some(mut problem) = sheet_problem(&file, instance) {
            oriented.pack(&problem, instance);
            problem.may_turn = true;
            rotatable.pack(&problem, instance);
        }
    }
    sticks.print(&name, "sticks");
    oriented.print(&name, "oriented");
    rotatable.print(&name, "rotatable");
}

/// A line of figures.
#[derive(Default)]
struct Line {
    instances: usize,
    sheets: i128,
    /// None once an instance says nothing.
    best_known: i128,
    unknown: usize,
    bound: i128,
    /// Instances at the best known figure or below.
    reached: usize,
    seconds: f64,
    slowest: f64,
    shop: Option<Shop>,
    faults: Vec<String>,
}

/// What a shop asks of layouts of one cost: of the chosen ones and of the first ones found.
#[derive(Default)]
struct Shop {
    first: ShopSum,
    chosen: ShopSum,
    better: usize,
}

/// Sums over the instances.
#[derive(Default)]
struct ShopSum {
    settings: usize,
    small_pieces: usize,
    /// Share of a sheet that the largest offcut is.
    offcut: f64,
}

impl ShopSum {
    fn add(&mut self, figures: ShopFigures, sheet: f64) {
        self.settings += figures.settings;
        self.small_pieces += figures.small_pieces;
        self.offcut += figures.offcut as f64 / sheet;
    }
}

impl Shop {
    fn add(&mut self, problem: &SheetProblem, packing: &SheetPacking) {
        let largest = problem
            .sheets
            .iter()
            .map(|sheet| sheet.length * sheet.width);
        let largest = largest.max().unwrap_or(1) as f64;
        self.first.add(packing.first, largest);
        self.chosen.add(packing.shop, largest);
        self.better += usize::from(packing.first.is_worse_than(&packing.shop));
    }
}

impl Line {
    fn cut(&mut self, problem: &StickProblem, instance: &Value) {
        let start = Instant::now();
        let cutting = cut_sticks(problem);
        self.time(start);
        self.faults_of(instance, &stick_faults(problem, &cutting));
        if cutting.uncut.iter().any(|uncut| *uncut > 0) {
            self.faults_of(instance, &["parts stay uncut".to_owned()]);
        }
        self.count(
            cutting.cost,
            cutting.at_least,
            best_known(instance, &["bins", "sheets", "boards"]),
        );
    }

    fn pack(&mut self, problem: &SheetProblem, instance: &Value) {
        let start = Instant::now();
        let packing = pack_sheets(problem);
        self.time(start);
        self.faults_of(instance, &sheet_faults(problem, &packing));
        let keys = if problem.may_turn {
            [
                "area_rotatable",
                "guillotine_rotatable",
                "guillotine3_rotatable",
                "free_rotatable",
            ]
        } else {
            [
                "area_oriented",
                "guillotine_oriented",
                "guillotine3_oriented",
                "free_oriented",
            ]
        };
        if packing.uncut.iter().any(|uncut| *uncut > 0) {
            self.faults_of(instance, &["parts stay uncut".to_owned()]);
        }
        self.count(
            packing.cost,
            packing.least_cost,
            best_known(instance, &keys),
        );
        let shop = self.shop.get_or_insert_default();
        shop.add(problem, &packing);
    }

    fn time(&mut self, start: Instant) {
        let seconds = start.elapsed().as_secs_f64();
        self.instances += 1;
        self.seconds += seconds;
        self.slowest = self.slowest.max(seconds);
    }

    fn faults_of(&mut self, instance: &Value, faults: &[String]) {
        let name = instance.get("name").and_then(Value::as_str).unwrap_or("?");
        let first = faults.first();
        self.faults
            .extend(first.map(|fault| format!("{name}: {fault}")));
    }

    fn count(&mut self, sheets: i128, bound: i128, best_known: Option<i128>) {
        self.sheets += sheets;
        self.bound += bound;
        match best_known {
            Some(best) => {
                self.best_known += best;
                self.reached += usize::from(sheets <= best);
            }
            None => self.unknown += 1,
        }
    }

    fn print(&self, file: &str, kind: &str) {
        if self.instances == 0 {
            return;
        }
        let (best_known, over) = if self.unknown == 0 && self.best_known > 0 {
            let over = (self.sheets - self.best_known) as f64 / self.best_known as f64;
            (self.best_known.to_string(), format!("{:.2}", over * 100.0))
        } else {
            ("-".to_owned(), "-".to_owned())
        };
        let shop = self.shop.as_ref().map_or_else(String::new, |shop| {
            format!(
                " settings={}->{} small={}->{} offcut={:.1}%->{:.1}% better={}",
                shop.first.settings,
                shop.chosen.settings,
                shop.first.small_pieces,
                shop.chosen.small_pieces,
                100.0 * shop.first.offcut / self.instances as f64,
                100.0 * shop.chosen.offcut / self.instances as f64,
                shop.better,
            )
        });
        println!(
            "{file} {kind} instances={} sheets={} best_known={best_known} bound={} over={over}% \
             seconds={:.2} slowest={:.3} reached={} wrong={}{shop}",
            self.instances,
            self.sheets,
            self.bound,
            self.seconds,
            self.slowest,
            self.reached,
            self.faults.len(),
        );
        for fault in &self.faults {
            println!("  {fault}");
        }
    }
}

/// The first figure of these names among the best known, or that figure itself.
fn best_known(instance: &Value, names: &[&str]) -> Option<i128> {
    let best = instance.get("best_known")?;
    let named = names.iter().find_map(|name| whole(best.get(name)?));
    named.or_else(|| whole(best)).map(i128::from)
}

/// A whole number, also one written with a point.
fn whole(value: &Value) -> Option<i64> {
    value.as_i64().or_else(|| {
        let float = value.as_f64()?;
        (float.fract() == 0.0)
            .then(|| format!("{float:.0}").parse().ok())
            .flatten()
    })
}

fn numbers(value: &Value) -> Option<Vec<i64>> {
    value.as_array()?.iter().map(whole).collect()
}

/// A figure of an instance, or of its file, or 0.
fn figure(file: &Value, instance: &Value, name: &str) -> i64 {
    [instance, file]
        .iter()
        .find_map(|value| whole(value.get(name)?))
        .unwrap_or(0)
}

fn count(value: Option<&i64>) -> Option<usize> {
    value.and_then(|count| usize::try_from(*count).ok())
}

fn stick_problem(file: &Value, instance: &Value) -> Option<StickProblem> {
    let length = whole(instance.get("length")?)?;
    let part = |item: &Value| {
        let item = numbers(item)?;
        Some(StickPart {
            length: *item.first()?,
            count: count(item.get(1)).unwrap_or(1),
        })
    };
    Some(StickProblem {
        bars: vec![StickStock {
            length,
            limit: None,
            cost: 1,
        }],
        parts: items(instance)?.iter().filter_map(part).collect(),
        kerf: figure(file, instance, "kerf"),
        trim: figure(file, instance, "trim"),
    })
}

fn sheet_problem(file: &Value, instance: &Value) -> Option<SheetProblem> {
    let several = instance.get("bins").and_then(Value::as_array);
    let bins: Vec<Vec<i64>> = match several {
        Some(bins) => bins.iter().filter_map(numbers).collect(),
        None => vec![numbers(instance.get("bin")?)?],
    };
    let is_mixed = bins.len() > 1;
    let sheet = |bin: &Vec<i64>| {
        let (length, width) = (*bin.first()?, *bin.get(1)?);
        Some(SheetStock {
            length,
            width,
            limit: count(bin.get(2)),
            cost: if is_mixed {
                i128::from(length) * i128::from(width)
            } else {
                1
            },
        })
    };
    let part = |item: &Value| {
        let item = numbers(item)?;
        Some(SheetPart {
            length: *item.first()?,
            width: *item.get(1)?,
            count: count(item.get(2)).unwrap_or(1),
        })
    };
    Some(SheetProblem {
        sheets: bins.iter().filter_map(sheet).collect(),
        parts: items(instance)?.iter().filter_map(part).collect(),
        may_turn: false,
        kerf: figure(file, instance, "kerf"),
        trim: figure(file, instance, "trim"),
        ..SheetProblem::default()
    })
}

fn items(instance: &Value) -> Option<&Vec<Value>> {
    instance.get("items").and_then(Value::as_array)
}

/// Nanometres.
const MM: i64 = 1_000_000;

/// Times a layout of so many furniture parts on sheets of 2440 by 1220 mm.
fn grow(parts: usize) {
    let problem = furniture(parts);
    let start = Instant::now();
    let packing = pack_sheets(&problem);
    let seconds = start.elapsed().as_secs_f64();
    println!(
        "grown parts={parts} seconds={seconds:.3} sheets={} bound={} settings={}->{} \
         small={}->{} wrong={}",
        packing.sheets.len(),
        packing.at_least,
        packing.first.settings,
        packing.shop.settings,
        packing.first.small_pieces,
        packing.shop.small_pieces,
        usize::from(!sheet_faults(&problem, &packing).is_empty()),
    );
}

/// Sides, shelves, fronts and rails as cabinets have them, from a fixed seed.
fn furniture(parts: usize) -> SheetProblem {
    let mut state = 0x5eed_u64;
    // A linear congruential generator (D. E. Knuth, The Art of Computer Programming 2, 3.3.4).
    let mut below = |limit: i64| {
        state = state
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        i64::try_from(state >> 33).unwrap_or(0) % limit
    };
    let mut items = Vec::new();
    let mut left = parts;
    while left > 0 {
        let (length, width) = match below(4) {
            0 => (600 + 20 * below(75), 280 + 20 * below(16)),
            1 => (400 + 10 * below(60), 250 + 10 * below(35)),
            2 => (300 + 7 * below(60), 140 + 5 * below(60)),
            _ => (400 + 10 * below(60), 60 + 10 * below(9)),
        };
        let count = usize::try_from(1 + below(4)).unwrap_or(1).min(left);
        left -= count;
        items.push(SheetPart {
            length: length * MM,
            width: width * MM,
            count,
        });
    }
    SheetProblem {
        sheets: vec![SheetStock {
            length: 2440 * MM,
            width: 1220 * MM,
            limit: None,
            cost: 1,
        }],
        parts: items,
        may_turn: true,
        kerf: 3 * MM,
        trim: 0,
        small: 300 * MM,
        ..SheetProblem::default()
    }
}
