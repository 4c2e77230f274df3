//! The springs sheet, entered by hand as a person would.

use crate::{Journey, Outcome};

/// Enters the sheet by hand, from empty, and reads its answers.
///
/// # Errors
/// What went otherwise than it should.
pub async fn by_hand(journey: &Journey) -> Outcome {
    journey.open("#/springs").await?;
    journey.page_is_sound().await
}
