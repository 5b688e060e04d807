//! The figures of a fit: calculations fed with its values.

use crate::diag::{Acc, Diagnostic, rules, suggest};
use crate::figures::{self, Calculation, FigureError, Gives, Input, Takes};
use crate::load::read::Map;
use crate::model::book::Module;
use crate::model::files::forms::Given;
use crate::model::files::module::FigureFacts;
use crate::model::quantity::{Quantity, Unit, round_significant};
use crate::model::source::{At, Span};
use crate::model::van::{Figure, Value};
use std::collections::BTreeMap;

/// All figures whose inputs are known. `given` is what the manifest says of the fit, which stands at `fit`.
pub fn figures(
    acc: &mut Acc,
    module: &Module,
    values: &BTreeMap<String, Value>,
    given: &Map<At<Given>>,
    fit: Span,
) -> BTreeMap<String, Figure> {
    let mut sums = Sums { acc, module, values, given, fit, done: BTreeMap::new(), open: Vec::new() };
    for (name, _) in module.facts.figures.iter() {
        sums.figure(&name.value);
    }
    sums.done
}

struct Sums<'a> {
    acc: &'a mut Acc,
    module: &'a Module,
    values: &'a BTreeMap<String, Value>,
    given: &'a Map<At<Given>>,
    fit: Span,
    done: BTreeMap<String, Figure>,
    /// Figures that wait for others, so that a circle is noticed.
    open: Vec<String>,
}

impl Sums<'_> {
    fn figure(&mut self, name: &str) -> Option<Quantity> {
        if let Some(done) = self.done.get(name) {
            return Some(done.result);
        }
        let (at, facts) = self.module.facts.figures.entry(name)?;
        if self.open.iter().any(|open| open == name) {
            self.form(
                at.span,
                format!("the figure `{name}` is worked out from itself"),
                "take one of its inputs from a value",
            );
            return None;
        }
        self.open.push(name.to_string());
        let figure = self.sum(facts);
        self.open.pop();
        let figure = figure?;
        let result = figure.result;
        self.done.insert(name.to_string(), figure);
        Some(result)
    }

    fn sum(&mut self, facts: &FigureFacts) -> Option<Figure> {
        let calculation = figures::find(&facts.calculation.value)?;
        let mut inputs = Vec::with_capacity(calculation.inputs.len());
        let mut unit_of = BTreeMap::new();
        for input in calculation.inputs {
            let given = facts.with.get(input.name)?;
            let (number, unit) = self.input(input, given)?;
            unit_of.insert(input.name, unit);
            inputs.push(number);
        }
        let unit = match calculation.gives {
            Gives::Unit(symbol) => Unit::find(symbol)?,
            Gives::UnitOf(input) => unit_of.get(input).copied().flatten()?,
        };
        match calculation.work_out(&inputs) {
            Ok(amount) => Some(Figure {
                result: Quantity { amount: round_significant(amount, calculation.digits), unit },
                calculation,
            }),
            Err(error) => {
                self.impossible(facts, &error);
                None
            }
        }
    }

    /// An input that cannot be: said where the manifest gives it, or else where the part is fitted.
    fn impossible(&mut self, facts: &FigureFacts, error: &FigureError) {
        let value = error.input.and_then(|input| facts.with.get(input)).map(|given| given.value.as_str());
        let at = value.and_then(|value| self.given.get(value)).map_or(self.fit, |given| given.span);
        let message = format!("`{}` cannot be worked out here: {error}", facts.calculation.value.0);
        let found = Diagnostic::new(&rules::FIGURE_IMPOSSIBLE, at, message);
        let help = match value.filter(|value| self.values.contains_key(*value)) {
            Some(value) => format!("look at the value `{value}` of this fit"),
            None => "look at the values of this fit".to_string(),
        };
        self.acc.add(found.other(facts.calculation.span, "the figure").help(help));
    }

    /// One input as a number in the unit that the calculation takes, or as the number of a word.
    fn input(&mut self, input: &Input, given: &At<String>) -> Option<(f64, Option<Unit>)> {
        match input.takes {
            Takes::Words(_) => {
                let word = match self.values.get(&given.value) {
                    Some(Value::Choice(word)) => word.clone(),
                    _ => given.value.clone(),
                };
                input.word(&word).map(|number| (number, None))
            }
            Takes::Unit(symbol) => {
                let unit = Unit::find(symbol)?;
                self.quantity(given)?.to(unit).map(|quantity| (quantity.amount, Some(unit)))
            }
            Takes::Any => self.quantity(given).map(|quantity| (quantity.amount, Some(quantity.unit))),
        }
    }

    fn quantity(&mut self, given: &At<String>) -> Option<Quantity> {
        match self.values.get(&given.value) {
            Some(Value::Quantity(quantity)) => Some(*quantity),
            Some(_) => None,
            None if self.module.facts.figures.get(&given.value).is_some() => self.figure(&given.value),
            None => Quantity::parse(&given.value).ok(),
        }
    }

    fn form(&mut self, span: Span, message: String, help: &str) {
        self.acc.add(Diagnostic::new(&rules::FIGURE_FORM, span, message).help(help));
    }
}

/// Says what is wrong with the figures of a module, whatever van it is fitted in.
pub fn check(acc: &mut Acc, module: &Module) {
    for (_, facts) in module.facts.figures.iter() {
        match figures::find(&facts.calculation.value) {
            Some(calculation) => inputs(acc, module, facts, calculation),
            None => {
                let known = figures::CALCULATIONS.iter().map(|calculation| calculation.name);
                let found = Diagnostic::new(
                    &rules::UNKNOWN_CALCULATION,
                    facts.calculation.span,
                    format!("there is no calculation `{}`", facts.calculation.value.0),
                );
                acc.add(found.help(suggest::did_you_mean(&facts.calculation.value, known)));
            }
        }
    }
}

fn inputs(acc: &mut Acc, module: &Module, facts: &FigureFacts, calculation: &Calculation) {
    let known = calculation.inputs.iter().map(|input| input.name);
    for (name, _) in facts.with.iter().filter(|(name, _)| !known.clone().any(|input| input == name.value)) {
        let found = Diagnostic::new(
            &rules::FIGURE_FORM,
            name.span,
            format!("`{}` has no input `{}`", calculation.name, name.value),
        );
        acc.add(found.help(suggest::did_you_mean(name, known.clone())));
    }
    for input in calculation.inputs {
        match facts.with.get(input.name) {
            Some(given) => binding(acc, module, input, given),
            None => {
                let found = Diagnostic::new(
                    &rules::FIGURE_FORM,
                    facts.calculation.span,
                    format!("`{}` needs the input `{}`", calculation.name, input.name),
                );
                acc.add(found.help(format!("add it to `with`, as in `{} = …`", input.name)));
            }
        }
    }
}

fn binding(acc: &mut Acc, module: &Module, input: &Input, given: &At<String>) {
    let wrong = match (input.takes, module.facts.values.get(&given.value)) {
        (Takes::Words(words), Some(facts)) => {
            let unknown = facts.choices.iter().find(|choice| !words.contains(&&*choice.value.0));
            unknown.map(|choice| {
                format!("`{}` can be `{}`, which this calculation does not know", given.value, choice.value.0)
            })
        }
        (Takes::Words(words), None) => (!words.contains(&given.value.as_str()))
            .then(|| format!("`{}` is none of the words of `{}`", given.value, input.name)),
        (kind, Some(facts)) => {
            let unit = facts.unit.as_ref().and_then(|unit| Unit::find(unit));
            (!fits(kind, unit))
                .then(|| format!("`{}` has not the kind of unit that `{}` takes", given.value, input.name))
        }
        (kind, None) => match module.facts.figures.get(&given.value) {
            Some(other) => {
                let gives = figures::find(&other.calculation.value).map(|calculation| calculation.gives);
                let wrong = matches!(gives, Some(Gives::Unit(symbol)) if !fits(kind, Unit::find(symbol)));
                wrong.then(|| format!("`{}` has not the kind of unit that `{}` takes", given.value, input.name))
            }
            None => match Quantity::parse(&given.value) {
                Ok(quantity) => (!fits(kind, Some(quantity.unit)))
                    .then(|| format!("`{}` has not the kind of unit that `{}` takes", given.value, input.name)),
                Err(_) => Some(format!("`{}` is no value or figure of this module, and no quantity", given.value)),
            },
        },
    };
    if let Some(message) = wrong {
        acc.add(Diagnostic::new(&rules::FIGURE_FORM, given.span, message).help(asked(module, input)));
    }
}

fn asked(module: &Module, input: &Input) -> String {
    match input.takes {
        Takes::Words(words) => suggest::one_of(words.iter().copied()),
        Takes::Unit(symbol) => format!(
            "name a value or figure in `{symbol}`, or write a quantity; {}",
            suggest::one_of(module.facts.values.names())
        ),
        Takes::Any => suggest::one_of(module.facts.values.names()),
    }
}

fn fits(kind: Takes, unit: Option<Unit>) -> bool {
    match (kind, unit) {
        (Takes::Unit(symbol), Some(unit)) => Unit::find(symbol).is_some_and(|asked| asked.dimension == unit.dimension),
        (Takes::Any, Some(_)) => true,
        _ => false,
    }
}
