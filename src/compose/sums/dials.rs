//! What a reader may set on the page, with what this van puts into the answers.

use super::Desk;
use super::water::EACH;
use crate::figures::axles::Mass;
use crate::figures::dials::{AxleDial, BatteryDial, Dials, GasDial, MainsDial, WaterDial};
use crate::figures::{self, PASSENGER};

/// Volts of the mains.
const VOLTS: f64 = 230.0;

impl Desk<'_, '_, '_> {
    pub(super) fn dials(&self) -> Dials {
        Dials {
            people: self.most_people(),
            gas: self.gas_dial(),
            water: self.water_dial(),
            battery: self.battery_on_board().map(|own| BatteryDial { usable: own.usable, daily: own.daily }),
            mains: self.mains_dial(),
            axles: self.axle_dial(),
        }
    }

    fn gas_dial(&self) -> Option<GasDial> {
        let gas = self.gas_on_board()?;
        Some(GasDial {
            pressure: figures::pressure_constants(&gas.kind)?,
            air: figures::AIR,
            needs: gas.needs / 1000.0,
            full: gas.full,
            daily: gas.daily.map(|grams| grams / 1000.0),
        })
    }

    fn water_dial(&self) -> Option<WaterDial> {
        let full = self.found.provider("fresh-water")?.amount("capacity", "l")?;
        Some(WaterDial { full, each: EACH })
    }

    fn mains_dial(&self) -> Option<MainsDial> {
        self.found.provider("mains-supply")?;
        let draws = self.on_mains();
        (!draws.is_empty()).then(|| MainsDial {
            names: draws.iter().map(|draw| draw.part.title.to_string()).collect(),
            amps: draws.iter().map(|draw| draw.amount / VOLTS).collect(),
        })
    }

    fn axle_dial(&self) -> Option<AxleDial> {
        let load = self.load()?;
        let seats = |count: usize| load.seats.iter().take(count).map(|at| Mass { kg: PASSENGER, at: *at });
        // The driver is in the mass in running order, so that one person adds nothing.
        let people = (0..=load.seats.len() + 1).map(|people| load.supports.all(seats(people.saturating_sub(1))).into());
        Some(AxleDial {
            empty: load.empty.into(),
            people: people.collect(),
            water: load.supports.loads(load.fresh).into(),
            gas: load.supports.loads(load.gas).into(),
            luggage: load.supports.loads(Mass { kg: 1.0, at: load.luggage }).into(),
            limits: load.limits,
            maximum: load.maximum,
        })
    }
}
