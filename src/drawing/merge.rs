//! Lines that fall together in a view are drawn once.
//!
//! Where two parts lie flush, each brings its own edge to the seam; a reader should see one.
#![expect(
    clippy::indexing_slicing,
    reason = "numbers come from the list that was laid into the grid"
)]

use super::grid::{Bounds, Grid};
use super::hidden_lines::VisibleLine;

/// Lines no farther apart than this, in micrometres, fall together.
pub(super) const TOGETHER: f64 = 20.0;

/// The same lines without what an earlier one covers. Lines of a lower `priority` come first,
/// then longer ones; what is left of a line and is shorter than `shortest` goes.
pub(super) fn merge(
    lines: Vec<VisibleLine>,
    priority: impl Fn(&VisibleLine) -> u8,
    shortest: f64,
) -> Vec<VisibleLine> {
    merge_within(TOGETHER, lines, priority, shortest)
}

/// The same for lines that fall together where they are no more than `apart` from each other.
pub(super) fn merge_within(
    apart: f64,
    mut lines: Vec<VisibleLine>,
    priority: impl Fn(&VisibleLine) -> u8,
    shortest: f64,
) -> Vec<VisibleLine> {
    lines.sort_by(|a, b| {
        priority(a)
            .cmp(&priority(b))
            .then(a.edge.cmp(&b.edge))
            .then(a.ends[0][0].total_cmp(&b.ends[0][0]))
    });
    let mut bounds = Bounds::NONE;
    for line in &lines {
        for [x, y] in line.ends {
            bounds.take(x, y);
        }
    }
    let mut grid = Grid::new(&bounds, lines.len());
    let mut kept = Vec::with_capacity(lines.len());
    let mut seen = vec![usize::MAX; lines.len()];
    let mut covered = Vec::new();
    for (number, line) in lines.iter().enumerate() {
        let [[ax, ay], [bx, by]] = line.ends;
        let flat = [ax, ay, bx, by];
        covered.clear();
        near_cells(&grid, flat, apart).for_each(|cell| {
            for other in grid.things(cell) {
                let other = *other as usize;
                if seen[other] != number {
                    seen[other] = number;
                    covered.extend(together(line, &lines[other], apart));
                }
            }
        });
        lay_rest(line, &mut covered, shortest, &mut kept);
        if let Ok(number) = u32::try_from(number) {
            grid.lay_line(number, &flat);
        }
    }
    kept
}

/// The cells a line and its close neighbourhood touch, some of them twice.
fn near_cells(grid: &Grid, line: [f64; 4], apart: f64) -> impl Iterator<Item = usize> + use<> {
    let [ax, ay, bx, by] = line;
    let (dx, dy) = (bx - ax, by - ay);
    let length = (dx * dx + dy * dy).sqrt().max(1.0);
    let (sx, sy) = (-dy / length * apart, dx / length * apart);
    grid.cells_on([ax + sx, ay + sy, bx + sx, by + sy])
        .chain(grid.cells_on([ax - sx, ay - sy, bx - sx, by - sy]))
}

/// The stretch of `line`, from 0 to 1 along it, on which `other` falls.
fn together(line: &VisibleLine, other: &VisibleLine, apart: f64) -> Option<(f64, f64)> {
    let [[ax, ay], [bx, by]] = line.ends;
    let (dx, dy) = (bx - ax, by - ay);
    let length = (dx * dx + dy * dy).sqrt();
    if length <= 0.0 {
        return None;
    }
    let along = |[x, y]: [f64; 2]| ((x - ax) * dx + (y - ay) * dy) / length;
    let aside = |[x, y]: [f64; 2]| (dx * (y - ay) - dy * (x - ax)) / length;
    let (s, t) = (along(other.ends[0]), along(other.ends[1]));
    let (u, v) = (aside(other.ends[0]), aside(other.ends[1]));
    if u.min(v) > apart || u.max(v) < -apart || (t - s).abs() <= 0.0 {
        return None;
    }
    let (low, high) = (s.min(t).max(0.0), s.max(t).min(length));
    let at = |position: f64| u + (v - u) * ((position - s) / (t - s));
    (high > low && at(low).abs() <= apart && at(high).abs() <= apart)
        .then_some((low / length, high / length))
}

/// Keeps what no covered stretch takes from a line.
fn lay_rest(
    line: &VisibleLine,
    covered: &mut [(f64, f64)],
    shortest: f64,
    kept: &mut Vec<VisibleLine>,
) {
    if covered.is_empty() {
        kept.push(*line);
        return;
    }
    let [[ax, ay], [bx, by]] = line.ends;
    let length = line.length();
    let lay = |a: f64, b: f64| {
        if (b - a) * length >= shortest {
            let at = |t: f64| [ax + (bx - ax) * t, ay + (by - ay) * t];
            kept.push(VisibleLine {
                edge: line.edge,
                ends: [at(a), at(b)],
            });
        }
    };
    between(covered, lay);
}

/// Calls `lay` with what stretches leave of a line, from 0 to 1 along it; the last one may be none.
pub(super) fn between(stretches: &mut [(f64, f64)], mut lay: impl FnMut(f64, f64)) {
    stretches.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut reached = 0.0;
    for (a, b) in stretches {
        if *a > reached {
            lay(reached, *a);
        }
        reached = f64::max(reached, *b);
    }
    lay(reached, 1.0);
}
