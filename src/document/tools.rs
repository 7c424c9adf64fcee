//! The tools of the plan, by what they are for.

use serde::Serialize;

use super::context::{Facts, step_numbers};
use super::wording::{self, TextPiece};
use crate::caution::{Occasion, Purpose};

/// Tools of one purpose.
#[derive(Clone, Debug, Serialize)]
pub(super) struct ToolGroup {
    purpose: Purpose,
    tools: Vec<ToolRow>,
}

/// A tool and the steps that need it.
#[derive(Clone, Debug, Serialize)]
struct ToolRow {
    name: Vec<TextPiece>,
    /// Needed while the parts are cut.
    cutting: bool,
    /// Steps, counted from 1.
    steps: Vec<usize>,
}

pub(super) fn of(facts: &Facts) -> Vec<ToolGroup> {
    let mut groups: Vec<ToolGroup> = Vec::new();
    for tool in &facts.cautions.tools {
        let row = ToolRow {
            name: wording::fine_pieces(facts, &tool.name),
            cutting: tool.occasions.contains(&Occasion::Cutting),
            steps: step_numbers(&tool.occasions),
        };
        match groups
            .iter_mut()
            .find(|group| group.purpose == tool.purpose)
        {
            Some(group) => group.tools.push(row),
            None => groups.push(ToolGroup {
                purpose: tool.purpose,
                tools: vec![row],
            }),
        }
    }
    groups
}
