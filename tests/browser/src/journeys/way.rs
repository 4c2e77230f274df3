//! The way through the pages: back and forward, to an entry and back to where one came from, and a finger that scrolls.

use super::cases;
use crate::{Device, Journey, Machine, Outcome};

cases![
    one_comes_back_to_where_one_was_with_the_cursor_and_what_stood_open,
    a_page_that_was_not_seen_yet_begins_at_its_top,
    one_finger_scrolls_the_page_on_which_it_lies_over_a_drawing,
    a_table_that_does_not_fit_is_read_row_by_row_and_never_sideways,
    on_every_phone_the_keypad_leaves_the_answer_and_the_entry_in_sight,
];

const DEVICES: [Device; 3] = [Device::TABLET, Device::TABLET_UPRIGHT, Device::PHONE];
/// The first answer of Gearing rests on this entry of the Vehicle sheet, and its working leads there.
const ENTRY: &str = "vehicle/roll_out_rear";

async fn with_the_example(machine: &Machine) -> Outcome<Journey> {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.tap("example").await?;
    Ok(journey)
}

async fn number(journey: &Journey, asked: &str) -> Outcome<f64> {
    let answer = journey.ask(&format!("return {asked};"), vec![]).await?;
    answer
        .as_f64()
        .ok_or_else(|| format!("{asked} is {answer}"))
}

/// Goes back (-1) or forward (1) as with the browser's own keys, and waits for the page.
async fn turn(journey: &Journey, by: i32, to: &str) -> Outcome {
    journey.ask(&format!("history.go({by})"), vec![]).await?;
    journey
        .until(&format!("{to} is seen again"), async || {
            Ok(journey.route().await? == to)
        })
        .await?;
    journey.drawn().await
}

/// Waits until the page stands this far down.
async fn stands_at(journey: &Journey, down: f64, told: &str) -> Outcome {
    journey
        .until(&format!("{told} it stands {down} px down"), async || {
            Ok((number(journey, "scrollY").await? - down).abs() <= 2.0)
        })
        .await
}

async fn has_cursor(journey: &Journey, selector: &str) -> Outcome {
    let asked = format!(
        "return document.activeElement === document.querySelector(`{selector}`) \
         && document.activeElement.getBoundingClientRect().top < innerHeight"
    );
    journey
        .until(
            &format!("the cursor is in `{selector}`, in sight"),
            async || Ok(journey.ask(&asked, vec![]).await?.as_bool() == Some(true)),
        )
        .await
}

async fn one_comes_back_to_where_one_was_with_the_cursor_and_what_stood_open(
    machine: &Machine,
) -> Outcome {
    let journey = with_the_example(machine).await?;
    for device in DEVICES {
        journey.device(device).await?;
        journey.open("#/gearing").await?;
        journey.tap("working").await?;
        let number_in_working = format!("[data-do=\"go {ENTRY}\"]");
        journey.tap(&number_in_working).await?;
        let entry = format!("[data-key=\"{ENTRY}\"]");
        has_cursor(&journey, &entry).await?;
        let at_entry = number(&journey, "scrollY").await?;
        turn(&journey, -1, "#/gearing").await?;
        journey.wait_for(".side .working-line").await?;
        has_cursor(&journey, &number_in_working).await?;
        turn(&journey, 1, "#/vehicle").await?;
        has_cursor(&journey, &entry).await?;
        stands_at(&journey, at_entry, "after going forward").await?;
    }
    Ok(())
}

async fn a_page_that_was_not_seen_yet_begins_at_its_top(machine: &Machine) -> Outcome {
    let journey = with_the_example(machine).await?;
    for device in DEVICES {
        journey.device(device).await?;
        journey.open("#/paint").await?;
        has_cursor(&journey, "main h1").await?;
        journey.ask("scrollTo(0, 1500)", vec![]).await?;
        for sheet in ["springs", "costs"] {
            journey.tap("sheets").await?;
            journey.tap(&format!("sheet {sheet}")).await?;
            journey
                .wait_for(&format!("main[data-page={sheet}]"))
                .await?;
            stands_at(&journey, 0.0, "a page not seen yet:").await?;
            has_cursor(&journey, "main h1").await?;
        }
        // Two pages back at once, and the cursor is not lost.
        turn(&journey, -2, "#/paint").await?;
        stands_at(&journey, 1500.0, "two pages back").await?;
        let at = journey
            .ask("return document.activeElement.tagName", vec![])
            .await?;
        if at.as_str() != Some("H1") {
            return Err(format!("back on the page the cursor is in {at}"));
        }
    }
    Ok(())
}

async fn one_finger_scrolls_the_page_on_which_it_lies_over_a_drawing(machine: &Machine) -> Outcome {
    // The drawing's own column scrolls where the screen is low.
    const SCROLLED: &str = "scrollY + document.querySelector('.side').scrollTop";
    const MIDDLE: &str = "const plate = document.querySelector('.drawing svg.plate'); \
        plate.scrollIntoView({ block: 'center', behavior: 'instant' }); \
        const box = plate.getBoundingClientRect(); \
        return [box.left + box.width / 2, box.top + box.height / 2];";
    let journey = with_the_example(machine).await?;
    for device in DEVICES {
        journey.device(device).await?;
        // The drawing of Marking out comes nearer under two fingers; the others do not.
        for sheet in ["marking", "gearing", "springs"] {
            journey.open(&format!("#/{sheet}")).await?;
            journey.wait_for(".drawing svg.plate").await?;
            let middle = journey.ask(MIDDLE, vec![]).await?;
            let [x, y]: [f64; 2] =
                serde_json::from_value(middle).map_err(|error| error.to_string())?;
            let before = number(&journey, SCROLLED).await?;
            journey.fingers(&[[(x, y), (x, y - 120.0)]]).await?;
            journey
                .until(
                    &format!("a finger over the drawing of {sheet} scrolls at {device:?}"),
                    async || Ok(number(&journey, SCROLLED).await? > before + 60.0),
                )
                .await?;
        }
    }
    Ok(())
}

async fn a_table_that_does_not_fit_is_read_row_by_row_and_never_sideways(
    machine: &Machine,
) -> Outcome {
    /// Tables that can be moved sideways, and figures that do not say of what they are.
    const WRONG: &str = "return [...document.querySelectorAll('main .table-hold')].flatMap((hold) => { \
        const table = hold.querySelector('table'), wrong = []; \
        if (hold.scrollWidth > hold.clientWidth + 1) wrong.push(`${hold.scrollWidth - hold.clientWidth} px beside its place: ${table.innerText.slice(0, 60)}`); \
        if (table.classList.contains('stacked')) for (const cell of table.querySelectorAll('tbody td')) { \
          if (!cell.dataset.head && cell.innerText) wrong.push(`not said of what: ${cell.innerText}`); \
        } \
        return wrong; })";
    let journey = with_the_example(machine).await?;
    let mut wrong = Vec::new();
    for device in [
        Device::PHONE,
        Device::TABLET_UPRIGHT,
        Device::touched(360, 640),
    ] {
        journey.device(device).await?;
        for sheet in [
            "marking",
            "conversion",
            "gearing",
            "springs",
            "torque",
            "paint",
            "costs",
            "handover",
        ] {
            journey.open(&format!("#/{sheet}")).await?;
            journey.drawn().await?;
            let found: Vec<String> = serde_json::from_value(journey.ask(WRONG, vec![]).await?)
                .map_err(|error| error.to_string())?;
            wrong.extend(
                found
                    .into_iter()
                    .map(|line| format!("{sheet} at {}: {line}", device.width)),
            );
        }
    }
    // The figures to set a hole out by stand under their names.
    journey.device(Device::PHONE).await?;
    journey.open("#/marking").await?;
    journey
        .wait_for(".table.stacked td[data-head^=\"From A\"]")
        .await?;
    if wrong.is_empty() {
        Ok(())
    } else {
        Err(wrong.join("\n      "))
    }
}

async fn on_every_phone_the_keypad_leaves_the_answer_and_the_entry_in_sight(
    machine: &Machine,
) -> Outcome {
    /// What has the cursor and lies under the answer, under the keypad or beyond the screen.
    const COVERED: &str = "const e = document.activeElement, box = e.getBoundingClientRect(); \
        const band = document.querySelector('.band').getBoundingClientRect(); \
        const pad = document.querySelector('.side.pad-up')?.getBoundingClientRect(); \
        const rail = document.querySelector('.rail').getBoundingClientRect(); \
        const foot = pad ? pad.top : rail.top; \
        const answer = document.querySelector('.band-figure').getBoundingClientRect(); \
        const good = e.matches('main input, main button') && band.top === 0 && answer.height > 20 && answer.bottom <= band.bottom \
          && box.top >= band.bottom && box.bottom <= foot; \
        return good ? null : `${e.dataset.key ?? e.outerHTML.slice(0, 80)}: ${box.top} to ${box.bottom} between ${band.bottom} and ${foot}`;";
    let journey = with_the_example(machine).await?;
    let mut wrong = Vec::new();
    // As it is, and with the bars of a browser above and below.
    for (width, height) in [(390, 844), (390, 664), (360, 640)] {
        journey.device(Device::touched(width, height)).await?;
        for (sheet, first) in [
            ("gearing", "gearing/gears/2/ratio"),
            ("paint", "paint/sill"),
            ("vehicle", "vehicle/wheelbase"),
        ] {
            journey.open(&format!("#/{sheet}")).await?;
            journey.tap(&format!("[data-key=\"{first}\"]")).await?;
            journey.wait_for(".keypad").await?;
            // From entry to entry, as long as there is one to type into; then the keypad goes.
            for step in 0..6 {
                tokio::time::sleep(std::time::Duration::from_millis(150)).await;
                let typed = journey.has("main input:focus").await?;
                if !typed {
                    journey.wait_gone(".keypad").await?;
                    journey.drawn().await?;
                }
                let covered = journey.ask(COVERED, vec![]).await?;
                wrong.extend(
                    covered
                        .as_str()
                        .map(|told| format!("{width} x {height}, {sheet}, entry {step}: {told}")),
                );
                if !typed {
                    break;
                }
                journey.tap(".pad.next").await?;
            }
        }
    }
    if wrong.is_empty() {
        Ok(())
    } else {
        Err(wrong.join("\n      "))
    }
}
