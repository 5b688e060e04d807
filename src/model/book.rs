//! The whole workspace, read and compiled once.

use super::colour::Colour;
use super::files::book::BookFile;
use super::files::content::{CapabilitiesFile, HazardsFile, WordsFile};
use super::files::forms::System;
use super::files::ledger::LedgerFile;
use super::files::module::{ModuleFile, Wiring};
use super::files::vehicle::{ModelFile, VanFile};
use super::photo::Photo;
use super::sheet::Sheets;
use super::source::{At, FileId, Sources};
use super::text::{Section, Text};
use std::collections::BTreeMap;

/// Everything that was loaded.
#[derive(Debug, Default)]
pub struct Book {
    /// The files as text.
    pub sources: Sources,
    /// What the book says of itself, with the defaults filled in.
    pub settings: Settings,
    /// `book.toml` as written, when there is one.
    pub file: Option<(FileId, BookFile)>,
    /// Hazards.
    pub hazards: HazardsFile,
    /// Capabilities.
    pub capabilities: CapabilitiesFile,
    /// Owners' words.
    pub words: WordsFile,
    /// Modules, by name; shared ones too.
    pub modules: Vec<Module>,
    /// Routines, by name.
    pub routines: Vec<Routine>,
    /// The emergency page, by language.
    pub emergency: BTreeMap<String, Text>,
    /// Models, by name, each with its vans.
    pub models: Vec<Model>,
    /// Every label that was ever printed, when there is a ledger.
    pub ledger: Option<(FileId, LedgerFile)>,
    /// Whether a fact file could not be used at all, which has been said; what it would have fitted is then not known.
    pub incomplete: bool,
    /// The theme's files.
    pub theme: Theme,
    /// Pictures and other files that texts can point at: path below the root, and bytes.
    pub assets: BTreeMap<String, Vec<u8>>,
    /// Width and height of the drawings among them; only what they are to each other counts.
    pub drawings: BTreeMap<String, (u32, u32)>,
    /// Photos, by their path below the root; only those that something points at are made ready.
    pub photos: BTreeMap<String, Photo>,
    /// The dealer's mark.
    pub logo: Option<Logo>,
}

/// The dealer's mark, made ready.
#[derive(Debug, Clone)]
pub struct Logo {
    /// What its file is called in a guide: `logo.svg` or `logo.png`.
    pub name: &'static str,
    /// The file.
    pub bytes: Vec<u8>,
    /// Width and height as it is drawn; only what they are to each other counts.
    pub size: (u32, u32),
}

/// What the book says of itself.
#[derive(Debug, Clone)]
pub struct Settings {
    /// The dealer's name.
    pub dealer_name: String,
    /// The dealer's telephone number.
    pub dealer_phone: String,
    /// The dealer's electronic mail.
    pub dealer_email: String,
    /// The dealer's page.
    pub dealer_web: String,
    /// When somebody answers.
    pub dealer_hours: String,
    /// What labels carry.
    pub address: String,
    /// Languages, the default one first.
    pub languages: Vec<String>,
    /// The theme's folder.
    pub theme: String,
    /// Whether the nearside is the left side.
    pub nearside_is_left: bool,
    /// The dealer's colour.
    pub colour: Option<String>,
    /// The sheets that labels are printed on.
    pub sheets: Sheets,
}

impl Default for Settings {
    fn default() -> Self {
        Settings {
            dealer_name: String::new(),
            dealer_phone: String::new(),
            dealer_email: String::new(),
            dealer_web: String::new(),
            dealer_hours: String::new(),
            address: "https://guides.example".into(),
            languages: vec!["en".into()],
            theme: "daymark".into(),
            nearside_is_left: true,
            colour: None,
            sheets: Sheets::default(),
        }
    }
}

impl Settings {
    /// The language that every text must have.
    pub fn language(&self) -> &str {
        self.languages.first().map_or("en", String::as_str)
    }
}

/// One kind of component.
#[derive(Debug)]
pub struct Module {
    /// `cooling/absorption-fridge`.
    pub name: String,
    /// What it belongs to; none for a shared module.
    pub system: Option<System>,
    /// The file of its facts.
    pub file: FileId,
    /// Its facts, with those of the shared modules it includes.
    pub facts: ModuleFile,
    /// Its own text, by language.
    pub texts: BTreeMap<String, Text>,
    /// Shared modules it includes: their numbers in [`Book::modules`].
    pub includes: Vec<usize>,
    /// All its sections, its own first, then those it takes in.
    pub sections: Vec<SectionFacts>,
}

/// A section of a module, in all languages.
#[derive(Debug)]
pub struct SectionFacts {
    /// Its name.
    pub id: String,
    /// The module whose text it stands in.
    pub origin: usize,
    /// Its number in that text.
    pub number: usize,
    /// Its wiring, when it has any.
    pub wiring: Option<Wiring>,
}

/// A list for an occasion.
#[derive(Debug)]
pub struct Routine {
    /// Its name.
    pub name: String,
    /// Its introduction, and in the section `nothing` what to do when nothing contributes.
    pub texts: BTreeMap<String, Text>,
}

/// A vehicle type and its vans.
#[derive(Debug)]
pub struct Model {
    /// Its folder's name.
    pub name: String,
    /// The file.
    pub file: FileId,
    /// What it says.
    pub facts: ModelFile,
    /// Its vans, by name.
    pub vans: Vec<VanSource>,
}

impl Model {
    /// Where a photo of one of its vans is: in the folder that has the manifest's name.
    pub fn photo(&self, van: &VanSource, file: &str) -> String {
        format!("models/{}/{}/{file}", self.name, van.name)
    }
}

/// One vehicle as written.
#[derive(Debug)]
pub struct VanSource {
    /// The file's name without its ending.
    pub name: String,
    /// The file.
    pub file: FileId,
    /// What it says.
    pub facts: VanFile,
}

/// The files of a theme: path below the theme's folder, and text.
#[derive(Debug, Clone, Default)]
pub struct Theme {
    /// Files that are text, by path.
    pub files: BTreeMap<String, String>,
}

impl Theme {
    /// The colour that its style gives `name`, in light or in the dark: the first that `base.css` says, or the second.
    pub fn colour(&self, name: &str, dark: bool) -> Option<Colour> {
        let style = self.files.get("base.css")?;
        let property = format!("{name}:");
        let mut values = style.split(&property).skip(1).filter_map(|rest| rest.split(';').next());
        Colour::parse(values.nth(usize::from(dark))?.trim())
    }

    /// The drawings of hazard signs: a code of ISO 7010 in small letters, and the SVG.
    pub fn signs(&self) -> impl Iterator<Item = (&str, &String)> {
        self.files.iter().filter_map(|(path, svg)| Some((path.strip_prefix("signs/")?.strip_suffix(".svg")?, svg)))
    }
}

impl Book {
    /// The number of the module `name`.
    pub fn module_number(&self, name: &str) -> Option<usize> {
        self.modules.binary_search_by(|module| module.name.as_str().cmp(name)).ok()
    }

    /// The least coverage that the book asks of itself, where it is written.
    pub fn least(&self) -> Option<&At<f64>> {
        self.file.as_ref()?.1.safety.as_ref()?.least.as_ref()
    }

    /// Whether the book asks for less than full coverage, so that a gap alone stops nothing.
    pub fn tolerates_gaps(&self) -> bool {
        self.least().is_some_and(|least| least.value < 100.0)
    }

    /// The section that `facts` stand for and the text it stands in, in `language` or else in the default one.
    pub fn section(&self, facts: &SectionFacts, language: &str) -> (&Text, &Section) {
        let text = self.text(facts.origin, language);
        let translated = text.sections.iter().find(|section| section.id.value == facts.id);
        match translated {
            Some(section) => (text, section),
            None => {
                let text = self.text(facts.origin, self.settings.language());
                (text, &text.sections[facts.number])
            }
        }
    }

    /// The text of a module in `language`, or else in the default language.
    pub fn text(&self, module: usize, language: &str) -> &Text {
        let texts = &self.modules[module].texts;
        texts.get(language).unwrap_or_else(|| &texts[self.settings.language()])
    }
}
