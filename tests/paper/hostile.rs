//! Documents that mean no good, or nothing at all: each ends in pages and findings.

use leafwright::build::Paper;
use leafwright::display::{Figure, Mark, Path, PathPiece, Pen, Spot, Tone};
use leafwright::document::tree::{
    Align, Block, Cell, Change, Column, Document, Inline, ListMarker, Row, Table,
};
use leafwright::page::{paginate, text_area};
use leafwright::text::Fonts;

use super::sample::{cell, heading, link, paragraph, text};
use super::{codes, print, read_back};

fn document(blocks: Vec<Block>) -> Document {
    Document {
        title: "T".to_owned(),
        blocks,
        ..Document::default()
    }
}

fn table(shares: &[f64], rows: Vec<Vec<Cell>>) -> Block {
    let columns = shares.iter().map(|share| Column {
        share: *share,
        align: Align::Left,
    });
    let rows = rows.into_iter().map(|cells| Row {
        id: String::new(),
        change: Change::None,
        cells,
    });
    Block::Table(Table {
        class: String::new(),
        columns: columns.collect(),
        head: vec![Row {
            id: String::new(),
            change: Change::None,
            cells: vec![cell("Head")],
        }],
        groups: vec![rows.collect()],
    })
}

/// What can be read on all pages, without spaces and line ends.
fn letters(document: &Document) -> (String, usize) {
    let fonts = Fonts::shipped().unwrap();
    let (bytes, findings) = print(document, &fonts, Paper::A4);
    assert_eq!(codes(&findings), Vec::<&str>::new());
    let pages = paginate(document, &fonts, Paper::A4).value.pages.len();
    let text = read_back(&bytes);
    (text.split_whitespace().collect(), pages)
}

#[test]
fn nothing_at_all_is_one_empty_page() {
    let empty = Document::default();
    let fonts = Fonts::shipped().unwrap();
    let (bytes, findings) = print(&empty, &fonts, Paper::A4);
    assert!(findings.is_empty());
    assert_eq!(
        lopdf::Document::load_mem(&bytes).unwrap().get_pages().len(),
        1
    );
}

#[test]
fn a_word_of_ten_thousand_letters_wraps() {
    let word = "Holz".repeat(2_500);
    let (read, pages) = letters(&document(vec![paragraph("", &word)]));
    // A running head parts the word once a page.
    let whole = read.matches("Holz").count();
    assert!(whole + pages >= 2_500, "{whole}");
    assert!(pages >= 2, "{pages}");
    let (read, _) = letters(&document(vec![table(
        &[0.0, 1.0],
        vec![vec![cell(&word), cell("b")]],
    )]));
    assert!(read.matches("Ho").count() >= 2_400);
}

#[test]
fn a_row_higher_than_a_page_goes_on() {
    let long: Vec<String> = (0..2_000).map(|n| format!("word{n}")).collect();
    let rows = vec![
        vec![cell("left"), cell(&long.join(" "))],
        vec![cell("last")],
    ];
    let (read, pages) = letters(&document(vec![table(&[0.0, 1.0], rows)]));
    assert!(pages >= 3, "{pages}");
    for n in [0, 1_000, 1_999] {
        assert!(read.contains(&format!("word{n}")));
    }
    assert_eq!(read.matches("Head").count(), pages);
}

#[test]
fn a_box_longer_than_a_page_is_framed_on_each() {
    let fonts = Fonts::shipped().unwrap();
    let blocks = (0..90)
        .map(|n| paragraph("", &format!("line {n}")))
        .collect();
    let document = document(vec![Block::Framed {
        class: "warning".to_owned(),
        blocks,
    }]);
    let pages = paginate(&document, &fonts, Paper::A4).value;
    let area = text_area(Paper::A4);
    let frames: Vec<(f64, f64)> = pages
        .pages
        .iter()
        .map(|page| {
            let frame = page.content.iter().find_map(|placed| {
                let Some(Mark::Stroke { path, .. }) = placed.mark() else {
                    return None;
                };
                let corners: Vec<f64> = path
                    .pieces
                    .iter()
                    .filter_map(|piece| match piece {
                        PathPiece::Move(spot) | PathPiece::Line(spot) => Some(spot.y),
                        PathPiece::Curve(..) | PathPiece::Close => None,
                    })
                    .collect();
                (corners.len() == 4).then(|| (corners[0], corners[2]))
            });
            frame.unwrap()
        })
        .collect();
    assert!(frames.len() >= 2);
    assert!(frames.iter().all(|(top, bottom)| {
        *top >= area.y - 0.1 && *bottom <= area.y + area.height + 0.1 && top < bottom
    }));
}

#[test]
fn tables_that_do_not_add_up_are_still_set() {
    let wide = Cell {
        span: 1_000_000,
        text: text("wide"),
    };
    for shares in [
        &[][..],
        &[0.0],
        &[f64::NAN, f64::INFINITY, -1.0],
        &[1e300, 1e-300],
    ] {
        let rows = vec![
            vec![wide.clone(), cell("too many")],
            vec![],
            vec![cell("a"), cell("b"), cell("c"), cell("d")],
        ];
        let fonts = Fonts::shipped().unwrap();
        let (_, findings) = print(&document(vec![table(shares, rows)]), &fonts, Paper::Letter);
        assert!(findings.is_empty());
    }
    let many = vec![0.0; 300];
    let row: Vec<Cell> = (0..300).map(|n| cell(&n.to_string())).collect();
    let fonts = Fonts::shipped().unwrap();
    let (_, findings) = print(&document(vec![table(&many, vec![row])]), &fonts, Paper::A4);
    assert!(findings.is_empty());
}

#[test]
fn blocks_and_inlines_may_be_nested_deeply() {
    let mut block = paragraph("", "innermost");
    for depth in 0..100 {
        block = match depth % 3 {
            0 => Block::Framed {
                class: "notice".to_owned(),
                blocks: vec![block],
            },
            1 => Block::Together {
                blocks: vec![block],
            },
            _ => Block::List {
                marker: ListMarker::Number,
                in_columns: depth % 2 == 0,
                items: vec![vec![block]],
            },
        };
    }
    let (read, _) = letters(&document(vec![block]));
    assert!(read.contains("innermost"));
    let mut inline = text("deep");
    for _ in 0..200 {
        inline = vec![Inline::Strong(inline)];
    }
    let fonts = Fonts::shipped().unwrap();
    let deep = document(vec![Block::Paragraph {
        id: String::new(),
        class: String::new(),
        text: inline,
    }]);
    let (bytes, _) = print(&deep, &fonts, Paper::A4);
    assert!(read_back(&bytes).contains("deep"));
}

#[test]
fn characters_no_font_has_are_named_with_their_place() {
    let fonts = Fonts::shipped().unwrap();
    let document = document(vec![
        paragraph("", "Cut along 漢字 and 漢"),
        paragraph("", "🪵 \u{7}"),
    ]);
    let (bytes, findings) = print(&document, &fonts, Paper::A4);
    assert_eq!(codes(&findings), ["P001"; 4]);
    let messages: Vec<&str> = findings.iter().map(|f| f.message.as_str()).collect();
    assert!(
        messages.iter().any(|message| {
            message.contains("“漢” (U+6F22)")
                && message.contains("“Cut along 漢字 and 漢” on page 1")
        }),
        "{messages:?}"
    );
    assert!(
        messages.iter().any(|m| m.contains("U+0007")),
        "{messages:?}"
    );
    assert!(read_back(&bytes).contains("Cut along 漢字"));
}

#[test]
fn text_from_the_right_is_found_once() {
    let fonts = Fonts::shipped().unwrap();
    let document = document(vec![paragraph("", "שלום"), paragraph("", "مرحبا")]);
    let (_, findings) = print(&document, &fonts, Paper::A4);
    assert_eq!(codes(&findings), ["P002"]);
}

#[test]
fn dead_links_double_names_and_missing_figures_are_found() {
    let fonts = Fonts::shipped().unwrap();
    let document = document(vec![
        heading(1, "here", "Here"),
        heading(2, "here", "Here again"),
        Block::Paragraph {
            id: String::new(),
            class: String::new(),
            text: vec![link("here", "fine"), link("nowhere", "dead")],
        },
        Block::Figure {
            class: String::new(),
            name: "none".to_owned(),
            caption: text("A figure"),
        },
        Block::Contents,
    ]);
    let (_, findings) = print(&document, &fonts, Paper::A4);
    assert_eq!(codes(&findings), ["P003", "P004", "P005"]);
}

#[test]
fn coordinates_that_are_no_numbers_are_left_out_and_told() {
    let fonts = Fonts::shipped().unwrap();
    let mut document = document(vec![Block::Figure {
        class: String::new(),
        name: "bad".to_owned(),
        caption: vec![],
    }]);
    let pen = Pen {
        width: 1.0,
        tone: Tone::BLACK,
        dashes: vec![0.0, 0.0],
    };
    let line = |x| Mark::Stroke {
        path: Path::polyline(
            &[Spot::new(0.0, 0.0), Spot::new(x, 5.0)],
            leafwright::display::Ends::Open,
        ),
        pen: pen.clone(),
    };
    document.figures.insert(
        "bad".to_owned(),
        Figure {
            width: 100.0,
            height: 50.0,
            marks: vec![
                line(10.0),
                line(f64::NAN),
                line(f64::INFINITY),
                line(1e12),
                Mark::Fill {
                    path: Path {
                        pieces: vec![PathPiece::Close],
                    },
                    tone: Tone::grey(f64::NAN),
                },
            ],
            alternative: String::new(),
            to_scale: false,
        },
    );
    let (bytes, findings) = print(&document, &fonts, Paper::A4);
    assert_eq!(codes(&findings), ["P007"]);
    let message = &findings.iter().next().unwrap().message;
    assert!(message.starts_with("4 marks of page 1"), "{message}");
    let text = String::from_utf8_lossy(&bytes);
    assert!(!text.contains("NaN") && !text.contains("inf"));
    // Figures without a size are not set at all.
    document.figures.insert("bad".to_owned(), Figure::default());
    let (_, findings) = print(&document, &fonts, Paper::A4);
    assert!(findings.is_empty());
}

#[test]
fn a_long_title_is_cut_in_the_running_head() {
    let fonts = Fonts::shipped().unwrap();
    let mut document = document(vec![
        Block::PageBreak,
        paragraph("", "a"),
        Block::PageBreak,
        paragraph("", "b"),
    ]);
    document.title = "A very long title ".repeat(40);
    document.running = "Revision Z".to_owned();
    let (bytes, findings) = print(&document, &fonts, Paper::A4);
    assert!(findings.is_empty());
    let text = read_back(&bytes);
    assert!(text.contains("…"), "{text}");
    assert!(text.contains("page\u{a0}2 of 2"), "{text}");
}
