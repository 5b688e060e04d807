//! Sections that no van shows yet, and that do not warn of what they expose to.

use super::{Check, Guarded, notes};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::book::SectionFacts;
use crate::model::text::{Block, Section};

static RULE: Rule = Rule {
    id: "section-unwarned",
    severity: Severity::Error,
    asks: "A section that no van shows yet warns of what it exposes to, like those that are shown.",
    why: "The next van may show it, and its owner would be the first to find the gap.",
    source: "the design of Lockerleaf: safety coverage",
    wrong: "[section.run-on-mains]\nwhen = …\nexposes = [\"electric-shock\"], and no note",
    right: "> **WARNING** [Electric shock](hazard:electric-shock). …",
};

pub(super) static SAFETY: Check = Check { rule: &RULE, run };

fn run(acc: &mut Acc, guarded: Guarded) {
    let book = guarded.book;
    for (number, module) in notes::fitted(book) {
        let fits: Vec<_> = guarded.vans.iter().flat_map(|van| &van.fits).filter(|fit| fit.module == number).collect();
        let hidden = |at: usize| !fits.iter().any(|fit| fit.shown[at]);
        for (_, section) in module.sections.iter().enumerate().filter(|(at, _)| hidden(*at)) {
            for language in module.texts.keys() {
                let top = notes::at_top(book, number, language);
                let (_, shown) = book.section(section, language);
                let warned = |hazard: &str| {
                    let general = top.iter().any(|note| note.hazard.value == hazard) && !notes::warns(section, hazard);
                    general || before_steps(shown, hazard)
                };
                for hazard in notes::exposes(section).filter(|hazard| !warned(hazard)) {
                    say(acc, &module.name, section, shown, hazard);
                }
            }
        }
    }
}

fn before_steps(section: &Section, hazard: &str) -> bool {
    let steps = section.blocks.iter().position(|block| matches!(block, Block::List(Some(_), _)));
    let before = &section.blocks[..steps.unwrap_or(section.blocks.len())];
    notes::of(before).iter().any(|note| note.hazard.value == hazard)
}

fn say(acc: &mut Acc, module: &str, facts: &SectionFacts, section: &Section, hazard: &str) {
    let message = format!("`{module}` exposes to `{hazard}` in `{}`, and no note says so", facts.id);
    let help = "put a note before the steps of this section, or at the top of the part";
    acc.add(Diagnostic::new(&RULE, section.id.span, message).help(help));
}
