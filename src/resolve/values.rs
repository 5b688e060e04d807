//! The values of a fit: what a manifest gives, held against what the module asks.

use crate::diag::{Acc, Diagnostic, rules, suggest};
use crate::load::read::Map;
use crate::model::book::Module;
use crate::model::files::forms::Given;
use crate::model::files::module::ValueFacts;
use crate::model::quantity::{Dimension, Quantity, QuantityRange, Unit};
use crate::model::source::{At, Span};
use crate::model::van::Value;
use std::collections::BTreeMap;

/// All values of a fit that stands at `fit`.
pub fn values(acc: &mut Acc, module: &Module, given: &Map<At<Given>>, fit: Span) -> BTreeMap<String, Value> {
    let mut values = BTreeMap::new();
    for (name, text) in given.iter() {
        match module.facts.values.get(name) {
            Some(facts) => values.extend(value(acc, facts, &name.value, text).map(|value| (name.value.clone(), value))),
            None => {
                let found = Diagnostic::new(
                    &rules::UNKNOWN_VALUE,
                    name.span,
                    format!("`{}` has no value `{}`", module.name, name.value),
                );
                acc.add(found.help(suggest::did_you_mean(name, module.facts.values.names())));
            }
        }
    }
    // A slip in a name has been said with what was meant: that value is not missing as well.
    let slips: Vec<&str> = given.names().filter(|name| module.facts.values.get(name).is_none()).collect();
    let meant = |name: &str| slips.iter().any(|slip| suggest::nearest(slip, [name]).is_some());
    for (name, facts) in module.facts.values.iter().filter(|(name, _)| given.get(name).is_none()) {
        match &facts.default {
            Some(default) => {
                values.extend(value(acc, facts, &name.value, default).map(|value| (name.value.clone(), value)))
            }
            None if facts.required && !meant(&name.value) => missing(acc, module, name, facts, fit),
            None => {}
        }
    }
    values
}

fn missing(acc: &mut Acc, module: &Module, name: &At<String>, facts: &ValueFacts, fit: Span) {
    let example = match (&facts.unit, facts.choices.first()) {
        (Some(unit), _) => format!("… {}", unit.value),
        (None, Some(choice)) => choice.value.0.clone(),
        (None, None) => "…".to_string(),
    };
    let found =
        Diagnostic::new(&rules::MISSING_VALUE, fit, format!("`{}` needs the value `{}`", module.name, name.value));
    acc.add(
        found
            .other(name.span, "its module asks for it")
            .help(format!("add it to `values`, as in `{} = \"{example}\"`", name.value)),
    );
}

/// One value, by what its module says of it; `None` when it cannot be used, which has been said.
pub fn value(acc: &mut Acc, facts: &ValueFacts, name: &str, given: &At<Given>) -> Option<Value> {
    let text = given.value.0.trim();
    if facts.text {
        return Some(Value::Text(text.to_string()));
    }
    if let Some(unit) = &facts.unit {
        return quantity(acc, facts, Unit::find(unit)?, name, given.span, text).map(Value::Quantity);
    }
    if facts.choices.iter().any(|choice| &*choice.value == text) {
        return Some(Value::Choice(text.to_string()));
    }
    let found = Diagnostic::new(&rules::UNKNOWN_CHOICE, given.span, format!("`{text}` is not a choice of `{name}`"));
    acc.add(found.help(suggest::did_you_mean(text, facts.choices.iter().map(|choice| &*choice.value.0))));
    None
}

fn quantity(acc: &mut Acc, facts: &ValueFacts, unit: Unit, name: &str, span: Span, text: &str) -> Option<Quantity> {
    let number_alone = unit.shown.is_empty() && text.parse::<f64>().is_ok();
    let text = if number_alone { format!("{text} {}", unit.symbol) } else { text.to_string() };
    let quantity = parse_quantity(acc, span, &text)?;
    let Some(quantity) = quantity.to(unit) else {
        let found = Diagnostic::new(
            &rules::VALUE_UNIT,
            span,
            format!("`{text}` is not {}, which `{name}` is", unit.dimension.name()),
        );
        acc.add(found.help(format!("give it in `{}`", unit.symbol)));
        return None;
    };
    let range = facts.range.as_ref().and_then(|range| QuantityRange::parse(range).ok());
    if let Some(range) = range.filter(|range| range.contains(quantity) == Some(false)) {
        let found =
            Diagnostic::new(&rules::VALUE_RANGE, span, format!("`{text}` is outside what is plausible for `{name}`"));
        acc.add(
            found.help(format!("it is expected from {range}; if yours really differs, widen `range` in the module")),
        );
    }
    if range.is_none() && quantity.amount < 0.0 && unit.dimension != Dimension::Temperature {
        let found = Diagnostic::new(&rules::VALUE_RANGE, span, format!("`{text}` is less than nothing, as `{name}`"));
        acc.add(found.help("give what the plate of the part says"));
    }
    Some(quantity)
}

/// A quantity as written at `span`; what is wrong with it is said.
pub fn parse_quantity(acc: &mut Acc, span: Span, text: &str) -> Option<Quantity> {
    match Quantity::parse(text) {
        Ok(quantity) => Some(quantity),
        Err(error) => {
            acc.add(Diagnostic::new(&rules::QUANTITY_FORM, span, error.to_string()).help(error.help()));
            None
        }
    }
}
