//! Findings of templates: what they could not say, or said in a way that is not read.
//!
//! Their source is no `.wright` text: they point at the plan block and name template and line.

use crate::finding::{Finding, Page, finding_pages};
use crate::source::Span;

finding_pages! {
    /// A template of the plan cannot be run: a statement is not complete, a name is not known, a
    /// filter is given what it does not take. The message names the template, its line and what
    /// the template engine says.
    ///
    /// Which names a template may use is written in `templates/README.md`. A name that is not
    /// there is an error and not an empty text, because an empty text in a cut list is not seen.
    ///
    /// ```template,bad
    /// <p>{{ cover.titel }}</p>
    /// ```
    /// ```template,good
    /// <p>{{ cover.title }}</p>
    /// ```
    ///
    /// Source: the template language as described in `templates/README.md`.
    P021 TEMPLATE_FAULT Error "template cannot be run"
        "a plan with a hole where a figure should be is worse than none";

    /// A template used up its budget of work: it loops too long, or writes without end. The
    /// budget grows with the number of parts, steps and cuts of the plan and is far above what
    /// the shipped templates need.
    ///
    /// ```template,bad
    /// {% for i in range(100000) %}{% for j in range(100000) %}.{% endfor %}{% endfor %}
    /// ```
    /// ```template,good
    /// {% for step in steps %}<p>{{ step.title }}</p>{% endfor %}
    /// ```
    ///
    /// Source: a limit of this tool.
    P022 TEMPLATE_RUNS_ON Error "template runs on and on"
        "a template from elsewhere must not hang the tool";

    /// What the templates wrote is not well-formed: a tag is not closed, or closed twice, an
    /// attribute is not quoted, a `<` or `&` of the template's own text is not written `&lt;` or
    /// `&amp;`. Text of the plan is escaped by itself.
    ///
    /// ```template,bad
    /// <p>Saw & sand.
    /// ```
    /// ```template,good
    /// <p>Saw &amp; sand.</p>
    /// ```
    ///
    /// Source: Extensible Markup Language (XML) 1.0, W3C, section 2.1, "Well-formed XML documents".
    P023 NOT_WELL_FORMED Error "text of a template is not well-formed"
        "where a tag ends must not be guessed: a caution may end up in a table";

    /// A template uses a tag or an attribute that is not of the subset in `templates/README.md`,
    /// or in a place where it has no meaning.
    ///
    /// ```template,bad
    /// <div>Saw.</div>
    /// ```
    /// ```template,good
    /// <p>Saw.</p>
    /// ```
    ///
    /// Source: `templates/README.md`.
    P024 UNKNOWN_MARKUP Error "tag is not read"
        "what is not understood would be missing from the page";

    /// A template shows a figure that was not drawn. The plan is made without it. A template
    /// can ask first: `{% if "exploded" in figures %}`.
    ///
    /// ```template,bad
    /// <figure name="step-99"/>
    /// ```
    /// ```template,good
    /// {% if "step-99" in figures %}<figure name="step-99"/>{% endif %}
    /// ```
    ///
    /// Source: `templates/README.md`.
    P025 FIGURE_NOT_THERE Warning "figure is not there"
        "a step without its picture is hard to follow";

    /// Two places of the document have one name, so that a link would lead to either.
    ///
    /// ```template,bad
    /// <h1 id="tools">Tools</h1> <h1 id="tools">More tools</h1>
    /// ```
    /// ```template,good
    /// <h1 id="tools">Tools</h1> <h1 id="more-tools">More tools</h1>
    /// ```
    ///
    /// Source: HTML Living Standard, section 3.2.6, "The id attribute": unique in its tree.
    P026 PLACE_NAMED_TWICE Error "two places of one name"
        "a link to a part must lead to that part";

    /// A link leads to a name that no heading and no row of a table has. The plan is made, and
    /// the words stand there without a link.
    ///
    /// ```template,bad
    /// <p>See <a href="#cutlist">the cut list</a>.</p>
    /// ```
    /// ```template,good
    /// <p>See <a href="#cut-list">the cut list</a>.</p>
    /// ```
    ///
    /// Source: `templates/README.md`.
    P027 LINK_TO_NOWHERE Warning "link leads nowhere"
        "a reader who follows it ends up nowhere";
}

/// What is wrong with a template or with what it wrote.
#[derive(Clone, Debug)]
pub(super) struct Fault {
    page: &'static Page,
    /// Byte of the written text, where it is known.
    pub(super) at: Option<usize>,
    /// Template and line, where they are known.
    pub(super) place: Option<(String, usize)>,
    said: String,
}

impl Fault {
    /// A fault of the kind `page` at a byte of the written text.
    pub(super) fn new(page: &'static Page, at: Option<usize>, said: String) -> Self {
        Self {
            page,
            at,
            place: None,
            said,
        }
    }

    /// The finding, which points at the plan block.
    pub(super) fn finding(self, plan: Span) -> Finding {
        let message = match self.place {
            Some((name, line)) => format!("template {name}, line {line}: {}", self.said),
            None => self.said,
        };
        Finding::new(self.page, plan, message)
    }
}
