//! The syntax tree: what is written, with the place of everything, and no meaning yet.

use crate::source::{Span, Spanned};
use crate::units::{Number, Quantity};

/// A name as written, normalised to NFC.
pub type Name = Spanned<String>;
/// The text of a quoted string, without its quotes and with its escapes resolved.
pub type Text = Spanned<String>;

/// A whole file: the statements that could be read, in order.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Tree {
    /// Top-level statements.
    pub statements: Vec<Statement>,
    /// The whole file.
    pub span: Span,
}

/// A top-level statement.
#[derive(Clone, Debug, PartialEq)]
pub enum Statement {
    /// `plan "…" { … }`
    Plan(PlanBlock),
    /// `param name = …`
    Param(Param),
    /// `let name = …`
    Let(Let),
    /// `material name is sheet { … }`
    Material(Material),
    /// `part name from material "…" { … }`
    Part(Part),
    /// `place name = part { … }`
    Place(Place),
    /// `join a to b by kind { … }`
    Join(Join),
    /// `hardware name is kind "…" { … }`
    Hardware(Hardware),
    /// `step "…" { … }`
    Step(Step),
    /// `require a < b`
    Require(Require),
}

/// An expression.
#[derive(Clone, Debug, PartialEq)]
pub struct Expr {
    /// What it is.
    pub kind: ExprKind,
    /// Where.
    pub span: Span,
}

/// What an expression is.
#[derive(Clone, Debug, PartialEq)]
pub enum ExprKind {
    /// A bare number.
    Number(Number),
    /// A literal with its unit, `5 ft 6-1/2 in` as one.
    Quantity(Quantity),
    /// A name.
    Name(Name),
    /// `of.field`
    Field {
        /// Of what.
        of: Box<Expr>,
        /// Which field.
        field: Name,
    },
    /// `of[index]`
    Index {
        /// Of what.
        of: Box<Expr>,
        /// Which one.
        index: Box<Expr>,
    },
    /// `function(a, b)`
    Call {
        /// The function.
        function: Name,
        /// What it is given.
        arguments: Vec<Expr>,
    },
    /// `-a`
    Negated(Box<Expr>),
    /// `a + b`
    Binary {
        /// The operator.
        operator: Operator,
        /// Left side.
        left: Box<Expr>,
        /// Right side.
        right: Box<Expr>,
    },
}

/// An arithmetic operator.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Operator {
    /// `+`
    Plus,
    /// `-`
    Minus,
    /// `*`
    Times,
    /// `/`
    Over,
}

/// `plan "Title" { … }`
#[derive(Clone, Debug, PartialEq)]
pub struct PlanBlock {
    /// The printed title.
    pub title: Text,
    /// Its settings, in order.
    pub settings: Vec<PlanSetting>,
    /// The whole statement.
    pub span: Span,
}

/// A line of the plan block.
#[derive(Clone, Debug, PartialEq)]
pub enum PlanSetting {
    /// `author "…"`
    Author(Text),
    /// `revision "B" on 2026-03-01 "what changed"`
    Revision {
        /// The revision's letter or number.
        mark: Text,
        /// Its date as written, YYYY-MM-DD.
        date: Spanned<String>,
        /// What changed.
        note: Option<Text>,
    },
    /// `units mm` or `units in`
    Units(Name),
    /// `round inches to 1/32 in`, `round metric to 0.5 mm`
    Round {
        /// `inches` or `metric`.
        system: Name,
        /// The step.
        step: Expr,
    },
    /// `paper A4` or `paper Letter`
    Paper(Name),
    /// `projection first` or `projection third`
    Projection(Name),
    /// `level "beginner"`
    Level(Text),
    /// `about "…{width}…"`
    About(SlottedText),
}

/// `param name = value from low to high "what it is"`
#[derive(Clone, Debug, PartialEq)]
pub struct Param {
    /// Its name.
    pub name: Name,
    /// Its value unless overridden.
    pub value: Expr,
    /// Smallest and largest value allowed.
    pub range: Option<(Expr, Expr)>,
    /// What it is, for people.
    pub about: Option<Text>,
    /// The whole statement.
    pub span: Span,
}

/// `let name = value`
#[derive(Clone, Debug, PartialEq)]
pub struct Let {
    /// Its name.
    pub name: Name,
    /// Its value.
    pub value: Expr,
    /// The whole statement.
    pub span: Span,
}

/// `material name is sheet { … }`
#[derive(Clone, Debug, PartialEq)]
pub struct Material {
    /// Its name.
    pub name: Name,
    /// `sheet`, `board` or `bar`.
    pub kind: Name,
    /// Its lines.
    pub settings: Vec<MaterialSetting>,
    /// The whole statement.
    pub span: Span,
}

/// A line of a material.
#[derive(Clone, Debug, PartialEq)]
pub enum MaterialSetting {
    /// `name "Birch plywood 18 mm"`
    Name(Text),
    /// `thickness 18 mm`
    Thickness(Expr),
    /// `section 45 mm by 95 mm`: thickness by width of a board or bar.
    Section(Expr, Expr),
    /// `diameter 12 mm`: of a round bar.
    Diameter(Expr),
    /// `stock 2440 mm by 1220 mm price 79.00 EUR` (sheet), `stock 2400 mm price 8.50 EUR`.
    Stock {
        /// Length of the piece as sold.
        length: Expr,
        /// Width of a sheet as sold.
        width: Option<Expr>,
        /// Price of one piece.
        price: Option<Expr>,
        /// The line.
        span: Span,
    },
    /// `kerf 3.2 mm`
    Kerf(Expr),
    /// `trim 10 mm`
    Trim(Expr),
    /// `grain along length` or `grain none`: the word `length` or `none`.
    Grain(Name),
    /// `density 680 kg/m3`
    Density(Expr),
}

/// `part name from material "Printed name" { … }`
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// Its name.
    pub name: Name,
    /// The name of its material.
    pub material: Name,
    /// The printed name.
    pub title: Option<Text>,
    /// Sizes, features and the rest, in order.
    pub lines: Vec<PartLine>,
    /// The whole statement.
    pub span: Span,
}

/// A line of a part.
#[derive(Clone, Debug, PartialEq)]
pub struct PartLine {
    /// What it says.
    pub kind: PartLineKind,
    /// Where.
    pub span: Span,
}

/// What a line of a part says.
#[derive(Clone, Debug, PartialEq)]
#[expect(
    clippy::large_enum_variant,
    reason = "a part has few lines, and each is read once"
)]
pub enum PartLineKind {
    /// `length 300 mm grain`, `width from left.right to right.left`, `thickness 20 mm`
    Size {
        /// `length`, `width` or `thickness`.
        axis: Name,
        /// The size.
        size: SizeExpr,
        /// Where the word `grain` stands, if it does.
        grain: Option<Span>,
    },
    /// `layers 2 oversize 5 mm`
    Layers {
        /// How many.
        count: Expr,
        /// How much larger the blanks are cut, on each edge.
        oversize: Option<Expr>,
    },
    /// `extra 1`: made and not placed.
    Extra(Expr),
    /// `call back inner`: another word for a side of this part.
    Call {
        /// The side.
        side: Name,
        /// The word for it.
        word: Name,
    },
    /// `note "…"`, printed in the cut list.
    Note(Text),
    /// `hole on face diameter 20 mm depth 12 mm at 40 mm from foot, 30 mm from near`,
    /// with `counterbore 30 mm depth 5 mm` and `countersink 30 mm` before `grid` and `at`,
    /// and `holes … grid 8 by 5 pitch 96 mm by 96 mm at …` (the position of the first hole).
    Holes {
        /// The side drilled into.
        side: Name,
        /// Diameter.
        diameter: Expr,
        /// Depth; through where none is given.
        depth: Option<Expr>,
        /// Counterbore: diameter and depth.
        counterbore: Option<(Expr, Expr)>,
        /// Countersink: diameter.
        countersink: Option<Expr>,
        /// Counts along the first and second reference, and the pitches.
        grid: Option<HoleGrid>,
        /// Two distances from two sides.
        at: Vec<Offset>,
    },
    /// `groove on face at 10 mm from near width 6 mm depth 6 mm [from 20 mm to 200 mm]`, and
    /// `dado` alike, across.
    Channel {
        /// `groove` or `dado`.
        word: Name,
        /// The side cut into.
        side: Name,
        /// Distance of the channel's nearer wall from a side.
        at: Offset,
        /// Width.
        width: Expr,
        /// Depth.
        depth: Expr,
        /// Where a stopped channel begins and ends, measured along it from foot or near.
        stopped: Option<(Expr, Expr)>,
    },
    /// `rabbet on face along far width 9 mm depth 6 mm`
    Rabbet {
        /// The side cut into.
        side: Name,
        /// The edge or end it runs along.
        along: Name,
        /// Width, measured from that edge.
        width: Expr,
        /// Depth.
        depth: Expr,
    },
    /// `notch at foot.near 30 mm by 40 mm` (along the length by along the width), or
    /// `notch in near at 100 mm from foot 50 mm by 20 mm` (along the edge by into the part).
    Notch {
        /// Two sides for a corner, one for an edge.
        sides: Vec<Name>,
        /// Where a notch in an edge begins.
        at: Option<Offset>,
        /// First size.
        first: Expr,
        /// Second size.
        second: Expr,
    },
    /// `outline { start 0 mm, 0 mm; line to …; arc to … through … }`
    Outline {
        /// The first point: from foot, from near.
        start: (Expr, Expr),
        /// The rest; closed with a straight line where it does not end at the start.
        pieces: Vec<OutlinePiece>,
    },
    /// `round near.face radius 3 mm`, `chamfer near.face by 2 mm`, `round foot.near radius 30 mm`
    Edge {
        /// `round` or `chamfer`.
        word: Name,
        /// Two sides whose common edge is shaped.
        sides: Vec<Name>,
        /// Radius, or the width of the chamfer on both sides.
        size: Expr,
    },
}

/// A size: given, or spanned between two placed faces.
#[derive(Clone, Debug, PartialEq)]
pub enum SizeExpr {
    /// `900 mm`
    Given(Expr),
    /// `from left.right to right.left`
    Span(Expr, Expr),
}

/// `grid 8 by 5 pitch 96 mm by 96 mm`
#[derive(Clone, Debug, PartialEq)]
pub struct HoleGrid {
    /// How many along the axis of the first reference.
    pub first_count: Expr,
    /// How many along the axis of the second reference.
    pub second_count: Expr,
    /// Pitch along the first.
    pub first_pitch: Expr,
    /// Pitch along the second.
    pub second_pitch: Expr,
}

/// `40 mm from foot`
#[derive(Clone, Debug, PartialEq)]
pub struct Offset {
    /// How far.
    pub distance: Expr,
    /// From which side.
    pub from: Name,
}

/// A piece of an outline.
#[derive(Clone, Debug, PartialEq)]
pub struct OutlinePiece {
    /// Where it ends: from foot, from near.
    pub to: (Expr, Expr),
    /// A point on the way, for an arc.
    pub through: Option<(Expr, Expr)>,
    /// Where it is written.
    pub span: Span,
}

/// `place name[i in 1..count] = part mirrored { … }`
#[derive(Clone, Debug, PartialEq)]
pub struct Place {
    /// Its name.
    pub name: Name,
    /// `[i in first..last]`
    pub repeat: Option<Repeat>,
    /// The part placed.
    pub part: Name,
    /// Where the word `mirrored` stands, if it does.
    pub mirrored: Option<Span>,
    /// Orientation and location.
    pub lines: Vec<PlaceLine>,
    /// The whole statement.
    pub span: Span,
}

/// `[i in first..last]`
#[derive(Clone, Debug, PartialEq)]
pub struct Repeat {
    /// The counting name.
    pub index: Name,
    /// First value.
    pub first: Expr,
    /// Last value, included.
    pub last: Expr,
}

/// A line of a placement.
#[derive(Clone, Debug, PartialEq)]
pub struct PlaceLine {
    /// What it says.
    pub kind: PlaceLineKind,
    /// Where.
    pub span: Span,
}

/// What a line of a placement says.
#[derive(Clone, Debug, PartialEq)]
pub enum PlaceLineKind {
    /// `length up`, `width back`: where an axis of the part runs.
    Runs {
        /// `length` or `width` or `thickness`.
        axis: Name,
        /// A direction.
        direction: Name,
    },
    /// `left at left.right`: where a face of the part is.
    At {
        /// `left`, `right`, `front`, `back`, `bottom` or `top`.
        face: Name,
        /// Where it is.
        position: Expr,
    },
    /// `centre across at 450 mm`: where the middle of the part is.
    Centre {
        /// `across`, `deep` or `high`.
        axis: Name,
        /// Where it is.
        position: Expr,
    },
    /// `removable`: held by its place alone, taken out in use.
    Removable,
}

/// A placed part or all of a repeated one: `left`, `shelves`, `shelves[2]`.
#[derive(Clone, Debug, PartialEq)]
pub struct PlacedRef {
    /// Its name.
    pub name: Name,
    /// Which of a repeated one.
    pub index: Option<Expr>,
    /// Where.
    pub span: Span,
}

/// `join a, b to c by kind using hardware { … }`
#[derive(Clone, Debug, PartialEq)]
pub struct Join {
    /// The parts that come to the others: the shelf that enters the dado.
    pub parts: Vec<PlacedRef>,
    /// The parts they are joined to: the side that gets the dado.
    pub to: Vec<PlacedRef>,
    /// `glue`, `screws`, `pocket_screws`, `dado`, `groove`, `rabbet`, `dowels`, `loose_tenons`.
    pub kind: Name,
    /// The hardware used.
    pub using: Option<Name>,
    /// Its lines.
    pub settings: Vec<JoinSetting>,
    /// The whole statement.
    pub span: Span,
}

/// A line of a joint.
#[derive(Clone, Debug, PartialEq)]
pub struct JoinSetting {
    /// What it says.
    pub kind: JoinSettingKind,
    /// Where.
    pub span: Span,
}

/// What a line of a joint says.
#[derive(Clone, Debug, PartialEq)]
pub enum JoinSettingKind {
    /// `glue`
    Glue,
    /// `depth 6 mm`
    Depth(Expr),
    /// `count 3`: fasteners in each contact.
    Count(Expr),
    /// `inset 40 mm`: of the first and last fastener from the ends of the contact.
    Inset(Expr),
    /// `from back`: the face of the part (a world direction) that is drilled into.
    From(Name),
    /// `through left`: the placed part a screw passes through first.
    Through(PlacedRef),
}

/// `hardware name is kind "Printed name" { … }`
#[derive(Clone, Debug, PartialEq)]
pub struct Hardware {
    /// Its name.
    pub name: Name,
    /// `wood_screw`, `pocket_screw`, `dowel`, `loose_tenon` or `goods`.
    pub kind: Name,
    /// The printed name.
    pub title: Option<Text>,
    /// Its lines.
    pub settings: Vec<HardwareSetting>,
    /// The whole statement.
    pub span: Span,
}

/// A line of a hardware statement.
#[derive(Clone, Debug, PartialEq)]
pub struct HardwareSetting {
    /// What it says.
    pub kind: HardwareSettingKind,
    /// Where.
    pub span: Span,
}

/// What a line of a hardware statement says.
#[derive(Clone, Debug, PartialEq)]
pub enum HardwareSettingKind {
    /// `diameter 4 mm`, `length 40 mm`, `width 20 mm`, `thickness 6 mm`, `head 8 mm`,
    /// `pilot 2.5 mm`, `clearance 4.5 mm`
    Size {
        /// Which.
        word: Name,
        /// How much.
        size: Expr,
    },
    /// `pack 50 price 3.20 EUR`
    Pack {
        /// Pieces in a pack.
        count: Expr,
        /// Price of a pack.
        price: Option<Expr>,
    },
    /// `use 4`: goods counted beside the joints.
    Use(Expr),
}

/// `step "Title" { … }`
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// Its title.
    pub title: Text,
    /// Its lines, in order.
    pub lines: Vec<StepLine>,
    /// The whole statement.
    pub span: Span,
}

/// A line of a step.
#[derive(Clone, Debug, PartialEq)]
pub struct StepLine {
    /// What it says.
    pub kind: StepLineKind,
    /// Where.
    pub span: Span,
}

/// What a line of a step says.
#[derive(Clone, Debug, PartialEq)]
pub enum StepLineKind {
    /// `add a, b`: parts that come in here.
    Add(Vec<PlacedRef>),
    /// `pull a front 200 mm`: how the exploded view draws a part away.
    Pull {
        /// Which parts.
        parts: Vec<PlacedRef>,
        /// Where to.
        direction: Name,
        /// How far.
        distance: Option<Expr>,
    },
    /// `look from front right above`
    Look(Vec<Name>),
    /// `say "…{left}…"`
    Say(SlottedText),
    /// `check "…"`
    Check(SlottedText),
    /// `check equal a, b within 1 mm`
    CheckEqual {
        /// One measure.
        first: Expr,
        /// The other.
        second: Expr,
        /// Allowed difference.
        within: Expr,
    },
    /// `tools "…", "…"`
    Tools(Vec<Text>),
    /// `uses feet 4`: counted goods that go on here.
    Uses {
        /// The goods.
        hardware: Name,
        /// How many.
        count: Expr,
    },
    /// `time 30 min`
    Time(Expr),
    /// `caution warning "…"`
    Caution {
        /// `danger`, `warning`, `caution` or `notice`.
        word: Name,
        /// What to beware of and how.
        text: SlottedText,
    },
}

/// A quoted text with expressions in braces; `{{` is a brace.
#[derive(Clone, Debug, PartialEq)]
pub struct SlottedText {
    /// Its pieces, in order.
    pub pieces: Vec<TextPiece>,
    /// The whole string.
    pub span: Span,
}

/// A piece of a slotted text.
#[derive(Clone, Debug, PartialEq)]
pub enum TextPiece {
    /// Printed as it stands.
    Plain(String),
    /// Printed as its value.
    Slot(Expr),
}

/// `require a < b because "…"`
#[derive(Clone, Debug, PartialEq)]
pub struct Require {
    /// Left side.
    pub left: Expr,
    /// How they compare.
    pub comparison: Comparison,
    /// Right side.
    pub right: Expr,
    /// `within`, for `=` of measured things.
    pub within: Option<Expr>,
    /// Why it is required.
    pub because: Option<Text>,
    /// The whole statement.
    pub span: Span,
}

/// How two values compare.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Comparison {
    /// `<`
    Less,
    /// `<=`
    AtMost,
    /// `=`
    Equal,
    /// `>=`
    AtLeast,
    /// `>`
    More,
}
