//! A browser and its driver, for the browser tests.

use std::path::PathBuf;
use std::process::Command;

use super::debian;
use crate::Outcome;
use crate::steps::{on_path, printed};

/// A browser that can be driven.
pub struct Browser {
    /// The browser.
    pub program: PathBuf,
    /// Its WebDriver.
    pub driver: PathBuf,
    /// What the browser says its version is.
    pub version: String,
}

/// Chromium and its driver, installed where they are missing.
///
/// # Errors
/// When they can neither be found nor installed; the error names the packages.
pub fn browser() -> Outcome<Browser> {
    if let Some(found) = found() {
        return Ok(found);
    }
    // The fonts are for the pictures: without any, a browser draws boxes.
    debian::install(
        "a Chromium and its driver",
        &[
            "chromium",
            "chromium-driver",
            "fonts-liberation",
            "fonts-dejavu-core",
        ],
    )?;
    found().ok_or_else(|| "Chromium was installed but is not on the PATH".into())
}

fn found() -> Option<Browser> {
    let program = ["chromium", "chromium-browser", "google-chrome"]
        .iter()
        .find_map(|name| on_path(name))?;
    let driver = on_path("chromedriver")?;
    let version = printed(Command::new(&program).arg("--version"))?;
    Some(Browser {
        program,
        driver,
        version,
    })
}
