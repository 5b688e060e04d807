//! What a condition could be: every combination of the facts it asks for is tried.

use crate::model::book::Book;
use crate::model::files::forms::{Condition, VanFact};
use crate::model::files::module::ModuleFile;
use crate::model::files::vehicle::{Body, Drive, Fuel};
use crate::model::quantity::{Quantity, QuantityRange, Unit};
use std::collections::BTreeMap;

/// More combinations than this are not tried; the condition then counts as possible.
const MOST: usize = 20_000;

/// A fact that a condition asks for.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
enum Fact {
    Value(String),
    Fitted(String),
    Van(VanFact),
}

/// What a fact can be.
#[derive(Debug, Clone, PartialEq)]
enum Answer {
    Word(String),
    Amount(f64),
    Yes(bool),
}

/// Whether `condition` can hold in some van; with `fixed`, when that value is that choice.
pub fn can_hold(book: &Book, facts: &ModuleFile, condition: &Condition, fixed: Option<(&str, &str)>) -> bool {
    let mut space: BTreeMap<Fact, Vec<Answer>> = BTreeMap::new();
    collect(book, facts, condition, &mut space);
    if let Some((value, choice)) = fixed {
        space.insert(Fact::Value(value.to_string()), vec![Answer::Word(choice.to_string())]);
    }
    let combinations = space.values().map(Vec::len).try_fold(1usize, usize::checked_mul).filter(|count| *count <= MOST);
    let Some(combinations) = combinations else {
        return true;
    };
    (0..combinations).any(|number| holds(condition, facts, &pick(&space, number)))
}

/// Whether all that a condition names is known; what is not has been said elsewhere.
pub fn is_sound(book: &Book, facts: &ModuleFile, condition: &Condition) -> bool {
    match condition {
        Condition::ValueIs(value, words) => facts.values.get(&value.value).is_some_and(|value| {
            value.text || words.iter().all(|word| value.choices.iter().any(|choice| *choice.value == *word.value))
        }),
        Condition::ValueWithin { value, .. } => {
            facts.values.get(&value.value).is_some_and(|value| value.unit.is_some())
        }
        Condition::Fitted(capability) => book.capabilities.0.get(&capability.value).is_some(),
        Condition::Van(fact, words) => words.iter().all(|word| words_of(fact.value).contains(&word.value.as_str())),
        Condition::All(all) | Condition::Any(all) => all.iter().all(|one| is_sound(book, facts, one)),
        Condition::Not(not) => is_sound(book, facts, not),
    }
}

/// The values that a condition asks for.
pub fn values(condition: &Condition) -> Vec<&str> {
    match condition {
        Condition::ValueIs(value, _) | Condition::ValueWithin { value, .. } => vec![&value.value],
        Condition::Fitted(_) | Condition::Van(..) => vec![],
        Condition::All(all) | Condition::Any(all) => all.iter().flat_map(values).collect(),
        Condition::Not(not) => values(not),
    }
}

fn pick(space: &BTreeMap<Fact, Vec<Answer>>, mut number: usize) -> BTreeMap<&Fact, &Answer> {
    let mut picked = BTreeMap::new();
    for (fact, answers) in space {
        picked.insert(fact, &answers[number % answers.len()]);
        number /= answers.len();
    }
    picked
}

fn collect(book: &Book, facts: &ModuleFile, condition: &Condition, space: &mut BTreeMap<Fact, Vec<Answer>>) {
    match condition {
        Condition::ValueIs(value, _) => {
            let choices = facts
                .values
                .get(&value.value)
                .map(|value| value.choices.iter().map(|choice| Answer::Word(choice.value.0.clone())).collect());
            space.entry(Fact::Value(value.value.0.clone())).or_insert_with(|| or_one(choices.unwrap_or_default()));
        }
        Condition::ValueWithin { value, at_least, at_most } => {
            let amounts = space.entry(Fact::Value(value.value.0.clone())).or_default();
            amounts.extend(self::amounts(
                facts,
                &value.value,
                [at_least, at_most].into_iter().flatten().map(|bound| bound.value.as_str()),
            ));
        }
        Condition::Fitted(capability) => {
            let provided =
                book.modules.iter().any(|module| module.facts.provides.iter().any(|own| own.value == capability.value));
            let answers = if provided { vec![Answer::Yes(true), Answer::Yes(false)] } else { vec![Answer::Yes(false)] };
            space.insert(Fact::Fitted(capability.value.0.clone()), answers);
        }
        Condition::Van(fact, _) => {
            space.insert(
                Fact::Van(fact.value),
                words_of(fact.value).iter().map(|word| Answer::Word(word.to_string())).collect(),
            );
        }
        Condition::All(all) | Condition::Any(all) => all.iter().for_each(|one| collect(book, facts, one, space)),
        Condition::Not(not) => collect(book, facts, not, space),
    }
}

/// The words that a fact of the vehicle can be.
pub fn words_of(fact: VanFact) -> Vec<&'static str> {
    match fact {
        VanFact::Body => Body::ALL.iter().map(|body| body.word()).collect(),
        VanFact::Drive => Drive::ALL.iter().map(|drive| drive.word()).collect(),
        VanFact::Fuel => Fuel::ALL.iter().map(|fuel| fuel.word()).collect(),
    }
}

fn or_one(answers: Vec<Answer>) -> Vec<Answer> {
    if answers.is_empty() { vec![Answer::Word(String::new())] } else { answers }
}

/// Amounts worth trying, in the value's own unit: the ends of its range, and each bound and both sides of it.
fn amounts<'a>(facts: &ModuleFile, value: &str, bounds: impl Iterator<Item = &'a str>) -> Vec<Answer> {
    let Some(value) = facts.values.get(value) else {
        return vec![Answer::Amount(0.0)];
    };
    let unit = value.unit.as_ref().and_then(|unit| Unit::find(unit));
    let bounds = bounds.filter_map(|bound| Quantity::parse(bound).ok()?.to(unit?)).map(|bound| bound.amount);
    let mut tries: Vec<f64> = bounds.flat_map(|bound| [bound - 1e-3, bound, bound + 1e-3]).collect();
    let range = value.range.as_ref().and_then(|range| QuantityRange::parse(range).ok());
    if let Some((range, unit)) = range.zip(unit) {
        let end = |amount| Quantity { amount, unit: range.unit }.to(unit).map(|end| end.amount);
        let (low, high) = (end(range.low).unwrap_or(f64::MIN), end(range.high).unwrap_or(f64::MAX));
        tries.extend([low, high]);
        tries.retain(|amount| (low..=high).contains(amount));
    }
    if tries.is_empty() {
        tries.push(0.0);
    }
    tries.into_iter().map(Answer::Amount).collect()
}

fn holds(condition: &Condition, facts: &ModuleFile, picked: &BTreeMap<&Fact, &Answer>) -> bool {
    match condition {
        Condition::ValueIs(value, words) => match picked.get(&Fact::Value(value.value.0.clone())) {
            Some(Answer::Word(word)) => words.iter().any(|one| one.value == *word),
            _ => false,
        },
        Condition::ValueWithin { value, at_least, at_most } => {
            let Some(Answer::Amount(amount)) = picked.get(&Fact::Value(value.value.0.clone())) else {
                return false;
            };
            let unit =
                facts.values.get(&value.value).and_then(|value| value.unit.as_ref()).and_then(|unit| Unit::find(unit));
            let bound = |text: &str| Quantity::parse(text).ok()?.to(unit?).map(|bound| bound.amount);
            let least = at_least.as_ref().and_then(|text| bound(text)).unwrap_or(f64::MIN);
            let most = at_most.as_ref().and_then(|text| bound(text)).unwrap_or(f64::MAX);
            (least..=most).contains(amount)
        }
        Condition::Fitted(capability) => {
            picked.get(&Fact::Fitted(capability.value.0.clone())) == Some(&&Answer::Yes(true))
        }
        Condition::Van(fact, words) => match picked.get(&Fact::Van(fact.value)) {
            Some(Answer::Word(word)) => words.iter().any(|one| one.value == *word),
            _ => false,
        },
        Condition::All(all) => all.iter().all(|one| holds(one, facts, picked)),
        Condition::Any(any) => any.iter().any(|one| holds(one, facts, picked)),
        Condition::Not(not) => !holds(not, facts, picked),
    }
}
