//! Photos that texts and manifests point at: each is made ready once, and again only when it changes.

use super::Loader;
use super::picture::{self, Trouble};
use super::text::leaves_folder;
use crate::diag::{Diagnostic, rules, suggest};
use crate::error::Error;
use crate::model::book::Book;
use crate::model::photo::{Photo, is_photo};
use crate::model::source::Span;
use crate::model::text::Target;
use rayon::prelude::*;
use std::collections::BTreeMap;

/// Makes the photos ready that something points at; those that nothing points at are not even read.
pub(super) fn load(loader: &mut Loader) -> Result<(), Error> {
    vans(loader);
    let wanted: Vec<(String, Span)> = wanted(&loader.book).into_iter().collect();
    let files = loader.files;
    let made: Vec<_> = wanted
        .into_par_iter()
        .map(|(path, span)| files.read(&path).map(|bytes| (path, span, ready(&bytes, files))))
        .collect::<Result<_, _>>()?;
    for (path, span, photo) in made {
        let photo = photo.unwrap_or_else(|trouble| {
            let found = Diagnostic::new(&rules::PHOTO_UNUSABLE, span, format!("`{path}` {}", trouble.what));
            loader.acc.add(found.help(trouble.help));
            Photo::default()
        });
        loader.book.photos.insert(path, photo);
    }
    Ok(())
}

/// From an earlier run, or made now and kept.
fn ready(bytes: &[u8], files: &dyn super::files::Files) -> Result<Photo, Trouble> {
    let id = picture::id(bytes);
    if let Some(photo) = files.recall(&id).and_then(|packed| Photo::unpack(&id, &packed)) {
        return Ok(photo);
    }
    let photo = picture::make(bytes)?;
    files.keep(&id, &photo.pack());
    Ok(photo)
}

/// The photos that are there and pointed at, each with the first place that does.
fn wanted(book: &Book) -> BTreeMap<String, Span> {
    let mut wanted = BTreeMap::new();
    for module in &book.modules {
        for text in module.texts.values() {
            let linked = text.refs.links.iter().filter_map(|link| match &link.value {
                Target::File(file) => Some((file, link.span)),
                _ => None,
            });
            let shown = text.refs.pictures.iter().map(|picture| (&picture.value, picture.span));
            for (file, span) in linked.chain(shown) {
                wanted.entry(format!("content/{}/{file}", module.name)).or_insert(span);
            }
        }
    }
    for model in &book.models {
        for van in &model.vans {
            let photos = van.facts.photo.iter();
            photos.for_each(|photo| {
                wanted.entry(model.photo(van, &photo.file)).or_insert(photo.file.span);
            });
        }
    }
    wanted.retain(|path, _| book.photos.contains_key(path));
    wanted
}

/// Says which photos of manifests are not there, or can be none.
fn vans(loader: &mut Loader) {
    let book = &loader.book;
    for model in &book.models {
        for van in &model.vans {
            for file in van.facts.photo.iter().map(|photo| &photo.file) {
                let folder = model.photo(van, "");
                let path = model.photo(van, file);
                let found = if leaves_folder(file) {
                    Diagnostic::new(
                        &rules::OUTSIDE_BOOK,
                        file.span,
                        format!("`{}` lies outside `{folder}`", file.value),
                    )
                    .help("copy the photo into that folder and name it alone")
                } else if !is_photo(file) {
                    let message = format!("`{}` is not the name of a photo", file.value);
                    Diagnostic::new(&rules::PHOTO_UNUSABLE, file.span, message)
                        .help("photos end in `.jpg`, `.png` or `.webp`")
                } else if !book.photos.contains_key(&path) {
                    let known = book.photos.keys().filter_map(|path| path.strip_prefix(&folder));
                    let message = format!("there is no file `{}` in `{folder}`", file.value);
                    Diagnostic::new(&rules::MISSING_FILE, file.span, message)
                        .help(suggest::did_you_mean(file, known))
                        .help(format!("put the photo into `{folder}`"))
                } else {
                    continue;
                };
                loader.acc.add(found);
            }
        }
    }
}
