//! Where labels lead whose place has another code, or is no more.

use crate::diag::{Acc, Diagnostic, rules, suggest};
use crate::model::book::{Model, VanSource};
use crate::model::files::forms::Code;
use crate::model::source::At;
use crate::model::van::{OldLabel, Van};

/// What a manifest says of one code: where its label leads, or that its place is gone, and why.
struct Said<'a> {
    code: &'a At<Code>,
    to: Option<&'a At<Code>>,
    why: &'a str,
}

/// Works into the van what its manifests say of labels. The van's own word comes before its model's.
pub fn old_labels(acc: &mut Acc, model: &Model, source: &VanSource, van: &mut Van) {
    let own = said(&source.facts.moved, &source.facts.gone);
    let shared = said(&model.facts.moved, &model.facts.gone);
    let mut all: Vec<Said> = Vec::new();
    for (number, said) in own.iter().chain(&shared).enumerate() {
        let twin = all.iter().position(|earlier| earlier.code.value == said.code.value);
        match twin {
            // A van may say otherwise than its model; within one manifest there is one word for each label.
            Some(at) if (at < own.len()) == (number < own.len()) => {
                let message = format!("`{}` is said to lead to two things", said.code.value.0);
                let found = Diagnostic::new(&rules::OLD_LABEL, said.code.span, message);
                acc.add(found.other(all[at].code.span, "the first one").help("leave one of them"));
            }
            Some(_) => {}
            None => all.push(Said { ..*said }),
        }
    }
    van.old_labels = all.iter().filter_map(|said| old_label(acc, &all, said, van)).collect();
    let same = source.facts.same_place.iter().chain(&model.facts.same_place);
    van.same_places = same.map(|same| (same.code.value.0.clone(), same.printed_as.value.clone())).collect();
    let former = source.facts.former_keys.iter();
    van.former_keys = former.map(|key| At::new(key.value.0.clone(), key.span)).collect();
}

fn said<'a>(
    moved: &'a [crate::model::files::vehicle::Moved],
    gone: &'a [crate::model::files::vehicle::Gone],
) -> Vec<Said<'a>> {
    let moved = moved.iter().map(|moved| Said {
        code: &moved.code,
        to: Some(&moved.to),
        why: moved.why.as_deref().unwrap_or_default(),
    });
    moved.chain(gone.iter().map(|gone| Said { code: &gone.code, to: None, why: &gone.why })).collect()
}

/// Follows what is said of a label to its end. What cannot be followed is said, and counts as gone.
fn old_label(acc: &mut Acc, all: &[Said], said: &Said, van: &Van) -> Option<OldLabel> {
    let place = |code: &Code| van.places.iter().position(|place| place.code.value == *code);
    let code = &said.code.value;
    if let Some(live) = place(code) {
        let message = format!("`{}` is a place of this van, so its label cannot lead elsewhere", code.0);
        let found = Diagnostic::new(&rules::OLD_LABEL, said.code.span, message);
        let help = "give the place of today a code that was never printed; if it is the same place under another name, \
                    write `[[same-place]]` with `code` and `printed-as`";
        acc.add(found.other(van.places[live].code.span, "the place").help(help).van(&van.name));
        return None;
    }
    let mut at = said;
    for _ in 0..=all.len() {
        let Some(to) = at.to else {
            return Some(OldLabel { code: code.0.clone(), to: None, why: at.why.to_string() });
        };
        if let Some(place) = place(&to.value) {
            return Some(OldLabel { code: code.0.clone(), to: Some(place), why: said.why.to_string() });
        }
        match all.iter().find(|next| next.code.value == to.value) {
            Some(next) => at = next,
            None => {
                acc.add(nowhere(to, van));
                return Some(OldLabel { code: code.0.clone(), to: None, why: said.why.to_string() });
            }
        }
    }
    let found = Diagnostic::new(&rules::OLD_LABEL, said.code.span, format!("`{}` leads round in a circle", code.0));
    acc.add(found.help("let one of them lead to a place of today, or write `[[gone]]`").van(&van.name));
    Some(OldLabel { code: code.0.clone(), to: None, why: said.why.to_string() })
}

fn nowhere(to: &At<Code>, van: &Van) -> Diagnostic {
    let codes = van.places.iter().map(|place| place.code.value.0.as_str());
    let found = Diagnostic::new(&rules::OLD_LABEL, to.span, format!("this van has no place `{}`", to.value.0));
    found
        .help(suggest::did_you_mean(&to.value.0, codes))
        .help("when nothing has come in its stead, write `[[gone]]` with `code` and `why`")
        .van(&van.name)
}
