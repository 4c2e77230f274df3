//! axe-core, which looks at a page as somebody does who cannot see it well: for the browser tests, where npm is there.

use std::path::PathBuf;

use crate::places;
use crate::setup::build_tools::npm_install;
use crate::steps::{on_path, say, step};

/// The npm package and its version.
const AXE: &str = "axe-core@4.14.1";

/// The script to put into a page; nothing, with a line that says so, where it cannot be had.
#[must_use]
pub fn axe() -> Option<PathBuf> {
    let folder = places::tools().join("axe");
    let script = folder.join("node_modules/axe-core/axe.min.js");
    if script.is_file() {
        return Some(script);
    }
    let installed = on_path("npm").is_some()
        && step("axe-core, for the browser tests", || {
            npm_install(AXE, &folder)
        })
        .is_ok();
    if installed && script.is_file() {
        return Some(script);
    }
    say(
        "  no axe-core, which comes by npm: names, headings and sizes are checked by our own rules only",
    );
    None
}
