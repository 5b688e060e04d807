//! Reading quantities and ranges as authors write them.
//!
//! A number is plain digits, with a minus sign before them or a decimal point among them where
//! needed; then comes a space, then a unit. Nothing is guessed, and no text makes this panic.

use super::{Quantity, QuantityError, QuantityRange, Unit};

/// Larger amounts than this are mistakes, whatever the unit.
const LARGEST: f64 = 1e9;

/// The minus sign proper, beside the hyphen that keyboards have.
const MINUS: char = '\u{2212}';

/// What people put between the ends of a range.
pub(super) const DASHES: [char; 4] = ['-', '\u{2013}', '\u{2014}', MINUS];

impl Quantity {
    /// Reads `6 kg`, `-20 °C` or `10.5 l`. The space may be of any kind.
    pub fn parse(text: &str) -> Result<Quantity, QuantityError> {
        let text = text.trim();
        if split_range(text).is_some() {
            return Err(QuantityError::IsRange(text.to_string()));
        }
        match split(text)? {
            (_, "") => Err(QuantityError::NoUnit(text.to_string())),
            (amount, unit) => Ok(Quantity { amount, unit: known(unit)? }),
        }
    }

    /// Reads a quantity that measures what `like` measures. It keeps the unit it has.
    pub fn parse_as(text: &str, like: Unit) -> Result<Quantity, QuantityError> {
        let quantity = Quantity::parse(text)?;
        same_dimension(text, quantity.unit, like)?;
        Ok(quantity)
    }
}

impl QuantityRange {
    /// Reads `3 to 19 kg`, `500 g to 2 kg` or `-20 to 5 °C`. The range has the unit of its
    /// upper end.
    pub fn parse(text: &str) -> Result<QuantityRange, QuantityError> {
        let text = text.trim();
        let Some((low_text, high_text)) = split_range(text) else {
            return Err(match text {
                "" => QuantityError::Empty,
                _ => QuantityError::NotRange(text.to_string()),
            });
        };
        let (amount, unit) = split(low_text)?;
        let high = Quantity::parse(high_text)?;
        let unit = match unit {
            "" => high.unit,
            _ => known(unit)?,
        };
        let Some(low) = Quantity { amount, unit }.to(high.unit) else {
            return Err(other_dimension(low_text, unit, high.unit));
        };
        ordered(text, low.amount, high)
    }

    /// Reads a range of what `like` measures. It keeps the unit it has.
    pub fn parse_as(text: &str, like: Unit) -> Result<QuantityRange, QuantityError> {
        let range = QuantityRange::parse(text)?;
        same_dimension(text, range.unit, like)?;
        Ok(range)
    }
}

fn ordered(text: &str, low: f64, high: Quantity) -> Result<QuantityRange, QuantityError> {
    let Quantity { amount: high, unit } = high;
    if low <= high {
        return Ok(QuantityRange { low, high, unit });
    }
    let (text, turned) = (text.to_string(), format!("{high} to {low} {}", unit.symbol));
    Err(QuantityError::Reversed { text, turned })
}

fn same_dimension(text: &str, unit: Unit, like: Unit) -> Result<(), QuantityError> {
    if unit.dimension == like.dimension {
        return Ok(());
    }
    Err(other_dimension(text.trim(), unit, like))
}

fn other_dimension(text: &str, found: Unit, wanted: Unit) -> QuantityError {
    let (text, found, wanted) = (text.to_string(), found.dimension, wanted.dimension);
    QuantityError::OtherDimension { text, found, wanted }
}

fn known(unit: &str) -> Result<Unit, QuantityError> {
    Unit::find(unit).ok_or_else(|| QuantityError::UnknownUnit(unit.to_string()))
}

/// The two sides of the first `to` that stands alone.
fn split_range(text: &str) -> Option<(&str, &str)> {
    let sides = text.match_indices("to").map(|(at, to)| (&text[..at], &text[at + to.len()..]));
    let mut alone =
        sides.filter(|(before, after)| before.ends_with(char::is_whitespace) && after.starts_with(char::is_whitespace));
    alone.next().map(|(before, after)| (before.trim(), after.trim()))
}

/// The number at the start of a trimmed text, and the unit that follows, which may be empty.
fn split(text: &str) -> Result<(f64, &str), QuantityError> {
    let (word, rest) = match text.split_once(char::is_whitespace) {
        Some((word, rest)) => (word, rest.trim_start()),
        None => (text, ""),
    };
    let end = word.find(|c: char| !is_numeral(c)).unwrap_or(word.len());
    let (number, stuck) = word.split_at(end);
    if !number.contains(|c: char| c.is_ascii_digit()) {
        return Err(no_number(text, word));
    }
    if number.contains(',') {
        let (text, number) = (text.to_string(), number.to_string());
        return Err(QuantityError::Comma { text, number });
    }
    if !stuck.is_empty() {
        return Err(run_together(text, number, stuck));
    }
    if rest.starts_with(|c: char| c.is_ascii_digit()) {
        return Err(QuantityError::Gap(text.to_string()));
    }
    if rest.starts_with(DASHES) {
        return Err(QuantityError::IsRange(text.to_string()));
    }
    Ok((amount(text, number)?, rest))
}

fn is_numeral(c: char) -> bool {
    c.is_ascii_digit() || matches!(c, '+' | '-' | MINUS | '.' | ',')
}

fn no_number(text: &str, word: &str) -> QuantityError {
    let name = word.trim_start_matches(['+', '-', MINUS]).to_lowercase();
    let text = text.to_string();
    match name.as_str() {
        "" if text.is_empty() => QuantityError::Empty,
        "nan" | "inf" | "infinity" | "infinite" | "∞" => QuantityError::NotFinite(text),
        _ => QuantityError::NoNumber(text),
    }
}

/// A number with something right behind it: a unit, or more of what is not a number (`1e3`).
fn run_together(text: &str, number: &str, stuck: &str) -> QuantityError {
    let has_digits = stuck.contains(|c: char| c.is_ascii_digit());
    if has_digits && Unit::find(stuck).is_none() {
        return QuantityError::BadNumber(format!("{number}{stuck}"));
    }
    let unit = text[number.len()..].to_string();
    let (text, number) = (text.to_string(), number.to_string());
    QuantityError::NoSpace { text, number, unit }
}

fn amount(text: &str, number: &str) -> Result<f64, QuantityError> {
    let digits = number.strip_prefix(['-', MINUS]).unwrap_or(number);
    let is_whole = |part: &str| !part.is_empty() && part.bytes().all(|b| b.is_ascii_digit());
    let is_plain = match digits.split_once('.') {
        Some((whole, decimals)) => is_whole(whole) && is_whole(decimals),
        None => is_whole(digits),
    };
    match digits.parse::<f64>() {
        Ok(size) if is_plain && size > LARGEST => Err(QuantityError::TooLarge(text.to_string())),
        // Zero is added so that `-0` is plain zero.
        Ok(size) if is_plain && digits.len() < number.len() => Ok(-size + 0.0),
        Ok(size) if is_plain => Ok(size),
        _ => Err(QuantityError::BadNumber(number.to_string())),
    }
}
