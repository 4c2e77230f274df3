//! The axle set up by hand in three trials, and the joints ticked off at the vehicle.

use std::time::Duration;

use super::cases;
use crate::{Device, Journey, Machine, Outcome};

cases![
    a_whole_axle_is_set_up_by_hand_in_three_trials,
    joints_are_ticked_off_at_the_vehicle_with_a_reload_in_the_middle,
];

/// Adds a row. A second press within a quarter of a second is taken for a trembling hand, and no person types faster.
async fn add(journey: &Journey, list: &str) -> Outcome {
    tokio::time::sleep(Duration::from_millis(300)).await;
    journey.tap(&format!("add {list}")).await
}

async fn enter_all(journey: &Journey, sheet: &str, entries: &[(&str, &str)]) -> Outcome {
    for (field, text) in entries {
        journey.enter(&format!("{sheet}/{field}"), text).await?;
    }
    Ok(())
}

async fn choose_all(journey: &Journey, sheet: &str, choices: &[(&str, &str)]) -> Outcome {
    for (field, choice) in choices {
        journey.choose(&format!("{sheet}/{field}"), choice).await?;
    }
    Ok(())
}

/// Reads answers of the sheet. What is exact says so in the band, and not in the table of results.
async fn answers(journey: &Journey, expected: &[(&str, &str)]) -> Outcome {
    for (name, said) in expected {
        let name = format!("final_drive/{name}");
        let so = |shown: &str| shown.trim_end_matches(" exact") == *said;
        journey.expect_that(&name, said, so).await?;
    }
    Ok(())
}

async fn a_whole_axle_is_set_up_by_hand_in_three_trials(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    the_set_comes_from_gearing(&journey).await?;
    the_pinion_finds_its_place(&journey).await?;
    the_preload_is_pulled(&journey).await?;
    the_sides_get_shims_in_pairs(&journey).await?;
    the_backlash_is_read(&journey).await?;
    three_trials(&journey).await?;
    nonsense_is_told_at_its_field(&journey).await?;
    let before = journey.results().await?;
    journey.reload().await?;
    journey
        .expect("final_drive/shim", "0.680 ± 0.010 mm")
        .await?;
    let after = journey.results().await?;
    if before != after {
        return Err(format!("before the reload {before:?}, after it {after:?}"));
    }
    journey.page_is_sound().await?;
    the_oil_stands_in_costs(&journey).await
}

/// Chosen on Gearing, the teeth are entered once; typed here, the difference is told.
async fn the_set_comes_from_gearing(journey: &Journey) -> Outcome {
    journey.open("#/gearing").await?;
    add(journey, "gearing/candidates").await?;
    journey.enter("gearing/candidates/1/teeth", "41/10").await?;
    journey.choose("gearing/candidates/1/chosen", "yes").await?;
    journey.open("#/final_drive").await?;
    answers(journey, &[("ratio", "4.1")]).await?;
    journey
        .wait_for("[data-remark=\"set_from_gearing\"]")
        .await?;
    enter_all(journey, "final_drive", &[("crown", "39"), ("pinion", "8")]).await?;
    journey.wait_for("[data-remark=\"set_differs\"]").await?;
    enter_all(journey, "final_drive", &[("crown", ""), ("pinion", "")]).await?;
    journey.wait_gone("[data-remark=\"set_differs\"]").await
}

/// 0.60 + 0.05 + 0.03 = 0.68 mm: half a millimetre, a tenth, and 0.08.
async fn the_pinion_finds_its_place(journey: &Journey) -> Outcome {
    let sheet = "final_drive";
    let flags = [("plus_means", "further"), ("shim_sits", "head_to_cone")];
    choose_all(journey, sheet, &flags).await?;
    let marks = [("old_shim", "0.60"), ("old_mark", "5"), ("new_mark", "-3")];
    enter_all(journey, sheet, &marks).await?;
    for (row, thickness) in [("1", "0.05"), ("2", "0.08"), ("3", "0.10"), ("4", "0.50")] {
        add(journey, "final_drive/shims").await?;
        let field = format!("final_drive/shims/{row}/thickness");
        journey.enter(&field, thickness).await?;
    }
    answers(
        journey,
        &[
            ("shim", "0.680 ± 0.010 mm"),
            ("pinion_pack", "0.68 mm"),
            ("pinion_count", "3"),
        ],
    )
    .await
}

/// 1.2 N·m at half of 77 + 3 mm are 30 N. 10 N at a pack of 1.00 mm and 35 N at 0.95 are 0.4 and 1.4 N·m: 0.96 mm.
async fn the_preload_is_pulled(journey: &Journey) -> Outcome {
    let entries = [
        ("preload", "1.2 N m"),
        ("flange", "77 exact"),
        ("cord", "3 exact"),
    ];
    enter_all(journey, "final_drive", &entries).await?;
    for (row, pack, pull) in [
        ("1", "1.00 exact", "10 N exact"),
        ("2", "0.95 exact", "35 N exact"),
    ] {
        add(journey, "final_drive/preload_trials").await?;
        let row = format!("final_drive/preload_trials/{row}");
        enter_all(journey, &row, &[("pack", pack), ("pull", pull)]).await?;
    }
    answers(
        journey,
        &[
            ("pull", "30 N"),
            ("preload_per_shim", "\u{2212}0.2 N·m"),
            ("preload_pack", "0.96 mm"),
        ],
    )
    .await
}

/// 0.05 mm of end float is taken up before 0.25 mm go on: 0.30, half of it on each side. 20 N more at 40 mm are 0.8 N·m at the pinion,
/// 3.28 at the crown wheel by 4.1.
async fn the_sides_get_shims_in_pairs(journey: &Journey) -> Outcome {
    let entries = [
        ("spread_wanted", "0.25"),
        ("spread_now", "-0.05 exact"),
        ("pull", "30 N exact"),
        ("side_pull", "50 N exact"),
    ];
    enter_all(journey, "final_drive", &entries).await?;
    answers(
        journey,
        &[
            ("spread_to_add", "0.3 mm"),
            ("spread_each", "0.15 mm"),
            ("side_rise", "0.8 N·m"),
            ("side_drag_behind", "3.28 N·m"),
        ],
    )
    .await?;
    journey
        .wait_for("[data-remark=\"side_preload_too_low\"]")
        .await
}

/// 3.2 L in cans of one litre are four, at 7.40 each 29.60.
async fn the_oil_stands_in_costs(journey: &Journey) -> Outcome {
    let oil = [
        ("oil", "3.2 L"),
        ("oil_name", "EP 90"),
        ("oil_can", "1 L"),
        ("oil_price", "7.40"),
    ];
    enter_all(journey, "final_drive", &oil).await?;
    journey.open("#/costs").await?;
    journey
        .until("the oil is a line of the costs", async || {
            let costs = journey.text("main").await?;
            Ok(costs.contains("EP 90") && costs.contains("29.60"))
        })
        .await
}

/// The least of three readings is 0.105; at 0.70721 for straight teeth of 20° the middle of the band lies 0.098981 mm away.
async fn the_backlash_is_read(journey: &Journey) -> Outcome {
    let entries = [
        ("backlash_least", "0.15"),
        ("backlash_most", "0.20"),
        ("spiral_angle", "0"),
    ];
    enter_all(journey, "final_drive", &entries).await?;
    for (row, reading) in [("1", "0.14"), ("2", "0.105"), ("3", "0.12")] {
        add(journey, "final_drive/readings").await?;
        let field = format!("final_drive/readings/{row}/reading");
        journey.enter(&field, &format!("{reading} exact")).await?;
    }
    answers(
        journey,
        &[("backlash", "0.105 mm"), ("move", "0.098981 mm")],
    )
    .await?;
    journey
        .wait_for("[data-remark=\"backlash_too_small\"]")
        .await
}

/// Face at 0.68 mm; low at 0.78: the middle lies two thirds of the way, each mark read to a quarter of the half height:
/// 0.1 × 0.25 × sqrt(0.5² + 1²) / 1.5² = 0.0124. At 0.745 the marks lie well.
async fn three_trials(journey: &Journey) -> Outcome {
    let trials = [
        (["0.68", "0", "0.105"], ["middle", "middle", "face"]),
        (["0.78", "0.12", "0.17"], ["towards_toe", "middle", "low"]),
        (
            ["0.745", "0.11", "0.175"],
            ["towards_toe", "middle", "middle"],
        ),
    ];
    let proposals = ["0.78 mm", "0.747 ± 0.012 mm", "0.745 mm"];
    for (at, ([shim, moved, backlash], [drive, coast, height])) in trials.into_iter().enumerate() {
        add(journey, "final_drive/trials").await?;
        let row = format!("final_drive/trials/{}", at + 1);
        let backlash = format!("{backlash} exact");
        let entries = [("shim", shim), ("moved", moved), ("backlash", &backlash)];
        enter_all(journey, &row, &entries).await?;
        let marks = [("drive", drive), ("coast", coast), ("height", height)];
        choose_all(journey, &row, &marks).await?;
        answers(journey, &[("next_shim", proposals[at])]).await?;
    }
    journey
        .wait_for("[data-remark=\"slope_of_trials\"]")
        .await?;
    let drawn = journey.text("[data-drawing=\"final_drive/marks\"]").await?;
    if drawn.contains("change nothing") {
        Ok(())
    } else {
        Err(format!("the drawing of good marks says `{drawn}`"))
    }
}

async fn nonsense_is_told_at_its_field(journey: &Journey) -> Outcome {
    for (field, wrong, right) in [
        ("readings/2/reading", "-0.1", "0.105 exact"),
        ("backlash_most", "0.10", "0.20"),
        ("preload_most", "0.8 N m", "1.6 N m"),
        ("pinion", "0", ""),
    ] {
        let key = format!("final_drive/{field}");
        let told = format!("[data-key=\"{key}\"][aria-invalid=true]");
        journey.enter(&key, wrong).await?;
        journey.wait_for(&told).await?;
        journey.enter(&key, right).await?;
        journey.wait_gone(&told).await?;
    }
    answers(journey, &[("backlash", "0.105 mm")]).await
}

/// What the page shows of the joint that is up.
async fn up(journey: &Journey, name: &str, figure: &str) -> Outcome {
    let (name, figure) = (name.to_owned(), figure.to_owned());
    journey
        .until(&format!("{name} is up with {figure}"), async || {
            Ok(journey.text("main h2").await? == name
                && journey.result("torque/up").await? == figure)
        })
        .await
}

async fn joints_are_ticked_off_at_the_vehicle_with_a_reload_in_the_middle(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.open("#/torque").await?;
    let wrench = [
        ("wrench_low", "30 lb ft"),
        ("wrench_high", "150 lb ft"),
        ("wrench_length", "18 in exact"),
    ];
    enter_all(&journey, "torque", &wrench).await?;
    three_joints(&journey).await?;
    nonsense_of_a_joint(&journey).await?;
    each_joint_takes_the_wrench_that_covers_it(&journey).await?;
    journey.device(Device::PHONE).await?;
    journey.tap("tick-off").await?;
    up(&journey, "Half-shaft nuts", "120 lbf·ft").await?;
    let facts = journey.text(".tick-facts").await?;
    if !facts.contains("First wrench") {
        return Err(format!("the page does not say which wrench: {facts}"));
    }
    journey.wait_for("[data-remark=\"never_back_off\"]").await?;
    journey.page_is_sound().await?;
    journey.enter("torque/joints/1/by", "Workshop").await?;
    journey.tap("tick-marked").await?;
    journey.tap("tick-done").await?;
    up(&journey, "Wheel nuts", "110 lbf·ft").await?;
    journey.tap("tick-later").await?;
    // 60 lbf·ft at 18 in and 6 in of extension straight on: 60 × 18 / 24.
    up(&journey, "Steering box", "45 lbf·ft").await?;
    journey.reload().await?;
    journey.expect("torque/done", "1 of 3 done").await?;
    up(&journey, "Wheel nuts", "110 lbf·ft").await?;
    journey.tap("tick-done").await?;
    up(&journey, "Steering box", "45 lbf·ft").await?;
    journey.tap("tick-done").await?;
    journey.expect("torque/done", "3 of 3 done").await?;
    a_tick_is_taken_back_and_the_record_tells_it(&journey).await
}

async fn three_joints(journey: &Journey) -> Outcome {
    let joints = [
        ("Half-shaft nuts", "other", "clamping_castle", "120 lb ft"),
        ("Wheel nuts", "wheels", "stud", "105 lb ft"),
        ("Steering box", "steering", "bolt", "60 lb ft"),
    ];
    for (at, (name, purpose, fixing, figure)) in joints.into_iter().enumerate() {
        add(journey, "torque/joints").await?;
        let row = format!("torque/joints/{}", at + 1);
        enter_all(journey, &row, &[("name", name), ("figure", figure)]).await?;
        choose_all(journey, &row, &[("purpose", purpose), ("fixing", fixing)]).await?;
        journey.tap(&format!("more {row}")).await?;
        let more: &[(&str, &str)] = match at {
            1 => &[("figure_to", "115 lb ft")],
            2 => &[("extension", "6 in exact")],
            _ => &[],
        };
        enter_all(journey, &row, more).await?;
    }
    Ok(())
}

async fn nonsense_of_a_joint(journey: &Journey) -> Outcome {
    for (key, wrong, right) in [
        ("torque/wrench_high", "20 lb ft", "150 lb ft"),
        ("torque/joints/2/figure_to", "90 lb ft", "115 lb ft"),
    ] {
        let told = format!("[data-key=\"{key}\"][aria-invalid=true]");
        journey.enter(key, wrong).await?;
        journey.wait_for(&told).await?;
        journey.enter(key, right).await?;
        journey.wait_gone(&told).await?;
    }
    journey.enter("torque/joints/1/figure", "200 lb ft").await?;
    journey
        .wait_for("[data-remark=\"wrench_out_of_range\"]")
        .await?;
    journey.enter("torque/joints/1/figure", "120 lb ft").await?;
    journey
        .wait_gone("[data-remark=\"wrench_out_of_range\"]")
        .await
}

/// Of two wrenches the smaller one is proposed as long as it covers the setting; what is chosen instead is judged.
async fn each_joint_takes_the_wrench_that_covers_it(journey: &Journey) -> Outcome {
    add(journey, "torque/wrenches").await?;
    let small = [("name", "Small"), ("low", "8 lb ft"), ("high", "40 lb ft")];
    enter_all(journey, "torque/wrenches/1", &small).await?;
    let taken = |wrench: &str| {
        format!(
            "[data-key=\"torque/joints/1/wrench\"] [data-choice=\"{wrench}\"][aria-checked=true]"
        )
    };
    journey.wait_for(&taken("first")).await?;
    journey.enter("torque/joints/1/figure", "25 lb ft").await?;
    journey.wait_for(&taken("1")).await?;
    journey.choose("torque/joints/1/wrench", "first").await?;
    journey
        .wait_for("[data-remark=\"wrench_out_of_range\"]")
        .await?;
    journey.tap("undo").await?;
    journey.enter("torque/joints/1/figure", "200 lb ft").await?;
    journey
        .wait_for("[data-remark=\"outside_every_wrench\"]")
        .await?;
    journey.enter("torque/joints/1/figure", "120 lb ft").await?;
    journey.wait_for(&taken("first")).await
}

async fn a_tick_is_taken_back_and_the_record_tells_it(journey: &Journey) -> Outcome {
    journey.tap(".tick-list summary").await?;
    journey.tap("untick torque/joints/2").await?;
    up(journey, "Wheel nuts", "110 lbf·ft").await?;
    journey.tap("undo").await?;
    journey.expect("torque/done", "3 of 3 done").await?;
    journey.tap("back").await?;
    let record = journey.text(".record").await?;
    for said in ["120 lb ft", "Workshop", "80 km", "45 lbf·ft"] {
        if !record.contains(said) {
            return Err(format!("the record does not say `{said}`: {record}"));
        }
    }
    Ok(())
}
