//! A look of the user's own: templates, words, fonts and colours of a folder in place of those that are
//! shipped.

use std::ffi::OsStr;
use std::path::{Path, PathBuf};

use serde::Deserialize;

use super::files;
use super::findings::{COLOUR_NOT_READ, FAINT_COLOUR, FILE_NOT_READ, FONT_NOT_READ};
use super::{LookArguments, SourceArguments};
use crate::display::{Colours, LETTERS, Tone};
use crate::document::Templates;
use crate::finding::{Finding, Findings, Outcome};
use crate::model::PlanHead;
use crate::road::Checked;
use crate::source::{Sources, Span};
use crate::text::Fonts;
use crate::words::Catalogues;

/// The faces of a folder's fonts, in the order that fonts are made of.
const FACES: [&str; 3] = ["regular.ttf", "bold.ttf", "italic.ttf"];

/// The file of a folder's colours.
const COLOURS: &str = "colours.toml";

/// What it says.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Written {
    /// `#rrggbb`.
    accent: toml::Spanned<String>,
}

/// What plans are set with.
pub(super) struct Look {
    pub(super) fonts: Fonts,
    templates: Templates,
    catalogues: Catalogues,
    /// The language that was asked for in place of the plan's own.
    asked: Option<String>,
    /// What is doubtful in it.
    doubts: Findings,
}

/// A source checked by `check` and the look that was asked for.
///
/// # Errors
/// Findings where a file of either cannot be read.
pub(super) fn checked_with_look(
    check: fn(&SourceArguments, &mut Sources) -> Result<Outcome<Checked>, Findings>,
    source: &SourceArguments,
    look: &LookArguments,
    sources: &mut Sources,
) -> Result<(Outcome<Checked>, Look), Findings> {
    let outcome = check(source, sources)?;
    Ok((outcome, Look::of(look, sources)?))
}

impl Look {
    /// The look that was asked for.
    ///
    /// # Errors
    /// Findings where a file of it cannot be read.
    pub(super) fn of(arguments: &LookArguments, sources: &mut Sources) -> Result<Self, Findings> {
        let mut look = Self {
            fonts: Fonts::shipped().map_err(|_| no_font("the shipped fonts"))?,
            templates: Templates::shipped(),
            catalogues: Catalogues::shipped(),
            asked: arguments.words.clone(),
            doubts: Findings::new(),
        };
        if let Some(folder) = &arguments.templates {
            look.take(folder, sources)?;
        }
        Ok(look)
    }

    /// Takes over what a folder holds.
    fn take(&mut self, folder: &Path, sources: &mut Sources) -> Result<(), Findings> {
        for path in listed(folder)? {
            let name = path
                .file_name()
                .map(OsStr::to_string_lossy)
                .unwrap_or_default();
            if name.ends_with(".j2") {
                let text = text(&path, sources)?;
                self.templates = self.templates.clone().with(&name, &text);
            }
        }
        let colours = folder.join(COLOURS);
        if colours.is_file() {
            let colours = self.colours(&colours, sources)?;
            self.templates = self.templates.clone().coloured(colours);
        }
        let words = folder.join("words");
        if words.is_dir() {
            for path in listed(&words)?
                .iter()
                .filter(|path| path.extension() == Some(OsStr::new("ftl")))
            {
                let language = path
                    .file_stem()
                    .map(OsStr::to_string_lossy)
                    .unwrap_or_default();
                let text = text(path, sources)?;
                self.catalogues = self.catalogues.clone().with(&language, &text);
            }
        }
        let fonts = folder.join("fonts");
        if fonts.is_dir() {
            self.fonts = own_fonts(&fonts)?;
        }
        Ok(())
    }

    /// The colours that a file says.
    fn colours(&mut self, path: &Path, sources: &mut Sources) -> Result<Colours, Findings> {
        let file = files::read(path, sources).map_err(|finding| one(*finding))?;
        let unread = |span: std::ops::Range<usize>, message: &str| {
            let span = Span::new(file, span.start, span.end);
            one(Finding::new(&COLOUR_NOT_READ, span, message)
                .remedy("the file holds one line such as `accent = \"#245e66\"`"))
        };
        let written: Written = toml::from_str(sources.text(file))
            .map_err(|fault| unread(fault.span().unwrap_or(0..0), fault.message()))?;
        let span = written.accent.span();
        let text = written.accent.get_ref();
        let accent = Tone::from_hex(text)
            .ok_or_else(|| unread(span.clone(), &format!("`{text}` is no colour")))?;
        let contrast = accent.contrast(Tone::WHITE);
        if contrast < LETTERS {
            let darker = accent.readable_on(Tone::WHITE).hex();
            let message = format!(
                "`{text}` on white has a contrast of {contrast:.1} to 1; letters need {LETTERS} to 1"
            );
            let span = Span::new(file, span.start, span.end);
            let finding = Finding::new(&FAINT_COLOUR, span, message);
            self.doubts
                .push(finding.remedy(format!("take a darker one: {darker} is read")));
        }
        Ok(Colours { accent })
    }

    /// Templates that speak the language that was asked for, or the plan's own.
    pub(super) fn templates(&self, plan: &PlanHead, findings: &mut Findings) -> Templates {
        let own = if plan.words.is_empty() {
            "en"
        } else {
            &plan.words
        };
        let tag = self.asked.as_deref().unwrap_or(own);
        let words = self.catalogues.words(tag, plan.span);
        findings.append(words.findings);
        findings.append(self.doubts.clone());
        self.templates.clone().speaking(words.value)
    }
}

/// The files of a folder, by name.
fn listed(folder: &Path) -> Result<Vec<PathBuf>, Findings> {
    let unread = |fault: std::io::Error| {
        let message = format!("`{}` cannot be read: {fault}", folder.display());
        one(Finding::new(&FILE_NOT_READ, Span::default(), message))
    };
    let entries = std::fs::read_dir(folder).map_err(unread)?;
    let mut paths = Vec::new();
    for entry in entries {
        paths.push(entry.map_err(unread)?.path());
    }
    paths.sort();
    Ok(paths)
}

fn text(path: &Path, sources: &mut Sources) -> Result<String, Findings> {
    let file = files::read(path, sources).map_err(|finding| one(*finding))?;
    Ok(sources.text(file).to_owned())
}

/// An upright, a bold and an italic face.
fn own_fonts(folder: &Path) -> Result<Fonts, Findings> {
    let mut faces = Vec::new();
    for name in FACES {
        faces.push(files::font(&folder.join(name)).map_err(|finding| one(*finding))?);
    }
    let [regular, bold, italic] = <[Vec<u8>; 3]>::try_from(faces).unwrap_or_default();
    Fonts::from_files(regular, bold, italic).map_err(|fault| {
        let [upright, heavy, slanted] = FACES;
        let name = match fault.0 {
            crate::display::Face::Regular => upright,
            crate::display::Face::Bold => heavy,
            crate::display::Face::Italic => slanted,
        };
        no_font(&folder.join(name).display().to_string())
    })
}

fn no_font(name: &str) -> Findings {
    let message = format!("`{name}` is no font that can be read");
    one(Finding::new(&FONT_NOT_READ, Span::default(), message)
        .remedy("take a TrueType or OpenType font that may be embedded"))
}

fn one(finding: Finding) -> Findings {
    let mut findings = Findings::new();
    findings.push(finding);
    findings
}
