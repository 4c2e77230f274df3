//! The gearing sheet, entered by hand as a person would.
//!
//! What is expected was worked out outside: by hand from v = n C / i, and by the reference checks of gearing (SciPy).

use crate::{Journey, Outcome};

/// Enters the sheet by hand, from empty, and reads its answers.
///
/// # Errors
/// What went otherwise than it should.
pub async fn by_hand(journey: &Journey) -> Outcome {
    journey.open("#/gearing").await?;
    speeds_of_a_ratio(journey).await?;
    an_impossible_entry(journey).await?;
    pull(journey).await?;
    sets_beside_the_fitted_one(journey).await?;
    a_wish(journey).await?;
    before_and_now(journey).await?;
    journey.page_is_sound().await
}

/// Tyre, four gears, axle and engine speed: seven entries, and every speed is there.
async fn speeds_of_a_ratio(journey: &Journey) -> Outcome {
    let made = journey.entries_made();
    journey.enter("vehicle/tyre_rear", "185/80 R 14").await?;
    for (row, ratio) in [(1, "3.78"), (2, "2.12"), (3, "1.46"), (4, "1")] {
        add(journey, "gearing/gears", row, "ratio").await?;
        journey
            .enter(&format!("gearing/gears/{row}/ratio"), ratio)
            .await?;
    }
    journey.enter("gearing/axle", "4.11").await?;
    journey.enter("gearing/engine_speed", "4000").await?;
    if journey.entries_made() - made > 7 {
        return Err("the speeds of a ratio take more than seven entries".into());
    }
    // C = 3.05 x 0.6516 m = 1.98738 m: 4000 rpm / 4.11 is 116.05 km/h in top gear, and / (3.78 x 4.11) is 30.70 in first.
    about(journey, "gearing/speed/4", "116", "km/h").await?;
    about(journey, "gearing/speed/1", "30.7", "km/h").await?;
    // Counted teeth are exact; a roll-out wins over the designation: 2412 mm, 37/6, 1000 rpm are 23.47 km/h.
    journey.enter("vehicle/roll_out_rear", "2412 exact").await?;
    journey.enter("gearing/axle", "37/6").await?;
    about(journey, "gearing/per_1000/4", "23.47", "km/h").await
}

/// A ratio of nothing is told at its field, and every other result stays.
async fn an_impossible_entry(journey: &Journey) -> Outcome {
    journey.enter("gearing/gears/2/ratio", "0").await?;
    journey
        .wait_for("[data-key=\"gearing/gears/2/ratio\"][aria-invalid=true]")
        .await?;
    about(journey, "gearing/per_1000/4", "23.47", "km/h").await?;
    // The lorry's own box, whose figures SciPy worked out.
    for (row, ratio) in [
        (1, "5.87 exact"),
        (2, "3.21 exact"),
        (3, "1.83 exact"),
        (4, "1 exact"),
    ] {
        journey
            .enter(&format!("gearing/gears/{row}/ratio"), ratio)
            .await?;
    }
    journey
        .wait_gone("[data-key=\"gearing/gears/2/ratio\"][aria-invalid=true]")
        .await
}

/// Torque, weight and size: top speed, hills and restart.
async fn pull(journey: &Journey) -> Outcome {
    for (row, (speed, torque)) in [
        ("800", "214"),
        ("1200", "241"),
        ("1600", "255"),
        ("2000", "252"),
        ("2400", "243"),
        ("2800", "229"),
        ("3200", "210"),
        ("3600", "181"),
    ]
    .into_iter()
    .enumerate()
    {
        add(journey, "gearing/torque", row + 1, "at").await?;
        let key = format!("gearing/torque/{}", row + 1);
        journey.enter(&format!("{key}/at"), speed).await?;
        journey.enter(&format!("{key}/torque"), torque).await?;
    }
    for (key, text) in [
        ("vehicle/front_unladen", "1080 ± 20 kg"),
        ("vehicle/rear_unladen", "795 ± 20"),
        ("vehicle/width", "2.2 m exact"),
        ("vehicle/height", "2.4 m exact"),
        ("vehicle/centre_height", "900 exact"),
        ("gearing/drag", "0.8 exact"),
        ("gearing/rolling", "0.018 exact"),
        ("gearing/altitude", "0 exact"),
        ("gearing/temperature", "15 exact"),
    ] {
        journey.enter(key, text).await?;
    }
    // The engine turns to its last point, 3600 rpm: reference check top-lorry, 84.485 km/h whatever the weight.
    about(journey, "gearing/top/4", "84.5", "km/h").await?;
    journey
        .wait_for("[data-remark=\"top_speed_is_not_gearing\"]")
        .await?;
    // The keypad stands in the drawing's place until it is put away.
    journey.tap("pad close").await?;
    journey
        .wait_for("[data-drawing=\"gearing/pull\"] svg[role=img]")
        .await
}

/// A set that could be had, beside the fitted one.
async fn sets_beside_the_fitted_one(journey: &Journey) -> Outcome {
    journey.enter("gearing/road_speed", "60").await?;
    // 1000 m a minute / 2.412 m x 37/6 is 2556.7 rpm, x 41/8 is 2124.8: 431.9 fewer, and nothing can be off.
    about(journey, "gearing/cruise", "2556.7", "rpm").await?;
    journey.enter("gearing/dial_axle", "37/6").await?;
    add(journey, "gearing/candidates", 1, "teeth").await?;
    journey.enter("gearing/candidates/1/teeth", "41/8").await?;
    about(journey, "gearing/candidate_revs/1", "2124.8", "rpm").await?;
    about(journey, "gearing/candidate_change/1", "-431.9", "rpm").await?;
    // Reference check dial-after: a dial that was right shows 49.8649 km/h at 60; to a thousandth, as dials are read, 49.86.
    about(journey, "gearing/candidate_dial/1", "49.86", "km/h").await?;
    journey.choose("gearing/candidates/1/offset", "no").await?;
    let table = journey.text("[data-table=\"gearing/beside\"]").await?;
    if table.contains("no: Hypoid offset") {
        Ok(())
    } else {
        Err(format!(
            "the table should tell that the offset does not fit, and says `{table}`"
        ))
    }
}

/// A wish for an engine speed: the ratio, and real teeth near it.
async fn a_wish(journey: &Journey) -> Outcome {
    journey.enter("gearing/wanted_revs", "2500").await?;
    journey.enter("gearing/wanted_speed", "70").await?;
    // Reference check ratio-for-revs: 5.16857.
    about(journey, "gearing/axle_for_speed", "5.1686", "").await
}

/// What was is kept, the set goes in, and the difference stands beside.
async fn before_and_now(journey: &Journey) -> Outcome {
    journey.tap("keep-before").await?;
    journey.enter("gearing/axle", "41/8").await?;
    journey
        .wait_for("[data-before-now=\"gearing/cruise\"]")
        .await?;
    let row = journey.text("[data-before-now=\"gearing/cruise\"]").await?;
    for part in ["2556.7", "2124.8", "431.87"] {
        if !row.contains(part) {
            return Err(format!(
                "before and now of the cruise should hold {part}, and says `{row}`"
            ));
        }
    }
    // Undone in one step; the dial that was right with 37/6 is right again.
    journey.enter("gearing/axle", "37/6").await?;
    about(journey, "gearing/cruise", "2556.7", "rpm").await
}

/// Opens a new row of a list unless it is there already.
async fn add(journey: &Journey, list: &str, row: usize, field: &str) -> Outcome {
    let key = format!("[data-key=\"{list}/{row}/{field}\"]");
    if !journey.has(&key).await? {
        journey.tap(&format!("add {list}")).await?;
    }
    journey.wait_for(&key).await
}

/// Waits until a result shows this figure, to within half of its last digit here, in this unit.
async fn about(journey: &Journey, result: &str, figure: &str, unit: &str) -> Outcome {
    let wanted: f64 = figure
        .parse()
        .map_err(|_| format!("{figure} is no number"))?;
    let digits = figure.split_once('.').map_or(0, |(_, after)| after.len());
    let slack = 0.5 * 10f64.powi(-i32::try_from(digits).unwrap_or(0)) * 1.000_001;
    journey
        .expect_that(result, &format!("{figure} {unit}"), |shown| {
            // The ± may follow as a second and third number.
            let number = shown
                .split_whitespace()
                .next()
                .unwrap_or_default()
                .replace('−', "-");
            let near = number
                .parse::<f64>()
                .is_ok_and(|value| (value - wanted).abs() <= slack);
            near && shown.ends_with(unit)
        })
        .await
}
