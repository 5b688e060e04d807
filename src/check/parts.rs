//! The parts of a van, as rules about combinations ask for them: by capability, by trait and by the names of values.
//!
//! No rule knows a module by its name. The names that rules read stand in a table of `DEVELOPERS.md`.

use super::Checked;
use crate::diag::{Diagnostic, Rule};
use crate::model::book::{Book, Module};
use crate::model::files::forms::Supply;
use crate::model::files::module::Load;
use crate::model::quantity::Unit;
use crate::model::source::Span;
use crate::model::van::{Fit, Van};
use crate::resolve::conditions;

/// The nominal voltage of the leisure battery's circuits.
pub(super) const BATTERY_VOLTS: f64 = 12.0;

/// The nominal voltage of the hook-up.
pub(super) const MAINS_VOLTS: f64 = 230.0;

/// A current as findings show it.
pub(super) fn amps(amps: f64) -> String {
    format!("{} A", (amps * 100.0).round() / 100.0)
}

/// The parts of one van.
#[derive(Clone, Copy)]
pub(super) struct Parts<'a> {
    book: &'a Book,
    pub(super) van: &'a Van,
}

/// One part of a van.
#[derive(Clone, Copy)]
pub(super) struct Part<'a> {
    of: Parts<'a>,
    pub(super) fit: &'a Fit,
    pub(super) module: &'a Module,
}

/// One value of one part; the other word may also name what the part is.
pub(super) type Side<'a> = (Part<'a>, &'a str);

/// The parts of each van.
pub(super) fn each<'a>(checked: Checked<'a>) -> impl Iterator<Item = Parts<'a>> {
    checked.vans.iter().map(move |van| Parts { book: checked.book, van })
}

impl<'a> Parts<'a> {
    /// All parts, in the order of the manifests.
    pub(super) fn all(self) -> impl Iterator<Item = Part<'a>> {
        self.van.fits.iter().map(move |fit| Part { of: self, fit, module: &self.book.modules[fit.module] })
    }

    /// The parts that provide a capability.
    pub(super) fn providing(self, capability: &str) -> Vec<Part<'a>> {
        self.all().filter(|part| provides(part.module, capability)).collect()
    }

    /// The parts whose trait says so.
    pub(super) fn with(self, fact: &str, word: &str) -> Vec<Part<'a>> {
        self.all().filter(|part| part.is(fact, word)).collect()
    }

    /// The parts that burn anything.
    pub(super) fn burners(self) -> Vec<Part<'a>> {
        self.all().filter(|part| part.words("burns").next().is_some()).collect()
    }

    /// The parts that carry, supply or draw mains.
    pub(super) fn on_mains(self) -> Vec<Part<'a>> {
        let has = |part: &Part| ["carries", "supplies"].iter().any(|fact| part.is(fact, "mains"));
        self.all().filter(|part| has(part) || part.draws(Supply::Mains).next().is_some()).collect()
    }

    /// A finding about a capability that `callers` call for and nothing provides: where its provider was taken away,
    /// or else at one of the callers. Nothing is found while it is not known what all fits provide.
    pub(super) fn lacking(
        self,
        rule: &'static Rule,
        callers: &[Part<'a>],
        does: &str,
        capability: &str,
    ) -> Option<Diagnostic> {
        let own = callers.iter().find(|part| part.fit.name.span.file == self.van.file);
        let caller = own.or(callers.first())?;
        if !self.providing(capability).is_empty() || !self.provisions_known() {
            return None;
        }
        let at = self.taken_away(capability).unwrap_or(caller.fit.name.span);
        let message = format!("{} {does}, and no fit provides `{capability}`", caller.quoted());
        let found = Diagnostic::new(rule, at, message).van(&self.van.name);
        Some(if at == caller.fit.name.span { found } else { found.other(caller.fit.name.span, "this calls for it") })
    }

    /// Whether each fit is known with all that it provides; what is not has been said.
    fn provisions_known(self) -> bool {
        let known = &self.book.capabilities.0;
        let sound = |module: &Module| module.facts.provides.iter().all(|name| known.get(&name.value).is_some());
        !self.van.incomplete && self.all().all(|part| sound(part.module))
    }

    /// Where this van's manifest removes or changes the fit of its model that provides a capability.
    fn taken_away(self, capability: &str) -> Option<Span> {
        let model = &self.book.models[self.van.model];
        let source = model.vans.iter().find(|source| source.file == self.van.file)?;
        let module = |name: &str| self.book.module_number(name).map(|number| &self.book.modules[number]);
        let mut fits = model.facts.fit.iter();
        let fit = fits.find(|fit| module(&fit.module.value).is_some_and(|module| provides(module, capability)))?;
        let removed = source.facts.remove.iter().find(|name| name.value == fit.as_.value).map(|name| name.span);
        removed.or_else(|| source.facts.change.entry(&fit.as_.value).map(|(name, _)| name.span))
    }

    /// A finding about two values that do not go together: at the one that makes this van differ from its model, or
    /// else at one that a manifest gives.
    pub(super) fn clash(self, rule: &'static Rule, sides: [Side<'a>; 2], message: String) -> Diagnostic {
        let [first, second] = sides.map(|(part, value)| (self.rank(part, value), part.span(value)));
        let (at, other) = if second.0 < first.0 { (second.1, first.1) } else { (first.1, second.1) };
        let found = Diagnostic::new(rule, at, message).van(&self.van.name);
        if at == other { found } else { found.other(other, "the other of the two") }
    }

    fn rank(self, part: Part, value: &str) -> u8 {
        match (part.span(value).file == self.van.file, part.fit.given.contains_key(value)) {
            (true, true) => 0,
            (true, false) => 1,
            (false, true) => 2,
            (false, false) => 3,
        }
    }
}

impl<'a> Part<'a> {
    /// Its name in backticks.
    pub(super) fn quoted(self) -> String {
        format!("`{}`", self.fit.name.value)
    }

    /// What its module says of a trait.
    pub(super) fn words(self, fact: &str) -> impl Iterator<Item = &'a str> {
        self.module.facts.traits.get(fact).into_iter().flat_map(|words| words.iter()).map(|word| word.value.as_str())
    }

    /// Whether a trait has a word.
    pub(super) fn is(self, fact: &str, word: &str) -> bool {
        self.words(fact).any(|known| known == word)
    }

    /// Where a manifest gives a value, or else where the part is fitted.
    pub(super) fn span(self, value: &str) -> Span {
        self.fit.given.get(value).copied().unwrap_or(self.fit.name.span)
    }

    /// How much of `unit` a value or figure is, or a quantity that is written out.
    pub(super) fn amount(self, text: &str, unit: &str) -> Option<f64> {
        Some(self.fit.quantity(text)?.to(Unit::find(unit)?)?.amount)
    }

    /// What it draws from a supply in this van.
    pub(super) fn draws(self, from: Supply) -> impl Iterator<Item = &'a str> {
        let model = &self.of.book.models[self.of.van.model];
        let holds = move |load: &&Load| {
            load.when.as_ref().is_none_or(|when| conditions::holds(when, self.fit, self.of.van, model))
        };
        let loads = self.module.facts.load.iter().filter(move |load| load.from.value == from);
        loads.filter(holds).map(|load| load.draw.value.as_str())
    }

    /// The current of each thing it draws from a supply of so many volts, in A, with the name of what it draws.
    pub(super) fn currents(self, from: Supply, volts: f64) -> impl Iterator<Item = (f64, &'a str)> {
        self.draws(from).filter_map(move |draw| {
            let amps = self.amount(draw, "A").or_else(|| Some(self.amount(draw, "W")? / volts));
            amps.map(|amps| (amps, draw))
        })
    }
}

fn provides(module: &Module, capability: &str) -> bool {
    module.facts.provides.iter().any(|provided| &*provided.value == capability)
}
