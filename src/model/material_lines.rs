//! Materials, as their lines say.

use super::evaluate::Evaluator;
use super::findings::WORD_OUT_OF_PLACE;
use super::material::{Grain, Lumber, LumberMeasure, Material, MaterialForm, Sawn, StockPiece};
use crate::finding::Finding;
use crate::source::Span;
use crate::syntax::tree::{Expr, MaterialSetting};
use crate::units::Length;
use crate::wood::Wood;

/// The saw cut where a material states none (ref: layout-practice#P15 [P], standard blade).
const USUAL_KERF: Length = Length::from_nm(3_200_000);

impl Evaluator<'_> {
    /// A material.
    pub(super) fn material(&self, index: usize) -> Option<Material> {
        let scope = self.all.materials.scope(index);
        self.inside(scope, || self.material_here(index))
    }

    fn material_here(&self, index: usize) -> Option<Material> {
        let declared = self.all.materials.get(index)?;
        let mut material = Material {
            name: declared.name.value.clone(),
            title: declared.name.value.clone(),
            form: self.form(index)?,
            stock: Vec::new(),
            kerf: USUAL_KERF,
            trim: Length::ZERO,
            grain: Grain::AlongLength,
            density: None,
            species: None,
            sawn: Sawn::default(),
            stages: None,
            defects: None,
            lumber: Lumber::default(),
            span: declared.span,
        };
        for setting in &declared.settings {
            match setting {
                MaterialSetting::Name(text) => material.title.clone_from(&text.value),
                MaterialSetting::Kerf(kerf) => {
                    material.kerf = self.length_from_zero(kerf, None, "the kerf")?;
                }
                MaterialSetting::Trim(trim) => {
                    material.trim = self.length_from_zero(trim, None, "the trim")?;
                }
                MaterialSetting::Density(density) => material.density = self.density(density),
                MaterialSetting::Grain(word) => match word.value.as_str() {
                    "length" => material.grain = Grain::AlongLength,
                    "none" => material.grain = Grain::None,
                    _ => self.tell_word(word, "a direction of grain", &["along length", "none"]),
                },
                MaterialSetting::Stock {
                    length,
                    width,
                    price,
                    count,
                    span,
                } => {
                    let mut piece = self.piece(material.form, length, width.as_ref(), *span)?;
                    piece.price = price.as_ref().and_then(|price| self.money(price));
                    piece.count = self.limit(count.as_ref());
                    material.stock.push(piece);
                }
                MaterialSetting::Offcut {
                    length,
                    width,
                    count,
                    span,
                } => {
                    let mut piece = self.piece(material.form, length, width.as_ref(), *span)?;
                    piece.on_hand = true;
                    piece.count = self.limit(count.as_ref()).or(Some(1));
                    material.stock.push(piece);
                }
                MaterialSetting::Defects(more, of) => {
                    material.defects = self.ratio(more, of, "the number of boards");
                }
                MaterialSetting::Stages(count) => {
                    let stages = self.count(count, None, 2, "the number of stages");
                    material.stages = stages.and_then(|stages| u8::try_from(stages.min(99)).ok());
                }
                MaterialSetting::Waste(lost, of) => {
                    if let Some(waste) = self.ratio(lost, of, "the waste") {
                        material.lumber.waste = waste;
                    }
                }
                MaterialSetting::Allowance(length, width) => {
                    material.lumber.allowance = [
                        self.length_from_zero(length, None, "the allowance")?,
                        self.length_from_zero(width, None, "the allowance")?,
                    ];
                }
                MaterialSetting::Price(price, per) => {
                    let measure = LumberMeasure::ALL
                        .into_iter()
                        .find(|measure| measure.word() == per.value);
                    material.lumber.price = self.money(price).zip(measure);
                }
                MaterialSetting::Species(word) => match Wood::by_word(&word.value) {
                    Some(_) => material.species = Some(word.value.clone()),
                    None => {
                        let known: Vec<&str> = Wood::words().collect();
                        self.tell_word(word, "a species or panel with known figures", &known);
                    }
                },
                MaterialSetting::Sawn(word) => match word.value.as_str() {
                    "flat" => material.sawn = Sawn::Flat,
                    "quarter" => material.sawn = Sawn::Quarter,
                    _ => self.tell_word(word, "a way of sawing", &["flat", "quarter"]),
                },
                MaterialSetting::Thickness(_)
                | MaterialSetting::Section(..)
                | MaterialSetting::Diameter(_)
                | MaterialSetting::Allow(_) => {}
            }
        }
        material.density = material
            .density
            .or_else(|| material.wood()?.density_kg_m3());
        self.check_kind_of_lines(index, &material);
        let is_lumber = matches!(material.form, MaterialForm::Lumber { .. });
        if !is_lumber && !material.stock.iter().any(|piece| !piece.on_hand) {
            let message = format!("`{}` does not say how it is sold", material.name);
            self.tell_lacking(declared.name.span, &message, "add a line `stock 2440 mm by 1220 mm price 79.00 EUR`, or `stock 2400 mm` for a board");
        }
        Some(material)
    }

    /// A piece as sold or on hand: its sizes.
    fn piece(
        &self,
        form: MaterialForm,
        length: &Expr,
        width: Option<&Expr>,
        span: Span,
    ) -> Option<StockPiece> {
        let length = self.positive_length(length, None, "the length of the stock")?;
        let width = match (form, width) {
            (MaterialForm::Board { width, .. }, _) => width,
            (MaterialForm::Round { diameter }, _) => diameter,
            (MaterialForm::Sheet { .. } | MaterialForm::Lumber { .. }, Some(width)) => {
                self.positive_length(width, None, "the width of the stock")?
            }
            (MaterialForm::Sheet { .. }, None) => {
                let message = "a sheet's stock has a length and a width";
                self.tell_lacking(span, message, "write `stock 2440 mm by 1220 mm`");
                return None;
            }
            (MaterialForm::Lumber { .. }, None) => {
                let message = "the largest board of lumber has a length and a width";
                self.tell_lacking(span, message, "write `stock 2500 mm by 180 mm`");
                return None;
            }
        };
        Some(StockPiece {
            length,
            width,
            price: None,
            count: None,
            on_hand: false,
            span,
        })
    }

    fn limit(&self, count: Option<&Expr>) -> Option<i64> {
        self.count(count?, None, 1, "the number of pieces")
    }

    /// So many in so many.
    fn ratio(&self, part: &Expr, of: &Expr, what: &str) -> Option<(i64, i64)> {
        let part = self.count(part, None, 0, what)?;
        Some((part, self.count(of, None, 1, what)?))
    }

    /// Lines that mean nothing for the form of a material.
    fn check_kind_of_lines(&self, index: usize, material: &Material) {
        let Some(declared) = self.all.materials.get(index) else {
            return;
        };
        let is_lumber = matches!(material.form, MaterialForm::Lumber { .. });
        let is_sheet = matches!(material.form, MaterialForm::Sheet { .. });
        let mut boards = 0;
        for setting in &declared.settings {
            let (span, what, wanted) = match setting {
                MaterialSetting::Price(price, _) => (price.span, "a price per measure", is_lumber),
                MaterialSetting::Waste(lost, _) => (lost.span, "a share of waste", is_lumber),
                MaterialSetting::Allowance(length, _) => (length.span, "an allowance", is_lumber),
                MaterialSetting::Offcut { span, .. } => (*span, "an offcut on hand", !is_lumber),
                MaterialSetting::Defects(more, _) => (
                    more.span,
                    "an allowance for defects",
                    !is_lumber && !is_sheet,
                ),
                MaterialSetting::Stages(count) => (count.span, "a number of stages", is_sheet),
                MaterialSetting::Stock {
                    span, price, count, ..
                } if is_lumber => {
                    boards += 1;
                    let is_plain = boards == 1 && price.is_none() && count.is_none();
                    (*span, "a piece with a price or a number", is_plain)
                }
                MaterialSetting::Name(_)
                | MaterialSetting::Thickness(_)
                | MaterialSetting::Section(..)
                | MaterialSetting::Diameter(_)
                | MaterialSetting::Stock { .. }
                | MaterialSetting::Kerf(_)
                | MaterialSetting::Trim(_)
                | MaterialSetting::Grain(_)
                | MaterialSetting::Density(_)
                | MaterialSetting::Species(_)
                | MaterialSetting::Sawn(_)
                | MaterialSetting::Allow(_) => continue,
            };
            if !wanted {
                let kind = &declared.kind.value;
                let message = format!("{what} means nothing for material that is `{kind}`");
                self.tell(Finding::new(&WORD_OUT_OF_PLACE, span, message).remedy(
                    "take the line out; `price … per`, `waste` and `allowance` are for `lumber`, \
                     `offcut` and several lines of `stock` for what is bought by the piece, \
                     `defects` for boards and bars, `stages` for sheets",
                ));
            }
        }
    }

    fn form(&self, index: usize) -> Option<MaterialForm> {
        let declared = self.all.materials.get(index)?;
        let has = |wanted: fn(&MaterialSetting) -> bool| declared.settings.iter().any(wanted);
        let thick = has(|s| matches!(s, MaterialSetting::Thickness(_)));
        let section = has(|s| matches!(s, MaterialSetting::Section(..)));
        let round = has(|s| matches!(s, MaterialSetting::Diameter(_)));
        match declared.kind.value.as_str() {
            "sheet" if thick && !section && !round => {
                let thickness = self.material_thickness(index)?;
                Some(MaterialForm::Sheet { thickness })
            }
            "sheet" => {
                self.tell_lacking(
                    declared.name.span,
                    "a sheet has a thickness, and neither section nor diameter",
                    "write `thickness 18 mm`",
                );
                None
            }
            "lumber" if thick && !section && !round => {
                let thickness = self.material_thickness(index)?;
                Some(MaterialForm::Lumber { thickness })
            }
            "lumber" => {
                self.tell_lacking(
                    declared.name.span,
                    "lumber has a thickness as sawn, and neither section nor diameter",
                    "write `thickness 27 mm`",
                );
                None
            }
            "bar" if round && !thick && !section => {
                let diameter = self.material_thickness(index)?;
                Some(MaterialForm::Round { diameter })
            }
            "board" | "bar" if section && !thick && !round => {
                let (a, b) = (self.material_thickness(index)?, self.material_width(index)?);
                Some(MaterialForm::Board {
                    thickness: a,
                    width: b,
                })
            }
            "board" | "bar" => {
                self.tell_lacking(declared.name.span, "a board or bar has one section, or a round bar one diameter", "write `section 20 mm by 95 mm`, thickness first, or `diameter 12 mm` for a bar");
                None
            }
            _ => {
                self.tell_word(
                    &declared.kind,
                    "a form of material",
                    &["sheet", "board", "bar", "lumber"],
                );
                None
            }
        }
    }
}
