//! Rules for words: where sentences stand, and what no file says.

use super::File;

/// Sentences for the user stand in `web/src/words/`, so that they are in both kinds of English and in one place.
///
/// A sentence is a text that opens with a capital letter and has a space, or ends like a sentence.
#[must_use]
pub fn sentences_in_words_only(files: &[File]) -> Vec<String> {
    let mut found = Vec::new();
    for file in files
        .iter()
        .filter(|file| file.is_rust() && file.is_in("web/src/") && !file.is_in("web/src/words"))
    {
        for (number, line) in file.shipped_lines() {
            if line.trim_start().starts_with("#[") || line.contains("include_str!") {
                continue;
            }
            for text in texts(line).filter(|text| is_sentence(text)) {
                found.push(file.complaint(number, &format!("{text:?} belongs in web/src/words/")));
            }
        }
    }
    found
}

/// The plain texts between quotation marks in a line of Rust.
fn texts(line: &str) -> impl Iterator<Item = &str> {
    let line = line.split(" // ").next().unwrap_or("");
    line.split('"').skip(1).step_by(2)
}

fn is_sentence(text: &str) -> bool {
    let opens = text.chars().next().is_some_and(char::is_uppercase);
    let words = text
        .split(' ')
        .filter(|word| {
            word.len() > 1
                && word
                    .chars()
                    .all(|sign| sign.is_alphabetic() || ".,?!".contains(sign))
        })
        .count();
    let ends = text.ends_with(['.', '?', '!']);
    (opens && words >= 2) || (ends && words >= 3)
}

/// The policy forbids `style=`: looks are classes, and drawings use SVG's own attributes.
#[must_use]
pub fn no_style_attributes(files: &[File]) -> Vec<String> {
    let mut found = Vec::new();
    for file in files
        .iter()
        .filter(|file| (file.is_rust() && file.is_in("web/src/")) || file.path.ends_with(".html"))
    {
        for (number, line) in file.shipped_lines() {
            let attribute = [" style=", "\tstyle=", "set_attribute(\"style\"", "style={"]
                .iter()
                .any(|form| line.contains(form))
                || line.trim_start().starts_with("style=");
            if attribute {
                found.push(file.complaint(number, "a `style` attribute, which the policy forbids"));
            }
        }
    }
    found
}

/// No file names a place on somebody's machine, and nothing is left to do later.
#[must_use]
pub fn the_project_speaks_of_itself(files: &[File]) -> Vec<String> {
    // Put together here, so that this file does not say them.
    let places = ["work", "tmp", "root", "home", "Users"].map(|name| format!("/{name}/"));
    let later = [["TO", "DO"], ["FIX", "ME"], ["XX", "X"]].map(|halves| halves.concat());
    let mut found = Vec::new();
    for file in files {
        for (number, line) in file.text.lines().enumerate() {
            if let Some(place) = places.iter().find(|place| names_a_place(line, place)) {
                found.push(
                    file.complaint(number + 1, &format!("`{place}` is a place on one machine")),
                );
            }
            let left = later.iter().find(|word| {
                line.split(|sign: char| !sign.is_alphanumeric())
                    .any(|have| have == word.as_str())
            });
            if let Some(word) = left {
                found
                    .push(file.complaint(number + 1, &format!("{word}: do it, or write an issue")));
            }
        }
    }
    found
}

/// Whether a line holds the path from the machine's root, not one that merely passes through such a name.
fn names_a_place(line: &str, place: &str) -> bool {
    line.match_indices(place).any(|(at, _)| {
        let before = line[..at].chars().next_back();
        !before.is_some_and(|sign| sign.is_alphanumeric() || "._-)}>*/<".contains(sign))
    })
}
