//! What a workshop's reading should be, and how one stands against it.

use super::files::module::ReadingFacts;
use super::quantity::{Dimension, Quantity, QuantityRange, Unit, round_significant};
use super::van::Fit;

/// What a reading should be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Expected {
    /// What is as it should be.
    pub good: QuantityRange,
    /// What is still near.
    pub near: QuantityRange,
    /// The one quantity that it should be, where it is not a range.
    pub one: Option<Quantity>,
}

/// How a reading stands against what it should be.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standing {
    /// As it should be.
    In,
    /// Not quite.
    Near,
    /// Not at all.
    Out,
}

impl Expected {
    /// Nothing is expected when a value that is named is not known in this van.
    ///
    /// A single quantity is never met to the last digit: what is near it is as good. A range has room of its own, so
    /// that what is only near it is worth a look. A figure that swings with its supply is a range: a heating element
    /// draws less at 216.2 V than at 253 V, and both are right.
    pub fn of(fit: &Fit, facts: &ReadingFacts) -> Option<Expected> {
        let unit = Unit::find(&facts.unit)?;
        if let Some(range) = fit.figures.get(facts.expect.value.as_str()).and_then(|figure| figure.range()) {
            return Expected::range(facts, range, unit);
        }
        if let Some(one) = fit.quantity(&facts.expect) {
            let at = one.to(unit)?.amount;
            let near = widened(facts, QuantityRange { low: at, high: at, unit });
            return Some(Expected { good: near, near, one: Some(one) });
        }
        Expected::range(facts, QuantityRange::parse(&facts.expect).ok()?, unit)
    }

    fn range(facts: &ReadingFacts, range: QuantityRange, unit: Unit) -> Option<Expected> {
        let end = |amount| Some(Quantity { amount, unit: range.unit }.to(unit)?.amount);
        let good = QuantityRange { low: end(range.low)?, high: end(range.high)?, unit };
        Some(Expected { good, near: widened(facts, good), one: None })
    }

    /// How a reading stands; what cannot be compared counts as it should be, as that has been said elsewhere.
    pub fn standing(&self, reading: Quantity) -> Standing {
        let within = |range: QuantityRange| range.contains(reading).unwrap_or(true);
        match (within(self.good), within(self.near)) {
            (true, _) => Standing::In,
            (false, true) => Standing::Near,
            (false, false) => Standing::Out,
        }
    }
}

impl super::van::Figure {
    /// All that the figure may be over the band of its supply, where there is one.
    pub fn range(&self) -> Option<QuantityRange> {
        let (low, high) = self.calculation.swing?;
        let end = |share| round_significant(self.result.amount * share, self.calculation.digits);
        Some(QuantityRange { low: end(low), high: end(high), unit: self.result.unit })
    }
}

/// A range with what is near its ends. A share is one of the end, except where percent are what is measured.
fn widened(facts: &ReadingFacts, range: QuantityRange) -> QuantityRange {
    let Some(near) = facts.near.as_ref().and_then(|near| Quantity::parse(near).ok()) else {
        return range;
    };
    let share = near.unit.dimension == Dimension::Share && range.unit.dimension != Dimension::Share;
    // A difference of degrees has no offset, so that only the size of the unit counts.
    let room = |end: f64| match share {
        true => end.abs() * near.amount / 100.0,
        false => near.amount * near.unit.factor / range.unit.factor,
    };
    QuantityRange { low: range.low - room(range.low), high: range.high + room(range.high), unit: range.unit }
}
