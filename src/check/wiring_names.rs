//! Names in the wiring of sections, and in what implies hazards.

use super::possible::words_of;
use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, rules, suggest};
use crate::model::book::Module;
use crate::model::files::content::Implication;
use crate::model::files::forms::{Condition, Id, SectionName};
use crate::model::files::module::Wiring;
use crate::model::quantity::{Quantity, Unit};
use crate::model::source::At;

pub(super) static CHECK: Check = Check { rules: &[], run };

fn run(acc: &mut Acc, checked: Checked) {
    for module in &checked.book.modules {
        for (_, wiring) in module.facts.section.iter() {
            self::wiring(acc, checked, module, wiring);
        }
        for when in module.facts.load.iter().filter_map(|load| load.when.as_ref()) {
            condition(acc, checked, module, when);
        }
    }
    for (_, hazard) in checked.book.hazards.0.iter() {
        hazard.implied_by.iter().for_each(|implied| implication(acc, implied));
        for capability in hazard.implied_by.iter().filter_map(|implied| implied.provides.as_ref()) {
            self::capability(acc, checked, capability);
        }
    }
}

fn implication(acc: &mut Acc, implied: &At<Implication>) {
    let kinds = [implied.trait_.is_some(), implied.load.is_some(), implied.provides.is_some(), implied.place.is_some()];
    let one = kinds.iter().filter(|there| **there).count() == 1;
    if !one || implied.trait_.is_some() == implied.is.is_empty() {
        let found = Diagnostic::new(&rules::WRONG_FORM, implied.span, "this is not one fact that implies a hazard");
        acc.add(
            found.help("write one of `{ trait = …, is = [ … ] }`, `{ load = … }`, `{ provides = … }`, `{ place = … }`"),
        );
    }
}

fn wiring(acc: &mut Acc, checked: Checked, module: &Module, wiring: &Wiring) {
    for role in wiring.at.iter().filter(|role| module.facts.places.get(&role.value).is_none()) {
        let found = Diagnostic::new(
            &rules::UNKNOWN_PLACE,
            role.span,
            format!("`{}` has no role `{}`", module.name, role.value.0),
        );
        acc.add(found.help(suggest::did_you_mean(&role.value, module.facts.places.names())));
    }
    for routine in
        wiring.routine.iter().filter(|routine| !checked.book.routines.iter().any(|known| known.name == routine.value.0))
    {
        let known = checked.book.routines.iter().map(|routine| routine.name.as_str());
        let found = Diagnostic::new(
            &rules::UNKNOWN_ROUTINE,
            routine.span,
            format!("there is no routine `{}`", routine.value.0),
        );
        acc.add(found.help(suggest::did_you_mean(&routine.value, known)));
    }
    let hazards = &checked.book.hazards.0;
    for hazard in wiring.exposes.iter().chain(wiring.warns.iter()).filter(|hazard| hazards.get(&hazard.value).is_none())
    {
        let found =
            Diagnostic::new(&rules::UNKNOWN_HAZARD, hazard.span, format!("`{}` is not a hazard", hazard.value.0));
        acc.add(found.help(suggest::did_you_mean(&hazard.value, hazards.names())));
    }
    wiring.needs.iter().for_each(|need| self::need(acc, checked, module, need));
    if let Some(when) = &wiring.when {
        condition(acc, checked, module, when);
    }
}

fn need(acc: &mut Acc, checked: Checked, module: &Module, need: &At<SectionName>) {
    let (part, section) = need.value.split_once('#').unwrap_or_default();
    let unknown = |known: Vec<&str>, acc: &mut Acc| {
        let found = Diagnostic::new(&rules::UNKNOWN_SECTION, need.span, format!("`{part}` has no section `{section}`"));
        acc.add(found.help(suggest::did_you_mean(section, known.iter().copied())));
    };
    if part == "self" {
        if !module.sections.iter().any(|own| own.id == section) && module.system.is_some() {
            unknown(module.sections.iter().map(|own| own.id.as_str()).collect(), acc);
        }
        return;
    }
    let capabilities = &checked.book.capabilities.0;
    match capabilities.get(part) {
        Some(capability) if capability.sections.iter().any(|own| &*own.value == section) => {}
        Some(capability) => unknown(capability.sections.iter().map(|own| &*own.value.0).collect(), acc),
        None => {
            let found = Diagnostic::new(&rules::UNKNOWN_CAPABILITY, need.span, format!("`{part}` is not a capability"));
            acc.add(found.help(suggest::did_you_mean(part, capabilities.names())));
        }
    }
}

fn capability(acc: &mut Acc, checked: Checked, name: &At<Id>) {
    let capabilities = &checked.book.capabilities.0;
    if capabilities.get(&name.value).is_none() {
        let found =
            Diagnostic::new(&rules::UNKNOWN_CAPABILITY, name.span, format!("`{}` is not a capability", name.value.0));
        acc.add(found.help(suggest::did_you_mean(&name.value, capabilities.names())));
    }
}

fn condition(acc: &mut Acc, checked: Checked, module: &Module, when: &Condition) {
    match when {
        Condition::ValueIs(value, words) => {
            if let Some(facts) = value_facts(acc, module, value) {
                let choices = facts.choices.iter().map(|choice| &*choice.value.0);
                words.iter().for_each(|word| choice(acc, word, &value.value, choices.clone(), !facts.text));
            }
        }
        Condition::ValueWithin { value, at_least, at_most } => {
            if let Some(facts) = value_facts(acc, module, value) {
                let unit = facts.unit.as_ref().and_then(|unit| Unit::find(unit));
                [at_least, at_most].into_iter().flatten().for_each(|bound| self::bound(acc, bound, unit));
            }
        }
        Condition::Fitted(name) => capability(acc, checked, name),
        Condition::Van(fact, words) => {
            let known = words_of(fact.value);
            words.iter().for_each(|word| choice(acc, word, fact.value.word(), known.iter().copied(), true));
        }
        Condition::All(all) | Condition::Any(all) => all.iter().for_each(|one| condition(acc, checked, module, one)),
        Condition::Not(not) => condition(acc, checked, module, not),
    }
}

fn value_facts<'a>(
    acc: &mut Acc,
    module: &'a Module,
    value: &At<Id>,
) -> Option<&'a crate::model::files::module::ValueFacts> {
    let facts = module.facts.values.get(&value.value);
    if facts.is_none() {
        let found = Diagnostic::new(
            &rules::UNKNOWN_VALUE,
            value.span,
            format!("`{}` has no value `{}`", module.name, value.value.0),
        );
        acc.add(found.help(suggest::did_you_mean(&value.value, module.facts.values.names())));
    }
    facts
}

fn choice<'a>(acc: &mut Acc, word: &At<String>, of: &str, known: impl Iterator<Item = &'a str> + Clone, closed: bool) {
    if closed && !known.clone().any(|one| one == word.value) {
        let found =
            Diagnostic::new(&rules::UNKNOWN_CHOICE, word.span, format!("`{}` is not a choice of `{of}`", word.value));
        acc.add(found.help(suggest::did_you_mean(word, known)));
    }
}

fn bound(acc: &mut Acc, bound: &At<String>, unit: Option<Unit>) {
    match Quantity::parse(bound) {
        Ok(quantity) if unit.is_some_and(|unit| unit.dimension == quantity.unit.dimension) => {}
        Ok(_) => {
            let found = Diagnostic::new(
                &rules::VALUE_UNIT,
                bound.span,
                format!("`{}` has not the kind of unit of the value", bound.value),
            );
            acc.add(found.help(unit.map_or("the value is no quantity: use `is`".to_string(), |unit| {
                format!("give it in `{}`", unit.symbol)
            })));
        }
        Err(error) => acc.add(Diagnostic::new(&rules::QUANTITY_FORM, bound.span, error.to_string()).help(error.help())),
    }
}
