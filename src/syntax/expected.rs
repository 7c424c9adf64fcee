//! What the grammar looked for, in the author's words.

use super::pairs::{self, Rule};

/// What could have stood where the grammar stopped.
#[derive(Default)]
pub(super) struct Expected {
    /// In words, in the order of the grammar: `a length`, `"from"`.
    phrases: Vec<String>,
    /// Words that could stand there.
    pub(super) words: Vec<String>,
    /// The words come from a list that the grammar fixes: kinds, sides, directions.
    pub(super) fixed_list: bool,
    /// The line could end there.
    pub(super) end: bool,
}

/// Something that is asked for, by its rule; a phrase may be several, set apart by `|`.
struct Thing {
    rule: Rule,
    phrase: &'static str,
    words: &'static [&'static str],
}

const fn thing(rule: Rule, phrase: &'static str) -> Thing {
    list(rule, phrase, &[])
}

const fn list(rule: Rule, phrase: &'static str, words: &'static [&'static str]) -> Thing {
    Thing {
        rule,
        phrase,
        words,
    }
}

static THINGS: &[Thing] = &[
    thing(Rule::a_value, "a value"),
    thing(Rule::a_length, "a length|a name"),
    thing(Rule::a_count, "a number|a name"),
    thing(
        Rule::a_position,
        "a position (a length, or a face such as left.right)",
    ),
    thing(Rule::a_price, "a price"),
    thing(Rule::a_density, "a density"),
    thing(Rule::a_time, "a time"),
    thing(Rule::an_angle, "an angle"),
    thing(Rule::a_mass, "a mass"),
    thing(Rule::an_area, "an area"),
    thing(Rule::slot, "a value"),
    thing(Rule::argument, "a value"),
    thing(Rule::feet_inches, "a value"),
    thing(Rule::fraction, "a value"),
    thing(Rule::measured, "a value"),
    thing(Rule::number, "a value"),
    thing(Rule::group, "a value"),
    thing(Rule::called, "a value"),
    thing(Rule::name, "a name"),
    thing(Rule::new_word, "a word for the side"),
    thing(Rule::material_name, "the name of a material"),
    thing(Rule::part_name, "the name of a part"),
    thing(Rule::placed_name, "the name of a placed part"),
    thing(Rule::hardware_name, "the name of an item of hardware"),
    thing(Rule::library_name, "the name of a library"),
    thing(Rule::species_name, "the name of a species or panel"),
    thing(Rule::code, "the code of a finding, such as H002"),
    thing(Rule::room, "two faces such as left.right and right.left"),
    thing(Rule::text, "a text in double quotes"),
    thing(Rule::date, "a date such as 2026-03-01"),
    thing(Rule::offset, "a distance"),
    thing(Rule::point, "a distance"),
    thing(Rule::comparison, "a comparison (<, <=, =, >= or >)"),
    thing(Rule::equals, "`=`"),
    thing(Rule::comma, "`,`"),
    thing(Rule::colon, "`:`"),
    thing(Rule::dot, "`.`"),
    thing(Rule::dots, "`..`"),
    // Looked for where a value may begin, and nowhere else.
    thing(Rule::parenthesis, "a value"),
    thing(Rule::end_parenthesis, "`)`"),
    thing(Rule::bracket, "`[`"),
    thing(Rule::end_bracket, "`]`"),
    thing(
        Rule::side,
        "a side (foot, head, near, far, face, back or a word of your own)",
    ),
    thing(Rule::sides, "two sides such as near.face"),
    list(Rule::unit_system, "mm or in", &["mm", "in"]),
    list(
        Rule::round_system,
        "inches or metric",
        &["inches", "metric"],
    ),
    list(
        Rule::paper_size,
        "A4, Letter, A3, Tabloid, phone or tablet",
        &["A4", "Letter", "A3", "Tabloid", "phone", "tablet"],
    ),
    list(
        Rule::sheet_size,
        "a sheet (A4 to A0, Letter, Tabloid or ANSI_C to ANSI_E)",
        &[
            "A4", "A3", "A2", "A1", "A0", "Letter", "Tabloid", "ANSI_C", "ANSI_D", "ANSI_E",
        ],
    ),
    list(
        Rule::projection_method,
        "first or third",
        &["first", "third"],
    ),
    list(
        Rule::material_kind,
        "sheet, board, bar or lumber",
        &["sheet", "board", "bar", "lumber"],
    ),
    list(
        Rule::axis,
        "length, width or thickness",
        &["length", "width", "thickness"],
    ),
    list(
        Rule::own_side,
        "a side (foot, head, near, far, face or back)",
        &["foot", "head", "near", "far", "face", "back"],
    ),
    list(
        Rule::face,
        "left, right, front, back, bottom or top",
        &["left", "right", "front", "back", "bottom", "top"],
    ),
    list(
        Rule::direction,
        "a direction (left, right, front, back, up or down)",
        &[
            "left", "right", "front", "back", "up", "down", "top", "bottom", "above", "below",
        ],
    ),
    list(
        Rule::formal_kind,
        "a kind (length, count, angle, mass, material or hardware)",
        &["length", "count", "angle", "mass", "material", "hardware"],
    ),
    list(
        Rule::world_axis,
        "across, deep or high",
        &["across", "deep", "high"],
    ),
    list(Rule::channel_word, "groove or dado", &["groove", "dado"]),
    list(
        Rule::joint_kind,
        "a kind of joint (glue, screws, pocket_screws, dado, groove, rabbet, dowels, loose_tenons, mortise_and_tenon, half_lap, box_joint, mitre, tongue_and_groove, lamination, bolts, nails, hinges, runners, strips, shelf_pins or magnets)",
        &[
            "glue",
            "screws",
            "pocket_screws",
            "dado",
            "groove",
            "rabbet",
            "dowels",
            "loose_tenons",
            "mortise_and_tenon",
            "half_lap",
            "box_joint",
            "mitre",
            "tongue_and_groove",
            "lamination",
            "bolts",
            "nails",
            "hinges",
            "runners",
            "strips",
            "shelf_pins",
            "magnets",
        ],
    ),
    list(
        Rule::joint_measure,
        "depth, width, thickness or play",
        &["depth", "width", "thickness", "play"],
    ),
    list(Rule::way_of_sawing, "flat or quarter", &["flat", "quarter"]),
    list(
        Rule::lumber_measure,
        "m3, m2 or board_foot",
        &["m3", "m2", "board_foot"],
    ),
    list(
        Rule::supply_kind,
        "a kind of supply (glue, oil, varnish, paint or abrasive)",
        &["glue", "oil", "varnish", "paint", "abrasive"],
    ),
    list(Rule::user, "children or food", &["children", "food"]),
    list(
        Rule::hardware_kind,
        "a kind of hardware (wood_screw, pocket_screw, dowel, loose_tenon, nail, bolt, insert, plug, spline, hinge, runner, shelf_pin, magnet, edge_band, wall_fixing or goods)",
        &[
            "wood_screw",
            "pocket_screw",
            "dowel",
            "loose_tenon",
            "nail",
            "bolt",
            "insert",
            "plug",
            "spline",
            "hinge",
            "runner",
            "shelf_pin",
            "magnet",
            "edge_band",
            "wall_fixing",
            "goods",
        ],
    ),
    list(
        Rule::hardware_measure,
        "a measure (diameter, length, width, thickness, head, pilot or clearance)",
        &[
            "diameter",
            "length",
            "width",
            "thickness",
            "head",
            "pilot",
            "clearance",
        ],
    ),
    list(
        Rule::signal_word,
        "danger, warning, caution or notice",
        &["danger", "warning", "caution", "notice"],
    ),
];

/// What rules ask for, in words.
pub(super) fn expected(rules: &[Rule]) -> Expected {
    let mut expected = Expected::default();
    for &rule in rules {
        if rule == Rule::EOI {
            expected.end = true;
        } else if let Some(word) = pairs::keyword(rule) {
            expected.add(&format!("`{word}`"));
            expected.words.push(word);
        } else if let Some(thing) = THINGS.iter().find(|thing| thing.rule == rule) {
            for phrase in thing.phrase.split('|') {
                expected.add(phrase);
            }
            expected.fixed_list |= !thing.words.is_empty();
            expected
                .words
                .extend(thing.words.iter().map(|&word| word.to_owned()));
        }
        // What is left (an operator, a field, an index) could follow any value, and says nothing.
    }
    if expected.phrases.iter().any(|phrase| phrase == "a value") {
        expected.phrases.retain(|phrase| phrase != "a name");
    } else if expected.end || expected.phrases.len() > 1 {
        // An index could follow a name.
        expected.phrases.retain(|phrase| phrase != "`[`");
    }
    expected
}

impl Expected {
    fn add(&mut self, phrase: &str) {
        if !self.phrases.iter().any(|known| known == phrase) {
            self.phrases.push(phrase.to_owned());
        }
    }

    /// True where nothing but the end of the line, or more of a sum, could follow.
    pub(super) fn only_end(&self) -> bool {
        self.phrases.is_empty()
    }

    /// True where any value would do: the form of the line says nothing about it.
    pub(super) fn only_value(&self) -> bool {
        self.phrases.iter().all(|phrase| phrase == "a value") && !self.phrases.is_empty()
    }

    /// "a length, a name or the end of the line".
    pub(super) fn in_words(&self, noun: &str) -> String {
        let end = format!("the end of the {noun}");
        let mut phrases: Vec<&str> = self.phrases.iter().map(String::as_str).collect();
        if self.end || phrases.is_empty() {
            phrases.push(&end);
        }
        one_of(&phrases)
    }
}

/// "a, b or c".
pub(super) fn one_of(phrases: &[&str]) -> String {
    match phrases {
        [] => String::new(),
        [only] => (*only).to_owned(),
        [first @ .., last] => format!("{} or {last}", first.join(", ")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::source::FileId;
    use crate::syntax::layout::Source;

    #[test]
    fn listed_words_are_the_grammar_s() {
        for thing in THINGS {
            for &text in thing.words {
                let source = Source {
                    text,
                    file: FileId(0),
                };
                assert!(
                    pairs::read(source, thing.rule, 0..text.len()).is_ok(),
                    "{text}"
                );
            }
        }
    }
}
