//! The simplex method with a kept inverse, for linear programmes whose columns are found as they
//! are wanted (G. B. Dantzig, Linear Programming and Extensions, 1963).
//!
//! Rows are equations; what a row has over or under is a column like any other. Floating point:
//! nothing here proves anything.

use super::Work;

/// Less than that is nothing.
pub(super) const NOTHING: f64 = 1e-9;
/// Reduced cost from which a column betters the programme.
pub(super) const BETTER: f64 = 1e-7;
/// Changes of the inverse before it is made afresh.
const MOST_CHANGES: usize = 250;

/// A column: its cost and its entries other than zero.
#[derive(Clone, Debug)]
pub(super) struct Column {
    pub(super) cost: f64,
    pub(super) entries: Vec<(usize, f64)>,
    /// Root of the sum of their squares.
    pub(super) size: f64,
}

impl Column {
    fn times(&self, row: &[f64]) -> f64 {
        self.entries
            .iter()
            .map(|(i, entry)| row.get(*i).copied().unwrap_or(0.0) * entry)
            .sum()
    }
}

/// A basis: one column a row, and the inverse of their matrix.
#[derive(Clone, Debug)]
pub(super) struct Basis {
    rows: usize,
    /// The column at each place.
    pub(super) heads: Vec<usize>,
    /// How much of it is taken.
    pub(super) amounts: Vec<f64>,
    /// The price of each row.
    pub(super) prices: Vec<f64>,
    /// The inverse, one row of the programme after the other, in it one place after the other.
    inverse: Vec<f64>,
    changes: usize,
}

impl Basis {
    /// Of columns with one entry each, the one of row `i` at place `i`.
    pub(super) fn diagonal(heads: Vec<usize>, columns: &[Column], right: &[f64]) -> Self {
        let rows = heads.len();
        let mut inverse = vec![0.0; rows * rows];
        let mut prices = vec![0.0; rows];
        let mut amounts = vec![0.0; rows];
        for (i, head) in heads.iter().enumerate() {
            let Some(column) = columns.get(*head) else {
                continue;
            };
            let entry = column.entries.first().map_or(1.0, |(_, entry)| *entry);
            set(&mut inverse, i * rows + i, 1.0 / entry);
            set(&mut prices, i, column.cost / entry);
            set(&mut amounts, i, get(right, i) / entry);
        }
        Self {
            rows,
            heads,
            amounts,
            prices,
            inverse,
            changes: 0,
        }
    }

    /// Amounts of another right side.
    pub(super) fn set_right(&mut self, right: &[f64], work: &mut Work) {
        self.amounts = vec![0.0; self.rows];
        work.spend(self.rows * self.rows / 2);
        for (value, column) in right
            .iter()
            .zip(self.inverse.chunks_exact(self.rows.max(1)))
        {
            if *value != 0.0 {
                for (amount, entry) in self.amounts.iter_mut().zip(column) {
                    *amount += value * entry;
                }
            }
        }
    }

    /// Prices for other costs of the columns in the basis.
    pub(super) fn set_costs(&mut self, costs: &[f64], work: &mut Work) {
        work.spend(self.rows * self.rows / 2);
        for (price, column) in self
            .prices
            .iter_mut()
            .zip(self.inverse.chunks_exact(self.rows.max(1)))
        {
            *price = costs.iter().zip(column).map(|(c, e)| c * e).sum();
        }
    }

    /// Cost of a column less what its entries are worth.
    pub(super) fn reduced(&self, column: &Column) -> f64 {
        column.cost - column.times(&self.prices)
    }

    /// A column in terms of the basis.
    fn solve(&self, column: &Column) -> Vec<f64> {
        let mut solved = vec![0.0; self.rows];
        for (row, entry) in &column.entries {
            let from = row * self.rows;
            let Some(inverse) = self.inverse.get(from..from + self.rows) else {
                continue;
            };
            for (s, i) in solved.iter_mut().zip(inverse) {
                *s += entry * i;
            }
        }
        solved
    }

    /// Exchanges the column at `place` for the column `head`, which is `solved` in terms of the
    /// basis and has the reduced cost `reduced`.
    fn exchange(
        &mut self,
        place: usize,
        head: usize,
        solved: &[f64],
        reduced: f64,
        work: &mut Work,
    ) {
        let pivot = get(solved, place);
        let taken = get(&self.amounts, place) / pivot;
        for (amount, s) in self.amounts.iter_mut().zip(solved) {
            *amount -= taken * s;
        }
        set(&mut self.amounts, place, taken);
        let mut changed = 0;
        for (price, column) in self
            .prices
            .iter_mut()
            .zip(self.inverse.chunks_exact_mut(self.rows.max(1)))
        {
            let factor = get(column, place) / pivot;
            if factor == 0.0 {
                continue;
            }
            changed += 1;
            for (entry, s) in column.iter_mut().zip(solved) {
                *entry -= factor * s;
            }
            set(column, place, factor);
            *price += reduced * factor;
        }
        work.spend((changed + 4) * self.rows / 2);
        set_head(&mut self.heads, place, head);
        self.changes += 1;
    }

    /// Takes a column into the basis that betters it. None where the programme has no end.
    pub(super) fn enter(&mut self, head: usize, column: &Column, work: &mut Work) -> Option<()> {
        let solved = self.solve(column);
        let mut leaving: Option<(usize, f64, f64)> = None;
        for (place, (amount, s)) in self.amounts.iter().zip(&solved).enumerate() {
            if *s <= NOTHING {
                continue;
            }
            let ratio = amount.max(0.0) / s;
            // Of equal ratios the larger pivot is the safer.
            let better = leaving.is_none_or(|(_, least, pivot)| {
                ratio < least - NOTHING || (ratio < least + NOTHING && *s > pivot)
            });
            if better {
                leaving = Some((place, ratio, *s));
            }
        }
        let (place, _, _) = leaving?;
        let reduced = self.reduced(column);
        self.exchange(place, head, &solved, reduced, work);
        Some(())
    }

    /// Exchanges columns until no amount is negative, keeping prices right for all `columns`.
    /// False where that does not come about.
    pub(super) fn mend(&mut self, columns: &[Column], work: &mut Work) -> bool {
        for _ in 0..=3 * self.rows {
            let worst = self
                .amounts
                .iter()
                .enumerate()
                .min_by(|a, b| a.1.total_cmp(b.1));
            let Some((place, amount)) = worst else {
                return true;
            };
            if *amount >= -NOTHING {
                return true;
            }
            let row: Vec<f64> = self
                .inverse
                .chunks_exact(self.rows.max(1))
                .map(|column| get(column, place))
                .collect();
            let mut entering: Option<(usize, f64, f64)> = None;
            work.spend(columns.len() * 8);
            for (id, column) in columns.iter().enumerate() {
                let alpha = column.times(&row);
                if alpha >= -1e-7 {
                    continue;
                }
                let ratio = self.reduced(column).max(0.0) / -alpha;
                let better = entering.is_none_or(|(_, least, pivot)| {
                    ratio < least - NOTHING || (ratio < least + NOTHING && -alpha > pivot)
                });
                if better {
                    entering = Some((id, ratio, -alpha));
                }
            }
            let Some((id, _, _)) = entering else {
                return false;
            };
            let Some(column) = columns.get(id) else {
                return false;
            };
            let solved = self.solve(column);
            let reduced = self.reduced(column);
            self.exchange(place, id, &solved, reduced, work);
        }
        false
    }

    /// Makes the inverse afresh after many changes, so that rounding does not pile up.
    pub(super) fn refresh(&mut self, columns: &[Column], right: &[f64], work: &mut Work) {
        if self.changes < MOST_CHANGES {
            return;
        }
        let heads = std::mem::take(&mut self.heads);
        self.heads = vec![usize::MAX; self.rows];
        self.inverse = vec![0.0; self.rows * self.rows];
        for i in 0..self.rows {
            set(&mut self.inverse, i * self.rows + i, 1.0);
        }
        for head in heads {
            let Some(column) = columns.get(head) else {
                continue;
            };
            let solved = self.solve(column);
            let place = solved
                .iter()
                .zip(&self.heads)
                .enumerate()
                .filter(|(_, (_, head))| **head == usize::MAX)
                .max_by(|a, b| a.1.0.abs().total_cmp(&b.1.0.abs()))
                .map(|(place, _)| place);
            if let Some(place) = place {
                self.exchange(place, head, &solved, 0.0, work);
            }
        }
        self.changes = 0;
        self.set_right(right, work);
    }
}

fn get(values: &[f64], index: usize) -> f64 {
    values.get(index).copied().unwrap_or(0.0)
}

fn set(values: &mut [f64], index: usize, value: f64) {
    if let Some(old) = values.get_mut(index) {
        *old = value;
    }
}

fn set_head(heads: &mut [usize], place: usize, head: usize) {
    if let Some(old) = heads.get_mut(place) {
        *old = head;
    }
}
