//! Sheets too heavy for one person.

use super::sign::Sign;
use super::types::{Caution, Occasion, Operation, Told, told};
use super::work::Work;
use crate::build::SignalWord;
use crate::units::Mass;

/// What one person lifts in the best of cases.
// ref: safety#L15 [M] (NIOSH lifting equation): 23 kg, less when reaching or wide.
pub(super) const ONE_PERSON_KG: f64 = 23.0;

pub(super) fn check(work: &Work) -> Option<Caution> {
    let lines = work.stock.purchases.stock.iter();
    let heaviest = lines
        .filter_map(|line| {
            let density = work.build.material(line.material)?.density?;
            let [length, width, thickness] = line.size;
            Some((length * width * thickness).m3() * density)
        })
        .fold(0.0, f64::max);
    (heaviest > ONE_PERSON_KG).then(|| Caution {
        id: "heavy-sheet",
        signal: SignalWord::Caution,
        hazard: Told::new("caution-heavy-sheet-hazard")
            .value("mass", Mass::from_kg_f64(heaviest).in_both())
            .done(),
        consequence: told("caution-heavy-sheet-consequence"),
        avoidance: told("caution-heavy-sheet-avoidance"),
        signs: vec![Sign::CrushedHands, Sign::Feet, Sign::Gloves],
        operation: Operation::Lifting,
        occasions: vec![Occasion::Cutting],
    })
}

#[cfg(test)]
mod tests {
    use super::super::gather;
    use crate::behaviour::Behaviour;
    use crate::solid::Solids;
    use crate::stock::{lay_out, sample};
    use crate::units::Length;

    #[test]
    fn a_full_birch_sheet_takes_two_people() {
        // ref: safety#L16 [V]: 18 mm birch plywood of 1220 x 2440 weighs 36.7 kg, at 685 kg/m3
        // (ref: stock-sizes, "Birch plywood, metric" [V]).
        let build = sample::shelf_unit();
        let stock = lay_out(&build, &Solids::default()).value;
        let cautions = gather(&build, &stock, &Behaviour::default());
        let heavy = cautions
            .list
            .iter()
            .find(|caution| caution.id == "heavy-sheet");
        let words = format!("{:?}", heavy.map(|caution| &caution.hazard));
        assert!(words.contains("36.7\\u{a0}kg (81\\u{a0}lb)"), "{words}");
    }

    #[test]
    fn a_thin_sheet_does_not() {
        let mut build = sample::shelf_unit();
        for material in &mut build.materials {
            material
                .stock
                .iter_mut()
                .for_each(|piece| piece.width = Length::from_mm(600));
        }
        let stock = lay_out(&build, &Solids::default()).value;
        let cautions = gather(&build, &stock, &Behaviour::default());
        assert!(
            cautions
                .list
                .iter()
                .all(|caution| caution.id != "heavy-sheet")
        );
    }
}
