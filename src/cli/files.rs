//! Files in, files out: a file is read whole or not at all, and written whole or not at all.
#![expect(
    clippy::disallowed_methods,
    reason = "this is the one place that touches the disk"
)]

use std::io::{Read, Write};
use std::path::{Path, PathBuf};

use super::findings::{FILE_NOT_READ, FILE_NOT_WRITTEN, NOT_TEXT};
use crate::finding::Finding;
use crate::source::{FileId, LARGEST_SOURCE, Sources, Span};

/// Reads a source.
///
/// # Errors
/// A finding where the file is not there, too large or not UTF-8; `sources` then holds its name.
pub(super) fn read(path: &Path, sources: &mut Sources) -> Result<FileId, Box<Finding>> {
    let name = path.display().to_string();
    let bytes = match read_bounded(path, LARGEST_SOURCE) {
        Ok(bytes) => bytes,
        Err(fault) => {
            let span = place_in(sources, &name, "");
            let message = format!("`{name}` cannot be read: {fault}");
            return Err(Box::new(Finding::new(&FILE_NOT_READ, span, message)));
        }
    };
    match String::from_utf8(bytes) {
        // Some editors begin a file with a byte order mark; it is no part of the text.
        Ok(text) => Ok(sources.add(&name, text.strip_prefix('\u{feff}').unwrap_or(&text))),
        Err(fault) => {
            let valid = fault.utf8_error().valid_up_to();
            let good = fault.as_bytes().get(..valid).unwrap_or_default();
            let good = String::from_utf8_lossy(good).into_owned();
            let line = good.matches('\n').count() + 1;
            let span = place_in(sources, &name, &good);
            let message = format!("`{name}` is not UTF-8: byte {} in line {line}", valid + 1);
            Err(Box::new(
                Finding::new(&NOT_TEXT, span, message).remedy("save it as UTF-8 in your editor"),
            ))
        }
    }
}

/// Larger font files are not read: the largest in use, of Chinese and Japanese, are half of that.
const LARGEST_FONT: usize = 64 * 1024 * 1024;

/// The bytes of a font file.
///
/// # Errors
/// A finding where it is not there or too large.
pub(super) fn font(path: &Path) -> Result<Vec<u8>, Box<Finding>> {
    read_bounded(path, LARGEST_FONT).map_err(|fault| {
        let message = format!("`{}` cannot be read: {fault}", path.display());
        Box::new(Finding::new(&FILE_NOT_READ, Span::default(), message))
    })
}

/// The bytes of a file that is no larger than it may be. Devices and pipes have no size
/// that could be asked for, so it is counted.
fn read_bounded(path: &Path, most: usize) -> std::io::Result<Vec<u8>> {
    let mut bytes = Vec::new();
    std::fs::File::open(path)?
        .take(most as u64 + 1)
        .read_to_end(&mut bytes)?;
    if bytes.len() > most {
        let message = format!("it is larger than {} MiB", most / 1024 / 1024);
        return Err(std::io::Error::other(message));
    }
    Ok(bytes)
}

/// Adds a file that cannot be used, so that a finding can name it; the place is its end.
fn place_in(sources: &mut Sources, name: &str, text: &str) -> Span {
    let file = sources.add(name, text);
    Span::new(file, text.len(), text.len())
}

/// Makes a folder and those above it.
///
/// # Errors
/// Why it cannot be made.
pub(super) fn folder(path: &Path) -> Result<(), String> {
    std::fs::create_dir_all(path).map_err(|fault| fault.to_string())
}

/// Writes a file whole: into a new file beside it, then in its place.
///
/// # Errors
/// A finding where that cannot be done; what was there is then still there.
pub(super) fn write(path: &Path, bytes: &[u8]) -> Result<(), Box<Finding>> {
    let written = prepared(path, bytes).and_then(|file| put(file, path));
    written.map_err(|fault| not_written(path, &fault))
}

/// Writes several files, all of them whole or none at all.
///
/// # Errors
/// A finding where one of them cannot be written; what was there of any of them is then still
/// there.
pub(super) fn write_all(files: &[(PathBuf, Vec<u8>)]) -> Result<(), Box<Finding>> {
    if let [(path, bytes)] = files {
        return write(path, bytes);
    }
    let mut ready = Vec::with_capacity(files.len());
    for (path, bytes) in files {
        let file = prepared(path, bytes).map_err(|fault| not_written(path, &fault))?;
        ready.push((path, file));
    }
    let mut done: Vec<(&Path, Option<tempfile::TempPath>)> = Vec::with_capacity(files.len());
    for (path, file) in ready {
        let put = set_aside(path).and_then(|before| {
            done.push((path, before));
            put(file, path)
        });
        if let Err(fault) = put {
            for (path, before) in done {
                put_back(path, before);
            }
            return Err(not_written(path, &fault));
        }
    }
    Ok(())
}

/// A second name of what a file is now, to put it back by; none where there is no such file.
fn set_aside(path: &Path) -> std::io::Result<Option<tempfile::TempPath>> {
    if !path.is_file() {
        return Ok(None);
    }
    let mut aside = new_file(folder_of(path))?;
    std::io::copy(&mut std::fs::File::open(path)?, &mut aside)?;
    Ok(Some(aside.into_temp_path()))
}

/// Puts back what a file was before; a file that was not there is taken away.
fn put_back(path: &Path, before: Option<tempfile::TempPath>) {
    // There is nothing more to be done where this fails too: the finding tells of the first fault.
    match before {
        Some(before) => drop(before.persist(path)),
        None if path.is_file() => drop(std::fs::remove_file(path)),
        None => {}
    }
}

/// The folder a file lies in.
fn folder_of(path: &Path) -> &Path {
    match path.parent() {
        Some(parent) if parent.as_os_str().is_empty() => Path::new("."),
        Some(parent) => parent,
        None => Path::new("."),
    }
}

/// A new file beside `path` that holds `bytes`.
fn prepared(path: &Path, bytes: &[u8]) -> std::io::Result<tempfile::NamedTempFile> {
    let mut file = new_file(folder_of(path))?;
    file.write_all(bytes)?;
    file.as_file().sync_all()?;
    Ok(file)
}

/// A prepared file in its place.
fn put(file: tempfile::NamedTempFile, path: &Path) -> std::io::Result<()> {
    file.persist(path).map_err(|fault| fault.error)?;
    Ok(())
}

fn not_written(path: &Path, fault: &std::io::Error) -> Box<Finding> {
    let message = format!("`{}` cannot be written: {fault}", path.display());
    Box::new(
        Finding::new(&FILE_NOT_WRITTEN, Span::default(), message)
            .remedy("name a file in a folder that exists and may be written to, with `-o`"),
    )
}

#[cfg(unix)]
fn new_file(folder: &Path) -> std::io::Result<tempfile::NamedTempFile> {
    use std::os::unix::fs::PermissionsExt;
    // As any new file: readable by all, less what the user's mask takes away.
    let usual = std::fs::Permissions::from_mode(0o666);
    tempfile::Builder::new()
        .prefix(".leafwright-")
        .permissions(usual)
        .tempfile_in(folder)
}

#[cfg(not(unix))]
fn new_file(folder: &Path) -> std::io::Result<tempfile::NamedTempFile> {
    tempfile::Builder::new()
        .prefix(".leafwright-")
        .tempfile_in(folder)
}
