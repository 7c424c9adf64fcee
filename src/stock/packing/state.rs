//! Bins in use and items in none: what a search changes, and can take back.

use super::sheet::{Id, Sheet};
use super::{Item, Pose, Problem, Way};

/// Sides are counted in so many parts of the longest at least, wherever an estimate will do.
const PARTS: u32 = 14;

/// What a search knows of an item and never changes.
#[derive(Clone, Debug)]
pub(super) struct Shape {
    /// The ways it may lie.
    pub(super) poses: Vec<Pose>,
    /// Its area, an estimate.
    pub(super) area: i64,
    /// Its longer side.
    pub(super) long: i64,
}

/// The shapes of all items.
#[derive(Clone, Debug)]
pub(super) struct Shapes {
    shapes: Vec<Shape>,
    /// Sides lose so many bits for an estimate, so that no square of an area overflows.
    dropped: u32,
}

impl Shapes {
    pub(super) fn of(problem: &Problem) -> Self {
        let sides = problem.bins.iter().map(|bin| bin.along.max(bin.across));
        let longest = sides.max().unwrap_or(1).max(1);
        let dropped = (longest.ilog2() + 1).saturating_sub(PARTS);
        let area = |item: &Item| (item.along >> dropped) * (item.across >> dropped);
        let shapes = problem.items.iter().map(|item| Shape {
            poses: item.poses().collect(),
            area: area(item),
            long: item.along.max(item.across),
        });
        Self {
            shapes: shapes.collect(),
            dropped,
        }
    }

    pub(super) fn get(&self, item: u32) -> Option<&Shape> {
        self.shapes.get(item as usize)
    }

    /// Area of the items of a pool.
    pub(super) fn unplaced(&self, pool: &[u32]) -> i64 {
        let areas = pool.iter().filter_map(|item| self.get(*item));
        areas.map(|shape| shape.area).sum()
    }

    const fn area(&self, along: i64, across: i64) -> i64 {
        (along >> self.dropped) * (across >> self.dropped)
    }

    /// What a free rectangle is worth: one large one is worth more than two small ones.
    pub(super) const fn value(&self, along: i64, across: i64) -> i64 {
        let area = self.area(along, across);
        area * area
    }
}

/// Bins in use and items in none.
#[derive(Debug)]
pub(super) struct State {
    /// The bins; empty ones are not paid for.
    pub(super) sheets: Vec<Sheet>,
    /// Items that lie on none, with repeats.
    pub(super) pool: Vec<u32>,
    cost: i128,
    most: i128,
    stock: Vec<Option<usize>>,
    costs: Vec<i128>,
    /// What [`State::take_back`] brings back.
    kept: Vec<(usize, Sheet)>,
    saved: usize,
    kept_pool: Vec<u32>,
    kept_stock: Vec<Option<usize>>,
    kept_cost: i128,
}

impl State {
    /// No bin yet, and none may cost more than `most` together.
    pub(super) fn new(problem: &Problem, most: i128) -> Self {
        let stock: Vec<Option<usize>> = problem.bins.iter().map(|bin| bin.limit).collect();
        Self {
            sheets: Vec::new(),
            pool: Vec::new(),
            cost: 0,
            most,
            kept_stock: stock.clone(),
            stock,
            costs: problem.bins.iter().map(|bin| bin.cost).collect(),
            kept: Vec::new(),
            saved: 0,
            kept_pool: Vec::new(),
            kept_cost: 0,
        }
    }

    /// Those of `sheets` that the goal allows, fullest first; the others' items in the pool.
    pub(super) fn within(problem: &Problem, shapes: &Shapes, sheets: &[Sheet], most: i128) -> Self {
        let mut order: Vec<&Sheet> = sheets.iter().collect();
        let filled = |sheet: &Sheet| {
            let items: Vec<u32> = sheet.items().collect();
            shapes.unplaced(&items)
        };
        order.sort_by_cached_key(|sheet| std::cmp::Reverse(filled(sheet)));
        let mut state = Self::new(problem, most);
        for sheet in order {
            let cost = state.cost_of(sheet.bin);
            if state.allows(sheet.bin, cost) {
                state.take(sheet.bin, cost);
                state.sheets.push(sheet.clone());
            } else {
                state.pool.extend(sheet.items());
            }
        }
        state
    }

    fn cost_of(&self, bin: usize) -> i128 {
        self.costs.get(bin).copied().unwrap_or(0)
    }

    /// True where one more bin of that number may be taken.
    pub(super) fn allows(&self, bin: usize, cost: i128) -> bool {
        let in_stock = self.stock.get(bin).is_some_and(|left| *left != Some(0));
        in_stock && self.cost.saturating_add(cost) <= self.most
    }

    fn take(&mut self, bin: usize, cost: i128) {
        self.cost += cost;
        if let Some(Some(left)) = self.stock.get_mut(bin) {
            *left = left.saturating_sub(1);
        }
    }

    fn give_back(&mut self, bin: usize) {
        self.cost -= self.cost_of(bin);
        if let Some(Some(left)) = self.stock.get_mut(bin) {
            *left += 1;
        }
    }

    /// Only the bins something lies on.
    pub(super) fn into_sheets(mut self) -> Vec<Sheet> {
        self.sheets.retain(|sheet| !sheet.is_empty());
        self.sheets
    }

    /// From here on changes can be taken back.
    pub(super) fn remember(&mut self) {
        self.saved = 0;
        self.kept_pool.clone_from(&self.pool);
        self.kept_stock.clone_from(&self.stock);
        self.kept_cost = self.cost;
    }

    /// Back to what was remembered last.
    pub(super) fn take_back(&mut self) {
        for (place, sheet) in self.kept.iter_mut().take(self.saved) {
            if let Some(now) = self.sheets.get_mut(*place) {
                std::mem::swap(now, sheet);
            }
        }
        std::mem::swap(&mut self.pool, &mut self.kept_pool);
        std::mem::swap(&mut self.stock, &mut self.kept_stock);
        self.cost = self.kept_cost;
        self.saved = 0;
    }

    fn save(&mut self, place: usize) {
        let saved = self.kept.iter().take(self.saved);
        if saved.map(|(old, _)| *old).any(|old| old == place) {
            return;
        }
        let Some(sheet) = self.sheets.get(place) else {
            return;
        };
        if let Some((old, copy)) = self.kept.get_mut(self.saved) {
            *old = place;
            copy.clone_from(sheet);
        } else {
            self.kept.push((place, sheet.clone()));
        }
        self.saved += 1;
    }

    /// The bins that have changed since then, by place.
    pub(super) fn changed(&self) -> impl Iterator<Item = (usize, &Sheet)> {
        let kept = self.kept.iter().take(self.saved);
        kept.filter_map(|(place, _)| Some((*place, self.sheets.get(*place)?)))
    }

    /// Takes everything off a rectangle of a bin.
    pub(super) fn clear(&mut self, place: usize, id: Id) {
        self.save(place);
        let Some(sheet) = self.sheets.get_mut(place) else {
            return;
        };
        sheet.clear(id, &mut self.pool);
        let (bin, is_empty) = (sheet.bin, sheet.is_empty());
        if is_empty {
            self.give_back(bin);
        }
    }

    /// Lays an item in a free rectangle.
    pub(super) fn lay(&mut self, place: usize, id: Id, item: u32, pose: Pose, first: Way) {
        self.save(place);
        if let Some(sheet) = self.sheets.get_mut(place) {
            sheet.lay(id, item, pose, first);
        }
    }

    /// Takes one more bin and lays an item in its corner.
    pub(super) fn open(&mut self, mut sheet: Sheet, item: u32, pose: Pose, first: Way) {
        let bin = sheet.bin;
        self.take(bin, self.cost_of(bin));
        let empty = self.sheets.iter().position(Sheet::is_empty);
        let place = empty.unwrap_or_else(|| {
            self.sheets.push(Sheet::default());
            self.sheets.len() - 1
        });
        self.save(place);
        sheet.lay(0, item, pose, first);
        if let Some(old) = self.sheets.get_mut(place) {
            *old = sheet;
        }
    }
}
