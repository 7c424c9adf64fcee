//! A bin whose cuts may still be moved: rows within rows.
//!
//! Rows of one way hold rows of the other, so that one level of rows is one stage of cutting.
//! What is left in a row lies in one place, at its end: pieces of a row may stand in any order,
//! and one large rest serves better than several small ones.

use super::Pose;
use super::tree::{Piece, Tree, Way};

/// A rectangle of a sheet, by number.
pub(super) type Id = u32;

const NONE: Id = Id::MAX;
const WHOLE: Id = 0;

/// What becomes of a rectangle.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Content {
    /// Left over.
    Free,
    /// An item that fills it.
    Item(Laid),
    /// Divided by cuts of one way.
    Row(Way),
    /// No rectangle at all: a number to be given again.
    Unused,
}

impl Content {
    /// The order of pieces of one size in a row.
    const fn rank(self) -> u32 {
        match self {
            Self::Item(laid) => laid.item,
            Self::Free | Self::Row(_) | Self::Unused => NONE,
        }
    }
}

/// An item and how it lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Laid {
    /// Which.
    pub(super) item: u32,
    /// Laid the other way.
    pub(super) turned: bool,
}

#[derive(Clone, Copy, Debug)]
struct Node {
    along: i64,
    across: i64,
    parent: Id,
    first: Id,
    next: Id,
    content: Content,
}

impl Node {
    const UNUSED: Self = Self {
        along: 0,
        across: 0,
        parent: NONE,
        first: NONE,
        next: NONE,
        content: Content::Unused,
    };

    const fn size(&self, way: Way) -> i64 {
        match way {
            Way::Rip => self.across,
            Way::Crosscut => self.along,
        }
    }

    const fn size_mut(&mut self, way: Way) -> &mut i64 {
        match way {
            Way::Rip => &mut self.across,
            Way::Crosscut => &mut self.along,
        }
    }
}

/// A bin and what lies on it.
#[derive(Debug, Default)]
pub(super) struct Sheet {
    /// Which of the problem's bins.
    pub(super) bin: usize,
    nodes: Vec<Node>,
    unused: Vec<Id>,
    free: Vec<Id>,
    pieces: usize,
    /// No free rectangle is longer or wider.
    reach: (i64, i64),
}

impl Clone for Sheet {
    fn clone(&self) -> Self {
        Self {
            bin: self.bin,
            nodes: self.nodes.clone(),
            unused: self.unused.clone(),
            free: self.free.clone(),
            pieces: self.pieces,
            reach: self.reach,
        }
    }

    /// Keeps what memory there is: the search copies sheets all the time.
    fn clone_from(&mut self, from: &Self) {
        self.bin = from.bin;
        self.nodes.clone_from(&from.nodes);
        self.unused.clone_from(&from.unused);
        self.free.clone_from(&from.free);
        self.pieces = from.pieces;
        self.reach = from.reach;
    }
}

impl Sheet {
    /// An uncut bin.
    pub(super) fn new(bin: usize, along: i64, across: i64) -> Self {
        let mut sheet = Self::default();
        sheet.start(bin, along, across);
        sheet
    }

    /// Makes it an uncut bin again.
    pub(super) fn start(&mut self, bin: usize, along: i64, across: i64) {
        self.bin = bin;
        self.nodes.clear();
        self.unused.clear();
        self.free.clear();
        self.pieces = 0;
        self.reach = (along, across);
        self.nodes.push(Node {
            along,
            across,
            content: Content::Free,
            ..Node::UNUSED
        });
        self.free.push(WHOLE);
    }

    /// True where nothing lies on it.
    pub(super) const fn is_empty(&self) -> bool {
        self.pieces == 0
    }

    /// What is left over, by number.
    pub(super) fn free(&self) -> &[Id] {
        &self.free
    }

    /// How many numbers of rectangles were given, used or not.
    pub(super) fn numbers(&self) -> usize {
        self.nodes.len()
    }

    fn node(&self, id: Id) -> Node {
        self.nodes.get(id as usize).copied().unwrap_or(Node::UNUSED)
    }

    fn change(&mut self, id: Id, change: impl FnOnce(&mut Node)) {
        if let Some(node) = self.nodes.get_mut(id as usize) {
            change(node);
        }
    }

    /// Sizes along and across.
    pub(super) fn sizes(&self, id: Id) -> (i64, i64) {
        self.nodes
            .get(id as usize)
            .map_or((0, 0), |node| (node.along, node.across))
    }

    /// What becomes of a rectangle.
    pub(super) fn content(&self, id: Id) -> Content {
        self.node(id).content
    }

    /// The way of the row a rectangle stands in.
    fn way_around(&self, id: Id) -> Option<Way> {
        match self.node(self.node(id).parent).content {
            Content::Row(way) => Some(way),
            Content::Free | Content::Item(_) | Content::Unused => None,
        }
    }

    /// How many stages of cuts free a rectangle.
    fn stages(&self, id: Id) -> u8 {
        let mut stages = 0_u8;
        let mut above = self.node(id).parent;
        while above != NONE {
            stages = stages.saturating_add(1);
            above = self.node(above).parent;
        }
        stages
    }

    /// The most stages of cuts that free one of its pieces.
    pub(super) fn most_stages(&self) -> u8 {
        let items = (0..)
            .zip(&self.nodes)
            .filter(|(_, node)| match node.content {
                Content::Item(_) => true,
                Content::Free | Content::Row(_) | Content::Unused => false,
            });
        items.map(|(id, _)| self.stages(id)).max().unwrap_or(0)
    }

    /// How many stages free an item laid in the corner of a free rectangle.
    pub(super) fn stages_with(&self, id: Id, (along, across, _): Pose, first: Way) -> u8 {
        let node = self.node(id);
        let stages = self.stages(id);
        let size = |way| if way == Way::Rip { across } else { along };
        let around = self.way_around(id);
        if size(first) == node.size(first) {
            // Nothing to cut that way: at most the other cut remains.
            let other = first.other();
            let more = size(other) != node.size(other) && around != Some(other);
            return stages.saturating_add(u8::from(more));
        }
        let strip = stages.saturating_add(u8::from(around != Some(first)));
        let trimmed = size(first.other()) != node.size(first.other());
        strip.saturating_add(u8::from(trimmed))
    }

    /// The pieces of a row.
    fn row(&self, id: Id) -> impl Iterator<Item = Id> + '_ {
        let mut at = self.node(id).first;
        std::iter::from_fn(move || {
            let current = at;
            (current != NONE).then(|| {
                at = self.node(current).next;
                current
            })
        })
    }

    fn free_of(&self, row: Id) -> Option<Id> {
        self.row(row)
            .find(|id| self.node(*id).content == Content::Free)
    }

    fn add(&mut self, node: Node) -> Id {
        let id = if let Some(id) = self.unused.pop() {
            self.change(id, |old| *old = node);
            id
        } else {
            self.nodes.push(node);
            Id::try_from(self.nodes.len() - 1).unwrap_or(NONE)
        };
        if node.content == Content::Free {
            self.free.push(id);
        }
        id
    }

    /// Adds a rectangle to the front of a row.
    fn add_to(&mut self, row: Id, along: i64, across: i64, content: Content) -> Id {
        let next = self.node(row).first;
        let id = self.add(Node {
            along,
            across,
            parent: row,
            first: NONE,
            next,
            content,
        });
        self.change(row, |node| node.first = id);
        id
    }

    fn set(&mut self, id: Id, content: Content) {
        let was_free = self.node(id).content == Content::Free;
        let is_free = content == Content::Free;
        if was_free && !is_free {
            self.forget_free(id);
        }
        if is_free && !was_free {
            self.free.push(id);
        }
        self.change(id, |node| node.content = content);
    }

    fn forget_free(&mut self, id: Id) {
        if let Some(place) = self.free.iter().position(|free| *free == id) {
            self.free.swap_remove(place);
        }
    }

    /// Takes a rectangle without contents out of its row; its number may be given again.
    fn take_out(&mut self, id: Id) {
        let node = self.node(id);
        if node.parent != NONE {
            if self.node(node.parent).first == id {
                self.change(node.parent, |row| row.first = node.next);
            } else {
                let before = self
                    .row(node.parent)
                    .find(|other| self.node(*other).next == id);
                if let Some(before) = before {
                    self.change(before, |other| other.next = node.next);
                }
            }
        }
        self.discard(id);
    }

    fn discard(&mut self, id: Id) {
        if self.node(id).content == Content::Free {
            self.forget_free(id);
        }
        self.change(id, |node| *node = Node::UNUSED);
        self.unused.push(id);
    }

    /// Lays an item in a free rectangle, the cut of `first` before the other.
    pub(super) fn lay(&mut self, id: Id, item: u32, pose: Pose, first: Way) {
        let (along, across, turned) = pose;
        let size = |way| if way == Way::Rip { across } else { along };
        let item = Content::Item(Laid { item, turned });
        let strip = self.cut_off(id, first, size(first));
        let corner = self.cut_off(strip, first.other(), size(first.other()));
        self.set(corner, item);
        self.pieces += 1;
        self.measure();
    }

    /// Cuts `at` off a free rectangle; gives what is cut off, free too. The rest stays free.
    fn cut_off(&mut self, id: Id, way: Way, at: i64) -> Id {
        let node = self.node(id);
        if at >= node.size(way) {
            return id;
        }
        let mut near = node;
        *near.size_mut(way) = at;
        if self.way_around(id) == Some(way) {
            self.change(id, |rest| *rest.size_mut(way) -= at);
            return self.add_to(node.parent, near.along, near.across, Content::Free);
        }
        let mut far = node;
        *far.size_mut(way) -= at;
        self.set(id, Content::Row(way));
        self.add_to(id, far.along, far.across, Content::Free);
        self.add_to(id, near.along, near.across, Content::Free)
    }

    /// Takes everything off a rectangle. Items are added to `taken`.
    pub(super) fn clear(&mut self, id: Id, taken: &mut Vec<u32>) {
        self.empty_into(id, taken);
        self.settle(id);
        self.measure();
    }

    fn measure(&mut self) {
        self.reach = self.free.iter().fold((0, 0), |reach, id| {
            let (along, across) = self.sizes(*id);
            (reach.0.max(along), reach.1.max(across))
        });
    }

    /// False where an item certainly fits in no free rectangle.
    pub(super) const fn may_hold(&self, pose: Pose) -> bool {
        pose.0 <= self.reach.0 && pose.1 <= self.reach.1
    }

    fn empty_into(&mut self, id: Id, taken: &mut Vec<u32>) {
        match self.node(id).content {
            Content::Item(laid) => {
                taken.push(laid.item);
                self.pieces -= 1;
            }
            Content::Row(_) => {
                let mut at = self.node(id).first;
                while at != NONE {
                    let next = self.node(at).next;
                    self.empty_into(at, taken);
                    self.discard(at);
                    at = next;
                }
                self.change(id, |node| node.first = NONE);
            }
            Content::Free | Content::Unused => return,
        }
        self.set(id, Content::Free);
    }

    /// A rectangle has become free: joins it with what is free beside it, and lets rows shrink
    /// to what they need, level by level.
    fn settle(&mut self, id: Id) {
        let mut id = id;
        loop {
            let Some(way) = self.way_around(id) else {
                return;
            };
            let row = self.node(id).parent;
            let beside = self
                .row(row)
                .find(|other| *other != id && self.node(*other).content == Content::Free);
            if let Some(beside) = beside {
                let more = self.node(id).size(way);
                self.change(beside, |node| *node.size_mut(way) += more);
                self.take_out(id);
                id = beside;
            }
            if self.node(row).first == id && self.node(id).next == NONE {
                self.take_out(id);
                self.set(row, Content::Free);
                id = row;
                continue;
            }
            let Some(freed) = self.shrink(row) else {
                return;
            };
            id = freed;
        }
    }

    /// How much of a piece of a row of `way` none of its own pieces needs.
    fn spare(&self, piece: Id, way: Way) -> i64 {
        let mut spare = i64::MAX;
        let mut at = self.node(piece).first;
        while at != NONE && spare > 0 {
            let inner = self.node(at);
            match inner.content {
                Content::Free => {}
                Content::Row(_) => {
                    let rest = self.free_of(at).map_or(0, |free| self.node(free).size(way));
                    spare = spare.min(rest);
                }
                Content::Item(_) | Content::Unused => spare = 0,
            }
            at = inner.next;
        }
        if spare == i64::MAX { 0 } else { spare }
    }

    /// Lets a row give what none of its pieces needs to the row around it; gives what is then
    /// free there.
    fn shrink(&mut self, row: Id) -> Option<Id> {
        let way = self.way_around(row)?;
        let spare = self.spare(row, way);
        if spare == 0 {
            return None;
        }
        let around = self.node(row).parent;
        self.change(row, |node| *node.size_mut(way) -= spare);
        let pieces: Vec<Id> = self.row(row).collect();
        for piece in pieces {
            self.change(piece, |node| *node.size_mut(way) -= spare);
            if let Content::Row(_) = self.node(piece).content
                && let Some(free) = self.free_of(piece)
            {
                self.change(free, |node| *node.size_mut(way) -= spare);
                if self.node(free).size(way) == 0 {
                    self.take_out(free);
                    self.unwrap(piece);
                }
            }
        }
        if let Some(free) = self.free_of(around) {
            self.change(free, |node| *node.size_mut(way) += spare);
            return Some(free);
        }
        let (mut along, mut across) = self.sizes(row);
        match way {
            Way::Rip => across = spare,
            Way::Crosscut => along = spare,
        }
        Some(self.add_to(around, along, across, Content::Free))
    }

    /// A row of one piece is that piece; where that is a row of the way of the row around, its
    /// pieces join that row.
    fn unwrap(&mut self, id: Id) {
        let only = self.node(id).first;
        if only == NONE || self.node(only).next != NONE {
            return;
        }
        let content = self.node(only).content;
        let first = self.node(only).first;
        self.change(id, |node| {
            node.first = first;
            node.content = content;
        });
        let mut at = first;
        while at != NONE {
            let next = self.node(at).next;
            self.change(at, |node| node.parent = id);
            at = next;
        }
        self.discard(only);
        let Content::Row(way) = content else {
            return;
        };
        if self.way_around(id) != Some(way) {
            return;
        }
        // The same way as the row around: its pieces stand in that row from now on.
        let around = self.node(id).parent;
        let pieces: Vec<Id> = self.row(id).collect();
        for piece in pieces {
            let rest = self.free_of(around);
            let node = self.node(piece);
            match rest {
                Some(rest) if node.content == Content::Free => {
                    let more = node.size(way);
                    self.change(rest, |free| *free.size_mut(way) += more);
                    self.discard(piece);
                }
                Some(_) | None => {
                    let next = self.node(around).first;
                    self.change(piece, |node| {
                        node.parent = around;
                        node.next = next;
                    });
                    self.change(around, |node| node.first = piece);
                }
            }
        }
        self.change(id, |node| node.first = NONE);
        self.take_out(id);
    }

    /// Every item that lies on it, with repeats.
    pub(super) fn items(&self) -> impl Iterator<Item = u32> + '_ {
        self.nodes.iter().filter_map(|node| match node.content {
            Content::Item(laid) => Some(laid.item),
            Content::Free | Content::Row(_) | Content::Unused => None,
        })
    }

    /// The same cuts as a tree of single cuts, what is left over at the end of each row.
    pub(super) fn tree(&self) -> Tree {
        let (along, across) = self.sizes(WHOLE);
        let mut tree = Tree::new(along, across);
        let mut waiting = vec![(WHOLE, 0)];
        while let Some((id, cell)) = waiting.pop() {
            match self.node(id).content {
                Content::Item(laid) => tree.fill(cell, laid.item as usize, laid.turned),
                Content::Row(way) => {
                    let mut rest = cell;
                    let mut pieces: Vec<Id> = self
                        .row(id)
                        .filter(|piece| self.node(*piece).content != Content::Free)
                        .collect();
                    let is_used_up = self.free_of(id).is_none();
                    // The widest first, those of one setting together. A piece with a rest of
                    // its own is what the others leave, where they leave nothing else: it
                    // needs no setting of the fence.
                    pieces.sort_by_key(|piece| {
                        let node = self.node(*piece);
                        let other = node.size(way.other());
                        let has_rest = is_used_up && self.spare(*piece, way) > 0;
                        let size = std::cmp::Reverse((node.size(way), other, node.content.rank()));
                        (has_rest, size)
                    });
                    for piece in pieces {
                        let node = self.node(piece);
                        let (near, far) = tree.divide(rest, way, node.size(way));
                        waiting.push((piece, near));
                        rest = far.unwrap_or(near);
                    }
                }
                Content::Free | Content::Unused => {}
            }
        }
        tree
    }

    /// The sheet of a tree of single cuts.
    pub(super) fn of_tree(bin: usize, tree: &Tree) -> Self {
        let whole = tree.cell(0);
        let mut sheet = Self::new(bin, whole.along, whole.across);
        let mut freed = Vec::new();
        let mut waiting = vec![(0, WHOLE)];
        while let Some((cell, id)) = waiting.pop() {
            match tree.piece(cell) {
                Piece::Item { item, turned } => {
                    let item = u32::try_from(item).unwrap_or(NONE);
                    sheet.set(id, Content::Item(Laid { item, turned }));
                    sheet.pieces += 1;
                }
                Piece::Divided { way, at, near, far } => {
                    let strip = sheet.cut_off(id, way, at);
                    let rest = match sheet.node(id).content {
                        Content::Row(_) => sheet.node(strip).next,
                        Content::Free | Content::Item(_) | Content::Unused => id,
                    };
                    waiting.push((near, strip));
                    waiting.push((far, rest));
                }
                Piece::Free => freed.push(id),
            }
        }
        for id in freed {
            if sheet.node(id).content == Content::Free {
                sheet.settle(id);
            }
        }
        sheet.measure();
        sheet
    }
}
