//! Models: places, fits, and what the plan is drawn from.

use super::Size;
use super::dice::Dice;
use super::kinds::{CORE, SYSTEMS};
use super::module::{Module, capability};
use std::fmt::Write;

/// Vans of each model.
pub const VANS: u64 = 25;

/// Pages that every van has: nine of its own kind each, and six routines.
const ALWAYS: usize = 15;

/// Systems of a van, at most.
const MOST_SYSTEMS: usize = 8;

/// One model.
pub struct Model<'m> {
    number: u64,
    /// Its fits; those of the core first.
    pub fits: Vec<Fit<'m>>,
    places: usize,
    length: usize,
    width: usize,
    body: &'static str,
}

/// One module fitted, under the name of its kind.
pub struct Fit<'m> {
    /// The module.
    pub module: &'m Module,
    /// What it draws, in W.
    pub power: usize,
    /// The codes of its places: that of its controls first, then those of its outlets.
    pub places: Vec<String>,
}

/// All models, one for each 25 vans.
pub fn all<'m>(size: &Size, modules: &'m [Module]) -> Vec<Model<'m>> {
    (0..size.vans.div_ceil(VANS)).map(|number| model(size, modules, number)).collect()
}

fn model<'m>(size: &Size, modules: &'m [Module], number: u64) -> Model<'m> {
    let mut dice = Dice::of(size.seed, "model", number);
    let kinds = kinds(&mut dice, size.pages, modules);
    let systems = systems(&kinds);
    let places = (size.pages - ALWAYS - systems).saturating_sub(kinds.len()).max(1);
    let count = kinds.len();
    let fit = |(at, (system, kind)): (usize, (usize, usize))| {
        let of_kind: Vec<&Module> =
            modules.iter().filter(|module| (module.system, module.kind) == (system, kind)).collect();
        let mut own: Vec<_> = (0..places).filter(|place| place % count == at).collect();
        // The controls stand at one place, the outlets at one more at least.
        own.resize_with(own.len().max(2), || dice.below(places));
        Fit { module: dice.pick(&of_kind), power: power(&mut dice), places: own.into_iter().map(code).collect() }
    };
    let fits = kinds.into_iter().enumerate().map(fit).collect();
    let body = ["panel-van", "coachbuilt", "a-class", "micro"][number as usize % 4];
    Model { number, fits, places, length: 5000 + 10 * dice.below(250), width: 1950 + 10 * dice.below(30), body }
}

/// Kinds of parts: half of the pages that are left when systems have theirs. The core comes first, then first kinds.
fn kinds(dice: &mut Dice, pages: usize, modules: &[Module]) -> Vec<(usize, usize)> {
    let mut chosen: Vec<_> = (0..CORE).collect();
    let mut rest: Vec<_> = (CORE..SYSTEMS.len()).collect();
    while chosen.len() < MOST_SYSTEMS {
        chosen.push(rest.swap_remove(dice.below(rest.len())));
    }
    let all = (0..3).flat_map(|kind| chosen.iter().map(move |system| (*system, kind)));
    let known =
        all.filter(|(system, kind)| modules.iter().any(|module| (module.system, module.kind) == (*system, *kind)));
    let mut kinds: Vec<_> = Vec::new();
    for kind in known {
        let systems = systems(&kinds) + 1;
        if kinds.len() >= CORE && 2 * (kinds.len() + 1) + systems.min(MOST_SYSTEMS) > pages - ALWAYS {
            break;
        }
        kinds.push(kind);
    }
    kinds
}

fn systems(kinds: &[(usize, usize)]) -> usize {
    (0..SYSTEMS.len()).filter(|system| kinds.iter().any(|kind| kind.0 == *system)).count()
}

/// The code of a place: A1 to A9, B1 and so on, as labels count them.
fn code(place: usize) -> String {
    let letters: Vec<char> = ('A'..='Z').collect();
    let (group, digit) = (place / 9, place % 9 + 1);
    match group / 26 {
        0 => format!("{}{digit}", letters[group]),
        more => format!("{}{}{digit}", letters[(more - 1) % 26], letters[group % 26]),
    }
}

const SIDES: [&str; 7] = ["inside", "nearside", "inside", "offside", "inside", "rear", "under"];
const KINDS: [&str; 9] = ["panel", "locker", "control", "inlet", "appliance", "vent", "tap", "alarm", "cap"];

/// What a part might draw, in W.
pub fn power(dice: &mut Dice) -> usize {
    20 + 5 * dice.below(400)
}

impl Model<'_> {
    /// The folder's name.
    pub fn name(&self) -> String {
        format!("model-{:03}", self.number + 1)
    }

    /// The file.
    pub fn file(&self) -> (String, String) {
        let mut out = self.head();
        (0..self.places).for_each(|place| out += &self.place(place));
        for fit in &self.fits {
            out += &fit.toml("fit");
        }
        (format!("models/{}/model.toml", self.name()), out)
    }

    fn head(&self) -> String {
        let (length, width) = (self.length, self.width);
        let (middle, back) = (length / 2, length - 120);
        let mut out = format!(
            "title = \"Synthetic {}\"\nbody = \"{}\"\ndrive = \"right-hand\"\nfuel = \"diesel\"\nberths = 2\nseats = 4\n\n[dimensions]\nlength = \"{length} mm\"\nwidth = \"{width} mm\"\nheight = \"2700 mm\"\nwheelbase = \"{} mm\"\nfront-axle = \"950 mm\"\nrear-axle = \"{} mm\"\n\n[masses]\nmaximum = \"3500 kg\"\nrunning-order = \"2900 kg\"\n\n",
            self.number + 1,
            self.body,
            length - 1950,
            length - 1000
        );
        for (kind, side, from, to) in [
            ("cab", "nearside", 1100, 2000),
            ("cab", "offside", 1100, 2000),
            ("sliding", "nearside", 2300, 3500),
            ("window", "offside", 2600, 3600),
            ("rear", "rear", 200, width - 200),
        ] {
            let _ = writeln!(out, "[[door]]\nkind = \"{kind}\"\nside = \"{side}\"\nfrom = {from}\nto = {to}\n");
        }
        for (kind, name, [x1, y1, x2, y2]) in [
            ("cab-seat", "Driver", [1300, 1200, 1800, 1750]),
            ("cab-seat", "Passenger", [1300, 200, 1800, 750]),
            ("seat", "Bench", [2100, 1000, 2600, width - 80]),
            ("galley", "Kitchen", [2700, 80, middle + 700, 650]),
            ("washroom", "Washroom", [middle + 300, width - 900, middle + 1100, width - 80]),
            ("bed", "Bed", [back - 1300, 80, back, width - 950]),
        ] {
            let _ = writeln!(out, "[[room]]\nkind = \"{kind}\"\nname = \"{name}\"\nbox = [{x1}, {y1}, {x2}, {y2}]\n");
        }
        out
    }

    fn place(&self, place: usize) -> String {
        let (side, kind) = (SIDES[place % SIDES.len()], KINDS[place % KINDS.len()]);
        let x = 600 + place * 997 % (self.length - 900);
        let y = match side {
            "nearside" => 0,
            "offside" => self.width,
            _ => 150 + place * 571 % (self.width - 300),
        };
        let x = if side == "rear" { self.length } else { x };
        let note = if place.is_multiple_of(3) { "note = \"behind the lower door\"\n" } else { "" };
        format!(
            "[[place]]\ncode = \"{}\"\nkind = \"{kind}\"\nname = \"The {} {kind}\"\nside = \"{side}\"\nposition = [{x}, {y}, {}]\n{note}\n",
            code(place),
            ["lower", "upper", "front", "back", "small"][place % 5],
            300 + place * 37 % 1200
        )
    }
}

impl Fit<'_> {
    /// Its name.
    pub fn name(&self) -> &'static str {
        capability(self.module.system, self.module.kind)
    }

    /// As it stands in a manifest, under `[[fit]]` or `[[add]]`.
    pub fn toml(&self, table: &str) -> String {
        let (controls, outlets) = (&self.places[0], self.places[1..].join("\", \""));
        let ignition = if self.power.is_multiple_of(2) { "manual" } else { "automatic" };
        let (module, name, power) = (self.module.name(), self.name(), self.power);
        format!(
            "[[{table}]]\nmodule = \"{module}\"\nas = \"{name}\"\nplaces = {{ controls = \"{controls}\", outlets = [\"{outlets}\"] }}\nvalues = {{ power = \"{power} W\", ignition = \"{ignition}\" }}\n\n"
        )
    }
}
