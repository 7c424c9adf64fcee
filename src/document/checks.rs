//! Tests of the whole stage on a build made by hand.

use std::collections::BTreeMap;

use super::tree::{Block, Document, Inline, ListMarker, Table};
use super::{Stages, Templates, compose};
use crate::behaviour::Behaviour;
use crate::build::{Build, Wording, WordingPiece};
use crate::caution::gather;
use crate::display::Figure;
use crate::finding::{Findings, Outcome};
use crate::solid::Solids;
use crate::source::{Span, Spanned};
use crate::stock::{lay_out, sample};
use crate::units::Precision;
use crate::words::Words;

/// The figures a plan of three steps shows, signs included.
fn figures() -> BTreeMap<String, Figure> {
    let drawn = [
        "cover", "overview", "exploded", "step-1", "step-2", "step-3",
    ]
    .into_iter()
    .map(|name| (name.to_owned(), Figure::default()));
    drawn
        .chain(crate::drawing::signs(&Words::english()))
        .collect()
}

fn composed(build: &Build, templates: &Templates) -> Outcome<Document> {
    let stock = lay_out(build, &Solids::default()).value;
    let cautions = gather(build, &stock, &Behaviour::default());
    let behaviour = Behaviour {
        kg: vec![Some(1.25); build.placed.len()],
        ..Behaviour::default()
    };
    let stages = Stages {
        build,
        solids: &Solids::default(),
        stock: &stock,
        cautions: &cautions,
        loads: &[],
        behaviour: &behaviour,
        options: &[],
        since: None,
        allowed: &[],
    };
    compose(stages, figures(), templates)
}

fn shelf_unit() -> Document {
    let outcome = composed(&sample::shelf_unit(), &Templates::shipped());
    assert_eq!(said(&outcome.findings), Vec::<String>::new());
    outcome.value
}

fn said(findings: &Findings) -> Vec<String> {
    findings
        .iter()
        .map(|finding| format!("{} {}", finding.page.code, finding.message))
        .collect()
}

/// The plain text of a line.
fn line(text: &[Inline]) -> String {
    text.iter()
        .map(|inline| match inline {
            Inline::Text(text) => text.clone(),
            Inline::Strong(text)
            | Inline::Emphasis(text)
            | Inline::Link { text, .. }
            | Inline::Styled { text, .. } => line(text),
            Inline::Break => "\n".to_owned(),
        })
        .collect()
}

/// Every block, those inside others as well, in order.
fn all(blocks: &[Block]) -> Vec<&Block> {
    let mut list = Vec::new();
    for block in blocks {
        list.push(block);
        match block {
            Block::Framed { blocks, .. }
            | Block::Beside { blocks, .. }
            | Block::Together { blocks } => list.extend(all(blocks)),
            Block::List { items, .. } => items.iter().for_each(|item| list.extend(all(item))),
            Block::Heading { .. }
            | Block::Paragraph { .. }
            | Block::Table(_)
            | Block::Figure { .. }
            | Block::Legend { .. }
            | Block::Contents
            | Block::ScaleCheck
            | Block::Sheet { .. }
            | Block::Marked { .. }
            | Block::PageBreak => {}
        }
    }
    list
}

/// All text of a document, a line a block or cell.
fn text(document: &Document) -> String {
    let mut lines = Vec::new();
    for block in all(&document.blocks) {
        match block {
            Block::Heading { text, .. } | Block::Paragraph { text, .. } => lines.push(line(text)),
            Block::Figure { caption, .. } => lines.push(line(caption)),
            Block::Legend { entries } => {
                lines.extend(entries.iter().map(|(_, text)| line(text)));
            }
            Block::Table(table) => {
                for row in table.head.iter().chain(table.groups.iter().flatten()) {
                    lines.extend(row.cells.iter().map(|cell| line(&cell.text)));
                }
            }
            Block::List { .. }
            | Block::Framed { .. }
            | Block::Beside { .. }
            | Block::Together { .. }
            | Block::Contents
            | Block::ScaleCheck
            | Block::Sheet { .. }
            | Block::Marked { .. }
            | Block::PageBreak => {}
        }
    }
    lines.join("\n")
}

fn tables<'a>(document: &'a Document, class: &str) -> Vec<&'a Table> {
    let blocks = all(&document.blocks).into_iter();
    blocks
        .filter_map(|block| {
            let Block::Table(table) = block else {
                return None;
            };
            (table.class == class).then_some(table)
        })
        .collect()
}

fn chapters(document: &Document) -> Vec<String> {
    let blocks = all(&document.blocks).into_iter();
    blocks
        .filter_map(|block| {
            let Block::Heading { level: 1, id, .. } = block else {
                return None;
            };
            Some(id.clone())
        })
        .collect()
}

#[test]
fn the_parts_of_a_plan_stand_in_order() {
    assert_eq!(
        chapters(&shelf_unit()),
        [
            "read-first",
            "contents",
            "buy",
            "tools",
            "cut-list",
            "layouts",
            "hardware",
            "drilling",
            "overview",
            "steps",
            "final-checks",
            "figures",
            "revisions",
            "terms",
        ]
    );
}

#[test]
fn every_cut_list_figure_stands_in_both_systems() {
    let build = sample::shelf_unit();
    let document = shelf_unit();
    let stock = lay_out(&build, &Solids::default()).value;
    let precision = build.plan.precision;
    let tables = tables(&document, "cut-list");
    for row in stock.rows() {
        let id = format!("part-{}", row.label);
        let rows = tables
            .iter()
            .flat_map(|table| table.groups.iter().flatten());
        let printed = rows.clone().find(|printed| printed.id == id).unwrap();
        let cells: Vec<String> = printed.cells.iter().map(|cell| line(&cell.text)).collect();
        for (axis, length) in row.size.into_iter().enumerate() {
            let figure = length.printed(precision);
            assert_eq!(cells[3 + axis], figure.mm, "{id}");
            // A rounded figure carries its mark, an exact one does not.
            let mark = if figure.inch_error.nm() == 0 { "" } else { "~" };
            assert_eq!(
                cells[6 + axis],
                format!("{mark}{}", figure.inch_set),
                "{id}"
            );
        }
    }
    // Blanks of the glued-up feet: 110 by 110 by 18.
    let whole = text(&document);
    assert!(
        whole.contains("then trim\n110\n110\n18\n~4\u{202f}11\u{2044}32"),
        "{whole}"
    );
}

#[test]
fn figures_stand_in_the_texts_of_steps() {
    let whole = text(&shelf_unit());
    assert!(
        whole.contains(
            "Slide 2\u{a0}×\u{a0}Shelf\u{a0}B in, 20\u{a0}mm (~25\u{2044}32\u{a0}in) behind the \
             front <edge>."
        ),
        "{whole}"
    );
}

#[test]
fn a_part_leads_to_its_row() {
    let document = shelf_unit();
    let links = |text: &[Inline]| -> Vec<String> {
        text.iter()
            .filter_map(|inline| {
                let Inline::Link { target, .. } = inline else {
                    return None;
                };
                Some(target.clone())
            })
            .collect()
    };
    let blocks = all(&document.blocks).into_iter();
    let targets: Vec<String> = blocks
        .flat_map(|block| {
            let Block::Paragraph { class, text, .. } = block else {
                return Vec::new();
            };
            if class == "say" {
                links(text)
            } else {
                Vec::new()
            }
        })
        .collect();
    assert_eq!(targets, ["part-A", "part-B"]);
}

#[test]
fn inches_come_first_where_the_author_designs_in_them() {
    let mut build = sample::shelf_unit();
    build.plan.precision = Precision {
        metric_first: false,
        inch_denominator: 16,
        ..Precision::default()
    };
    let outcome = composed(&build, &Templates::shipped());
    let whole = text(&outcome.value);
    assert!(
        whole.contains("~13\u{2044}16\u{a0}in (20\u{a0}mm)"),
        "{whole}"
    );
    assert!(whole.contains("nearest 1\u{2044}16\u{a0}in"));
}

#[test]
fn bits_screws_and_saw_cuts_are_printed_finely() {
    let whole = text(&shelf_unit());
    // A saw cut of 3.2 mm is not 3 mm, and 4 mm are nearer to 5/32 in (3.97 mm) at any step.
    assert!(
        whole.contains("saw cut 3.2\u{a0}mm (~1\u{2044}8\u{a0}in)"),
        "{whole}"
    );
    assert!(whole.contains("4\u{a0}× 63"));
    assert!(whole.contains("stepped bit, 9.5\u{a0}mm (~3\u{2044}8\u{a0}in)"));
}

#[test]
fn a_caution_stands_before_the_text_of_its_step() {
    let document = shelf_unit();
    let blocks = all(&document.blocks);
    let step = |id: &str| {
        let at = |block: &&&Block| matches!(block, Block::Heading { id: own, .. } if own == id);
        blocks.iter().position(|block| at(&block)).unwrap()
    };
    let third = &blocks[step("step-3")..step("final-checks")];
    let first = |is: &dyn Fn(&Block) -> bool| third.iter().position(|block| is(block)).unwrap();
    let caution = first(&|block| matches!(block, Block::Framed { .. }));
    let check = third.iter().any(|block| {
        matches!(
            block,
            Block::List {
                marker: ListMarker::Tick,
                ..
            }
        )
    });
    assert!(caution > 0 && !check);
    let second = &blocks[step("step-2")..step("step-3")];
    let caution = second
        .iter()
        .position(|block| matches!(block, Block::Framed { .. }));
    let says = second.iter().position(|block| {
        matches!(
            block,
            Block::List {
                marker: ListMarker::Number,
                ..
            }
        )
    });
    assert!(caution.unwrap() < says.unwrap());
    let words = text(&document);
    assert!(words.contains("CAUTION\nScrew points may come through: keep fingers away."));
}

/// The blocks of a step, and where the links in them lead.
fn step_of(document: &Document, number: usize) -> (String, Vec<String>) {
    let is_step = |block: &Block, number: usize| matches!(block, Block::Heading { id, .. } if *id == format!("step-{number}"));
    let blocks: Vec<Block> = all(&document.blocks)
        .into_iter()
        .skip_while(|block| !is_step(block, number))
        .take_while(|block| !is_step(block, number + 1))
        .cloned()
        .collect();
    let mut targets = Vec::new();
    for block in &blocks {
        if let Block::Paragraph { text, .. } = block {
            targets.extend(text.iter().filter_map(|inline| {
                let Inline::Link { target, .. } = inline else {
                    return None;
                };
                Some(target.clone())
            }));
        }
    }
    let step = Document {
        blocks,
        ..Document::default()
    };
    (text(&step), targets)
}

#[test]
fn a_hazard_is_told_once_and_named_after() {
    let document = shelf_unit();
    // Feet of glued layers come in with the first step, glued joints with the second.
    let told = "Put everything together dry and clamped first.";
    assert!(step_of(&document, 1).0.contains(told));
    let (second, targets) = step_of(&document, 2);
    assert!(!second.contains(told));
    assert!(
        second.contains("CAUTION Before you start, again: glue and clamps (see Read first)."),
        "{second}"
    );
    assert!(targets.contains(&"caution-gluing".to_owned()));
    let places = all(&document.blocks).into_iter();
    let told_in_full = places
        .filter(|block| matches!(block, Block::Paragraph { id, .. } if id == "caution-gluing"));
    assert_eq!(told_in_full.count(), 1);
}

#[test]
fn a_step_that_adds_nothing_shows_nothing() {
    let mut build = sample::shelf_unit();
    let mut last = build.steps[2].clone();
    last.title = "Oil it".to_owned();
    last.adds.clear();
    last.joints.clear();
    build.steps.push(last);
    let outcome = composed(&build, &Templates::shipped());
    assert_eq!(said(&outcome.findings), Vec::<String>::new());
    assert!(text(&outcome.value).contains("Step 4: Oil it"));
}

#[test]
fn lengths_in_words_of_the_author_stand_in_both_systems() {
    let mut build = sample::shelf_unit();
    let plain = |text: &str| Wording {
        pieces: vec![WordingPiece::Plain(text.to_owned())],
    };
    build.steps[0].checks = vec![plain("It stands 9 mm back.")];
    build.steps[0].tools = vec![Spanned::new(
        "20 mm Forstner bit".to_owned(),
        Span::default(),
    )];
    let whole = text(&composed(&build, &Templates::shipped()).value);
    assert!(
        whole.contains("It stands 9\u{a0}mm (~11\u{2044}32\u{a0}in) back."),
        "{whole}"
    );
    assert!(whole.contains("20\u{a0}mm (~25\u{2044}32\u{a0}in) Forstner bit"));
}

#[test]
fn numbers_of_things_have_their_words() {
    let whole = text(&shelf_unit());
    assert!(whole.contains("1\u{a0}sheet\n"), "{whole}");
    assert!(whole.contains("1\u{a0}sheet; at least 1 is needed."));
    assert!(whole.contains("2\u{a0}packs of 50"));
    assert!(whole.contains("1\u{a0}h 30\u{a0}min"));
    assert!(whole.contains("79.00\u{a0}EUR"));
    assert!(whole.contains("93.90\u{a0}EUR and 6.00\u{a0}USD"));
    assert!(whole.contains("Revision B, 1\u{a0}March 2026"));
}

#[test]
fn text_of_the_author_is_never_markup() {
    let mut build = sample::shelf_unit();
    build.plan.title = "<b>&\"'</b> ]]> {{ 7 * 7 }} \u{0}\u{b}".to_owned();
    let outcome = composed(&build, &Templates::shipped());
    assert_eq!(said(&outcome.findings), Vec::<String>::new());
    let title = outcome.value.blocks.iter().find_map(|block| {
        let Block::Paragraph { class, text, .. } = block else {
            return None;
        };
        (class == "title").then(|| line(text))
    });
    assert_eq!(
        title.as_deref(),
        Some("<b>&\"'</b> ]]> {{ 7 * 7 }} \u{fffd}\u{fffd}")
    );
}

#[test]
fn a_figure_that_is_not_there_is_found_and_left_out() {
    let build = sample::shelf_unit();
    let stock = lay_out(&build, &Solids::default()).value;
    let cautions = gather(&build, &stock, &Behaviour::default());
    let mut some = figures();
    some.remove("step-2");
    let stages = Stages {
        build: &build,
        solids: &Solids::default(),
        stock: &stock,
        cautions: &cautions,
        loads: &[],
        behaviour: &Behaviour::default(),
        options: &[],
        since: None,
        allowed: &[],
    };
    let outcome = compose(stages, some, &Templates::shipped());
    assert_eq!(
        said(&outcome.findings),
        ["P025 template steps.xml.j2, line 14: there is no figure \"step-2\""]
    );
    let shown = all(&outcome.value.blocks)
        .into_iter()
        .any(|block| matches!(block, Block::Figure { name, .. } if name == "step-2"));
    assert!(!shown);
    // Without masses the cover has no mass and says nothing of it.
    assert!(!text(&outcome.value).contains("Mass, about"));
}

fn with(name: &str, template: &str) -> Vec<String> {
    let templates = Templates::shipped().with(name, template);
    said(&composed(&sample::shelf_unit(), &templates).findings)
}

#[test]
fn a_template_that_loops_runs_out_of_fuel() {
    let endless = "<p>{% for i in range(100000) %}\n{% for j in range(100000) %}{{ j }}{% endfor %}{% endfor %}</p>";
    let found = with("tools.xml.j2", endless);
    assert_eq!(found.len(), 1);
    assert!(
        found[0].starts_with("P022 template tools.xml.j2, line 2: "),
        "{found:?}"
    );
}

#[test]
fn a_template_that_grows_without_end_runs_out_of_fuel() {
    let doubling = format!(
        "{{% set a = \"x\" * 1000 %}}{}<p>{{{{ a }}}}</p>",
        "{% set a = a ~ a %}".repeat(40)
    );
    let found = with("tools.xml.j2", &doubling);
    assert!(found[0].starts_with("P022"), "{found:?}");
    let itself = with("tools.xml.j2", "{% include \"tools.xml.j2\" %}");
    assert!(itself[0].starts_with("P021"), "{itself:?}");
}

#[test]
fn faults_of_templates_name_their_line() {
    assert_eq!(
        with("tools.xml.j2", "<p>\n{{ cover.titel }}</p>"),
        ["P021 template tools.xml.j2, line 2: undefined value"]
    );
    assert!(
        with("tools.xml.j2", "<p>\n\n{% if %}</p>")[0]
            .starts_with("P021 template tools.xml.j2, line 3")
    );
    let found = with("tools.xml.j2", "<p>\n<strong>Saw</p>\n");
    assert!(
        found[0].starts_with("P023 template tools.xml.j2, line 2: "),
        "{found:?}"
    );
    assert_eq!(
        with(
            "tools.xml.j2",
            "<p>Saw.</p>\n{% if tools %}\n<div class=\"x\">Sand.</div>{% endif %}"
        ),
        [
            "P024 template tools.xml.j2, line 3: <div> is not read here: templates/README.md lists the tags there are"
        ]
    );
    assert_eq!(
        with(
            "tools.xml.j2",
            "<h1 id=\"tools\">Tools</h1>\n<h1 id=\"tools\">Tools</h1>"
        ),
        ["P026 template tools.xml.j2, line 2: two places are named \"tools\""]
    );
    assert_eq!(
        with(
            "tools.xml.j2",
            "\n<p>See <a href=\"#nothing\">there</a>.</p>"
        ),
        [
            "P027 template tools.xml.j2, line 2: a link leads to \"nothing\", and no place has that name"
        ]
    );
}

#[test]
fn spaces_are_read_as_in_html() {
    let templates = Templates::shipped().with(
        "plan.xml.j2",
        "<plan lang=\"de\"><p>  one\n two <strong> three </strong> four\u{a0} <em>five</em>.<br/> six</p></plan>",
    );
    let document = composed(&sample::shelf_unit(), &templates).value;
    let Block::Paragraph { text, .. } = &document.blocks[0] else {
        panic!("{:?}", document.blocks);
    };
    assert_eq!(line(text), "one two three four\u{a0} five.\nsix");
    assert_eq!(document.language, "de");
}

#[test]
fn deep_nesting_is_a_finding() {
    let deep = format!(
        "{}x{}",
        "<section>".repeat(5_000),
        "</section>".repeat(5_000)
    );
    let found = with("tools.xml.j2", &deep);
    assert!(found[0].starts_with("P02"), "{found:?}");
    let deep = format!("<p>{}x{}</p>", "<em>".repeat(5_000), "</em>".repeat(5_000));
    let found = with("tools.xml.j2", &deep);
    assert!(found[0].starts_with("P02"), "{found:?}");
}

#[test]
fn an_empty_build_makes_a_document_all_the_same() {
    let build = sample::build_of(Vec::new(), Vec::new());
    let outcome = composed(&build, &Templates::shipped());
    assert_eq!(said(&outcome.findings), Vec::<String>::new());
    assert!(chapters(&outcome.value).contains(&"read-first".to_owned()));
}

#[test]
fn the_same_build_makes_the_same_document() {
    assert_eq!(shelf_unit().blocks, shelf_unit().blocks);
}
