//! A person with a tablet: where they are, on what device, and whether there is a network.
//!
//! What they do to the page is in `hands.rs`, what they read from it in `eyes.rs`.

use std::cell::{Cell, RefCell};
use std::time::{Duration, Instant};

use fantoccini::Client;
use serde_json::{Value, json};
use xtask::server::Server;

use crate::commands::Developer;
use crate::{Machine, Outcome};

/// How long a page may take to show something.
const PATIENCE: Duration = Duration::from_secs(8);

/// A size of screen, and whether it is touched.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Device {
    /// CSS pixels across.
    pub width: u32,
    /// CSS pixels down.
    pub height: u32,
    /// Touched with a finger, not pointed at with a mouse.
    pub touch: bool,
}

impl Device {
    /// A 10-inch tablet on the bench.
    pub const TABLET: Self = Self::touched(1280, 720);
    /// The same, held upright.
    pub const TABLET_UPRIGHT: Self = Self::touched(820, 1180);
    /// A phone.
    pub const PHONE: Self = Self::touched(390, 844);
    /// A desk.
    pub const DESK: Self = Self {
        width: 1600,
        height: 1000,
        touch: false,
    };

    /// A touched screen of this size.
    #[must_use]
    pub const fn touched(width: u32, height: u32) -> Self {
        Self {
            width,
            height,
            touch: true,
        }
    }
}

/// One person, one origin, one empty store.
pub struct Journey {
    pub(crate) client: Client,
    base: String,
    server: RefCell<Option<Server>>,
    pub(crate) entries: Cell<u32>,
    own_session: bool,
}

impl Journey {
    /// Begins in the shared browser, at a new origin that has stored nothing, on a tablet.
    ///
    /// # Errors
    /// When the server or the browser fails.
    pub async fn begin(machine: &Machine) -> Outcome<Self> {
        let server = machine.server(|| Server::start(&machine.pages, 0))?;
        Self::with(machine.session()?, server, false).await
    }

    /// Begins with pages from another folder.
    ///
    /// # Errors
    /// When the server or the browser fails.
    pub async fn begin_in(machine: &Machine, pages: &std::path::Path) -> Outcome<Self> {
        let server = machine.server(|| Server::start(pages, 0))?;
        Self::with(machine.session()?, server, false).await
    }

    /// Begins with the pages under a sub-path, as on a host that carries other things too.
    ///
    /// # Errors
    /// When the server or the browser fails.
    pub async fn begin_under(machine: &Machine, prefix: &str) -> Outcome<Self> {
        let server = machine.server(|| Server::start_under(&machine.pages, 0, prefix))?;
        Self::with(machine.session()?, server, false).await
    }

    async fn with(client: Client, server: Server, own_session: bool) -> Outcome<Self> {
        let journey = Self {
            client,
            base: server.url(),
            server: RefCell::new(Some(server)),
            entries: Cell::new(0),
            own_session,
        };
        journey.device(Device::TABLET).await?;
        journey.console_errors().await?;
        Ok(journey)
    }

    /// Somebody else's device at the same address: a browser whose profile knows nothing. End it with [`Journey::end`].
    ///
    /// # Errors
    /// When the browser does not start.
    pub async fn fresh_profile(&self, machine: &Machine) -> Outcome<Self> {
        let journey = Self {
            client: machine.fresh_session().await?,
            base: self.base.clone(),
            server: RefCell::new(None),
            entries: Cell::new(0),
            own_session: true,
        };
        journey.device(Device::TABLET).await?;
        Ok(journey)
    }

    /// A person at an address that is served already, in the shared browser.
    ///
    /// # Errors
    /// When the browser fails.
    pub async fn at(machine: &Machine, address: &str) -> Outcome<Self> {
        let journey = Self {
            client: machine.session()?,
            base: address.to_owned(),
            server: RefCell::new(None),
            entries: Cell::new(0),
            own_session: false,
        };
        journey.device(Device::TABLET).await?;
        Ok(journey)
    }

    /// Closes a browser of its own.
    pub async fn end(self) {
        if self.own_session {
            let _ = self.client.clone().close().await;
        }
    }

    /// The address of the front page.
    #[must_use]
    pub fn base(&self) -> &str {
        &self.base
    }

    /// The driver's own client, for what the journey has no word for.
    #[must_use]
    pub fn client(&self) -> &Client {
        &self.client
    }

    /// Changes the screen.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn device(&self, device: Device) -> Outcome {
        self.developer(
            "Emulation.setDeviceMetricsOverride",
            json!({
                "width": device.width, "height": device.height,
                "deviceScaleFactor": 1, "mobile": device.touch,
            }),
        )
        .await?;
        self.developer(
            "Emulation.setTouchEmulationEnabled",
            json!({ "enabled": device.touch, "maxTouchPoints": 5 }),
        )
        .await
    }

    /// Makes the device prefer something, and nothing else: `[("prefers-color-scheme", "dark")]`.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn prefer(&self, wishes: &[(&str, &str)]) -> Outcome {
        let features: Vec<Value> = wishes
            .iter()
            .map(|(name, value)| json!({ "name": name, "value": value }))
            .collect();
        self.developer(
            "Emulation.setEmulatedMedia",
            json!({ "features": features }),
        )
        .await
    }

    pub(crate) async fn developer(&self, command: &'static str, parameters: Value) -> Outcome {
        self.client
            .issue_cmd(Developer {
                command,
                parameters,
            })
            .await
            .map(drop)
            .map_err(|error| format!("{command}: {error}"))
    }

    /// Opens a route such as `#/gearing`, or the front page for an empty one, and waits until the page stands.
    ///
    /// # Errors
    /// When no heading appears.
    pub async fn open(&self, route: &str) -> Outcome {
        self.goto(&format!("{}{route}", self.base)).await?;
        self.wait_for("main h1").await
    }

    /// Opens any address.
    ///
    /// # Errors
    /// When the browser cannot.
    pub async fn goto(&self, address: &str) -> Outcome {
        self.client
            .goto(address)
            .await
            .map_err(|error| format!("{address}: {error}"))
    }

    /// The fragment of the address, such as `#/gearing`.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn route(&self) -> Outcome<String> {
        let hash = self.ask("return location.hash;", vec![]).await?;
        Ok(hash.as_str().unwrap_or("").to_owned())
    }

    /// Loads the page again, as a person does with the browser's own key.
    ///
    /// # Errors
    /// When no heading appears.
    pub async fn reload(&self) -> Outcome {
        self.ask("window.beforeReload = true; location.reload();", vec![])
            .await?;
        self.until("the page loads again", async || {
            let fresh = "return document.readyState === 'complete' && !window.beforeReload;";
            Ok(self
                .ask(fresh, vec![])
                .await
                .is_ok_and(|is| is == json!(true)))
        })
        .await?;
        self.wait_for("main h1").await
    }

    /// Stops the server: from here on there is no network.
    pub fn go_offline(&self) {
        if let Some(server) = self.server.borrow_mut().take() {
            server.stop();
        }
    }

    /// Waits until the reckoner says that it works without a network.
    ///
    /// # Errors
    /// When it does not within the time a page may take.
    pub async fn wait_until_kept(&self) -> Outcome {
        self.wait_for("html[data-offline=ready]").await
    }

    /// Runs a script in the page and gives what it returns.
    ///
    /// # Errors
    /// When the script throws.
    pub async fn ask(&self, script: &str, arguments: Vec<Value>) -> Outcome<Value> {
        self.client
            .execute(script, arguments)
            .await
            .map_err(|error| format!("the page did not answer: {error}"))
    }

    /// Runs a script that calls its only argument with its answer when it has one.
    ///
    /// # Errors
    /// When the script throws or does not answer.
    pub async fn ask_later(&self, script: &str) -> Outcome<Value> {
        self.client
            .execute_async(script, vec![])
            .await
            .map_err(|error| format!("the page did not answer: {error}"))
    }

    /// Waits until something is so.
    ///
    /// # Errors
    /// When it is not so in time.
    pub async fn until(&self, what: &str, mut so: impl AsyncFnMut() -> Outcome<bool>) -> Outcome {
        let begun = Instant::now();
        loop {
            if so().await? {
                return Ok(());
            }
            if begun.elapsed() > PATIENCE {
                return Err(format!("waited in vain: {what}"));
            }
            tokio::time::sleep(Duration::from_millis(40)).await;
        }
    }

    /// Whether an element with this selector is on the page.
    ///
    /// # Errors
    /// When the page does not answer.
    pub async fn has(&self, selector: &str) -> Outcome<bool> {
        Ok(self.count(selector).await? > 0)
    }

    /// How many elements with this selector are on the page.
    ///
    /// # Errors
    /// When the page does not answer.
    pub async fn count(&self, selector: &str) -> Outcome<u64> {
        let script = "return document.querySelectorAll(arguments[0]).length;";
        let count = self.ask(script, vec![json!(selector)]).await?;
        Ok(count.as_u64().unwrap_or(0))
    }

    /// Waits for an element.
    ///
    /// # Errors
    /// When it does not appear in time.
    pub async fn wait_for(&self, selector: &str) -> Outcome {
        self.until(&format!("`{selector}` appears"), async || {
            // While a page is being left it answers nothing.
            Ok(self.has(selector).await.unwrap_or(false))
        })
        .await
    }

    /// Waits until an element is gone.
    ///
    /// # Errors
    /// When it is still there.
    pub async fn wait_gone(&self, selector: &str) -> Outcome {
        self.until(&format!("`{selector}` goes"), async || {
            Ok(!self.has(selector).await?)
        })
        .await
    }
}
