//! `leafwright build --release-of REVISION`: what changed since a release needs a revision of its own.

use std::path::Path;

use super::check;
use super::findings::{NO_NEW_REVISION, NOTHING_NEW};
use super::revisions::Revision;
use crate::diff;
use crate::finding::{Finding, Findings};
use crate::road::Checked;
use crate::source::Sources;

/// What is to be said of a plan that follows the release `written`.
pub(super) fn check(
    path: &Path,
    written: &str,
    later: &Checked,
    sources: &mut Sources,
) -> Findings {
    let mut findings = Findings::new();
    let revision = match Revision::of(path, written) {
        Ok(revision) => revision,
        Err(finding) => {
            findings.push(*finding);
            return findings;
        }
    };
    let earlier = match check::checked_on(path, &revision, sources) {
        Ok(outcome) => outcome,
        Err(found) => return found,
    };
    let (Some(before), Some(after)) = (earlier.value.selected(), later.selected()) else {
        // What was released must have been sound; what is wrong with it is told.
        return earlier.findings;
    };
    let difference = diff::compare(&before, &after);
    let same_mark = difference.before.mark == difference.after.mark;
    let newest = after
        .build
        .plan
        .revisions
        .iter()
        .find(|revision| revision.mark == difference.after.mark);
    let span = newest.map_or(after.build.plan.span, |revision| revision.span);
    if same_mark && !difference.is_empty() {
        let message = format!(
            "the plan is other than in `{written}`, and both are revision {}",
            difference.after.mark
        );
        findings.push(
            Finding::new(&NO_NEW_REVISION, span, message)
                .remedy("add a `revision` line that says what changed and why")
                .remedy(format!(
                    "`leafwright diff --rev {written} {}` tells what it is",
                    path.display()
                )),
        );
    } else if !same_mark && difference.is_empty() {
        let message = format!("nothing is built otherwise than in `{written}`");
        findings.push(
            Finding::new(&NOTHING_NEW, span, message)
                .remedy("say so in its note, or take the revision out"),
        );
    }
    findings
}
