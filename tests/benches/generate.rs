//! Plans of any size, for the benches and for tests of speed.

use std::fmt::Write as _;

/// What a cabinet of the wall is made of.
const PIECES_OF_A_CABINET: usize = 7;

/// A complete plan of `count` cabinets side by side: each of two sides, bottom, top, two shelves
/// and a back, shelves let into dadoes, the rest screwed, one step a cabinet.
pub(crate) fn wall_of_cabinets(count: usize) -> String {
    let mut text = String::from(HEAD);
    for number in 1..=count {
        cabinet(&mut text, number);
    }
    text
}

/// How many cabinets have `pieces` pieces or a few more.
pub(crate) fn cabinets_for(pieces: usize) -> usize {
    pieces.div_ceil(PIECES_OF_A_CABINET)
}

const HEAD: &str = r#"# A wall of cabinets.
plan "Wall of cabinets" {
    author   "Example Workshop"
    revision "A" on 2026-03-01 "First issue"
    units    mm
    paper    A4
    level    "beginner"
    about    "Cabinets side by side, each as wide as the others, screwed to one another."
}

param wide = 600 mm from 300 mm to 900 mm "Width of a cabinet"
param high = 720 mm from 500 mm to 2000 mm "Height of the wall"
param deep = 300 mm
let   foot = 60 mm
let   rise = (high - foot - 30 mm - ply.thickness) / 3

material ply is sheet {
    name      "Birch plywood 18 mm"
    thickness 18 mm
    stock     2440 mm by 1220 mm price 79.00 EUR
    kerf      3.2 mm
    trim      10 mm
    grain     along length
    density   680 kg/m3
}

material thin is sheet {
    name      "Birch plywood 6 mm"
    thickness 6 mm
    stock     2440 mm by 1220 mm price 34.50 EUR
    kerf      3.2 mm
    trim      10 mm
    grain     none
    density   680 kg/m3
}

hardware screw is wood_screw "Wood screw 4 x 30" { diameter 4 mm; length 30 mm; pack 200 price 9.80 EUR }
hardware long  is wood_screw "Wood screw 4 x 45" { diameter 4 mm; length 45 mm; pack 100 price 6.50 EUR }
hardware strap is wall_fixing "Furniture strap" { use 2 }
"#;

fn cabinet(text: &mut String, number: usize) {
    let cabinet = CABINET.replace('@', &format!("c{number}"));
    let cabinet = cabinet.replace("LEFT", &left_of(number));
    text.push_str(&cabinet);
    if number > 1 {
        let before = number - 1;
        // A write into a string cannot fail.
        let _ = writeln!(
            text,
            "join c{number}_left to c{before}_right by screws using screw {{ count 3; inset 120 mm }}"
        );
    }
    text.push_str(
        &STEP
            .replace('@', &format!("c{number}"))
            .replace("NUMBER", &number.to_string()),
    );
}

/// Where a cabinet begins: at its neighbour, as an author would say it.
fn left_of(number: usize) -> String {
    if number == 1 {
        "0 mm".to_owned()
    } else {
        format!("c{}_right.right", number - 1)
    }
}

const CABINET: &str = r#"
part @_side from ply "Side" {
    length high grain
    width  deep
    round  near.face radius 2 mm
    holes  on face diameter 5 mm depth 10 mm grid 4 by 2 pitch 32 mm by 224 mm at 300 mm from foot, 38 mm from near
}
part @_level from ply "Bottom and top" { length from @_left.right to @_right.left grain; width deep }
part @_shelf from ply "Shelf"          { length from @_left.right to @_right.left grain; width deep - 20 mm }
part @_panel from thin "Back"          { length high; width from @_left.left to @_right.right }

place @_left   = @_side          { length up; width back; left at LEFT; front at 0 mm; bottom at 0 mm }
place @_right  = @_side mirrored { length up; width back; right at @_left.left + wide; front at 0 mm; bottom at 0 mm }
place @_bottom = @_level { length right; width back; left at @_left.right; front at 0 mm; bottom at foot }
place @_top    = @_level { length right; width back; left at @_left.right; front at 0 mm; top at high - 30 mm }
place @_shelves[i in 1..2] = @_shelf { length right; width back; left at @_left.right; back at deep; bottom at foot + i * rise }
place @_back   = @_panel { length up; width right; left at @_left.left; front at @_left.back; bottom at 0 mm }

join @_bottom, @_shelves to @_left, @_right by dado { depth 6 mm; glue }
join @_top to @_left by screws using long { count 3; inset 40 mm; through @_left }
join @_top to @_right by screws using long { count 3; inset 40 mm; through @_right }
join @_back to @_left, @_right by screws using screw { count 4; inset 40 mm; through @_back }
"#;

const STEP: &str = r#"
step "Cabinet NUMBER" {
    add   @_left, @_right, @_bottom, @_top, @_shelves, @_back
    pull  @_left left 150 mm
    pull  @_shelves front
    look  from front right above
    tools "Router with a straight bit", "Clamps"
    say   "Spread glue in the dadoes of {@_left} and {@_right} and slide {@_shelves} in from the front,
           {gap(@_left.front, @_shelves[1].front)} behind the front edge."
    say   "Screw {@_back} on: it keeps the cabinet square."
    check equal diagonal(@_left.front.bottom, @_right.front.top), diagonal(@_right.front.bottom, @_left.front.top) within 1 mm
    time  45 min
}
"#;

/// Uprights and levels of a rack, as many of the one as of the other.
const RACK_SIDE: usize = 6;

/// A plan of about `pieces` pieces with three joints to every piece: racks of crossing uprights and
/// levels, half-lapped at every crossing.
#[allow(dead_code, reason = "each bench takes the plans it needs")]
pub(crate) fn racks_for(pieces: usize) -> String {
    let mut text = String::from(RACKS);
    for number in 1..=pieces.div_ceil(RACK_SIDE * 2) {
        let rack = RACK.replace('@', &format!("r{number}"));
        text.push_str(&rack.replace("LEFT", &format!("{} mm", number * 700)));
    }
    text
}

const RACKS: &str = r#"# Racks of crossing boards.
plan "Racks" {
    author   "Example Workshop"
    revision "A" on 2026-03-01 "First issue"
    level    "beginner"
    about    "Racks for bottles."
}

material ply is sheet {
    name      "Birch plywood 12 mm"
    thickness 12 mm
    stock     2440 mm by 1220 mm price 64.00 EUR
    species   birch_plywood
}

part upright from ply "Upright" { length 600 mm grain; width 200 mm }
part level   from ply "Level"   { length 600 mm grain; width 200 mm }

"#;

const RACK: &str = r#"
place @_uprights[i in 1..6] = upright { length up; width back; left at LEFT + i * 95 mm - 30 mm; front at 0 mm; bottom at 0 mm }
place @_levels[i in 1..6] = level { length right; width back; left at LEFT; front at 0 mm; bottom at i * 95 mm - 30 mm }
join @_levels to @_uprights by half_lap { glue }
load @_levels[3] 8 kg
step "Rack @" { add @_uprights, @_levels; say "Push {@_levels} into {@_uprights}." }
"#;
