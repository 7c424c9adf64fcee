//! From the declarations to the model: everything worked out, numbered without gaps.

use std::collections::BTreeMap;

use super::evaluate::Evaluator;
use super::findings::{SAID_TWICE, WORD_OUT_OF_PLACE};
use super::hardware::{HardwareId, HardwareKind};
use super::join::{JoinDesign, JointKind};
use super::locate::handedness;
use super::material::MaterialId;
use super::names::{Declarations, Declared, Meant};
use super::part::{Band, PartId};
use super::place::{PlacedId, Placement};
use super::step::{Pull, SignalWord, StepDesign};
use super::supply::SupplyId;
use super::uses::{Continuous, Load, allowances};
use super::wording::PartNumbers;
use super::{Model, Overrides};
use crate::finding::{Finding, Findings, Outcome};
use crate::geometry::{Axis, Direction, PartAxis};
use crate::source::Span;
use crate::syntax::tree::{
    self, Expr, ExprKind, Join, JoinSetting, JoinSettingKind, Name, Part, PartLineKind,
    PlaceLineKind, PlacedRef, Step, StepLineKind, Tree,
};
use crate::units::Quantity;

/// The plan's numbers of declared things; what could not be worked out has none.
#[derive(Default)]
struct Numbers {
    materials: BTreeMap<usize, MaterialId>,
    parts: BTreeMap<usize, PartId>,
    hardware: BTreeMap<usize, HardwareId>,
    supplies: BTreeMap<usize, SupplyId>,
    placed: BTreeMap<(usize, i64), PlacedId>,
}

impl PartNumbers for Numbers {
    fn part(&self, declared: usize) -> Option<PartId> {
        self.parts.get(&declared).copied()
    }

    fn piece(&self, place: usize, index: i64) -> Option<PlacedId> {
        self.placed.get(&(place, index)).copied()
    }
}

/// Works out a whole tree.
pub(super) fn resolve(tree: &Tree, overrides: &Overrides) -> Outcome<Model> {
    let mut findings = Findings::new();
    let all = Declarations::collect(tree, &mut findings);
    let evaluator = Evaluator::new(&all, overrides);
    let mut numbers = Numbers::default();
    let mut model = Model {
        head: evaluator.head(tree.span),
        ..Model::default()
    };
    evaluator.values();
    evaluator.materials(&mut model, &mut numbers);
    evaluator.items(&mut model, &mut numbers);
    evaluator.parts(&mut model, &mut numbers);
    evaluator.placements(&mut model, &mut numbers);
    evaluator.supplies(&mut model, &mut numbers);
    model.joins = all
        .joins
        .iter()
        .filter_map(|join| evaluator.join(join, &numbers))
        .collect();
    model.steps = all
        .steps
        .iter()
        .map(|step| evaluator.step(step, &numbers))
        .collect();
    model.requirements = all
        .requires
        .iter()
        .filter_map(|require| evaluator.requirement(require))
        .collect();
    model.continuous = all
        .continuous
        .iter()
        .map(|run| Continuous {
            pieces: evaluator
                .placed(&run.pieces, &numbers)
                .into_iter()
                .map(|(piece, _)| piece)
                .collect(),
            along: run.along,
            span: run.span,
        })
        .collect();
    model.loads = all
        .loads
        .iter()
        .flat_map(|load| evaluator.load(load, &numbers))
        .collect();
    model.clearances = all
        .clearances
        .iter()
        .filter_map(|clearance| evaluator.clearance(clearance))
        .collect();
    model.holds = all
        .holds
        .iter()
        .filter_map(|hold| evaluator.held(hold))
        .collect();
    model.allowances = allowances(tree);
    model.idle = evaluator.idle();
    findings.append(evaluator.into_findings());
    Outcome {
        value: model,
        findings,
    }
}

/// Works out an expression that names nothing.
pub(super) fn constant(expr: &Expr) -> Outcome<Option<Quantity>> {
    let (all, overrides) = (Declarations::default(), Overrides::default());
    let evaluator = Evaluator::new(&all, &overrides);
    let value = evaluator.quantity(expr, None);
    Outcome {
        value,
        findings: evaluator.into_findings(),
    }
}

impl<'t> Evaluator<'t> {
    /// Works out every param and let, used or not: a fault in one nobody uses is a fault.
    fn values(&self) {
        for (index, param) in self.all.params.iter().enumerate() {
            self.param(index, param.name.span);
        }
        for constant in &self.all.lets {
            let name = Expr {
                kind: ExprKind::Name(constant.name.clone()),
                span: constant.name.span,
            };
            self.value(&name, None);
        }
    }

    fn materials(&self, model: &mut Model, numbers: &mut Numbers) {
        for index in 0..self.all.materials.len() {
            if let Some(material) = self.material(index) {
                numbers
                    .materials
                    .insert(index, MaterialId(model.materials.len()));
                model.materials.push(material);
            }
        }
    }

    fn parts(&self, model: &mut Model, numbers: &mut Numbers) {
        for (index, part) in self.all.parts.iter().enumerate() {
            let material = self
                .material_of(part)
                .and_then(|m| numbers.materials.get(&m).copied());
            let Some(material) = material else { continue };
            if let Some(mut design) = self.part_design(index, material) {
                design.bands = self.bands(part, numbers, model);
                numbers.parts.insert(index, PartId(model.parts.len()));
                model.parts.push(design);
            }
        }
    }

    /// The edges of a part that are covered with band.
    fn bands(&self, part: &'t Part, numbers: &Numbers, model: &Model) -> Vec<Band> {
        let mut bands: Vec<Band> = Vec::new();
        for line in &part.lines {
            let PartLineKind::Band { sides, hardware } = &line.kind else {
                continue;
            };
            let item = self
                .hardware_named(hardware)
                .and_then(|item| numbers.hardware.get(&item).copied());
            let Some((id, item)) = item.and_then(|id| Some((id, model.hardware.get(id.0)?))) else {
                continue;
            };
            if item.kind != HardwareKind::EdgeBand {
                self.tell_word(hardware, "an edge band", &[]);
                continue;
            }
            for word in sides {
                let Some(side) = self.side_of(part, word) else {
                    continue;
                };
                if side.axis() == PartAxis::Thickness {
                    let message = "edge band covers edges and ends, not a broad side";
                    self.tell(Finding::new(&WORD_OUT_OF_PLACE, word.span, message));
                } else if let Some(first) = bands.iter().find(|band| band.side == side) {
                    self.tell_twice("the band of this edge", first.span, word.span);
                } else {
                    bands.push(Band {
                        side,
                        hardware: id,
                        thickness: item.thickness.unwrap_or_default(),
                        span: word.span,
                    });
                }
            }
        }
        bands
    }

    /// The loads of a statement, one for each piece.
    fn load(&self, load: &tree::Load, numbers: &Numbers) -> Vec<Load> {
        let pieces = self.placed(&load.pieces, numbers);
        let Some(kg) = self.load_kg(&load.mass) else {
            return Vec::new();
        };
        let sag = load
            .sag
            .as_ref()
            .and_then(|sag| self.positive_length(sag, None, "the sag"));
        pieces
            .into_iter()
            .map(|(piece, _)| Load {
                piece,
                kg,
                at_middle: load.at_middle,
                sag,
                span: load.span,
            })
            .collect()
    }

    fn items(&self, model: &mut Model, numbers: &mut Numbers) {
        for index in 0..self.all.hardware.len() {
            if let Some(item) = self.hardware(index) {
                numbers
                    .hardware
                    .insert(index, HardwareId(model.hardware.len()));
                model.hardware.push(item);
            }
        }
    }

    /// Supplies, with the pieces they go on.
    fn supplies(&self, model: &mut Model, numbers: &mut Numbers) {
        for (index, declared) in self.all.supplies.iter().enumerate() {
            if let Some((mut supply, on)) = self.supply(declared) {
                for reference in on {
                    let pieces = self.placed(std::slice::from_ref(reference), numbers);
                    supply.on.extend(pieces.into_iter().map(|(piece, _)| piece));
                }
                numbers
                    .supplies
                    .insert(index, SupplyId(model.supplies.len()));
                model.supplies.push(supply);
            }
        }
    }

    fn placements(&self, model: &mut Model, numbers: &mut Numbers) {
        for (index, place) in self.all.places.iter().enumerate() {
            self.check_locations(place);
            let orientation = self.orientation(place);
            let part = self
                .part_of_place(index)
                .and_then(|part| numbers.part(part));
            let Some((first, last)) = self.repeats(index) else {
                continue;
            };
            for number in first..=last {
                let body = Axis::ALL.map(|axis| self.stretch(index, number, axis, place.name.span));
                let ([Some(x), Some(y), Some(z)], Some(orientation), Some(part)) =
                    (body, orientation, part)
                else {
                    continue;
                };
                let name = &place.name.value;
                let name = match place.repeat {
                    Some(_) => format!("{name}[{number}]"),
                    None => name.clone(),
                };
                numbers
                    .placed
                    .insert((index, number), PlacedId(model.placements.len()));
                model.placements.push(Placement {
                    name,
                    part,
                    handedness: handedness(place),
                    orientation,
                    body: [x, y, z],
                    removable: place
                        .lines
                        .iter()
                        .any(|line| matches!(line.kind, PlaceLineKind::Removable)),
                    span: place.name.span,
                });
            }
        }
    }

    /// The placed pieces of a list of references, each with the place where it is named.
    fn placed(&self, references: &[PlacedRef], numbers: &Numbers) -> Vec<(PlacedId, Span)> {
        references
            .iter()
            .flat_map(|reference| {
                let pieces = self.pieces(reference);
                pieces.into_iter().map(|piece| (piece, reference.span))
            })
            .filter_map(|(piece, span)| Some((numbers.placed.get(&piece).copied()?, span)))
            .collect()
    }

    fn join(&self, join: &Join, numbers: &Numbers) -> Option<JoinDesign> {
        let kind = JointKind::ALL
            .into_iter()
            .find(|kind| kind.word() == join.kind.value);
        if kind.is_none() {
            self.tell_word(
                &join.kind,
                "a kind of joint",
                &JointKind::ALL.map(JointKind::word),
            );
        }
        let parts = self.placed(&join.parts, numbers);
        let to = self.placed(&join.to, numbers);
        let using: Vec<(HardwareId, Span)> = join
            .using
            .iter()
            .filter_map(|name| {
                let item = self.hardware_named(name)?;
                Some((numbers.hardware.get(&item).copied()?, name.span))
            })
            .collect();
        let mut design = JoinDesign {
            kind: kind?,
            parts,
            to,
            using,
            glue: None,
            depth: None,
            width: None,
            thickness: None,
            play: None,
            count: None,
            inset: None,
            from: None,
            through: Vec::new(),
            kind_span: join.kind.span,
            span: join.span,
        };
        // A line that could not be worked out was told; the joint is left out, so that nothing
        // complains about what it lacks.
        let mut complete = join.using.len() == design.using.len();
        for line in &join.settings {
            complete &= self.apply_join_line(line, numbers, &mut design).is_some();
        }
        complete.then_some(design)
    }

    /// Takes a line of a joint; none where it could not be worked out.
    fn apply_join_line(
        &self,
        line: &JoinSetting,
        numbers: &Numbers,
        design: &mut JoinDesign,
    ) -> Option<()> {
        let span = line.span;
        let first = match &line.kind {
            JoinSettingKind::Glue => design.glue.replace(span),
            JoinSettingKind::Size { word, size } => {
                let what = format!("the {}", word.value);
                let size = self.positive_length(size, None, &what)?;
                let slot = match word.value.as_str() {
                    "depth" => &mut design.depth,
                    "width" => &mut design.width,
                    "thickness" => &mut design.thickness,
                    _ => &mut design.play,
                };
                slot.replace((size, span)).map(|(_, at)| at)
            }
            JoinSettingKind::Allow(_) => None,
            JoinSettingKind::Count(count) => {
                let count = self.count(count, None, 1, "the number of fasteners")?;
                design.count.replace((count, span)).map(|(_, at)| at)
            }
            JoinSettingKind::Inset(inset) => {
                let inset = self.length_from_zero(inset, None, "the inset")?;
                design.inset.replace((inset, span)).map(|(_, at)| at)
            }
            JoinSettingKind::From(face) => design
                .from
                .replace((self.direction(face)?, span))
                .map(|(_, at)| at),
            JoinSettingKind::Through(piece) => {
                let pieces = self.placed(std::slice::from_ref(piece), numbers);
                design
                    .through
                    .extend(pieces.into_iter().map(|(piece, _)| piece));
                None
            }
        };
        if let Some(first) = first {
            self.tell_twice("this", first, span);
        }
        Some(())
    }

    /// The item of hardware of a name, by its place among the items.
    fn hardware_named(&self, name: &Name) -> Option<usize> {
        match self.all.find(&name.value) {
            Some(Declared::Hardware(item)) => Some(item),
            None => {
                self.tell_unknown(name, "there is no such hardware", Meant::Hardware);
                None
            }
            Some(_) => {
                self.tell_word(name, "an item of hardware", &[]);
                None
            }
        }
    }

    fn step(&self, step: &Step, numbers: &Numbers) -> StepDesign {
        let mut design = StepDesign {
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
                StepLineKind::Add(pieces) => design.adds.extend(self.placed(pieces, numbers)),
                StepLineKind::Pull {
                    parts,
                    direction,
                    distance,
                } => {
                    let pieces = self.placed(parts, numbers);
                    let distance = distance
                        .as_ref()
                        .and_then(|d| self.positive_length(d, None, "the distance"));
                    if let Some(direction) = self.direction(direction) {
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
                        .filter_map(|word| self.direction(word))
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
                    self.used(name, count.as_ref(), numbers, &mut design);
                }
                StepLineKind::Allow(_) => {}
                StepLineKind::Time(time) => {
                    design.seconds = self.seconds(time);
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
    fn used(&self, name: &Name, count: Option<&Expr>, numbers: &Numbers, design: &mut StepDesign) {
        match self.all.find(&name.value) {
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
