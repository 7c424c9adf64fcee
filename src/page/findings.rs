//! Findings of pages and of the PDF: family P.

use crate::finding::finding_pages;

finding_pages! {
    /// # A character that no font of the plan has
    ///
    /// The plan's fonts hold the Latin, Greek and Cyrillic scripts, figures, fractions and common
    /// signs. A character outside of them cannot be printed; a box or a question mark in its place
    /// would be read as something else by whoever builds from the plan.
    ///
    /// ```wright,bad
    /// plan "Shelf 漢" {
    ///     author "Example Workshop"
    /// }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" {
    ///     author "Example Workshop"
    /// }
    /// ```
    ///
    /// Source: the character maps of the shipped fonts.
    P001 MISSING_CHARACTER Error "character that no font has" "a missing character changes what a reader understands";

    /// # Text that runs from right to left
    ///
    /// Hebrew, Arabic and other scripts that run from the right would come out in the wrong order.
    ///
    /// ```wright,bad
    /// plan "מדף" {
    ///     author "Example Workshop"
    /// }
    /// ```
    ///
    /// ```wright,good
    /// plan "Shelf" {
    ///     author "Example Workshop"
    /// }
    /// ```
    ///
    /// Source: Unicode Standard Annex 9, bidirectional classes R and AL.
    P002 RIGHT_TO_LEFT Error "text from right to left" "text in the wrong order is no instruction";

    /// # A link that leads nowhere
    ///
    /// A template links to a place that nothing in the document has as its name. On paper nothing
    /// is lost, on a screen the reader clicks in vain.
    ///
    /// ```html,bad
    /// <p>See <a href="#cutlist">the cut list</a>.</p>
    /// <h1 id="cut-list">Cut list</h1>
    /// ```
    ///
    /// ```html,good
    /// <p>See <a href="#cut-list">the cut list</a>.</p>
    /// <h1 id="cut-list">Cut list</h1>
    /// ```
    ///
    /// Source: none, a rule of our own.
    P003 DEAD_LINK Warning "link that leads nowhere" "a reader on a screen clicks in vain";

    /// # Two places of one name
    ///
    /// Two headings or rows have the same name. Links, contents and page numbers lead to the first
    /// of them, whichever was meant.
    ///
    /// ```html,bad
    /// <h2 id="side">Left side</h2>
    /// <h2 id="side">Right side</h2>
    /// ```
    ///
    /// ```html,good
    /// <h2 id="left-side">Left side</h2>
    /// <h2 id="right-side">Right side</h2>
    /// ```
    ///
    /// Source: none, a rule of our own.
    P004 PLACE_NAMED_TWICE Warning "two places of one name" "contents and links may lead to the wrong page";

    /// # A figure that is not there
    ///
    /// A template names a figure that the plan does not have; a step without its drawing cannot be
    /// followed.
    ///
    /// ```html,bad
    /// <figure name="step-99"></figure>
    /// ```
    ///
    /// ```html,good
    /// <figure name="step-1"></figure>
    /// ```
    ///
    /// Source: none, a rule of our own.
    P005 MISSING_FIGURE Error "figure that is not there" "a step without its drawing cannot be followed";

    /// # A drawing that had to be made too small
    ///
    /// A drawing is wider or higher than the page and is printed smaller, which takes its lettering
    /// below 6 points (2.1 mm). That cannot be read at arm's length, and the drawing is not to the
    /// scale it states.
    ///
    /// ```html,bad
    /// <figure name="plan-at-1-to-1"></figure>
    /// ```
    ///
    /// ```html,good
    /// <figure name="plan-at-1-to-10"></figure>
    /// ```
    ///
    /// Source: the smallest lettering of ISO 3098 is 1.8 mm high, its next larger one 2.5 mm.
    P006 DRAWING_TOO_SMALL Warning "drawing made too small to read" "figures that cannot be read are guessed";

    /// # A drawing with a coordinate that is no number
    ///
    /// A size of zero or a division by zero went into a drawing. The stroke or text it belongs to
    /// is left out rather than put somewhere.
    ///
    /// ```html,bad
    /// <figure name="broken"></figure>
    /// ```
    ///
    /// ```html,good
    /// <figure name="step-1"></figure>
    /// ```
    ///
    /// Source: ISO 32000-1, 7.3.3: a number in a PDF is an integer or a decimal.
    P007 NOT_A_NUMBER Error "coordinate that is no number" "a drawing with a line missing is wrong";

    /// # A font that cannot be put into the PDF
    ///
    /// The font file has no outlines in a form that a PDF may hold, or it is broken. Without its
    /// font the text would look different on every machine.
    ///
    /// ```text,bad
    /// a variable CFF2 font as the regular face
    /// ```
    ///
    /// ```text,good
    /// a TrueType font as the regular face
    /// ```
    ///
    /// Source: ISO 32000-1, 9.9: embedded font programs.
    P008 FONT_NOT_EMBEDDED Error "font that cannot be embedded" "a plan must look the same everywhere";
}
