//! From a scene to a figure: scale, marks, references, and the frame around them.

use std::collections::{BTreeMap, BTreeSet};

use super::anchor::anchor;
use super::contacts::{Box3, Contacts};
use super::detail::Detail;
use super::fills::VisibleFill;
use super::frame::Frame;
use super::grid::Bounds;
use super::inset::inset;
use super::picture::{Ink, Picture, Sheet, marks};
use super::references::{Naming, Reference, Weight, column_mm, lay_references};
use super::scene::{BodyId, Scene};
use super::view::View;
use crate::build::{Build, InstanceId, PlacedId};
use crate::display::{Area, Figure, Mark, PT_PER_MM, Spot};
use crate::solid::Solids;
use crate::text::Fonts;
use crate::units::Precision;
use crate::words::Words;

/// What every figure is drawn from.
pub(super) struct Studio<'s> {
    pub(super) build: &'s Build,
    pub(super) solids: &'s Solids,
    pub(super) fonts: &'s Fonts,
    pub(super) contacts: &'s Contacts,
    pub(super) words: &'s Words,
    /// The room on the plan's pages.
    pub(super) frame: Frame,
}

impl Studio<'_> {
    /// Works on a build, its contacts being looked up once.
    pub(super) fn of<T>(
        build: &Build,
        solids: &Solids,
        fonts: &Fonts,
        words: &Words,
        work: impl FnOnce(&Studio<'_>) -> T,
    ) -> T {
        let contacts = Contacts::of(build);
        work(&Studio {
            build,
            solids,
            fonts,
            contacts: &contacts,
            words,
            frame: Frame::of(build.plan.paper),
        })
    }

    /// How figures are printed: as the plan asks, with the decimal mark of its language.
    pub(super) fn precision(&self) -> Precision {
        self.build
            .plan
            .precision
            .with_mark(self.words.decimal_mark())
    }

    /// The scale of a drawing, for the line below it.
    pub(super) fn scale_line(&self, reduction: u32) -> String {
        if self.frame.on_screen {
            return self.words.word("drawing-no-scale", &[]);
        }
        let scale = format!("1:{reduction}");
        self.words.word("drawing-scale", &[("scale", scale.into())])
    }
}

/// Nothing is drawn larger than this many times its size.
const LARGEST_SCALE: f64 = 1.0;
/// Left free around a figure, in points: half of the widest line, and a hair.
const MARGIN_PT: f64 = 1.5;

/// The scale, in points for a micrometre, at which `bounds` fit into a width and a height.
pub(super) fn fit(bounds: &Bounds, width_mm: f64, height_mm: f64) -> f64 {
    let [width, height] = bounds.size();
    let largest = PT_PER_MM / 1000.0 * LARGEST_SCALE;
    let along = |size: f64, mm: f64| {
        if size > 0.0 {
            mm * PT_PER_MM / size
        } else {
            largest
        }
    };
    along(width, width_mm)
        .min(along(height, height_mm))
        .min(largest)
}

/// The bounds of boxes in a view.
pub(super) fn bounds_of<'b>(boxes: impl Iterator<Item = &'b Box3>, view: &View) -> Bounds {
    let mut bounds = Bounds::NONE;
    for item in boxes {
        for corner in item.corners() {
            let [x, y, _] = view.project(corner);
            bounds.take(x, y);
        }
    }
    bounds
}

/// The area that a picture takes on its sheet.
pub(super) fn area_of(bounds: &Bounds, sheet: &Sheet) -> Area {
    let [width, height] = bounds.size();
    let corner = sheet.spot([
        bounds.low.first().copied().unwrap_or_default(),
        bounds.high.last().copied().unwrap_or_default(),
    ]);
    Area {
        x: corner.x,
        y: corner.y,
        width: width * sheet.scale,
        height: height * sheet.scale,
    }
}

/// A scene with how its bodies are drawn and which pieces they are.
#[derive(Default)]
pub(super) struct Staging {
    pub(super) scene: Scene,
    pub(super) inks: BTreeMap<BodyId, Ink>,
    pub(super) pieces: BTreeMap<BodyId, PlacedId>,
}

/// Figures about to be drawn: all that is decided before anyone looks.
pub(super) struct Shot {
    /// What is looked at. Its scene is the picture's once that is taken.
    pub(super) staging: Staging,
    /// From where.
    pub(super) view: View,
    /// The figures that are made of what is seen.
    pub(super) prints: Vec<Print>,
    /// What would be too small to be made out.
    pub(super) detail: Option<Detail>,
}

/// A figure that is made of a picture.
pub(super) struct Print {
    /// Its name.
    pub(super) name: String,
    /// How all bodies are drawn; none where each is drawn as staged.
    pub(super) ink: Option<Ink>,
    /// The height its picture may take, in millimetres, and that of all of it with an inset below.
    pub(super) height_mm: f64,
    pub(super) with_inset_mm: f64,
    /// What stands beside it.
    pub(super) beside: Beside,
    /// What it shows, in words.
    pub(super) alternative: String,
}

impl Shot {
    /// Looks, and sets out on paper what is seen.
    ///
    /// This is the long part; it knows of nothing but its own scene, so that shots can be taken
    /// side by side.
    pub(super) fn figures(mut self, studio: &Studio<'_>) -> Vec<(String, Figure)> {
        let picture = Picture::take(std::mem::take(&mut self.staging.scene), &self.view);
        let figure = |print: &Print| match &print.beside {
            Beside::References(named) => referenced_figure(studio, &self, print, &picture, named),
            Beside::Dimensions => super::whole::dimensioned_figure(studio, &self, print, &picture),
        };
        self.prints
            .iter()
            .map(|print| (print.name.clone(), figure(print)))
            .filter(|(_, figure)| !figure.marks.is_empty())
            .collect()
    }

    /// The marks of a picture of this, on a sheet.
    pub(super) fn marks(&self, print: &Print, picture: &Picture, sheet: &Sheet) -> Vec<Mark> {
        let staged = |body: BodyId| self.staging.inks.get(&body).copied();
        let ink = |body: BodyId| print.ink.or(staged(body)).unwrap_or(Ink::New);
        marks(&self.view, picture, ink, sheet)
    }

    /// For each piece that `named` names, the place where its leader ends and how far that is
    /// from the edge of what is seen.
    fn anchors(&self, picture: &Picture, named: &BTreeMap<PlacedId, Naming>) -> Anchors {
        let mut fills: BTreeMap<BodyId, Vec<&VisibleFill>> = BTreeMap::new();
        for fill in &picture.fills {
            let piece = self.staging.pieces.get(&fill.body);
            if piece.is_some_and(|piece| named.contains_key(piece)) {
                fills.entry(fill.body).or_default().push(fill);
            }
        }
        fills
            .into_iter()
            .filter_map(|(body, own)| Some((body, anchor(own.into_iter())?)))
            .collect()
    }
}

/// Where leaders end in the visible parts of bodies, and how far that is from the edge.
type Anchors = BTreeMap<BodyId, ([f64; 2], f64)>;

/// What stands beside a picture.
pub(super) enum Beside {
    /// References to pieces, each with a weight; none where there are none.
    References(BTreeMap<PlacedId, Naming>),
    /// Overall dimensions.
    Dimensions,
}

/// A picture with references to the pieces that `named` gives a weight.
///
/// Where an inset found room only below it and makes the figure too high, the picture is drawn smaller, and
/// not its letters.
fn referenced_figure(
    studio: &Studio<'_>,
    shot: &Shot,
    print: &Print,
    picture: &Picture,
    named: &BTreeMap<PlacedId, Naming>,
) -> Figure {
    // What is looked for in the picture is found once.
    let anchors = shot.anchors(picture, named);
    let of_height =
        |height_mm| figure_of_height(studio, shot, print, picture, (named, &anchors), height_mm);
    let figure = of_height(print.height_mm);
    let over_mm = figure.height / PT_PER_MM - print.with_inset_mm;
    if shot.detail.is_none() || over_mm <= 0.0 {
        return figure;
    }
    let lower_mm = (print.height_mm - over_mm).max(print.height_mm / 2.0);
    of_height(lower_mm)
}

/// The same with the picture as high as `height_mm` at most.
fn figure_of_height(
    studio: &Studio<'_>,
    shot: &Shot,
    print: &Print,
    picture: &Picture,
    (named, anchors): (&BTreeMap<PlacedId, Naming>, &Anchors),
    height_mm: f64,
) -> Figure {
    let columns = if named.is_empty() {
        0.0
    } else {
        2.0 * column_mm(&studio.frame)
    };
    let scale = fit(
        &picture.bounds,
        studio.frame.width_mm - columns - 1.5,
        height_mm,
    );
    let sheet = Sheet::new(&picture.bounds, scale, Spot::default());
    let mut drawn = shot.marks(print, picture, &sheet);
    let references = references(studio, &shot.staging, anchors, &sheet, named);
    let area = area_of(&picture.bounds, &sheet);
    let references = lay_references(studio.fonts, &references, area, &studio.frame);
    let beside = columns / 2.0 * PT_PER_MM;
    let room = Area {
        x: area.x - beside,
        width: area.width + 2.0 * beside,
        ..area
    };
    let close = inset(
        studio,
        shot,
        print,
        picture,
        &sheet,
        [&drawn, &references],
        room,
    );
    drawn.extend(references);
    drawn.extend(close);
    framed(drawn, print.alternative.clone())
}

/// One reference for each part or sub-assembly among the named pieces, at the piece that shows
/// most.
fn references(
    studio: &Studio<'_>,
    staging: &Staging,
    anchors: &Anchors,
    sheet: &Sheet,
    named: &BTreeMap<PlacedId, Naming>,
) -> Vec<Reference> {
    let mut best: BTreeMap<&str, (Reference, f64)> = BTreeMap::new();
    let mut counted: BTreeSet<InstanceId> = BTreeSet::new();
    for (body, piece) in &staging.pieces {
        let Some(naming) = named.get(piece) else {
            continue;
        };
        let Some(label) = label_of(studio.build, *piece, naming) else {
            continue;
        };
        let weight = &naming.weight;
        let (spot, room) = match anchors.get(body) {
            Some((point, room)) => (sheet.spot(*point), *room),
            // Nothing of it is seen: it is counted with the others of its part, if there are.
            None => (Spot::default(), f64::NEG_INFINITY),
        };
        let entry = best.entry(label).or_insert_with(|| {
            let reference = Reference {
                label: label.to_owned(),
                count: 0,
                anchor: spot,
                rank: *weight,
            };
            (reference, f64::NEG_INFINITY)
        });
        let stronger = *weight == Weight::Strong && entry.0.rank == Weight::Quiet;
        if stronger {
            entry.0.count = 0;
            entry.0.rank = Weight::Strong;
            entry.1 = f64::NEG_INFINITY;
        }
        if *weight == entry.0.rank {
            // A sub-assembly counts once, whatever it is made of.
            let counts = naming.whole.is_none_or(|whole| counted.insert(whole));
            entry.0.count += usize::from(counts);
            if room > entry.1 {
                entry.0.anchor = spot;
                entry.1 = room;
            }
        }
    }
    best.into_values()
        .filter(|(_, room)| *room > 0.0)
        .map(|(reference, _)| reference)
        .map(|mut reference| {
            // What is there already is named, not counted.
            if reference.rank == Weight::Quiet {
                reference.count = 1;
            }
            reference
        })
        .collect()
}

/// What stands in the circle of a piece's reference.
fn label_of<'b>(build: &'b Build, piece: PlacedId, naming: &Naming) -> Option<&'b str> {
    match naming.whole {
        None => Some(&build.part_of(piece)?.label),
        Some(whole) => {
            let group = build.instances.get(whole.0)?.group;
            Some(&build.groups.get(group.0)?.label)
        }
    }
}

/// The smallest area that holds marks; none where nothing is drawn.
pub(super) fn area_around(marks: &[Mark]) -> Option<Area> {
    Area::around(|take| marks.iter().for_each(|mark| extent(mark, take)))
}

/// Marks moved so that they fill a figure from its upper left corner.
pub(super) fn framed(marks: Vec<Mark>, alternative: String) -> Figure {
    let Some(area) = area_around(&marks) else {
        return Figure {
            alternative,
            ..Figure::default()
        };
    };
    let (dx, dy) = (MARGIN_PT - area.x, MARGIN_PT - area.y);
    Figure {
        width: area.width + 2.0 * MARGIN_PT,
        height: area.height + 2.0 * MARGIN_PT,
        marks: marks.into_iter().map(|mark| mark.shifted(dx, dy)).collect(),
        alternative,
        to_scale: false,
    }
}

/// Calls `take` with spots around a mark.
fn extent(mark: &Mark, take: &mut dyn FnMut(Spot)) {
    match mark {
        Mark::Stroke { path, .. } | Mark::Fill { path, .. } | Mark::Sealed { path, .. } => {
            path.each_extreme(take);
        }
        Mark::Text(run) => {
            let width: f64 = run.glyphs.iter().map(|glyph| glyph.advance).sum();
            take(run.origin.shifted(0.0, -run.size * 0.8));
            take(run.origin.shifted(width, run.size * 0.22));
        }
        Mark::Link { area, .. } => {
            take(Spot::new(area.x, area.y));
            take(Spot::new(area.x + area.width, area.y + area.height));
        }
    }
}
