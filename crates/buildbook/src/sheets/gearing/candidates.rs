//! Other crown wheels and pinions beside the fitted one.

use std::rc::Rc;

use measure::{Figure, Kind, Money, Ratio, difference};
use trade::gearing::{Meeting, Teeth, engine_speed, speed_per_1000};

use super::dial::Dial;
use super::gears::Line;
use super::pull::{Pulling, steeper};
use super::{CandidateRow, teeth};
use crate::key::joined;
use crate::{All, Found, Lack, Purchase, Rank, Remark};

/// A candidate as the page shows it.
#[derive(Debug, Clone)]
pub struct CandidateFound {
    /// The row's id: its results end in it.
    pub id: Rc<str>,
    /// Its name.
    pub name: Option<Rc<str>>,
    /// Its teeth, where those were typed.
    pub teeth: Option<Teeth>,
    /// How they meet.
    pub meeting: Option<Meeting>,
    /// Its price.
    pub price: Option<Money>,
    /// What was found to fit, and what not, by the names of the fields.
    pub fits: Vec<(&'static str, Option<bool>)>,
    /// What it does to the engine speed at the cruise, beside the fitted set.
    pub change: Option<Figure>,
}

impl CandidateFound {
    /// Whether it goes in: no where any point does not fit, yes where all do, unknown else.
    #[must_use]
    pub fn goes_in(&self) -> Option<bool> {
        if self.fits.iter().any(|(_, fits)| *fits == Some(false)) {
            return Some(false);
        }
        self.fits
            .iter()
            .all(|(_, fits)| *fits == Some(true))
            .then_some(true)
    }
}

/// Each candidate's results, beside the fitted set's.
pub(super) fn show(
    found: &mut Found,
    line: &Line,
    pulling: &Pulling,
    dial: &Dial,
) -> Vec<CandidateFound> {
    let rows: Vec<&CandidateRow> = line
        .sheet
        .candidates
        .iter()
        .filter(|row| !row.teeth.is_blank())
        .collect();
    rows.into_iter()
        .map(|row| candidate(found, line, pulling, dial, row))
        .collect()
}

fn candidate(
    found: &mut Found,
    line: &Line,
    pulling: &Pulling,
    dial: &Dial,
    row: &CandidateRow,
) -> CandidateFound {
    let id = row.id();
    let axle = row.teeth.ask().map(|axle| axle.ratio.clone());
    let place = |what: &str| format!("gearing/candidate_{what}/{id}");
    found.show(place("ratio"), Kind::Ratio, &axle);
    let top = line.top().and_then(|gear| {
        (line.train_in(gear), axle.clone(), gear.ratio.clone())
            .all()
            .map(|(train, axle, ratio)| train.with_axle(axle).overall(&ratio))
    });
    let on_road = (line.circumference.clone(), top).all();
    let per_1000 = on_road
        .clone()
        .map(|(circumference, overall)| speed_per_1000(&circumference, &overall));
    found.show(place("per_1000"), Kind::Speed, &per_1000);
    let revs = (on_road, line.sheet.road_speed.ask())
        .all()
        .map(|((circumference, overall), speed)| engine_speed(&circumference, speed, &overall));
    found.show(place("revs"), Kind::Rotation, &revs);
    show_pull(found, line, pulling, &axle, id);
    let shown = (axle, line.train.clone(), line.sheet.road_speed.ask())
        .all()
        .and_then(|(axle, train, speed)| {
            dial.shown(line, speed, &train.with_axle(axle).from_shaft())
        });
    found.show(place("dial"), Kind::Speed, &shown);
    let change = found
        .figure(&place("revs"))
        .and_then(|now| Some(difference(found.figure("gearing/cruise")?, now)));
    if let Some(change) = &change {
        found.put(place("change"), Ok(change.clone()));
    }
    let candidate = told(row, change);
    remark(found, row, &candidate);
    buy(found, row, &candidate);
    candidate
}

/// Top speed and steepest hill with the candidate in.
fn show_pull(
    found: &mut Found,
    line: &Line,
    pulling: &Pulling,
    axle: &Result<Ratio, Lack>,
    id: &str,
) {
    let mut best: Option<measure::Speed> = None;
    let mut steepest = None;
    let mut lack = None;
    for (gear, fitted) in line.gears.iter().zip(&pulling.pulls) {
        let overall = (line.train_in(gear), axle.clone(), gear.ratio.clone())
            .all()
            .map(|(train, axle, ratio)| train.with_axle(axle).overall(&ratio));
        let pull = (fitted.clone(), overall)
            .all()
            .map(|(fitted, overall)| trade::gearing::Pull { overall, ..fitted });
        match pulling.top_speed(&pull) {
            Ok(top) if best.as_ref().is_none_or(|old| top.value() > old.value()) => {
                best = Some(top);
            }
            Err(why) => lack = lack.or(Some(why)),
            Ok(_) => {}
        }
        let hill = pulling.hill(&pull).map(|hill| hill.slope);
        steepest = Some(steeper(steepest, hill));
    }
    let lack = lack.unwrap_or_else(|| Lack::needs(["gearing/gears/1/ratio".into()]));
    found.show(
        joined(&["gearing/candidate_top", id]),
        Kind::Speed,
        &best.ok_or_else(|| lack.clone()),
    );
    found.show(
        joined(&["gearing/candidate_hill", id]),
        Kind::Slope,
        &pulling.held_by_grip(steepest.unwrap_or(Err(lack))),
    );
}

fn told(row: &CandidateRow, change: Option<Figure>) -> CandidateFound {
    let teeth = teeth(&row.teeth);
    let fits = [
        ("splines", &row.splines),
        ("bearings", &row.bearings),
        ("offset", &row.offset),
        ("carrier", &row.carrier),
        ("bolts", &row.bolts),
        ("strength", &row.strength),
    ];
    CandidateFound {
        id: row.id().into(),
        name: row.name.value().filter(|name| !name.is_empty()).cloned(),
        teeth,
        meeting: teeth.map(|teeth| teeth.meeting()),
        price: row.price.value().copied(),
        fits: fits
            .map(|(name, given)| (name, given.value().copied()))
            .to_vec(),
        change,
    }
}

fn name(candidate: &CandidateFound) -> Rc<str> {
    let teeth = candidate
        .teeth
        .map(|teeth| format!("{}/{}", teeth.crown, teeth.pinion));
    match (&candidate.name, teeth) {
        (Some(name), _) => Rc::clone(name),
        (None, Some(teeth)) => teeth.into(),
        (None, None) => candidate.id.clone(),
    }
}

fn remark(found: &mut Found, row: &CandidateRow, candidate: &CandidateFound) {
    if candidate.goes_in() == Some(false) {
        let rank = if row.chosen.value() == Some(&true) {
            Rank::Warning
        } else {
            Rank::Caution
        };
        found.remark(Remark::new(rank, "candidate_does_not_fit").naming(name(candidate)));
    } else if candidate.goes_in().is_none() && row.chosen.value() == Some(&true) {
        found.remark(Remark::new(Rank::Caution, "candidate_unchecked").naming(name(candidate)));
    }
    if candidate.meeting.is_some_and(|meeting| !meeting.hunting()) {
        found.remark(Remark::new(Rank::Remark, "candidate_not_hunting").naming(name(candidate)));
    }
}

/// The chosen set goes to the costs.
fn buy(found: &mut Found, row: &CandidateRow, candidate: &CandidateFound) {
    if let (Some(&true), Some(price)) = (row.chosen.value(), candidate.price) {
        let id = format!("axle-set-{}", row.id());
        found
            .purchases
            .push(Purchase::packs("gearing", id, name(candidate), 1, price));
    }
}
