//! What is left to spend?

use super::plain::Plain;
use yew::prelude::*;

/// The costs sheet.
#[component]
pub fn Costs() -> Html {
    html! { <Plain sheet="costs" /> }
}
