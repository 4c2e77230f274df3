//! Build and serve.

use crate::Outcome;
use crate::bundle::{self, Build};
use crate::server::Server;
use crate::steps::say;

/// The port that is tried first when none is asked for.
const PORT: u16 = 8380;

/// Serves the pages until the program is stopped.
pub fn serve(build: Build, port: Option<u16>) -> Outcome {
    let folder = bundle::up_to_date(build)?;
    let server = match port {
        Some(port) => Server::start(&folder, port)?,
        // Somebody else's port is no reason to stop.
        None => Server::start(&folder, PORT).or_else(|_| Server::start(&folder, 0))?,
    };
    say(format!(
        "\nThe reckoner is at {}  (Ctrl-C stops it)",
        server.url()
    ));
    loop {
        std::thread::park();
    }
}
