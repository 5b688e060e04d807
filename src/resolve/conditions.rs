//! Conditions: which sections of a fit show in its van.

use crate::model::book::{Book, Model};
use crate::model::files::forms::{Condition, VanFact};
use crate::model::quantity::Quantity;
use crate::model::van::{Fit, Value, Van};
use std::cmp::Ordering;

/// Decides for each fit which sections show.
pub fn decide(book: &Book, van: &mut Van) {
    let model = &book.models[van.model];
    let shown: Vec<Vec<bool>> = van.fits.iter().map(|fit| shown(book, model, van, fit)).collect();
    for (fit, shown) in van.fits.iter_mut().zip(shown) {
        fit.shown = shown;
    }
}

fn shown(book: &Book, model: &Model, van: &Van, fit: &Fit) -> Vec<bool> {
    let sections = &book.modules[fit.module].sections;
    sections
        .iter()
        .map(|section| {
            section
                .wiring
                .as_ref()
                .and_then(|wiring| wiring.when.as_ref())
                .is_none_or(|when| holds(when, fit, van, model))
        })
        .collect()
}

/// Whether a condition holds for a fit of a van.
pub fn holds(condition: &Condition, fit: &Fit, van: &Van, model: &Model) -> bool {
    match condition {
        Condition::ValueIs(value, words) => match fit.values.get(&value.value.0) {
            Some(Value::Choice(choice) | Value::Text(choice)) => words.iter().any(|word| word.value == *choice),
            _ => false,
        },
        Condition::ValueWithin { value, at_least, at_most } => match fit.values.get(&value.value.0) {
            Some(Value::Quantity(quantity)) => {
                let bound = |text: &str| Quantity::parse(text).ok().and_then(|bound| quantity.compare(bound));
                at_least.as_ref().is_none_or(|least| bound(least).is_some_and(Ordering::is_ge))
                    && at_most.as_ref().is_none_or(|most| bound(most).is_some_and(Ordering::is_le))
            }
            _ => false,
        },
        Condition::Fitted(capability) => van.providers.contains_key(&capability.value.0),
        Condition::Van(fact, words) => {
            words.iter().any(|word| van_fact(model, fact.value) == Some(word.value.as_str()))
        }
        Condition::All(all) => all.iter().all(|one| holds(one, fit, van, model)),
        Condition::Any(any) => any.iter().any(|one| holds(one, fit, van, model)),
        Condition::Not(not) => !holds(not, fit, van, model),
    }
}

fn van_fact(model: &Model, fact: VanFact) -> Option<&'static str> {
    match fact {
        VanFact::Body => Some(model.facts.body.word()),
        VanFact::Drive => model.facts.drive.map(|drive| drive.word()),
        VanFact::Fuel => Some(model.facts.fuel.word()),
    }
}
