//! Where things lie in the workspace.

use std::path::{Path, PathBuf};

/// The workspace's root folder.
#[must_use]
pub fn root() -> PathBuf {
    // Asked at run time, so that a program built in one copy of the workspace never works on another.
    let from = std::env::current_dir().unwrap_or_else(|_| PathBuf::from("."));
    from.ancestors()
        .find(|folder| folder.join("Trunk.toml").is_file() && folder.join("crates").is_dir())
        .map_or(from.clone(), Path::to_path_buf)
}

/// The tools that set-up installs.
#[must_use]
pub fn tools() -> PathBuf {
    root().join("target/tools")
}

/// The folder to upload.
#[must_use]
pub fn dist() -> PathBuf {
    root().join("dist")
}

/// The quick build that page builders look at.
#[must_use]
pub fn dev_pages() -> PathBuf {
    root().join("target/dev-pages")
}

/// Marks of what was finished and when.
#[must_use]
pub fn stamps() -> PathBuf {
    root().join("target/stamps")
}

/// Pictures that the browser tests take.
#[must_use]
pub fn pictures() -> PathBuf {
    root().join("target/pictures")
}
