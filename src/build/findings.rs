//! What can be wrong when parts are put together.

use crate::finding::finding_pages;

finding_pages! {
    /// Two parts that a joint brings together do not touch.
    ///
    /// The tool finds where they touch by itself, from their places. The finding says how far
    /// apart they are, or how far one stands in the other.
    ///
    /// ```wright,bad
    /// plan "Shelf" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// hardware screw is wood_screw { diameter 4 mm; length 50 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right + 2 mm; front at 0 mm; bottom at 100 mm }
    /// join low to left by screws using screw
    /// step "Screw" { add left, low; say "Screw it." }
    /// ```
    /// ```wright,good
    /// plan "Shelf" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// hardware screw is wood_screw { diameter 4 mm; length 50 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by screws using screw
    /// step "Screw" { add left, low; say "Screw it." }
    /// ```
    ///
    /// Source: common practice, no source.
    B001 NOT_TOUCHING Error "joined parts do not touch" "glue and screws hold only what is pressed together";

    /// A joint brings a part together with itself, or names no two parts.
    ///
    /// ```wright,bad
    /// plan "Shelf" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// join left to left by glue
    /// step "Glue" { add left; say "Glue it." }
    /// ```
    /// ```wright,good
    /// plan "Shelf" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place second = side { length up; width back; left at left.right; front at 0 mm; bottom at 0 mm }
    /// join second to left by glue
    /// step "Glue" { add left, second; say "Glue it." }
    /// ```
    ///
    /// Source: the language itself.
    B002 JOINED_TO_ITSELF Error "joined to itself" "a joint needs two pieces";

    /// A joint lacks the hardware it is made with, or names hardware of another kind.
    ///
    /// Screws need a `wood_screw`, pocket screws a `pocket_screw`, dowels a `dowel`, loose tenons
    /// a `loose_tenon`; the others need none.
    ///
    /// ```wright,bad
    /// plan "Shelf" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place second = side { length up; width back; left at left.right; front at 0 mm; bottom at 0 mm }
    /// join second to left by screws
    /// step "Screw" { add left, second; say "Screw it." }
    /// ```
    /// ```wright,good
    /// plan "Shelf" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// hardware screw is wood_screw { diameter 4 mm; length 30 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place second = side { length up; width back; left at left.right; front at 0 mm; bottom at 0 mm }
    /// join second to left by screws using screw
    /// step "Screw" { add left, second; say "Screw it." }
    /// ```
    ///
    /// Source: the language itself.
    B003 JOINT_HARDWARE Error "joint without its hardware" "the reader cannot buy what is not named";

    /// A dado, groove or rabbet has no depth, or is as deep as the part is thick.
    ///
    /// A third of the thickness is usual, 6 mm in 18 mm.
    ///
    /// ```wright,bad
    /// plan "Shelf" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by dado { depth 18 mm }
    /// step "Glue" { add left, low; say "Glue it." }
    /// ```
    /// ```wright,good
    /// plan "Shelf" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by dado { depth 6 mm }
    /// step "Glue" { add left, low; say "Glue it." }
    /// ```
    ///
    /// Source: common practice, no source (ref: layout-practice#P32 [P]).
    B004 CHANNEL_DEPTH Error "channel without a sound depth" "a channel as deep as the part cuts it in two";

    /// A rabbet does not lie along an edge of the part it is cut into.
    ///
    /// ```wright,bad
    /// plan "Shelf" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by rabbet { depth 6 mm }
    /// step "Glue" { add left, low; say "Glue it." }
    /// ```
    /// ```wright,good
    /// plan "Shelf" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; top at left.top }
    /// join low to left by rabbet { depth 6 mm }
    /// step "Glue" { add left, low; say "Glue it." }
    /// ```
    ///
    /// Source: a rabbet is a step along an edge by its definition (common practice, no source).
    B005 RABBET_OFF_EDGE Error "rabbet away from the edge" "what is away from the edge is a dado or a groove and is cut on another setting";

    /// The fasteners of a joint do not fit in the contact of its parts.
    ///
    /// ```wright,bad
    /// plan "Shelf" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 40 mm }
    /// part shelf from ply { length 600 mm; width 40 mm }
    /// hardware peg is dowel { diameter 8 mm; length 40 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by dowels using peg { count 6 }
    /// step "Glue" { add left, low; say "Glue it." }
    /// ```
    /// ```wright,good
    /// plan "Shelf" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 40 mm }
    /// part shelf from ply { length 600 mm; width 40 mm }
    /// hardware peg is dowel { diameter 8 mm; length 30 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by dowels using peg { count 2 }
    /// step "Glue" { add left, low; say "Glue it." }
    /// ```
    ///
    /// Source: spacing ref: fasteners#M07 [P].
    B006 FASTENERS_DO_NOT_FIT Error "fasteners do not fit" "holes that run into each other hold nothing";

    /// Pocket holes are drilled from a face that lies along the joint, and this one does not.
    ///
    /// ```wright,bad
    /// plan "Shelf" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// hardware screw is pocket_screw { diameter 4 mm; length 32 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by pocket_screws using screw { from right }
    /// step "Screw" { add left, low; say "Screw it." }
    /// ```
    /// ```wright,good
    /// plan "Shelf" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part side from ply { length 400 mm; width 200 mm }
    /// part shelf from ply { length 600 mm; width 200 mm }
    /// hardware screw is pocket_screw { diameter 4 mm; length 32 mm }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = shelf { length right; width back; left at left.right; front at 0 mm; bottom at 100 mm }
    /// join low to left by pocket_screws using screw { from bottom }
    /// step "Screw" { add left, low; say "Screw it." }
    /// ```
    ///
    /// Source: ref: fasteners#M01 [P].
    B007 POCKET_FACE Error "pocket holes from a face that does not reach the joint" "the drill guide clamps on a broad face beside the end";

    /// Two parts do not lie as their joint needs it.
    ///
    /// A tenon is cut on an end, a tongue on an edge or an end, a lamination lies broad side on
    /// broad side, and both parts of a mitre or a box joint end in the corner. The finding says
    /// what is not so.
    ///
    /// ```wright,bad
    /// plan "Frame" { revision "A" on 2026-01-15 }
    /// material oak is board { section 20 mm by 40 mm; stock 2000 mm }
    /// part rail from oak { length 300 mm }
    /// place first = rail { length right; width up; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place second = rail { length right; width up; left at 0 mm; front at 0 mm; bottom at first.top }
    /// join second to first by lamination
    /// step "Glue" { add first, second; say "Glue them." }
    /// ```
    /// ```wright,good
    /// plan "Frame" { revision "A" on 2026-01-15 }
    /// material oak is board { section 20 mm by 40 mm; stock 2000 mm }
    /// part rail from oak { length 300 mm }
    /// place first = rail { length right; width up; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place second = rail { length right; width up; left at 0 mm; front at first.back; bottom at 0 mm }
    /// join second to first by lamination
    /// step "Glue" { add first, second; say "Glue them." }
    /// ```
    ///
    /// Source: common practice, no source.
    B008 JOINT_LIE Error "parts do not lie as their joint needs" "the cuts of a joint are made on certain sides only";

    /// The tenon, tongue, fingers or hinges of a joint are not sized, or do not fit.
    ///
    /// ```wright,bad
    /// plan "Frame" { revision "A" on 2026-01-15 }
    /// material oak is board { section 20 mm by 40 mm; stock 2000 mm }
    /// part rail from oak { length 300 mm }
    /// part post from oak { length 400 mm }
    /// place left = post { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = rail { length right; width up; left at left.right; front at 10 mm; bottom at 100 mm }
    /// join low to left by mortise_and_tenon { depth 15 mm }
    /// step "Glue" { add left, low; say "Glue them." }
    /// ```
    /// ```wright,good
    /// plan "Frame" { revision "A" on 2026-01-15 }
    /// material oak is board { section 20 mm by 40 mm; stock 2000 mm }
    /// part rail from oak { length 300 mm }
    /// part post from oak { length 400 mm }
    /// place left = post { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place low = rail { length right; width up; left at left.right; front at 10 mm; bottom at 100 mm }
    /// join low to left by mortise_and_tenon { depth 15 mm; thickness 7 mm; width 30 mm; glue }
    /// step "Glue" { add left, low; say "Glue them." }
    /// ```
    ///
    /// Source: common practice, no source (ref: fasteners#M08, M09 [P]).
    B009 JOINT_SIZES Error "joint without sound sizes" "what is cut too large takes the strength of the other part";
}
