//! The findings of this stage.

use crate::finding::finding_pages;

finding_pages! {
    /// A statement or a line breaks off, or goes on with something that its form has no place for. The
    /// finding says what could stand there; LANGUAGE.md shows the form of every line.
    ///
    /// ```wright,bad
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length grain 600 mm; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S001 EXPECTED Error "something else is expected here"
        "a line that can be read in two ways would be built in two ways";

    /// A line outside all blocks begins with a word that begins no statement. Statements begin with plan,
    /// param, let, material, part, place, join, hardware, step or require.
    ///
    /// ```wright,bad
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// prat board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S002 UNKNOWN_STATEMENT Error "unknown statement"
        "what is not understood is not in the plan";

    /// A line in a block begins with a word that begins no line of such a block.
    ///
    /// ```wright,bad
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; widht 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S003 UNKNOWN_LINE Error "unknown line"
        "what is not understood is not in the plan";

    /// A number is followed by a word that is no unit. A unit is one of those in LANGUAGE.md, in small
    /// letters, or a currency in three capitals.
    ///
    /// ```wright,bad
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mmm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S004 UNKNOWN_UNIT Error "unknown unit"
        "a length in a guessed unit is a wrong length";

    /// A text begins with a double quote and no other one ends it. A text may run over several lines; a
    /// quote inside it is written `\"`.
    ///
    /// ```wright,bad
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S005 UNCLOSED_TEXT Error "text is not closed"
        "all that follows would be taken for a part of the text";

    /// A block begins with `{` and its `}` is missing: the source ends, or a statement begins that is not
    /// indented deeper than the one whose block is open.
    ///
    /// ```wright,bad
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S006 UNCLOSED_BLOCK Error "block is not closed"
        "all that follows would be taken for a part of the block";

    /// A `}` stands where no block is open.
    ///
    /// ```wright,bad
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm } }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S007 STRAY_BRACE Error "brace without a block"
        "one brace too many often means that a block ends too early";

    /// A `(` or `[` is not closed before its line ends. In brackets a line goes on before and after an
    /// operator and after a comma.
    ///
    /// ```wright,bad
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width (150 mm + 50 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width (150 mm + 50 mm) }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S008 UNCLOSED_BRACKET Error "bracket is not closed"
        "a missing bracket can change what is multiplied with what";

    /// Numbers are exact: up to twelve digits before the point, nine behind it, six above and below the
    /// bar of a fraction, and no fraction of zero parts.
    ///
    /// ```wright,bad
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 7-7/0 in }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 7-7/8 in }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S009 BAD_NUMBER Error "number that cannot be kept"
        "a figure that is not kept exactly would be cut wrong";

    /// The date of a revision is a day of the calendar, written year, month, day as in ISO 8601-1.
    ///
    /// Source: ISO 8601-1, calendar date in extended format.
    ///
    /// ```wright,bad
    /// plan "Shelf" { revision "A" on 2026-02-30 "First issue" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" { revision "A" on 2026-02-28 "First issue" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S010 BAD_DATE Error "not a date"
        "a reader tells by the date which of two plans is newer";

    /// In a text a backslash stands before a quote (`\"`), before a backslash (`\\`) or before an n for a
    /// new line (`\n`), and nowhere else.
    ///
    /// ```wright,bad
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Ply\wood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Ply\\wood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S011 BAD_ESCAPE Error "backslash without a meaning"
        "the text would print with a letter missing";

    /// In the texts of `say`, `check` and `caution`, braces hold what is to be printed: `{board.length}`. A
    /// slot is not empty and ends in its text; a brace that is to be printed is doubled.
    ///
    /// ```wright,bad
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length long." }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S012 BAD_SLOT Error "slot that prints nothing"
        "a step with a missing figure cannot be followed";

    /// Brackets and blocks nest up to 128 deep, and so does an expression: the levels of a sum are counted
    /// from its first term.
    ///
    /// ```wright,bad
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm * (((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((1))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))) }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm * (((1))) }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S013 TOO_DEEP Error "nested too deep"
        "what no reader can follow, no builder can check";

    /// A source has at most 8 MiB, and reading stops to tell of faults after 500 of them. A source that is
    /// too large does not fit on this page: there is no bad example.
    ///
    /// ```wright,good
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S014 BEYOND_LIMITS Error "source beyond the limits"
        "a file that is not a plan is told from one that is";

    /// A character stands where the language has no use for it; often a word processor put it there.
    /// Texts in double quotes may hold any character.
    ///
    /// ```wright,bad
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm × 1 }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm * 1 }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S015 STRANGE_CHARACTER Error "character without a meaning"
        "typographic quotes, dashes and fractions look like the ones that are read, and are others";

    /// A word stands where the language has a fixed list of words: a kind of material, joint or hardware,
    /// a direction, a word that joins two figures.
    ///
    /// ```wright,bad
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is plank { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S016 UNKNOWN_WORD Error "unknown word"
        "what is not understood is not in the plan";

    /// A line of one kind of block stands in another, or outside all blocks, or a statement stands inside a
    /// block. Often a brace is missing or one too many.
    ///
    /// ```wright,bad
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm; kerf 3 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S017 MISPLACED Error "line in the wrong block"
        "a line counts for the block it stands in";

    /// An outline has a block; it begins with one `start` point and goes on with `line` and `arc`.
    ///
    /// ```wright,bad
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm; outline { line to 600 mm, 0 mm; line to 300 mm, 200 mm } }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" { author "Example Workshop" }
    /// material ply is sheet { name "Plywood"; thickness 18 mm; stock 2440 mm by 1220 mm; kerf 3 mm }
    /// part board from ply "Board" { length 600 mm grain; width 200 mm; outline { start 0 mm, 0 mm; line to 600 mm, 0 mm; line to 600 mm, 200 mm; line to 0 mm, 200 mm } }
    /// place shelf = board { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Look at it" { add shelf; say "One board, {board.length} long." }
    /// ```
    S018 OUTLINE_START Error "outline without its start"
        "a saw needs to know where the line begins";

    /// Files import each other in a circle.
    ///
    /// A library stands by itself or on others; what two of them need of each other belongs into a
    /// third one. In the examples, `#:` begins another file.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// import height from "sizes.wright"
    /// require height > 1 mm
    /// #: sizes.wright
    /// library "Sizes" { version "1"; language 1 }
    /// import seat from "seats.wright"
    /// let height = seat + 20 mm
    /// #: seats.wright
    /// library "Seats" { version "1"; language 1 }
    /// import height from "sizes.wright"
    /// let seat = height - 20 mm
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// import height from "sizes.wright"
    /// require height > 1 mm
    /// #: sizes.wright
    /// library "Sizes" { version "1"; language 1 }
    /// let height = 450 mm
    /// ```
    ///
    /// Source: the language itself.
    S019 IMPORT_LOOP Error "files import each other in a circle" "what both files mean would hang on which is read first";
}
