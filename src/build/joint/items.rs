//! The hardware joints are made with.

use crate::build::findings::JOINT_HARDWARE;
use crate::build::types::{Hardware, HardwareId, HardwareKind, JointKind};
use crate::finding::{Finding, Findings};
use crate::model::JoinDesign;

/// The kinds of hardware a kind of joint must have, and those it may have.
const fn hardware_of(kind: JointKind) -> (&'static [HardwareKind], &'static [HardwareKind]) {
    match kind {
        JointKind::Screws => (&[HardwareKind::WoodScrew], &[HardwareKind::Plug]),
        JointKind::PocketScrews => (&[HardwareKind::PocketScrew], &[]),
        JointKind::Dowels => (&[HardwareKind::Dowel], &[]),
        JointKind::LooseTenons => (&[HardwareKind::LooseTenon], &[]),
        JointKind::Bolts => (&[HardwareKind::Bolt, HardwareKind::Insert], &[]),
        JointKind::Nails => (&[HardwareKind::Nail], &[]),
        JointKind::Mitre => (&[], &[HardwareKind::Spline]),
        JointKind::Hinges => (&[HardwareKind::Hinge], &[]),
        JointKind::Runners => (&[HardwareKind::Runner], &[]),
        JointKind::ShelfPins => (&[HardwareKind::ShelfPin], &[]),
        JointKind::Magnets => (&[HardwareKind::Magnet], &[]),
        JointKind::Glue
        | JointKind::Dado
        | JointKind::Groove
        | JointKind::Rabbet
        | JointKind::MortiseAndTenon
        | JointKind::HalfLap
        | JointKind::BoxJoint
        | JointKind::TongueAndGroove
        | JointKind::Lamination
        | JointKind::Strips => (&[], &[]),
    }
}

/// The items a join is made with, or the finding that one is not there or of the wrong kind.
pub(in crate::build) fn items_of<'h>(
    join: &JoinDesign,
    hardware: &'h [Hardware],
    findings: &mut Findings,
) -> Result<Vec<(HardwareId, &'h Hardware)>, ()> {
    let (needed, possible) = hardware_of(join.kind);
    let mut items: Vec<(HardwareId, &Hardware)> = Vec::new();
    let mut sound = true;
    for (id, span) in &join.using {
        let Some(item) = hardware.get(id.0) else {
            continue;
        };
        let fits = needed.contains(&item.kind) || possible.contains(&item.kind);
        let twice = items.iter().any(|(_, known)| known.kind == item.kind);
        if fits && !twice {
            items.push((*id, item));
            continue;
        }
        sound = false;
        findings.push(if twice {
            let message = format!("a second {}, and one is enough", item.kind.word());
            Finding::new(&JOINT_HARDWARE, *span, message)
        } else if needed.is_empty() && possible.is_empty() {
            let message = format!("a joint of kind {} uses no hardware", join.kind.word());
            Finding::new(&JOINT_HARDWARE, *span, message)
                .remedy("leave `using …` out, or join by screws, dowels or loose tenons")
        } else {
            let kinds = if needed.is_empty() { possible } else { needed };
            let kinds: Vec<&str> = kinds.iter().map(|kind| kind.word()).collect();
            let message = format!(
                "{} are made with a {}, and `{}` is a {}",
                join.kind.word(),
                kinds.join(" and a "),
                item.name,
                item.kind.word()
            );
            Finding::new(&JOINT_HARDWARE, *span, message).related(item.span, "declared here")
        });
    }
    if !sound {
        return Err(());
    }
    for wanted in needed {
        if items.iter().all(|(_, item)| item.kind != *wanted) {
            findings.push(none_named(join, *wanted, hardware));
            sound = false;
        }
    }
    if sound { Ok(items) } else { Err(()) }
}

/// The finding that a joint names no item of a kind it needs.
fn none_named(join: &JoinDesign, wanted: HardwareKind, hardware: &[Hardware]) -> Finding {
    let (kind, word) = (join.kind.word(), wanted.word());
    let message = format!("{kind} are made with a {word}, and none is named");
    let known = hardware.iter().find(|item| item.kind == wanted);
    let remedy = match known {
        Some(item) if join.using.is_empty() => format!("write `by {kind} using {}`", item.name),
        Some(item) => format!("add `{}` behind `using …`, after a comma", item.name),
        None => format!(
            "declare one, `hardware … is {word} \"…\" {{ … }}`, and write `by {kind} using …`"
        ),
    };
    Finding::new(&JOINT_HARDWARE, join.kind_span, message).remedy(remedy)
}
