//! Where things stand on pages: rules of good setting, measured.

use leafwright::build::Paper;
use leafwright::display::{Area, Face, Mark, PathPiece};
use leafwright::document::tree::{Block, Document, Inline, ListMarker};
use leafwright::page::{Pages, Placed, paginate, text_area};
use leafwright::source::Span;
use leafwright::text::Fonts;
use leafwright::words::Catalogues;

use super::sample::{document, drawing, heading, paragraph, text};

/// A stretch of text on a page: page, left end, baseline, size, what it says.
struct Said {
    page: usize,
    x: f64,
    y: f64,
    size: f64,
    bold: bool,
    text: String,
}

fn said(pages: &Pages<'_>) -> Vec<Said> {
    let mut said = Vec::new();
    for (page, list) in pages.pages.iter().enumerate() {
        for placed in &list.content {
            if let Some(Mark::Text(run)) = placed.mark() {
                let text: String = run.glyphs.iter().map(|g| g.text.as_str()).collect();
                said.push(Said {
                    page,
                    x: run.origin.x,
                    y: run.origin.y,
                    size: run.size,
                    bold: run.face == Face::Bold,
                    // A line ends in the space that parts it from the next one.
                    text: text.trim_end_matches(' ').to_owned(),
                });
            }
        }
    }
    said
}

fn line_of<'s>(said: &'s [Said], line: &str) -> &'s Said {
    said.iter().find(|said| said.text == line).unwrap()
}

fn find<'s>(said: &'s [Said], words: &str) -> &'s Said {
    said.iter().find(|said| said.text.contains(words)).unwrap()
}

fn plain(blocks: Vec<Block>) -> Document {
    Document {
        title: "Plan".to_owned(),
        blocks,
        ..Document::default()
    }
}

/// A paragraph of `lines` lines of body text.
fn lines(lines: usize) -> Block {
    let mut inlines = Vec::new();
    for line in 0..lines {
        if line > 0 {
            inlines.push(Inline::Break);
        }
        inlines.extend(text(&format!("line {line} of {lines}")));
    }
    Block::Paragraph {
        id: String::new(),
        class: String::new(),
        text: inlines,
    }
}

#[test]
fn everything_stays_inside_of_the_text_area() {
    let fonts = Fonts::shipped().unwrap();
    let document = document(&fonts, 6);
    for paper in Paper::ALL {
        let area = text_area(paper);
        let pages = paginate(&document, &fonts, paper).value;
        for said in said(&pages) {
            assert!(said.x >= area.x - 0.1, "{}", said.text);
            assert!(said.y <= area.y + area.height, "{}", said.text);
            assert!(said.size >= 7.0, "{} is set in {}", said.text, said.size);
        }
        for page in &pages.pages {
            for placed in &page.content {
                match placed {
                    Placed::Mark(Mark::Stroke { path, .. })
                    | Placed::Content {
                        mark: Mark::Stroke { path, .. },
                        ..
                    } => {
                        for piece in &path.pieces {
                            if let PathPiece::Line(spot) | PathPiece::Move(spot) = piece {
                                assert!(spot.x >= area.x - 0.1);
                                assert!(spot.x <= area.x + area.width + 0.1);
                                assert!(spot.y <= area.y + area.height + 0.5);
                            }
                        }
                    }
                    Placed::Figure {
                        figure, at, scale, ..
                    } => {
                        assert!(*scale <= 1.0);
                        assert!(at.x >= area.x - 0.1);
                        let (right, bottom) = (figure.width * scale, figure.height * scale);
                        assert!(at.x + right <= area.x + area.width + 0.1);
                        assert!(at.y + bottom <= area.y + area.height + 0.1);
                    }
                    Placed::Mark(_) | Placed::Content { .. } => {}
                }
            }
        }
    }
}

#[test]
fn the_scale_squares_are_exact() {
    let fonts = Fonts::shipped().unwrap();
    let document = plain(vec![Block::ScaleCheck]);
    let pages = paginate(&document, &fonts, Paper::A4).value;
    let mut sides = Vec::new();
    for placed in &pages.pages[0].content {
        if let Some(Mark::Stroke { path, .. }) = placed.mark()
            && path.pieces.last() == Some(&PathPiece::Close)
            && let (PathPiece::Move(a), PathPiece::Line(b), PathPiece::Line(c)) =
                (path.pieces[0], path.pieces[1], path.pieces[2])
        {
            sides.push((b.x - a.x, c.y - b.y));
        }
    }
    // ref: units-and-paper, "Factors" [D]: a millimetre is 360/127 of a point, an inch 72.
    let expected = [100.0 * 360.0 / 127.0, 288.0];
    for ((width, height), expected) in sides.iter().zip(expected) {
        assert!((width - expected).abs() < 1e-9 && (height - expected).abs() < 1e-9);
    }
    assert_eq!(sides.len(), 2);
}

#[test]
fn no_first_or_last_line_stands_alone() {
    let fonts = Fonts::shipped().unwrap();
    // Whatever stands above, the paragraph's first two and last two lines stay together.
    for above in 40..60 {
        let document = plain(vec![lines(above), lines(6)]);
        let pages = paginate(&document, &fonts, Paper::A4).value;
        let said = said(&pages);
        let page = |line: usize| line_of(&said, &format!("line {line} of 6")).page;
        assert_eq!(page(0), page(1), "{above} lines above");
        assert_eq!(page(4), page(5), "{above} lines above");
    }
}

#[test]
fn a_heading_stays_with_its_text() {
    let fonts = Fonts::shipped().unwrap();
    for above in 40..56 {
        let document = plain(vec![lines(above), heading(2, "a", "Lonely"), lines(4)]);
        let pages = paginate(&document, &fonts, Paper::A4).value;
        let said = said(&pages);
        let heading = find(&said, "Lonely").page;
        assert_eq!(heading, line_of(&said, "line 0 of 4").page, "{above}");
        assert_eq!(heading, line_of(&said, "line 1 of 4").page, "{above}");
    }
}

#[test]
fn what_belongs_together_moves_to_the_next_page_as_a_whole() {
    let fonts = Fonts::shipped().unwrap();
    let together = |count| Block::Together {
        blocks: vec![lines(count), paragraph("say", "and so on")],
    };
    let document = plain(vec![lines(30), together(30)]);
    let pages = paginate(&document, &fonts, Paper::A4).value;
    let found = said(&pages);
    let all_on_one = found.iter().filter(|said| said.text.ends_with("of 30"));
    assert_eq!(all_on_one.filter(|said| said.page == 1).count(), 30);
    // Longer than a page: it begins where it stands and goes on.
    let document = plain(vec![lines(10), together(80)]);
    let pages = paginate(&document, &fonts, Paper::A4).value;
    let found = said(&pages);
    assert_eq!(line_of(&found, "line 0 of 80").page, 0);
    assert_eq!(pages.pages.len(), 2);
}

#[test]
fn text_stands_on_one_grid_on_every_page() {
    let fonts = Fonts::shipped().unwrap();
    let document = document(&fonts, 4);
    let pages = paginate(&document, &fonts, Paper::A4).value;
    let area = text_area(Paper::A4);
    let said = said(&pages);
    let starts = [
        "All sizes are finished",
        "Sizes without a tolerance",
        "Spread glue",
    ];
    for words in starts {
        let line = find(&said, words);
        // Baselines differ by the size; the tops of the lines are on the grid of 7 points.
        let leading = match line.size {
            size if size < 9.0 => 10.5,
            size if size > 11.0 => 16.5,
            _ => 14.0,
        };
        let top = line.y - area.y - leading / 2.0 - line.size * 0.357;
        let off = top - (top / 7.0).round() * 7.0;
        assert!(off.abs() < 0.01, "{words} is off the grid by {off}");
    }
}

#[test]
fn heads_of_tables_and_running_heads_come_again() {
    let fonts = Fonts::shipped().unwrap();
    let document = document(&fonts, 1);
    let pages = paginate(&document, &fonts, Paper::A4).value;
    let said = said(&pages);
    let heads = said.iter().filter(|said| said.bold && said.text == "Notes");
    let pages_with_head: Vec<usize> = heads.map(|said| said.page).collect();
    assert_eq!(pages_with_head, [4, 5, 6]);
    let count = pages.pages.len();
    let numbers: Vec<&Said> = said
        .iter()
        .filter(|s| s.text.starts_with("page\u{a0}"))
        .collect();
    assert_eq!(numbers.len(), count - 1, "none on the cover");
    assert_eq!(numbers[0].text, format!("page\u{a0}2 of {count}"));
    assert!(numbers.iter().all(|said| said.y < text_area(Paper::A4).y));
}

#[test]
fn a_long_box_goes_on_under_its_signal_word_between_messages() {
    let fonts = Fonts::shipped().unwrap();
    let framed = Block::Framed {
        class: "warning".to_owned(),
        blocks: (0..16).map(|_| lines(4)).collect(),
    };
    let document = plain(vec![lines(20), framed]);
    let pages = paginate(&document, &fonts, Paper::A4).value;
    let said = said(&pages);
    let words: Vec<&Said> = said.iter().filter(|s| s.text == "WARNING").collect();
    let on: Vec<usize> = words.iter().map(|word| word.page).collect();
    assert_eq!(on, [0, 1]);
    assert!(words[1].y < text_area(Paper::A4).y + 17.5);
    // No message is torn: each page has as many last lines as first ones.
    for page in 0..2 {
        let count = |line: &str| {
            said.iter()
                .filter(|s| s.page == page && s.text == line)
                .count()
        };
        assert_eq!(count("line 0 of 4"), count("line 3 of 4"));
    }
}

#[test]
fn a_figure_gives_way_to_the_text_of_its_step_while_it_can_be_read() {
    let fonts = Fonts::shipped().unwrap();
    let step = |count| Block::Together {
        blocks: vec![
            Block::Figure {
                class: "step".to_owned(),
                name: "step".to_owned(),
                caption: vec![],
            },
            lines(count),
        ],
    };
    let scale = |count| {
        let mut document = plain(vec![step(count)]);
        let figure = drawing(&fonts, 240.0, 360.0);
        document.figures.insert("step".to_owned(), figure);
        let pages = paginate(&document, &fonts, Paper::A4).value;
        let mut placed = pages.pages.iter().flat_map(|page| &page.content);
        let scale = placed.find_map(|placed| match placed {
            Placed::Figure { scale, .. } => Some(*scale),
            Placed::Mark(_) | Placed::Content { .. } => None,
        });
        (scale.unwrap(), pages.pages.len())
    };
    let (full, pages) = scale(10);
    // 112 mm are 317.5 points.
    assert!((full * 360.0 - 317.5).abs() < 0.1 && pages == 1);
    let (smaller, pages) = scale(29);
    assert!(smaller < full && pages == 1, "{smaller} on {pages} pages");
    // So much text takes a second page, and the figure stays as it was.
    assert_eq!(scale(50), (full, 2));
}

#[test]
fn figures_shrink_to_fit_and_never_grow() {
    let fonts = Fonts::shipped().unwrap();
    let mut document = plain(vec![
        Block::Figure {
            class: String::new(),
            name: "small".to_owned(),
            caption: vec![],
        },
        Block::Figure {
            class: String::new(),
            name: "large".to_owned(),
            caption: text("large"),
        },
    ]);
    document
        .figures
        .insert("small".to_owned(), drawing(&fonts, 240.0, 200.0));
    document
        .figures
        .insert("large".to_owned(), drawing(&fonts, 600.0, 1_500.0));
    let pages = paginate(&document, &fonts, Paper::A4);
    let codes: Vec<&str> = pages.findings.iter().map(|f| f.page.code).collect();
    // Its link leads to a row that this document does not have; its lettering is too small.
    assert_eq!(codes, ["P003", "P006"]);
    let area: Area = text_area(Paper::A4);
    let figures = pages.value.pages.iter().flat_map(|page| &page.content);
    let scales: Vec<(f64, f64)> = figures
        .filter_map(|placed| match placed {
            Placed::Figure { figure, scale, .. } => Some((*scale, figure.height * scale)),
            Placed::Mark(_) | Placed::Content { .. } => None,
        })
        .collect();
    assert_eq!(scales[0].0, 1.0);
    assert!(scales[1].1 < area.height && scales[1].1 > area.height - 20.0);
}

#[test]
fn a_document_is_numbered_in_its_language() {
    let fonts = Fonts::shipped().unwrap();
    let mut document = plain(vec![
        lines(80),
        Block::Framed {
            class: "warning".to_owned(),
            blocks: vec![paragraph("", "Sägeblatt läuft nach.")],
        },
        Block::Framed {
            class: "danger".to_owned(),
            blocks: vec![paragraph("signal", "Danger de mort"), paragraph("", "…")],
        },
    ]);
    document.words = Catalogues::shipped().words("de-AT", Span::default()).value;
    let pages = paginate(&document, &fonts, Paper::A4).value;
    let said = said(&pages);
    assert_eq!(find(&said, "Seite").text, "Seite\u{a0}2 von 2");
    assert!(find(&said, "WARNUNG").bold);
    assert!(find(&said, "DANGER DE MORT").bold);
}

#[test]
fn short_items_stand_in_two_columns_read_downwards() {
    let words = ["one", "two", "three", "four", "five"];
    let items = words.map(|word| vec![paragraph("", word)]);
    let document = plain(vec![
        Block::List {
            marker: ListMarker::Number,
            in_columns: true,
            items: items.to_vec(),
        },
        paragraph("", "after"),
    ]);
    let fonts = Fonts::shipped().unwrap();
    let said = said(&paginate(&document, &fonts, Paper::A4).value);
    let at = |word| {
        let line = line_of(&said, word);
        (line.x, line.y)
    };
    assert!(at("one").0 == at("three").0 && at("one").1 < at("two").1);
    assert!(at("two").1 < at("three").1);
    assert!(at("four").0 == at("five").0 && at("four").0 > at("three").0 + 100.0);
    assert_eq!((at("four").1, at("five").1), (at("one").1, at("two").1));
    assert!(at("after").1 > at("three").1, "below the longer column");
    assert_eq!(line_of(&said, "4").y, at("four").1, "numbered on");
}
