//! Rust's wasm target, Trunk, wasm-bindgen and wasm-opt.

use std::ffi::OsString;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::Outcome;
use crate::places;
use crate::steps::{on_path, printed, run_quietly, say, step};

const TRUNK: &str = "0.21.14";
/// Must be the version of `wasm-bindgen` in Cargo.lock; a test compares them.
pub const WASM_BINDGEN: &str = "0.2.129";
/// The npm package that holds wasm-opt, and its version.
const BINARYEN: &str = "binaryen@132.0.0";
/// The oldest wasm-opt on the PATH that is taken as it is.
const OLDEST_WASM_OPT: u32 = 116;
const WASM: &str = "wasm32-unknown-unknown";

/// The tools that a build of the pages needs.
pub struct Toolbox {
    /// A PATH on which `trunk`, `wasm-bindgen` and, where there is one, `wasm-opt` are found.
    pub path: OsString,
}

/// Everything that a build of the pages needs, installed where it is missing.
///
/// # Errors
/// When something can neither be found nor installed.
pub fn build_tools() -> Outcome<Toolbox> {
    wasm_target()?;
    cargo_tool("trunk", "trunk", TRUNK, &["--no-default-features"])?;
    cargo_tool(
        "wasm-bindgen",
        "wasm-bindgen-cli",
        WASM_BINDGEN,
        &["--bin", "wasm-bindgen"],
    )?;
    if wasm_opt().is_none() && !install_binaryen() {
        say(
            "  no wasm-opt, and no Node with npm to run one: the pages work the same, but the program that a visitor \
             loads is a few per cent larger. Install Node or binaryen and build again to shrink it.",
        );
    }
    let mut folders = vec![places::tools().join("bin")];
    folders.extend(std::env::split_paths(
        &std::env::var_os("PATH").unwrap_or_default(),
    ));
    let path = std::env::join_paths(folders).map_err(|error| error.to_string())?;
    Ok(Toolbox { path })
}

/// Rust's standard library for the browser.
///
/// # Errors
/// When it is missing and rustup cannot add it.
pub fn wasm_target() -> Outcome {
    let library =
        printed(Command::new("rustc").args(["--print", "target-libdir", "--target", WASM]))
            .map(PathBuf::from);
    if library.is_some_and(|folder| folder.is_dir()) {
        return Ok(());
    }
    if on_path("rustup").is_none() {
        return Err(format!(
            "Rust's target {WASM} is missing and there is no rustup to add it; install it with your system's packages"
        ));
    }
    step("Rust's wasm target", || {
        run_quietly(
            Command::new("rustup")
                .args(["target", "add", WASM])
                .current_dir(places::root()),
        )
    })
}

fn cargo_tool(program: &str, package: &str, version: &str, extra: &[&str]) -> Outcome {
    let ours = places::tools().join("bin").join(program);
    for candidate in [Some(ours), on_path(program)].into_iter().flatten() {
        if is_version(&candidate, version) {
            return Ok(());
        }
    }
    let name = format!("{package} {version}, built once into target/tools (some minutes)");
    step(&name, || {
        run_quietly(
            Command::new("cargo")
                .args(["install", package, "--locked", "--force"])
                .args(["--version", version, "--root"])
                .arg(places::tools())
                .args(extra)
                .current_dir(places::root())
                .env("CARGO_TARGET_DIR", places::tools().join("build"))
                // A tool that runs a few times need not be fast: built this way it is ready in a third of the time.
                .env("CARGO_PROFILE_RELEASE_OPT_LEVEL", "0")
                .env("CARGO_PROFILE_RELEASE_LTO", "off")
                .env("CARGO_PROFILE_RELEASE_CODEGEN_UNITS", "16")
                .env("CARGO_PROFILE_RELEASE_DEBUG", "0")
                .env("CARGO_PROFILE_RELEASE_STRIP", "none"),
        )
    })
}

fn is_version(program: &Path, version: &str) -> bool {
    program.is_file()
        && printed(Command::new(program).arg("--version"))
            .is_some_and(|text| text.split_whitespace().any(|word| word == version))
}

/// A wasm-opt that is new enough: ours, or the one on the PATH.
#[must_use]
pub fn wasm_opt() -> Option<PathBuf> {
    let ours = places::tools().join("bin/wasm-opt");
    [Some(ours), on_path("wasm-opt")]
        .into_iter()
        .flatten()
        .find(|program| {
            program.is_file()
                && printed(Command::new(program).arg("--version"))
                    .and_then(|text| optimiser_version(&text))
                    .is_some_and(|version| version >= OLDEST_WASM_OPT)
        })
}

/// The number in `wasm-opt version 132 (version_132)`.
fn optimiser_version(text: &str) -> Option<u32> {
    text.split_whitespace().find_map(|word| word.parse().ok())
}

/// Puts a package of the npm registry into a folder of its own; nothing of it is run.
pub(super) fn npm_install(package: &str, folder: &Path) -> Result<(), String> {
    std::fs::create_dir_all(folder).map_err(|error| error.to_string())?;
    run_quietly(
        Command::new("npm")
            .args([
                "install",
                "--no-save",
                "--no-audit",
                "--no-fund",
                "--ignore-scripts",
            ])
            .arg("--prefix")
            .arg(folder)
            .arg(package)
            .current_dir(folder),
    )
}

fn install_binaryen() -> bool {
    if on_path("node").is_none() || on_path("npm").is_none() {
        return false;
    }
    let installed = step("wasm-opt, for Node", || {
        let folder = places::tools().join("binaryen");
        npm_install(BINARYEN, &folder)?;
        write_wrapper()
    });
    if let Err(why) = &installed {
        say(format!("  {why}"));
    }
    installed.is_ok() && wasm_opt().is_some()
}

/// The npm package's wasm-opt is a script for Node; a build wants a program of that name.
fn write_wrapper() -> Outcome {
    let wrapper = places::tools().join("bin/wasm-opt");
    let text = "#!/bin/sh\n\
                exec node \"$(dirname \"$0\")/../binaryen/node_modules/binaryen/bin/wasm-opt\" \"$@\"\n";
    std::fs::write(&wrapper, text).map_err(|error| error.to_string())?;
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        std::fs::set_permissions(&wrapper, std::fs::Permissions::from_mode(0o755))
            .map_err(|error| error.to_string())?;
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_pinned_wasm_bindgen_is_the_one_in_the_lock_file() {
        let lock = std::fs::read_to_string(places::root().join("Cargo.lock")).expect("a lock file");
        let wanted = format!("name = \"wasm-bindgen\"\nversion = \"{WASM_BINDGEN}\"");
        assert!(lock.contains(&wanted));
    }

    #[test]
    fn the_optimiser_says_its_version_among_other_words() {
        assert_eq!(
            optimiser_version("wasm-opt version 132 (version_132)"),
            Some(132)
        );
        assert_eq!(optimiser_version("no number"), None);
    }
}
