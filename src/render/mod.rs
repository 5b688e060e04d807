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
use crate::model::guide::Guide;
use crate::model::van::Bound;
use std::collections::BTreeSet;
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
    let mut out = whole(theme, book, first, guides)?;
    let fingerprint = fingerprint(&out);
    out.extend(old_keys::former(theme, guides)?);
    pages(theme, guides, &mut out, &fingerprint)?;
    out.extend(offline::worker(theme, first.identity.key, &out, &fingerprint));
    Ok(out)
}

/// All files that the fingerprint stands for: those of one van but the page about the guide.
fn whole(theme: &Theme, book: &Book, first: &Guide, guides: &[Guide]) -> Result<Vec<Artifact>, String> {
    let key = first.identity.key;
    let mut out = vec![Artifact::text(format!("{key}/style.css"), theme.style.clone())];
    // The script of the page at the root is of no use inside a guide.
    let scripts = theme.scripts.iter().filter(|(name, _)| name != "root.js");
    out.extend(scripts.map(|(name, text)| Artifact::text(format!("{key}/{name}"), text.clone())));
    out.extend(label::codes(book, first));
    out.extend(signs(theme, first));
    out.extend(offline::manifest(first));
    out.extend(assets(book, first));
    out.extend(guides.iter().filter_map(|guide| calendar::calendar(guide, theme.phrases(guide.language))));
    out.extend(guides.iter().map(|guide| search::index(guide, theme.phrases(guide.language))));
    pages(theme, guides, &mut out, "")?;
    Ok(out)
}

/// The fingerprint that the pages of a van bear.
pub fn fingerprint_of(theme: &Theme, book: &Book, guides: &[Guide]) -> Result<String, String> {
    Ok(guides
        .first()
        .map(|first| whole(theme, book, first, guides))
        .transpose()?
        .map(|out| fingerprint(&out))
        .unwrap_or_default())
}

/// All pages but the one about the guide; with a fingerprint, only that one.
fn pages(theme: &Theme, guides: &[Guide], out: &mut Vec<Artifact>, fingerprint: &str) -> Result<(), String> {
    for guide in guides {
        for page in guide.pages.iter().filter(|page| (page.address == "about") != fingerprint.is_empty()) {
            out.push(page::page(theme, guide, page, fingerprint)?);
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

/// The pictures and files that the texts of this van point at.
fn assets(book: &Book, guide: &Guide) -> Vec<Artifact> {
    let mut wanted = BTreeSet::new();
    for view in guide.views.values() {
        wanted.extend(view.text.refs.pictures.iter().map(|picture| format!("{}/{}", view.folder, picture.value)));
        wanted.extend(view.bound.iter().filter_map(|bound| match bound {
            Bound::File(path) => Some(path.clone()),
            _ => None,
        }));
    }
    let found = wanted.into_iter().filter_map(|path| book.assets.get(&path).map(|bytes| (path, bytes)));
    found
        .map(|(path, bytes)| Artifact {
            path: format!("{}/{}", guide.identity.key, links::asset(&path)),
            bytes: bytes.clone(),
        })
        .collect()
}
