//! What can be wrong with files and arguments.

use crate::finding::finding_pages;

finding_pages! {
    /// The file is not there, or may not be read.
    ///
    /// Source: the file system.
    X001 FILE_NOT_READ Error "file not read" "there is nothing to build from";

    /// The file is not text in UTF-8.
    ///
    /// The finding names the first byte that does not belong. Most editors can save a file anew
    /// "as UTF-8".
    ///
    /// Source: the language (grammar/LANGUAGE.md, "Files").
    X002 NOT_TEXT Error "not a text in UTF-8" "a letter that is read wrongly changes a name, and a name changes a size";

    /// The plan could not be written. What was there before is still there.
    ///
    /// Source: the file system.
    X003 FILE_NOT_WRITTEN Error "file not written" "the plan on disk is not the one that was asked for";

    /// A value given with `--set` cannot be read, or names nothing.
    ///
    /// Source: the command line.
    X004 BAD_SETTING Error "a setting that cannot be used" "the build would not be the one that was asked for";

    /// There is no drawing of this name.
    ///
    /// Source: the command line.
    X005 NO_DRAWING Error "no such drawing" "the drawing that was asked for does not exist";

    /// A library that is imported cannot be read, or may not be.
    ///
    /// An import names `std`, which ships with the tool, or a file in the folder of the plan or
    /// below it. Paths that lead out of that folder are not followed, so that a plan cannot reach
    /// for what is not its own, and is whole wherever its folder goes.
    ///
    /// Source: the language (grammar/LANGUAGE.md, "import and library").
    X006 IMPORT_NOT_READ Error "import that cannot be read" "what it declares is missing from the build";

    /// A source is not written in the canonical form.
    ///
    /// `fmt --check` tells where the first difference is and writes nothing.
    ///
    /// Source: the language (grammar/LANGUAGE.md, "Canonical form").
    X007 NOT_CANONICAL Error "not in canonical form" "two ways of writing one thing show as a change where there is none";

    /// A revision cannot be read: there is no git or no repository, no such revision in it, or the
    /// file was not in it.
    ///
    /// Revisions are read through the git that is installed, and nothing in the working tree is
    /// touched.
    ///
    /// Source: git.
    X008 NO_REVISION Error "a revision that cannot be read" "there is nothing to compare with";

    /// What is built, or how, is other than it was in the release named with `--release-of`, and the
    /// plan's newest revision is still that of then.
    ///
    /// Readers tell one printed plan from the next by its revision. Two that differ under one mark
    /// cannot be told apart at the bench.
    ///
    /// Source: ISO 7200 asks for the revision on every drawing (ref: units-and-paper, "ISO 7200
    /// title-block fields" [V]).
    X009 NO_NEW_REVISION Error "changes without a new revision" "two plans that differ carry one mark, and nobody can tell which is right";

    /// The plan has a new revision, and what is built is the same as in the release named with
    /// `--release-of`.
    ///
    /// Source: common practice, no source.
    X010 NOTHING_NEW Note "a new revision without a change" "the reader looks for what is other, and finds nothing";

    /// The project file `leafwright.toml`, or its lock, cannot be understood.
    ///
    /// Source: the language (grammar/LANGUAGE.md, "import and library").
    X011 BAD_PROJECT Error "a project file that cannot be understood" "nobody can tell which library is meant";

    /// A library is not what it was when the plan first used it.
    ///
    /// The lock `leafwright.lock` holds the sums of a library's files, so that a plan does not change
    /// because somebody else changed what it uses.
    ///
    /// Source: the language (grammar/LANGUAGE.md, "import and library").
    X012 LIBRARY_CHANGED Error "a library that has changed" "the plan on paper and the plan that is built would differ without a word";

    /// There is no full-size template to print: the plan asks for none, or the part or side that was named
    /// on the command line is none of the build's.
    ///
    /// Source: the command line.
    X014 NO_TEMPLATE Error "no such template" "there is nothing to cut along";

    /// A file of the folder `fonts` that `--templates` brings along is no font that can be read.
    ///
    /// It holds three files, `regular.ttf`, `bold.ttf` and `italic.ttf`, TrueType or OpenType. Their letters
    /// go into every plan, so take fonts whose licence allows that.
    ///
    /// Source: `templates/README.md`.
    X013 FONT_NOT_READ Error "a font that cannot be read" "a plan is set in one set of fonts; half of it in another would mislead the eye";

    /// The file `colours.toml` of the folder that `--templates` brings along cannot be read, says something
    /// that is no colour, or names a colour that plans do not have.
    ///
    /// A colour is written as `#` and three numbers of two hexadecimal digits: red, green and blue.
    ///
    /// Source: `templates/README.md`.
    X015 COLOUR_NOT_READ Error "a colour that cannot be read" "a plan in a colour nobody asked for would have to be printed again";

    /// The accent of `colours.toml` is so light that links in it are hard to read on white paper.
    ///
    /// Letters need a contrast of 4.5 to 1 with what is behind them; black on white has 21 to 1. On a screen
    /// the web edition darkens the accent by day and lightens it by night until it has that; on paper it stays
    /// as it was asked for.
    ///
    /// Source: WCAG 2.2, success criterion 1.4.3 [from memory].
    X016 FAINT_COLOUR Warning "an accent that is hard to read" "what is not read in the light of a shop is not there";
}
