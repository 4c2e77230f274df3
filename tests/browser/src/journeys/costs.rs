//! The costs sheet, entered by hand as a person would.

use std::time::Duration;

use serde_json::json;

use super::cases;
use super::whole_job::unfold;
use crate::{Journey, Machine, Outcome};

cases![
    costs_entered_by_hand_come_to_what_the_pencil_says,
    a_table_of_costs_comes_in_after_a_look_and_goes_by_undo,
    a_line_priced_from_paint_follows_it_is_pinned_and_follows_it_again,
];

/// The lines: what is entered at once, what stands behind "More", and choices there.
struct Line {
    what: &'static str,
    price: &'static str,
    state: &'static str,
    entered: &'static [(&'static str, &'static str)],
    chosen: &'static [(&'static str, &'static str)],
    total: &'static str,
}

/// Worked out with a pencil: 380 + 42.50 = 422.50; duty 19.01; tax a fifth of 441.51 is 88.30; 529.81 EUR at 0.8571.
const LINES: &[Line] = &[
    Line {
        what: "The lorry",
        price: "3450",
        state: "paid",
        entered: &[],
        chosen: &[("payer", "2")],
        total: "£3,450.00",
    },
    Line {
        what: "Gearbox, exchange",
        price: "450",
        state: "paid",
        entered: &[("job", "Gearbox"), ("deposit", "150")],
        chosen: &[("payer", "1")],
        total: "£600.00",
    },
    Line {
        what: "Steering box from abroad",
        price: "€380",
        state: "committed",
        entered: &[
            ("tax", "20"),
            ("carriage", "42.50"),
            ("duty", "4.5"),
            ("rate", "0.8571"),
            ("rate_day", "2026-03-02"),
            ("paid_so_far", "100"),
        ],
        chosen: &[("tax_basis", "out"), ("payer", "1")],
        total: "£454.10",
    },
    Line {
        what: "Old seats",
        price: "80",
        state: "paid",
        entered: &[],
        chosen: &[("kind", "sold"), ("payer", "1")],
        total: "\u{2212}£80.00",
    },
    Line {
        what: "Tyres",
        price: "118.75",
        state: "planned",
        entered: &[("quantity", "4")],
        chosen: &[],
        total: "£475.00",
    },
];

/// Enters the sheet by hand, from empty, and reads its answers. Purchases of other sheets may stand there already.
///
/// # Errors
/// What went otherwise than it should.
pub async fn by_hand(journey: &Journey) -> Outcome {
    journey.open("#/costs").await?;
    journey.enter("costs/limit", "12000").await?;
    for (id, name) in [("1", "Workshop"), ("2", "Vineyard")] {
        add(journey, "add costs/payers").await?;
        journey
            .enter(&format!("costs/payers/{id}/name"), name)
            .await?;
    }
    journey.enter("costs/payers/2/share", "2").await?;
    for (at, line) in LINES.iter().enumerate() {
        enter_line(journey, at, line).await?;
    }
    journey.tap("all-answers costs").await?;
    // 3450 + 600 + 85.71 (100 EUR) - 80; 454.10 - 85.71.
    for (name, amount) in [("paid", "£4,055.71"), ("committed", "£368.39")] {
        journey.tap(&format!("answer costs/{name}")).await?;
        journey
            .expect(&format!("costs/{name}"), &format!("{amount} exact"))
            .await?;
    }
    journey.tap("answer costs/left").await?;
    // A third of 4055.71 is 1351.90; the workshop paid 605.71.
    journey
        .expect("costs/owes/1/2", "Workshop pays £746.19 to Vineyard.")
        .await?;
    journey.expect("costs/group/Gearbox", "£600.00").await?;
    hours_and_worth(journey).await?;
    choices(journey).await?;
    mend(journey).await?;
    journey.page_is_sound().await
}

/// Adds a row. A second press within a quarter of a second is taken for a trembling hand, and no person types faster.
async fn add(journey: &Journey, what: &str) -> Outcome {
    tokio::time::sleep(Duration::from_millis(300)).await;
    journey.tap(what).await
}

async fn enter_line(journey: &Journey, at: usize, line: &Line) -> Outcome {
    // The first line stands there before anything is entered.
    if at > 0 {
        add(journey, "add costs/lines").await?;
    }
    let row = format!("costs/lines/{}", at + 1);
    journey.enter(&format!("{row}/what"), line.what).await?;
    journey.enter(&format!("{row}/price"), line.price).await?;
    journey.choose(&format!("{row}/state"), line.state).await?;
    if !line.entered.is_empty() || !line.chosen.is_empty() {
        journey.tap(&format!("more {row}")).await?;
    }
    for (field, choice) in line.chosen {
        journey.choose(&format!("{row}/{field}"), choice).await?;
    }
    for (field, text) in line.entered {
        journey.enter(&format!("{row}/{field}"), text).await?;
    }
    journey.expect(&row, line.total).await
}

/// Own hours: 36.5 at 25 and 20 at 30 are 912.50 and 600.
async fn hours_and_worth(journey: &Journey) -> Outcome {
    journey.enter("costs/hour_rate", "25").await?;
    for (id, what, hours) in [("1", "Cab floor", "36.5"), ("2", "Wiring", "20")] {
        add(journey, "add costs/hours").await?;
        journey
            .enter(&format!("costs/hours/{id}/what"), what)
            .await?;
        journey
            .enter(&format!("costs/hours/{id}/hours"), hours)
            .await?;
    }
    journey.enter("costs/hours/2/rate", "30").await?;
    journey.enter("costs/value_done", "16000").await?;
    journey.expect("costs/hours_value", "£1,512.50 exact").await
}

/// 480 / 35 is 13.714 days. Sent out 40 + 4 x 90 = 400; here 60 + 40 and 14 hours at 25, 450.
async fn choices(journey: &Journey) -> Outcome {
    add(journey, "add costs/hire").await?;
    for (field, text) in [
        ("what", "Engine crane"),
        ("hire_day", "35"),
        ("buy_price", "480"),
        ("days", "14"),
    ] {
        journey
            .enter(&format!("costs/hire/1/{field}"), text)
            .await?;
    }
    let told = "buying cheaper by 10 from the 14th day";
    journey
        .expect_that("costs/hire/1/verdict", told, |said| {
            said.contains("£10.00 less") && said.contains("13.714") && said.contains("day 14")
        })
        .await?;
    add(journey, "add costs/send").await?;
    for (field, text) in [
        ("what", "Blast the wheels"),
        ("count", "4"),
        ("send_each", "90"),
        ("here_each", "10"),
        ("hours_each", "3"),
    ] {
        journey
            .enter(&format!("costs/send/1/{field}"), text)
            .await?;
    }
    journey.tap("more costs/send/1").await?;
    for (field, text) in [
        ("send_once", "40"),
        ("here_once", "60"),
        ("hours_once", "2"),
    ] {
        journey
            .enter(&format!("costs/send/1/{field}"), text)
            .await?;
    }
    let told = "sending out cheaper by 50, doing it here by 300 in cash, an hour earning 21.43";
    journey
        .expect_that("costs/send/1/verdict", told, |said| {
            said.contains("£50.00 less") && said.contains("£300.00 less") && said.contains("£21.43")
        })
        .await
}

/// An impossible entry is told beside its field, kept as typed, and spoils no other sum.
async fn mend(journey: &Journey) -> Outcome {
    let price = "costs/lines/5/price";
    journey.enter(price, "12 quid").await?;
    journey
        .wait_for(&format!("[data-key=\"{price}\"][aria-invalid=true]"))
        .await?;
    journey.expect("costs/group/Gearbox", "£600.00").await?;
    journey.enter(price, "118.75").await?;
    journey
        .wait_gone(&format!("[data-key=\"{price}\"][aria-invalid=true]"))
        .await?;
    journey.expect("costs/lines/5", "£475.00").await
}

/// Puts a text into a field that is no entry of the book.
async fn put(journey: &Journey, selector: &str, text: &str) -> Outcome {
    journey.wait_for(selector).await?;
    let script = "const e = document.querySelector(arguments[0]); e.value = arguments[1]; \
                  e.dispatchEvent(new InputEvent('input', { bubbles: true }));";
    journey
        .ask(script, vec![json!(selector), json!(text)])
        .await?;
    Ok(())
}

async fn costs_entered_by_hand_come_to_what_the_pencil_says(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    by_hand(&journey).await?;
    // A tenth of 368.39 + 475 is 84.34; 12000 - 4055.71 - 368.39 - 475 - 84.34.
    journey.expect("costs/left", "£7,016.56 exact").await?;
    // 16000 less all cash, 4899.10.
    journey
        .expect("costs/over_cash", "£11,100.90 exact")
        .await?;
    journey.tap("working").await?;
    journey.wait_for("[data-working=\"costs/left\"]").await?;
    journey.tap("close-panel").await?;
    // Worked back: a limit 983.44 higher leaves 8000.
    journey.tap("work-back").await?;
    put(&journey, "#wanted", "8000").await?;
    journey.wait_for("[data-do=\"use-this\"]").await?;
    journey.tap("use-this").await?;
    journey.expect("costs/left", "£8,000.00 exact").await?;
    let limit = journey.entry("costs/limit").await?;
    if limit != "12983.44" {
        return Err(format!(
            "the limit worked back should be 12983.44, and is {limit}"
        ));
    }
    journey.end().await;
    Ok(())
}

async fn a_table_of_costs_comes_in_after_a_look_and_goes_by_undo(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("#/costs").await?;
    journey.enter("costs/limit", "100").await?;
    journey.tap("bring-table").await?;
    let text = "what,price,state,colour\nHoses,12.50,planned,red\nBelt,lots,paid,\n";
    put(&journey, "[data-do=\"table-text\"]", text).await?;
    journey.wait_for("[data-do=\"take-table\"]").await?;
    let odd = journey.text("[data-do=\"table-problems\"]").await?;
    if !odd.contains("colour") || !odd.contains("lots") {
        return Err(format!("the odd column and price should be named: `{odd}`"));
    }
    journey.tap("take-table").await?;
    // 12.50 and a tenth held back: 100 - 12.50 - 1.25.
    journey.expect("costs/left", "£86.25 exact").await?;
    journey
        .wait_for("[data-remark=\"line_unreadable\"]")
        .await?;
    journey.tap("undo").await?;
    journey.expect("costs/left", "£100.00 exact").await?;
    journey.end().await;
    Ok(())
}

/// Another price for a tin, on the sheet that it comes from; then back to costs.
async fn priced_at(journey: &Journey, price: &str) -> Outcome {
    journey.open("#/paint").await?;
    unfold(journey).await?;
    journey
        .enter("paint/products/1/tins/1/price", price)
        .await?;
    journey.open("#/costs").await
}

/// Three tins: 3 x 27.50 = 82.50, 3 x 27.60 = 82.80, 3 x 27.70 = 83.10.
async fn a_line_priced_from_paint_follows_it_is_pinned_and_follows_it_again(
    machine: &Machine,
) -> Outcome {
    const LINE: &str = "costs/priced/paint-tins-1-1";
    let differs = "[data-remark=\"pinned_differs\"]";
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.tap("example").await?;
    journey.open("#/costs").await?;
    journey.expect(LINE, "£82.50").await?;
    priced_at(&journey, "27.60").await?;
    journey.expect(LINE, "£82.80").await?;

    journey.tap(&format!("pin {LINE}")).await?;
    journey
        .wait_for(&format!("[data-do=\"unpin {LINE}\"][aria-pressed=true]"))
        .await?;
    priced_at(&journey, "27.70").await?;
    journey.expect(LINE, "£82.80").await?;
    let said = journey.text(&format!("[data-row=\"{LINE}\"]")).await?;
    if !(said.contains("pinned") && said.contains("3 × £27.70")) {
        return Err(format!(
            "a pinned line should say what its sheet says now: `{said}`"
        ));
    }
    journey.wait_for(differs).await?;

    journey.tap(&format!("unpin {LINE}")).await?;
    journey.expect(LINE, "£83.10").await?;
    journey.wait_gone(differs).await?;
    // Undone, it is pinned as it was.
    journey.tap("undo").await?;
    journey.expect(LINE, "£82.80").await?;
    journey.end().await;
    Ok(())
}
