//! Where do the holes go?

mod costs;
mod folds;
mod making;
mod placing;
mod tables;
mod templates;

use crate::drawings::Plate;
use crate::drawings::marking::PATTERN;
use crate::widgets::{BeforeNowTable, EntryList, EntryRow, Group, ResultTable, SheetPage};
use costs::AskCosts;
use folds as fold;
use making::{OldHoles, Schedule};
use placing::PLACING;
pub use tables::readings;
use tables::{Readings, Strike};
use templates::Templates;
use yew::prelude::*;

const ANSWERS: &[&str] = &["marking/arc_a/*", "marking/arc_b/*"];
const PLATES: &[&Plate] = &[&PATTERN];
const RESULTS: &[&str] = &["marking/centre", "marking/pair/*", "marking/edge/*"];

/// The marking-out sheet. What is not worked on is folded up; "Set it out" stands open.
#[component]
pub fn Marking() -> Html {
    let below = html! {
        <>
            <Group id="marking/strike" card={false} folds={&fold::STRIKE}><Strike /></Group>
            <Group id="marking/templates" card={false} folds={&fold::TEMPLATES}>
                <Templates />
                <div class="rows">{ rows(&fold::TEMPLATES) }</div>
            </Group>
            <Group id="marking/readings" card={false} folds={&fold::READINGS}><Readings /></Group>
            <Group id="marking/schedule" card={false} folds={&fold::SCHEDULE}><Schedule /></Group>
            <Group id="marking/closing" card={false} folds={&fold::CLOSING}><OldHoles /></Group>
            <Group id="marking/results" card={false} folds={&fold::RESULTS}>
                <ResultTable sheet="marking" results={RESULTS} />
            </Group>
            <Group id="marking/getting" folds={&fold::GETTING}>{ rows(&fold::GETTING) }<AskCosts /></Group>
            <BeforeNowTable sheet="marking" />
        </>
    };
    html! {
        <SheetPage sheet="marking" answers={ANSWERS} plates={PLATES} {below}>
            <Group id="marking/datums" folds={&fold::DATUMS}>{ rows(&fold::DATUMS) }</Group>
            <Group id="marking/features" card={false} folds={&fold::FEATURES}>{ list("marking/features", false) }</Group>
            <Group id="marking/new_side" card={false} folds={&fold::NEW_SIDE}>
                <div class="rows">{ rows(&fold::NEW_SIDE) }</div>
                { list("marking/pairs", true) }
            </Group>
            <Group id="marking/there" card={false} folds={&fold::THERE}>
                { list("marking/there", true) }{ list("marking/edges", true) }
            </Group>
            <Group id="marking/metal" folds={&fold::METAL}>{ rows(&fold::METAL) }</Group>
        </SheetPage>
    }
}

fn list(list: &'static str, titled: bool) -> Html {
    html! { <EntryList {list} placing={&PLACING} {titled} /> }
}

/// A row for each entry of a group.
fn rows(group: &crate::widgets::Folds) -> Html {
    let fields = group.holds.iter();
    fields
        .map(|field| html! { <EntryRow key={*field} at={format!("marking/{field}")} /> })
        .collect()
}
