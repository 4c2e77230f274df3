//! What must be true of every page, whatever it shows.

use std::sync::LazyLock;

use serde_json::json;

use crate::{Journey, Outcome, scripts};

/// The least side of anything to tap, in CSS pixels: a gloved finger.
const LEAST_TARGET: u32 = 56;

/// axe-core, where it could be had.
static AXE: LazyLock<Option<String>> =
    LazyLock::new(|| std::fs::read_to_string(xtask::setup::axe()?).ok());

impl Journey {
    /// Nothing sticks out sideways, everything to tap is large enough and has a name, headings are in order, and the
    /// console has said nothing bad.
    ///
    /// # Errors
    /// What is wrong with the page, all of it.
    pub async fn page_is_sound(&self) -> Outcome {
        let mut wrong = self.sticks_out_or_meets().await?;
        for (script, arguments, what) in [
            (
                scripts::SMALL_TARGETS,
                vec![json!(LEAST_TARGET)],
                "too small to tap: ",
            ),
            (scripts::UNNAMED, vec![], ""),
        ] {
            let found = self.ask(script, arguments).await?;
            wrong.extend(
                texts(&found)
                    .into_iter()
                    .map(|line| format!("{what}{line}")),
            );
        }
        wrong.extend(self.barriers().await?);
        wrong.extend(self.console_errors().await?);
        if wrong.is_empty() {
            Ok(())
        } else {
            Err(format!(
                "{}: {}",
                self.route().await?,
                wrong.join("\n      ")
            ))
        }
    }

    /// What reaches beyond the screen sideways, and words that are cut or meet other words.
    ///
    /// # Errors
    /// When the page does not answer.
    pub async fn sticks_out_or_meets(&self) -> Outcome<Vec<String>> {
        let over = self.ask(scripts::OVERFLOW, vec![]).await?;
        let mut wrong: Vec<String> = over
            .as_str()
            .map(|over| format!("reaches {over}"))
            .into_iter()
            .collect();
        wrong.extend(texts(&self.ask(scripts::WORDS_THAT_MEET, vec![]).await?));
        Ok(wrong)
    }

    /// What axe-core finds against WCAG 2.2, levels A and AA.
    async fn barriers(&self) -> Outcome<Vec<String>> {
        let Some(axe) = AXE.as_ref() else {
            return Ok(Vec::new());
        };
        self.ask(&format!("if (!window.axe) {{ {axe} }}"), vec![])
            .await?;
        let found = self
            .client
            .execute_async(scripts::BARRIERS, vec![])
            .await
            .map_err(|error| format!("axe-core: {error}"))?;
        Ok(texts(&found))
    }
}

fn texts(list: &serde_json::Value) -> Vec<String> {
    list.as_array()
        .into_iter()
        .flatten()
        .map(|line| line.as_str().unwrap_or("?").to_owned())
        .collect()
}
