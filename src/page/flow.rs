//! The flow: a column of slabs, set but not yet on pages.

use crate::display::{Figure, Mark, Spot};
use crate::document::tree::Change;
use crate::text::TextStyle;

use super::Placed;
use super::structure::{ElementId, Structure};
use super::style::GRID;

/// How bad it is to begin a page with a slab. A page ends where this is least, and as late as
/// that allows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum BreakCost {
    /// A page begins here in any case.
    Forced,
    /// Between blocks.
    Free,
    /// Between rows of a group.
    InGroup,
    /// Inside blocks kept together.
    Kept,
    /// Between a heading and its text, or the first two lines of a paragraph.
    Tied,
}

/// A piece of the column that is never broken.
#[derive(Debug)]
pub(super) struct Slab<'d> {
    pub(super) height: f64,
    /// Free space above it, dropped at the top of a page.
    pub(super) space: f64,
    /// Begins on the grid.
    pub(super) on_grid: bool,
    /// How bad it is to begin a page with it.
    pub(super) cost: BreakCost,
    /// What is in it, from its upper left corner in the text area.
    pub(super) content: Vec<Placed<'d>>,
    /// Named places in it and how far down they are.
    pub(super) places: Vec<String>,
    /// Boxes it is in, outermost first, by their number in [`Flow::boxes`].
    pub(super) boxes: Vec<usize>,
    /// The table head repeated above it at the top of a page, by its number in [`Flow::heads`].
    pub(super) head: Option<usize>,
    /// Page numbers to be filled in.
    pub(super) numbers: Vec<PageNumber>,
    /// Baseline of its first line, from its top.
    pub(super) baseline: f64,
    /// What the margin tells of it.
    pub(super) change: Change,
    /// It fills a page of its own of this width and height.
    pub(super) page: Option<(f64, f64)>,
}

impl Slab<'_> {
    /// An empty one of a height.
    pub(super) fn new(height: f64) -> Self {
        Self {
            height,
            space: 0.0,
            on_grid: false,
            cost: BreakCost::Free,
            content: Vec::new(),
            places: Vec::new(),
            boxes: Vec::new(),
            head: None,
            numbers: Vec::new(),
            baseline: 0.0,
            change: Change::None,
            page: None,
        }
    }

    /// Takes `points` off the height of a figure, where its lettering stays legible; none where
    /// there is no figure or it cannot be smaller.
    fn shrink_figure(&mut self, points: f64, natural: f64) -> Option<()> {
        let (figure, at, scale) = self.content.iter_mut().find_map(|placed| match placed {
            Placed::Figure {
                figure, at, scale, ..
            } => Some((figure, at, scale)),
            Placed::Mark(_) | Placed::Content { .. } => None,
        })?;
        let smaller = 1.0 - points / self.height;
        if figure.to_scale || *scale * smaller < legible(figure) * natural {
            return None;
        }
        at.x += figure.width * *scale * (1.0 - smaller) / 2.0;
        *scale *= smaller;
        self.height -= points;
        Some(())
    }

    /// Its top below a slab that ends at `down`.
    pub(super) fn top_after(&self, down: f64) -> f64 {
        let top = down + self.space;
        if self.on_grid {
            libm::ceil((top - SLACK) / GRID) * GRID
        } else {
            top
        }
    }
}

/// A figure is made this much smaller at most to stand on one page with its heading.
pub(super) const LEAST_SHRINK: f64 = 0.75;
/// No lettering of a figure that is made smaller for the text around it is smaller than that.
const LEAST_LETTERING: f64 = 7.0;

/// The scale at which the smallest lettering of a figure is just legible.
fn legible(figure: &Figure) -> f64 {
    let sizes = figure.marks.iter().filter_map(|mark| match mark {
        Mark::Text(run) => Some(run.size),
        Mark::Stroke { .. } | Mark::Fill { .. } | Mark::Sealed { .. } | Mark::Link { .. } => None,
    });
    LEAST_LETTERING / sizes.fold(LEAST_LETTERING * 2.0, f64::min)
}

/// Two heights that differ by less are one, in points.
pub(super) const SLACK: f64 = 0.01;

/// A page number that is known only when all pages are.
#[derive(Clone, Debug)]
pub(super) struct PageNumber {
    /// The place whose page it is.
    pub(super) target: String,
    /// Right end of its baseline.
    pub(super) at: Spot,
    pub(super) style: TextStyle,
    /// What it belongs to.
    pub(super) element: ElementId,
}

/// The head of a table or the signal word of a box, for the tops of pages.
#[derive(Debug)]
pub(super) struct Head {
    pub(super) height: f64,
    /// Free space above it where it stands in a frame that goes on from the page before.
    pub(super) inset: f64,
    pub(super) marks: Vec<Mark>,
}

/// A frame around slabs, drawn on every page it is on.
#[derive(Debug)]
pub(super) struct Box {
    pub(super) x: f64,
    pub(super) width: f64,
    pub(super) pen: crate::display::Pen,
}

/// Free space inside a box where it goes on from one page to the next.
pub(super) const BOX_PAD: f64 = 7.0;

/// A heading, for contents and outline.
#[derive(Clone, Debug)]
pub(super) struct Entry {
    pub(super) level: u8,
    pub(super) id: String,
    pub(super) title: String,
}

/// The whole document as one column.
#[derive(Debug, Default)]
pub(super) struct Flow<'d> {
    pub(super) slabs: Vec<Slab<'d>>,
    pub(super) heads: Vec<Head>,
    pub(super) boxes: Vec<Box>,
    pub(super) entries: Vec<Entry>,
    pub(super) structure: Structure,
    /// Space the last block asks for below it.
    after: f64,
    /// The next slab is tied to the last one.
    tied: bool,
    /// The next slab begins a page.
    forced: bool,
    /// Boxes that are open.
    open: Vec<usize>,
}

impl<'d> Flow<'d> {
    /// The space above the next block that asks for `before`.
    pub(super) fn space(&mut self, before: f64) -> f64 {
        let space = self.after.max(before);
        self.after = 0.0;
        space
    }

    /// The last block asks for this space below it.
    pub(super) fn space_after(&mut self, after: f64) {
        self.after = after;
    }

    /// The next slab stays with the last one.
    pub(super) fn tie(&mut self) {
        self.tied = true;
    }

    /// True right after a heading.
    pub(super) fn is_tied(&self) -> bool {
        self.tied
    }

    /// Height of the last slabs that are tied to one another, down to the one before the next.
    pub(super) fn tied_height(&self) -> f64 {
        if !self.tied {
            return 0.0;
        }
        let tied = |slab: &&Slab<'_>| slab.cost == BreakCost::Tied;
        let chain = self.slabs.iter().rev().take_while(tied).count() + 1;
        self.height_from(self.slabs.len().saturating_sub(chain))
    }

    /// The next slab begins a page.
    pub(super) fn break_page(&mut self) {
        self.forced = true;
    }

    /// One more slab.
    pub(super) fn push(&mut self, mut slab: Slab<'d>) {
        if self.tied {
            slab.cost = slab.cost.max(BreakCost::Tied);
        }
        if self.forced {
            slab.cost = BreakCost::Forced;
        }
        (self.tied, self.forced) = (false, false);
        slab.boxes.clone_from(&self.open);
        // Inside a box its frame sets the rhythm.
        slab.on_grid &= self.open.is_empty();
        self.slabs.push(slab);
    }

    pub(super) fn open_box(&mut self, frame: Box) {
        self.open.push(self.boxes.len());
        self.boxes.push(frame);
    }

    pub(super) fn close_box(&mut self) {
        self.open.pop();
    }

    /// Inside a box.
    pub(super) fn is_boxed(&self) -> bool {
        !self.open.is_empty()
    }

    /// Makes the figure among the slabs from `first` on smaller, where they then fit into `room`;
    /// at the scale `natural` it is as large as it is drawn.
    pub(super) fn shrink_figure(&mut self, first: usize, room: f64, natural: f64) {
        let mut over = self.height_from(first) - room;
        // What stands on the grid moves by whole steps: one more may be needed.
        for _ in 0..2 {
            if over <= SLACK {
                return;
            }
            let mut slabs = self.slabs.iter_mut().skip(first);
            if slabs
                .find_map(|slab| slab.shrink_figure(over, natural))
                .is_none()
            {
                return;
            }
            over = (self.height_from(first) - room).min(GRID);
        }
    }

    /// Raises the cost of every break between the slabs from `first` on, if all of them fit
    /// into `room`.
    pub(super) fn keep_from(&mut self, first: usize, room: f64, cost: BreakCost) {
        if self.height_from(first) > room {
            return;
        }
        for slab in self.slabs.iter_mut().skip(first + 1) {
            if slab.cost != BreakCost::Forced {
                slab.cost = slab.cost.max(cost);
            }
        }
    }

    /// Raises the cost of the break before one slab.
    pub(super) fn keep_at(&mut self, slab: usize, cost: BreakCost) {
        if let Some(slab) = self.slabs.get_mut(slab)
            && slab.cost != BreakCost::Forced
        {
            slab.cost = slab.cost.max(cost);
        }
    }

    /// Makes the slabs from `first` on at least `height` high, what is in them in the middle; how
    /// high they then are.
    pub(super) fn pad_from(&mut self, first: usize, height: f64) -> f64 {
        let now = self.height_from(first);
        let pad = ((height - now) / 2.0).max(0.0);
        if let Some(slab) = self.slabs.get_mut(first) {
            let content = std::mem::take(&mut slab.content).into_iter();
            slab.content = content.map(|one| moved(one, 0.0, pad)).collect();
            slab.baseline += pad;
            slab.height += pad;
        }
        if let Some(last) = self.slabs.last_mut() {
            last.height += pad;
        }
        now + 2.0 * pad
    }

    /// Marks the slabs from `first` on in the margin: all that are other, or the end that something
    /// is gone at.
    pub(super) fn mark_from(&mut self, first: usize, change: Change) {
        let slabs = self.slabs.get_mut(first..).unwrap_or_default();
        let marked = match change {
            Change::None => &mut [],
            Change::Other => slabs,
            Change::GoneAbove => slabs.get_mut(..1).unwrap_or_default(),
            Change::GoneBelow => {
                let last = slabs.len().saturating_sub(1);
                slabs.get_mut(last..).unwrap_or_default()
            }
        };
        for slab in marked {
            slab.change = slab.change.or(change);
        }
    }

    /// Ties the slabs from `first` on that begin within `height`.
    pub(super) fn tie_from(&mut self, first: usize, height: f64) {
        let mut down = 0.0;
        for (i, slab) in self.slabs.iter_mut().skip(first).enumerate() {
            let top = if i == 0 { 0.0 } else { slab.top_after(down) };
            if i > 0 && top < height && slab.cost != BreakCost::Forced {
                slab.cost = BreakCost::Tied;
            }
            down = top + slab.height;
        }
    }

    /// Height of the slabs from `first` on, at the top of a page.
    pub(super) fn height_from(&self, first: usize) -> f64 {
        let mut down = 0.0;
        for (i, slab) in self.slabs.iter().skip(first).enumerate() {
            let top = if i == 0 { 0.0 } else { slab.top_after(down) };
            down = top + slab.height;
        }
        down
    }
}

/// A thing moved by `dx`, `dy`, without copying it.
pub(super) fn moved(placed: Placed<'_>, dx: f64, dy: f64) -> Placed<'_> {
    match placed {
        Placed::Mark(mark) => Placed::Mark(mark.shifted(dx, dy)),
        Placed::Content { element, mark } => Placed::Content {
            element,
            mark: mark.shifted(dx, dy),
        },
        Placed::Figure {
            figure,
            at,
            scale,
            element,
        } => Placed::Figure {
            figure,
            at: at.shifted(dx, dy),
            scale,
            element,
        },
    }
}
