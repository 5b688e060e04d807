//! Write: artifacts to a folder. Only what changed is written, each file whole or not at all.

pub mod disk;
pub mod ledger;
pub mod publish;
pub mod stamp;

use crate::error::Error;
use crate::render::Artifact;
use std::collections::BTreeSet;
use std::path::Path;

/// What writing did.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Receipt {
    /// Files that were written.
    pub written: usize,
    /// Files that were there already, byte for byte.
    pub unchanged: usize,
    /// Files that were taken away, since nothing makes them any more.
    pub removed: usize,
    /// Bytes of all files.
    pub bytes: u64,
    /// Pages among them.
    pub pages: usize,
}

impl Receipt {
    /// Both together.
    pub fn and(self, other: Receipt) -> Receipt {
        Receipt {
            written: self.written + other.written,
            unchanged: self.unchanged + other.unchanged,
            removed: self.removed + other.removed,
            bytes: self.bytes + other.bytes,
            pages: self.pages + other.pages,
        }
    }
}

/// Writes artifacts below `out`.
pub fn write(out: &Path, artifacts: &[Artifact]) -> Result<Receipt, Error> {
    let mut receipt = Receipt::default();
    let mut folders = BTreeSet::new();
    for artifact in artifacts {
        let path = out.join(&artifact.path);
        if let Some(folder) = path.parent().filter(|folder| folders.insert(folder.to_path_buf())) {
            disk::folder(folder)?;
        }
        match disk::file(&path, &artifact.bytes)? {
            true => receipt.written += 1,
            false => receipt.unchanged += 1,
        }
        receipt.bytes += artifact.bytes.len() as u64;
        receipt.pages += usize::from(artifact.path.ends_with(".html"));
    }
    Ok(receipt)
}

/// Takes away what stands in the folder of a van and is not among its artifacts.
pub fn prune(out: &Path, key: &str, artifacts: &[Artifact]) -> Result<usize, Error> {
    let wanted: BTreeSet<_> = artifacts.iter().map(|artifact| out.join(&artifact.path)).collect();
    disk::remove_others(&out.join(key), &wanted)
}
