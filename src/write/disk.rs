//! The only file that writes to the disk.

use crate::error::Error;
use std::collections::BTreeSet;
use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};
use walkdir::WalkDir;

/// What a file is called until it is whole. No address of a guide begins so.
const UNFINISHED: &str = ".unfinished-";

/// Makes a folder and those above it.
pub fn folder(path: &Path) -> Result<(), Error> {
    fs::create_dir_all(path).map_err(|e| Error::new("make", path, e))
}

/// Writes a file unless it is there already, byte for byte. Says whether it was written.
pub fn file(path: &Path, bytes: &[u8]) -> Result<bool, Error> {
    let same_size = fs::metadata(path).is_ok_and(|meta| meta.is_file() && meta.len() == bytes.len() as u64);
    if same_size && fs::read(path).is_ok_and(|old| old == bytes) {
        return Ok(false);
    }
    step();
    let name = path.file_name().unwrap_or_default().to_string_lossy();
    let unfinished = path.with_file_name(format!("{UNFINISHED}{name}"));
    let written = fs::write(&unfinished, bytes).and_then(|()| fs::rename(&unfinished, path));
    written.map(|()| true).map_err(|e| {
        // What failed has a better reason than what cannot be cleared away after it.
        let _ = fs::remove_file(&unfinished);
        Error::new("write", path, e)
    })
}

/// Takes away files below `root` that are not `wanted`, and folders that are then empty. Says how many files.
pub fn remove_others(root: &Path, wanted: &BTreeSet<PathBuf>) -> Result<usize, Error> {
    let mut removed = 0;
    for entry in WalkDir::new(root).contents_first(true).into_iter().filter_map(Result::ok) {
        let path = entry.path();
        if entry.file_type().is_dir() {
            // A folder that still holds something stays.
            let _ = fs::remove_dir(path);
        } else if !wanted.contains(path) {
            fs::remove_file(path).map_err(|e| Error::new("remove", path, e))?;
            removed += 1;
        }
    }
    Ok(removed)
}

/// The text of a file, when it is there.
pub fn text(path: &Path) -> Option<String> {
    fs::read_to_string(path).ok()
}

/// The size of a file, when it is there.
pub fn size(path: &Path) -> Option<u64> {
    fs::metadata(path).ok().filter(fs::Metadata::is_file).map(|meta| meta.len())
}

/// The text of a file, or `None` when it is not there; any other reason not to read it is an error.
pub fn text_or_none(path: &Path) -> Result<Option<String>, Error> {
    match fs::read_to_string(path) {
        Ok(text) => Ok(Some(text)),
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => Ok(None),
        Err(error) => Err(Error::new("read", path, error)),
    }
}

/// Puts a file in the place of another, so that even after a power cut one or the other is there whole.
pub fn replace(path: &Path, bytes: &[u8]) -> Result<(), Error> {
    let folder = path.parent().unwrap_or(Path::new("."));
    let written = tempfile::Builder::new().prefix(UNFINISHED).tempfile_in(folder).and_then(|mut file| {
        file.write_all(bytes)?;
        file.as_file().sync_all()?;
        // A file of one's own making is for its maker alone; this one is for whoever may read the old one.
        if let Ok(old) = fs::metadata(path) {
            fs::set_permissions(file.path(), old.permissions())?;
        }
        file.persist(path).map_err(|e| e.error)
    });
    written.map(|_| ()).map_err(|e| Error::new("write", path, e))
}

/// Does `work` while no other process that asks for the same lock does; `path` is a file that is there and is left as it
/// is. When the process ends, however it ends, the lock is gone.
pub fn locked<T>(path: &Path, work: impl FnOnce() -> Result<T, Error>) -> Result<T, Error> {
    let file = fs::OpenOptions::new().read(true).write(true).open(path).map_err(|e| Error::new("lock", path, e))?;
    file.lock().map_err(|e| Error::new("lock", path, e))?;
    let done = work();
    file.unlock().map_err(|e| Error::new("unlock", path, e))?;
    done
}

/// A new file: whole or not at all, and never in the place of another.
pub fn new_file(path: &Path, bytes: &[u8]) -> Result<(), Error> {
    let folder = path.parent().unwrap_or(Path::new("."));
    let written = tempfile::Builder::new().prefix(UNFINISHED).tempfile_in(folder).and_then(|mut file| {
        file.write_all(bytes)?;
        file.as_file().sync_all()?;
        file.persist_noclobber(path).map_err(|e| e.error)
    });
    written.map(|_| ()).map_err(|e| Error::new("make", path, e))
}

/// Whether a folder is there.
pub fn is_folder(path: &Path) -> bool {
    path.is_dir()
}

/// The folders in a folder; none when it is not there.
pub fn folders(path: &Path) -> Result<Vec<PathBuf>, Error> {
    let entries = match fs::read_dir(path) {
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => return Ok(vec![]),
        entries => entries.map_err(|e| Error::new("read", path, e))?,
    };
    let paths: Result<Vec<_>, _> = entries.map(|entry| entry.map(|entry| entry.path())).collect();
    let mut paths = paths.map_err(|e| Error::new("read", path, e))?;
    paths.retain(|path| path.is_dir());
    paths.sort();
    Ok(paths)
}

/// Takes a folder away with all that is in it, when it is there.
pub fn remove_folder(path: &Path) -> Result<(), Error> {
    step();
    match fs::remove_dir_all(path) {
        Err(error) if error.kind() != std::io::ErrorKind::NotFound => Err(Error::new("remove", path, error)),
        _ => Ok(()),
    }
}

/// Gives a file or folder another name, in one step.
pub fn rename(from: &Path, to: &Path) -> Result<(), Error> {
    step();
    fs::rename(from, to).map_err(|e| Error::new("put in place", to, e))
}

/// Lets two folders change places in one step. Says no, and changes nothing, where the system cannot.
pub fn exchange(one: &Path, other: &Path) -> Result<bool, Error> {
    step();
    #[cfg(target_os = "linux")]
    {
        use rustix::fs::{CWD, RenameFlags, renameat_with};
        use rustix::io::Errno;
        if cfg!(debug_assertions) && std::env::var_os("LOCKERLEAF_TEST_NO_EXCHANGE").is_some() {
            return Ok(false);
        }
        match renameat_with(CWD, one, CWD, other, RenameFlags::EXCHANGE) {
            Ok(()) => Ok(true),
            Err(Errno::NOSYS | Errno::INVAL | Errno::NOTSUP) => Ok(false),
            Err(error) => Err(Error::new("put in place", other, error)),
        }
    }
    #[cfg(not(target_os = "linux"))]
    {
        let _ = (one, other);
        Ok(false)
    }
}

/// Waits until all that was written to the disk of `path` is there for good, where the system can say so.
pub fn settle(path: &Path) -> Result<(), Error> {
    step();
    #[cfg(target_os = "linux")]
    {
        let folder = fs::File::open(path).map_err(|e| Error::new("open", path, e))?;
        rustix::fs::syncfs(&folder).map_err(|e| Error::new("write", path, e))?;
    }
    let _ = path;
    Ok(())
}

/// Counts what changes the disk, so that a test can end the program at any point; only in a build for tests.
fn step() {
    #[cfg(debug_assertions)]
    {
        use std::sync::atomic::{AtomicUsize, Ordering};
        static STEPS: AtomicUsize = AtomicUsize::new(0);
        let step = STEPS.fetch_add(1, Ordering::SeqCst) + 1;
        let last = std::env::var("LOCKERLEAF_TEST_DIES_AT").ok().and_then(|text| text.parse().ok());
        if last == Some(step) {
            std::process::abort();
        }
    }
}

/// Takes a file away, when it is there.
pub fn remove(path: &Path) -> Result<(), Error> {
    step();
    match fs::remove_file(path) {
        Err(error) if error.kind() != std::io::ErrorKind::NotFound => Err(Error::new("remove", path, error)),
        _ => Ok(()),
    }
}

/// A text that changes whenever the program does; empty when the program cannot be read.
pub fn program() -> String {
    let bytes = std::env::current_exe().and_then(fs::read).unwrap_or_default();
    blake3::hash(&bytes).to_hex().to_string()
}
