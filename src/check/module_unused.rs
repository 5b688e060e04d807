//! A module that no vehicle has.

use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use std::collections::BTreeSet;

static RULE: Rule = Rule {
    id: "module-unused",
    severity: Severity::Warning,
    asks: "Each module is fitted in some van, and each shared module is included by some module.",
    why: "A module that is never fitted is never read by anybody, and its mistakes are not seen.",
    source: "the design of Lockerleaf: modules",
    wrong: "content/gas/changeover/, and no `[[fit]]` with it",
    right: "a `[[fit]]` with `module = \"gas/changeover\"`",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    let book = checked.book;
    if book.incomplete {
        return;
    }
    let fitted: BTreeSet<_> = checked.vans.iter().flat_map(|van| van.fits.iter().map(|fit| fit.module)).collect();
    let included: BTreeSet<_> = book.modules.iter().flat_map(|module| module.includes.iter().copied()).collect();
    let placed = |name: &str, shared: bool| shared == name.starts_with("shared/");
    let modules = book.modules.iter().enumerate();
    for (number, module) in modules.filter(|(_, module)| placed(&module.name, module.system.is_none())) {
        let (used, how) = match module.system {
            Some(_) => (fitted.contains(&number), "fitted in no van"),
            None => (included.contains(&number), "included by no module"),
        };
        if !used {
            let found = Diagnostic::new(&RULE, module.facts.title.span, format!("`{}` is {how}", module.name));
            acc.add(found.help("fit it, or keep it in mind: nobody reads it yet"));
        }
    }
}
