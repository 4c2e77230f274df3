//! Handing over: the list before the road, the calendar file, and the pack on paper.

use fantoccini::wd::PrintSize;
use serde_json::json;

use super::cases;
use crate::paper::{PrintedPage, close};
use crate::{Device, Journey, Machine, Outcome};

cases![
    the_list_before_the_road_is_ticked_with_a_reload_in_the_middle,
    a_day_that_does_not_exist_and_a_distance_below_nought_are_told_at_their_fields,
    the_plan_is_saved_as_a_calendar_file_with_the_days_that_the_page_shows,
    a_tyre_of_three_figures_is_asked_its_decade_and_gets_its_age,
    the_pack_prints_on_a4_and_letter_with_the_figures_of_the_pages,
    the_pack_of_american_words_is_on_letter_until_another_paper_is_chosen,
    a_sheet_that_is_printed_shows_what_was_folded,
];

/// Enters the sheet by hand, from empty, and reads its answers.
///
/// # Errors
/// What went otherwise than it should.
pub async fn by_hand(journey: &Journey) -> Outcome {
    journey.open("#/handover").await?;
    journey.expect("handover/checks_left", "27").await?;
    for (key, text) in [
        ("handover/handed_on", "2026-06-06"),
        ("handover/odometer", "1000"),
        ("handover/per_week", "140 km"),
        ("handover/front_weighed", "1000 ± 20 kg"),
        ("handover/rear_weighed", "800 ± 15 kg"),
        ("handover/toe_ahead", "1412.0 ± 0.3"),
        ("handover/toe_behind", "1414.5 ± 0.4"),
        ("handover/parking", "3.6 ± 0.1 kN"),
    ] {
        journey.enter(key, text).await?;
    }
    // 20 and 15 in quadrature are 25: 30 to one figure.
    journey.expect("handover/weighed", "1800 ± 30 kg").await?;
    // 0.3 and 0.4 in quadrature are 0.5.
    journey.expect("handover/toe", "2.5 ± 0.5 mm").await?;
    // 3600 N on 1800 kg at 9.80665 m/s² is 20.394 %, ± 0.1/3.6 and 25/1800 of it in quadrature: 0.63 %.
    journey
        .expect("handover/parking_efficiency", "20.4 ± 0.6 %")
        .await?;
    // 80 km at 20 km a day are four days.
    let due = journey
        .text("[data-row=\"handover/again/wheel_nuts\"]")
        .await?;
    if due.contains("2026-06-10") && due.contains("1080 km") {
        journey.page_is_sound().await
    } else {
        Err(format!("wheel nuts are due: {due}"))
    }
}

async fn the_list_before_the_road_is_ticked_with_a_reload_in_the_middle(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    by_hand(&journey).await?;
    journey.enter("handover/checked_by", "B.").await?;
    let good = [
        "steering_play",
        "steering_joints",
        "steering_lock",
        "column",
        "pedal",
    ];
    for check in good {
        journey
            .choose(&format!("handover/checks/{check}/state"), "good")
            .await?;
    }
    journey.expect("handover/checks_left", "22").await?;
    // The book is kept a moment after the last press.
    tokio::time::sleep(std::time::Duration::from_millis(900)).await;
    journey.reload().await?;
    journey.expect("handover/checks_left", "22").await?;
    for check in good {
        let held = journey
            .entry(&format!("handover/checks/{check}/state"))
            .await?;
        if held != "good" {
            return Err(format!("{check} holds `{held}` after the reload"));
        }
    }
    journey
        .choose("handover/checks/brake_lines/state", "put_right")
        .await?;
    journey.tap("fold handover/checks/brake_lines").await?;
    journey
        .enter(
            "handover/checks/brake_lines/note",
            "Union weeps at the rear axle",
        )
        .await?;
    journey
        .choose("handover/checks/parking_brake/state", "good")
        .await?;
    journey.expect("handover/checks_left", "20").await?;
    journey.wait_for("[data-remark=put_right]").await?;
    journey
        .choose("handover/checks/brake_lines/state", "good")
        .await?;
    journey.wait_gone("[data-remark=put_right]").await?;
    // A row of one's own.
    journey.tap("add handover/checks").await?;
    journey
        .enter("handover/checks/1/name", "Hop pole rack bolted down")
        .await?;
    journey.choose("handover/checks/1/state", "good").await?;
    journey.expect("handover/checks_left", "20").await?;
    journey.page_is_sound().await
}

async fn a_day_that_does_not_exist_and_a_distance_below_nought_are_told_at_their_fields(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("#/handover").await?;
    for (key, text, told) in [
        (
            "handover/handed_on",
            "2026-06-31",
            "This is no day. A right one: 2026-03-14",
        ),
        (
            "handover/per_week",
            "-50 km",
            "It cannot be less than nought.",
        ),
        (
            "handover/front_weighed",
            "heavy",
            "A number is expected here.",
        ),
    ] {
        journey.enter(key, text).await?;
        let error = format!("#f-{}-error", key.replace('/', "-"));
        journey.wait_for(&error).await?;
        let said = journey.text(&error).await?;
        if !said.contains(told) {
            return Err(format!("{key} `{text}`: {said}"));
        }
    }
    // What does not rest on them stands.
    journey.expect("handover/checks_left", "27").await?;
    journey.enter("handover/handed_on", "2026-06-30").await?;
    journey.wait_gone("#f-handover-handed_on-error").await
}

/// The rows of the plan as the page shows them: day, and what.
async fn plan(journey: &Journey) -> Outcome<Vec<(String, String)>> {
    let script = "return [...document.querySelectorAll('.plan tbody tr')].map((row) => [...row.children].map((cell) => cell.innerText));";
    let rows = journey.ask(script, vec![]).await?;
    let cell = |row: &serde_json::Value, at: usize| row[at].as_str().unwrap_or("").to_owned();
    let rows = rows.as_array().cloned().unwrap_or_default();
    Ok(rows
        .iter()
        .map(|row| (cell(row, 0), cell(row, 2)))
        .collect())
}

async fn the_plan_is_saved_as_a_calendar_file_with_the_days_that_the_page_shows(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.tap("example").await?;
    journey.open("#/handover").await?;
    let plan = plan(&journey).await?;
    if plan.len() < 15 {
        return Err(format!("the plan has {} rows", plan.len()));
    }
    let folder = journey.saving_into("calendar").await?;
    journey.tap("calendar").await?;
    let bytes = journey.saved_file(&folder.join("look-again.ics")).await?;
    let file = String::from_utf8(bytes).map_err(|error| error.to_string())?;
    let unfolded = file.replace("\r\n ", "");
    let lines: Vec<&str> = unfolded.split("\r\n").collect();
    if file
        .split("\r\n")
        .any(|line| line.len() > 75 || line.contains(['\n', '\r']))
    {
        return Err("a line is longer than 75 bytes, or ends otherwise than in CRLF".into());
    }
    let all = |property: &str| -> Vec<String> {
        let found = lines.iter().filter_map(|line| line.strip_prefix(property));
        found
            .map(|text| text.replace("\\,", ",").replace("\\;", ";"))
            .collect()
    };
    let days: Vec<String> = plan.iter().map(|(day, _)| day.replace('-', "")).collect();
    let names: Vec<String> = plan.iter().map(|(_, name)| name.clone()).collect();
    for (what, have, want) in [
        ("days", all("DTSTART;VALUE=DATE:"), days),
        ("names", all("SUMMARY:"), names),
    ] {
        if have != want {
            return Err(format!(
                "the {what} of the file are {have:?}, those of the page {want:?}"
            ));
        }
    }
    let (stamps, uids) = (all("DTSTAMP:"), all("UID:"));
    let mut once = uids.clone();
    once.sort_unstable();
    once.dedup();
    if once.len() != plan.len()
        || stamps.len() != plan.len()
        || stamps.iter().any(|stamp| stamp.len() != 16)
    {
        return Err(format!("stamps {stamps:?}, identities {uids:?}"));
    }
    Ok(())
}

/// What the pages of the sheets show: the words of a result and its figure, for results of the sheet as a whole.
async fn shown(journey: &Journey) -> Outcome<Vec<(String, String)>> {
    const ROWS: &str = "return [...document.querySelectorAll('.result [data-result]:not(.lack)')].filter((e) => e.dataset.result.split('/').length === 2)\
        .map((e) => [e.previousElementSibling.innerText, e.innerText]);";
    let mut all = Vec::new();
    for route in ["#/vehicle", "#/gearing", "#/final_drive", "#/handover"] {
        journey.open(route).await?;
        let before = all.len();
        let rows = journey.ask(ROWS, vec![]).await?;
        for row in rows.as_array().into_iter().flatten() {
            let cell = |at: usize| close(row[at].as_str().unwrap_or(""));
            // That a figure is exact goes without saying on paper.
            let figure = cell(1);
            all.push((
                cell(0),
                figure.strip_suffix("exact").unwrap_or(&figure).to_owned(),
            ));
        }
        if all.len() < before + 4 {
            return Err(format!("{route} shows {} results", all.len() - before));
        }
    }
    Ok(all)
}

async fn the_pack_prints_on_a4_and_letter_with_the_figures_of_the_pages(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.device(Device::DESK).await?;
    journey.open("").await?;
    journey.tap("example").await?;
    let shown = shown(&journey).await?;
    journey.open("#/pack").await?;
    for (choice, paper, width, height) in [
        ("a4", PrintSize::A4, 595.28, 841.89),
        ("letter", PrintSize::US_LETTER, 612.0, 792.0),
    ] {
        journey.choose("handover/paper", choice).await?;
        let contents = contents(&journey).await?;
        let pages = journey
            .printed_pages(&format!("pack-{choice}"), paper)
            .await?;
        sized(&pages, width, height)?;
        figures(&pages, &shown)?;
        named_pages(&pages, &contents).map_err(|why| format!("{choice}: {why}"))?;
        no_money(&pages, true)?;
    }
    journey.choose("handover/with_money", "yes").await?;
    let pages = journey
        .printed_pages("pack-money", PrintSize::US_LETTER)
        .await?;
    no_money(&pages, false)?;
    journey.console_is_quiet().await
}

/// The contents as shown: the section's heading, and the page it names.
async fn contents(journey: &Journey) -> Outcome<Vec<(String, usize)>> {
    const LINES: &str = "return [...document.querySelectorAll('.pack-contents li')].map((line) => [line.firstElementChild.innerText, line.querySelector('.pack-number').textContent]);";
    journey
        .until("the contents name pages", async || {
            let numbers = journey.ask(LINES, vec![]).await?;
            let lines = numbers.as_array().cloned().unwrap_or_default();
            Ok(lines.len() > 5
                && lines
                    .iter()
                    .all(|line| line[1].as_str().is_some_and(|number| !number.is_empty())))
        })
        .await?;
    // The drawings take their width a moment after the page stands, and the pages are counted again.
    tokio::time::sleep(std::time::Duration::from_millis(600)).await;
    let lines = journey.ask(LINES, vec![]).await?;
    let line = |line: &serde_json::Value| {
        let page = line[1].as_str().and_then(|number| number.parse().ok());
        (close(line[0].as_str().unwrap_or("")), page.unwrap_or(0))
    };
    Ok(lines.as_array().into_iter().flatten().map(line).collect())
}

/// Amounts of money stand in the pack where they are wanted, and only there.
fn no_money(pages: &[PrintedPage], none: bool) -> Outcome {
    let with = pages
        .iter()
        .position(|page| page.text.contains('£') || page.text.contains("GBP"));
    match with {
        Some(at) if none => Err(format!("page {} tells what something cost", at + 1)),
        None if !none => Err("no page tells what anything cost".into()),
        _ => Ok(()),
    }
}

/// Every page has the size of the paper.
fn sized(pages: &[PrintedPage], width: f64, height: f64) -> Outcome {
    // Sizes go through inches with two decimals at most: a point and a half is less than anybody sees.
    let wrong = pages
        .iter()
        .find(|page| (page.width - width).abs() > 1.5 || (page.height - height).abs() > 1.5);
    match wrong {
        None if pages.len() > 10 => Ok(()),
        None => Err(format!("{} pages", pages.len())),
        Some(page) => Err(format!(
            "a page of {} by {} points",
            page.width, page.height
        )),
    }
}

/// Every result that the pages show stands in the pack, its words just before it.
fn figures(pages: &[PrintedPage], shown: &[(String, String)]) -> Outcome {
    let whole: String = pages.iter().map(|page| page.text.as_str()).collect();
    let missing: Vec<String> = shown
        .iter()
        .map(|(words, figure)| format!("{words}{figure}"))
        .filter(|wanted| !whole.contains(wanted.as_str()))
        .collect();
    if !missing.is_empty() {
        return Err(format!(
            "{} of {} results are not in the pack: {missing:?}",
            missing.len(),
            shown.len()
        ));
    }
    for wanted in [
        "A record, not a certificate.",
        "Harrowmead flatbed, fleet number 3",
        "HF-3/1967/0418",
        "Signatures",
        // Rows within rows: a leaf of a spring, a coat of a layer, a stage of a joint, what is left of a hole's readings.
        "Leaves Nip stress, N/mm²",
        "Cab, vine green: Epoxy primer",
        "Dry film a coat,",
        "Crown wheel to carrier",
        "How the readings agree",
        // What was kept as the lorry was bought.
        "Before and now",
        "Rear right: rate",
        "Age of the tyres",
        "week 11 of 2025",
        "1 year 2 months",
    ] {
        if !whole.contains(&close(wanted)) {
            return Err(format!("`{wanted}` is not in the pack"));
        }
    }
    Ok(())
}

/// Each section begins on the page that the contents name, and each page carries its number and the vehicle's name.
fn named_pages(pages: &[PrintedPage], contents: &[(String, usize)]) -> Outcome {
    for (heading, number) in contents {
        // The contents themselves stand on the first page.
        let begins = pages
            .iter()
            .skip(1)
            .position(|page| page.text.contains(heading.as_str()));
        let begins = begins.map(|at| at + 2);
        if begins != Some(*number) {
            return Err(format!(
                "`{heading}` begins on page {begins:?}, the contents say {number}"
            ));
        }
    }
    let last = pages.len();
    for (at, page) in pages.iter().enumerate() {
        let number = format!("{}/{last}", at + 1);
        if !page.text.contains(&number)
            || !page
                .text
                .contains(&close("Harrowmead flatbed, fleet number 3"))
        {
            return Err(format!(
                "page {} lacks its number or its running title",
                at + 1
            ));
        }
    }
    Ok(())
}

async fn the_pack_of_american_words_is_on_letter_until_another_paper_is_chosen(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    let paper = async |wanted: &str| {
        journey.open("#/pack").await?;
        journey.wait_for("[data-key=\"handover/paper\"]").await?;
        let held = journey.entry("handover/paper").await?;
        if held == wanted {
            Ok(())
        } else {
            Err(format!("the paper is `{held}`, not {wanted}"))
        }
    };
    paper("a4").await?;
    journey.open("#/settings").await?;
    journey.tap("set tongue en-US").await?;
    paper("letter").await?;
    let pages = journey
        .printed_pages("pack-american", PrintSize::US_LETTER)
        .await?;
    let wide = pages.first().map(|page| page.width.round());
    if wide != Some(612.0) {
        return Err(format!("the page is {wide:?} points wide"));
    }
    journey.choose("handover/paper", "a4").await?;
    journey.wait_until_kept().await?;
    journey.reload().await?;
    paper("a4").await
}

async fn a_tyre_of_three_figures_is_asked_its_decade_and_gets_its_age(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("#/handover").await?;
    journey.enter("handover/handed_on", "2026-06-06").await?;
    journey.tap("add handover/tyres").await?;
    journey
        .enter("handover/tyres/1/code", "DOT 4B9R 439")
        .await?;
    journey.wait_for("[data-remark=tyre_decade]").await?;
    let ages = "[data-table=\"handover/ages\"]";
    let open = journey.text(ages).await?;
    journey.choose("handover/tyres/1/decade", "1990").await?;
    journey.wait_gone("[data-remark=tyre_decade]").await?;
    // The 43rd week of 1999 began on Sunday 24 October.
    let closed = journey.text(ages).await?;
    if !open.contains("decade?") || !closed.contains("26 years 7 months") {
        return Err(format!("before the answer `{open}`, after it `{closed}`"));
    }
    // Four figures leave nothing to ask.
    journey.enter("handover/tyres/1/code", "5426").await?;
    journey.wait_for("#f-handover-tyres-1-code-error").await?;
    journey.enter("handover/tyres/1/code", "2319").await?;
    journey.wait_gone("#f-handover-tyres-1-code-error").await?;
    let younger = journey.text(ages).await?;
    // The first Sunday of 2019 was 6 January; 22 weeks later is 9 June.
    if younger.contains("week 23 of 2019") && younger.contains("6 years 11 months") {
        journey.page_is_sound().await
    } else {
        Err(format!("2319 read on 2026-06-06: `{younger}`"))
    }
}

async fn a_sheet_that_is_printed_shows_what_was_folded(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.tap("example").await?;
    journey.open("#/torque").await?;
    // Folded, a joint shows its name and what the wrench is set to, no more.
    if journey.has("[data-key=\"torque/joints/4/page\"]").await? {
        return Err("the joints are not folded".into());
    }
    let pages = journey.printed_pages("torque", PrintSize::A4).await?;
    let whole: String = pages.iter().map(|page| page.text.as_str()).collect();
    for wanted in [
        "Steering 9",
        "Clamping nut, split pin",
        "Tightening record",
        "Crown wheel to carrier",
    ] {
        if !whole.contains(&close(wanted)) {
            return Err(format!("`{wanted}` is not on the printed sheet"));
        }
    }
    // On the screen the rows are folded again.
    journey
        .wait_gone("[data-key=\"torque/joints/4/page\"]")
        .await?;
    let width = journey
        .ask("return document.documentElement.clientWidth;", vec![])
        .await?;
    if width == json!(1280) {
        Ok(())
    } else {
        Err(format!("the screen is {width} wide after printing"))
    }
}
