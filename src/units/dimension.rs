//! Kinds of quantity, checked like types: a length is not an area, and neither is a count.

use serde::Serialize;

/// What a quantity measures, as powers of the base kinds.
///
/// A bare number (a count or a ratio) has every power zero.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
pub struct Dimension {
    /// Power of length: 2 for an area.
    pub length: i8,
    /// Power of mass.
    pub mass: i8,
    /// Power of time.
    pub time: i8,
    /// Power of plane angle.
    pub angle: i8,
    /// Power of money.
    pub money: i8,
}

macro_rules! dimension {
    ($($field:ident : $power:literal),*) => {
        Dimension { $($field: $power,)* ..Dimension::COUNT }
    };
}

impl Dimension {
    /// A bare number.
    pub const COUNT: Self = Self {
        length: 0,
        mass: 0,
        time: 0,
        angle: 0,
        money: 0,
    };
    /// A length.
    pub const LENGTH: Self = dimension!(length: 1);
    /// An area.
    pub const AREA: Self = dimension!(length: 2);
    /// A volume.
    pub const VOLUME: Self = dimension!(length: 3);
    /// An angle.
    pub const ANGLE: Self = dimension!(angle: 1);
    /// A mass.
    pub const MASS: Self = dimension!(mass: 1);
    /// Money.
    pub const MONEY: Self = dimension!(money: 1);
    /// A time.
    pub const TIME: Self = dimension!(time: 1);
    /// Mass by volume.
    pub const DENSITY: Self = dimension!(mass: 1, length: -3);

    /// The kind of a product, or none where a power leaves its range.
    pub fn times(self, other: Self) -> Option<Self> {
        Some(Self {
            length: self.length.checked_add(other.length)?,
            mass: self.mass.checked_add(other.mass)?,
            time: self.time.checked_add(other.time)?,
            angle: self.angle.checked_add(other.angle)?,
            money: self.money.checked_add(other.money)?,
        })
    }

    /// The kind of one over this.
    pub fn inverse(self) -> Option<Self> {
        Some(Self {
            length: self.length.checked_neg()?,
            mass: self.mass.checked_neg()?,
            time: self.time.checked_neg()?,
            angle: self.angle.checked_neg()?,
            money: self.money.checked_neg()?,
        })
    }

    /// The author's word for it, with an article: "a length".
    pub fn name(self) -> &'static str {
        match self {
            Self::COUNT => "a plain number",
            Self::LENGTH => "a length",
            Self::AREA => "an area",
            Self::VOLUME => "a volume",
            Self::ANGLE => "an angle",
            Self::MASS => "a mass",
            Self::MONEY => "a price",
            Self::TIME => "a time",
            Self::DENSITY => "a density",
            Self { .. } => "a compound quantity",
        }
    }
}
