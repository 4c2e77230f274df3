//! How many litres?

use super::plain::Plain;
use yew::prelude::*;

/// The paint sheet.
#[component]
pub fn Paint() -> Html {
    html! { <Plain sheet="paint" /> }
}
