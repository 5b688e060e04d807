//! Reading: what is read, every mistake beside its message and its help, and texts that nobody
//! would write.

use super::{Quantity, QuantityRange, UNITS, Unit};

/// Text, what is wrong with it, what to do.
type Row = (&'static str, &'static str, &'static str);

const PLAIN: &str = "write a number in digits, a space and a unit, as in `6 kg`";
const DIGITS: &str = "write digits, with a `-` before them or a `.` among them where needed, as in `-2.5 °C`";
const ENDS: &str = "write both ends of a range with `to`, as in `3 to 19 kg`";
const BOTH: &str = "write both ends with `to`, as in `3 to 19 kg`";
const ONE: &str = "write one quantity, as in `6 kg`";
const NO_COMMAS: &str = "write it without commas, and with a point before decimals";
const POINT: &str = "write `2.5`, with a decimal point";

#[rustfmt::skip]
const QUANTITIES: &[Row] = &[
    ("", "the quantity is empty", PLAIN),
    (" \u{a0}\n", "the quantity is empty", PLAIN),
    ("six kg", "`six kg` does not start with a number", PLAIN),
    ("kg 6", "`kg 6` does not start with a number", PLAIN),
    ("- 20 °C", "`- 20 °C` does not start with a number", PLAIN),
    ("٣ kg", "`٣ kg` does not start with a number", PLAIN),
    ("🚐", "`🚐` does not start with a number", PLAIN),
    ("NaN kg", "`NaN kg` is not a finite number", PLAIN),
    ("-inf V", "`-inf V` is not a finite number", PLAIN),
    ("1e3 kg", "`1e3` is not a number in plain digits", DIGITS),
    ("0x10 kg", "`0x10` is not a number in plain digits", DIGITS),
    ("1.2.3 kg", "`1.2.3` is not a number in plain digits", DIGITS),
    (".5 kg", "`.5` is not a number in plain digits", DIGITS),
    ("5. kg", "`5.` is not a number in plain digits", DIGITS),
    ("+5 °C", "`+5` is not a number in plain digits", DIGITS),
    ("3-19 kg", "`3-19` is not a number in plain digits", ENDS),
    ("3–19 kg", "`3–19` is not a number in plain digits", ENDS),
    ("3 – 19 kg", "`3 – 19 kg` is a range, and one quantity is wanted", ONE),
    ("3 to 19 kg", "`3 to 19 kg` is a range, and one quantity is wanted", ONE),
    ("2,5 kg", "`2,5 kg` has a comma in its number", POINT),
    ("2,5kg", "`2,5kg` has a comma in its number", POINT),
    ("1,500 kg", "`1,500 kg` has a comma in its number", "write `1500`, or `1.500` if it parts decimals"),
    ("1,000,000 mm", "`1,000,000 mm` has a comma in its number", NO_COMMAS),
    ("1.234,5 mm", "`1.234,5 mm` has a comma in its number", NO_COMMAS),
    ("6, kg", "`6, kg` has a comma in its number", NO_COMMAS),
    ("10 000 km", "`10 000 km` has a space in its number", "write the number without spaces, as in `10000 km`"),
    ("6kg", "`6kg` has no space between the number and the unit", "write `6 kg`"),
    ("2.5mm2", "`2.5mm2` has no space between the number and the unit", "write `2.5 mm2`"),
    ("-20°C", "`-20°C` has no space between the number and the unit", "write `-20 °C`"),
    ("12VDC", "`12VDC` has no space between the number and the unit", "write `12 V`"),
    ("6lbs", "`6lbs` has no space between the number and the unit", "put a space after `6`; use `g` or `kg` for a mass"),
    ("4", "`4` has no unit", "write a space and a unit after it; for a plain number write `4 count`"),
    ("6 kgs", "`kgs` is not a unit that is known here", "did you mean `kg`?"),
    ("6 lbs", "`lbs` is not a unit that is known here", "use `g` or `kg` for a mass"),
    ("20 degC", "`degC` is not a unit that is known here", "did you mean `°C`?"),
    ("20 C", "`C` is not a unit that is known here", "did you mean `°C`?"),
    ("12 V dc", "`V dc` is not a unit that is known here", "did you mean `V`?"),
    ("10000000000 mm", "`10000000000 mm` is larger than anything in a vehicle", "write it in a larger unit, or correct the number"),
];

#[rustfmt::skip]
const RANGES: &[Row] = &[
    ("", "the quantity is empty", PLAIN),
    ("6 kg", "`6 kg` is not a range", BOTH),
    ("3-19 kg", "`3-19 kg` is not a range", BOTH),
    ("to 19 kg", "`to 19 kg` is not a range", BOTH),
    ("12 V to 10 V", "`12 V to 10 V` has its larger end first", "put the smaller end first: `10 to 12 V`"),
    ("-5 to -20 °C", "`-5 to -20 °C` has its larger end first", "put the smaller end first: `-20 to -5 °C`"),
    ("3 m to 19 kg", "`3 m` is a length, not a mass", "use `g` or `kg` for a mass"),
    ("3kg to 19 kg", "`3kg` has no space between the number and the unit", "write `3 kg`"),
    ("3 to 19", "`19` has no unit", "write a space and a unit after it; for a plain number write `19 count`"),
    ("1 to 2 to 3 V", "`2 to 3 V` is a range, and one quantity is wanted", ONE),
];

#[test]
fn quantities_are_read() {
    let table = [
        ("6 kg", 6.0, "kg"),
        ("  10.5   l ", 10.5, "l"),
        ("6\u{a0}kg", 6.0, "kg"),
        ("6\u{202f}kg", 6.0, "kg"),
        ("-20 °C", -20.0, "°C"),
        ("\u{2212}20 °C", -20.0, "°C"),
        ("2.5 mm2", 2.5, "mm2"),
        ("007 days", 7.0, "days"),
        ("1 month", 1.0, "months"),
        ("4 count", 4.0, "count"),
        ("80 %", 80.0, "%"),
        ("1000000000 mm", 1e9, "mm"),
    ];
    for (text, amount, symbol) in table {
        let unit = Unit::find(symbol).unwrap();
        assert_eq!(Quantity::parse(text), Ok(Quantity { amount, unit }), "{text}");
    }
    let zero = Quantity::parse("-0 °C").unwrap().amount;
    assert!(zero.is_sign_positive());
}

#[test]
fn ranges_are_read() {
    let table = [
        ("3 to 19 kg", 3.0, 19.0, "kg"),
        ("3 kg to 19 kg", 3.0, 19.0, "kg"),
        ("500 g to 2 kg", 0.5, 2.0, "kg"),
        ("-20 to 5 °C", -20.0, 5.0, "°C"),
        ("\u{2212}20 to \u{2212}5 °C", -20.0, -5.0, "°C"),
        ("5 to 5 V", 5.0, 5.0, "V"),
        ("3\u{a0}to\u{a0}19\u{a0}kg", 3.0, 19.0, "kg"),
        ("1 year to 18 months", 12.0, 18.0, "months"),
    ];
    for (text, low, high, symbol) in table {
        let unit = Unit::find(symbol).unwrap();
        assert_eq!(QuantityRange::parse(text), Ok(QuantityRange { low, high, unit }), "{text}");
    }
}

#[test]
fn what_is_written_reads_back() {
    for unit in UNITS.iter().copied() {
        for amount in [0.0, 1.0, 2.5, -20.0, 0.1 + 0.2, 1e9, 1e-7] {
            let quantity = Quantity { amount, unit };
            assert_eq!(Quantity::parse(&quantity.to_string()), Ok(quantity));
            let range = QuantityRange { low: amount - 0.3, high: amount, unit };
            assert_eq!(QuantityRange::parse(&range.to_string()), Ok(range));
        }
    }
}

#[test]
fn the_dimension_can_be_asked_for() {
    let kilowatt = Unit::find("kW").unwrap();
    let kept = Quantity::parse_as("850 W", kilowatt).map(|quantity| quantity.to_string());
    assert_eq!(kept, Ok("850 W".to_string()));
    let error = QuantityRange::parse_as(" 3 to 19 kg ", kilowatt).unwrap_err();
    assert_eq!(error.to_string(), "`3 to 19 kg` is a mass, not a power");
    assert_eq!(error.help(), "use `W` or `kW` for a power");
}

#[test]
fn every_mistake_is_named_in_the_authors_words_with_a_way_out() {
    let quantities = QUANTITIES.iter().map(|row| (row, Quantity::parse(row.0).err()));
    let ranges = RANGES.iter().map(|row| (row, QuantityRange::parse(row.0).err()));
    for ((text, message, help), error) in quantities.chain(ranges) {
        let error = error.unwrap_or_else(|| panic!("{text} is refused"));
        assert_eq!(error.to_string(), *message, "{text}");
        assert_eq!(error.help(), *help, "{text}");
    }
}

#[test]
fn a_message_is_one_short_line_whatever_the_text() {
    let long = "9".repeat(100_000);
    let long_unit = format!("6 {}", "x".repeat(100_000));
    for text in [&long, &long_unit, "6 k\ng", "\u{1b}[31m 6", "`6` kg", "6k`g", "6 \0"] {
        let error = Quantity::parse(text).unwrap_err();
        for line in [error.to_string(), error.help()] {
            assert!(line.chars().count() < 300, "{line}");
            assert!(!line.contains(char::is_control), "{line:?}");
            assert!(line.matches('`').count().is_multiple_of(2), "{line:?}");
            assert!(!line.starts_with(char::is_uppercase), "{line:?}");
            assert!(!line.ends_with('.'), "{line:?}");
        }
    }
}

/// Every text of up to four of these pieces is read or refused, and what is read is sound.
#[test]
fn no_text_makes_reading_panic() {
    let pieces = ["6", " ", "-", "\u{2212}", ".", ",", " to ", "kg", "°", "C", "e", "\u{a0}", "🚐"];
    let mut texts = vec![String::new()];
    for _ in 0..4 {
        let grow = |text: &String| pieces.map(|piece| format!("{text}{piece}"));
        texts = texts.iter().flat_map(grow).collect();
        for text in &texts {
            match Quantity::parse(text) {
                Ok(quantity) => assert_eq!(Quantity::parse(&quantity.to_string()), Ok(quantity)),
                Err(error) => assert!(!error.help().is_empty() && !error.to_string().is_empty()),
            }
            if let Ok(range) = QuantityRange::parse(text) {
                assert!(range.low <= range.high, "{text}");
            }
        }
    }
}
