//! Rules for the documents: the code map is true, the reference entries are whole.

use std::path::Path;

use super::File;

/// DEVELOPERS.md names every member of the workspace, and every path it names exists.
#[must_use]
pub fn code_map_is_true(developers: &File, root: &Path, members: &[String]) -> Vec<String> {
    let mut found = Vec::new();
    for (number, line) in developers.text.lines().enumerate() {
        for name in line.split('`').skip(1).step_by(2) {
            if is_path(name) && !root.join(name.trim_end_matches('/')).exists() {
                found.push(developers.complaint(number + 1, &format!("`{name}` does not exist")));
            }
        }
    }
    for member in members {
        if !developers.text.contains(&format!("`{member}/`")) {
            found.push(developers.complaint(1, &format!("does not name the member `{member}/`")));
        }
    }
    found
}

/// A word that names a place in the workspace, and is no pattern.
fn is_path(name: &str) -> bool {
    const TOPS: [&str; 6] = ["crates/", "web/", "tests/", "docs/", ".ci/", ".cargo/"];
    TOPS.iter().any(|top| name.starts_with(top)) && !name.contains(['<', '*', '{', ' '])
}

/// Every member of the workspace, by its folder.
#[must_use]
pub fn members(root: &Path) -> Vec<String> {
    let mut found = Vec::new();
    for folder in ["crates", "tests", "."] {
        let Ok(inside) = std::fs::read_dir(root.join(folder)) else {
            continue;
        };
        for entry in inside.filter_map(Result::ok) {
            if entry.path().join("Cargo.toml").is_file() {
                let name = entry.file_name().to_string_lossy().into_owned();
                found.push(if folder == "." {
                    name
                } else {
                    format!("{folder}/{name}")
                });
            }
        }
    }
    found.sort();
    found
}

/// Every reference entry says what it is, where it comes from, how it is known, and why its tolerance.
#[must_use]
pub fn reference_entries_are_whole(files: &[File]) -> Vec<String> {
    const WANTED: [&str; 6] = ["id", "what", "of", "why", "source", "held"];
    let mut found = Vec::new();
    for file in files
        .iter()
        .filter(|file| file.is_in("tests/reference/") && file.path.ends_with(".toml"))
        .filter(|file| !file.path.ends_with("Cargo.toml"))
    {
        for (number, entry) in entries(&file.text) {
            let has = |key: &str| {
                entry.iter().any(|line| {
                    line.trim_start()
                        .strip_prefix(key)
                        .is_some_and(|rest| rest.trim_start().starts_with('='))
                })
            };
            for key in WANTED.iter().filter(|key| !has(key)) {
                found.push(file.complaint(number, &format!("this entry has no `{key}`")));
            }
            if !has("expected") && !has("refused") {
                found.push(file.complaint(number, "this entry expects nothing"));
            }
        }
    }
    found
}

/// The entries of a data file: the line of each heading, and the lines below it.
fn entries(text: &str) -> Vec<(usize, Vec<&str>)> {
    let mut found: Vec<(usize, Vec<&str>)> = Vec::new();
    for (number, line) in text.lines().enumerate() {
        if line.trim() == "[[check]]" {
            found.push((number + 1, Vec::new()));
        } else if let Some((_, lines)) = found.last_mut() {
            lines.push(line);
        }
    }
    found
}
