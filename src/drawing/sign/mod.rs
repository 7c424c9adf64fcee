//! Safety signs: the shapes and meanings of ISO 7010, drawn by ourselves in black and white.
//!
//! Every sign is plain data in a frame of 100 by 100. Its kind gives it its outer shape (ISO
//! 3864-1 [M]): a full disc for what must be done, a ring with a bar for what must not, a triangle
//! for what is dangerous; no colour is needed to tell them apart.

mod hands;
mod heads;
mod outer;
mod shapes;
#[cfg(test)]
mod tests;
mod things;

use std::collections::BTreeMap;

use crate::caution::{Sign, SignKind};
use crate::display::{Figure, Mark, PT_PER_MM, Pen, Tone};
use crate::words::Words;

use outer::Outer;
use shapes::{FRAME, Ink, Piece};

/// Width and height of a sign's figure, in points.
const SIZE: f64 = 12.0 * PT_PER_MM;

/// The symbol of every sign, by the name of its figure; what it means is told in the words of a language.
pub fn signs(words: &Words) -> BTreeMap<String, Figure> {
    let signs = Sign::ALL.iter();
    signs
        .map(|sign| (sign.figure(), figure(*sign, words)))
        .collect()
}

/// The pictogram of a sign.
const fn pictogram(sign: Sign) -> &'static [Piece] {
    match sign {
        Sign::Manual => things::MANUAL,
        Sign::Ears => heads::EARS,
        Sign::Eyes => heads::EYES,
        Sign::Feet => things::BOOT,
        Sign::Gloves | Sign::NoGloves => hands::GLOVE,
        Sign::Mask => heads::MASK,
        Sign::CrushedHands => hands::CRUSHED,
        Sign::NoFlame => things::FLAME,
        Sign::Electricity => things::BOLT,
    }
}

/// Everything of a sign, from below to above.
fn pieces(sign: Sign) -> impl Iterator<Item = &'static Piece> {
    let Outer { below, above } = Outer::of(sign.kind());
    below.iter().chain(pictogram(sign)).chain(above)
}

fn figure(sign: Sign, words: &Words) -> Figure {
    // A full disc is black; the other signs are drawn in black.
    let (ground, drawn) = match sign.kind() {
        SignKind::Mandatory => (Tone::BLACK, Tone::WHITE),
        SignKind::Prohibition | SignKind::Warning => (Tone::WHITE, Tone::BLACK),
    };
    let tone = |ink: Ink| match ink {
        Ink::Ground => ground,
        Ink::Drawn => drawn,
    };
    let scale = SIZE / FRAME;
    let marks = pieces(sign).map(|piece| match piece {
        Piece::Fill(ink, shape) => Mark::Fill {
            path: shape.path(scale),
            tone: tone(*ink),
        },
        Piece::Line(ink, width, shape) => Mark::Stroke {
            path: shape.path(scale),
            pen: Pen {
                width: width * scale,
                tone: tone(*ink),
                dashes: Vec::new(),
            },
        },
    });
    Figure {
        width: SIZE,
        height: SIZE,
        marks: marks.collect(),
        alternative: words.word(
            "drawing-sign",
            &[
                ("code", sign.code().into()),
                ("meaning", words.word(&sign.figure(), &[]).into()),
            ],
        ),
        to_scale: false,
    }
}
