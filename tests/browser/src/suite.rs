//! Runs every journey in one browser: `cargo test -p browser-tests [-- [--dev] part-of-a-name ...]`.
//!
//! The pages are the release, built when a source is newer; `--dev` takes the quick build instead.

use std::process::ExitCode;
use std::time::{Duration, Instant};

use browser_tests::journeys::{self, Case};
use browser_tests::{Journey, Machine, Outcome};
use xtask::bundle::{Build, up_to_date};
use xtask::steps::seconds;

/// No journey takes longer, unless something hangs.
const LIMIT: Duration = Duration::from_secs(180);

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let dev = words.iter().any(|word| word == "--dev");
    let wanted: Vec<&String> = words.iter().filter(|word| !word.starts_with('-')).collect();
    let cases: Vec<&Case> = journeys::all()
        .filter(|case| {
            wanted.is_empty() || wanted.iter().any(|part| case.name.contains(part.as_str()))
        })
        .collect();
    match run(&cases, if dev { Build::Dev } else { Build::Release }) {
        Ok((passed, failed)) => {
            println!("browser tests: {passed} passed, {failed} failed");
            if failed == 0 && passed > 0 {
                ExitCode::SUCCESS
            } else {
                ExitCode::FAILURE
            }
        }
        Err(why) => {
            eprintln!("browser tests: {why}");
            ExitCode::FAILURE
        }
    }
}

fn run(cases: &[&Case], build: Build) -> Outcome<(usize, usize)> {
    let pages = up_to_date(build)?;
    let browser = xtask::setup::browser()?;
    let runtime = tokio::runtime::Builder::new_current_thread()
        .enable_all()
        .build()
        .map_err(|error| error.to_string())?;
    runtime.block_on(async {
        let machine = Machine::start(&browser, pages).await?;
        let mut failed = 0;
        for case in cases {
            let begun = Instant::now();
            let result = tokio::time::timeout(LIMIT, (case.run)(&machine))
                .await
                .unwrap_or_else(|_| Err("did not end in time".into()));
            let time = seconds(begun.elapsed());
            match result {
                Ok(()) => println!("  ok      {} ({time})", case.name),
                Err(why) => {
                    failed += 1;
                    println!("  FAILED  {} ({time})\n      {why}", case.name);
                    last_seen(&machine, case.name).await;
                }
            }
        }
        machine.stop().await;
        Ok((cases.len() - failed, failed))
    })
}

/// What the screen showed when a journey failed, and what the console said.
async fn last_seen(machine: &Machine, name: &str) {
    let Ok(journey) = Journey::at(machine, "").await else {
        return;
    };
    for line in journey.console_errors().await.unwrap_or_default() {
        println!("      {line}");
    }
    let picture = format!("failed-{name}");
    if journey.screenshot(&picture).await.is_ok() {
        println!("      picture: target/pictures/{picture}.png");
    }
}
