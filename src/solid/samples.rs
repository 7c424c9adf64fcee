//! Parts and small builds put together by hand, for tests alone.

use crate::build::{
    Build, Coming, Contact, Fastener, Hardware, HardwareId, HardwareKind, Joint, JointKind, Paper,
    Part, PlacedId, PlacedPart, PlanHead, Step,
};
use crate::geometry::{
    Contour, ContourPiece, Direction, Handedness, Interval, Orientation, PlanePoint, Side,
};
use crate::model::{
    ArrisForm, Feature, FeatureShape, Grain, HolePurpose, Holes, Lumber, Material, MaterialForm,
    MaterialId, PartId, Pocket, PocketKind, PocketScrewHole, Sawn,
};
use crate::source::Span;
use crate::units::{Area, Length, Precision};

pub(crate) fn mm(mm: f64) -> Length {
    Length::from_mm_f64(mm)
}

pub(crate) fn span(low: f64, high: f64) -> Interval {
    Interval::new(mm(low), mm(high))
}

pub(crate) fn at(x: f64, y: f64) -> PlanePoint {
    PlanePoint::new(mm(x), mm(y))
}

/// A part of one material, labelled later, without features.
pub(crate) fn part(title: &str, size: [f64; 3]) -> Part {
    Part {
        name: title.to_lowercase(),
        title: title.to_owned(),
        label: String::new(),
        material: MaterialId(0),
        extent: size.map(|size| span(0.0, size)),
        grain_along_length: true,
        layers: 1,
        oversize: Length::ZERO,
        count: 1,
        mirrored: 0,
        note: None,
        features: Vec::new(),
        bands: Vec::new(),
        span: Span::default(),
    }
}

impl Part {
    pub(crate) fn cut(mut self, shape: FeatureShape) -> Self {
        self.features.push(Feature {
            shape,
            span: Span::default(),
        });
        self
    }
}

pub(crate) fn holes(
    side: Side,
    diameter: f64,
    depth: Option<f64>,
    positions: &[PlanePoint],
) -> Holes {
    Holes {
        side,
        diameter: mm(diameter),
        depth: depth.map(mm),
        counterbore: None,
        countersink: None,
        positions: positions.to_vec(),
        grid: None,
        purpose: HolePurpose::Described,
    }
}

pub(crate) fn pocket(
    kind: PocketKind,
    side: Side,
    first: Interval,
    second: Interval,
    depth: f64,
) -> Pocket {
    Pocket {
        kind,
        side,
        first,
        second,
        depth: mm(depth),
        round_ends: false,
    }
}

/// Sheet and round bar.
fn material(name: &str, form: MaterialForm) -> Material {
    Material {
        name: name.to_owned(),
        title: name.to_owned(),
        form,
        stock: Vec::new(),
        kerf: mm(3.0),
        trim: Length::ZERO,
        grain: Grain::AlongLength,
        density: None,
        species: None,
        sawn: Sawn::Flat,
        stages: None,
        defects: None,
        lumber: Lumber::default(),
        span: Span::default(),
    }
}

pub(crate) fn empty(title: &str) -> Build {
    Build {
        plan: PlanHead {
            title: title.to_owned(),
            author: String::new(),
            revisions: Vec::new(),
            precision: Precision::default(),
            paper: Paper::A4,
            projection: None,
            words: String::new(),
            level: String::new(),
            about: String::new(),
            spares: None,
            humidity: None,
            users: Vec::new(),
            span: Span::default(),
        },
        materials: vec![
            material(
                "ply",
                MaterialForm::Sheet {
                    thickness: mm(18.0),
                },
            ),
            material("rod", MaterialForm::Round { diameter: mm(20.0) }),
        ],
        parts: Vec::new(),
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

impl Build {
    /// Adds a part and gives it the next letter.
    pub(crate) fn add(&mut self, mut part: Part) -> PartId {
        let number = u32::try_from(self.parts.len()).unwrap();
        part.label = if number < 26 {
            char::from_u32(u32::from('A') + number).unwrap().to_string()
        } else {
            format!("{number}")
        };
        self.parts.push(part);
        PartId(self.parts.len() - 1)
    }

    /// Places a piece with its lowest corner at `low`.
    pub(crate) fn put(
        &mut self,
        part: PartId,
        length: Direction,
        width: Direction,
        handedness: Handedness,
        low: [f64; 3],
    ) -> PlacedId {
        let orientation = Orientation::new(length, width, handedness).unwrap();
        let size = self.parts[part.0].size();
        let mut place = [Interval::default(); 3];
        for axis in crate::geometry::Axis::ALL {
            let along = orientation.part_axis(axis);
            let start = mm(low[axis.index()]);
            place[axis.index()] = Interval::new(start, start + size[along.index()]);
        }
        let name = format!("{}{}", self.parts[part.0].name, self.placed.len());
        self.placed.push(PlacedPart {
            name,
            part,
            handedness,
            orientation,
            body: place,
            place,
            removable: false,
            within: None,
            step: None,
            comings: vec![Coming {
                into: None,
                step: None,
            }],
            span: Span::default(),
        });
        let hull = |a: [Interval; 3], b: [Interval; 3]| [0, 1, 2].map(|i| a[i].hull(b[i]));
        self.overall = Some(self.overall.map_or(place, |all| hull(all, place)));
        PlacedId(self.placed.len() - 1)
    }

    pub(crate) fn step(&mut self, title: &str, adds: &[PlacedId]) -> &mut Step {
        let number = self.steps.len();
        for piece in adds {
            self.placed[piece.0].step = Some(number);
            self.placed[piece.0].comings[0].step = Some(number);
        }
        self.steps.push(Step {
            group: None,
            title: title.to_owned(),
            adds: adds.to_vec(),
            joints: Vec::new(),
            pulls: Vec::new(),
            look: Vec::new(),
            says: Vec::new(),
            checks: Vec::new(),
            tools: Vec::new(),
            hardware: Vec::new(),
            supplies: Vec::new(),
            cautions: Vec::new(),
            seconds: None,
            span: Span::default(),
        });
        self.steps.last_mut().unwrap()
    }

    /// Joins two pieces over the rectangle that their described bodies share.
    pub(crate) fn join(
        &mut self,
        kind: JointKind,
        piece: PlacedId,
        to: PlacedId,
        direction: Direction,
        fasteners: Vec<Fastener>,
    ) -> usize {
        let (a, b) = (self.placed[piece.0].body, self.placed[to.0].place);
        let axis = direction.axis().index();
        let position = if direction.is_positive() {
            a[axis].high
        } else {
            a[axis].low
        };
        let mut area = [0, 1, 2].map(|i| a[i].overlap(b[i]).unwrap_or(a[i]));
        area[axis] = Interval::new(position, position);
        self.joints.push(Joint {
            kind,
            part: piece,
            to,
            contact: Contact {
                direction,
                position,
                area,
                gap: Length::ZERO,
            },
            play: Length::ZERO,
            glued: true,
            glue_area: Area::ZERO,
            fasteners,
            span: Span::default(),
        });
        self.joints.len() - 1
    }

    pub(crate) fn hardware(
        &mut self,
        title: &str,
        kind: HardwareKind,
        size: [f64; 2],
    ) -> HardwareId {
        self.hardware.push(Hardware {
            name: title.to_lowercase(),
            title: title.to_owned(),
            kind,
            diameter: Some(mm(size[0])),
            length: Some(mm(size[1])),
            width: Some(mm(size[0] * 4.0)),
            thickness: Some(mm(size[0])),
            head: Some(mm(size[0] * 2.0)),
            pilot: None,
            clearance: None,
            pack: None,
            price: None,
            count: 0,
            span: Span::default(),
        });
        HardwareId(self.hardware.len() - 1)
    }
}

/// A bracket with a quarter circle, of the length and width given.
pub(crate) fn bracket(size: f64) -> Part {
    let inner = size * 0.25;
    let root = size - (size - inner) / 2f64.sqrt();
    part("Bracket", [size, size, 18.0]).cut(FeatureShape::Outline(Contour {
        start: at(0.0, 0.0),
        pieces: vec![
            ContourPiece::Line { to: at(size, 0.0) },
            ContourPiece::Line {
                to: at(size, inner),
            },
            ContourPiece::Arc {
                through: at(root, root),
                to: at(inner, size),
            },
            ContourPiece::Line { to: at(0.0, size) },
            ContourPiece::Line { to: at(0.0, 0.0) },
        ],
    }))
}

/// A shelf unit: two sides with dadoes and rows of holes, three shelves, a back rail with
/// pocket screws, a plinth on dowels, a shaped bracket, a laminated top screwed on.
pub(crate) fn shelf_unit() -> Build {
    use Direction::{Back, Bottom, Front, Left, Right, Top};
    let mut build = empty("Seedling shelf");
    let rows = |y: f64| (0..10).map(move |i| at(150.0 + 32.0 * f64::from(i), y));
    let dado = |x: f64| {
        FeatureShape::Pocket(pocket(
            PocketKind::Dado,
            Side::Face,
            span(x, x + 18.0),
            span(0.0, 280.0),
            6.0,
        ))
    };
    let rear: Vec<PlanePoint> = rows(37.0).chain(rows(230.0)).collect();
    let side = build.add(
        part("Side", [720.0, 300.0, 18.0])
            .cut(dado(80.0))
            .cut(dado(480.0))
            .cut(FeatureShape::Holes(holes(
                Side::Face,
                5.0,
                Some(12.0),
                &rear,
            )))
            .cut(FeatureShape::Pocket(pocket(
                PocketKind::Rabbet,
                Side::Face,
                span(0.0, 720.0),
                span(288.0, 300.0),
                8.0,
            )))
            .cut(FeatureShape::Notch {
                along_length: span(0.0, 60.0),
                along_width: span(0.0, 40.0),
            }),
    );
    let shelf = build.add(
        part("Shelf", [876.0, 280.0, 18.0]).cut(FeatureShape::Arris {
            sides: [Side::Face, Side::Near],
            size: mm(4.0),
            form: ArrisForm::Round,
        }),
    );
    let top = build.add({
        let mut top = part("Top", [940.0, 320.0, 36.0]).cut(FeatureShape::Arris {
            sides: [Side::Face, Side::Near],
            size: mm(10.0),
            form: ArrisForm::Chamfer,
        });
        top.layers = 2;
        top
    });
    let slanted = |end: Side, position: f64| {
        FeatureShape::PocketScrewHole(PocketScrewHole {
            side: Side::Back,
            end,
            position: mm(position),
            diameter: mm(9.5),
            pilot: mm(3.7),
            entry: mm(34.0),
        })
    };
    let rail = build.add(
        part("Rail", [864.0, 100.0, 18.0])
            .cut(slanted(Side::Foot, 25.0))
            .cut(slanted(Side::Foot, 75.0))
            .cut(slanted(Side::Head, 25.0))
            .cut(slanted(Side::Head, 75.0)),
    );
    let bracket = build.add(bracket(160.0));
    let left = build.put(side, Top, Back, Handedness::Mirrored, [0.0, 0.0, 0.0]);
    let right = build.put(side, Top, Back, Handedness::AsDrawn, [882.0, 0.0, 0.0]);
    build.parts[side.0].mirrored = 1;
    let low = build.put(shelf, Right, Back, Handedness::AsDrawn, [12.0, 0.0, 80.0]);
    let high = build.put(shelf, Right, Back, Handedness::AsDrawn, [12.0, 0.0, 480.0]);
    build.parts[shelf.0].count = 2;
    let cover = build.put(top, Right, Back, Handedness::AsDrawn, [-20.0, -20.0, 720.0]);
    let rail = build.put(rail, Right, Top, Handedness::AsDrawn, [18.0, 270.0, 620.0]);
    let braces = [
        build.put(
            bracket,
            Top,
            Back,
            Handedness::AsDrawn,
            [-18.0, 60.0, 300.0],
        ),
        build.put(
            bracket,
            Top,
            Back,
            Handedness::AsDrawn,
            [900.0, 60.0, 300.0],
        ),
    ];
    build.parts[bracket.0].count = 2;
    for shelf in [low, high] {
        build.placed[shelf.0].body[0] = span(18.0, 882.0);
    }
    let screw = build.hardware("Wood screw 4 by 40", HardwareKind::WoodScrew, [4.0, 40.0]);
    let dowel = build.hardware("Dowel 8 by 40", HardwareKind::Dowel, [8.0, 40.0]);
    let pocket_screw = build.hardware("Pocket screw 32", HardwareKind::PocketScrew, [4.0, 32.0]);
    let into_top = |x: f64, y: f64| Fastener {
        hardware: dowel,
        from: [mm(x), mm(y), mm(700.0)],
        to: [mm(x), mm(y), mm(740.0)],
        driven: Top,
    };
    let through_side = |y: f64, z: f64| Fastener {
        hardware: screw,
        from: [mm(-18.0), mm(y), mm(z)],
        to: [mm(14.0), mm(y), mm(z)],
        driven: Right,
    };
    let from_rail = |z: f64, x: f64, driven: Direction| Fastener {
        hardware: pocket_screw,
        from: [
            mm(if driven == Left { x + 26.0 } else { x - 26.0 }),
            mm(286.0),
            mm(z),
        ],
        to: [mm(x), mm(278.0), mm(z)],
        driven,
    };
    let dadoes: Vec<usize> = [low, high]
        .into_iter()
        .flat_map(|shelf| [(shelf, left, Left), (shelf, right, Right)])
        .map(|(a, b, way)| build.join(JointKind::Dado, a, b, way, Vec::new()))
        .collect();
    let rails = [
        (
            left,
            Left,
            vec![from_rail(645.0, 6.0, Left), from_rail(695.0, 6.0, Left)],
        ),
        (
            right,
            Right,
            vec![
                from_rail(645.0, 894.0, Right),
                from_rail(695.0, 894.0, Right),
            ],
        ),
    ]
    .map(|(to, way, screws)| build.join(JointKind::PocketScrews, rail, to, way, screws));
    let tops = [(left, 9.0), (right, 891.0)].map(|(to, x)| {
        let dowels = vec![into_top(x, 60.0), into_top(x, 240.0)];
        build.join(JointKind::Dowels, cover, to, Bottom, dowels)
    });
    let brackets = build.join(
        JointKind::Screws,
        braces[0],
        left,
        Right,
        vec![
            through_side(90.0, 330.0),
            through_side(190.0, 330.0),
            through_side(90.0, 430.0),
        ],
    );
    build.step("Stand the sides up", &[left, right]);
    let step = build.step("Slide the shelves in", &[low, high]);
    step.joints = dadoes;
    let step = build.step("Screw the rail in", &[rail]);
    step.joints = rails.to_vec();
    step.look = vec![Back, Left, Top];
    let step = build.step("Put the top on", &[cover]);
    step.joints = tops.to_vec();
    let step = build.step("Screw the brackets on", &braces);
    step.joints = vec![brackets];
    let _ = Front;
    build
}
