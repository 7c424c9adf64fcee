//! Axes, directions and how a part's own frame lies in the world.

use serde::Serialize;

use crate::units::Length;

/// An axis of the world.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
pub enum Axis {
    /// x, from left to right.
    Across,
    /// y, from front to back.
    Deep,
    /// z, from bottom to top.
    High,
}

impl Axis {
    /// All three, in order.
    pub const ALL: [Self; 3] = [Self::Across, Self::Deep, Self::High];

    /// Its place in an array of three.
    pub const fn index(self) -> usize {
        match self {
            Self::Across => 0,
            Self::Deep => 1,
            Self::High => 2,
        }
    }

    /// The direction in which it falls.
    pub const fn low(self) -> Direction {
        match self {
            Self::Across => Direction::Left,
            Self::Deep => Direction::Front,
            Self::High => Direction::Bottom,
        }
    }

    /// The direction in which it rises.
    pub const fn high(self) -> Direction {
        match self {
            Self::Across => Direction::Right,
            Self::Deep => Direction::Back,
            Self::High => Direction::Top,
        }
    }

    /// The way it runs, in words.
    pub const fn way(self) -> &'static str {
        match self {
            Self::Across => "from left to right",
            Self::Deep => "from front to back",
            Self::High => "from bottom to top",
        }
    }

    /// The author's word.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Across => "across",
            Self::Deep => "deep",
            Self::High => "high",
        }
    }
}

/// One of the six directions of the world, and the face of a placed part that looks that way.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Direction {
    /// Towards smaller x.
    Left,
    /// Towards larger x.
    Right,
    /// Towards smaller y, towards the reader.
    Front,
    /// Towards larger y.
    Back,
    /// Towards smaller z.
    Bottom,
    /// Towards larger z.
    Top,
}

impl Direction {
    /// All six, in order.
    pub const ALL: [Self; 6] = [
        Self::Left,
        Self::Right,
        Self::Front,
        Self::Back,
        Self::Bottom,
        Self::Top,
    ];

    /// The axis it runs along.
    pub const fn axis(self) -> Axis {
        match self {
            Self::Left | Self::Right => Axis::Across,
            Self::Front | Self::Back => Axis::Deep,
            Self::Bottom | Self::Top => Axis::High,
        }
    }

    /// True for right, back and top.
    pub const fn is_positive(self) -> bool {
        matches!(self, Self::Right | Self::Back | Self::Top)
    }

    /// +1 or -1 along its axis.
    pub const fn sign(self) -> i64 {
        if self.is_positive() { 1 } else { -1 }
    }

    /// The other way.
    pub const fn opposite(self) -> Self {
        if self.is_positive() {
            self.axis().low()
        } else {
            self.axis().high()
        }
    }

    /// The author's word; `up` and `down` are understood for top and bottom.
    pub fn from_word(word: &str) -> Option<Self> {
        Some(match word {
            "left" => Self::Left,
            "right" => Self::Right,
            "front" => Self::Front,
            "back" => Self::Back,
            "bottom" | "down" | "below" => Self::Bottom,
            "top" | "up" | "above" => Self::Top,
            _ => return None,
        })
    }

    /// The author's word for the face that looks this way.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Left => "left",
            Self::Right => "right",
            Self::Front => "front",
            Self::Back => "back",
            Self::Bottom => "bottom",
            Self::Top => "top",
        }
    }
}

/// An axis of a part.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
pub enum PartAxis {
    /// From foot to head.
    Length,
    /// From near edge to far edge.
    Width,
    /// From back to face.
    Thickness,
}

impl PartAxis {
    /// All three, in order.
    pub const ALL: [Self; 3] = [Self::Length, Self::Width, Self::Thickness];

    /// Its place in an array of three.
    pub const fn index(self) -> usize {
        match self {
            Self::Length => 0,
            Self::Width => 1,
            Self::Thickness => 2,
        }
    }

    /// The side where it begins.
    pub const fn low(self) -> Side {
        match self {
            Self::Length => Side::Foot,
            Self::Width => Side::Near,
            Self::Thickness => Side::Back,
        }
    }

    /// The side where it ends.
    pub const fn high(self) -> Side {
        match self {
            Self::Length => Side::Head,
            Self::Width => Side::Far,
            Self::Thickness => Side::Face,
        }
    }

    /// The author's word.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Length => "length",
            Self::Width => "width",
            Self::Thickness => "thickness",
        }
    }
}

/// One of the six sides of a part: two ends, two edges, two faces.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Side {
    /// The end where the length begins.
    Foot,
    /// The end where the length stops.
    Head,
    /// The edge where the width begins.
    Near,
    /// The edge where the width stops.
    Far,
    /// The broad side where the thickness begins.
    Back,
    /// The broad side where the thickness stops.
    Face,
}

impl Side {
    /// All six, in order.
    pub const ALL: [Self; 6] = [
        Self::Foot,
        Self::Head,
        Self::Near,
        Self::Far,
        Self::Back,
        Self::Face,
    ];

    /// The part axis it bounds.
    pub const fn axis(self) -> PartAxis {
        match self {
            Self::Foot | Self::Head => PartAxis::Length,
            Self::Near | Self::Far => PartAxis::Width,
            Self::Back | Self::Face => PartAxis::Thickness,
        }
    }

    /// True for head, far and face.
    pub const fn is_high(self) -> bool {
        matches!(self, Self::Head | Self::Far | Self::Face)
    }

    /// The level `by` inside of this side, which is itself at `level`.
    pub fn inward(self, level: Length, by: Length) -> Length {
        if self.is_high() {
            level - by
        } else {
            level + by
        }
    }

    /// The side across from it.
    pub const fn opposite(self) -> Self {
        if self.is_high() {
            self.axis().low()
        } else {
            self.axis().high()
        }
    }

    /// The side of an author's word.
    pub fn from_word(word: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|side| side.word() == word)
    }

    /// The author's word.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Foot => "foot",
            Self::Head => "head",
            Self::Near => "near",
            Self::Far => "far",
            Self::Back => "back",
            Self::Face => "face",
        }
    }
}

/// A stretch along an axis, from low to high.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
pub struct Interval {
    /// Where it begins.
    pub low: Length,
    /// Where it stops; never below `low` where [`Interval::new`] made it.
    pub high: Length,
}

impl Interval {
    /// The stretch between two positions, given in either order.
    pub fn new(a: Length, b: Length) -> Self {
        Self {
            low: a.min(b),
            high: a.max(b),
        }
    }

    /// From zero to `length`.
    pub fn of(length: Length) -> Self {
        Self::new(Length::ZERO, length)
    }

    /// Its length.
    pub fn size(self) -> Length {
        self.high - self.low
    }

    /// Its middle, to a whole nanometre.
    pub fn middle(self) -> Length {
        self.low + self.size().half()
    }

    /// What both have in common; empty or inverted stretches are none.
    pub fn overlap(self, other: Self) -> Option<Self> {
        let (low, high) = (self.low.max(other.low), self.high.min(other.high));
        (low < high).then_some(Self { low, high })
    }

    /// The shortest stretch that holds both.
    pub fn hull(self, other: Self) -> Self {
        Self {
            low: self.low.min(other.low),
            high: self.high.max(other.high),
        }
    }

    /// True where `position` lies in it or on an end.
    pub fn holds(self, position: Length) -> bool {
        self.low <= position && position <= self.high
    }

    /// Moved by `distance`.
    pub fn shifted(self, distance: Length) -> Self {
        Self {
            low: self.low + distance,
            high: self.high + distance,
        }
    }
}

/// How a part lies in the world: which way each of its axes runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Orientation {
    /// Where the length runs, foot to head.
    pub length: Direction,
    /// Where the width runs, near to far.
    pub width: Direction,
    /// Where the thickness runs, back to face.
    pub thickness: Direction,
}

impl Orientation {
    /// The orientation with the given length and width; the face looks along their right-handed
    /// cross product, or against it where the part is `handed` as a mirror image.
    ///
    /// None where length and width run along one axis.
    pub fn new(length: Direction, width: Direction, handed: Handedness) -> Option<Self> {
        let (a, b) = (length.axis().index(), width.axis().index());
        if a == b {
            return None;
        }
        let third = *Axis::ALL.get(3 - a - b)?;
        let cyclic = (a + 1) % 3 == b;
        let positive = (length.sign() * width.sign() > 0) == cyclic;
        let face = if positive { third.high() } else { third.low() };
        let thickness = match handed {
            Handedness::AsDrawn => face,
            Handedness::Mirrored => face.opposite(),
        };
        Some(Self {
            length,
            width,
            thickness,
        })
    }

    /// The world direction of a part axis.
    pub const fn direction(self, axis: PartAxis) -> Direction {
        match axis {
            PartAxis::Length => self.length,
            PartAxis::Width => self.width,
            PartAxis::Thickness => self.thickness,
        }
    }

    /// The world direction a side of the part looks.
    pub const fn outward(self, side: Side) -> Direction {
        let direction = self.direction(side.axis());
        if side.is_high() {
            direction
        } else {
            direction.opposite()
        }
    }

    /// The side of the part that looks in a world direction.
    pub fn side(self, direction: Direction) -> Side {
        let along = self.part_axis(direction.axis());
        if self.direction(along) == direction {
            along.high()
        } else {
            along.low()
        }
    }

    /// The part axis that runs along a world axis.
    pub fn part_axis(self, axis: Axis) -> PartAxis {
        if self.length.axis() == axis {
            PartAxis::Length
        } else if self.width.axis() == axis {
            PartAxis::Width
        } else {
            PartAxis::Thickness
        }
    }
}

/// Whether a part is made as drawn or as its mirror image.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
pub enum Handedness {
    /// As its description says.
    AsDrawn,
    /// With its face looking the other way, so that left becomes right.
    Mirrored,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn frames_are_right_handed() {
        let lying = Orientation::new(Direction::Right, Direction::Back, Handedness::AsDrawn);
        assert_eq!(lying.map(|o| o.thickness), Some(Direction::Top));
        let standing = Orientation::new(Direction::Top, Direction::Back, Handedness::AsDrawn);
        assert_eq!(standing.map(|o| o.thickness), Some(Direction::Left));
        let mirrored = Orientation::new(Direction::Top, Direction::Back, Handedness::Mirrored);
        assert_eq!(mirrored.map(|o| o.thickness), Some(Direction::Right));
        assert_eq!(
            Orientation::new(Direction::Top, Direction::Bottom, Handedness::AsDrawn),
            None
        );
    }

    #[test]
    fn sides_and_directions_agree() {
        for length in Direction::ALL {
            for width in Direction::ALL {
                let Some(o) = Orientation::new(length, width, Handedness::AsDrawn) else {
                    continue;
                };
                for side in Side::ALL {
                    assert_eq!(o.side(o.outward(side)), side);
                }
            }
        }
    }
}
