//! Load: files to a [`Book`]. Each file is read once, each text compiled once.

mod assets;
pub mod code;
pub mod disk;
pub mod files;
mod logo;
pub mod markdown;
pub mod modules;
pub mod notes;
mod photos;
pub mod picture;
pub mod read;
pub mod record;
pub mod settings;
pub mod slots;
pub mod text;
mod unread;

use crate::diag::{Acc, Diagnostic, rules};
use crate::error::Error;
use crate::model::book::{Book, Model, Routine, Theme, VanSource};
use crate::model::photo::{Photo, is_photo};
use crate::model::source::{FileId, Span};
use crate::model::text::Text;
use files::{Entry, Files};
use read::Read;
use std::collections::BTreeMap;

/// Reads the book that `files` hold. What is wrong with it goes to `acc`; only the disk can fail.
pub fn load(acc: &mut Acc, files: &dyn Files) -> Result<Book, Error> {
    let mut loader = Loader { acc, files, book: Book::default() };
    let mut entries = files.list()?;
    entries.sort_by(|a, b| a.path.cmp(&b.path));
    loader.outside(&entries);
    let paths: Vec<_> = entries.into_iter().filter(|entry| !entry.outside).map(|entry| entry.path).collect();
    loader.book_file(&paths)?;
    loader.content(&paths)?;
    loader.models(&paths)?;
    loader.ledger(&paths)?;
    loader.theme(&paths)?;
    photos::load(&mut loader)?;
    logo::load(&mut loader, &paths)?;
    unread::say(loader.acc, &mut loader.book, &paths);
    Ok(loader.book)
}

struct Loader<'a> {
    acc: &'a mut Acc,
    files: &'a dyn Files,
    book: Book,
}

impl Loader<'_> {
    fn outside(&mut self, entries: &[Entry]) {
        for entry in entries.iter().filter(|entry| entry.outside) {
            let file = self.book.sources.add(entry.path.clone(), String::new());
            let found = Diagnostic::new(
                &rules::OUTSIDE_BOOK,
                Span::new(file, 0..0),
                format!("`{}` is a link to a file outside the book", entry.path),
            );
            self.acc.add(found.help("copy the file into the book: a guide is made of what the book holds"));
        }
    }

    /// Reads a file as text; text that is not UTF-8 is said, and its good parts are used.
    fn text(&mut self, path: &str) -> Result<FileId, Error> {
        let bytes = self.files.read(path)?;
        let bytes = bytes.strip_prefix(b"\xef\xbb\xbf").unwrap_or(&bytes);
        let bad = std::str::from_utf8(bytes).err().map(|e| e.valid_up_to());
        let file = self.book.sources.add(path.to_string(), String::from_utf8_lossy(bytes).into_owned());
        if let Some(at) = bad {
            let found = Diagnostic::new(&rules::NOT_UTF8, Span::new(file, at..at + 3), "this is not text in UTF-8");
            self.acc.add(found.help("save the file as UTF-8"));
        }
        Ok(file)
    }

    fn toml<T: Read>(&mut self, path: &str) -> Result<(FileId, Option<T>), Error> {
        let file = self.text(path)?;
        let text = &self.book.sources.get(file).text;
        let facts = read::file(self.acc, file, text);
        self.book.incomplete |= facts.is_none();
        Ok((file, facts))
    }

    fn markdown(&mut self, path: &str) -> Result<Option<Text>, Error> {
        let file = self.text(path)?;
        let source = &self.book.sources.get(file).text;
        Ok(text::read(self.acc, file, source))
    }

    fn book_file(&mut self, paths: &[String]) -> Result<(), Error> {
        if paths.iter().any(|path| path == "book.toml") {
            let (file, facts) = self.toml("book.toml")?;
            self.book.file = facts.map(|facts| (file, facts));
        }
        self.book.settings = settings::settings(self.book.file.as_ref().map(|(_, facts)| facts));
        Ok(())
    }

    fn content(&mut self, paths: &[String]) -> Result<(), Error> {
        for path in paths.iter().filter(|path| path.starts_with("content/")) {
            match path["content/".len()..].split('/').collect::<Vec<_>>().as_slice() {
                ["hazards.toml"] => self.book.hazards = self.toml(path)?.1.unwrap_or_default(),
                ["capabilities.toml"] => self.book.capabilities = self.toml(path)?.1.unwrap_or_default(),
                ["words.toml"] => self.book.words = self.toml(path)?.1.unwrap_or_default(),
                ["routines", name] if name.ends_with(".md") => self.routine(path, name)?,
                [name] if name.starts_with("emergency.") && name.ends_with(".md") => self.emergency(path, name)?,
                [_, _, name, ..] if is_photo(name) => self.photo(path),
                [_, _, name, ..] if !name.ends_with(".md") && *name != "module.toml" => {
                    let bytes = self.files.read(path)?;
                    assets::check(self.acc, &mut self.book.sources, path, &bytes);
                    let size = std::str::from_utf8(&bytes).ok().and_then(assets::size);
                    self.book.drawings.extend(size.map(|size| (path.clone(), size)));
                    self.book.assets.insert(path.clone(), bytes);
                }
                _ => {}
            }
        }
        modules::load(self, paths)
    }

    /// A photo is only read once it is known that something points at it.
    fn photo(&mut self, path: &str) {
        self.book.photos.insert(path.to_string(), Photo::default());
    }

    fn routine(&mut self, path: &str, name: &str) -> Result<(), Error> {
        let (name, language) = self.name_and_language(name);
        let text = self.markdown(path)?;
        let at = match self.book.routines.iter().position(|routine| routine.name == name) {
            Some(at) => at,
            None => {
                self.book.routines.push(Routine { name, texts: BTreeMap::new() });
                self.book.routines.len() - 1
            }
        };
        self.book.routines[at].texts.extend(text.map(|text| (language, text)));
        Ok(())
    }

    fn emergency(&mut self, path: &str, name: &str) -> Result<(), Error> {
        let (_, language) = self.name_and_language(name);
        let text = self.markdown(path)?;
        self.book.emergency.extend(text.map(|text| (language, text)));
        Ok(())
    }

    /// `text.de.md` is `text` in German; `text.md` is in the default language.
    fn name_and_language(&self, name: &str) -> (String, String) {
        let stem = name.trim_end_matches(".md");
        match stem.split_once('.') {
            Some((stem, language)) => (stem.to_string(), language.to_string()),
            None => (stem.to_string(), self.book.settings.language().to_string()),
        }
    }

    fn models(&mut self, paths: &[String]) -> Result<(), Error> {
        for path in paths {
            if path.starts_with("models/") && is_photo(path) {
                self.photo(path);
            }
            if let Some(name) = path.strip_prefix("models/").and_then(|rest| rest.strip_suffix("/model.toml")) {
                self.model(path, name, paths)?;
            }
        }
        Ok(())
    }

    fn model(&mut self, path: &str, name: &str, paths: &[String]) -> Result<(), Error> {
        let (file, facts) = self.toml(path)?;
        let mut vans = Vec::new();
        for path in paths {
            let van = path
                .strip_prefix("models/")
                .and_then(|rest| rest.strip_prefix(name))
                .and_then(|rest| rest.strip_prefix('/'));
            let van =
                van.and_then(|rest| rest.strip_suffix(".toml")).filter(|van| *van != "model" && !van.contains('/'));
            if let Some(van) = van {
                let (file, facts) = self.toml(path)?;
                vans.extend(facts.map(|facts| VanSource { name: van.to_string(), file, facts }));
            }
        }
        self.book.models.extend(facts.map(|facts| Model { name: name.to_string(), file, facts, vans }));
        Ok(())
    }

    fn ledger(&mut self, paths: &[String]) -> Result<(), Error> {
        if paths.iter().any(|path| path == "models/ledger.toml") {
            let (file, facts) = self.toml("models/ledger.toml")?;
            self.book.ledger = facts.map(|facts| (file, facts));
        }
        Ok(())
    }

    fn theme(&mut self, paths: &[String]) -> Result<(), Error> {
        let prefix = format!("themes/{}/", self.book.settings.theme);
        let mut theme = Theme::default();
        for path in paths {
            if let Some(inner) = path.strip_prefix(&prefix) {
                let bytes = self.files.read(path)?;
                theme.files.insert(inner.to_string(), String::from_utf8_lossy(&bytes).into_owned());
            }
        }
        if theme.files.is_empty() {
            theme = settings::built_in_theme(self.acc, self.book.file.as_ref());
        }
        settings::complete_paper(&mut theme);
        self.book.theme = theme;
        Ok(())
    }
}
