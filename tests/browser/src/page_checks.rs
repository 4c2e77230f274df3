//! What must be true of every page, whatever it shows.

use serde_json::json;

use crate::{Journey, Outcome, scripts};

/// The least side of anything to tap, in CSS pixels: a gloved finger.
const LEAST_TARGET: u32 = 56;

impl Journey {
    /// Nothing sticks out sideways, everything to tap is large enough and has a name, headings are in order, and the
    /// console has said nothing bad.
    ///
    /// # Errors
    /// What is wrong with the page, all of it.
    pub async fn page_is_sound(&self) -> Outcome {
        let mut wrong = Vec::new();
        if let Some(over) = self.ask(scripts::OVERFLOW, vec![]).await?.as_str() {
            wrong.push(format!("reaches {over}"));
        }
        for (script, arguments, what) in [
            (
                scripts::SMALL_TARGETS,
                vec![json!(LEAST_TARGET)],
                "too small to tap: ",
            ),
            (scripts::UNNAMED, vec![], ""),
        ] {
            let found = self.ask(script, arguments).await?;
            for line in found.as_array().into_iter().flatten() {
                wrong.push(format!("{what}{}", line.as_str().unwrap_or("?")));
            }
        }
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
}
