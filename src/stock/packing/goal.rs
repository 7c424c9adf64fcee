//! Ruin and recreate with a goal: the same items for less than what is paid now.
//!
//! The idea is that of S. Gardeyn and T. Wauters (European Journal of Operational Research,
//! 2022). A state holds bins that cost no more than the goal allows, and a pool of items that
//! lie on none of them. Each round clears a few rectangles, lays what fits of the pool where it
//! fits best, and keeps the outcome where less lies in the pool than in one of the last states
//! (late acceptance: E. K. Burke and Y. Bykov, European Journal of Operational Research, 2017).
//! An empty pool is a layout that costs less; the goal is then set anew.

use super::chance::Chance;
use super::sheet::{Content, Id, Pose, Sheet};
use super::tree::Way;
use super::{Item, Problem};

/// States that a new one is compared with.
fn tune(name: &str, default: usize) -> usize { std::env::var(name).ok().and_then(|v| v.parse().ok()).unwrap_or(default) }
/// One place in so many is not looked at, so that the same pool is not always laid alike.

/// How many items a round takes off on average.

/// Sides are counted in so many parts of the longest, wherever only an estimate is wanted.
const PARTS: i64 = 1 << 14;

/// What search knows of an item and never changes.
#[derive(Clone, Debug)]
struct Shape {
    poses: Vec<Pose>,
    area: i64,
    long: i64,
    together: Option<u32>,
}

/// What is searched for: everything in bins that cost no more than that.
pub(super) struct Goal<'a> {
    problem: &'a Problem,
    shapes: Vec<Shape>,
    scale: u32,
    chance: Chance,
    blink: u64, taken: usize, pow: usize, ord: usize, local: usize,
    /// Rectangles looked at so far.
    pub(super) work: u64,
}

/// Bins in use and items in none.
#[derive(Clone, Debug)]
struct State {
    sheets: Vec<Sheet>,
    pool: Vec<u32>,
    cost: i128,
    most: i128,
    stock: Vec<usize>,
    unplaced: i64,
}

struct Spot {
    sheet: usize,
    id: Id,
    pose: Pose,
    first: Way,
}

impl<'a> Goal<'a> {
    pub(super) fn new(problem: &'a Problem) -> Self {
        let longest = problem
            .bins
            .iter()
            .map(|bin| bin.along.max(bin.across))
            .max()
            .unwrap_or(1);
        let scale = 64 - ((longest / PARTS) as u64).leading_zeros();
        let shapes = problem
            .items
            .iter()
            .map(|item| Shape {
                poses: item.poses().collect(),
                area: estimate(item.along, item.across, scale),
                long: item.along.max(item.across),
                together: item.together,
            })
            .collect();
        Self {
            problem,
            shapes,
            scale,
            chance: Chance::new(), blink: tune("BLINK",60) as u64, taken: tune("TAKEN",6), pow: tune("POW",2), ord: tune("ORD",0), local: tune("LOCAL",0),
            work: 0,
        }
    }

    fn area(&self, item: u32) -> i64 {
        self.shapes
            .get(item as usize)
            .map_or(0, |shape| shape.area)
    }

    /// Looks for a layout that costs at most `most`, beginning with `sheets`; what does not fit
    /// the goal goes to the pool.
    pub(super) fn reach(&mut self, sheets: &[Sheet], most: i128, limit: u64) -> Option<Vec<Sheet>> {
        let mut state = self.begin(sheets, most);
        let hist=tune("HIST",300);let mut history = vec![state.unplaced; hist];
        let mut kept: Vec<(usize, Sheet)> = Vec::new();
        let mut saved = 0;
        let mut pool = state.pool.clone();
        let mut round = 0;
        while !state.pool.is_empty() {
            if self.work >= limit {
                return None;
            }
            pool.clone_from(&state.pool);
            let (cost, unplaced) = (state.cost, state.unplaced);
            let stock = state.stock.clone();
            saved = 0;
            self.work += 8;
            self.ruin(&mut state, &mut kept, &mut saved);
            self.recreate(&mut state, &mut kept, &mut saved);
            state.unplaced = state.pool.iter().map(|item| self.area(*item)).sum();
            let Some(late) = history.get_mut(round % hist) else {
                return None;
            };
            if state.unplaced <= *late || state.unplaced <= unplaced {
                // kept
            } else {
                for (place, sheet) in kept.iter_mut().take(saved) {
                    if let Some(now) = state.sheets.get_mut(*place) {
                        std::mem::swap(now, sheet);
                    }
                }
                std::mem::swap(&mut state.pool, &mut pool);
                state.cost = cost;
                state.unplaced = unplaced;
                state.stock = stock;
            }
            *late = state.unplaced;
            round += 1;
        }
        let _ = saved;
        state.sheets.retain(|sheet| !sheet.is_empty());
        Some(state.sheets)
    }

    fn begin(&mut self, sheets: &[Sheet], most: i128) -> State {
        let mut order: Vec<(i64, usize)> = sheets
            .iter()
            .enumerate()
            .map(|(index, sheet)| (sheet.items().map(|item| self.area(item)).sum(), index))
            .collect();
        order.sort_unstable_by_key(|(area, index)| (std::cmp::Reverse(*area), *index));
        let mut state = State {
            sheets: Vec::new(),
            pool: Vec::new(),
            cost: 0,
            most,
            stock: self
                .problem
                .bins
                .iter()
                .map(|bin| bin.count.unwrap_or(usize::MAX))
                .collect(),
            unplaced: 0,
        };
        for (_, index) in order {
            let Some(sheet) = sheets.get(index) else {
                continue;
            };
            let cost = self.cost(sheet.bin);
            if state.cost + cost <= most {
                state.cost += cost;
                if let Some(left) = state.stock.get_mut(sheet.bin) {
                    *left = left.saturating_sub(1);
                }
                state.sheets.push(sheet.clone());
            } else {
                state.pool.extend(sheet.items());
            }
        }
        // Room for bins that may still be opened.
        let several = self.problem.bins.len() > 1;
        let more = if several { 3 } else { 0 };
        for _ in 0..more {
            state.sheets.push(Sheet::default());
        }
        state.unplaced = state.pool.iter().map(|item| self.area(*item)).sum();
        state
    }

    fn cost(&self, bin: usize) -> i128 {
        self.problem.bins.get(bin).map_or(0, |bin| bin.cost)
    }

    fn save(state: &State, place: usize, kept: &mut Vec<(usize, Sheet)>, saved: &mut usize) {
        if kept.iter().take(*saved).any(|(old, _)| *old == place) {
            return;
        }
        let Some(sheet) = state.sheets.get(place) else {
            return;
        };
        if let Some((old, copy)) = kept.get_mut(*saved) {
            *old = place;
            copy.clone_from(sheet);
        } else {
            kept.push((place, sheet.clone()));
        }
        *saved += 1;
    }

    fn ruin(&mut self, state: &mut State, kept: &mut Vec<(usize, Sheet)>, saved: &mut usize) {
        let wanted = 1 + self.chance.below(2 * self.taken);
        let before = state.pool.len(); let mut tries: Vec<usize> = Vec::new();
        for _ in 0..4 * wanted {
            if state.pool.len() >= before + wanted {
                break;
            }
            let place = if self.local > 0 && !self.chance.once_in(8) && tries.len() >= self.local { tries[self.chance.below(tries.len())] } else { let p = self.chance.below(state.sheets.len()); tries.push(p); p };
            let Some(sheet) = state.sheets.get(place) else {
                break;
            };
            if sheet.is_empty() {
                continue;
            }
            let drawn = self.chance.below(sheet.numbers());
            let Ok(id) = Id::try_from(drawn) else {
                continue;
            };
            match sheet.content(id) {
                Content::Free | Content::Unused => continue,
                Content::Row(_) | Content::Item(_) => {}
            }
            Self::save(state, place, kept, saved);
            if let Some(sheet) = state.sheets.get_mut(place) {
                sheet.clear(id, &mut state.pool);
                if sheet.is_empty() {
                    let cost = self.cost(sheet.bin);
                    state.cost -= cost;
                    if let Some(left) = state.stock.get_mut(sheet.bin) {
                        *left = left.saturating_add(1);
                    }
                }
            }
        }
    }

    fn recreate(&mut self, state: &mut State, kept: &mut Vec<(usize, Sheet)>, saved: &mut usize) {
        let mut pool = std::mem::take(&mut state.pool);
        let draw = self.chance.below(8);
        for place in (1..pool.len()).rev() {
            pool.swap(place, self.chance.below(place + 1));
        }
        let (a, b) = match self.ord { 0 => (5, 7), 1 => (3, 6), 2 => (6,8), 3 => (4,4), _ => (8,8) };
        if draw < a {
            pool.sort_by_key(|item| std::cmp::Reverse(self.area(*item)));
        } else if draw < b {
            pool.sort_by_key(|item| {
                let shape = self.shapes.get(*item as usize);
                std::cmp::Reverse(shape.map_or(0, |shape| shape.long))
            });
        }
        let mut missed: Option<u32> = None;
        for item in pool {
            // A second copy of what fitted nowhere fits nowhere.
            if missed == Some(item) {
                state.pool.push(item);
                continue;
            }
            if let Some(spot) = self.best_spot(state, item) {
                Self::save(state, spot.sheet, kept, saved);
                if let Some(sheet) = state.sheets.get_mut(spot.sheet) {
                    sheet.lay(spot.id, item, spot.pose, spot.first);
                }
            } else if !self.open(state, item, kept, saved) {
                state.pool.push(item);
                missed = Some(item);
            }
        }
    }

    fn best_spot(&mut self, state: &State, item: u32) -> Option<Spot> {
        let shape = self.shapes.get(item as usize)?;
        let mut best: Option<(i64, Spot)> = None;
        for (place, sheet) in state.sheets.iter().enumerate() {
            if sheet.is_empty() {
                continue;
            }
            self.work += 1;
            if !shape.poses.iter().any(|pose| sheet.may_hold(*pose)) { continue; }
            self.work += sheet.free().len() as u64;
            for &id in sheet.free() {
                let (along, across) = sheet.sizes(id);
                for &pose in &shape.poses {
                    if pose.0 > along || pose.1 > across {
                        continue;
                    }
                    if self.chance.once_in(self.blink) {
                        continue;
                    }
                    let (score, first) = self.score((along, across), pose);
                    if best.as_ref().is_none_or(|(least, _)| score < *least) {
                        best = Some((
                            score,
                            Spot {
                                sheet: place,
                                id,
                                pose,
                                first,
                            },
                        ));
                    }
                }
            }
        }
        best.map(|(_, spot)| spot)
    }

    /// What is lost by laying an item in a rectangle, and the cut that loses least.
    fn score(&self, (along, across): (i64, i64), pose: Pose) -> (i64, Way) {
        let value = |along: i64, across: i64| {
            let area = estimate(along, across, self.scale);
            match self.pow { 2 => area * area, 1 => area * area.isqrt(), _ => (area * area>>20) * area.isqrt() }
        };
        let (rest_along, rest_across) = (along - pose.0, across - pose.1);
        let whole = value(along, across);
        let rip = whole - value(along, rest_across) - value(rest_along, pose.1);
        let crosscut = whole - value(rest_along, across) - value(pose.0, rest_across);
        if rip <= crosscut {
            (rip, Way::Rip)
        } else {
            (crosscut, Way::Crosscut)
        }
    }

    fn open(
        &mut self,
        state: &mut State,
        item: u32,
        kept: &mut Vec<(usize, Sheet)>,
        saved: &mut usize,
    ) -> bool {
        let Some(shape) = self.shapes.get(item as usize) else {
            return false;
        };
        let Some(place) = state.sheets.iter().position(Sheet::is_empty) else {
            return false;
        };
        let count = self.problem.bins.len();
        let from = self.chance.below(count);
        for step in 0..count {
            let index = (from + step) % count;
            let Some(bin) = self.problem.bins.get(index) else {
                continue;
            };
            if state.stock.get(index).is_none_or(|left| *left == 0)
                || state.cost + bin.cost > state.most
            {
                continue;
            }
            let fitting: Vec<Pose> = shape
                .poses
                .iter()
                .copied()
                .filter(|pose| pose.0 <= bin.along && pose.1 <= bin.across)
                .collect();
            if fitting.is_empty() {
                continue;
            }
            let Some(&pose) = fitting.get(self.chance.below(fitting.len())) else {
                continue;
            };
            let (_, first) = self.score((bin.along, bin.across), pose);
            Self::save(state, place, kept, saved);
            if let Some(sheet) = state.sheets.get_mut(place) {
                sheet.start(index, bin.along, bin.across);
                sheet.lay(0, item, pose, first);
            }
            state.cost += bin.cost;
            if let Some(left) = state.stock.get_mut(index) {
                *left = left.saturating_sub(1);
            }
            return true;
        }
        false
    }
}

/// An area in parts, for comparison only.
fn estimate(along: i64, across: i64, scale: u32) -> i64 {
    (along >> scale) * (across >> scale)
}
