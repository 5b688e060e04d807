//! The page at the root of all guides: it takes a typed key and lists nothing.

use super::Artifact;
use super::context::Root;
use super::theme::Theme;
use crate::model::book::Settings;
use serde::Serialize;
use std::collections::BTreeMap;

#[derive(Serialize)]
struct Shell<'a> {
    language: &'a str,
    kind: &'static str,
    title: String,
    style_href: &'static str,
    scripts: BTreeMap<String, String>,
}

/// The page, its style and its scripts.
pub fn root(theme: &Theme, settings: &Settings) -> Result<Vec<Artifact>, String> {
    let language = settings.language();
    let page = Root {
        dealer_name: settings.dealer_name.clone(),
        dealer_phone: settings.dealer_phone.clone(),
        dealer_tel: tel(&settings.dealer_phone),
        address: settings.address.clone(),
        language: language.to_string(),
    };
    let scripts = theme.script_hrefs(str::to_string);
    let shell = Shell {
        language,
        kind: "root",
        title: theme.phrases(language).get("root-title"),
        style_href: "style.css",
        scripts,
    };
    let html = theme.page("root", language, &shell, &page)?;
    let mut out = vec![
        Artifact::text("index.html", html),
        Artifact::text("style.css", theme.style.clone()),
        Artifact::text("robots.txt", "User-agent: *\nDisallow: /\n"),
    ];
    let own = theme.scripts.iter().filter(|(name, _)| name == "root.js");
    out.extend(own.map(|(name, text)| Artifact::text(name.clone(), text.clone())));
    Ok(out)
}

/// `tel:` and the number with its digits alone (RFC 3966), or nothing.
pub fn tel(phone: &str) -> String {
    let number: String = phone.chars().filter(|c| c.is_ascii_digit() || *c == '+').collect();
    if number.is_empty() { String::new() } else { format!("tel:{number}") }
}
