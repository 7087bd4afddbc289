//! Files and folders to sources, each read once in pieces.

use std::fs::{self, File};
use std::io::{self, Read};
use std::path::{Path, PathBuf};

use plumbline_core::acts::Settings;
use plumbline_core::inspection::Inspection;
use plumbline_core::opened::OpenedFile;
use plumbline_core::photo::{self, MediaType, Photo, PhotoState};
use plumbline_core::reading::Source;
use plumbline_intake::{SourceReader, unreadable};

/// Bytes read at a time; the same as the page's slices, so that both doors work in equal steps.
const PIECE: usize = 4 * 1024 * 1024;

/// Reads everything named into the inspection; true where something named directly could not be read.
pub(crate) fn read_all(paths: &[PathBuf], inspection: &mut Inspection) -> bool {
    let settings = inspection.settings();
    let mut broken = false;
    for path in paths {
        if path.is_dir() {
            let mut found = Vec::new();
            let walked = walk(path, path, &mut found);
            if let Err((place, error)) = walked {
                broken = true;
                let (file, sources) = unreadable(&place.display().to_string(), false, &error.to_string());
                inspection.add_file(file, sources);
            }
            for (name, file) in found {
                if took_photo(&name, &file, &settings, inspection) {
                    continue;
                }
                let (file, sources) = read_one(&name, &file, true, inspection.opened.room(), &settings);
                inspection.add_file(file, sources);
            }
        } else {
            let name = base_name(path);
            if took_photo(&name, path, &settings, inspection) {
                continue;
            }
            let room = inspection.opened.room();
            let (file, sources) = read_one(&name, path, false, room, &settings);
            // Of an archive, one table is enough to have read it.
            broken |= sources.iter().all(|source| source.problem.is_some());
            inspection.add_file(file, sources);
        }
    }
    broken
}

/// Takes a picture that the settings name; nobody is here to say what any other picture shows. A file that is named as a
/// picture and is none goes the way of every file, so that no row is lost to a slip of the pen.
fn took_photo(name: &str, path: &Path, settings: &Settings, inspection: &mut Inspection) -> bool {
    if !settings.photos().iter().any(|(_, said)| photo::is_name_of(&said.file, name)) {
        return false;
    }
    let photo = picture(name, path);
    let taken = photo.is_some();
    inspection.add_photo(photo.unwrap_or_else(|| Photo::refused(name, PhotoState::NoPhoto)));
    taken
}

/// A picture; `None` for a file that is none or can't be read.
fn picture(name: &str, path: &Path) -> Option<Photo> {
    let mut file = File::open(path).ok()?;
    let mut head = Vec::new();
    file.by_ref().take(16).read_to_end(&mut head).ok()?;
    MediaType::of(&head)?;
    if file.metadata().ok()?.len() > photo::FILE_BYTES {
        return Some(Photo::refused(name, PhotoState::PhotoTooLarge));
    }
    fs::read(path).ok().map(|bytes| Photo::of_file(name, &bytes))
}

/// The last part of a path.
pub(crate) fn base_name(path: &Path) -> String {
    path.file_name().map_or_else(|| path.display().to_string(), |name| name.to_string_lossy().into_owned())
}

fn read_one(
    name: &str,
    path: &Path,
    in_folder: bool,
    room: usize,
    settings: &Settings,
) -> (OpenedFile, Vec<Source>) {
    let mut reader = SourceReader::new(name, settings).keeping(room);
    let mut piece = vec![0; PIECE];
    let mut file = match File::open(path) {
        Ok(file) => file,
        Err(error) => return unreadable(name, in_folder, &error.to_string()),
    };
    loop {
        match file.read(&mut piece) {
            Ok(0) => return reader.finish_opened(in_folder),
            Ok(read) => reader.push(piece.get(..read).unwrap_or(&[])),
            Err(error) if error.kind() == io::ErrorKind::Interrupted => {}
            Err(error) => return unreadable(name, in_folder, &error.to_string()),
        }
    }
}

/// What a path names: itself under its last part, or all files below a folder.
pub(crate) fn below(path: &Path) -> Result<Vec<(String, PathBuf)>, (PathBuf, io::Error)> {
    let mut found = Vec::new();
    if path.is_dir() {
        walk(path, path, &mut found)?;
    } else {
        found.push((base_name(path), path.to_owned()));
    }
    Ok(found)
}

/// All files below a folder with their names inside it, `/` between the parts.
fn walk(top: &Path, folder: &Path, found: &mut Vec<(String, PathBuf)>) -> Result<(), (PathBuf, io::Error)> {
    let in_folder = |error| (folder.to_owned(), error);
    let mut entries: Vec<PathBuf> = Vec::new();
    for entry in fs::read_dir(folder).map_err(in_folder)? {
        entries.push(entry.map_err(in_folder)?.path());
    }
    entries.sort();
    for entry in entries {
        if entry.is_dir() && !entry.is_symlink() {
            walk(top, &entry, found)?;
        } else if entry.is_file() {
            let inside = entry.strip_prefix(top).unwrap_or(&entry);
            let name: Vec<_> = inside.iter().map(|part| part.to_string_lossy().into_owned()).collect();
            found.push((name.join("/"), entry));
        }
    }
    Ok(())
}
