//! The paint sheet, entered by hand as a person would.
//!
//! What is expected was worked out outside: litres by A t / (1000 VS η) on paper, tins by the reference checks (SciPy).

use crate::{Journey, Outcome};

/// Enters the sheet by hand, from empty, and reads its answers.
///
/// # Errors
/// What went otherwise than it should.
pub async fn by_hand(journey: &Journey) -> Outcome {
    journey.open("#/paint").await?;
    litres_for_three_coats(journey).await?;
    a_panel_with_an_opening(journey).await?;
    an_impossible_entry(journey).await?;
    two_parts_and_their_tins(journey).await?;
    dew_point(journey).await?;
    journey.page_is_sound().await
}

/// A body and its coats: six entries at the most, and the litres are there.
async fn litres_for_three_coats(journey: &Journey) -> Outcome {
    let made = journey.entries_made();
    for (key, text) in [
        ("paint/body_length", "2.4 m"),
        ("paint/body_width", "1.7 m"),
        ("paint/body_height", "1.6 m"),
        ("paint/systems/1/layers/1/coats", "3"),
    ] {
        journey.enter(key, text).await?;
    }
    if journey.entries_made() - made > 6 {
        return Err("litres for three coats take more than six entries".into());
    }
    // 17.2 m² x 0.75 x 1.10 = 14.19 m²; 14.19 x 28 / (1000 x 0.45 x 0.60) = 1.4716 L a coat; (3 x 1.4716 + 0.05) x 1.1 = 4.911 L.
    about(journey, "paint/litres", 4.911, 0.1).await?;
    journey.tap("answer paint/area").await?;
    about(journey, "paint/area", 14.19, 0.2).await?;
    journey.tap("answer paint/litres").await?;
    journey.wait_for("[data-remark=\"isocyanates\"]").await?;
    // What was assumed is now told, so that the figures are sharp: 14.19 m² and (3 x 1.4716 + 0.05) x 1.1 stay.
    for (key, text) in [
        ("paint/body_share", "75 exact"),
        ("paint/body_edges", "10 exact"),
        ("paint/transfer", "60 exact"),
        ("paint/left_in_cup", "50 exact"),
        ("paint/systems/1/layers/1/film", "28 exact"),
        ("paint/systems/1/layers/1/solids", "45 exact"),
    ] {
        journey.enter(key, text).await?;
    }
    about(journey, "paint/litres", 4.911, 0.006).await?;
    about(journey, "paint/wet/1/1", 62.2, 0.06).await
}

/// A film below nothing is told at its field, and every other result stays.
async fn an_impossible_entry(journey: &Journey) -> Outcome {
    let film = "paint/systems/1/layers/1/film";
    let faulty = format!("[data-key=\"{film}\"][aria-invalid=true]");
    journey.enter(film, "-28").await?;
    journey.wait_for(&faulty).await?;
    about(journey, "paint/area/1", 0.399, 0.0006).await?;
    journey.enter(film, "28 exact").await?;
    journey.wait_gone(&faulty).await?;
    about(journey, "paint/litres", 5.048, 0.006).await
}

/// A panel beside the body: 1000 x 500 mm less a window of 400 x 300, edges 5 %: 0.38 x 1.05 = 0.399 m².
async fn a_panel_with_an_opening(journey: &Journey) -> Outcome {
    journey.tap("add paint/panels").await?;
    journey.enter("paint/panels/1/length", "1000 exact").await?;
    journey.enter("paint/panels/1/height", "500 exact").await?;
    journey.tap("more paint/panels/1").await?;
    journey.enter("paint/panels/1/edges", "5 exact").await?;
    about(journey, "paint/area/1", 0.525, 0.0006).await?;
    journey.tap("add paint/panels/1/openings").await?;
    let opening = "paint/panels/1/openings/1";
    journey
        .enter(&format!("{opening}/length"), "400 exact")
        .await?;
    journey
        .enter(&format!("{opening}/height"), "300 exact")
        .await?;
    about(journey, "paint/area/1", 0.399, 0.0006).await?;
    // 14.589 m²: (3 x 14.589 x 28 / 270 + 0.05) x 1.1 = 5.0477 L.
    about(journey, "paint/litres", 5.048, 0.006).await
}

/// One component under a name, with its price list: 5.0477 L are one tin of 5 and one of 0.5 at 95 and 14.
async fn two_parts_and_their_tins(journey: &Journey) -> Outcome {
    journey.tap("add paint/products").await?;
    journey.enter("paint/products/1/name", "Vine green").await?;
    for (row, (size, price)) in [
        ("0.5 L", "14"),
        ("1 L", "24"),
        ("2.5 L", "52"),
        ("5 L", "95"),
    ]
    .into_iter()
    .enumerate()
    {
        let tin = format!("paint/products/1/tins/{}", row + 1);
        journey.tap("add paint/products/1/tins").await?;
        journey.enter(&format!("{tin}/size"), size).await?;
        journey.enter(&format!("{tin}/price"), price).await?;
    }
    journey.tap("more paint/systems/1/layers/1").await?;
    journey
        .choose("paint/systems/1/layers/1/parts/1/product", "1")
        .await?;
    about(journey, "paint/product_litres/1", 5.048, 0.006).await?;
    journey
        .expect_that("paint/product_cost/1", "109", |shown| {
            shown.contains("109.00")
        })
        .await?;
    journey
        .expect_that("paint/tins/1", "1 × 0.5 L + 1 × 5 L", |shown| {
            shown.replace('\u{a0}', " ") == "1 × 0.5 L + 1 × 5 L"
        })
        .await
}

/// 30 °C at 55 %: a coating maker's glossary gives a dew point of 20 °C; metal at 18 °C is told to be too cold.
async fn dew_point(journey: &Journey) -> Outcome {
    journey.enter("paint/temperature", "30 exact").await?;
    journey.enter("paint/humidity", "55 exact").await?;
    journey.enter("paint/metal", "18 ± 1").await?;
    about(journey, "paint/dew_point", 20.0, 0.5).await?;
    journey.wait_for("[data-remark=\"metal_too_cold\"]").await
}

/// Waits until a result shows a figure this near.
async fn about(journey: &Journey, result: &str, wanted: f64, slack: f64) -> Outcome {
    journey
        .expect_that(result, &format!("about {wanted}"), |shown| {
            // The ± may follow as a second and third number.
            let number = shown.split_whitespace().next().unwrap_or_default();
            let number = number.replace('−', "-").parse::<f64>();
            number.is_ok_and(|number| (number - wanted).abs() <= slack)
        })
        .await
}
