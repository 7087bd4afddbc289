//! Photographs of what was measured: what the file is, the copy that a report prints, and the spot on it.
//!
//! A photograph is evidence only through its act: somebody said that it shows a reading or a material. Of the file itself only
//! what draws the picture is kept; place, time and owner that a camera writes beside it are left out, and so is everything
//! behind the picture's end. (The well-kept crates cover one half each: one tells sizes and not where the parts of a file lie,
//! the other brings a second inflater into the page.)

mod jpeg;
mod png;

use sha2::{Digest, Sha256};

use crate::data_file::ProblemCode;
use crate::fields;
use crate::reading::{codes, hexadecimal};

/// Most photographs of one inspection. (Our own choice: more than anybody looks through in a report.)
pub const PHOTOS: usize = 200;
/// Most bytes of one copy in a report. (Our own choice: 1024 pixels of a busy picture take a third of it as JPEG.)
pub const PRINT_BYTES: usize = 1024 * 1024;
/// Most bytes of all copies together. (Our own choice: the report is then 32 MiB, which a browser still opens at once.)
pub const ALL_PRINT_BYTES: usize = 24 * 1024 * 1024;
/// Most pixels of one copy, whatever few bytes they are packed in. (Our own choice: unpacked, a viewer needs four bytes for each.)
pub const PRINT_PIXELS: u64 = 16_000_000;
/// Most bytes of a file that is looked at. (Our own choice: cameras write a tenth of it.)
pub const FILE_BYTES: u64 = 64 * 1024 * 1024;

codes! {
    /// What kind of picture a file is, by its first bytes.
    MediaType {
        /// JPEG (ISO/IEC 10918-1).
        Jpeg => "image/jpeg",
        /// PNG (ISO/IEC 15948).
        Png => "image/png",
    }
}

impl MediaType {
    /// By the first bytes; the name of a file proves nothing.
    pub fn of(bytes: &[u8]) -> Option<MediaType> {
        if bytes.starts_with(&jpeg::START) {
            Some(MediaType::Jpeg)
        } else if bytes.starts_with(&png::START) {
            Some(MediaType::Png)
        } else {
            None
        }
    }

    /// The kind of a code.
    pub fn from_code(code: &str) -> Option<MediaType> {
        MediaType::ALL.iter().copied().find(|kind| kind.code() == code)
    }
}

codes! {
    /// Whether a photograph that was named can be shown.
    PhotoState {
        /// It is at hand.
        AtHand => "at_hand",
        /// It was named, and no such file was given.
        NotAtHand => "not_at_hand",
        /// A file of that name was given, and its digest is another.
        OtherFile => "other_file",
        /// Several files of that name were given, and no digest says which.
        SeveralFiles => "several_files",
        /// Neither JPEG nor PNG.
        NoPhoto => "no_photo",
        /// The file is cut short or damaged.
        DamagedPhoto => "damaged_photo",
        /// More bytes or pixels than a report takes.
        PhotoTooLarge => "photo_too_large",
        /// More photographs than an inspection takes.
        TooManyPhotos => "too_many_photos",
    }
}

/// A picture of known size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Size {
    /// Pixels from left to right, as the picture is shown.
    pub width: u32,
    /// Pixels from top to bottom.
    pub height: u32,
}

/// The copy of a photograph that a report prints: the picture and nothing else.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Print {
    /// Its kind.
    pub media_type: MediaType,
    /// Its size.
    pub size: Size,
    /// The file.
    pub bytes: Vec<u8>,
    /// SHA-256 of those bytes, in hexadecimal.
    pub sha256: String,
}

/// What a photograph shows, as far as it can be shown.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Picture {
    /// The kind of the original.
    pub media_type: MediaType,
    /// The size of the original.
    pub size: Size,
    /// What is printed of it.
    pub print: Print,
}

/// A photograph that was given.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Photo {
    /// Base name, or the path inside the folder with `/`.
    pub name: String,
    /// SHA-256 of the file as it was given, in hexadecimal; empty where it was too large to be read.
    pub sha256: String,
    /// The picture, or why it can't be shown.
    pub picture: Result<Picture, PhotoState>,
}

impl Photo {
    /// A photograph of which the original itself is printed, without what a camera wrote beside the picture.
    pub fn of_file(name: &str, bytes: &[u8]) -> Photo {
        let picture =
            print_of(bytes).map(|print| Picture { media_type: print.media_type, size: print.size, print });
        Photo { name: name.to_owned(), sha256: digest(bytes), picture }
    }

    /// A photograph of which a smaller copy is printed: digest, kind and size are those of the original.
    pub fn of_copy(name: &str, sha256: &str, media_type: MediaType, size: Size, copy: &[u8]) -> Photo {
        let picture = print_of(copy).map(|print| Picture { media_type, size, print });
        Photo { name: name.to_owned(), sha256: sha256.to_owned(), picture }
    }

    /// A photograph that was given and not read.
    pub fn refused(name: &str, why: PhotoState) -> Photo {
        Photo { name: name.to_owned(), sha256: String::new(), picture: Err(why) }
    }

    /// Bytes of its printed copy.
    pub fn print_bytes(&self) -> usize {
        self.picture.as_ref().map_or(0, |picture| picture.print.bytes.len())
    }
}

fn digest(bytes: &[u8]) -> String {
    hexadecimal(&Sha256::digest(bytes))
}

/// The picture in `bytes` and nothing else.
fn print_of(bytes: &[u8]) -> Result<Print, PhotoState> {
    let media_type = MediaType::of(bytes).ok_or(PhotoState::NoPhoto)?;
    let bare = match media_type {
        MediaType::Jpeg => jpeg::bare(bytes),
        MediaType::Png => png::bare(bytes),
    };
    let (bytes, size) = bare.ok_or(PhotoState::DamagedPhoto)?;
    if bytes.len() > PRINT_BYTES || u64::from(size.width) * u64::from(size.height) > PRINT_PIXELS {
        return Err(PhotoState::PhotoTooLarge);
    }
    Ok(Print { media_type, size, sha256: digest(&bytes), bytes })
}

/// Adds a photograph in its place, whatever order they arrive in; one that was given before counts once. What goes beyond
/// the bounds stays on the list, without its picture.
pub fn add(photos: &mut Vec<Photo>, mut photo: Photo) {
    let key = |one: &Photo| (one.name.clone().into_bytes(), one.sha256.clone());
    let wanted = key(&photo);
    let at = photos.partition_point(|one| key(one) < wanted);
    if photos.get(at).is_some_and(|one| key(one) == wanted) {
        return;
    }
    let shown = photos.iter().filter(|one| one.picture.is_ok()).count();
    let bytes: usize = photos.iter().map(Photo::print_bytes).sum();
    if photo.picture.is_ok() && (shown >= PHOTOS || bytes + photo.print_bytes() > ALL_PRINT_BYTES) {
        photo.picture = Err(PhotoState::TooManyPhotos);
    }
    photos.insert(at, photo);
}

/// A place on a picture, in thousandths of its width and height.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Spot {
    /// From the left edge.
    pub x: u16,
    /// From the upper edge.
    pub y: u16,
}

/// What an act says: which file shows its target, and where on it the measurement was made.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PhotoSaid {
    /// The file's name.
    pub file: String,
    /// SHA-256 of the original; empty where nobody said.
    pub sha256: String,
    /// The spot; `None` where nobody marked it.
    pub spot: Option<Spot>,
}

impl PhotoState {
    /// The state of a code.
    pub fn from_code(code: &str) -> Option<PhotoState> {
        PhotoState::ALL.iter().copied().find(|state| state.code() == code)
    }
}

impl PhotoSaid {
    /// The fields of its act.
    pub const FIELDS: [&'static str; 4] = ["file", "sha256", "x", "y"];

    /// Reads `file=A-1.jpg;sha256=...;x=450;y=520`. The file must be named; x and y stand together, from 0 to 1000.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn parse(text: &str) -> Result<PhotoSaid, ProblemCode> {
        let found = fields::read(text, &PhotoSaid::FIELDS)?;
        let field = |name| fields::field(&found, name);
        let (file, sha256) = (field("file"), field("sha256"));
        if file.is_empty() {
            return Err(ProblemCode::Missing);
        }
        let is_digest =
            sha256.len() == 64 && sha256.bytes().all(|one| matches!(one, b'0'..=b'9' | b'a'..=b'f'));
        if !sha256.is_empty() && !is_digest {
            return Err(ProblemCode::Malformed);
        }
        let permille = |name| match field(name) {
            "" => Ok(None),
            text => match text.parse() {
                Ok(number @ 0..=1000) => Ok(Some(number)),
                _ => Err(ProblemCode::OutOfRange),
            },
        };
        let spot = match (permille("x")?, permille("y")?) {
            (Some(x), Some(y)) => Some(Spot { x, y }),
            (None, None) => None,
            _ => return Err(ProblemCode::Missing),
        };
        Ok(PhotoSaid { file: file.to_owned(), sha256: sha256.to_owned(), spot })
    }

    /// True where it could mean this photograph: [`PhotoSaid::find`] looks at no other.
    pub fn may_mean(&self, photo: &Photo) -> bool {
        is_name_of(&self.file, &photo.name) || (!self.sha256.is_empty() && photo.sha256 == self.sha256)
    }

    /// The photograph that is meant, by its place in `photos`.
    ///
    /// # Decision
    /// The digest decides where one is given, so that a copy under another name is found and another picture under the same
    /// name is not taken for it. A bare name also means the file of that name inside a folder, where only one is.
    ///
    /// # Errors
    /// Why none is meant that could be shown.
    pub fn find(&self, photos: &[Photo]) -> Result<usize, PhotoState> {
        let all = |wanted: &dyn Fn(&Photo) -> bool| -> Vec<usize> {
            photos.iter().enumerate().filter(|(_, one)| wanted(one)).map(|(at, _)| at).collect()
        };
        let mut named = all(&|one| one.name == self.file);
        if named.is_empty() {
            named = all(&|one| is_name_of(&self.file, &one.name));
        }
        let same = if self.sha256.is_empty() { Vec::new() } else { all(&|one| one.sha256 == self.sha256) };
        let at = match (same.iter().find(|at| named.contains(at)).or(same.first()), &named[..]) {
            (Some(at), _) => *at,
            (None, []) => return Err(PhotoState::NotAtHand),
            (None, [only]) if self.sha256.is_empty() => *only,
            // What was too large to be read has no digest that could differ.
            (None, [only]) if photos.get(*only).is_some_and(|one| one.sha256.is_empty()) => *only,
            (None, _) if self.sha256.is_empty() => return Err(PhotoState::SeveralFiles),
            (None, _) => return Err(PhotoState::OtherFile),
        };
        match photos.get(at).map(|photo| &photo.picture) {
            Some(Ok(_)) => Ok(at),
            Some(Err(why)) => Err(*why),
            None => Err(PhotoState::NotAtHand),
        }
    }
}

/// True where `file`, as somebody wrote it, may mean the file `name`: the whole name, or the name without its folders.
pub fn is_name_of(file: &str, name: &str) -> bool {
    file == name || (!file.contains('/') && name.rsplit('/').next() == Some(file))
}

#[cfg(test)]
mod tests;
