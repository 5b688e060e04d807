//! A label opens a page with something to read.

use super::parts::{self, Part, Parts};
use super::{Check, Checked};
use crate::diag::{Acc, Diagnostic, Rule, Severity};
use crate::model::text::each_note;

static RULE: Rule = Rule {
    id: "label-page",
    severity: Severity::Error,
    asks: "At each labelled place there is a section, a safety note or a technician's tip to read.",
    why: "Whoever scans a label stands in front of the thing and wants help. An empty page teaches them not to scan.",
    source: "the design of Lockerleaf: labels, place pages",
    wrong: "[places.drain] with `labelled = true`, and no section with `at = \"drain\"`",
    right: "[section.drain]\nat = \"drain\"",
};

pub(super) static CHECK: Check = Check { rules: &[&RULE], run };

fn run(acc: &mut Acc, checked: Checked) {
    for parts in parts::each(checked) {
        for (number, place) in parts.van.places.iter().enumerate().filter(|(_, place)| place.labelled) {
            let here: Vec<_> = parts.all().filter(|part| !roles(*part, number).is_empty()).collect();
            if here.iter().any(|part| says(checked, *part, number)) || tip(parts, number) {
                continue;
            }
            let labelling = here.iter().find(|part| {
                let facts = &part.module.facts.places;
                roles(**part, number).iter().any(|role| facts.get(role).is_some_and(|role| role.labelled))
            });
            if let Some(part) = labelling {
                acc.add(empty(*part, &place.code.value.0).other(place.code.span, "the place").van(&parts.van.name));
            }
        }
    }
}

fn empty(part: Part, code: &str) -> Diagnostic {
    let message = format!("{} has a label at `{code}`, and there is nothing to read there", part.quoted());
    Diagnostic::new(&RULE, part.fit.name.span, message)
        .help("name one of the roles at this place in `at` of a section that shows here, or take `labelled` away from the role")
}

/// The roles that a part plays at a place.
fn roles(part: Part<'_>, place: usize) -> Vec<&str> {
    part.fit.places.iter().filter(|(_, places)| places.contains(&place)).map(|(role, _)| role.as_str()).collect()
}

/// Whether a part that is at a place says anything there: a section that shows, or a note that holds for the whole part.
fn says(checked: Checked, part: Part, place: usize) -> bool {
    let roles = roles(part, place);
    let at = |section: &crate::model::book::SectionFacts| {
        section.wiring.as_ref().is_some_and(|wiring| wiring.at.iter().any(|role| roles.contains(&&*role.value.0)))
    };
    let mut sections = part.module.sections.iter().zip(&part.fit.shown);
    sections.any(|(section, shown)| *shown && at(section)) || has_note(checked, part)
}

fn has_note(checked: Checked, part: Part) -> bool {
    let (book, mut any) = (checked.book, false);
    for origin in std::iter::once(part.fit.module).chain(part.module.includes.iter().copied()) {
        each_note(&book.text(origin, book.settings.language()).intro, &mut |_| any = true);
    }
    any
}

fn tip(parts: Parts, place: usize) -> bool {
    let at = |fit: usize| parts.van.fits[fit].places.values().any(|places| places.contains(&place));
    parts.van.tips.iter().any(|tip| tip.place == Some(place) || tip.fit.is_some_and(at))
}
