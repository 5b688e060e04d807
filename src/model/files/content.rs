//! `content/hazards.toml`, `capabilities.toml` and `words.toml`.

use super::forms::{Id, Signal, Supply, Words};
use super::vehicle::PlaceKind;
use crate::load::read::{Map, Node, OneOrMany, Read, Reader};
use crate::model::source::At;
use crate::record;
use serde_json::Value as Json;

record! {
    /// What can hurt or harm.
    Hazard {
        /// The hazard in an owner's words.
        title: Words,
        /// The weakest signal word that a note about it may have.
        at_least: At<Signal>,
        /// Its sign of ISO 7010, where one exists.
        sign: Option<At<String>>,
        /// Who says so.
        source: String,
        /// The facts of a fit that imply it.
        implied_by: Vec<At<Implication>>,
    }
    /// A fact of a fit that implies a hazard: one of `trait` with `is`, `load`, `provides` and `place`.
    Implication {
        /// The name of a trait.
        trait_: Option<At<Id>>,
        /// The words of the trait that imply it.
        is: OneOrMany<At<String>>,
        /// What the fit draws from.
        load: Option<At<Supply>>,
        /// A capability that the fit provides.
        provides: Option<At<Id>>,
        /// A kind of place that the fit has.
        place: Option<At<PlaceKind>>,
    }
    /// What a module does for others: a contract of sections that each provider has.
    Capability {
        /// What it is called.
        title: Words,
        /// The sections that each provider must have.
        sections: Vec<At<Id>>,
    }
}

/// `content/hazards.toml`: hazards by name.
#[derive(Debug, Clone, Default)]
pub struct HazardsFile(pub Map<Hazard>);

/// `content/capabilities.toml`: capabilities by name.
#[derive(Debug, Clone, Default)]
pub struct CapabilitiesFile(pub Map<Capability>);

/// `content/words.toml`: for each language, an owner's word and the words that the texts use.
#[derive(Debug, Clone, Default)]
pub struct WordsFile(pub Map<Map<OneOrMany<At<String>>>>);

macro_rules! whole_file {
    ($($name:ident: $inner:ty),+) => {$(
        impl Read for $name {
            fn read(r: &mut Reader, node: &Node) -> Option<Self> {
                <$inner>::read(r, node).map($name)
            }
            fn schema() -> Json {
                <$inner>::schema()
            }
        }
    )+};
}

whole_file!(HazardsFile: Map<Hazard>, CapabilitiesFile: Map<Capability>, WordsFile: Map<Map<OneOrMany<At<String>>>>);
