//! Pages of keys without a guide: their labels answer, and say what became of the vehicle.

use super::Artifact;
use super::context::{OldKey, Said};
use super::root::tel;
use super::theme::Theme;
use crate::model::book::Settings;
use crate::model::guide::Withdrawn;
use serde::Serialize;

#[derive(Serialize)]
struct Shell<'a> {
    language: &'a str,
    kind: &'static str,
    title: &'a str,
    style_href: &'static str,
}

/// The pages of a van that is no more. What fails is the theme's.
pub fn withdrawn(theme: &Theme, settings: &Settings, van: &Withdrawn) -> Result<Vec<Artifact>, String> {
    let said = settings.languages.iter().map(|language| {
        let phrases = theme.phrases(language);
        Said {
            language: language.clone(),
            title: phrases.get("old-key-gone"),
            text: van.why.to_string(),
            href: String::new(),
            link: String::new(),
            ring: phrases.get("old-key-ring"),
        }
    });
    let old = OldKey {
        said: said.collect(),
        dealer_name: settings.dealer_name.clone(),
        dealer_phone: settings.dealer_phone.clone(),
        dealer_tel: tel(&settings.dealer_phone),
    };
    van.codes.iter().chain([&""]).map(|code| page(theme, settings.language(), van.key, code, &old)).collect()
}

/// The page of a code of an old key, or of the key itself; it is dressed by the style sheet at the root.
pub fn page(theme: &Theme, language: &str, key: &str, code: &str, old: &OldKey) -> Result<Artifact, String> {
    let title = old.said.first().map_or("", |said| said.title.as_str());
    let style_href = if code.is_empty() { "../style.css" } else { "../../style.css" };
    let html = theme.page("old-key", language, &Shell { language, kind: "old-key", title, style_href }, old)?;
    let slash = if code.is_empty() { "" } else { "/" };
    Ok(Artifact::text(format!("{key}/{code}{slash}index.html"), html))
}
