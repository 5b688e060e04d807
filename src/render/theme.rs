//! A theme made ready: templates compiled, styles joined, words read. The only file that knows the template engine.

use crate::diag::suggest;
use crate::model::book::Theme as Files;
use crate::model::colour::{Colour, READABLE};
use crate::model::phrases::Phrases;
use serde::Serialize;
use std::collections::BTreeMap;
use tera::{Context, Tera};

/// A theme made ready for all pages.
pub struct Theme {
    tera: Tera,
    /// The style sheet.
    pub style: String,
    /// Scripts, by name.
    pub scripts: Vec<(String, String)>,
    /// The drawings of hazard signs, by their codes in small letters.
    pub signs: BTreeMap<String, String>,
    /// What keeps a guide on a phone, but for the list of its files.
    pub worker: String,
    phrases: BTreeMap<String, Phrases>,
    words: BTreeMap<String, tera::Value>,
}

impl Theme {
    /// Makes the files of a theme ready for `languages`. What is wrong comes back in words.
    pub fn new(files: &Files, languages: &[String]) -> Result<Self, String> {
        let mut tera = Tera::new();
        let templates: Vec<_> = files
            .files
            .iter()
            .filter(|(path, _)| path.ends_with(".html"))
            .map(|(path, text)| (path.clone(), text.clone()))
            .collect();
        if templates.is_empty() {
            return Err("the theme has no templates".to_string());
        }
        tera.add_raw_templates(templates).map_err(|e| e.to_string())?;
        let mut theme = Theme {
            tera,
            style: style(files),
            scripts: scripts(files),
            signs: files.signs().map(|(code, drawing)| (code.to_string(), drawing.clone())).collect(),
            worker: files.files.get("worker.js").cloned().unwrap_or_default(),
            phrases: BTreeMap::new(),
            words: BTreeMap::new(),
        };
        for language in languages {
            let path = format!("words/{language}.ftl");
            let source = files.files.get(&path).ok_or_else(|| {
                let known = files.files.keys().map(String::as_str).filter(|path| path.starts_with("words/"));
                format!("the theme has no `{path}`; {}", suggest::one_of(known))
            })?;
            let phrases = Phrases::new(language, source).map_err(|e| format!("`{path}`: {e}"))?;
            theme.words.insert(language.clone(), tera::Value::from_serializable(&phrases.plain));
            theme.phrases.insert(language.clone(), phrases);
        }
        Ok(theme)
    }

    /// The theme in the dealer's colour: links and plates take it. In the dark it is as light, or as deep, as it must be
    /// to be read there.
    pub fn coloured(mut self, files: &Files, colour: Option<&str>) -> Self {
        let Some(colour) = colour.and_then(Colour::parse) else {
            return self;
        };
        let near = |names: &[&str], dark| {
            let others: Vec<_> = names.iter().filter_map(|name| files.colour(name, dark)).collect();
            colour.readable(&others, READABLE).unwrap_or(colour).hex()
        };
        let (words, plate) = (near(&["--paper", "--sheet"], true), near(&["--on-plate"], true));
        self.style += &format!(
            "\n:root {{ --sea: {}; --plate: var(--sea); }}\n@media screen and (prefers-color-scheme: dark) {{ :root {{ --sea: {words}; --plate: {plate}; }} }}\n",
            colour.hex()
        );
        self
    }

    /// The words of a language that the theme was made ready for, or else of the first one.
    pub fn phrases(&self, language: &str) -> &Phrases {
        self.phrases
            .get(language)
            .unwrap_or_else(|| self.phrases.values().next().expect("a theme is made ready for at least one language"))
    }

    /// To scripts, by their names without `.js`, by a way to a file of the van's folder.
    pub fn script_hrefs(&self, to: impl Fn(&str) -> String) -> BTreeMap<String, String> {
        self.scripts.iter().map(|(name, _)| (name.trim_end_matches(".js").to_string(), to(name))).collect()
    }

    /// A page of `kind`, from what every page is given and what its own kind is given. What fails comes back in words.
    pub fn page(
        &self,
        kind: &str,
        language: &str,
        shell: &impl Serialize,
        page: &impl Serialize,
    ) -> Result<String, String> {
        let mut context = Context::from_serialize(shell).map_err(|e| e.to_string())?;
        context.insert("page", page);
        if let Some(words) = self.words.get(language) {
            context.insert_value("w", words.clone());
        }
        self.tera.render(&format!("templates/{kind}.html"), &context).map_err(|e| e.to_string())
    }
}

/// The style sheet: `base.css`, then the components' in the order of their names.
fn style(files: &Files) -> String {
    let base = files.files.get("base.css").cloned().unwrap_or_default();
    let components = files.files.iter().filter(|(path, _)| path.starts_with("components/") && path.ends_with(".css"));
    components.fold(base, |style, (_, css)| style + "\n" + css)
}

/// The scripts of the folder `scripts`, and one of all components', which every page has.
fn scripts(files: &Files) -> Vec<(String, String)> {
    let named = files.files.iter().filter_map(|(path, text)| Some((path.strip_prefix("scripts/")?, text)));
    let mut scripts: Vec<_> = named.map(|(name, text)| (name.to_string(), text.clone())).collect();
    let components = files.files.iter().filter(|(path, _)| path.starts_with("components/") && path.ends_with(".js"));
    scripts.push(("guide.js".to_string(), components.map(|(_, text)| text.as_str()).collect::<Vec<_>>().join("\n")));
    scripts
}
