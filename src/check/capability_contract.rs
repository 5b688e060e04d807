//! A provider has each section that its capability promises.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity, rules, suggest};

static RULE: Rule = Rule {
    id: "capability-contract",
    severity: Severity::Error,
    asks: "A module that provides a capability has each section that the capability promises.",
    why: "Other parts link to those sections whatever module a van has. A promise that is not kept leaves the owner without the step.",
    source: "the design of Lockerleaf: capabilities are contracts",
    wrong: "provides = [\"hot-water\"], and no section `{#drain}` in the text",
    right: "## Drain it {#drain .task}",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    let capabilities = &checked.book.capabilities.0;
    for module in &checked.book.modules {
        for provided in &module.facts.provides {
            let Some((name, capability)) = capabilities.entry(&provided.value) else {
                let found = Diagnostic::new(
                    &rules::UNKNOWN_CAPABILITY,
                    provided.span,
                    format!("`{}` is not a capability", provided.value.0),
                );
                acc.add(found.help(suggest::did_you_mean(&provided.value, capabilities.names())));
                continue;
            };
            for section in capability
                .sections
                .iter()
                .filter(|section| !module.sections.iter().any(|own| own.id == section.value.0))
            {
                let found = Diagnostic::new(
                    &RULE,
                    provided.span,
                    format!("`{}` provides `{}` without a section `{}`", module.name, name.value, section.value.0),
                );
                acc.add(
                    found
                        .other(section.span, "promised here")
                        .help(format!("add `## … {{#{} .task}}` to its text", section.value.0)),
                );
            }
        }
    }
}
