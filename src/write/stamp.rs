//! Stamps: what each guide in a folder was made from, so that a guide whose sources did not change is not made again.

use super::{Receipt, disk};
use crate::error::Error;
use crate::render::Artifact;
use std::fmt::Write;
use std::path::{Path, PathBuf};

/// Where stamps are, below the output folder.
const FOLDER: &str = ".made";

fn path(out: &Path, key: &str) -> PathBuf {
    out.join(FOLDER).join(key)
}

/// What a guide counts for when it was made from `inputs` and all its files are there in their sizes.
pub fn is_made(out: &Path, key: &str, inputs: &str) -> Option<Receipt> {
    let stamp = disk::text(&path(out, key))?;
    let (made_from, files) = stamp.split_once('\n')?;
    if made_from != inputs {
        return None;
    }
    let mut receipt = Receipt::default();
    for line in files.lines() {
        let (size, path) = line.split_once(' ')?;
        let size = size.parse().ok()?;
        if disk::size(&out.join(path)) != Some(size) {
            return None;
        }
        receipt.unchanged += 1;
        receipt.bytes += size;
        receipt.pages += usize::from(path.ends_with(".html"));
    }
    Some(receipt)
}

/// The files that a stamp speaks of, as paths below the output folder.
pub fn files(out: &Path, key: &str) -> Vec<String> {
    let stamp = disk::text(&path(out, key)).unwrap_or_default();
    stamp.lines().skip(1).filter_map(|line| line.split_once(' ')).map(|(_, path)| path.to_string()).collect()
}

/// Takes the stamp away, before the files it speaks of are written.
pub fn take_away(out: &Path, key: &str) -> Result<(), Error> {
    disk::remove(&path(out, key))
}

/// Says what a guide was made from, once its files are all written.
pub fn put(out: &Path, key: &str, inputs: &str, artifacts: &[Artifact]) -> Result<(), Error> {
    let mut text = format!("{inputs}\n");
    for artifact in artifacts {
        let _ = writeln!(text, "{} {}", artifact.bytes.len(), artifact.path);
    }
    let path = path(out, key);
    disk::folder(path.parent().unwrap_or(out))?;
    disk::file(&path, text.as_bytes()).map(|_| ())
}
