//! Ruin and recreate with a goal: the same items for less than what is paid now.
//!
//! The idea is that of S. Gardeyn and T. Wauters (European Journal of Operational Research,
//! 2022). A state (`state.rs`) holds bins that cost no more than the goal allows, and a pool of
//! items that lie on none of them. Each round clears a few rectangles, lays what fits of the
//! pool where it fits best, and keeps the outcome where less lies in the pool than in the state
//! before or in one of the last states (late acceptance: E. K. Burke and Y. Bykov, European
//! Journal of Operational Research, 2017). An empty pool is a layout that reaches the goal.

use super::chance::Chance;
use super::sheet::{Content, Id, Sheet};
use super::shop::{Summary, Tally};
use super::state::{Shapes, State};
use super::{Pose, Problem, Way, one_by_one};

/// States that a new one is compared with.
const HISTORY: usize = 100;
/// One place in so many is not looked at, so that the same pool is not always laid alike.
const BLINK: u64 = 100;
/// Twice as many items as a round takes off on average.
const MOST_TAKEN: usize = 12;
/// Bins a round takes items off, for most of them.
const NEAR: usize = 2;

/// The search for everything in bins that cost no more than the goal.
pub(super) struct Goal<'a> {
    problem: &'a Problem,
    shapes: Shapes,
    chance: Chance,
    /// Rectangles looked at so far.
    pub(super) work: u64,
}

/// A place for an item.
struct Spot {
    sheet: usize,
    id: Id,
    pose: Pose,
    first: Way,
}

/// What a search came to.
pub(super) struct Reached {
    /// The bins.
    pub(super) sheets: Vec<Sheet>,
    /// Items that lie on none of them, with repeats.
    pub(super) pool: Vec<u32>,
}

impl<'a> Goal<'a> {
    pub(super) fn new(problem: &'a Problem) -> Self {
        Self {
            problem,
            shapes: Shapes::of(problem),
            chance: Chance::new(),
            work: 0,
        }
    }

    /// Lays all items on new bins, largest first, each where it fits best.
    pub(super) fn begin(&mut self) -> Reached {
        let mut state = State::new(self.problem, i128::MAX);
        state.pool = one_by_one(self.problem.items.iter().map(|item| item.count));
        self.recreate(&mut state);
        Reached {
            pool: std::mem::take(&mut state.pool),
            sheets: state.into_sheets(),
        }
    }

    /// Looks for a layout that costs at most `most`, beginning with `sheets`; what does not fit
    /// the goal, and `more`, goes to the pool. Ends where the work done comes to `limit`.
    pub(super) fn reach(
        &mut self,
        sheets: &[Sheet],
        more: Vec<u32>,
        most: i128,
        limit: u64,
    ) -> Reached {
        let mut state = State::within(self.problem, &self.shapes, sheets, most);
        state.pool.extend(more);
        let mut unplaced = self.shapes.unplaced(&state.pool);
        let mut history = [unplaced; HISTORY];
        let mut round = 0;
        while !state.pool.is_empty() && self.work < limit {
            self.work += 8;
            state.remember();
            self.ruin(&mut state);
            self.recreate(&mut state);
            let now = self.shapes.unplaced(&state.pool);
            let late = history.get(round).copied().unwrap_or(unplaced);
            if now <= late.max(unplaced) {
                unplaced = now;
            } else {
                state.take_back();
            }
            if let Some(late) = history.get_mut(round) {
                *late = unplaced;
            }
            round = (round + 1) % HISTORY;
        }
        Reached {
            pool: std::mem::take(&mut state.pool),
            sheets: state.into_sheets(),
        }
    }

    /// Lays items anew here and there at no more cost, and keeps what is no worse to cut.
    pub(super) fn rearrange(&mut self, sheets: &[Sheet], most: i128, limit: u64) -> Vec<Sheet> {
        let mut state = State::within(self.problem, &self.shapes, sheets, most);
        let mut tally = Tally::of(self.problem, &state.sheets);
        let mut shop = tally.shop();
        while self.work < limit && !state.sheets.is_empty() {
            self.work += 8;
            state.remember();
            self.ruin(&mut state);
            self.recreate(&mut state);
            if !state.pool.is_empty() {
                state.take_back();
                continue;
            }
            let mut before: Vec<(usize, Summary)> = Vec::new();
            for (place, sheet) in state.changed() {
                self.work += sheet.numbers() as u64;
                before.push((place, tally.replace(self.problem, place, sheet)));
            }
            let now = tally.shop();
            if now <= shop {
                shop = now;
                continue;
            }
            for (place, summary) in before {
                tally.put(place, summary);
            }
            state.take_back();
        }
        state.into_sheets()
    }

    /// Clears rectangles until enough items are taken off.
    fn ruin(&mut self, state: &mut State) {
        let wanted = state.pool.len() + 1 + self.chance.below(MOST_TAKEN);
        let mut near: Vec<usize> = Vec::with_capacity(NEAR);
        for _ in 0..4 * MOST_TAKEN {
            if state.pool.len() >= wanted {
                break;
            }
            let old = near.get(self.chance.below(NEAR)).copied();
            let place = if let Some(place) = old.filter(|_| near.len() >= NEAR)
                && !self.chance.once_in(8)
            {
                place
            } else {
                let place = self.chance.below(state.sheets.len());
                near.push(place);
                place
            };
            let Some(sheet) = state.sheets.get(place).filter(|sheet| !sheet.is_empty()) else {
                continue;
            };
            let Ok(id) = Id::try_from(self.chance.below(sheet.numbers())) else {
                continue;
            };
            match sheet.content(id) {
                Content::Free | Content::Unused => {}
                Content::Row(_) | Content::Item(_) => state.clear(place, id),
            }
        }
    }

    /// Lays what fits of the pool, in an order drawn by lot: mostly the largest first.
    fn recreate(&mut self, state: &mut State) {
        let mut pool = std::mem::take(&mut state.pool);
        let draw = self.chance.below(8);
        for place in (1..pool.len()).rev() {
            pool.swap(place, self.chance.below(place + 1));
        }
        let shapes = &self.shapes;
        if draw < 5 {
            pool.sort_by_key(|item| std::cmp::Reverse(shapes.get(*item).map(|shape| shape.area)));
        } else if draw < 7 {
            pool.sort_by_key(|item| std::cmp::Reverse(shapes.get(*item).map(|shape| shape.long)));
        }
        let mut missed = None;
        for item in pool {
            // A second copy of what fitted nowhere fits nowhere.
            if missed == Some(item) {
                state.pool.push(item);
                continue;
            }
            if let Some(spot) = self.best_spot(state, item) {
                state.lay(spot.sheet, spot.id, item, spot.pose, spot.first);
            } else if !self.open(state, item) {
                state.pool.push(item);
                missed = Some(item);
            }
        }
    }

    fn best_spot(&mut self, state: &State, item: u32) -> Option<Spot> {
        let poses = &self.shapes.get(item)?.poses;
        let mut best: Option<(i64, Spot)> = None;
        for (place, sheet) in state.sheets.iter().enumerate() {
            self.work += 1;
            if sheet.is_empty() || !poses.iter().any(|pose| sheet.may_hold(*pose)) {
                continue;
            }
            self.work += sheet.free().len() as u64;
            for &id in sheet.free() {
                let (along, across) = sheet.sizes(id);
                for &pose in poses {
                    if pose.0 > along || pose.1 > across || self.chance.once_in(BLINK) {
                        continue;
                    }
                    let Some((score, first)) = self.score(sheet, id, pose) else {
                        continue;
                    };
                    if best.as_ref().is_none_or(|(least, _)| score < *least) {
                        let spot = Spot {
                            sheet: place,
                            id,
                            pose,
                            first,
                        };
                        best = Some((score, spot));
                    }
                }
            }
        }
        best.map(|(_, spot)| spot)
    }

    /// What is lost by laying an item in a rectangle, and the cut that loses least; none where
    /// it would take too many stages.
    fn score(&self, sheet: &Sheet, id: Id, pose: Pose) -> Option<(i64, Way)> {
        let (along, across) = sheet.sizes(id);
        let value = |along, across| self.shapes.value(along, across);
        let (rest_along, rest_across) = (along - pose.0, across - pose.1);
        let whole = value(along, across);
        let rip = whole - value(along, rest_across) - value(rest_along, pose.1);
        let crosscut = whole - value(rest_along, across) - value(pose.0, rest_across);
        let ranked = if rip <= crosscut {
            [(rip, Way::Rip), (crosscut, Way::Crosscut)]
        } else {
            [(crosscut, Way::Crosscut), (rip, Way::Rip)]
        };
        let Some(most) = self.problem.most_stages else {
            return Some(ranked[0]);
        };
        ranked
            .into_iter()
            .find(|(_, first)| sheet.stages_with(id, pose, *first) <= most)
    }

    /// Lays an item on one more bin, where the goal allows one.
    fn open(&mut self, state: &mut State, item: u32) -> bool {
        let count = self.problem.bins.len();
        let from = self.chance.below(count);
        for step in 0..count {
            let index = (from + step) % count;
            let Some(bin) = self.problem.bins.get(index) else {
                continue;
            };
            if !state.allows(index, bin.cost) {
                continue;
            }
            let sheet = Sheet::new(index, bin.along, bin.across);
            let Some(shape) = self.shapes.get(item) else {
                continue;
            };
            let fitting: Vec<(Pose, Way)> = shape
                .poses
                .iter()
                .filter(|pose| pose.0 <= bin.along && pose.1 <= bin.across)
                .filter_map(|pose| Some((*pose, self.score(&sheet, 0, *pose)?.1)))
                .collect();
            if let Some(&(pose, first)) = fitting.get(self.chance.below(fitting.len())) {
                state.open(sheet, item, pose, first);
                return true;
            }
        }
        false
    }
}
