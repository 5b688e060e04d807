//! What stands beside the modules: the book itself, capabilities, hazards, words, routines, emergency.

use super::kinds::SYSTEMS;

const BOOK: &str = "[dealer]
name = \"Synthetic Dealer\"
phone = \"01632 960000\"
email = \"workshop@dealer.example\"
web = \"https://www.dealer.example\"
hours = \"Monday to Friday 9.00 to 17.00\"

[guides]
address = \"https://guides.example\"
languages = [\"en\"]
";

/// The routines: name, title, when.
pub const ROUTINES: [(&str, &str, &str); 6] = [
    ("arriving", "Arriving on the pitch", "when the van stands where it will stay"),
    ("before-driving", "Before driving", "right before you drive, every time"),
    ("drain-down", "Draining down", "before the first frost"),
    ("first-fill", "First fill", "before the first use of the season"),
    ("laying-up", "Laying up", "before the van stands for weeks"),
    ("leaving", "Leaving the pitch", "before you pack up"),
];

/// The files, each with its path.
pub fn files() -> Vec<(String, String)> {
    let mut files = vec![
        ("book.toml".to_string(), BOOK.to_string()),
        ("content/capabilities.toml".to_string(), capabilities()),
        ("content/hazards.toml".to_string(), hazards()),
        ("content/words.toml".to_string(), words()),
        ("content/emergency.en.md".to_string(), emergency()),
    ];
    files.extend(ROUTINES.iter().map(|routine| (format!("content/routines/{}.md", routine.0), self::routine(routine))));
    files
}

fn capabilities() -> String {
    let kinds = SYSTEMS.iter().flat_map(|system| system.kinds);
    kinds.map(|(name, title)| format!("[{name}]\ntitle = \"{title}\"\nsections = [\"start\", \"stop\"]\n\n")).collect()
}

fn hazards() -> String {
    let hazards = SYSTEMS.iter().map(|system| &system.hazard);
    let hazard = |hazard: &super::kinds::Hazard| {
        let (name, title, signal, implied) = (hazard.name, hazard.title, hazard.signal, hazard.implied_by);
        format!(
            "[{name}]\ntitle = \"{title}\"\nat-least = \"{signal}\"\nsource = \"made up to measure with\"\nimplied-by = [{implied}]\n\n"
        )
    };
    hazards.map(hazard).collect()
}

/// Three owners' words for each kind of part.
fn words() -> String {
    let kinds = SYSTEMS.iter().flat_map(|system| system.kinds);
    let lines = kinds.flat_map(|(name, title)| {
        ["thing", "box", "gear"].map(|word| format!("\"{name} {word}\" = [\"{}\"]\n", title.to_lowercase()))
    });
    std::iter::once("[en]\n".to_string()).chain(lines).collect()
}

fn routine((_, title, when): &(&str, &str, &str)) -> String {
    format!(
        "# {title}\n\nGo through this list {when}. Take one step at a time, and stop when something is not as it says.\n\n## Nothing to do {{#nothing}}\n\nThis van needs nothing here.\n"
    )
}

fn emergency() -> String {
    let mut out = "# Emergency\n\nGet people out first. Then call 112, and do what the emergency services tell you.\n"
        .to_string();
    for (id, title) in [
        ("gas", "Smell of gas"),
        ("co-alarm", "The carbon monoxide alarm sounds"),
        ("fire", "Fire"),
        ("shock", "Electric shock"),
        ("water", "Water where it should not be"),
        ("ring", "Whom to ring"),
    ] {
        out += &format!(
            "\n## {title} {{#{id}}}\n\n1. Wake everyone, and get them out.\n2. Move well away.\n3. Call 112 from there.\n4. Do not go back until you are told that it is safe.\n5. Tell {{dealer-name}} on {{dealer-phone}} afterwards.\n"
        );
    }
    out
}
