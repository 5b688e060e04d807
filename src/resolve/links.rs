//! Where the links of a fit's texts lead in its van.

use crate::diag::{Acc, Diagnostic, rules, suggest};
use crate::model::book::Book;
use crate::model::files::module::FigureFacts;
use crate::model::source::{At, Span};
use crate::model::text::{Target, Text};
use crate::model::van::{Bound, Fit, Van};
use std::collections::BTreeMap;

/// Slots that every guide has.
pub const GUIDE_SLOTS: [&str; 3] = ["dealer-name", "dealer-phone", "van-name"];

/// Binds all links of all fits; what leads nowhere is said.
pub fn bind(acc: &mut Acc, book: &Book, van: &mut Van) {
    let mut bound = Vec::with_capacity(van.fits.len());
    for number in 0..van.fits.len() {
        bound.push(Binder { acc, book, van, number }.fit());
    }
    for (fit, bound) in van.fits.iter_mut().zip(bound) {
        fit.bound = bound;
    }
}

struct Binder<'a> {
    acc: &'a mut Acc,
    book: &'a Book,
    van: &'a Van,
    number: usize,
}

impl Binder<'_> {
    fn own(&self) -> &Fit {
        &self.van.fits[self.number]
    }

    fn fit(&mut self) -> BTreeMap<(String, usize), Vec<Bound>> {
        let module = self.own().module;
        let mut out = BTreeMap::new();
        for language in &self.book.settings.languages {
            for origin in std::iter::once(module).chain(self.book.modules[module].includes.iter().copied()) {
                let text = self.book.text(origin, language);
                out.insert((language.clone(), origin), self.text(text, origin));
            }
        }
        out
    }

    fn text(&mut self, text: &Text, origin: usize) -> Vec<Bound> {
        let shows = self.shows(text, origin);
        for (slot, _) in text.refs.slots.iter().enumerate().filter(|(slot, _)| shows.slots[*slot]) {
            self.slot(&text.refs.slots[slot]);
        }
        let links = text.refs.links.iter().enumerate();
        links.map(|(number, link)| if shows.links[number] { self.link(link, origin) } else { Bound::Nowhere }).collect()
    }

    /// Which links and slots of a text stand where this van shows them.
    fn shows(&self, text: &Text, origin: usize) -> Shows {
        let mut shows = Shows { links: vec![true; text.refs.links.len()], slots: vec![true; text.refs.slots.len()] };
        let own = self.own();
        for (facts, shown) in self.book.modules[own.module].sections.iter().zip(&own.shown) {
            let section = text.sections.iter().find(|section| section.id.value == facts.id);
            if let (Some(section), false) = (section, *shown || facts.origin != origin) {
                shows.links[section.uses.links.clone()].fill(false);
                shows.slots[section.uses.slots.clone()].fill(false);
            }
        }
        shows
    }

    fn slot(&mut self, slot: &At<String>) {
        let own = self.own();
        let facts = &self.book.modules[own.module].facts;
        let said = own.unusable.contains(&slot.value)
            || facts.figures.get(&slot.value).is_some_and(|figure| self.is_said(figure));
        let known = GUIDE_SLOTS.contains(&slot.value.as_str())
            || own.values.contains_key(&slot.value)
            || own.figures.contains_key(&slot.value);
        let declared = facts.values.get(&slot.value).is_some() || facts.figures.get(&slot.value).is_some();
        if !known && declared && !said {
            let found = Diagnostic::new(
                &rules::MISSING_VALUE,
                slot.span,
                format!("`{}` is shown here, and `{}` does not give it", slot.value, own.name.value),
            );
            let other = own.name.span;
            self.acc.add(
                found
                    .other(other, "this fit")
                    .help("give the value in the manifest, or make it `required` or give it a `default` in the module")
                    .van(&self.van.name),
            );
        }
    }

    /// Whether a figure lacks something that has been said already: an unusable value, or something wrong with itself.
    fn is_said(&self, figure: &FigureFacts) -> bool {
        let own = self.own();
        let facts = &self.book.modules[own.module].facts;
        let optional = |name: &str| {
            facts.values.get(name).is_some() && !own.values.contains_key(name) && !own.unusable.contains(name)
        };
        !figure.with.iter().any(|(_, given)| optional(&given.value))
    }

    fn link(&mut self, link: &At<Target>, origin: usize) -> Bound {
        match &link.value {
            Target::Part(part, section) => self.part(link.span, part, section.as_deref()),
            Target::Place(role) => self.place(link.span, role),
            Target::Hazard(hazard) => Bound::Hazard(hazard.clone()),
            Target::Web(address) => Bound::Web(address.clone()),
            Target::File(file) => Bound::File(format!("content/{}/{file}", self.book.modules[origin].name)),
            Target::Unusable(_) => Bound::Nowhere,
        }
    }

    fn place(&mut self, span: Span, role: &str) -> Bound {
        if let Some(places) = self.own().places.get(role) {
            return Bound::Places(places.clone());
        }
        if self.book.modules[self.own().module].facts.places.get(role).is_some_and(|facts| !facts.required) {
            let message = format!("this text shows where `{role}` is, and `{}` does not say", self.own().name.value);
            let found = Diagnostic::new(&rules::MISSING_PLACE, span, message).other(self.own().name.span, "this fit");
            self.acc.add(found.help(format!("add `{role}` to the fit's `places`")).van(&self.van.name));
        }
        Bound::Nowhere
    }

    fn part(&mut self, span: Span, part: &str, section: Option<&str>) -> Bound {
        let fit = match part {
            "self" => Some(self.number),
            _ => self
                .van
                .providers
                .get(part)
                .copied()
                .or_else(|| self.van.fits.iter().position(|fit| fit.name.value == part)),
        };
        let Some(fit) = fit else {
            let found = Diagnostic::new(
                &rules::LINK_NOWHERE,
                span,
                format!("this link leads to `{part}`, which this van does not have"),
            );
            let help = format!(
                "put it in a section with `when = {{ fitted = \"{part}\" }}`, or fit a module that provides it"
            );
            self.acc.add(found.help(help).van(&self.van.name));
            return Bound::Nowhere;
        };
        match section {
            None => Bound::Fit(fit),
            Some(section) => self.section(span, fit, part, section),
        }
    }

    fn section(&mut self, span: Span, fit: usize, part: &str, name: &str) -> Bound {
        let target = &self.van.fits[fit];
        let module = &self.book.modules[target.module];
        let Some(number) = module.sections.iter().position(|section| section.id == name) else {
            if self.promised_nowhere(part, name) {
                return Bound::Nowhere;
            }
            let known = module.sections.iter().map(|section| section.id.as_str());
            let found =
                Diagnostic::new(&rules::LINK_NOWHERE, span, format!("`{}` has no section `{name}`", module.name));
            self.acc.add(found.help(suggest::did_you_mean(name, known)).van(&self.van.name));
            return Bound::Nowhere;
        };
        if !target.shown[number] {
            let found = Diagnostic::new(
                &rules::LINK_NOWHERE,
                span,
                format!("the section `{name}` of `{}` does not show in this van", target.name.value),
            );
            self.acc.add(
                found
                    .help("its `when` does not hold; link to another section, or give this one the same condition")
                    .van(&self.van.name),
            );
            return Bound::Nowhere;
        }
        Bound::Section(fit, number)
    }

    /// Whether no provider of a capability has the section: the check of names in texts says that, without a van.
    fn promised_nowhere(&self, part: &str, section: &str) -> bool {
        let Some(capability) = self.book.capabilities.0.get(part) else {
            return false;
        };
        let providers =
            self.book.modules.iter().filter(|module| module.facts.provides.iter().any(|own| &*own.value == part));
        !capability.sections.iter().any(|own| &*own.value == section)
            && !providers.flat_map(|module| &module.sections).any(|own| own.id == section)
    }
}

/// Which links and slots of a text show.
struct Shows {
    links: Vec<bool>,
    slots: Vec<bool>,
}
