//! What the piece is for, worked out: loads it carries, gaps between what moves, things that go
//! in; and what the author allows.

use super::evaluate::Evaluator;
use super::findings::{NOT_POSITIVE, WRONG_KIND};
use super::place::PlacedId;
use crate::finding::Finding;
use crate::geometry::Axis;
use crate::source::Span;
use crate::syntax::tree::{
    self, Expr, HardwareSettingKind, JoinSettingKind, MaterialSetting, PartLineKind, PlaceLineKind,
    PlanSetting, Statement, StepLineKind, SupplySettingKind,
};
use crate::units::{Dimension, Length};

/// A load on one piece.
#[derive(Clone, Debug, PartialEq)]
pub struct Load {
    /// The piece that carries it.
    pub piece: PlacedId,
    /// Its mass in kilograms.
    pub kg: f64,
    /// In one place in the middle, not spread over the piece.
    pub at_middle: bool,
    /// The most the piece may bend, if the author says it.
    pub sag: Option<Length>,
    /// Where it is written.
    pub span: Span,
}

/// A gap between two faces of which one moves.
#[derive(Clone, Debug, PartialEq)]
pub struct Clearance {
    /// The gap; below zero where the faces have passed each other.
    pub gap: Length,
    /// The least it may be.
    pub low: Length,
    /// The most it may be.
    pub high: Length,
    /// Why, in the author's words.
    pub because: Option<String>,
    /// Where it is written.
    pub span: Span,
}

/// Pieces that are cut side by side from one blank, so that the grain runs on over them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Continuous {
    /// The pieces, in order.
    pub pieces: Vec<PlacedId>,
    /// One after the other along the grain, not beside each other across it.
    pub along: bool,
    /// Where it is written.
    pub span: Span,
}

/// A thing that must go in.
#[derive(Clone, Debug, PartialEq)]
pub struct Held {
    /// What.
    pub title: String,
    /// On each of its three ways: the axis, its size and the room there is.
    pub ways: [(Axis, Length, Length); 3],
    /// Room that must be left over on each way.
    pub clear: Length,
    /// Where it is written.
    pub span: Span,
}

/// Findings of a code that the author wants, and why.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Allowance {
    /// The code.
    pub code: String,
    /// Where the code is written.
    pub code_span: Span,
    /// The reason, as printed in the plan.
    pub because: String,
    /// The statement whose findings it is about.
    pub within: Span,
}

impl Evaluator<'_> {
    /// Kilograms of a load.
    pub(super) fn load_kg(&self, mass: &Expr) -> Option<f64> {
        let quantity = self.of_kind(mass, None, Dimension::MASS)?;
        let kg = quantity.mass()?.kg();
        if kg > 0.0 && kg <= 100_000.0 {
            return Some(kg);
        }
        let message = "a load is more than nothing and at most 100 tonnes";
        self.tell(Finding::new(&NOT_POSITIVE, mass.span, message));
        None
    }

    /// The gap between two faces, and what it may be.
    pub(super) fn clearance(&self, clearance: &tree::Clearance) -> Option<Clearance> {
        let (_, gap) = self.between(&clearance.from, &clearance.to)?;
        let low = self.length_from_zero(&clearance.low, None, "the least clearance")?;
        let high = self.positive_length(&clearance.high, None, "the largest clearance")?;
        if low > high {
            let span = clearance.low.span.to(clearance.high.span);
            let message = "the least clearance is larger than the largest";
            self.tell(Finding::new(&NOT_POSITIVE, span, message));
            return None;
        }
        Some(Clearance {
            gap,
            low,
            high,
            because: clearance.because.as_ref().map(|text| text.value.clone()),
            span: clearance.span,
        })
    }

    /// A thing and the room it has.
    pub(super) fn held(&self, hold: &tree::Hold) -> Option<Held> {
        let mut ways = [(Axis::Across, Length::ZERO, Length::ZERO); 3];
        for ((way, size), (from, to)) in ways.iter_mut().zip(&hold.sizes).zip(&hold.rooms) {
            let size = self.positive_length(size, None, "the size")?;
            let (axis, room) = self.between(from, to)?;
            *way = (axis, size, room);
        }
        let mut axes = ways.map(|(axis, ..)| axis.index());
        axes.sort_unstable();
        if axes != [0, 1, 2] {
            let message = "the three rooms are one across, one deep and one high, in any order";
            self.tell(Finding::new(&WRONG_KIND, hold.span, message));
            return None;
        }
        let clear = match &hold.clear {
            Some(clear) => self.length_from_zero(clear, None, "the room left over")?,
            None => Length::ZERO,
        };
        Some(Held {
            title: hold.title.value.clone(),
            ways,
            clear,
            span: hold.span,
        })
    }

    /// The distance from one face to another of the same axis.
    fn between(&self, from: &Expr, to: &Expr) -> Option<(Axis, Length)> {
        let (first, second) = (self.anchor(from, None), self.anchor(to, None));
        let planes = first?.as_plane().zip(second?.as_plane());
        if let Some(((axis, low), (other, high))) = planes
            && axis == other
        {
            return Some((axis, high - low));
        }
        let message = "two faces that look along one axis are needed here";
        self.tell(
            Finding::new(&WRONG_KIND, from.span.to(to.span), message)
                .remedy("name faces: `left.right` and `right.left`"),
        );
        None
    }
}

/// Every `allow` line of some statements, with the statement it stands in; those of the plan block hold in
/// the whole file.
pub(super) fn allowances(statements: &[&Statement], whole: Span) -> Vec<Allowance> {
    statements
        .iter()
        .flat_map(|statement| with_inner(statement))
        .flat_map(|statement| {
            let (within, lines) = allow_lines(statement, whole);
            lines.into_iter().map(move |allow| Allowance {
                code: allow.code.value.clone(),
                code_span: allow.code.span,
                because: allow.because.value.clone(),
                within,
            })
        })
        .collect()
}

/// A statement, or the statements of a sub-assembly.
fn with_inner(statement: &Statement) -> &[Statement] {
    if let Statement::Subassembly(it) = statement {
        &it.statements
    } else {
        std::slice::from_ref(statement)
    }
}

/// The `allow` lines of a statement, and what they are about.
fn allow_lines(statement: &Statement, whole: Span) -> (Span, Vec<&tree::Allow>) {
    /// The lines of a block that are of one kind.
    macro_rules! of_kind {
        ($lines:expr, $line:pat => $allow:expr) => {
            $lines
                .filter_map(|line| if let $line = line { Some($allow) } else { None })
                .collect()
        };
    }
    match statement {
        Statement::Plan(plan) => (
            whole,
            of_kind!(plan.settings.iter(), PlanSetting::Allow(allow) => allow),
        ),
        Statement::Material(material) => (
            material.span,
            of_kind!(material.settings.iter(), MaterialSetting::Allow(allow) => allow),
        ),
        Statement::Part(part) => (
            part.span,
            of_kind!(part.lines.iter().map(|line| &line.kind), PartLineKind::Allow(allow) => allow),
        ),
        Statement::Place(place) => (
            place.span,
            of_kind!(place.lines.iter().map(|line| &line.kind), PlaceLineKind::Allow(allow) => allow),
        ),
        Statement::Join(join) => (
            join.span,
            of_kind!(join.settings.iter().map(|line| &line.kind), JoinSettingKind::Allow(allow) => allow),
        ),
        Statement::Hardware(item) => (
            item.span,
            of_kind!(item.settings.iter().map(|line| &line.kind), HardwareSettingKind::Allow(allow) => allow),
        ),
        Statement::Supply(supply) => (
            supply.span,
            of_kind!(supply.settings.iter().map(|line| &line.kind), SupplySettingKind::Allow(allow) => allow),
        ),
        Statement::Step(step) => (
            step.span,
            of_kind!(step.lines.iter().map(|line| &line.kind), StepLineKind::Allow(allow) => allow),
        ),
        Statement::Param(_)
        | Statement::Let(_)
        | Statement::Require(_)
        | Statement::Load(_)
        | Statement::Clearance(_)
        | Statement::Hold(_)
        | Statement::Continuous(_)
        | Statement::Template(_)
        | Statement::Subassembly(_)
        | Statement::Choose(_)
        | Statement::Import(_)
        | Statement::Library(_) => (whole, Vec::new()),
    }
}
