//! Puts whole guides in place of others, so that whoever looks sees the old one or the new one, and never half of one.
//!
//! A guide is written beside the others, in `.coming/KEY`; where the system can, the two folders then change places in
//! one step. Where it cannot, the old one steps aside to `.leaving/KEY` first, and [`recover`] puts back what a killed
//! run left there.

use super::{Receipt, disk, stamp};
use crate::error::Error;
use crate::render::Artifact;
use std::path::{Path, PathBuf};

/// Where guides are written before they are shown. No key begins with a full stop.
const COMING: &str = ".coming";

/// Where an old guide stands for a moment when folders cannot change places in one step.
const LEAVING: &str = ".leaving";

/// Everything that stands in one folder of the published ones.
pub struct Bundle<'a> {
    /// The folder: a key.
    pub key: &'a str,
    /// What it was made from.
    pub made_from: &'a str,
    /// Its files; the path of each begins with the key.
    pub files: &'a [Artifact],
}

/// Puts a guide in place. Nothing is written when it is there already.
pub fn put(to: &Path, bundle: &Bundle) -> Result<Receipt, Error> {
    if let Some(receipt) = stamp::is_made(to, bundle.key, bundle.made_from) {
        return Ok(receipt);
    }
    let coming = to.join(COMING);
    let staged = coming.join(bundle.key);
    disk::remove_folder(&staged)?;
    let receipt = super::write(&coming, bundle.files)?;
    disk::settle(&coming)?;
    stamp::take_away(to, bundle.key)?;
    show(to, bundle.key, &staged)?;
    stamp::put(to, bundle.key, bundle.made_from, bundle.files)?;
    disk::remove_folder(&staged)?;
    Ok(receipt)
}

fn show(to: &Path, key: &str, staged: &Path) -> Result<(), Error> {
    let place = to.join(key);
    if !disk::is_folder(&place) {
        return disk::rename(staged, &place);
    }
    if disk::exchange(staged, &place)? {
        return Ok(());
    }
    let aside = to.join(LEAVING).join(key);
    disk::folder(&to.join(LEAVING))?;
    disk::remove_folder(&aside)?;
    disk::rename(&place, &aside)?;
    disk::rename(staged, &place)?;
    disk::remove_folder(&aside)
}

/// Mends what a run that was killed left behind: a guide that stepped aside comes back when nothing took its place.
pub fn recover(to: &Path) -> Result<(), Error> {
    for aside in disk::folders(&to.join(LEAVING))? {
        let place: PathBuf = to.join(aside.file_name().unwrap_or_default());
        match disk::is_folder(&place) {
            true => disk::remove_folder(&aside)?,
            false => disk::rename(&aside, &place)?,
        }
    }
    disk::remove_folder(&to.join(LEAVING))?;
    disk::remove_folder(&to.join(COMING))
}
