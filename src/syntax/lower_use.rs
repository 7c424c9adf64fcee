//! What the piece is for: loads, clearances, things that must go in, grain that runs on; full-size
//! templates of its parts.

use super::layout::Item;
use super::lower::Reader;
use super::pairs::{Parts, Rule};
use super::tree::{Clearance, Continuous, Expr, Hold, Load, Template};
use super::words::Opening;

impl<'s> Reader<'s> {
    /// `load shelves 12 kg at middle sag 2 mm`
    pub(super) fn load(&mut self, item: &Item) -> Option<Load> {
        let mut head = self.head(Rule::only_load, item, Opening::Load)?;
        Some(Load {
            pieces: self.placed_list(&mut head)?,
            mass: self.next_expr(&mut head)?,
            at_middle: head.take(Rule::load_place).is_some(),
            sag: self.optional(&mut head, Rule::sag)?,
            span: self.span(&item.whole()),
        })
    }

    /// `continuous a, b, c along grain`
    pub(super) fn continuous(&mut self, item: &Item) -> Option<Continuous> {
        let mut head = self.head(Rule::only_continuous, item, Opening::Continuous)?;
        Some(Continuous {
            pieces: self.placed_list(&mut head)?,
            along: head.mark(Rule::kw_along).is_some(),
            span: self.span(&item.whole()),
        })
    }

    /// `template side on back sheet A3`
    pub(super) fn template(&mut self, item: &Item) -> Option<Template> {
        let mut head = self.head(Rule::only_template, item, Opening::Template)?;
        Some(Template {
            part: head.name()?,
            side: head
                .take(Rule::template_side)
                .and_then(|node| node.parts().name()),
            sheet: head
                .take(Rule::template_sheet)
                .and_then(|node| node.parts().name()),
            span: self.span(&item.whole()),
        })
    }

    /// `clearance a to b from 1 mm to 2 mm because "…"`
    pub(super) fn clearance(&mut self, item: &Item) -> Option<Clearance> {
        let mut head = self.head(Rule::only_clearance, item, Opening::Clearance)?;
        Some(Clearance {
            from: self.next_expr(&mut head)?,
            to: self.next_expr(&mut head)?,
            low: self.next_expr(&mut head)?,
            high: self.next_expr(&mut head)?,
            because: head
                .take(Rule::because)
                .and_then(|node| self.next_text(&mut node.parts())),
            span: self.span(&item.whole()),
        })
    }

    /// `hold "Tray" 400 mm by 300 mm by 60 mm between a and b, c and d, e and f`
    pub(super) fn hold(&mut self, item: &Item) -> Option<Hold> {
        let mut head = self.head(Rule::only_hold, item, Opening::Hold)?;
        let title = self.next_text(&mut head)?;
        let sizes = [
            self.next_expr(&mut head)?,
            self.next_expr(&mut head)?,
            self.next_expr(&mut head)?,
        ];
        let rooms = [
            self.room(&mut head)?,
            self.room(&mut head)?,
            self.room(&mut head)?,
        ];
        Some(Hold {
            title,
            sizes,
            rooms,
            clear: self.optional(&mut head, Rule::clear)?,
            span: self.span(&item.whole()),
        })
    }

    /// `a and b`
    fn room(&mut self, parts: &mut Parts<'s>) -> Option<(Expr, Expr)> {
        let mut faces = parts.take(Rule::room)?.parts();
        Some((self.next_expr(&mut faces)?, self.next_expr(&mut faces)?))
    }
}
