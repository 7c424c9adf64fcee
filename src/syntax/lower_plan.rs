//! The plan block, parameters, named values and requirements.

use super::findings::BAD_DATE;
use super::layout::Item;
use super::literal;
use super::lower::Reader;
use super::pairs::{Node, Rule};
use super::tree::{Comparison, Let, Param, PlanBlock, PlanSetting, Require};
use super::words::{BlockKind, Opening};
use crate::finding::Finding;
use crate::source::Spanned;

impl<'s> Reader<'s> {
    /// `plan "…" { … }`
    pub(super) fn plan(&mut self, item: &Item) -> Option<PlanBlock> {
        let head = self.head(Rule::only_plan_head, item, Opening::Plan);
        let settings = self.plan_lines(item);
        let title = self.next_text(&mut head?)?;
        Some(PlanBlock {
            title,
            settings,
            span: self.span(&item.whole()),
        })
    }

    /// The lines of the plan block.
    pub(super) fn plan_lines(&mut self, item: &Item) -> Vec<PlanSetting> {
        self.lines(item, BlockKind::Plan, Self::plan_line)
    }

    #[expect(
        clippy::wildcard_enum_match_arm,
        reason = "of all rules of the grammar, a line of a plan is one of these eleven"
    )]
    fn plan_line(&mut self, item: &Item) -> Option<PlanSetting> {
        let node = self.line(Rule::only_plan_line, item, BlockKind::Plan)?;
        let rule = node.rule();
        let mut parts = node.parts();
        Some(match rule {
            Rule::author => PlanSetting::Author(self.next_text(&mut parts)?),
            Rule::revision => PlanSetting::Revision {
                mark: self.next_text(&mut parts)?,
                date: self.date(&parts.value()?),
                note: self.optional_text(&mut parts),
            },
            Rule::units => PlanSetting::Units(parts.name()?),
            Rule::rounding => PlanSetting::Round {
                system: parts.name()?,
                step: self.next_expr(&mut parts)?,
            },
            Rule::paper => PlanSetting::Paper(parts.name()?),
            Rule::projection => PlanSetting::Projection(parts.name()?),
            Rule::level => PlanSetting::Level(self.next_text(&mut parts)?),
            Rule::words => PlanSetting::Words(self.next_text(&mut parts)?),
            Rule::about => PlanSetting::About(self.slotted(&parts.value()?)),
            Rule::spares => PlanSetting::Spares {
                count: self.next_expr(&mut parts)?,
                of: self.next_expr(&mut parts)?,
            },
            Rule::meant_for => PlanSetting::For(parts.name()?),
            Rule::humidity => {
                PlanSetting::Humidity(self.next_expr(&mut parts)?, self.next_expr(&mut parts)?)
            }
            Rule::allow => PlanSetting::Allow(self.allow(&mut parts)?),
            _ => return None,
        })
    }

    fn date(&mut self, node: &Node<'_>) -> Spanned<String> {
        let text = node.text();
        if !literal::is_date(text) {
            let message = format!("`{text}` is not a day of the calendar");
            let finding = Finding::new(&BAD_DATE, node.span(), message);
            self.report(finding.remedy("write year, month and day: `2026-03-01`"));
        }
        Spanned::new(text.to_owned(), node.span())
    }

    /// `param name = …`
    pub(super) fn param(&mut self, item: &Item) -> Option<Param> {
        let mut head = self.head(Rule::only_param, item, Opening::Param)?;
        let name = head.name()?;
        let value = self.next_expr(&mut head)?;
        let range = match head.take(Rule::range) {
            None => None,
            Some(range) => {
                let mut range = range.parts();
                Some((self.next_expr(&mut range)?, self.next_expr(&mut range)?))
            }
        };
        Some(Param {
            name,
            value,
            range,
            about: self.optional_text(&mut head),
            span: self.span(&item.whole()),
        })
    }

    /// `let name = …`
    pub(super) fn constant(&mut self, item: &Item) -> Option<Let> {
        let mut head = self.head(Rule::only_let, item, Opening::Let)?;
        Some(Let {
            name: head.name()?,
            value: self.next_expr(&mut head)?,
            span: self.span(&item.whole()),
        })
    }

    /// `require a < b`
    pub(super) fn require(&mut self, item: &Item) -> Option<Require> {
        let mut head = self.head(Rule::only_require, item, Opening::Require)?;
        let left = self.next_expr(&mut head)?;
        let comparison = match head.value()?.text() {
            "<" => Comparison::Less,
            "<=" => Comparison::AtMost,
            ">" => Comparison::More,
            ">=" => Comparison::AtLeast,
            _ => Comparison::Equal,
        };
        let right = self.next_expr(&mut head)?;
        let within = self.optional(&mut head, Rule::within)?;
        let because = head.take(Rule::because);
        Some(Require {
            left,
            comparison,
            right,
            within,
            because: because.and_then(|node| self.next_text(&mut node.parts())),
            span: self.span(&item.whole()),
        })
    }
}
