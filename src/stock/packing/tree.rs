//! A sheet as a tree of cuts: every cut divides one rectangle from edge to edge.

/// Which way a cut runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(in crate::stock) enum Way {
    /// Along the bin: divides a rectangle's width.
    Rip,
    /// Across the bin: divides a rectangle's length.
    Crosscut,
}

impl Way {
    /// The other way.
    pub(super) const fn other(self) -> Self {
        match self {
            Self::Rip => Self::Crosscut,
            Self::Crosscut => Self::Rip,
        }
    }
}

/// A rectangle of the bin, one kerf added to its length and to its width.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(in crate::stock) struct Cell {
    /// Where it begins along the bin.
    pub(in crate::stock) x: i64,
    /// Where it begins across the bin.
    pub(in crate::stock) y: i64,
    /// Its size along the bin.
    pub(in crate::stock) along: i64,
    /// Its size across the bin.
    pub(in crate::stock) across: i64,
}

impl Cell {
    /// Its size at a right angle to cuts of a way: what such a cut divides.
    pub(super) const fn divided_by(self, way: Way) -> i64 {
        match way {
            Way::Rip => self.across,
            Way::Crosscut => self.along,
        }
    }

    /// Both parts of a cut at `at` from its beginning.
    const fn divide(self, way: Way, at: i64) -> (Self, Self) {
        let (mut near, mut far) = (self, self);
        match way {
            Way::Rip => {
                near.across = at;
                far.y = self.y.saturating_add(at);
                far.across = self.across.saturating_sub(at);
            }
            Way::Crosscut => {
                near.along = at;
                far.x = self.x.saturating_add(at);
                far.along = self.along.saturating_sub(at);
            }
        }
        (near, far)
    }

    /// Its area.
    pub(super) fn area(self) -> i128 {
        i128::from(self.along) * i128::from(self.across)
    }
}

/// What becomes of a cell.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::stock) enum Piece {
    /// Left over.
    Free,
    /// An item, laid the other way or not; it fills the cell.
    Item {
        /// Which.
        item: usize,
        /// Laid the other way.
        turned: bool,
    },
    /// Divided by a cut.
    Divided {
        /// Which way the cut runs.
        way: Way,
        /// How much lies on the near side, its kerf included.
        at: i64,
        /// The cell on the near side.
        near: usize,
        /// The cell on the far side.
        far: usize,
    },
}

/// A bin's cuts. The first cell is the whole bin.
#[derive(Clone, Debug, Default)]
pub(in crate::stock) struct Tree {
    cells: Vec<(Cell, Piece)>,
    filled: i128,
}

impl Tree {
    /// An uncut bin.
    pub(in crate::stock) fn new(along: i64, across: i64) -> Self {
        let whole = Cell {
            x: 0,
            y: 0,
            along,
            across,
        };
        Self {
            cells: vec![(whole, Piece::Free)],
            filled: 0,
        }
    }

    /// A cell; an empty one for a number that is none.
    pub(super) fn cell(&self, id: usize) -> Cell {
        self.cells
            .get(id)
            .map_or_else(Cell::default, |(cell, _)| *cell)
    }

    /// What becomes of a cell.
    pub(super) fn piece(&self, id: usize) -> Piece {
        self.cells.get(id).map_or(Piece::Free, |(_, piece)| *piece)
    }

    fn set(&mut self, id: usize, piece: Piece) {
        if let Some((_, old)) = self.cells.get_mut(id) {
            *old = piece;
        }
    }

    /// Area of all items, kerfs included.
    pub(super) fn filled(&self) -> i128 {
        self.filled
    }

    /// Divides a free cell; gives the near and the far cell. A cut at its end divides nothing:
    /// the near cell is the cell itself and there is no far one.
    pub(super) fn divide(&mut self, id: usize, way: Way, at: i64) -> (usize, Option<usize>) {
        let cell = self.cell(id);
        if at >= cell.divided_by(way) {
            return (id, None);
        }
        let (near_cell, far_cell) = cell.divide(way, at);
        let near = self.cells.len();
        let far = near + 1;
        self.cells.push((near_cell, Piece::Free));
        self.cells.push((far_cell, Piece::Free));
        self.set(id, Piece::Divided { way, at, near, far });
        (near, Some(far))
    }

    /// Lets an item fill a free cell.
    pub(super) fn fill(&mut self, id: usize, item: usize, turned: bool) {
        self.set(id, Piece::Item { item, turned });
        self.filled += self.cell(id).area();
    }

    /// Puts an item in the near corner of a free cell, the cut of `first` before the other.
    /// Gives the cells that stay free.
    pub(in crate::stock) fn place(
        &mut self,
        id: usize,
        item: usize,
        pose: (i64, i64, bool),
        first: Way,
    ) -> [Option<usize>; 2] {
        let (along, across, turned) = pose;
        let size = |way| match way {
            Way::Rip => across,
            Way::Crosscut => along,
        };
        let (near, far) = self.divide(id, first, size(first));
        let second = first.other();
        let (corner, side) = self.divide(near, second, size(second));
        self.fill(corner, item, turned);
        [far, side]
    }

    /// Every cell with what becomes of it, a divided one before its two halves, near before far.
    pub(in crate::stock) fn walk(&self) -> Vec<(Cell, Piece)> {
        let mut seen = Vec::with_capacity(self.cells.len());
        let mut waiting = vec![0];
        while let Some(id) = waiting.pop() {
            let piece = self.piece(id);
            seen.push((self.cell(id), piece));
            if let Piece::Divided { near, far, .. } = piece {
                waiting.extend([far, near]);
            }
        }
        seen
    }

    /// Every cell that is divided, in the order of a saw: all cuts of one way through the whole
    /// bin, then the cuts of the other way through what they freed, and so on
    /// (ref: layout-practice#P14 [P]).
    pub(in crate::stock) fn cuts(&self) -> Vec<(Cell, Way, i64)> {
        let mut staged = Vec::new();
        let mut waiting = vec![(0, 0_usize, None)];
        while let Some((id, stage, around)) = waiting.pop() {
            let Piece::Divided { way, at, near, far } = self.piece(id) else {
                continue;
            };
            let stage = stage + usize::from(around.is_some_and(|around| around != way));
            staged.push((stage, (self.cell(id), way, at)));
            waiting.extend([(far, stage, Some(way)), (near, stage, Some(way))]);
        }
        staged.sort_by_key(|(stage, _)| *stage);
        staged.into_iter().map(|(_, cut)| cut).collect()
    }

    /// The items, with repeats.
    pub(super) fn items(&self) -> impl Iterator<Item = usize> {
        self.cells.iter().filter_map(|(_, piece)| match piece {
            Piece::Item { item, .. } => Some(*item),
            Piece::Free | Piece::Divided { .. } => None,
        })
    }
}
