//! The page of figures: sums over the whole van, assembled by capability and by the names of values.
//!
//! No module is known by its name. What a van lacks, or does not say, has no sum.

mod battery;
mod dials;
mod found;
mod gas;
mod mains;
mod sun;
mod vehicle;
mod water;

use super::{Composer, show};
use crate::figures::{self, Calculation, Gives, Takes};
use crate::model::guide::Guide;
use crate::model::phrases::Given;
use crate::model::quantity::{Quantity, QuantityRange, Unit};
use crate::model::sums::{Sum, SumGroup, SumTable, SumsPage};
use found::Found;

/// All sums of a van.
pub(super) fn page(composer: &Composer, guide: &Guide) -> SumsPage {
    let desk = Desk { composer, found: Found { book: composer.book, van: composer.van, guide } };
    let groups = [desk.gas(), desk.battery(), desk.sun(), desk.mains(), desk.water(), desk.vehicle()];
    SumsPage { groups: groups.into_iter().flatten().collect(), dials: desk.dials() }
}

/// Where the sums of one van are done.
struct Desk<'c, 'a, 'p> {
    composer: &'c Composer<'a, 'p>,
    found: Found<'c, 'a>,
}

/// What is fed to an input of a calculation.
#[derive(Clone)]
enum Fed {
    One(Quantity),
    Range(QuantityRange),
    Word(String),
}

/// So many of a unit.
fn of(amount: f64, unit: &str) -> Fed {
    Fed::One(Quantity { amount, unit: Unit::find(unit).expect("a unit of the table") })
}

/// From so many to so many of a unit; one number where both are the same.
fn from_to(low: f64, high: f64, unit: &str) -> Fed {
    match low == high {
        true => of(low, unit),
        false => Fed::Range(QuantityRange { low, high, unit: Unit::find(unit).expect("a unit of the table") }),
    }
}

fn word(word: &str) -> Fed {
    Fed::Word(word.to_string())
}

/// The result of a calculation for plain numbers, in the order of its inputs.
fn worked_out(calculation: &str, inputs: &[f64]) -> Option<f64> {
    figures::find(calculation)?.work_out(inputs).ok()
}

impl Desk<'_, '_, '_> {
    fn say(&self, phrase: &str) -> String {
        self.composer.phrases.get(phrase)
    }

    fn group(&self, id: &'static str, sums: Vec<Option<Sum>>) -> Option<SumGroup> {
        let sums: Vec<Sum> = sums.into_iter().flatten().collect();
        let title = self.say(&format!("sums-{id}"));
        (!sums.is_empty()).then_some(SumGroup { id, title, sums, plots: vec![] })
    }

    fn filled_in(&self, phrase: &str, given: &[(&str, &str)]) -> String {
        let given: Vec<_> = given.iter().map(|(name, text)| (*name, Given::Text(text))).collect();
        self.composer.phrases.with(phrase, &given)
    }

    /// A number alone, in the reader's language.
    fn number(&self, number: f64) -> String {
        self.composer.phrases.number_style().show(number)
    }

    /// From so many to so many of a unit, rounded and in the reader's language.
    fn span(&self, low: f64, high: f64, unit: &str) -> String {
        let unit = Unit::find(unit).expect("a unit of the table");
        show::range(&rounded(&QuantityRange { low, high, unit }, 2), self.composer.phrases)
    }

    /// A number of a unit, rounded and in the reader's language.
    fn shown(&self, amount: f64, digits: u8, unit: &str) -> String {
        let unit = Unit::find(unit).expect("a unit of the table");
        show::quantity(&Quantity { amount, unit }.rounded(digits), self.composer.phrases)
    }

    fn table(&self, head: &[&str], rows: Vec<Vec<String>>) -> Option<SumTable> {
        let head = head.iter().map(|phrase| self.say(phrase)).collect();
        (!rows.is_empty()).then_some(SumTable { head, rows })
    }

    /// A sum of a calculation with what is fed to it; nothing when it cannot be worked out.
    fn sum(&self, id: &'static str, calculation: &str, fed: &[Fed]) -> Option<Sum> {
        let calculation = figures::find(calculation)?;
        let result = self.result(calculation, fed)?;
        let shown: Vec<String> = fed.iter().map(|fed| self.fed(fed)).collect();
        let labels = calculation.inputs.iter().map(|input| self.label(id, input.name));
        let mut working = vec![calculation.formula.to_string()];
        let names = calculation.inputs.iter().map(|input| input.name);
        let bracketed: Vec<String> = fed.iter().zip(&shown).map(|(fed, shown)| bracketed(fed, shown)).collect();
        working.extend(written_out(calculation.formula, names.zip(&bracketed)).map(|sum| format!("{sum} = {result}")));
        Some(Sum {
            inputs: labels.zip(shown.iter().cloned()).collect(),
            result,
            working,
            ..self.plain(id, calculation)
        })
    }

    /// A sum without inputs and result: its title, and what its calculation says of itself.
    fn plain(&self, id: &'static str, calculation: &Calculation) -> Sum {
        Sum {
            id,
            title: self.say(&format!("sum-{id}")),
            result: String::new(),
            caution: String::new(),
            table: None,
            inputs: vec![],
            working: vec![calculation.formula.to_string()],
            limits: calculation.limits.to_string(),
            source: calculation.source.to_string(),
        }
    }

    /// What an input is called in a sum.
    fn label(&self, id: &str, input: &str) -> String {
        let plain = &self.composer.phrases.plain;
        let own = plain.get(&format!("in-{id}-{input}")).or_else(|| plain.get(&format!("in-{input}")));
        own.cloned().unwrap_or_else(|| input.replace('-', " "))
    }

    fn fed(&self, fed: &Fed) -> String {
        match fed {
            Fed::One(quantity) => show::quantity(&quantity.rounded(4), self.composer.phrases),
            Fed::Range(range) => show::range(&rounded(range, 3), self.composer.phrases),
            Fed::Word(word) => self.composer.phrases.plain.get(&format!("word-{word}")).unwrap_or(word).clone(),
        }
    }

    /// What comes out, rounded: from the least to the most where an input is a range.
    fn result(&self, calculation: &Calculation, fed: &[Fed]) -> Option<String> {
        let ends = [false, true].map(|first| [false, true].map(|second| numbers(calculation, fed, [first, second])));
        let results: Option<Vec<f64>> =
            ends.into_iter().flatten().map(|inputs| calculation.work_out(&inputs?).ok()).collect();
        let (low, high) = results?.into_iter().fold((f64::MAX, f64::MIN), |(low, high), x| (low.min(x), high.max(x)));
        let unit = match calculation.gives {
            Gives::Unit(symbol) => Unit::find(symbol)?,
            Gives::UnitOf(_) => return None,
        };
        let all = rounded(&QuantityRange { low, high, unit }, calculation.digits);
        Some(match all.low == all.high {
            true => show::quantity(&Quantity { amount: all.low, unit }, self.composer.phrases),
            false => show::range(&all, self.composer.phrases),
        })
    }
}

/// The numbers of what is fed, with the low or high end of the first and of any other range.
fn numbers(calculation: &Calculation, fed: &[Fed], high: [bool; 2]) -> Option<Vec<f64>> {
    let mut ranges = 0;
    let mut number = |(input, fed): (&figures::Input, &Fed)| match (fed, input.takes) {
        (Fed::Word(word), _) => input.word(word),
        (Fed::One(quantity), Takes::Unit(unit)) => Some(quantity.to(Unit::find(unit)?)?.amount),
        (Fed::Range(range), Takes::Unit(unit)) => {
            let amount = if high[ranges.min(1)] { range.high } else { range.low };
            ranges += 1;
            Some(Quantity { amount, unit: range.unit }.to(Unit::find(unit)?)?.amount)
        }
        _ => None,
    };
    calculation.inputs.iter().zip(fed).map(&mut number).collect()
}

fn rounded(range: &QuantityRange, digits: u8) -> QuantityRange {
    let end = |amount| Quantity { amount, unit: range.unit }.rounded(digits).amount;
    QuantityRange { low: end(range.low), high: end(range.high), unit: range.unit }
}

/// A range in brackets, so that signs beside it are not misread.
fn bracketed(fed: &Fed, shown: &str) -> String {
    match fed {
        Fed::Range(_) => format!("({shown})"),
        _ => shown.to_string(),
    }
}

/// A formula with amounts in the place of names; nothing where it is words rather than signs.
fn written_out<'a>(formula: &str, amounts: impl Iterator<Item = (&'a str, &'a String)>) -> Option<String> {
    if !formula.contains(['×', '÷', '−']) || formula.contains(',') {
        return None;
    }
    let amounts: Vec<_> = amounts.collect();
    let is_name = |c: char| c.is_alphanumeric() || c == '-';
    let mut out = String::new();
    let mut rest = formula;
    while let Some(start) = rest.find(is_name) {
        let end = rest[start..].find(|c| !is_name(c)).map_or(rest.len(), |end| start + end);
        let name = &rest[start..end];
        let amount = amounts.iter().find(|(own, _)| *own == name);
        // "The gas" is "propane", not "the propane".
        let before = &rest[..start];
        out.push_str(before);
        if amount.is_some() && out.ends_with("the ") {
            out.truncate(out.len() - "the ".len());
        }
        out.push_str(amount.map_or(name, |(_, amount)| amount));
        rest = &rest[end..];
    }
    Some(out + rest)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_formula_is_written_out_in_numbers() {
        let amounts = [("running-order", "2985 kg".to_string()), ("maximum", "3500 kg".to_string())];
        let out = |formula| written_out(formula, amounts.iter().map(|(name, amount)| (*name, amount)));
        assert_eq!(out("maximum − running-order").as_deref(), Some("3500 kg − 2985 kg"));
        assert_eq!(out("10 × (maximum + people)").as_deref(), Some("10 × (3500 kg + people)"));
        assert_eq!(out("10 ÷ heat at the maximum").as_deref(), Some("10 ÷ heat at 3500 kg"));
        assert_eq!(out("a table by the maximum"), None);
    }
}
