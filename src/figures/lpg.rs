//! What the gas calculations share: the gases, and how much heat is in a kilogram.
//!
//! Heat is counted as net (lower) heating value: what is gained when the water of the flame leaves
//! as vapour. Where a rating plate states power by gross value, the sums count up to 9 % more gas
//! than the appliance burns (13.98 / 12.87 for propane), which errs towards too few hours.

use super::{FigureError, Input, Takes, limits};

/// The gases by name. An author's butane is n-butane here; isobutane in it holds 0.4 % less heat.
pub(super) const GASES: &[&str] = &["propane", "butane"];

/// Net heating values in kWh/kg, in the order of [`GASES`], as gas at 25 °C: 12.8716 and 12.6989
/// from `chemicals` 1.5.2 (PyPI; enthalpies of formation of the Active Thermochemical Tables).
/// An LPG trader publishes 12.87 and 12.69.
const NET_HEAT: [f64; 2] = [12.8716, 12.6989];

/// The input by which a calculation asks for the gas.
pub(super) const GAS: Input = Input { name: "gas", takes: Takes::Words(GASES) };

/// Where [`NET_HEAT`] comes from, for readers.
pub(super) const SOURCE: &str = "net heating values of pure propane and n-butane from the \
    library chemicals 1.5.2; an LPG trader publishes the same to 0.1 %";

/// The net heat in kWh/kg of the gas at that position of [`GASES`].
pub(super) fn net_heat(gas: f64) -> Result<f64, FigureError> {
    Ok(NET_HEAT[limits::word(GAS.name, gas, GASES)?])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_gas_has_its_heat() {
        assert_eq!(GASES.len(), NET_HEAT.len());
        let published = [12.87, 12.69];
        for (gas, published) in published.iter().enumerate() {
            let heat = net_heat(gas as f64).unwrap();
            assert!((heat / published - 1.0).abs() < 0.001, "{}", GASES[gas]);
        }
    }
}
