//! What keeps a guide on a phone: a worker with a list of the guide's files, a manifest, icons, and the fingerprint.
//!
//! The worker and the fingerprint are made last, from everything else, and are no part of what the fingerprint stands for.

use super::theme::Theme;
use super::{Artifact, icon};
use crate::model::guide::Guide;
use serde_json::{Map, Value, json};
use sha2::{Digest, Sha256};

/// The name of the worker.
pub const WORKER: &str = "worker.js";
/// The name of the manifest.
pub const MANIFEST: &str = "guide.webmanifest";
/// The name of the script that gives the fingerprint a name.
pub const FINGERPRINT: &str = "fingerprint.js";

/// The manifest (W3C Web Application Manifest) and its icons.
pub fn manifest(guide: &Guide) -> Vec<Artifact> {
    let identity = &guide.identity;
    let icon = |side: &u32| json!({ "src": file(*side), "sizes": format!("{side}x{side}"), "type": "image/png", "purpose": "any maskable" });
    let manifest = json!({
        "name": identity.title,
        "short_name": identity.model,
        "lang": guide.language,
        "start_url": "./index.html",
        "scope": "./",
        "display": "minimal-ui",
        "background_color": "#f6efdd",
        "theme_color": "#134f43",
        "icons": icon::SIDES.iter().map(icon).collect::<Vec<_>>(),
    });
    let mut out = vec![Artifact::text(format!("{}/{MANIFEST}", identity.key), format!("{manifest:#}\n"))];
    let icons = icon::ICONS.iter();
    let icons =
        icons.map(|(side, png)| Artifact { path: format!("{}/{}", identity.key, file(*side)), bytes: png.clone() });
    out.extend(icons);
    out
}

fn file(side: u32) -> String {
    format!("icon-{side}.png")
}

/// The fingerprint, and the worker that keeps all of `artifacts`.
pub fn worker(theme: &Theme, key: &str, artifacts: &[Artifact], fingerprint: &str) -> Vec<Artifact> {
    let named = format!("globalThis.guideFingerprint = \"{fingerprint}\";\n");
    let named = Artifact::text(format!("{key}/{FINGERPRINT}"), named);
    let (mut text, mut photos) = (Map::new(), Map::new());
    for artifact in artifacts.iter().chain([&named]) {
        let path = artifact.path.strip_prefix(key).unwrap_or(&artifact.path).trim_start_matches('/');
        let photo = path.starts_with("photos/");
        let list = if photo { &mut photos } else { &mut text };
        list.insert(path.to_string(), Value::String(hash(&artifact.bytes)));
    }
    let guide = json!({ "fingerprint": fingerprint, "text": text, "photos": photos });
    let worker = Artifact::text(format!("{key}/{WORKER}"), format!("const GUIDE = {guide};\n{}", theme.worker));
    vec![named, worker]
}

/// The first 64 bits of SHA-256 (FIPS 180-4), which browsers can work out too: enough to tell one version of a file from another.
fn hash(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().take(8).map(|byte| format!("{byte:02x}")).collect()
}
