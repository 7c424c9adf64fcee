//! The words that begin statements and lines, each with an example of its form.
//!
//! The grammar says what follows them; this list says which there are, for "did you mean", for
//! "belongs in" and for the form that a finding shows. A test reads every form by the grammar.

use strsim::damerau_levenshtein;

/// A statement.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Opening {
    Plan,
    Param,
    Let,
    Material,
    Part,
    Place,
    Join,
    Hardware,
    Step,
    Require,
    Load,
    Clearance,
    Hold,
    Supply,
    Continuous,
    Template,
    Subassembly,
    Import,
    Library,
    Option,
    /// Stands in an option.
    Choice,
}

impl Opening {
    pub(super) const ALL: [Self; 21] = [
        Self::Plan,
        Self::Param,
        Self::Let,
        Self::Material,
        Self::Part,
        Self::Place,
        Self::Join,
        Self::Hardware,
        Self::Step,
        Self::Require,
        Self::Load,
        Self::Clearance,
        Self::Hold,
        Self::Supply,
        Self::Continuous,
        Self::Template,
        Self::Subassembly,
        Self::Import,
        Self::Library,
        Self::Option,
        Self::Choice,
    ];

    /// The word it begins with.
    pub(super) const fn word(self) -> &'static str {
        match self {
            Self::Plan => "plan",
            Self::Param => "param",
            Self::Let => "let",
            Self::Material => "material",
            Self::Part => "part",
            Self::Place => "place",
            Self::Join => "join",
            Self::Hardware => "hardware",
            Self::Step => "step",
            Self::Require => "require",
            Self::Load => "load",
            Self::Clearance => "clearance",
            Self::Hold => "hold",
            Self::Supply => "supply",
            Self::Continuous => "continuous",
            Self::Template => "template",
            Self::Subassembly => "subassembly",
            Self::Import => "import",
            Self::Library => "library",
            Self::Option => "option",
            Self::Choice => "choice",
        }
    }

    /// An example of its head.
    pub(super) const fn form(self) -> &'static str {
        match self {
            Self::Plan => r#"plan "Seedling shelf" { … }"#,
            Self::Param => r#"param width = 900 mm from 600 mm to 1200 mm "Overall width""#,
            Self::Let => "let rise = height / 3",
            Self::Material => "material ply is sheet { … }",
            Self::Part => r#"part side from ply "Side" { … }"#,
            Self::Place => "place left = side { … }",
            Self::Join => "join shelf to left, right by dado { … }",
            Self::Hardware => r#"hardware long is wood_screw "Screw 4 x 40" { … }"#,
            Self::Step => r#"step "Fit the shelves" { … }"#,
            Self::Require => r#"require shelf.depth <= side.width because "it must not stick out""#,
            Self::Load => "load shelves 12 kg sag 2 mm",
            Self::Clearance => "clearance door.right to side.left from 1.5 mm to 3 mm",
            Self::Hold => HOLD,
            Self::Continuous => "continuous upper, middle, lower along grain",
            Self::Template => "template side on back sheet A3",
            Self::Supply => r#"supply oil is oil "Hard oil 0.75 l" { … }"#,
            Self::Subassembly => {
                r#"subassembly drawer(depth: length, box: material) "Drawer" { … }"#
            }
            Self::Import => r#"import drawer, rail as bar from "parts/drawers.wright""#,
            Self::Library => r#"library "Drawers" { … }"#,
            Self::Option => r#"option joint "Shelf joint" { … }"#,
            Self::Choice => r#"choice dowels "Dowels" { … }"#,
        }
    }

    /// What its block holds.
    pub(super) const fn block(self) -> Option<BlockKind> {
        match self {
            Self::Plan => Some(BlockKind::Plan),
            Self::Material => Some(BlockKind::Material),
            Self::Part => Some(BlockKind::Part),
            Self::Place => Some(BlockKind::Place),
            Self::Join => Some(BlockKind::Join),
            Self::Hardware => Some(BlockKind::Hardware),
            Self::Step => Some(BlockKind::Step),
            Self::Supply => Some(BlockKind::Supply),
            Self::Subassembly => Some(BlockKind::Subassembly),
            Self::Library => Some(BlockKind::Library),
            Self::Option => Some(BlockKind::Option),
            Self::Choice => Some(BlockKind::Choice),
            Self::Param
            | Self::Let
            | Self::Require
            | Self::Load
            | Self::Clearance
            | Self::Hold
            | Self::Continuous
            | Self::Template
            | Self::Import => None,
        }
    }

    /// True where it means little without a block.
    pub(super) const fn needs_block(self) -> bool {
        let may_stand_alone = matches!(self, Self::Join | Self::Hardware | Self::Supply);
        self.block().is_some() && !may_stand_alone
    }

    /// The statement that begins with a word.
    pub(super) fn of(word: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|opening| opening.word() == word)
    }
}

const HOLD: &str = "hold \"Tray\" 400 mm by 300 mm by 60 mm between left.right and right.left, \
                    left.front and left.back, floor.top and shelf.bottom";

/// What holds lines.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum BlockKind {
    Plan,
    Material,
    Part,
    Outline,
    Place,
    Join,
    Hardware,
    Supply,
    Step,
    /// Statements of its own.
    Subassembly,
    Library,
    /// Choices.
    Option,
    /// Statements of the plan.
    Choice,
}

/// A line's first word and an example of the line.
type Line = (&'static str, &'static str);

const PLAN: &[Line] = &[
    ("author", r#"author "Example Workshop""#),
    (
        "revision",
        r#"revision "B" on 2026-03-01 "Lower shelf raised""#,
    ),
    ("units", "units mm"),
    ("round", "round inches to 1/32 in"),
    ("paper", "paper A4"),
    ("projection", "projection first"),
    ("level", r#"level "beginner""#),
    ("words", r#"words "de""#),
    ("about", r#"about "A wall shelf for trays of seedlings.""#),
    ("spares", "spares 1 per 20"),
    ("humidity", "humidity from 30 to 65"),
    ("for", "for children"),
    ALLOW,
];
/// A line of every block.
const ALLOW: Line = (
    "allow",
    r#"allow H002 because "the plate carries the load""#,
);
const MATERIAL: &[Line] = &[
    ("name", r#"name "Birch plywood 18 mm""#),
    ("thickness", "thickness 18 mm"),
    ("section", "section 45 mm by 95 mm"),
    ("diameter", "diameter 12 mm"),
    ("stock", "stock 2440 mm by 1220 mm price 79.00 EUR"),
    ("offcut", "offcut 1200 mm by 600 mm count 2"),
    ("price", "price 2400.00 EUR per m3"),
    ("waste", "waste 3 per 10"),
    ("allowance", "allowance 40 mm by 6 mm"),
    ("defects", "defects 1 per 10"),
    ("stages", "stages 3"),
    ("kerf", "kerf 3.2 mm"),
    ("trim", "trim 10 mm"),
    ("grain", "grain along length"),
    ("density", "density 680 kg/m3"),
    ("species", "species hard_maple"),
    ("sawn", "sawn flat"),
    ALLOW,
];
const PART: &[Line] = &[
    ("length", "length 300 mm grain"),
    ("width", "width 300 mm"),
    ("thickness", "thickness 20 mm"),
    ("layers", "layers 2 oversize 5 mm"),
    ("extra", "extra 1"),
    ("call", "call back inner"),
    ("note", r#"note "Choose a straight board.""#),
    ("hole", HOLE),
    ("holes", HOLES),
    (
        "groove",
        "groove on face at 10 mm from near width 6 mm depth 6 mm",
    ),
    (
        "dado",
        "dado on face at 200 mm from foot width 18 mm depth 6 mm from 20 mm to 200 mm",
    ),
    ("rabbet", "rabbet on face along far width 9 mm depth 6 mm"),
    ("notch", "notch at foot.near 30 mm by 40 mm"),
    ("outline", "outline { … }"),
    ("round", "round near.face radius 3 mm"),
    ("chamfer", "chamfer near.face by 2 mm"),
    ("mitre", "mitre at head 45 deg long near"),
    ("bevel", "bevel at head 15 deg long face"),
    ("taper", "taper near by 15 mm at foot over 600 mm"),
    (
        "tenon",
        "tenon at head length 30 mm thickness 12 mm width 60 mm",
    ),
    ("band", "band near, far with tape"),
    ALLOW,
];
/// The statements that a sub-assembly or a choice may hold.
const SUBASSEMBLY: &[Line] = &[
    ("let", Opening::Let.form()),
    ("material", Opening::Material.form()),
    ("part", Opening::Part.form()),
    ("place", Opening::Place.form()),
    ("join", Opening::Join.form()),
    ("hardware", Opening::Hardware.form()),
    ("step", Opening::Step.form()),
    ("require", Opening::Require.form()),
    ("load", Opening::Load.form()),
    ("clearance", Opening::Clearance.form()),
    ("hold", Opening::Hold.form()),
    ("supply", Opening::Supply.form()),
    ("continuous", Opening::Continuous.form()),
    ("template", Opening::Template.form()),
];
const LIBRARY: &[Line] = &[
    ("version", r#"version "1.2""#),
    ("language", "language 1"),
    ("author", r#"author "Example Workshop""#),
    ("about", r#"about "Drawers for shelves and benches.""#),
];
/// What an option may hold.
const OPTION: &[Line] = &[("choice", Opening::Choice.form())];
const HOLE: &str = "hole on face diameter 20 mm depth 12 mm at 40 mm from foot, 30 mm from near";
const HOLES: &str = "holes on face diameter 5 mm depth 12 mm grid 2 by 14 pitch 224 mm by 32 mm \
                     at 38 mm from near, 96 mm from foot";
const OUTLINE: &[Line] = &[
    ("start", "start 0 mm, 0 mm"),
    ("line", "line to 300 mm, 0 mm"),
    ("arc", "arc to 300 mm, 80 mm through 340 mm, 40 mm"),
];
const PLACE: &[Line] = &[
    ("length", "length up"),
    ("width", "width back"),
    ("thickness", "thickness right"),
    ("left", "left at 0 mm"),
    ("right", "right at width"),
    ("front", "front at left.front"),
    ("back", "back at left.back"),
    ("bottom", "bottom at 0 mm"),
    ("top", "top at height"),
    ("centre", "centre across at width / 2"),
    ("removable", "removable"),
    ALLOW,
];
const JOIN: &[Line] = &[
    ("glue", "glue"),
    ("depth", "depth 6 mm"),
    ("width", "width 60 mm"),
    ("thickness", "thickness 12 mm"),
    ("play", "play 1 mm"),
    ("count", "count 3"),
    ("inset", "inset 40 mm"),
    ("from", "from back"),
    ("through", "through left"),
    ALLOW,
];
const HARDWARE: &[Line] = &[
    ("diameter", "diameter 4 mm"),
    ("length", "length 40 mm"),
    ("width", "width 20 mm"),
    ("thickness", "thickness 6 mm"),
    ("head", "head 8 mm"),
    ("pilot", "pilot 2.5 mm"),
    ("clearance", "clearance 4.5 mm"),
    ("gauge", "gauge 8"),
    ("pack", "pack 50 price 3.20 EUR"),
    ("use", "use 4"),
    ALLOW,
];
const SUPPLY: &[Line] = &[
    ("covers", "covers 8 m2"),
    ("coats", "coats 2"),
    ("on", "on shelves, back"),
    ("price", "price 19.50 EUR"),
    ALLOW,
];
const STEP: &[Line] = &[
    ("add", "add shelves, back"),
    ("pull", "pull shelves front 200 mm"),
    ("look", "look from front right above"),
    ("say", r#"say "Slide {shelves} in from the front.""#),
    (
        "check",
        "check equal diagonal(a, b), diagonal(c, d) within 1 mm",
    ),
    ("tools", r#"tools "clamp", "mallet""#),
    ("uses", "uses feet 4"),
    ("time", "time 30 min"),
    (
        "caution",
        r#"caution warning "The edge is sharp: wear gloves.""#,
    ),
    ALLOW,
];

impl BlockKind {
    pub(super) const ALL: [Self; 13] = [
        Self::Plan,
        Self::Material,
        Self::Part,
        Self::Outline,
        Self::Place,
        Self::Join,
        Self::Hardware,
        Self::Supply,
        Self::Step,
        Self::Subassembly,
        Self::Library,
        Self::Option,
        Self::Choice,
    ];

    /// Its lines.
    pub(super) const fn lines(self) -> &'static [Line] {
        match self {
            Self::Plan => PLAN,
            Self::Material => MATERIAL,
            Self::Part => PART,
            Self::Outline => OUTLINE,
            Self::Place => PLACE,
            Self::Join => JOIN,
            Self::Hardware => HARDWARE,
            Self::Supply => SUPPLY,
            Self::Step => STEP,
            Self::Subassembly | Self::Choice => SUBASSEMBLY,
            Self::Library => LIBRARY,
            Self::Option => OPTION,
        }
    }

    /// "a material", "an outline".
    pub(super) const fn name(self) -> &'static str {
        match self {
            Self::Plan => "the plan",
            Self::Material => "a material",
            Self::Part => "a part",
            Self::Outline => "an outline",
            Self::Place => "a placement",
            Self::Join => "a joint",
            Self::Hardware => "an item of hardware",
            Self::Supply => "a supply",
            Self::Step => "a step",
            Self::Subassembly => "a sub-assembly",
            Self::Library => "a library",
            Self::Option => "an option",
            Self::Choice => "a choice",
        }
    }

    /// The words its lines begin with.
    pub(super) fn words(self) -> impl Iterator<Item = &'static str> {
        self.lines().iter().map(|(word, _)| *word)
    }

    /// An example of the line that begins with `word`.
    pub(super) fn form(self, word: &str) -> Option<&'static str> {
        let mut lines = self.lines().iter();
        lines
            .find(|(first, _)| *first == word)
            .map(|(_, form)| *form)
    }
}

/// True for a word that begins a statement.
pub(super) fn is_statement(word: &str) -> bool {
    Opening::of(word).is_some()
}

/// True for a word whose block holds statements, not lines.
pub(super) fn holds_statements(word: &str) -> bool {
    let block = Opening::of(word).and_then(Opening::block);
    matches!(
        block,
        Some(BlockKind::Subassembly | BlockKind::Option | BlockKind::Choice)
    )
}

/// True for a word that begins a statement or a line of any block.
pub(super) fn is_known(word: &str) -> bool {
    is_statement(word) || BlockKind::ALL.iter().any(|kind| kind.form(word).is_some())
}

/// The units of the language, as a finding lists them.
pub(super) const UNITS: &[&str] = &[
    "mm", "cm", "m", "in", "ft", "mm2", "m2", "ft2", "m3", "litre", "deg", "g", "kg", "lb", "s",
    "min", "h", "kg/m3", "lb/ft3",
];

/// Names of units that are not read, and what is written instead.
const UNIT_NAMES: &[(&str, &[&str])] = &[
    (
        "mm",
        &["millimetre", "millimetres", "millimeter", "millimeters"],
    ),
    (
        "cm",
        &["centimetre", "centimetres", "centimeter", "centimeters"],
    ),
    ("m", &["metre", "metres", "meter", "meters"]),
    ("in", &["inch", "inches"]),
    ("ft", &["foot", "feet"]),
    ("litre", &["litres", "liter", "liters", "l"]),
    ("deg", &["degree", "degrees"]),
    ("g", &["gram", "grams"]),
    ("kg", &["kilo", "kilos", "kilogram", "kilograms"]),
    ("lb", &["lbs", "pound", "pounds"]),
    ("s", &["sec", "second", "seconds"]),
    ("min", &["mins", "minute", "minutes"]),
    ("h", &["hr", "hrs", "hour", "hours"]),
];

/// The unit that a word is another name or a slip of, and how near it is.
pub(super) fn nearest_unit(word: &str) -> Option<(String, usize)> {
    let lower = word.to_lowercase();
    let named = UNIT_NAMES
        .iter()
        .find(|(_, names)| names.contains(&lower.as_str()));
    if let Some((unit, _)) = named {
        return Some(((*unit).to_owned(), 0));
    }
    if let Some((unit, distance)) = nearest(word, UNITS.iter().copied()) {
        return Some((unit.to_owned(), distance));
    }
    // Three letters with a capital are a currency, written the wrong way.
    let currency = word.len() == 3 && word.starts_with(|c: char| c.is_ascii_uppercase());
    (currency && word.is_ascii()).then(|| (word.to_ascii_uppercase(), 0))
}

/// The candidate that `word` is most likely a slip of, if one is near enough, and how near.
pub(super) fn nearest<'c>(
    word: &str,
    candidates: impl IntoIterator<Item = &'c str>,
) -> Option<(&'c str, usize)> {
    let written = word.to_lowercase();
    let length = written.chars().count();
    let allowed = match length {
        0..=4 => 1,
        5..=8 => 2,
        _ => 3,
    };
    // A long word is a slip of none, and comparing it would take its time.
    if length > 40 {
        return None;
    }
    candidates
        .into_iter()
        .map(|candidate| {
            let distance = damerau_levenshtein(&written, &candidate.to_lowercase());
            (candidate, distance)
        })
        .filter(|(candidate, distance)| *distance <= allowed && *distance < candidate.len())
        .min_by_key(|(_, distance)| *distance)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Unit;

    #[test]
    fn slips_are_recognised_and_other_words_are_not() {
        let words = || BlockKind::Part.words();
        assert_eq!(nearest("lenght", words()), Some(("length", 1)));
        assert_eq!(nearest("Width", words()), Some(("width", 0)));
        assert_eq!(nearest("teak", words()), None);
        assert_eq!(nearest("mmm", UNITS.iter().copied()), Some(("mm", 1)));
    }

    #[test]
    fn every_unit_listed_is_one() {
        for symbol in UNITS {
            assert!(Unit::by_symbol(symbol).is_some(), "{symbol}");
        }
    }
}
