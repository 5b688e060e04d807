//! What the solar calculations share: sunlight by latitude and day.
//!
//! Equations 21 to 25, 34 and 37 of FAO Irrigation and Drainage Paper 56 (Allen and others 1998),
//! from memory; its worked examples 8, 9, 10, 15, 17 and 18 are check values.

use super::{FigureError, limits};
use std::f64::consts::PI;

/// Megajoules in a kilowatt-hour.
pub(super) const MJ_A_KWH: f64 = 3.6;

/// The solar constant, in MJ/m² a minute.
const SUN: f64 = 0.0820;

/// The months by name.
pub(crate) const MONTHS: &[&str] = &[
    "january",
    "february",
    "march",
    "april",
    "may",
    "june",
    "july",
    "august",
    "september",
    "october",
    "november",
    "december",
];

/// The middle of each month as a day of the year.
pub(super) const MIDDLES: [f64; 12] = [15.0, 46.0, 74.0, 105.0, 135.0, 166.0, 196.0, 227.0, 258.0, 288.0, 319.0, 349.0];

/// Where all of this comes from, for readers.
pub(super) const SOURCE: &str = "FAO Irrigation and Drainage Paper 56, equations 21 to 25, 34 and 37, from memory; \
                                 its worked examples agree";

/// Refuses latitudes in degrees where the sun does not rise each day, and days that no year has.
pub(super) fn sound(latitude: f64, day: f64) -> Result<(), FigureError> {
    limits::within("latitude", latitude, [-66.0, 66.0], "must be from -66 to 66°, where the sun rises each day")?;
    limits::within("day", day, [1.0, 366.0], "must be from 1 to 366")
}

/// Sunlight on level ground above the air, in MJ/m² a day.
pub(super) fn above_air(latitude: f64, day: f64) -> f64 {
    let latitude = latitude.to_radians();
    let (tilt, sets) = (tilt(day), sets(latitude, day));
    let closer = 1.0 + 0.033 * (2.0 * PI * day / 365.0).cos();
    let height = sets * latitude.sin() * tilt.sin() + latitude.cos() * tilt.cos() * sets.sin();
    24.0 * 60.0 / PI * SUN * closer * height
}

/// Sunlight on level ground under a clear sky, in MJ/m² a day, so many metres above the sea.
pub(super) fn clear_sky(latitude: f64, day: f64, altitude: f64) -> f64 {
    (0.75 + 2e-5 * altitude) * above_air(latitude, day)
}

/// Hours from sunrise to sunset.
pub(super) fn daylight(latitude: f64, day: f64) -> f64 {
    24.0 / PI * sets(latitude.to_radians(), day)
}

/// How far the axis of the earth leans to the sun, in radians.
fn tilt(day: f64) -> f64 {
    0.409 * (2.0 * PI * day / 365.0 - 1.39).sin()
}

/// The hour angle of sunset, in radians.
fn sets(latitude: f64, day: f64) -> f64 {
    (-latitude.tan() * tilt(day).tan()).clamp(-1.0, 1.0).acos()
}
