//! Visible pieces joined end to end, so that a pen draws a corner once and round.

use std::collections::BTreeMap;

/// Ends this near, in micrometres of the view, meet.
const NEAR: f64 = 4.0;

type Key = (i64, i64);

fn key([x, y]: [f64; 2]) -> Key {
    #[expect(
        clippy::cast_possible_truncation,
        reason = "a view is far smaller than 2^63 µm"
    )]
    let whole = |value: f64| (value / NEAR).round() as i64;
    (whole(x), whole(y))
}

/// Lines joined to chains: at each meeting the chain goes on along the line that turns least.
pub(super) fn chain(lines: &[[[f64; 2]; 2]]) -> Vec<Vec<[f64; 2]>> {
    let mut ends: BTreeMap<Key, Vec<usize>> = BTreeMap::new();
    for (number, [a, b]) in lines.iter().enumerate() {
        ends.entry(key(*a)).or_default().push(number);
        ends.entry(key(*b)).or_default().push(number);
    }
    let mut used = vec![false; lines.len()];
    let mut chains = Vec::new();
    // First from where an odd number of lines meet, so that no chain begins in the middle of one.
    let odd = |at: &[f64; 2]| ends.get(&key(*at)).is_some_and(|list| list.len() % 2 == 1);
    for wanted in [true, false] {
        for (number, [a, b]) in lines.iter().enumerate() {
            if used.get(number).copied().unwrap_or(true) || (wanted && !odd(a) && !odd(b)) {
                continue;
            }
            let (start, next) = if odd(a) { (*a, *b) } else { (*b, *a) };
            take(&mut used, number);
            let mut points = vec![start, next];
            follow(lines, &ends, &mut used, &mut points);
            chains.push(straightened(points));
        }
    }
    chains
}

fn take(used: &mut [bool], number: usize) {
    if let Some(flag) = used.get_mut(number) {
        *flag = true;
    }
}

fn follow(
    lines: &[[[f64; 2]; 2]],
    ends: &BTreeMap<Key, Vec<usize>>,
    used: &mut [bool],
    points: &mut Vec<[f64; 2]>,
) {
    while let [.., before, at] = points.as_slice() {
        let (before, at) = (*before, *at);
        let mut best: Option<(f64, usize, [f64; 2])> = None;
        for number in ends.get(&key(at)).into_iter().flatten() {
            let (Some([a, b]), Some(false)) = (lines.get(*number), used.get(*number)) else {
                continue;
            };
            let to = if key(*a) == key(at) { *b } else { *a };
            let straight = cosine(before, at, to);
            if best.is_none_or(|(most, _, _)| straight > most) {
                best = Some((straight, *number, to));
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
        points.push(to);
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

/// A chain without points in the middle of straight stretches.
fn straightened(points: Vec<[f64; 2]>) -> Vec<[f64; 2]> {
    let mut kept: Vec<[f64; 2]> = Vec::with_capacity(points.len());
    for point in points {
        if let [.., before, at] = kept.as_slice()
            && cosine(*before, *at, point) > 1.0 - 1e-9
        {
            kept.pop();
        }
        kept.push(point);
    }
    kept
}

/// The length of a chain.
pub(super) fn run(points: &[[f64; 2]]) -> f64 {
    points
        .windows(2)
        .map(|pair| match pair {
            [a, b] => libm::hypot(b[0] - a[0], b[1] - a[1]),
            _ => 0.0,
        })
        .sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_square_is_one_chain_and_a_tee_is_two() {
        let square = [
            [[0.0, 0.0], [9000.0, 0.0]],
            [[9000.0, 9000.0], [9000.0, 0.0]],
            [[9000.0, 9000.0], [0.0, 9000.0]],
            [[0.0, 9000.0], [0.0, 0.0]],
        ];
        let chains = chain(&square);
        assert_eq!(chains.len(), 1);
        assert!((run(&chains[0]) - 36_000.0).abs() < 1e-9);
        let tee = [
            [[0.0, 0.0], [500.0, 0.0]],
            [[500.0, 0.0], [900.0, 0.0]],
            [[500.0, 0.0], [500.0, 700.0]],
        ];
        let chains = chain(&tee);
        assert_eq!(chains.len(), 2);
        assert_eq!(chains[0], vec![[0.0, 0.0], [900.0, 0.0]]);
    }
}
