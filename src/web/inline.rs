//! Stretches of text.

use crate::document::tree::Inline;

use super::page::Writer;

impl Writer<'_> {
    pub(super) fn inline(&mut self, text: &[Inline]) {
        for inline in text {
            match inline {
                Inline::Text(text) => self.html.words(text),
                Inline::Strong(inner) => self.inside("strong", "", inner),
                Inline::Emphasis(inner) => self.inside("em", "", inner),
                Inline::Styled { class, text } => self.inside("span", class, text),
                Inline::Break => self.html.empty("br", &[]),
                Inline::Link { target, text } => {
                    // A link to nowhere is the text it stands on, as in the PDF.
                    if self.gathered.places.contains(target.as_str()) {
                        self.html.open("a", &[("href", &format!("#{target}"))]);
                        self.inline(text);
                        self.html.close("a");
                    } else {
                        self.inline(text);
                    }
                }
            }
        }
    }

    fn inside(&mut self, tag: &str, class: &str, text: &[Inline]) {
        self.html.open(tag, &[("class", class)]);
        self.inline(text);
        self.html.close(tag);
    }

    /// Words that are heard and not seen.
    pub(super) fn unseen(&mut self, words: &str) {
        self.html.element("span", &[("class", "unseen")], words);
    }
}
