//! The outline: chapters and their sections, as nested entries.

use lopdf::{Dictionary, Document, Object, ObjectId};

use super::links::place;
use super::metadata::text;
use crate::page::{OutlineEntry, Pages};

/// Adds the outline; its root, or none where there is nothing to list.
pub(super) fn add(
    document: &mut Document,
    pages: &Pages<'_>,
    ids: &[ObjectId],
) -> Option<ObjectId> {
    if pages.outline.is_empty() {
        return None;
    }
    let root = document.new_object_id();
    let mut dictionary = Dictionary::new();
    dictionary.set("Type", "Outlines");
    let mut outline = Outline {
        document,
        pages,
        ids,
    };
    outline.level(&pages.outline, root, &mut dictionary);
    // The chapters alone are open; their sections are found by opening them.
    dictionary.set("Count", count(pages.outline.len()));
    document.set_object(root, dictionary);
    Some(root)
}

struct Outline<'o, 'd> {
    document: &'o mut Document,
    pages: &'o Pages<'d>,
    ids: &'o [ObjectId],
}

impl Outline<'_, '_> {
    /// Adds entries below `parent` and names the first and the last of them in it.
    fn level(&mut self, entries: &[OutlineEntry], parent: ObjectId, above: &mut Dictionary) {
        let numbers: Vec<ObjectId> = entries
            .iter()
            .map(|_| self.document.new_object_id())
            .collect();
        for (i, (entry, id)) in entries.iter().zip(&numbers).enumerate() {
            let mut item = Dictionary::new();
            item.set("Title", text(&entry.title));
            item.set("Parent", Object::Reference(parent));
            if let Some(place) = place(self.pages, self.ids, entry.page, entry.y) {
                item.set("Dest", place);
            }
            let before = i.checked_sub(1).and_then(|i| numbers.get(i));
            if let Some(before) = before {
                item.set("Prev", Object::Reference(*before));
            }
            if let Some(after) = numbers.get(i + 1) {
                item.set("Next", Object::Reference(*after));
            }
            if !entry.children.is_empty() {
                self.level(&entry.children, *id, &mut item);
                // Negative: closed when the file is opened.
                item.set("Count", -count(entry.children.len()));
            }
            self.document.set_object(*id, item);
        }
        if let (Some(first), Some(last)) = (numbers.first(), numbers.last()) {
            above.set("First", Object::Reference(*first));
            above.set("Last", Object::Reference(*last));
        }
    }
}

fn count(entries: usize) -> i64 {
    i64::try_from(entries).unwrap_or(i64::MAX)
}
