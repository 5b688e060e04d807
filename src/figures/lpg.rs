//! What the gas calculations share: the gases, their heat, their pressure and how dense they are.
//!
//! Heat is counted as net (lower) heating value: what is gained when the water of the flame leaves
//! as vapour. Where a rating plate states power by gross value, the sums count up to 9 % more gas
//! than the appliance burns (13.98 / 12.87 for propane), which errs towards too few hours.
//!
//! The constants of [`Gas`] are fits of our own to the reference equations of CoolProp 8.0.0
//! (propane: Lemmon 2009; butanes: Buecker and Wagner 2006).

use super::{FigureError, Input, Takes, limits, quantity};

/// The gases by name. An author's butane is n-butane here.
pub(super) const GASES: &[&str] = &["propane", "butane", "isobutane"];

/// What is known of a pure gas.
pub(super) struct Gas {
    /// Net heating value in kWh/kg, as gas at 25 °C, from `chemicals` 1.5.2 (PyPI; enthalpies of
    /// formation of the Active Thermochemical Tables). An LPG trader publishes 12.87 and 12.69.
    heat: f64,
    /// Pressure over the liquid: log10(p in bar) = a - b / (t in °C + c), fitted from -40 to 50 °C.
    /// The worst difference is 0.23, 0.09 and 0.13 %.
    pressure: [f64; 3],
    /// Critical temperature in °C and density in kg/m³, then the factors of the powers of
    /// (1 - T/Tc) by thirds that give the density of the liquid; within 0.012 % from -40 °C up.
    density: ([f64; 2], [f64; 4]),
    /// Heat in kJ that a kilogram takes up when it boils at 0 °C.
    boiling: f64,
}

/// In the order of [`GASES`].
const TABLE: [Gas; 3] = [
    Gas {
        heat: 12.8716,
        pressure: [4.10212, 882.88, 257.702],
        density: ([96.74, 220.48], [354.59, 255.77, -189.14, 156.79]),
        boiling: 374.9,
    },
    Gas {
        heat: 12.6989,
        pressure: [3.98332, 958.202, 241.387],
        density: ([151.975, 228.0], [370.92, 323.32, -322.34, 243.9]),
        boiling: 385.3,
    },
    Gas {
        heat: 12.6534,
        pressure: [3.95168, 915.466, 243.738],
        density: ([134.66, 225.5], [351.94, 383.7, -422.34, 297.87]),
        boiling: 354.3,
    },
];

/// The air around us, in bar: what a gauge does not count.
pub const AIR: f64 = 1.013_25;

/// The temperature at which fills are measured, in °C.
pub(super) const FILL_TEMPERATURE: f64 = 15.0;

/// The input by which a calculation asks for the gas.
pub(super) const GAS: Input = Input { name: "gas", takes: Takes::Words(GASES) };

/// The inputs by which a calculation asks for a mixture: shares of the molecules of the liquid.
pub(super) const SHARES: [Input; 3] = [quantity("propane", "%"), quantity("butane", "%"), quantity("isobutane", "%")];

/// Where the net heat comes from, for readers.
pub(super) const SOURCE: &str = "net heating values of pure propane and n-butane from the \
    library chemicals 1.5.2; an LPG trader publishes the same to 0.1 %";

/// Where pressures and densities come from, for readers.
pub(super) const FIT: &str = "our own fit to the reference equations of CoolProp 8.0.0 (Lemmon 2009, \
    Buecker and Wagner 2006)";

/// The gas at that position of [`GASES`].
pub(super) fn gas(gas: f64) -> Result<&'static Gas, FigureError> {
    Ok(&TABLE[limits::word(GAS.name, gas, GASES)?])
}

/// The net heat in kWh/kg of the gas at that position of [`GASES`].
pub(super) fn net_heat(number: f64) -> Result<f64, FigureError> {
    Ok(gas(number)?.heat)
}

/// Shares in per cent of a mixture; they must come to the whole.
pub(super) fn mixture(shares: [f64; 3]) -> Result<[f64; 3], FigureError> {
    for (input, share) in SHARES.iter().zip(shares) {
        limits::part(input.name, share)?;
    }
    limits::whole(SHARES[0].name, shares.iter().sum(), "with `butane` and `isobutane` must come to 100 %")?;
    Ok(shares)
}

/// Pressure in bar, air counted in, over a liquid mixture at a temperature in °C (law of Raoult).
pub(super) fn pressure(shares: [f64; 3], celsius: f64) -> f64 {
    TABLE.iter().zip(shares).map(|(gas, share)| gas.pressure(celsius) * share / 100.0).sum()
}

/// Pressure in bar, air counted in, by the constants of a gas.
pub(super) fn pressure_of([a, b, c]: [f64; 3], celsius: f64) -> f64 {
    10_f64.powf(a - b / (celsius + c))
}

/// The constants of the pressure of a gas by its name.
pub fn pressure_constants(gas: &str) -> Option<[f64; 3]> {
    GASES.iter().zip(&TABLE).find(|(name, _)| **name == gas).map(|(_, gas)| gas.pressure)
}

/// The temperature in °C at which a mixture has a pressure in bar, air counted in.
pub(super) fn boils_at(shares: [f64; 3], bar: f64) -> f64 {
    halved([-120.0, 90.0], |celsius| pressure(shares, celsius) < bar)
}

/// Where between two ends something ceases to be so, to within a millionth of a degree.
pub(super) fn halved([mut low, mut high]: [f64; 2], is_so: impl Fn(f64) -> bool) -> f64 {
    while high - low > 1e-6 {
        let middle = (low + high) / 2.0;
        if is_so(middle) { low = middle } else { high = middle }
    }
    (low + high) / 2.0
}

impl Gas {
    /// Pressure in bar over the pure liquid, air counted in.
    pub(super) fn pressure(&self, celsius: f64) -> f64 {
        pressure_of(self.pressure, celsius)
    }

    /// Kilograms in a litre of liquid under its own pressure; below its critical temperature.
    pub(super) fn density(&self, celsius: f64) -> f64 {
        let ([critical, least], factors) = self.density;
        let away = ((critical - celsius) / (critical + 273.15)).max(0.0).cbrt();
        let rest: f64 = factors.iter().zip(1..).map(|(factor, power)| factor * away.powi(power)).sum();
        (least + rest) / 1000.0
    }

    /// The highest temperature at which it is liquid, in °C.
    pub(super) fn critical(&self) -> f64 {
        self.density.0[0]
    }

    /// Heat in kJ that a kilogram takes up when it boils at 0 °C.
    pub(super) fn boiling(&self) -> f64 {
        self.boiling
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_gas_has_its_heat() {
        assert_eq!(GASES.len(), TABLE.len());
        let published = [12.87, 12.69];
        for (gas, published) in published.iter().enumerate() {
            let heat = net_heat(gas as f64).unwrap();
            assert!((heat / published - 1.0).abs() < 0.001, "{}", GASES[gas]);
        }
    }

    #[test]
    fn what_boils_has_the_pressure_that_it_boils_at() {
        for shares in [[100.0, 0.0, 0.0], [40.0, 35.0, 25.0], [0.0, 100.0, 0.0]] {
            for celsius in [-40.0, -11.5, 0.0, 50.0] {
                let back = boils_at(shares, pressure(shares, celsius));
                assert!((back - celsius).abs() < 1e-5, "{shares:?} at {celsius}: {back}");
            }
        }
    }
}
