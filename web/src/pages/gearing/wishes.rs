//! Real teeth near a wished ratio, each with a key that puts it in.

use crate::desk::{use_desk, use_settings, use_slice};
use crate::state::{Action, State};
use crate::widgets::ResultFigure;
use crate::words::{filled, gearing};
use buildbook::{Entry, Key};
use yew::prelude::*;

/// The props of [`Pairs`].
#[derive(Properties, PartialEq)]
pub struct PairsProps {
    /// For the wished hill, not the wished engine speed.
    pub hill: bool,
}

fn pairs(state: &State, hill: bool) -> Vec<(String, String)> {
    let findings = &state.findings.gearing;
    let pairs = if hill {
        &findings.pairs_for_hill
    } else {
        &findings.pairs_for_speed
    };
    let typed = |pair: &buildbook::sheets::gearing::PairFound| {
        format!("{}/{}", pair.teeth.crown, pair.teeth.pinion)
    };
    pairs
        .iter()
        .map(|pair| (pair.id.to_string(), typed(pair)))
        .collect()
}

/// The nearest real pairs of teeth.
#[component]
pub fn Pairs(props: &PairsProps) -> Html {
    let hill = props.hill;
    let pairs = use_slice(move |state| pairs(state, hill)).unwrap_or_default();
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let (Some(desk), false) = (desk, pairs.is_empty()) else {
        return html! {};
    };
    let (ratio, what, head) = if hill {
        ("hill_pair_ratio", "hill_pair_slope", gearing::HILL_HEAD)
    } else {
        (
            "speed_pair_ratio",
            "speed_pair_revs",
            gearing::REVS_THERE_HEAD,
        )
    };
    let rows = pairs.into_iter().map(|(id, teeth)| {
        let figure = |name: &str| html! { <ResultFigure id={AttrValue::from(format!("gearing/{name}/{id}"))} /> };
        let (desk, put) = (desk.clone(), teeth.clone());
        let press = Callback::from(move |_: MouseEvent| {
            desk.send(Action::Put(Key::from("gearing/axle"), Some(Entry::new(put.as_str()))));
        });
        html! {
            <tr key={id.clone()}>
                <th scope="row">
                    <button type="button" class="key quiet nowrap" data-do={format!("put-in {teeth}")} onclick={press}>
                        { filled(tongue.say(gearing::PUT_IN), &[teeth]) }
                    </button>
                </th>
                <td>{ figure(ratio) }</td>
                <td>{ figure(what) }</td>
            </tr>
        }
    });
    let heads = [gearing::PAIR, gearing::RATIO_HEAD, head];
    html! {
        <div class="pairs">
            <p class="muted">{ tongue.say(gearing::PAIRS_SAID) }</p>
            <div class="table-hold" tabindex="0" role="group" aria-label={tongue.say(gearing::WIDE_TABLE)}>
                <table class="table">
                    <thead><tr>{ heads.iter().map(|said| html! { <th scope="col">{ tongue.say(*said) }</th> }).collect::<Html>() }</tr></thead>
                    <tbody>{ rows.collect::<Html>() }</tbody>
                </table>
            </div>
        </div>
    }
}
