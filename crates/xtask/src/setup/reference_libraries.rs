//! Python and the reference libraries that recompute published values, at pinned versions, as wheels only.

use std::path::{Path, PathBuf};
use std::process::Command;

use super::debian;
use crate::Outcome;
use crate::places;
use crate::steps::{on_path, printed, run_quietly, say, step};

/// The oldest Python that reads TOML by itself.
const OLDEST: (u32, u32) = (3, 11);

/// The Python that holds the libraries named in `tests/reference/scripts/requirements.txt`.
///
/// # Errors
/// When Python is missing or too old, or a library cannot be installed.
pub fn reference_libraries() -> Outcome<PathBuf> {
    let wanted_file = places::root().join("tests/reference/scripts/requirements.txt");
    let wanted = std::fs::read_to_string(&wanted_file)
        .map_err(|error| format!("{}: {error}", wanted_file.display()))?;
    let folder = places::root().join("target/python");
    let python = folder.join("bin/python");
    let stamp = folder.join("installed.txt");
    if python.is_file() && std::fs::read_to_string(&stamp).is_ok_and(|have| have == wanted) {
        return Ok(python);
    }
    let system = system_python()?;
    step("the reference libraries, into target/python", || {
        make_environment(&system, &folder)?;
        run_quietly(
            Command::new(&python)
                .args(["-m", "pip", "install", "--disable-pip-version-check"])
                .args(["--only-binary", ":all:", "-r"])
                .arg(&wanted_file),
        )?;
        std::fs::write(&stamp, &wanted).map_err(|error| error.to_string())
    })?;
    Ok(python)
}

fn make_environment(system: &Path, folder: &Path) -> Outcome {
    let make = || {
        run_quietly(
            Command::new(system)
                .args(["-m", "venv", "--clear"])
                .arg(folder),
        )
    };
    // Debian keeps what makes environments in a package of its own.
    let can = printed(Command::new(system).args(["-c", "import ensurepip, venv"])).is_some();
    if !can {
        debian::install("Python's venv", &["python3-venv"])?;
    }
    make()
}

fn system_python() -> Outcome<PathBuf> {
    if on_path("python3").is_none() {
        debian::install("Python 3", &["python3", "python3-venv"])?;
    }
    let python = on_path("python3").ok_or("python3 is not on the PATH")?;
    let version = printed(Command::new(&python).arg("--version")).unwrap_or_default();
    match version_of(&version) {
        Some(found) if found >= OLDEST => Ok(python),
        _ => {
            say(format!("  {} says {version}", python.display()));
            Err(format!(
                "the reference scripts need Python {}.{} or newer on the PATH as python3",
                OLDEST.0, OLDEST.1
            ))
        }
    }
}

/// The first two numbers of `Python 3.11.7`.
fn version_of(text: &str) -> Option<(u32, u32)> {
    let mut numbers = text.strip_prefix("Python ")?.split('.');
    Some((numbers.next()?.parse().ok()?, numbers.next()?.parse().ok()?))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_version_is_compared_by_its_first_two_numbers() {
        assert!(version_of("Python 3.11.7") >= Some(OLDEST));
        assert!(version_of("Python 3.9.2") < Some(OLDEST));
        assert_eq!(version_of("something else"), None);
    }
}
