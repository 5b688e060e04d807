//! Quantities and values as a reader sees them.

use crate::model::files::module::ValueFacts;
use crate::model::phrases::{Given, Phrases};
use crate::model::quantity::{Dimension, Quantity};
use crate::model::van::Value;

/// A quantity in the reader's language.
pub fn quantity(quantity: &Quantity, phrases: &Phrases) -> String {
    let style = phrases.number_style();
    match quantity.unit.dimension {
        Dimension::Months | Dimension::Days if quantity.amount.fract() == 0.0 && quantity.amount >= 0.0 => phrases
            .with(&format!("{}-count", quantity.unit.symbol), &[("count", Given::Number(quantity.amount as usize))]),
        _ => quantity.show(style),
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
