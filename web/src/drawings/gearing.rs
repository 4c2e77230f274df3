//! Gearing's drawings: up through the gears, and pull against road load; before beside now.

mod pull;
mod speeds;

pub use pull::PULL;
pub use speeds::SPEEDS;

use super::Paper;
use crate::shown::plain;
use crate::state::State;
use crate::words::{Phrase, filled, gearing};
use buildbook::sheets::gearing::{GearFound, GearingFindings};
use measure::{Kind, Unit};

/// What a sheet of gearing was when it was kept as before.
fn before(state: &State) -> Option<&GearingFindings> {
    Some(&state.befores.sheet("gearing")?.1.gearing)
}

/// A gear's name: its place, and the overdrive where that is in.
fn gear_name(gear: &GearFound, paper: &Paper) -> String {
    let name = filled(paper.tongue.say(gearing::GEAR), &[gear.place.to_string()]);
    with_overdrive(gear, name, paper)
}

/// What stands at a gear's line: its number.
fn gear_mark(gear: &GearFound, paper: &Paper) -> String {
    with_overdrive(gear, gear.place.to_string(), paper)
}

fn with_overdrive(gear: &GearFound, name: String, paper: &Paper) -> String {
    if gear.overdrive {
        filled(paper.tongue.say(gearing::WITH_OVERDRIVE), &[name])
    } else {
        name
    }
}

/// The unit in which a kind is shown on this paper.
fn unit(kind: Kind, paper: &Paper) -> &'static Unit {
    paper.manner.unit(kind)
}

/// The name of an axis with its unit.
fn axis(phrase: Phrase, kind: Kind, paper: &Paper) -> String {
    filled(
        paper.tongue.say(phrase),
        &[unit(kind, paper).symbol.to_owned()],
    )
}

/// A whole number with the marks of the reader's country.
fn whole(value: f64, paper: &Paper) -> String {
    plain(value, Kind::Count, &paper.manner)
}

/// A value in its kind, put into a phrase.
fn marked(phrase: Phrase, si: f64, kind: Kind, paper: &Paper) -> String {
    filled(paper.tongue.say(phrase), &[rounded(si, kind, paper)])
}

/// A value rounded to what a drawing can show: three figures.
fn rounded(si: f64, kind: Kind, paper: &Paper) -> String {
    let unit = unit(kind, paper);
    let value = unit.from_si(si);
    let step = 10f64.powf((value.abs().max(1e-9).log10().floor() - 2.0).min(0.0));
    plain(
        unit.to_si((value / step).round() * step),
        kind,
        &paper.manner,
    )
}
