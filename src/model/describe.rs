//! Hardware and the plan block, with their values worked out.

use super::evaluate::Evaluator;
use super::findings::{LACKING, NOT_POSITIVE, PLAN_BLOCK, SAID_TWICE, WORD_OUT_OF_PLACE};
use super::hardware::{Hardware, HardwareKind};
use super::head::{PlanHead, Projection, Revision, User};
use super::names::nearest_of;
use super::paper::Paper;
use crate::finding::Finding;
use crate::source::Span;
use crate::syntax::tree::{self, HardwareSettingKind, Name, PlanSetting};
use crate::units::Length;
use crate::wood::WoodScrew;

impl Evaluator<'_> {
    /// The plan block.
    pub(super) fn head(&self, whole: Span) -> PlanHead {
        let rows = self.all.plans.rows();
        let mut plans = rows.iter().map(|(plan, _)| *plan);
        let Some(plan) = plans.next() else {
            let start = Span {
                end: whole.start,
                ..whole
            };
            self.tell(
                Finding::new(&PLAN_BLOCK, start, "this file has no plan block")
                    .remedy("begin it with `plan \"Title\" { revision \"A\" on 2026-01-15 }`"),
            );
            return PlanHead {
                span: whole,
                ..PlanHead::default()
            };
        };
        for other in plans {
            let message = "a second plan block; a file is one plan";
            self.tell(
                Finding::new(&PLAN_BLOCK, other.title.span, message)
                    .related(plan.title.span, "the plan is named here"),
            );
        }
        let mut head = PlanHead {
            span: plan.span,
            ..PlanHead::default()
        };
        head.title.clone_from(&plan.title.value);
        for setting in &plan.settings {
            self.apply_setting(setting, &mut head);
        }
        // What the plan is about may name lengths, printed as precisely as all others.
        for setting in &plan.settings {
            if let PlanSetting::About(text) = setting {
                head.about = self.plain_wording(text, head.precision);
            }
        }
        head
    }

    fn apply_setting(&self, setting: &PlanSetting, head: &mut PlanHead) {
        match setting {
            PlanSetting::Author(text) => head.author.clone_from(&text.value),
            PlanSetting::About(_) => {}
            PlanSetting::Level(text) => head.level.clone_from(&text.value),
            PlanSetting::Words(tag) => head.words.clone_from(&tag.value),
            PlanSetting::Revision { mark, date, note } => head.revisions.push(Revision {
                mark: mark.value.clone(),
                date: date.value.clone(),
                note: note
                    .as_ref()
                    .map(|note| note.value.clone())
                    .unwrap_or_default(),
                span: mark.span,
            }),
            PlanSetting::Units(word) => match word.value.as_str() {
                "mm" => head.precision.metric_first = true,
                "in" => head.precision.metric_first = false,
                _ => self.tell_word(word, "a system of units", &["mm", "in"]),
            },
            PlanSetting::Paper(word) => {
                match Paper::ALL
                    .into_iter()
                    .find(|paper| paper.word() == word.value)
                {
                    Some(paper) => head.paper = paper,
                    None => self.tell_word(word, "a paper size", &Paper::ALL.map(Paper::word)),
                }
            }
            PlanSetting::Projection(word) => match word.value.as_str() {
                "first" => head.projection = Some(Projection::FirstAngle),
                "third" => head.projection = Some(Projection::ThirdAngle),
                _ => self.tell_word(word, "a projection", &["first", "third"]),
            },
            PlanSetting::Round { system, step } => self.apply_rounding(system, step, head),
            PlanSetting::Spares { count, of } => {
                let count = self.count(count, None, 1, "the number of spares");
                let of = self.count(of, None, 1, "the number of fasteners");
                head.spares = count.zip(of);
            }
            PlanSetting::Humidity(low, high) => head.humidity = self.humidity(low, high),
            PlanSetting::For(word) => match word.value.as_str() {
                "children" => head.users.push(User::Children),
                "food" => head.users.push(User::Food),
                _ => self.tell_word(word, "who it is for", &["children", "food"]),
            },
            PlanSetting::Allow(_) => {}
        }
    }

    /// A range of relative humidity, in per cent.
    fn humidity(&self, low: &tree::Expr, high: &tree::Expr) -> Option<(i64, i64)> {
        let range = self.whole(low, None)?..=self.whole(high, None)?;
        if *range.start() >= 1 && range.start() < range.end() && *range.end() <= 95 {
            return Some(range.into_inner());
        }
        let message = "humidity runs from a lower to a higher per cent, between 1 and 95";
        self.tell(Finding::new(&NOT_POSITIVE, low.span.to(high.span), message));
        None
    }

    fn apply_rounding(&self, system: &Name, step: &tree::Expr, head: &mut PlanHead) {
        let Some(length) = self.positive_length(step, None, "the step") else {
            return;
        };
        match system.value.as_str() {
            "inches" => {
                let denominator = [8, 16, 32, 64]
                    .into_iter()
                    .find(|n| Length::from_inch(1, *n) == length);
                match denominator {
                    Some(denominator) => head.precision.inch_denominator = denominator,
                    None => {
                        let message = "inches are rounded to 1/8, 1/16, 1/32 or 1/64 in";
                        self.tell(Finding::new(&NOT_POSITIVE, step.span, message));
                    }
                }
            }
            "metric" if length <= Length::from_mm(1) => head.precision.metric_step = length,
            "metric" => {
                let message = "millimetres are rounded to 1 mm (about 3/64 in) or less";
                self.tell(Finding::new(&NOT_POSITIVE, step.span, message));
            }
            _ => self.tell_word(system, "a system that is rounded", &["inches", "metric"]),
        }
    }

    /// Notes that a word is not one of those its place knows.
    pub(super) fn tell_word(&self, word: &Name, what: &str, known: &[&str]) {
        let message = format!("`{}` is not {what}", word.value);
        let mut finding = Finding::new(&WORD_OUT_OF_PLACE, word.span, message);
        if let Some(near) = nearest_of(&word.value, known.iter().copied()) {
            finding = finding.edit(
                format!("did you mean `{near}`?"),
                word.span,
                near.to_owned(),
            );
        } else {
            finding = finding.remedy(format!("there are {}", known.join(", ")));
        }
        self.tell(finding);
    }

    /// Notes that a line repeats another.
    pub(super) fn tell_twice(&self, what: &str, first: Span, second: Span) {
        let message = format!("{what} is given twice");
        self.tell(Finding::new(&SAID_TWICE, second, message).related(first, "given here first"));
    }

    /// Notes that something is lacking.
    pub(super) fn tell_lacking(&self, span: Span, message: &str, remedy: &str) {
        self.tell(Finding::new(&LACKING, span, message).remedy(remedy));
    }

    /// An item of hardware.
    pub(super) fn hardware(&self, index: usize) -> Option<Hardware> {
        let scope = self.all.hardware.scope(index);
        self.inside(scope, || self.hardware_here(index))
    }

    fn hardware_here(&self, index: usize) -> Option<Hardware> {
        let declared = self.all.hardware.get(index)?;
        let kind = HardwareKind::ALL
            .into_iter()
            .find(|kind| kind.word() == declared.kind.value);
        let Some(kind) = kind else {
            let known = HardwareKind::ALL.map(HardwareKind::word);
            self.tell_word(&declared.kind, "a kind of hardware", &known);
            return None;
        };
        let title = declared
            .title
            .as_ref()
            .unwrap_or(&declared.name)
            .value
            .clone();
        let size = |word: &str| self.hardware_size(index, word);
        let mut item = Hardware {
            name: declared.name.value.clone(),
            title,
            kind,
            diameter: size("diameter"),
            length: size("length"),
            width: size("width"),
            thickness: size("thickness"),
            head: size("head"),
            pilot: size("pilot"),
            clearance: size("clearance"),
            pack: None,
            price: None,
            count: 0,
            span: declared.span,
        };
        for setting in &declared.settings {
            match &setting.kind {
                HardwareSettingKind::Pack { count, price } => {
                    item.pack = self.count(count, None, 1, "the number in a pack");
                    item.price = price.as_ref().and_then(|price| self.money(price));
                }
                HardwareSettingKind::Use(count) => {
                    item.count += self.count(count, None, 1, "the number used").unwrap_or(0);
                }
                HardwareSettingKind::Gauge(gauge) => {
                    let screw = self.gauge(gauge);
                    item.diameter = item.diameter.or(screw.map(|screw| screw.shank()));
                    item.head = item.head.or(screw.and_then(|screw| screw.head()));
                }
                HardwareSettingKind::Size { .. } | HardwareSettingKind::Allow(_) => {}
            }
        }
        self.check_hardware_sizes(&item, declared.name.span)?;
        Some(item)
    }

    /// The screw of a number.
    fn gauge(&self, gauge: &tree::Expr) -> Option<&'static WoodScrew> {
        let number = self.whole(gauge, None)?;
        let screw = WoodScrew::by_gauge(number);
        if screw.is_none() {
            let message = format!("there is no wood screw of number {number}");
            self.tell(
                Finding::new(&NOT_POSITIVE, gauge.span, message)
                    .remedy("numbers run from 2 to 24; state a diameter for others"),
            );
        }
        screw
    }

    fn check_hardware_sizes(&self, item: &Hardware, span: Span) -> Option<()> {
        let needed: &[(&str, Option<Length>)] = match item.kind {
            HardwareKind::WoodScrew
            | HardwareKind::PocketScrew
            | HardwareKind::Dowel
            | HardwareKind::Nail
            | HardwareKind::Bolt
            | HardwareKind::Insert
            | HardwareKind::Plug
            | HardwareKind::ShelfPin => &[("diameter", item.diameter), ("length", item.length)],
            HardwareKind::LooseTenon | HardwareKind::EdgeBand => &[
                ("length", item.length),
                ("width", item.width),
                ("thickness", item.thickness),
            ],
            HardwareKind::Magnet => &[("diameter", item.diameter), ("thickness", item.thickness)],
            HardwareKind::Spline => &[("width", item.width), ("thickness", item.thickness)],
            HardwareKind::Hinge => &[("length", item.length)],
            HardwareKind::Runner => &[("length", item.length), ("thickness", item.thickness)],
            HardwareKind::WallFixing | HardwareKind::Goods => &[],
        };
        let mut complete = Some(());
        for (word, size) in needed {
            if size.is_none() {
                complete = None;
                let message = format!("`{}` does not state its {word}", item.name);
                self.tell_lacking(span, &message, &format!("add `{word} …`"));
            }
        }
        complete
    }
}
