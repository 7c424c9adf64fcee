//! A document with every kind of block, in four languages and three scripts.

use std::collections::BTreeMap;

use leafwright::display::{Area, Ends, Face, Figure, Mark, Path, Pen, Spot, Tone};
use leafwright::document::tree::{
    Align, Block, Cell, Change, Column, Document, Inline, ListMarker, Row, Table,
};
use leafwright::text::{Anchor, Fonts, TextStyle, text_mark};

pub(crate) fn text(text: &str) -> Vec<Inline> {
    vec![Inline::Text(text.to_owned())]
}

pub(crate) fn paragraph(class: &str, words: &str) -> Block {
    Block::Paragraph {
        id: String::new(),
        class: class.to_owned(),
        text: text(words),
    }
}

pub(crate) fn heading(level: u8, id: &str, words: &str) -> Block {
    Block::Heading {
        level,
        id: id.to_owned(),
        text: text(words),
        breaks_page: level == 1,
    }
}

pub(crate) fn styled(class: &str, words: &str) -> Inline {
    Inline::Styled {
        class: class.to_owned(),
        text: text(words),
    }
}

pub(crate) fn cell(words: &str) -> Cell {
    Cell {
        span: 1,
        text: text(words),
    }
}

pub(crate) fn link(target: &str, words: &str) -> Inline {
    Inline::Link {
        target: target.to_owned(),
        text: text(words),
    }
}

/// A crate in a parallel view with dimensions, `width` by `height` points.
pub(crate) fn drawing(fonts: &Fonts, width: f64, height: f64) -> Figure {
    let mut marks = Vec::new();
    let pen = |width| Pen {
        width,
        tone: Tone::BLACK,
        dashes: Vec::new(),
    };
    let (left, top) = (60.0, 30.0);
    let (w, h, d) = (width - 160.0, height - 110.0, 40.0);
    let front = [
        (left, top + d),
        (left + w, top + d),
        (left + w, top + d + h),
        (left, top + d + h),
    ];
    let front: Vec<Spot> = front.iter().map(|(x, y)| Spot::new(*x, *y)).collect();
    marks.push(Mark::Fill {
        path: Path::polyline(
            &[
                front[1],
                front[1].shifted(d, -d),
                front[2].shifted(d, -d),
                front[2],
            ],
            Ends::Joined,
        ),
        tone: Tone::grey(0.85),
    });
    marks.push(Mark::Stroke {
        path: Path::polyline(&front, Ends::Joined),
        pen: pen(1.0),
    });
    let back: Vec<Spot> = front.iter().map(|spot| spot.shifted(d, -d)).collect();
    marks.push(Mark::Stroke {
        path: Path::polyline(&[front[0], back[0], back[1], front[1]], Ends::Open),
        pen: pen(1.0),
    });
    marks.push(Mark::Stroke {
        path: Path::polyline(&[back[1], back[2], front[2]], Ends::Open),
        pen: pen(1.0),
    });
    let shelves = 4;
    for i in 1..shelves {
        let y = top + d + h * f64::from(i) / f64::from(shelves);
        marks.push(Mark::Stroke {
            path: Path::polyline(&[Spot::new(left, y), Spot::new(left + w, y)], Ends::Open),
            pen: pen(0.7),
        });
    }
    let y = top + d + h + 22.0;
    marks.push(Mark::Stroke {
        path: Path::polyline(&[Spot::new(left, y), Spot::new(left + w, y)], Ends::Open),
        pen: pen(0.35),
    });
    let style = TextStyle::new(Face::Regular, 9.0).tabular();
    let label = "900 mm (35\u{202f}7\u{2044}16 in)";
    let middle = Spot::new(left + w / 2.0, y - 3.0);
    marks.push(text_mark(fonts, &style, Anchor::Middle, middle, label));
    marks.push(Mark::Stroke {
        path: Path::circle(Spot::new(left + w + d + 30.0, top + 30.0), 9.0),
        pen: pen(0.7),
    });
    let at = Spot::new(left + w + d + 30.0, top + 33.5);
    let bold = TextStyle::new(Face::Bold, 9.5);
    marks.push(text_mark(fonts, &bold, Anchor::Middle, at, "A"));
    marks.push(Mark::Link {
        area: Area {
            x: left + w + d + 20.0,
            y: top + 20.0,
            width: 20.0,
            height: 20.0,
        },
        target: "row-1".to_owned(),
    });
    Figure {
        width,
        height,
        marks,
        alternative: "A shelf seen from the front right".to_owned(),
        to_scale: false,
    }
}

fn cut_list() -> Table {
    let column = |share, align| Column { share, align };
    let names = [
        "Side",
        "Shelf",
        "Rear rail, notched for the post",
        "Stretcher",
        "Türanschlagleiste",
        "Πλαϊνό",
        "Полка нижняя",
        "Batten",
    ];
    let groups = (0..12)
        .map(|group| {
            (0..5)
                .map(|i| {
                    let n = group * 5 + i;
                    let letter = char::from(b'A' + u8::try_from(n % 26).unwrap());
                    let label = if n < 26 {
                        letter.to_string()
                    } else {
                        format!("A{letter}")
                    };
                    Row {
                        id: format!("row-{n}"),
                        change: Change::None,
                        cells: vec![
                            Cell {
                                span: 1,
                                text: vec![styled("label", &label)],
                            },
                            cell(&format!("{}", n % 4 + 1)),
                            cell(names[n % names.len()]),
                            cell(&format!("{}", 296 + n * 7)),
                            cell(&format!("{}", 120 + n * 3)),
                            cell("18"),
                            Cell {
                                span: 1,
                                text: vec![styled(
                                    "second",
                                    &format!("{}\u{202f}21\u{2044}32", 11 + n),
                                )],
                            },
                            Cell {
                                span: 1,
                                text: vec![styled(
                                    "second",
                                    &format!("{}\u{202f}{}\u{2044}16", 4 + n % 9, 2 * (n % 8) + 1),
                                )],
                            },
                            Cell {
                                span: 1,
                                text: vec![styled("second", "23\u{2044}32")],
                            },
                            cell(if n % 3 == 0 {
                                "Grain along the length; front edge rounded by 3\u{a0}mm"
                            } else {
                                ""
                            }),
                        ],
                    }
                })
                .collect()
        })
        .collect();
    let head = |words: &[&str]| Row {
        id: String::new(),
        change: Change::None,
        cells: words.iter().map(|w| cell(w)).collect(),
    };
    let over = Row {
        id: String::new(),
        change: Change::None,
        cells: vec![
            Cell {
                span: 3,
                text: vec![],
            },
            Cell {
                span: 3,
                text: text("mm"),
            },
            Cell {
                span: 3,
                text: text("inches"),
            },
            Cell::default(),
        ],
    };
    Table {
        class: "cut-list".to_owned(),
        columns: vec![
            column(0.0, Align::Centre),
            column(0.0, Align::Right),
            column(1.2, Align::Left),
            column(0.0, Align::Right),
            column(0.0, Align::Right),
            column(0.0, Align::Right),
            column(0.0, Align::Right),
            column(0.0, Align::Right),
            column(0.0, Align::Right),
            column(1.0, Align::Left),
        ],
        head: vec![
            over,
            head(&[
                "", "Qty", "Part", "Length", "Width", "Thick", "Length", "Width", "Thick", "Notes",
            ]),
        ],
        groups,
    }
}

fn facts() -> Table {
    let row = |term: &str, value: Vec<Inline>| Row {
        id: String::new(),
        change: Change::None,
        cells: vec![
            cell(term),
            Cell {
                span: 1,
                text: value,
            },
        ],
    };
    Table {
        class: "key".to_owned(),
        columns: vec![
            Column {
                share: 0.0,
                align: Align::Left,
            },
            Column {
                share: 0.0,
                align: Align::Left,
            },
        ],
        head: vec![],
        groups: vec![vec![
            row(
                "Overall size",
                vec![
                    Inline::Text("900 × 300 × 720\u{a0}mm ".to_owned()),
                    styled(
                        "second",
                        "(35\u{202f}7\u{2044}16 × 11\u{202f}13\u{2044}16 × 28\u{202f}11\u{2044}32\u{a0}in)",
                    ),
                ],
            ),
            row("Mass", text("14.2\u{a0}kg (31.3\u{a0}lb)")),
            row("Level", text("beginner")),
            row("Hours", text("about 9")),
            row("Material", text("186.40\u{a0}EUR")),
        ]],
    }
}

fn step(number: usize, figure: &str) -> Vec<Block> {
    vec![
        heading(2, &format!("step-{number}"), &format!("Step {number}. Fit the shelves")),
        Block::Together {
            blocks: vec![
                Block::Figure {
                    class: String::new(),
                    name: figure.to_owned(),
                    caption: text("The shelves slide in from the front; the sides stand on their rear edges."),
                },
                Block::Paragraph {
                    id: String::new(),
                    class: "say".to_owned(),
                    text: vec![
                        Inline::Text("Spread glue in the dadoes of ".to_owned()),
                        styled("label", "A"),
                        Inline::Text(" and slide ".to_owned()),
                        styled("label", "B"),
                        Inline::Text(" and ".to_owned()),
                        styled("label", "AC"),
                        Inline::Text(" in from the front, ".to_owned()),
                        Inline::Strong(text("20\u{a0}mm")),
                        Inline::Text(" ".to_owned()),
                        styled("second", "(25\u{2044}32\u{a0}in)"),
                        Inline::Text(" behind the front edge. Wipe off what is squeezed out before it dries, and see the ".to_owned()),
                        link("cut-list", "cut list"),
                        Inline::Text(" for the sizes.".to_owned()),
                    ],
                },
            ],
        },
        Block::Framed {
            class: "caution".to_owned(),
            blocks: vec![paragraph(
                "",
                "Glue on the floor is slippery. Cover the floor, and wipe up drops at once. Follow the manual of the clamps.",
            )],
        },
        Block::List {
            marker: ListMarker::Tick,
            in_columns: false,
            items: vec![
                vec![paragraph("", "The diagonals differ by no more than 1\u{a0}mm (3\u{2044}64\u{a0}in).")],
                vec![paragraph("", "Every shelf is flush with the rear edges of both sides, and none of them rocks on a flat table.")],
                vec![paragraph("", "No glue is left on the front edges.")],
            ],
        },
    ]
}

fn boxes() -> Vec<Block> {
    ["danger", "warning", "caution", "notice", "info"]
        .iter()
        .map(|class| Block::Framed {
            class: (*class).to_owned(),
            blocks: vec![
                paragraph(
                    "",
                    "A blade that still turns cuts to the bone. Wait until it stands still before you reach for an offcut, and keep both hands at least 150\u{a0}mm (6\u{a0}in) away from it. Follow the manual of the saw.",
                ),
                Block::List {
                    marker: ListMarker::Bullet,
                    in_columns: false,
                    items: vec![
                        vec![paragraph("", "Eye protection and hearing protection.")],
                        vec![paragraph("", "No gloves near turning blades.")],
                    ],
                },
            ],
        })
        .collect()
}

/// The sample, with `steps` steps.
pub(crate) fn document(fonts: &Fonts, steps: usize) -> Document {
    let mut blocks = vec![
        paragraph("title", "Seedling shelf for two windows"),
        paragraph("subtitle", "A wall shelf for trays of seedlings"),
        paragraph("meta", "Revision B, 2026-03-01 · Example Workshop"),
        Block::Figure {
            class: String::new(),
            name: "whole".to_owned(),
            caption: vec![],
        },
        paragraph(
            "lead",
            "Three shelves of birch plywood between two sides, screwed to the wall through a rear rail. Holds 12\u{a0}kg (26\u{a0}lb) a shelf.",
        ),
        Block::Table(facts()),
        heading(1, "read-first", "Read this first"),
        paragraph(
            "lead",
            "Working wood means working with sharp tools. Read all of this before the first cut.",
        ),
    ];
    blocks.extend(boxes());
    blocks.push(heading(2, "scale", "Is this print true to scale?"));
    blocks.push(Block::ScaleCheck);
    blocks.push(heading(1, "contents", "Contents"));
    blocks.push(Block::Contents);
    blocks.push(heading(1, "cut-list", "Cut list"));
    blocks.push(paragraph(
        "",
        "All sizes are finished sizes. Inches are rounded to 1\u{2044}32; where that matters, the millimetre is right. Größe, Länge und Faserrichtung stehen im Plan. Μήκος και πλάτος σε χιλιοστά. Длина и ширина указаны в миллиметрах.",
    ));
    blocks.push(Block::Table(cut_list()));
    blocks.push(paragraph("small", "Sizes without a tolerance: ±0.5\u{a0}mm (1\u{2044}64\u{a0}in). Measure the sheet at hand before cutting dadoes."));
    blocks.push(heading(1, "steps", "Steps"));
    for number in 1..=steps {
        blocks.extend(step(number, if number % 2 == 0 { "step" } else { "whole" }));
    }
    blocks.push(heading(1, "final", "Final checks"));
    blocks.push(heading(3, "final-load", "Under load"));
    blocks.push(Block::List {
        marker: ListMarker::Number,
        in_columns: false,
        items: vec![
            vec![paragraph(
                "",
                "Load each shelf with 12\u{a0}kg for an hour.",
            )],
            vec![
                paragraph("", "Measure the sag in the middle (≤ 1\u{a0}mm, ≥ 0, ≈ 0.6, −0.2, ⌀\u{202f}5, left → right ← back):"),
                Block::List {
                    marker: ListMarker::Bullet,
                    in_columns: false,
                    items: vec![
                        vec![paragraph("", "less than 1\u{a0}mm: good;")],
                        vec![paragraph("", "more: stiffen the front edge with a batten.")],
                    ],
                },
            ],
            vec![paragraph("", "Try to lift the shelf off the wall.")],
        ],
    });
    blocks.push(heading(1, "full", "Full-page drawing"));
    blocks.push(Block::Figure {
        class: String::new(),
        name: "large".to_owned(),
        caption: text("Reduced to fit the page."),
    });
    let mut figures = BTreeMap::new();
    figures.insert("whole".to_owned(), drawing(fonts, 480.0, 330.0));
    figures.insert("step".to_owned(), drawing(fonts, 420.0, 260.0));
    figures.insert("large".to_owned(), drawing(fonts, 700.0, 900.0));
    Document {
        title: "Seedling shelf for two windows".to_owned(),
        running: "Revision B, 2026-03-01".to_owned(),
        author: "Example Workshop".to_owned(),
        language: "en".to_owned(),
        blocks,
        figures,
        ..Document::default()
    }
}
