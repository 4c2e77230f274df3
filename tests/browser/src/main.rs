//! `cargo run -p browser-tests -- look '#/gearing' 1280x720 out.png [...]`: a picture of a page, for who writes it.

use std::process::ExitCode;

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    match browser_tests::look::look(&words) {
        Ok(()) => ExitCode::SUCCESS,
        Err(why) => {
            eprintln!("look: {why}");
            ExitCode::FAILURE
        }
    }
}
