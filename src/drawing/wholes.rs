//! What travels as one: a piece by itself, or a sub-assembly that is put together already.

use std::collections::BTreeMap;

use super::blocking::Blocking;
use super::contacts::{Box3, Contacts, Touch};
use super::explode::Together;
use crate::build::{Build, InstanceId, PlacedId};
use crate::geometry::Direction;

/// Pieces that travel, each whole under the first piece in it.
pub(super) struct Wholes {
    /// The first piece of the whole that a piece is in.
    first: BTreeMap<PlacedId, PlacedId>,
    members: BTreeMap<PlacedId, Vec<PlacedId>>,
    places: BTreeMap<PlacedId, Box3>,
    /// What a whole touches outside of itself, others under their first pieces.
    touches: BTreeMap<PlacedId, Vec<Touch>>,
}

impl Wholes {
    /// The pieces of a view, the moving ones by what they come with.
    pub(super) fn of(
        build: &Build,
        contacts: &Contacts,
        [moving, standing]: [&[PlacedId]; 2],
        together: Together,
    ) -> Self {
        let mut leaders: BTreeMap<InstanceId, PlacedId> = BTreeMap::new();
        let mut first: BTreeMap<PlacedId, PlacedId> = BTreeMap::new();
        for piece in moving {
            let whole = match together {
                Together::Nothing => None,
                Together::Wholes(into) => build.comes_with(*piece, into),
            };
            let leader = match whole {
                Some(whole) => *leaders.entry(whole).or_insert(*piece),
                None => *piece,
            };
            first.insert(*piece, leader);
        }
        first.extend(standing.iter().map(|piece| (*piece, *piece)));
        let mut members: BTreeMap<PlacedId, Vec<PlacedId>> = BTreeMap::new();
        let mut places: BTreeMap<PlacedId, Box3> = BTreeMap::new();
        let mut touches: BTreeMap<PlacedId, Vec<Touch>> = BTreeMap::new();
        for (piece, leader) in &first {
            members.entry(*leader).or_default().push(*piece);
            let place = places.entry(*leader).or_insert(Box3::NONE);
            place.join(&contacts.place(*piece));
            let outside = contacts.of_piece(*piece).iter().filter_map(|touch| {
                let other = first.get(&touch.other).copied()?;
                (other != *leader).then_some(Touch { other, ..*touch })
            });
            touches.entry(*leader).or_default().extend(outside);
        }
        Self {
            first,
            members,
            places,
            touches,
        }
    }

    /// The first pieces of the wholes that some pieces are in, each once, in their order.
    pub(super) fn firsts(&self, pieces: &[PlacedId]) -> Vec<PlacedId> {
        let mut firsts = Vec::new();
        for piece in pieces {
            let first = self.first(*piece);
            if !firsts.contains(&first) {
                firsts.push(first);
            }
        }
        firsts
    }

    /// The first piece of the whole that a piece is in.
    pub(super) fn first(&self, piece: PlacedId) -> PlacedId {
        self.first.get(&piece).copied().unwrap_or(piece)
    }

    /// The pieces of a whole.
    pub(super) fn members(&self, first: PlacedId) -> &[PlacedId] {
        self.members.get(&first).map_or(&[], Vec::as_slice)
    }

    /// The box around a whole.
    pub(super) fn place(&self, first: PlacedId) -> Box3 {
        self.places.get(&first).copied().unwrap_or(Box3::NONE)
    }

    /// What a whole touches.
    pub(super) fn touches(&self, first: PlacedId) -> &[Touch] {
        self.touches.get(&first).map_or(&[], Vec::as_slice)
    }

    /// True where one whole meets another on its way.
    pub(super) fn blocks(
        &self,
        blocking: &mut Blocking<'_>,
        [one, other]: [PlacedId; 2],
        way: Direction,
    ) -> bool {
        self.members(one).iter().any(|piece| {
            let others = self.members(other).iter();
            let mut others = others.copied();
            others.any(|other| blocking.blocks(*piece, other, way))
        })
    }
}
