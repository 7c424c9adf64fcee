//! Visible pieces joined end to end, so that a pen draws a corner once and round.

use super::grid::nearest;
use super::meetings::Meetings;

/// Ends this near, in micrometres of the view, meet.
const NEAR: f64 = 4.0;

type Key = (i64, i64);

fn key([x, y]: [f64; 2]) -> Key {
    (nearest(x / NEAR), nearest(y / NEAR))
}

/// A visible line that is to be drawn.
#[derive(Clone, Copy, Debug)]
pub(super) struct Stretch {
    /// Its ends, in micrometres of the view.
    pub(super) ends: [[f64; 2]; 2],
    /// Which of the scene's rounds it is a chord of.
    pub(super) round: Option<u32>,
}

/// Stretches that a pen draws in one go.
#[derive(Clone, Debug, Default)]
pub(super) struct Chain {
    /// Where it goes, in micrometres of the view.
    pub(super) points: Vec<[f64; 2]>,
    /// What the way to each point but the first is a chord of.
    pub(super) rounds: Vec<Option<u32>>,
}

impl Chain {
    fn go(&mut self, to: [f64; 2], round: Option<u32>) {
        // On a straight stretch the points between are not needed.
        if let [.., before, at] = self.points.as_slice()
            && round.is_none()
            && self.rounds.last() == Some(&None)
            && cosine(*before, *at, to) > 1.0 - 1e-9
        {
            self.points.pop();
            self.rounds.pop();
        }
        self.points.push(to);
        self.rounds.push(round);
    }

    /// Its length.
    pub(super) fn run(&self) -> f64 {
        let next = self.points.iter().skip(1);
        self.points
            .iter()
            .zip(next)
            .map(|(a, b)| libm::hypot(b[0] - a[0], b[1] - a[1]))
            .sum()
    }
}

/// Lines joined to chains: at each meeting the chain goes on along the line that turns least.
pub(super) fn chain(lines: &[Stretch]) -> Vec<Chain> {
    let numbered = lines.iter().enumerate();
    let ends =
        Meetings::of(numbered.flat_map(|(number, line)| line.ends.map(|end| (key(end), number))));
    let mut used = vec![false; lines.len()];
    let mut chains = Vec::new();
    // First from where an odd number of lines meet, so that no chain begins in the middle of one.
    let odd = |at: &[f64; 2]| ends.at(key(*at)).count() % 2 == 1;
    for wanted in [true, false] {
        for (number, line) in lines.iter().enumerate() {
            let [a, b] = &line.ends;
            if used.get(number).copied().unwrap_or(true) || (wanted && !odd(a) && !odd(b)) {
                continue;
            }
            let (start, next) = if odd(a) { (*a, *b) } else { (*b, *a) };
            take(&mut used, number);
            let mut chain = Chain::default();
            chain.points.push(start);
            chain.go(next, line.round);
            follow(lines, &ends, &mut used, &mut chain);
            chains.push(chain);
        }
    }
    chains
}

fn take(used: &mut [bool], number: usize) {
    if let Some(flag) = used.get_mut(number) {
        *flag = true;
    }
}

fn follow(lines: &[Stretch], ends: &Meetings<Key>, used: &mut [bool], chain: &mut Chain) {
    while let [.., before, at] = chain.points.as_slice() {
        let (before, at) = (*before, *at);
        let mut best: Option<(f64, usize, [f64; 2])> = None;
        for number in ends.at(key(at)) {
            let (Some(line), Some(false)) = (lines.get(number), used.get(number)) else {
                continue;
            };
            let [a, b] = line.ends;
            let to = if key(a) == key(at) { b } else { a };
            let straight = cosine(before, at, to);
            if best.is_none_or(|(most, _, _)| straight > most) {
                best = Some((straight, number, to));
            }
        }
        let Some((straight, number, to)) = best else {
            return;
        };
        // A chain does not turn back on itself.
        if straight < -0.95 {
            return;
        }
        take(used, number);
        chain.go(to, lines.get(number).and_then(|line| line.round));
    }
}

/// The cosine of the turn from one line into the next.
fn cosine(before: [f64; 2], at: [f64; 2], to: [f64; 2]) -> f64 {
    let (ax, ay) = (at[0] - before[0], at[1] - before[1]);
    let (bx, by) = (to[0] - at[0], to[1] - at[1]);
    let length = libm::hypot(ax, ay) * libm::hypot(bx, by);
    if length > 0.0 {
        (ax * bx + ay * by) / length
    } else {
        1.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_square_is_one_chain_and_a_tee_is_two() {
        let straight = |ends| Stretch { ends, round: None };
        let square = [
            [[0.0, 0.0], [9000.0, 0.0]],
            [[9000.0, 9000.0], [9000.0, 0.0]],
            [[9000.0, 9000.0], [0.0, 9000.0]],
            [[0.0, 9000.0], [0.0, 0.0]],
        ]
        .map(straight);
        let chains = chain(&square);
        assert_eq!(chains.len(), 1);
        assert!((chains[0].run() - 36_000.0).abs() < 1e-9);
        let tee = [
            [[0.0, 0.0], [500.0, 0.0]],
            [[500.0, 0.0], [900.0, 0.0]],
            [[500.0, 0.0], [500.0, 700.0]],
        ]
        .map(straight);
        let chains = chain(&tee);
        assert_eq!(chains.len(), 2);
        assert_eq!(chains[0].points, vec![[0.0, 0.0], [900.0, 0.0]]);
    }
}
