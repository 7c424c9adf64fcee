//! What a page holds: read back as XML, which it is beside being HTML.

use std::collections::BTreeSet;
use std::fs;

use base64::Engine as _;
use leafwright::document::tree::{Block, Change};
use leafwright::text::Fonts;
use leafwright::web;
use roxmltree::{Document as Xml, Node, ParsingOptions};
use sha2::{Digest as _, Sha256};

use super::{EXAMPLES, built, example, published, words};
use crate::paper::sample;
use crate::shell::{folder, leafwright, stderr, stdout};

/// The page as a tree; its end tags are those HTML wants.
fn read(page: &str) -> Xml<'_> {
    let options = ParsingOptions {
        allow_dtd: true,
        ..ParsingOptions::default()
    };
    Xml::parse_with_options(page, options).unwrap()
}

fn named<'a>(page: &'a Xml, tag: &'static str) -> impl Iterator<Item = Node<'a, 'a>> {
    page.descendants()
        .filter(move |node| node.tag_name().name() == tag)
}

/// What holds for every page.
fn check(name: &str, text: &str) {
    let page = read(text);
    ids_are_unique_and_links_lead_somewhere(name, &page);
    nothing_is_outside(name, &page, text);
    figures_have_words(name, &page);
    no_heading_is_left_out(name, &page);
    html_reads_what_xml_reads(name, &page, text);
    let root = page.root_element();
    assert!(
        root.attribute("lang").is_some_and(|tag| !tag.is_empty()),
        "{name}"
    );
    for tag in ["header", "main", "footer", "title", "h1"] {
        assert_eq!(named(&page, tag).count(), 1, "{name}: {tag}");
    }
}

fn ids_are_unique_and_links_lead_somewhere(name: &str, page: &Xml) {
    let mut ids = BTreeSet::new();
    for node in page.descendants() {
        if let Some(id) = node.attribute("id") {
            assert!(ids.insert(id), "{name}: {id} twice");
        }
    }
    let mut links = 0;
    for node in page.descendants() {
        if let Some(target) = node.attribute("href") {
            let place = target.strip_prefix('#').unwrap_or(target);
            assert!(target.starts_with('#'), "{name}: {target}");
            assert!(ids.contains(place), "{name}: {target}");
            links += 1;
        }
        for attribute in ["aria-labelledby", "for"] {
            let labels = node.attribute(attribute).unwrap_or_default();
            for label in labels.split_whitespace() {
                assert!(ids.contains(label), "{name}: {attribute} {label}");
            }
        }
    }
    assert!(links > 10, "{name}: {links} links");
}

/// Nothing is loaded from anywhere, and nothing could be.
fn nothing_is_outside(name: &str, page: &Xml, text: &str) {
    for node in page.descendants() {
        for attribute in [
            "src", "srcset", "action", "data", "poster", "style", "onclick",
        ] {
            assert_eq!(node.attribute(attribute), None, "{name}: {attribute}");
        }
        for tag in ["link", "img", "iframe", "object", "embed", "base", "form"] {
            assert_ne!(node.tag_name().name(), tag, "{name}");
        }
    }
    assert_eq!(
        text.matches("://").count(),
        1,
        "{name}: the name of XHTML alone"
    );
    let inner = |tag: &'static str| named(page, tag).next().unwrap().text().unwrap().to_owned();
    let [style, script] = [inner("style"), inner("script")];
    assert!(
        !style.contains("url(") && !style.contains("@import"),
        "{name}"
    );
    assert_eq!(named(page, "script").count(), 1, "{name}");
    // Content Security Policy Level 3: a sum is SHA-256 of the text between the tags, in base64.
    let sum = |text: &str| {
        base64::engine::general_purpose::STANDARD.encode(Sha256::digest(text.as_bytes()))
    };
    let policy = named(page, "meta")
        .find(|meta| meta.attribute("http-equiv") == Some("Content-Security-Policy"))
        .and_then(|meta| meta.attribute("content"))
        .unwrap();
    let expected = format!(
        "default-src 'none'; style-src 'sha256-{}'; script-src 'sha256-{}'; base-uri 'none'; form-action 'none'",
        sum(&style),
        sum(&script)
    );
    assert_eq!(policy, expected, "{name}");
}

fn figures_have_words(name: &str, page: &Xml) {
    for svg in named(page, "svg") {
        let is_hidden = svg.attribute("aria-hidden") == Some("true");
        let words = svg.attribute("aria-label").unwrap_or_default();
        assert!(
            is_hidden || (svg.attribute("role") == Some("img") && !words.trim().is_empty()),
            "{name}: {words:?}"
        );
    }
    for figure in named(page, "figure") {
        let mut drawings = figure
            .descendants()
            .filter(|node| node.attribute("role") == Some("img"));
        assert!(drawings.next().is_some(), "{name}");
    }
}

/// Levels of headings go down one by one (WCAG 2.2, technique G141 [from memory]).
fn no_heading_is_left_out(name: &str, page: &Xml) {
    let mut before = 0;
    for node in page.descendants() {
        let level = ["h1", "h2", "h3", "h4"]
            .iter()
            .position(|tag| node.tag_name().name() == *tag);
        if let Some(level) = level {
            assert!(level <= before, "{name}: {:?}", node.text());
            before = level + 1;
        }
    }
}

/// Where XML and HTML differ nothing is written: an empty element that HTML does not know as empty, and
/// marks in style and script that XML would read as markup.
fn html_reads_what_xml_reads(name: &str, page: &Xml, text: &str) {
    let void = ["br", "input", "meta", "path", "rect", "use"];
    for piece in text.split("/>").take(text.matches("/>").count()) {
        let tag = piece.rsplit('<').next().unwrap();
        let tag: String = tag
            .chars()
            .take_while(char::is_ascii_alphanumeric)
            .collect();
        assert!(void.contains(&tag.as_str()), "{name}: <{tag}/>");
    }
    for tag in ["style", "script"] {
        let text = named(page, tag).next().unwrap().text().unwrap();
        assert!(!text.contains(['<', '&']), "{name}: {tag}");
    }
}

#[test]
fn every_example_is_a_page_that_needs_nothing() {
    let folder = folder("web-examples");
    for source in EXAMPLES {
        let path = built(source, &folder, &[]);
        check(source, &fs::read_to_string(path).unwrap());
    }
    let files = fs::read_dir(&folder).unwrap();
    assert_eq!(files.count(), EXAMPLES.len(), "one file a plan");
}

#[test]
fn every_kind_of_block_is_a_page_that_needs_nothing() {
    let fonts = Fonts::shipped().unwrap();
    let document = sample::document(&fonts, 4);
    let text = web::write(&document, "B 2026-03-01");
    check("sample", &text);
    assert_eq!(words::of_page(&read(&text)), words::of_document(&document));
}

#[test]
fn a_page_says_what_its_document_says_in_that_order() {
    for (number, language) in [(0, "en"), (1, "de"), (1, "fr")] {
        let (document, page) = published(&example(number), language);
        let page = read(&page);
        assert_eq!(page.root_element().attribute("lang"), Some(language));
        let [said, meant] = [words::of_page(&page), words::of_document(&document)];
        assert!(meant.len() > 10_000, "{}", meant.len());
        let same = said.chars().zip(meant.chars()).take_while(|(a, b)| a == b);
        let same: String = same.map(|(a, _)| a).collect();
        assert!(
            said == meant,
            "{language}: parts after …{}",
            same.get(same.floor_char_boundary(same.len().saturating_sub(60))..)
                .unwrap()
        );
    }
}

#[test]
fn the_same_plan_gives_the_same_bytes() {
    let folders = [folder("web-once"), folder("web-again")];
    let pages = folders.map(|folder| fs::read(built(EXAMPLES[1], &folder, &[])).unwrap());
    assert!(pages[0] == pages[1]);
}

/// A plan whose author writes what would be markup, script and style in a page.
const HOSTILE: &str = r##"plan "Box</title><script>alert(1)</script>" {
    author "\"><img src=x onerror=alert(2)> & ]]> <!-- "
    about "{long} </style></main><svg onload=alert(3)>"
    revision "A'" on 2026-01-15 "<b>bold</b> &amp; &lt;"
}
material ply is sheet { name "Ply <i>'\"</i>"; thickness 18 mm; stock 2440 mm by 1220 mm }
let long = 400 mm
part board from ply "Board <script>alert(4)</script>" { length long grain; width 200 mm }
place low = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
step "Lay </h3><h1>it" { add low; say "Lay {low} <a href=\"javascript:alert(5)\">down</a>."; time 10 min }
"##;

#[test]
fn what_an_author_writes_stays_text() {
    let (document, page) = published(HOSTILE, "en");
    check("hostile", &page);
    let read = read(&page);
    assert_eq!(words::of_page(&read), words::of_document(&document));
    let title = named(&read, "title").next().unwrap().text().unwrap();
    assert!(
        title.starts_with("Box</title><script>alert(1)</script> – "),
        "{title}"
    );
    let author = read
        .descendants()
        .find(|node| node.attribute("name") == Some("author"))
        .and_then(|node| node.attribute("content"));
    assert_eq!(author, Some("\"><img src=x onerror=alert(2)> & ]]> <!-- "));
    // A reader of HTML, other than one of XML, looks for the ends of these inside them too.
    for end in ["</script", "</style", "</title", "<!--"] {
        let times = page.to_lowercase().matches(end).count();
        assert_eq!(times, usize::from(end != "<!--"), "{end}");
    }
}

/// The names of all that can be ticked.
fn ticks(page: &str) -> Vec<String> {
    let page = read(page);
    let boxes = named(&page, "input").map(|tick| {
        assert_eq!(tick.attribute("type"), Some("checkbox"));
        let labels = ["aria-label", "aria-labelledby"].map(|label| tick.attribute(label));
        assert!(labels.into_iter().flatten().any(|label| !label.is_empty()));
        tick.attribute("data-tick").unwrap().to_owned()
    });
    boxes.collect()
}

#[test]
fn steps_cut_parts_goods_and_checks_are_ticked_by_names_of_their_own() {
    let (document, page) = published(&example(0), "en");
    let names = ticks(&page);
    assert_eq!(names.iter().collect::<BTreeSet<_>>().len(), names.len());
    let beginning = |start: &str| names.iter().filter(|name| name.starts_with(start)).count();
    let tables = read(&page);
    let rows = named(&tables, "tr");
    let cut = rows.filter(|row| {
        row.attribute("id")
            .is_some_and(|id| id.starts_with("part-"))
    });
    assert_eq!(beginning("part-"), cut.count());
    let steps = leafwright::document::outline::headings(&document.blocks);
    let steps = steps.iter().filter(|heading| {
        let number = heading.id.strip_prefix("step-");
        number.is_some_and(|number| number.parse::<u32>().is_ok())
    });
    let steps = steps.count();
    assert!(steps > 8, "{steps}");
    let of_steps = names.iter().filter(|name| {
        let mut parts = name.splitn(3, '-').skip(1);
        let number = parts.next().unwrap_or_default();
        name.starts_with("step-") && number.parse::<u32>().is_ok() && !name.contains("-check-")
    });
    assert_eq!(of_steps.count(), steps);
    for start in ["buy-wood-", "buy-hardware-", "final-checks-check-"] {
        assert!(beginning(start) > 0, "{start}");
    }
}

#[test]
fn a_tick_is_of_one_revision_and_of_what_it_stood_beside() {
    let plan = |mark: &str, long: &str| {
        let text = HOSTILE
            .replace("revision \"A'\"", &format!("revision \"{mark}\""))
            .replace("long = 400 mm", &format!("long = {long}"));
        published(&text, "en").1
    };
    let key = |page: &str| {
        let page = read(page);
        page.root_element()
            .attribute("data-ticks")
            .unwrap()
            .to_owned()
    };
    let part = |page: &str| {
        let names = ticks(page).into_iter();
        names
            .filter(|name| name.starts_with("part-"))
            .collect::<Vec<_>>()
    };
    let [first, longer, second] = [
        plan("A", "400 mm"),
        plan("A", "410 mm"),
        plan("B", "400 mm"),
    ];
    assert_eq!(key(&first), key(&longer));
    assert_ne!(key(&first), key(&second));
    assert_ne!(part(&first), part(&longer), "another size is another part");
    assert_eq!(part(&first), part(&second));
    assert!(key(&first).ends_with("A 2026-01-15"), "{}", key(&first));
}

#[test]
fn changes_are_told_to_those_who_do_not_see_them() {
    let fonts = Fonts::shipped().unwrap();
    let mut document = sample::document(&fonts, 2);
    let last = document.blocks.len() - 2;
    for (place, change) in [
        (last, Change::GoneBelow),
        (3, Change::GoneAbove),
        (1, Change::Other),
    ] {
        let block = document.blocks.remove(place);
        let block = Box::new(block);
        document
            .blocks
            .insert(place, Block::Marked { change, block });
    }
    let text = web::write(&document, "");
    check("changes", &text);
    let page = read(&text);
    let told = page
        .descendants()
        .filter(|node| node.attribute("class") == Some("unseen"));
    let told: Vec<&str> = told.filter_map(|node| node.text()).collect();
    for (words, times) in [("Changed:", 1), ("Something was left out here.", 2)] {
        assert_eq!(
            told.iter().filter(|said| **said == words).count(),
            times,
            "{told:?}"
        );
    }
    assert_eq!(words::of_page(&page), words::of_document(&document));
}

#[test]
fn cells_say_what_they_are_heads_of() {
    let (_, text) = published(&example(0), "en");
    let page = read(&text);
    for cell in named(&page, "th") {
        assert!(
            matches!(cell.attribute("scope"), Some("col" | "row" | "rowgroup")),
            "{:?}",
            cell.text()
        );
        let words: String = cell.descendants().filter_map(|node| node.text()).collect();
        assert!(!words.trim().is_empty(), "a head without words");
    }
    let tables: Vec<Node> = named(&page, "table").collect();
    assert!(tables.len() > 10);
    for table in tables {
        assert!(
            table.attribute("aria-labelledby").is_some() || table.attribute("class") == Some("key")
        );
        let heads = table
            .descendants()
            .filter(|node| node.tag_name().name() == "th");
        assert!(heads.count() > 0);
    }
}

#[test]
fn pages_and_papers_are_written_together_or_apart() {
    let folder = folder("web-together");
    fs::write(folder.join("shelf.wright"), HOSTILE).unwrap();
    let run = |arguments: &[&str]| {
        let output = leafwright(&folder, arguments);
        (output.status.code(), stdout(&output), stderr(&output))
    };
    let (code, said, _) = run(&["build", "shelf.wright", "--html", "out/web"]);
    assert_eq!(
        (code, said.as_str()),
        (Some(0), "Wrote out/web/shelf.html.\n")
    );
    assert!(
        !folder.join("shelf.pdf").exists(),
        "the page alone was asked for"
    );
    let (code, said, _) = run(&["build", "shelf.wright", "--html", "out", "-o", "a.pdf"]);
    assert_eq!(
        (code, said.as_str()),
        (Some(0), "Wrote a.pdf.\nWrote out/shelf.html.\n")
    );
    assert!(folder.join("a.pdf").exists());
    let (_, said, _) = run(&["build", "shelf.wright"]);
    assert_eq!(said, "Wrote shelf.pdf.\n");
    // A source with errors leaves the last page as it was.
    let before = fs::read(folder.join("out/shelf.html")).unwrap();
    fs::write(
        folder.join("shelf.wright"),
        HOSTILE.replace("add low", "add high"),
    )
    .unwrap();
    let (code, said, _) = run(&["build", "shelf.wright", "--html", "out"]);
    assert_eq!((code, said.as_str()), (Some(1), ""));
    assert!(before == fs::read(folder.join("out/shelf.html")).unwrap());
    // A file where the folder should be.
    fs::write(folder.join("shelf.wright"), HOSTILE).unwrap();
    let (code, _, told) = run(&["build", "shelf.wright", "--html", "a.pdf"]);
    assert_eq!(code, Some(3));
    assert!(told.contains("X003"), "{told}");
}
