//! The sets to be had, side by side with the fitted one.

use crate::desk::{use_settings, use_slice};
use crate::state::State;
use crate::widgets::ResultFigure;
use crate::words::{self, Phrase, Tongue, filled, gearing};
use buildbook::sheets::gearing::CandidateFound;
use trade::gearing::{Meeting, Teeth};
use yew::prelude::*;

/// The rows of figures: the candidate's result, the fitted set's, and the words.
const ROWS: [(&str, Option<&str>, Phrase); 6] = [
    ("revs", Some("gearing/cruise"), gearing::REVS_HEAD),
    ("change", None, gearing::CHANGE_HEAD),
    ("per_1000", Some("gearing/per_1000"), gearing::PER_1000_HEAD),
    ("top", Some("gearing/top_speed"), gearing::TOP_HEAD),
    ("hill", Some("gearing/steepest"), gearing::HILL_HEAD),
    ("dial", Some("gearing/dial_shown"), gearing::DIAL_HEAD),
];

/// What stands in one column.
#[derive(Clone, PartialEq)]
struct Set {
    id: Option<String>,
    name: String,
    teeth: String,
    meeting: String,
    price: String,
    goes_in: String,
}

fn teeth_said(teeth: Option<Teeth>) -> String {
    teeth.map_or_else(
        || "—".to_owned(),
        |teeth| format!("{}/{}", teeth.crown, teeth.pinion),
    )
}

fn meeting_said(meeting: Option<Meeting>, tongue: Tongue) -> String {
    meeting.map_or_else(
        || "—".to_owned(),
        |meeting| {
            let phrase = if meeting.hunting() {
                gearing::HUNTS
            } else {
                gearing::DOES_NOT_HUNT
            };
            filled(tongue.say(phrase), &[meeting.crown_turns.to_string()])
        },
    )
}

fn goes_in_said(candidate: &CandidateFound, tongue: Tongue) -> String {
    let named = |fits: Option<bool>| -> String {
        let points = candidate.fits.iter().filter(|(_, found)| *found == fits);
        let points =
            points.map(|(name, _)| words::label(&format!("gearing/candidates/1/{name}"), tongue));
        points.collect::<Vec<_>>().join(", ")
    };
    match candidate.goes_in() {
        Some(true) => tongue.say(gearing::ALL_FITS).to_owned(),
        Some(false) => filled(tongue.say(gearing::DOES_NOT_FIT), &[named(Some(false))]),
        None => filled(tongue.say(gearing::NOT_LOOKED_AT), &[named(None)]),
    }
}

fn sets(state: &State) -> Vec<Set> {
    let tongue = state.settings.tongue;
    let findings = &state.findings.gearing;
    if findings.candidates.is_empty() {
        return Vec::new();
    }
    let (mark, home) = (state.settings.manner().mark, state.book.currency());
    let fitted = findings.sheet.axle.value().and_then(|axle| axle.teeth);
    let mut sets = vec![Set {
        id: None,
        name: tongue.say(gearing::FITTED).to_owned(),
        teeth: teeth_said(fitted),
        meeting: meeting_said(fitted.map(|teeth| teeth.meeting()), tongue),
        price: "—".to_owned(),
        goes_in: "—".to_owned(),
    }];
    sets.extend(findings.candidates.iter().map(|candidate| {
        Set {
            id: Some(candidate.id.to_string()),
            name: words::row_name(
                &state.book,
                &"gearing/candidates".into(),
                &candidate.id,
                tongue,
            ),
            teeth: teeth_said(candidate.teeth),
            meeting: meeting_said(candidate.meeting, tongue),
            price: candidate
                .price
                .map_or_else(|| "—".to_owned(), |price| price.shown(mark, home)),
            goes_in: goes_in_said(candidate, tongue),
        }
    }));
    sets
}

/// The table: a column a set, the fitted one first.
#[component]
pub fn BesideTable() -> Html {
    let sets = use_slice(sets).unwrap_or_default();
    let tongue = use_settings().tongue;
    if sets.is_empty() {
        return html! { <p class="muted">{ tongue.say(gearing::NO_SETS) }</p> };
    }
    let words = |phrase: Phrase, cell: fn(&Set) -> &String| {
        let cells = sets.iter().map(|set| html! { <td>{ cell(set) }</td> });
        html! { <tr><th scope="row" class="nowrap">{ tongue.say(phrase) }</th>{ cells.collect::<Html>() }</tr> }
    };
    let figures = ROWS.iter().map(|(what, fitted, phrase)| {
        let cells = sets.iter().map(|set| {
            let id = match &set.id {
                Some(id) => Some(format!("gearing/candidate_{what}/{id}")),
                None => fitted.map(str::to_owned),
            };
            html! { <td>{ id.map(|id| html! { <ResultFigure id={AttrValue::from(id)} /> }) }</td> }
        });
        html! { <tr><th scope="row" class="nowrap">{ tongue.say(*phrase) }</th>{ cells.collect::<Html>() }</tr> }
    });
    html! {
        <div class="table-hold" tabindex="0" role="group" aria-label={tongue.say(gearing::WIDE_TABLE)}>
            <table class="table" data-table="gearing/beside">
                <thead><tr><td></td>{ sets.iter().map(|set| html! { <th scope="col">{ &set.name }</th> }).collect::<Html>() }</tr></thead>
                <tbody>
                    { words(gearing::TEETH, |set| &set.teeth) }
                    { figures.collect::<Html>() }
                    { words(gearing::TEETH_MEET, |set| &set.meeting) }
                    { words(gearing::GOES_IN, |set| &set.goes_in) }
                    { words(gearing::PRICE, |set| &set.price) }
                </tbody>
            </table>
        </div>
    }
}
