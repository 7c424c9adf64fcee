//! What the author allows: warnings and notes that are meant to be so, each with its reason.

use crate::finding::{Finding, Findings, Outcome, Severity, catalogue, finding_pages};
use crate::model::Allowance;

finding_pages! {
    /// An `allow` line names a code that is none, or that is an error.
    ///
    /// A warning may be wrong about one joint of one piece, and its author knows. An error means
    /// that no plan can be drawn, or that it cannot be built.
    ///
    /// ```wright,bad
    /// plan "Box" {
    ///     revision "A" on 2026-01-15
    ///     allow F001 because "they go into each other"
    /// }
    /// ```
    /// ```wright,good
    /// plan "Box" {
    ///     author "Example Workshop"
    ///     allow R001 because "this one stays in the workshop"
    /// }
    /// ```
    ///
    /// Source: the language itself.
    R003 CANNOT_ALLOW Error "nothing that can be allowed" "a reason that silences nothing misleads who reads it";

    /// An `allow` line silences nothing: what it allowed is not there any more.
    ///
    /// ```wright,bad
    /// plan "Box" {
    ///     revision "A" on 2026-01-15
    ///     allow R001 because "this one stays in the workshop"
    /// }
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// ```
    ///
    /// Source: the language itself.
    R004 NOTHING_TO_ALLOW Note "an allowance that is not needed" "left standing, it would hide the same fault when it comes back";
}

/// A finding that the author wants, and why.
#[derive(Clone, Debug)]
pub struct Allowed {
    /// What was found.
    pub finding: Finding,
    /// The author's reason.
    pub because: String,
}

/// Sorts out of some findings those that the author allows.
///
/// With an error among them, nothing is said of allowances that seem not to be needed.
pub fn set_aside(findings: &Findings, allowances: &[Allowance]) -> Outcome<Vec<Allowed>> {
    let mut kept = Findings::new();
    let mut allowed = Vec::new();
    let mut used = vec![false; allowances.len()];
    for finding in findings.iter() {
        let wanted = allowances.iter().zip(&mut used).find(|(allowance, _)| {
            finding.page.severity != Severity::Error
                && finding.page.code.eq_ignore_ascii_case(&allowance.code)
                && allowance.within.start <= finding.span.start
                && finding.span.end <= allowance.within.end
        });
        match wanted {
            Some((allowance, used)) => {
                *used = true;
                allowed.push(Allowed {
                    finding: finding.clone(),
                    because: allowance.because.clone(),
                });
            }
            None => kept.push(finding.clone()),
        }
    }
    let complete = !findings.has_errors();
    for (allowance, used) in allowances.iter().zip(used) {
        let code = &allowance.code;
        let page = catalogue::page(code);
        let finding = match page {
            None => Finding::new(
                &CANNOT_ALLOW,
                allowance.code_span,
                format!("there is no finding `{code}`"),
            )
            .remedy("`leafwright explain --list` lists all"),
            Some(page) if page.severity == Severity::Error => Finding::new(
                &CANNOT_ALLOW,
                allowance.code_span,
                format!("{code} ({}) is an error, and cannot be allowed", page.title),
            )
            .remedy("mend it; `leafwright explain` says how"),
            Some(_) if used || !complete => continue,
            Some(page) => Finding::new(
                &NOTHING_TO_ALLOW,
                allowance.code_span,
                format!("nothing here is found as {code} ({})", page.title),
            )
            .remedy("take the line out"),
        };
        kept.push(finding);
    }
    Outcome {
        value: allowed,
        findings: kept,
    }
}
