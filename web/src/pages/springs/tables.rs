//! The tables of one spring: both methods beside each other, the stress in each leaf, what the work does.

use super::SPRINGS;
use crate::desk::{use_settings, use_slice, use_tongue};
use crate::state::State;
use crate::widgets::{column_cell, column_head};
use crate::words::{self, Phrase, frame, springs as said};
use buildbook::Key;
use measure::Kind;
use std::rc::Rc;
use yew::prelude::*;

/// The props of the tables.
#[derive(Properties, PartialEq)]
pub struct SpringProps {
    /// The row of the spring.
    pub spring: AttrValue,
}

fn has(state: &State, result: &str, spring: &str) -> bool {
    let known = state.findings.result(&format!("springs/{result}/{spring}"));
    known.is_some_and(Result::is_ok)
}

fn cell(result: &str, row: &str) -> Html {
    column_cell(format!("springs/{result}/{row}"), false)
}

fn head(cells: &[&str]) -> Html {
    let cells = cells
        .iter()
        .map(|said| html! { <th scope="col">{ *said }</th> });
    html! { <thead><tr>{ cells.collect::<Html>() }</tr></thead> }
}

/// A table that may be wider than the screen: it can be moved by the keys too.
fn held(title: &'static str, head: Html, rows: Html) -> Html {
    html! {
        <div class="table-hold" tabindex="0" role="group" aria-label={title}>
            <table class="table">{ head }<tbody>{ rows }</tbody></table>
        </div>
    }
}

fn panel(id: &str, title: &str, body: Html) -> Html {
    html! {
        <section class="panel" aria-labelledby={id.to_owned()}>
            <div class="panel-head"><h2 class="ruled" id={id.to_owned()}>{ title }</h2></div>
            { body }
        </section>
    }
}

/// The rate by each method.
#[component]
pub fn Methods(props: &SpringProps) -> Html {
    let spring = props.spring.clone();
    let known = {
        let spring = spring.clone();
        use_slice(move |state| {
            let rows: [(&'static str, Phrase); 6] = [
                ("rate_press", said::BY_PRESS),
                ("rate_handbook", said::BY_HANDBOOK),
                ("rate_beam", said::BY_BEAM),
                ("methods_differ", said::DIFFER),
                ("rate_tight", said::BY_TIGHT),
                ("rate_free", said::BY_FREE),
            ];
            let rows = rows.into_iter().filter(|(id, _)| has(state, id, &spring));
            rows.collect::<Vec<_>>()
        })
    };
    let tongue = use_tongue();
    let Some(known) = known.filter(|known| !known.is_empty()) else {
        return html! {};
    };
    let rows = known.into_iter().map(|(result, phrase)| {
        html! { <tr key={result}><th scope="row">{ tongue.say(phrase) }</th>{ cell(result, &spring) }</tr> }
    });
    let head = head(&[tongue.say(said::BY_WHAT), tongue.say(said::RATE)]);
    let body = html! {
        <>
            { held(tongue.say(said::METHODS), head, rows.collect()) }
            <p class="muted">{ tongue.say(said::METHODS_SAID) }</p>
        </>
    };
    panel("springs-methods", tongue.say(said::METHODS), body)
}

/// The leaves of a spring that have stresses, with their names.
fn leaves(state: &State, spring: &str) -> Vec<(Rc<str>, String)> {
    let list = Key::from(SPRINGS).under(spring).under("leaves");
    let pictures = &state.findings.springs.pictures;
    let Some(picture) = pictures.iter().find(|picture| &*picture.id == spring) else {
        return Vec::new();
    };
    let known = picture
        .leaf_ids
        .iter()
        .filter(|leaf| has(state, "stress", &format!("{spring}/{leaf}")));
    known
        .map(|leaf| {
            let name = words::row_name(&state.book, &list, leaf, state.settings.tongue);
            (Rc::clone(leaf), name)
        })
        .collect()
}

/// The columns of the table of stresses.
const COLUMNS: [(&str, Phrase, Option<Phrase>); 7] = [
    ("nip", said::NIP, Some(said::BY_HANDBOOK)),
    ("stress", said::UNDER_LOAD, Some(said::BY_HANDBOOK)),
    ("stress_bump", said::BUMP, Some(said::BY_HANDBOOK)),
    ("used", said::USED, None),
    ("used_bump", said::USED_BUMP, None),
    ("stress_beam", said::UNDER_LOAD, Some(said::BY_BEAM)),
    ("stress_beam_bump", said::BUMP, Some(said::BY_BEAM)),
];

/// The stress in each leaf.
#[component]
pub fn Stresses(props: &SpringProps) -> Html {
    let spring = props.spring.clone();
    let known = {
        let spring = spring.clone();
        use_slice(move |state| {
            let leaves = leaves(state, &spring);
            let columns: Vec<usize> = (0..COLUMNS.len())
                .filter(|at| {
                    let result = COLUMNS[*at].0;
                    leaves
                        .iter()
                        .any(|(leaf, _)| has(state, result, &format!("{spring}/{leaf}")))
                })
                .collect();
            (leaves, columns)
        })
    };
    let settings = use_settings();
    let tongue = settings.tongue;
    let Some((leaves, columns)) = known.filter(|(leaves, _)| !leaves.is_empty()) else {
        return html! {};
    };
    // The unit of a whole column stands in its heading: six columns of it would not fit a tablet.
    let unit = settings.manner().unit(Kind::Stress).symbol;
    let heads = columns.iter().map(|at| match COLUMNS[*at] {
        (_, what, Some(by)) => {
            let by = tongue.say(by).to_ascii_lowercase();
            column_head(format!("{}, {by}", tongue.say(what)), Some(unit))
        }
        (_, what, None) => column_head(tongue.say(what), None),
    });
    let head = html! {
        <thead><tr>{ column_head(tongue.say(said::LEAF), None) }{ for heads }</tr></thead>
    };
    let rows = leaves.iter().map(|(leaf, name)| {
        let cells = columns.iter().map(|at| {
            let (result, _, by) = COLUMNS[*at];
            column_cell(format!("springs/{result}/{spring}/{leaf}"), by.is_some())
        });
        html! { <tr key={leaf.to_string()}><th scope="row">{ name }</th>{ cells.collect::<Html>() }</tr> }
    });
    let body = html! {
        <>
            { held(tongue.say(said::STRESSES), head, rows.collect()) }
            <p class="muted">{ tongue.say(said::STRESS_SAID) }</p>
        </>
    };
    panel("springs-stresses", tongue.say(said::STRESSES), body)
}

/// What the planned work does: as it stands, after it, the change.
#[component]
pub fn Work(props: &SpringProps) -> Html {
    let spring = props.spring.clone();
    let known = {
        let spring = spring.clone();
        use_slice(move |state| {
            let rows = [
                "height",
                "arch",
                "rate",
                "frequency",
                "worst",
                "load_allowed",
            ];
            let rows = rows
                .into_iter()
                .filter(|row| has(state, &format!("{row}_after"), &spring));
            let told = rows.map(|row| {
                let id = format!("springs/{row}/{spring}");
                (row, words::result(&state.book, &id, state.settings.tongue))
            });
            told.collect::<Vec<_>>()
        })
    };
    let tongue = use_tongue();
    let Some(known) = known.filter(|known| !known.is_empty()) else {
        return html! {};
    };
    let rows = known.into_iter().map(|(row, told)| {
        html! {
            <tr key={row}>
                <th scope="row">{ told }</th>
                { cell(row, &spring) }{ cell(&format!("{row}_after"), &spring) }{ cell(&format!("{row}_change"), &spring) }
            </tr>
        }
    });
    let names = [
        frame::QUANTITY,
        said::AS_IT_STANDS,
        said::AFTER,
        said::CHANGE,
    ]
    .map(|name| tongue.say(name));
    let body = held(tongue.say(said::WORK), head(&names), rows.collect());
    panel("springs-work", tongue.say(said::WORK), body)
}
