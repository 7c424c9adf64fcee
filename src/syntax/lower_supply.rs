//! Supplies: glue, finish and abrasives, bought by what they cover.

use super::layout::Item;
use super::lower::Reader;
use super::pairs::Rule;
use super::tree::{Supply, SupplySetting, SupplySettingKind};
use super::words::{BlockKind, Opening};

impl Reader<'_> {
    /// `supply name is oil "…" { … }`
    pub(super) fn supply(&mut self, item: &Item) -> Option<Supply> {
        let head = self.head(Rule::only_supply_head, item, Opening::Supply);
        let settings = self.supply_lines(item);
        let mut head = head?;
        Some(Supply {
            name: head.name()?,
            kind: head.name()?,
            title: self.optional_text(&mut head),
            settings,
            span: self.span(&item.whole()),
        })
    }

    /// The lines of a supply.
    pub(super) fn supply_lines(&mut self, item: &Item) -> Vec<SupplySetting> {
        self.lines(item, BlockKind::Supply, Self::supply_line)
    }

    #[expect(
        clippy::wildcard_enum_match_arm,
        reason = "of all rules of the grammar, a line of a supply is one of these five"
    )]
    fn supply_line(&mut self, item: &Item) -> Option<SupplySetting> {
        let node = self.line(Rule::only_supply_line, item, BlockKind::Supply)?;
        let rule = node.rule();
        let mut parts = node.parts();
        let kind = match rule {
            Rule::covers => SupplySettingKind::Covers(self.next_expr(&mut parts)?),
            Rule::coats => SupplySettingKind::Coats(self.next_expr(&mut parts)?),
            Rule::supply_on => SupplySettingKind::On(self.placed_list(&mut parts)?),
            Rule::price => SupplySettingKind::Price(self.next_expr(&mut parts)?),
            Rule::allow => SupplySettingKind::Allow(self.allow(&mut parts)?),
            _ => return None,
        };
        Some(SupplySetting {
            kind,
            span: self.span(&item.head),
        })
    }
}
