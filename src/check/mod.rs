//! Checks over a whole book and its vans. Each rule is a file; a check reads and changes nothing.

mod battery_charger;
mod burner_unguarded;
mod burner_unventilated;
mod cable_drop;
mod capability_contract;
mod choice_uncovered;
mod colour_contrast;
mod condition_never;
mod cylinder_size;
mod date_impossible;
mod duplicate_key;
mod element_supply;
mod emergency_missing;
mod figure_facts;
mod fuse_load;
mod gas_isolation;
mod gas_kind;
mod gas_pressure;
mod heater_relief;
mod label_address;
mod label_dropped;
mod label_page;
mod label_reused;
mod label_sheet;
mod label_size;
mod label_van;
mod labels;
mod language_missing;
mod life_past;
mod life_section;
mod missing_file;
mod module_unused;
mod needs_circle;
mod no_extinguisher;
pub mod output_link;
mod parts;
mod personal_data;
mod place_outside;
mod possible;
mod rcd;
mod reading_out;
pub mod safety;
mod sign_undrawn;
mod tank_pump;
mod text_names;
mod translation_differs;
mod value_facts;
mod vehicle_facts;
mod wiring_names;
pub mod writing;

use crate::diag::{Acc, Rule, rules};
use crate::model::book::Book;
use crate::model::van::Van;
use jiff::civil::Date;

/// What checks look at.
#[derive(Clone, Copy)]
pub struct Checked<'a> {
    /// The book.
    pub book: &'a Book,
    /// Its vans.
    pub vans: &'a [Van],
    /// Today, for records of what is yet to come; none when it does not matter.
    pub today: Option<Date>,
}

/// One check.
pub struct Check {
    /// The rules of its own; a check may also find what rules of the earlier phases ask.
    pub rules: &'static [&'static Rule],
    /// Looks, and says what is wrong.
    pub run: fn(&mut Acc, Checked),
}

/// All checks, by the name of their file.
pub static CHECKS: &[&Check] = &[
    &battery_charger::CHECK,
    &burner_unguarded::CHECK,
    &burner_unventilated::CHECK,
    &cable_drop::CHECK,
    &capability_contract::CHECK,
    &choice_uncovered::CHECK,
    &colour_contrast::CHECK,
    &condition_never::CHECK,
    &cylinder_size::CHECK,
    &date_impossible::CHECK,
    &duplicate_key::CHECK,
    &element_supply::CHECK,
    &emergency_missing::CHECK,
    &figure_facts::CHECK,
    &fuse_load::CHECK,
    &gas_isolation::CHECK,
    &gas_kind::CHECK,
    &gas_pressure::CHECK,
    &heater_relief::CHECK,
    &label_address::CHECK,
    &label_dropped::CHECK,
    &label_page::CHECK,
    &label_reused::CHECK,
    &label_size::CHECK,
    &label_van::CHECK,
    &label_sheet::CHECK,
    &language_missing::CHECK,
    &life_past::CHECK,
    &life_section::CHECK,
    &missing_file::CHECK,
    &module_unused::CHECK,
    &needs_circle::CHECK,
    &no_extinguisher::CHECK,
    &personal_data::CHECK,
    &place_outside::CHECK,
    &rcd::CHECK,
    &reading_out::CHECK,
    &sign_undrawn::CHECK,
    &tank_pump::CHECK,
    &text_names::CHECK,
    &translation_differs::CHECK,
    &value_facts::CHECK,
    &vehicle_facts::CHECK,
    &wiring_names::CHECK,
    &writing::CHECK,
];

/// Runs all checks.
pub fn check(acc: &mut Acc, book: &Book, vans: &[Van], today: Option<Date>) {
    for check in CHECKS {
        (check.run)(acc, Checked { book, vans, today });
    }
}

/// All rules there are, by name.
pub fn rules() -> Vec<&'static Rule> {
    let own = CHECKS.iter().flat_map(|check| check.rules.iter().copied());
    let mut all: Vec<_> = rules::EARLY
        .iter()
        .copied()
        .chain(own)
        .chain(safety::CHECKS.iter().map(|check| check.rule))
        .chain([&output_link::RULE])
        .collect();
    all.sort_by_key(|rule| rule.id);
    all
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rules_have_names_of_their_own_and_say_everything() {
        let rules = rules();
        for pair in rules.windows(2) {
            assert_ne!(pair[0].id, pair[1].id);
        }
        for rule in rules {
            assert!(crate::model::files::forms::is_id(rule.id), "{}", rule.id);
            for text in [rule.asks, rule.why, rule.source, rule.wrong, rule.right] {
                assert!(text.len() > 5, "{} leaves something unsaid", rule.id);
            }
            assert!(rule.asks.ends_with('.') && rule.why.ends_with('.'), "{}: whole sentences", rule.id);
        }
    }
}
