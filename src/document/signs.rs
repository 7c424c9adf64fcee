//! Safety signs as templates show them.

use std::collections::BTreeSet;

use serde::Serialize;

use crate::caution::{Caution, Sign, SignKind};
use crate::words::Words;

/// A safety sign ready to print.
#[derive(Clone, Debug, Serialize)]
pub(super) struct SignText {
    kind: SignKind,
    code: &'static str,
    meaning: String,
    /// The name of its figure.
    figure: String,
}

impl SignText {
    fn of(sign: Sign, words: &Words) -> Self {
        Self {
            kind: sign.kind(),
            code: sign.code(),
            meaning: words.word(&sign.figure(), &[]),
            figure: sign.figure(),
        }
    }
}

/// Signs in their order.
pub(super) fn all(signs: &[Sign], words: &Words) -> Vec<SignText> {
    let signs = signs.iter().copied();
    signs.map(|sign| SignText::of(sign, words)).collect()
}

/// What is worn for all of some cautions together, each sign once.
///
/// Gloves are left out unless each of the cautions asks for them: what is put on for glue comes
/// off before a blade turns.
pub(super) fn worn(cautions: &[&Caution], words: &Words) -> Vec<SignText> {
    let signs: BTreeSet<Sign> = cautions
        .iter()
        .flat_map(|caution| caution.signs.iter().copied())
        .collect();
    let is_gloved = cautions
        .iter()
        .all(|caution| caution.signs.contains(&Sign::Gloves));
    let worn = signs
        .into_iter()
        .filter(|sign| sign.is_worn() && (*sign != Sign::Gloves || is_gloved));
    worn.map(|sign| SignText::of(sign, words)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::behaviour::Behaviour;
    use crate::caution::gather;
    use crate::solid::Solids;
    use crate::stock::{lay_out, sample};

    #[test]
    fn gloves_are_worn_where_every_work_asks_for_them() {
        let build = sample::shelf_unit();
        let list = gather(
            &build,
            &lay_out(&build, &Solids::default()).value,
            &Behaviour::default(),
        )
        .list;
        let codes = |ids: &[&str]| -> Vec<&str> {
            let of: Vec<&Caution> = list.iter().filter(|one| ids.contains(&one.id)).collect();
            worn(&of, &Words::english())
                .iter()
                .map(|sign| sign.code)
                .collect()
        };
        assert_eq!(codes(&["gluing"]), ["M004", "M009"]);
        assert_eq!(codes(&["drilling", "gluing"]), ["M004"]);
        assert_eq!(codes(&["gluing", "routing"]), ["M003", "M004", "M016"]);
    }
}
