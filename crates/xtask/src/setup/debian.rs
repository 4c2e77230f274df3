//! Debian's packages, for what neither cargo, npm nor pip brings.

use std::process::Command;

use crate::Outcome;
use crate::steps::{on_path, printed, run_quietly, step};

/// Installs packages when this is a Debian-like system and we may.
///
/// # Errors
/// One that names the packages, so that they can be installed by hand.
pub fn install(what: &str, packages: &[&str]) -> Outcome {
    let names = packages.join(" ");
    let by_hand = format!(
        "{what} is missing. Install it and run this again; on a Debian-like system: apt-get install {names}"
    );
    let root = printed(Command::new("id").arg("-u")).as_deref() == Some("0");
    if on_path("apt-get").is_none() || !root {
        return Err(by_hand);
    }
    step(&format!("{what}: apt-get install {names}"), || {
        let apt = || {
            let mut command = Command::new("apt-get");
            command.env("DEBIAN_FRONTEND", "noninteractive");
            command
        };
        run_quietly(apt().args(["update", "-q"]))?;
        run_quietly(
            apt()
                .args(["install", "-q", "-y", "--no-install-recommends"])
                .args(packages),
        )
    })
    .map_err(|why| format!("{why}\n{by_hand}"))
}
