//! The statement every plan carries.

// ref: safety, "Statement every plan should carry (ours)".
/// General information, not a replacement for manuals, codes and licensed practice.
pub(super) const STATEMENT: &str = "This plan is general information. Read and follow the manual \
of each tool, adhesive and finish, and the rules and building codes where you live. Guards shown \
removed are for clarity only. Work on electricity, gas, structure or fire separation belongs to a \
licensed person. Strength and stability checks here use average wood data; test the finished \
piece before use, and do not use it for loads, heights or users the plan does not name.";
