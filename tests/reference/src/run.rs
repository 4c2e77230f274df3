//! Runs every reference check, or those whose subject or id is named: `cargo test -p reference-tests -- gearing`.

use std::path::Path;
use std::process::ExitCode;

use reference_tests::{Report, SUBJECTS, Subject, outcome};

fn main() -> ExitCode {
    let filters: Vec<String> = std::env::args()
        .skip(1)
        .filter(|argument| !argument.starts_with('-'))
        .collect();
    let mut report = Report::default();
    let mut failures = Vec::new();
    for subject in SUBJECTS {
        run(subject, &filters, &mut report, &mut failures);
    }
    for failure in &failures {
        eprintln!("{failure}");
    }
    let (ran, passed) = report.total();
    println!("\nReference checks, by subject and by how the value is known:\n{report}");
    if ran == 0 {
        eprintln!("no reference check ran");
    }
    println!(
        "reference checks: {passed} passed, {} failed",
        failures.len()
    );
    if failures.is_empty() && ran > 0 {
        ExitCode::SUCCESS
    } else {
        ExitCode::FAILURE
    }
}

fn run(
    subject: &'static Subject,
    filters: &[String],
    report: &mut Report,
    failures: &mut Vec<String>,
) {
    let whole = filters.is_empty() || filters.iter().any(|filter| filter == subject.name);
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("{}.toml", subject.name));
    let checks = match std::fs::read_to_string(&path)
        .map_err(|error| error.to_string())
        .and_then(|data| subject.checks(&data))
    {
        Ok(checks) => checks,
        Err(why) => {
            if whole {
                failures.push(format!("{}: {why}", subject.name));
            }
            return;
        }
    };
    for check in &checks {
        if !whole && !filters.contains(&check.id) {
            continue;
        }
        let result = outcome(subject, check);
        report.count(subject.name, check.held, result.is_ok());
        if let Err(why) = result {
            failures.push(format!(
                "{} {} ({}): {why}\n    {} [{}]",
                subject.name, check.id, check.what, check.source, check.of
            ));
        }
    }
}
