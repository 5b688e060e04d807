//! Tasks that wait for each other.

use super::{Check, Checked};
use crate::compose::order;
use crate::diag::{Acc, Diagnostic, Rule, Severity};

static RULE: Rule = Rule {
    id: "needs-circle",
    severity: Severity::Error,
    asks: "No task needs itself, directly or through others.",
    why: "A routine puts tasks in the order of their needs; tasks that wait for each other have none.",
    source: "the design of Lockerleaf: routines",
    wrong: "`turn-on` needs `fill`, and `fill` needs `turn-on`",
    right: "`turn-on` needs `fill`",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for van in checked.vans {
        for routine in &checked.book.routines {
            let Err((fit, section)) = order::order(checked.book, van, &routine.name) else {
                continue;
            };
            let module = &checked.book.modules[van.fits[fit].module];
            let id = &module.sections[section].id;
            let span = module.facts.section.entry(id).map(|(name, _)| name.span);
            let found =
                Diagnostic::new(&RULE, span, format!("`{id}` waits for itself in the routine `{}`", routine.name));
            acc.add(
                found
                    .help("look at the `needs` of this section and of those it needs, and take one of them away")
                    .van(&van.name),
            );
        }
    }
}
