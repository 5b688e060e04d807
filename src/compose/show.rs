//! Quantities and values as a reader sees them.

use crate::model::expected::Expected;
use crate::model::files::module::ValueFacts;
use crate::model::phrases::{Given, Phrases};
use crate::model::quantity::{Dimension, Quantity, QuantityRange};
use crate::model::van::{Figure, Value};

/// A quantity in the reader's language.
pub fn quantity(quantity: &Quantity, phrases: &Phrases) -> String {
    let style = phrases.number_style();
    match quantity.unit.dimension {
        Dimension::Months | Dimension::Days if quantity.amount.fract() == 0.0 && quantity.amount >= 0.0 => phrases
            .with(&format!("{}-count", quantity.unit.symbol), &[("count", Given::Number(quantity.amount as usize))]),
        _ => quantity.show(style),
    }
}

/// A range in the reader's language.
pub fn range(range: &QuantityRange, phrases: &Phrases) -> String {
    range.show(phrases.number_style(), &phrases.get("range-to"))
}

/// A figure in the reader's language: a range where its supply is one.
pub fn figure(figure: &Figure, phrases: &Phrases) -> String {
    figure.range().map_or_else(|| quantity(&figure.result, phrases), |all| range(&all, phrases))
}

/// What a reading should be, in the reader's language.
pub fn expected(expected: &Expected, phrases: &Phrases) -> String {
    match &expected.one {
        Some(one) => quantity(one, phrases),
        None => range(&expected.good, phrases),
    }
}

/// A value in the reader's language.
pub fn value(value: &Value, facts: Option<&ValueFacts>, language: &str, phrases: &Phrases) -> String {
    match value {
        Value::Quantity(amount) => quantity(amount, phrases),
        Value::Text(text) => text.clone(),
        Value::Choice(choice) => match facts.and_then(|facts| facts.words.get(choice)) {
            Some(words) => words.text(language).to_string(),
            None => choice.replace('-', " "),
        },
    }
}
