//! Photos of this van.

use super::Composer;
use crate::model::guide::Pictured;
use crate::model::van::Photo;

impl<'a> Composer<'a, '_> {
    /// The photos that `wanted` picks, in the order of the manifest.
    pub(super) fn photos(&self, wanted: impl Fn(&Photo) -> bool) -> Vec<Pictured<'a>> {
        let (book, language) = (self.book, self.language);
        let pictured = |photo: &'a Photo| {
            let callouts = photo.callouts.iter().map(|(at, says)| (*at, says.text(language)));
            Some(Pictured {
                photo: book.photos.get(&photo.path)?,
                alt: photo.alt.text(language),
                callouts: callouts.collect(),
            })
        };
        self.van.photos.iter().filter(|photo| wanted(photo)).filter_map(pictured).collect()
    }
}
