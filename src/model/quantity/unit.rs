//! The units that a book may use: one table, from which everything about units follows.

use std::fmt;

/// What a unit measures. Units convert into each other only within a dimension.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[allow(missing_docs, reason = "each is what `Dimension::name` says")]
pub enum Dimension {
    Area,
    Charge,
    Concentration,
    Count,
    Current,
    Days,
    Energy,
    Length,
    Mass,
    MassFlow,
    Months,
    /// By volume of air, as CO alarms state it: so it is not a concentration in water.
    PartsPerMillion,
    Power,
    Pressure,
    Share,
    Speed,
    Temperature,
    Time,
    Voltage,
    Volume,
    VolumeFlow,
}

/// A unit of the table [`UNITS`].
#[derive(Clone, Copy)]
pub struct Unit {
    /// What authors write: `mm2`.
    pub symbol: &'static str,
    /// What readers see: `mm²`. Empty when the number says it all.
    pub shown: &'static str,
    /// What it measures.
    pub dimension: Dimension,
    /// How many of the dimension's base unit make one of it.
    pub factor: f64,
    /// Where its zero lies, in base units.
    pub offset: f64,
    /// How it is written, and shown, when there is one of it: `day`.
    pub(super) one: Option<&'static str>,
    /// What people write when they mean this unit.
    also: &'static [&'static str],
}

/// All units, by dimension. A whole factor from the smallest unit up keeps conversions exact.
#[rustfmt::skip]
pub const UNITS: &[Unit] = &[
    unit("mm", Dimension::Length, 1.0).also(&["millimetre", "millimetres", "millimeters"]),
    unit("cm", Dimension::Length, 10.0).also(&["centimetre", "centimetres", "centimeters"]),
    unit("m", Dimension::Length, 1_000.0).also(&["metre", "metres", "meter", "meters"]),
    unit("km", Dimension::Length, 1_000_000.0).also(&["kilometre", "kilometres", "kilometers"]),
    unit("mm2", Dimension::Area, 1.0).shown("mm²").also(&["mm²", "mm^2", "sq mm", "sqmm"]),
    unit("g", Dimension::Mass, 1.0).also(&["gram", "grams", "gramme", "grammes"]),
    unit("kg", Dimension::Mass, 1_000.0).also(&["kgs", "kilo", "kilos", "kilogram", "kilograms"]),
    unit("ml", Dimension::Volume, 1.0).also(&["millilitre", "millilitres", "milliliters"]),
    unit("l", Dimension::Volume, 1_000.0).also(&["litre", "litres", "liter", "liters", "ltr"]),
    unit("mbar", Dimension::Pressure, 1.0).also(&["mb", "millibar", "millibars"]),
    unit("bar", Dimension::Pressure, 1_000.0).also(&["bars"]),
    unit("V", Dimension::Voltage, 1.0).also(&["volt", "volts", "VDC", "VAC"]),
    unit("mA", Dimension::Current, 1.0).also(&["milliamp", "milliamps"]),
    unit("A", Dimension::Current, 1_000.0).also(&["amp", "amps", "ampere", "amperes"]),
    unit("Ah", Dimension::Charge, 1.0).also(&["amp-hours", "amp hours", "ampere hours"]),
    unit("W", Dimension::Power, 1.0).also(&["watt", "watts"]),
    unit("kW", Dimension::Power, 1_000.0).also(&["kilowatt", "kilowatts"]),
    unit("Wh", Dimension::Energy, 1.0).also(&["watt-hours", "watt hours"]),
    unit("kWh", Dimension::Energy, 1_000.0).also(&["kilowatt-hours", "kilowatt hours"]),
    unit("°C", Dimension::Temperature, 1.0).offset(273.15)
        .also(&["C", "ºC", "℃", "°", "deg", "degC", "deg C", "degrees", "degrees C", "celsius"]),
    unit("s", Dimension::Time, 1.0).also(&["sec", "secs", "second", "seconds"]),
    unit("min", Dimension::Time, 60.0).also(&["mins", "minute", "minutes"]),
    unit("h", Dimension::Time, 3_600.0).also(&["hr", "hrs", "hour", "hours"]),
    unit("days", Dimension::Days, 1.0).one("day").also(&["d"]),
    unit("weeks", Dimension::Days, 7.0).one("week").also(&["wk", "wks"]),
    unit("months", Dimension::Months, 1.0).one("month").also(&["mth", "mths"]),
    unit("years", Dimension::Months, 12.0).one("year").also(&["y", "yr", "yrs"]),
    unit("%", Dimension::Share, 1.0).also(&["percent", "per cent", "pc"]),
    unit("g/h", Dimension::MassFlow, 1.0).also(&["g/hr", "grams per hour"]),
    unit("kg/h", Dimension::MassFlow, 1_000.0).also(&["kg/hr", "kilos per hour"]),
    unit("l/day", Dimension::VolumeFlow, 1.0).also(&["l/d", "litres per day", "litres a day"]),
    unit("l/min", Dimension::VolumeFlow, 1_440.0).also(&["lpm", "litres per minute"]),
    unit("mg/l", Dimension::Concentration, 1.0).also(&["mg per litre"]),
    unit("ppm", Dimension::PartsPerMillion, 1.0).also(&["parts per million"]),
    unit("km/h", Dimension::Speed, 1.0).also(&["kph", "kmh", "km/hr"]),
    unit("count", Dimension::Count, 1.0).shown("").also(&["pieces", "pcs"]),
];

const fn unit(symbol: &'static str, dimension: Dimension, factor: f64) -> Unit {
    Unit { symbol, shown: symbol, dimension, factor, offset: 0.0, one: None, also: &[] }
}

impl Unit {
    /// The unit that an author writes as `text`; the singular of a word is accepted.
    pub fn find(text: &str) -> Option<Unit> {
        UNITS.iter().copied().find(|unit| unit.symbol == text || unit.one == Some(text))
    }

    /// Every spelling of it: the symbol, the singular, and what people write instead.
    pub(super) fn names(self) -> impl Iterator<Item = &'static str> {
        let symbols = [self.symbol].into_iter().chain(self.one);
        symbols.chain(self.also.iter().copied())
    }

    const fn shown(mut self, shown: &'static str) -> Unit {
        self.shown = shown;
        self
    }

    const fn offset(mut self, offset: f64) -> Unit {
        self.offset = offset;
        self
    }

    const fn one(mut self, one: &'static str) -> Unit {
        self.one = Some(one);
        self
    }

    const fn also(mut self, also: &'static [&'static str]) -> Unit {
        self.also = also;
        self
    }
}

impl Dimension {
    /// What it is called in a sentence: "a mass".
    pub fn name(self) -> &'static str {
        match self {
            Dimension::Area => "an area",
            Dimension::Charge => "a charge",
            Dimension::Concentration => "a concentration",
            Dimension::Count => "a count",
            Dimension::Current => "a current",
            Dimension::Days => "a number of days",
            Dimension::Energy => "an energy",
            Dimension::Length => "a length",
            Dimension::Mass => "a mass",
            Dimension::MassFlow => "a mass each hour",
            Dimension::Months => "a number of months",
            Dimension::PartsPerMillion => "a number of parts per million",
            Dimension::Power => "a power",
            Dimension::Pressure => "a pressure",
            Dimension::Share => "a share",
            Dimension::Speed => "a speed",
            Dimension::Temperature => "a temperature",
            Dimension::Time => "a time",
            Dimension::Voltage => "a voltage",
            Dimension::Volume => "a volume",
            Dimension::VolumeFlow => "a flow of water",
        }
    }

    /// Its units, smallest first.
    pub fn units(self) -> impl Iterator<Item = Unit> {
        UNITS.iter().copied().filter(move |unit| unit.dimension == self)
    }
}

impl PartialEq for Unit {
    fn eq(&self, other: &Unit) -> bool {
        self.symbol == other.symbol
    }
}

impl Eq for Unit {}

impl fmt::Debug for Unit {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.symbol)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::HashSet;

    #[test]
    fn every_spelling_is_one_units_own() {
        let mut seen = HashSet::new();
        for unit in UNITS {
            for name in unit.names() {
                assert!(seen.insert(name), "`{name}` stands twice in the table");
                assert_eq!(name, name.trim(), "`{name}`");
            }
        }
    }

    #[test]
    fn each_dimension_counts_up_from_its_base() {
        for unit in UNITS {
            let factors: Vec<f64> = unit.dimension.units().map(|unit| unit.factor).collect();
            assert_eq!(factors[0], 1.0, "{:?} has a base", unit.dimension);
            assert!(factors.is_sorted_by(|a, b| a < b), "{:?}", unit.dimension);
            assert!(factors.iter().all(|factor| factor.fract() == 0.0), "{:?}", unit.dimension);
        }
    }

    #[test]
    fn units_are_found_by_what_authors_write_and_by_nothing_else() {
        for unit in UNITS {
            assert_eq!(Unit::find(unit.symbol), Some(*unit));
        }
        assert_eq!(Unit::find("month").map(|unit| unit.symbol), Some("months"));
        for text in ["", "KG", "kg ", "mm²", "kilos", "°F"] {
            assert_eq!(Unit::find(text), None, "{text}");
        }
    }

    #[test]
    fn readers_see_other_words_only_where_the_table_says_so() {
        let differ: Vec<_> = UNITS.iter().filter(|unit| unit.shown != unit.symbol).collect();
        let seen: Vec<_> = differ.iter().map(|unit| (unit.symbol, unit.shown)).collect();
        assert_eq!(seen, [("mm2", "mm²"), ("count", "")]);
    }

    #[test]
    fn dimensions_read_well_in_a_sentence() {
        for name in UNITS.iter().map(|unit| unit.dimension.name()) {
            assert!(name.starts_with("a ") || name.starts_with("an "), "{name}");
        }
    }
}
