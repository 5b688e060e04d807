//! Tables of check values, as the tests of each calculation write them.

use super::{Calculation, Inputs};

/// The id of a check value, the inputs in their order, what is expected, how far off it may be as
/// a share of that (0 is exact), and where it comes from.
pub(super) type Row = (&'static str, &'static Inputs, f64, f64, &'static str);

/// Works out every row and compares.
pub(super) fn hold(calculation: &Calculation, rows: &[Row]) {
    for (id, inputs, expected, tolerance, source) in rows {
        let result = calculation.work_out(inputs).unwrap();
        let off = (result - expected).abs();
        assert!(off <= tolerance * expected.abs(), "{id}: {result} is not {expected} ({source})");
    }
}

/// Works out inputs that cannot be, and compares what is said of them.
pub(super) fn refused(calculation: &Calculation, table: &[(&Inputs, &str)]) {
    for (inputs, message) in table {
        let error = calculation.work_out(inputs).unwrap_err();
        assert_eq!(error.to_string(), *message, "{} {inputs:?}", calculation.name);
    }
}
