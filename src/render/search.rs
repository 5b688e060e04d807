//! What search works on: a script that gives its data a name, since browsers fetch nothing from a folder.

use super::Artifact;
use super::links::folder;
use crate::model::files::forms::Signal;
use crate::model::guide::{Found, FoundKind, Guide};
use crate::model::phrases::Phrases;
use serde_json::{Value, json};

/// The name of the file, in the folder of the guide's language.
pub const FILE: &str = "search-index.js";

/// The anchor of a hazard on the page of safety notes.
pub fn hazard_anchor(hazard: &str) -> String {
    format!("hazard-{hazard}")
}

/// The data of one guide.
pub fn index(guide: &Guide, phrases: &Phrases) -> Artifact {
    let data = json!({
        "parts": guide.fits.iter().map(|fit| fit.title).collect::<Vec<_>>(),
        // Owners' words for a part are told once, for all that belongs to it.
        "aliases": guide.fits.iter().map(|fit| fit.aliases.join(" ")).collect::<Vec<_>>(),
        "places": guide.places.iter().map(|place| place.code).collect::<Vec<_>>(),
        "signals": Signal::ALL.iter().map(|signal| word(*signal, phrases)).collect::<serde_json::Map<_, _>>(),
        "small": phrases.get("search-small"),
        "trouble": phrases.get("search-trouble"),
        "endings": phrases.get("search-endings"),
        "owners": guide.search.owners.iter().map(|(word, means)| json!([word, means])).collect::<Vec<_>>(),
        "found": guide.search.found.iter().map(entry).collect::<Vec<_>>(),
    });
    // A script of its own needs no more escaping than JSON has; `<` goes too, so that no page could ever be broken by it.
    let text = format!("globalThis.guideSearch = {};\n", data.to_string().replace('<', "\\u003c"));
    let path = [guide.identity.key, &folder(guide, ""), FILE];
    Artifact::text(path.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join("/"), text)
}

fn word(signal: Signal, phrases: &Phrases) -> (String, Value) {
    let id = signal.word().to_lowercase();
    let word = phrases.get(&format!("signal-{id}"));
    (id, Value::String(word))
}

/// Kind, title, page, anchor, part, places, signal word, other words.
fn entry(found: &Found) -> Value {
    let anchor = match (found.kind, &found.anchor) {
        (_, None) => String::new(),
        (FoundKind::Hazard, Some(hazard)) => hazard_anchor(hazard),
        (_, Some(anchor)) => anchor.clone(),
    };
    json!([
        found.kind.word(),
        found.title,
        found.address,
        anchor,
        found.part,
        found.places,
        found.signal.map(|signal| signal.word().to_lowercase()),
        found.more,
    ])
}
