//! Sizes that must add up: side, shelf and side make the width. Each is rounded alone where it is
//! printed, so what stands in the plan is added up once more.

use std::collections::BTreeSet;

use super::types::Sum;
use crate::build::{Build, PlacedId, PlacedPart};
use crate::geometry::{Axis, Interval};
use crate::model::PartId;
use crate::units::{Length, Precision};

/// Pieces in a row beyond which nobody adds up.
const LONGEST: usize = 8;

/// Joints looked at in one build, so that a lattice costs no more than its size.
const STEPS: usize = 20_000;

/// Every row of joined pieces that is as long as a piece they are joined to, and whose printed
/// sizes make something else than what is printed of that piece.
///
/// A gap is never printed and counts as it is. Where gaps and the play of joints take up what
/// rounding leaves, nothing has to be fitted.
pub(super) fn open(build: &Build) -> Vec<Sum> {
    let mut walk = Walk {
        build,
        joined: joined(build),
        found: Vec::new(),
        seen: BTreeSet::new(),
        steps: STEPS,
    };
    for axis in Axis::ALL {
        let next = upward(build, axis);
        for (whole, piece) in (0..).map(PlacedId).zip(&build.placed) {
            walk.beside_piece(&next, axis, whole, piece);
        }
    }
    walk.found
}

/// For each piece those that any joint brings to it.
fn joined(build: &Build) -> Vec<Vec<PlacedId>> {
    let mut joined = vec![Vec::new(); build.placed.len()];
    for joint in &build.joints {
        for (one, other) in [(joint.part, joint.to), (joint.to, joint.part)] {
            if let Some(others) = joined.get_mut(one.0) {
                others.push(other);
            }
        }
    }
    joined
}

/// For each piece the pieces that a joint puts after it on the axis.
fn upward(build: &Build, axis: Axis) -> Vec<Vec<Link>> {
    let mut next: Vec<Vec<Link>> = vec![Vec::new(); build.placed.len()];
    for joint in &build.joints {
        if joint.contact.direction.axis() != axis {
            continue;
        }
        let (Some(one), Some(other)) = (build.piece(joint.part), build.piece(joint.to)) else {
            continue;
        };
        let (Some(first), Some(second)) = (stretch(one, axis), stretch(other, axis)) else {
            continue;
        };
        let (from, to) = if first.low <= second.low {
            (joint.part, joint.to)
        } else {
            (joint.to, joint.part)
        };
        if let Some(followers) = next.get_mut(from.0)
            && followers.iter().all(|link| link.to != to)
        {
            followers.push(Link {
                to,
                play: joint.play,
            });
        }
    }
    next
}

/// A piece that is joined after another.
#[derive(Clone, Copy)]
struct Link {
    to: PlacedId,
    play: Length,
}

fn stretch(piece: &PlacedPart, axis: Axis) -> Option<Interval> {
    piece.place.get(axis.index()).copied()
}

struct Walk<'b> {
    build: &'b Build,
    joined: Vec<Vec<PlacedId>>,
    found: Vec<Sum>,
    seen: BTreeSet<(Axis, Vec<PartId>, Length)>,
    steps: usize,
}

/// What a row of pieces must be as long as.
struct Target {
    axis: Axis,
    whole: Interval,
    /// The piece of that length.
    beside: PlacedId,
    /// What is joined to it.
    joined: Vec<PlacedId>,
}

impl Walk<'_> {
    /// Rows beside a piece, from one that is joined to it to another.
    fn beside_piece(
        &mut self,
        next: &[Vec<Link>],
        axis: Axis,
        whole: PlacedId,
        piece: &PlacedPart,
    ) {
        let Some(length) = stretch(piece, axis) else {
            return;
        };
        let joined = self.joined.get(whole.0).cloned().unwrap_or_default();
        let target = Target {
            axis,
            whole: length,
            beside: whole,
            joined: joined.clone(),
        };
        self.start(next, &target, joined);
    }

    fn start(
        &mut self,
        next: &[Vec<Link>],
        target: &Target,
        starts: impl IntoIterator<Item = PlacedId>,
    ) {
        for start in starts {
            let piece = self.build.piece(start);
            let begins = piece.and_then(|piece| stretch(piece, target.axis));
            if begins.is_some_and(|stretch| stretch.low == target.whole.low) {
                self.follow(
                    next,
                    target,
                    &mut vec![Link {
                        to: start,
                        play: Length::ZERO,
                    }],
                );
            }
        }
    }

    /// Goes on from the last piece of a row to every piece that is joined to it.
    fn follow(&mut self, next: &[Vec<Link>], target: &Target, row: &mut Vec<Link>) {
        let Some(last) = row.last().map(|link| link.to) else {
            return;
        };
        let piece = self.build.piece(last);
        let Some(reach) = piece.and_then(|piece| stretch(piece, target.axis)) else {
            return;
        };
        if reach.high == target.whole.high && row.len() > 1 && target.joined.contains(&last) {
            self.add_up(target, row);
        }
        if reach.high >= target.whole.high || row.len() >= LONGEST {
            return;
        }
        for &follower in next.get(last.0).into_iter().flatten() {
            let used = row.iter().any(|link| link.to == follower.to);
            if self.steps == 0 || target.beside == follower.to || used {
                continue;
            }
            self.steps -= 1;
            row.push(follower);
            self.follow(next, target, row);
            row.pop();
        }
    }

    /// Adds up a row as it is printed.
    fn add_up(&mut self, target: &Target, row: &[Link]) {
        let Some(beside) = self.build.piece(target.beside) else {
            return;
        };
        let pieces: Vec<&PlacedPart> = row
            .iter()
            .filter_map(|link| self.build.piece(link.to))
            .collect();
        let stretches: Vec<Interval> = pieces
            .iter()
            .filter_map(|piece| stretch(piece, target.axis))
            .collect();
        let depths: Vec<Length> = stretches
            .iter()
            .zip(stretches.iter().skip(1))
            .map(|(one, next)| one.high - next.low)
            .collect();
        let sizes: Vec<Length> = stretches.iter().map(|stretch| stretch.size()).collect();
        let parts: Vec<PartId> = pieces.iter().map(|piece| piece.part).collect();
        let backwards: Vec<PartId> = parts.iter().rev().copied().collect();
        let whole = target.whole.size();
        // The same row, the other way round, or beside another piece of the same length.
        let key = (target.axis, parts.clone().min(backwards), whole);
        if !self.seen.insert(key) {
            return;
        }
        let precision = self.build.plan.precision;
        let open = |printed: fn(Length, Precision) -> Length| {
            let row: Length = sizes.iter().map(|size| printed(*size, precision)).sum();
            let let_in = depths.iter().map(|depth| {
                if *depth > Length::ZERO {
                    printed(*depth, precision)
                } else {
                    *depth
                }
            });
            row - let_in.sum::<Length>() - printed(whole, precision)
        };
        let (mm, inch) = (open(Length::printed_mm), open(Length::printed_inch));
        let gaps = depths.iter().filter(|depth| **depth < Length::ZERO);
        let gaps: Length = gaps.map(|depth| depth.abs()).sum();
        let play = gaps + row.iter().map(|link| link.play).sum::<Length>();
        if mm.abs().max(inch.abs()) <= play {
            return;
        }
        self.found.push(Sum {
            axis: target.axis,
            whole,
            whole_of: beside.part,
            to_fit: longest(&parts, &sizes),
            parts,
            sizes,
            depths,
            mm_open: mm,
            inch_open: inch,
        });
    }
}

/// The part that is cut to fit best: the longest, where a shaving more or less is seen the least.
fn longest(parts: &[PartId], sizes: &[Length]) -> Option<PartId> {
    let longest = sizes.iter().max()?;
    let mut rows = parts.iter().zip(sizes);
    rows.find(|(_, size)| *size == longest)
        .map(|(part, _)| *part)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::build::{Coming, Contact, Joint, JointKind};
    use crate::geometry::{Direction, Handedness, Orientation};
    use crate::source::Span;
    use crate::stock::sample::{build_of, mm, part, plywood};
    use crate::units::Area;

    /// Two sides of 18 mm, a shelf of 684 mm between them and a top of 720 mm on both.
    fn rack(shelf: [i64; 2], play: Length) -> Build {
        let parts = [
            part("A", "Side", 0, [300, 200, 18], 2),
            part("B", "Shelf", 0, [shelf[1] - shelf[0], 200, 18], 1),
            part("C", "Top", 0, [720, 200, 18], 1),
        ];
        let mut build = build_of(vec![plywood()], parts.to_vec());
        let piece = |part: usize, across: [i64; 2], high: [i64; 2]| {
            let [x0, x1] = across.map(mm);
            let [z0, z1] = high.map(mm);
            let place = [
                Interval::new(x0, x1),
                Interval::of(mm(200)),
                Interval::new(z0, z1),
            ];
            let (length, width) = (Direction::Right, Direction::Back);
            PlacedPart {
                name: format!("piece{part}"),
                part: PartId(part),
                handedness: Handedness::AsDrawn,
                orientation: Orientation::new(length, width, Handedness::AsDrawn).unwrap(),
                body: place,
                place,
                removable: false,
                within: None,
                step: None,
                comings: vec![Coming {
                    into: None,
                    step: None,
                }],
                span: Span::default(),
            }
        };
        build.placed = vec![
            piece(0, [0, 18], [0, 300]),
            piece(0, [702, 720], [0, 300]),
            piece(1, shelf, [100, 118]),
            piece(2, [0, 720], [300, 318]),
        ];
        let joint = |part: usize, to: usize, direction| Joint {
            kind: JointKind::Dado,
            part: PlacedId(part),
            to: PlacedId(to),
            contact: Contact {
                direction,
                position: Length::ZERO,
                area: [Interval::of(mm(1)); 3],
                gap: Length::ZERO,
            },
            play,
            glued: true,
            glue_area: Area::ZERO,
            fasteners: Vec::new(),
            span: Span::default(),
        };
        build.joints = vec![
            joint(2, 0, Direction::Left),
            joint(2, 1, Direction::Right),
            joint(0, 3, Direction::Top),
            joint(1, 3, Direction::Top),
        ];
        build
    }

    #[test]
    fn a_row_is_added_up_in_printed_inches() {
        // 18 mm = 22.68/32, 684 mm = 861.73/32, 720 mm = 907.09/32: 23 + 862 + 23 = 908, not 907.
        let sums = open(&rack([18, 702], Length::ZERO));
        let [sum] = sums.as_slice() else {
            panic!("one row, told once: {sums:?}");
        };
        assert_eq!(sum.parts, [PartId(0), PartId(1), PartId(0)]);
        assert_eq!((sum.whole_of, sum.whole), (PartId(2), mm(720)));
        assert_eq!(
            (sum.mm_open, sum.inch_open),
            (Length::ZERO, Length::from_inch(1, 32))
        );
        assert_eq!(sum.to_fit, Some(PartId(1)));
    }

    #[test]
    fn what_is_let_in_is_taken_off() {
        // 696 mm = 876.85/32, 6 mm = 7.56/32: 23 + 877 + 23 - 8 - 8 = 907.
        assert_eq!(open(&rack([12, 708], Length::ZERO)), []);
    }

    #[test]
    fn play_takes_up_what_rounding_leaves() {
        assert_eq!(open(&rack([18, 702], mm(1))), []);
    }

    #[test]
    fn inches_that_are_exact_add_up() {
        let mut build = rack([18, 702], Length::ZERO);
        build.plan.precision.inch_denominator = 64;
        // 45.35, 1723.46 and 1814.17 of 1/64 in: 45 + 1723 + 45 = 1813, not 1814.
        assert_eq!(open(&build).len(), 1);
        for piece in &mut build.placed {
            let [across, ..] = &mut piece.place;
            *across = Interval::new(
                Length::from_nm(across.low.nm() * 254 / 240),
                Length::from_nm(across.high.nm() * 254 / 240),
            );
        }
        // 3/4 in, 28-1/2 in and 30 in: 19.05, 723.9 and 762 mm, printed as 19, 724 and 762.
        let sums = open(&build);
        assert_eq!(sums.iter().map(|sum| sum.inch_open).collect::<Vec<_>>(), []);
    }
}
