//! What a manifest records of one van: readings, waivers and a technician's words.

use super::photos;
use super::values::parse_quantity;
use crate::diag::{Acc, Diagnostic, rules, suggest};
use crate::model::book::{Book, VanSource};
use crate::model::files::forms::Code;
use crate::model::files::vehicle::Tip as TipFacts;
use crate::model::quantity::Unit;
use crate::model::source::At;
use crate::model::van::{Reading, Tip, Van, Waiver};

/// Works the manifest's records into the van.
pub fn records(acc: &mut Acc, book: &Book, source: &VanSource, van: &mut Van) {
    readings(acc, book, source, van);
    waivers(acc, book, source, van);
    for tip in &source.facts.tip {
        van.tips.extend(self::tip(acc, van, tip));
    }
    photos::photos(acc, book, source, van);
}

pub(super) fn fit_number(acc: &mut Acc, van: &Van, name: &str, span: crate::model::source::Span) -> Option<usize> {
    let number = van.fits.iter().position(|fit| fit.name.value == name);
    if number.is_none() {
        let known = van.fits.iter().map(|fit| fit.name.value.as_str());
        acc.add(
            Diagnostic::new(&rules::UNKNOWN_FIT, span, format!("this van has no fit `{name}`"))
                .help(suggest::did_you_mean(name, known)),
        );
    }
    number
}

pub(super) fn unknown_part<'a>(
    acc: &mut Acc,
    kind: &str,
    module: &str,
    name: &At<crate::model::files::forms::Id>,
    known: impl IntoIterator<Item = &'a str> + Clone,
) {
    let found =
        Diagnostic::new(&rules::UNKNOWN_PART, name.span, format!("`{module}` has no {kind} `{}`", name.value.0));
    let help = "if another part was put in, what was recorded of the old one goes out of the manifest with it";
    acc.add(found.help(suggest::did_you_mean(&name.value, known)).help(help));
}

fn readings(acc: &mut Acc, book: &Book, source: &VanSource, van: &mut Van) {
    for reading in &source.facts.reading {
        let Some(fit) = fit_number(acc, van, &reading.fit.value, reading.fit.span) else {
            continue;
        };
        let module = &book.modules[van.fits[fit].module];
        let Some(facts) = module.facts.reading.get(&reading.name.value) else {
            unknown_part(acc, "reading", &module.name, &reading.name, module.facts.reading.names());
            continue;
        };
        let Some((value, unit)) = parse_quantity(acc, reading.value.span, &reading.value).zip(Unit::find(&facts.unit))
        else {
            continue;
        };
        match value.to(unit) {
            Some(value) => {
                let (name, span) = (reading.name.value.0.clone(), reading.value.span);
                van.readings.push(Reading { fit, name, value, span, on: reading.on.value })
            }
            None => {
                let found = Diagnostic::new(
                    &rules::VALUE_UNIT,
                    reading.value.span,
                    format!("`{}` is not {}", reading.value.value, unit.dimension.name()),
                );
                acc.add(found.help(format!("give it in `{}`", unit.symbol)));
            }
        }
    }
}

fn waivers(acc: &mut Acc, book: &Book, source: &VanSource, van: &mut Van) {
    for waiver in &source.facts.waiver {
        let fit = fit_number(acc, van, &waiver.fit.value, waiver.fit.span);
        let hazards = &book.hazards.0;
        if hazards.get(&waiver.hazard.value).is_none() {
            let found = Diagnostic::new(
                &rules::UNKNOWN_HAZARD,
                waiver.hazard.span,
                format!("`{}` is not a hazard", waiver.hazard.value.0),
            );
            acc.add(found.help(suggest::did_you_mean(&waiver.hazard.value, hazards.names())));
        } else if fit.is_some() {
            let (fit, hazard) = (waiver.fit.value.0.clone(), waiver.hazard.value.0.clone());
            van.waivers.push(Waiver {
                fit,
                hazard,
                reason: waiver.reason.clone(),
                until: waiver.until.value,
                span: waiver.until.span,
            });
        }
    }
}

pub(super) fn place_number(acc: &mut Acc, van: &Van, code: &At<Code>) -> Option<usize> {
    let number = van.places.iter().position(|place| place.code.value == code.value);
    if number.is_none() {
        let known = van.places.iter().map(|place| place.code.value.0.as_str());
        acc.add(
            Diagnostic::new(&rules::UNKNOWN_PLACE, code.span, format!("there is no place `{}`", code.value.0))
                .help(suggest::did_you_mean(&code.value, known)),
        );
    }
    number
}

fn tip(acc: &mut Acc, van: &Van, tip: &TipFacts) -> Option<Tip> {
    let fit = tip.fit.as_ref().map(|fit| fit_number(acc, van, &fit.value, fit.span));
    let place = tip.place.as_ref().map(|code| place_number(acc, van, code));
    if fit.is_some() == place.is_some() {
        let found = Diagnostic::new(&rules::WRONG_FORM, tip.says.span, "a tip is about one fit or one place");
        acc.add(found.help("give it `fit = \"…\"` or `place = \"…\"`, not both"));
        return None;
    }
    Some(Tip { fit: fit.flatten(), place: place.flatten(), says: tip.says.value.clone() })
}
