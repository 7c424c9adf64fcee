//! Tags (ISO 32000-1, 14.7 and 14.8): the structure of the pages as a tree of elements that own what the
//! pages show, for those who hear a plan or read it on a small screen.
//!
//! Pages mark their content as they are lowered; here every mark is given to its element, links to theirs,
//! and both are numbered in the tree that leads back from a page.

use std::collections::{BTreeMap, BTreeSet};

use lopdf::{Dictionary, Document, Object, ObjectId, dictionary};

use super::fonts::real;
use super::metadata::text;
use crate::display::{Area, Mark, Path};
use crate::document::tree::ListMarker;
use crate::page::{Element, ElementId, Heads, Pages, Placed, Role};

/// The content of a page by its number there: what it belongs to.
pub(super) type Marked = Vec<ElementId>;

/// An annotation and what it belongs to.
pub(super) struct TaggedLink {
    pub(super) annotation: ObjectId,
    pub(super) page: ObjectId,
    /// A link, or a figure with places in it that lead on.
    pub(super) element: ElementId,
}

/// The structure type of a role.
pub(super) const fn tag(role: Role) -> &'static str {
    match role {
        Role::Document => "Document",
        Role::Division => "Div",
        Role::Heading(level) => match level {
            0 | 1 => "H1",
            2 => "H2",
            _ => "H3",
        },
        Role::Paragraph => "P",
        Role::List(_) => "L",
        Role::Item => "LI",
        Role::Label => "Lbl",
        Role::Body => "LBody",
        Role::Table => "Table",
        Role::Head => "THead",
        Role::Rows => "TBody",
        Role::Row => "TR",
        Role::HeadCell { .. } => "TH",
        Role::Cell { .. } => "TD",
        Role::Figure => "Figure",
        Role::Contents => "TOC",
        Role::ContentsItem => "TOCI",
        Role::Link => "Link",
    }
}

/// Something an element holds.
#[derive(Clone, Copy)]
enum Kid {
    Element(ElementId),
    /// Content of a page, by its number there.
    Content(usize, usize),
    Link(usize),
}

/// Adds the structure; the number of its root.
pub(super) fn add(
    document: &mut Document,
    pages: &Pages<'_>,
    ids: &[ObjectId],
    marked: &[Marked],
    links: &[TaggedLink],
) -> ObjectId {
    let elements = pages.structure.elements();
    let kids = kids(elements, marked, links);
    let live = live(elements, &kids);
    let root = document.new_object_id();
    let objects: Vec<Option<ObjectId>> = (0..elements.len())
        .map(|number| {
            let is_live = live.contains(&ElementId::numbered(number));
            is_live.then(|| document.new_object_id())
        })
        .collect();
    // Places in figures that lead on: a link of its own each.
    let own_links: Vec<Option<ObjectId>> = links
        .iter()
        .map(|link| {
            let role = elements.get(link.element.number()).map(|e| e.role);
            (role != Some(Role::Link)).then(|| document.new_object_id())
        })
        .collect();
    let areas = figure_areas(pages);
    let mut tree = Tree {
        document,
        ids,
        links,
        own_links: &own_links,
        objects: &objects,
        live: &live,
    };
    for (number, (element, held)) in elements.iter().zip(&kids).enumerate() {
        let id = ElementId::numbered(number);
        if live.contains(&id) {
            let parent = if number == 0 {
                Some(root)
            } else {
                objects.get(element.parent.number()).copied().flatten()
            };
            tree.element(id, element, held, parent, areas.get(&id));
        }
    }
    tree.own_links();
    let next = ids.len() + links.len();
    let parents = tree.parents(marked);
    let parents = document.add_object(parents);
    let top = objects.first().copied().flatten().unwrap_or(root);
    document.set_object(
        root,
        dictionary! {
            "Type" => "StructTreeRoot",
            "K" => vec![Object::Reference(top)],
            "ParentTree" => parents,
            "ParentTreeNextKey" => integer(next),
        },
    );
    root
}

/// What each element holds, in the order it is read.
fn kids(elements: &[Element], marked: &[Marked], links: &[TaggedLink]) -> Vec<Vec<Kid>> {
    let mut kids: Vec<Vec<Kid>> = elements.iter().map(|_| Vec::new()).collect();
    let mut placed: BTreeSet<ElementId> = BTreeSet::new();
    let mut hold = |owner: ElementId, kid: Kid| {
        if let Some(held) = kids.get_mut(owner.number()) {
            held.push(kid);
        }
    };
    // Text and what is in it come as they stand on the pages.
    for (page, content) in marked.iter().enumerate() {
        for (number, owner) in content.iter().enumerate() {
            let parent = elements.get(owner.number()).map(|element| element.parent);
            if let Some(parent) = parent.filter(|parent| !holds_elements(elements, *parent))
                && placed.insert(*owner)
            {
                hold(parent, Kid::Element(*owner));
            }
            hold(*owner, Kid::Content(page, number));
        }
    }
    for (number, link) in links.iter().enumerate() {
        hold(link.element, Kid::Link(number));
    }
    // All else in the order of the document.
    for (number, element) in elements.iter().enumerate().skip(1) {
        let id = ElementId::numbered(number);
        if !placed.contains(&id) {
            hold(element.parent, Kid::Element(id));
        }
    }
    kids
}

fn holds_elements(elements: &[Element], id: ElementId) -> bool {
    let element = elements.get(id.number());
    element.is_some_and(|element| element.role.holds_elements())
}

/// The elements that hold something; cells count without.
fn live(elements: &[Element], kids: &[Vec<Kid>]) -> BTreeSet<ElementId> {
    let mut live = BTreeSet::from([ElementId::ROOT]);
    // What is in an element comes after it.
    for (number, (element, held)) in elements.iter().zip(kids).enumerate().rev() {
        let holds = held.iter().any(|kid| match kid {
            Kid::Element(id) => live.contains(id),
            Kid::Content(..) | Kid::Link(_) => true,
        });
        let is_cell = matches!(element.role, Role::Cell { .. } | Role::HeadCell { .. });
        if holds || is_cell {
            live.insert(ElementId::numbered(number));
        }
    }
    live
}

/// The area of every figure on its page, in PDF's own coordinates: left, bottom, right, top.
fn figure_areas(pages: &Pages<'_>) -> BTreeMap<ElementId, [f64; 4]> {
    let mut areas: BTreeMap<ElementId, [f64; 4]> = BTreeMap::new();
    let is_figure = |id: ElementId| {
        let element = pages.structure.elements().get(id.number());
        element.is_some_and(|element| element.role == Role::Figure)
    };
    for page in &pages.pages {
        for placed in &page.content {
            let (element, area) = match placed {
                Placed::Mark(_) => continue,
                Placed::Content { element, mark } if is_figure(*element) => {
                    let Some(area) = mark_area(mark) else {
                        continue;
                    };
                    (*element, area)
                }
                Placed::Content { .. } => continue,
                Placed::Figure {
                    figure,
                    at,
                    scale,
                    element,
                } => {
                    let area = Area {
                        x: at.x,
                        y: at.y,
                        width: figure.width * scale,
                        height: figure.height * scale,
                    };
                    (*element, area)
                }
            };
            let area = [
                area.x,
                page.height - area.y - area.height,
                area.x + area.width,
                page.height - area.y,
            ];
            let whole = areas.entry(element).or_insert(area);
            let [left, bottom, right, top] = area;
            *whole = [
                whole[0].min(left),
                whole[1].min(bottom),
                whole[2].max(right),
                whole[3].max(top),
            ];
        }
    }
    areas
}

fn mark_area(mark: &Mark) -> Option<Area> {
    let path: &Path = match mark {
        Mark::Stroke { path, .. } | Mark::Fill { path, .. } | Mark::Sealed { path, .. } => path,
        Mark::Text(_) | Mark::Link { .. } => return None,
    };
    path.bounds()
}

/// A tree of structure in the making.
struct Tree<'t> {
    document: &'t mut Document,
    ids: &'t [ObjectId],
    links: &'t [TaggedLink],
    /// Of the links that are in figures.
    own_links: &'t [Option<ObjectId>],
    /// Of those elements that are live.
    objects: &'t [Option<ObjectId>],
    live: &'t BTreeSet<ElementId>,
}

impl Tree<'_> {
    fn object(&self, id: ElementId) -> Object {
        let object = self.objects.get(id.number()).copied().flatten();
        object.map_or(Object::Null, Object::Reference)
    }

    fn element(
        &mut self,
        id: ElementId,
        element: &Element,
        held: &[Kid],
        parent: Option<ObjectId>,
        area: Option<&[f64; 4]>,
    ) {
        let Some(object) = self.objects.get(id.number()).copied().flatten() else {
            return;
        };
        let first = held.iter().find_map(|kid| match kid {
            Kid::Content(page, _) => Some(*page),
            Kid::Element(_) | Kid::Link(_) => None,
        });
        let mut made = dictionary! {
            "Type" => "StructElem",
            "S" => tag(element.role),
        };
        if let Some(parent) = parent {
            made.set("P", Object::Reference(parent));
        }
        if let Some(page) = first.and_then(|page| self.ids.get(page)) {
            made.set("Pg", Object::Reference(*page));
        }
        if element.role == Role::Figure {
            made.set("Alt", text(&element.alternative));
        }
        if let Some(attributes) = attributes(element.role, area) {
            made.set("A", attributes);
        }
        let kids: Vec<Object> = held
            .iter()
            .filter_map(|kid| self.kid(*kid, first))
            .collect();
        made.set("K", kids);
        self.document.set_object(object, made);
    }

    /// Something held, as the tree names it; content is on the page `first` if nothing else is said.
    fn kid(&self, kid: Kid, first: Option<usize>) -> Option<Object> {
        Some(match kid {
            Kid::Element(id) if !self.live.contains(&id) => return None,
            Kid::Element(id) => self.object(id),
            Kid::Content(page, number) if Some(page) == first => integer(number),
            Kid::Content(page, number) => Object::Dictionary(dictionary! {
                "Type" => "MCR",
                "Pg" => *self.ids.get(page)?,
                "MCID" => integer(number),
            }),
            Kid::Link(number) => match self.own_links.get(number)? {
                Some(own) => Object::Reference(*own),
                None => annotation(self.links.get(number)?),
            },
        })
    }

    /// Links in figures, an element each.
    fn own_links(&mut self) {
        for (link, own) in self.links.iter().zip(self.own_links) {
            let figure = self.objects.get(link.element.number()).copied().flatten();
            let (Some(own), Some(figure)) = (own, figure) else {
                continue;
            };
            let mut made = dictionary! {
                "Type" => "StructElem",
                "S" => tag(Role::Link),
                "P" => figure,
                "K" => vec![annotation(link)],
            };
            // It has no words of its own: it says where it leads.
            let told = self.document.get_dictionary(link.annotation);
            if let Ok(told) = told.and_then(|annotation| annotation.get(b"Contents")) {
                made.set("Alt", told.clone());
            }
            self.document.set_object(*own, made);
        }
    }

    /// From pages and annotations back to elements; pages are numbered first.
    fn parents(&mut self, marked: &[Marked]) -> Dictionary {
        let mut numbers = Vec::new();
        for (number, (content, page)) in marked.iter().zip(self.ids).enumerate() {
            let owners: Vec<Object> = content.iter().map(|owner| self.object(*owner)).collect();
            let owners = self.document.add_object(owners);
            numbers.extend([integer(number), Object::Reference(owners)]);
            if let Ok(page) = self.document.get_dictionary_mut(*page) {
                page.set("StructParents", integer(number));
                page.set("Tabs", "S");
            }
        }
        for (number, (link, own)) in self.links.iter().zip(self.own_links).enumerate() {
            let key = integer(self.ids.len() + number);
            let owner = own.map_or_else(|| self.object(link.element), Object::Reference);
            numbers.extend([key.clone(), owner]);
            if let Ok(annotation) = self.document.get_dictionary_mut(link.annotation) {
                annotation.set("StructParent", key);
            }
        }
        dictionary! { "Nums" => numbers }
    }
}

fn annotation(link: &TaggedLink) -> Object {
    Object::Dictionary(dictionary! {
        "Type" => "OBJR",
        "Obj" => link.annotation,
        "Pg" => link.page,
    })
}

/// What a role tells besides its name (ISO 32000-1, 14.8.5).
fn attributes(role: Role, area: Option<&[f64; 4]>) -> Option<Dictionary> {
    let table = |span: usize| {
        let mut told = dictionary! { "O" => "Table" };
        if span > 1 {
            told.set("ColSpan", integer(span));
        }
        told
    };
    match role {
        Role::HeadCell { of, span } => {
            let mut told = table(span);
            told.set(
                "Scope",
                match of {
                    Heads::Column => "Column",
                    Heads::Row => "Row",
                },
            );
            Some(told)
        }
        Role::Cell { span } => (span > 1).then(|| table(span)),
        Role::List(marker) => Some(dictionary! {
            "O" => "List",
            "ListNumbering" => match marker {
                ListMarker::Number => "Decimal",
                ListMarker::Bullet => "Disc",
                ListMarker::Tick => "Square",
            },
        }),
        Role::Figure => area.map(|area| {
            dictionary! {
                "O" => "Layout",
                "Placement" => "Block",
                "BBox" => area.map(real).to_vec(),
            }
        }),
        Role::Document
        | Role::Division
        | Role::Heading(_)
        | Role::Paragraph
        | Role::Item
        | Role::Label
        | Role::Body
        | Role::Table
        | Role::Head
        | Role::Rows
        | Role::Row
        | Role::Contents
        | Role::ContentsItem
        | Role::Link => None,
    }
}

fn integer(number: usize) -> Object {
    Object::Integer(i64::try_from(number).unwrap_or(i64::MAX))
}
