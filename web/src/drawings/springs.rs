//! A spring from the side, to scale: free and loaded, before and after; its load line; the stance of the vehicle.

mod line;
mod side;
mod stance;

pub use line::LINE;
pub use side::{PLANNED, SIDE};
pub use stance::STANCE;

use super::{Paper, Table};
use crate::shown::written;
use crate::state::{Action, State};
use crate::words::{self, Phrase, filled};
use buildbook::Key;
use buildbook::sheets::springs::SpringPicture;
use std::rc::Rc;

/// The rows of the springs; the first stands there even while none is made.
pub fn springs(state: &State) -> Vec<Rc<str>> {
    let sheet = &state.findings.springs.sheet;
    sheet
        .springs
        .iter()
        .map(|spring| spring.id().into())
        .collect()
}

/// Under this key the view remembers which spring is worked on.
fn open_of(spring: &str) -> Key {
    Key::from("springs/springs").under(spring).under("open")
}

/// The spring that is worked on.
pub fn chosen(state: &State) -> Rc<str> {
    let all = springs(state);
    let open = all.iter().find(|id| state.is_open(&open_of(id)));
    open.or(all.first()).cloned().unwrap_or_else(|| "1".into())
}

/// What has to be done to work on another spring: its figures come into the band, its entries onto the page.
pub fn opening(state: &State, spring: &str) -> Vec<Action> {
    let mut actions = showing(state, spring);
    actions.push(Action::Answer(format!("springs/height/{spring}").into()));
    actions
}

/// What has to be done for the entries of another spring to come onto the page.
pub fn showing(state: &State, spring: &str) -> Vec<Action> {
    let mut actions: Vec<Action> = springs(state)
        .into_iter()
        .filter(|id| &**id != spring)
        .map(|id| open_of(&id))
        .filter(|key| state.is_open(key))
        .map(Action::Fold)
        .collect();
    let own = open_of(spring);
    if !state.is_open(&own) {
        actions.push(Action::Fold(own));
    }
    actions
}

/// What the drawings need of the spring that is worked on.
fn picture(state: &State) -> Option<&SpringPicture> {
    let spring = chosen(state);
    state
        .findings
        .springs
        .pictures
        .iter()
        .find(|picture| picture.id == spring)
}

/// The name of a spring: where it stands.
fn name_of(state: &State, spring: &str) -> String {
    let list = Key::from("springs/springs");
    words::row_name(&state.book, &list, spring, state.settings.tongue)
}

/// A result of a spring as it is shown.
fn figure(state: &State, result: &str, spring: &str, paper: &Paper) -> Option<String> {
    let id = format!("springs/{result}/{spring}");
    let figure = state.findings.result(&id)?.as_ref().ok()?;
    Some(written(figure, &paper.manner).whole())
}

/// The results as rows of a table, and as a sentence.
fn told(state: &State, results: &[&str], spring: &str, paper: &Paper) -> (Table, String) {
    let rows: Vec<Vec<String>> = results
        .iter()
        .filter_map(|result| {
            let id = format!("springs/{result}/{spring}");
            let figure = figure(state, result, spring, paper)?;
            Some(vec![words::result(&state.book, &id, paper.tongue), figure])
        })
        .collect();
    let sentence: Vec<String> = rows.iter().map(|row| row.join(" ")).collect();
    let table = Table {
        head: vec![
            paper.tongue.say(words::frame::QUANTITY).to_owned(),
            paper.tongue.say(words::vehicle::MEASURED).to_owned(),
        ],
        rows,
    };
    (table, sentence.join(", "))
}

/// A phrase of a drawing with its one part put in.
fn said(paper: &Paper, phrase: Phrase, part: &str) -> String {
    filled(paper.tongue.say(phrase), &[part.to_owned()])
}
