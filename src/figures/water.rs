//! What the water calculations share: how dense water is.

/// Kilograms in a litre of water at a temperature in °C, from 0 to 100 °C and without pressure above the air: Kell 1975
/// (from memory), within 0.002 % of IAPWS-IF97 (library iapws 1.5.5).
pub(super) fn density(celsius: f64) -> f64 {
    const ABOVE: [f64; 6] = [999.839_52, 16.945_176, -7.987_040_1e-3, -46.170_461e-6, 105.563_02e-9, -280.542_53e-12];
    let above = ABOVE.iter().rev().fold(0.0, |sum, factor| sum * celsius + factor);
    above / (1.0 + 16.879_850e-3 * celsius) / 1000.0
}
