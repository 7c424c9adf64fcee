//! The D family, drawings: views that show nothing.

use crate::finding::finding_pages;

finding_pages! {
    /// A step says where to look from, and from there nothing of what comes in is seen: it is
    /// hidden by what is built already, or the step adds nothing and joins nothing. A step that
    /// does not say it is seen from where it shows most.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part wall from ply { length 400 mm; width 300 mm }
    /// part cleat from ply { length 200 mm; width 60 mm }
    /// place front_wall = wall { length right; width up; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place back_cleat = cleat {
    ///     length right; width up; left at 100 mm; front at front_wall.back; bottom at 100 mm
    /// }
    /// join back_cleat to front_wall by glue
    /// step "Stand it up" { add front_wall; say "Stand it up." }
    /// step "Glue the cleat on" { add back_cleat; look from front; say "Glue {back_cleat} on." }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// material ply is sheet { thickness 18 mm; stock 2440 mm by 1220 mm }
    /// part wall from ply { length 400 mm; width 300 mm }
    /// part cleat from ply { length 200 mm; width 60 mm }
    /// place front_wall = wall { length right; width up; left at 0 mm; front at 0 mm; bottom at 0 mm }
    /// place back_cleat = cleat {
    ///     length right; width up; left at 100 mm; front at front_wall.back; bottom at 100 mm
    /// }
    /// join back_cleat to front_wall by glue
    /// step "Stand it up" { add front_wall; say "Stand it up." }
    /// step "Glue the cleat on" { add back_cleat; look from back above; say "Glue {back_cleat} on." }
    /// ```
    ///
    /// Source: new parts and where they are attached should be seen in the diagram of their step
    /// (Agrawala et al. 2003, Designing Effective Step-by-Step Assembly Instructions).
    D006 VIEW_OF_NOTHING Warning "view that shows nothing"
        "a reader cannot do what the picture does not show";
}
