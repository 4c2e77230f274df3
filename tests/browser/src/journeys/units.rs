//! A metric book and a British inch book on one tablet, and the inch book on somebody else's.

use super::cases;
use super::links::link_of;
use crate::{Journey, Machine, Outcome};

cases![
    two_books_are_each_shown_in_their_own_units,
    a_book_is_sent_with_its_units_and_can_be_looked_at_in_the_receiver_s,
    the_decimal_mark_is_at_first_the_one_that_the_browser_writes,
];

const WHEELBASE: &str = "vehicle/wheelbase";

async fn begun(journey: &Journey, name: &str) -> Outcome {
    journey.open("#/books").await?;
    journey.type_into("new-book", name).await?;
    journey.tap("new-book").await?;
    journey.wait_for("[data-page=questions]").await
}

async fn chosen(journey: &Journey, key: &str) -> Outcome {
    journey
        .wait_for(&format!("[data-do=\"{key}\"][aria-checked=true]"))
        .await
}

/// The wheelbase as it stands on the sheet, and the units that it and the blank length beside it have.
async fn shown(journey: &Journey, wanted: [&str; 3]) -> Outcome {
    journey.open("#/vehicle").await?;
    let unit = |key: &str| format!(".row:has([data-key=\"{key}\"]) .unit");
    let found = [
        journey.entry(WHEELBASE).await?,
        journey.text(&unit(WHEELBASE)).await?,
        journey.text(&unit("vehicle/length")).await?,
    ];
    if found == wanted {
        Ok(())
    } else {
        Err(format!("the sheet shows {found:?}, not {wanted:?}"))
    }
}

/// A book in inches with its axle loads in pounds, begun beside a metric one.
async fn inch_book(journey: &Journey) -> Outcome {
    begun(journey, "Inch lorry").await?;
    journey.open("#/settings").await?;
    chosen(journey, "set book-units metric").await?;
    journey.tap("set book-units imperial").await?;
    chosen(journey, "set book-units imperial").await?;
    chosen(journey, "set units metric").await?;
    journey.open("#/vehicle").await?;
    journey.enter(WHEELBASE, "120").await?;
    journey.enter("vehicle/front_unladen", "2400 exact").await?;
    journey.enter("vehicle/rear_unladen", "1800 exact").await?;
    journey
        .expect_that("vehicle/unladen", "4200 lb", |shown| {
            shown.starts_with("4200") && shown.contains("lb")
        })
        .await
}

async fn opened(journey: &Journey, name: &str) -> Outcome {
    journey.open("#/books").await?;
    let find = "return [...document.querySelectorAll('[data-book]')].find(b => b.textContent.includes(arguments[0])).dataset.book";
    let id = journey.ask(find, vec![name.into()]).await?;
    journey
        .tap(&format!("open-book {}", id.as_str().unwrap_or_default()))
        .await?;
    journey.wait_for("[data-page=questions]").await
}

async fn two_books_are_each_shown_in_their_own_units(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    begun(&journey, "Metric van").await?;
    journey.open("#/vehicle").await?;
    journey.enter(WHEELBASE, "3000").await?;
    inch_book(&journey).await?;
    shown(&journey, ["120", "in", "in"]).await?;
    opened(&journey, "Metric van").await?;
    shown(&journey, ["3000", "mm", "mm"]).await?;
    // A number keeps the unit that it was typed in, whatever the book is shown in now; that is undone like any edit.
    journey.open("#/settings").await?;
    journey.tap("set book-units us").await?;
    shown(&journey, ["3000", "mm", "in"]).await?;
    journey.reload().await?;
    shown(&journey, ["3000", "mm", "in"]).await?;
    journey.tap("undo").await?;
    shown(&journey, ["3000", "mm", "mm"]).await?;
    opened(&journey, "Inch lorry").await?;
    shown(&journey, ["120", "in", "in"]).await
}

async fn a_book_is_sent_with_its_units_and_can_be_looked_at_in_the_receiver_s(
    machine: &Machine,
) -> Outcome {
    let sender = Journey::begin(machine).await?;
    sender.open("").await?;
    inch_book(&sender).await?;
    let links = [
        link_of(&sender, "vehicle").await?,
        link_of(&sender, "book").await?,
    ];
    let receiver = sender.fresh_profile(machine).await?;
    let outcome = async {
        for link in &links {
            receiver.goto(link).await?;
            let unladen = "[data-sent=\"vehicle/unladen\"]";
            receiver.wait_for(unladen).await?;
            let theirs = receiver.text(unladen).await?;
            receiver.tap("other-units").await?;
            let own = receiver.text(unladen).await?;
            // 0.453 592 37 kg to the pound: NIST SP 811, B.8. 4200 lb are 1905.09 kg.
            if !(theirs.starts_with("4200 ") && theirs.ends_with(" lb") && own.starts_with("1905"))
            {
                return Err(format!("the link shows `{theirs}`, then `{own}`"));
            }
        }
        receiver.tap("keep-copy").await?;
        receiver.wait_gone("[data-page=link]").await?;
        shown(&receiver, ["120", "in", "in"]).await?;
        begun(&receiver, "Own van").await?;
        shown(&receiver, ["", "mm", "mm"]).await
    }
    .await;
    receiver.end().await;
    outcome
}

async fn the_decimal_mark_is_at_first_the_one_that_the_browser_writes(
    machine: &Machine,
) -> Outcome {
    let served = Journey::begin(machine).await?;
    // The marks of these languages are those of CLDR.
    for (locale, mark) in [("de-DE", "comma"), ("ja-JP", "point"), ("en-GB", "point")] {
        let journey = served.fresh_profile(machine).await?;
        let outcome = async {
            journey
                .developer(
                    "Emulation.setLocaleOverride",
                    serde_json::json!({ "locale": locale }),
                )
                .await?;
            journey.open("#/settings").await?;
            chosen(&journey, &format!("set mark {mark}")).await
        }
        .await;
        journey.end().await;
        outcome.map_err(|why| format!("{locale}: {why}"))?;
    }
    Ok(())
}
