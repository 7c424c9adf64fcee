//! Screws through one piece into the other: a clearance hole with a countersink in the first, a
//! pilot hole in the second. With plugs, the heads lie deeper and a plug covers each.

use super::bench::{Bench, Passing, moved};
use super::holes::Bore;
use crate::build::drilling::drilling;
use crate::build::types::{Fastener, HardwareKind};
use crate::model::HolePurpose;
use crate::units::Length;

/// Drills both pieces and sets the screws.
pub(super) fn make(bench: &mut Bench<'_, '_>) {
    let Some((id, screw)) = bench.item(HardwareKind::WoodScrew) else {
        return;
    };
    let holes = drilling(screw);
    let length = screw.length.unwrap_or_default();
    let Passing {
        through_part,
        driven,
        thickness,
    } = bench.passing();
    let plug = bench.item(HardwareKind::Plug);
    // A plug lies over the head, which sits on the floor of its hole.
    let sunk = plug.map_or(Length::ZERO, |(_, plug)| plug.length.unwrap_or_default());
    let breadth = plug
        .and_then(|(_, plug)| plug.diameter)
        .map_or(holes.clearance, |diameter| diameter.max(holes.clearance));
    let Some(points) = bench.points_along(breadth) else {
        return;
    };
    let surface: Vec<[Length; 3]> = points
        .iter()
        .map(|point| moved(*point, driven.opposite(), thickness))
        .collect();
    for at in &surface {
        let head = moved(*at, driven, sunk);
        bench.fasteners.push(Fastener {
            hardware: id,
            from: head,
            to: moved(head, driven, length),
            driven,
        });
        if let Some((plug, _)) = plug {
            bench.fasteners.push(Fastener {
                hardware: plug,
                from: *at,
                to: head,
                driven,
            });
        }
    }
    let span = bench.join.span;
    let (first, second) = if through_part {
        (&mut *bench.part, &mut *bench.to)
    } else {
        (&mut *bench.to, &mut *bench.part)
    };
    let mouth = plug.and_then(|(_, plug)| plug.diameter);
    let clearance = Bore {
        counterbore: mouth.map(|diameter| (diameter, sunk)),
        countersink: mouth.is_none().then_some(holes.head),
        ..Bore::plain(HolePurpose::Clearance, holes.clearance, None)
    };
    let row = clearance.row(first, driven.opposite(), &surface);
    first.cut(row, span);
    let bite = length + sunk - thickness;
    if bite.is_positive() {
        let depth = bite.min(second.depth_along(driven));
        let pilot = Bore::plain(HolePurpose::Pilot, holes.pilot, Some(depth));
        let row = pilot.row(second, driven.opposite(), &points);
        second.cut(row, span);
    }
}
