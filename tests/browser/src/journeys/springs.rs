//! The springs sheet, entered by hand as a person would.

use crate::{Journey, Outcome};

/// Enters the sheet by hand, from empty, and reads its answers.
///
/// Three leaves of 60 × 8 mm, 1200, 800 and 400 mm long, thinned tips (1.10), E 200 GPa give or take 2 %:
/// 8 E n b t³ SF / 3 S³ = 8 × 200000 × 3 × 60 × 512 × 1.1 / (3 × 1200³) = 31.289 N/mm, ± 0.626.
/// 1500 N press it down by 47.94 mm ± 0.96; of 120 mm of free arch 72.06 are left; on a pad 40 mm above the axle's centre and
/// under 24 mm of leaves the eyes stand 136.06 mm over it.
///
/// # Errors
/// What went otherwise than it should.
pub async fn by_hand(journey: &Journey) -> Outcome {
    journey.open("#/springs").await?;
    journey
        .choose("springs/springs/1/place", "front_left")
        .await?;
    journey
        .enter("springs/springs/1/leaves/1/width", "60 exact")
        .await?;
    for (leaf, length) in [("1", "1200 exact"), ("2", "800 exact"), ("3", "400 exact")] {
        if leaf != "1" {
            journey.tap("add springs/springs/1/leaves").await?;
        }
        let row = format!("springs/springs/1/leaves/{leaf}");
        journey
            .enter(&format!("{row}/thickness"), "8 exact")
            .await?;
        journey.enter(&format!("{row}/length"), length).await?;
    }
    journey
        .expect("springs/rate_handbook/1", "31.3 ± 0.6 N/mm")
        .await?;
    for (field, text) in [
        ("load", "1500 N exact"),
        ("free_arch", "120 exact"),
        ("pad", "40 exact"),
    ] {
        journey
            .enter(&format!("springs/springs/1/{field}"), text)
            .await?;
    }
    journey.expect("springs/height/1", "136.1 ± 1.0 mm").await?;
    an_impossible_leaf_is_told_and_spoils_nothing_else(journey).await?;
    the_other_side_is_a_copy_that_goes_its_own_way(journey).await?;
    journey.tap("spring 1").await?;
    journey.expect("springs/height/1", "136.1 ± 1.0 mm").await?;
    journey.page_is_sound().await
}

async fn an_impossible_leaf_is_told_and_spoils_nothing_else(journey: &Journey) -> Outcome {
    let key = "springs/springs/1/leaves/3/thickness";
    journey.enter(key, "-8 exact").await?;
    journey
        .wait_for(&format!("[data-key=\"{key}\"][aria-invalid=true]"))
        .await?;
    let load = journey.entry("springs/springs/1/load").await?;
    if load != "1500 N exact" {
        return Err(format!("the load became `{load}`"));
    }
    journey.enter(key, "8 exact").await?;
    journey
        .wait_gone(&format!("[data-key=\"{key}\"][aria-invalid=true]"))
        .await?;
    // A seat that swallows the shortest leaf: said at that leaf, the entries stay.
    journey
        .enter("springs/springs/1/clamped", "410 exact")
        .await?;
    journey
        .wait_for("[data-remark=\"leaf_within_seat\"]")
        .await?;
    journey.enter("springs/springs/1/clamped", "").await?;
    journey
        .wait_gone("[data-remark=\"leaf_within_seat\"]")
        .await?;
    journey.expect("springs/height/1", "136.1 ± 1.0 mm").await
}

async fn the_other_side_is_a_copy_that_goes_its_own_way(journey: &Journey) -> Outcome {
    journey.tap("other-side springs/springs/1").await?;
    journey
        .expect("springs/rate_handbook/2", "31.3 ± 0.6 N/mm")
        .await?;
    let place = journey.entry("springs/springs/2/place").await?;
    if place != "front_right" {
        return Err(format!("the other side stands `{place}`"));
    }
    // The load that was weighed stays with the first spring.
    journey
        .enter("springs/springs/2/load", "1500 N exact")
        .await?;
    journey
        .enter("springs/springs/2/free_arch", "128 exact")
        .await?;
    journey.expect("springs/height/2", "144.1 ± 1.0 mm").await?;
    // Under the axle a block would lower; on it, it lifts by its own thickness. On an axle that steers, a warning.
    journey
        .enter("springs/springs/2/plan_block", "25 exact")
        .await?;
    journey
        .expect("springs/height_after/2", "169.1 ± 1.0 mm")
        .await?;
    journey
        .wait_for("[data-remark=\"block_on_steering_axle\"]")
        .await
}
