//! Two commands of the browser's driver that are not in W3C WebDriver: its developer protocol and its console.

use fantoccini::wd::WebDriverCompatibleCommand;
use http::Method;
use serde_json::{Value, json};

/// Sends a command of the developer protocol, such as the size of the screen to show.
#[derive(Debug)]
pub(crate) struct Developer {
    pub command: &'static str,
    pub parameters: Value,
}

impl WebDriverCompatibleCommand for Developer {
    fn endpoint(
        &self,
        base: &url::Url,
        session: Option<&str>,
    ) -> Result<url::Url, url::ParseError> {
        base.join(&format!(
            "session/{}/goog/cdp/execute",
            session.unwrap_or("")
        ))
    }

    fn method_and_body(&self, _: &url::Url) -> (Method, Option<String>) {
        let body = json!({ "cmd": self.command, "params": self.parameters });
        (Method::POST, Some(body.to_string()))
    }
}

/// Takes what the console has said since it was last asked.
#[derive(Debug)]
pub(crate) struct Console;

impl WebDriverCompatibleCommand for Console {
    fn endpoint(
        &self,
        base: &url::Url,
        session: Option<&str>,
    ) -> Result<url::Url, url::ParseError> {
        base.join(&format!("session/{}/se/log", session.unwrap_or("")))
    }

    fn method_and_body(&self, _: &url::Url) -> (Method, Option<String>) {
        (Method::POST, Some(json!({ "type": "browser" }).to_string()))
    }
}
