//! A full-size template that shows nothing but a rectangle.

use crate::finding::{Finding, Findings, finding_pages};
use crate::full_size;
use crate::model::Feature;
use crate::rules::Facts;

finding_pages! {
    /// A full-size template is asked for of a side that is a plain rectangle with nothing cut into it.
    ///
    /// A rule and a square lay out a rectangle quicker than paper and glue do, and truer. Ask for the side that
    /// has a curve or holes, or leave the template out.
    ///
    /// ```wright,bad
    /// plan "Board" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part board from ply { length 400 mm; width 300 mm }
    /// place low = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// template board
    /// step "Lay" { add low; say "Lay it down." }
    /// ```
    /// ```wright,good
    /// plan "Board" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part board from ply { length 400 mm; width 300 mm; round head.near radius 100 mm }
    /// place low = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// template board
    /// step "Lay" { add low; say "Lay it down." }
    /// ```
    ///
    /// Source: common practice, no source.
    C014 TEMPLATE_OF_NOTHING Warning "a template of a plain rectangle" "a rule and a square lay it out truer than paper";
}

/// Looks at every template.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for laid in full_size::templates(facts.build, facts.solids) {
        let Some(part) = facts.build.part(laid.template.part) else {
            continue;
        };
        if laid.sheets.is_none() || !laid.shows_nothing() {
            continue;
        }
        let [width, height] = laid.size();
        let message = format!(
            "nothing is cut into the {} of `{}`: its template is a rectangle of {} by {}",
            laid.template.side.word(),
            part.name,
            width.in_both(),
            height.in_both()
        );
        let mut finding = Finding::new(&TEMPLATE_OF_NOTHING, laid.template.span, message)
            .figure("length", width)
            .figure("width", height);
        let mut sides = part.features.iter().filter_map(Feature::opens_on);
        finding = finding.remedy(match sides.next() {
            Some(side) => format!(
                "name the side that something is cut into: `on {}`",
                side.word()
            ),
            None => "leave the template out".to_owned(),
        });
        findings.push(finding);
    }
}
