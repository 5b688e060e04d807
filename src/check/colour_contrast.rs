//! The dealer's colour can be read on the theme's paper, and light words on it.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::colour::{Colour, READABLE};

static RULE: Rule = Rule {
    id: "colour-contrast",
    severity: Severity::Error,
    asks: "The dealer's colour has a contrast of 4.5 to 1 against the paper of the theme, and against the words that stand on it.",
    why: "Links and the plates of places take this colour. Outdoors, on an old phone, weaker words cannot be read.",
    source: "WCAG 2.2, 1.4.3: contrast of at least 4.5 to 1",
    wrong: "colour = \"#ff8200\"",
    right: "colour = \"#a85600\"",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    let guides = checked.book.file.as_ref().and_then(|(_, file)| file.guides.as_ref());
    let Some(given) = guides.and_then(|guides| guides.colour.as_ref()) else {
        return;
    };
    let theme = &checked.book.theme;
    let against: Vec<Colour> =
        ["--paper", "--sheet", "--on-plate"].iter().filter_map(|name| theme.colour(name, false)).collect();
    let Some(colour) = Colour::parse(&given.0) else {
        return;
    };
    let least = against.iter().map(|other| colour.contrast(*other)).fold(f64::INFINITY, f64::min);
    if least >= READABLE {
        return;
    }
    let message = format!(
        "`{}` has a contrast of {:.1} to 1 only, and 4.5 to 1 is needed",
        given.0,
        (least * 10.0).floor() / 10.0
    );
    let found = Diagnostic::new(&RULE, given.span, message);
    acc.add(match colour.readable(&against, READABLE) {
        Some(near) => {
            found.help(format!("take `{}`: the same colour, as far from the paper as it must be", near.hex()))
        }
        None => found.help("take a darker colour, or leave it out for that of the theme"),
    });
}
