//! What a page may load and run: its own style and its own script, known by their sums, and nothing else.

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest as _, Sha256};

/// The policy of a page with this style and this script (W3C, Content Security Policy Level 3, "Fetch
/// directives" and "Hash sources").
pub(super) fn policy(style: &str, script: &str) -> String {
    format!(
        "default-src 'none'; style-src 'sha256-{}'; script-src 'sha256-{}'; base-uri 'none'; \
         form-action 'none'",
        sum(style),
        sum(script)
    )
}

fn sum(text: &str) -> String {
    STANDARD.encode(Sha256::digest(text))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sums_are_those_of_the_standard() {
        // The example of Content Security Policy Level 2, "Hash usage for script elements" [from memory].
        assert_eq!(
            sum("alert('Hello, world.');"),
            "qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng="
        );
    }
}
