//! The pages as a folder of files: built, finished and weighed.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::SystemTime;

use sha2::{Digest, Sha256};

use crate::Outcome;
use crate::places;
use crate::setup;
use crate::steps::{on_path, printed, run_quietly, say, step};
use crate::styles;
use crate::text_files::{read, write};

/// A bare Yew counter built with the same settings, brotli -q 11, in bytes: what any page of this kind costs.
const BARE_COUNTER: f64 = 48_600.0;
/// What the pages should weigh at most, in bare counters.
const AIM: f64 = 5.0;
/// What they may weigh before a build fails: they are heavier than the aim, and must not grow on. Seven sheets weighed 15; the ten of now,
/// with templates and the pack, weigh 18.
const MOST_COUNTERS: f64 = 18.2;
/// Only a page opened from a file reads it, and the worker does not keep it.
const FROM_FILE: &str = "from-file.js";

/// Which build of the pages.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Build {
    /// The folder to upload.
    Release,
    /// Quick to make and large: for looking at pages while they are written.
    Dev,
}

impl Build {
    /// The folder that the build ends in.
    #[must_use]
    pub fn folder(self) -> PathBuf {
        match self {
            Self::Release => places::dist(),
            Self::Dev => places::dev_pages(),
        }
    }

    fn stamp(self) -> PathBuf {
        places::stamps().join(match self {
            Self::Release => "release",
            Self::Dev => "dev",
        })
    }
}

/// Builds the pages unless no source is newer than the last build.
///
/// # Errors
/// When a tool is missing and cannot be installed, or the build fails.
pub fn up_to_date(build: Build) -> Outcome<PathBuf> {
    let folder = build.folder();
    let begun = SystemTime::now();
    let built = std::fs::metadata(build.stamp()).and_then(|stamp| stamp.modified());
    if let Ok(built) = built
        && folder.join("index.html").is_file()
        && newest_source() <= built
    {
        return Ok(folder);
    }
    let tools = setup::build_tools()?;
    let name = match build {
        Build::Release => "the pages, as a release (some minutes the first time)",
        Build::Dev => "the pages, quickly",
    };
    step(name, || {
        // Trunk may fetch nothing, tools nor libraries, and on a fresh machine there are none yet. Without a network what is
        // there must do: then the build says what is missing.
        let mut fetch = Command::new("cargo");
        let _ = printed(
            fetch
                .args(["fetch", "--locked"])
                .current_dir(places::root()),
        );
        let mut trunk = Command::new("trunk");
        trunk
            .args(["build", "--offline", "--dist"])
            .arg(&folder)
            .current_dir(places::root())
            .env("PATH", &tools.path)
            .env_remove("NO_COLOR");
        if build == Build::Release {
            trunk.arg("--release");
        }
        run_quietly(&mut trunk)
    })?;
    std::fs::create_dir_all(places::stamps()).map_err(|error| error.to_string())?;
    let stamp = std::fs::File::create(build.stamp()).map_err(|error| error.to_string())?;
    // The moment the build began: what was edited meanwhile counts as newer.
    stamp
        .set_modified(begun)
        .map_err(|error| error.to_string())?;
    Ok(folder)
}

/// When anything that the pages are made from last changed; a removed file changes its folder.
fn newest_source() -> SystemTime {
    let root = places::root();
    let mut newest = SystemTime::UNIX_EPOCH;
    for place in [
        "Cargo.toml",
        "Cargo.lock",
        "Trunk.toml",
        "index.html",
        "rust-toolchain.toml",
        "crates/measure",
        "crates/trade",
        "crates/buildbook",
        "crates/xtask/src/bundle.rs",
        "crates/xtask/src/styles.rs",
        "crates/xtask/src/text_files.rs",
        "web",
    ] {
        newest = newest.max(newest_in(&root.join(place)));
    }
    newest
}

fn newest_in(place: &Path) -> SystemTime {
    let own = std::fs::metadata(place)
        .and_then(|data| data.modified())
        .unwrap_or(SystemTime::UNIX_EPOCH);
    let Ok(inside) = std::fs::read_dir(place) else {
        return own;
    };
    inside
        .filter_map(Result::ok)
        .map(|entry| newest_in(&entry.path()))
        .fold(own, SystemTime::max)
}

/// Finishes a build in Trunk's staging folder: shrinks the program, joins the style sheets, writes the form that opens
/// from a file, and the worker's list of files. Trunk calls it as its last step.
///
/// # Errors
/// When a file is missing or cannot be written.
pub fn finish(staging: &Path, release: bool) -> Outcome {
    let program = only_with_ending(staging, "wasm")?;
    if release {
        shrink(&program);
    }
    let bytes = std::fs::read(&program).map_err(|error| error.to_string())?;
    write(
        &staging.join(FROM_FILE),
        &format!("window.reckonerProgram=\"{}\";\n", base64(&bytes)),
    )?;
    styles::join(staging, |text| {
        format!("styles-{}.css", hexadecimal(&Sha256::digest(text)[..8]))
    })?;
    let mut sums = BTreeMap::new();
    for file in files(staging) {
        let address = address(staging, &file);
        if address == "sw.js" || address == FROM_FILE {
            continue;
        }
        let bytes = std::fs::read(&file).map_err(|error| error.to_string())?;
        let name = if address == "index.html" {
            "./".to_owned()
        } else {
            address
        };
        sums.insert(name, hexadecimal(&Sha256::digest(&bytes)));
    }
    let worker = staging.join("sw.js");
    let text = read(&worker)?;
    write(&worker, &worker_with_files(&text, &sums)?)
}

/// The worker with its list of files and the version that follows from their content.
fn worker_with_files(worker: &str, sums: &BTreeMap<String, String>) -> Outcome<String> {
    let mut list = String::new();
    for (address, sum) in sums {
        let _ = write!(list, "\n  {address:?}: {sum:?},");
    }
    let version = hexadecimal(&Sha256::digest(list.as_bytes())[..8]);
    let mut written = 0;
    let mut text = String::new();
    for line in worker.lines() {
        if line.starts_with("const VERSION = ") {
            written += 1;
            let _ = writeln!(text, "const VERSION = {version:?};");
        } else if line.starts_with("const FILES = ") {
            written += 1;
            let _ = writeln!(text, "const FILES = {{{list}\n}};");
        } else {
            let _ = writeln!(text, "{line}");
        }
    }
    if written == 2 {
        Ok(text)
    } else {
        Err("sw.js has not the two lines that the build writes".into())
    }
}

/// What makes the program smaller as it is sent. The usual `-Oz` makes it seven per cent smaller as it lies, but puts functions into one
/// another and mixes their locals, which then pack worse by more than that. Functions that lie beside those of like names pack better, and
/// so do loads and stores without their hints of alignment, which no engine of today heeds: measured, not guessed.
const PASSES: [&str; 14] = [
    "--reorder-functions-by-name",
    "--strip-debug",
    "--strip-producers",
    "--remove-unused-module-elements",
    "--duplicate-function-elimination",
    "--remove-unused-names",
    "--remove-unused-brs",
    "--optimize-instructions",
    "--precompute",
    "--optimize-instructions",
    "--remove-unused-brs",
    "--vacuum",
    "--reorder-locals",
    "--dealign",
];

fn shrink(program: &Path) {
    let Some(optimiser) = setup::wasm_opt() else {
        say("  wasm-opt is missing: the program stays a few per cent larger");
        return;
    };
    let shrunk = program.with_extension("small");
    let result = run_quietly(
        Command::new(optimiser)
            .args(PASSES)
            .args(["--enable-bulk-memory", "--enable-nontrapping-float-to-int"])
            .args(["--enable-sign-ext", "--enable-mutable-globals"])
            .args(["--enable-reference-types", "--enable-multivalue", "-o"])
            .arg(&shrunk)
            .arg(program),
    )
    .and_then(|()| std::fs::rename(&shrunk, program).map_err(|error| error.to_string()));
    if let Err(why) = result {
        let _ = std::fs::remove_file(&shrunk);
        say(format!("  the program was not shrunk: {why}"));
    }
}

/// Prints what the folder weighs, and says whether that is within bounds.
///
/// # Errors
/// When the pages weigh more than they may.
pub fn weigh(folder: &Path) -> Outcome<String> {
    let files = files(folder);
    let Some(packed) = brotli_sizes(&files) else {
        say(
            "  no Node and no brotli tool, so the sizes as sent are not known; install one to see them",
        );
        for file in &files {
            let raw = std::fs::metadata(file).map_or(0, |data| data.len());
            say(format!("  {:<44}{raw:>10} B", address(folder, file)));
        }
        return Ok("not known".into());
    };
    say(format!(
        "  {:<44}{:>12}{:>14}",
        "file", "raw", "brotli -q 11"
    ));
    let (mut raw_sum, mut packed_sum) = (0, 0);
    for (file, packed) in files.iter().zip(&packed) {
        let raw = std::fs::metadata(file).map_or(0, |data| data.len());
        let name = address(folder, file);
        let aside = name == FROM_FILE;
        if !aside {
            raw_sum += raw;
            packed_sum += packed;
        }
        let note = if aside {
            "  (only for a page opened from a file)"
        } else {
            ""
        };
        say(format!(
            "  {name:<44}{:>12}{:>14}{note}",
            kilobytes(raw),
            kilobytes(*packed)
        ));
    }
    say(format!(
        "  {:<44}{:>12}{:>14}",
        "in all, as a first visit loads it",
        kilobytes(raw_sum),
        kilobytes(packed_sum)
    ));
    #[expect(clippy::cast_precision_loss, reason = "a few hundred thousand bytes")]
    let factor = packed_sum as f64 / BARE_COUNTER;
    let standing = if factor <= AIM {
        "within the aim"
    } else {
        "MORE than the aim"
    };
    let told = format!(
        "{} in all, {factor:.2} times a bare Yew counter's {:.1} kB: {standing} of {AIM}",
        kilobytes(packed_sum),
        BARE_COUNTER / 1000.0
    );
    say(format!("  {told}"));
    if factor <= MOST_COUNTERS {
        Ok(told)
    } else {
        Err(format!("{told}, and may grow to {MOST_COUNTERS} at most"))
    }
}

#[expect(
    clippy::cast_precision_loss,
    reason = "sizes of files of a few megabytes"
)]
fn kilobytes(bytes: u64) -> String {
    format!("{:.1} kB", bytes as f64 / 1000.0)
}

fn brotli_sizes(files: &[PathBuf]) -> Option<Vec<u64>> {
    const PACK: &str = "const z=require('zlib'),f=require('fs');for(const n of process.argv.slice(1))\
        console.log(z.brotliCompressSync(f.readFileSync(n),{params:{[z.constants.BROTLI_PARAM_QUALITY]:11}}).length)";
    if on_path("node").is_some() {
        let text = printed(Command::new("node").args(["-e", PACK]).args(files))?;
        return text.lines().map(|line| line.parse().ok()).collect();
    }
    on_path("brotli")?;
    files
        .iter()
        .map(|file| {
            let output = Command::new("brotli")
                .args(["-q", "11", "-c"])
                .arg(file)
                .output()
                .ok()?;
            output
                .status
                .success()
                .then_some(output.stdout.len() as u64)
        })
        .collect()
}

/// Every file in a folder and below, in order.
fn files(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let Ok(inside) = std::fs::read_dir(folder) else {
        return found;
    };
    for path in inside.filter_map(Result::ok).map(|entry| entry.path()) {
        if path.is_dir() {
            found.extend(files(&path));
        } else {
            found.push(path);
        }
    }
    found.sort();
    found
}

fn address(folder: &Path, file: &Path) -> String {
    let inside = file.strip_prefix(folder).unwrap_or(file);
    inside.to_string_lossy().replace('\\', "/")
}

fn only_with_ending(folder: &Path, ending: &str) -> Outcome<PathBuf> {
    let mut found = files(folder);
    found.retain(|file| file.extension().is_some_and(|have| have == ending));
    match found.as_slice() {
        [one] => Ok(one.clone()),
        _ => Err(format!(
            "{} files ending in .{ending} in {}, and one was expected",
            found.len(),
            folder.display()
        )),
    }
}

fn hexadecimal(bytes: &[u8]) -> String {
    bytes.iter().fold(String::new(), |mut text, byte| {
        let _ = write!(text, "{byte:02x}");
        text
    })
}

/// RFC 4648, section 4.
fn base64(bytes: &[u8]) -> String {
    const SIGNS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    let mut text = String::with_capacity(bytes.len().div_ceil(3) * 4);
    for group in bytes.chunks(3) {
        let three = [
            group[0],
            group.get(1).copied().unwrap_or(0),
            group.get(2).copied().unwrap_or(0),
        ];
        let whole = u32::from_be_bytes([0, three[0], three[1], three[2]]);
        for place in 0..4 {
            if place <= group.len() {
                let six = (whole >> (18 - 6 * place)) & 63;
                text.push(char::from(SIGNS[six as usize]));
            } else {
                text.push('=');
            }
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    /// RFC 4648, section 10.
    #[test]
    fn base64_gives_the_vectors_of_its_standard() {
        for (plain, coded) in [
            ("", ""),
            ("f", "Zg=="),
            ("fo", "Zm8="),
            ("foo", "Zm9v"),
            ("foob", "Zm9vYg=="),
            ("fooba", "Zm9vYmE="),
            ("foobar", "Zm9vYmFy"),
        ] {
            assert_eq!(base64(plain.as_bytes()), coded);
        }
    }

    #[test]
    fn the_version_follows_from_the_content_alone() {
        let worker = "const VERSION = \"x\"; // by the build\nconst FILES = {};\nrest\n";
        let sums = |sum: &str| BTreeMap::from([("./".to_owned(), sum.to_owned())]);
        let one = worker_with_files(worker, &sums("aa")).expect("a worker");
        let same = worker_with_files(worker, &sums("aa")).expect("a worker");
        let other = worker_with_files(worker, &sums("ab")).expect("a worker");
        assert_eq!(one, same);
        let version = |text: &str| text.lines().next().map(str::to_owned);
        assert_ne!(version(&one), version(&other));
        assert!(one.contains("\"./\": \"aa\"") && one.ends_with("rest\n"));
    }

    #[test]
    fn a_worker_without_the_lines_to_write_is_refused() {
        assert!(worker_with_files("const VERSION = 1;\n", &BTreeMap::new()).is_err());
    }

    #[test]
    fn the_worker_in_the_sources_has_the_lines_to_write() {
        let worker =
            std::fs::read_to_string(places::root().join("web/static/sw.js")).expect("the worker");
        assert!(worker_with_files(&worker, &BTreeMap::new()).is_ok());
    }
}
