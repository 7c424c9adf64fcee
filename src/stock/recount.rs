//! Counts a layout again from the numbers alone, knowing nothing of how it was found.

use super::plain::{PlacedRectangle, SheetPacking, SheetProblem, StickCutting, StickProblem};

/// What is wrong with how bars are cut, if anything: every part there or said to be uncut, no bar
/// longer than it is, no more bars than there are, cost and bound in order.
pub fn stick_faults(problem: &StickProblem, cutting: &StickCutting) -> Vec<String> {
    let mut faults = Vec::new();
    let mut cut = vec![0; problem.parts.len()];
    let mut used = vec![0; problem.bars.len()];
    let mut cost: i128 = 0;
    for (number, bar) in cutting.bars.iter().enumerate() {
        let Some(stock) = problem.bars.get(bar.stock) else {
            faults.push(format!("bar {number} is of no stock"));
            continue;
        };
        cost += stock.cost * bar.times as i128;
        add(&mut used, bar.stock, bar.times);
        let (mut length, mut pieces) = (0_i128, 0_i128);
        for (part, count) in &bar.parts {
            let Some(asked) = problem.parts.get(*part) else {
                faults.push(format!("bar {number} holds a part nobody asked for"));
                continue;
            };
            add(&mut cut, *part, count * bar.times);
            length += i128::from(asked.length) * *count as i128;
            pieces += *count as i128;
        }
        // One saw cut between two pieces; the last one needs none where it ends with the bar.
        let needed = length + i128::from(problem.kerf) * (pieces - 1).max(0);
        let usable = i128::from(stock.length) - 2 * i128::from(problem.trim);
        if needed > usable {
            faults.push(format!("bar {number} needs {needed} of {usable}"));
        }
        if pieces == 0 || bar.times == 0 {
            faults.push(format!("bar {number} is cut for nothing"));
        }
    }
    for (number, (part, cut)) in problem.parts.iter().zip(&cut).enumerate() {
        let uncut = cutting.uncut.get(number).copied().unwrap_or(0);
        if cut + uncut != part.count {
            let asked = part.count;
            faults.push(format!(
                "part {number}: {cut} cut, {uncut} uncut of {asked}"
            ));
        }
    }
    for (number, (bar, used)) in problem.bars.iter().zip(&used).enumerate() {
        if bar.limit.is_some_and(|limit| *used > limit) {
            faults.push(format!("{used} bars of stock {number} are not there"));
        }
    }
    if cost != cutting.cost {
        faults.push(format!("costs {cost}, not {}", cutting.cost));
    }
    if cutting.at_least > cost {
        faults.push(format!("costs {cost}, less than {}", cutting.at_least));
    }
    faults
}

/// What is wrong with a packing of sheets, if anything: every part there once, in its size, inside
/// its trimmed sheet and a saw cut from the next, and every sheet cut from edge to edge.
pub fn sheet_faults(problem: &SheetProblem, packing: &SheetPacking) -> Vec<String> {
    let mut faults = Vec::new();
    let mut cut = vec![0; problem.parts.len()];
    let mut used = vec![0; problem.sheets.len()];
    for (number, sheet) in packing.sheets.iter().enumerate() {
        let Some(stock) = problem.sheets.get(sheet.stock) else {
            faults.push(format!("sheet {number} is of no stock"));
            continue;
        };
        add(&mut used, sheet.stock, 1);
        let (trim, far) = (
            problem.trim,
            (stock.length - problem.trim, stock.width - problem.trim),
        );
        for placed in &sheet.placed {
            add(&mut cut, placed.part, 1);
            let asked = problem.parts.get(placed.part);
            let size = asked.map(|part| {
                if placed.turned {
                    (part.width, part.length)
                } else {
                    (part.length, part.width)
                }
            });
            if size != Some((placed.length, placed.width)) || (placed.turned && !problem.may_turn) {
                faults.push(format!("sheet {number}: {placed:?} is no part"));
            }
            let (right, back) = (placed.x + placed.length, placed.y + placed.width);
            if placed.x < trim || placed.y < trim || right > far.0 || back > far.1 {
                faults.push(format!("sheet {number}: {placed:?} is not inside"));
            }
        }
        if !is_edge_to_edge(&sheet.placed, problem.kerf) {
            faults.push(format!("sheet {number} is not cut from edge to edge"));
        }
        if let Some(most) = problem.most_stages {
            let whole = [(trim, far.0), (trim, far.1)];
            let needed = [0, 1].map(|way| stages(whole, &sheet.placed, problem.kerf, way));
            if needed.iter().all(|needed| *needed > usize::from(most)) {
                faults.push(format!("sheet {number} takes {needed:?} stages of {most}"));
            }
        }
    }
    for (number, (part, cut)) in problem.parts.iter().zip(&cut).enumerate() {
        let uncut = packing.uncut.get(number).copied().unwrap_or(0);
        if cut + uncut != part.count {
            let asked = part.count;
            faults.push(format!(
                "part {number}: {cut} cut, {uncut} uncut of {asked}"
            ));
        }
    }
    for (number, (sheet, used)) in problem.sheets.iter().zip(&used).enumerate() {
        if sheet.limit.is_some_and(|limit| *used > limit) {
            faults.push(format!("{used} sheets of stock {number} are not there"));
        }
    }
    let is_whole = packing.uncut.iter().all(|uncut| *uncut == 0);
    if is_whole && i128::from(packing.at_least) > packing.sheets.len() as i128 {
        faults.push("takes fewer sheets than it could".to_owned());
    }
    if is_whole && packing.least_cost > packing.cost {
        faults.push("costs less than it could".to_owned());
    }
    if packing.shop.is_worse_than(&packing.first) {
        faults.push("is worse to cut than the first one found".to_owned());
    }
    faults
}

/// True where cuts from edge to edge free every rectangle, a saw cut wide each.
fn is_edge_to_edge(placed: &[PlacedRectangle], kerf: i64) -> bool {
    let mut waiting = vec![placed.to_vec()];
    while let Some(group) = waiting.pop() {
        if group.len() < 2 {
            continue;
        }
        let along = |one: &PlacedRectangle| (one.x, one.x + one.length);
        let across = |one: &PlacedRectangle| (one.y, one.y + one.width);
        let Some(halves) = divided(&group, kerf, along).or_else(|| divided(&group, kerf, across))
        else {
            return false;
        };
        waiting.extend(halves);
    }
    true
}

/// From where to where, along the sheet and across it.
type Region = [(i64, i64); 2];

/// How many stages free the rectangles of a region where the first one divides its stretch along
/// (0) or across (1) the sheet; each stage makes all cuts of its way that go through nothing.
fn stages(region: Region, group: &[PlacedRectangle], kerf: i64, way: usize) -> usize {
    let span = |one: &PlacedRectangle, way: usize| match way {
        0 => (one.x, one.x + one.length),
        _ => (one.y, one.y + one.width),
    };
    let stretch = |way: usize| region.get(way).copied().unwrap_or_default();
    let mut waiting = vec![group.to_vec()];
    let mut clusters: Vec<Vec<PlacedRectangle>> = Vec::new();
    while let Some(cluster) = waiting.pop() {
        match divided(&cluster, kerf, |one| span(one, way)) {
            Some(halves) => waiting.extend(halves),
            None => clusters.push(cluster),
        }
    }
    let bounds = |cluster: &[PlacedRectangle], way: usize| {
        let ends = cluster.iter().map(|one| span(one, way));
        ends.fold((i64::MAX, i64::MIN), |all, end| {
            (all.0.min(end.0), all.1.max(end.1))
        })
    };
    let other = 1 - way;
    let is_cut = clusters.len() > 1 || bounds(group, way) != stretch(way);
    let more = clusters.iter().map(|cluster| {
        if cluster.len() == 1 && bounds(cluster, other) == stretch(other) {
            return 0;
        }
        if !is_cut && bounds(cluster, other) == stretch(other) && cluster.len() == group.len() {
            // Neither way frees anything unless the other one divides.
            let divides = divided(cluster, kerf, |one| span(one, other)).is_some();
            if !divides {
                return usize::from(u8::MAX);
            }
        }
        let mut rest = region;
        if let Some(side) = rest.get_mut(way) {
            *side = bounds(cluster, way);
        }
        stages(rest, cluster, kerf, other)
    });
    usize::from(is_cut) + more.max().unwrap_or(0)
}

/// The rectangles before and behind a cut that goes through none, if there is one.
fn divided(
    group: &[PlacedRectangle],
    kerf: i64,
    span: impl Fn(&PlacedRectangle) -> (i64, i64),
) -> Option<[Vec<PlacedRectangle>; 2]> {
    let mut sorted = group.to_vec();
    sorted.sort_by_key(|one| span(one));
    let mut end = i64::MIN;
    let at = sorted.iter().position(|one| {
        let (from, to) = span(one);
        let is_clear = end > i64::MIN && from >= end.saturating_add(kerf);
        end = end.max(to);
        is_clear
    })?;
    let behind = sorted.split_off(at);
    Some([sorted, behind])
}

fn add(counts: &mut [usize], index: usize, more: usize) {
    if let Some(count) = counts.get_mut(index) {
        *count += more;
    }
}
