//! What was printed, as a library reads it back; and what was saved as a file.

use std::path::{Path, PathBuf};
use std::process::Command;

use fantoccini::wd::PrintSize;
use serde::Deserialize;
use serde_json::json;

use crate::{Journey, Outcome};

/// A printed page.
#[derive(Debug, Deserialize)]
pub struct PrintedPage {
    /// Points across.
    pub width: f64,
    /// Points down.
    pub height: f64,
    /// Its text without any space, since a PDF has none that can be relied on.
    pub text: String,
}

/// A text without any kind of space.
#[must_use]
pub fn close(text: &str) -> String {
    text.split_whitespace().collect()
}

impl Journey {
    /// Prints the page and reads it back, page by page.
    ///
    /// # Errors
    /// When the browser does not print, or what it printed cannot be read.
    pub async fn printed_pages(&self, name: &str, paper: PrintSize) -> Outcome<Vec<PrintedPage>> {
        let pdf = self.printed(paper).await?;
        let file = xtask::places::pictures().join(format!("{name}.pdf"));
        if let Some(folder) = file.parent() {
            std::fs::create_dir_all(folder).map_err(|error| error.to_string())?;
        }
        std::fs::write(&file, pdf).map_err(|error| format!("{}: {error}", file.display()))?;
        pages_of(&file)
    }

    /// Lets the browser save files into an empty folder of this journey.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn saving_into(&self, name: &str) -> Outcome<PathBuf> {
        let folder = std::env::temp_dir().join(format!("reckoner-{name}-{}", std::process::id()));
        // A folder that is not there needs no emptying.
        let _ = std::fs::remove_dir_all(&folder);
        std::fs::create_dir_all(&folder).map_err(|error| error.to_string())?;
        self.developer(
            "Browser.setDownloadBehavior",
            json!({ "behavior": "allow", "downloadPath": folder }),
        )
        .await?;
        Ok(folder)
    }

    /// Waits for a file and gives its bytes.
    ///
    /// # Errors
    /// When it does not appear.
    pub async fn saved_file(&self, file: &Path) -> Outcome<Vec<u8>> {
        self.until(&format!("{} is saved", file.display()), async || {
            Ok(file.is_file())
        })
        .await?;
        std::fs::read(file).map_err(|error| format!("{}: {error}", file.display()))
    }
}

/// What a reader of the reference libraries finds in a file: a script beside the journeys, which prints it as JSON.
///
/// # Errors
/// When the libraries cannot be set up, or the script finds the file wrong.
pub fn read_by<T: for<'a> Deserialize<'a>>(script: &str, file: &Path) -> Outcome<T> {
    let python = xtask::setup::reference_libraries()?;
    let script = xtask::places::root().join("tests/browser").join(script);
    let read = Command::new(python)
        .arg(script)
        .arg(file)
        .output()
        .map_err(|error| error.to_string())?;
    if !read.status.success() {
        return Err(String::from_utf8_lossy(&read.stderr).into_owned());
    }
    serde_json::from_slice(&read.stdout).map_err(|error| error.to_string())
}

fn pages_of(file: &Path) -> Outcome<Vec<PrintedPage>> {
    let pages: Vec<PrintedPage> = read_by("pdf_text.py", file)?;
    let close = |page: PrintedPage| PrintedPage {
        text: close(&page.text),
        ..page
    };
    Ok(pages.into_iter().map(close).collect())
}
