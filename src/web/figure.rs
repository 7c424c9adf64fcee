//! Drawings: SVG in the page, with what they show in words; one that comes again is kept once.

use crate::display::Figure;
use crate::document::tree::Inline;
use crate::drawing::{SVG_DEFAULTS, SvgInPage, number};

use super::page::Writer;

impl<'d> Writer<'d> {
    /// Figures that are shown more than once, to be shown by their ids.
    pub(super) fn kept_figures(&mut self) {
        let again = self.gathered.shown.iter().filter(|(_, times)| **times > 1);
        let again: Vec<&str> = again.map(|(name, _)| *name).collect();
        self.html.open(
            "svg",
            &[("class", "kept"), ("width", "0"), ("height", "0"), HIDDEN],
        );
        for name in again {
            let (Some(figure), Some(drawn)) =
                (self.document.figures.get(name), self.drawn.get(name))
            else {
                continue;
            };
            let (marks, view) = (drawn.marks.clone(), view(figure));
            let id = self.fresh_id();
            let mut attributes = vec![("id", id.as_str()), ("viewBox", view.as_str())];
            attributes.extend(SVG_DEFAULTS);
            self.html.open("symbol", &attributes);
            self.html.markup(&marks);
            self.html.close("symbol");
            self.kept.insert(name, id);
        }
        self.html.close("svg");
        self.html.line();
    }

    /// A figure with what stands below it.
    pub(super) fn figure(&mut self, name: &'d str, class: &str, caption: &[Inline]) {
        let Some(figure) = self.document.figures.get(name) else {
            return;
        };
        let class = format!("drawing {class}");
        self.html.open("figure", &[("class", class.trim_end())]);
        self.sheet(name, figure);
        if !caption.is_empty() {
            self.html.open("figcaption", &[]);
            self.inline(caption);
            self.html.close("figcaption");
        }
        self.html.close("figure");
        self.html.line();
    }

    /// A drawing that can be made larger than the screen.
    fn sheet(&mut self, name: &str, figure: &Figure) {
        self.html.open("div", &[("class", "sheet")]);
        self.svg(name, figure);
        self.links(name, figure);
        self.html.close("div");
        let shown = self.alternative(name, figure);
        let named = [("what", shown.into())];
        let label = self.words.word("web-larger-drawing", &named);
        let attributes = [
            ("type", "button"),
            ("class", "larger"),
            ("aria-pressed", "false"),
            ("aria-label", &label),
            ("hidden", "hidden"),
        ];
        let words = self.words.word("web-larger", &[]);
        self.html.element("button", &attributes, &words);
    }

    /// A figure alone; nothing where there is none of that name.
    pub(super) fn sign(&mut self, name: &str) {
        if let Some(figure) = self.document.figures.get(name) {
            self.svg(name, figure);
        }
    }

    /// A figure that is in no list of figures.
    pub(super) fn own_figure(&mut self, figure: &Figure, inner: &SvgInPage) {
        self.html.open("div", &[("class", "sheet")]);
        self.open_svg(figure, &figure.alternative);
        self.html.markup(&inner.marks);
        self.html.close("svg");
        self.html.close("div");
    }

    fn svg(&mut self, name: &str, figure: &Figure) {
        let shown = self.alternative(name, figure);
        self.open_svg(figure, &shown);
        if let Some(id) = self.kept.get(name) {
            let target = format!("#{id}");
            self.html.empty("use", &[("href", &target)]);
        } else if let Some(drawn) = self.drawn.get(name) {
            self.html.markup(&drawn.marks);
        }
        self.html.close("svg");
    }

    fn open_svg(&mut self, figure: &Figure, shown: &str) {
        let [width, height] =
            [figure.width, figure.height].map(|side| format!("{}pt", number(side)));
        let view = view(figure);
        let mut attributes = vec![
            ("role", "img"),
            ("aria-label", shown),
            ("width", width.as_str()),
            ("height", height.as_str()),
            ("viewBox", view.as_str()),
        ];
        attributes.extend(SVG_DEFAULTS);
        self.html.open("svg", &attributes);
    }

    /// Areas that lead somewhere, over the drawing: an image has nothing in it for those who do not see it,
    /// and what it leads to is told and linked beside it.
    fn links(&mut self, name: &str, figure: &Figure) {
        let Some(drawn) = self.drawn.get(name) else {
            return;
        };
        let known = drawn.links.iter();
        let known = known.filter(|link| self.gathered.places.contains(link.target.as_str()));
        let links: String = known.map(|link| link.markup.as_str()).collect();
        if links.is_empty() {
            return;
        }
        self.html.open(
            "svg",
            &[("class", "links"), ("viewBox", &view(figure)), HIDDEN],
        );
        self.html.markup(&links);
        self.html.close("svg");
    }

    /// What a figure shows, in words.
    fn alternative(&self, name: &str, figure: &Figure) -> String {
        let said = self.document.alternatives.get(name);
        let said = [said, Some(&figure.alternative)].into_iter().flatten();
        let said = said
            .map(|words| words.trim())
            .find(|words| !words.is_empty());
        said.unwrap_or(name).to_owned()
    }
}

/// Not there for those who do not see.
const HIDDEN: (&str, &str) = ("aria-hidden", "true");

fn view(figure: &Figure) -> String {
    format!("0 0 {} {}", number(figure.width), number(figure.height))
}
