//! Vans: what is different about each.

use super::Size;
use super::dice::Dice;
use super::kinds::CORE;
use super::models::{Fit, Model, VANS, power};
use super::module::Module;
use std::collections::HashSet;
use std::fmt::Write;

/// What keys are made of.
const LETTERS: &[u8] = b"23456789ABCDEFGHJKMNPQRSTVWXYZ";

/// The place of a van's own.
const OWN_PLACE: &str = "\
[[place]]
code = \"ZZ1\"
kind = \"control\"
name = \"The added control\"
side = \"inside\"
position = [2500, 900, 1200]

";

/// The manifests of all vans, each with its path.
pub fn all(size: &Size, modules: &[Module], models: &[Model]) -> Vec<(String, String)> {
    let mut keys = HashSet::new();
    let van = |number: u64| {
        let mut dice = Dice::of(size.seed, "van", number);
        let model = &models[(number / VANS) as usize];
        let key = loop {
            let key = key(&mut dice);
            if keys.insert(key.clone()) {
                break key;
            }
        };
        (format!("models/{}/van-{:05}.toml", model.name(), number + 1), toml(&mut dice, modules, model, number, &key))
    };
    (0..size.vans).map(van).collect()
}

fn key(dice: &mut Dice) -> String {
    (0..8).map(|_| char::from(LETTERS[dice.below(LETTERS.len())])).collect()
}

fn toml(dice: &mut Dice, modules: &[Module], model: &Model, number: u64, key: &str) -> String {
    let mut out = format!("key = \"{key}\"\nyear = {}\nstock = \"SYN-{number}\"\n", 2010 + dice.below(15));
    if dice.chance(50) {
        let _ =
            writeln!(out, "name = \"{}, number {}\"", dice.pick(&["Sand", "Slate", "Chalk", "Heather"]), number + 1);
    }
    // What is taken away is a page, and what is added is two: its own, and that of its place.
    let kept = model.fits.len() - usize::from(model.fits.len() > CORE && dice.chance(50));
    if let Some(lacks) = model.fits.get(kept) {
        let _ = writeln!(out, "remove = [\"{}\"]", lacks.name());
    }
    out.push('\n');
    let fits = &model.fits[..kept];
    change(dice, modules, fits, &mut out);
    if dice.chance(25) {
        add(dice, modules, model, &mut out);
    }
    records(dice, fits, &mut out);
    out
}

/// One fit has another power; one in three vans has another variant of a module.
fn change(dice: &mut Dice, modules: &[Module], fits: &[Fit], out: &mut String) {
    let changed = dice.below(fits.len());
    let (fit, power) = (&fits[changed], power(dice));
    let others: Vec<&Module> =
        modules.iter().filter(|other| other.is_like(fit.module) && other.variant != fit.module.variant).collect();
    let _ = writeln!(out, "[change.{}]", fit.name());
    if let (false, true) = (others.is_empty(), dice.chance(33)) {
        let _ = writeln!(out, "module = \"{}\"", dice.pick(&others).name());
    }
    let _ =
        writeln!(out, "values = {{ power = \"{power} W\", ignition = \"{}\" }}\n", dice.pick(&["manual", "automatic"]));
}

/// A part that the model lacks, of a system that it has, at a place of its own.
fn add(dice: &mut Dice, modules: &[Module], model: &Model, out: &mut String) {
    let has = |module: &Module| model.fits.iter().any(|fit| module.is_like(fit.module));
    let fits = |module: &Module| model.fits.iter().any(|fit| fit.module.system == module.system);
    let lacking: Vec<&Module> = modules.iter().filter(|module| fits(module) && !has(module)).collect();
    if lacking.is_empty() {
        return;
    }
    let places = vec!["ZZ1".to_string(), model.fits[0].places[0].clone()];
    *out += &Fit { module: dice.pick(&lacking), power: power(dice), places }.toml("add");
    *out += OWN_PLACE;
}

/// What was renewed and measured, and a technician's words.
fn records(dice: &mut Dice, fits: &[Fit], out: &mut String) {
    for part in ["seal", "look", "seal", "look"] {
        let (fit, month, day) = (fits[dice.below(fits.len())].name(), dice.below(12) + 1, dice.below(28) + 1);
        let _ = writeln!(out, "[[renewed]]\nfit = \"{fit}\"\npart = \"{part}\"\non = 2025-{month:02}-{day:02}\n");
    }
    for _ in 0..2 {
        let (fit, tenths, day) = (fits[dice.below(fits.len())].name(), dice.below(90) + 1, dice.below(28) + 1);
        let _ = writeln!(
            out,
            "[[reading]]\nfit = \"{fit}\"\nname = \"current\"\nvalue = \"{}.{} A\"\non = 2025-09-{day:02}\n",
            tenths / 10,
            tenths % 10
        );
    }
    let (fit, says) = (
        fits[dice.below(fits.len())].name(),
        dice.pick(&[
            "It sticks a little: lift it as you turn.",
            "The lamp is hard to see in the sun.",
            "Press it twice when it is cold.",
        ]),
    );
    let _ = writeln!(out, "[[tip]]\nfit = \"{fit}\"\nsays = \"{says}\"");
}
