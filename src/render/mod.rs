//! Render: a guide's pages to files. It knows nothing of manifests, and touches no disk.

mod calendar;
pub mod context;
pub mod html;
mod ical;
mod icon;
mod label;
pub(crate) mod links;
mod offline;
mod old_keys;
mod page;
pub mod paper;
mod plan;
mod plan_input;
mod plot;
pub mod png;
pub mod root;
mod search;
pub mod theme;
pub mod withdrawn;

use crate::model::book::Book;
use crate::model::guide::{Guide, PageBody};
use crate::model::van::Bound;
use plan_input::{Drawings, drawings};
use std::collections::{BTreeMap, BTreeSet};
use theme::Theme;

/// A file of the output: its path below the output folder, and its bytes.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Artifact {
    /// Path with forward slashes.
    pub path: String,
    /// What it holds.
    pub bytes: Vec<u8>,
}

impl Artifact {
    /// A file of text.
    pub fn text(path: impl Into<String>, text: impl Into<String>) -> Self {
        Artifact { path: path.into(), bytes: text.into().into_bytes() }
    }
}

/// All files of one van: its guide in each language, and what the pages need.
pub fn render(theme: &Theme, book: &Book, guides: &[Guide]) -> Result<Vec<Artifact>, String> {
    let Some(first) = guides.first() else {
        return Ok(vec![]);
    };
    let drawings = drawings_of(theme, guides);
    let drawn: Vec<_> = guides.iter().zip(&drawings).collect();
    let mut out = whole(theme, book, first, &drawn)?;
    let fingerprint = fingerprint(&out);
    out.extend(old_keys::former(theme, guides)?);
    pages(theme, &drawn, &mut out, &fingerprint)?;
    out.extend(offline::worker(theme, first.identity.key, &out, &fingerprint));
    Ok(out)
}

/// A guide with the drawings of its vehicle.
type Drawn<'a> = (&'a Guide<'a>, &'a Drawings);

/// All files that the fingerprint stands for: those of one van but the page about the guide.
fn whole(theme: &Theme, book: &Book, first: &Guide, drawn: &[Drawn]) -> Result<Vec<Artifact>, String> {
    let key = first.identity.key;
    let guides = || drawn.iter().map(|(guide, _)| *guide);
    let mut out = vec![Artifact::text(format!("{key}/style.css"), theme.style.clone())];
    // The script of the page at the root is of no use inside a guide.
    let scripts = theme.scripts.iter().filter(|(name, _)| name != "root.js");
    out.extend(scripts.map(|(name, text)| Artifact::text(format!("{key}/{name}"), text.clone())));
    out.extend(label::codes(book, first));
    out.extend(signs(theme, first));
    out.extend(offline::manifest(first));
    out.extend(assets(book, first));
    out.extend(photos(book, first));
    out.extend(logo(first));
    out.extend(guides().filter_map(|guide| calendar::calendar(guide, theme.phrases(guide.language))));
    out.extend(guides().map(|guide| search::index(guide, theme.phrases(guide.language))));
    pages(theme, drawn, &mut out, "")?;
    Ok(out)
}

/// The fingerprint that the pages of a van bear.
pub fn fingerprint_of(theme: &Theme, book: &Book, guides: &[Guide]) -> Result<String, String> {
    let Some(first) = guides.first() else {
        return Ok(String::new());
    };
    let drawings = drawings_of(theme, guides);
    let drawn: Vec<_> = guides.iter().zip(&drawings).collect();
    whole(theme, book, first, &drawn).map(|out| fingerprint(&out))
}

/// The vehicle, drawn once for each language.
fn drawings_of(theme: &Theme, guides: &[Guide]) -> Vec<Drawings> {
    guides.iter().map(|guide| drawings(guide, theme.phrases(guide.language))).collect()
}

/// All pages but the one about the guide; with a fingerprint, only that one.
fn pages(theme: &Theme, guides: &[Drawn], out: &mut Vec<Artifact>, fingerprint: &str) -> Result<(), String> {
    for (guide, drawings) in guides {
        for page in guide.pages.iter().filter(|page| (page.address == "about") != fingerprint.is_empty()) {
            out.push(page::page(theme, guide, drawings, page, fingerprint)?);
        }
    }
    Ok(())
}

/// Twelve letters and digits that change whenever anything of the guide does.
fn fingerprint(artifacts: &[Artifact]) -> String {
    let mut hasher = blake3::Hasher::new();
    for artifact in artifacts {
        hasher.update(artifact.path.as_bytes()).update(&[0]).update(&artifact.bytes).update(&[0]);
    }
    let hex = hasher.finalize().to_hex();
    format!("{}-{}-{}", &hex[..4], &hex[4..8], &hex[8..12])
}

/// The drawings of the signs that the notes of this van carry.
fn signs(theme: &Theme, guide: &Guide) -> Vec<Artifact> {
    let mut wanted = BTreeSet::new();
    for view in guide.views.values() {
        view.text.each_note(&mut |note| wanted.extend(guide.signs.get(note.hazard.value.as_str())));
    }
    let key = guide.identity.key;
    let drawn = wanted.into_iter().filter_map(|code| Some((code, theme.signs.get(code)?)));
    drawn.map(|(code, drawing)| Artifact::text(format!("{key}/signs/{code}.svg"), drawing.clone())).collect()
}

/// The dealer's mark.
fn logo(guide: &Guide) -> Option<Artifact> {
    let logo = guide.identity.dealer_logo?;
    Some(Artifact { path: format!("{}/{}", guide.identity.key, logo.name), bytes: logo.bytes.clone() })
}

/// All sizes of the photos that this van's pages show.
fn photos(book: &Book, guide: &Guide) -> Vec<Artifact> {
    let shown = guide.pages.iter().flat_map(|page| match &page.body {
        PageBody::Place(place) => place.photos.as_slice(),
        PageBody::Fit(fit) => fit.photos.as_slice(),
        _ => &[],
    });
    let pointed_at = pointed_at(guide);
    let in_texts = pointed_at.iter().filter_map(|path| book.photos.get(path));
    let all: BTreeMap<_, _> =
        shown.map(|pictured| pictured.photo).chain(in_texts).map(|photo| (&photo.id, photo)).collect();
    let sizes = all.into_values().flat_map(|photo| photo.sizes.iter().map(move |size| (photo, size)));
    sizes
        .map(|(photo, size)| Artifact {
            path: format!("{}/{}", guide.identity.key, photo.path(size)),
            bytes: size.bytes.clone(),
        })
        .collect()
}

/// The pictures and files that the texts of this van point at.
fn assets(book: &Book, guide: &Guide) -> Vec<Artifact> {
    let wanted = pointed_at(guide).into_iter();
    let found = wanted.filter_map(|path| book.assets.get(&path).map(|bytes| (path, bytes)));
    found
        .map(|(path, bytes)| Artifact {
            path: format!("{}/{}", guide.identity.key, links::asset(&path)),
            bytes: bytes.clone(),
        })
        .collect()
}

/// The paths in the book of the pictures and files that the texts of this van point at.
fn pointed_at(guide: &Guide) -> BTreeSet<String> {
    let mut wanted = BTreeSet::new();
    for view in guide.views.values() {
        wanted.extend(view.text.refs.pictures.iter().map(|picture| format!("{}/{}", view.folder, picture.value)));
        wanted.extend(view.bound.iter().filter_map(|bound| match bound {
            Bound::File(path) => Some(path.clone()),
            _ => None,
        }));
    }
    wanted
}
