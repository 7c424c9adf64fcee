//! Steps, as their lines say.

use super::evaluate::Evaluator;
use super::findings::{SAID_TWICE, WORD_OUT_OF_PLACE};
use super::groups::GroupId;
use super::names::{Declared, Meant};
use super::resolve::{Numbers, Whole};
use super::step::{Pull, SignalWord, StepDesign};
use crate::finding::Finding;
use crate::geometry::{Axis, Direction};
use crate::source::Span;
use crate::syntax::tree::{Expr, Name, Step, StepLineKind};

impl<'t> Evaluator<'t> {
    /// A step with its values worked out; of a sub-assembly, `group` of which `times` are made.
    pub(super) fn step(
        &self,
        step: &'t Step,
        group: Option<GroupId>,
        times: i64,
        numbers: &Numbers,
    ) -> StepDesign {
        let mut design = StepDesign {
            group,
            title: step.title.value.clone(),
            adds: Vec::new(),
            pulls: Vec::new(),
            look: Vec::new(),
            says: Vec::new(),
            checks: Vec::new(),
            tools: Vec::new(),
            uses: Vec::new(),
            supplies: Vec::new(),
            cautions: Vec::new(),
            seconds: None,
            span: step.title.span,
        };
        let mut timed: Option<Span> = None;
        for line in &step.lines {
            match &line.kind {
                // What comes in is gathered from all sub-assemblies that are alike.
                StepLineKind::Add(_) | StepLineKind::Allow(_) => {}
                StepLineKind::Pull {
                    parts,
                    direction,
                    distance,
                } => {
                    let pieces = self.placed(parts, Whole::Meant, numbers);
                    let distance = distance
                        .as_ref()
                        .and_then(|d| self.positive_length(d, None, "the distance"));
                    if let Some(direction) = self.direction_in_plan(direction) {
                        design
                            .pulls
                            .extend(pieces.into_iter().map(|(piece, _)| Pull {
                                piece,
                                direction,
                                distance,
                            }));
                    }
                }
                StepLineKind::Look(words) => {
                    design.look = words
                        .iter()
                        .filter_map(|word| self.direction_in_plan(word))
                        .collect();
                    self.check_look(&design.look, line.span);
                }
                StepLineKind::Say(text) => design.says.push(self.wording(text, numbers)),
                StepLineKind::Check(text) => design.checks.push(self.wording(text, numbers)),
                StepLineKind::CheckEqual {
                    first,
                    second,
                    within,
                } => {
                    design
                        .checks
                        .extend(self.equal_check([first, second], within, numbers));
                }
                StepLineKind::Tools(tools) => {
                    design.tools.extend(tools.iter().cloned());
                }
                StepLineKind::Uses { name, count } => {
                    self.used(name, count.as_ref(), times, numbers, &mut design);
                }
                StepLineKind::Time(time) => {
                    let seconds = self.seconds(time);
                    design.seconds = seconds.map(|one| one.saturating_mul(times));
                    if let Some(first) = timed.replace(line.span) {
                        self.tell_twice("the time", first, line.span);
                    }
                }
                StepLineKind::Caution { word, text } => {
                    let found = SignalWord::ALL
                        .into_iter()
                        .find(|known| known.word() == word.value);
                    match found {
                        Some(signal) => {
                            design.cautions.push((signal, self.wording(text, numbers)));
                        }
                        None => {
                            let known = SignalWord::ALL.map(SignalWord::word);
                            self.tell_word(word, "a signal word", &known);
                        }
                    }
                }
            }
        }
        design
    }

    /// Goods with their number, or a supply.
    fn used(
        &self,
        name: &Name,
        count: Option<&Expr>,
        times: i64,
        numbers: &Numbers,
        design: &mut StepDesign,
    ) {
        match self.find(&name.value) {
            Some(Declared::Missing) => {}
            Some(Declared::Supply(index)) => {
                design.supplies.extend(numbers.supplies.get(&index));
                if let Some(count) = count {
                    let message = "a supply is used by what it covers, not by number";
                    self.tell(
                        Finding::new(&WORD_OUT_OF_PLACE, count.span, message)
                            .remedy("leave the number out"),
                    );
                }
            }
            Some(Declared::Hardware(index)) => {
                let item = numbers.hardware.get(&index).copied();
                let Some(count) = count else {
                    let message = format!("how many of `{}` are used is not said", name.value);
                    let remedy = format!("write `uses {} 4`", name.value);
                    self.tell_lacking(name.span, &message, &remedy);
                    return;
                };
                let count = self.count(count, None, 1, "the number used");
                let count = count.map(|one| one.saturating_mul(times));
                design.uses.extend(item.zip(count));
            }
            Some(_) => self.tell_word(name, "an item of hardware or a supply", &[]),
            None => self.tell_unknown(name, "there is no such hardware or supply", Meant::Used),
        }
    }

    fn check_look(&self, look: &[Direction], span: Span) {
        for axis in Axis::ALL {
            if look
                .iter()
                .filter(|direction| direction.axis() == axis)
                .count()
                > 1
            {
                let message = "one cannot look from two opposite sides at once";
                self.tell(Finding::new(&SAID_TWICE, span, message));
            }
        }
    }
}
