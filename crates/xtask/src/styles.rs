//! The style sheets of the pages, joined into one file: one request instead of one for each, and a good quarter smaller as sent.

use std::path::Path;

use crate::Outcome;
use crate::text_files::{read, write};

const BEGIN: &str = "<link rel=\"stylesheet\" href=\"./";
const END: &str = "\"/>";

/// Puts the style sheets that the page names into one file, in the order of the page, and lets the page name that one.
///
/// # Errors
/// When the page names no style sheet, or a file is missing or cannot be written.
pub fn join(staging: &Path, name: impl Fn(&str) -> String) -> Outcome {
    let page = staging.join("index.html");
    let text = read(&page)?;
    let mut styles = String::new();
    for file in text.lines().filter_map(style_sheet) {
        let file = staging.join(file);
        styles.push_str(&read(&file)?);
        std::fs::remove_file(&file).map_err(|error| format!("{}: {error}", file.display()))?;
    }
    if styles.is_empty() {
        return Err("index.html names no style sheet".into());
    }
    let joined = name(&styles);
    write(&staging.join(&joined), &styles)?;
    write(&page, &page_with_one(&text, &joined))
}

/// The file that a line of the page takes as a style sheet.
fn style_sheet(line: &str) -> Option<&str> {
    line.trim().strip_prefix(BEGIN)?.strip_suffix(END)
}

/// The page with one style sheet where the first one stood.
fn page_with_one(page: &str, joined: &str) -> String {
    let mut text = String::with_capacity(page.len());
    let mut named = false;
    for line in page.lines() {
        if style_sheet(line).is_none() {
            text.push_str(line);
        } else if named {
            continue;
        } else {
            named = true;
            text.push_str("    ");
            text.push_str(BEGIN);
            text.push_str(joined);
            text.push_str(END);
        }
        text.push('\n');
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_style_sheets_become_one_in_the_order_of_the_page() {
        let folder = std::env::temp_dir().join(format!("styles-{}", std::process::id()));
        std::fs::create_dir_all(&folder).expect("a folder");
        let link = |file: &str| format!("    {BEGIN}{file}{END}\n");
        let page = format!("<head>\n{}{}</head>\n", link("b.css"), link("a.css"));
        for (file, text) in [
            ("index.html", page.as_str()),
            ("a.css", "i {}\n"),
            ("b.css", "p {}\n"),
        ] {
            std::fs::write(folder.join(file), text).expect("written");
        }
        join(&folder, |_| "all.css".to_owned()).expect("joined");
        let left = |file: &str| std::fs::read_to_string(folder.join(file)).ok();
        assert_eq!(left("all.css").as_deref(), Some("p {}\ni {}\n"));
        assert_eq!(
            left("index.html"),
            Some(format!("<head>\n{}</head>\n", link("all.css")))
        );
        assert_eq!((left("a.css"), left("b.css")), (None, None));
        assert!(
            join(&folder, |_| "all.css".to_owned()).is_ok(),
            "again changes nothing"
        );
        std::fs::write(folder.join("index.html"), "<head></head>\n").expect("written");
        assert!(join(&folder, |_| "all.css".to_owned()).is_err());
        std::fs::remove_dir_all(&folder).expect("cleared");
    }
}
