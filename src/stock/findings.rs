//! The T family: what is wrong between parts and the stock they are cut from.

use crate::finding::finding_pages;

finding_pages! {
    /// A part, with the oversize of its blank where it has one, fits on no piece of stock of its material once
    /// the damaged edges are trimmed off. Its grain keeps it from being turned, or it is too large
    /// either way.
    ///
    /// ```wright,bad
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 2600 mm grain
    ///     width 300 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    /// ```wright,good
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 2400 mm grain
    ///     width 300 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    ///
    /// Source: arithmetic on the sizes stated. Edges are trimmed by 5 to 10 mm as a rule
    /// (ref: layout-practice#P16 [P]).
    T001 LARGER_THAN_STOCK Error "part larger than its stock"
        "no saw makes a sheet or a board longer";

    /// Parts are cut from a material of which no size to buy is stated. The cut list is printed; cutting
    /// layouts and the purchase of this material are missing from the plan.
    ///
    /// ```wright,bad
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 300 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    /// ```wright,good
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 300 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    ///
    /// Source: common practice, no source.
    T002 NO_STOCK Warning "no stock stated"
        "the reader is not told what to buy, and nothing can be laid out";

    /// A part is thicker than the sheet, board or bar it is cut from, or than its layers glued up.
    ///
    /// ```wright,bad
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 300 mm
    ///     thickness 20 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    /// ```wright,good
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 300 mm
    ///     layers 2 oversize 5 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    ///
    /// Source: arithmetic on the sizes stated; laminated blanks as in ref: layout-practice#P10 [P].
    T003 THICKER_THAN_STOCK Error "part thicker than its stock"
        "a saw takes wood off and puts none on";

    /// A part is wider than the section of the board it is cut from, or thicker than the round bar.
    ///
    /// ```wright,bad
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material pine is board {
    ///     name "Pine 45 by 95 mm"
    ///     section 45 mm by 95 mm
    ///     stock 2400 mm price 8.50 EUR
    ///     kerf 3 mm
    ///     trim 20 mm
    ///     grain along length
    /// }
    /// part shelf from pine "Shelf" {
    ///     length 900 mm grain
    ///     width 120 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    /// ```wright,good
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material pine is board {
    ///     name "Pine 45 by 95 mm"
    ///     section 45 mm by 95 mm
    ///     stock 2400 mm price 8.50 EUR
    ///     kerf 3 mm
    ///     trim 20 mm
    ///     grain along length
    /// }
    /// part shelf from pine "Shelf" {
    ///     length 900 mm grain
    ///     width 95 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    ///
    /// Source: arithmetic on the sizes stated. Wide solid panels are glued up of boards edge to edge
    /// (ref: layout-practice#P11 [P]).
    T004 WIDER_THAN_BOARD Error "part wider than its board"
        "a board is ripped narrower, never wider";

    /// A part fits on its stock only across the grain. Grain is looked at and leaned on: a shelf cut across it
    /// sags more and splits along a dado.
    ///
    /// ```wright,bad
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 1200 mm grain
    ///     width 2000 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    /// ```wright,good
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain none
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 1200 mm grain
    ///     width 2000 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    ///
    /// Source: ref: layout-practice#P19 [P].
    T005 GRAIN_LEAVES_NO_WAY Error "grain leaves no way to lie"
        "turned, the part would fit, and its grain would run the wrong way";

    /// More than 10,000 pieces are to be cut from one material.
    ///
    /// ```wright,bad
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 300 mm
    ///     extra 10000
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    /// ```wright,good
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 300 mm
    ///     extra 2
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    ///
    /// Source: a limit of this tool.
    T006 TOO_MANY_BLANKS Error "too many pieces to lay out"
        "nobody saws ten thousand pieces from one plan: a count is wrong";

    /// Trimming both sides of a piece of stock takes all of it away, or its size is zero.
    ///
    /// ```wright,bad
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     kerf 3.2 mm
    ///     trim 620 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 300 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    /// ```wright,good
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 300 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    ///
    /// Source: arithmetic on the sizes stated (ref: layout-practice#P16 [P]).
    T007 NOTHING_LEFT Error "nothing left of the stock"
        "stock that is all trim holds no part";

    /// A part is thinner than the sheet it is cut from, or than its layers glued up. Solid wood is planed;
    /// plywood and boards of fibres or particles are not.
    ///
    /// ```wright,bad
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 300 mm
    ///     thickness 15 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    /// ```wright,good
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 300 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    ///
    /// Source: common practice, no source (ref: layout-practice#P20 [P]: thickness as bought).
    T008 THINNER_THAN_SHEET Warning "part thinner than its sheet"
        "sheets are used as thick as they are bought; a planed one loses its face";

    /// The sizes of one material are priced in more than one currency. Two currencies are never added or
    /// compared: the layouts then use as little area as they can, whatever it costs.
    ///
    /// ```wright,bad
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     stock 1220 mm by 1220 mm price 49.00 USD
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 300 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    /// ```wright,good
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     stock 1220 mm by 1220 mm price 45.00 EUR
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 300 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    ///
    /// Source: common sense, no source.
    T009 SEVERAL_CURRENCIES Note "stock priced in several currencies"
        "the cheapest cannot be told, so the least area is bought instead";

    /// The smallest size of a part is no larger than the width of the saw cut.
    ///
    /// ```wright,bad
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 3 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    /// ```wright,good
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 30 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    ///
    /// Source: common practice, no source; usual saw cuts are 0.6 to 3.2 mm
    /// (ref: layout-practice#P15 [P]).
    T010 KERF_WIDER_THAN_PART Warning "saw cut wider than the part"
        "a strip thinner than the blade is grabbed or thrown by it";

    /// A part of lumber is nearly as thick as the lumber is sawn. Both faces of a rough board are planed
    /// before it is used; what is thinner than that stays rough, or hollow in the middle.
    ///
    /// ```wright,bad
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material oak is lumber {
    ///     name "White oak, rough sawn"
    ///     thickness 27 mm
    ///     stock 2500 mm by 180 mm
    ///     price 2400.00 EUR per m3
    ///     species white_oak
    /// }
    /// part shelf from oak "Shelf" {
    ///     length 900 mm grain
    ///     width 120 mm
    ///     thickness 26 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    /// ```wright,good
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material oak is lumber {
    ///     name "White oak, rough sawn"
    ///     thickness 27 mm
    ///     stock 2500 mm by 180 mm
    ///     price 2400.00 EUR per m3
    ///     species white_oak
    /// }
    /// part shelf from oak "Shelf" {
    ///     length 900 mm grain
    ///     width 120 mm
    ///     thickness 22 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    ///
    /// Source: 3 to 6 mm of thickness are planed off rough hardwood (ref: layout-practice#P17 [P]).
    T011 LITTLE_TO_PLANE Warning "little left to plane"
        "a rough or cupped face is no reference for anything";

    /// All sizes of a material are limited by `count`, and together they do not hold all parts. The rest is
    /// missing from the layouts and stays in the cut list.
    ///
    /// ```wright,bad
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 1000 mm by 400 mm price 29.00 EUR count 1
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 300 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place shelf2 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 300 mm }
    /// step "Set it up" {
    ///     add shelf1, shelf2
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    /// ```wright,good
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 1000 mm by 400 mm price 29.00 EUR count 2
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 300 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place shelf2 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 300 mm }
    /// step "Set it up" {
    ///     add shelf1, shelf2
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    ///
    /// Source: arithmetic on the sizes and numbers stated; that all is tried is not claimed.
    T012 MORE_THAN_STOCK Error "more parts than stock"
        "the reader runs out of material with the work half done";

    /// A `continuous` statement names one piece, pieces of several materials, or pieces that are glued up of
    /// layers. Grain runs on only over pieces that are sawn out of one blank.
    ///
    /// ```wright,bad
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 300 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// continuous shelf1 across grain
    /// step "Set it up" {
    ///     add shelf1
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    /// ```wright,good
    /// plan "Shelf" {
    ///     revision "A" on 2026-03-01 "First issue"
    /// }
    /// material ply is sheet {
    ///     name "Birch plywood 18 mm"
    ///     thickness 18 mm
    ///     stock 2440 mm by 1220 mm price 79.00 EUR
    ///     kerf 3.2 mm
    ///     trim 10 mm
    ///     grain along length
    /// }
    /// part shelf from ply "Shelf" {
    ///     length 900 mm grain
    ///     width 300 mm
    /// }
    /// place shelf1 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place shelf2 = shelf { length right; width back; left at 0 mm; front at 0 mm; bottom at 300 mm }
    /// continuous shelf1, shelf2 across grain
    /// step "Set it up" {
    ///     add shelf1, shelf2
    ///     say "Set {shelf1} up."
    /// }
    /// ```
    ///
    /// Source: common practice, no source.
    T013 NOT_OF_ONE_BLANK Error "grain cannot run on"
        "two boards never have the same grain";
}
