//! What was, what is and the change, side by side; and what moving the end of the box does.

use crate::desk::{use_slice, use_tongue};
use crate::state::State;
use crate::widgets::ResultFigure;
use crate::words::{self, Phrase, conversion as said, frame};
use yew::prelude::*;

/// The props of [`Compared`].
#[derive(Properties, PartialEq)]
pub struct ComparedProps {
    /// By this the words know its heading.
    pub id: &'static str,
    /// The results by their middle names: `link` for `conversion/link/now`.
    pub results: &'static [&'static str],
}

fn known(state: &State, id: &str) -> bool {
    state.findings.result(id).is_some_and(Result::is_ok)
}

fn cell(id: String) -> Html {
    html! { <td class="num"><ResultFigure id={AttrValue::from(id)} /></td> }
}

fn panel(
    id: &str,
    title: String,
    class: &'static str,
    head: [Phrase; 4],
    rows: Html,
    after: Html,
) -> Html {
    html! { <Panel id={id.replace('/', "-")} {title} {class} head={head.to_vec()} {rows} {after} /> }
}

#[derive(Properties, PartialEq)]
struct PanelProps {
    id: String,
    title: String,
    class: &'static str,
    head: Vec<Phrase>,
    rows: Html,
    after: Html,
}

/// A table under its heading; where it is wider than the screen it can be moved by the keys too.
#[component]
fn Panel(props: &PanelProps) -> Html {
    let tongue = use_tongue();
    let head = props
        .head
        .iter()
        .map(|phrase| html! { <th scope="col">{ tongue.say(*phrase) }</th> });
    html! {
        <section class="panel" aria-labelledby={props.id.clone()}>
            <div class="panel-head"><h2 class="ruled" id={props.id.clone()}>{ &props.title }</h2></div>
            <div class="table-hold" tabindex="0" role="group" aria-label={props.title.clone()}>
                <table class={props.class}><thead><tr>{ head.collect::<Html>() }</tr></thead><tbody>{ props.rows.clone() }</tbody></table>
            </div>
            { props.after.clone() }
        </section>
    }
}

/// Results as they were, on the new side, and the change.
#[component]
pub fn Compared(props: &ComparedProps) -> Html {
    let results = props.results;
    let rows = use_slice(move |state| {
        let there = results.iter().filter(|name| {
            ["was", "now"]
                .iter()
                .any(|way| known(state, &format!("conversion/{name}/{way}")))
        });
        let told = there.map(|name| {
            let told = words::result(
                &state.book,
                &format!("conversion/{name}/change"),
                state.settings.tongue,
            );
            // The table says which is which.
            (
                *name,
                told.split(": ").next().unwrap_or_default().to_owned(),
            )
        });
        told.collect::<Vec<_>>()
    });
    let tongue = use_tongue();
    let Some(rows) = rows.filter(|rows| !rows.is_empty()) else {
        return html! {};
    };
    let rows = rows.into_iter().map(|(name, told)| {
        let cells = ["was", "now", "change"].map(|way| cell(format!("conversion/{name}/{way}")));
        html! { <tr key={name}><th scope="row">{ told }</th>{ cells.into_iter().collect::<Html>() }</tr> }
    });
    let head = [frame::QUANTITY, said::WAS, said::NOW, said::CHANGE];
    panel(
        props.id,
        words::group(props.id, tongue),
        "table compared",
        head,
        rows.collect(),
        html! {},
    )
}

/// What moving the end of the box does.
#[component]
pub fn Moving() -> Html {
    let there = use_slice(|state| known(state, "conversion/moved_link/up")).unwrap_or(false);
    let tongue = use_tongue();
    if !there {
        return html! {};
    }
    let ways = [
        ("forward", said::FORWARD),
        ("out", said::OUTWARD),
        ("up", said::UPWARD),
    ];
    let rows = ways.into_iter().map(|(way, name)| {
        let cells = ["link", "ratio", "bump"].map(|what| cell(format!("conversion/moved_{what}/{way}")));
        html! { <tr key={way}><th scope="row">{ tongue.say(name) }</th>{ cells.into_iter().collect::<Html>() }</tr> }
    });
    let head = [said::MOVED, said::LINK, said::RATIO, said::BUMP];
    let after = html! { <p class="muted">{ tongue.say(said::MOVING_SAID) }</p> };
    panel(
        "conversion/moving",
        tongue.say(said::MOVING).to_owned(),
        "table",
        head,
        rows.collect(),
        after,
    )
}
