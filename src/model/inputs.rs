//! What a guide was made from, as one short text: when it is the same, so is the guide.

use super::book::Book;
use super::van::Van;
use blake3::{Hash, Hasher};
use std::collections::BTreeMap;

/// The files of a book, hashed once: those that every guide is made from together, and those of each module.
pub struct Inputs {
    common: Hash,
    modules: BTreeMap<String, Hash>,
}

impl Inputs {
    /// Hashes the files of `book`; `program` stands for the program that makes guides of them.
    pub fn new(book: &Book, program: &str) -> Self {
        let mut common = Hasher::new();
        let mut modules: BTreeMap<String, Hasher> = BTreeMap::new();
        add(&mut common, "program", program.as_bytes());
        book.theme.files.iter().for_each(|(path, text)| add(&mut common, path, text.as_bytes()));
        let texts = book.sources.iter().map(|file| (file.path.as_str(), file.text.as_bytes()));
        let assets = book.assets.iter().map(|(path, bytes)| (path.as_str(), bytes.as_slice()));
        if let Some(logo) = &book.logo {
            add(&mut common, logo.name, &logo.bytes);
        }
        let photos = book.photos.iter().map(|(path, photo)| (path.as_str(), photo.id.as_bytes()));
        for (path, bytes) in texts.chain(assets).chain(photos).filter(|(path, _)| !path.starts_with("models/")) {
            match module_of(path) {
                Some(module) => add(modules.entry(module).or_default(), path, bytes),
                None => add(&mut common, path, bytes),
            }
        }
        let modules = modules.into_iter().map(|(name, hasher)| (name, hasher.finalize())).collect();
        Inputs { common: common.finalize(), modules }
    }

    /// What the guide of `van` is made from.
    pub fn of(&self, book: &Book, van: &Van) -> String {
        let mut hasher = Hasher::new();
        hasher.update(self.common.as_bytes());
        for file in [book.models[van.model].file, van.file] {
            let file = book.sources.get(file);
            add(&mut hasher, &file.path, file.text.as_bytes());
        }
        for photo in &van.photos {
            let id = book.photos.get(&photo.path).map_or("", |photo| photo.id.as_str());
            add(&mut hasher, &photo.path, id.as_bytes());
        }
        for fit in &van.fits {
            let module = &book.modules[fit.module];
            let parts =
                std::iter::once(&module.name).chain(module.includes.iter().map(|shared| &book.modules[*shared].name));
            parts.filter_map(|name| self.modules.get(name)).for_each(|hash| {
                hasher.update(hash.as_bytes());
            });
        }
        hasher.finalize().to_hex().to_string()
    }
}

/// `gas/locker` of `content/gas/locker/text.md`.
fn module_of(path: &str) -> Option<String> {
    let mut parts = path.strip_prefix("content/")?.split('/');
    let (system, name) = (parts.next()?, parts.next()?);
    parts.next().map(|_| format!("{system}/{name}"))
}

/// Lengths go in front, so that no two lists of files hash alike.
fn add(hasher: &mut Hasher, path: &str, bytes: &[u8]) {
    for part in [path.as_bytes(), bytes] {
        hasher.update(&(part.len() as u64).to_le_bytes()).update(part);
    }
}
