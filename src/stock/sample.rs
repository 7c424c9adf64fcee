//! A build made by hand for tests: a small shelf unit of plywood, with a pine rail, glued-up
//! feet and two pegs.

use crate::build::{
    Build, Coming, Contact, Fastener, Hardware, HardwareId, HardwareKind, Joint, JointKind, Paper,
    Part, PlacedId, PlacedPart, PlanHead, Pull, Revision, SignalWord, Step, Wording, WordingPiece,
};
use crate::geometry::{Direction, Handedness, Interval, Orientation, PlanePoint, Side};
use crate::model::{
    Feature, FeatureShape, Grain, HolePurpose, Holes, Lumber, Material, MaterialForm, MaterialId,
    PartId, Pocket, PocketKind, PocketScrewHole, Sawn, StockPiece,
};
use crate::source::{Span, Spanned};
use crate::units::{Area, Length, Money, Precision};

pub(crate) fn mm(mm: i64) -> Length {
    Length::from_mm(mm)
}

pub(crate) fn euro(cents: i64) -> Money {
    Money {
        currency: "EUR".to_owned(),
        cents,
    }
}

fn stretch(low: i64, high: i64) -> Interval {
    Interval::new(mm(low), mm(high))
}

/// Plywood of 18 mm, 2440 by 1220 mm, 79.00 EUR a sheet.
pub(crate) fn plywood() -> Material {
    Material {
        name: "ply".to_owned(),
        title: "Birch plywood 18 mm".to_owned(),
        form: MaterialForm::Sheet { thickness: mm(18) },
        stock: vec![StockPiece {
            length: mm(2440),
            width: mm(1220),
            price: Some(euro(7900)),
            count: None,
            on_hand: false,
            span: Span::default(),
        }],
        kerf: Length::from_mm_f64(3.2),
        trim: mm(10),
        grain: Grain::AlongLength,
        density: Some(685.0),
        species: None,
        sawn: Sawn::Flat,
        stages: None,
        defects: None,
        lumber: Lumber::default(),
        span: Span::default(),
    }
}

/// Pine of 45 by 95 mm in lengths of 2400 mm, 8.50 EUR each.
pub(crate) fn pine() -> Material {
    Material {
        name: "pine".to_owned(),
        title: "Pine 45 × 95 mm".to_owned(),
        form: MaterialForm::Board {
            thickness: mm(45),
            width: mm(95),
        },
        stock: vec![StockPiece {
            length: mm(2400),
            width: mm(95),
            price: Some(euro(850)),
            count: None,
            on_hand: false,
            span: Span::default(),
        }],
        kerf: mm(3),
        trim: mm(20),
        grain: Grain::AlongLength,
        density: Some(500.0),
        species: None,
        sawn: Sawn::Flat,
        stages: None,
        defects: None,
        lumber: Lumber::default(),
        span: Span::default(),
    }
}

/// A round bar of 12 mm in lengths of 1000 mm, without a price.
fn bar() -> Material {
    Material {
        name: "dowel_bar".to_owned(),
        title: "Beech bar 12 mm".to_owned(),
        form: MaterialForm::Round { diameter: mm(12) },
        stock: vec![StockPiece {
            length: mm(1000),
            width: mm(12),
            price: None,
            count: None,
            on_hand: false,
            span: Span::default(),
        }],
        trim: Length::ZERO,
        density: Some(700.0),
        species: None,
        sawn: Sawn::Flat,
        stages: None,
        defects: None,
        lumber: Lumber::default(),
        ..pine()
    }
}

/// A part of one piece, its grain along its length.
pub(crate) fn part(label: &str, title: &str, material: usize, size: [i64; 3], count: i64) -> Part {
    Part {
        name: title.to_lowercase().replace(' ', "_"),
        title: title.to_owned(),
        label: label.to_owned(),
        material: MaterialId(material),
        extent: size.map(|size| Interval::of(mm(size))),
        grain_along_length: true,
        layers: 1,
        oversize: Length::ZERO,
        count,
        mirrored: 0,
        note: None,
        features: Vec::new(),
        bands: Vec::new(),
        span: Span::default(),
    }
}

/// A build of bare parts.
pub(crate) fn build_of(materials: Vec<Material>, parts: Vec<Part>) -> Build {
    Build {
        plan: head(),
        materials,
        parts,
        placed: Vec::new(),
        options: Vec::new(),
        groups: Vec::new(),
        instances: Vec::new(),
        joints: Vec::new(),
        hardware: Vec::new(),
        supplies: Vec::new(),
        continuous: Vec::new(),
        templates: Vec::new(),
        steps: Vec::new(),
        overall: None,
    }
}

fn head() -> PlanHead {
    PlanHead {
        title: "Shelf for seeds & bulbs".to_owned(),
        author: "Example Workshop".to_owned(),
        revisions: vec![
            Revision {
                mark: "B".to_owned(),
                date: "2026-03-01".to_owned(),
                note: "Lower shelf raised".to_owned(),
                span: Span::default(),
            },
            Revision {
                mark: "A".to_owned(),
                date: "2026-01-15".to_owned(),
                note: "First issue".to_owned(),
                span: Span::default(),
            },
        ],
        precision: Precision::default(),
        paper: Paper::A4,
        projection: None,
        words: String::new(),
        level: "beginner".to_owned(),
        about: "A shelf <for> seeds.".to_owned(),
        spares: None,
        humidity: None,
        users: Vec::new(),
        span: Span::default(),
    }
}

/// The whole shelf unit.
pub(crate) fn shelf_unit() -> Build {
    let mut build = build_of(vec![plywood(), pine(), bar()], parts());
    build.placed = placed();
    build.joints = joints();
    build.hardware = hardware();
    build.steps = steps();
    build.overall = Some([stretch(0, 900), stretch(0, 300), stretch(0, 720)]);
    build
}

fn parts() -> Vec<Part> {
    let mut side = part("A", "Side", 0, [720, 300, 18], 1);
    side.mirrored = 1;
    side.note = Some("best face <inside>".to_owned());
    side.features = vec![dado(200), dado(500), pin_holes()];
    let mut shelf = part("B", "Shelf", 0, [876, 280, 18], 2);
    shelf.extent = [stretch(-6, 870), stretch(0, 280), stretch(0, 18)];
    let mut rail = part("C", "Rail", 1, [864, 70, 45], 1);
    rail.features = vec![pocket_hole()];
    let mut foot = part("D", "Foot", 0, [100, 100, 36], 4);
    foot.layers = 2;
    foot.oversize = mm(5);
    let peg = part("E", "Peg", 2, [150, 12, 12], 2);
    vec![side, shelf, rail, foot, peg]
}

fn feature(shape: FeatureShape) -> Feature {
    Feature {
        shape,
        span: Span::default(),
    }
}

fn dado(at: i64) -> Feature {
    feature(FeatureShape::Pocket(Pocket {
        kind: PocketKind::Dado,
        side: Side::Face,
        first: stretch(at, at + 18),
        second: stretch(0, 300),
        depth: mm(6),
        round_ends: false,
    }))
}

fn pin_holes() -> Feature {
    feature(FeatureShape::Holes(Holes {
        side: Side::Face,
        diameter: mm(25),
        depth: Some(mm(12)),
        counterbore: None,
        countersink: None,
        positions: vec![PlanePoint::new(mm(100), mm(40))],
        grid: None,
        purpose: HolePurpose::Described,
    }))
}

fn pocket_hole() -> Feature {
    feature(FeatureShape::PocketScrewHole(PocketScrewHole {
        side: Side::Back,
        end: Side::Head,
        position: mm(35),
        diameter: Length::from_mm_f64(9.5),
        pilot: mm(4),
        entry: mm(40),
    }))
}

fn piece(
    name: &str,
    part: usize,
    (length, width, handedness): (Direction, Direction, Handedness),
    place: [Interval; 3],
    step: usize,
) -> PlacedPart {
    PlacedPart {
        name: name.to_owned(),
        part: PartId(part),
        handedness,
        orientation: Orientation::new(length, width, handedness).unwrap(),
        body: place,
        place,
        removable: false,
        within: None,
        step: Some(step),
        comings: vec![Coming {
            into: None,
            step: Some(step),
        }],
        span: Span::default(),
    }
}

fn placed() -> Vec<PlacedPart> {
    use Direction::{Back, Right, Top};
    use Handedness::{AsDrawn, Mirrored};
    let deep = stretch(0, 300);
    let shelf = |low: i64| [stretch(12, 888), stretch(0, 280), stretch(low, low + 18)];
    let foot = |x: i64, y: i64| [stretch(x, x + 100), stretch(y, y + 100), stretch(-36, 0)];
    let mut peg = piece(
        "peg",
        4,
        (Right, Back, AsDrawn),
        [stretch(400, 550), stretch(20, 32), stretch(600, 612)],
        2,
    );
    peg.removable = true;
    let mut all = vec![
        piece(
            "left",
            0,
            (Top, Back, Mirrored),
            [stretch(0, 18), deep, stretch(0, 720)],
            0,
        ),
        piece(
            "right",
            0,
            (Top, Back, AsDrawn),
            [stretch(882, 900), deep, stretch(0, 720)],
            1,
        ),
        piece("shelves[1]", 1, (Right, Back, AsDrawn), shelf(200), 1),
        piece("shelves[2]", 1, (Right, Back, AsDrawn), shelf(500), 1),
        piece(
            "rail",
            2,
            (Right, Top, AsDrawn),
            [stretch(18, 882), stretch(255, 300), stretch(0, 70)],
            2,
        ),
    ];
    all.extend(
        [(0, 0), (800, 0), (0, 200), (800, 200)]
            .map(|(x, y)| piece("feet", 3, (Right, Back, AsDrawn), foot(x, y), 0)),
    );
    all.push(PlacedPart {
        name: "pegs[2]".to_owned(),
        ..peg.clone()
    });
    all.push(peg);
    all
}

fn joints() -> Vec<Joint> {
    let joint = |kind, part: usize, to: usize, fasteners| Joint {
        kind,
        part: PlacedId(part),
        to: PlacedId(to),
        contact: Contact {
            direction: if to == 0 {
                Direction::Left
            } else {
                Direction::Right
            },
            position: mm(18),
            area: [stretch(18, 18), stretch(0, 280), stretch(200, 218)],
            gap: Length::ZERO,
        },
        play: Length::ZERO,
        glued: kind == JointKind::Dado,
        glue_area: Area::ZERO,
        fasteners,
        span: Span::default(),
    };
    let screw = Fastener {
        hardware: HardwareId(0),
        from: [mm(60), mm(280), mm(35)],
        to: [mm(10), mm(280), mm(35)],
        driven: Direction::Left,
    };
    vec![
        joint(JointKind::Dado, 2, 0, Vec::new()),
        joint(JointKind::Dado, 2, 1, Vec::new()),
        joint(JointKind::PocketScrews, 4, 0, vec![screw; 2]),
        joint(JointKind::PocketScrews, 4, 1, vec![screw; 2]),
    ]
}

fn hardware() -> Vec<Hardware> {
    let screw = Hardware {
        name: "pocket_screw".to_owned(),
        title: "Pocket screw".to_owned(),
        kind: HardwareKind::PocketScrew,
        diameter: Some(mm(4)),
        length: Some(mm(63)),
        width: None,
        thickness: None,
        head: Some(mm(9)),
        pilot: Some(mm(3)),
        clearance: None,
        pack: Some(50),
        price: Some(euro(320)),
        count: 70,
        span: Span::default(),
    };
    let glide = Hardware {
        name: "glide".to_owned(),
        title: "Felt glide".to_owned(),
        kind: HardwareKind::Goods,
        diameter: None,
        length: None,
        head: None,
        pilot: None,
        pack: None,
        price: Some(Money {
            currency: "USD".to_owned(),
            cents: 150,
        }),
        count: 4,
        ..screw.clone()
    };
    vec![screw, glide]
}

fn wording(pieces: Vec<WordingPiece>) -> Wording {
    Wording { pieces }
}

fn steps() -> Vec<Step> {
    let plain = |text: &str| WordingPiece::Plain(text.to_owned());
    let step = |title: &str, adds: &[usize], joints: &[usize]| Step {
        group: None,
        title: title.to_owned(),
        adds: adds.iter().copied().map(PlacedId).collect(),
        joints: joints.to_vec(),
        pulls: Vec::new(),
        look: Vec::new(),
        says: Vec::new(),
        checks: Vec::new(),
        tools: Vec::new(),
        hardware: Vec::new(),
        supplies: Vec::new(),
        cautions: Vec::new(),
        seconds: Some(1800),
        span: Span::default(),
    };
    let mut first = step("Lay down the left side", &[0, 5, 6, 7, 8], &[]);
    first.says = vec![wording(vec![
        plain("Lay "),
        WordingPiece::Part(PartId(0), 1),
        plain(" down."),
    ])];
    let mut second = step("Fit the shelves & the right side", &[1, 2, 3], &[0, 1]);
    second.says = vec![wording(vec![
        plain("Slide "),
        WordingPiece::Part(PartId(1), 2),
        plain(" in, "),
        WordingPiece::Length(mm(20)),
        plain(" behind the front <edge>."),
    ])];
    second.checks = vec![wording(vec![plain("Both diagonals are equal.")])];
    second.tools = vec![Spanned::new("Mallet".to_owned(), Span::default())];
    second.pulls = vec![Pull {
        piece: PlacedId(2),
        direction: Direction::Front,
        distance: None,
    }];
    let mut third = step("Screw the rail on", &[4, 9, 10], &[2, 3]);
    third.hardware = vec![(HardwareId(0), 4), (HardwareId(1), 4)];
    third.seconds = Some(1800);
    third.cautions = vec![(
        SignalWord::Caution,
        wording(vec![plain(
            "Screw points may come through: keep fingers away.",
        )]),
    )];
    vec![first, second, third]
}
