//! What can be wrong with a quantity in a text, and what to do about it.

use super::nearest;
use super::parse::DASHES;
use super::{Dimension, Unit};
use std::fmt;

/// What is wrong with a quantity. `Display` says it in one phrase; [`QuantityError::help`] says
/// what to write instead.
#[derive(Clone, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "the strings are what the author wrote")]
pub enum QuantityError {
    /// There is no text.
    Empty,
    /// It does not start with a number.
    NoNumber(String),
    /// What stands in place of the number is not one.
    BadNumber(String),
    /// The number is infinite, or not a number by name.
    NotFinite(String),
    /// A comma stands in the number.
    Comma { text: String, number: String },
    /// The number is broken by a space.
    Gap(String),
    /// No space stands between number and unit.
    NoSpace { text: String, number: String, unit: String },
    /// There is only a number.
    NoUnit(String),
    /// The unit is not in the table.
    UnknownUnit(String),
    /// The number is larger than any that a vehicle needs.
    TooLarge(String),
    /// A range stands where one quantity is wanted.
    IsRange(String),
    /// There is no `to` in a range.
    NotRange(String),
    /// The larger end of a range comes first; `turned` is the range the right way round.
    Reversed { text: String, turned: String },
    /// The unit measures something else than what is wanted.
    OtherDimension { text: String, found: Dimension, wanted: Dimension },
}

use QuantityError::*;

impl QuantityError {
    /// What to do about it, as one phrase.
    pub fn help(&self) -> String {
        match self {
            NoSpace { number, unit, .. } => help_with_space(number, unit),
            UnknownUnit(unit) => nearest::instead_of(unit),
            OtherDimension { wanted, .. } => nearest::units_for(*wanted),
            BadNumber(number) => help_with_number(number).to_string(),
            Comma { number, .. } => help_with_comma(number),
            NoUnit(text) => help_with_bare(text),
            Reversed { turned, .. } => format!("put the smaller end first: `{turned}`"),
            IsRange(_) => "write one quantity, as in `6 kg`".to_string(),
            NotRange(_) => "write both ends with `to`, as in `3 to 19 kg`".to_string(),
            Gap(_) => "write the number without spaces, as in `10000 km`".to_string(),
            TooLarge(_) => "write it in a larger unit, or correct the number".to_string(),
            Empty | NoNumber(_) | NotFinite(_) => {
                "write a number in digits, a space and a unit, as in `6 kg`".to_string()
            }
        }
    }
}

fn help_with_bare(text: &str) -> String {
    let number = quoted(text);
    format!("write a space and a unit after it; for a plain number write `{number} count`")
}

fn help_with_space(number: &str, unit: &str) -> String {
    let number = quoted(number);
    let known = Unit::find(unit).map(|unit| vec![unit]);
    let meant = known.unwrap_or_else(|| nearest::meant(&unit.to_lowercase()));
    match meant.as_slice() {
        [only] => format!("write `{number} {}`", only.symbol),
        _ => format!("put a space after `{number}`; {}", nearest::instead_of(unit)),
    }
}

fn help_with_number(number: &str) -> &'static str {
    if number.chars().skip(1).any(|c| DASHES.contains(&c)) {
        return "write both ends of a range with `to`, as in `3 to 19 kg`";
    }
    "write digits, with a `-` before them or a `.` among them where needed, as in `-2.5 °C`"
}

/// A comma before three digits may part thousands, so both readings are offered.
fn help_with_comma(number: &str) -> String {
    let (point, bare) = (quoted(number).replace(',', "."), quoted(number).replace(',', ""));
    let sides = number.split_once(',').unwrap_or_default();
    let is_whole = |side: &str| !side.is_empty() && !side.contains([',', '.']);
    match sides {
        (a, b) if !is_whole(a) || !is_whole(b) => {
            "write it without commas, and with a point before decimals".to_string()
        }
        (_, b) if b.len() == 3 => format!("write `{bare}`, or `{point}` if it parts decimals"),
        _ => format!("write `{point}`, with a decimal point"),
    }
}

impl fmt::Display for QuantityError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (about, says) = self.phrase();
        match about {
            Some(text) => write!(f, "`{}` {says}", quoted(text)),
            None => f.write_str(&says),
        }
    }
}

impl QuantityError {
    /// The author's words that it is about, and what is wrong with them.
    fn phrase(&self) -> (Option<&str>, String) {
        let (about, says) = match self {
            Empty => return (None, "the quantity is empty".to_string()),
            OtherDimension { text, found, wanted } => {
                let says = format!("is {}, not {}", found.name(), wanted.name());
                return (Some(text), says);
            }
            NoNumber(text) => (text, "does not start with a number"),
            BadNumber(number) => (number, "is not a number in plain digits"),
            NotFinite(text) => (text, "is not a finite number"),
            Comma { text, .. } => (text, "has a comma in its number"),
            Gap(text) => (text, "has a space in its number"),
            NoSpace { text, .. } => (text, "has no space between the number and the unit"),
            NoUnit(text) => (text, "has no unit"),
            UnknownUnit(unit) => (unit, "is not a unit that is known here"),
            TooLarge(text) => (text, "is larger than anything in a vehicle"),
            IsRange(text) => (text, "is a range, and one quantity is wanted"),
            NotRange(text) => (text, "is not a range"),
            Reversed { text, .. } => (text, "has its larger end first"),
        };
        (Some(about), says.to_string())
    }
}

impl std::error::Error for QuantityError {}

/// An author's words, fit for one line of a message: short, and without control characters.
fn quoted(text: &str) -> String {
    const LONGEST: usize = 40;
    let plain = text.chars().map(|c| if c.is_control() || c == '`' { ' ' } else { c });
    let mut short: String = plain.take(LONGEST).collect();
    if text.chars().nth(LONGEST).is_some() {
        short.push('…');
    }
    short
}
