//! The house rules that a program can check, over the files of the workspace.
//!
//! Each rule is a function from the files to complaints. `cargo test -p xtask` runs them all, and shows for each one a
//! sample that it complains of.

mod documents;
mod layers;
mod prose;
mod source;

use std::path::Path;

pub use documents::{code_map_is_true, members, reference_entries_are_whole};
pub use layers::{layers_point_down, only_their_file_touches, pages_use_widgets_only};
pub use prose::{no_style_attributes, sentences_in_words_only, the_project_speaks_of_itself};
pub use source::{
    core_has_no_surroundings, files_are_short, files_say_what_they_hold, names_are_quantities,
    the_pages_cannot_panic,
};

/// A file of the workspace: its path from the root, with `/`, and its text.
#[derive(Debug, Clone)]
pub struct File {
    /// From the root of the workspace.
    pub path: String,
    /// All of it.
    pub text: String,
}

impl File {
    /// A file as given.
    #[must_use]
    pub fn new(path: &str, text: &str) -> Self {
        Self {
            path: path.to_owned(),
            text: text.to_owned(),
        }
    }

    /// Written in Rust.
    #[must_use]
    pub fn is_rust(&self) -> bool {
        self.path.ends_with(".rs")
    }

    /// Lies in a folder.
    #[must_use]
    pub fn is_in(&self, folder: &str) -> bool {
        self.path.starts_with(folder)
    }

    /// The lines that ship, numbered from 1: no comments, and nothing from the first test module on.
    pub fn shipped_lines(&self) -> impl Iterator<Item = (usize, &str)> {
        let whole_file_is_test = self.path.ends_with("/tests.rs") || self.path.contains("/tests/");
        self.text
            .lines()
            .enumerate()
            .take_while(move |(_, line)| {
                !whole_file_is_test && !line.trim_start().starts_with("#[cfg(test)]")
            })
            .map(|(number, line)| (number + 1, line))
            .filter(|(_, line)| !line.trim_start().starts_with("//"))
    }

    /// A complaint about a line.
    fn complaint(&self, line: usize, what: &str) -> String {
        format!("{}:{line}: {what}", self.path)
    }
}

/// Every file that people write, but for what is generated or built.
#[must_use]
pub fn files(root: &Path) -> Vec<File> {
    let mut found = Vec::new();
    collect(root, root, &mut found);
    found.sort_by(|one, other| one.path.cmp(&other.path));
    found
}

fn collect(root: &Path, folder: &Path, found: &mut Vec<File>) {
    const LEFT_OUT: [&str; 7] = [
        ".git",
        "target",
        "dist",
        "node_modules",
        "__pycache__",
        "Cargo.lock",
        "proptest-regressions",
    ];
    let Ok(inside) = std::fs::read_dir(folder) else {
        return;
    };
    for entry in inside.filter_map(Result::ok) {
        let path = entry.path();
        if LEFT_OUT.iter().any(|name| path.ends_with(name)) {
            continue;
        }
        if path.is_dir() {
            collect(root, &path, found);
        } else if let (Ok(text), Ok(inside)) =
            (std::fs::read_to_string(&path), path.strip_prefix(root))
        {
            found.push(File {
                path: inside.to_string_lossy().replace('\\', "/"),
                text,
            });
        }
    }
}
