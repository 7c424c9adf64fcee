//! Sub-assemblies that are made: those alike are one group, with its steps told once.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use super::Model;
use super::evaluate::Evaluator;
use super::findings::WORD_OUT_OF_PLACE;
use super::locate::handedness;
use super::place::PlacedId;
use super::resolve::{Numbers, Whole};
use super::scopes::{ScopeId, hand_in, turned};
use super::step::StepDesign;
use super::value::Value;
use crate::finding::Finding;
use crate::geometry::{Direction, Handedness, Orientation};
use crate::source::Span;
use crate::syntax::tree::{Name, Place, PlacedRef, Step, StepLineKind};

/// Index of a group.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(transparent)]
pub struct GroupId(pub usize);

/// Index of a placed sub-assembly.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(transparent)]
pub struct InstanceId(pub usize);

/// Sub-assemblies of one description that are given the same.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Group {
    /// The name in the source.
    pub name: String,
    /// The printed name.
    pub title: String,
    /// Its mark in the plan: S1, S2 and so on.
    pub label: String,
    /// Those that are made, in the order they are placed.
    pub instances: Vec<InstanceId>,
    /// It is put together in steps of its own, before it comes in as a whole.
    pub has_steps: bool,
    /// Where it is described.
    #[serde(skip)]
    pub span: Span,
}

/// A placed sub-assembly.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Instance {
    /// Its name, `drawers[2]` for one of several.
    pub name: String,
    /// What it is one of.
    pub group: GroupId,
    /// The sub-assembly that it is part of.
    pub within: Option<InstanceId>,
    /// As drawn, or a mirror image of the plan's own.
    pub handedness: Handedness,
    /// Where it is placed.
    #[serde(skip)]
    pub span: Span,
}

/// Which scope is which group and instance.
#[derive(Debug, Default)]
pub(super) struct Groups {
    of: BTreeMap<ScopeId, (GroupId, InstanceId)>,
    /// The scopes of each group, by [`GroupId`].
    scopes: Vec<Vec<ScopeId>>,
}

impl Groups {
    /// The placed sub-assembly that a scope is.
    pub(super) fn instance(&self, scope: ScopeId) -> Option<InstanceId> {
        self.of.get(&scope).map(|(_, instance)| *instance)
    }

    /// True for the plan, and for the first of sub-assemblies that are alike.
    pub(super) fn is_first(&self, scope: ScopeId) -> bool {
        self.of
            .get(&scope)
            .is_none_or(|(group, _)| self.first(*group) == Some(scope))
    }

    fn first(&self, group: GroupId) -> Option<ScopeId> {
        self.scopes.get(group.0)?.first().copied()
    }
}

/// What makes two placed sub-assemblies alike: their description, and what they are given.
type Alike = (Span, Vec<Option<Value>>);

impl<'t> Evaluator<'t> {
    /// Sorts the placed sub-assemblies by what is alike.
    pub(super) fn groups(&self, model: &mut Model) -> Groups {
        let mut given: BTreeMap<ScopeId, Vec<Option<Value>>> = BTreeMap::new();
        for (index, (_, scope)) in self.all.formals.rows().iter().enumerate() {
            given.entry(*scope).or_default().push(self.formal(index));
        }
        let with_steps: BTreeSet<ScopeId> = self
            .all
            .steps
            .rows()
            .iter()
            .map(|(_, scope)| *scope)
            .collect();
        let mut groups = Groups::default();
        let mut kinds: Vec<Alike> = Vec::new();
        for number in 1..self.all.scopes.borrow().len() {
            let scope = ScopeId(number);
            let Some(holder) = self.holder(scope) else {
                continue;
            };
            let Some(described) = self.all.subassemblies.get(holder.subassembly) else {
                continue;
            };
            let alike = (described.span, given.remove(&scope).unwrap_or_default());
            let known = kinds.iter().position(|kind| *kind == alike);
            let group = GroupId(known.unwrap_or(kinds.len()));
            if known.is_none() {
                kinds.push(alike);
                groups.scopes.push(Vec::new());
                model.groups.push(Group {
                    name: described.name.value.clone(),
                    title: described
                        .title
                        .as_ref()
                        .unwrap_or(&described.name)
                        .value
                        .clone(),
                    label: format!("S{}", group.0 + 1),
                    instances: Vec::new(),
                    has_steps: with_steps.contains(&scope),
                    span: described.name.span,
                });
            }
            let instance = InstanceId(model.instances.len());
            model.instances.push(Instance {
                name: self.path_of(holder.place, holder.index),
                group,
                within: groups.instance(holder.outer),
                handedness: self.hand_of(scope),
                span: holder.placed.name.span,
            });
            if let Some(group) = model.groups.get_mut(group.0) {
                group.instances.push(instance);
            }
            if let Some(scopes) = groups.scopes.get_mut(group.0) {
                scopes.push(scope);
            }
            groups.of.insert(scope, (group, instance));
        }
        groups
    }

    /// The sub-assembly that each placement of one is.
    pub(super) fn wholes(&self, groups: &Groups) -> BTreeMap<(usize, i64), InstanceId> {
        let all = groups.of.iter();
        all.filter_map(|(scope, (_, instance))| {
            let holder = self.holder(*scope)?;
            Some(((holder.place, holder.index), *instance))
        })
        .collect()
    }

    /// The name of a placement with those of the sub-assemblies around it: `drawers[2].side`.
    pub(super) fn path_of(&self, place: usize, index: i64) -> String {
        let Some(placed) = self.all.places.get(place) else {
            return String::new();
        };
        let mut path = placed.name.value.clone();
        if placed.repeat.is_some() {
            path = format!("{path}[{index}]");
        }
        match self.holder(self.all.places.scope(place)) {
            Some(holder) => format!("{}.{path}", self.path_of(holder.place, holder.index)),
            None => path,
        }
    }

    /// The hand of a scope, seen from the plan.
    fn hand_of(&self, scope: ScopeId) -> Handedness {
        let mut hand = Handedness::AsDrawn;
        let mut at = scope;
        while let Some(holder) = self.holder(at) {
            hand = hand_in(handedness(holder.placed), hand);
            at = holder.outer;
        }
        hand
    }

    /// How a piece that lies so in a scope lies in the plan.
    pub(super) fn lie_in_plan(
        &self,
        scope: ScopeId,
        lie: Orientation,
        hand: Handedness,
    ) -> Option<(Orientation, Handedness)> {
        let (mut lie, mut hand, mut at) = (lie, hand, scope);
        while let Some(holder) = self.holder(at) {
            let stance = self.inside(holder.outer, || self.stance(holder.place))?;
            lie = Orientation {
                length: turned(stance, lie.length),
                width: turned(stance, lie.width),
                thickness: turned(stance, lie.thickness),
            };
            hand = hand_in(handedness(holder.placed), hand);
            at = holder.outer;
        }
        Some((lie, hand))
    }

    /// A direction as the statement being worked out means it, in the frame of the plan.
    pub(super) fn direction_in_plan(&self, word: &Name) -> Option<Direction> {
        let direction = self.direction(word)?;
        self.in_plan(self.scope.get(), direction)
    }

    /// Notes what a placement says that only a sub-assembly understands.
    pub(super) fn check_plain(&self, place: &Place) {
        if let (Some(given), Some(_)) = (place.given.first(), self.find(&place.part.value)) {
            let message = format!("`{}` is a part, and takes nothing", place.part.value);
            self.tell(
                Finding::new(&WORD_OUT_OF_PLACE, given.name.span, message)
                    .remedy("only a sub-assembly is given values where it is placed"),
            );
        }
    }

    /// All steps in the order of the work: a sub-assembly is put together right before the step
    /// that it comes in with.
    pub(super) fn steps(&self, numbers: &Numbers, groups: &Groups) -> Vec<StepDesign> {
        let mut by_scope: BTreeMap<ScopeId, Vec<&'t Step>> = BTreeMap::new();
        for (step, scope) in self.all.steps.rows() {
            by_scope.entry(scope).or_default().push(step);
        }
        let mut work = Work {
            evaluator: self,
            numbers,
            groups,
            by_scope,
            begun: BTreeSet::new(),
            steps: Vec::new(),
        };
        work.carry_out(ScopeId::PLAN, None);
        // One that no step brings in is put together all the same; a rule tells.
        for group in 0..groups.scopes.len() {
            work.make(GroupId(group));
        }
        work.steps
    }

    /// The parts that a step's lines bring in, each with the place where it is named.
    fn adds(
        &self,
        step: &'t Step,
        numbers: &Numbers,
        groups: &Groups,
        with_steps: &BTreeMap<ScopeId, Vec<&'t Step>>,
    ) -> Vec<(PlacedId, Span)> {
        let mut adds = Vec::new();
        for reference in added(step) {
            let around = self.made_before(reference, groups, with_steps);
            if let Some(name) = around {
                let message =
                    format!("`{name}` is put together in steps of its own and comes in as a whole");
                self.tell(
                    Finding::new(&WORD_OUT_OF_PLACE, reference.span, message)
                        .remedy(format!("add `{name}`")),
                );
                continue;
            }
            let one = std::slice::from_ref(reference);
            adds.extend(self.placed(one, Whole::Meant, numbers));
        }
        adds
    }

    /// The sub-assembly with steps of its own that a reference reaches into.
    fn made_before(
        &self,
        reference: &PlacedRef,
        groups: &Groups,
        with_steps: &BTreeMap<ScopeId, Vec<&'t Step>>,
    ) -> Option<String> {
        if reference.inner.is_empty() {
            return None;
        }
        let here = self.scope.get();
        let (place, _) = self.meant(reference).first().copied()?;
        let mut scope = self.all.places.scope(place);
        let mut found = None;
        while scope != here {
            let holder = self.holder(scope)?;
            let first = groups
                .of
                .get(&scope)
                .and_then(|(group, _)| groups.first(*group));
            if first.is_some_and(|first| with_steps.contains_key(&first)) {
                found = Some(holder.placed.name.value.clone());
            }
            scope = holder.outer;
        }
        found
    }
}

fn added(step: &Step) -> impl Iterator<Item = &PlacedRef> {
    step.lines.iter().flat_map(|line| {
        if let StepLineKind::Add(pieces) = &line.kind {
            pieces.as_slice()
        } else {
            &[]
        }
    })
}

/// The steps being put in order.
struct Work<'w, 't> {
    evaluator: &'w Evaluator<'t>,
    numbers: &'w Numbers,
    groups: &'w Groups,
    by_scope: BTreeMap<ScopeId, Vec<&'t Step>>,
    begun: BTreeSet<GroupId>,
    steps: Vec<StepDesign>,
}

impl Work<'_, '_> {
    /// The steps of the plan or of one group.
    fn carry_out(&mut self, scope: ScopeId, group: Option<GroupId>) {
        let all = group.and_then(|group| self.groups.scopes.get(group.0));
        let alike = all.cloned().unwrap_or_else(|| vec![scope]);
        let times = i64::try_from(alike.len()).unwrap_or(i64::MAX);
        for step in self.by_scope.get(&scope).cloned().unwrap_or_default() {
            for reference in added(step) {
                for other in self.evaluator.inside(scope, || self.whole_in(reference)) {
                    self.make(other);
                }
            }
            let mut design = self.evaluator.inside(scope, || {
                self.evaluator.step(step, group, times, self.numbers)
            });
            for one in &alike {
                let adds = self.evaluator.inside(*one, || {
                    self.evaluator
                        .adds(step, self.numbers, self.groups, &self.by_scope)
                });
                design.adds.extend(adds);
            }
            self.steps.push(design);
        }
    }

    /// Puts a group together, unless it is.
    fn make(&mut self, group: GroupId) {
        let Some(scope) = self
            .groups
            .first(group)
            .filter(|_| self.begun.insert(group))
        else {
            return;
        };
        if self.by_scope.contains_key(&scope) {
            self.carry_out(scope, Some(group));
            return;
        }
        // One without steps comes in part by part, with the sub-assemblies in it made before.
        let inner: Vec<GroupId> = self
            .groups
            .of
            .iter()
            .filter(|(inner, _)| {
                let holder = self.evaluator.holder(**inner);
                holder.is_some_and(|holder| holder.outer == scope)
            })
            .map(|(_, (group, _))| *group)
            .collect();
        for group in inner {
            self.make(group);
        }
    }

    /// The groups that a reference brings in.
    fn whole_in(&self, reference: &PlacedRef) -> Vec<GroupId> {
        let placements = self.evaluator.meant(reference);
        placements
            .into_iter()
            .filter(|(place, _)| self.evaluator.subassembly_of(*place).is_some())
            .filter_map(|(place, index)| self.evaluator.opened(place, index))
            .filter_map(|scope| self.groups.of.get(&scope))
            .map(|(group, _)| *group)
            .collect()
    }
}
