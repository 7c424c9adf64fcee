//! Tall or slender furniture that falls on a child who climbs it.

use super::types::{Caution, Occasion, Operation, Told, told};
use super::work::Work;
use crate::build::SignalWord;
use crate::units::Length;

/// Free-standing pieces of that height are tested for tip-over where they hold clothes.
// ref: safety#L17 [V] (16 CFR 1261, ASTM F2057-23): 27 in (686 mm) or more; #L21 [V/P]: bookcases
// are out of that scope, and anchoring tall narrow pieces is advised all the same.
const TALL: Length = Length::from_inch(27, 1);
/// Lower pieces tip as well where they are this many times as high as deep. Common practice, no
/// source.
const SLENDER: i64 = 2;
/// Nothing under that height is worth a climb. Common practice, no source.
const LOW: Length = Length::from_mm(450);

pub(super) fn check(work: &Work) -> Option<Caution> {
    let [_, depth, height] = work.build.overall?.map(|stretch| stretch.size());
    let tips = height >= TALL || (height >= LOW && height > depth * SLENDER);
    tips.then(|| Caution {
        id: "tip-over",
        signal: SignalWord::Warning,
        hazard: Told::new("caution-tip-over-hazard")
            .length("height", height)
            .length("depth", depth)
            .done(),
        consequence: told("caution-tip-over-consequence"),
        avoidance: told("caution-tip-over-avoidance"),
        signs: Vec::new(),
        operation: Operation::Using,
        occasions: vec![Occasion::Use],
    })
}

#[cfg(test)]
mod tests {
    use super::super::gather;
    use crate::behaviour::Behaviour;
    use crate::geometry::Interval;
    use crate::stock::{Stock, sample};

    fn warns(deep: i64, high: i64) -> bool {
        let mut build = sample::shelf_unit();
        let of = |mm: i64| Interval::of(sample::mm(mm));
        build.overall = Some([of(900), of(deep), of(high)]);
        let cautions = gather(&build, &Stock::default(), &Behaviour::default());
        cautions.list.iter().any(|caution| caution.id == "tip-over")
    }

    #[test]
    fn the_published_height_is_the_limit() {
        // ref: safety#L17 [V]: 27 in are 685.8 mm.
        assert!(warns(600, 686));
        assert!(!warns(600, 685));
    }

    #[test]
    fn slender_pieces_tip_too() {
        assert!(warns(200, 500));
        assert!(!warns(300, 500));
        assert!(!warns(100, 440));
    }
}
