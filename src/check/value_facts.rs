//! Values, lives, readings and loads of a module are sound in themselves.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, rules, suggest};
use crate::figures::{self, Gives};
use crate::model::book::Module;
use crate::model::files::forms::{Supply, is_id};
use crate::model::files::module::{Load, ReadingFacts, ValueFacts};
use crate::model::quantity::{Dimension, Quantity, QuantityRange, UNITS, Unit};
use crate::model::source::At;

/// The longest interval: a hundred years in days, which is more in months than any part lasts.
const LONGEST: f64 = 36_525.0;

pub(super) static CHECK: Check = Check { rules: &[], run };

fn run(acc: &mut Acc, checked: Checked) {
    for module in &checked.book.modules {
        for (name, facts) in module.facts.values.iter().filter(|(name, _)| name.span.file == module.file) {
            value(acc, name, facts);
        }
        for (_, life) in module.facts.life.iter() {
            interval(acc, &life.every);
        }
        for (_, facts) in module.facts.reading.iter() {
            reading(acc, module, facts);
        }
        for facts in &module.facts.load {
            load(acc, module, facts);
        }
    }
}

fn reading(acc: &mut Acc, module: &Module, facts: &ReadingFacts) {
    let Some(unit) = unit(acc, &facts.unit) else {
        return;
    };
    bound(acc, module, &facts.expect, &[unit.dimension], unit.symbol);
    if let Some(near) = &facts.near {
        plain(acc, near, &[unit.dimension, Dimension::Share], unit.symbol);
    }
}

fn load(acc: &mut Acc, module: &Module, facts: &Load) {
    let (dimensions, symbol): (&[Dimension], _) = match facts.from.value {
        Supply::Mains | Supply::TwelveVolt => (&[Dimension::Power, Dimension::Current], "W"),
        Supply::Lpg => (&[Dimension::MassFlow, Dimension::Power], "g/h"),
        Supply::Diesel => (&[Dimension::MassFlow, Dimension::VolumeFlow, Dimension::Power], "g/h"),
        Supply::Water => (&[Dimension::VolumeFlow], "l/day"),
    };
    bound(acc, module, &facts.draw, dimensions, symbol);
    if let Some(duty) = &facts.duty {
        plain(acc, duty, &[Dimension::Time], "h");
    }
}

fn value(acc: &mut Acc, name: &At<String>, facts: &ValueFacts) {
    let kinds = [facts.unit.is_some(), !facts.choices.is_empty(), facts.text];
    if kinds.iter().filter(|kind| **kind).count() != 1 {
        let found = Diagnostic::new(
            &rules::VALUE_FACTS,
            name.span,
            format!("`{}` is not one of a quantity, a choice and free words", name.value),
        );
        acc.add(found.help("give it exactly one of `unit`, `choices` and `text = true`"));
        return;
    }
    if let Some(symbol) = &facts.unit {
        let unit = unit(acc, symbol);
        range(acc, facts, unit);
    }
    for word in facts
        .silent
        .iter()
        .map(|word| (&*word.value.0, word.span))
        .chain(facts.words.iter().map(|(word, _)| (word.value.as_str(), word.span)))
    {
        if !facts.choices.iter().any(|choice| &*choice.value == word.0) {
            let found = Diagnostic::new(
                &rules::UNKNOWN_CHOICE,
                word.1,
                format!("`{}` is not a choice of `{}`", word.0, name.value),
            );
            acc.add(found.help(suggest::did_you_mean(word.0, facts.choices.iter().map(|choice| &*choice.value.0))));
        }
    }
    if let Some(default) = &facts.default {
        crate::resolve::value(acc, facts, &name.value, default);
    }
}

fn unit(acc: &mut Acc, symbol: &At<String>) -> Option<Unit> {
    let unit = Unit::find(symbol);
    if unit.is_none() {
        let found = Diagnostic::new(
            &rules::QUANTITY_FORM,
            symbol.span,
            format!("`{}` is not a unit that is known here", symbol.value),
        );
        acc.add(found.help(suggest::did_you_mean(symbol, UNITS.iter().map(|unit| unit.symbol))));
    }
    unit
}

fn range(acc: &mut Acc, facts: &ValueFacts, unit: Option<Unit>) {
    let (Some(text), Some(unit)) = (&facts.range, unit) else {
        return;
    };
    match QuantityRange::parse(text) {
        Ok(range) if range.unit.dimension == unit.dimension => {}
        Ok(_) => {
            let found = Diagnostic::new(
                &rules::VALUE_UNIT,
                text.span,
                format!("`{}` is not {}, which the value is", text.value, unit.dimension.name()),
            );
            acc.add(found.help(format!("give it in `{}`", unit.symbol)));
        }
        Err(error) => acc.add(Diagnostic::new(&rules::QUANTITY_FORM, text.span, error.to_string()).help(error.help())),
    }
}

fn interval(acc: &mut Acc, every: &At<String>) {
    let Some(quantity) = crate::resolve::parse_quantity(acc, every.span, every) else {
        return;
    };
    let calendar = matches!(quantity.unit.dimension, Dimension::Months | Dimension::Days);
    if !calendar || quantity.amount < 1.0 || quantity.amount.fract() != 0.0 || quantity.base() > LONGEST {
        let message = format!("`{}` is not an interval that parts are looked after in", every.value);
        let help = "give a whole number of days, weeks, months or years, up to a hundred years, as in `24 months`";
        acc.add(Diagnostic::new(&rules::VALUE_UNIT, every.span, message).help(help));
    }
}

/// A quantity, a range, or the name of a value or figure: of one of some dimensions.
fn bound(acc: &mut Acc, module: &Module, text: &At<String>, dimensions: &[Dimension], symbol: &str) {
    let facts = &module.facts;
    let known = facts.values.names().chain(facts.figures.names());
    let given = match (facts.values.get(text), facts.figures.get(text)) {
        (Some(value), _) => value.unit.as_ref().and_then(|unit| Unit::find(unit)),
        (None, Some(figure)) => match figures::find(&figure.calculation.value).map(|calculation| calculation.gives) {
            Some(Gives::Unit(symbol)) => Unit::find(symbol),
            // The unit of an input, or a calculation that is not there: said elsewhere.
            _ => return,
        },
        (None, None) => match (Quantity::parse(text), QuantityRange::parse(text)) {
            (Ok(quantity), _) => Some(quantity.unit),
            (_, Ok(range)) => Some(range.unit),
            (Err(error), _) if text.contains(|c: char| c.is_ascii_digit()) && !is_id(text) => {
                return acc
                    .add(Diagnostic::new(&rules::QUANTITY_FORM, text.span, error.to_string()).help(error.help()));
            }
            _ => {
                let message = format!("`{}` is no value or figure of this module, and no quantity", text.value);
                return acc.add(
                    Diagnostic::new(&rules::UNKNOWN_VALUE, text.span, message).help(suggest::did_you_mean(text, known)),
                );
            }
        },
    };
    kind(acc, text, given, dimensions, symbol);
}

/// A quantity of one of some dimensions.
fn plain(acc: &mut Acc, text: &At<String>, dimensions: &[Dimension], symbol: &str) {
    if let Some(quantity) = crate::resolve::parse_quantity(acc, text.span, text) {
        kind(acc, text, Some(quantity.unit), dimensions, symbol);
    }
}

fn kind(acc: &mut Acc, text: &At<String>, unit: Option<Unit>, dimensions: &[Dimension], symbol: &str) {
    if !unit.is_some_and(|unit| dimensions.contains(&unit.dimension)) {
        let asked: Vec<_> = dimensions.iter().map(|dimension| dimension.name()).collect();
        let message = format!("`{}` is not {}", text.value, asked.join(" or "));
        let found = Diagnostic::new(&rules::VALUE_UNIT, text.span, message);
        acc.add(found.help(format!("give it in `{symbol}`, or name a value of that kind")));
    }
}
