//! Modules: their texts, of about 6 KB as real ones are.

use super::dice::Dice;
use super::kinds::{CORE, SYSTEMS, System};
use std::fmt::Write;

/// A text is at least so long; the last section that is added makes it a little longer.
const LEAST: usize = 5_800;

/// The numbers that texts hold.
pub const SAYS: [&str; 4] = ["30 s", "2 min", "10 min", "3 tries"];

/// The wiring of a section.
pub struct Section {
    id: String,
    wiring: String,
}

impl Section {
    /// As it stands in `module.toml`.
    pub fn toml(&self) -> String {
        format!("[section.{}]\n{}\n", self.id, self.wiring)
    }
}

/// The text of a module and the wiring of its sections. `linked` are two capabilities that it speaks of where they are fitted.
pub fn text(dice: &mut Dice, system: &System, title: &str, linked: [&str; 2]) -> (String, Vec<Section>) {
    let mut writer = Writer { dice, hazard: system.hazard.name, out: format!("# {title}\n\n"), sections: vec![] };
    writer.opening(system, title);
    writer.tasks(linked);
    writer.controls();
    for number in 1.. {
        writer.fault(number);
        if number % 2 == 0 {
            writer.care(number / 2);
        }
        if number > 2 && writer.out.len() > LEAST {
            break;
        }
    }
    (writer.out, writer.sections)
}

struct Writer<'a> {
    dice: &'a mut Dice,
    hazard: &'static str,
    out: String,
    sections: Vec<Section>,
}

impl Writer<'_> {
    fn heading(&mut self, title: &str, id: &str, role: &str, wiring: &str) {
        let role = if role.is_empty() { String::new() } else { format!(" .{role}") };
        let _ = writeln!(self.out, "\n## {title} {{#{id}{role}}}\n");
        self.sections.push(Section { id: id.to_string(), wiring: wiring.to_string() });
    }

    fn line(&mut self, text: &str) {
        self.out += text;
        self.out.push('\n');
    }

    fn steps(&mut self, count: usize) {
        for number in 1..=count {
            let step = step(self.dice);
            self.line(&format!("{number}. {step}"));
        }
    }

    fn opening(&mut self, system: &System, title: &str) {
        let hazard = &system.hazard;
        self.line(&format!(
            "The {} is part of the {} system. It has its own switch, and it shows with a lamp what it does.\n",
            title.to_lowercase(),
            system.name
        ));
        self.line(&format!(
            "> **{}** [{}](hazard:{}). {}\n>",
            hazard.signal, hazard.title, hazard.name, hazard.happens
        ));
        hazard.avoid.iter().for_each(|avoid| self.line(&format!("> - {avoid}")));
        self.heading("What it does", "what-it-does", "", "at = \"controls\"");
        self.line("It works with *air, water or current*, and it needs **a clear space** round it. This one has a finish of {finish}, it lights {ignition}, and it holds {capacity}, which weighs {mass}.\n");
        self.line("| lamp | what it means | what it draws |\n| --- | --- | ---: |");
        for (lamp, draws) in
            [("green", "{power}"), ("amber", "about {current}"), ("red", "nothing"), ("dark", "nothing")]
        {
            let (noun, state) = (noun(self.dice), state(self.dice));
            self.line(&format!("| {lamp} | the {noun} is {state} | {draws} |"));
        }
        if self.dice.chance(20) {
            self.line("\n```wiring\nF1  supply  15 A  # red\nF2  lamp    3 A   # blue\nF3  spare   5 A   # grey\n```");
        }
    }

    fn tasks(&mut self, linked: [&str; 2]) {
        let core = SYSTEMS[self.dice.below(CORE)].kinds[0].0;
        let at = "at = \"controls\"";
        let exposes = format!("exposes = [\"{}\"]", self.hazard);
        self.heading(
            "Start it",
            "start",
            "task",
            &format!("{at}\nroutine = [\"first-fill\", \"arriving\"]\n{exposes}"),
        );
        self.line(&format!("1. Look that [the supply](part:{core}#start) is on."));
        self.line("2. Go to [the controls](place:controls). It draws {power}.");
        self.line("3. Turn the knob to the right. The green lamp should light within 30 s.");
        self.heading("Stop it", "stop", "task", &format!("{at}\nroutine = [\"leaving\", \"before-driving\"]"));
        self.steps(3);
        self.heading(
            "Empty it before frost",
            "drain",
            "task",
            "at = [\"controls\", \"outlets\"]\nroutine = \"drain-down\"\nneeds = \"self#stop\"",
        );
        self.steps(5);
        self.heading(
            "Put it away for the winter",
            "lay-up",
            "task",
            "at = \"outlets\"\nroutine = \"laying-up\"\nneeds = \"self#drain\"",
        );
        self.steps(4);
        self.heading(
            "Light it by hand",
            "light-by-hand",
            "task",
            &format!("{at}\nwhen = {{ value = \"ignition\", is = \"manual\" }}\nneeds = \"self#start\""),
        );
        self.steps(4);
        self.heading(
            "It lights by itself",
            "lights-itself",
            "",
            &format!("{at}\nwhen = {{ value = \"ignition\", is = \"automatic\" }}"),
        );
        self.line("It tries 3 tries and then waits. [Start it](part:self#start) and listen: you should hear a click.");
        self.together(linked);
    }

    /// Tasks that need another part, where that one is fitted.
    fn together(&mut self, linked: [&str; 2]) {
        let [first, second] = linked;
        for capability in if first == second { vec![first] } else { vec![first, second] } {
            let wiring = format!("at = \"controls\"\nwhen = {{ fitted = \"{capability}\" }}");
            self.heading(
                &format!("Use it together with the {capability}"),
                &format!("with-{capability}"),
                "task",
                &wiring,
            );
            self.line(&format!(
                "1. [Start the other one](part:{capability}#start) first, and see [all about it](part:{capability})."
            ));
            self.line("2. Come back to [the controls](place:controls).\n3. Wait 2 min. Both lamps should be green.");
        }
    }

    fn controls(&mut self) {
        for (title, id) in [("The main switch", "main-switch"), ("The lamp", "lamp"), ("The lever", "lever")] {
            self.heading(title, id, "control", "at = \"controls\"");
            let (noun, state) = (noun(self.dice), state(self.dice));
            self.line(&format!(
                "Left is off and right is on. In the middle the {noun} is {state}, and it draws about {{current}}."
            ));
        }
        self.heading("Is it working?", "is-it-working", "check", "at = [\"controls\", \"outlets\"]");
        self.line("Hold your hand at [the outlets](place:outlets) for 30 s. The current should be about {current}.");
    }

    fn fault(&mut self, number: usize) {
        let core = SYSTEMS[self.dice.below(CORE)].kinds[0].0;
        let (noun, state) = (noun(self.dice), state(self.dice));
        self.heading(
            &format!("The {noun} is {state} ({number})"),
            &format!("fault-{number}"),
            "fault",
            "at = \"controls\"",
        );
        self.line("Try these in turn, and stop as soon as it works.\n");
        self.steps(2);
        self.line(&format!("3. [Stop it](part:self#stop), wait 10 min, and [start it](part:self#start) again.\n4. Look at [the supply](part:{core}#start).\n5. Leave it off, and ring {{dealer-name}} on {{dealer-phone}}."));
    }

    fn care(&mut self, number: usize) {
        let noun = noun(self.dice);
        self.heading(&format!("Clean the {noun} ({number})"), &format!("care-{number}"), "care", "at = \"outlets\"");
        self.steps(3);
    }
}

fn noun(dice: &mut Dice) -> &'static str {
    dice.pick(&[
        "filter", "grille", "cover", "seal", "display", "handle", "hose", "float", "clip", "tray", "catch", "spring",
        "gauge", "cap",
    ])
}

fn state(dice: &mut Dice) -> &'static str {
    dice.pick(&[
        "warm",
        "cold",
        "loose",
        "quiet",
        "slow",
        "wet",
        "dry",
        "dark",
        "open",
        "stiff",
        "noisy",
        "clear of leaves & dust",
        "up",
        "down",
    ])
}

fn step(dice: &mut Dice) -> String {
    let (noun, state) = (noun(dice), state(dice));
    match dice.below(8) {
        0 => format!("Go to [the controls](place:controls) and open the {noun}."),
        1 => {
            format!("Turn the knob to the *{}*. The {noun} should be {state}.", dice.pick(&["left", "middle", "right"]))
        }
        2 => format!(
            "Press the **{}** button once. You should hear a {}.",
            dice.pick(&["upper", "lower", "round"]),
            dice.pick(&["click", "hum", "hiss"])
        ),
        3 => format!("Wait 2 min until the {noun} is {state}."),
        4 => format!("Look at [the outlets](place:outlets). The {noun} there should be {state}."),
        5 => format!("Read the gauge. It should show about {{current}}, and the {noun} should be {state}."),
        6 => format!("Push the lever down until the {noun} holds. In the {{van-name}} it is {state} then."),
        _ => format!("Wipe the {noun} with a damp cloth, and let it dry for 10 min."),
    }
}
