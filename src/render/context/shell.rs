//! What every template is given.

use crate::label::address;
use crate::model::guide::Identity;
use crate::render::root;
use serde::Serialize;
use std::collections::BTreeMap;

/// What every template is given, beside `w`, the theme's words, and `page`, what its own kind of page says.
#[derive(Debug, Serialize)]
pub struct Shell {
    /// The language.
    pub language: String,
    /// The kind of page: `home`, `place`, `part`, `system`, `routine`, `places`, `tasks`, `faults`, `dates`, `figures`, `warnings`, `emergency`, `words`, `about`.
    pub kind: &'static str,
    /// The page's title.
    pub title: String,
    /// To the style sheet.
    pub style_href: String,
    /// To scripts, by name: `ticks` for `ticks.js`.
    pub scripts: BTreeMap<String, String>,
    /// What search needs.
    pub search: Search,
    /// What saving the guide needs.
    pub offline: Offline,
    /// The published address of this page.
    pub page_address: String,
    /// `mailto:` with a message to the dealer about this page, or nothing.
    pub tell: String,
    /// The vehicle, and whose guide it is.
    pub van: Van,
    /// To the pages that every page leads to.
    pub to: Ways,
    /// The same page in other languages.
    pub languages: Vec<Language>,
}

/// What search needs, when it is first used.
#[derive(Debug, Serialize)]
pub struct Search {
    /// To the script that holds its data.
    pub index: String,
    /// To the scripts that search, with a space between them.
    pub scripts: String,
}

/// What saving the guide on a phone needs.
#[derive(Debug, Serialize)]
pub struct Offline {
    /// To the worker.
    pub worker: String,
    /// To the manifest.
    pub manifest: String,
    /// To the script that gives the fingerprint a name.
    pub fingerprint: String,
}

/// The vehicle, and whose guide it is.
#[derive(Debug, Serialize)]
pub struct Van {
    /// What its owner calls it.
    pub title: String,
    /// The model.
    pub model: String,
    /// The year it was built, or nothing.
    pub year: String,
    /// The public key.
    pub key: String,
    /// The address of the guide, as it is typed: `guides.example/KEY`.
    pub address: String,
    /// The dealer's name, or nothing.
    pub dealer_name: String,
    /// The dealer's telephone number, or nothing.
    pub dealer_phone: String,
    /// `tel:` and the number.
    pub dealer_tel: String,
    /// The dealer's electronic mail, or nothing.
    pub dealer_email: String,
    /// The dealer's page, or nothing.
    pub dealer_web: String,
    /// When somebody answers, or nothing.
    pub dealer_hours: String,
    /// To the dealer's mark, or nothing.
    pub dealer_logo: String,
    /// Its width and height; only what they are to each other counts.
    pub dealer_logo_size: (u32, u32),
}

impl Van {
    /// The vehicle of a guide; `file` gives the way to a file of its folder.
    pub fn new(identity: &Identity, file: impl Fn(&str) -> String) -> Self {
        Van {
            title: identity.title.to_string(),
            model: identity.model.to_string(),
            year: identity.year.map(|year| year.to_string()).unwrap_or_default(),
            key: identity.key.to_string(),
            address: address::typed(identity.address, identity.key, ""),
            dealer_name: identity.dealer_name.to_string(),
            dealer_phone: identity.dealer_phone.to_string(),
            dealer_tel: root::tel(identity.dealer_phone),
            dealer_email: identity.dealer_email.to_string(),
            dealer_web: identity.dealer_web.to_string(),
            dealer_hours: identity.dealer_hours.to_string(),
            dealer_logo: identity.dealer_logo.map(|logo| file(logo.name)).unwrap_or_default(),
            dealer_logo_size: identity.dealer_logo.map(|logo| logo.size).unwrap_or_default(),
        }
    }
}

/// To the pages that every page leads to.
#[derive(Debug, Serialize)]
pub struct Ways {
    /// Home.
    pub home: String,
    /// All places.
    pub places: String,
    /// All tasks.
    pub tasks: String,
    /// All faults.
    pub faults: String,
    /// Dates.
    pub dates: String,
    /// Figures.
    pub figures: String,
    /// Safety notes.
    pub warnings: String,
    /// Emergency.
    pub emergency: String,
    /// Words from A to Z.
    pub words: String,
    /// About this guide.
    pub about: String,
}

/// A language of the guide.
#[derive(Debug, Serialize)]
pub struct Language {
    /// Its tag.
    pub tag: String,
    /// To the same page in it.
    pub href: String,
}
