//! Calculations give the published check values, through the same door as manifests.

mod common;

use common::read;
use lockerleaf::Looked;
use lockerleaf::figures::dials::{Dials, Setting};
use lockerleaf::figures::{self, Calculation, Gives, Takes};
use lockerleaf::model::guide::PageBody;
use lockerleaf::model::quantity::{Quantity, Unit};
use lockerleaf::model::sums::SumsPage;
use std::collections::{BTreeMap, BTreeSet};
use std::io::Write;
use std::sync::LazyLock;

/// The demo, looked at once.
static DEMO: LazyLock<Looked> = LazyLock::new(|| {
    let files = lockerleaf::load::disk::Folder::new(common::root());
    lockerleaf::look(&files).unwrap()
});

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
        let off = (result.amount - expect.amount).abs();
        if off.is_nan() || off > room + 1e-12 * expect.amount.abs() {
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

/// The dials of a van of the demo.
fn dials(looked: &Looked, van: &lockerleaf::model::van::Van) -> Dials {
    let phrases = looked.theme.as_ref().unwrap().phrases("en");
    let guide = lockerleaf::compose::compose(&looked.book, van, "en", phrases);
    let page = guide.pages.into_iter().find_map(|page| match page.body {
        PageBody::Figures(sums) => Some(sums.dials),
        _ => None,
    });
    page.expect("each guide has a page of figures")
}

/// Every combination of a few places of each dial.
fn settings() -> impl Iterator<Item = Setting> {
    let outsides = (-4..=8).map(|step| f64::from(step) * 5.0);
    outsides.flat_map(|outside| {
        [3.0, 6.0, 10.0, 16.0].into_iter().flat_map(move |pitch| {
            [0.0, 130.0, 500.0].into_iter().flat_map(move |luggage| {
                (1..=4).map(move |people| {
                    let (days, water) = (f64::from(people as u8) * 3.0, luggage / 5.0);
                    Setting { people, days, outside, pitch, luggage, water }
                })
            })
        })
    })
}

/// The script on the page works out what the program does. Without Node this says so, and checks that there is
/// something to compare.
#[test]
fn the_script_of_the_page_agrees() {
    let looked = &*DEMO;
    let case = |dials: &Dials, set| serde_json::json!({ "set": set, "answers": dials.answers(set) });
    let van = |van| {
        let dials = dials(looked, van);
        let cases: Vec<_> = settings().map(|set| case(&dials, set)).collect();
        serde_json::json!({ "van": van.name, "dials": dials, "cases": cases })
    };
    let vans: Vec<_> = looked.vans.iter().map(van).collect();
    assert!(vans.iter().any(|van| !van["dials"]["axles"].is_null() && !van["dials"]["gas"].is_null()));
    let input = serde_json::json!({ "vans": vans }).to_string();
    let root = common::root();
    let mut node = std::process::Command::new("node");
    node.arg(root.join("tests/figures/agree.mjs")).arg(root.join("themes/daymark/scripts/sums.js"));
    node.stdin(std::process::Stdio::piped()).stdout(std::process::Stdio::piped());
    let Ok(mut running) = node.spawn() else {
        println!("skipped: there is no Node to run the script");
        return;
    };
    running.stdin.take().unwrap().write_all(input.as_bytes()).unwrap();
    let done = running.wait_with_output().unwrap();
    let said = String::from_utf8_lossy(&done.stdout);
    println!("{said}");
    assert!(done.status.success() && said.contains("answers compared"), "{said}");
}

/// The page of figures of a van of the demo, by its name.
fn page(name: &str) -> SumsPage {
    let looked = &*DEMO;
    let van = looked.vans.iter().find(|van| van.name == name).unwrap();
    let phrases = looked.theme.as_ref().unwrap().phrases("en");
    let pages = lockerleaf::compose::compose(&looked.book, van, "en", phrases).pages;
    let sums = pages.into_iter().find_map(|page| match page.body {
        PageBody::Figures(sums) => Some(sums),
        _ => None,
    });
    *sums.unwrap()
}

#[test]
fn each_sum_says_what_it_is_made_of() {
    let mut count = 0;
    for name in ["marrick-c7/juniper", "tarnby-t4/plover", "wenlow-v2/dune", "wenlow-v2/heron"] {
        let page = page(name);
        for sum in page.groups.iter().flat_map(|group| &group.sums) {
            let texts = [&sum.title, &sum.limits, &sum.source].into_iter().chain(&sum.working);
            for text in texts.chain(sum.inputs.iter().flat_map(|(name, value)| [name, value])) {
                assert!(!text.is_empty() && !text.contains('⟨'), "{name}, {}: {text}", sum.id);
            }
            assert!(!sum.result.is_empty() || sum.table.is_some(), "{name}, {} answers nothing", sum.id);
            for row in sum.table.iter().flat_map(|table| table.rows.iter().map(move |row| (table, row))) {
                assert_eq!(row.0.head.len(), row.1.len(), "{name}, {}", sum.id);
            }
            count += 1;
        }
        for plot in page.groups.iter().flat_map(|group| &group.plots) {
            let points = plot.lines.iter().flat_map(|line| &line.points);
            for (across, up) in points {
                let within =
                    (plot.across.from..=plot.across.to).contains(across) && (plot.up.from..=plot.up.to).contains(up);
                assert!(within, "{name}, {}: {across}, {up}", plot.id);
            }
        }
    }
    println!("{count} sums of four vans");
}

/// Figures of the demo worked out by hand.
#[test]
fn sums_of_the_demo_are_right() {
    let result = |van: &str, id: &str| {
        let page = page(van);
        let sum = page.groups.into_iter().flat_map(|group| group.sums).find(|sum| sum.id == id).unwrap();
        (sum.result.replace('\u{a0}', " "), sum.caution, sum.table.map_or(vec![], |table| table.rows))
    };
    // 3500 - 2985 - 14 of the solar panel - 3 × 75.
    assert_eq!(result("marrick-c7/juniper", "payload").0, "276 kg");
    // 10 × (4 + 6.95).
    assert_eq!(result("marrick-c7/juniper", "least-payload").0, "109.5 kg");
    // Two hundred and seventy-six kilograms of luggage minus water and gas; all loads add up to what is allowed.
    let axles = result("marrick-c7/juniper", "axles").2;
    assert_eq!(axles[axles.len() - 2][3].replace('\u{a0}', " "), "3500 kg");
    // Pure butane boils at -0.5 °C, and the regulator asks for 0.3 bar above the air.
    let (cold, caution, _) = result("wenlow-v2/dune", "gas-cold");
    assert!(cold.starts_with("6.") && caution.contains("Butane"), "{cold}: {caution}");
    // Of the caravan's 2000 W fire, 850 W heater, 250 W charger and fridge, the fire goes off first on 10 A.
    let together = result("tarnby-t4/plover", "mains-together").2;
    assert_eq!(together[1][2], "Gas fire");
}

/// A small van with an inverter and a rear axle that a full tank overloads, found by capability and by the names of
/// values alone.
#[test]
fn a_full_tank_that_overloads_the_rear_axle_is_said() {
    let looked = lockerleaf::look(&common::book(&read("tests/figures/heavy.txt"))).unwrap();
    let phrases = lockerleaf::render::theme::Theme::new(&looked.book.theme, &["en".to_string()]).unwrap();
    let pages = lockerleaf::compose::compose(&looked.book, &looked.vans[0], "en", phrases.phrases("en")).pages;
    let sums = pages.into_iter().find_map(|page| match page.body {
        PageBody::Figures(sums) => Some(sums),
        _ => None,
    });
    let sums: Vec<_> = sums.unwrap().groups.into_iter().flat_map(|group| group.sums).collect();
    let find = |id: &str| sums.iter().find(|sum| sum.id == id).unwrap_or_else(|| panic!("there is no {id}"));
    // 1000 W / (12 V × 90 %).
    assert_eq!(find("inverter").result.replace('\u{a0}', " "), "92.6 A");
    assert!(find("battery-volts").caution.contains("0\u{a0}°C"), "{}", find("battery-volts").caution);
    let axles = find("axles");
    let rows = axles.table.as_ref().unwrap().rows.iter();
    let rear: Vec<String> = rows.map(|row| row[2].replace('\u{a0}', " ")).collect();
    // 100 kg at 5200 mm between axles at 960 and 4995 mm: 105 kg behind, and 5 kg less in front.
    assert_eq!(rear[..3], ["1400 kg", "12 kg", "105 kg"], "{rear:?}");
    assert!(
        axles.caution.contains("the rear axle carries") && axles.caution.contains("less water"),
        "{}",
        axles.caution
    );
}
