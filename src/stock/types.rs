//! What the stock stage gives: lists and layouts as plain data.

use serde::Serialize;

use crate::build::{HardwareId, SupplyId};
use crate::geometry::{Axis, Side};
use crate::model::{LumberMeasure, MaterialId, PartId};
use crate::units::{Length, Money};

/// The cut list, the layouts and the purchases of a build.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Stock {
    /// Rows of parts, by material and width.
    pub cut_list: Vec<CutGroup>,
    /// How sheets are cut, one plan for each sheet material that is used.
    pub sheets: Vec<MaterialPlan>,
    /// How boards, bars and dowels are cut, likewise.
    pub boards: Vec<MaterialPlan>,
    /// What to buy.
    pub purchases: Purchases,
    /// Printed sizes that do not add up, each row of parts once.
    pub open_sums: Vec<Sum>,
}

impl Stock {
    /// The plans of all materials, sheets first.
    pub fn plans(&self) -> impl Iterator<Item = &MaterialPlan> {
        self.sheets.iter().chain(&self.boards)
    }

    /// All layouts with the names of their figures: `layout-1`, `layout-2`, …
    pub fn named_layouts(&self) -> impl Iterator<Item = (String, &Layout)> {
        let layouts = self.plans().flat_map(|plan| &plan.layouts).enumerate();
        layouts.map(|(index, layout)| (format!("layout-{}", index + 1), layout))
    }

    /// The sheets or boards that a part is cut from, counted from 1 within its material.
    pub fn cut_from(&self, part: PartId) -> Vec<usize> {
        let numbered = self.plans().flat_map(|plan| plan.layouts.iter().zip(1..));
        numbered
            .filter(|(layout, _)| layout.placements.iter().any(|one| one.part == part))
            .map(|(_, number)| number)
            .collect()
    }

    /// All rows of the cut list, in its order.
    pub fn rows(&self) -> impl Iterator<Item = &CutRow> {
        self.cut_list
            .iter()
            .flat_map(|group| &group.widths)
            .flat_map(|width| &width.rows)
    }
}

/// Parts in a row whose printed sizes make something else than the printed whole: 23/32, 26-15/16
/// and 23/32 in are 28-3/8 in, and 720 mm are printed as 28-11/32 in.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Sum {
    /// Along which they stand.
    pub axis: Axis,
    /// The parts, one after the other.
    pub parts: Vec<PartId>,
    /// The size of each along the axis.
    pub sizes: Vec<Length>,
    /// How deep each is let into the next.
    pub depths: Vec<Length>,
    /// What they make together.
    pub whole: Length,
    /// The part beside them that is as long.
    pub whole_of: PartId,
    /// What the printed millimetres make, less those printed of the whole.
    pub mm_open: Length,
    /// What the printed inches make, less those printed of the whole.
    pub inch_open: Length,
    /// The part to be cut to fit.
    pub to_fit: Option<PartId>,
}

/// The parts of one material.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CutGroup {
    /// The material.
    pub material: MaterialId,
    /// Its parts, widest first; those of one width together, since one fence setting rips them
    /// all (ref: layout-practice#P12 [P]).
    pub widths: Vec<WidthGroup>,
}

/// Parts ripped on one fence setting.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct WidthGroup {
    /// The width that is ripped.
    pub width: Length,
    /// The parts, longest first (ref: layout-practice#P13 [P]).
    pub rows: Vec<CutRow>,
}

/// A row of the cut list.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CutRow {
    /// The part.
    pub part: PartId,
    /// Its letter.
    pub label: String,
    /// Its printed name.
    pub title: String,
    /// Pieces of either hand.
    pub pieces: i64,
    /// How many of them are mirror images.
    pub mirrored: i64,
    /// Finished length, width and thickness.
    pub size: [Length; 3],
    /// What is sawn first, where that differs from the finished piece.
    pub blank: Option<Blank>,
    /// Edges and ends that are covered with edge band.
    pub bands: Vec<Side>,
    /// Its grain runs along its length (true) or along its width (false); none where the
    /// material has no grain.
    pub grain_along_length: Option<bool>,
    /// The author's note.
    pub note: Option<String>,
}

/// What is sawn for a part that is glued up of layers, cut oversize or covered with edge band.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Blank {
    /// How many: pieces times layers.
    pub pieces: i64,
    /// Layers glued up to one part.
    pub layers: i64,
    /// Rough length, width and thickness.
    pub size: [Length; 3],
}

/// How the stock of one material is cut.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct MaterialPlan {
    /// The material.
    pub material: MaterialId,
    /// One layout for each sheet or board, in the order to cut them.
    pub layouts: Vec<Layout>,
    /// No layout needs fewer pieces bought of this stock than that: proven by area and by the
    /// pieces that cannot share a sheet.
    pub at_least: i64,
    /// What the layouts cost, where every size has a price.
    pub cost: Option<Money>,
    /// No layout costs less: proven likewise.
    pub least_cost: Option<Money>,
    /// What it would take to cut everything from one of several sizes alone.
    pub alternatives: Vec<Alternative>,
}

impl MaterialPlan {
    /// How many of its layouts are of offcuts on hand.
    pub fn on_hand(&self) -> usize {
        self.layouts.iter().filter(|layout| layout.on_hand).count()
    }
}

/// One size of stock in place of several.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Alternative {
    /// Which of [`Material::stock`](crate::model::Material::stock).
    pub stock: usize,
    /// Length and width as bought.
    pub size: [Length; 2],
    /// How many are bought.
    pub count: usize,
    /// What they cost.
    pub cost: Money,
}

/// A sheet or a board and what is cut out of it.
///
/// Positions are measured on the piece as bought: x along its length, y along its width, from
/// one corner. Every cut runs from edge to edge of the piece it divides (a guillotine cut).
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Layout {
    /// The material.
    pub material: MaterialId,
    /// Which of [`Material::stock`](crate::model::Material::stock).
    pub stock: usize,
    /// An offcut on hand, not bought.
    pub on_hand: bool,
    /// Length and width of the piece as bought.
    pub size: [Length; 2],
    /// Trimmed off both ends and both long edges before the first cut.
    pub trim: [Length; 2],
    /// Width of the saw cut.
    pub kerf: Length,
    /// What is cut out.
    pub placements: Vec<Placement>,
    /// The cuts, in order; trimming comes before them.
    pub cuts: Vec<Cut>,
    /// What is left over, largest first.
    pub offcuts: Vec<Offcut>,
}

/// A setting of the fence or the stop, and how many cuts it makes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Setting {
    /// Which way its cuts run.
    pub direction: CutDirection,
    /// What comes off on the near side.
    pub at: Length,
    /// How many cuts.
    pub cuts: usize,
}

impl Layout {
    /// The settings in the order they are first needed; cuts of one setting are made together
    /// (ref: layout-practice#P12, #P13 [P]).
    pub fn settings(&self) -> Vec<Setting> {
        let mut settings: Vec<Setting> = Vec::new();
        for cut in &self.cuts {
            let known = settings
                .iter_mut()
                .find(|setting| setting.direction == cut.direction && setting.at == cut.setting);
            match known {
                Some(setting) => setting.cuts += 1,
                None => settings.push(Setting {
                    direction: cut.direction,
                    at: cut.setting,
                    cuts: 1,
                }),
            }
        }
        settings
    }

    /// True where another piece of stock is cut the same way.
    pub fn is_cut_like(&self, other: &Self) -> bool {
        let key = |one: &Self| (one.material, one.stock);
        key(self) == key(other) && self.placements == other.placements && self.cuts == other.cuts
    }
}

/// A blank in its place on a sheet or board.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Placement {
    /// The part it becomes.
    pub part: PartId,
    /// Where it begins along the length of the stock.
    pub x: Length,
    /// Where it begins along the width of the stock.
    pub y: Length,
    /// Its stretch along the length of the stock.
    pub length: Length,
    /// Its stretch along the width of the stock.
    pub width: Length,
    /// The part's own length runs across the stock.
    pub turned: bool,
}

/// Which way a cut runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum CutDirection {
    /// Along the length of the stock.
    Rip,
    /// Across the length of the stock.
    Crosscut,
}

/// A cut from edge to edge.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Cut {
    /// Which way it runs.
    pub direction: CutDirection,
    /// The nearer wall of the kerf: along the width for a rip, along the length for a crosscut.
    pub at: Length,
    /// Where it begins, along its own direction.
    pub from: Length,
    /// Where it stops.
    pub to: Length,
    /// What comes off on the near side: the setting of the fence or stop.
    pub setting: Length,
    /// Length and width of the piece at the saw, along those of the stock.
    pub piece: [Length; 2],
}

impl Cut {
    /// Shorter pieces are no longer safe to hold at a saw (ref: layout-practice#P14 [P]).
    pub const SAFE: Length = Length::from_mm(300);

    /// Whether the piece at the saw is too small to hold: too short to guide along a fence, or
    /// short both ways where it is cut across.
    pub fn is_too_small_to_hold(&self) -> bool {
        let [length, width] = self.piece;
        match self.direction {
            CutDirection::Rip => length < Self::SAFE,
            CutDirection::Crosscut => length.max(width) < Self::SAFE,
        }
    }
}

/// What is left over of a sheet or board.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Offcut {
    /// Where it begins along the length of the stock.
    pub x: Length,
    /// Where it begins along the width of the stock.
    pub y: Length,
    /// Its stretch along the length of the stock.
    pub length: Length,
    /// Its stretch along the width of the stock.
    pub width: Length,
}

/// What to buy.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Purchases {
    /// Sheets, boards and bars.
    pub stock: Vec<StockLine>,
    /// Boards of random width, by volume or surface.
    pub lumber: Vec<LumberLine>,
    /// Hardware, in whole packs.
    pub hardware: Vec<HardwareLine>,
    /// Glue, finish and abrasives, in whole packs.
    pub supplies: Vec<SupplyLine>,
    /// Sums of all that has a price, one for each currency.
    pub totals: Vec<Money>,
    /// Lines without a price.
    pub unpriced: i64,
}

/// Pieces of one stock size to buy.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StockLine {
    /// The material.
    pub material: MaterialId,
    /// Which of [`Material::stock`](crate::model::Material::stock).
    pub stock: usize,
    /// Length, width and thickness as bought.
    pub size: [Length; 3],
    /// How many are laid out.
    pub count: i64,
    /// How many are bought beside them, for boards with defects.
    pub more: i64,
    /// On hand already: nothing to buy.
    pub on_hand: bool,
    /// Price of one.
    pub each: Option<Money>,
    /// Price of all.
    pub total: Option<Money>,
    /// Tenths of a per cent of the bought area that end up in blanks.
    pub yield_per_mille: i64,
}

/// Lumber of one kind to buy, what is lost included.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct LumberLine {
    /// The material.
    pub material: MaterialId,
    /// Its thickness as sawn.
    pub thickness: Length,
    /// How much is lost for how much that stays.
    pub waste: (i64, i64),
    /// Thousandths of a cubic metre, rounded up.
    pub litres: i64,
    /// Hundredths of a square metre, rounded up.
    pub square_metre_hundredths: i64,
    /// Tenths of a board foot, rounded up.
    pub board_foot_tenths: i64,
    /// Price of one measure.
    pub each: Option<(Money, LumberMeasure)>,
    /// Price of all.
    pub total: Option<Money>,
}

/// An item of hardware to buy.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct HardwareLine {
    /// Which.
    pub hardware: HardwareId,
    /// Pieces the build uses; rolls of edge band.
    pub needed: i64,
    /// Pieces bought beside them, by the plan's `spares`.
    pub spares: i64,
    /// How much of a roll of edge band is stuck on, waste included.
    pub run: Option<Length>,
    /// Pieces in a pack; 1 where it is sold singly.
    pub pack: i64,
    /// Packs to buy.
    pub packs: i64,
    /// Pieces left over.
    pub left_over: i64,
    /// Price of a pack.
    pub each: Option<Money>,
    /// Price of all.
    pub total: Option<Money>,
}

/// A supply to buy.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SupplyLine {
    /// Which.
    pub supply: SupplyId,
    /// Square metres it goes on, each coat counted.
    pub area_m2: f64,
    /// Packs to buy, waste included.
    pub packs: i64,
    /// Price of a pack.
    pub each: Option<Money>,
    /// Price of all.
    pub total: Option<Money>,
}
