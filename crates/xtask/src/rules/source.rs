//! Rules for Rust files as such: how they open, how long they are, what they may call.

use super::File;

/// The most lines a file may have.
const MOST_LINES: usize = 500;

/// A file opens with `//!`: what it holds.
#[must_use]
pub fn files_say_what_they_hold(files: &[File]) -> Vec<String> {
    files
        .iter()
        .filter(|file| file.is_rust() && !file.text.starts_with("//!"))
        .map(|file| file.complaint(1, "does not open with `//!` and what it holds"))
        .collect()
}

/// No file is longer than can be kept in mind.
#[must_use]
pub fn files_are_short(files: &[File]) -> Vec<String> {
    files
        .iter()
        .filter(|file| file.is_rust())
        .filter_map(|file| {
            let lines = file.text.lines().count();
            (lines > MOST_LINES).then(|| {
                file.complaint(
                    lines,
                    &format!("{lines} lines, and at most {MOST_LINES} are wanted"),
                )
            })
        })
        .collect()
}

/// A function is named after the quantity that it returns.
#[must_use]
pub fn names_are_quantities(files: &[File]) -> Vec<String> {
    const SHUNNED: [&str; 4] = ["get_", "calculate_", "compute_", "calc_"];
    let shunned = SHUNNED.map(|word| format!("fn {word}"));
    let shunned: Vec<&str> = shunned.iter().map(String::as_str).collect();
    complaints(files, File::is_rust, &shunned, |word| {
        format!("`{word}...`: a function is named after what it returns")
    })
}

/// The core has no clock, no random source, no files and no console; what it needs comes in as arguments.
#[must_use]
pub fn core_has_no_surroundings(files: &[File]) -> Vec<String> {
    const SHUNNED: [&str; 15] = [
        "SystemTime",
        "Instant::now",
        "std::time",
        "std::fs",
        "std::net",
        "std::env",
        "std::io",
        "std::process",
        "std::thread",
        "thread_rng",
        "from_entropy",
        "getrandom",
        "println!",
        "eprintln!",
        "RandomState",
    ];
    complaints(files, is_core, &SHUNNED, |word| {
        format!("`{word}`: the core has no clock, chance, files or console")
    })
}

fn is_core(file: &File) -> bool {
    let core = [
        "crates/measure/src/",
        "crates/trade/src/",
        "crates/buildbook/src/",
    ];
    file.is_rust() && core.iter().any(|folder| file.is_in(folder))
}

/// Nothing in the pages gives up: no `unwrap`, no `expect`, no `panic!`.
#[must_use]
pub fn the_pages_cannot_panic(files: &[File]) -> Vec<String> {
    const SHUNNED: [&str; 5] = [
        ".unwrap()",
        ".expect(",
        "panic!(",
        "unreachable!(",
        "todo!(",
    ];
    complaints(
        files,
        |file| file.is_rust() && file.is_in("web/src/"),
        &SHUNNED,
        |word| format!("`{word}`: a page that gives up is a blank page"),
    )
}

fn complaints(
    files: &[File],
    concerned: impl Fn(&File) -> bool,
    shunned: &[&str],
    told: impl Fn(&str) -> String,
) -> Vec<String> {
    let mut found = Vec::new();
    for file in files.iter().filter(|file| concerned(file)) {
        for (number, line) in file.shipped_lines() {
            for word in shunned.iter().filter(|word| line.contains(**word)) {
                found.push(file.complaint(number, &told(word)));
            }
        }
    }
    found
}
