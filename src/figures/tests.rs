//! The list of calculations as data, what holds for all of them, and how a caller uses one.

use super::*;
use crate::model::quantity::{Quantity, Unit};

#[test]
fn the_list_is_sorted_and_each_name_stands_once() {
    let names: Vec<_> = CALCULATIONS.iter().map(|calculation| calculation.name).collect();
    assert!(names.is_sorted_by(|a, b| a < b), "{names:?}");
    for name in names {
        assert!(name.bytes().all(|b| b.is_ascii_lowercase() || b == b'-'), "{name}");
        assert_eq!(find(name).map(|found| found.name), Some(name));
    }
    assert!(find("gas_hours").is_none() && find("").is_none());
}

#[test]
fn each_calculation_is_documented() {
    for Calculation { name, summary, formula, limits, source, digits, .. } in CALCULATIONS {
        for sentence in [summary, limits] {
            assert!(sentence.starts_with(char::is_uppercase), "{name}: {sentence}");
            assert!(sentence.ends_with('.'), "{name}: {sentence}");
        }
        for text in [summary, formula, limits, source] {
            assert!(text.len() >= 10 && !text.contains("  "), "{name}: {text}");
        }
        assert!((1..=4).contains(digits), "{name}");
    }
}

#[test]
fn each_formula_is_in_terms_of_its_inputs() {
    for calculation in CALCULATIONS {
        let words = calculation.formula.split(|c: char| !c.is_alphabetic() && c != '-');
        for Input { name, .. } in calculation.inputs {
            assert!(words.clone().any(|word| word == *name), "{}: {name}", calculation.name);
        }
    }
}

#[test]
fn each_unit_is_in_the_table_and_each_input_is_told_apart() {
    for Calculation { name, inputs, gives, .. } in CALCULATIONS {
        for (at, input) in inputs.iter().enumerate() {
            assert!(inputs[..at].iter().all(|other| other.name != input.name), "{name}");
            match input.takes {
                Takes::Unit(symbol) => assert!(Unit::find(symbol).is_some(), "{name}: {symbol}"),
                Takes::Words(words) => assert!(words.len() >= 2, "{name}"),
                Takes::Any => {}
            }
        }
        match gives {
            Gives::Unit(symbol) => assert!(Unit::find(symbol).is_some(), "{name}: {symbol}"),
            Gives::UnitOf(input) => {
                let takes = inputs.iter().find(|one| one.name == *input).map(|one| one.takes);
                assert_eq!(takes, Some(Takes::Any), "{name}");
            }
        }
    }
}

/// Every combination of these inputs gives a finite result or an error, and never a panic; and
/// what is not a number is refused wherever it stands. Only temperatures may be below nought.
#[test]
fn whatever_goes_in_only_finite_numbers_come_out() {
    let values = [0.0, 1.0, -1.0, 50.0, 1e9, 1e300, 1e-320, f64::INFINITY, f64::NAN];
    for calculation in CALCULATIONS {
        let least = if calculation.gives == Gives::Unit("°C") { -273.15 } else { 0.0 };
        let length = calculation.inputs.len();
        for mut number in 0..values.len().pow(length as u32) {
            let mut inputs = vec![0.0; length];
            for input in &mut inputs {
                *input = values[number % values.len()];
                number /= values.len();
            }
            let result = calculation.work_out(&inputs);
            let sound = result.as_ref().is_ok_and(|number| number.is_finite() && *number >= least);
            assert!(sound || result.is_err(), "{}: {inputs:?}", calculation.name);
            let broken = inputs.iter().any(|input| input.is_nan());
            assert!(!broken || result.is_err(), "{}: {inputs:?}", calculation.name);
        }
    }
}

#[test]
fn words_become_numbers_only_where_words_are_taken() {
    let [_, gas, power] = find("gas-hours").unwrap().inputs else {
        panic!("gas-hours has three inputs");
    };
    assert_eq!(gas.word("propane"), Some(0.0));
    assert_eq!(gas.word("butane"), Some(1.0));
    assert_eq!(gas.word("Butane"), None);
    assert_eq!(power.word("propane"), None);
}

/// What a caller does: turns what an author wrote into numbers, works it out, and rounds.
fn work_out(name: &str, given: &[&str]) -> String {
    let calculation = find(name).unwrap();
    let number = |(input, text): (&Input, &&str)| match input.takes {
        Takes::Words(_) => input.word(text).unwrap(),
        Takes::Any => Quantity::parse(text).unwrap().amount,
        Takes::Unit(unit) => {
            let quantity = Quantity::parse(text).unwrap();
            quantity.to(Unit::find(unit).unwrap()).unwrap().amount
        }
    };
    let inputs: Vec<f64> = calculation.inputs.iter().zip(given).map(number).collect();
    let unit = match calculation.gives {
        Gives::Unit(symbol) => Unit::find(symbol).unwrap(),
        Gives::UnitOf(name) => {
            let at = calculation.inputs.iter().position(|input| input.name == name).unwrap();
            Quantity::parse(given[at]).unwrap().unit
        }
    };
    let amount = calculation.work_out(&inputs).unwrap();
    Quantity { amount, unit }.rounded(calculation.digits).to_string()
}

#[test]
fn every_calculation_works_on_what_authors_write() {
    let table: &[(&str, &[&str], &str)] = &[
        ("battery-days", &["110 Ah", "50 %", "40 Ah"], "1.4 days"),
        ("battery-hours", &["100 Ah", "20 h", "10 A", "1.2 count"], "8.7 h"),
        ("bleach-dose", &["70 l", "50 mg/l", "5 %"], "70 ml"),
        ("cable-area", &["5 m", "10 A", "0.3 V"], "5.75 mm2"),
        ("cable-drop", &["5 m", "10 A", "2.5 mm2", "20 °C"], "0.69 V"),
        ("cable-drop-most", &["500 cm", "10 A", "2.5 mm2"], "0.798 V"),
        ("charge-time", &["50 Ah", "20 A", "85 %"], "2.9 h"),
        ("charge-used", &["0.045 kW", "480 min", "12 V"], "30 Ah"),
        ("clear-sky", &["50.8 count", "187 count", "100 m"], "8.583 kWh"),
        ("coldest-air", &["30 mbar", "0 %", "100 %", "0 %"], "0.28 °C"),
        ("current", &["0.125 kW", "230 V"], "0.543 A"),
        ("cylinder-chill", &["466 g/h", "propane"], "49 W"),
        ("daylight", &["-20 count", "246 count"], "11.7 h"),
        ("draw-limit", &["6 kg", "long"], "0.2 kg/h"),
        ("element-current", &["2 kW"], "8.7 A"),
        ("element-power", &["1000 W", "230 V", "216.2 V"], "884 W"),
        ("gas-days", &["11 kg", "propane", "2 kW", "4 h"], "18 days"),
        ("gas-hours", &["11 kg", "propane", "2000 W"], "71 h"),
        ("gas-mass", &["20 l", "80 %", "propane", "15 °C"], "8.12 kg"),
        ("gas-use", &["2500 W", "propane"], "194 g/h"),
        ("heat-up-time", &["10000 ml", "15 °C", "60 °C", "850 W"], "37 min"),
        ("heat-up-time-both", &["10 l", "15 °C", "60 °C", "1.3 kW", "850 W"], "15 min"),
        ("inverter-current", &["1 kW", "12 V", "90 %"], "92.6 A"),
        ("liquid-full", &["80 %", "propane"], "69.1 °C"),
        ("load-share", &["0.75 kg/h", "1500 g/h"], "50 %"),
        ("minimum-payload", &["4 count", "7450 mm"], "114.5 kg"),
        ("payload", &["3500 kg", "2850 kg", "120 kg", "3 count"], "305 kg"),
        ("peukert-exponent", &["20 h", "5 A", "3 h", "25 A"], "1.18 count"),
        ("share-of", &["20 l", "80 %"], "16 l"),
        ("solar-day", &["52 count", "june", "100 W", "50 %"], "430 Wh"),
        ("sun-above-air", &["-20 count", "246 count"], "8.943 kWh"),
        ("usable-capacity", &["100 Ah", "80 %"], "80 Ah"),
        ("vapour-pressure", &["0 °C", "50 %", "50 %", "0 %"], "2.89 bar"),
        ("warm-water-mass", &["100 l", "60 °C"], "98.32 kg"),
        ("water-days", &["100 l", "20 l/day", "2 count"], "2.5 days"),
        ("water-growth", &["10 l", "15 °C", "60 °C"], "0.16 l"),
        ("water-mass", &["95 l"], "95 kg"),
    ];
    for (name, given, expected) in table {
        assert_eq!(work_out(name, given), *expected, "{name}");
    }
    let tested: Vec<_> = table.iter().map(|row| row.0).collect();
    let all: Vec<_> = CALCULATIONS.iter().map(|calculation| calculation.name).collect();
    assert_eq!(tested, all);
}
