//! The reading as a whole: forms, trees, the grammar's own word for a whole file, and texts that
//! nobody would write.

use proptest::prelude::*;

use super::layout::Source;
use super::pairs::{self, Rule};
use super::tree::*;
use super::words::{BlockKind, Opening};
use super::{findings, parse, parse_expression};
use crate::finding::Findings;
use crate::finding::catalogue::example;
use crate::finding::json::json;
use crate::finding::print::{Colour, print};
use crate::source::{FileId, Sources};

/// Every statement and line once.
fn one_of_each() -> String {
    let mut text = String::new();
    // A choice is written in the option.
    for opening in Opening::ALL.into_iter().filter(|it| *it != Opening::Choice) {
        let (head, block) = opening
            .form()
            .split_once('{')
            .unwrap_or((opening.form(), ""));
        text.push_str(head);
        if !block.is_empty() {
            text.push_str("{\n");
            for (_, form) in opening.block().map_or(&[][..], BlockKind::lines) {
                text.push_str("    ");
                match form.split_once('…') {
                    Some((head, _)) => {
                        text.push_str(head);
                        let outline = BlockKind::Outline.lines().iter();
                        for (_, line) in outline.filter(|_| head.starts_with("outline")) {
                            text.push_str(&format!("\n        {line}"));
                        }
                        text.push_str("\n    }");
                    }
                    None => text.push_str(form),
                }
                text.push('\n');
            }
            text.push('}');
        }
        text.push('\n');
    }
    text
}

fn read(text: &str) -> (Tree, Vec<&'static str>) {
    let (sources, file) = Sources::single("a.wright", text);
    let outcome = parse(&sources, file);
    let codes = outcome.findings.iter().map(|f| f.page.code).collect();
    (outcome.value, codes)
}

/// Whether the grammar's rule for a whole file takes a text.
fn is_file(text: &str) -> bool {
    let source = Source {
        text,
        file: FileId(0),
    };
    pairs::read(source, Rule::file, 0..text.len()).is_ok()
}

fn clean(text: &str) -> Tree {
    let (sources, file) = Sources::single("a.wright", text);
    let outcome = parse(&sources, file);
    let report = print(&outcome.findings, &sources, Colour::Plain);
    assert!(report.is_empty(), "{text}\n{report}");
    assert!(is_file(text), "{text}");
    outcome.value
}

fn expression(text: &str) -> Result<Expr, Findings> {
    let (sources, file) = Sources::single("--set", text);
    parse_expression(&sources, file)
}

/// The expression with a parenthesis around everything.
fn shown(expr: &Expr) -> String {
    match &expr.kind {
        ExprKind::Number(number) => number.to_string(),
        ExprKind::Quantity(quantity) => match quantity.length() {
            Some(length) => format!("{}nm", length.nm()),
            None => format!("{:?}", quantity.amount),
        },
        ExprKind::Name(name) => name.value.clone(),
        ExprKind::Field { of, field } => format!("{}.{}", shown(of), field.value),
        ExprKind::Index { of, index } => format!("{}[{}]", shown(of), shown(index)),
        ExprKind::Call {
            function,
            arguments,
        } => {
            let arguments: Vec<String> = arguments.iter().map(shown).collect();
            format!("{}({})", function.value, arguments.join(", "))
        }
        ExprKind::Negated(of) => format!("(-{})", shown(of)),
        ExprKind::Binary {
            operator,
            left,
            right,
        } => {
            let sign = match operator {
                Operator::Plus => '+',
                Operator::Minus => '-',
                Operator::Times => '*',
                Operator::Over => '/',
            };
            format!("({}{sign}{})", shown(left), shown(right))
        }
    }
}

#[test]
fn every_form_is_read_and_kept() {
    let text = one_of_each();
    let tree = clean(&text);
    assert_eq!(tree.statements.len() + 1, Opening::ALL.len(), "{text}");
    let count = |kind: BlockKind| kind.lines().len();
    for statement in &tree.statements {
        match statement {
            Statement::Plan(plan) => assert_eq!(plan.settings.len(), count(BlockKind::Plan)),
            Statement::Material(it) => assert_eq!(it.settings.len(), count(BlockKind::Material)),
            Statement::Part(part) => assert_eq!(part.lines.len(), count(BlockKind::Part)),
            Statement::Place(place) => assert_eq!(place.lines.len(), count(BlockKind::Place)),
            Statement::Join(join) => assert_eq!(join.settings.len(), count(BlockKind::Join)),
            Statement::Hardware(it) => assert_eq!(it.settings.len(), count(BlockKind::Hardware)),
            Statement::Supply(it) => assert_eq!(it.settings.len(), count(BlockKind::Supply)),
            Statement::Step(step) => assert_eq!(step.lines.len(), count(BlockKind::Step)),
            Statement::Param(param) => assert!(param.range.is_some() && param.about.is_some()),
            Statement::Require(require) => assert!(require.because.is_some()),
            Statement::Load(load) => assert!(load.sag.is_some()),
            Statement::Clearance(clearance) => assert!(clearance.low != clearance.high),
            Statement::Hold(hold) => assert!(hold.clear.is_none()),
            Statement::Continuous(run) => assert!(run.along && run.pieces.len() == 3),
            Statement::Template(it) => assert!(it.side.is_some() && it.sheet.is_some()),
            Statement::Subassembly(it) => {
                assert_eq!(it.statements.len(), count(BlockKind::Subassembly));
                assert_eq!(it.formals.len(), 2);
            }
            Statement::Import(import) => assert_eq!(import.names.len(), 2),
            Statement::Library(it) => assert_eq!(it.settings.len(), count(BlockKind::Library)),
            Statement::Choose(option) => assert_eq!(option.choices.len(), 1),
            Statement::Let(_) => {}
        }
    }
}

#[test]
fn every_word_is_in_the_reference() {
    let reference = include_str!("../../grammar/LANGUAGE.md");
    for (word, _) in BlockKind::ALL.iter().flat_map(|kind| kind.lines()) {
        let told = [" ", "`", "\n", " at"].map(|after| format!("{word}{after}"));
        assert!(told.iter().any(|told| reference.contains(told)), "{word}");
    }
    for unit in super::words::UNITS {
        assert!(reference.contains(&format!("`{unit}`")), "{unit}");
    }
    for opening in Opening::ALL {
        assert!(
            reference.contains(&format!("`{}`", opening.word())),
            "{opening:?}"
        );
    }
}

#[test]
fn nothing_and_comments_are_an_empty_tree() {
    for text in [
        "",
        "\n\n",
        "# only a comment",
        "\u{FEFF}# one\r\n\r\n  # two\n;;",
    ] {
        assert_eq!(clean(text).statements, Vec::new());
    }
}

#[test]
fn operators_bind_as_in_arithmetic() {
    let cases = [
        ("a + b * c - d / e", "((a+(b*c))-(d/e))"),
        (
            "(a - 2 * ply.thickness) / (n + 1)",
            "((a-(2*ply.thickness))/(n+1))",
        ),
        ("a - b - c", "((a-b)-c)"),
        ("a / b * c", "((a/b)*c)"),
        ("-a * -b.c", "((-a)*(-b.c))"),
        ("--a", "(-(-a))"),
        ("shelves[i + 1].top", "shelves[(i+1)].top"),
        ("min(a, max(b, 3 mm)).x", "min(a, max(b, 3000000nm)).x"),
        (
            "gap(shelves[1].top, shelves[2].bottom)",
            "gap(shelves[1].top, shelves[2].bottom)",
        ),
        ("(\n  a\n  + b # why\n  * (c\n  )\n)", "(a+(b*c))"),
        ("a +\n  # why\n  b", "(a+b)"),
    ];
    for (text, tree) in cases {
        assert_eq!(shown(&expression(text).unwrap()), tree, "{text}");
    }
}

#[test]
fn fractions_are_literals_only_before_a_unit_that_has_them() {
    let cases = [
        ("3-1/2 in", "88900000nm"),
        ("3/4 in", "19050000nm"),
        ("1/2 * width", "((1/2)*width)"),
        ("1/2", "(1/2)"),
        ("3 - 1/2 in", "(3-12700000nm)"),
        ("a-1/2 in", "(a-12700000nm)"),
        ("width / 3/4 in", "(width/19050000nm)"),
        ("5 ft 6-1/2 in", "1689100000nm"),
        ("5 ft 6 in + 3 mm", "(1676400000nm+3000000nm)"),
        ("5 ft", "1524000000nm"),
        ("18mm", "18000000nm"),
        ("2.50 cm", "25000000nm"),
        ("3 in", "76200000nm"),
        ("1/2 inner", ""),
    ];
    for (text, tree) in cases {
        let found = expression(text).map_or(String::new(), |expr| shown(&expr));
        assert_eq!(found, tree, "{text}");
    }
}

#[test]
fn an_override_is_one_expression() {
    for text in [
        "",
        "# nothing",
        "1 mm; 2 mm",
        "1 mm\n2 mm",
        "1 mm }",
        "{ }",
        "(1",
        "let a = 1",
    ] {
        let findings = expression(text).unwrap_err();
        assert!(!findings.is_empty(), "{text}");
    }
    assert_eq!(
        shown(&expression("  1000 mm # wide\n").unwrap()),
        "1000000000nm"
    );
}

#[test]
fn spans_are_of_what_is_written() {
    let text = "let größe = (a + 3 mm) * 2\nplace x = y { left at b.right }";
    let (sources, _) = Sources::single("a.wright", text);
    let tree = clean(text);
    let snippet = |span| sources.snippet(span);
    let [Statement::Let(constant), Statement::Place(place)] = tree.statements.as_slice() else {
        panic!("{tree:?}");
    };
    assert_eq!(snippet(constant.span), "let größe = (a + 3 mm) * 2");
    assert_eq!(snippet(constant.name.span), "größe");
    let ExprKind::Binary { left, .. } = &constant.value.kind else {
        panic!("{constant:?}");
    };
    assert_eq!(snippet(left.span), "(a + 3 mm)");
    assert_eq!(snippet(place.span), "place x = y { left at b.right }");
    assert_eq!(snippet(place.lines[0].span), "left at b.right");
    let PlaceLineKind::At { face, position } = &place.lines[0].kind else {
        panic!("{place:?}");
    };
    assert_eq!(
        (snippet(face.span), snippet(position.span)),
        ("left", "b.right")
    );
}

#[test]
fn names_of_one_look_are_one_name() {
    let tree = clean("let gro\u{0308}ße = gr\u{00F6}ße\nlet ширина_2 = πλάτος");
    let [Statement::Let(first), Statement::Let(second)] = tree.statements.as_slice() else {
        panic!("{tree:?}");
    };
    assert_eq!(shown(&first.value), first.name.value);
    assert_eq!(
        (second.name.value.as_str(), shown(&second.value).as_str()),
        ("ширина_2", "πλάτος")
    );
}

#[test]
fn keywords_are_names_where_a_name_is_meant() {
    let tree = clean(
        "param from = to from from to to \"x\"\nlet let = let\npart part from from { length length grain; width grain grain }\n\
         place place = part mirrored { left at left.left }\nstep \"x\" { pull left left; add add }",
    );
    assert_eq!(tree.statements.len(), 5);
}

#[test]
fn texts_fold_lines_and_take_escapes_and_slots() {
    let tree = clean(
        "step \"One\" { say \"Glue  \\\"{a.b}\\\" to\n     {c + 1},\r\n\r\n  not {{d}}.\\n\\\\\"\nsay \"{a}\" }",
    );
    let [Statement::Step(step)] = tree.statements.as_slice() else {
        panic!("{tree:?}");
    };
    let told = |line: &StepLine| {
        let StepLineKind::Say(text) = &line.kind else {
            panic!("{line:?}");
        };
        let pieces = text.pieces.iter().map(|piece| match piece {
            TextPiece::Plain(text) => text.clone(),
            TextPiece::Slot(expr) => format!("<{}>", shown(expr)),
        });
        pieces.collect::<String>()
    };
    let told: Vec<String> = step.lines.iter().map(told).collect();
    assert_eq!(told, ["Glue  \"<a.b>\" to <(c+1)>, not {d}.\n\\", "<a>"]);
}

#[test]
fn a_fault_takes_its_own_line_alone() {
    let (tree, codes) = read(
        "part a from ply {\n    length\n    width 3 mm\n}\nlet x = \npart b ply { length 2 mm }\nplace p = a { left at 3 mm }\n",
    );
    assert_eq!(codes, ["S001", "S001", "S001"]);
    let [Statement::Part(part), Statement::Place(place)] = tree.statements.as_slice() else {
        panic!("{tree:?}");
    };
    assert_eq!((part.lines.len(), place.lines.len()), (1, 1));
}

#[test]
fn statements_end_at_a_line_a_semicolon_or_a_block_s_end() {
    let tree = clean(
        "let a = 1; let b = 2;; place c = d { left at\u{A0}1 mm } step \"e\" {}\r\nlet f =\n3\npart g from h\n\n{\n}",
    );
    assert_eq!(tree.statements.len(), 6);
    let (tree, codes) = read("let a = 1 let b = 2\nlet c = 3");
    assert_eq!((tree.statements.len(), codes), (1, vec!["S001"]));
}

#[test]
fn deep_nesting_ends_in_a_finding_at_once() {
    let deep = |open: &str, close: &str, count: usize| {
        format!("let a = {}1{}", open.repeat(count), close.repeat(count))
    };
    for (open, close) in [
        ("(", ")"),
        ("x[", "]"),
        ("f(1, ", ")"),
        ("(-", ")"),
        ("1 + (", ")"),
    ] {
        // As deep as may be, and read in time although each level could be taken two ways.
        let (tree, codes) = read(&deep(open, close, 60));
        assert_eq!((tree.statements.len(), codes), (1, vec![]), "{open}");
        for count in [129, 200_000] {
            let (tree, codes) = read(&deep(open, close, count));
            assert_eq!((tree.statements.len(), codes), (0, vec!["S013"]), "{open}");
        }
    }
    let (_, codes) = read(&deep("", "+1", 100_000));
    assert_eq!(codes, ["S013"]);
    let (_, codes) = read(&"x { ".repeat(100_000));
    assert!(
        codes.contains(&"S013") && codes.len() <= 500,
        "{}",
        codes.len()
    );
    let (_, codes) = read(&"part a from b { outline { ".repeat(50_000));
    assert!(codes.contains(&"S013"));
}

#[test]
fn unclosed_brackets_and_quotes_do_not_add_up() {
    // Each would be looked for to the end of the source, were it not given up at its line's end.
    for piece in [
        "let a = (\n",
        "let a = f(1,\n",
        "plan \"x\n",
        "x[\"{",
        "say \"a\n\"b",
        "# \"\n(\n",
    ] {
        let (_, codes) = read(&piece.repeat(20_000));
        assert!(codes.len() <= 500, "{piece}");
    }
}

#[test]
fn pages_agree_with_the_grammar_of_a_whole_file() {
    for page in findings::PAGES {
        let good = example(page, "wright,good").unwrap();
        assert!(is_file(&good), "{}", page.code);
    }
}

/// Pieces that sources are made of, to be put together in every order.
const PIECES: &[&str] = &[
    "plan",
    "param",
    "let",
    "material",
    "part",
    "place",
    "join",
    "step",
    "require",
    "length",
    "width",
    "from",
    "to",
    "by",
    "at",
    "is",
    "sheet",
    "dado",
    "say",
    "add",
    "x",
    "y",
    "18 mm",
    "3-1/2 in",
    "3",
    "\"text\"",
    "\"two\n lines\"",
    "\"{x}\"",
    "(",
    ")",
    "[",
    "]",
    "{",
    "}",
    ",",
    ".",
    "..",
    "+",
    "-",
    "*",
    "/",
    "=",
    "<",
    ";",
    "\n",
    "\n    ",
    "#",
    "# no\n",
    "\"",
    "\\",
    "é",
    "²",
    "“",
    "\u{A0}",
    "\r\n",
    "outline",
    "start",
    "line",
    "left",
    "grain",
    "kerf",
    "\u{0}",
];

fn pieces() -> impl Strategy<Value = String> {
    let piece = prop::sample::select(PIECES);
    prop::collection::vec((piece, any::<bool>()), 0..40).prop_map(|pieces| {
        let mut text = String::new();
        for (piece, blank) in pieces {
            text.push_str(piece);
            text.push_str(if blank { " " } else { "" });
        }
        text
    })
}

/// A sound source in which stretches are taken out, doubled or replaced.
fn damaged() -> impl Strategy<Value = String> {
    let change = (
        any::<prop::sample::Index>(),
        0..12_usize,
        prop::sample::select(PIECES),
        0..3_u8,
    );
    prop::collection::vec(change, 1..4).prop_map(|changes| {
        let mut text = one_of_each();
        for (place, length, piece, what) in changes {
            let near = |text: &str, mut at: usize| {
                at = at.min(text.len());
                while !text.is_char_boundary(at) {
                    at -= 1;
                }
                at
            };
            let start = near(&text, place.index(text.len() + 1));
            let end = near(&text, start + length).max(start);
            match what {
                0 => text.replace_range(start..end, ""),
                1 => text.replace_range(start..end, piece),
                _ => text.insert_str(start, piece),
            }
        }
        text
    })
}

/// True where `place` is inside a text of a source that is a file.
fn is_in_text(source: &str, place: usize) -> bool {
    let (mut in_text, mut in_comment, mut escaped) = (false, false, false);
    for byte in source.bytes().take(place) {
        match byte {
            _ if escaped => escaped = false,
            b'\\' if in_text => escaped = true,
            b'"' if !in_comment => in_text = !in_text,
            b'#' if !in_text => in_comment = true,
            b'\n' => in_comment = false,
            _ => {}
        }
    }
    in_text
}

/// What holds for every text: it is read, its findings point into it and can be printed, and a
/// text without findings is what the grammar calls a file.
fn holds_for(text: &str) -> Result<(), TestCaseError> {
    let (sources, file) = Sources::single("a.wright", text);
    let outcome = parse(&sources, file);
    for finding in outcome.findings.iter() {
        let related = finding.related.iter().map(|related| related.span);
        let edits = finding.remedies.iter().filter_map(|r| r.edit.as_ref());
        for span in related
            .chain(edits.map(|(span, _)| *span))
            .chain([finding.span])
        {
            prop_assert!(
                text.get(span.range()).is_some(),
                "{:?} in {:?}",
                finding,
                text
            );
        }
        prop_assert!(!finding.message.contains("kw_"), "{:?}", finding);
    }
    let report = print(&outcome.findings, &sources, Colour::Plain);
    prop_assert_eq!(report.is_empty(), outcome.findings.is_empty());
    prop_assert!(json(&outcome.findings, &sources).ends_with("]\n"));
    if outcome.findings.is_empty() {
        prop_assert!(is_file(text), "no file and no finding: {:?}", text);
    } else if is_file(text) {
        // The grammar of a whole file looks neither into numbers, dates and depth nor into texts.
        let seen = outcome.findings.iter().filter(|finding| {
            let inner = ["S009", "S010", "S013"].contains(&finding.page.code);
            !inner && !is_in_text(text, finding.span.start as usize)
        });
        prop_assert_eq!(
            seen.count(),
            0,
            "a file with findings: {:?}\n{}",
            text,
            report
        );
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn any_characters_are_read_without_a_panic(text in "\\PC{0,80}") {
        holds_for(&text)?;
    }

    #[test]
    fn any_pieces_are_read_without_a_panic(text in pieces()) {
        holds_for(&text)?;
    }

    #[test]
    fn a_damaged_source_agrees_with_the_grammar_of_a_whole_file(text in damaged()) {
        holds_for(&text)?;
    }

    #[test]
    fn any_bytes_are_read_without_a_panic(bytes in prop::collection::vec(any::<u8>(), 0..200)) {
        holds_for(&String::from_utf8_lossy(&bytes))?;
    }
}
