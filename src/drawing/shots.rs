//! Which pictures a plan shows, in the order they are staged, and taking them.

use std::collections::BTreeMap;

use rayon::iter::{ParallelBridge, ParallelIterator};

use super::blocking::Blocking;
use super::compose::{Shot, Studio};
use super::{step, whole};
use crate::display::Figure;

/// Staging goes from step to step, each seen from where the last one was if that does; taking the
/// pictures is shared out. Which core took one does not show in it.
pub(super) fn views(studio: &Studio<'_>) -> BTreeMap<String, Figure> {
    let blocking = Blocking::new(studio.build, studio.solids, studio.contacts);
    shots(studio, blocking)
        .par_bridge()
        .flat_map_iter(|shot| shot.figures(studio))
        .collect()
}

/// Something that a plan shows.
#[derive(Clone, Copy)]
enum Subject {
    Finished,
    Exploded,
    Step(usize),
}

/// What a plan shows, staged one after another as it is asked for.
fn shots<'s>(
    studio: &'s Studio<'s>,
    mut blocking: Blocking<'s>,
) -> impl Iterator<Item = Shot> + Send + 's {
    let steps = studio.build.steps.iter().enumerate();
    // A step that adds nothing and joins nothing has nothing to show.
    let shown = steps
        .filter(|(_, step)| !step.adds.is_empty() || !step.joints.is_empty())
        .map(|(number, _)| Subject::Step(number));
    let mut before = None;
    [Subject::Finished, Subject::Exploded]
        .into_iter()
        .chain(shown)
        .filter_map(move |subject| match subject {
            Subject::Finished => Some(whole::finished(studio)),
            Subject::Exploded => Some(whole::exploded(studio, &mut blocking)),
            Subject::Step(number) => {
                let step = studio.build.steps.get(number)?;
                let next = step::stage_step(studio, number, step, before, &mut blocking);
                before = next.direction.or(before);
                Some(next.shot)
            }
        })
}
