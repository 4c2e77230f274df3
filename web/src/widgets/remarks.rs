//! What is to be known beside the results: a shape, a word and a colour for each rank, the gravest first.

use super::icon::{Icon, icon};
use crate::desk::{Desk, use_desk, use_settings, use_slice};
use crate::shown::written;
use crate::state::{Action, CallTo, State};
use crate::words::{self, Phrase, Tongue, filled, frame};
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

/// A remark in words, with the numbers and names that it speaks of.
pub fn remark_said(state: &State, sheet: &str, remark: &Remark) -> String {
    let (manner, tongue) = (state.settings.manner(), state.settings.tongue);
    let figures = remark.figures.iter();
    let figures = figures.map(|figure| written(figure, &manner).whole());
    let names = remark.names.iter().map(ToString::to_string);
    let parts: Vec<String> = figures.chain(names).collect();
    let rows = remark
        .key
        .as_ref()
        .map(|key| words::row_names(&state.book, key, tongue));
    let row = rows.and_then(|rows| rows.into_iter().next());
    words::remark(sheet, remark.fact, &parts, tongue).replace("{row}", &row.unwrap_or_default())
}

fn told(state: &State, sheet: &str, under: &str, which: Which) -> Vec<Told> {
    let Some(found) = state.findings.found(sheet) else {
        return Vec::new();
    };
    let above = Key::from(under);
    let there = found.remarks.iter().filter(|remark| {
        let in_place = remark.key.as_ref().is_some_and(|key| key.is_under(&above));
        which.takes(remark) && (under.is_empty() || in_place)
    });
    let told: Vec<Told> = there
        .map(|remark| Told {
            rank: remark.rank,
            said: remark_said(state, sheet, remark),
            fact: remark.fact,
            key: remark.key.clone(),
        })
        .collect();
    // Four ranks, gathered one after the other: a sort of the library would be ten times this code in the program.
    let ranks = [Rank::Danger, Rank::Warning, Rank::Caution, Rank::Remark];
    let of_rank = |rank: Rank| told.iter().filter(move |remark| remark.rank == rank);
    ranks.into_iter().flat_map(of_rank).cloned().collect()
}

/// How many remarks may stand open where they stand above the entries.
const FEW: usize = 2;

/// The remarks of a sheet, those of one rank on one card. Above the entries what is less than a warning stands folded
/// once there is much of it.
#[component]
pub fn Remarks(props: &RemarksProps) -> Html {
    let (sheet, under, which) = (props.sheet, props.under.clone(), props.which);
    let told = use_slice(move |state| told(state, sheet, &under, which)).unwrap_or_default();
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let open = use_state(|| false);
    let printing = use_slice(|state| state.view.printing).unwrap_or(false);
    if told.is_empty() {
        return html! {};
    }
    let (grave, light): (Vec<Told>, Vec<Told>) = told
        .into_iter()
        .partition(|remark| remark.rank >= Rank::Warning);
    let folds = which == Which::Urgent && light.len() > FEW && !printing;
    let fold = folds.then(|| fold(&open, light.len(), tongue));
    let shown = if folds && !*open {
        &[]
    } else {
        light.as_slice()
    };
    let cards = grave
        .chunk_by(|a, b| a.rank == b.rank)
        .chain(shown.chunk_by(|a, b| a.rank == b.rank))
        .map(|remarks| card(remarks, desk.as_ref(), tongue));
    html! {
        <div class="remarks" role="group" aria-label={tongue.say(frame::REMARKS)}>
            { cards.collect::<Html>() }
            { fold.unwrap_or_default() }
        </div>
    }
}

/// The key that shows or hides what is less than a warning.
fn fold(open: &UseStateHandle<bool>, count: usize, tongue: Tongue) -> Html {
    let (set, now) = (open.clone(), **open);
    let said = if now {
        tongue.say(frame::FEWER_REMARKS).to_owned()
    } else {
        filled(tongue.say(frame::MORE_REMARKS), &[count.to_string()])
    };
    html! {
        <button type="button" class="key quiet" data-do="remarks" aria-expanded={if now { "true" } else { "false" }}
            onclick={Callback::from(move |_| set.set(!now))}>
            { icon(if now { Icon::Open } else { Icon::Close }) }{ said }
        </button>
    }
}

/// The word of a rank.
pub fn rank_word(rank: Rank) -> Phrase {
    match rank {
        Rank::Danger => frame::DANGER_WORD,
        Rank::Warning => frame::WARNING_WORD,
        Rank::Caution => frame::CAUTION_WORD,
        Rank::Remark => frame::REMARK_WORD,
    }
}

/// The remarks of one rank under its shape and word.
fn card(remarks: &[Told], desk: Option<&Desk>, tongue: Tongue) -> Html {
    let Some(first) = remarks.first() else {
        return html! {};
    };
    let (class, picture) = match first.rank {
        Rank::Danger => ("danger", Icon::Danger),
        Rank::Warning => ("warning", Icon::Warning),
        Rank::Caution => ("caution", Icon::Caution),
        Rank::Remark => ("note", Icon::Remark),
    };
    let items = remarks.iter().map(|remark| {
        let go = remark
            .key
            .as_ref()
            .zip(desk)
            .map(|(key, desk)| go_key(key, desk, tongue));
        html! {
            <li data-remark={remark.fact}><p>{ &remark.said }</p>{ go.unwrap_or_default() }</li>
        }
    });
    html! {
        <section class={classes!("remark", class)}>
            { icon(picture) }
            <span class="rank">{ tongue.say(rank_word(first.rank)) }</span>
            <ul>{ items.collect::<Html>() }</ul>
        </section>
    }
}

fn go_key(key: &Key, desk: &Desk, tongue: Tongue) -> Html {
    let (desk, to) = (desk.clone(), key.clone());
    html! {
        <button type="button" class="key quiet" data-do={format!("go {key}")} aria-label={tongue.say(frame::GO_TO_ENTRY)}
            onclick={Callback::from(move |_| desk.send(Action::Call(CallTo::Entry(to.clone()))))}>{ icon(Icon::Next) }</button>
    }
}
