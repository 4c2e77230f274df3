//! Runs every test there is, and says at the end how many.

use std::io::{BufRead, BufReader};
use std::path::Path;
use std::process::{Command, Stdio};

use crate::Outcome;
use crate::bundle::{self, Build};
use crate::places;
use crate::setup;
use crate::steps::{say, step};

const PARTS: [&str; 4] = ["unit", "reference", "scripts", "browser"];

/// Runs the parts named, or all.
pub fn test(parts: &[&str]) -> Outcome {
    if let Some(unknown) = parts.iter().find(|part| !PARTS.contains(part)) {
        return Err(format!(
            "`{unknown}` is no part of the test: {}",
            PARTS.join(", ")
        ));
    }
    let wanted = |part: &str| parts.is_empty() || parts.contains(&part);
    // What is missing is found out at once, not after a quarter of an hour.
    let python = if wanted("scripts") {
        Some(setup::reference_libraries()?)
    } else {
        None
    };
    if wanted("browser") {
        let browser = setup::browser()?;
        say(format!("· browser: {}", browser.version));
        setup::build_tools()?;
    }
    let mut closing = Vec::new();
    let mut failed = Vec::new();
    let mut note = |part: &str, result: Outcome<Vec<String>>| match result {
        Ok(lines) => closing.extend(lines.into_iter().map(|line| format!("{part}: {line}"))),
        Err(why) => failed.push(format!("{part}: {why}")),
    };
    if wanted("unit") {
        note("unit and property", step("unit and property tests", unit));
    }
    if wanted("reference") {
        note("reference", step("reference checks", reference));
    }
    if let Some(python) = python {
        note(
            "scripts",
            step("the reference libraries compute again", || scripts(&python)),
        );
    }
    if wanted("browser") {
        note("browser", browser());
        note("weight", step("what the release weighs", weight));
    }
    say("\nIn all:");
    for line in &closing {
        say(format!("  {line}"));
    }
    if parts.is_empty() && failed.is_empty() {
        say("  everything passed");
    }
    if failed.is_empty() {
        Ok(())
    } else {
        Err(format!("failed\n  {}", failed.join("\n  ")))
    }
}

fn cargo(arguments: &[&str]) -> Command {
    let mut command = Command::new("cargo");
    command.args(arguments).current_dir(places::root());
    command
}

fn unit() -> Outcome<Vec<String>> {
    let lines = told(cargo(&[
        "test",
        "--workspace",
        "--exclude",
        "browser-tests",
        "--exclude",
        "reference-tests",
        "--no-fail-fast",
    ]))?;
    let counts = Counts::of(&lines);
    let own = told(cargo(&[
        "test",
        "--package",
        "reference-tests",
        "--lib",
        "--test",
        "workings",
    ]))?;
    let own = Counts::of(&own);
    let all = Counts {
        passed: counts.passed + own.passed,
        ignored: counts.ignored + own.ignored,
    };
    if all.ignored > 0 {
        return Err(format!("{} tests are marked to be skipped", all.ignored));
    }
    Ok(vec![format!("{} tests passed", all.passed)])
}

fn reference() -> Outcome<Vec<String>> {
    let lines = told(cargo(&[
        "test",
        "--quiet",
        "--package",
        "reference-tests",
        "--test",
        "published-values",
    ]))?;
    // The table of counts, from its heading on.
    let table: Vec<String> = lines
        .into_iter()
        .skip_while(|line| !line.starts_with("subject"))
        .filter(|line| !line.is_empty())
        .collect();
    if table.is_empty() {
        return Err("the runner of the reference checks printed no counts".into());
    }
    Ok(table)
}

fn scripts(python: &Path) -> Outcome<Vec<String>> {
    let folder = places::root().join("tests/reference/scripts");
    // One script measures files that our own code writes: they are written anew first.
    let written = places::root().join("target/templates");
    told(cargo(&[
        "run",
        "--quiet",
        "--package",
        "reference-tests",
        "--bin",
        "template_files",
        "--",
        &written.to_string_lossy(),
    ]))?;
    let mut scripts: Vec<_> = std::fs::read_dir(&folder)
        .map_err(|error| error.to_string())?
        .filter_map(|entry| entry.ok().map(|entry| entry.path()))
        .filter(|path| path.extension().is_some_and(|ending| ending == "py"))
        .filter(|path| path.file_name().is_some_and(|name| name != "recompute.py"))
        .collect();
    scripts.sort();
    let mut closing = Vec::new();
    let mut failed = Vec::new();
    for script in &scripts {
        let mut command = Command::new(python);
        command.arg(script).current_dir(&folder);
        command.env("PYTHONDONTWRITEBYTECODE", "1");
        match told(command) {
            Ok(lines) => closing.extend(lines.last().cloned()),
            Err(why) => failed.push(why),
        }
    }
    if scripts.is_empty() {
        return Err(format!("no script in {}", folder.display()));
    }
    if failed.is_empty() {
        Ok(closing)
    } else {
        Err(failed.join("; "))
    }
}

fn browser() -> Outcome<Vec<String>> {
    bundle::up_to_date(Build::Release)?;
    step("browser tests, on the release as served", || {
        let lines = told(cargo(&["test", "--package", "browser-tests"]))?;
        let closing: Vec<String> = lines
            .into_iter()
            .filter(|line| line.starts_with("browser tests: "))
            .collect();
        if closing.is_empty() {
            return Err("the browser tests printed no closing line".into());
        }
        Ok(closing)
    })
}

fn weight() -> Outcome<Vec<String>> {
    bundle::weigh(&bundle::up_to_date(Build::Release)?).map(|told| vec![told])
}

/// Runs a command, passes its output on line by line and keeps it.
fn told(mut command: Command) -> Outcome<Vec<String>> {
    let name = format!("{command:?}").replace('"', "");
    let mut child = command
        .stdout(Stdio::piped())
        .spawn()
        .map_err(|error| format!("{name}: {error}"))?;
    let mut lines = Vec::new();
    if let Some(stream) = child.stdout.take() {
        for line in BufReader::new(stream).lines().map_while(Result::ok) {
            say(&line);
            lines.push(line);
        }
    }
    let status = child.wait().map_err(|error| format!("{name}: {error}"))?;
    if status.success() {
        Ok(lines)
    } else {
        Err(format!("{name}: {status}"))
    }
}

/// What the lines `test result: ok. 12 passed; 0 failed; 1 ignored; ...` add up to.
#[derive(Debug, Default, PartialEq)]
struct Counts {
    passed: usize,
    ignored: usize,
}

impl Counts {
    fn of(lines: &[String]) -> Self {
        let mut counts = Self::default();
        for line in lines.iter().filter(|line| line.starts_with("test result:")) {
            let count = |word: &str| {
                line.split([';', '.'])
                    .find_map(|part| part.trim().strip_suffix(word)?.trim().parse().ok())
                    .unwrap_or(0)
            };
            counts.passed += count("passed");
            counts.ignored += count("ignored");
        }
        counts
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn closing_lines_of_the_runner_are_added_up() {
        let lines = [
            "running 2 tests",
            "test result: ok. 12 passed; 0 failed; 1 ignored; 0 measured; 0 filtered out; finished in 0.1s",
            "test result: ok. 3 passed; 0 failed; 0 ignored; 0 measured; 0 filtered out; finished in 0.0s",
        ]
        .map(str::to_owned);
        assert_eq!(
            Counts::of(&lines),
            Counts {
                passed: 15,
                ignored: 1
            }
        );
    }
}
