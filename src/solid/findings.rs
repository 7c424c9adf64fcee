//! The D family: features that cannot be made as they are described.

use crate::finding::finding_pages;

finding_pages! {
    /// A hole, channel, notch or outline lies outside of the part it is described for, or an
    /// outline reaches over the part's own length or width. Positions are measured on the part as
    /// it is made: from the side that the line names.
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
    /// part side from ply "Side" {
    ///     length 600 mm grain
    ///     width 300 mm
    ///     hole on face diameter 8 mm depth 10 mm at 650 mm from foot, 40 mm from near
    /// }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add left
    ///     say "Set {left} up."
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
    /// part side from ply "Side" {
    ///     length 600 mm grain
    ///     width 300 mm
    ///     hole on face diameter 8 mm depth 10 mm at 550 mm from foot, 40 mm from near
    /// }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add left
    ///     say "Set {left} up."
    /// }
    /// ```
    ///
    /// Source: arithmetic on the sizes stated.
    D001 FEATURE_OUTSIDE Error "feature outside its part"
        "what is not there cannot be cut into";

    /// A channel or a blind hole is as deep as the part is thick there, or deeper. A hole that is
    /// meant to go through is described without a depth.
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
    /// part side from ply "Side" {
    ///     length 600 mm grain
    ///     width 300 mm
    ///     groove on face at 40 mm from near width 6 mm depth 20 mm
    /// }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add left
    ///     say "Set {left} up."
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
    /// part side from ply "Side" {
    ///     length 600 mm grain
    ///     width 300 mm
    ///     groove on face at 40 mm from near width 6 mm depth 6 mm
    /// }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add left
    ///     say "Set {left} up."
    /// }
    /// ```
    ///
    /// Source: arithmetic on the sizes stated. How much must be left below a channel is a matter
    /// of what it carries: common practice leaves half of the thickness or more, no source.
    D002 CUT_TOO_DEEP Error "cut deeper than the part"
        "the part would come off the saw in two pieces, or with a hole where none was meant";

    /// The lines and arcs of an outline cross or touch each other away from their ends, or
    /// enclose nothing.
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
    /// part side from ply "Side" {
    ///     length 600 mm grain
    ///     width 300 mm
    ///     outline {
    ///         start 0 mm, 0 mm
    ///         line to 600 mm, 300 mm
    ///         line to 600 mm, 0 mm
    ///         line to 0 mm, 300 mm
    ///     }
    /// }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add left
    ///     say "Set {left} up."
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
    /// part side from ply "Side" {
    ///     length 600 mm grain
    ///     width 300 mm
    ///     outline {
    ///         start 0 mm, 0 mm
    ///         line to 600 mm, 0 mm
    ///         line to 600 mm, 300 mm
    ///         line to 0 mm, 300 mm
    ///     }
    /// }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add left
    ///     say "Set {left} up."
    /// }
    /// ```
    ///
    /// Source: a closed plane curve bounds an area only where it does not cross itself (Jordan
    /// curve theorem).
    D003 OUTLINE_CROSSES Error "outline that crosses itself"
        "no saw can follow it, and what is wood and what is not is undefined";

    /// A hole drilled into one side comes out of another, because it stands nearer to the edge
    /// than half its diameter, or because what it meets there is thinner than the hole.
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
    /// part side from ply "Side" {
    ///     length 600 mm grain
    ///     width 300 mm
    ///     hole on face diameter 10 mm depth 10 mm at 300 mm from foot, 4 mm from near
    /// }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add left
    ///     say "Set {left} up."
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
    /// part side from ply "Side" {
    ///     length 600 mm grain
    ///     width 300 mm
    ///     hole on face diameter 10 mm depth 10 mm at 300 mm from foot, 12 mm from near
    /// }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add left
    ///     say "Set {left} up."
    /// }
    /// ```
    ///
    /// Source: arithmetic on the sizes stated.
    D004 HOLE_BREAKS_EDGE Warning "hole that breaks through an edge"
        "a drill that meets an edge tears it open and runs off line";

    /// What the features of a part leave of it does not hang together: a channel from one side
    /// meets one from the other, a notch goes right across, or tapers leave nothing.
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
    /// part side from ply "Side" {
    ///     length 600 mm grain
    ///     width 300 mm
    ///     groove on face at 150 mm from near width 8 mm depth 9 mm
    ///     groove on back at 150 mm from near width 8 mm depth 9 mm
    /// }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add left
    ///     say "Set {left} up."
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
    /// part side from ply "Side" {
    ///     length 600 mm grain
    ///     width 300 mm
    ///     groove on face at 150 mm from near width 8 mm depth 6 mm
    ///     groove on back at 150 mm from near width 8 mm depth 6 mm
    /// }
    /// place left = side { length up; width back; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// step "Set it up" {
    ///     add left
    ///     say "Set {left} up."
    /// }
    /// ```
    ///
    /// Source: arithmetic on the sizes stated.
    D005 PART_IN_PIECES Error "part cut in two"
        "two loose pieces come off the saw where the plan counts on one";
}
