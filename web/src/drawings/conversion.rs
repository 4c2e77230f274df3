//! The steering seen from above, straight ahead and on full lock; bump steer over the axle's travel; the Ackermann error;
//! the brake pedal and its forces; a cable or pipe stretched out straight.

mod above;
mod curves;
mod pedal;
mod way;

pub use above::{ABOVE, LOCK};
pub use curves::{ACKERMANN, BUMP};
pub use pedal::PEDAL;
pub use way::WAY;

use super::{Paper, Table};
use crate::shown::{plain, written};
use crate::state::State;
use crate::words::{self, conversion as said, frame};
use measure::Kind;

/// Results as they were and on the new side, as rows, and the same in a sentence.
fn compared(state: &State, results: &[&str], paper: &Paper) -> (Table, String) {
    let figure = |id: String| {
        let figure = state.findings.result(&id)?.as_ref().ok()?;
        Some(written(figure, &paper.manner).whole())
    };
    let rows = results.iter().filter_map(|name| {
        let [was, now] = ["was", "now"].map(|way| figure(format!("conversion/{name}/{way}")));
        if was.is_none() && now.is_none() {
            return None;
        }
        let told = words::result(
            &state.book,
            &format!("conversion/{name}/change"),
            paper.tongue,
        );
        let told = told.split(": ").next().unwrap_or_default().to_owned();
        let dash = || "—".to_owned();
        Some(vec![
            told,
            was.unwrap_or_else(dash),
            now.unwrap_or_else(dash),
        ])
    });
    let rows: Vec<Vec<String>> = rows.collect();
    let sentence: Vec<String> = rows.iter().map(|row| row.join(" ")).collect();
    let head =
        [frame::QUANTITY, said::WAS, said::NOW].map(|head| paper.tongue.say(head).to_owned());
    (
        Table {
            head: head.to_vec(),
            rows,
        },
        sentence.join(", "),
    )
}

/// An angle without more digits than the eye can use: to a step in degrees.
fn about(angle: f64, step: f64, paper: &Paper) -> String {
    let rounded = (angle.to_degrees() / step).round() * step;
    // The step is a decimal one, so the last binary digits go.
    let rounded = (rounded * 1e6).round() / 1e6;
    plain(rounded.to_radians(), Kind::Angle, &paper.manner)
}
