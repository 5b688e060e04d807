//! The fits of a van: the model's, without what it lacks, with what is different, and its own.

use super::{figures, values};
use crate::diag::{Acc, Diagnostic, rules, suggest};
use crate::load::read::{Map, OneOrMany};
use crate::model::book::{Book, Model, Module, VanSource};
use crate::model::files::forms::{Code, ModuleName};
use crate::model::files::vehicle::{Change, FitFacts};
use crate::model::source::{At, Span};
use crate::model::van::{Fit, Place};
use std::collections::BTreeMap;

/// All fits of one van. Places at which a fit asks for a label become labelled.
pub fn fits(acc: &mut Acc, book: &Book, model: &Model, source: &VanSource, places: &mut [Place]) -> Vec<Fit> {
    unknown_names(acc, model, source);
    let mut fits: Vec<Fit> = Vec::new();
    for facts in wanted(model, source, book) {
        if let Some(twin) = fits.iter().find(|fit| fit.name.value == facts.as_.value.0) {
            let found = Diagnostic::new(
                &rules::DUPLICATE_FIT,
                facts.as_.span,
                format!("`{}` is the name of two fits", facts.as_.value.0),
            );
            acc.add(found.other(twin.name.span, "the first one").help("give one of them another name"));
            continue;
        }
        fits.extend(fit(acc, book, &facts, places));
    }
    fits
}

fn unknown_names(acc: &mut Acc, model: &Model, source: &VanSource) {
    let known = model.facts.fit.iter().map(|fit| &*fit.as_.value.0);
    let removed = source.facts.remove.iter().map(|name| (name.value.0.as_str(), name.span));
    let changed = source.facts.change.iter().map(|(name, _)| (name.value.as_str(), name.span));
    for (name, span) in removed.chain(changed) {
        if !known.clone().any(|fit| fit == name) {
            let found = Diagnostic::new(&rules::UNKNOWN_FIT, span, format!("the model has no fit `{name}`"));
            acc.add(found.help(suggest::did_you_mean(name, known.clone())));
        }
    }
    for removed in &source.facts.remove {
        if let Some((changed, _)) = source.facts.change.entry(&removed.value) {
            let message = format!("`{}` is removed, and so cannot be changed", changed.value);
            let found = Diagnostic::new(&rules::UNKNOWN_FIT, changed.span, message).other(removed.span, "removed here");
            acc.add(found.help(
                "keep one of the two; to fit another part in its place, give `change` a `module` and do not remove it",
            ));
        }
    }
}

fn wanted(model: &Model, source: &VanSource, book: &Book) -> Vec<FitFacts> {
    let kept = model.facts.fit.iter().filter(|fit| !source.facts.remove.iter().any(|name| name.value == fit.as_.value));
    let changed = kept.map(|fit| match source.facts.change.entry(&fit.as_.value) {
        Some((name, change)) => change_fit(book, fit, name.span, change),
        None => fit.clone(),
    });
    changed.chain(source.facts.add.iter().cloned()).collect()
}

/// With another module the values start afresh, and places carry over where it has the same role.
fn change_fit(book: &Book, fit: &FitFacts, at: Span, change: &Change) -> FitFacts {
    let mut out = fit.clone();
    if let Some(module) = change.module.as_ref().filter(|module| module.value != fit.module.value) {
        out.module = module.clone();
        out.as_.span = at;
        out.values = Map::default();
        let roles = book.module_number(&module.value).map(|number| &book.modules[number].facts.places);
        out.places.0.retain(|(role, _)| roles.is_some_and(|roles| roles.get(role).is_some()));
    }
    overlay(&mut out.values, &change.values);
    overlay(&mut out.places, &change.places);
    out
}

fn overlay<T: Clone>(base: &mut Map<T>, own: &Map<T>) {
    base.0.retain(|(key, _)| own.get(&key.value).is_none());
    base.0.extend(own.0.iter().cloned());
}

fn fit(acc: &mut Acc, book: &Book, facts: &FitFacts, places: &mut [Place]) -> Option<Fit> {
    reserved(acc, facts, places);
    let number = module(acc, book, &facts.module)?;
    let module = &book.modules[number];
    let facts_given = &facts.values;
    let values = values::values(acc, module, &facts.values, facts.as_.span);
    let wanted = module
        .facts
        .values
        .iter()
        .filter(|(name, facts)| facts.required || facts.default.is_some() || facts_given.get(name).is_some());
    let unusable = wanted.map(|(name, _)| name.value.clone()).filter(|name| !values.contains_key(name)).collect();
    let figures = figures::figures(acc, module, &values, &facts.values, facts.as_.span);
    Some(Fit {
        name: At::new(facts.as_.value.0.clone(), facts.as_.span),
        module: number,
        values,
        given: facts.values.iter().map(|(name, text)| (name.value.clone(), text.span)).collect(),
        unusable,
        figures,
        places: roles(acc, module, facts, places),
        shown: vec![],
        bound: BTreeMap::new(),
        dates: vec![],
    })
}

fn reserved(acc: &mut Acc, facts: &FitFacts, places: &[Place]) {
    let name = &facts.as_.value.0;
    if let Some(place) = places.iter().find(|place| place.code.value.eq_ignore_ascii_case(name)) {
        let found = Diagnostic::new(
            &rules::RESERVED_NAME,
            facts.as_.span,
            format!("`{name}` differs from the code of a place only by capitals"),
        );
        acc.add(found.other(place.code.span, "the place").help("give the fit a name such as `gas-locker`"));
    }
}

fn module(acc: &mut Acc, book: &Book, name: &At<ModuleName>) -> Option<usize> {
    let number = book.module_number(&name.value).filter(|number| book.modules[*number].system.is_some());
    if number.is_none() {
        let known = book.modules.iter().filter(|module| module.system.is_some()).map(|module| module.name.as_str());
        let message = match name.value.starts_with("shared/") {
            true => format!("`{}` is a shared module, which is never fitted itself", name.value.0),
            false => format!("there is no module `{}`", name.value.0),
        };
        acc.add(
            Diagnostic::new(&rules::UNKNOWN_MODULE, name.span, message).help(suggest::did_you_mean(&name.value, known)),
        );
    }
    number
}

fn roles(acc: &mut Acc, module: &Module, facts: &FitFacts, places: &mut [Place]) -> BTreeMap<String, Vec<usize>> {
    let mut roles = BTreeMap::new();
    for (role, codes) in facts.places.iter() {
        let Some(known) = module.facts.places.get(role) else {
            let found = Diagnostic::new(
                &rules::UNKNOWN_PLACE,
                role.span,
                format!("`{}` has no role `{}`", module.name, role.value),
            );
            acc.add(found.help(suggest::did_you_mean(role, module.facts.places.names())));
            continue;
        };
        if let Some(second) = codes.get(1).filter(|_| !known.many) {
            let found = Diagnostic::new(
                &rules::UNKNOWN_PLACE,
                second.span,
                format!("the role `{}` of `{}` is at one place only", role.value, module.name),
            );
            acc.add(found.help("name one code, or set `many = true` for the role in the module"));
        }
        if codes.is_empty() && known.required {
            let message = format!("`{}` is given no place, and `{}` asks for one", role.value, module.name);
            let found = Diagnostic::new(&rules::MISSING_PLACE, role.span, message);
            acc.add(found.help("name the code of a place, as in `\"G1\"`"));
        }
        let numbers = numbers(acc, codes, places);
        for number in &numbers {
            places[*number].labelled |= known.labelled;
        }
        roles.insert(role.value.clone(), numbers);
    }
    for (role, _) in
        module.facts.places.iter().filter(|(role, known)| known.required && !roles.contains_key(&role.value))
    {
        let found = Diagnostic::new(
            &rules::MISSING_PLACE,
            facts.as_.span,
            format!("`{}` is fitted, and nothing says where its `{}` is", facts.as_.value.0, role.value),
        );
        acc.add(
            found
                .other(role.span, "its module asks for it")
                .help(format!("add `places = {{ {} = \"…\" }}` with the code of a place", role.value)),
        );
    }
    roles
}

fn numbers(acc: &mut Acc, codes: &OneOrMany<At<Code>>, places: &[Place]) -> Vec<usize> {
    let mut numbers = Vec::new();
    for code in codes.iter() {
        match places.iter().position(|place| place.code.value == code.value) {
            Some(number) => numbers.push(number),
            None => {
                let known = places.iter().map(|place| place.code.value.0.as_str());
                let found =
                    Diagnostic::new(&rules::UNKNOWN_PLACE, code.span, format!("there is no place `{}`", code.value.0));
                acc.add(
                    found
                        .help(suggest::did_you_mean(&code.value.0, known))
                        .help("or describe it in a `[[place]]` table"),
                );
            }
        }
    }
    numbers
}
