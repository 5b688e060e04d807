//! Quantities: numbers with a unit, as authors write them and as readers see them.
//!
//! A quantity keeps the unit in which it was written. It converts only within the dimension of
//! that unit, and no text makes any of this panic.

mod error;
mod nearest;
mod parse;
mod show;
#[cfg(test)]
mod tests;
mod unit;

use std::cmp::Ordering;
use std::fmt;

pub use error::QuantityError;
pub use show::{NumberStyle, round_significant};
pub use unit::{Dimension, UNITS, Unit};

/// Two quantities that differ by less than this share of the larger one count as equal, so that
/// a unit conversion's rounding never moves a quantity across a limit.
const SAME: f64 = 1e-9;

/// A number with its unit: `6 kg`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Quantity {
    /// How many of the unit.
    pub amount: f64,
    /// The unit.
    pub unit: Unit,
}

/// Everything from one quantity to another, both included: `3 to 19 kg`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct QuantityRange {
    /// The smallest amount.
    pub low: f64,
    /// The largest amount.
    pub high: f64,
    /// The unit of both.
    pub unit: Unit,
}

impl Quantity {
    /// The amount in the base unit of the dimension: millimetres, grams, kelvins and so on,
    /// whichever unit of the table has the factor 1.
    pub fn base(self) -> f64 {
        self.amount * self.unit.factor + self.unit.offset
    }

    /// The same quantity in `unit`; `None` when that is of another dimension.
    pub fn to(self, unit: Unit) -> Option<Quantity> {
        if self.unit == unit {
            return Some(self);
        }
        let amount = (self.base() - unit.offset) / unit.factor;
        (self.unit.dimension == unit.dimension).then_some(Quantity { amount, unit })
    }

    /// How it compares with `other`, in any unit of the same dimension; `None` when the
    /// dimensions differ or an amount is not a number.
    pub fn compare(self, other: Quantity) -> Option<Ordering> {
        let (a, b) = (self.amount, other.to(self.unit)?.amount);
        if (a - b).abs() <= SAME * a.abs().max(b.abs()) {
            return Some(Ordering::Equal);
        }
        a.partial_cmp(&b)
    }
}

impl QuantityRange {
    /// Whether `quantity` lies within, ends included; `None` when the dimensions differ.
    pub fn contains(self, quantity: Quantity) -> Option<bool> {
        let end = |amount| Quantity { amount, unit: self.unit };
        let above = quantity.compare(end(self.low))?.is_ge();
        let below = quantity.compare(end(self.high))?.is_le();
        Some(above && below)
    }
}

/// As an author writes it: it parses back to the same quantity.
impl fmt::Display for Quantity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}", self.amount, self.unit.symbol)
    }
}

/// As an author writes it: it parses back to the same range.
impl fmt::Display for QuantityRange {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} to {} {}", self.low, self.high, self.unit.symbol)
    }
}

#[cfg(test)]
mod conversions {
    use super::*;

    fn quantity(text: &str) -> Quantity {
        Quantity::parse(text).unwrap()
    }

    #[test]
    fn quantities_convert_within_their_dimension() {
        let table = [
            ("5990 mm", "m", "5.99 m"),
            ("1.5 m", "cm", "150 cm"),
            ("2 km", "m", "2000 m"),
            ("0.85 kW", "W", "850 W"),
            ("500 g", "kg", "0.5 kg"),
            ("100 ml", "l", "0.1 l"),
            ("30 mbar", "bar", "0.03 bar"),
            ("1.2 kWh", "Wh", "1200 Wh"),
            ("90 min", "h", "1.5 h"),
            ("2 h", "s", "7200 s"),
            ("2 weeks", "days", "14 days"),
            ("5 years", "months", "60 months"),
            ("0.2 kg/h", "g/h", "200 g/h"),
            ("1440 l/day", "l/min", "1 l/min"),
            ("-20 °C", "°C", "-20 °C"),
        ];
        for (from, unit, expected) in table {
            let converted = quantity(from).to(Unit::find(unit).unwrap());
            assert_eq!(converted, Some(quantity(expected)), "{from} in {unit}");
        }
    }

    #[test]
    fn dimensions_never_mix() {
        let table = [("6 kg", "l"), ("1 months", "days"), ("24 h", "days"), ("50 ppm", "mg/l")];
        for (from, unit) in table {
            let unit = Unit::find(unit).unwrap();
            assert_eq!(quantity(from).to(unit), None, "{from} in {unit:?}");
            assert_eq!(quantity(from).compare(Quantity { amount: 1.0, unit }), None);
        }
    }

    #[test]
    fn the_zero_of_celsius_is_not_the_base() {
        assert_eq!(quantity("20 °C").base(), 293.15);
        assert_eq!(quantity("20 kg").base(), 20_000.0);
    }

    #[test]
    fn a_range_contains_its_ends_in_every_unit() {
        let table = [
            ("75 to 250 W", "75 W", Some(true)),
            ("75 to 250 W", "0.25 kW", Some(true)),
            ("75 to 250 W", "0.251 kW", Some(false)),
            ("75 to 250 W", "74.9 W", Some(false)),
            ("0.1 to 0.3 m", "30 cm", Some(true)),
            ("-20 to 5 °C", "-20 °C", Some(true)),
            ("-20 to 5 °C", "-20.1 °C", Some(false)),
            ("-20 to 5 °C", "5 V", None),
        ];
        for (range, text, expected) in table {
            let range = QuantityRange::parse(range).unwrap();
            assert_eq!(range.contains(quantity(text)), expected, "{text} in {range}");
        }
    }

    #[test]
    fn rounding_of_a_conversion_moves_nothing_across_a_limit() {
        let (metres, centimetres) = (quantity("0.57 m"), quantity("57 cm"));
        assert_eq!(metres.compare(centimetres), Some(Ordering::Equal));
        assert_eq!(quantity("80 Ah").compare(quantity("80.0001 Ah")), Some(Ordering::Less));
        let broken = Quantity { amount: f64::NAN, ..metres };
        assert_eq!(broken.compare(metres), None);
    }
}
