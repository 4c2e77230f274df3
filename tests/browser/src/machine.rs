//! The browser's driver as a process, and the sessions that it runs.

use std::cell::{Cell, RefCell};
use std::collections::BTreeSet;
use std::net::TcpListener;
use std::path::PathBuf;
use std::process::{Child, Command, Stdio};
use std::time::Duration;

use fantoccini::{Client, ClientBuilder};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Map, Value, json};
use xtask::server::Server;
use xtask::setup::Browser;

use crate::Outcome;

/// A driver, the folder to serve, and the one session that all journeys share.
pub struct Machine {
    driver: Child,
    port: u16,
    program: PathBuf,
    profiles: PathBuf,
    next_profile: Cell<u32>,
    shared: Option<Client>,
    served: RefCell<BTreeSet<u16>>,
    /// The pages as they are served.
    pub pages: PathBuf,
}

impl Machine {
    /// Starts the driver and a first session with an empty profile.
    ///
    /// # Errors
    /// When the driver or the browser does not start.
    pub async fn start(browser: &Browser, pages: PathBuf) -> Outcome<Self> {
        let port = free_port()?;
        let driver = Command::new(&browser.driver)
            .arg(format!("--port={port}"))
            .arg("--log-level=SEVERE")
            .stdin(Stdio::null())
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .map_err(|error| format!("{}: {error}", browser.driver.display()))?;
        let profiles =
            std::env::temp_dir().join(format!("reckoner-browser-{}", std::process::id()));
        let mut machine = Self {
            driver,
            port,
            program: browser.program.clone(),
            profiles,
            next_profile: Cell::new(0),
            shared: None,
            served: RefCell::default(),
            pages,
        };
        machine.shared = Some(machine.fresh_session().await?);
        Ok(machine)
    }

    /// A server at an address that no journey had yet: the system may give a port again, and with it what was stored there.
    ///
    /// # Errors
    /// When the server does not start.
    pub fn server(&self, start: impl Fn() -> Outcome<Server>) -> Outcome<Server> {
        loop {
            let server = start()?;
            if self.served.borrow_mut().insert(server.port()) {
                return Ok(server);
            }
        }
    }

    /// The session that journeys share.
    ///
    /// # Errors
    /// When the machine was stopped.
    pub fn session(&self) -> Outcome<Client> {
        self.shared
            .clone()
            .ok_or_else(|| "the browser was stopped".into())
    }

    /// A session of its own, with a profile that knows nothing. The caller closes it.
    ///
    /// # Errors
    /// When the browser does not start.
    pub async fn fresh_session(&self) -> Outcome<Client> {
        let number = self.next_profile.get();
        self.next_profile.set(number + 1);
        let profile = self.profiles.join(number.to_string());
        std::fs::create_dir_all(&profile).map_err(|error| error.to_string())?;
        let mut said = String::new();
        // The driver needs a moment before it listens.
        for _ in 0..100 {
            let made = ClientBuilder::new(HttpConnector::new())
                .capabilities(self.capabilities(&profile))
                .connect(&format!("http://127.0.0.1:{}", self.port))
                .await;
            match made {
                Ok(client) => return Ok(client),
                Err(error) => said = error.to_string(),
            }
            tokio::time::sleep(Duration::from_millis(100)).await;
        }
        Err(format!("the browser did not start: {said}"))
    }

    fn capabilities(&self, profile: &std::path::Path) -> Map<String, Value> {
        let options = json!({
            "binary": self.program,
            "args": [
                "--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
                "--disable-background-networking", "--disable-component-update", "--disable-sync",
                "--disable-dev-shm-usage", "--force-color-profile=srgb", "--hide-scrollbars",
                "--window-size=1280,720", "--lang=en-GB", "--accept-lang=en-GB,en",
                format!("--user-data-dir={}", profile.display()),
            ],
        });
        let mut wanted = Map::new();
        wanted.insert("browserName".into(), json!("chrome"));
        wanted.insert("goog:chromeOptions".into(), options);
        wanted.insert("goog:loggingPrefs".into(), json!({ "browser": "ALL" }));
        wanted
    }

    /// Ends the shared session and the driver.
    pub async fn stop(mut self) {
        if let Some(client) = self.shared.take() {
            let _ = client.close().await;
        }
    }
}

impl Drop for Machine {
    fn drop(&mut self) {
        let _ = self.driver.kill();
        let _ = self.driver.wait();
        let _ = std::fs::remove_dir_all(&self.profiles);
    }
}

fn free_port() -> Outcome<u16> {
    TcpListener::bind(("127.0.0.1", 0))
        .and_then(|listener| listener.local_addr())
        .map(|address| address.port())
        .map_err(|error| format!("no free port: {error}"))
}
