//! The cutting layouts: a row for every piece, cut and offcut, sheet by sheet.

use super::measure::mm;
use crate::build::Build;
use crate::stock::{CutDirection, Layout, Stock};

super::row! {
    /// A piece, a cut or an offcut of a sheet or board.
    struct Row {
        /// The printed name of the material.
        material: String,
        /// The sheet or board, counted from 1 within its material, in the order to cut them.
        number: usize,
        /// True for an offcut on hand.
        on_hand: bool,
        /// Its size as bought, in millimetres.
        stock_length_mm: f64,
        stock_width_mm: f64,
        /// Width of the saw cut, and what is trimmed off ends and long edges first.
        kerf_mm: f64,
        trim_ends_mm: f64,
        trim_edges_mm: f64,
        /// `piece`, `rip`, `crosscut` or `offcut`.
        kind: String,
        /// Cuts in the order to make them, counted from 1; empty for what is no cut.
        order: Option<usize>,
        /// The part's letter; empty for what is no piece.
        label: String,
        /// Where a piece or offcut begins, or the nearer wall of a cut: along the length and along
        /// the width of the stock, in millimetres.
        x_mm: f64,
        y_mm: f64,
        /// How far it reaches from there, likewise; the kerf is the breadth of a cut.
        length_mm: f64,
        width_mm: f64,
        /// The setting of fence or stop for a cut, in millimetres.
        setting_mm: Option<f64>,
        /// True for a piece whose own length runs across the stock.
        turned: bool,
    }
}

pub(super) fn rows(build: &Build, stock: &Stock) -> Vec<Row> {
    let mut rows = Vec::new();
    for plan in stock.plans() {
        let title = build.material(plan.material).map(|one| one.title.as_str());
        for (index, layout) in plan.layouts.iter().enumerate() {
            let sheet = Row {
                material: title.unwrap_or_default().to_owned(),
                number: index + 1,
                on_hand: layout.on_hand,
                stock_length_mm: mm(layout.size[0]),
                stock_width_mm: mm(layout.size[1]),
                kerf_mm: mm(layout.kerf),
                trim_ends_mm: mm(layout.trim[0]),
                trim_edges_mm: mm(layout.trim[1]),
                ..Row::default()
            };
            rows.extend(of(build, layout, &sheet));
        }
    }
    rows
}

fn of<'r>(build: &'r Build, layout: &'r Layout, sheet: &'r Row) -> impl Iterator<Item = Row> + 'r {
    let cuts = layout.cuts.iter().enumerate().map(|(index, cut)| {
        let (from, run, kerf) = (mm(cut.from), mm(cut.to - cut.from), mm(layout.kerf));
        let (kind, [x_mm, y_mm, length_mm, width_mm]) = match cut.direction {
            CutDirection::Rip => ("rip", [from, mm(cut.at), run, kerf]),
            CutDirection::Crosscut => ("crosscut", [mm(cut.at), from, kerf, run]),
        };
        Row {
            kind: kind.to_owned(),
            order: Some(index + 1),
            x_mm,
            y_mm,
            length_mm,
            width_mm,
            setting_mm: Some(mm(cut.setting)),
            ..sheet.clone()
        }
    });
    let pieces = layout.placements.iter().map(|piece| Row {
        kind: "piece".to_owned(),
        label: build
            .part(piece.part)
            .map(|part| part.label.clone())
            .unwrap_or_default(),
        x_mm: mm(piece.x),
        y_mm: mm(piece.y),
        length_mm: mm(piece.length),
        width_mm: mm(piece.width),
        turned: piece.turned,
        ..sheet.clone()
    });
    let offcuts = layout.offcuts.iter().map(|offcut| Row {
        kind: "offcut".to_owned(),
        x_mm: mm(offcut.x),
        y_mm: mm(offcut.y),
        length_mm: mm(offcut.length),
        width_mm: mm(offcut.width),
        ..sheet.clone()
    });
    cuts.chain(pieces).chain(offcuts)
}
