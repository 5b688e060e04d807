//! What the cable calculations share: copper, and the largest resistance of flexible cable.

/// The resistivity of copper at 20 °C, in Ω mm²/m: standard annealed copper of IEC 60028:1925, as a
/// test laboratory sums it up.
const COPPER: f64 = 0.017_241;

/// By how much copper resists more for each kelvin above 20 °C (a power-engineering handbook).
const WARMER: f64 = 0.003_93;

/// The largest resistance of flexible copper cable at 20 °C, in Ω/km, by area in mm² (IEC 60228,
/// class 5, plain copper; read on two cable makers' pages).
const FLEXIBLE: [(f64, f64); 6] = [(1.5, 13.3), (2.5, 7.98), (4.0, 4.95), (6.0, 3.30), (10.0, 1.91), (16.0, 1.21)];

/// How much more than solid copper a flexible cable may resist where its size is not in the table.
const MORE: f64 = 1.16;

/// Where all of this comes from, for readers.
pub(super) const SOURCE: &str = "resistivity of copper: IEC 60028; flexible cable: IEC 60228, class 5, from cable \
                                 makers’ pages";

/// The resistivity of copper in Ω mm²/m.
pub(super) fn resistivity(celsius: f64) -> f64 {
    COPPER * (1.0 + WARMER * (celsius - 20.0))
}

/// The largest resistance of a flexible cable of so many mm², in Ω/km at 20 °C.
pub(super) fn most(area: f64) -> f64 {
    let known = FLEXIBLE.iter().find(|(size, _)| *size == area);
    known.map_or(COPPER * MORE / area * 1000.0, |(_, resistance)| *resistance)
}
