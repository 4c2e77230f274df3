//! What is to be known beside the results: a shape, a word and a colour for each rank, the gravest first.

use super::icon::{Icon, icon};
use crate::desk::{use_desk, use_settings, use_slice};
use crate::shown::written;
use crate::state::{Action, CallTo, State};
use crate::words::{self, frame};
use buildbook::{Key, Rank, Remark};
use yew::prelude::*;

/// The props of [`Remarks`].
#[derive(Properties, PartialEq)]
pub struct RemarksProps {
    /// The sheet.
    pub sheet: &'static str,
    /// Only the remarks at or below this path; empty: all of the sheet.
    #[prop_or_default]
    pub under: AttrValue,
    /// Which of them; without it all.
    #[prop_or_default]
    pub which: Which,
}

/// Remarks that follow from the entries, or cautions that stand there whatever was entered.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub enum Which {
    /// Both.
    #[default]
    All,
    /// What follows from the entries, and every danger.
    Urgent,
    /// The standing cautions, without the dangers.
    Standing,
}

impl Which {
    fn takes(self, remark: &Remark) -> bool {
        let urgent = !remark.standing || remark.rank == Rank::Danger;
        match self {
            Self::All => true,
            Self::Urgent => urgent,
            Self::Standing => !urgent,
        }
    }
}

#[derive(Clone, PartialEq)]
struct Told {
    rank: Rank,
    said: String,
    fact: &'static str,
    key: Option<Key>,
}

fn told(state: &State, sheet: &str, under: &str, which: Which) -> Vec<Told> {
    let Some(found) = state.findings.found(sheet) else {
        return Vec::new();
    };
    let (manner, tongue) = (state.settings.manner(), state.settings.tongue);
    let above = Key::from(under);
    let there = found.remarks.iter().filter(|remark| {
        let in_place = remark.key.as_ref().is_some_and(|key| key.is_under(&above));
        which.takes(remark) && (under.is_empty() || in_place)
    });
    let mut told: Vec<Told> = there
        .map(|remark| {
            let figures = remark
                .figures
                .iter()
                .map(|figure| written(figure, &manner).whole());
            let parts: Vec<String> = figures
                .chain(remark.names.iter().map(ToString::to_string))
                .collect();
            Told {
                rank: remark.rank,
                said: words::remark(sheet, remark.fact, &parts, tongue),
                fact: remark.fact,
                key: remark.key.clone(),
            }
        })
        .collect();
    told.sort_by_key(|remark| std::cmp::Reverse(remark.rank));
    told
}

/// The remarks of a sheet.
#[component]
pub fn Remarks(props: &RemarksProps) -> Html {
    let (sheet, under, which) = (props.sheet, props.under.clone(), props.which);
    let told = use_slice(move |state| told(state, sheet, &under, which)).unwrap_or_default();
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    if told.is_empty() {
        return html! {};
    }
    let remarks = told.into_iter().map(|remark| {
        let (class, picture, word) = match remark.rank {
            Rank::Danger => ("danger", Icon::Danger, frame::DANGER_WORD),
            Rank::Warning => ("warning", Icon::Warning, frame::WARNING_WORD),
            Rank::Caution => ("caution", Icon::Caution, frame::CAUTION_WORD),
            Rank::Remark => ("note", Icon::Remark, frame::REMARK_WORD),
        };
        let go = remark.key.clone().map(|key| {
            let desk = desk.clone();
            html! {
                <button type="button" class="key quiet" data-do={format!("go {key}")} aria-label={tongue.say(frame::GO_TO_ENTRY)}
                    onclick={Callback::from(move |_| if let Some(desk) = &desk {
                        desk.send(Action::Call(CallTo::Entry(key.clone())));
                    })}>{ icon(Icon::Next) }</button>
            }
        });
        html! {
            <li class={classes!("remark", class)} data-remark={remark.fact}>
                { icon(picture) }
                <p><span class="rank">{ tongue.say(word) }{ ": " }</span>{ remark.said }</p>
                { go.unwrap_or_default() }
            </li>
        }
    });
    html! { <ul class="remarks" aria-label={tongue.say(frame::REMARKS)}>{ remarks.collect::<Html>() }</ul> }
}
