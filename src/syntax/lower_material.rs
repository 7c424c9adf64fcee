//! Materials.

use super::layout::Item;
use super::lower::Reader;
use super::pairs::{Parts, Rule};
use super::tree::{Expr, Material, MaterialSetting, Name};
use super::words::{BlockKind, Opening};
use crate::source::Spanned;

impl<'s> Reader<'s> {
    /// `material name is sheet { … }`
    pub(super) fn material(&mut self, item: &Item) -> Option<Material> {
        let head = self.head(Rule::only_material_head, item, Opening::Material);
        let settings = self.material_lines(item);
        let mut head = head?;
        Some(Material {
            name: head.name()?,
            kind: head.name()?,
            settings,
            span: self.span(&item.whole()),
        })
    }

    /// The lines of a material.
    pub(super) fn material_lines(&mut self, item: &Item) -> Vec<MaterialSetting> {
        self.lines(item, BlockKind::Material, Self::material_line)
    }

    #[expect(
        clippy::wildcard_enum_match_arm,
        reason = "of all rules of the grammar, a line of a material is one of these"
    )]
    fn material_line(&mut self, item: &Item) -> Option<MaterialSetting> {
        let node = self.line(Rule::only_material_line, item, BlockKind::Material)?;
        let rule = node.rule();
        let mut parts = node.parts();
        Some(match rule {
            Rule::title => MaterialSetting::Name(self.next_text(&mut parts)?),
            Rule::thickness => MaterialSetting::Thickness(self.next_expr(&mut parts)?),
            Rule::section => {
                let thickness = self.next_expr(&mut parts)?;
                MaterialSetting::Section(thickness, self.next_expr(&mut parts)?)
            }
            Rule::diameter => MaterialSetting::Diameter(self.next_expr(&mut parts)?),
            Rule::stock => return self.stock(parts, item),
            Rule::offcut => return self.offcut(parts, item),
            Rule::price_of_lumber => {
                let price = self.next_expr(&mut parts)?;
                MaterialSetting::Price(price, parts.name()?)
            }
            Rule::waste => {
                let lost = self.next_expr(&mut parts)?;
                MaterialSetting::Waste(lost, self.next_expr(&mut parts)?)
            }
            Rule::allowance => {
                let length = self.next_expr(&mut parts)?;
                MaterialSetting::Allowance(length, self.next_expr(&mut parts)?)
            }
            Rule::defects => {
                let more = self.next_expr(&mut parts)?;
                MaterialSetting::Defects(more, self.next_expr(&mut parts)?)
            }
            Rule::stages => MaterialSetting::Stages(self.next_expr(&mut parts)?),
            Rule::kerf => MaterialSetting::Kerf(self.next_expr(&mut parts)?),
            Rule::trim => MaterialSetting::Trim(self.next_expr(&mut parts)?),
            Rule::grain => MaterialSetting::Grain(grain(&mut parts)?),
            Rule::density => MaterialSetting::Density(self.next_expr(&mut parts)?),
            Rule::species => MaterialSetting::Species(parts.name()?),
            Rule::sawn => MaterialSetting::Sawn(parts.name()?),
            Rule::allow => MaterialSetting::Allow(self.allow(&mut parts)?),
            _ => return None,
        })
    }

    /// Length of a piece of stock, and its width where one is given.
    fn length_and_width(&mut self, parts: &mut Parts<'s>) -> Option<(Expr, Option<Expr>)> {
        let length = self.next_expr(parts)?;
        let width = match parts.take(Rule::a_length) {
            Some(node) => Some(self.expr(node)?),
            None => None,
        };
        Some((length, width))
    }

    fn stock(&mut self, mut parts: Parts<'s>, item: &Item) -> Option<MaterialSetting> {
        let (length, width) = self.length_and_width(&mut parts)?;
        Some(MaterialSetting::Stock {
            length,
            width,
            price: self.optional(&mut parts, Rule::price)?,
            count: self.optional(&mut parts, Rule::stock_count)?,
            span: self.span(&item.head),
        })
    }

    fn offcut(&mut self, mut parts: Parts<'s>, item: &Item) -> Option<MaterialSetting> {
        let (length, width) = self.length_and_width(&mut parts)?;
        Some(MaterialSetting::Offcut {
            length,
            width,
            count: self.optional(&mut parts, Rule::stock_count)?,
            span: self.span(&item.head),
        })
    }
}

/// `length` of `grain along length`, or `none`.
fn grain(parts: &mut Parts<'_>) -> Option<Name> {
    let along = parts.mark(Rule::kw_length);
    let (word, span) = match along {
        Some(span) => ("length", span),
        None => ("none", parts.mark(Rule::kw_none)?),
    };
    Some(Spanned::new(word.to_owned(), span))
}
