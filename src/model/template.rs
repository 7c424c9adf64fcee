//! Full-size templates as the author asks for them.

use serde::Serialize;

use super::evaluate::Evaluator;
use super::findings::{WORD_OUT_OF_PLACE, WRONG_KIND};
use super::names::{Declared, Meant, nearest_of};
use super::paper::Sheet;
use super::part::{PartDesign, PartId};
use crate::finding::Finding;
use crate::geometry::{PartAxis, Side};
use crate::source::Span;
use crate::syntax::tree::{self, Name, Part};
use crate::units::Length;

/// A template that the author asks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct TemplateWish {
    /// Of which part.
    pub part: PartId,
    /// Of which side; the broad side with more cut into it where none is named.
    pub side: Option<Side>,
    /// The one sheet it goes on; none where it is put together of sheets.
    pub sheet: Option<Sheet>,
    /// Where it is written.
    #[serde(skip)]
    pub span: Span,
}

impl Evaluator<'_> {
    /// The part that a template names, among the declared ones.
    pub(super) fn part_of_template(&self, template: &tree::Template) -> Option<usize> {
        let name = &template.part;
        match self.find(&name.value) {
            Some(Declared::Part(part)) => Some(part),
            Some(Declared::Missing) => None,
            None => {
                self.tell_unknown(name, "there is no such part", Meant::OnePart);
                None
            }
            Some(_) => {
                let message = format!("`{}` is not a part", name.value);
                let mut finding = Finding::new(&WRONG_KIND, name.span, message);
                finding = finding.remedy("name a part; of a sub-assembly, inside of it");
                self.tell(finding);
                None
            }
        }
    }

    /// A template of a part that was worked out.
    pub(super) fn template(
        &self,
        template: &tree::Template,
        declared: usize,
        (part, design): (PartId, &PartDesign),
    ) -> Option<TemplateWish> {
        let side = match &template.side {
            None => None,
            Some(word) => {
                let named = self.all.parts.get(declared);
                let known = named.and_then(|named| self.known_side(named, word));
                if known.is_none() {
                    self.tell_side(named, word, design);
                    return None;
                }
                known
            }
        };
        let sheet = match &template.sheet {
            None => None,
            Some(word) => {
                let mut sheets = Sheet::ALL.into_iter();
                let known = sheets.find(|sheet| sheet.word() == word.value);
                if known.is_none() {
                    self.tell_word(word, "a sheet", &Sheet::ALL.map(Sheet::word));
                    return None;
                }
                known
            }
        };
        Some(TemplateWish {
            part,
            side,
            sheet,
            span: template.span,
        })
    }

    /// Tells of a side that a part does not have, with the sizes of those it has.
    fn tell_side(&self, part: Option<&Part>, word: &Name, design: &PartDesign) {
        let message = format!("`{}` is not a side of `{}`", word.value, design.name);
        let mut finding = Finding::new(&WORD_OUT_OF_PLACE, word.span, message);
        let words = Side::ALL.map(Side::word);
        let own = part.into_iter().flat_map(Evaluator::own_words);
        let known: Vec<&str> = words.into_iter().chain(own).collect();
        if let Some(near) = nearest_of(&word.value, known.into_iter()) {
            let text = format!("did you mean `{near}`?");
            finding = finding.edit(text, word.span, near.to_owned());
        }
        let size = |axis: PartAxis| {
            let size: Option<&Length> = design.size.get(axis.index());
            size.copied().unwrap_or_default().in_both()
        };
        let [length, width, thickness] = PartAxis::ALL.map(size);
        finding = finding.remedy(format!(
            "its face and back measure {length} by {width}, near and far {length} by {thickness}, \
             foot and head {width} by {thickness}"
        ));
        self.tell(finding);
    }
}
