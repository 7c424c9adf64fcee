//! A full-size template that no maker would put together, or that does not go on its sheet.

use crate::build::Build;
use crate::finding::{Finding, Findings, finding_pages};
use crate::full_size::{self, CLEAR, Laid, Page};
use crate::model::Sheet;
use crate::rules::Facts;
use crate::units::{Area, Length};

finding_pages! {
    /// A full-size template is longer than 2 m (78 3/4 in), or covers more than 1 m2 (10.8 ft2), and would be
    /// put together of some two dozen sheets and more; or it does not go on the one sheet that is asked for.
    ///
    /// Every joint of two sheets is made by eye and may be half a millimetre off, and paper stretches when it
    /// is pasted: over so many joints the template is no longer true. Ask for one large sheet, of another side,
    /// or of no template: the drawing of the part tells its outline point by point.
    ///
    /// ```wright,bad
    /// plan "Board" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part board from ply { length 2200 mm; width 300 mm; round head.near radius 100 mm }
    /// place low = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// template board
    /// step "Lay" { add low; say "Lay it down." }
    /// ```
    /// ```wright,good
    /// plan "Board" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part board from ply { length 1200 mm; width 300 mm; round head.near radius 100 mm }
    /// place low = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// template board
    /// step "Lay" { add low; say "Lay it down." }
    /// ```
    ///
    /// Source: common practice, no source, for what a joint of paper may be off; sizes of sheets by ISO 216 and ANSI/ASME Y14.1 (ref: units-and-paper, "Paper" [V, M]).
    C013 TEMPLATE_TOO_LARGE Error "a template too large for its sheets" "over many joints of paper it is no longer true";
}

/// Looks at every template.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for laid in full_size::templates(facts.build, facts.solids) {
        if laid.sheets.is_none() {
            findings.push(finding(facts.build, &laid));
        }
    }
}

/// What is wrong with a template that went on no sheet.
pub fn finding(build: &Build, laid: &Laid) -> Finding {
    let metric_first = build.plan.precision.metric_first;
    let part = build.part(laid.template.part);
    let name = part.map_or("", |part| part.name.as_str());
    let [width, height] = laid.size();
    let size = format!("{} by {}", width.in_both(), height.in_both());
    let message = match laid.template.sheet {
        Some(sheet) => format!(
            "the template of `{name}` is {size}, and {} has room for {}",
            sheet.title(),
            room(sheet)
        ),
        None => format!(
            "the template of `{name}` is {size} and covers {}: sheets are put together up to {} and {}",
            in_both(area(width, height)),
            full_size::LONGEST.in_both(),
            in_both(area(Length::from_mm(1_000), Length::from_mm(1_000)))
        ),
    };
    let mut finding = Finding::new(&TEMPLATE_TOO_LARGE, laid.template.span, message);
    let longest = width.max(height);
    finding = finding.figure("length", longest);
    if laid.template.sheet.is_none() {
        finding = finding.figure("at most", full_size::LONGEST);
    }
    if let Some(sheet) = full_size::smallest_sheet(laid.reach, metric_first) {
        let remedy = format!("have it printed on one sheet: `sheet {}`", sheet.word());
        finding = finding.remedy(remedy);
    } else {
        finding = finding.remedy("leave it out: no sheet is as large");
    }
    if laid.template.sheet.is_some() && !full_size::is_too_large(laid.size()) {
        finding = finding.remedy("leave `sheet` out: it is then put together of several");
    }
    finding
}

/// How large a template may be on a sheet.
fn room(sheet: Sheet) -> String {
    let [width, height] = Page::upright(sheet).window().map(|side| side - CLEAR * 2);
    format!("{} by {}", width.in_both(), height.in_both())
}

fn area(width: Length, height: Length) -> Area {
    Area::from_nm2(i128::from(width.nm()) * i128::from(height.nm()))
}

fn in_both(area: Area) -> String {
    format!("{:.2} m2 ({:.1} ft2)", area.m2(), area.square_feet())
}
