//! Which axle ratio?

use super::plain::Plain;
use yew::prelude::*;

/// The gearing sheet.
#[component]
pub fn Gearing() -> Html {
    html! { <Plain sheet="gearing" /> }
}
