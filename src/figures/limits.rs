//! What an input of a calculation can be at all. Nothing here judges what is sensible.

use super::FigureError;

const fn refuse(input: &'static str, says: &'static str) -> FigureError {
    FigureError { input: Some(input), says }
}

/// Refuses zero, less, and what is not a number.
pub(super) fn above_zero(input: &'static str, value: f64) -> Result<(), FigureError> {
    if value > 0.0 {
        return Ok(());
    }
    Err(refuse(input, "must be more than zero"))
}

/// Refuses less than zero, and what is not a number.
pub(super) fn not_negative(input: &'static str, value: f64) -> Result<(), FigureError> {
    if value >= 0.0 {
        return Ok(());
    }
    Err(refuse(input, "must not be less than zero"))
}

/// Refuses per cents below 0 and above 100, and what is not a number.
pub(super) fn part(input: &'static str, percent: f64) -> Result<(), FigureError> {
    if (0.0..=100.0).contains(&percent) {
        return Ok(());
    }
    Err(refuse(input, "must be from 0 to 100 %"))
}

/// Refuses per cents that do not come to a whole, with a phrase that says so.
pub(super) fn whole(input: &'static str, percent: f64, says: &'static str) -> Result<(), FigureError> {
    within(input, percent, [99.99, 100.01], says)
}

/// Refuses what is not from one end to the other, and what is not a number.
pub(super) fn within(
    input: &'static str,
    value: f64,
    [low, high]: [f64; 2],
    says: &'static str,
) -> Result<(), FigureError> {
    if (low..=high).contains(&value) {
        return Ok(());
    }
    Err(refuse(input, says))
}

/// Refuses temperatures at which water without extra pressure is ice or steam: below 0 °C and
/// above 100 °C, the fixed points of water at 101.325 kPa, rounded to a degree (common knowledge).
pub(super) fn liquid_water(input: &'static str, celsius: f64) -> Result<(), FigureError> {
    if (0.0..=100.0).contains(&celsius) {
        return Ok(());
    }
    Err(refuse(input, "must be from 0 to 100 °C, where water is liquid"))
}

/// Refuses what is not at least `least`, with a phrase that says so.
pub(super) fn at_least(input: &'static str, value: f64, least: f64, says: &'static str) -> Result<(), FigureError> {
    if value >= least {
        return Ok(());
    }
    Err(refuse(input, says))
}

/// Refuses a number that stands for no word of `words`; gives its position.
pub(super) fn word(input: &'static str, value: f64, words: &[&str]) -> Result<usize, FigureError> {
    let is_it = |(at, _): &(u8, &&str)| f64::from(*at) == value;
    match (0_u8..).zip(words).find(is_it) {
        Some((at, _)) => Ok(usize::from(at)),
        None => Err(refuse(input, "must be one of its words")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn limits_include_what_can_be_and_nothing_else() {
        let table = [
            // value, above zero, not negative, part, liquid water
            (f64::NAN, [false; 4]),
            (f64::NEG_INFINITY, [false; 4]),
            (-1e-9, [false; 4]),
            (0.0, [false, true, true, true]),
            (1e-9, [true; 4]),
            (100.0, [true; 4]),
            (100.000_001, [true, true, false, false]),
        ];
        for (value, expected) in table {
            let found = [
                above_zero("x", value).is_ok(),
                not_negative("x", value).is_ok(),
                part("x", value).is_ok(),
                liquid_water("x", value).is_ok(),
            ];
            assert_eq!(found, expected, "{value}");
        }
    }

    #[test]
    fn a_word_is_a_whole_position() {
        let words = ["propane", "butane"];
        assert_eq!(word("gas", 0.0, &words), Ok(0));
        assert_eq!(word("gas", 1.0, &words), Ok(1));
        for value in [-1.0, 0.5, 2.0, f64::NAN, f64::INFINITY] {
            let error = word("gas", value, &words).unwrap_err();
            assert_eq!(error.to_string(), "`gas` must be one of its words");
        }
    }
}
