//! Tables for other programs: the cut list, the hardware, the layouts and the purchases of a
//! sound build, as CSV (RFC 4180) or JSON.
//!
//! A reader beside the road: takes a [`Build`] and its [`Stock`], changes neither. Every table is
//! one kind of row, one file; its fields are the columns, documented there and in
//! `grammar/LANGUAGE.md`. Lengths are exact millimetres and, beside them, inches as the plan prints
//! them, with the error of that rounding.

mod cut_list;
mod hardware;
mod layout;
mod measure;
mod purchases;

use serde::Serialize;

use crate::build::Build;
use crate::stock::Stock;

/// A table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Table {
    /// Parts to cut.
    CutList,
    /// Hardware by use.
    Hardware,
    /// Every piece, cut and offcut of the cutting layouts.
    Layout,
    /// What to buy.
    Purchases,
}

/// How a table is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Form {
    /// Comma-separated values by RFC 4180, in UTF-8 with its mark in front, without which
    /// spreadsheets misread umlauts.
    Csv,
    /// An array of objects.
    Json,
}

/// A table of a build; an empty one still has its head.
pub fn export(build: &Build, stock: &Stock, table: Table, form: Form) -> String {
    match table {
        Table::CutList => written(&cut_list::rows(build, stock), cut_list::COLUMNS, form),
        Table::Hardware => written(&hardware::rows(build, stock), hardware::COLUMNS, form),
        Table::Layout => written(&layout::rows(build, stock), layout::COLUMNS, form),
        Table::Purchases => written(&purchases::rows(build, stock), purchases::COLUMNS, form),
    }
}

fn written<R: Serialize>(rows: &[R], columns: &[&str], form: Form) -> String {
    match form {
        Form::Csv => csv(rows, columns),
        Form::Json => serde_json::to_string_pretty(rows).unwrap_or_default() + "\n",
    }
}

/// Writing into memory cannot fail.
fn csv<R: Serialize>(rows: &[R], columns: &[&str]) -> String {
    let mut writer = csv::WriterBuilder::new()
        .terminator(csv::Terminator::CRLF)
        .has_headers(false)
        .from_writer(Vec::new());
    let _ = writer.write_record(columns);
    for row in rows {
        let _ = writer.serialize(row);
    }
    let bytes = writer.into_inner().unwrap_or_default();
    let text = String::from_utf8(bytes).unwrap_or_default();
    format!("\u{feff}{text}")
}

/// A row whose fields are the columns, in order.
macro_rules! row {
    ($(#[$doc:meta])* struct $name:ident { $( $(#[$field_doc:meta])* $field:ident: $kind:ty, )+ }) => {
        $(#[$doc])*
        #[derive(Clone, Debug, Default, serde::Serialize)]
        pub(super) struct $name {
            $( $(#[$field_doc])* pub(super) $field: $kind, )+
        }

        /// The columns, as the head of the table names them.
        pub(super) const COLUMNS: &[&str] = &[$(stringify!($field)),+];
    };
}
use row;
