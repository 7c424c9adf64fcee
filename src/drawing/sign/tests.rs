//! Every sign has a symbol that stays in its frame and can be seen on paper.

use super::shapes::{FRAME, Piece};
use super::{SIZE, pictogram, pieces, signs};
use crate::caution::{Sign, SignKind};
use crate::display::{PT_PER_MM, Spot};
use crate::words::Words;

/// Calls `take` with the outermost spots of a piece and how far its ink reaches beyond them.
fn each_extreme(piece: &Piece, mut take: impl FnMut(Spot, f64)) {
    let (shape, reach) = match piece {
        Piece::Fill(_, shape) => (shape, 0.0),
        Piece::Line(_, width, shape) => (shape, width / 2.0),
    };
    shape.path(1.0).each_extreme(|spot| take(spot, reach));
}

#[test]
fn every_sign_has_a_symbol() {
    let signs = signs(&Words::english());
    assert_eq!(signs.len(), Sign::ALL.len());
    for sign in Sign::ALL {
        let figure = signs.get(&sign.figure()).unwrap();
        assert!(figure.marks.len() > pictogram(*sign).len() && !pictogram(*sign).is_empty());
        assert!(
            figure
                .alternative
                .starts_with(&format!("Safety sign {}: ", sign.code()))
        );
        assert!(!figure.alternative.ends_with(&sign.figure()));
        assert!((figure.width - SIZE).abs() + (figure.height - SIZE).abs() < 1e-9);
    }
}

#[test]
fn symbols_stay_within_their_frame() {
    for sign in Sign::ALL {
        for piece in pieces(*sign) {
            each_extreme(piece, |spot, reach| {
                let within = reach..=FRAME - reach;
                assert!(
                    within.contains(&spot.x) && within.contains(&spot.y),
                    "{sign:?}: {spot:?}"
                );
            });
        }
    }
}

#[test]
fn pictograms_stay_within_their_outer_shape() {
    for sign in Sign::ALL {
        for piece in pictogram(*sign) {
            each_extreme(piece, |spot, reach| {
                let aside = (spot.x - FRAME / 2.0).abs();
                let out = libm::hypot(aside, spot.y - FRAME / 2.0) + reach;
                let is_inside = match sign.kind() {
                    SignKind::Mandatory => out < 48.0,
                    SignKind::Prohibition => out < 44.5,
                    // Between the slopes, and above the ground.
                    SignKind::Warning => {
                        let slope = (spot.y - 10.6) / 3.0_f64.sqrt() - aside;
                        slope > (reach + 3.5) * 2.0 / 3.0_f64.sqrt() && spot.y + reach < 89.4 - 3.5
                    }
                };
                assert!(is_inside, "{sign:?}: {spot:?} reaches out");
            });
        }
    }
}

#[test]
fn no_line_is_thinner_than_the_narrow_lines_of_drawings() {
    // Beside text signs are printed 9 mm high.
    for sign in Sign::ALL {
        for piece in pieces(*sign) {
            if let Piece::Line(_, width, _) = piece {
                let printed = width / FRAME * 9.0 * PT_PER_MM;
                assert!(
                    printed >= super::super::pens::NARROW_MM * PT_PER_MM,
                    "{sign:?}"
                );
            }
        }
    }
}
