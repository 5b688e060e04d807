//! Which fit answers for each capability.

use crate::diag::{Acc, Diagnostic, rules, suggest};
use crate::model::book::{Book, Model, VanSource};
use crate::model::files::forms::Id;
use crate::model::source::At;
use crate::model::van::Van;
use std::collections::BTreeMap;

/// For each capability that is provided, the fit that answers for it.
pub fn providers(acc: &mut Acc, book: &Book, model: &Model, source: &VanSource, van: &Van) -> BTreeMap<String, usize> {
    let mut providing: BTreeMap<&str, Vec<usize>> = BTreeMap::new();
    for (number, fit) in van.fits.iter().enumerate() {
        for capability in &book.modules[fit.module].facts.provides {
            providing.entry(&capability.value.0).or_default().push(number);
        }
    }
    unknown_choices(acc, source, &providing);
    undeclared(acc, book, model);
    let mut out = BTreeMap::new();
    for (capability, fits) in providing {
        let chosen = source.facts.choose.get(capability).or(model.facts.choose.get(capability));
        let number = match (fits.as_slice(), chosen) {
            ([only], None) => *only,
            (_, Some(name)) => match fits.iter().find(|number| van.fits[**number].name.value == name.value.0) {
                Some(number) => *number,
                None => {
                    not_providing(acc, van, name, capability, &fits);
                    fits[0]
                }
            },
            _ => {
                ambiguous(acc, van, capability, &fits);
                fits[0]
            }
        };
        out.insert(capability.to_string(), number);
    }
    out
}

/// A choice for a capability that nothing here provides: the slip is in the van's own table.
fn unknown_choices(acc: &mut Acc, source: &VanSource, providing: &BTreeMap<&str, Vec<usize>>) {
    let own = &source.facts.choose;
    for (capability, _) in own.iter().filter(|(capability, _)| !providing.contains_key(capability.value.as_str())) {
        let found = Diagnostic::new(
            &rules::UNKNOWN_CAPABILITY,
            capability.span,
            format!("no fit of this van provides `{}`", capability.value),
        );
        acc.add(found.help(suggest::did_you_mean(&capability.value, providing.keys().copied())));
    }
}

/// A model serves several vans, so what one of them lacks is no slip; a capability that is declared nowhere is.
fn undeclared(acc: &mut Acc, book: &Book, model: &Model) {
    let known = &book.capabilities.0;
    for (capability, _) in model.facts.choose.iter().filter(|(capability, _)| known.get(&capability.value).is_none()) {
        let message = format!("`{}` is not a capability", capability.value);
        let found = Diagnostic::new(&rules::UNKNOWN_CAPABILITY, capability.span, message);
        acc.add(found.help(suggest::did_you_mean(&capability.value, known.names())));
    }
}

fn not_providing(acc: &mut Acc, van: &Van, name: &At<Id>, capability: &str, fits: &[usize]) {
    let known = fits.iter().map(|number| van.fits[*number].name.value.as_str());
    let found = Diagnostic::new(
        &rules::UNKNOWN_FIT,
        name.span,
        format!("`{}` is no fit of this van that provides `{capability}`", name.value.0),
    );
    acc.add(found.help(suggest::did_you_mean(&name.value, known)).van(&van.name));
}

fn ambiguous(acc: &mut Acc, van: &Van, capability: &str, fits: &[usize]) {
    let names: Vec<_> = fits.iter().map(|number| &van.fits[*number].name).collect();
    let list = suggest::list(&names.iter().map(|name| &name.value).collect::<Vec<_>>());
    let found =
        Diagnostic::new(&rules::AMBIGUOUS_CAPABILITY, names[1].span, format!("{list} all provide `{capability}`"));
    let help =
        format!("say which one answers for it: `[choose]` and `{capability} = \"{}\"`, or remove one", names[0].value);
    acc.add(found.other(names[0].span, "the first one").help(help).van(&van.name));
}
