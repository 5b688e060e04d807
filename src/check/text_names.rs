//! Names in texts: capabilities, sections, roles, hazards, slots.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, rules, suggest};
use crate::model::book::Module;
use crate::model::source::{At, Span};
use crate::model::text::{Target, Text};
use crate::resolve::GUIDE_SLOTS;

pub(super) static CHECK: Check = Check { rules: &[], run };

fn run(acc: &mut Acc, checked: Checked) {
    for module in &checked.book.modules {
        for text in module.texts.values() {
            links(acc, checked, module, text);
        }
        // A shared text is read with the values of each module that includes it.
        if module.system.is_some() {
            for origin in module.includes.iter().map(|number| &checked.book.modules[*number]).chain([module]) {
                origin.texts.values().for_each(|text| slots(acc, module, text));
            }
        }
    }
    for text in
        checked.book.routines.iter().flat_map(|routine| routine.texts.values()).chain(checked.book.emergency.values())
    {
        standing_alone(acc, checked, text);
    }
}

fn links(acc: &mut Acc, checked: Checked, module: &Module, text: &Text) {
    for link in &text.refs.links {
        match &link.value {
            Target::Part(part, section) if part != "self" => {
                self::part(acc, checked, link.span, part, section.as_deref())
            }
            Target::Place(role) if module.facts.places.get(role).is_none() && module.system.is_some() => {
                let found = Diagnostic::new(
                    &rules::UNKNOWN_PLACE,
                    link.span,
                    format!("`{}` has no role `{role}`", module.name),
                );
                acc.add(found.help(suggest::did_you_mean(role, module.facts.places.names())));
            }
            Target::Hazard(name) => hazard(acc, checked, link.span, name),
            _ => {}
        }
    }
}

fn part(acc: &mut Acc, checked: Checked, span: Span, part: &str, section: Option<&str>) {
    let capabilities = &checked.book.capabilities.0;
    let fits = checked.vans.iter().flat_map(|van| &van.fits);
    match capabilities.get(part) {
        Some(capability) => {
            let promised = section.is_none_or(|section| capability.sections.iter().any(|own| &*own.value == section));
            let provided = || {
                checked.book.modules.iter().any(|module| {
                    module.facts.provides.iter().any(|own| &*own.value == part)
                        && module.sections.iter().any(|own| Some(own.id.as_str()) == section)
                })
            };
            if !promised && !provided() {
                let section = section.unwrap_or_default();
                let found = Diagnostic::new(
                    &rules::UNKNOWN_SECTION,
                    span,
                    format!("no module that provides `{part}` has a section `{section}`"),
                );
                acc.add(
                    found.help(suggest::did_you_mean(section, capability.sections.iter().map(|own| &*own.value.0))),
                );
            }
        }
        None if fits.clone().any(|fit| fit.name.value == part) => {}
        None => {
            let found = Diagnostic::new(
                &rules::UNKNOWN_CAPABILITY,
                span,
                format!("`{part}` is no capability, and no van has a fit of that name"),
            );
            acc.add(found.help(suggest::did_you_mean(part, capabilities.names())));
        }
    }
}

fn hazard(acc: &mut Acc, checked: Checked, span: Span, name: &str) {
    let hazards = &checked.book.hazards.0;
    if hazards.get(name).is_none() {
        acc.add(
            Diagnostic::new(&rules::UNKNOWN_HAZARD, span, format!("`{name}` is not a hazard"))
                .help(suggest::did_you_mean(name, hazards.names())),
        );
    }
}

fn slots(acc: &mut Acc, module: &Module, text: &Text) {
    let known = module.facts.values.names().chain(module.facts.figures.names()).chain(GUIDE_SLOTS);
    for slot in &text.refs.slots {
        unknown_slot(acc, slot, known.clone());
    }
}

fn unknown_slot<'a>(acc: &mut Acc, slot: &At<String>, known: impl Iterator<Item = &'a str> + Clone) {
    if !known.clone().any(|name| name == slot.value) {
        let found =
            Diagnostic::new(&rules::UNKNOWN_SLOT, slot.span, format!("`{}` is no value or figure here", slot.value));
        acc.add(found.help(suggest::did_you_mean(&slot.value, known)));
    }
}

/// Routines and the emergency page belong to no part: they have no places and no values.
fn standing_alone(acc: &mut Acc, checked: Checked, text: &Text) {
    for slot in &text.refs.slots {
        unknown_slot(acc, slot, GUIDE_SLOTS.into_iter());
    }
    let inside = |picture: &&At<String>| !crate::load::text::leaves_folder(picture) && !picture.contains(':');
    for picture in text.refs.pictures.iter().filter(inside) {
        let found = Diagnostic::new(
            &rules::MISSING_FILE,
            picture.span,
            "this text belongs to no part, so it has no folder of pictures",
        );
        acc.add(found.help("put the picture into the text of the part that it shows"));
    }
    for link in &text.refs.links {
        match &link.value {
            Target::Part(..) | Target::Place(_) | Target::File(_) => {
                let found = Diagnostic::new(
                    &rules::LINK_FORM,
                    link.span,
                    "this text belongs to no part, so it cannot link to one",
                );
                acc.add(found.help("leave the link out: each routine lists the parts that contribute to it"));
            }
            Target::Hazard(name) => hazard(acc, checked, link.span, name),
            Target::Web(_) | Target::Unusable(_) => {}
        }
    }
}
