//! What differs between two revisions of a plan, in the words of the shop.
//!
//! Takes what the stages gave for both, gives [`Difference`] as plain data: parts, pieces, joints,
//! what is bought, steps, cautions, and for each part whether one that is cut already still serves.
//! Judges no revision and changes none. What was only called otherwise is recognised by its place
//! and its shape.

mod goods;
mod heads;
mod joints;
mod json;
mod parts;
mod pieces;
mod print;
mod sequence;
mod steps;
mod told;

pub use goods::{Amount, Goods};
pub use joints::{Joining, JointChange};
pub use json::json;
pub use parts::{Fate, PartChange, PartFace};
pub use pieces::Moved;
pub use print::print;
pub use sequence::{Stretch, stretches};
pub use steps::{Passage, StepChange};
pub use told::told;

use crate::build::Revision;
use crate::options::Selected;

/// What differs between two revisions.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Difference {
    /// Title and newest revision of the earlier plan.
    pub before: Edition,
    /// Those of the later one.
    pub after: Edition,
    /// Revisions that the later plan tells of and the earlier one does not, newest first.
    pub revisions: Vec<Revision>,
    /// Parts that are other than they were, then those that are gone.
    pub parts: Vec<PartChange>,
    /// Pieces that are as they were and stand elsewhere.
    pub moved: Vec<Moved>,
    /// Joints that are other than they were.
    pub joints: Vec<JointChange>,
    /// Hardware, stock and supplies of which another number is used or bought.
    pub goods: Goods,
    /// Steps that are new, gone, or told otherwise.
    pub steps: Vec<StepChange>,
    /// Choices that the later plan leaves and the earlier one did not: "Joint: Dowels".
    pub more_choices: Vec<String>,
    /// The other way round.
    pub fewer_choices: Vec<String>,
    /// Hazards that the later plan warns of and the earlier one did not, by their names for programs.
    pub more_cautions: Vec<&'static str>,
    /// The other way round.
    pub fewer_cautions: Vec<&'static str>,
}

/// Which plan it is.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Edition {
    /// Its title.
    pub title: String,
    /// The mark of its newest revision; empty where it has none.
    pub mark: String,
    /// The day of that revision.
    pub date: String,
}

impl Difference {
    /// True where a reader of both would build the same in the same way.
    pub fn is_empty(&self) -> bool {
        self.parts.is_empty()
            && self.moved.is_empty()
            && self.joints.is_empty()
            && self.goods.is_empty()
            && self.steps.is_empty()
            && self.more_choices.is_empty()
            && self.fewer_choices.is_empty()
            && self.more_cautions.is_empty()
            && self.fewer_cautions.is_empty()
            && self.before.title == self.after.title
    }
}

/// Those of a list that another one lacks.
fn lacking<T: Clone + PartialEq>(of: &[T], other: &[T]) -> Vec<T> {
    let names = of.iter().filter(|name| !other.contains(name));
    names.cloned().collect()
}

/// What differs between two plans.
pub fn compare(before: &Selected<'_>, after: &Selected<'_>) -> Difference {
    let pairs = parts::pairs(before, after);
    let pieces = pieces::pairs(before.build, after.build);
    let had = heads::cautions(before);
    let has = heads::cautions(after);
    let (could, can) = (heads::choices(before), heads::choices(after));
    let known = &before.build.plan.revisions;
    let revisions = after.build.plan.revisions.iter();
    Difference {
        before: heads::edition(before),
        after: heads::edition(after),
        revisions: revisions
            .filter(|one| !known.iter().any(|other| other.mark == one.mark))
            .cloned()
            .collect(),
        parts: parts::changes(before, after, &pairs),
        moved: pieces::moved(before.build, after.build, &pieces),
        joints: joints::changes(before.build, after.build, &pieces),
        goods: goods::changes(before, after),
        steps: steps::changes(before.build, after.build),
        more_choices: lacking(&can, &could),
        fewer_choices: lacking(&could, &can),
        more_cautions: lacking(&has, &had),
        fewer_cautions: lacking(&had, &has),
    }
}
