//! Steps of the work.

use super::layout::Item;
use super::lower::Reader;
use super::pairs::{Parts, Rule};
use super::tree::{Step, StepLine, StepLineKind};
use super::words::{BlockKind, Opening};

impl<'s> Reader<'s> {
    /// `step "Title" { … }`
    pub(super) fn step(&mut self, item: &Item) -> Option<Step> {
        let head = self.head(Rule::only_step_head, item, Opening::Step);
        let lines = self.step_lines(item);
        let title = self.next_text(&mut head?)?;
        Some(Step {
            title,
            lines,
            span: self.span(&item.whole()),
        })
    }

    /// The lines of a step.
    pub(super) fn step_lines(&mut self, item: &Item) -> Vec<StepLine> {
        self.lines(item, BlockKind::Step, Self::step_line)
    }

    #[expect(
        clippy::wildcard_enum_match_arm,
        reason = "of all rules of the grammar, a line of a step is one of these ten"
    )]
    fn step_line(&mut self, item: &Item) -> Option<StepLine> {
        let node = self.line(Rule::only_step_line, item, BlockKind::Step)?;
        let rule = node.rule();
        let mut parts = node.parts();
        let kind = match rule {
            Rule::add => StepLineKind::Add(self.placed_list(&mut parts)?),
            Rule::pull => StepLineKind::Pull {
                parts: self.placed_list(&mut parts)?,
                direction: parts.name()?,
                distance: match parts.take(Rule::a_length) {
                    Some(node) => Some(self.expr(node)?),
                    None => None,
                },
            },
            Rule::look => StepLineKind::Look(std::iter::from_fn(|| parts.name()).collect()),
            Rule::say => StepLineKind::Say(self.slotted(&parts.value()?)),
            Rule::check => self.check(parts)?,
            Rule::tools => {
                let texts = std::iter::from_fn(|| parts.take(Rule::text));
                StepLineKind::Tools(texts.map(|node| self.text(&node)).collect())
            }
            Rule::uses => StepLineKind::Uses {
                name: parts.name()?,
                count: match parts.take(Rule::a_count) {
                    Some(node) => Some(self.expr(node)?),
                    None => None,
                },
            },
            Rule::time => StepLineKind::Time(self.next_expr(&mut parts)?),
            Rule::caution => StepLineKind::Caution {
                word: parts.name()?,
                text: self.slotted(&parts.value()?),
            },
            Rule::allow => StepLineKind::Allow(self.allow(&mut parts)?),
            _ => return None,
        };
        Some(StepLine {
            kind,
            span: self.span(&item.head),
        })
    }

    /// `check "…"`, or `check equal a, b within 1 mm`
    fn check(&mut self, mut parts: Parts<'s>) -> Option<StepLineKind> {
        let Some(equal) = parts.take(Rule::check_equal) else {
            return Some(StepLineKind::Check(self.slotted(&parts.value()?)));
        };
        let mut equal = equal.parts();
        Some(StepLineKind::CheckEqual {
            first: self.next_expr(&mut equal)?,
            second: self.next_expr(&mut equal)?,
            within: self.next_expr(&mut equal)?,
        })
    }
}
