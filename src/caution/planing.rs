//! Boards planed thinner than they are bought.

use super::sign::Sign;
use super::types::{Caution, Occasion, Operation, Told, told};
use super::work::Work;
use crate::build::SignalWord;
use crate::model::{MaterialForm, PartId};
use crate::units::Length;

/// Shorter stock is not fed.
// ref: safety, "Operations", planer and jointer: 300 mm (12 in) or the maker's limit [P].
const SHORTEST: Length = Length::from_mm(300);

/// Parts of one piece that are thinner than their board.
pub(super) fn planed(work: &Work) -> Vec<PartId> {
    let thinner = work.parts().filter(|(_, part)| {
        let board = work
            .build
            .material(part.material)
            .filter(|material| matches!(material.form, MaterialForm::Board { .. }));
        let [_, _, thickness] = part.size();
        board.is_some_and(|board| thickness < board.thickness() * part.layers.max(1))
    });
    thinner.map(|(id, _)| id).collect()
}

pub(super) fn check(work: &Work) -> Option<Caution> {
    let planed = planed(work);
    (!planed.is_empty()).then(|| Caution {
        id: "planing",
        signal: SignalWord::Warning,
        hazard: Told::new("caution-planing-hazard")
            .parts("planed", &planed)
            .done(),
        consequence: told("caution-planing-consequence"),
        avoidance: Told::new("caution-planing-avoidance")
            .length("shortest", SHORTEST)
            .done(),
        signs: vec![Sign::Manual, Sign::Ears, Sign::Eyes, Sign::Mask],
        operation: Operation::Planing,
        occasions: vec![Occasion::Cutting],
    })
}
