//! The vehicle sheet, entered by hand as a person would.

use crate::{Journey, Outcome};

/// Enters the sheet by hand, from empty, and reads its answers.
///
/// # Errors
/// What went otherwise than it should.
pub async fn by_hand(journey: &Journey) -> Outcome {
    journey.open("#/vehicle").await?;
    journey.enter("vehicle/name", "Harrowmead flatbed").await?;
    journey.choose("vehicle/sort", "lorry").await?;
    journey.choose("vehicle/steering_now", "right").await?;
    journey.choose("vehicle/steering_wanted", "left").await?;
    for (key, text) in [
        ("vehicle/wheelbase", "3185"),
        ("vehicle/front_unladen", "1080 ± 20 kg"),
        ("vehicle/rear_unladen", "797 ± 20"),
        ("vehicle/payload", "26 cwt"),
        ("vehicle/payload_ahead", "420 ± 30"),
        ("vehicle/tyre_front", "7.00-16"),
        ("vehicle/tyre_rear", "7.00-16"),
    ] {
        journey.enter(key, text).await?;
    }
    // 1080 + 797 = 1877; 20 twice in quadrature is 28, shown to one figure, and the value to match.
    journey.expect("vehicle/unladen", "1880 ± 30 kg").await?;
    // An impossible entry is told beside its field, kept as typed, and spoils nothing else.
    journey.enter("vehicle/wheelbase", "3x85").await?;
    journey
        .wait_for("[data-key=\"vehicle/wheelbase\"][aria-invalid=true]")
        .await?;
    journey.expect("vehicle/unladen", "1880 ± 30 kg").await?;
    journey.enter("vehicle/wheelbase", "3185 mm").await?;
    journey
        .wait_gone("[data-key=\"vehicle/wheelbase\"][aria-invalid=true]")
        .await?;
    journey.page_is_sound().await
}
