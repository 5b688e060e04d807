//! What a van can have: kinds of parts by system, and the hazard that each system brings.

/// A system with its kinds of parts. A kind is a capability too.
pub struct System {
    /// Its folder.
    pub name: &'static str,
    /// Kinds of parts: the name and the title.
    pub kinds: [(&'static str, &'static str); 3],
    /// A line of `[traits]`, or nothing.
    pub traits: &'static str,
    /// The hazard of its parts.
    pub hazard: Hazard,
    /// What its parts draw from.
    pub draws: &'static str,
}

/// A hazard, and the note about it.
pub struct Hazard {
    /// Its name.
    pub name: &'static str,
    /// Its title.
    pub title: &'static str,
    /// Its signal word.
    pub signal: &'static str,
    /// What implies it, as TOML.
    pub implied_by: &'static str,
    /// What can happen.
    pub happens: &'static str,
    /// How to avoid it.
    pub avoid: [&'static str; 2],
}

/// How many systems every van has, with their first kinds of parts: those can be linked to from anywhere.
pub const CORE: usize = 3;

/// All systems, those that every van has first.
pub const SYSTEMS: [System; 11] = [
    System {
        name: "12v",
        kinds: [("battery", "Battery"), ("panel", "Panel"), ("charger", "Charger")],
        traits: "carries = \"battery-current\"",
        hazard: Hazard {
            name: "battery-short-circuit",
            title: "Short circuit",
            signal: "WARNING",
            implied_by: r#"{ trait = "carries", is = ["battery-current"] }"#,
            happens: "A tool across the terminals can make a fire.",
            avoid: ["Keep metal away from the terminals.", "Leave the wiring to a qualified electrician."],
        },
        draws: "12v",
    },
    System {
        name: "mains",
        kinds: [("inlet", "Inlet"), ("breakers", "Breakers"), ("sockets", "Sockets")],
        traits: "carries = \"mains-current\"",
        hazard: Hazard {
            name: "electric-shock",
            title: "Electric shock",
            signal: "WARNING",
            implied_by: r#"{ trait = "carries", is = ["mains-current"] }"#,
            happens: "Mains voltage can kill.",
            avoid: ["Never take off a cover.", "Leave mains work to a qualified electrician."],
        },
        draws: "12v",
    },
    System {
        name: "water",
        kinds: [("tank", "Tank"), ("pump", "Pump"), ("filter", "Filter")],
        traits: "contains = \"fresh-water\"",
        hazard: Hazard {
            name: "stagnant-water",
            title: "Stale water",
            signal: "CAUTION",
            implied_by: r#"{ trait = "contains", is = ["fresh-water"] }"#,
            happens: "Water that has stood can make you ill.",
            avoid: ["Drain it when you stop using the van.", "Flush and clean it before you drink from it again."],
        },
        draws: "12v",
    },
    System {
        name: "gas",
        kinds: [("locker", "Locker"), ("regulator", "Regulator"), ("valves", "Valves")],
        traits: "contains = \"lpg\"",
        hazard: Hazard {
            name: "lpg-leak",
            title: "Gas leak",
            signal: "WARNING",
            implied_by: r#"{ trait = "contains", is = ["lpg"] }"#,
            happens: "Gas that leaks sinks, and one spark can set it alight.",
            avoid: [
                "If you smell gas, touch no switch, go outside and turn the gas off.",
                "Leave gas parts to a licensed gas engineer.",
            ],
        },
        draws: "lpg",
    },
    System {
        name: "toilet",
        kinds: [("cassette", "Cassette"), ("flush", "Flush"), ("hatch", "Hatch")],
        traits: "contains = \"toilet-chemicals\"",
        hazard: Hazard {
            name: "toilet-chemicals",
            title: "Toilet fluid",
            signal: "CAUTION",
            implied_by: r#"{ trait = "contains", is = ["toilet-chemicals"] }"#,
            happens: "The fluid can hurt skin and eyes.",
            avoid: ["Wear gloves.", "Follow the words on its bottle."],
        },
        draws: "12v",
    },
    System {
        name: "heating",
        kinds: [("heater", "Heater"), ("boiler", "Boiler"), ("blower", "Blower")],
        traits: "heats = \"air\"",
        hazard: Hazard {
            name: "hot-surface",
            title: "Hot parts",
            signal: "CAUTION",
            implied_by: r#"{ trait = "heats", is = ["air"] }"#,
            happens: "Parts near the outlet can burn skin.",
            avoid: ["Keep children away from the outlet.", "Let it cool before you touch it."],
        },
        draws: "12v",
    },
    System {
        name: "cooking",
        kinds: [("hob", "Hob"), ("oven", "Oven"), ("hood", "Hood")],
        traits: "heats = \"food\"",
        hazard: Hazard {
            name: "cooking-fire",
            title: "Fire while cooking",
            signal: "WARNING",
            implied_by: r#"{ trait = "heats", is = ["food"] }"#,
            happens: "Hot fat and cloth near it can catch fire.",
            avoid: ["Stay with it while it is on.", "Keep cloth and paper away."],
        },
        draws: "lpg",
    },
    System {
        name: "cooling",
        kinds: [("fridge", "Fridge"), ("freezer", "Freezer"), ("cool-box", "Cool box")],
        traits: "needs = \"ventilation\"",
        hazard: Hazard {
            name: "blocked-ventilation",
            title: "Blocked vents",
            signal: "WARNING",
            implied_by: r#"{ trait = "needs", is = ["ventilation"] }"#,
            happens: "Without air it runs hot and can send fumes indoors.",
            avoid: ["Keep its vents clear.", "Never seal a vent."],
        },
        draws: "12v",
    },
    System {
        name: "safety",
        kinds: [("smoke-alarm", "Smoke alarm"), ("gas-alarm", "Gas alarm"), ("extinguisher", "Extinguisher")],
        traits: "",
        hazard: Hazard {
            name: "blocked-exit",
            title: "Blocked way out",
            signal: "WARNING",
            implied_by: "",
            happens: "You may not get out of a burning van in time.",
            avoid: ["Keep each way out clear.", "Show everyone how to open it."],
        },
        draws: "12v",
    },
    System {
        name: "body",
        kinds: [("step", "Step"), ("awning", "Awning"), ("roof-window", "Roof window")],
        traits: "moves = \"step\"",
        hazard: Hazard {
            name: "moving-step",
            title: "Moving parts",
            signal: "CAUTION",
            implied_by: r#"{ trait = "moves", is = ["step"] }"#,
            happens: "Parts that move can trap feet and fingers.",
            avoid: ["Look that nobody is near before you move it.", "Keep your hands out of its way."],
        },
        draws: "12v",
    },
    System {
        name: "vehicle",
        kinds: [("tyres", "Tyres"), ("load", "Load"), ("spare-wheel", "Spare wheel")],
        traits: "stands-on = \"tyres\"",
        hazard: Hazard {
            name: "tyre-age",
            title: "Old tyres",
            signal: "WARNING",
            implied_by: r#"{ trait = "stands-on", is = ["tyres"] }"#,
            happens: "An old tyre can burst on the road.",
            avoid: ["Look at the date on each tyre.", "Have cracked tyres changed."],
        },
        draws: "12v",
    },
];
