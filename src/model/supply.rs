//! Supplies: glue, finish and abrasives, bought by what they cover.

use serde::Serialize;

use super::evaluate::Evaluator;
use super::findings::NOT_POSITIVE;
use super::place::PlacedId;
use crate::finding::Finding;
use crate::source::Span;
use crate::syntax::tree::{self, PlacedRef, SupplySettingKind};
use crate::units::{Dimension, Money};

/// A supply's place among [`Model::supplies`](super::Model::supplies).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(transparent)]
pub struct SupplyId(pub usize);

/// Something that is used up.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Supply {
    /// The name in the source.
    pub name: String,
    /// The printed name.
    pub title: String,
    /// What it is.
    pub kind: SupplyKind,
    /// Square metres that one pack covers once.
    pub covers_m2: f64,
    /// How often it is put on.
    pub coats: i64,
    /// The pieces it goes on; empty for all.
    pub on: Vec<PlacedId>,
    /// Price of a pack.
    pub price: Option<Money>,
    /// Where it is written.
    #[serde(skip)]
    pub span: Span,
}

/// What a supply is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SupplyKind {
    /// Glue, for the faces of joints and layers.
    Glue,
    /// An oil that hardens in the air.
    Oil,
    /// Varnish or lacquer.
    Varnish,
    /// Paint.
    Paint,
    /// Abrasive paper, for all surfaces.
    Abrasive,
}

impl SupplyKind {
    /// All kinds.
    pub const ALL: [Self; 5] = [
        Self::Glue,
        Self::Oil,
        Self::Varnish,
        Self::Paint,
        Self::Abrasive,
    ];

    /// The author's word.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Glue => "glue",
            Self::Oil => "oil",
            Self::Varnish => "varnish",
            Self::Paint => "paint",
            Self::Abrasive => "abrasive",
        }
    }

    /// True for what is put on surfaces and stays there.
    pub const fn is_finish(self) -> bool {
        match self {
            Self::Oil | Self::Varnish | Self::Paint => true,
            Self::Glue | Self::Abrasive => false,
        }
    }
}

impl Evaluator<'_> {
    /// A supply, and the pieces it names for a later look-up.
    pub(super) fn supply<'t>(
        &self,
        declared: &'t tree::Supply,
    ) -> Option<(Supply, Vec<&'t PlacedRef>)> {
        let kind = SupplyKind::ALL
            .into_iter()
            .find(|kind| kind.word() == declared.kind.value);
        let Some(kind) = kind else {
            let known = SupplyKind::ALL.map(SupplyKind::word);
            self.tell_word(&declared.kind, "a kind of supply", &known);
            return None;
        };
        let (mut covers, mut coats, mut price, mut on) = (None, None, None, Vec::new());
        for setting in &declared.settings {
            match &setting.kind {
                SupplySettingKind::Covers(area) => covers = Some(self.covered_m2(area)?),
                SupplySettingKind::Coats(count) => {
                    coats = self.count(count, None, 1, "the number of coats");
                }
                SupplySettingKind::Price(sum) => price = self.money(sum),
                SupplySettingKind::On(pieces) => on.extend(pieces),
                SupplySettingKind::Allow(_) => {}
            }
        }
        let Some(covers_m2) = covers else {
            let name = &declared.name.value;
            let message = format!("`{name}` does not state what a pack of it covers");
            self.tell_lacking(declared.name.span, &message, "add `covers 8 m2`");
            return None;
        };
        let title = declared.title.as_ref().unwrap_or(&declared.name);
        let supply = Supply {
            name: declared.name.value.clone(),
            title: title.value.clone(),
            kind,
            covers_m2,
            coats: coats.unwrap_or(1),
            on: Vec::new(),
            price,
            span: declared.name.span,
        };
        Some((supply, on))
    }

    fn covered_m2(&self, area: &tree::Expr) -> Option<f64> {
        let m2 = self.of_kind(area, None, Dimension::AREA)?.square_metres()?;
        if m2 > 0.0 {
            return Some(m2);
        }
        let message = "a pack covers more than nothing";
        self.tell(Finding::new(&NOT_POSITIVE, area.span, message));
        None
    }
}
