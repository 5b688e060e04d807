//! Modules: their facts.

use super::Size;
use super::dice::Dice;
use super::kinds::{CORE, SYSTEMS, System};
use super::text::{self, SAYS, Section};
use std::fmt::Write;

/// One module.
pub struct Module {
    /// Its system's number.
    pub system: usize,
    /// Its kind's number in the system.
    pub kind: usize,
    /// Which of several of its kind it is.
    pub variant: usize,
    text: String,
    sections: Vec<Section>,
}

/// All modules: one of each kind, then second ones, and so on. Kinds that come first in their systems come first.
pub fn all(size: &Size) -> Vec<Module> {
    let kinds = SYSTEMS.len() * 3;
    let known = |kind: usize| kind < size.modules;
    let module = |number: usize| {
        let (at, variant) = (number % kinds, number / kinds);
        let (system, kind) = (at % SYSTEMS.len(), at / SYSTEMS.len());
        let mut dice = Dice::of(size.seed, "module", number as u64);
        let others: Vec<_> = (CORE..kinds)
            .filter(|other| *other != at && known(*other))
            .map(|other| capability(other % SYSTEMS.len(), other / SYSTEMS.len()))
            .collect();
        let linked = [0, 1].map(|_| dice.pick(&others));
        let (text, sections) = text::text(&mut dice, &SYSTEMS[system], &title(system, kind, variant), linked);
        Module { system, kind, variant, text, sections }
    };
    (0..size.modules).map(module).collect()
}

/// The name of a kind, which is a capability too.
pub fn capability(system: usize, kind: usize) -> &'static str {
    SYSTEMS[system].kinds[kind].0
}

fn title(system: usize, kind: usize, variant: usize) -> String {
    let title = SYSTEMS[system].kinds[kind].1;
    if variant == 0 { title.to_string() } else { format!("{title}, type {}", variant + 1) }
}

impl Module {
    /// `water/tank-1`.
    pub fn name(&self) -> String {
        format!("{}/{}-{}", self.facts().name, capability(self.system, self.kind), self.variant + 1)
    }

    /// Whether both are of one kind.
    pub fn is_like(&self, other: &Module) -> bool {
        (self.system, self.kind) == (other.system, other.kind)
    }

    fn facts(&self) -> &'static System {
        &SYSTEMS[self.system]
    }

    /// Its two files.
    pub fn files(&self) -> [(String, String); 2] {
        let folder = format!("content/{}", self.name());
        [(format!("{folder}/module.toml"), self.toml()), (format!("{folder}/text.md"), self.text.clone())]
    }

    fn toml(&self) -> String {
        let capability = capability(self.system, self.kind);
        let draws = self.facts().draws;
        let mut out =
            format!("title = \"{}\"\nprovides = [\"{capability}\"]\n", title(self.system, self.kind, self.variant));
        let _ = writeln!(
            out,
            "aliases = [\"{capability} unit\", \"the {capability}\", \"{} part\"]\n\n[traits]\n{}",
            self.facts().name,
            self.facts().traits
        );
        out += VALUES;
        // Gas is counted by mass: the figure for it comes from the same power.
        let draw = if draws == "lpg" { "gas" } else { "power" };
        let _ = writeln!(out, "[[load]]\nfrom = \"{draws}\"\ndraw = \"{draw}\"\nduty = \"4 h\"\n");
        self.sections.iter().for_each(|section| out += &section.toml());
        for says in SAYS.iter().filter(|says| self.text.contains(**says)) {
            let _ =
                writeln!(out, "[[source]]\nsays = \"{says}\"\nfrom = \"memory\"\nis = \"made up to measure with\"\n");
        }
        out
    }
}

/// What every module has: values of each sort, sums, places, lives and a reading.
const VALUES: &str = r#"
[values.power]
title = "Power"
unit = "W"
range = "5 to 3000 W"
required = true

[values.capacity]
title = "Capacity"
unit = "l"
range = "1 to 200 l"
default = "20 l"

[values.ignition]
title = "Lighting"
choices = ["manual", "automatic"]
words = { manual = "by hand", automatic = "by itself" }
required = true

[values.finish]
title = "Finish"
text = true
default = "grey"

[figures.current]
title = "Current"
calculation = "current"
with = { power = "power", voltage = "230 V" }

[figures.mass]
title = "Mass when full"
calculation = "water-mass"
with = { volume = "capacity" }

[figures.gas]
title = "Gas used"
calculation = "gas-use"
with = { power = "power", gas = "propane" }

[places.controls]
title = "Controls"
required = true
labelled = true

[places.outlets]
title = "Outlets"
required = true
many = true

[life.seal]
title = "Seal"
every = "60 months"
action = "renew"
source = "made up to measure with"

[life.look]
title = "Look all over it"
every = "12 months"
action = "check"
source = "made up to measure with"

[reading.current]
title = "Current"
unit = "A"
expect = "0 to 10 A"
source = "made up to measure with"

"#;
