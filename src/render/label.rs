//! The pictures of the codes of a guide's labels.

use super::Artifact;
pub use crate::label::address::address;
use crate::label::{Asked, Spot, draw};
use crate::model::book::Book;
use crate::model::guide::Guide;

/// How many pixels of a PNG a module has: twice what readers ask for.
const PIXELS: usize = 8;

/// A picture of the code of each labelled place.
pub fn codes(book: &Book, guide: &Guide) -> Vec<Artifact> {
    let asked = Asked::of(book);
    let mut out = Vec::new();
    for place in guide.places.iter().filter(|place| place.labelled) {
        let address = address(guide.identity.address, guide.identity.key, place.code);
        let Some(code) = asked.code(&address, Spot { kind: place.kind, side: place.side }) else {
            continue;
        };
        let folder = format!("{}/{}", guide.identity.key, place.code);
        out.push(Artifact::text(format!("{folder}/code.svg"), draw::svg(&code, &address)));
        if asked.png {
            out.push(Artifact { path: format!("{folder}/code.png"), bytes: draw::png(&code, PIXELS) });
        }
    }
    out
}
