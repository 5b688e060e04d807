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
        let mut words = calculation.formula.split(|c: char| !c.is_alphabetic());
        for Input { name, .. } in calculation.inputs {
            assert!(words.clone().any(|word| word == *name), "{}: {name}", calculation.name);
        }
        assert!(words.next().is_some());
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
/// what is not a number is refused wherever it stands.
#[test]
fn whatever_goes_in_only_finite_numbers_come_out() {
    let values = [0.0, 1.0, -1.0, 50.0, 1e9, 1e300, 1e-320, f64::INFINITY, f64::NAN];
    for calculation in CALCULATIONS {
        let length = calculation.inputs.len();
        for mut number in 0..values.len().pow(length as u32) {
            let mut inputs = vec![0.0; length];
            for input in &mut inputs {
                *input = values[number % values.len()];
                number /= values.len();
            }
            let result = calculation.work_out(&inputs);
            let sound = result.as_ref().is_ok_and(|number| number.is_finite() && *number >= 0.0);
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
        ("bleach-dose", &["70 l", "50 mg/l", "5 %"], "70 ml"),
        ("current", &["0.125 kW", "230 V"], "0.543 A"),
        ("gas-hours", &["11 kg", "propane", "2000 W"], "71 h"),
        ("gas-use", &["2500 W", "propane"], "194 g/h"),
        ("heat-up-time", &["10000 ml", "15 °C", "60 °C", "850 W"], "37 min"),
        ("share-of", &["20 l", "80 %"], "16 l"),
        ("usable-capacity", &["100 Ah", "80 %"], "80 Ah"),
        ("water-mass", &["95 l"], "95 kg"),
    ];
    for (name, given, expected) in table {
        assert_eq!(work_out(name, given), *expected, "{name}");
    }
    let tested: Vec<_> = table.iter().map(|row| row.0).collect();
    let all: Vec<_> = CALCULATIONS.iter().map(|calculation| calculation.name).collect();
    assert_eq!(tested, all);
}
