//! Marking out: the drawing under the fingers, places by offsets and by squares, edges as lines, and entries that make no sense.

use crate::journeys::cases;
use crate::{Device, Journey, Machine, Outcome};

cases![
    the_drawing_comes_nearer_under_two_fingers_and_is_moved_by_one,
    places_by_offsets_and_squares_are_right_and_land_is_reckoned_to_edges_as_lines,
    entries_that_make_no_sense_are_told_at_their_field_and_spoil_nothing_else,
];

/// The box of the first feature as it was, on the screen: left, top, width, height.
async fn first_feature(journey: &Journey) -> Outcome<[f64; 4]> {
    const BOX: &str = "const b = document.querySelector('[data-drawing=\"marking/pattern\"] path.before').getBoundingClientRect(); \
                       return [b.left, b.top, b.width, b.height];";
    serde_json::from_value(journey.ask(BOX, vec![]).await?).map_err(|error| error.to_string())
}

async fn zoom(journey: &Journey) -> Outcome<f64> {
    const ZOOM: &str = "return Number(document.querySelector('.nearer').dataset.zoom)";
    let zoom = journey.ask(ZOOM, vec![]).await?;
    zoom.as_f64().ok_or_else(|| format!("no zoom: {zoom}"))
}

async fn scrolled(journey: &Journey) -> Outcome<f64> {
    // The drawing's own column scrolls where the screen is low.
    const SCROLLED: &str = "return window.scrollY + document.querySelector('.side').scrollTop";
    let scrolled = journey.ask(SCROLLED, vec![]).await?;
    scrolled.as_f64().ok_or_else(|| "no page".to_owned())
}

fn middle([left, top, width, height]: [f64; 4]) -> (f64, f64) {
    (left + width / 2.0, top + height / 2.0)
}

async fn the_drawing_comes_nearer_under_two_fingers_and_is_moved_by_one(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.tap("example").await?;
    for device in [Device::TABLET, Device::PHONE] {
        journey.device(device).await?;
        // Each begins with the whole.
        journey.open("#/gearing").await?;
        drawing_in_sight(&journey).await?;
        two_fingers_and_one(&journey).await?;
        // What follows is done on the whole again.
        journey.open("#/gearing").await?;
        drawing_in_sight(&journey).await?;
        the_browsers_own_hand(&journey).await?;
        // Half way down, the key that lies under the band or the column's edge would count as a small one.
        let top = "document.querySelector('.side').scrollTop = 0; scrollTo({ top: 0, behavior: 'instant' })";
        journey.ask(top, vec![]).await?;
        journey.page_is_sound().await?;
    }
    Ok(())
}

async fn drawing_in_sight(journey: &Journey) -> Outcome {
    journey.open("#/marking").await?;
    journey
        .wait_for("[data-drawing=\"marking/pattern\"] path.before")
        .await?;
    let show = "document.querySelector('.close .plate').scrollIntoView({ block: 'center', behavior: 'instant' })";
    journey.ask(show, vec![]).await?;
    journey.drawn().await
}

/// Notes whether every move of two fingers is kept from the browser.
const HEAR: &str = "window.keptTouches = undefined; \
    window.addEventListener('touchmove', (e) => { \
      if (e.touches.length > 1) window.keptTouches = (window.keptTouches ?? true) && e.defaultPrevented; \
    });";

async fn two_fingers_and_one(journey: &Journey) -> Outcome {
    let (before, page) = (first_feature(journey).await?, scrolled(journey).await?);
    let (x, y) = middle(before);
    journey.ask(HEAR, vec![]).await?;
    // Two fingers, 20 px above and below the feature, go 50 px further each.
    let spread = [
        [(x, y - 20.0), (x, y - 70.0)],
        [(x, y + 20.0), (x, y + 70.0)],
    ];
    journey.fingers(&spread).await?;
    let near = first_feature(journey).await?;
    let times = near[2] / before[2];
    if (times - 3.5).abs() > 0.2 || (zoom(journey).await? - 3.5).abs() > 0.2 {
        return Err(format!(
            "fingers 40 px apart went 140 px apart, and the drawing came {times} times nearer"
        ));
    }
    stands(near, (x, y), 4.0, "between the fingers")?;
    let kept = journey.ask("return window.keptTouches", vec![]).await?;
    if kept.as_bool() != Some(true) {
        return Err("two fingers on the drawing are left to the browser, which scrolls".into());
    }
    // One finger takes it along, and the page stays where it is.
    journey.fingers(&[[(x, y), (x - 40.0, y + 32.0)]]).await?;
    stands(
        first_feature(journey).await?,
        (x - 40.0, y + 32.0),
        4.0,
        "under the finger",
    )?;
    if (scrolled(journey).await? - page).abs() > 1.0 {
        return Err("the page moved with the drawing".into());
    }
    // Together again: no further than the whole.
    let pinch = [
        [(x, y - 80.0), (x, y - 15.0)],
        [(x, y + 80.0), (x, y + 15.0)],
    ];
    journey.fingers(&pinch).await?;
    let whole = first_feature(journey).await?;
    if zoom(journey).await? != 1.0 {
        return Err("two fingers do not bring the whole back".into());
    }
    stands(whole, middle(before), 1.5, "where it was at first")?;
    Ok(())
}

/// The same by the browser's own hand.
async fn the_browsers_own_hand(journey: &Journey) -> Outcome {
    let (before, page) = (first_feature(journey).await?, scrolled(journey).await?);
    let at = middle(before);
    journey.pinch(at, 3.0).await?;
    let near = first_feature(journey).await?;
    let times = near[2] / before[2];
    // The browser's hand goes as much further as a browser of its own would take for trembling.
    if !(2.7..4.5).contains(&times) {
        return Err(format!(
            "a pinch of 3 brought the drawing {times} times nearer"
        ));
    }
    stands(near, at, 8.0, "between the fingers")?;
    journey.swipe(at, (-40.0, -40.0)).await?;
    let moved = (at.0 - 40.0, at.1 - 40.0);
    // What the browser takes for a trembling hand, some fifteen pixels, is not passed on.
    stands(
        first_feature(journey).await?,
        moved,
        24.0,
        "under the finger",
    )?;
    if (scrolled(journey).await? - page).abs() > 1.0 {
        return Err("the page moved with the drawing".into());
    }
    Ok(())
}

fn stands(is: [f64; 4], wanted: (f64, f64), within: f64, told: &str) -> Outcome {
    let (x, y) = middle(is);
    if (x - wanted.0).hypot(y - wanted.1) <= within {
        Ok(())
    } else {
        Err(format!(
            "the feature should stand {told}, at {wanted:?}, and stands at {x}, {y}"
        ))
    }
}

/// Within a tenth and a half of a whole number of millimetres.
async fn expect_mm(journey: &Journey, result: &str, wanted: f64) -> Outcome {
    let near = move |shown: &str| {
        let value = shown.split(' ').next().unwrap_or_default();
        // A true minus, as it is shown.
        let value = value.replace('\u{2212}', "-");
        value
            .parse::<f64>()
            .is_ok_and(|value| (value - wanted).abs() < 0.15)
    };
    journey
        .expect_that(&format!("marking/{result}"), &wanted.to_string(), near)
        .await
}

/// What is typed of a feature: fields and texts; a choice has its name in front of an equals sign.
async fn feature(journey: &Journey, row: u32, typed: &[(&str, &str)]) -> Outcome {
    if row > 1 {
        journey.tap("add marking/features").await?;
    }
    let row = format!("marking/features/{row}");
    journey.tap(&format!("more {row}")).await?;
    for (field, text) in typed {
        let key = format!("{row}/{field}");
        if *field == "side" {
            journey.choose(&key, text).await?;
        } else {
            journey.enter(&key, text).await?;
        }
    }
    Ok(())
}

async fn places_by_offsets_and_squares_are_right_and_land_is_reckoned_to_edges_as_lines(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.device(Device::TABLET).await?;
    journey.open("#/marking").await?;
    journey.enter("marking/ab", "500").await?;
    // Triangles of 300, 400 and 500; of 30, 40 and 50, beyond A and below the line; and an offset with a distance.
    feature(
        &journey,
        1,
        &[("diameter", "20"), ("along", "180"), ("across", "240")],
    )
    .await?;
    feature(
        &journey,
        2,
        &[
            ("diameter", "10"),
            ("along", "-30 ± 0.2"),
            ("across", "40 ± 0.2"),
            ("side", "below"),
        ],
    )
    .await?;
    feature(
        &journey,
        3,
        &[("diameter", "8"), ("a", "300"), ("along", "180")],
    )
    .await?;
    for (result, wanted) in [
        ("arc_a/1", 300.0),
        ("arc_b/1", 400.0),
        ("arc_a/2", 50.0),
        ("along/2", -30.0),
        ("across/2", -40.0),
        ("across/3", 240.0),
    ] {
        expect_mm(&journey, result, wanted).await?;
    }
    // A third reading, and what remains of it: 300.4 was read where the other two give 300.
    journey.enter("marking/features/1/a", "300.4").await?;
    journey.tap("open marking/readings").await?;
    let readings = "[aria-labelledby=\"g-marking-readings\"] tbody tr:nth-child(1)";
    journey
        .until("three readings agree", async || {
            Ok(journey.text(readings).await?.contains("agree"))
        })
        .await?;
    residuals_have_the_digits_of_their_readings(&journey).await?;
    edges_as_lines(&journey).await?;
    a_rib_as_a_strip(&journey).await?;
    journey.page_is_sound().await
}

/// A rule is read to half a millimetre, a tape to a whole one: what remains is told to a tenth, and of two readings nothing remains.
async fn residuals_have_the_digits_of_their_readings(journey: &Journey) -> Outcome {
    const CELLS: &str = "return [...document.querySelectorAll('[aria-labelledby=\"g-marking-readings\"] tbody tr')] \
                         .map((row) => [...row.querySelectorAll('td')].slice(3).map((cell) => cell.textContent.replace(/\\s/g, ' ')))";
    let rows: Vec<Vec<String>> = serde_json::from_value(journey.ask(CELLS, vec![]).await?)
        .map_err(|error| error.to_string())?;
    let tenth = |cell: &&String| {
        let number = cell.trim_end_matches(" mm");
        let point = number.find('.').map(|at| number.len() - at);
        **cell != "—" && (number == cell.as_str() || point != Some(2))
    };
    if let Some(odd) = rows.iter().flatten().find(tenth) {
        return Err(format!("`{odd}` remains of a reading: {rows:?}"));
    }
    let nothing = rows.get(1).is_some_and(|row| {
        row.iter()
            .filter(|cell| *cell != "—")
            .all(|cell| cell == "0.0 mm")
    });
    if rows.len() == 3 && nothing {
        Ok(())
    } else {
        Err(format!("of two readings remains: {rows:?}"))
    }
}

async fn edges_as_lines(journey: &Journey) -> Outcome {
    journey.enter("marking/features/1/a", "").await?;
    journey.tap("open marking/there").await?;
    journey.tap("add marking/edges").await?;
    journey.enter("marking/edges/1/name", "Scuttle").await?;
    // 280 above the line: 280 less 240 less 10; and from the lower hole 280 and 40 less 5.
    journey.enter("marking/edges/1/off_a", "280").await?;
    journey.tap("open marking/results").await?;
    expect_mm(journey, "edge/1", 30.0).await?;
    expect_mm(journey, "edge/2", 315.0).await?;
    // It rises to 655 at B', 3 in 4: at 180 along it stands at 415, so the middle lies 175 * 4 / 5 off it.
    journey.enter("marking/edges/1/off_b", "655").await?;
    expect_mm(journey, "edge/1", 130.0).await?;
    // The same edge as at first, by two of its points.
    journey.choose("marking/edges/1/by", "two_points").await?;
    for (field, text) in [
        ("one_a", "280"),
        ("one_b", "573.06"),
        ("two_a", "573.06"),
        ("two_b", "280"),
    ] {
        journey
            .enter(&format!("marking/edges/1/{field}"), text)
            .await?;
    }
    expect_mm(journey, "edge/1", 30.0).await?;
    // Points that no two arcs meet in are told at the last of them, and what was typed stays.
    journey.enter("marking/edges/1/two_b", "20").await?;
    journey
        .wait_for("[data-key=\"marking/edges/1/two_b\"][aria-invalid=true]")
        .await?;
    expect_mm(journey, "arc_a/1", 300.0).await?;
    journey.enter("marking/edges/1/two_b", "280").await
}

/// A rib of 30 mm above the line, 300 mm from above A' to above B': the lower hole, 10 mm across, lies 30 mm beside its blunt end, whose
/// corner stands 285 mm up.
async fn a_rib_as_a_strip(journey: &Journey) -> Outcome {
    journey.tap("add marking/there").await?;
    journey.choose("marking/there/1/kind", "strip").await?;
    for (field, text) in [
        ("name", "Rib"),
        ("a", "300"),
        ("b", "583.1"),
        ("two_a", "583.1"),
        ("two_b", "300"),
        ("diameter", "30"),
    ] {
        let key = format!("marking/there/1/{field}");
        journey.enter(&key, text).await?;
    }
    expect_mm(journey, "land/2", 30_f64.hypot(325.0) - 5.0).await?;
    // Both ends in one place make no strip: that is told at the end, and a round thing stays clear of the first hole.
    journey.enter("marking/there/1/two_a", "300").await?;
    journey.enter("marking/there/1/two_b", "583.1").await?;
    journey
        .wait_for("[data-key=\"marking/there/1/two_b\"][aria-invalid=true]")
        .await?;
    journey.choose("marking/there/1/kind", "round").await?;
    expect_mm(journey, "land/2", 30_f64.hypot(340.0) - 20.0).await
}

/// What is typed where it makes no sense.
const SENSELESS: &[(&str, &str)] = &[
    ("features/1/a", "tape"),
    ("features/1/a", "-300"),
    ("features/1/a", "99999"),
    ("features/1/b", "3/0"),
    ("features/1/diameter", "0"),
    ("features/1/diameter", "5 kg"),
    ("ab", "0"),
    ("ab", "1e9"),
    ("ac", "0,0,5"),
    ("bc", "--"),
];

async fn entries_that_make_no_sense_are_told_at_their_field_and_spoil_nothing_else(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.device(Device::TABLET).await?;
    journey.open("#/marking").await?;
    // Commas are decimal marks where they can be nothing else.
    journey.enter("marking/ab", "500,0 ± 0,2").await?;
    let first: &[_] = &[("diameter", "20"), ("a", "300,0"), ("b", "400,0")];
    feature(&journey, 1, first).await?;
    feature(
        &journey,
        2,
        &[("diameter", "8"), ("along", "100"), ("across", "50")],
    )
    .await?;
    expect_mm(&journey, "arc_a/1", 300.0).await?;
    for (field, text) in SENSELESS {
        let key = format!("marking/{field}");
        if !journey.has(&format!("[data-key=\"{key}\"]")).await? {
            journey.tap("fold marking/features/1").await?;
        }
        senseless(&journey, &key, text).await?;
    }
    datums_that_make_no_triangle(&journey).await?;
    journey.console_is_quiet().await?;
    journey.page_is_sound().await
}

/// It stands as it was typed, it is told at its field, the other hole stays; and it is put right again.
async fn senseless(journey: &Journey, key: &str, text: &str) -> Outcome {
    let before = journey.entry(key).await?;
    journey.enter(key, text).await?;
    journey
        .wait_for(&format!("[data-key=\"{key}\"][aria-invalid=true]"))
        .await
        .map_err(|_| format!("{key}: nothing is said of `{text}`"))?;
    let id = format!("#f-{}-error p", key.replace('/', "-"));
    let said = journey.text(&id).await?;
    if said.len() < 12 || journey.entry(key).await? != text {
        return Err(format!("{key}: of `{text}` the page says `{said}`"));
    }
    // Without A to B there is no place at all; whatever else is wrong leaves the second hole where it is.
    if !key.ends_with("/ab") {
        expect_mm(journey, "along/2", 100.0).await?;
    }
    journey.enter(key, &before).await?;
    journey
        .wait_gone(&format!("[data-key=\"{key}\"][aria-invalid=true]"))
        .await?;
    expect_mm(journey, "arc_a/1", 300.0).await
}

/// Three datums in a line serve where they do: as a check. Where C and D are too far off to meet, A and B serve on.
async fn datums_that_make_no_triangle(journey: &Journey) -> Outcome {
    for (ac, bc) in [("100", "200"), ("900", "20")] {
        journey.enter("marking/ac", ac).await?;
        journey.enter("marking/bc", bc).await?;
        journey
            .wait_for("[data-key=\"marking/bc\"][aria-invalid=true]")
            .await?;
        expect_mm(journey, "arc_b/1", 400.0).await?;
    }
    // In one line: A, C, B.
    journey.enter("marking/ac", "200").await?;
    journey.enter("marking/bc", "300").await?;
    journey
        .wait_gone("[data-key=\"marking/bc\"][aria-invalid=true]")
        .await?;
    expect_mm(journey, "arc_b/1", 400.0).await?;
    // Now C serves as well.
    journey
        .wait_for("[data-key=\"marking/features/1/c\"]")
        .await?;
    // A hole in the line with all three: arcs touch there and do not cross, and the page says that these fix no place.
    journey.enter("marking/features/1/a", "200").await?;
    journey.enter("marking/features/1/b", "300").await?;
    journey
        .wait_for("[data-key=\"marking/features/1/b\"][aria-invalid=true]")
        .await?;
    let said = journey.text("#f-marking-features-1-b-error p").await?;
    if !said.contains("away from the line") {
        return Err(format!(
            "of a hole in the datums' line the page says `{said}`"
        ));
    }
    expect_mm(journey, "along/2", 100.0).await?;
    // By an offset it is found.
    journey.enter("marking/features/1/b", "").await?;
    journey.enter("marking/features/1/along", "200").await?;
    journey.enter("marking/features/1/across", "0").await?;
    journey.enter("marking/features/1/a", "").await?;
    expect_mm(journey, "along/1", 200.0).await?;
    // Two datums in one place are none.
    journey.enter("marking/ab", "0").await?;
    journey
        .wait_for("[data-key=\"marking/ab\"][aria-invalid=true]")
        .await?;
    journey.enter("marking/ab", "500").await?;
    expect_mm(journey, "along/1", 200.0).await
}
