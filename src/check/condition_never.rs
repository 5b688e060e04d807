//! Conditions that no van can meet.

use super::{Check, Checked, possible};
use crate::diag::{Acc, Diagnostic, Rule, Severity};

static RULE: Rule = Rule {
    id: "condition-never",
    severity: Severity::Error,
    asks: "Each condition can hold in some van.",
    why: "A section whose condition never holds is never read, though its author believes that it is.",
    source: "the design of Lockerleaf: conditions",
    wrong: "when = { all = [{ value = \"ignition\", is = \"manual\" }, { value = \"ignition\", is = \"automatic\" }] }",
    right: "when = { value = \"ignition\", is = [\"manual\", \"automatic\"] }",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for module in &checked.book.modules {
        for (name, wiring) in module.facts.section.iter().filter(|(name, _)| name.span.file == module.file) {
            if let Some(when) = &wiring.when
                && possible::is_sound(checked.book, &module.facts, when)
                && !possible::can_hold(checked.book, &module.facts, when, None)
            {
                let found =
                    Diagnostic::new(&RULE, name.span, format!("the condition of `{}` can never hold", name.value));
                acc.add(
                    found.help("ask for facts that can be so together, and for a capability that some module provides"),
                );
            }
        }
    }
}
