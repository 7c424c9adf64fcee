//! Tools the author names: what they are for, and which derived tools they make needless.

use super::tools::Needed;
use super::types::{Occasion, Purpose, Tool};
use super::work::Work;
use crate::build::{Wording, WordingPiece};
use crate::source::Spanned;
use crate::units::{Length, lengths_in};

/// A bit made for another unit system still bores the hole. Common practice, no source.
const SAME_BORE: Length = Length::from_nm(300_000);

/// A tool in the author's words, and when it is named.
pub(super) struct NamedTool {
    /// In small letters.
    text: String,
    sizes: Vec<Length>,
    /// As it is listed.
    pub(super) tool: Tool,
}

/// Tools the author names in steps, each once.
pub(super) fn named_tools(work: &Work) -> Vec<NamedTool> {
    let mut list: Vec<NamedTool> = Vec::new();
    for (number, step) in work.build.steps.iter().enumerate() {
        let when = Occasion::Step(number);
        for name in &step.tools {
            let text = name.value.to_lowercase();
            match list.iter_mut().find(|known| known.text == text) {
                Some(known) => known.add(&[when]),
                None => list.push(NamedTool::new(&name.value, text, when)),
            }
        }
    }
    list
}

/// Where the author names tools for work that the build has none of.
pub(super) fn idle_tools(work: &Work, needed: &[Needed]) -> Vec<Spanned<String>> {
    let named = work.build.steps.iter().flat_map(|step| &step.tools);
    named
        .filter(|name| {
            let tool = NamedTool::new(&name.value, name.value.to_lowercase(), Occasion::Use);
            tool.is_idle(needed)
        })
        .cloned()
        .collect()
}

impl NamedTool {
    fn new(name: &str, text: String, when: Occasion) -> Self {
        let found = lengths_in(name);
        let mut pieces = Vec::new();
        let mut from = 0;
        for (range, length) in &found {
            let before = name.get(from..range.start).unwrap_or("");
            pieces.push(WordingPiece::Plain(before.to_owned()));
            pieces.push(WordingPiece::Length(*length));
            from = range.end;
        }
        let rest = name.get(from..).unwrap_or("");
        pieces.push(WordingPiece::Plain(rest.to_owned()));
        Self {
            tool: Tool {
                name: Wording { pieces },
                purpose: purpose(&text),
                occasions: vec![when],
            },
            sizes: found.into_iter().map(|(_, length)| length).collect(),
            text,
        }
    }

    /// It is needed then as well.
    pub(super) fn add(&mut self, when: &[Occasion]) {
        self.tool.occasions.extend(when);
        self.tool.occasions.sort_unstable();
        self.tool.occasions.dedup();
    }

    fn says(&self, words: &[&str]) -> bool {
        words.iter().any(|word| self.text.contains(word))
    }

    /// True where it does what `needed` is for: another name for it, or a kind of it.
    pub(super) fn covers(&self, needed: Needed) -> bool {
        let bores = |diameter: Length| {
            let is_same = |size: &Length| (*size - diameter).abs() <= SAME_BORE;
            self.says(&["bit", "drill", "forstner", "hole saw", "auger"])
                && !self.says(&["router"])
                && self.sizes.iter().any(is_same)
        };
        // A narrower bit makes the channel in several passes.
        let cuts = |width: Length| {
            let passes = |size: &Length| *size <= width && *size * 3 >= width;
            self.says(&["bit", "cutter"])
                && !self.says(&["drill", "round"])
                && self.sizes.iter().any(passes)
        };
        match needed {
            Needed::AngledSaw => self.says(&["mitre saw", "miter saw", "mitre box", "tilting"]),
            Needed::TenonSaw => self.says(&["tenon saw", "back saw", "backsaw"]),
            Needed::Chisel => self.says(&["chisel"]),
            Needed::CurveSaw => self.says(&["jigsaw", "band saw", "bandsaw", "coping saw"]),
            Needed::Router => self.says(&["router"]),
            Needed::ChannelBit(width) | Needed::MortiseBit(width) => cuts(width),
            Needed::RoundOverBit(radius) => {
                self.says(&["round-over", "roundover", "rounding"])
                    && (self.sizes.is_empty() || self.sizes.contains(&radius))
            }
            Needed::ChamferBit => self.says(&["chamfer"]),
            Needed::Drill => self.says(&["drill"]) && !self.says(&["bit", "guide", "jig"]),
            Needed::Bit(diameter) | Needed::FlatBit(diameter) => bores(diameter),
            Needed::Countersink => self.says(&["countersink"]),
            Needed::PocketJig => self.says(&["pocket"]),
            Needed::SteppedBit(_) => self.says(&["stepped bit", "step bit"]),
            Needed::Driver => self.says(&["screwdriver", "driver"]),
            Needed::FlushSaw => self.says(&["flush"]),
            Needed::SlotJig => self.says(&["spline"]),
            Needed::Hammer => self.says(&["hammer", "nailer", "nail gun"]),
            Needed::Spanner => self.says(&["spanner", "wrench", "hex key"]),
            Needed::InsertDriver => self.says(&["insert"]),
            Needed::WallFinder => self.says(&["stud", "detector", "finder"]),
            Needed::Clamps(_) => self.says(&["clamp"]),
            Needed::Files => self.says(&["rasp", "file"]),
            Needed::Sanding => self.says(&["sanding", "sander", "sandpaper"]),
            Needed::Extraction => self.says(&["extract", "vacuum"]),
            Needed::Measuring
            | Needed::SheetSaw
            | Needed::Crosscutting
            | Needed::Ripping
            | Needed::Planer => false,
        }
    }

    /// True for a tool that is made for one kind of work, where the build has none of that.
    fn is_idle(&self, needed: &[Needed]) -> bool {
        let nothing = |is: fn(&Needed) -> bool| !needed.iter().any(is);
        let is_bit = self.says(&["bit", "forstner", "hole saw", "auger"]) && !self.sizes.is_empty();
        if is_bit && !self.says(&["screwdriver", "driver"]) {
            return !needed.iter().any(|needed| self.covers(*needed));
        }
        (self.says(&["router"]) && nothing(|n| matches!(n, Needed::Router)))
            || (self.says(&["jigsaw", "coping saw"]) && nothing(|n| matches!(n, Needed::CurveSaw)))
            || (self.says(&["countersink"]) && nothing(|n| matches!(n, Needed::Countersink)))
            || (self.says(&["pocket"]) && nothing(|n| matches!(n, Needed::PocketJig)))
    }

    /// True where it does the work in every step, not only in those that name it: a bare name
    /// like "Jigsaw", or clamps that are long enough.
    pub(super) fn replaces(&self, needed: Needed) -> bool {
        const BARE: usize = 2;
        let is_bare = self.sizes.is_empty() && self.text.split_whitespace().count() <= BARE;
        self.covers(needed)
            && match needed {
                Needed::Clamps(Some(opening)) => self.sizes.iter().any(|size| *size >= opening),
                Needed::CurveSaw
                | Needed::AngledSaw
                | Needed::TenonSaw
                | Needed::Chisel
                | Needed::Router
                | Needed::Drill
                | Needed::Countersink
                | Needed::Driver
                | Needed::Files
                | Needed::Sanding
                | Needed::FlushSaw
                | Needed::Hammer
                | Needed::Spanner
                | Needed::InsertDriver
                | Needed::WallFinder
                | Needed::Extraction => is_bare,
                // One jig is enough, whatever its name.
                Needed::PocketJig => true,
                Needed::SlotJig
                | Needed::ChannelBit(_)
                | Needed::MortiseBit(_)
                | Needed::RoundOverBit(_)
                | Needed::ChamferBit
                | Needed::Bit(_)
                | Needed::FlatBit(_)
                | Needed::SteppedBit(_)
                | Needed::Clamps(None)
                | Needed::Measuring
                | Needed::SheetSaw
                | Needed::Crosscutting
                | Needed::Ripping
                | Needed::Planer => false,
            }
    }
}

/// What a tool is for, by its words; the first that is said decides.
fn purpose(text: &str) -> Purpose {
    const WORDS: [(Purpose, &[&str]); 10] = [
        (Purpose::Rout, &["router", "straight bit", "round-over"]),
        (Purpose::Clamp, &["clamp", "caul", "glue"]),
        (Purpose::Protect, &["extract", "vacuum", "mask", "glasses"]),
        (
            Purpose::Join,
            &[
                "screwdriver",
                "driver",
                "hammer",
                "mallet",
                "spanner",
                "wrench",
            ],
        ),
        (
            Purpose::Drill,
            &["drill", "bit", "countersink", "pocket", "auger", "dowel"],
        ),
        (Purpose::Saw, &["saw"]),
        (
            Purpose::Measure,
            &["square", "tape", "rule", "gauge", "level", "pencil", "mark"],
        ),
        (
            Purpose::Shape,
            &["plane", "chisel", "file", "rasp", "spokeshave"],
        ),
        (
            Purpose::Finish,
            &["sand", "brush", "cloth", "scraper", "roller", "pad"],
        ),
        (Purpose::Other, &[]),
    ];
    let says = |words: &[&str]| words.iter().any(|word| text.contains(word));
    let found = WORDS.iter().find(|(_, words)| says(words));
    found.map_or(Purpose::Other, |(purpose, _)| *purpose)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn named(name: &str) -> NamedTool {
        NamedTool::new(name, name.to_lowercase(), Occasion::Step(0))
    }

    #[test]
    fn a_variant_covers_what_the_work_needs() {
        let mm = Length::from_mm;
        let router = named("Router with a 6 mm and an 18 mm bit");
        assert!(router.covers(Needed::Router) && router.covers(Needed::ChannelBit(mm(18))));
        // A groove of 6.5 mm is made with the 6 mm bit.
        assert!(router.covers(Needed::ChannelBit(Length::from_mm_f64(6.5))));
        assert!(!router.covers(Needed::ChannelBit(mm(5))));
        assert!(!router.covers(Needed::Bit(mm(6))));
        assert!(named("32 mm Forstner bit").covers(Needed::FlatBit(mm(32))));
        assert!(!named("32 mm Forstner bit").covers(Needed::FlatBit(mm(25))));
        assert!(!named("Drill guide for dowels").covers(Needed::Drill));
        assert!(named("Drill guide for pocket holes").covers(Needed::PocketJig));
    }

    #[test]
    fn only_a_bare_name_replaces_in_every_step() {
        assert!(named("Jigsaw").replaces(Needed::CurveSaw));
        assert!(!named("Router with a straight bit 18 mm").replaces(Needed::Router));
        let clamps = named("Two clamps of 800 mm");
        assert!(clamps.replaces(Needed::Clamps(Some(Length::from_mm(600)))));
        assert!(!clamps.replaces(Needed::Clamps(Some(Length::from_mm(900)))));
    }

    #[test]
    fn words_tell_the_purpose() {
        for (name, purpose) in [
            ("Screwdriver with a long bit", Purpose::Join),
            ("20 mm drill bit", Purpose::Drill),
            ("Glue roller", Purpose::Clamp),
            ("Half-round file", Purpose::Shape),
            ("Try square", Purpose::Measure),
            ("Jigsaw", Purpose::Saw),
            ("Brush and cloths", Purpose::Finish),
            ("A good helper", Purpose::Other),
        ] {
            assert_eq!(named(name).tool.purpose, purpose, "{name}");
        }
    }
}
