//! Which sentences tell a reader to do something.

use super::prose::words;

/// Verbs that begin instructions in guides like these.
#[rustfmt::skip]
const VERBS: &[&str] = &[
    "add", "adjust", "aim", "air", "allow", "apply", "ask", "attach", "avoid", "bleed", "bolt", "brace", "bring",
    "brush", "call", "carry", "cart", "change", "charge", "check", "choose", "clamp", "clean", "clear", "climb",
    "clip", "close", "coil", "come", "connect", "cool", "copy", "count", "cover", "crouch", "cut", "dial", "dip",
    "disconnect", "do", "drain", "draw", "drive", "drop", "dry", "earth", "ease", "empty", "engage", "fasten", "feel",
    "fetch", "fill", "find", "fit", "flick", "flip", "flush", "fold", "follow", "get", "give", "go", "grease", "grip",
    "hand", "hang", "have", "heat", "help", "hold", "hook", "insert", "isolate", "jack", "keep", "kneel", "lay",
    "lead", "lean", "leave", "let", "level", "lift", "light", "line", "listen", "load", "lock", "look", "loosen",
    "lower", "make", "mark", "measure", "mix", "mop", "move", "note", "open", "park", "pass", "pick", "place", "plan",
    "play", "plug", "point", "pour", "press", "prime", "pull", "pump", "push", "put", "raise", "reach", "read",
    "refill", "refit", "release", "remove", "renew", "replace", "report", "reset", "rest", "ring", "rinse", "rock",
    "roll", "rub", "run", "say", "screw", "scrub", "seal", "see", "select", "send", "set", "shade", "shake", "show",
    "shut", "sit", "slide", "slip", "smell", "soak", "spray", "spread", "stand", "start", "stay", "step", "stir",
    "stop", "store", "straighten", "swing", "switch", "take", "talk", "tap", "tell", "test", "tie", "tighten", "tilt",
    "top", "touch", "try", "turn", "twist", "undo", "unfold", "unhook", "unlock", "unplug", "unroll", "unscrew",
    "unwind", "use", "vent", "wait", "wake", "walk", "warm", "wash", "watch", "wear", "weigh", "wet", "wheel", "wind",
    "wipe", "work", "wrap", "write",
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
