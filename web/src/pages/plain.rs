//! A sheet's page made from its declaration alone: every field in its order, every list below.

use crate::widgets::{BeforeNowTable, EntryList, EntryRow, ResultTable, SheetPage};
use buildbook::sheets::spec_of;
use yew::prelude::*;

/// The props of [`Plain`].
#[derive(Properties, PartialEq)]
pub struct PlainProps {
    /// The sheet.
    pub sheet: &'static str,
}

/// Every field and list of a sheet.
#[component]
pub fn Plain(props: &PlainProps) -> Html {
    let sheet = props.sheet;
    let Some(spec) = spec_of(sheet) else {
        return html! {};
    };
    let fields = spec.items.iter().filter(|item| item.field.is_some());
    let rows = fields
        .map(|item| html! { <EntryRow key={item.name} at={format!("{sheet}/{}", item.name)} /> });
    let lists = spec.items.iter().filter(|item| item.row.is_some());
    let lists = lists.map(
        |item| html! { <EntryList key={item.name} list={format!("{sheet}/{}", item.name)} /> },
    );
    let below = html! { <><ResultTable {sheet} /><BeforeNowTable {sheet} /></> };
    html! {
        <SheetPage {sheet} below={below}>
            <section class="group"><div class="rows">{ rows.collect::<Html>() }</div></section>
            { lists.collect::<Html>() }
        </SheetPage>
    }
}
