//! Calculations give the published check values, through the same door as manifests.

mod common;

use common::read;
use lockerleaf::figures::{self, Calculation, Gives, Takes};
use lockerleaf::model::quantity::{Quantity, Unit};
use std::collections::{BTreeMap, BTreeSet};

/// A sum as an author writes it, worked out in the unit it gives.
fn work_out(calculation: &Calculation, with: &BTreeMap<String, String>) -> Quantity {
    let mut unit = None;
    let mut number = |input: &figures::Input| {
        let text = with.get(input.name).unwrap_or_else(|| panic!("{} needs {}", calculation.name, input.name));
        match input.takes {
            Takes::Words(_) => input.word(text).unwrap_or_else(|| panic!("{text} is no word of {}", input.name)),
            Takes::Any => {
                let quantity = Quantity::parse(text).unwrap();
                unit = Some(quantity.unit);
                quantity.amount
            }
            Takes::Unit(symbol) => Quantity::parse(text).unwrap().to(Unit::find(symbol).unwrap()).unwrap().amount,
        }
    };
    let inputs: Vec<f64> = calculation.inputs.iter().map(&mut number).collect();
    let unit = match calculation.gives {
        Gives::Unit(symbol) => Unit::find(symbol),
        Gives::UnitOf(_) => unit,
    };
    Quantity { amount: calculation.work_out(&inputs).unwrap(), unit: unit.unwrap() }
}

#[test]
fn published_values_come_out() {
    let table: toml::Table = toml::from_str(&read("tests/figures/rows.toml")).unwrap();
    let (mut ids, mut calculations, mut wrong) = (BTreeSet::new(), BTreeSet::new(), Vec::new());
    let rows = table["row"].as_array().unwrap();
    for row in rows {
        let text = |key: &str| row[key].as_str().unwrap().to_string();
        let (id, name) = (text("id"), text("calculation"));
        let with = row["with"].as_table().unwrap().iter();
        let with = with.map(|(key, value)| (key.clone(), value.as_str().unwrap().to_string())).collect();
        let calculation = figures::find(&name).unwrap_or_else(|| panic!("{id}: there is no {name}"));
        let result = work_out(calculation, &with);
        let expect = Quantity::parse(&text("expect")).unwrap().to(result.unit).unwrap();
        let room = match (row.get("abs"), row.get("rel")) {
            (Some(room), None) => room.as_float().unwrap(),
            (None, Some(share)) => share.as_float().unwrap() * expect.amount.abs(),
            _ => panic!("{id} has one of abs and rel"),
        };
        if !((result.amount - expect.amount).abs() <= room + 1e-12 * expect.amount.abs()) {
            wrong.push(format!("{id}: {name} gives {result}, expected is {expect} ({})", text("source")));
        }
        assert!(text("source").len() >= 5, "{id} says no source");
        ids.insert(id);
        calculations.insert(name);
    }
    println!("{} rows checked: {} values, {} calculations", rows.len(), ids.len(), calculations.len());
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(ids.len() > 120, "only {} values", ids.len());
}

/// Every calculation is held by a published value, or says here why there is none.
#[test]
fn each_calculation_has_a_published_value() {
    let without = [
        ("charge-time", "arithmetic"),
        ("charge-used", "arithmetic"),
        ("draw-limit", "its table is from memory"),
        ("heat-up-time-both", "heat-up-time with both powers"),
        ("load-share", "arithmetic"),
        ("share-of", "arithmetic"),
        ("solar-day", "clear-sky times a share"),
        ("usable-capacity", "arithmetic"),
        ("water-days", "arithmetic"),
        ("water-mass", "the round density of loads"),
    ];
    let rows = read("tests/figures/rows.toml");
    for calculation in figures::CALCULATIONS {
        let held = rows.contains(&format!("calculation = \"{}\"\n", calculation.name));
        let excused = without.iter().any(|(name, _)| *name == calculation.name);
        assert!(held != excused, "{}", calculation.name);
    }
}
