//! Tagged PDF: what ISO 14289-1 (PDF/UA-1) asks of a file, as far as a program can look it up there. The
//! clauses are named from memory of the standard; the structure types are those of ISO 32000-1, 14.8.4.

use std::collections::{BTreeMap, BTreeSet};

use leafwright::build::Paper;
use leafwright::document::tree::{Block, Document, Inline, ListMarker};
use leafwright::text::Fonts;
use lopdf::content::Content;
use lopdf::{Dictionary, Object, ObjectId};

use super::{inflated, sample, sample_pdf};

fn tagged() -> lopdf::Document {
    lopdf::Document::load_mem(&sample_pdf(Paper::A4)).unwrap()
}

/// An element as the file has it: its type, its own dictionary, what it holds.
struct Element {
    kind: String,
    dictionary: Dictionary,
    kids: Vec<Kid>,
}

enum Kid {
    Element(Element),
    /// Content by its page and its number there.
    Content(ObjectId, i64),
    Annotation(ObjectId),
}

fn element(file: &lopdf::Document, object: &Object) -> Element {
    let dictionary = file.dereference(object).unwrap().1.as_dict().unwrap();
    let page = dictionary.get(b"Pg").and_then(Object::as_reference);
    let held = file.dereference(dictionary.get(b"K").unwrap()).unwrap().1;
    let kid = |kid: &Object| {
        if let Object::Integer(number) = kid {
            return Kid::Content(page.as_ref().copied().unwrap(), *number);
        }
        let told = file.dereference(kid).unwrap().1.as_dict().unwrap();
        match told.get(b"Type").unwrap().as_name().unwrap() {
            b"MCR" => Kid::Content(
                told.get(b"Pg").unwrap().as_reference().unwrap(),
                told.get(b"MCID").unwrap().as_i64().unwrap(),
            ),
            b"OBJR" => Kid::Annotation(told.get(b"Obj").unwrap().as_reference().unwrap()),
            _ => Kid::Element(element(file, kid)),
        }
    };
    let kind = dictionary.get(b"S").unwrap().as_name().unwrap();
    Element {
        kind: String::from_utf8(kind.to_vec()).unwrap(),
        kids: held.as_array().unwrap().iter().map(kid).collect(),
        dictionary: dictionary.clone(),
    }
}

fn root(file: &lopdf::Document) -> Element {
    let tree = file.catalog().unwrap().get(b"StructTreeRoot").unwrap();
    let tree = file.dereference(tree).unwrap().1.as_dict().unwrap();
    let top = tree.get(b"K").unwrap().as_array().unwrap();
    assert_eq!(top.len(), 1);
    element(file, &top[0])
}

impl Element {
    fn each<'e>(&'e self, see: &mut dyn FnMut(&'e Self, &[&'e str]), above: &mut Vec<&'e str>) {
        see(self, above);
        above.push(&self.kind);
        for kid in &self.kids {
            if let Kid::Element(kid) = kid {
                kid.each(see, above);
            }
        }
        above.pop();
    }

    fn all(&self) -> Vec<(&Self, Vec<&str>)> {
        let mut found = Vec::new();
        self.each(
            &mut |one, above| found.push((one, above.to_vec())),
            &mut Vec::new(),
        );
        found
    }
}

/// The marked stretches of a page: number, and the text shown in it.
fn stretches(file: &lopdf::Document, page: ObjectId) -> BTreeMap<i64, String> {
    let content = Content::decode(&file.get_page_content(page)).unwrap();
    let maps = maps(file, page);
    let mut found = BTreeMap::new();
    let mut within: Option<Option<i64>> = None;
    let mut font = Vec::new();
    for operation in content.operations {
        let shown = match operation.operator.as_str() {
            "BMC" => {
                assert!(
                    within.replace(None).is_none(),
                    "marked content is not nested"
                );
                assert_eq!(operation.operands[0].as_name().unwrap(), b"Artifact");
                continue;
            }
            "BDC" => {
                let number = operation.operands[1].as_dict().unwrap();
                let number = number.get(b"MCID").unwrap().as_i64().unwrap();
                assert!(within.replace(Some(number)).is_none());
                assert!(found.insert(number, String::new()).is_none());
                continue;
            }
            "EMC" => {
                assert!(within.take().is_some());
                continue;
            }
            "Tf" => {
                font = operation.operands[0].as_name().unwrap().to_vec();
                continue;
            }
            "Tj" | "TJ" => codes(&operation.operands),
            "S" | "f*" | "B*" | "f" | "B" => Vec::new(),
            _ => continue,
        };
        // 14289-1, 7.1: everything that is drawn is marked.
        let owner = within.unwrap();
        if let Some(text) = owner.and_then(|number| found.get_mut(&number)) {
            text.extend(shown.iter().map(|code| maps[&font][code].as_str()));
        }
    }
    assert!(within.is_none());
    found
}

fn codes(operands: &[Object]) -> Vec<u16> {
    let mut found = Vec::new();
    for operand in operands {
        if let Object::String(bytes, _) = operand {
            let pairs = bytes.chunks(2);
            found.extend(pairs.map(|pair| u16::from_be_bytes([pair[0], pair[1]])));
        } else if let Object::Array(inner) = operand {
            found.extend(codes(inner));
        }
    }
    found
}

/// By font, the text that each code stands for (ISO 32000-1, 9.10.3).
fn maps(file: &lopdf::Document, page: ObjectId) -> BTreeMap<Vec<u8>, BTreeMap<u16, String>> {
    let fonts = file.get_page_fonts(page).unwrap();
    let map = |font: &Dictionary| {
        let stream = font.get(b"ToUnicode").unwrap().as_reference().unwrap();
        let stream = file.get_object(stream).unwrap().as_stream().unwrap();
        let text = String::from_utf8(inflated(stream)).unwrap();
        let pairs = text.lines().filter_map(|line| {
            let (code, units) = line
                .strip_prefix('<')?
                .strip_suffix('>')?
                .split_once("> <")?;
            let units: Vec<u16> = (0..units.len() / 4)
                .map(|at| u16::from_str_radix(&units[at * 4..at * 4 + 4], 16).unwrap())
                .collect();
            let code = u16::from_str_radix(code, 16).ok()?;
            Some((code, String::from_utf16(&units).unwrap()))
        });
        pairs.collect()
    };
    fonts
        .into_iter()
        .map(|(name, font)| (name, map(font)))
        .collect()
}

#[test]
fn all_content_is_owned_once_and_leads_back_to_its_owner() {
    let file = tagged();
    let top = root(&file);
    let tree = file.catalog().unwrap().get(b"StructTreeRoot").unwrap();
    let tree = file.dereference(tree).unwrap().1.as_dict().unwrap();
    let parents = tree.get(b"ParentTree").unwrap();
    let parents = file.dereference(parents).unwrap().1.as_dict().unwrap();
    let numbers = parents.get(b"Nums").unwrap().as_array().unwrap();
    let parent = |key: i64| {
        let at = numbers
            .iter()
            .step_by(2)
            .position(|n| n.as_i64().unwrap() == key);
        file.dereference(&numbers[at.unwrap() * 2 + 1]).unwrap().1
    };
    let mut owned: BTreeMap<(ObjectId, i64), Dictionary> = BTreeMap::new();
    for (one, _) in top.all() {
        for kid in &one.kids {
            match kid {
                Kid::Element(_) => {}
                Kid::Content(page, number) => {
                    let before = owned.insert((*page, *number), one.dictionary.clone());
                    assert!(before.is_none());
                }
                Kid::Annotation(annotation) => {
                    let annotation = file.get_dictionary(*annotation).unwrap();
                    let key = annotation.get(b"StructParent").unwrap().as_i64().unwrap();
                    assert_eq!(parent(key).as_dict().unwrap(), &one.dictionary);
                    assert_eq!(one.kind, "Link");
                    // 14289-1, 7.18.5: a link says where it leads; so does one in a figure, without words.
                    let told = annotation.get(b"Contents").unwrap();
                    let has_words = one
                        .kids
                        .iter()
                        .any(|kid| matches!(kid, Kid::Content(..) | Kid::Element(_)));
                    assert!(has_words || one.dictionary.get(b"Alt").unwrap() == told);
                }
            }
        }
    }
    for page in file.page_iter() {
        let dictionary = file.get_dictionary(page).unwrap();
        assert_eq!(dictionary.get(b"Tabs").unwrap().as_name().unwrap(), b"S");
        let key = dictionary.get(b"StructParents").unwrap().as_i64().unwrap();
        let back = parent(key).as_array().unwrap();
        let stretches = stretches(&file, page);
        assert_eq!(stretches.len(), back.len());
        for (number, owner) in stretches.keys().zip(back) {
            let owner = file.dereference(owner).unwrap().1.as_dict().unwrap();
            assert_eq!(owned.remove(&(page, *number)).as_ref(), Some(owner));
        }
    }
    assert!(owned.is_empty());
}

#[test]
fn elements_stand_where_the_standard_lets_them() {
    let file = tagged();
    let top = root(&file);
    assert_eq!(top.kind, "Document");
    let mut kinds = BTreeSet::new();
    for (one, above) in top.all() {
        kinds.insert(one.kind.clone());
        let within = above.last().copied().unwrap_or("");
        let allowed: &[&str] = match one.kind.as_str() {
            "LI" => &["L"],
            "Lbl" | "LBody" => &["LI"],
            "THead" | "TBody" => &["Table"],
            "TR" => &["THead", "TBody"],
            "TH" | "TD" => &["TR"],
            "TOCI" => &["TOC"],
            _ => &[],
        };
        assert!(
            allowed.is_empty() || allowed.contains(&within),
            "{} in {within}",
            one.kind
        );
        let told = |key: &[u8]| {
            let attributes = one.dictionary.get(b"A").and_then(Object::as_dict);
            attributes.is_ok_and(|attributes| attributes.has(key))
        };
        match one.kind.as_str() {
            "TH" => assert!(told(b"Scope")),
            "L" => assert!(told(b"ListNumbering")),
            "Figure" => {
                assert!(told(b"BBox"));
                let words = one.dictionary.get(b"Alt").unwrap().as_str().unwrap();
                assert!(!words.is_empty());
            }
            _ => {}
        }
    }
    for kind in [
        "H1", "H2", "P", "L", "Table", "TH", "TD", "Figure", "TOC", "Link",
    ] {
        assert!(kinds.contains(kind), "{kind}");
    }
    // 14289-1, 7.4.2: no level of heading is left out.
    let headings = top.all();
    let levels = headings
        .iter()
        .filter_map(|(one, _)| one.kind.strip_prefix('H'));
    let levels: Vec<u32> = levels.filter_map(|level| level.parse().ok()).collect();
    assert_eq!(levels[0], 1);
    assert!(
        levels.windows(2).all(|pair| pair[1] <= pair[0] + 1),
        "{levels:?}"
    );
}

#[test]
fn the_file_says_that_it_is_tagged() {
    let file = tagged();
    let catalog = file.catalog().unwrap();
    let mark = catalog.get(b"MarkInfo").unwrap().as_dict().unwrap();
    assert!(mark.get(b"Marked").unwrap().as_bool().unwrap());
    assert!(catalog.has(b"Lang"));
    let packet = catalog.get(b"Metadata").unwrap().as_reference().unwrap();
    let packet = file.get_object(packet).unwrap().as_stream().unwrap();
    let packet = String::from_utf8(packet.content.clone()).unwrap();
    assert!(packet.contains("<pdfuaid:part>1</pdfuaid:part>"));
}

/// Letters and figures alone: where lines break, and how labels are set, is for the page to say.
fn bare(text: &str) -> String {
    let kept = |c: &char| c.is_alphanumeric();
    text.chars().filter(kept).collect::<String>().to_lowercase()
}

fn words(document: &Document, blocks: &[Block], told: &mut String) {
    let plain = |text: &[Inline], told: &mut String| inline(text, told);
    for block in blocks {
        match block {
            Block::Heading { text, .. } | Block::Paragraph { text, .. } => plain(text, told),
            Block::List { marker, items, .. } => {
                for (number, item) in items.iter().enumerate() {
                    if *marker == ListMarker::Number {
                        told.push_str(&(number + 1).to_string());
                    }
                    words(document, item, told);
                }
            }
            Block::Table(table) => {
                for row in table.head.iter().chain(table.groups.iter().flatten()) {
                    row.cells.iter().for_each(|cell| plain(&cell.text, told));
                }
            }
            Block::Figure { name, caption, .. } => {
                figure(document, name, told);
                plain(caption, told);
            }
            Block::Legend { entries } => {
                for (name, text) in entries {
                    figure(document, name, told);
                    plain(text, told);
                }
            }
            Block::Beside { figures, blocks } => {
                figures.iter().for_each(|name| figure(document, name, told));
                words(document, blocks, told);
            }
            Block::Framed { class, blocks } => {
                let own = matches!(
                    blocks.first(),
                    Some(Block::Paragraph { class, .. }) if class == "signal"
                );
                if !own {
                    let word = [("word", class.as_str().into())];
                    told.push_str(&match class.as_str() {
                        "info" => document.words.word("page-info", &[]),
                        "again" => String::new(),
                        _ => document.words.word("signal", &word),
                    });
                }
                words(document, blocks, told);
            }
            Block::Together { blocks } => words(document, blocks, told),
            Block::Marked { block, .. } => words(document, std::slice::from_ref(block), told),
            Block::Sheet { figure: name, .. } => figure(document, name, told),
            // Made by the pages.
            Block::Contents | Block::ScaleCheck | Block::PageBreak => told.push('\u{1}'),
        }
    }
}

fn figure(document: &Document, name: &str, told: &mut String) {
    for mark in &document.figures[name].marks {
        if let leafwright::display::Mark::Text(run) = mark {
            told.extend(run.glyphs.iter().map(|glyph| glyph.text.as_str()));
        }
    }
}

fn inline(text: &[Inline], told: &mut String) {
    for piece in text {
        match piece {
            Inline::Text(text) => told.push_str(text),
            Inline::Strong(text)
            | Inline::Emphasis(text)
            | Inline::Link { text, .. }
            | Inline::Styled { text, .. } => inline(text, told),
            Inline::Break => {}
        }
    }
}

fn read(one: &Element, pages: &BTreeMap<ObjectId, BTreeMap<i64, String>>, told: &mut String) {
    if one.kind == "TOC" {
        return;
    }
    for kid in &one.kids {
        match kid {
            Kid::Element(kid) => read(kid, pages, told),
            Kid::Content(page, number) => told.push_str(&pages[page][number]),
            Kid::Annotation(_) => {}
        }
    }
}

/// The file read by its tags says what the document says, in the same order.
#[test]
fn read_by_its_tags_the_file_says_what_the_document_says() {
    let file = tagged();
    let pages = file.page_iter().map(|page| (page, stretches(&file, page)));
    let mut heard = String::new();
    read(&root(&file), &pages.collect(), &mut heard);
    let fonts = Fonts::shipped().unwrap();
    let document = sample::document(&fonts, 4);
    let mut said = String::new();
    words(&document, &document.blocks, &mut said);
    let heard = bare(&heard);
    let mut rest = heard.as_str();
    for stretch in said.split('\u{1}').map(bare) {
        let at = rest.find(&stretch);
        let at = at.unwrap_or_else(|| panic!("{stretch}\nis not in\n{rest}"));
        rest = &rest[at + stretch.len()..];
    }
    assert_eq!(rest, "");
}
