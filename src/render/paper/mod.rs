//! Paper: booklet, handover record and label sheets as PDF, from the same guide as the pages.
//!
//! A guide is told as plain data (`data.rs`), and templates of the theme lay it out. What the data holds can be asked
//! without laying anything out, so that safety coverage is measured on what is printed.

mod anchor;
mod booklet;
mod data;
mod engine;
pub mod held;
mod pieces;
mod record;
pub mod sheet;
mod words;

pub use engine::Press;

use super::context::Van;
use super::plan_input;
use crate::label::{Asked, Spot, address, draw};
use crate::model::files::forms::Signal;
use crate::model::files::vehicle::{PlaceKind, Side};
use crate::model::guide::Guide;
use crate::model::phrases::{Given, Phrases};
use data::Shell;
use std::collections::BTreeSet;

/// Sizes of paper for booklets.
pub const PAPERS: [&str; 2] = ["a5", "a4"];

/// What is laid out, as the program names it and its template.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// The whole guide as a booklet.
    Booklet,
    /// Labels for the places of a vehicle.
    Labels,
    /// What was shown at the handover, to be signed.
    Record,
}

impl Kind {
    /// All of them.
    pub const ALL: [Kind; 3] = [Kind::Booklet, Kind::Labels, Kind::Record];

    /// Its name.
    pub fn word(self) -> &'static str {
        match self {
            Kind::Booklet => "booklet",
            Kind::Labels => "labels",
            Kind::Record => "record",
        }
    }
}

/// The booklet of a guide as PDF. What fails is the theme's, in words.
pub fn booklet(
    press: &Press,
    guide: &Guide,
    phrases: &Phrases,
    fingerprint: &str,
    paper: &str,
) -> Result<Vec<u8>, String> {
    let teller = Teller::new(guide, phrases, press.asked());
    press.print(
        "booklet",
        &booklet::Booklet { shell: teller.shell("paper-booklet", paper, fingerprint), said: teller.booklet() },
    )
}

/// The handover record of a guide as PDF.
pub fn record(press: &Press, guide: &Guide, phrases: &Phrases, fingerprint: &str) -> Result<Vec<u8>, String> {
    let teller = Teller::new(guide, phrases, press.asked());
    press.print(
        "record",
        &record::Record { shell: teller.shell("paper-record", "a4", fingerprint), said: teller.record() },
    )
}

/// Where paper is read.
const INDOORS: Spot = Spot { kind: PlaceKind::Panel, side: Side::Inside };

/// What tells a guide as data.
struct Teller<'a> {
    guide: &'a Guide<'a>,
    phrases: &'a Phrases,
    anchors: BTreeSet<String>,
    /// What the book asks of the codes that are drawn; without it only what is where is told, and no words.
    codes: Option<Asked>,
}

impl<'a> Teller<'a> {
    /// A teller of `guide`, with the theme's words in its language.
    pub fn new(guide: &'a Guide<'a>, phrases: &'a Phrases, codes: Asked) -> Self {
        Teller { guide, phrases, anchors: anchor::all(guide), codes: Some(codes) }
    }

    /// A teller that leaves out words: which notes stand where is the same, and known many times faster.
    fn outline(guide: &'a Guide<'a>, phrases: &'a Phrases) -> Self {
        Teller { guide, phrases, anchors: BTreeSet::new(), codes: None }
    }

    /// The anchor, when something on paper bears it; else nothing.
    fn known(&self, anchor: String) -> String {
        if self.anchors.contains(&anchor) { anchor } else { String::new() }
    }

    /// The code of an address or a fingerprint at some spot, as SVG.
    fn code(&self, address: &str, spot: Spot) -> String {
        let code = self.codes.and_then(|asked| asked.code(address, spot));
        code.map(|code| draw::svg(&code, address)).unwrap_or_default()
    }

    fn signal(&self, signal: Signal) -> String {
        self.phrases.get(&format!("signal-{}", signal.word().to_lowercase()))
    }

    fn shell(&self, title: &str, paper: &'a str, fingerprint: &str) -> Shell<'a> {
        let identity = &self.guide.identity;
        let van = Van::new(identity, |_| String::new());
        Shell {
            language: self.guide.language,
            title: self.phrases.with(title, &[("van", Given::Text(identity.title))]),
            paper,
            w: &self.phrases.plain,
            see: self.around("paper-see"),
            plan: plan_input::plan_on_paper(self.guide, self.phrases),
            fingerprint: fingerprint.to_string(),
            fingerprint_code: self.code(&fingerprint.to_uppercase(), INDOORS),
            guide_code: self.code(&address::guide_address(identity.address, identity.key), INDOORS),
            van,
        }
    }

    /// The words before and after what a message takes.
    fn around(&self, message: &str) -> [String; 2] {
        let whole = self.phrases.with(message, &[("page", Given::Text("\u{1}"))]);
        let (before, after) = whole.split_once('\u{1}').unwrap_or((&whole, ""));
        [before.to_string(), after.to_string()]
    }
}
