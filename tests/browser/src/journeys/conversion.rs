//! The conversion sheet, entered by hand as a person would: first a steering that steers backwards.

use super::cases;
use crate::{Device, Journey, Machine, Outcome};

cases![
    a_steering_that_steers_backwards_is_stopped_mended_and_read,
    pedals_cables_and_the_list_of_what_changes_sides_are_kept,
    the_example_conversion_is_sound_in_every_part_and_on_every_screen,
];

/// Left-hand drive: the drag link is the long side of a 3-4-5 triangle, 400 mm along and 300 mm across, level.
const STEERING: [(&str, &str); 12] = [
    ("now/1/box_x", "-400 exact"),
    ("now/1/box_out", "300 exact"),
    ("now/1/box_z", "600 exact"),
    ("now/1/drop_arm", "200 exact"),
    ("now/1/at_centre", "0 exact"),
    ("now/1/box_ratio", "20 exact"),
    ("now/1/ball_x", "0 exact"),
    ("now/1/ball_out", "600 exact"),
    ("now/1/ball_z", "400 exact"),
    ("pivots", "1500 exact"),
    ("half_spring", "600 exact"),
    ("seat_above_eye", "0 exact"),
];

fn at(field: &str) -> String {
    format!("conversion/{field}")
}

async fn reads(journey: &Journey, result: &str, begins: &str) -> Outcome {
    let told = format!("{begins} ...");
    journey
        .expect_that(&at(result), &told, |shown| shown.starts_with(begins))
        .await
}

/// Enters a steering that steers backwards, sees it stopped, mends it and reads it.
///
/// The link pulls 150 mm of arm at 400/500 of its force, the drop arm of 200 mm pushes at the same: 0.75 of swing for a
/// unit of steer, 15 turns at the wheel with a box of 20. Risen by 60 mm the axle goes forward by 4.018 mm on its arc of
/// 450, and the link's length asks for 121205 sin + 6830 + 135000 (1 - cos) = 0: 3.34 degrees, away from the driver.
async fn a_steering_that_steers_backwards_is_stopped_mended_and_read(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("#/conversion").await?;
    journey.choose(&at("now/1/arm_swings"), "forward").await?;
    journey.choose(&at("now/1/ball_stands"), "inside").await?;
    journey.choose(&at("now/1/side"), "left").await?;
    for (field, text) in STEERING {
        journey.enter(&at(field), text).await?;
    }
    journey.choose(&at("fixed_eye"), "front").await?;
    journey
        .wait_for("[data-remark=\"steers_backwards\"]")
        .await?;
    reads(&journey, "least/box_up", "Stopped").await?;
    if journey
        .has("[data-result=\"conversion/moved_link/up\"]")
        .await?
    {
        return Err("a stopped steering still tells what moving its box does".into());
    }
    journey.choose(&at("now/1/arm_swings"), "backward").await?;
    journey
        .wait_gone("[data-remark=\"steers_backwards\"]")
        .await?;
    reads(&journey, "link/now", "500").await?;
    reads(&journey, "ratio/now", "15").await?;
    reads(&journey, "bump_up/now", "\u{2212}3.339").await?;
    a_link_too_short_is_told_and_spoils_nothing(&journey).await?;
    the_king_pins_lean_and_the_circle_follows(&journey).await?;
    journey.page_is_sound().await?;
    journey.wait_until_kept().await?;
    journey.reload().await?;
    reads(&journey, "link/now", "500").await?;
    journey.console_is_quiet().await
}

/// With the inner wheel at 34 degrees the track rod turns the outer to 27.6645 about upright pins, and to 27.6052 about pins that lean in by 7
/// (rotations about the pins, solved with NumPy); plane geometry makes circles of 13.0229 m with the tyre 50 mm outside the upright
/// pins, and of 13.2484 m with 150 mm outside the leaning ones.
async fn the_king_pins_lean_and_the_circle_follows(journey: &Journey) -> Outcome {
    for (field, text) in [
        ("stop", "34 exact"),
        ("track_arm", "165 exact"),
        ("track_arm_angle", "17 exact"),
    ] {
        journey.enter(&at(field), text).await?;
    }
    journey.open("#/vehicle").await?;
    for (key, text) in [
        ("vehicle/wheelbase", "3000 exact"),
        ("vehicle/track_front", "1600 exact"),
    ] {
        journey.enter(key, text).await?;
    }
    journey.open("#/conversion").await?;
    reads(journey, "circle_left/now", "13.02").await?;
    // A lean needs the wheel's radius, or the offset as it was measured.
    journey.enter(&at("inclination"), "7 exact").await?;
    journey
        .expect_that(&at("circle_left/now"), "no figure", |shown| {
            !shown.contains(|c: char| c.is_ascii_digit()) || shown.contains("needs")
        })
        .await?;
    reads(journey, "link/now", "500").await?;
    journey.enter(&at("scrub"), "150 exact").await?;
    reads(journey, "circle_left/now", "13.248").await?;
    journey.enter(&at("scrub"), "").await?;
    journey.enter(&at("inclination"), "").await?;
    reads(journey, "circle_left/now", "13.02").await
}

async fn a_link_too_short_is_told_and_spoils_nothing(journey: &Journey) -> Outcome {
    journey.enter(&at("link_most"), "480").await?;
    journey
        .wait_for("[data-remark=\"link_cannot_reach\"]")
        .await?;
    reads(journey, "ratio/now", "15").await?;
    journey.enter(&at("link_most"), "530").await?;
    journey
        .wait_gone("[data-remark=\"link_cannot_reach\"]")
        .await
}

async fn pedals_cables_and_the_list_of_what_changes_sides_are_kept(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("#/conversion").await?;
    the_makers_pedal_is_the_check(&journey).await?;
    journey.page_is_sound().await?;
    a_bend_too_tight_is_told_where_it_is(&journey).await?;
    journey.page_is_sound().await?;
    let all = the_list_is_worked_through(&journey).await?;
    journey.page_is_sound().await?;
    journey.wait_until_kept().await?;
    journey.reload().await?;
    journey.tap("part sides").await?;
    reads(&journey, "open", &(all - 3).to_string()).await?;
    for (field, held) in [
        ("changes/dip/state", "done"),
        ("changes/column_lock/state", "does_not_apply"),
    ] {
        let found = journey.entry(&at(field)).await?;
        if found != held {
            return Err(format!("{field} holds `{found}` after a reload"));
        }
    }
    journey.tap("part pedals").await?;
    reads(&journey, "bulkhead/now", "7500 N").await?;
    journey.console_is_quiet().await
}

/// 300 mm over 60 is 5:1; 1500 N in a fright are 7500 N at the bulkhead. A master of 25 mm in place of 20 takes
/// (25/20)² of the foot: 500 N become 781.
async fn the_makers_pedal_is_the_check(journey: &Journey) -> Outcome {
    journey.tap("part pedals").await?;
    journey.tap("old conversion/brake_was").await?;
    for (field, text) in [
        ("pad_arm", "300 exact"),
        ("rod_arm", "60 exact"),
        ("master", "20 exact"),
    ] {
        journey
            .enter(&format!("conversion/brake_was/1/{field}"), text)
            .await?;
    }
    journey.enter(&at("foot"), "500 N exact").await?;
    journey.tap("take-over conversion/brake_now").await?;
    reads(journey, "bulkhead/now", "7500 N").await?;
    reads(journey, "foot/now", "500 N").await?;
    reads(journey, "foot/change", "0").await?;
    journey.enter(&at("brake_now/1/master"), "25 exact").await?;
    reads(journey, "foot/now", "781").await?;
    journey
        .wait_for("[data-remark=\"foot_over_limit\"]")
        .await?;
    // A bore of nothing is told at its field; what does not rest on it stays.
    journey.enter(&at("brake_now/1/master"), "0").await?;
    journey
        .wait_for("[data-key=\"conversion/brake_now/1/master\"][aria-invalid=true]")
        .await?;
    reads(journey, "bulkhead/now", "7500 N").await?;
    journey.enter(&at("brake_now/1/master"), "20 exact").await?;
    reads(journey, "foot/now", "500 N").await
}

/// 400 mm and a quarter turn of 150 mm: 635.6 mm.
async fn a_bend_too_tight_is_told_where_it_is(journey: &Journey) -> Outcome {
    journey.tap("part routes").await?;
    journey.tap("add conversion/routes").await?;
    let row = at("routes/1");
    journey.choose(&format!("{row}/kind"), "throttle").await?;
    journey.tap(&format!("add {row}/straights")).await?;
    journey
        .enter(&format!("{row}/straights/1/length"), "400 exact")
        .await?;
    journey.tap(&format!("add {row}/bends")).await?;
    journey
        .enter(&format!("{row}/bends/1/radius"), "150 exact")
        .await?;
    journey
        .enter(&format!("{row}/bends/1/angle"), "90 exact")
        .await?;
    reads(journey, "cut/1", "635.6").await?;
    journey.enter(&format!("{row}/least_radius"), "200").await?;
    journey.wait_for("[data-remark=\"bend_too_tight\"]").await?;
    reads(journey, "cut/1", "635.6").await?;
    journey.enter(&format!("{row}/least_radius"), "100").await?;
    journey.wait_gone("[data-remark=\"bend_too_tight\"]").await
}

/// Ticks three of the list and writes a note; tells how many there were.
async fn the_list_is_worked_through(journey: &Journey) -> Outcome<usize> {
    journey.tap("part sides").await?;
    let all = journey.result(&at("open")).await?;
    let number: String = all.chars().take_while(char::is_ascii_digit).collect();
    let all: usize = number
        .parse()
        .map_err(|_| format!("the count of open ones reads `{all}`"))?;
    for (thing, state) in [
        ("dip", "done"),
        ("wipers", "done"),
        ("column_lock", "does_not_apply"),
    ] {
        journey
            .choose(&format!("conversion/changes/{thing}/state"), state)
            .await?;
    }
    reads(journey, "open", &(all - 3).to_string()).await?;
    journey.tap("note conversion/changes/dip").await?;
    journey
        .enter(&at("changes/dip/note"), "new lamp units")
        .await?;
    Ok(all)
}

async fn the_example_conversion_is_sound_in_every_part_and_on_every_screen(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.tap("example").await?;
    let mut wrong = Vec::new();
    for (name, device) in [
        ("tablet", Device::TABLET),
        ("upright", Device::TABLET_UPRIGHT),
        ("phone", Device::PHONE),
        ("desk", Device::DESK),
    ] {
        journey.device(device).await?;
        for part in ["steering", "pedals", "routes", "sides"] {
            journey.open("#/conversion").await?;
            journey.tap(&format!("part {part}")).await?;
            let fold = "[data-do=\"fold conversion/routes/3\"][aria-expanded=false]";
            if part == "routes" && journey.has(fold).await? {
                journey.tap(fold).await?;
            }
            // What the sticky band half covers is not too small, only scrolled.
            journey.ask("window.scrollTo(0, 0);", vec![]).await?;
            journey
                .screenshot(&format!("conversion-{part}-{name}"))
                .await?;
            if let Err(why) = journey.page_is_sound().await {
                wrong.push(format!("{part} on the {name}: {why}"));
            }
        }
    }
    if wrong.is_empty() {
        journey.console_is_quiet().await
    } else {
        Err(wrong.join("\n      "))
    }
}
