//! What can be wrong with names, kinds and values.

use crate::finding::finding_pages;

finding_pages! {
    /// There is no plan block, or there is more than one.
    ///
    /// The plan block names the plan and its revision. A printed plan without them cannot be told
    /// from the next one.
    ///
    /// ```wright,bad
    /// let width = 900 mm
    /// ```
    /// ```wright,good
    /// plan "Stool" {
    ///     revision "A" on 2026-01-15 "First issue"
    /// }
    /// let width = 900 mm
    /// ```
    ///
    /// Source: ISO 7200 asks for title and revision on every drawing (ref: units-and-paper,
    /// "ISO 7200 title-block fields" [V]).
    N001 PLAN_BLOCK Error "no plan block, or two" "a printed sheet without title and revision cannot be told from the next one";

    /// A name is used that nothing declares.
    ///
    /// Names are declared by `param`, `let`, `material`, `part`, `place` and `hardware`, anywhere
    /// in the file. The finding offers the nearest name there is.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// let half = widht / 2
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// let width = 900 mm
    /// let half = width / 2
    /// ```
    ///
    /// Source: the language itself.
    N002 UNKNOWN_NAME Error "unknown name" "a size that hangs on nothing cannot be cut";

    /// One name is declared twice.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// let width = 900 mm
    /// let width = 800 mm
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// let width = 900 mm
    /// let inner_width = 800 mm
    /// ```
    ///
    /// Source: the language itself.
    N003 NAME_TWICE Error "name declared twice" "two things of one name are mixed up at the bench";

    /// A value is of another kind than its place needs: a plain number where a length must stand,
    /// a length added to an area, a part where a material is asked for.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// let width = 900 mm
    /// let wrong = width + 3
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// let width = 900 mm
    /// let right = width + 3 mm
    /// ```
    ///
    /// Source: the language itself; a measure without its unit is the oldest mistake in a shop
    /// that uses both systems (common practice, no source).
    N004 WRONG_KIND Error "wrong kind of value" "a figure without its unit is cut in the wrong one";

    /// Values hang on each other in a circle.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// let width = depth + 10 mm
    /// let depth = width - 10 mm
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// let width = 400 mm
    /// let depth = width - 10 mm
    /// ```
    ///
    /// Source: the language itself.
    N005 LOOP Error "values hang on each other in a circle" "no size of the circle can be known";

    /// A chain of values, each hanging on the next, is longer than the tool follows (300).
    ///
    /// Values are followed in the order they are written, so a chain that is declared before it
    /// is used can have any length.
    ///
    /// Source: the language itself.
    N006 LONG_CHAIN Error "chain of values too long" "a plan whose sizes hang on hundreds of others cannot be checked by its reader";

    /// Something is asked of a thing that does not have it.
    ///
    /// A placed part has six faces and three sizes, a part has three sizes, a material has a
    /// thickness.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// let depth = ply.depth
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// let depth = ply.thickness
    /// ```
    ///
    /// Source: the language itself.
    N007 UNKNOWN_FIELD Error "no such property" "a size that hangs on nothing cannot be cut";

    /// A function that is not there, or is given the wrong number of values.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// let width = smallest(300 mm, 400 mm)
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// let width = min(300 mm, 400 mm)
    /// ```
    ///
    /// Source: the language itself.
    N008 UNKNOWN_FUNCTION Error "no such function" "a size that hangs on nothing cannot be cut";

    /// A calculation has no result: a division by zero, the root of something negative, a sum of
    /// two currencies, a number too large to keep exactly.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// let share = 900 mm / 0
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// let share = 900 mm / 3
    /// ```
    ///
    /// Source: the language itself.
    N009 NO_RESULT Error "calculation without a result" "a size that has no value cannot be cut";

    /// A param's value lies outside the range that the param itself states.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// param legs = 7 from 3 to 6
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// param legs = 4 from 3 to 6
    /// ```
    ///
    /// Source: the language itself.
    N010 OUTSIDE_RANGE Error "value outside its range" "the author checked the build inside the range only";

    /// A size is zero or negative, or a count is below one, or longer than one kilometre.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part seat from ply { length 300 mm - 300 mm; width 300 mm }
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part seat from ply { length 300 mm; width 300 mm }
    /// ```
    ///
    /// Source: the language itself.
    N011 NOT_POSITIVE Error "size or count out of bounds" "no one can cut a part of no size";

    /// A part, a material or an item of hardware lacks something it cannot do without.
    ///
    /// A part needs a length and a width (a board gives its own width and thickness, a sheet its
    /// thickness); a material needs its thickness or section and at least one piece of stock.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part seat from ply { length 300 mm }
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part seat from ply { length 300 mm; width 300 mm }
    /// ```
    ///
    /// Source: the language itself.
    N012 LACKING Error "something is lacking" "the reader would have to guess it";

    /// The same thing is said twice in one block, or in two ways at once.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part seat from ply { length 300 mm; length 320 mm; width 300 mm }
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part seat from ply { length 320 mm; width 300 mm }
    /// ```
    ///
    /// Source: the language itself.
    N013 SAID_TWICE Error "said twice" "of two figures for one size, the reader takes the wrong one";

    /// A word does not fit its place: a side that a part does not have, a direction that is none,
    /// a kind of joint that is not known.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part seat from ply { length 300 mm; width 300 mm; round foot.head radius 3 mm }
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part seat from ply { length 300 mm; width 300 mm; round foot.face radius 3 mm }
    /// ```
    ///
    /// Source: the language itself.
    N014 WORD_OUT_OF_PLACE Error "word out of place" "a feature on a side that is not there cannot be cut";

    /// A placed part is not located on one of the three world axes.
    ///
    /// Every placed part says once where it is across (`left`, `right` or `centre across`), deep
    /// (`front`, `back` or `centre deep`) and high (`bottom`, `top` or `centre high`).
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part seat from ply { length 300 mm; width 300 mm }
    /// place top = seat { length right; width back; left at 0 mm; front at 0 mm }
    /// step "Place it" { add top; say "Lay it down." }
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part seat from ply { length 300 mm; width 300 mm }
    /// place top = seat { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Place it" { add top; say "Lay it down." }
    /// ```
    ///
    /// Source: the language itself.
    N015 AXIS_MISSING Error "not located on an axis" "a part that could be anywhere is drilled in the wrong place";

    /// A placed part is located twice on one axis.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part seat from ply { length 300 mm; width 300 mm }
    /// place top = seat { length right; width back; left at 0 mm; right at 310 mm; front at 0 mm; bottom at 0 mm }
    /// step "Place it" { add top; say "Lay it down." }
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part seat from ply { length 300 mm; width 300 mm }
    /// place top = seat { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Place it" { add top; say "Lay it down." }
    /// ```
    ///
    /// Source: the language itself.
    N016 AXIS_TWICE Error "located twice on an axis" "two locations agree only until a size changes; then the part is where neither says";

    /// How a placed part lies is not clear: two of its axes must be given, along different world
    /// axes.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part seat from ply { length 300 mm; width 300 mm }
    /// place top = seat { length right; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Place it" { add top; say "Lay it down." }
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part seat from ply { length 300 mm; width 300 mm }
    /// place top = seat { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Place it" { add top; say "Lay it down." }
    /// ```
    ///
    /// Source: the language itself.
    N017 ORIENTATION Error "how it lies is not clear" "a part drawn the wrong way round is built the wrong way round";

    /// A check asks for two measures to be equal that are not equal in the design.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// step "Measure" { say "Measure."; check equal 300 mm, 310 mm within 1 mm }
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// step "Measure" { say "Measure."; check equal 300 mm, 300 mm within 1 mm }
    /// ```
    ///
    /// Source: the language itself.
    N018 CHECK_NEVER_HOLDS Error "a check that can never hold" "the reader looks for a fault in good work";

    /// A sub-assembly is placed inside of itself.
    ///
    /// It would hold one more of itself without end. Two that hold each other are the same fault.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// subassembly box { place inner = box { left at 0 mm; front at 0 mm; bottom at 0 mm } }
    /// place outer = box { left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part lid from ply "Lid" { length 300 mm grain; width 200 mm }
    /// subassembly box { place top = lid { length right; width back; left at 0 mm; front at 0 mm; bottom at 0 mm } }
    /// place outer = box { left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Make it" { add outer; say "Put it down." }
    /// ```
    ///
    /// Source: the language itself.
    N019 SELF_HOLDING Error "a sub-assembly holds itself" "nobody can build a box that holds one more of itself without end";

    /// An option has one choice or none, or not exactly one that is usual.
    ///
    /// A plan is made for a selection. Where nothing is said of an option, its `default` is taken.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// option height "Seat height" {
    ///     choice low  "Low"  { let high = 420 mm }
    ///     choice tall "Tall" { let high = 450 mm }
    /// }
    /// require high > 400 mm
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// option height "Seat height" {
    ///     choice low  "Low"  default { let high = 420 mm }
    ///     choice tall "Tall"         { let high = 450 mm }
    /// }
    /// require high > 400 mm
    /// ```
    ///
    /// Source: the language itself.
    N020 CHOICES Error "an option without its choices" "the reader who says nothing would get a plan by chance";

    /// A file is imported that is no library, or a library holds what only a plan can.
    ///
    /// A library begins with its `library` block and declares what others use: materials, hardware,
    /// supplies, parts, sub-assemblies and `let` values. It places nothing: that is for plans.
    ///
    /// ```wright,bad
    /// library "Timber" { version "1"; language 1 }
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// ```
    ///
    /// Source: the language itself.
    N021 NOT_A_LIBRARY Error "not a library" "what is placed in a library would be placed in every plan that uses it";

    /// A library is written for a newer language than this tool reads.
    ///
    /// In the examples, `#:` begins another file.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// import height from "sizes.wright"
    /// require height > 1 mm
    /// #: sizes.wright
    /// library "Sizes" { version "1"; language 99 }
    /// let height = 450 mm
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
    N022 NEWER_LANGUAGE Error "library for a newer language" "what is not understood would be missing from the build";

    /// Two files give themselves out as one library, in two versions.
    ///
    /// In the examples, `#:` begins another file.
    ///
    /// ```wright,bad
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// import height from "old.wright"
    /// import width from "new.wright"
    /// require height > width
    /// #: old.wright
    /// library "Sizes" { version "1"; language 1 }
    /// let height = 450 mm
    /// #: new.wright
    /// library "Sizes" { version "2"; language 1 }
    /// let width = 300 mm
    /// ```
    /// ```wright,good
    /// plan "Stool" { revision "A" on 2026-01-15 }
    /// import height, width from "new.wright"
    /// require height > width
    /// #: new.wright
    /// library "Sizes" { version "2"; language 1 }
    /// let height = 450 mm
    /// let width = 300 mm
    /// ```
    ///
    /// Source: the language itself.
    N023 TWO_VERSIONS Error "two versions of one library" "one drawer of the piece would be built by the old drawing";
}
