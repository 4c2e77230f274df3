//! Text files, read and written with errors that name the file.

use std::path::Path;

use crate::Outcome;

/// What a file says.
///
/// # Errors
/// When it cannot be read.
pub fn read(file: &Path) -> Outcome<String> {
    std::fs::read_to_string(file).map_err(|error| format!("{}: {error}", file.display()))
}

/// Writes a file, over what stood in it.
///
/// # Errors
/// When it cannot be written.
pub fn write(file: &Path, text: &str) -> Outcome {
    std::fs::write(file, text).map_err(|error| format!("{}: {error}", file.display()))
}
