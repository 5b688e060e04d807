//! Choices that no section speaks of.

use super::{Check, Checked, possible};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::book::{Book, Module};
use crate::model::files::forms::Condition;

static RULE: Rule = Rule {
    id: "choice-uncovered",
    severity: Severity::Error,
    asks: "Where sections depend on a choice, each of its words has a section that can show, or is listed as `silent`.",
    why: "An owner whose part is of the kind that was forgotten would find no words about it.",
    source: "the design of Lockerleaf: conditions",
    wrong: "choices = [\"manual\", \"automatic\"], and only a section with `when = { value = \"ignition\", is = \"manual\" }`",
    right: "a section for `automatic` too, or `silent = [\"automatic\"]`",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for module in &checked.book.modules {
        for (name, value) in module.facts.values.iter().filter(|(_, value)| !value.choices.is_empty()) {
            let conditions = conditions(module, &name.value);
            let sound = conditions.iter().all(|when| possible::is_sound(checked.book, &module.facts, when));
            if conditions.is_empty() || !sound {
                continue;
            }
            for choice in &value.choices {
                let silent = value.silent.iter().any(|silent| silent.value == choice.value);
                if !silent && !covered(checked.book, module, &conditions, &name.value, &choice.value) {
                    let found = Diagnostic::new(
                        &RULE,
                        choice.span,
                        format!("no section shows when `{}` is `{}`", name.value, choice.value.0),
                    );
                    acc.add(found.help(format!(
                        "write a section for it, or add `silent = [\"{}\"]` when there is nothing to say",
                        choice.value.0
                    )));
                }
            }
        }
    }
}

fn conditions<'a>(module: &'a Module, value: &str) -> Vec<&'a Condition> {
    let all = module.facts.section.iter().filter_map(|(_, wiring)| wiring.when.as_ref());
    all.filter(|when| possible::values(when).contains(&value)).collect()
}

fn covered(book: &Book, module: &Module, conditions: &[&Condition], value: &str, choice: &str) -> bool {
    conditions.iter().any(|when| possible::can_hold(book, &module.facts, when, Some((value, choice))))
}
