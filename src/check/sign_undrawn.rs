//! The theme has a drawing of each sign that a hazard names.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity, suggest};

static RULE: Rule = Rule {
    id: "sign-undrawn",
    severity: Severity::Error,
    asks: "The theme has a drawing of each sign that a hazard names, at `signs/<code>.svg` in small letters.",
    why: "A safety note shows the sign of its hazard. Who cannot read the words still knows the sign.",
    source: "ISO 7010: registered safety signs; ISO 3864-1: their shapes and colours",
    wrong: "sign = \"W021\", and the theme has no signs/w021.svg",
    right: "sign = \"W021\", and themes/<theme>/signs/w021.svg: a black flame in a yellow triangle",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    let drawn: Vec<&str> = checked.book.theme.signs().map(|(code, _)| code).collect();
    for sign in checked.book.hazards.0.iter().filter_map(|(_, hazard)| hazard.sign.as_ref()) {
        let code = sign.value.to_lowercase();
        if !drawn.contains(&code.as_str()) {
            let message = format!("the theme has no drawing of the sign `{}`", sign.value);
            let known = drawn.iter().map(|code| code.to_uppercase()).collect::<Vec<_>>();
            let help = format!(
                "draw `signs/{code}.svg` in the theme, or leave the sign out for the general one; {}",
                suggest::did_you_mean(&sign.value, known.iter().map(String::as_str))
            );
            acc.add(Diagnostic::new(&RULE, sign.span, message).help(help));
        }
    }
}
