//! Statements out of what the layout cut: checks their first words and hands each on.

use std::ops::Range;

use super::findings::BEYOND_LIMITS;
use super::layout::{self, Item, MOST_FAULTS, Source};
use super::pairs::{self, Node, Parts, Rule};
use super::recover::{self, Reading};
use super::tree::{Allow, Expr, Statement, Text};
use super::words::{BlockKind, Opening, nearest};
use crate::finding::{Finding, Findings};
use crate::source::{LARGEST_SOURCE, Span};

/// A file being read, and what was found in it so far.
pub(super) struct Reader<'s> {
    pub(super) source: Source<'s>,
    findings: Findings,
    faults: usize,
}

impl<'s> Reader<'s> {
    /// Nothing read yet.
    pub(super) fn new(source: Source<'s>) -> Self {
        Self {
            source,
            findings: Findings::new(),
            faults: 0,
        }
    }

    /// The statements, not read yet; what the layout found is reported.
    pub(super) fn lay_out(&mut self) -> Vec<Item> {
        let (items, findings) = layout::lay_out(self.source);
        for finding in findings.iter() {
            self.report(finding.clone());
        }
        items
    }

    /// One more finding, unless there are too many already.
    pub(super) fn report(&mut self, finding: Finding) {
        self.faults += 1;
        if self.faults < MOST_FAULTS {
            self.findings.push(finding);
        } else if self.faults == MOST_FAULTS {
            let message = format!("more than {MOST_FAULTS} faults: the others are not shown");
            self.findings
                .push(Finding::new(&BEYOND_LIMITS, finding.span, message));
        }
    }

    /// Everything found, in the order of the text.
    pub(super) fn findings(self) -> Findings {
        self.findings.sorted()
    }

    pub(super) fn span(&self, range: &Range<usize>) -> Span {
        self.source.span(range.clone())
    }

    /// Reads a stretch by one rule, or reports why it cannot be read.
    pub(super) fn read(
        &mut self,
        rule: Rule,
        range: Range<usize>,
        reading: Reading<'_>,
    ) -> Option<Parts<'s>> {
        match pairs::read(self.source, rule, range.clone()) {
            Ok(parts) => Some(parts),
            Err(fault) => {
                self.report(recover::unreadable(self.source, range, &fault, reading));
                None
            }
        }
    }

    /// The parts of a statement's head.
    pub(super) fn head(&mut self, rule: Rule, item: &Item, opening: Opening) -> Option<Parts<'s>> {
        if item.spoiled {
            return None;
        }
        let parts = self.read(rule, item.head.clone(), Reading::Line(Some(opening.form())))?;
        match &item.block {
            None if opening.needs_block() => {
                let finding = recover::missing_block(self.source, &item.head, opening);
                self.report(finding);
                None
            }
            Some(block) if opening.block().is_none() => {
                let (word, form) = (opening.word(), opening.form());
                let finding = recover::needless_block(self.source, word, block.open, form);
                self.report(finding);
                None
            }
            _ => self.inside(parts),
        }
    }

    /// The line's own rule, with its parts to be taken.
    pub(super) fn line(&mut self, rule: Rule, item: &Item, kind: BlockKind) -> Option<Node<'s>> {
        let form = kind.form(self.source.word(item.head.start));
        self.read(rule, item.head.clone(), Reading::Line(form))?
            .value()
    }

    fn inside(&self, mut parts: Parts<'s>) -> Option<Parts<'s>> {
        parts.value().map(Node::parts)
    }

    /// The lines of a statement's block, each made by `lower`; those that cannot be read are
    /// reported and missing.
    pub(super) fn lines<T>(
        &mut self,
        item: &Item,
        kind: BlockKind,
        lower: fn(&mut Self, &Item) -> Option<T>,
    ) -> Vec<T> {
        let Some(block) = &item.block else {
            return Vec::new();
        };
        let mut lines = Vec::with_capacity(block.items.len());
        for line in &block.items {
            if self.begins_line(line, kind) {
                lines.extend(lower(self, line));
            }
        }
        lines
    }

    /// Checks the first word of a line, and that nothing but an outline has a block of its own.
    fn begins_line(&mut self, line: &Item, kind: BlockKind) -> bool {
        if line.spoiled {
            return false;
        }
        let word = self.source.word(line.head.start);
        let Some(form) = kind.form(word) else {
            let finding = recover::unknown_line(self.source, &line.head, kind);
            self.report(finding);
            return false;
        };
        match &line.block {
            Some(block) if word != "outline" => {
                let finding = recover::needless_block(self.source, word, block.open, form);
                self.report(finding);
                false
            }
            _ => true,
        }
    }

    /// The expression that a whole source is.
    pub(super) fn expression(&mut self, item: &Item) -> Option<Expr> {
        let mut parts = self.read(
            Rule::only_expression,
            item.head.clone(),
            Reading::Line(None),
        )?;
        parts.value().and_then(|node| self.expr(node))
    }

    /// The next part as an expression.
    pub(super) fn next_expr(&mut self, parts: &mut Parts<'s>) -> Option<Expr> {
        parts.value().and_then(|node| self.expr(node))
    }

    /// The expression of the next part, if that was read by `rule`.
    ///
    /// `None` where it was but has no value; that is reported, and the line goes.
    #[expect(clippy::option_option, reason = "absent and faulty are two things")]
    pub(super) fn optional(&mut self, parts: &mut Parts<'s>, rule: Rule) -> Option<Option<Expr>> {
        match parts.take(rule) {
            None => Some(None),
            Some(node) => {
                let mut inner = node.parts();
                self.next_expr(&mut inner).map(Some)
            }
        }
    }

    /// The next part, if it is a text.
    pub(super) fn optional_text(&mut self, parts: &mut Parts<'s>) -> Option<Text> {
        parts.take(Rule::text).map(|node| self.text(&node))
    }

    /// `allow CODE because "…"`
    pub(super) fn allow(&mut self, parts: &mut Parts<'s>) -> Option<Allow> {
        Some(Allow {
            code: parts.name()?,
            because: self.next_text(parts)?,
        })
    }

    /// The next part, a text.
    pub(super) fn next_text(&mut self, parts: &mut Parts<'s>) -> Option<Text> {
        parts.value().map(|node| self.text(&node))
    }
}

/// A statement, or a finding for each of its faults.
pub(super) fn statement(reader: &mut Reader<'_>, item: &Item) -> Option<Statement> {
    let word = reader.source.word(item.head.start);
    let Some(opening) = Opening::of(word) else {
        if !item.spoiled {
            let finding = recover::unknown_statement(reader.source, &item.head);
            reader.report(finding);
        }
        let meant = nearest(word, Opening::ALL.map(Opening::word));
        if let Some(opening) = meant.and_then(|(word, _)| Opening::of(word)) {
            check_lines(reader, item, opening);
        }
        return None;
    };
    match opening {
        Opening::Plan => reader.plan(item).map(Statement::Plan),
        Opening::Param => reader.param(item).map(Statement::Param),
        Opening::Let => reader.constant(item).map(Statement::Let),
        Opening::Material => reader.material(item).map(Statement::Material),
        Opening::Part => reader.part(item).map(Statement::Part),
        Opening::Place => reader.place(item).map(Statement::Place),
        Opening::Join => reader.join(item).map(Statement::Join),
        Opening::Hardware => reader.hardware(item).map(Statement::Hardware),
        Opening::Supply => reader.supply(item).map(Statement::Supply),
        Opening::Step => reader.step(item).map(Statement::Step),
        Opening::Require => reader.require(item).map(Statement::Require),
        Opening::Load => reader.load(item).map(Statement::Load),
        Opening::Clearance => reader.clearance(item).map(Statement::Clearance),
        Opening::Hold => reader
            .hold(item)
            .map(|hold| Statement::Hold(Box::new(hold))),
        Opening::Continuous => reader.continuous(item).map(Statement::Continuous),
        Opening::Template => reader.template(item).map(Statement::Template),
        Opening::Subassembly => reader.subassembly(item).map(Statement::Subassembly),
        Opening::Import => reader.import(item).map(Statement::Import),
        Opening::Library => reader.library(item).map(Statement::Library),
        Opening::Option => reader.option(item).map(Statement::Choose),
        Opening::Choice => {
            let finding = recover::choice_alone(reader.source, &item.head);
            reader.report(finding);
            None
        }
    }
}

/// Reads the lines of a statement whose own word is misspelt, for their findings alone.
fn check_lines(reader: &mut Reader<'_>, item: &Item, opening: Opening) {
    match opening.block() {
        Some(BlockKind::Plan) => drop(reader.plan_lines(item)),
        Some(BlockKind::Material) => drop(reader.material_lines(item)),
        Some(BlockKind::Part) => drop(reader.part_lines(item)),
        Some(BlockKind::Place) => drop(reader.place_lines(item)),
        Some(BlockKind::Join) => drop(reader.join_lines(item)),
        Some(BlockKind::Hardware) => drop(reader.hardware_lines(item)),
        Some(BlockKind::Supply) => drop(reader.supply_lines(item)),
        Some(BlockKind::Step) => drop(reader.step_lines(item)),
        Some(kind @ (BlockKind::Subassembly | BlockKind::Choice)) => {
            drop(reader.inner_statements(item, kind));
        }
        Some(BlockKind::Option) => drop(reader.choices(item)),
        Some(BlockKind::Library) => drop(reader.library_lines(item)),
        Some(BlockKind::Outline) | None => {}
    }
}

/// The finding of a source beyond the limit.
pub(super) fn too_large(source: Source<'_>) -> Option<Finding> {
    (source.text.len() > LARGEST_SOURCE).then(|| {
        let message = format!("the source has more than {LARGEST_SOURCE} bytes");
        Finding::new(&BEYOND_LIMITS, Span::new(source.file, 0, 0), message)
            .remedy("move parts that stand for themselves into a plan of their own")
    })
}
