//! Placements, sub-assemblies and options.

use super::layout::Item;
use super::lower::{self, Reader};
use super::pairs::{Node, Parts, Rule};
use super::recover;
use super::tree::{
    Choice, Formal, Given, InnerRef, OptionBlock, Place, PlaceLine, PlaceLineKind, PlacedRef,
    Repeat, Statement, Subassembly,
};
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
        let part = head.name()?;
        let given = self.given(&mut head)?;
        Some(Place {
            name,
            repeat,
            part,
            given,
            mirrored: head.mark(Rule::kw_mirrored),
            lines,
            span: self.span(&item.whole()),
        })
    }

    /// Values by name in parentheses; none where there are no parentheses.
    fn given(&mut self, parts: &mut Parts<'s>) -> Option<Vec<Given>> {
        let mut given = Vec::new();
        if let Some(node) = parts.take(Rule::given) {
            let mut values = node.parts();
            while let Some(node) = values.take(Rule::given_value) {
                let mut value = node.parts();
                given.push(Given {
                    name: value.name()?,
                    value: self.next_expr(&mut value)?,
                });
            }
        }
        Some(given)
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
            Rule::located => {
                let face = parts.name()?;
                match parts.take(Rule::turned) {
                    Some(turned) => PlaceLineKind::Faces {
                        face,
                        direction: turned.parts().name()?,
                    },
                    None => PlaceLineKind::At {
                        face,
                        position: self.next_expr(&mut parts)?,
                    },
                }
            }
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

    /// `shelves[2]`, `drawer.side`
    pub(super) fn placed(&mut self, node: Node<'s>) -> Option<PlacedRef> {
        let span = node.span();
        let mut parts = node.parts();
        let name = parts.name()?;
        let index = self.index(&mut parts)?;
        let mut inner = Vec::new();
        while let Some(node) = parts.take(Rule::inner) {
            let mut parts = node.parts();
            inner.push(InnerRef {
                name: parts.value()?.parts().name()?,
                index: self.index(&mut parts)?,
            });
        }
        Some(PlacedRef {
            name,
            index,
            inner,
            span,
        })
    }

    /// `[2]`, if that is the next part.
    #[expect(clippy::option_option, reason = "absent and faulty are two things")]
    fn index(&mut self, parts: &mut Parts<'s>) -> Option<Option<crate::syntax::tree::Expr>> {
        match parts.take(Rule::index) {
            Some(node) => self.expr(node).map(Some),
            None => Some(None),
        }
    }

    /// `subassembly name(…) "…" { … }`
    pub(super) fn subassembly(&mut self, item: &Item) -> Option<Subassembly> {
        let head = self.head(Rule::only_subassembly_head, item, Opening::Subassembly);
        let statements = self.inner_statements(item, BlockKind::Subassembly);
        let mut head = head?;
        let name = head.name()?;
        let mut formals = Vec::new();
        if let Some(node) = head.take(Rule::formals) {
            let mut list = node.parts();
            while let Some(node) = list.take(Rule::formal) {
                formals.push(self.formal(node)?);
            }
        }
        Some(Subassembly {
            name,
            formals,
            title: self.optional_text(&mut head),
            shown: {
                head.mark(Rule::kw_shown);
                self.given(&mut head)?
            },
            statements,
            span: self.span(&item.whole()),
        })
    }

    fn formal(&mut self, node: Node<'s>) -> Option<Formal> {
        let span = node.span();
        let mut parts = node.parts();
        let (name, kind) = (parts.name()?, parts.name()?);
        let preset = self.optional(&mut parts, Rule::preset)?;
        let range = match parts.take(Rule::range) {
            None => None,
            Some(range) => {
                let mut range = range.parts();
                Some((self.next_expr(&mut range)?, self.next_expr(&mut range)?))
            }
        };
        Some(Formal {
            name,
            kind,
            preset,
            range,
            span,
        })
    }

    /// The statements of a block; one that does not belong there has a finding.
    pub(super) fn inner_statements(&mut self, item: &Item, kind: BlockKind) -> Vec<Statement> {
        let mut statements = Vec::new();
        for inner in item.block.iter().flat_map(|block| &block.items) {
            let word = self.source.word(inner.head.start);
            if inner.spoiled || kind.form(word).is_some() {
                statements.extend(lower::statement(self, inner));
            } else {
                let finding = recover::unknown_line(self.source, &inner.head, kind);
                self.report(finding);
            }
        }
        statements
    }

    /// `option name "…" { choice … }`
    pub(super) fn option(&mut self, item: &Item) -> Option<OptionBlock> {
        let head = self.head(Rule::only_option_head, item, Opening::Option);
        let choices = self.choices(item);
        let mut head = head?;
        Some(OptionBlock {
            name: head.name()?,
            title: self.next_text(&mut head)?,
            choices,
            span: self.span(&item.whole()),
        })
    }

    /// The choices of an option.
    pub(super) fn choices(&mut self, item: &Item) -> Vec<Choice> {
        let mut choices = Vec::new();
        for inner in item.block.iter().flat_map(|block| &block.items) {
            let word = self.source.word(inner.head.start);
            if Opening::of(word) == Some(Opening::Choice) {
                choices.extend(self.choice(inner));
            } else if !inner.spoiled {
                let finding = recover::unknown_line(self.source, &inner.head, BlockKind::Option);
                self.report(finding);
            }
        }
        choices
    }

    fn choice(&mut self, item: &Item) -> Option<Choice> {
        let head = self.head(Rule::only_choice_head, item, Opening::Choice);
        let statements = self.inner_statements(item, BlockKind::Choice);
        let mut head = head?;
        Some(Choice {
            name: head.name()?,
            title: self.next_text(&mut head)?,
            default: head.mark(Rule::kw_default),
            statements,
            span: self.span(&item.whole()),
        })
    }
}
