//! Where a line may break.

use unicode_linebreak::{BreakOpportunity, linebreaks};
use unicode_segmentation::UnicodeSegmentation;

/// How gladly a line ends somewhere.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Ending {
    /// Between words.
    Word,
    /// Inside a compound, after its hyphen or dash.
    Hyphen,
    /// At a soft hyphen, which is printed only there.
    SoftHyphen,
    /// In a token too long for a line, where nothing else helps.
    Forced,
    /// The text asks for a new line.
    Mandatory,
}

/// A place where a line may end: byte offset of what follows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Opportunity {
    pub(super) at: usize,
    pub(super) ending: Ending,
}

/// Tokens with a figure or an underscore (`M6–M8`, `side_panel-left`, `2440/1220`) break only
/// where they are longer than this: taken apart they are read wrongly.
const LONGEST_WHOLE_TOKEN: usize = 24;

/// Every place where a line of `text` may end, in order; its end is the last.
pub(super) fn opportunities(text: &str) -> Vec<Opportunity> {
    let mut found = Vec::new();
    let mut token_start = 0;
    for (at, kind) in linebreaks(text) {
        let before = text.get(..at).unwrap_or("");
        let last = before.chars().next_back();
        let ending = match (kind, last) {
            (BreakOpportunity::Mandatory, _) => Ending::Mandatory,
            (BreakOpportunity::Allowed, Some('\u{ad}')) => Ending::SoftHyphen,
            (BreakOpportunity::Allowed, Some(c)) if c.is_whitespace() || c == '\u{200b}' => {
                Ending::Word
            }
            (BreakOpportunity::Allowed, _) => Ending::Hyphen,
        };
        if ending == Ending::Hyphen && is_kept_whole(text, token_start, at) {
            continue;
        }
        if matches!(ending, Ending::Word | Ending::Mandatory) {
            token_start = at;
        }
        found.push(Opportunity { at, ending });
    }
    found
}

/// True inside a token that must be read as one.
fn is_kept_whole(text: &str, start: usize, at: usize) -> bool {
    let after = text.get(at..).unwrap_or("");
    let end = at + after.find(char::is_whitespace).unwrap_or(after.len());
    let token = text.get(start..end).unwrap_or("");
    // One stroke before a break ("a-", "—") would leave a lone letter or dash on a line.
    let head = text.get(start..at).unwrap_or("");
    let tail = text.get(at..end).unwrap_or("");
    if head.chars().count() < 3 || tail.chars().count() < 2 {
        return true;
    }
    token.chars().count() <= LONGEST_WHOLE_TOKEN
        && token.chars().any(|c| c.is_numeric() || c == '_')
}

/// The ends of the graphemes of a token, for breaking it where no word ends.
pub(super) fn grapheme_ends(token: &str) -> impl Iterator<Item = usize> {
    token
        .grapheme_indices(true)
        .map(|(at, grapheme)| at + grapheme.len())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn pieces(text: &str) -> Vec<&str> {
        let mut from = 0;
        opportunities(text)
            .into_iter()
            .map(|o| {
                let piece = &text[from..o.at];
                from = o.at;
                piece
            })
            .collect()
    }

    /// The published test of line breaking (UAX #14), of the version that the library keeps to: strings,
    /// and where a line may break in them.
    const PUBLISHED: &str = include_str!("../../tests/unicode/LineBreakTest-15.0.0.txt");

    /// A string and the byte offsets of its breaks, its end among them.
    fn published(line: &str) -> (String, Vec<usize>) {
        let (mut text, mut breaks) = (String::new(), Vec::new());
        for word in line.split_whitespace() {
            match word {
                "×" => {}
                "÷" => breaks.push(text.len()),
                code => {
                    let code = u32::from_str_radix(code, 16).unwrap();
                    text.push(char::from_u32(code).unwrap());
                }
            }
        }
        (text, breaks)
    }

    /// The library keeps more together than the published test in a few strings: the test knows numbers by
    /// their grammar, as its head says, where the library goes by pairs of characters, which the standard
    /// lets it ("a." before "2", ")" before "%"); and it takes U+2329 for a bracket like others.
    const KEPT_TOGETHER: usize = 58;
    /// It parts a pictogram that is not assigned yet from its skin tone.
    const UNASSIGNED: &str = "\u{1f02c}\u{1f3ff}";

    #[test]
    fn lines_break_where_the_standard_lets_them() {
        assert_eq!(unicode_linebreak::UNICODE_VERSION, (15, 0, 0));
        let lines = PUBLISHED.lines().filter(|line| !line.starts_with('#'));
        let (mut count, mut others) = (0, 0);
        for (text, breaks) in lines.map(published) {
            count += 1;
            let found: Vec<usize> = linebreaks(&text).map(|(at, _)| at).collect();
            if text == UNASSIGNED {
                continue;
            }
            // Neither the library's breaks nor ours are where the standard has none.
            let ours = opportunities(&text).into_iter().map(|found| found.at);
            for at in found.iter().copied().chain(ours) {
                assert!(breaks.contains(&at), "{text:?}");
            }
            others += usize::from(found != breaks);
        }
        assert_eq!((count, others), (7_654, KEPT_TOGETHER));
    }

    #[test]
    fn numbers_stay_with_their_units_and_labels_stay_whole() {
        assert_eq!(
            pieces("cut 12\u{a0}mm and 3\u{202f}1\u{2044}2\u{a0}in of M6–M8 side_panel-left"),
            [
                "cut ",
                "12\u{a0}mm ",
                "and ",
                "3\u{202f}1\u{2044}2\u{a0}in ",
                "of ",
                "M6–M8 ",
                "side_panel-left"
            ]
        );
    }

    #[test]
    fn compounds_break_after_their_hyphen_and_at_soft_hyphens() {
        assert_eq!(
            pieces("left-hand Sperr\u{ad}holz"),
            ["left-", "hand ", "Sperr\u{ad}", "holz"]
        );
        let soft = opportunities("Sperr\u{ad}holz");
        assert_eq!(soft[0].ending, Ending::SoftHyphen);
    }

    #[test]
    fn a_new_line_is_mandatory() {
        let found = opportunities("a\nb");
        assert_eq!(found[0].ending, Ending::Mandatory);
        assert_eq!(found[0].at, 2);
    }
}
