//! Results as rows: what it is, its figure with ±, or why there is none. A press brings one into the band.

use super::answer_band::offered;
use crate::desk::{use_desk, use_slice};
use crate::shown::{Written, answer_of};
use crate::state::{Action, State};
use crate::words::{self, frame, lack};
use std::rc::Rc;
use yew::prelude::*;

/// The props of [`ResultRow`].
#[derive(Properties, PartialEq)]
pub struct ResultRowProps {
    /// The result's id.
    pub id: AttrValue,
}

/// What a row says of a result.
#[derive(Clone, PartialEq)]
enum Said {
    Figure(Written),
    Lack(String),
}

fn said(state: &State, id: &str) -> Option<(String, Said)> {
    let tongue = state.settings.tongue;
    let said = match answer_of(state, id)?.map_err(|lack| (lack, lack.needed())) {
        Ok(written) => Said::Figure(written),
        Err((_, Some(keys))) => {
            let names: Vec<String> = keys
                .iter()
                .take(2)
                .map(|key| words::entry_name(&state.book, key, tongue))
                .collect();
            let more = if keys.len() > 2 { " …" } else { "" };
            Said::Lack(format!(
                "{}: {}{more}",
                tongue.say(frame::STILL_NEEDED),
                names.join(", ")
            ))
        }
        Err((other, None)) => Said::Lack(lack::said(other, &state.book, tongue)),
    };
    let told = words::told_whole(&state.book, &state.findings, id, tongue);
    Some((told, said))
}

/// One result. An id that the findings do not know gives nothing.
#[component]
pub fn ResultRow(props: &ResultRowProps) -> Html {
    let found = {
        let id = props.id.clone();
        use_slice(move |state| said(state, &id)).flatten()
    };
    let desk = use_desk();
    let Some((told, said)) = found else {
        return html! {};
    };
    match said {
        Said::Figure(written) => {
            let id: Rc<str> = (&*props.id).into();
            html! {
                <button type="button" class="result" data-do={format!("answer {}", props.id)}
                    onclick={Callback::from(move |_| if let Some(desk) = &desk { desk.send(Action::Answer(Rc::clone(&id))); })}>
                    <span>{ told }</span>
                    { figure(&written, &props.id) }
                </button>
            }
        }
        Said::Lack(why) => html! {
            <div class="result"><span>{ told }</span><span class="lack" data-result={props.id.clone()}>{ why }</span></div>
        },
    }
}

/// A figure in a row, its ± in brass.
pub fn figure(written: &Written, id: &AttrValue) -> Html {
    html! {
        <span class="num" data-result={id.clone()}>
            { &written.value }
            if let Some(pm) = &written.pm { { "\u{a0}" }<span class="pm">{ pm }</span> }
            if !written.unit.is_empty() { { "\u{a0}" }<span class="unit">{ &written.unit }</span> }
        </span>
    }
}

/// The heading of a column of results, with its unit where that stands here and not in the cells.
pub fn column_head(said: impl Into<AttrValue>, unit: Option<&'static str>) -> Html {
    let unit = unit.map(|unit| format!(", {unit}"));
    html! { <th scope="col">{ said.into() }{ unit }</th> }
}

/// A cell of such a column.
pub fn column_cell(result: String, unit_above: bool) -> Html {
    let class = classes!("num", unit_above.then_some("unit-above"));
    html! { <td {class}><ResultFigure id={result} /></td> }
}

/// The props of [`ResultTable`].
#[derive(Properties, PartialEq)]
pub struct ResultTableProps {
    /// The sheet.
    pub sheet: &'static str,
    /// The results, patterns allowed; empty: the sheet's headlines.
    #[prop_or_default]
    pub results: &'static [&'static str],
}

/// Several results below each other.
#[component]
pub fn ResultTable(props: &ResultTableProps) -> Html {
    let (sheet, results) = (props.sheet, props.results);
    let ids = use_slice(move |state| offered(state, sheet, results)).unwrap_or_default();
    if ids.is_empty() {
        return html! {};
    }
    let rows = ids.into_iter().map(|id| {
        html! { <li key={id.to_string()}><ResultRow id={AttrValue::from(id.to_string())} /></li> }
    });
    html! { <ul class="rows results">{ rows.collect::<Html>() }</ul> }
}

/// One result within a sentence or a cell: its figure alone, a dash where there is none.
#[component]
pub fn ResultFigure(props: &ResultRowProps) -> Html {
    let found = {
        let id = props.id.clone();
        use_slice(move |state| said(state, &id)).flatten()
    };
    match found {
        Some((_, Said::Figure(written))) => figure(&written, &props.id),
        _ => html! { <span class="lack" data-result={props.id.clone()}>{ "—" }</span> },
    }
}
