//! What a reader may set on the page of figures, and the answers.
//!
//! [`Dials`] is all that the answers are worked out from. It goes into the page as data, where a script of the theme
//! works them out again as the reader turns the dials; a test holds that script against [`Dials::answers`].

use super::axles::Loads;
use super::{lpg, together};
use serde::Serialize;

/// What the answers are worked out from; what a van lacks is left out.
#[derive(Debug, Clone, Default, Serialize)]
pub struct Dials {
    /// The most people.
    pub people: usize,
    /// Gas.
    pub gas: Option<GasDial>,
    /// Water.
    pub water: Option<WaterDial>,
    /// Battery.
    pub battery: Option<BatteryDial>,
    /// Mains.
    pub mains: Option<MainsDial>,
    /// What rests on the axles.
    pub axles: Option<AxleDial>,
}

/// Gas in the van.
#[derive(Debug, Clone, Serialize)]
pub struct GasDial {
    /// The constants of the pressure, as in `lpg.rs`.
    pub pressure: [f64; 3],
    /// The air, in bar.
    pub air: f64,
    /// The least pressure that the regulator needs, in bar above the air.
    pub needs: f64,
    /// Gas in a full cylinder or tank, in kg.
    pub full: f64,
    /// What a day uses without and with the heating, in kg.
    pub daily: [f64; 2],
}

/// Fresh water.
#[derive(Debug, Clone, Serialize)]
pub struct WaterDial {
    /// What the tank holds, in l.
    pub full: f64,
    /// The least and the most that one person uses in a day, in l.
    pub each: [f64; 2],
}

/// The leisure battery.
#[derive(Debug, Clone, Serialize)]
pub struct BatteryDial {
    /// What may be used of it, in Ah.
    pub usable: f64,
    /// The least and the most that a day uses, in Ah.
    pub daily: [f64; 2],
}

/// Appliances on the mains.
#[derive(Debug, Clone, Serialize)]
pub struct MainsDial {
    /// What they are called.
    pub names: Vec<String>,
    /// What each draws, in A.
    pub amps: Vec<f64>,
}

/// What rests on the axles, each as front and rear in kg; for a trailer as coupling and axle.
#[derive(Debug, Clone, Serialize)]
pub struct AxleDial {
    /// The vehicle with driver and fuel.
    pub empty: [f64; 2],
    /// What is added by so many people, from none on.
    pub people: Vec<[f64; 2]>,
    /// What a full fresh tank adds.
    pub water: [f64; 2],
    /// What full gas adds.
    pub gas: [f64; 2],
    /// What a kilogram of luggage adds at the back.
    pub luggage: [f64; 2],
    /// The limits.
    pub limits: [Option<f64>; 2],
    /// The limit of the whole.
    pub maximum: Option<f64>,
}

/// How the dials stand.
#[derive(Debug, Clone, Copy, Serialize)]
pub struct Setting {
    /// People on board.
    pub people: usize,
    /// Days away.
    pub days: f64,
    /// Air outside, in °C.
    pub outside: f64,
    /// What the pitch supplies, in A.
    pub pitch: f64,
    /// Luggage, in kg.
    pub luggage: f64,
    /// How full the fresh tank is, in per cent.
    pub water: f64,
}

/// What the dials say; nothing where the van lacks what is asked.
#[derive(Debug, Clone, PartialEq, Default, Serialize)]
pub struct Answers {
    /// Pressure of the gas above the air, in bar.
    pub pressure: Option<f64>,
    /// Full cylinders or tanks for those days, without and with the heating.
    pub gas: Option<[f64; 2]>,
    /// Full tanks of water for those days, at the least and the most.
    pub water: Option<[f64; 2]>,
    /// How often the battery is used up in those days, at the least and the most.
    pub battery: Option<[f64; 2]>,
    /// The numbers of the appliances to switch off, first one first.
    pub off: Option<Vec<usize>>,
    /// What rests on the front axle or coupling, and on the rear axle, in kg.
    pub axles: Option<[f64; 2]>,
}

impl Dials {
    /// The answers at a setting.
    pub fn answers(&self, set: Setting) -> Answers {
        Answers {
            pressure: self.gas.as_ref().map(|gas| lpg::pressure_of(gas.pressure, set.outside) - gas.air),
            gas: self.gas.as_ref().map(|gas| gas.daily.map(|daily| daily * set.days / gas.full)),
            water: self
                .water
                .as_ref()
                .map(|water| water.each.map(|each| each * set.people as f64 * set.days / water.full)),
            battery: self.battery.as_ref().map(|own| own.daily.map(|daily| daily * set.days / own.usable)),
            off: self.mains.as_ref().map(|mains| together::switch_off(&mains.amps, set.pitch)),
            axles: self.axles.as_ref().map(|axles| axles.loads(set)),
        }
    }
}

impl AxleDial {
    fn loads(&self, set: Setting) -> [f64; 2] {
        let of = |[front, rear]: [f64; 2]| Loads { front, rear };
        let people = self.people[set.people.min(self.people.len() - 1)];
        let rest = of(self.water).times(set.water / 100.0).and(of(self.luggage).times(set.luggage));
        let all = of(self.empty).and(of(people)).and(of(self.gas)).and(rest);
        [all.front, all.rear]
    }
}

impl From<Loads> for [f64; 2] {
    fn from(loads: Loads) -> Self {
        [loads.front, loads.rear]
    }
}
