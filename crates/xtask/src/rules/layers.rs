//! Rules for who may know whom.

use super::File;

/// Each crate, and what it must not depend on.
const ABOVE: [(&str, &[&str]); 4] = [
    ("crates/measure/", &["trade", "buildbook", "web"]),
    ("crates/trade/", &["buildbook", "web"]),
    ("crates/buildbook/", &["web"]),
    ("crates/xtask/", &["measure", "trade", "buildbook", "web"]),
];

/// What only the browser has.
const BROWSER: [&str; 5] = ["web-sys", "js-sys", "wasm-bindgen", "yew", "gloo"];

/// Words that reach into a part of the browser, and the one file of the pages that may say them.
const OWNERS: [(&[&str], &[&str], &str); 3] = [
    (
        &["web/src/storage.rs", "web/src/storage/"],
        &[
            "local_storage",
            "session_storage",
            "localStorage",
            "sessionStorage",
            "indexed_db",
            "gloo_storage",
        ],
        "only storage.rs touches storage",
    ),
    (
        &["web/src/route.rs", "web/src/link.rs"],
        &["set_hash(", "\"hashchange\"", ".hash()"],
        "only route.rs and link.rs touch the fragment",
    ),
    (
        &["web/src/offline.rs"],
        &[
            "service_worker",
            "ServiceWorker",
            "offlinestate",
            "acceptnewversion",
        ],
        "only offline.rs touches the worker",
    ),
];

/// `measure` <- `trade` <- `buildbook` <- `web`: no arrow back, and no browser in `crates/`.
#[must_use]
pub fn layers_point_down(files: &[File]) -> Vec<String> {
    let mut found = Vec::new();
    for (folder, above) in ABOVE {
        for file in files
            .iter()
            .filter(|file| file.path == format!("{folder}Cargo.toml"))
        {
            for (number, name) in dependencies(&file.text) {
                if above.contains(&name) {
                    found.push(file.complaint(number, &format!("depends upward, on `{name}`")));
                }
                if BROWSER.iter().any(|part| name.starts_with(part)) {
                    found.push(
                        file.complaint(number, &format!("`{name}`: crates/ sees no browser")),
                    );
                }
            }
        }
    }
    found
}

/// The names of a manifest's dependencies of every sort, with their lines.
fn dependencies(manifest: &str) -> Vec<(usize, &str)> {
    let mut names = Vec::new();
    let mut inside = false;
    for (number, line) in manifest.lines().enumerate() {
        let line = line.trim();
        if let Some(title) = line.strip_prefix('[') {
            let title = title.trim_end_matches(']');
            inside = title.ends_with("dependencies");
            if let Some((_, name)) = title.split_once("dependencies.") {
                names.push((number + 1, name));
            }
        } else if inside && !line.starts_with('#') {
            let name = line.split(['=', '.', ' ']).next().unwrap_or("");
            if !name.is_empty() {
                names.push((number + 1, name));
            }
        }
    }
    names
}

/// Storage, fragment and worker are each touched in one place.
#[must_use]
pub fn only_their_file_touches(files: &[File]) -> Vec<String> {
    let mut found = Vec::new();
    for (owners, words, rule) in OWNERS {
        for file in files.iter().filter(|file| {
            file.is_rust()
                && file.is_in("web/src/")
                && !owners.iter().any(|owner| file.path.starts_with(owner))
        }) {
            for (number, line) in file.shipped_lines() {
                if let Some(word) = words.iter().find(|word| line.contains(**word)) {
                    found.push(file.complaint(number, &format!("`{word}`: {rule}")));
                }
            }
        }
    }
    found
}

/// Pages use widgets and drawings, never the reverse.
#[must_use]
pub fn pages_use_widgets_only(files: &[File]) -> Vec<String> {
    let mut found = Vec::new();
    for file in files.iter().filter(|file| {
        file.is_rust() && (file.is_in("web/src/widgets") || file.is_in("web/src/drawings"))
    }) {
        for (number, line) in file.shipped_lines() {
            if line.contains("crate::pages") || line.contains("super::pages") {
                found.push(file.complaint(number, "widgets and drawings know no page"));
            }
        }
    }
    found
}
