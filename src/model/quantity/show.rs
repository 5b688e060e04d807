//! Quantities as readers see them.
//!
//! After the SI brochure (BIPM, 9th edition 2019, 5.4: stated from memory) a space stands before
//! every unit, `%` and `°C` included. It does not break, so a number never loses its unit.

use super::{Quantity, QuantityRange};

const NO_BREAK_SPACE: char = '\u{a0}';
const MINUS: char = '\u{2212}';

/// More digits than any reader needs, and fewer than show the rounding of a conversion.
const DIGITS: u8 = 9;

/// How a language writes numbers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NumberStyle {
    /// Between whole and decimals.
    pub decimal: char,
    /// Between thousands, from 10 000 up.
    pub group: char,
}

impl NumberStyle {
    /// A bare number: no zeros at its end, at most nine digits that count, a true minus sign.
    pub fn show(self, number: f64) -> String {
        // Zero is added so that no reader meets minus zero.
        let plain = (round_significant(number, DIGITS) + 0.0).to_string();
        let (sign, size) = match plain.strip_prefix('-') {
            Some(size) => (MINUS.to_string(), size),
            None => (String::new(), plain.as_str()),
        };
        match size.split_once('.') {
            Some((whole, rest)) => format!("{sign}{}{}{rest}", self.grouped(whole), self.decimal),
            None => format!("{sign}{}", self.grouped(size)),
        }
    }

    fn grouped(self, whole: &str) -> String {
        let length = whole.len();
        let starts_group = |at: usize| length >= 5 && at > 0 && (length - at).is_multiple_of(3);
        let digits = whole.char_indices();
        digits.flat_map(|(at, c)| starts_group(at).then_some(self.group).into_iter().chain([c])).collect()
    }
}

impl Quantity {
    /// For readers: `−2.5 °C`. The calendar units are English words, one of them in the
    /// singular; in another language use [`NumberStyle::show`] and that language's word.
    pub fn show(&self, style: NumberStyle) -> String {
        let number = style.show(self.amount);
        let unit = match self.unit.one {
            Some(one) if number == "1" => one,
            _ => self.unit.shown,
        };
        with_unit(number, unit)
    }

    /// The same quantity to so many significant digits.
    pub fn rounded(self, digits: u8) -> Quantity {
        Quantity { amount: round_significant(self.amount, digits), ..self }
    }
}

impl QuantityRange {
    /// For readers: `3 to 19 kg`, where `to` is the word of their language.
    pub fn show(&self, style: NumberStyle, to: &str) -> String {
        let (low, high) = (style.show(self.low), style.show(self.high));
        with_unit(format!("{low} {to} {high}"), self.unit.shown)
    }
}

fn with_unit(number: String, unit: &str) -> String {
    match unit {
        "" => number,
        _ => format!("{number}{NO_BREAK_SPACE}{unit}"),
    }
}

/// `x` to so many significant digits (from 1 to 15), halves away from zero. What is not finite
/// stays as it is.
pub fn round_significant(x: f64, digits: u8) -> f64 {
    let decimals = usize::from(digits.clamp(1, 15)) - 1;
    // The binary number for 1.45 lies a little below it: the nudge lets it round as it is read.
    let nudged = x * (1.0 + 2.0 * f64::EPSILON);
    // By way of decimal text the result is the number nearest to what the digits say.
    let rounded = format!("{nudged:.decimals$e}").parse().ok();
    rounded.filter(|rounded: &f64| rounded.is_finite()).unwrap_or(x)
}

#[cfg(test)]
mod tests {
    use super::*;

    const ENGLISH: NumberStyle = NumberStyle { decimal: '.', group: ',' };
    const THIN: NumberStyle = NumberStyle { decimal: ',', group: '\u{202f}' };

    #[test]
    fn numbers_are_shown_without_noise() {
        let table = [
            (0.0, "0", "0"),
            (-0.0, "0", "0"),
            (2.5, "2.5", "2,5"),
            (-20.0, "−20", "−20"),
            (0.1 + 0.2, "0.3", "0,3"),
            (1234.5, "1234.5", "1234,5"),
            (9999.0, "9999", "9999"),
            (10_000.0, "10,000", "10\u{202f}000"),
            (-123_456.25, "−123,456.25", "−123\u{202f}456,25"),
            (1e9, "1,000,000,000", "1\u{202f}000\u{202f}000\u{202f}000"),
            (0.000_012_5, "0.0000125", "0,0000125"),
            (f64::NAN, "NaN", "NaN"),
        ];
        for (number, english, thin) in table {
            assert_eq!(ENGLISH.show(number), english);
            assert_eq!(THIN.show(number), thin);
        }
    }

    #[test]
    fn a_quantity_keeps_its_unit_beside_it() {
        let table = [
            ("6 kg", "6\u{a0}kg"),
            ("6.50 kg", "6.5\u{a0}kg"),
            ("-2.5 °C", "−2.5\u{a0}°C"),
            ("80 %", "80\u{a0}%"),
            ("2.5 mm2", "2.5\u{a0}mm²"),
            ("4 count", "4"),
            ("1 days", "1\u{a0}day"),
            ("1.5 days", "1.5\u{a0}days"),
            ("60 months", "60\u{a0}months"),
            ("12000 km", "12,000\u{a0}km"),
        ];
        for (written, shown) in table {
            let quantity = Quantity::parse(written).unwrap();
            assert_eq!(quantity.show(ENGLISH), shown, "{written}");
        }
    }

    #[test]
    fn a_range_is_shown_with_the_word_of_the_language() {
        let table = [
            ("3 to 19 kg", "to", "3 to 19\u{a0}kg"),
            ("-20 to 5 °C", "bis", "−20 bis 5\u{a0}°C"),
            ("2 to 4 count", "to", "2 to 4"),
        ];
        for (written, to, shown) in table {
            let range = QuantityRange::parse(written).unwrap();
            assert_eq!(range.show(ENGLISH, to), shown, "{written}");
        }
    }

    #[test]
    fn rounding_keeps_the_digits_that_count() {
        let table = [
            (0.543_478, 3, 0.543),
            (8.6956, 3, 8.7),
            (194.2, 2, 190.0),
            (1.45, 2, 1.5),
            (12.5, 2, 13.0),
            (-12.5, 2, -13.0),
            (99.96, 3, 100.0),
            (0.0, 3, 0.0),
            (7.0, 0, 7.0),
            (0.1, 255, 0.1),
            (1e300, 2, 1e300),
            (f64::MAX, 15, f64::MAX),
            (f64::INFINITY, 2, f64::INFINITY),
        ];
        for (number, digits, expected) in table {
            assert_eq!(round_significant(number, digits), expected, "{number} to {digits}");
        }
        assert!(round_significant(f64::NAN, 2).is_nan());
        let third = Quantity::parse("0.33333 V").unwrap().rounded(2);
        assert_eq!(third.to_string(), "0.33 V");
    }
}
