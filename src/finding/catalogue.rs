//! Every page of every stage, and how `explain` prints one.

use super::Page;

/// All pages, stage by stage.
pub fn pages() -> Vec<&'static Page> {
    let stages: &[&[&'static Page]] = &[
        crate::syntax::findings::PAGES,
        crate::model::findings::PAGES,
        crate::build::findings::PAGES,
        crate::solid::findings::PAGES,
        crate::drawing::findings::PAGES,
        crate::stock::findings::PAGES,
        crate::document::findings::PAGES,
        crate::words::findings::PAGES,
        crate::page::findings::PAGES,
        crate::cli::findings::PAGES,
    ];
    let mut pages = stages.concat();
    pages.extend(crate::rules::pages());
    pages
}

/// The page of a code, however its letter is written.
pub fn page(code: &str) -> Option<&'static Page> {
    pages()
        .into_iter()
        .find(|page| page.code.eq_ignore_ascii_case(code))
}

/// The page as text for a terminal: code, title, severity, why, and the page itself.
pub fn explain(page: &Page) -> String {
    let mut text = format!(
        "{} {}: {}\nWhy it matters: {}.\n\n",
        page.code,
        page.severity.word(),
        page.title,
        page.why
    );
    for line in body(page) {
        text.push_str(line);
        text.push('\n');
    }
    text
}

/// Where a page's rule comes from, in one line: what stands behind "Source:" at its end.
pub fn source(page: &Page) -> String {
    let lines = body(page).skip_while(|line| !line.starts_with("Source:"));
    let lines: Vec<&str> = lines.map(str::trim).collect();
    let text = lines.join(" ");
    let text = text.trim_start_matches("Source:").trim();
    text.trim_end_matches('.').to_owned()
}

/// The example of a page: `wright,bad` raises its finding, `wright,good` does not.
pub fn example(page: &Page, tag: &str) -> Option<String> {
    let fence = format!("```{tag}");
    let mut lines = body(page).skip_while(|line| *line != fence);
    lines.next()?;
    let mut example = String::new();
    for line in lines.take_while(|line| *line != "```") {
        example.push_str(line);
        example.push('\n');
    }
    Some(example)
}

/// The lines of a page, without the blank that a doc comment puts before each.
fn body(page: &Page) -> impl Iterator<Item = &'static str> {
    page.text
        .lines()
        .map(|line| line.strip_prefix(' ').unwrap_or(line))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn codes_are_unique() {
        let mut codes: Vec<&str> = pages().iter().map(|page| page.code).collect();
        let count = codes.len();
        codes.sort_unstable();
        codes.dedup();
        assert_eq!(codes.len(), count);
    }

    #[test]
    fn a_page_is_found_and_explained() {
        let page = page("s004").unwrap();
        let text = explain(page);
        assert!(
            text.starts_with("S004 error: unknown unit\nWhy it matters: "),
            "{text}"
        );
        assert!(text.contains("\n```wright,bad\nplan "), "{text}");
        assert!(example(page, "wright,bad").unwrap().contains("200 mmm"));
        assert_eq!(example(page, "wright,none"), None);
    }
}
