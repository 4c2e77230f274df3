//! The commands, and what they are given.

mod check;
mod serve;
mod test;

use std::path::PathBuf;
use std::process::Command;

use crate::Outcome;
use crate::bundle::{self, Build};
use crate::places;
use crate::steps::{run, say, step};

const HELP: &str = "\
cargo xtask serve [--dev] [--port N]   set up what is missing, build, serve on 127.0.0.1
cargo xtask test [part ...]            run everything: unit, property, reference, scripts, browser
cargo xtask check                      formatting, clippy, house rules
cargo xtask build [--dev]              the folder to upload, with its sizes
cargo xtask bench                      how long a whole book takes to evaluate

--dev builds quickly into target/dev-pages; a server that is running shows the next build at once.
Parts of the test, for those in a hurry: unit, reference, scripts, browser.";

/// Does what the arguments say.
///
/// # Errors
/// The command's own, or the help for words that are no command.
pub fn obey(arguments: &[String]) -> Outcome {
    let mut rest: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let dev = take_flag(&mut rest, "--dev");
    let build = if dev { Build::Dev } else { Build::Release };
    let port = take_port(&mut rest)?;
    match rest.split_first() {
        Some((&"serve", [])) => serve::serve(build, port),
        Some((&"test", parts)) => test::test(parts),
        Some((&"check", [])) => check::check(),
        Some((&"build", [])) => package(build),
        Some((&"bench", extra)) => bench(extra),
        // Trunk's last step; not for people.
        Some((&"finish", [])) => finish(),
        Some((&"help", _)) | None => {
            say(HELP);
            Ok(())
        }
        _ => Err(format!("no such command\n{HELP}")),
    }
}

fn take_flag(words: &mut Vec<&str>, flag: &str) -> bool {
    let before = words.len();
    words.retain(|word| *word != flag);
    words.len() < before
}

fn take_port(words: &mut Vec<&str>) -> Outcome<Option<u16>> {
    let Some(place) = words.iter().position(|word| *word == "--port") else {
        return Ok(None);
    };
    let port = words
        .get(place + 1)
        .and_then(|word| word.parse().ok())
        .ok_or("--port wants a number from 0 to 65535")?;
    words.drain(place..=place + 1);
    Ok(Some(port))
}

fn package(build: Build) -> Outcome {
    let folder = bundle::up_to_date(build)?;
    say(format!("The folder to upload: {}", folder.display()));
    match build {
        Build::Release => bundle::weigh(&folder).map(drop),
        Build::Dev => Ok(()),
    }
}

fn bench(extra: &[&str]) -> Outcome {
    let benches = places::root().join("crates/buildbook/benches");
    if !benches.is_dir() {
        return Err("there is nothing to measure yet: crates/buildbook/benches is missing".into());
    }
    step("the benches", || {
        run(Command::new("cargo")
            .args(["bench", "--package", "buildbook", "--benches", "--"])
            .args(extra)
            .current_dir(places::root()))
    })
}

fn finish() -> Outcome {
    let staging = std::env::var_os("TRUNK_STAGING_DIR")
        .map(PathBuf::from)
        .ok_or("`finish` is called by Trunk, as the last step of a build")?;
    let release = std::env::var("TRUNK_PROFILE").is_ok_and(|profile| profile == "release");
    bundle::finish(&staging, release)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_port_is_taken_out_of_the_words() {
        let mut words = vec!["serve", "--port", "8123"];
        assert_eq!(take_port(&mut words), Ok(Some(8123)));
        assert_eq!(words, ["serve"]);
        assert!(take_port(&mut vec!["serve", "--port"]).is_err());
        assert!(take_port(&mut vec!["--port", "99999"]).is_err());
    }

    #[test]
    fn a_word_that_is_no_command_gets_the_help() {
        let why = obey(&["sreve".to_owned()]).expect_err("no such command");
        assert!(why.contains("cargo xtask serve"));
    }
}
