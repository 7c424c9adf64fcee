//! Joints and hardware.

use super::layout::Item;
use super::lower::Reader;
use super::pairs::Rule;
use super::tree::{
    Hardware, HardwareSetting, HardwareSettingKind, Join, JoinSetting, JoinSettingKind,
};
use super::words::{BlockKind, Opening};

impl<'s> Reader<'s> {
    /// `join a, b to c by kind using hardware { … }`
    pub(super) fn join(&mut self, item: &Item) -> Option<Join> {
        let head = self.head(Rule::only_join_head, item, Opening::Join);
        let settings = self.join_lines(item);
        let mut head = head?;
        let (parts, to) = (self.placed_list(&mut head)?, self.placed_list(&mut head)?);
        let kind = head.name()?;
        let mut using = Vec::new();
        if let Some(items) = head.take(Rule::using) {
            let mut items = items.parts();
            using.extend(std::iter::from_fn(|| items.name()));
        }
        Some(Join {
            parts,
            to,
            kind,
            using,
            settings,
            span: self.span(&item.whole()),
        })
    }

    /// The lines of a joint.
    pub(super) fn join_lines(&mut self, item: &Item) -> Vec<JoinSetting> {
        self.lines(item, BlockKind::Join, Self::join_line)
    }

    #[expect(
        clippy::wildcard_enum_match_arm,
        reason = "of all rules of the grammar, a line of a joint is one of these seven"
    )]
    fn join_line(&mut self, item: &Item) -> Option<JoinSetting> {
        let node = self.line(Rule::only_join_line, item, BlockKind::Join)?;
        let rule = node.rule();
        let mut parts = node.parts();
        let kind = match rule {
            Rule::glue => JoinSettingKind::Glue,
            Rule::joint_size => JoinSettingKind::Size {
                word: parts.name()?,
                size: self.next_expr(&mut parts)?,
            },
            Rule::fastener_count => JoinSettingKind::Count(self.next_expr(&mut parts)?),
            Rule::inset => JoinSettingKind::Inset(self.next_expr(&mut parts)?),
            Rule::drilled_from => JoinSettingKind::From(parts.name()?),
            Rule::through => JoinSettingKind::Through(self.placed(parts.value()?)?),
            Rule::allow => JoinSettingKind::Allow(self.allow(&mut parts)?),
            _ => return None,
        };
        Some(JoinSetting {
            kind,
            span: self.span(&item.head),
        })
    }

    /// `hardware name is kind "…" { … }`
    pub(super) fn hardware(&mut self, item: &Item) -> Option<Hardware> {
        let head = self.head(Rule::only_hardware_head, item, Opening::Hardware);
        let settings = self.hardware_lines(item);
        let mut head = head?;
        Some(Hardware {
            name: head.name()?,
            kind: head.name()?,
            title: self.optional_text(&mut head),
            settings,
            span: self.span(&item.whole()),
        })
    }

    /// The lines of an item of hardware.
    pub(super) fn hardware_lines(&mut self, item: &Item) -> Vec<HardwareSetting> {
        self.lines(item, BlockKind::Hardware, Self::hardware_line)
    }

    #[expect(
        clippy::wildcard_enum_match_arm,
        reason = "of all rules of the grammar, a line of hardware is one of these five"
    )]
    fn hardware_line(&mut self, item: &Item) -> Option<HardwareSetting> {
        let node = self.line(Rule::only_hardware_line, item, BlockKind::Hardware)?;
        let rule = node.rule();
        let mut parts = node.parts();
        let kind = match rule {
            Rule::hardware_size => HardwareSettingKind::Size {
                word: parts.name()?,
                size: self.next_expr(&mut parts)?,
            },
            Rule::pack => HardwareSettingKind::Pack {
                count: self.next_expr(&mut parts)?,
                price: self.optional(&mut parts, Rule::price)?,
            },
            Rule::goods_used => HardwareSettingKind::Use(self.next_expr(&mut parts)?),
            Rule::gauge => HardwareSettingKind::Gauge(self.next_expr(&mut parts)?),
            Rule::allow => HardwareSettingKind::Allow(self.allow(&mut parts)?),
            _ => return None,
        };
        Some(HardwareSetting {
            kind,
            span: self.span(&item.head),
        })
    }
}
