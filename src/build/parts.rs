//! The parts that come out: pieces alike in every respect share one part and one letter.

use super::assemble::FirstOf;
use super::piece::Piece;
use super::types::{Part, PlacedPart};
use super::variant::{Flip, Made, flipped_extent, flipped_features, flipped_lie};
use crate::geometry::{Handedness, Interval};
use crate::model::{Model, PartDesign, PartId};

/// Parts and placed pieces of a build.
pub(super) struct Parts {
    pub(super) parts: Vec<Part>,
    pub(super) placed: Vec<PlacedPart>,
    /// The first part that each part of the model became; none for one that is never made.
    pub(super) first_of: FirstOf,
    /// For each part the part of the model that it came out of, and how it is turned to that.
    pub(super) turned: Vec<(PartId, Flip)>,
}

/// A part that comes out of a description, and the pieces that are it, each under a flip.
struct Variant {
    made: Made,
    pieces: Vec<(usize, Flip)>,
}

/// Sorts the pieces into parts, in the order in which the parts are described.
pub(super) fn gather_parts(model: &Model, pieces: &[Piece<'_>]) -> Parts {
    let mut by_design: Vec<Vec<usize>> = vec![Vec::new(); model.parts.len()];
    for (index, piece) in pieces.iter().enumerate() {
        if let Some(list) = by_design.get_mut(piece.placement.part.0) {
            list.push(index);
        }
    }
    let mut gathered = Parts {
        parts: Vec::new(),
        placed: Vec::new(),
        first_of: FirstOf::new(),
        turned: Vec::new(),
    };
    let mut placed: Vec<Option<PlacedPart>> = vec![None; pieces.len()];
    for (design_index, (design, list)) in model.parts.iter().zip(&by_design).enumerate() {
        for variant in variants(pieces, list) {
            let id = PartId(gathered.parts.len());
            gathered.first_of.entry(design_index).or_insert(id);
            let mut part = part_of(design, &label(id.0));
            for (order, (index, flip)) in variant.pieces.iter().enumerate() {
                let Some(piece) = pieces.get(*index) else {
                    continue;
                };
                if order == 0 {
                    part.extent = flipped_extent(piece, *flip);
                    part.features = flipped_features(piece, *flip);
                }
                let placed_part = place_piece(piece, *flip, id);
                match placed_part.handedness {
                    Handedness::AsDrawn => part.count += 1,
                    Handedness::Mirrored => part.mirrored += 1,
                }
                if let Some(slot) = placed.get_mut(*index) {
                    *slot = Some(placed_part);
                }
            }
            gathered.parts.push(part);
            let flip = variant.pieces.first().map_or(Flip::NONE, |(_, flip)| *flip);
            gathered.turned.push((PartId(design_index), flip));
        }
        add_extra_pieces(design, design_index, &mut gathered);
    }
    gathered.placed = placed.into_iter().flatten().collect();
    gathered
}

/// Pieces of one description, sorted by what comes out.
fn variants(pieces: &[Piece<'_>], list: &[usize]) -> Vec<Variant> {
    let mut variants: Vec<Variant> = Vec::new();
    'pieces: for index in list {
        let Some(piece) = pieces.get(*index) else {
            continue;
        };
        // Flips that make it a piece as drawn come first: what is its own mirror image is never
        // "mirrored".
        let flips = Flip::as_drawn_first(piece.placement.handedness);
        for flip in flips {
            let made = Made::of(piece, flip);
            if let Some(variant) = variants.iter_mut().find(|variant| variant.made == made) {
                variant.pieces.push((*index, flip));
                continue 'pieces;
            }
        }
        let [first, ..] = flips;
        variants.push(Variant {
            made: Made::of(piece, first),
            pieces: vec![(*index, first)],
        });
    }
    variants
}

fn place_piece(piece: &Piece<'_>, flip: Flip, part: PartId) -> PlacedPart {
    let (orientation, handedness) = flipped_lie(piece, flip);
    PlacedPart {
        name: piece.placement.name.clone(),
        part,
        handedness,
        orientation,
        body: piece.placement.body,
        place: piece.place(),
        removable: piece.placement.removable,
        within: piece.placement.within,
        step: None,
        comings: Vec::new(),
        span: piece.placement.span,
    }
}

/// A part with nothing counted yet.
fn part_of(design: &PartDesign, label: &str) -> Part {
    Part {
        name: design.name.clone(),
        title: design.title.clone(),
        label: label.to_owned(),
        material: design.material,
        extent: design.size.map(Interval::of),
        grain_along_length: design.grain_along_length,
        layers: design.layers,
        oversize: design.oversize,
        count: 0,
        mirrored: 0,
        note: design.note.clone(),
        features: design.features.clone(),
        bands: design.bands.clone(),
        span: design.span,
    }
}

/// Pieces that are made and not placed belong to the first part of their description, or are a
/// part of their own where none is placed.
fn add_extra_pieces(design: &PartDesign, index: usize, gathered: &mut Parts) {
    if design.extra == 0 {
        return;
    }
    let first = gathered.first_of.get(&index).copied();
    match first.and_then(|id| gathered.parts.get_mut(id.0)) {
        Some(part) => part.count += design.extra,
        None => {
            let id = PartId(gathered.parts.len());
            gathered.first_of.insert(index, id);
            let part = Part {
                count: design.extra,
                ..part_of(design, &label(id.0))
            };
            gathered.parts.push(part);
            gathered.turned.push((PartId(index), Flip::NONE));
        }
    }
}

/// A to Z, then AA to ZZ, and so on; without I and O, which are read as 1 and 0.
fn label(index: usize) -> String {
    const LETTERS: &[u8; 24] = b"ABCDEFGHJKLMNPQRSTUVWXYZ";
    let mut rest = index;
    let mut letters = Vec::new();
    loop {
        letters.push(LETTERS.get(rest % LETTERS.len()).copied().unwrap_or(b'A'));
        rest /= LETTERS.len();
        if rest == 0 {
            break;
        }
        rest -= 1;
    }
    letters
        .iter()
        .rev()
        .map(|letter| char::from(*letter))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::label;

    #[test]
    fn labels_go_on_after_z() {
        assert_eq!(label(0), "A");
        assert_eq!(label(8), "J");
        assert_eq!(label(23), "Z");
        assert_eq!(label(24), "AA");
        assert_eq!(label(24 + 24 * 24), "AAA");
    }
}
