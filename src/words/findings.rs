//! Findings of catalogues of words. They have no place in a `.wright` text and name catalogue and line.

use crate::finding::finding_pages;

finding_pages! {
    /// A catalogue of words cannot be read: a message has no `=`, a place is not closed, a choice has no
    /// default. The message names the catalogue and its line. Without what could not be read, messages
    /// would be missing, so no plan is made.
    ///
    /// ```ftl,bad
    /// buy = What to { $buy
    /// ```
    /// ```ftl,good
    /// buy = What to buy
    /// ```
    ///
    /// Source: Project Fluent, Syntax 1.0.
    P040 CATALOGUE_FAULT Error "catalogue of words cannot be read"
        "a plan with words missing is worse than none";

    /// The plan asks for words of a language (`words "de"`, or `--words de`) that there is no catalogue of.
    ///
    /// A catalogue of your own is a file `words/xx.ftl` in the folder that `--templates` names, with `xx` the
    /// language's tag (BCP 47). It may hold some messages only: the others are said in English.
    ///
    /// ```ftl,bad
    /// # words "xx" in the plan, and no file words/xx.ftl
    /// ```
    /// ```ftl,good
    /// # words/xx.ftl
    /// contents = ...
    /// ```
    ///
    /// Source: BCP 47, Tags for Identifying Languages.
    P041 NO_SUCH_WORDS Error "no words of that language"
        "a plan in another language than its reader was promised is no use to him";

    /// A catalogue of words lacks messages. They are said in English, and the plan is made.
    ///
    /// ```ftl,bad
    /// # words/xx.ftl holds one message of all
    /// contents = ...
    /// ```
    /// ```ftl,good
    /// # words/xx.ftl holds every message of templates/words/en.ftl
    /// contents = ...
    /// ```
    ///
    /// Source: `templates/README.md`.
    P042 MESSAGES_MISSING Warning "words are missing"
        "two languages in one step are read twice, and a caution may be skipped";
}
