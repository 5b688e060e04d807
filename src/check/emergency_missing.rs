//! A book with vans says what to do in an emergency.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::text::Text;

static RULE: Rule = Rule {
    id: "emergency-missing",
    severity: Severity::Error,
    asks: "A book with vans says in each of its languages what to do in an emergency.",
    why: "Emergency is one tap from every page. Whoever taps it must find what to do, and whom to ring.",
    source: "IEC/IEEE 82079-1: emergency content; the design of Lockerleaf: the guide",
    wrong: "languages = [\"en\"], and no content/emergency.en.md",
    right: "content/emergency.en.md with the sections gas, co-alarm, fire, shock, water and ring",
};

/// The sections that the page must have.
const SECTIONS: [&str; 6] = ["gas", "co-alarm", "fire", "shock", "water", "ring"];

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    if checked.vans.is_empty() {
        return;
    }
    // A further language that lacks it is what `language-missing` finds.
    let language = checked.book.settings.language();
    if !checked.book.emergency.contains_key(language) {
        let found = Diagnostic::new(&RULE, None, format!("there is no `content/emergency.{language}.md`"));
        acc.add(found.help(format!("write it, with the sections {}", SECTIONS.join(", "))));
    }
    checked.book.emergency.values().for_each(|text| sections(acc, text));
}

fn sections(acc: &mut Acc, text: &Text) {
    for name in SECTIONS.iter().filter(|name| !text.sections.iter().any(|section| section.id.value == **name)) {
        let found = Diagnostic::new(&RULE, text.title.span, format!("this page has no section `{name}`"));
        acc.add(found.help(format!("add `## … {{#{name}}}` with a numbered list of what to do")));
    }
}
