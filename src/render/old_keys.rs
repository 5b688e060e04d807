//! Pages of the keys that a van had before: each leads to the same place under the key of today.

use super::context::{OldKey, Said};
use super::links::{encode, folder};
use super::root::tel;
use super::theme::Theme;
use super::{Artifact, withdrawn};
use crate::model::guide::{Guide, PageBody};

/// A page for each place and old label, and for the guide itself, under each former key. What fails is the theme's.
pub fn former(theme: &Theme, guides: &[Guide]) -> Result<Vec<Artifact>, String> {
    let Some(first) = guides.first() else {
        return Ok(vec![]);
    };
    let labelled = first.pages.iter().filter(|page| matches!(page.body, PageBody::Place(_) | PageBody::OldLabel(_)));
    let addresses: Vec<_> = labelled.map(|page| page.address.as_str()).chain([""]).collect();
    let mut out = Vec::new();
    for key in &first.identity.former_keys {
        for address in &addresses {
            let said = guides.iter().map(|guide| said(theme, guide, address)).collect();
            let page = OldKey {
                said,
                dealer_name: first.identity.dealer_name.to_string(),
                dealer_phone: first.identity.dealer_phone.to_string(),
                dealer_tel: tel(first.identity.dealer_phone),
            };
            out.push(withdrawn::page(theme, first.language, key, address, &page)?);
        }
    }
    Ok(out)
}

fn said(theme: &Theme, guide: &Guide, address: &str) -> Said {
    let phrases = theme.phrases(guide.language);
    let up = if address.is_empty() { "../" } else { "../../" };
    let to = format!("{}/{}/index.html", guide.identity.key, folder(guide, address)).replace("//", "/");
    Said {
        language: guide.language.to_string(),
        title: guide.identity.title.to_string(),
        text: phrases.get("old-key-moved"),
        href: format!("{up}{}", encode(&to)),
        link: phrases.get("old-key-open"),
        ring: phrases.get("old-key-ring"),
    }
}
