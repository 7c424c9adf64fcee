//! The layouts' problems as plain numbers: for benches and for instances from the literature.
//!
//! All lengths are in one unit, nanometres or any other. The saw cut and the trim are given once
//! and folded into the sizes here, as the layouts of a build do it.

use super::packing::{self, Bar, Bin, Cutting, Item, Part, Piece, Problem, Shop, Sticks};

/// Bars and the lengths that are cut from them.
#[derive(Clone, Debug, Default)]
pub struct StickProblem {
    /// What may be cut.
    pub bars: Vec<StickStock>,
    /// What is needed.
    pub parts: Vec<StickPart>,
    /// Width of the saw cut.
    pub kerf: i64,
    /// Cut off both ends of every bar first.
    pub trim: i64,
}

/// A length of stock.
#[derive(Clone, Copy, Debug)]
pub struct StickStock {
    /// Its length as bought.
    pub length: i64,
    /// How many there are; any number where nothing is said.
    pub limit: Option<usize>,
    /// What one costs, in any one unit.
    pub cost: i128,
}

/// A length that is needed.
#[derive(Clone, Copy, Debug)]
pub struct StickPart {
    /// The length.
    pub length: i64,
    /// How many.
    pub count: usize,
}

/// How bars are cut.
#[derive(Clone, Debug, Default)]
pub struct StickCutting {
    /// The bars, those cut alike together.
    pub bars: Vec<CutStick>,
    /// What they cost.
    pub cost: i128,
    /// No cutting of all parts costs less.
    pub at_least: i128,
    /// How many of each part stay uncut: longer than every bar, or more than the bars yield.
    pub uncut: Vec<usize>,
}

/// Bars that are cut alike.
#[derive(Clone, Debug)]
pub struct CutStick {
    /// Which of [`StickProblem::bars`].
    pub stock: usize,
    /// Which of [`StickProblem::parts`] come out of one bar, and how many of each.
    pub parts: Vec<(usize, usize)>,
    /// How many bars.
    pub times: usize,
}

impl StickCutting {
    /// How many bars are cut.
    pub fn count(&self) -> usize {
        self.bars.iter().map(|bar| bar.times).sum()
    }
}

/// Cuts lengths from bars at the least cost that can be found.
pub fn cut_sticks(problem: &StickProblem) -> StickCutting {
    let Cutting {
        bars,
        cost,
        at_least,
        uncut,
    } = packing::cut(&Sticks {
        parts: problem
            .parts
            .iter()
            .map(|part| Part {
                length: part.length.saturating_add(problem.kerf),
                count: part.count,
            })
            .collect(),
        bars: problem
            .bars
            .iter()
            .map(|bar| Bar {
                length: inside(bar.length, problem.trim).saturating_add(problem.kerf),
                cost: bar.cost,
                limit: bar.limit,
            })
            .collect(),
    });
    let bars = bars.into_iter().map(|cut| CutStick {
        stock: cut.bar,
        parts: cut.parts,
        times: cut.times,
    });
    StickCutting {
        bars: bars.collect(),
        cost,
        at_least,
        uncut,
    }
}

/// Sheets and the rectangles that are cut from them, from edge to edge.
#[derive(Clone, Debug, Default)]
pub struct SheetProblem {
    /// What may be cut.
    pub sheets: Vec<SheetStock>,
    /// What is needed.
    pub parts: Vec<SheetPart>,
    /// Whether parts may lie the other way.
    pub may_turn: bool,
    /// Width of the saw cut.
    pub kerf: i64,
    /// Cut off all four edges of every sheet first.
    pub trim: i64,
    /// At most how many stages of cuts, each of the other way than the one before, free a part;
    /// any number where nothing is said.
    pub most_stages: Option<u8>,
    /// A piece shorter than that is dangerous to hold at a saw.
    pub small: i64,
}

/// A size of sheets.
#[derive(Clone, Copy, Debug)]
pub struct SheetStock {
    /// Its length as bought.
    pub length: i64,
    /// Its width as bought.
    pub width: i64,
    /// How many there are; any number where nothing is said.
    pub limit: Option<usize>,
    /// What one costs, in any one unit.
    pub cost: i128,
}

/// A rectangle that is needed.
#[derive(Clone, Copy, Debug)]
pub struct SheetPart {
    /// Along the sheet.
    pub length: i64,
    /// Across it.
    pub width: i64,
    /// How many.
    pub count: usize,
}

/// How sheets are cut.
#[derive(Clone, Debug, Default)]
pub struct SheetPacking {
    /// The sheets.
    pub sheets: Vec<CutSheet>,
    /// What they cost.
    pub cost: i128,
    /// No packing of all parts takes fewer sheets.
    pub at_least: i64,
    /// No packing of all parts costs less.
    pub least_cost: i128,
    /// How many of each part lie on no sheet: too large, or more than there are sheets for.
    pub uncut: Vec<usize>,
    /// What a shop thinks of it.
    pub shop: ShopFigures,
    /// What it thought of the first packing found at that cost.
    pub first: ShopFigures,
}

/// What helps at the saw, beside the cost. Of two packings the one with fewer small pieces is
/// better, then the one with fewer settings, then the one with the larger offcut.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct ShopFigures {
    /// Cuts of pieces too small to hold.
    pub small_pieces: usize,
    /// Settings of fence and stop, each counted once however many sheets need it.
    pub settings: usize,
    /// Area of the largest offcut of use, one saw cut added to both its sides.
    pub offcut: i128,
}

impl ShopFigures {
    const fn of(shop: Shop) -> Self {
        Self {
            small_pieces: shop.small_pieces,
            settings: shop.settings,
            offcut: shop.offcut.0,
        }
    }

    /// True where a shop would rather have the other.
    pub fn is_worse_than(&self, other: &Self) -> bool {
        let key = |one: &Self| {
            (
                one.small_pieces,
                one.settings,
                std::cmp::Reverse(one.offcut),
            )
        };
        key(self) > key(other)
    }
}

/// A sheet and what is cut from it.
#[derive(Clone, Debug)]
pub struct CutSheet {
    /// Which of [`SheetProblem::sheets`].
    pub stock: usize,
    /// The parts, positions from a corner of the sheet as bought.
    pub placed: Vec<PlacedRectangle>,
}

/// A part on its sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PlacedRectangle {
    /// Which of [`SheetProblem::parts`].
    pub part: usize,
    /// Where it begins along the sheet.
    pub x: i64,
    /// Where it begins across it.
    pub y: i64,
    /// Its size along the sheet.
    pub length: i64,
    /// Its size across it.
    pub width: i64,
    /// Laid the other way.
    pub turned: bool,
}

/// Cuts rectangles from sheets at the least cost that can be found.
pub fn pack_sheets(problem: &SheetProblem) -> SheetPacking {
    let (kerf, trim) = (problem.kerf, problem.trim);
    let packed = packing::pack(&Problem {
        items: problem
            .parts
            .iter()
            .map(|part| Item {
                along: part.length.saturating_add(kerf),
                across: part.width.saturating_add(kerf),
                count: part.count,
                may_turn: problem.may_turn,
            })
            .collect(),
        bins: problem
            .sheets
            .iter()
            .map(|sheet| Bin {
                along: inside(sheet.length, trim).saturating_add(kerf),
                across: inside(sheet.width, trim).saturating_add(kerf),
                cost: sheet.cost,
                limit: sheet.limit,
                on_hand: false,
            })
            .collect(),
        most_stages: problem.most_stages,
        small: problem.small,
    });
    let mut packing = SheetPacking {
        at_least: packed.at_least.bins,
        least_cost: packed.at_least.cost,
        uncut: packed.unpacked,
        shop: ShopFigures::of(packed.shop),
        first: ShopFigures::of(packed.first),
        ..SheetPacking::default()
    };
    for one in &packed.bins {
        packing.cost += problem.sheets.get(one.bin).map_or(0, |sheet| sheet.cost);
        let mut placed = Vec::new();
        for (cell, piece) in one.tree.walk() {
            if let Piece::Item { item, turned } = piece {
                placed.push(PlacedRectangle {
                    part: item,
                    x: cell.x + trim,
                    y: cell.y + trim,
                    length: cell.along - kerf,
                    width: cell.across - kerf,
                    turned,
                });
            }
        }
        packing.sheets.push(CutSheet {
            stock: one.bin,
            placed,
        });
    }
    packing
}

/// What is left of a side once both its ends are trimmed.
fn inside(side: i64, trim: i64) -> i64 {
    side.saturating_sub(trim.saturating_mul(2))
}
