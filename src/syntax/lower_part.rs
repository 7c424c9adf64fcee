//! Parts: sizes, and what is cut into them or off them.

use super::findings::OUTLINE_START;
use super::layout::Item;
use super::lower::Reader;
use super::pairs::{Node, Parts, Rule};
use super::recover::Reading;
use super::tree::{
    Expr, HoleGrid, Name, Offset, OutlinePiece, Part, PartLine, PartLineKind, SizeExpr,
};
use super::words::{BlockKind, Opening};
use crate::finding::Finding;
use crate::source::Span;

/// A line of an outline.
enum OutlineLine {
    Start((Expr, Expr), Span),
    Piece(OutlinePiece),
}

impl<'s> Reader<'s> {
    /// `part name from material "…" { … }`
    pub(super) fn part(&mut self, item: &Item) -> Option<Part> {
        let head = self.head(Rule::only_part_head, item, Opening::Part);
        let lines = self.part_lines(item);
        let mut head = head?;
        Some(Part {
            name: head.name()?,
            material: head.name()?,
            title: self.optional_text(&mut head),
            lines,
            span: self.span(&item.whole()),
        })
    }

    /// The lines of a part.
    pub(super) fn part_lines(&mut self, item: &Item) -> Vec<PartLine> {
        self.lines(item, BlockKind::Part, Self::part_line)
    }

    fn part_line(&mut self, item: &Item) -> Option<PartLine> {
        let kind = if self.source.word(item.head.start) == "outline" {
            self.outline(item)?
        } else {
            let node = self.line(Rule::only_part_line, item, BlockKind::Part)?;
            self.part_line_kind(node)?
        };
        Some(PartLine {
            kind,
            span: self.span(&item.whole()),
        })
    }

    #[expect(
        clippy::wildcard_enum_match_arm,
        reason = "of all rules of the grammar, a line of a part is one of these seventeen"
    )]
    fn part_line_kind(&mut self, node: Node<'s>) -> Option<PartLineKind> {
        let rule = node.rule();
        let mut parts = node.parts();
        Some(match rule {
            Rule::size => PartLineKind::Size {
                axis: parts.name()?,
                size: self.size(&mut parts)?,
                grain: parts.mark(Rule::kw_grain),
            },
            Rule::layers => PartLineKind::Layers {
                count: self.next_expr(&mut parts)?,
                oversize: self.optional(&mut parts, Rule::oversize)?,
            },
            Rule::extra => PartLineKind::Extra(self.next_expr(&mut parts)?),
            Rule::call => PartLineKind::Call {
                side: parts.name()?,
                word: parts.name()?,
            },
            Rule::note => PartLineKind::Note(self.next_text(&mut parts)?),
            Rule::holes => return self.holes(parts),
            Rule::channel => return self.channel(parts),
            Rule::rabbet => PartLineKind::Rabbet {
                side: parts.name()?,
                along: parts.name()?,
                width: self.next_expr(&mut parts)?,
                depth: self.next_expr(&mut parts)?,
            },
            Rule::notch => return self.notch(parts),
            Rule::rounded => self.shaped_edge(parts, Rule::kw_round)?,
            Rule::chamfered => self.shaped_edge(parts, Rule::kw_chamfer)?,
            Rule::mitre => self.angled(parts, Rule::kw_mitre)?,
            Rule::bevel => self.angled(parts, Rule::kw_bevel)?,
            Rule::taper => PartLineKind::Taper {
                side: parts.name()?,
                by: self.next_expr(&mut parts)?,
                at: parts.name()?,
                over: self.optional(&mut parts, Rule::taper_run)?,
            },
            Rule::tenon => PartLineKind::Tenon {
                end: parts.name()?,
                length: self.next_expr(&mut parts)?,
                thickness: self.next_expr(&mut parts)?,
                width: self.optional(&mut parts, Rule::tenon_width)?,
            },
            Rule::band => {
                let sides = std::iter::from_fn(|| parts.take(Rule::side));
                PartLineKind::Band {
                    sides: sides.map(|side| side.name()).collect(),
                    hardware: parts.name()?,
                }
            }
            Rule::allow => PartLineKind::Allow(self.allow(&mut parts)?),
            _ => return None,
        })
    }

    fn size(&mut self, parts: &mut Parts<'s>) -> Option<SizeExpr> {
        match parts.take(Rule::span) {
            Some(span) => {
                let mut span = span.parts();
                let from = self.next_expr(&mut span)?;
                Some(SizeExpr::Span(from, self.next_expr(&mut span)?))
            }
            None => self.next_expr(parts).map(SizeExpr::Given),
        }
    }

    fn holes(&mut self, mut parts: Parts<'s>) -> Option<PartLineKind> {
        let side = parts.name()?;
        let diameter = self.next_expr(&mut parts)?;
        let depth = self.optional(&mut parts, Rule::hole_depth)?;
        let counterbore = match parts.take(Rule::counterbore) {
            None => None,
            Some(node) => {
                let mut sizes = node.parts();
                Some((self.next_expr(&mut sizes)?, self.next_expr(&mut sizes)?))
            }
        };
        let countersink = self.optional(&mut parts, Rule::countersink)?;
        let grid = match parts.take(Rule::hole_grid) {
            None => None,
            Some(node) => {
                let mut grid = node.parts();
                Some(HoleGrid {
                    first_count: self.next_expr(&mut grid)?,
                    second_count: self.next_expr(&mut grid)?,
                    first_pitch: self.next_expr(&mut grid)?,
                    second_pitch: self.next_expr(&mut grid)?,
                })
            }
        };
        Some(PartLineKind::Holes {
            side,
            diameter,
            depth,
            counterbore,
            countersink,
            grid,
            at: vec![self.offset(&mut parts)?, self.offset(&mut parts)?],
        })
    }

    fn channel(&mut self, mut parts: Parts<'s>) -> Option<PartLineKind> {
        Some(PartLineKind::Channel {
            word: parts.name()?,
            side: parts.name()?,
            at: self.offset(&mut parts)?,
            width: self.next_expr(&mut parts)?,
            depth: self.next_expr(&mut parts)?,
            stopped: match parts.take(Rule::stopped) {
                None => None,
                Some(node) => {
                    let mut ends = node.parts();
                    Some((self.next_expr(&mut ends)?, self.next_expr(&mut ends)?))
                }
            },
        })
    }

    fn notch(&mut self, mut parts: Parts<'s>) -> Option<PartLineKind> {
        let (sides, at) = match parts.take(Rule::notch_corner) {
            Some(corner) => (sides(corner.parts().take(Rule::sides)?), None),
            None => {
                let mut edge = parts.take(Rule::notch_edge)?.parts();
                (vec![edge.name()?], Some(self.offset(&mut edge)?))
            }
        };
        Some(PartLineKind::Notch {
            sides,
            at,
            first: self.next_expr(&mut parts)?,
            second: self.next_expr(&mut parts)?,
        })
    }

    fn shaped_edge(&mut self, mut parts: Parts<'s>, keyword: Rule) -> Option<PartLineKind> {
        let span = parts.mark(keyword)?;
        Some(PartLineKind::Edge {
            word: Name::new(self.source.slice(span.range()).to_owned(), span),
            sides: sides(parts.take(Rule::sides)?),
            size: self.next_expr(&mut parts)?,
        })
    }

    fn angled(&mut self, mut parts: Parts<'s>, keyword: Rule) -> Option<PartLineKind> {
        let span = parts.mark(keyword)?;
        Some(PartLineKind::Angled {
            word: Name::new(self.source.slice(span.range()).to_owned(), span),
            side: parts.name()?,
            angle: self.next_expr(&mut parts)?,
            long: parts.name()?,
        })
    }

    fn offset(&mut self, parts: &mut Parts<'s>) -> Option<Offset> {
        let mut offset = parts.take(Rule::offset)?.parts();
        Some(Offset {
            distance: self.next_expr(&mut offset)?,
            from: offset.name()?,
        })
    }

    /// `outline { start …; line to …; arc to … through … }`
    fn outline(&mut self, item: &Item) -> Option<PartLineKind> {
        let form = BlockKind::Part.form("outline");
        self.read(
            Rule::only_outline_head,
            item.head.clone(),
            Reading::Line(form),
        )?;
        let Some(block) = &item.block else {
            let end = self.span(&(item.head.end..item.head.end));
            let message = "expected `{` and the lines of an outline, but there is no block";
            self.report(Finding::new(&OUTLINE_START, end, message));
            return None;
        };
        let faulty = |line: &Item| line.spoiled;
        let unread = block.items.iter().any(faulty);
        let written = block.items.len();
        let mut lines = self
            .lines(item, BlockKind::Outline, Self::outline_line)
            .into_iter();
        if unread || lines.len() < written {
            // A line is missing: what is left is another outline.
            return None;
        }
        let Some(OutlineLine::Start(start, _)) = lines.next() else {
            let brace = self.span(&(block.open..block.open + 1));
            let message = "the outline does not begin with its start";
            let finding = Finding::new(&OUTLINE_START, brace, message);
            self.report(finding.remedy("write the first point: `start 0 mm, 0 mm`"));
            return None;
        };
        let mut pieces = Vec::with_capacity(written);
        for line in lines {
            match line {
                OutlineLine::Piece(piece) => pieces.push(piece),
                OutlineLine::Start(_, span) => {
                    let message = "the outline starts a second time";
                    let finding = Finding::new(&OUTLINE_START, span, message);
                    self.report(finding.remedy("go on with `line` or `arc`"));
                }
            }
        }
        Some(PartLineKind::Outline { start, pieces })
    }

    fn outline_line(&mut self, item: &Item) -> Option<OutlineLine> {
        let node = self.line(Rule::only_outline_line, item, BlockKind::Outline)?;
        let span = self.span(&item.head);
        let rule = node.rule();
        let mut parts = node.parts();
        let to = self.point(&mut parts)?;
        if rule == Rule::outline_start {
            return Some(OutlineLine::Start(to, span));
        }
        let through = match rule == Rule::arc {
            true => Some(self.point(&mut parts)?),
            false => None,
        };
        Some(OutlineLine::Piece(OutlinePiece { to, through, span }))
    }

    fn point(&mut self, parts: &mut Parts<'s>) -> Option<(Expr, Expr)> {
        let mut point = parts.take(Rule::point)?.parts();
        Some((self.next_expr(&mut point)?, self.next_expr(&mut point)?))
    }
}

fn sides(node: Node<'_>) -> Vec<Name> {
    let mut parts = node.parts();
    std::iter::from_fn(|| parts.name()).collect()
}
