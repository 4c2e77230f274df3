//! What a person reads from the page, and what its console says.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::path::Path;

use fantoccini::wd::{PrintConfiguration, PrintSize};
use serde_json::{Value, json};

use crate::commands::Console;
use crate::hands::field;
use crate::{Journey, Outcome, scripts};

impl Journey {
    /// What a field holds, as typed.
    ///
    /// # Errors
    /// When there is no such field.
    pub async fn entry(&self, key: &str) -> Outcome<String> {
        let held = self.ask(scripts::HELD, vec![json!(field(key))]).await?;
        held.as_str()
            .map(str::to_owned)
            .ok_or_else(|| format!("there is no field `{key}`"))
    }

    /// How many entries were made so far.
    #[must_use]
    pub fn entries_made(&self) -> u32 {
        self.entries.get()
    }

    /// What a result shows, with plain spaces: `112 ± 3 km/h`.
    ///
    /// # Errors
    /// When the page shows no such result.
    pub async fn result(&self, name: &str) -> Outcome<String> {
        self.text(&format!("[data-result=\"{name}\"]")).await
    }

    /// Waits until a result shows exactly this.
    ///
    /// # Errors
    /// What it shows instead.
    pub async fn expect(&self, name: &str, wanted: &str) -> Outcome {
        self.expect_that(name, wanted, |shown| shown == wanted)
            .await
    }

    /// Waits until what a result shows fulfils a condition.
    ///
    /// # Errors
    /// What it shows instead.
    pub async fn expect_that(&self, name: &str, told: &str, so: impl Fn(&str) -> bool) -> Outcome {
        let last = RefCell::new(String::from("nothing"));
        self.until("", async || {
            let shown = self.result(name).await.unwrap_or_default();
            let good = so(&shown);
            *last.borrow_mut() = shown;
            Ok(good)
        })
        .await
        .map_err(|_| format!("{name} should be {told}, and shows `{}`", last.borrow()))
    }

    /// The text that an element shows, with plain spaces.
    ///
    /// # Errors
    /// When there is no such element.
    pub async fn text(&self, selector: &str) -> Outcome<String> {
        let text = self.ask(scripts::TEXT, vec![json!(selector)]).await?;
        text.as_str()
            .map(plain)
            .ok_or_else(|| format!("`{selector}` is not on the page"))
    }

    /// Every result on the page, by name.
    ///
    /// # Errors
    /// When the page does not answer.
    pub async fn results(&self) -> Outcome<BTreeMap<String, String>> {
        Ok(texts(&self.ask(scripts::RESULTS, vec![]).await?))
    }

    /// Every entry on the page, by key.
    ///
    /// # Errors
    /// When the page does not answer.
    pub async fn entries(&self) -> Outcome<BTreeMap<String, String>> {
        Ok(texts(&self.ask(scripts::ENTRIES, vec![]).await?))
    }

    /// Waits until what was done has been drawn.
    ///
    /// # Errors
    /// When the page does not answer.
    pub async fn drawn(&self) -> Outcome {
        self.client
            .execute_async(scripts::DRAWN, vec![])
            .await
            .map(drop)
            .map_err(|error| format!("the page does not draw: {error}"))
    }

    /// The console has complained of nothing since it was last asked.
    ///
    /// # Errors
    /// What it complained of, or when the browser does not answer.
    pub async fn console_is_quiet(&self) -> Outcome {
        let complaints = self.console_errors().await?;
        if complaints.is_empty() {
            Ok(())
        } else {
            Err(complaints.join("\n      "))
        }
    }

    /// What the console has complained of since it was last asked: errors, and anything that the policy stopped.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn console_errors(&self) -> Outcome<Vec<String>> {
        let lines = self
            .client
            .issue_cmd(Console)
            .await
            .map_err(|error| format!("the console: {error}"))?;
        let bad = |line: &&Value| {
            line["level"] == "SEVERE"
                || line["message"].as_str().is_some_and(|text| {
                    text.contains("Content Security Policy") || text.contains("Trusted")
                })
        };
        Ok(lines
            .as_array()
            .into_iter()
            .flatten()
            .filter(bad)
            .map(|line| format!("the console: {}", line["message"].as_str().unwrap_or("?")))
            .collect())
    }

    /// Takes a picture of the screen into `target/pictures`.
    ///
    /// # Errors
    /// When it cannot be taken or written.
    pub async fn screenshot(&self, name: &str) -> Outcome {
        self.picture(&xtask::places::pictures().join(format!("{name}.png")))
            .await
    }

    /// Takes a picture for the README, into `docs/pictures` when `RECKONER_PICTURES` is set, else into `target/pictures`.
    ///
    /// # Errors
    /// When it cannot be taken or written.
    pub async fn readme_picture(&self, name: &str) -> Outcome {
        let folder = if std::env::var_os("RECKONER_PICTURES").is_some() {
            xtask::places::root().join("docs/pictures")
        } else {
            xtask::places::pictures()
        };
        self.picture(&folder.join(format!("{name}.png"))).await
    }

    /// The page as it is printed, in PDF: without a margin of the driver's own, so that the page's rules say what there is.
    ///
    /// # Errors
    /// When the browser does not print.
    pub async fn printed(&self, paper: PrintSize) -> Outcome<Vec<u8>> {
        self.drawn().await?;
        let how = PrintConfiguration::builder()
            .size(paper)
            .background(true)
            .shrink_to_fit(false)
            .build()
            .map_err(|error| format!("no print: {error}"))?;
        self.client
            .print(how)
            .await
            .map_err(|error| format!("no print: {error}"))
    }

    /// Takes a picture of the screen into a file.
    ///
    /// # Errors
    /// When it cannot be taken or written.
    pub async fn picture(&self, file: &Path) -> Outcome {
        self.drawn().await?;
        let picture = self
            .client
            .screenshot()
            .await
            .map_err(|error| format!("no picture: {error}"))?;
        if let Some(folder) = file.parent() {
            std::fs::create_dir_all(folder).map_err(|error| error.to_string())?;
        }
        std::fs::write(file, picture).map_err(|error| format!("{}: {error}", file.display()))
    }
}

/// The text with every kind of space as a plain one, and one at a time.
fn plain(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn texts(map: &Value) -> BTreeMap<String, String> {
    map.as_object()
        .into_iter()
        .flatten()
        .map(|(name, text)| (name.clone(), plain(text.as_str().unwrap_or(""))))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_of_space_reads_as_one_plain_space() {
        assert_eq!(plain(" 112\u{a0}±\u{202f}3\n km/h"), "112 ± 3 km/h");
    }
}
