//! What the world outside refuses: disk, rights, network.

use std::fmt;
use std::path::{Path, PathBuf};

/// An action that failed on a path.
#[derive(Debug)]
pub struct Error {
    action: &'static str,
    path: PathBuf,
    cause: String,
}

impl Error {
    /// `action` ("read", "write") failed on `path` because of `cause`.
    pub fn new(action: &'static str, path: impl AsRef<Path>, cause: impl fmt::Display) -> Self {
        Error { action, path: path.as_ref().to_path_buf(), cause: cause.to_string() }
    }
}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter) -> fmt::Result {
        write!(f, "cannot {} `{}`: {}", self.action, self.path.display(), self.cause)
    }
}

impl std::error::Error for Error {}
