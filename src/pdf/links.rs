//! Links: areas of pages that lead to a place in the document.

use std::collections::BTreeMap;

use lopdf::{Document, Object, ObjectId, dictionary};

use super::fonts::real;
use super::metadata::text;
use super::tags::TaggedLink;
use crate::display::{Area, Mark, Spot};
use crate::page::{ElementId, PageList, Pages, Placed};

/// Adds the links of every page, and says what each belongs to; a link to a place that is nowhere is left out.
pub(super) fn add(document: &mut Document, pages: &Pages<'_>, ids: &[ObjectId]) -> Vec<TaggedLink> {
    let mut tagged = Vec::new();
    for (page, id) in pages.pages.iter().zip(ids) {
        let links: Vec<Object> = areas(page)
            .into_iter()
            .filter_map(|(area, target, element)| {
                let place = destination(&pages.destinations, pages, ids, target)?;
                let mut link = annotation(area, page.height, place)?;
                // Read out in place of the area.
                let (number, _) = pages.destinations.get(target)?;
                let told = pages.page_names.get(*number).map_or("", String::as_str);
                link.set("Contents", text(told));
                let link = document.add_object(link);
                tagged.push(TaggedLink {
                    annotation: link,
                    page: *id,
                    element,
                });
                Some(Object::Reference(link))
            })
            .collect();
        if !links.is_empty()
            && let Ok(page) = document.get_dictionary_mut(*id)
        {
            page.set("Annots", links);
        }
    }
    tagged
}

/// A place as PDF names it: its page and how far up.
fn destination(
    places: &BTreeMap<String, (usize, f64)>,
    pages: &Pages<'_>,
    ids: &[ObjectId],
    target: &str,
) -> Option<Object> {
    let (page, y) = places.get(target)?;
    place(pages, ids, *page, *y)
}

/// A little above a place on a page.
pub(super) fn place(pages: &Pages<'_>, ids: &[ObjectId], page: usize, y: f64) -> Option<Object> {
    let height = pages.pages.get(page)?.height;
    let up = (height - y + 10.0).min(height);
    Some(Object::Array(vec![
        Object::Reference(*ids.get(page)?),
        Object::Name(b"XYZ".to_vec()),
        Object::Null,
        real(up),
        Object::Null,
    ]))
}

fn annotation(area: Area, height: f64, place: Object) -> Option<lopdf::Dictionary> {
    let edges = [
        area.x,
        height - area.y - area.height,
        area.x + area.width,
        height - area.y,
    ];
    edges.iter().all(|edge| edge.is_finite()).then(|| {
        dictionary! {
            "Type" => "Annot",
            "Subtype" => "Link",
            "Rect" => edges.map(real).to_vec(),
            // No frame: what is a link is told by what it says.
            "Border" => vec![Object::Integer(0), Object::Integer(0), Object::Integer(0)],
            // Printed pages show what the screen shows.
            "F" => 4,
            "Dest" => place,
        }
    })
}

/// Every link on a page, those of figures included, in points from the upper left corner, and what it
/// belongs to.
fn areas<'p>(page: &'p PageList<'_>) -> Vec<(Area, &'p str, ElementId)> {
    let mut found: Vec<(Area, &str, ElementId)> = Vec::new();
    let mut take = |mark: &'p Mark, at: Spot, scale: f64, element: ElementId| {
        if let Mark::Link { area, target } = mark {
            let area = Area {
                x: at.x + area.x * scale,
                y: at.y + area.y * scale,
                width: area.width * scale,
                height: area.height * scale,
            };
            match found.last_mut() {
                // Words of one link on one line are one area.
                Some((last, before, _)) if *before == target && joins(last, &area) => {
                    last.width = area.x + area.width - last.x;
                }
                _ => found.push((area, target, element)),
            }
        }
    };
    for placed in &page.content {
        match placed {
            Placed::Mark(mark) => take(mark, Spot::default(), 1.0, ElementId::ROOT),
            Placed::Content { element, mark } => take(mark, Spot::default(), 1.0, *element),
            Placed::Figure {
                figure,
                at,
                scale,
                element,
            } => {
                for mark in &figure.marks {
                    take(mark, *at, *scale, *element);
                }
            }
        }
    }
    found
}

fn joins(left: &Area, right: &Area) -> bool {
    let near = |a: f64, b: f64| (a - b).abs() < 0.5;
    near(left.x + left.width, right.x) && near(left.y, right.y) && near(left.height, right.height)
}
