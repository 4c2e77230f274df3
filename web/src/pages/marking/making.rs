//! How the holes are made, in the order of work, and how the old ones are closed.

use super::tables::panel;
use super::templates::{feature_name, length};
use crate::desk::{use_slice, use_tongue};
use crate::state::State;
use crate::widgets::ResultFigure;
use crate::words::{self, Phrase, Tongue, filled, templates as said};
use buildbook::sheets::marking::{Closing, swap_gap};
use trade::marking::{Form, Swap};
use yew::prelude::*;

/// A table in a frame that keys reach, and a sentence. Columns of words are told from columns of figures.
fn table(
    id: &'static str,
    tongue: Tongue,
    columns: &[(&str, bool)],
    rows: Html,
    below: &'static str,
) -> Html {
    let columns = columns.iter().map(|(column, words)| {
        html! { <th scope="col" class={words.then_some("said")}>{ *column }</th> }
    });
    panel(
        below,
        html! {
            <div class="table-hold" tabindex="0" role="group" aria-label={words::group(id, tongue)}>
                <table class="table" data-table={id}><thead><tr>{ columns.collect::<Html>() }</tr></thead><tbody>{ rows }</tbody></table>
            </div>
        },
    )
}

/// The drill schedule: what is done, and the features it is done at; none before the sheet metal's thickness is known.
pub fn steps(state: &State) -> Option<Vec<(String, String)>> {
    let steps = state.findings.marking.making.steps.as_ref().ok()?;
    let tongue = state.settings.tongue;
    let row = |step: &trade::marking::Step| {
        let size = step.size.as_ref().map(|size| length(size, state));
        let at = step.at.iter().map(|(place, spots)| match spots {
            1 => feature_name(state, *place),
            spots => format!("{} (× {spots})", feature_name(state, *place)),
        });
        let said = filled(
            tongue.say(said::step(step.tool)),
            &[size.unwrap_or_default()],
        );
        (said, at.collect::<Vec<_>>().join(", "))
    };
    Some(steps.iter().map(row).collect())
}

/// The drill schedule.
#[component]
pub fn Schedule() -> Html {
    let tongue = use_tongue();
    let known = use_slice(|state| {
        (
            steps(state),
            state
                .findings
                .marking
                .taken
                .features
                .iter()
                .any(|one| one.shape.is_ok()),
        )
    });
    match known {
        Some((Some(steps), true)) => {
            let rows = steps
                .into_iter()
                .map(|(what, at)| html! { <tr><th scope="row">{ what }</th><td class="said">{ at }</td></tr> });
            let columns = [(tongue.say(said::STEP), true), (tongue.say(said::AT), true)];
            table(
                "marking/schedule",
                tongue,
                &columns,
                rows.collect(),
                tongue.say(said::SCHEDULE_SAID),
            )
        }
        Some((None, true)) => html! { <p class="muted">{ tongue.say(said::SCHEDULE_NEEDS) }</p> },
        _ => html! {},
    }
}

/// One old hole: the row of its feature, its name, whether a disc closes it, and what a piece of the new holes does.
type Old = (String, String, bool, String);

fn olds(state: &State) -> Vec<Old> {
    let marking = &state.findings.marking;
    let tongue = state.settings.tongue;
    let rows = marking
        .sheet
        .features
        .iter()
        .zip(&marking.taken.features)
        .zip(&marking.making.closing)
        .enumerate();
    rows.filter_map(|(place, ((feature, fixed), closing))| {
        let shape = fixed.shape.as_ref().ok().filter(|shape| shape.is_cut())?;
        let (phrase, from, gap): (Phrase, usize, Option<String>) = match closing.as_ref() {
            None => {
                return Some((
                    feature.id().to_owned(),
                    feature_name(state, place),
                    shape.form() == Form::Round,
                    String::new(),
                ));
            }
            Some(Closing::NoPiece | Closing::Piece(_, Swap::NotAlike | Swap::TooLarge(_))) => {
                (said::NO_PIECE, place, None)
            }
            Some(Closing::Piece(from, swap)) => {
                let phrase = match swap {
                    Swap::Fills(_) => said::FILLS,
                    Swap::Dress(_) => said::DRESS,
                    _ => said::TOO_SMALL,
                };
                let gap = swap_gap(swap)
                    .map(|gap| crate::shown::written(&gap, &state.settings.manner()).shortly());
                (phrase, *from, gap)
            }
        };
        let sentence = filled(
            tongue.say(phrase),
            &[feature_name(state, from), gap.unwrap_or_default()],
        );
        Some((
            feature.id().to_owned(),
            feature_name(state, place),
            shape.form() == Form::Round,
            sentence,
        ))
    })
    .collect()
}

fn figure(id: String) -> Html {
    html! { <td class="num"><ResultFigure id={AttrValue::from(id)} /></td> }
}

/// The discs and plates for the old holes.
#[component]
pub fn OldHoles() -> Html {
    let tongue = use_tongue();
    let olds = use_slice(olds).unwrap_or_default();
    if olds.is_empty() {
        return html! {};
    }
    let rows = olds.into_iter().map(|(id, name, round, swap)| {
        let size = if round { figure(format!("marking/disc/{id}")) } else { html! { <td>{ tongue.say(said::PLATE) }</td> } };
        html! {
            <tr key={id.clone()}>
                <th scope="row">{ name }</th>{ size }{ figure(format!("marking/patch/{id}")) }{ figure(format!("marking/weld/{id}")) }<td class="said">{ swap }</td>
            </tr>
        }
    });
    let all = html! {
        <tr class="sum"><th scope="row">{ tongue.say(said::ALL) }</th><td></td>{ figure("marking/patches".to_owned()) }{ figure("marking/welds".to_owned()) }<td></td></tr>
    };
    let rows = html! { <>{ rows.collect::<Html>() }{ all }</> };
    let columns = [
        (said::HOLE, true),
        (said::DISC, false),
        (said::METAL, false),
        (said::WELD, false),
        (said::SWAP, true),
    ]
    .map(|(phrase, words)| (tongue.say(phrase), words));
    table(
        "marking/closing",
        tongue,
        &columns,
        rows,
        tongue.say(said::SLUG_SAID),
    )
}
