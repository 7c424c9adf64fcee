//! Placements.

use super::layout::Item;
use super::lower::Reader;
use super::pairs::{Node, Parts, Rule};
use super::tree::{Place, PlaceLine, PlaceLineKind, PlacedRef, Repeat};
use super::words::{BlockKind, Opening};

impl<'s> Reader<'s> {
    /// `place name[i in first..last] = part mirrored { … }`
    pub(super) fn place(&mut self, item: &Item) -> Option<Place> {
        let head = self.head(Rule::only_place_head, item, Opening::Place);
        let lines = self.place_lines(item);
        let mut head = head?;
        let name = head.name()?;
        let repeat = match head.take(Rule::repeat) {
            None => None,
            Some(node) => {
                let mut repeat = node.parts();
                Some(Repeat {
                    index: repeat.name()?,
                    first: self.next_expr(&mut repeat)?,
                    last: self.next_expr(&mut repeat)?,
                })
            }
        };
        Some(Place {
            name,
            repeat,
            part: head.name()?,
            mirrored: head.mark(Rule::kw_mirrored),
            lines,
            span: self.span(&item.whole()),
        })
    }

    /// The lines of a placement.
    pub(super) fn place_lines(&mut self, item: &Item) -> Vec<PlaceLine> {
        self.lines(item, BlockKind::Place, Self::place_line)
    }

    #[expect(
        clippy::wildcard_enum_match_arm,
        reason = "of all rules of the grammar, a line of a placement is one of these five"
    )]
    fn place_line(&mut self, item: &Item) -> Option<PlaceLine> {
        let node = self.line(Rule::only_place_line, item, BlockKind::Place)?;
        let rule = node.rule();
        let mut parts = node.parts();
        let kind = match rule {
            Rule::runs => PlaceLineKind::Runs {
                axis: parts.name()?,
                direction: parts.name()?,
            },
            Rule::located => PlaceLineKind::At {
                face: parts.name()?,
                position: self.next_expr(&mut parts)?,
            },
            Rule::centre => PlaceLineKind::Centre {
                axis: parts.name()?,
                position: self.next_expr(&mut parts)?,
            },
            Rule::removable => PlaceLineKind::Removable,
            Rule::allow => PlaceLineKind::Allow(self.allow(&mut parts)?),
            _ => return None,
        };
        Some(PlaceLine {
            kind,
            span: self.span(&item.head),
        })
    }

    /// `a, b, shelves[2]`: the next part, which is such a list.
    pub(super) fn placed_list(&mut self, parts: &mut Parts<'s>) -> Option<Vec<PlacedRef>> {
        let mut list = parts.take(Rule::placed_list)?.parts();
        let mut placed = Vec::new();
        while let Some(node) = list.take(Rule::placed) {
            placed.push(self.placed(node)?);
        }
        Some(placed)
    }

    /// `shelves[2]`
    pub(super) fn placed(&mut self, node: Node<'s>) -> Option<PlacedRef> {
        let span = node.span();
        let mut parts = node.parts();
        let name = parts.name()?;
        let index = match parts.take(Rule::index) {
            Some(node) => Some(self.expr(node)?),
            None => None,
        };
        Some(PlacedRef { name, index, span })
    }
}
