//! Modules: folders with facts and texts, and what they take in from shared ones.

use super::Loader;
use crate::diag::{Acc, Diagnostic, rules, suggest};
use crate::error::Error;
use crate::model::book::{Book, Module, SectionFacts};
use crate::model::files::forms::System;
use crate::model::files::module::ModuleFile;
use crate::model::source::{At, FileId, Span};
use crate::model::text::{Refs, Text};
use std::collections::{BTreeMap, BTreeSet};

/// Loads all module folders, then joins shared modules to those that include them.
pub(super) fn load(loader: &mut Loader, paths: &[String]) -> Result<(), Error> {
    let folders: BTreeSet<_> = paths.iter().filter_map(|path| folder(path)).collect();
    for (system, name) in folders {
        module(loader, paths, system, name)?;
    }
    loader.book.modules.sort_by(|a, b| a.name.cmp(&b.name));
    include(loader.acc, &mut loader.book);
    sections(loader.acc, &mut loader.book);
    Ok(())
}

fn folder(path: &str) -> Option<(&str, &str)> {
    let parts: Vec<_> = path.strip_prefix("content/")?.split('/').collect();
    match parts.as_slice() {
        [system, name, _file] if *system != "routines" => Some((system, name)),
        _ => None,
    }
}

fn module(loader: &mut Loader, paths: &[String], system: &str, name: &str) -> Result<(), Error> {
    let folder = format!("content/{system}/{name}");
    let facts_path = format!("{folder}/module.toml");
    if !paths.contains(&facts_path) {
        let file = loader.book.sources.add(facts_path, String::new());
        missing(
            loader.acc,
            file,
            &format!("`{folder}` has no `module.toml`"),
            "add one: at least `title = \"…\"`, or take the folder away",
        );
        return Ok(());
    }
    let (file, facts) = loader.toml::<ModuleFile>(&facts_path)?;
    let texts = texts(loader, paths, &folder)?;
    let Some(facts) = facts else {
        return Ok(());
    };
    let system_word = System::from_word(system);
    if system_word.is_none() && system != "shared" {
        let known = System::ALL.iter().map(|system| system.word()).chain(["shared"]);
        let found = Diagnostic::new(&rules::UNKNOWN_SYSTEM, facts.title.span, format!("`{system}` is not a system"));
        loader.acc.add(found.help(suggest::did_you_mean(system, known)));
    }
    let mut module = Module {
        name: format!("{system}/{name}"),
        system: system_word,
        file,
        facts,
        texts,
        includes: vec![],
        sections: vec![],
    };
    default_text(loader, &mut module, &folder);
    titles(loader.acc, &module, loader.book.settings.language());
    loader.book.modules.push(module);
    Ok(())
}

fn texts(loader: &mut Loader, paths: &[String], folder: &str) -> Result<BTreeMap<String, Text>, Error> {
    let mut texts = BTreeMap::new();
    let prefix = format!("{folder}/text");
    for path in paths.iter().filter(|path| path.starts_with(&prefix) && path.ends_with(".md")) {
        let (stem, language) = loader.name_and_language(&path[folder.len() + 1..]);
        if stem == "text" {
            texts.extend(loader.markdown(path)?.map(|text| (language, text)));
        }
    }
    Ok(texts)
}

/// A module without a text in the default language gets an empty one, so that later phases can go on.
fn default_text(loader: &mut Loader, module: &mut Module, folder: &str) {
    let language = loader.book.settings.language().to_string();
    if module.texts.contains_key(&language) {
        return;
    }
    let path = format!("{folder}/text.md");
    let known = loader.book.sources.find(&path);
    let file = known.unwrap_or_else(|| loader.book.sources.add(path, String::new()));
    if known.is_none() {
        missing(
            loader.acc,
            file,
            &format!("`{folder}` has no `text.md`"),
            "write one: `# ` and the title, then what it is",
        );
    }
    let title = At::new(module.facts.title.value.clone(), Span::new(file, 0..0));
    module.texts.insert(language, Text { file, title, intro: vec![], sections: vec![], refs: Refs::default() });
}

fn missing(acc: &mut Acc, file: FileId, message: &str, help: &str) {
    acc.add(Diagnostic::new(&rules::MISSING_FILE, Span::new(file, 0..0), message).help(help));
}

fn titles(acc: &mut Acc, module: &Module, language: &str) {
    let text = &module.texts[language];
    if text.title.value != module.facts.title.value {
        let found = Diagnostic::new(
            &rules::TITLE_DIFFERS,
            module.facts.title.span,
            format!("the title is `{}` here and `{}` in the text", module.facts.title.value, text.title.value),
        );
        acc.add(found.other(text.title.span, "the text's title").help("give both the same words"));
    }
}

/// Joins the facts of shared modules to those that include them; a module's own facts win.
fn include(acc: &mut Acc, book: &mut Book) {
    let names: Vec<_> = book.modules.iter().map(|module| module.name.clone()).collect();
    for number in 0..book.modules.len() {
        let mut includes = Vec::new();
        for wanted in book.modules[number].facts.include.clone() {
            match names.binary_search(&wanted.value.0) {
                Ok(found) if book.modules[found].system.is_none() && found != number => includes.push(found),
                _ => {
                    let shared = names.iter().map(String::as_str).filter(|name| name.starts_with("shared/"));
                    let message = format!("`{}` is not a shared module", wanted.value.0);
                    acc.add(
                        Diagnostic::new(&rules::UNKNOWN_MODULE, wanted.span, message)
                            .help(suggest::did_you_mean(&wanted.value.0, shared)),
                    );
                }
            }
        }
        for shared in &includes {
            let facts = book.modules[*shared].facts.clone();
            join(&mut book.modules[number].facts, &facts);
        }
        book.modules[number].includes = includes;
    }
}

fn join(own: &mut ModuleFile, shared: &ModuleFile) {
    own.traits.fill_from(&shared.traits);
    own.values.fill_from(&shared.values);
    own.places.fill_from(&shared.places);
    own.life.fill_from(&shared.life);
    own.reading.fill_from(&shared.reading);
    own.figures.fill_from(&shared.figures);
    own.section.fill_from(&shared.section);
    own.load.extend(shared.load.iter().cloned());
    own.source.extend(shared.source.iter().cloned());
    own.provides.extend(shared.provides.iter().cloned());
}

/// Lists each module's sections, and says which wiring is for a section that is not there.
fn sections(acc: &mut Acc, book: &mut Book) {
    let language = book.settings.language().to_string();
    for number in 0..book.modules.len() {
        let module = &book.modules[number];
        let mut sections: Vec<SectionFacts> = Vec::new();
        for origin in std::iter::once(number).chain(module.includes.iter().copied()) {
            let text = &book.modules[origin].texts[&language];
            for (at, section) in text.sections.iter().enumerate() {
                let id = section.id.value.clone();
                if !sections.iter().any(|known| known.id == id) {
                    let wiring = module.facts.section.get(&id).cloned();
                    sections.push(SectionFacts { id, origin, number: at, wiring });
                }
            }
        }
        for (id, _) in module.facts.section.iter().filter(|(id, _)| id.span.file == module.file) {
            if !sections.iter().any(|section| section.id == id.value) {
                let known = sections.iter().map(|section| section.id.as_str());
                let found = Diagnostic::new(
                    &rules::UNKNOWN_SECTION,
                    id.span,
                    format!("the text has no section `{}`", id.value),
                );
                acc.add(found.help(suggest::did_you_mean(&id.value, known)));
            }
        }
        book.modules[number].sections = sections;
    }
}
