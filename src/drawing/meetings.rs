//! Which of many numbered things meet at a point.

/// Points and the numbers of what is there, in order: a list that is sorted once is looked through
/// faster than a map is filled.
pub(super) struct Meetings<K>(Vec<(K, usize)>);

impl<K: Copy + Ord> Meetings<K> {
    /// Takes in each point with the number of a thing that is there.
    pub(super) fn of(points: impl IntoIterator<Item = (K, usize)>) -> Self {
        let mut meetings: Vec<(K, usize)> = points.into_iter().collect();
        meetings.sort_unstable();
        Self(meetings)
    }

    /// The numbers of what meets at a point, the lowest first.
    pub(super) fn at(&self, point: K) -> impl Iterator<Item = usize> {
        let from = self.0.partition_point(|(other, _)| *other < point);
        let rest = self.0.get(from..).unwrap_or_default().iter();
        rest.take_while(move |(other, _)| *other == point)
            .map(|(_, number)| *number)
    }
}
