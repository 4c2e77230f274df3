//! How high will it sit?

use super::plain::Plain;
use yew::prelude::*;

/// The springs sheet.
#[component]
pub fn Springs() -> Html {
    html! { <Plain sheet="springs" /> }
}
