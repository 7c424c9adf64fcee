//! Which line of which template wrote a place of the text.
//!
//! A template's text is read only where something is wrong with what it wrote. Then it is
//! rendered once more with a mark before every tag, an XML processing instruction that names the
//! template and the line and that no reader of the text sees.

use super::findings::Fault;

/// A template's text with a mark before every tag outside its own statements.
pub(super) fn marked(name: &str, text: &str) -> String {
    let mut out = String::with_capacity(text.len() * 2);
    let mut rest = text;
    let mut line = 1;
    while let Some(first) = rest.chars().next() {
        let own = [("{{", "}}"), ("{%", "%}"), ("{#", "#}"), ("<!--", "-->")];
        let statement = own.iter().find(|(open, _)| rest.starts_with(open));
        let length = match statement {
            Some((_, close)) => rest.find(close).map_or(rest.len(), |at| at + close.len()),
            None => {
                if begins_tag(rest) {
                    out.push_str(&format!("<?at {line} {name}?>"));
                }
                first.len_utf8()
            }
        };
        let (taken, behind) = rest.split_at_checked(length).unwrap_or((rest, ""));
        out.push_str(taken);
        line += taken.matches('\n').count();
        rest = behind;
    }
    out
}

fn begins_tag(text: &str) -> bool {
    let mut characters = text.chars();
    characters.next() == Some('<')
        && characters
            .next()
            .is_some_and(|second| second == '/' || second.is_ascii_alphabetic())
}

/// The template and line of the mark at or before a byte of a marked text.
pub(super) fn template_line(text: &str, at: usize) -> Option<(String, usize)> {
    let mut end = at.min(text.len());
    while !text.is_char_boundary(end) {
        end -= 1;
    }
    // The mark stands just before the tag it belongs to.
    let before = text.get(..end)?;
    let start = before.rfind("<?at ")? + "<?at ".len();
    let mark = text.get(start..)?;
    let mark = mark.get(..mark.find("?>")?)?;
    let (line, name) = mark.split_once(' ')?;
    Some((name.to_owned(), line.parse().ok()?))
}

/// The same fault with its template and line.
pub(super) fn located(mut fault: Fault, marked: &str) -> Fault {
    fault.place = fault.at.and_then(|at| template_line(marked, at));
    fault
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn marks_stand_before_tags_alone() {
        let text = "<p>{{ a < b }}\n{% if x %}<br/>{% endif %}</p>";
        assert_eq!(
            marked("t", text),
            "<?at 1 t?><p>{{ a < b }}\n{% if x %}<?at 2 t?><br/>{% endif %}<?at 2 t?></p>"
        );
    }

    #[test]
    fn a_place_is_found_again() {
        let text = marked("name.j2", "<p>\n\n<b>größer</b></p>");
        let at = text.find("größer").unwrap();
        assert_eq!(template_line(&text, at), Some(("name.j2".to_owned(), 3)));
        assert_eq!(template_line("plain", 3), None);
    }
}
