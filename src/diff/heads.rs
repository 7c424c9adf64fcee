//! What stands before and beside the build itself: the edition, what is left to choose, cautions.

use super::Edition;
use crate::options::Selected;

/// The hazards that a plan warns of, by their names for programs.
pub(super) fn cautions(of: &Selected<'_>) -> Vec<&'static str> {
    of.cautions.list.iter().map(|caution| caution.id).collect()
}

/// What a plan leaves to choose.
pub(super) fn choices(of: &Selected<'_>) -> Vec<String> {
    let options = of.build.options.iter();
    options
        .flat_map(|option| {
            let choices = option.choices.iter();
            choices.map(move |choice| format!("{}: {}", option.title, choice.title))
        })
        .collect()
}

/// Which plan it is.
pub(super) fn edition(of: &Selected<'_>) -> Edition {
    let plan = &of.build.plan;
    let newest = plan.newest();
    Edition {
        title: plan.title.clone(),
        mark: newest.map_or_else(String::new, |it| it.mark.clone()),
        date: newest.map_or_else(String::new, |it| it.date.clone()),
    }
}
