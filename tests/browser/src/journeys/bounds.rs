//! What nobody means to do, and somebody does: texts without end, a tablet turned while it is typed on, the browser's own keys, a
//! browser that keeps nothing.

use serde_json::json;

use super::cases;
use crate::{Device, Journey, Machine, Outcome};

cases![
    a_text_without_end_is_told_and_widens_nothing,
    more_lines_than_are_taken_are_counted,
    a_book_with_a_name_without_end_leaves_room_for_the_others,
    the_browsers_own_keys_lead_back_and_forth_with_the_keypad_open,
    the_keypad_stays_beside_its_entry_when_the_tablet_is_turned,
    a_browser_that_keeps_nothing_says_so_and_reckons_on,
];

/// Puts a text into a field at once, as a paste does.
async fn pasted(journey: &Journey, selector: &str, text: &str) -> Outcome {
    journey.wait_for(selector).await?;
    let script = "const e = document.querySelector(arguments[0]); e.focus(); e.value = arguments[1]; \
                  e.dispatchEvent(new InputEvent('input', { bubbles: true }));";
    journey
        .ask(script, vec![json!(selector), json!(text)])
        .await?;
    journey.drawn().await
}

fn none(wrong: Vec<String>) -> Outcome {
    if wrong.is_empty() {
        Ok(())
    } else {
        Err(wrong.join("\n      "))
    }
}

async fn a_text_without_end_is_told_and_widens_nothing(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("#/vehicle").await?;
    let field = "[data-key=\"vehicle/wheelbase\"]";
    let mut wrong = Vec::new();
    for text in [
        "9".repeat(100_000),
        "(".repeat(20_000),
        format!("1{}", " + 1".repeat(20_000)),
        "12 mm and then some words that say where it was measured".to_owned(),
    ] {
        pasted(&journey, field, &text).await?;
        journey
            .wait_for(&format!("{field}[aria-invalid=true]"))
            .await?;
        let said = journey.text(".row-note.error p").await?;
        if said.is_empty() || said.chars().count() > 160 {
            wrong.push(format!("what is wrong is told as `{said}`"));
        }
        wrong.extend(journey.sticks_out_or_meets().await?);
        if journey.entry("vehicle/wheelbase").await? != text {
            wrong.push("what was pasted was changed".into());
        }
    }
    // A mark that turns what follows it round is told by its number, and turns nothing.
    pasted(&journey, field, "12\u{202e}5").await?;
    journey
        .until("the character is named", async || {
            let said = journey.text(".row-note.error p").await;
            Ok(said.is_ok_and(|said| said.contains("U+202E")))
        })
        .await?;
    journey.enter("vehicle/wheelbase", "3185").await?;
    journey.wait_gone(".row-note.error").await?;
    journey.console_is_quiet().await?;
    none(wrong)
}

async fn more_lines_than_are_taken_are_counted(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("#/costs").await?;
    journey.tap("paste costs/payers").await?;
    let column = "[data-do=\"column costs/payers\"]";
    let names =
        |count: usize| -> String { (1..=count).map(|at| format!("Payer {at}\n")).collect() };
    pasted(&journey, column, &names(450)).await?;
    let said = journey.text(".paste [role=status]").await?;
    if !(said.contains("400") && said.contains("50 more")) {
        return Err(format!("450 lines are told as `{said}`"));
    }
    pasted(&journey, column, &names(30)).await?;
    journey.wait_gone(".paste [role=status]").await?;
    journey.tap("take costs/payers").await?;
    journey
        .until("all thirty are there", async || {
            Ok(journey
                .count("[data-list=\"costs/payers\"] [data-row]")
                .await?
                >= 30)
        })
        .await?;
    journey.tap("undo").await?;
    journey
        .until("all go at once", async || {
            Ok(journey
                .count("[data-list=\"costs/payers\"] [data-row]")
                .await?
                <= 1)
        })
        .await
}

async fn a_book_with_a_name_without_end_leaves_room_for_the_others(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.tap("example").await?;
    pasted(&journey, "#book-name", &"Lorry without an end ".repeat(500)).await?;
    let mut wrong = Vec::new();
    for route in ["#/books", "#/", "#/send/book", "#/pack"] {
        journey.open(route).await?;
        wrong.extend(
            journey
                .sticks_out_or_meets()
                .await?
                .into_iter()
                .map(|line| format!("{route}: {line}")),
        );
    }
    journey.open("#/books").await?;
    const TALLEST: &str = "return Math.max(...[...document.querySelectorAll('.book-card')].map((e) => e.offsetHeight));";
    let tallest = journey.ask(TALLEST, Vec::new()).await?.as_f64();
    if tallest.is_none_or(|height| height > 300.0) {
        wrong.push(format!("a book takes {tallest:?} px of the list"));
    }
    none(wrong)
}

async fn the_browsers_own_keys_lead_back_and_forth_with_the_keypad_open(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("#/vehicle").await?;
    journey.enter("vehicle/wheelbase", "3185").await?;
    journey.open("#/gearing").await?;
    journey.type_into("gearing/axle", "37/9").await?;
    journey.wait_for(".keypad").await?;
    journey.ask("history.back();", Vec::new()).await?;
    // The keypad serves the entry that one was in there.
    journey.wait_gone("[data-key=\"gearing/axle\"]").await?;
    journey
        .wait_for("[data-key=\"vehicle/wheelbase\"]:focus")
        .await?;
    // Long enough for all that waits for the hand to rest.
    tokio::time::sleep(std::time::Duration::from_millis(1200)).await;
    let back = (journey.route().await?, journey.text("h1").await?);
    if back != ("#/vehicle".to_owned(), "Vehicle".to_owned()) {
        return Err(format!("back leads to {back:?}"));
    }
    journey.ask("history.forward();", Vec::new()).await?;
    journey
        .until("the entry is found again", async || {
            Ok(journey.route().await? == "#/gearing"
                && journey
                    .entry("gearing/axle")
                    .await
                    .is_ok_and(|text| text == "37/9"))
        })
        .await?;
    // A panel that is open goes with its page.
    journey.tap("sheets").await?;
    journey.ask("history.back();", Vec::new()).await?;
    journey.wait_gone(".drawer").await
}

/// The entry has the cursor, holds what was typed, and nothing lies over it.
async fn in_sight(journey: &Journey, how: &str) -> Outcome {
    const OVER: &str = "const e = document.activeElement, b = e.getBoundingClientRect(); \
        return [e.dataset.key, e.value, document.elementFromPoint(b.left + b.width / 2, b.top + b.height / 2) === e, \
        document.querySelector('.keypad') !== null];";
    let wanted = json!(["vehicle/height", "2180", true, true]);
    journey
        .until("", async || {
            Ok(journey.ask(OVER, Vec::new()).await? == wanted)
        })
        .await
        .map_err(|_| format!("{how}: the entry is out of sight"))
}

async fn the_keypad_stays_beside_its_entry_when_the_tablet_is_turned(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("#/vehicle").await?;
    journey.type_into("vehicle/height", "2180").await?;
    in_sight(&journey, "lying").await?;
    for (how, device) in [
        ("upright", Device::TABLET_UPRIGHT),
        ("lying again", Device::TABLET),
        ("as a phone", Device::PHONE),
        ("as a phone on its side", Device::touched(844, 390)),
    ] {
        journey.device(device).await?;
        in_sight(&journey, how).await?;
    }
    Ok(())
}

/// That what is entered is not kept stands on the page, now and not only in a while.
async fn said_without_a_break(journey: &Journey) -> Outcome {
    if journey.has("[data-notice=not-kept]").await? {
        Ok(())
    } else {
        Err("the page no longer says that nothing is kept".into())
    }
}

async fn a_browser_that_keeps_nothing_says_so_and_reckons_on(machine: &Machine) -> Outcome {
    const NO_STORE: &str = "for (const name of ['localStorage', 'indexedDB']) Object.defineProperty(window, name, \
        { get() { throw new DOMException('', 'SecurityError'); } });";
    let served = Journey::begin(machine).await?;
    // A browser of its own, which forgets the script when it ends.
    let journey = served.fresh_profile(machine).await?;
    let outcome = async {
        journey
            .developer(
                "Page.addScriptToEvaluateOnNewDocument",
                json!({ "source": NO_STORE }),
            )
            .await?;
        journey.open("").await?;
        journey.wait_for("[data-notice=not-kept]").await?;
        // The notice stays over the example, and over what is typed.
        journey.tap("example").await?;
        journey.wait_gone("[data-do=example]").await?;
        said_without_a_break(&journey).await?;
        journey.open("#/vehicle").await?;
        journey.type_into("vehicle/payload", "900").await?;
        said_without_a_break(&journey).await?;
        journey.open("#/books").await?;
        journey.type_into("new-book", "Van").await?;
        journey.tap("new-book").await?;
        journey.wait_for("[data-page=questions]").await?;
        said_without_a_break(&journey).await?;
        journey.open("#/vehicle").await?;
        journey.enter("vehicle/front_unladen", "1080 exact").await?;
        journey.enter("vehicle/rear_unladen", "795 exact").await?;
        journey
            .expect_that("vehicle/unladen", "1875 kg", |shown| {
                shown.starts_with("188") || shown.starts_with("187")
            })
            .await?;
        journey.tap("undo").await?;
        journey.wait_for("[data-notice=not-kept]").await?;
        journey.open("#/settings").await?;
        journey.tap("set look dark").await?;
        journey.open("#/gearing").await?;
        journey.wait_for("html[data-look=dark]").await?;
        journey.console_is_quiet().await
    }
    .await;
    journey.end().await;
    outcome
}
