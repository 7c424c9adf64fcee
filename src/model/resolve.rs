//! From the declarations to the model: everything worked out, numbered without gaps.

use std::collections::BTreeMap;

use super::evaluate::Evaluator;
use super::findings::{WORD_OUT_OF_PLACE, WRONG_KIND};
use super::groups::{Groups, InstanceId};
use super::hardware::{Hardware, HardwareId, HardwareKind};
use super::join::{JoinDesign, JointKind};
use super::libraries::{self, Needed};
use super::locate::handedness;
use super::material::MaterialId;
use super::names::{Declarations, Declared, Meant, Table};
use super::part::{Band, PartDesign, PartId};
use super::place::{PlacedId, Placement};
use super::scopes::ScopeId;
use super::supply::{Supply, SupplyId};
use super::template::TemplateWish;
use super::uses::{Continuous, Load, allowances};
use super::wording::PartNumbers;
use super::{Model, Overrides, choices};
use crate::finding::{Finding, Findings, Outcome};
use crate::geometry::{Axis, PartAxis};
use crate::source::Span;
use crate::syntax::Forest;
use crate::syntax::tree::{
    self, Expr, Join, JoinSetting, JoinSettingKind, Name, Part, PartLineKind, PlaceLineKind,
    PlacedRef,
};
use crate::units::Quantity;

/// The plan's numbers of declared things; what could not be worked out has none.
#[derive(Default)]
pub(super) struct Numbers {
    materials: BTreeMap<usize, MaterialId>,
    parts: BTreeMap<usize, PartId>,
    pub(super) hardware: BTreeMap<usize, HardwareId>,
    pub(super) supplies: BTreeMap<usize, SupplyId>,
    pub(super) placed: BTreeMap<(usize, i64), PlacedId>,
    wholes: BTreeMap<(usize, i64), InstanceId>,
}

impl PartNumbers for Numbers {
    fn part(&self, declared: usize) -> Option<PartId> {
        self.parts.get(&declared).copied()
    }

    fn piece(&self, place: usize, index: i64) -> Option<PlacedId> {
        self.placed.get(&(place, index)).copied()
    }

    fn whole(&self, place: usize, index: i64) -> Option<InstanceId> {
        self.wholes.get(&(place, index)).copied()
    }
}

/// Works out a whole tree.
pub(super) fn resolve(forest: &Forest, overrides: &Overrides) -> Outcome<Model> {
    let mut findings = Findings::new();
    let tree = &forest.plan;
    libraries::check(forest, &mut findings);
    let options = choices::options(tree, &overrides.choices, &mut findings);
    let statements = choices::chosen(tree, &overrides.choices);
    let all = Declarations::collect(forest, &statements, &mut findings);
    let evaluator = Evaluator::new(&all, overrides);
    evaluator.open_all();
    let mut numbers = Numbers::default();
    let mut model = Model {
        head: evaluator.head(tree.span),
        options,
        ..Model::default()
    };
    evaluator.values();
    let needed = evaluator.needed();
    evaluator.materials(&needed, &mut model, &mut numbers);
    evaluator.items(&needed, &mut model, &mut numbers);
    evaluator.parts(&needed, &mut model, &mut numbers);
    let groups = evaluator.groups(&mut model);
    numbers.wholes = evaluator.wholes(&groups);
    evaluator.placements(&mut model, &mut numbers, &groups);
    evaluator.supplies(&needed, &mut model, &mut numbers);
    let each = Each {
        evaluator: &evaluator,
        groups: &groups,
    };
    model.joins = each.of(&all.joins, |join| evaluator.join(join, &numbers));
    model.steps = evaluator.steps(&numbers, &groups);
    model.requirements = each.once_of(&all.requires, |require| evaluator.requirement(require));
    model.continuous = each.of(&all.continuous, |run| {
        let pieces = evaluator.placed(&run.pieces, Whole::Meant, &numbers);
        Some(Continuous {
            pieces: pieces.into_iter().map(|(piece, _)| piece).collect(),
            along: run.along,
            span: run.span,
        })
    });
    model.templates = evaluator.templates(&each, &numbers, &model.parts);
    let loads = each.of(&all.loads, |load| Some(evaluator.load(load, &numbers)));
    model.loads = loads.into_iter().flatten().collect();
    model.clearances = each.once_of(&all.clearances, |clearance| evaluator.clearance(clearance));
    model.holds = each.once_of(&all.holds, |hold| evaluator.held(hold));
    model.allowances = allowances(&statements, tree.span);
    model.idle = evaluator.idle();
    findings.append(evaluator.into_findings());
    Outcome {
        value: model,
        findings,
    }
}

/// Works out the statements of one kind, each with the names of its scope.
struct Each<'e, 't> {
    evaluator: &'e Evaluator<'t>,
    groups: &'e Groups,
}

impl<'t> Each<'_, 't> {
    /// In every sub-assembly that is placed.
    fn of<T, R>(&self, table: &Table<'t, T>, work: impl Fn(&'t T) -> Option<R>) -> Vec<R> {
        let rows = table.rows().into_iter();
        rows.filter_map(|(statement, scope)| self.evaluator.inside(scope, || work(statement)))
            .collect()
    }

    /// Once for sub-assemblies that are alike.
    fn once_of<T, R>(&self, table: &Table<'t, T>, work: impl Fn(&'t T) -> Option<R>) -> Vec<R> {
        let rows = table.rows().into_iter();
        rows.filter(|(_, scope)| self.groups.is_first(*scope))
            .filter_map(|(statement, scope)| self.evaluator.inside(scope, || work(statement)))
            .collect()
    }
}

/// Whether a whole sub-assembly may stand for the parts in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Whole {
    /// All its parts are meant.
    Meant,
    /// One of its parts has to be named.
    Vague,
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
    /// Works out every param, let and parameter, used or not: a fault in one nobody uses is a
    /// fault.
    fn values(&self) {
        for (index, (param, _)) in self.all.params.rows().iter().enumerate() {
            self.param(index, param.name.span);
        }
        for (index, (constant, _)) in self.all.lets.rows().iter().enumerate() {
            self.declared(Declared::Let(index), &constant.name);
        }
        for index in 0..self.all.formals.len() {
            self.formal(index);
        }
    }

    fn materials(&self, needed: &Needed, model: &mut Model, numbers: &mut Numbers) {
        for index in needed.materials.iter().copied() {
            if let Some(material) = self.material(index) {
                let id = MaterialId(number_of(&mut model.materials, material, |a, b| a == b));
                numbers.materials.insert(index, id);
            }
        }
    }

    fn parts(&self, needed: &Needed, model: &mut Model, numbers: &mut Numbers) {
        for (index, (part, scope)) in self.all.parts.rows().into_iter().enumerate() {
            if !needed.parts.contains(&index) {
                continue;
            }
            let design = self.inside(scope, || {
                let material = self.material_of(part)?;
                let material = numbers.materials.get(&material).copied()?;
                let mut design = self.part_design(index, material)?;
                design.bands = self.bands(part, numbers, model);
                Some(design)
            });
            if let Some(design) = design {
                let extra = design.extra;
                // What is alike but for how many more are made is one part.
                let alike = |a: &PartDesign, b: &PartDesign| {
                    let mut same = a.clone();
                    same.extra = b.extra;
                    same == *b
                };
                let before = model.parts.len();
                let id = number_of(&mut model.parts, design, alike);
                if id < before
                    && let Some(known) = model.parts.get_mut(id)
                {
                    known.extra += extra;
                }
                numbers.parts.insert(index, PartId(id));
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

    /// The templates, each side of a part once.
    fn templates(
        &self,
        each: &Each<'_, 't>,
        numbers: &Numbers,
        parts: &[PartDesign],
    ) -> Vec<TemplateWish> {
        let wishes = each.of(&self.all.templates, |template| {
            let declared = self.part_of_template(template)?;
            let part = numbers.part(declared)?;
            let design = parts.get(part.0)?;
            self.template(template, declared, (part, design))
        });
        let mut once: Vec<TemplateWish> = Vec::new();
        for wish in wishes {
            let same = |other: &&TemplateWish| other.part == wish.part && other.side == wish.side;
            match once.iter().find(same) {
                // What a sub-assembly says is said once, however often it is placed.
                Some(first) if first.span == wish.span => {}
                Some(first) => self.tell_twice("the template of this side", first.span, wish.span),
                None => once.push(wish),
            }
        }
        once
    }

    /// The loads of a statement, one for each piece.
    fn load(&self, load: &tree::Load, numbers: &Numbers) -> Vec<Load> {
        let pieces = self.placed(&load.pieces, Whole::Vague, numbers);
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

    fn items(&self, needed: &Needed, model: &mut Model, numbers: &mut Numbers) {
        for index in needed.hardware.iter().copied() {
            if let Some(item) = self.hardware(index) {
                let count = item.count;
                let alike = |a: &Hardware, b: &Hardware| {
                    let mut same = a.clone();
                    same.count = b.count;
                    same == *b
                };
                let before = model.hardware.len();
                let id = number_of(&mut model.hardware, item, alike);
                if id < before
                    && let Some(known) = model.hardware.get_mut(id)
                {
                    known.count += count;
                }
                numbers.hardware.insert(index, HardwareId(id));
            }
        }
    }

    /// Supplies, with the pieces they go on.
    fn supplies(&self, needed: &Needed, model: &mut Model, numbers: &mut Numbers) {
        for (index, (declared, scope)) in self.all.supplies.rows().into_iter().enumerate() {
            if !needed.supplies.contains(&index) {
                continue;
            }
            let found = self.inside(scope, || {
                let (mut supply, on) = self.supply(declared)?;
                for reference in on {
                    let reference = std::slice::from_ref(reference);
                    let pieces = self.placed(reference, Whole::Meant, numbers);
                    supply.on.extend(pieces.into_iter().map(|(piece, _)| piece));
                }
                Some(supply)
            });
            if let Some(supply) = found {
                let on = supply.on.clone();
                let alike = |a: &Supply, b: &Supply| {
                    let mut same = a.clone();
                    same.on.clone_from(&b.on);
                    same == *b
                };
                let before = model.supplies.len();
                let id = number_of(&mut model.supplies, supply, alike);
                if id < before
                    && let Some(known) = model.supplies.get_mut(id)
                {
                    known.on.extend(on);
                }
                numbers.supplies.insert(index, SupplyId(id));
            }
        }
    }

    fn placements(&self, model: &mut Model, numbers: &mut Numbers, groups: &Groups) {
        for (index, (place, scope)) in self.all.places.rows().into_iter().enumerate() {
            self.inside(scope, || self.check_locations(place));
            if self.subassembly_of(index).is_some() {
                // What is in it has rows of its own.
                self.inside(scope, || self.stance(index));
                continue;
            }
            if self.is_unknown(index) {
                // Told with its name.
                self.part_of_place(index);
                continue;
            }
            self.inside(scope, || self.check_plain(place));
            let lie = self.inside(scope, || self.orientation(place));
            let lie = lie.and_then(|lie| self.lie_in_plan(scope, lie, handedness(place)));
            let part = self
                .part_of_place(index)
                .and_then(|part| numbers.part(part));
            let Some((first, last)) = self.repeats(index) else {
                continue;
            };
            for number in first..=last {
                let body = Axis::ALL.map(|axis| {
                    self.seen_from(ScopeId::PLAN, index, number, axis, place.name.span)
                });
                let ([Some(x), Some(y), Some(z)], Some((orientation, handedness)), Some(part)) =
                    (body, lie, part)
                else {
                    continue;
                };
                numbers
                    .placed
                    .insert((index, number), PlacedId(model.placements.len()));
                model.placements.push(Placement {
                    name: self.path_of(index, number),
                    part,
                    handedness,
                    orientation,
                    body: [x, y, z],
                    removable: place
                        .lines
                        .iter()
                        .any(|line| matches!(line.kind, PlaceLineKind::Removable)),
                    within: groups.instance(scope),
                    span: place.name.span,
                });
            }
        }
    }

    /// The placed parts of a list of references, each with the place where it is named.
    pub(super) fn placed(
        &self,
        references: &[PlacedRef],
        whole: Whole,
        numbers: &Numbers,
    ) -> Vec<(PlacedId, Span)> {
        let mut pieces = Vec::new();
        for reference in references {
            for placement in self.meant(reference) {
                if whole == Whole::Vague && self.subassembly_of(placement.0).is_some() {
                    let name = &reference.name.value;
                    let message =
                        format!("`{name}` is a sub-assembly; which of its parts is meant?");
                    let remedy = format!("name one of them: `{name}.side`");
                    self.tell(Finding::new(&WRONG_KIND, reference.span, message).remedy(remedy));
                    break;
                }
                let parts = self.parts_in(placement).into_iter();
                pieces.extend(parts.filter_map(|part| {
                    Some((numbers.placed.get(&part).copied()?, reference.span))
                }));
            }
        }
        pieces
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
        let parts = self.placed(&join.parts, Whole::Vague, numbers);
        let to = self.placed(&join.to, Whole::Vague, numbers);
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
                .replace((self.direction_in_plan(face)?, span))
                .map(|(_, at)| at),
            JoinSettingKind::Through(piece) => {
                let piece = std::slice::from_ref(piece);
                let pieces = self.placed(piece, Whole::Vague, numbers);
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
        match self.find(&name.value) {
            Some(Declared::Hardware(item)) => Some(item),
            Some(Declared::Missing) => None,
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
}

/// The number of a thing in a list, to which it is added unless one alike is there.
fn number_of<T>(list: &mut Vec<T>, thing: T, alike: impl Fn(&T, &T) -> bool) -> usize {
    match list.iter().position(|known| alike(known, &thing)) {
        Some(known) => known,
        None => {
            list.push(thing);
            list.len() - 1
        }
    }
}
