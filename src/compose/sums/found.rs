//! What the sums find in a van: parts by capability and trait, values by name, loads by supply.

use crate::model::book::{Book, Module};
use crate::model::files::forms::Supply;
use crate::model::guide::Guide;
use crate::model::quantity::Unit;
use crate::model::van::{Fit, Van};

/// A van to look through.
#[derive(Clone, Copy)]
pub(super) struct Found<'c, 'a> {
    pub(super) book: &'a Book,
    pub(super) van: &'a Van,
    pub(super) guide: &'c Guide<'a>,
}

/// One part.
#[derive(Clone, Copy)]
pub(super) struct Part<'c, 'a> {
    of: Found<'c, 'a>,
    pub(super) fit: &'a Fit,
    pub(super) module: &'a Module,
    /// What readers call it.
    pub(super) title: &'a str,
}

/// What a part draws from a supply.
pub(super) struct Draw<'c, 'a> {
    pub(super) part: Part<'c, 'a>,
    /// In the unit that was asked for.
    pub(super) amount: f64,
    /// Hours in a typical day.
    pub(super) duty: f64,
}

impl<'c, 'a> Found<'c, 'a> {
    pub(super) fn parts(self) -> impl Iterator<Item = Part<'c, 'a>> {
        self.van.fits.iter().zip(&self.guide.fits).map(move |(fit, entry)| Part {
            of: self,
            fit,
            module: &self.book.modules[fit.module],
            title: entry.title,
        })
    }

    /// The part that answers for a capability.
    pub(super) fn provider(self, capability: &str) -> Option<Part<'c, 'a>> {
        self.parts().find(|part| part.provides(capability))
    }

    /// What all parts draw from a supply. Watts and amperes become each other at `volts`.
    pub(super) fn draws(self, from: Supply, unit: &str, volts: f64) -> Vec<Draw<'c, 'a>> {
        self.parts().flat_map(|part| part.draws(from, unit, volts)).collect()
    }
}

impl<'c, 'a> Part<'c, 'a> {
    pub(super) fn provides(self, capability: &str) -> bool {
        self.module.facts.provides.iter().any(|provided| &*provided.value == capability)
    }

    /// Whether a trait has a word.
    pub(super) fn is(self, fact: &str, word: &str) -> bool {
        self.module.facts.traits.get(fact).is_some_and(|words| words.iter().any(|known| known.value == word))
    }

    /// The first word of a trait.
    pub(super) fn fact(self, fact: &str) -> Option<&'a str> {
        self.module.facts.traits.get(fact)?.iter().next().map(|word| word.value.as_str())
    }

    /// How much of `unit` a value or figure is.
    pub(super) fn amount(self, name: &str, unit: &str) -> Option<f64> {
        Some(self.fit.quantity(name)?.to(Unit::find(unit)?)?.amount)
    }

    /// Where it is, in mm from the front: at the first place of the first of some roles that it has, or anywhere.
    pub(super) fn at(self, roles: &[&str]) -> Option<f64> {
        let places = |role: &str| self.fit.places.get(role).and_then(|places| places.first());
        let place = match roles {
            [] => self.fit.places.values().find_map(|places| places.first()),
            roles => roles.iter().find_map(|role| places(role)),
        };
        place.map(|place| self.of.van.places[*place].position[0])
    }

    fn draws(self, from: Supply, unit: &str, volts: f64) -> Vec<Draw<'c, 'a>> {
        let model = &self.of.book.models[self.of.van.model];
        let holds = |when| crate::resolve::holds(when, self.fit, self.of.van, model);
        let loads = self.module.facts.load.iter().filter(|load| load.from.value == from);
        loads
            .filter(|load| load.when.as_ref().is_none_or(holds))
            .filter_map(|load| {
                let amount = match unit {
                    "W" => self.amount(&load.draw, "W").or_else(|| Some(self.amount(&load.draw, "A")? * volts)),
                    "A" => self.amount(&load.draw, "A").or_else(|| Some(self.amount(&load.draw, "W")? / volts)),
                    unit => self.amount(&load.draw, unit),
                };
                let duty = load.duty.as_ref().and_then(|duty| self.amount(duty, "h")).unwrap_or(24.0);
                Some(Draw { part: self, amount: amount?, duty })
            })
            .collect()
    }
}
