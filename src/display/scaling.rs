//! Marks made larger or smaller, from the upper left corner.

use super::{Area, Glyph, GlyphRun, Mark, Path, Pen, Spot};

impl Spot {
    /// `factor` times as far from the upper left corner.
    #[must_use]
    pub fn scaled(self, factor: f64) -> Self {
        Self {
            x: self.x * factor,
            y: self.y * factor,
        }
    }
}

impl Area {
    /// `factor` times as large and as far from the upper left corner.
    #[must_use]
    pub fn scaled(self, factor: f64) -> Self {
        Self {
            x: self.x * factor,
            y: self.y * factor,
            width: self.width * factor,
            height: self.height * factor,
        }
    }
}

impl Path {
    /// `factor` times as large and as far from the upper left corner.
    #[must_use]
    pub fn scaled(self, factor: f64) -> Self {
        self.with_spots(|spot| spot.scaled(factor))
    }
}

impl Pen {
    /// `factor` times as wide, with dashes as much longer.
    #[must_use]
    pub fn scaled(self, factor: f64) -> Self {
        Self {
            width: self.width * factor,
            tone: self.tone,
            dashes: self.dashes.into_iter().map(|dash| dash * factor).collect(),
        }
    }
}

impl GlyphRun {
    /// `factor` times as large and as far from the upper left corner.
    #[must_use]
    pub fn scaled(self, factor: f64) -> Self {
        let glyph = |glyph: Glyph| Glyph {
            advance: glyph.advance * factor,
            offset_x: glyph.offset_x * factor,
            offset_y: glyph.offset_y * factor,
            ..glyph
        };
        Self {
            origin: self.origin.scaled(factor),
            size: self.size * factor,
            glyphs: self.glyphs.into_iter().map(glyph).collect(),
            ..self
        }
    }
}

impl Mark {
    /// `factor` times as large and as far from the upper left corner.
    #[must_use]
    pub fn scaled(self, factor: f64) -> Self {
        match self {
            Self::Stroke { path, pen } => Self::Stroke {
                path: path.scaled(factor),
                pen: pen.scaled(factor),
            },
            Self::Fill { path, tone } => Self::Fill {
                path: path.scaled(factor),
                tone,
            },
            Self::Sealed { path, tone, width } => Self::Sealed {
                path: path.scaled(factor),
                tone,
                width: width * factor,
            },
            Self::Text(run) => Self::Text(run.scaled(factor)),
            Self::Link { area, target } => Self::Link {
                area: area.scaled(factor),
                target,
            },
        }
    }
}
