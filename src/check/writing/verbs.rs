//! Which sentences tell a reader to do something.

use super::prose::words;

/// Verbs that begin instructions in guides like these.
#[rustfmt::skip]
const VERBS: &[&str] = &[
    "add", "adjust", "aim", "air", "allow", "apply", "ask", "attach", "avoid", "bend", "bleed", "blow", "bolt",
    "brace", "brake", "bring", "brush", "buckle", "call", "carry", "cart", "catch", "change", "charge", "check",
    "chock", "choose", "clamp", "clean", "clear", "climb", "clip", "close", "coil", "come", "connect", "cool", "copy",
    "count", "cover", "crank", "crouch", "cure", "cut", "deflate", "dial", "dip", "disconnect", "do", "drag", "drain",
    "draw", "drive", "drop", "dry", "earth", "ease", "empty", "engage", "fasten", "feel", "fetch", "fill", "find",
    "fit", "fix", "flick", "flip", "flush", "fold", "follow", "gather", "get", "give", "go", "grease", "grip", "hand",
    "hang", "have", "heat", "help", "hoist", "hold", "hook", "inflate", "insert", "isolate", "jack", "keep", "kneel",
    "knock", "know", "latch", "lay", "lead", "lean", "learn", "leave", "let", "level", "lick", "lift", "light",
    "line", "listen", "load", "lock", "look", "loosen", "lower", "make", "mark", "measure", "mix", "mop", "move",
    "note", "open", "park", "pass", "peel", "pick", "pin", "pinch", "place", "plan", "plane", "play", "plug", "point",
    "poke", "pour", "press", "prime", "prop", "pull", "pump", "push", "put", "raise", "reach", "read", "refill",
    "refit", "release", "remove", "renew", "replace", "report", "reset", "rest", "ring", "rinse", "rock", "roll",
    "rub", "run", "say", "scrape", "screw", "scrub", "seal", "see", "select", "send", "set", "shade", "shake", "show",
    "shower", "shut", "sit", "slacken", "slide", "slip", "smell", "soak", "spin", "spray", "spread", "squeeze",
    "stand", "start", "stay", "steer", "step", "stick", "stir", "stop", "store", "straighten", "strap", "sweep",
    "swing", "switch", "take", "talk", "tap", "tell", "test", "throw", "tie", "tighten", "tilt", "top", "touch",
    "track", "trim", "try", "tuck", "turn", "twist", "unbuckle", "unclip", "undo", "unfold", "unhook", "unlatch",
    "unlock", "unplug", "unroll", "unscrew", "untie", "unwind", "use", "vary", "vent", "visit", "wait", "wake",
    "walk", "warm", "wash", "watch", "wear", "wedge", "weigh", "wet", "wheel", "wind", "wipe", "work", "wrap",
    "write",
];

/// Whether a word is a verb that begins instructions.
pub fn is_verb(word: &str) -> bool {
    VERBS.binary_search(&word.to_lowercase().as_str()).is_ok()
}

/// Whether a sentence is an instruction: it begins with a verb, after "never", "do not" or a condition that ends in a comma.
pub fn instructs(sentence: &str) -> bool {
    let main = match sentence.split_once(", ") {
        Some((condition, main)) if is_condition(condition) => main,
        _ => sentence,
    };
    let mut words = words(main).filter(|word| !is_lead(word));
    words.next().is_some_and(is_verb)
}

/// Words that may stand before the verb of an instruction.
fn is_lead(word: &str) -> bool {
    matches!(
        word.to_lowercase().as_str(),
        "never"
            | "always"
            | "then"
            | "now"
            | "first"
            | "next"
            | "only"
            | "slowly"
            | "gently"
            | "not"
            | "once"
            | "again"
            | "please"
            | "also"
            | "just"
    )
}

fn is_condition(words: &str) -> bool {
    let first = words.split_whitespace().next().unwrap_or_default().to_lowercase();
    matches!(
        first.as_str(),
        "if" | "when"
            | "once"
            | "after"
            | "before"
            | "while"
            | "on"
            | "in"
            | "at"
            | "with"
            | "without"
            | "for"
            | "as"
            | "until"
            | "from"
            | "to"
            | "unless"
            | "where"
            | "outside"
            | "inside"
            | "then"
            | "away"
            | "otherwise"
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn verbs_are_in_order() {
        assert!(VERBS.is_sorted_by(|a, b| a < b));
    }

    #[test]
    fn instructions_are_told_from_results() {
        for sentence in [
            "Turn the knob.",
            "Never cover the vent.",
            "If the lamp stays off, press it again.",
            "Do not use it.",
            "Slowly open the valve.",
            "When it is cold, wipe it.",
        ] {
            assert!(instructs(sentence), "{sentence}");
        }
        for sentence in
            ["You should see a lamp.", "The flame should stay.", "It runs.", "Its lamp goes out.", "A lamp lights."]
        {
            assert!(!instructs(sentence), "{sentence}");
        }
    }
}
