//! Long steps, told as they go: what is running, and how long it took.

use std::io::{BufRead, BufReader, Write};
use std::path::PathBuf;
use std::process::{Command, Stdio};
use std::sync::mpsc::{RecvTimeoutError, channel};
use std::time::{Duration, Instant};

use crate::Outcome;

/// A line of progress is printed this often at most.
const BEAT: Duration = Duration::from_secs(15);

/// Says something on a line of its own.
pub fn say(line: impl AsRef<str>) {
    println!("{}", line.as_ref());
    let _ = std::io::stdout().flush();
}

/// Seconds, as people read them.
#[must_use]
pub fn seconds(time: Duration) -> String {
    let whole = time.as_secs();
    if whole >= 60 {
        format!("{} min {:02} s", whole / 60, whole % 60)
    } else {
        format!("{:.1} s", time.as_secs_f64())
    }
}

/// Runs a step and says how long it took.
///
/// # Errors
/// The step's own.
pub fn step<T>(name: &str, work: impl FnOnce() -> Outcome<T>) -> Outcome<T> {
    say(format!("· {name}"));
    let begun = Instant::now();
    let result = work();
    let word = if result.is_ok() {
        "done in"
    } else {
        "failed after"
    };
    say(format!("  {name}: {word} {}", seconds(begun.elapsed())));
    result
}

/// Runs a command whose output goes straight to the terminal.
///
/// # Errors
/// When it cannot be started or does not end well.
pub fn run(command: &mut Command) -> Outcome {
    let name = told(command);
    let status = command
        .status()
        .map_err(|error| format!("{name}: {error}"))?;
    if status.success() {
        Ok(())
    } else {
        Err(format!("{name}: {status}"))
    }
}

/// Runs a long command quietly: its last line is shown every so often, all of it when it fails.
///
/// # Errors
/// When it cannot be started or does not end well.
pub fn run_quietly(command: &mut Command) -> Outcome {
    let name = told(command);
    let mut child = command
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .map_err(|error| format!("{name}: {error}"))?;
    let (tell, lines) = channel::<String>();
    let streams: [Option<Box<dyn std::io::Read + Send>>; 2] = [
        child.stdout.take().map(|stream| Box::new(stream) as _),
        child.stderr.take().map(|stream| Box::new(stream) as _),
    ];
    for stream in streams.into_iter().flatten() {
        let tell = tell.clone();
        std::thread::spawn(move || {
            for line in BufReader::new(stream).lines().map_while(Result::ok) {
                if tell.send(line).is_err() {
                    break;
                }
            }
        });
    }
    drop(tell);
    let begun = Instant::now();
    let mut told = begun;
    let mut all: Vec<String> = Vec::new();
    loop {
        match lines.recv_timeout(Duration::from_secs(1)) {
            Ok(line) => all.push(line),
            Err(RecvTimeoutError::Timeout) => {}
            Err(RecvTimeoutError::Disconnected) => break,
        }
        if told.elapsed() >= BEAT {
            told = Instant::now();
            let last = all.last().map_or("", |line| line.trim());
            let last: String = last.chars().take(70).collect();
            say(format!("    {:>4} s  {last}", begun.elapsed().as_secs()));
        }
    }
    let status = child.wait().map_err(|error| format!("{name}: {error}"))?;
    if status.success() {
        return Ok(());
    }
    for line in &all {
        eprintln!("    {line}");
    }
    Err(format!("{name}: {status}"))
}

/// What a command prints, trimmed; nothing when it cannot be run or ends badly.
#[must_use]
pub fn printed(command: &mut Command) -> Option<String> {
    let output = command.stdin(Stdio::null()).output().ok()?;
    output
        .status
        .success()
        .then(|| String::from_utf8_lossy(&output.stdout).trim().to_owned())
}

/// The program of this name on the PATH.
#[must_use]
pub fn on_path(name: &str) -> Option<PathBuf> {
    std::env::split_paths(&std::env::var_os("PATH")?)
        .map(|folder| folder.join(name))
        .find(|path| path.is_file())
}

fn told(command: &Command) -> String {
    let mut words = vec![command.get_program().to_string_lossy().into_owned()];
    words.extend(
        command
            .get_args()
            .map(|word| word.to_string_lossy().into_owned()),
    );
    words.join(" ")
}
