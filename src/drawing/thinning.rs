//! Lines of fewer spots that look the same: what lies on the way between two others is left out.

use crate::display::Spot;

/// A spot this near to the line past it, in points, is not missed: a sixtieth of a millimetre.
const NOT_SEEN_PT: f64 = 0.045;

/// A chain of spots without those that cannot be seen missing (Ramer 1972, Douglas and Peucker
/// 1973: keep the spot farthest from the line between the ends, and go on on both sides of it).
pub(super) fn thinned(spots: &[Spot]) -> Vec<Spot> {
    let mut kept = vec![false; spots.len()];
    if let Some(start) = kept.first_mut() {
        *start = true;
    }
    if let Some(end) = kept.last_mut() {
        *end = true;
    }
    let mut open = vec![(0, spots.len().saturating_sub(1))];
    while let Some((from, to)) = open.pop() {
        let (Some(a), Some(b)) = (spots.get(from), spots.get(to)) else {
            continue;
        };
        let between = spots.iter().enumerate().take(to).skip(from + 1);
        let farthest = between
            .map(|(number, spot)| (distance(*spot, *a, *b), number))
            .max_by(|x, y| x.0.total_cmp(&y.0));
        let Some((_, number)) = farthest.filter(|(far, _)| *far > NOT_SEEN_PT) else {
            continue;
        };
        if let Some(slot) = kept.get_mut(number) {
            *slot = true;
        }
        open.push((from, number));
        open.push((number, to));
    }
    spots
        .iter()
        .zip(kept)
        .filter(|(_, kept)| *kept)
        .map(|(spot, _)| *spot)
        .collect()
}

/// A ring of spots, thinned; the last spot is not the first one again.
pub(super) fn thinned_ring(spots: &[Spot]) -> Vec<Spot> {
    let closed: Vec<Spot> = spots.iter().chain(spots.first()).copied().collect();
    let mut ring = thinned(&closed);
    ring.pop();
    // A sliver that would shrink to a line is left as it is.
    if ring.len() < 3 { spots.to_vec() } else { ring }
}

/// How far a spot lies from the stretch between two others.
fn distance(spot: Spot, a: Spot, b: Spot) -> f64 {
    let (dx, dy) = (b.x - a.x, b.y - a.y);
    let square = dx * dx + dy * dy;
    let along = ((spot.x - a.x) * dx + (spot.y - a.y) * dy) / square.max(1e-12);
    let along = along.clamp(0.0, 1.0);
    libm::hypot(spot.x - a.x - along * dx, spot.y - a.y - along * dy)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn corners_stay_and_what_is_between_goes() {
        let line: Vec<Spot> = (0..=10).map(|x| Spot::new(f64::from(x), 0.0)).collect();
        assert_eq!(thinned(&line), [Spot::new(0.0, 0.0), Spot::new(10.0, 0.0)]);
        let square = [(0, 0), (1, 0), (2, 0), (2, 2), (0, 2), (0, 1)];
        let square: Vec<Spot> = square
            .iter()
            .map(|(x, y)| Spot::new(f64::from(*x), f64::from(*y)))
            .collect();
        assert_eq!(thinned_ring(&square).len(), 4);
    }

    #[test]
    fn a_circle_stays_round() {
        let spot = |step: i32| {
            let angle = std::f64::consts::TAU * f64::from(step) / 64.0;
            Spot::new(3.0 * libm::cos(angle), 3.0 * libm::sin(angle))
        };
        let circle: Vec<Spot> = (0..64).map(spot).collect();
        let ring = thinned_ring(&circle);
        assert!((12..40).contains(&ring.len()), "{}", ring.len());
        for (a, b) in ring.iter().zip(ring.iter().cycle().skip(1)) {
            let middle = libm::hypot((a.x + b.x) / 2.0, (a.y + b.y) / 2.0);
            assert!(3.0 - middle < 0.06, "{middle}");
        }
    }
}
