//! Photos on a page: their sizes, and the numbers drawn on them.

use super::{Stand, c};
use crate::model::guide::Pictured;
use crate::model::photo::Photo;
use crate::render::html::Picture;
use crate::render::links::asset;
use std::fmt::Write;

impl Stand<'_> {
    /// To a file of the book; of a photo to its largest size, never to the file as the camera wrote it.
    pub(super) fn file(&self, path: &str) -> String {
        let photo = self.guide.photos.get(path).and_then(|photo| Some(photo.path(photo.largest()?)));
        self.way.file(&photo.unwrap_or_else(|| asset(path)))
    }

    /// A photo in its sizes.
    pub(super) fn photo(&self, photo: &Photo) -> Picture {
        let (Some(middle), Some(largest)) = (photo.sizes.get(photo.sizes.len() / 2), photo.largest()) else {
            return Picture::default();
        };
        let each = photo.sizes.iter().map(|size| format!("{} {}w", self.way.file(&photo.path(size)), size.width));
        Picture {
            src: self.way.file(&photo.path(middle)),
            srcset: each.collect::<Vec<_>>().join(", "),
            size: Some((largest.width, largest.height)),
        }
    }

    pub(super) fn pictured(&self, photos: &[Pictured]) -> Vec<c::PhotoView> {
        let view = |pictured: &Pictured| {
            let picture = self.photo(pictured.photo);
            let mut html = String::new();
            picture.write(&mut html, pictured.alt, "");
            html.push_str(&marks(pictured));
            c::PhotoView {
                html,
                tall: picture.size.is_some_and(|(width, height)| height > width),
                says: pictured.callouts.iter().map(|(_, says)| says.to_string()).collect(),
            }
        };
        photos.iter().filter(|pictured| !pictured.photo.sizes.is_empty()).map(view).collect()
    }
}

/// Numbered dots over the photo. They are placed in shares of it and sized in letters, so they fit it at any size; the
/// list below says the same to those who cannot see them.
fn marks(pictured: &Pictured) -> String {
    if pictured.callouts.is_empty() {
        return String::new();
    }
    let mut out = String::from("<svg class=\"photo-marks\" aria-hidden=\"true\">");
    for (number, ([x, y], _)) in (1..).zip(&pictured.callouts) {
        let _ = write!(
            out,
            "<circle cx=\"{x}%\" cy=\"{y}%\" r=\".875em\"/><text x=\"{x}%\" y=\"{y}%\" dy=\".36em\" text-anchor=\"middle\">{number}</text>"
        );
    }
    out.push_str("</svg>");
    out
}
