//! Something the author requires is not true.

use crate::finding::{Finding, Findings, finding_pages};
use crate::rules::Facts;

finding_pages! {
    /// A `require` statement of the plan is not true for this build.
    ///
    /// The author wrote down what must hold, so that it still holds after the next change.
    ///
    /// ```wright,bad
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// let inside = 290 mm
    /// require inside >= 300 mm because "a folder is 300 mm wide"
    /// ```
    /// ```wright,good
    /// plan "Box" { revision "A" on 2026-01-15 }
    /// let inside = 305 mm
    /// require inside >= 300 mm because "a folder is 300 mm wide"
    /// ```
    ///
    /// Source: the plan itself.
    F003 REQUIREMENT_NOT_MET Error "a requirement is not met" "the author needs this to be true";
}

/// Reports every requirement that does not hold.
pub fn check(facts: &Facts<'_>, findings: &mut Findings) {
    for requirement in facts
        .model
        .requirements
        .iter()
        .filter(|requirement| !requirement.holds)
    {
        let message = format!(
            "this is {}, and is required to be {} {}",
            requirement.left, requirement.comparison, requirement.right
        );
        let mut finding = Finding::new(&REQUIREMENT_NOT_MET, requirement.span, message);
        if let Some((left, right)) = requirement.lengths {
            finding = finding
                .figure("it is", left)
                .figure("required", right)
                .figure("difference", (left - right).abs());
        }
        if let Some(because) = &requirement.because {
            finding = finding.because(because.clone());
        }
        findings.push(finding.remedy("change the sizes it depends on, or the requirement"));
    }
}
