//! What is checked before anything is run: formatting, clippy with warnings denied, the house rules.

use std::process::Command;

use crate::Outcome;
use crate::places;
use crate::setup;
use crate::steps::{run, step};

/// Checks everything; the first failure ends it.
pub fn check() -> Outcome {
    let cargo = |arguments: &[&str]| {
        let mut command = Command::new("cargo");
        command.args(arguments).current_dir(places::root());
        command
    };
    step("formatting", || {
        run(&mut cargo(&["fmt", "--all", "--check"]))
    })?;
    step("the house rules", || {
        run(&mut cargo(&["test", "--quiet", "--package", "xtask"]))
    })?;
    step("clippy, warnings denied", || {
        run(&mut cargo(&[
            "clippy",
            "--quiet",
            "--workspace",
            "--all-targets",
            "--",
            "-D",
            "warnings",
        ]))
    })?;
    // Parts of the pages are compiled for the browser only.
    setup::wasm_target()?;
    step("clippy for the browser, warnings denied", || {
        run(&mut cargo(&[
            "clippy",
            "--quiet",
            "--package",
            "web",
            "--target",
            "wasm32-unknown-unknown",
            "--",
            "-D",
            "warnings",
        ]))
    })
}
