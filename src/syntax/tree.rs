//! The syntax tree: what is written, with the place of everything, and no meaning yet.

pub use super::tree_library::{Import, ImportSource, Imported, LibraryBlock, LibrarySetting};
pub use super::tree_part::{
    HoleGrid, Offset, OutlinePiece, Part, PartLine, PartLineKind, SizeExpr,
};
pub use super::tree_place::{
    Choice, Formal, Given, InnerRef, OptionBlock, Place, PlaceLine, PlaceLineKind, PlacedRef,
    Repeat, Subassembly,
};
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

impl Tree {
    /// Where sub-assemblies are described.
    pub fn described(&self) -> Vec<Span> {
        let statements = self.statements.iter();
        statements
            .filter_map(|statement| {
                if let Statement::Subassembly(it) = statement {
                    Some(it.span)
                } else {
                    None
                }
            })
            .collect()
    }
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
    /// `load shelves 12 kg`
    Load(Load),
    /// `clearance a to b from 1 mm to 2 mm`
    Clearance(Clearance),
    /// `hold "Tray" 400 mm by 300 mm by 60 mm between …`
    Hold(Box<Hold>),
    /// `supply name is oil "…" { … }`
    Supply(Supply),
    /// `continuous a, b, c along grain`
    Continuous(Continuous),
    /// `template side on back sheet A3`
    Template(Template),
    /// `subassembly name(…) { … }`
    Subassembly(Subassembly),
    /// `option name "…" { choice … }`
    Choose(OptionBlock),
    /// `import name from "file.wright"`
    Import(Import),
    /// `library "…" { … }`
    Library(LibraryBlock),
}

/// `continuous upper, middle, lower along grain`
#[derive(Clone, Debug, PartialEq)]
pub struct Continuous {
    /// Pieces that are cut side by side from one blank, in order.
    pub pieces: Vec<PlacedRef>,
    /// One after the other along the grain, not beside each other.
    pub along: bool,
    /// The whole statement.
    pub span: Span,
}

/// `template side on back sheet A3`
#[derive(Clone, Debug, PartialEq)]
pub struct Template {
    /// The part that is printed at its full size.
    pub part: Name,
    /// The side that is shown; the broad side with more cut into it if not said.
    pub side: Option<Name>,
    /// The one sheet it is printed on, in place of several that are put together.
    pub sheet: Option<Name>,
    /// The whole statement.
    pub span: Span,
}

/// `allow H002 because "…"`: a finding of its block that is meant to be so.
#[derive(Clone, Debug, PartialEq)]
pub struct Allow {
    /// The finding's code.
    pub code: Name,
    /// Why it is meant so.
    pub because: Text,
}

/// `load shelves 12 kg at middle sag 2 mm`
#[derive(Clone, Debug, PartialEq)]
pub struct Load {
    /// What carries it, each piece as much.
    pub pieces: Vec<PlacedRef>,
    /// How much.
    pub mass: Expr,
    /// In one place in the middle, not spread over the piece.
    pub at_middle: bool,
    /// The most it may bend.
    pub sag: Option<Expr>,
    /// The whole statement.
    pub span: Span,
}

/// `clearance a to b from low to high because "…"`
#[derive(Clone, Debug, PartialEq)]
pub struct Clearance {
    /// The face of one part.
    pub from: Expr,
    /// The face of the other.
    pub to: Expr,
    /// The least distance.
    pub low: Expr,
    /// The largest distance.
    pub high: Expr,
    /// Why.
    pub because: Option<Text>,
    /// The whole statement.
    pub span: Span,
}

/// `hold "Tray" 400 mm by 300 mm by 60 mm between a and b, c and d, e and f clear 10 mm`
#[derive(Clone, Debug, PartialEq)]
pub struct Hold {
    /// What is to go in.
    pub title: Text,
    /// Its three sizes, in the order of the rooms.
    pub sizes: [Expr; 3],
    /// The two faces on each side of it.
    pub rooms: [(Expr, Expr); 3],
    /// Room that must be left over on each way.
    pub clear: Option<Expr>,
    /// The whole statement.
    pub span: Span,
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
    /// `paper A4`, `paper Letter`, …
    Paper(Name),
    /// `projection first` or `projection third`
    Projection(Name),
    /// `level "beginner"`
    Level(Text),
    /// `about "…{width}…"`
    About(SlottedText),
    /// `words "de"`: the language of what the plan says by itself.
    Words(Text),
    /// `spares 1 per 20`: fasteners bought beyond those used.
    Spares {
        /// So many …
        count: Expr,
        /// … for every so many used.
        of: Expr,
    },
    /// `humidity from 30 to 65`: relative, in per cent, where the piece will stand.
    Humidity(Expr, Expr),
    /// `for children`: who or what the piece must suit beside its builder.
    For(Name),
    /// `allow R001 because "…"`: in the whole plan.
    Allow(Allow),
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
    /// `sheet`, `board`, `bar` or `lumber`.
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
        /// How many there are.
        count: Option<Expr>,
        /// The line.
        span: Span,
    },
    /// `offcut 1200 mm by 600 mm count 2`: on hand already.
    Offcut {
        /// Its length.
        length: Expr,
        /// Its width, of a sheet.
        width: Option<Expr>,
        /// How many there are.
        count: Option<Expr>,
        /// The line.
        span: Span,
    },
    /// `price 2400.00 EUR per m3`: of lumber, and the word of its measure.
    Price(Expr, Name),
    /// `waste 3 per 10`: what is lost of lumber, for so much that stays.
    Waste(Expr, Expr),
    /// `allowance 40 mm by 6 mm`: how much longer and wider lumber is sawn than the part.
    Allowance(Expr, Expr),
    /// `defects 1 per 10`: boards bought beside those that are laid out.
    Defects(Expr, Expr),
    /// `stages 3`: how often the saw cuts may change their way.
    Stages(Expr),
    /// `kerf 3.2 mm`
    Kerf(Expr),
    /// `trim 10 mm`
    Trim(Expr),
    /// `grain along length` or `grain none`: the word `length` or `none`.
    Grain(Name),
    /// `density 680 kg/m3`
    Density(Expr),
    /// `species hard_maple`: whose figures of weight, stiffness and movement hold.
    Species(Name),
    /// `sawn flat` or `sawn quarter`: how the rings lie in a board.
    Sawn(Name),
    /// `allow H002 because "…"`
    Allow(Allow),
}

/// `join a, b to c by kind using hardware { … }`
#[derive(Clone, Debug, PartialEq)]
pub struct Join {
    /// The parts that come to the others: the shelf that enters the dado.
    pub parts: Vec<PlacedRef>,
    /// The parts they are joined to: the side that gets the dado.
    pub to: Vec<PlacedRef>,
    /// One of the grammar's kinds of joint: `glue`, `screws`, `dado`, …
    pub kind: Name,
    /// The hardware used.
    pub using: Vec<Name>,
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
    /// `depth 6 mm`, `width 60 mm`, `thickness 12 mm`, `play 1 mm`
    Size {
        /// Which.
        word: Name,
        /// How much.
        size: Expr,
    },
    /// `count 3`: fasteners in each contact.
    Count(Expr),
    /// `inset 40 mm`: of the first and last fastener from the ends of the contact.
    Inset(Expr),
    /// `from back`: the face of the part (a world direction) that is drilled into.
    From(Name),
    /// `through left`: the placed part a screw passes through first.
    Through(PlacedRef),
    /// `allow H002 because "…"`
    Allow(Allow),
}

/// `hardware name is kind "Printed name" { … }`
#[derive(Clone, Debug, PartialEq)]
pub struct Hardware {
    /// Its name.
    pub name: Name,
    /// One of the grammar's kinds of hardware: `wood_screw`, `dowel`, `goods`, …
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
    /// `gauge 8`: an inch wood screw by its number.
    Gauge(Expr),
    /// `allow H002 because "…"`
    Allow(Allow),
}

/// `supply name is oil "Printed name" { … }`
#[derive(Clone, Debug, PartialEq)]
pub struct Supply {
    /// Its name.
    pub name: Name,
    /// One of the grammar's kinds of supply: `glue`, `oil`, …
    pub kind: Name,
    /// The printed name.
    pub title: Option<Text>,
    /// Its lines.
    pub settings: Vec<SupplySetting>,
    /// The whole statement.
    pub span: Span,
}

/// A line of a supply.
#[derive(Clone, Debug, PartialEq)]
pub struct SupplySetting {
    /// What it says.
    pub kind: SupplySettingKind,
    /// Where.
    pub span: Span,
}

/// What a line of a supply says.
#[derive(Clone, Debug, PartialEq)]
pub enum SupplySettingKind {
    /// `covers 8 m2`: what one pack of it covers once.
    Covers(Expr),
    /// `coats 2`
    Coats(Expr),
    /// `on top, shelves`: it goes on these alone.
    On(Vec<PlacedRef>),
    /// `price 19.50 EUR`: of one pack.
    Price(Expr),
    /// `allow R002 because "…"`
    Allow(Allow),
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
    /// `uses feet 4`: counted goods that go on here; `uses oil`: a supply.
    Uses {
        /// The goods or the supply.
        name: Name,
        /// How many goods.
        count: Option<Expr>,
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
    /// `allow C003 because "…"`
    Allow(Allow),
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
