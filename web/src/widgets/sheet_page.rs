//! The layout every sheet shares: band, entries, and beside them the drawing, the working or the keypad.

use super::icon::{Icon, icon};
use super::money_working::MoneyWorkingPanel;
use super::{
    AnswerBand, DrawingFrame, Keypad, OtherAnswers, Remarks, Which, WorkBackPanel, WorkingPanel,
};
use crate::desk::{use_slice, use_tongue};
use crate::drawings::Plate;
use crate::shown::{is_money, own_keypad};
use crate::state::{Panel, State};
use crate::words::{filled, frame};
use yew::prelude::*;

/// The props of [`SheetPage`].
#[derive(Properties, PartialEq)]
pub struct SheetPageProps {
    /// The sheet's name.
    pub sheet: &'static str,
    /// The results that may stand in the band, patterns allowed; empty: the sheet's headlines.
    #[prop_or_default]
    pub answers: &'static [&'static str],
    /// The drawings beside the entries.
    #[prop_or_default]
    pub plates: &'static [&'static Plate],
    /// Only the standing cautions at or below this path; empty: all of the sheet.
    #[prop_or_default]
    pub cautions: AttrValue,
    /// Entries and lists.
    pub children: Html,
    /// What stands below both columns: tables, before and now.
    #[prop_or_default]
    pub below: Html,
}

/// What stands beside the entries now.
#[derive(Clone, Debug, PartialEq)]
enum Side {
    Drawing,
    Working(String),
    WorkBack,
    MoneyWorking(String),
    Keypad,
}

fn side(state: &State, sheet: &str) -> Side {
    let of_sheet = |id: &str| id.split('/').next() == Some(sheet);
    if state
        .view
        .field
        .as_ref()
        .is_some_and(|key| own_keypad(state, key))
    {
        return Side::Keypad;
    }
    match &state.view.panel {
        Panel::Working(id)
            if of_sheet(id) && state.findings.result(id).is_some_and(Result::is_ok) =>
        {
            Side::Working(id.to_string())
        }
        Panel::Working(id) if of_sheet(id) && is_money(state, id) => {
            Side::MoneyWorking(id.to_string())
        }
        Panel::WorkBack(back) if of_sheet(&back.result) => Side::WorkBack,
        _ => Side::Drawing,
    }
}

#[derive(Properties, PartialEq)]
struct PlatesProps {
    plates: &'static [&'static Plate],
}

/// The drawings. Where they stand above the entries there is room for one at a time, and a key for the next.
#[component]
fn Plates(props: &PlatesProps) -> Html {
    let at = use_state(|| 0_usize);
    let tongue = use_tongue();
    let count = props.plates.len();
    let frames = props.plates.iter().enumerate().map(|(place, plate)| {
        let away = (place != *at).then_some("away");
        html! { <div key={plate.id} class={classes!("plate-hold", away)}><DrawingFrame plate={*plate} /></div> }
    });
    let next = {
        let at = at.clone();
        Callback::from(move |_: MouseEvent| at.set((*at + 1) % count.max(1)))
    };
    html! {
        <>
            { frames.collect::<Html>() }
            if count > 1 {
                <button type="button" class="key quiet next-plate" data-do="next-drawing" onclick={next}>
                    { icon(Icon::Next) }
                    { filled(tongue.say(frame::NEXT_DRAWING), &[(*at + 1).to_string(), count.to_string()]) }
                </button>
            }
        </>
    }
}

/// A sheet's page.
#[component]
pub fn SheetPage(props: &SheetPageProps) -> Html {
    let sheet = props.sheet;
    let side = use_slice(move |state| side(state, sheet)).unwrap_or(Side::Drawing);
    let up = (side == Side::Keypad).then_some("pad-up");
    let beside = match side {
        Side::Keypad => html! { <Keypad /> },
        Side::Working(id) => html! { <WorkingPanel {id} /> },
        Side::WorkBack => html! { <WorkBackPanel /> },
        Side::MoneyWorking(id) => html! { <MoneyWorkingPanel {id} /> },
        Side::Drawing => html! { <Plates plates={props.plates} /> },
    };
    html! {
        <main id="page" data-page={sheet}>
            <AnswerBand {sheet} answers={props.answers} />
            <OtherAnswers {sheet} answers={props.answers} />
            <div class={classes!("sheet", up)}>
                <div class="columns">
                <div class="entries">
                    <Remarks {sheet} which={Which::Urgent} />
                    { props.children.clone() }
                    <Remarks {sheet} under={props.cautions.clone()} which={Which::Standing} />
                </div>
                // It scrolls where the screen is low, so a keyboard must reach it; the keypad has keys of its own.
                <div class={classes!("side", up)} tabindex={up.is_none().then_some("0")}>{ beside }</div>
                </div>
                <div class="below">{ props.below.clone() }</div>
            </div>
        </main>
    }
}
