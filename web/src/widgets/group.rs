//! A heading with the ledger's double rule, and what stands under it.

use crate::desk::use_tongue;
use crate::words;
use yew::prelude::*;

/// The props of [`Group`].
#[derive(Properties, PartialEq)]
pub struct GroupProps {
    /// Its id, by which the words know its heading: `gearing/tyre`.
    pub id: AttrValue,
    /// Entries, lists, results.
    #[prop_or_default]
    pub children: Html,
    /// Whether the entries stand on one card (lists bring a card of their own).
    #[prop_or(true)]
    pub card: bool,
}

/// A group of entries under a heading.
#[component]
pub fn Group(props: &GroupProps) -> Html {
    let tongue = use_tongue();
    let id = format!("g-{}", props.id.replace('/', "-"));
    html! {
        <section class="group" aria-labelledby={id.clone()}>
            <h2 class="ruled" {id}>{ words::group(&props.id, tongue) }</h2>
            if props.card {
                <div class="rows">{ props.children.clone() }</div>
            } else {
                { props.children.clone() }
            }
        </section>
    }
}
