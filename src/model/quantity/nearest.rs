//! What an author may have meant by a unit that is not in the table.

use super::unit::{Dimension, UNITS, Unit};

/// Units that are not in the table, so that help can list those of the same dimension instead
/// of the nearest by spelling, which would be wrong by a factor.
#[rustfmt::skip]
const ELSEWHERE: &[(Dimension, &[&str])] = &[
    (Dimension::Area, &["cm2", "cm²", "m2", "m²", "awg"]),
    (Dimension::Charge, &["mah"]),
    (Dimension::Energy, &["j", "kj", "mj", "mwh", "btu", "kcal", "therms"]),
    (Dimension::Length, &["in", "inch", "inches", "ft", "foot", "feet", "yd", "mile", "miles"]),
    (Dimension::Mass, &["mg", "t", "tonne", "tonnes", "lb", "lbs", "oz", "st", "cwt"]),
    (Dimension::Power, &["mw", "va", "kva", "hp", "ps", "btu/h"]),
    (Dimension::Pressure, &["pa", "hpa", "kpa", "mpa", "psi", "atm"]),
    (Dimension::Speed, &["mph", "m/s", "kn", "knots"]),
    (Dimension::Temperature, &["k", "f", "°f", "degf", "deg f", "fahrenheit"]),
    (Dimension::Time, &["ms"]),
    (Dimension::Voltage, &["mv", "kv"]),
    (Dimension::Volume, &["cl", "dl", "m3", "m³", "cm3", "cc", "gal", "gallons", "pint", "pints"]),
    (Dimension::VolumeFlow, &["l/h", "l/hr", "l/s", "gpm"]),
];

/// What to write in place of `text`: "did you mean `kg`?", or the units there are.
pub(super) fn instead_of(text: &str) -> String {
    let text = text.to_lowercase();
    let meant = meant(&text);
    if !meant.is_empty() {
        return format!("did you mean {}?", list(meant));
    }
    match dimension_elsewhere(&text) {
        Some(dimension) => units_for(dimension),
        None => format!("the units are {}", list(UNITS.iter().copied())),
    }
}

/// "use `g` or `kg` for a mass".
pub(super) fn units_for(dimension: Dimension) -> String {
    format!("use {} for {}", list(dimension.units()), dimension.name())
}

/// The units that the lower-case `text` may be: those it names, or else the nearest by spelling.
pub(super) fn meant(text: &str) -> Vec<Unit> {
    let named = within(text, 0);
    if !named.is_empty() || dimension_elsewhere(text).is_some() {
        return named;
    }
    // A third of the letters may be wrong, but never all of them.
    let length = text.chars().count();
    let most = (length / 3).clamp(1, 3).min(length.saturating_sub(1));
    let mut nearer_first = (1..=most).map(|edits| within(text, edits));
    let near = nearer_first.find(|units| !units.is_empty());
    near.filter(|units| units.len() <= 3).unwrap_or_default()
}

/// The units with a name that at most so many edits make of the lower-case `text`.
fn within(text: &str, most: usize) -> Vec<Unit> {
    // Comparing lengths first keeps a long text from costing anything.
    let is_near = |name: &str| text.len() <= name.len() + 4 * most && edits(text, &name.to_lowercase()) <= most;
    let any_is_near = |unit: &Unit| unit.names().any(is_near);
    UNITS.iter().copied().filter(any_is_near).collect()
}

fn dimension_elsewhere(text: &str) -> Option<Dimension> {
    let found = ELSEWHERE.iter().find(|(_, names)| names.contains(&text));
    found.map(|(dimension, _)| *dimension)
}

/// How many letters must be added, left out or changed to make `a` into `b`.
fn edits(a: &str, b: &str) -> usize {
    let b: Vec<char> = b.chars().collect();
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, x) in a.chars().enumerate() {
        let mut corner = row[0];
        row[0] = i + 1;
        for (j, y) in b.iter().enumerate() {
            let changed = corner + usize::from(x != *y);
            corner = row[j + 1];
            row[j + 1] = changed.min(corner + 1).min(row[j] + 1);
        }
    }
    row[b.len()]
}

/// "`g`, `kg` or `ml`".
fn list(units: impl IntoIterator<Item = Unit>) -> String {
    let names: Vec<_> = units.into_iter().map(|unit| format!("`{}`", unit.symbol)).collect();
    match names.split_last() {
        Some((last, rest)) if !rest.is_empty() => format!("{} or {last}", rest.join(", ")),
        _ => names.concat(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_meant_is_offered() {
        let table = [
            ("KG", "did you mean `kg`?"),
            ("kilos", "did you mean `kg`?"),
            ("kgg", "did you mean `kg`?"),
            ("mm²", "did you mean `mm2`?"),
            ("a", "did you mean `A`?"),
            ("L", "did you mean `l`?"),
            ("hours", "did you mean `h`?"),
            ("litters", "did you mean `l`?"),
            ("degC", "did you mean `°C`?"),
            ("C", "did you mean `°C`?"),
            ("℃", "did you mean `°C`?"),
            ("momths", "did you mean `months`?"),
            ("kx", "did you mean `km`, `kg` or `kW`?"),
        ];
        for (text, expected) in table {
            assert_eq!(instead_of(text), expected, "{text}");
        }
    }

    #[test]
    fn every_spelling_of_the_table_leads_to_its_unit() {
        for unit in UNITS {
            for name in unit.names() {
                let expected = format!("did you mean `{}`?", unit.symbol);
                assert_eq!(instead_of(name), expected, "{name}");
                assert_eq!(instead_of(&name.to_uppercase()), expected, "{name}");
            }
        }
    }

    #[test]
    fn units_of_elsewhere_get_those_of_their_dimension() {
        let table = [
            ("lbs", "use `g` or `kg` for a mass"),
            ("psi", "use `mbar` or `bar` for a pressure"),
            ("°F", "use `°C` for a temperature"),
            ("mAh", "use `Ah` for a charge"),
            ("cl", "use `ml` or `l` for a volume"),
        ];
        for (text, expected) in table {
            assert_eq!(instead_of(text), expected, "{text}");
        }
    }

    #[test]
    fn far_words_get_the_whole_list() {
        for text in ["x", "furlongs", "", "🚐", "zz"] {
            let help = instead_of(text);
            assert!(help.starts_with("the units are `mm`, `cm`, "), "{text}: {help}");
            assert!(help.ends_with("`km/h` or `count`"), "{text}: {help}");
        }
    }

    #[test]
    fn the_units_of_elsewhere_are_none_of_ours() {
        for name in ELSEWHERE.iter().flat_map(|(_, names)| names.iter()) {
            assert_eq!(*name, name.to_lowercase());
            assert_eq!(within(name, 0), [], "{name}");
        }
    }

    #[test]
    fn edits_are_counted() {
        let table =
            [("", "", 0), ("kg", "kg", 0), ("", "kg", 2), ("kg", "kw", 1), ("moths", "months", 1), ("°c", "c", 1)];
        for (a, b, expected) in table {
            assert_eq!(edits(a, b), expected, "{a} {b}");
            assert_eq!(edits(b, a), expected, "{b} {a}");
        }
    }
}
