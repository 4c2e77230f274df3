//! What a person does to the page: tap, type, choose.

use std::time::Duration;

use fantoccini::Locator;
use fantoccini::actions::{
    Actions, InputSource, KeyAction, KeyActions, PointerAction, TouchActions,
};
use serde_json::{Value, json};

use crate::commands::Developer;
use crate::{Journey, Outcome, scripts};

impl Journey {
    /// Taps an element, with a finger, where it lies; or the key that does something: `tap("add gearing/gears")`.
    ///
    /// # Errors
    /// When it is not there, switched off, or covered by something else.
    pub async fn tap(&self, what: &str) -> Outcome {
        let selector = selector_of(what);
        self.wait_for(&selector).await?;
        let place = self.ask(scripts::MIDDLE, vec![json!(selector)]).await?;
        if let Some(why) = place["why"].as_str() {
            return Err(format!("`{what}` {why}"));
        }
        let (Some(x), Some(y)) = (place["x"].as_f64(), place["y"].as_f64()) else {
            return Err(format!("`{what}` has no place: {place}"));
        };
        let finger = TouchActions::new("finger".into())
            .then(PointerAction::MoveTo {
                duration: None,
                x,
                y,
            })
            .then(PointerAction::Down { button: 0 })
            .then(PointerAction::Up { button: 0 });
        self.client
            .perform_actions(Actions::from(finger))
            .await
            .map_err(|error| format!("`{what}`: {error}"))?;
        self.drawn().await
    }

    /// Puts fingers down at places, moves each to another in steps, as a hand does, and lifts them.
    ///
    /// # Errors
    /// When the browser does not take the touch.
    pub async fn fingers(&self, ways: &[[(f64, f64); 2]]) -> Outcome {
        const STEPS: u8 = 8;
        let finger = |(number, [from, to]): (usize, &[(f64, f64); 2])| {
            let at = |step: u8| {
                let share = f64::from(step) / f64::from(STEPS);
                PointerAction::MoveTo {
                    duration: (step > 0).then_some(Duration::from_millis(30)),
                    x: (from.0 + share * (to.0 - from.0)).round(),
                    y: (from.1 + share * (to.1 - from.1)).round(),
                }
            };
            let down = TouchActions::new(format!("finger {number}"))
                .then(at(0))
                .then(PointerAction::Down { button: 0 });
            let moved = (1..=STEPS).fold(down, |hand, step| hand.then(at(step)));
            moved.then(PointerAction::Up { button: 0 })
        };
        let mut all = ways.iter().enumerate().map(finger);
        let Some(first) = all.next() else {
            return Ok(());
        };
        let together = all.fold(Actions::from(first), Actions::and);
        self.client
            .perform_actions(together)
            .await
            .map_err(|error| format!("{} fingers: {error}", ways.len()))?;
        self.drawn().await
    }

    /// Two fingers about a place, spread (more than 1) or brought together (less), by the browser's own hand: it takes what the page
    /// leaves to the browser for scrolling, as it does of a person's fingers.
    ///
    /// # Errors
    /// When the browser does not do it.
    pub async fn pinch(&self, (x, y): (f64, f64), times: f64) -> Outcome {
        let parameters =
            json!({ "x": x, "y": y, "scaleFactor": times, "gestureSourceType": "touch" });
        self.gesture("Input.synthesizePinchGesture", parameters)
            .await
    }

    /// One finger from a place, so far across and down, by the browser's own hand.
    ///
    /// # Errors
    /// When the browser does not do it.
    pub async fn swipe(&self, (x, y): (f64, f64), (across, down): (f64, f64)) -> Outcome {
        let parameters = json!({
            "x": x, "y": y, "xDistance": across, "yDistance": down,
            "gestureSourceType": "touch", "preventFling": true,
        });
        self.gesture("Input.synthesizeScrollGesture", parameters)
            .await
    }

    async fn gesture(&self, command: &'static str, parameters: Value) -> Outcome {
        let gesture = Developer {
            command,
            parameters,
        };
        self.client
            .issue_cmd(gesture)
            .await
            .map_err(|error| format!("{command}: {error}"))?;
        self.drawn().await
    }

    /// Taps a field, and replaces what it holds by this text. Counts as one entry.
    ///
    /// # Errors
    /// When there is no such field or it does not take the text.
    pub async fn enter(&self, key: &str, text: &str) -> Outcome {
        self.type_into(key, text).await?;
        self.entries.set(self.entries.get() + 1);
        Ok(())
    }

    /// As [`Journey::enter`], without counting.
    ///
    /// # Errors
    /// When there is no such field or it does not take the text.
    pub async fn type_into(&self, key: &str, text: &str) -> Outcome {
        let selector = field(key);
        self.tap(&selector).await?;
        self.taken_by_touch(&selector).await?;
        let element = self
            .client
            .find(Locator::Css(&selector))
            .await
            .map_err(|error| format!("{key}: {error}"))?;
        // Select all, then type over it.
        let keys = format!(
            "\u{e009}a\u{e000}{}",
            if text.is_empty() { "\u{e003}" } else { text }
        );
        element
            .send_keys(&keys)
            .await
            .map_err(|error| format!("{key}: {error}"))?;
        self.drawn().await?;
        let held = self.entry(key).await?;
        if held == text {
            Ok(())
        } else {
            Err(format!(
                "{key}: typed `{text}`, and the field holds `{held}`"
            ))
        }
    }

    /// Waits until the touch has put the cursor into the field. The browser works a touch out after it has been sent, and
    /// puts the cursor where it fell; whoever types before that, as no person can, loses what was selected.
    async fn taken_by_touch(&self, selector: &str) -> Outcome {
        const HAS_CURSOR: &str =
            "return document.activeElement === document.querySelector(arguments[0])";
        for _ in 0..40 {
            tokio::time::sleep(Duration::from_millis(50)).await;
            let has_cursor = self.ask(HAS_CURSOR, vec![selector.into()]).await?;
            if has_cursor.as_bool() == Some(true) {
                // A field that had the cursor already gives no sign of the second touch.
                tokio::time::sleep(Duration::from_millis(50)).await;
                return Ok(());
            }
        }
        Err(format!(
            "`{selector}` was tapped and did not take the cursor"
        ))
    }

    /// Presses the key that moves the cursor on.
    ///
    /// # Errors
    /// When the browser does not take it.
    pub async fn press_tab(&self) -> Outcome {
        let keys = KeyActions::new("keys".into())
            .then(KeyAction::Down { value: '\u{e004}' })
            .then(KeyAction::Up { value: '\u{e004}' });
        self.client
            .perform_actions(Actions::from(keys))
            .await
            .map_err(|error| format!("tab: {error}"))?;
        self.drawn().await
    }

    /// Chooses from a list, or ticks (`"true"`) or unticks (`"false"`) a box. Counts as one entry.
    ///
    /// # Errors
    /// When there is no such field or choice.
    pub async fn choose(&self, key: &str, value: &str) -> Outcome {
        let selector = field(key);
        self.wait_for(&selector).await?;
        let kind = "const e = document.querySelector(arguments[0]); return e.type || e.getAttribute('role') || e.tagName;";
        let kind = self.ask(kind, vec![json!(selector)]).await?;
        match kind.as_str() {
            Some("select-one") => {
                let element = self
                    .client
                    .find(Locator::Css(&selector))
                    .await
                    .map_err(|error| format!("{key}: {error}"))?;
                element
                    .select_by_value(value)
                    .await
                    .map_err(|error| format!("{key} has no choice `{value}`: {error}"))?;
            }
            Some("checkbox") => {
                if self.entry(key).await? != value {
                    self.tap(&selector).await?;
                }
            }
            // One key for each choice.
            _ => {
                self.tap(&format!("{selector} [data-choice=\"{value}\"]"))
                    .await?;
            }
        }
        self.drawn().await?;
        let held = self.entry(key).await?;
        if held != value {
            return Err(format!("{key}: chose `{value}`, and it holds `{held}`"));
        }
        self.entries.set(self.entries.get() + 1);
        Ok(())
    }
}

/// A selector as it is, and any other words as the name of what a key does.
fn selector_of(what: &str) -> String {
    if what.starts_with(['.', '#', '[']) || what.contains(['[', '>', '=']) {
        what.to_owned()
    } else {
        format!("[data-do=\"{what}\"]")
    }
}

pub(crate) fn field(key: &str) -> String {
    format!("[data-key=\"{key}\"]")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_key_is_named_by_what_it_does_and_anything_else_by_a_selector() {
        assert_eq!(
            selector_of("add gearing/gears"),
            "[data-do=\"add gearing/gears\"]"
        );
        assert_eq!(selector_of("main > h1"), "main > h1");
        assert_eq!(selector_of(".rail"), ".rail");
    }
}
