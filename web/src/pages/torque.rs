//! How tight?

use crate::desk::use_settings;
use crate::drawings::Plate;
use crate::drawings::torque::ORDER;
use crate::pages::tightening::TighteningRecord;
use crate::route::Route;
use crate::widgets::{BeforeNowTable, EntryList, EntryRow, Group, ResultTable, SheetPage};
use crate::words::torque;
use yew::prelude::*;

const ANSWERS: &[&str] = &["torque/next", "torque/left", "torque/setting/*"];
const PLATES: &[&Plate] = &[&ORDER];
const WRENCH: &[&str] = &["wrench_low", "wrench_high", "wrench_length"];
const RESULTS: &[&str] = &["torque/*/*", "torque/stage/*/*"];

/// The torque sheet.
#[component]
pub fn Torque() -> Html {
    let tongue = use_settings().tongue;
    let wrench = WRENCH
        .iter()
        .map(|field| html! { <EntryRow key={*field} at={format!("torque/{field}")} /> });
    let below = html! {
        <>
            <Group id="torque/record" card={false}><TighteningRecord /></Group>
            <Group id="torque/results" card={false}><ResultTable sheet="torque" results={RESULTS} /></Group>
            <BeforeNowTable sheet="torque" />
        </>
    };
    html! {
        <SheetPage sheet="torque" answers={ANSWERS} plates={PLATES} {below}>
            <a class="key tall tick-key" href={Route::TickOff.fragment()} data-do="tick-off">{ tongue.say(torque::TICK_OFF) }</a>
            <Group id="torque/joints" card={false}>
                <EntryList list="torque/joints" found="torque/setting" titled={false} />
            </Group>
            <Group id="torque/wrench">{ wrench.collect::<Html>() }</Group>
        </SheetPage>
    }
}
