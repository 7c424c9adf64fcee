//! The page of a kind of finding: what `explain` prints, taken from a doc comment.

use super::Severity;

/// A kind of finding. Its code is stable and never used again for anything else.
#[derive(Debug, PartialEq, Eq)]
pub struct Page {
    /// A family letter and three digits.
    pub code: &'static str,
    /// The fault in a few words, in lower case: "unknown name".
    pub title: &'static str,
    /// How much it matters.
    pub severity: Severity,
    /// Why it matters in the shop or for the reader, in one line.
    pub why: &'static str,
    /// The whole page in Markdown: what, a `wright,bad` and a `wright,good` example, the source.
    pub text: &'static str,
}

/// Declares pages of findings; the doc comment above each is the text that `explain` prints.
///
/// ```text
/// finding_pages! {
///     /// The name is not declared anywhere…
///     N001 UNKNOWN_NAME Error "unknown name" "a reader cannot cut a part that is not described";
/// }
/// ```
macro_rules! finding_pages {
    ($( $(#[doc = $doc:literal])+ $code:ident $name:ident $severity:ident $title:literal $why:literal; )+) => {
        $(
            $(#[doc = $doc])+
            pub static $name: $crate::finding::Page = $crate::finding::Page {
                code: stringify!($code),
                title: $title,
                severity: $crate::finding::Severity::$severity,
                why: $why,
                text: concat!($($doc, "\n",)+),
            };
        )+
        /// Every page declared here, in order.
        pub static PAGES: &[&$crate::finding::Page] = &[$(&$name),+];
    };
}
pub(crate) use finding_pages;
