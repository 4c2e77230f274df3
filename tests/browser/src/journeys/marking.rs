//! Marking out: a pattern of twelve holes entered by hand, a reading spoiled and named, what cannot be told, and the way to costs.

use crate::journeys::cases;
use crate::{Device, Journey, Machine, Outcome};

cases![a_pattern_of_twelve_holes_is_entered_and_the_spoiled_reading_is_named];

/// Name, kind, sizes, and the distances from A, B, C and D.
type Hole = (
    &'static str,
    &'static str,
    &'static [(&'static str, &'static str)],
    [&'static str; 4],
);

/// Datums at the corners of a rectangle of 600 by 450 mm, whose diagonal is 750. Each hole was put at a place in whole
/// millimetres, given below, and its distances are the roots of the sums of squares, rounded to a tenth.
const HOLES: [Hole; 12] = [
    // 150, 120; 210, 120; 150, 180; 210, 180
    (
        "Bracket low left",
        "round",
        &[("diameter", "9")],
        ["192.1", "465.7", "558", "362.5"],
    ),
    (
        "Bracket low right",
        "round",
        &[("diameter", "9")],
        ["241.9", "408", "510.9", "391.2"],
    ),
    (
        "Bracket top left",
        "stud",
        &[("diameter", "8")],
        ["234.3", "484.7", "524.8", "308.9"],
    ),
    (
        "Bracket top right",
        "round",
        &[("diameter", "9")],
        ["276.6", "429.5", "474.3", "342.1"],
    ),
    // 330, 90; 420, 60; 500, 140; 520, 300
    (
        "Pedal opening",
        "rectangle",
        &[("length", "90"), ("width", "40")],
        ["342.1", "284.6", "450", "488.4"],
    ),
    (
        "Throttle rod",
        "slot",
        &[("length", "40"), ("width", "12")],
        ["424.3", "189.7", "429.5", "573.1"],
    ),
    (
        "Pedal shaft",
        "d_hole",
        &[("diameter", "22"), ("width", "19")],
        ["519.2", "172", "325.7", "588.3"],
    ),
    (
        "Loom",
        "round",
        &[("diameter", "38")],
        ["600.3", "310.5", "170", "541.2"],
    ),
    // 300, 260; 90, 330; 250, 380; 430, 390
    (
        "Column",
        "tube",
        &[("diameter", "48"), ("slant", "30°")],
        ["397", "397", "355.1", "355.1"],
    ),
    (
        "Cable",
        "round",
        &[("diameter", "1 in")],
        ["342.1", "607.5", "523.9", "150"],
    ),
    (
        "Pipe",
        "round",
        &[("diameter", "12")],
        ["454.9", "516.6", "356.9", "259.6"],
    ),
    (
        "Heater",
        "round",
        &[("diameter", "5/8 in")],
        ["580.5", "425.4", "180.3", "434.2"],
    ),
];

async fn a_pattern_of_twelve_holes_is_entered_and_the_spoiled_reading_is_named(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.device(Device::TABLET).await?;
    journey.open("#/marking").await?;
    for (field, text) in [
        ("ab", "600"),
        ("ac", "750"),
        ("bc", "450"),
        ("ad", "450"),
        ("bd", "750"),
        ("cd", "600"),
    ] {
        journey.enter(&format!("marking/{field}"), text).await?;
    }
    journey.choose("marking/taken_with", "trammel").await?;
    for (at, hole) in HOLES.iter().enumerate() {
        enter(&journey, at + 1, hole).await?;
    }
    // The image in the datums lies as far along and above its line as the hole lay.
    for (result, place) in [
        ("along/1", "150."),
        ("across/1", "120."),
        ("along/9", "300."),
        ("across/9", "260."),
        ("along/12", "430."),
        ("across/12", "390."),
    ] {
        let near = move |shown: &str| near(shown, place);
        journey
            .expect_that(&format!("marking/{result}"), place, near)
            .await?;
    }
    the_spoiled_reading_is_named_and_put_right(&journey).await?;
    distances_that_cannot_meet_are_told_at_their_field(&journey).await?;
    the_new_side_is_fitted_and_the_drawing_comes_nearer(&journey).await?;
    journey.page_is_sound().await?;
    costs_are_asked(&journey).await?;
    journey.end().await;
    Ok(())
}

/// Within a tenth and a half of a whole number of millimetres, given with its point.
fn near(shown: &str, place: &str) -> bool {
    let value = shown.split(' ').next().unwrap_or_default();
    let wanted: f64 = place.trim_end_matches('.').parse().unwrap_or(f64::NAN);
    value
        .parse::<f64>()
        .is_ok_and(|value| (value - wanted).abs() < 0.15)
}

async fn enter(journey: &Journey, at: usize, (name, kind, sizes, from): &Hole) -> Outcome {
    if at > 1 {
        journey.tap("add marking/features").await?;
    }
    let row = format!("marking/features/{at}");
    journey.enter(&format!("{row}/name"), name).await?;
    if *kind != "round" {
        journey.choose(&format!("{row}/kind"), kind).await?;
    }
    for (size, text) in *sizes {
        journey.enter(&format!("{row}/{size}"), text).await?;
    }
    for (datum, distance) in ["a", "b", "c", "d"].iter().zip(from) {
        journey.enter(&format!("{row}/{datum}"), distance).await?;
    }
    // Folded up again, so that the next one has the page.
    journey.tap(&format!("fold {row}")).await
}

async fn the_spoiled_reading_is_named_and_put_right(journey: &Journey) -> Outcome {
    let key = "marking/features/4/b";
    journey.tap("fold marking/features/4").await?;
    journey.enter(key, "439.5").await?;
    journey.wait_for("[data-remark=\"spoiled\"]").await?;
    let said = journey.text("[data-remark=\"spoiled\"] p").await?;
    // Ten millimetres too long, of hole four, from B.
    if !(said.starts_with("Bracket top right") && said.contains("from B")) {
        return Err(format!("the remark says `{said}`"));
    }
    journey
        .wait_for(&format!("[data-key=\"{key}\"][aria-invalid=true]"))
        .await?;
    journey.tap("open marking/readings").await?;
    // Without the fourth reading one can only say that one is bad.
    journey.enter("marking/features/4/d", "").await?;
    journey.wait_for("[data-remark=\"one_is_bad\"]").await?;
    journey.wait_gone("[data-remark=\"spoiled\"]").await?;
    // Without the third, nothing checks the other two.
    journey.enter("marking/features/4/c", "").await?;
    says(journey, "nothing checks them").await?;
    for (datum, distance) in [("b", "429.5"), ("c", "474.3"), ("d", "342.1")] {
        journey
            .enter(&format!("marking/features/4/{datum}"), distance)
            .await?;
    }
    says(journey, "agree").await
}

/// What the table says of the readings of the fourth hole.
async fn says(journey: &Journey, wanted: &str) -> Outcome {
    let cell = "[aria-labelledby=\"g-marking-readings\"] tbody tr:nth-child(4) td";
    journey
        .until(
            &format!("the readings of hole four: {wanted}"),
            async || Ok(journey.text(cell).await? == wanted),
        )
        .await
}

async fn distances_that_cannot_meet_are_told_at_their_field(journey: &Journey) -> Outcome {
    journey.tap("add marking/features").await?;
    let row = "marking/features/13";
    journey.enter(&format!("{row}/a"), "100").await?;
    journey.enter(&format!("{row}/b"), "420").await?;
    let key = format!("{row}/b");
    journey
        .wait_for(&format!("[data-key=\"{key}\"][aria-invalid=true]"))
        .await?;
    let said = journey.text("#f-marking-features-13-b-error p").await?;
    if !said.contains("80.0 mm") {
        return Err(format!(
            "100 and 420 over 600 miss by 80 mm, and the page says `{said}`"
        ));
    }
    // The others stay.
    journey
        .expect_that("marking/along/12", "430", |shown| near(shown, "430."))
        .await?;
    journey.tap(&format!("keys {row}")).await?;
    journey.tap(&format!("remove {row}")).await?;
    journey.wait_gone(&format!("[data-key=\"{key}\"]")).await
}

/// The new side's datums lie 2 mm further apart: half of that is left at either end of the line, and a hole half way between
/// them is struck from both with 1 mm more along.
async fn the_new_side_is_fitted_and_the_drawing_comes_nearer(journey: &Journey) -> Outcome {
    journey.tap("open marking/new_side").await?;
    journey.enter("marking/new_ab", "602").await?;
    journey.choose("marking/move_by", "fit").await?;
    journey
        .expect_that("marking/along/9", "301", |shown| near(shown, "301."))
        .await?;
    journey
        .expect_that("marking/differs/9", "1", |shown| near(shown, "1."))
        .await?;
    journey.tap("nearer marking/pattern").await?;
    journey.wait_for(".nearer[data-zoom=\"2\"]").await?;
    journey.tap("whole marking/pattern").await?;
    journey.wait_for(".nearer[data-zoom=\"1\"]").await?;
    journey.tap("table marking/pattern").await?;
    journey
        .wait_for("[data-drawing=\"marking/pattern\"] tbody tr:nth-child(12)")
        .await?;
    journey.tap("table marking/pattern").await
}

/// The question goes to costs with the features of this sheet, and follows them from then on.
async fn costs_are_asked(journey: &Journey) -> Outcome {
    journey.tap("open marking/getting").await?;
    journey.tap("ask costs/send").await?;
    journey.wait_for("[data-page=\"costs\"]").await?;
    journey.enter("costs/hour_rate", "20").await?;
    journey.enter("costs/send/1/send_each", "40").await?;
    journey.enter("costs/send/1/hours_each", "1").await?;
    // Twelve features at 40, or at an hour of 20 each.
    let verdict = "[data-result=\"costs/send/1/verdict\"]";
    says_of_costs(journey, verdict, "240").await?;
    journey.open("#/marking").await?;
    journey.tap("open marking/features").await?;
    journey.tap("add marking/features").await?;
    journey.enter("marking/features/14/a", "300").await?;
    journey.tap("open marking/getting").await?;
    journey.choose("marking/template_got", "hired").await?;
    journey.enter("marking/template_hire", "12.50").await?;
    journey.open("#/costs").await?;
    // One more, and the template that is hired is a line of its own.
    says_of_costs(journey, verdict, "260").await?;
    journey
        .expect_that("costs/priced/marking-template", "12.50", |shown| {
            shown.ends_with("12.50")
        })
        .await?;
    says_of_costs(
        journey,
        "[data-row=\"costs/priced/marking-template\"]",
        "Drilling template",
    )
    .await
}

async fn says_of_costs(journey: &Journey, selector: &str, wanted: &str) -> Outcome {
    let told = format!("costs say `{wanted}`");
    journey
        .until(&told, async || {
            Ok(journey
                .text(selector)
                .await
                .is_ok_and(|said| said.contains(wanted)))
        })
        .await
}
