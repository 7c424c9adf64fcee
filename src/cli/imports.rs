//! What a plan imports: files are read and handed in, each once, before anything is worked out.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::rc::Rc;

use super::findings::IMPORT_NOT_READ;
use super::project::{Home, Project};
use super::revisions::{Revision, Shelf};
use crate::finding::{Finding, Findings};
use crate::library;
use crate::source::{FileId, Sources, Span};
use crate::syntax::tree::{Import, ImportSource};
use crate::syntax::{self, imports};

/// A file whose imports are to be followed.
struct Importer {
    file: FileId,
    /// The folder its paths start from; none for `std`, which imports no files.
    folder: Option<PathBuf>,
    /// What its imports may not leave.
    root: PathBuf,
    /// Where it is read from; none for where the plan is read from.
    shelf: Option<Rc<Revision>>,
    /// The library of the project that it belongs to.
    library: Option<String>,
}

/// Everything read so far.
struct Loader<'s> {
    sources: &'s mut Sources,
    shelf: &'s dyn Shelf,
    project: Project,
    findings: Findings,
    /// Files by where they really are.
    known: BTreeMap<PathBuf, FileId>,
    std: Option<FileId>,
    open: Vec<Importer>,
}

/// Reads all that a plan imports, over as many files as it takes, and links it in `sources`.
///
/// A path leads from the folder of the file that imports, to a file in the folder of the project
/// or below it; without a project file, in the folder of the plan.
pub(super) fn load(
    path: &Path,
    file: FileId,
    shelf: &dyn Shelf,
    sources: &mut Sources,
) -> Findings {
    let folder = folder_of(path);
    let mut findings = Findings::new();
    let project = Project::around(&folder, shelf, sources, &mut findings);
    let top = project.folder.as_deref().unwrap_or(&folder);
    let root = shelf.real(top).unwrap_or_else(|_| top.to_owned());
    let mut loader = Loader {
        sources,
        shelf,
        project,
        findings,
        known: BTreeMap::new(),
        std: None,
        open: Vec::new(),
    };
    if let Ok(own) = shelf.real(path) {
        loader.known.insert(own, file);
    }
    loader.open.push(Importer {
        file,
        folder: Some(folder),
        root,
        shelf: None,
        library: None,
    });
    while let Some(importer) = loader.open.pop() {
        let tree = syntax::parse(loader.sources, importer.file).value;
        for import in imports(&tree) {
            loader.follow(&importer, import);
        }
    }
    loader.project.check(&mut loader.findings);
    if !loader.findings.has_errors()
        && shelf.is_now()
        && let Err(finding) = loader.project.lock()
    {
        loader.findings.push(*finding);
    }
    loader.findings
}

fn folder_of(path: &Path) -> PathBuf {
    match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder.to_owned(),
        _ => PathBuf::from("."),
    }
}

impl Loader<'_> {
    fn follow(&mut self, importer: &Importer, import: &Import) {
        let key = import.from.key();
        if self.sources.linked(importer.file, &key).is_some() {
            return;
        }
        let found = match &import.from {
            ImportSource::Named(name) if name.value == library::STD => Ok(self.std_file()),
            ImportSource::Named(name) => self.named(&name.value, name.span),
            ImportSource::File(path) => self.file(importer, &path.value, path.span),
        };
        match found {
            Ok(library) => self.sources.link(importer.file, &key, library),
            Err(finding) => self.findings.push(*finding),
        }
    }

    fn std_file(&mut self) -> FileId {
        if let Some(known) = self.std {
            return known;
        }
        let file = self.sources.add(library::STD, &library::std_text());
        self.std = Some(file);
        self.open.push(Importer {
            file,
            folder: None,
            root: PathBuf::new(),
            shelf: None,
            library: None,
        });
        file
    }

    fn file(
        &mut self,
        importer: &Importer,
        path: &str,
        span: Span,
    ) -> Result<FileId, Box<Finding>> {
        let Some(folder) = &importer.folder else {
            let message = format!("`std` cannot import `{path}`");
            return Err(not_read(span, message, "name a file beside the plan"));
        };
        let outside = || {
            let message = format!("`{path}` leads out of the folder of the plan");
            let remedy = "move the library into that folder or one below it: a plan must be whole wherever its folder goes";
            not_read(span, message, remedy)
        };
        if Path::new(path).is_absolute() || path.contains('\\') {
            return Err(outside());
        }
        let shown = folder.join(path);
        let own = importer.shelf.clone();
        let shelf: &dyn Shelf = own.as_deref().map_or(self.shelf, |shelf| shelf);
        let real = shelf.real(&shown).map_err(|fault| {
            let message = format!("`{}` cannot be read: {fault}", shown.display());
            not_read(
                span,
                message,
                "write the path from the folder of the file that imports",
            )
        })?;
        if !real.starts_with(&importer.root) {
            return Err(outside());
        }
        let place = Importer {
            file: importer.file,
            folder: Some(folder_of(&shown)),
            root: importer.root.clone(),
            shelf: own,
            library: importer.library.clone(),
        };
        self.take(place, &shown, real, span)
    }

    /// A library that the project gives a name.
    fn named(&mut self, name: &str, span: Span) -> Result<FileId, Box<Finding>> {
        let (path, shelf) = match self.project.home(name, span)? {
            Home::Path(path) => (path, None),
            Home::Repository {
                folder,
                url,
                revision,
                file,
            } => {
                let kept = Revision::kept(&folder, &url, &revision)
                    .map_err(|finding| Box::new(finding.related(span, "imported here")))?;
                (file, Some(Rc::new(kept)))
            }
        };
        let own = shelf.clone();
        let from: &dyn Shelf = own.as_deref().map_or(self.shelf, |shelf| shelf);
        let real = from.real(&path).map_err(|fault| {
            let message = format!("`{}` cannot be read: {fault}", path.display());
            not_read(span, message, "look at its path in `leafwright.toml`")
        })?;
        let place = Importer {
            file: FileId::default(),
            folder: Some(folder_of(&path)),
            root: folder_of(&real),
            shelf,
            library: Some(name.to_owned()),
        };
        self.take(place, &path, real, span)
    }

    /// Reads a file, unless it is read, for its imports to be followed from `place`.
    fn take(
        &mut self,
        place: Importer,
        shown: &Path,
        real: PathBuf,
        span: Span,
    ) -> Result<FileId, Box<Finding>> {
        if let Some(known) = self.known.get(&real) {
            return Ok(*known);
        }
        let own = place.shelf.clone();
        let shelf: &dyn Shelf = own.as_deref().map_or(self.shelf, |shelf| shelf);
        let file = shelf
            .read(shown, self.sources)
            .map_err(|finding| Box::new(finding.related(span, "imported here")))?;
        if let Some(library) = &place.library {
            let inside = real.strip_prefix(&place.root).unwrap_or(&real);
            let text = self.sources.text(file).to_owned();
            self.project.note(library, inside, &text);
        }
        self.known.insert(real, file);
        self.open.push(Importer { file, ..place });
        Ok(file)
    }
}

fn not_read(span: Span, message: String, remedy: &str) -> Box<Finding> {
    Box::new(Finding::new(&IMPORT_NOT_READ, span, message).remedy(remedy))
}
