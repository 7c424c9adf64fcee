//! A name that nothing uses.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;
use crate::source::Span;

finding_pages! {
    /// Nothing asks for a param or let, a part is neither placed nor made as an extra, no part is cut from a material, no joint and
    /// no step uses an item of hardware, or there is nothing a supply could go on.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part push_stick from ply { length 400 mm; width 60 mm; extra 1 }
    /// ```
    ///
    /// Source: the language itself.
    R002 UNUSED_NAME Warning "nothing uses it" "it is bought or looked for in vain, or something forgets to use it";
}

/// Looks for things that lead nowhere.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    let (model, build) = (facts.model, facts.build);
    let mut tell = |name: &str, what: &str, remedy: &str, span: Span| {
        let message = format!("{what} `{name}`");
        findings.push(Finding::new(&UNUSED_NAME, span, message).remedy(remedy));
    };
    for name in &model.idle {
        let remedy = "use it, or leave it out";
        tell(&name.value, "nothing asks for", remedy, name.span);
    }
    for (index, part) in model.parts.iter().enumerate() {
        // Of a part that a template is asked of it is told there.
        let has_template = model.templates.iter().any(|it| it.part.0 == index);
        if !has_template && !build.parts.iter().any(|made| made.span == part.span) {
            let remedy = "place it, or say `extra 1` if it is made and not placed";
            tell(&part.name, "nothing places the part", remedy, part.span);
        }
    }
    for (index, material) in model.materials.iter().enumerate() {
        if !model.parts.iter().any(|part| part.material.0 == index) {
            let remedy = "cut a part from it, or leave it out";
            tell(&material.name, "no part is cut from", remedy, material.span);
        }
    }
    for line in &facts.stock.purchases.supplies {
        if line.area_m2 <= 0.0
            && let Some(supply) = build.supplies.get(line.supply.0)
        {
            let remedy = "say what is glued or placed, or leave it out";
            tell(&supply.name, "nothing takes any of", remedy, supply.span);
        }
    }
    let banded = |index: usize| {
        let mut bands = model.parts.iter().flat_map(|part| &part.bands);
        bands.any(|band| band.hardware.0 == index)
    };
    let idle = build.hardware.iter().enumerate();
    let idle = idle.filter(|(index, item)| item.count == 0 && !banded(*index));
    for (_, item) in idle {
        let remedy = "use it in a joint or a step, or leave it out";
        tell(&item.name, "nothing uses", remedy, item.span);
    }
}
