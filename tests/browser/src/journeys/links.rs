//! A book is sent as a link, opened by somebody else, kept, and compared value by value.

use serde_json::json;

use super::cases;
use super::whole_job::{everything, same};
use crate::{Journey, Machine, Outcome};

cases![
    a_link_opened_elsewhere_holds_every_value_of_the_book,
    a_link_of_one_sheet_is_short_and_comes_with_its_figures,
    a_broken_or_newer_link_says_so_and_changes_nothing,
    what_differs_is_taken_value_by_value,
    a_link_is_shared_where_the_browser_offers_it,
];

/// The link that the page of sending shows.
pub(super) async fn link_of(journey: &Journey, what: &str) -> Outcome<String> {
    journey.open(&format!("#/send/{what}")).await?;
    journey.wait_for("[data-link]").await?;
    let link = journey
        .ask(
            "return document.querySelector('[data-link]').value",
            Vec::new(),
        )
        .await?;
    let link = link.as_str().unwrap_or_default().to_owned();
    if link.contains("#/link/1") {
        Ok(link)
    } else {
        Err(format!("`{link}` is no link"))
    }
}

const STORED: &str = "return JSON.stringify(Object.entries(localStorage).sort())";

async fn a_link_opened_elsewhere_holds_every_value_of_the_book(machine: &Machine) -> Outcome {
    let sender = Journey::begin(machine).await?;
    sender.open("").await?;
    sender.tap("example").await?;
    let sent = everything(&sender).await?;
    let link = link_of(&sender, "book").await?;

    let receiver = sender.fresh_profile(machine).await?;
    let outcome = async {
        receiver.goto(&link).await?;
        receiver.wait_for("[data-page=link]").await?;
        let books = "return Object.keys(localStorage).filter(n => n.includes('/book/')).length";
        if receiver.ask(books, Vec::new()).await? != json!(0) {
            return Err("opening the link put something into the store".into());
        }
        receiver.tap("keep-copy").await?;
        receiver.wait_gone("[data-page=link]").await?;
        same(&sent, &everything(&receiver).await?)
    }
    .await;
    receiver.end().await;
    outcome
}

async fn a_link_of_one_sheet_is_short_and_comes_with_its_figures(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.tap("example").await?;
    journey.open("#/paint").await?;
    let litres = journey.result("paint/litres").await?;
    for sheet in ["vehicle", "gearing", "springs", "paint", "costs"] {
        let link = link_of(&journey, sheet).await?;
        if link.len() >= 2_000 {
            return Err(format!("the link of {sheet} has {} characters", link.len()));
        }
    }
    let link = link_of(&journey, "paint").await?;
    journey.wait_for("[data-qr]").await?;
    journey.goto(&link).await?;
    journey.wait_for("[data-sent=\"paint/litres\"]").await?;
    let shown = journey.text("[data-sent=\"paint/litres\"]").await?;
    let figures = |text: &str| {
        text.chars()
            .filter(|c| c.is_ascii_digit() || *c == '.')
            .collect::<String>()
    };
    if figures(&shown) == figures(&litres) {
        Ok(())
    } else {
        Err(format!("the link shows `{shown}`, the sheet `{litres}`"))
    }
}

async fn a_broken_or_newer_link_says_so_and_changes_nothing(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.tap("example").await?;
    let link = link_of(&journey, "vehicle").await?;
    journey.open("").await?;
    let before = journey.ask(STORED, Vec::new()).await?;
    let cut = &link[..link.len() - 7];
    let newer = link.replacen("#/link/1", "#/link/2", 1);
    let foreign = format!("{}#/link/hello", journey.base());
    let endless = format!("{}#/link/1{}", journey.base(), "A".repeat(50_000));
    for bad in [cut, newer.as_str(), foreign.as_str(), endless.as_str()] {
        journey.goto(bad).await?;
        journey.wait_for("[data-fault=link]").await?;
    }
    journey.tap("questions").await?;
    journey.wait_for("[data-page=questions]").await?;
    if journey.ask(STORED, Vec::new()).await? == before {
        Ok(())
    } else {
        Err("a bad link changed the store".into())
    }
}

async fn what_differs_is_taken_value_by_value(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("#/books").await?;
    journey.type_into("new-book", "Van").await?;
    journey.tap("new-book").await?;
    journey.open("#/vehicle").await?;
    journey.enter("vehicle/wheelbase", "2600").await?;
    let link = link_of(&journey, "book").await?;
    journey.open("#/vehicle").await?;
    journey.enter("vehicle/wheelbase", "2650").await?;
    journey.enter("vehicle/length", "4400").await?;
    journey.goto(&link).await?;
    journey
        .wait_for("[data-differs=\"vehicle/length\"]")
        .await?;
    journey.tap("[data-do=\"take vehicle/wheelbase\"]").await?;
    journey
        .wait_gone("[data-differs=\"vehicle/wheelbase\"]")
        .await?;
    if !journey.has("[data-differs=\"vehicle/length\"]").await? {
        return Err("taking one value took another".into());
    }
    journey.open("#/vehicle").await?;
    let (wheelbase, length) = (
        journey.entry("vehicle/wheelbase").await?,
        journey.entry("vehicle/length").await?,
    );
    if (wheelbase.as_str(), length.as_str()) == ("2600", "4400") {
        Ok(())
    } else {
        Err(format!("the book holds {wheelbase} and {length}"))
    }
}

/// Stands in for the browser's own window that asks whom to share with: keeps what it is given, or refuses with an error's name.
const SHARING: &str = r#"
Object.defineProperty(navigator, "share", { configurable: true, value: (what) => {
  window.given = { ...what };
  return window.refusal ? Promise.reject(new DOMException("", window.refusal)) : Promise.resolve();
} });
window.refusal = arguments[0];
"#;

/// Shares the link of a sheet with a browser that answers so, and gives what the browser was given and what the page then says.
async fn shared(journey: &Journey, refusal: &str) -> Outcome<(serde_json::Value, String)> {
    journey.ask(SHARING, vec![json!(refusal)]).await?;
    journey.open("#/").await?;
    let link = link_of(journey, "paint").await?;
    journey.tap("share-link").await?;
    let given = "return { url: window.given?.url ?? null, title: window.given?.title ?? null };";
    let given = journey.ask(given, Vec::new()).await?;
    if given["url"] != json!(link) {
        return Err(format!("the browser was given {given} to share"));
    }
    Ok((given, journey.text(".book-keys [role=status]").await?))
}

async fn a_link_is_shared_where_the_browser_offers_it(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.tap("example").await?;
    let offers = "return typeof navigator.share === 'function'";
    let offers = journey.ask(offers, Vec::new()).await? == json!(true);
    link_of(&journey, "paint").await?;
    if journey.has("[data-do=\"share-link\"]").await? != offers {
        return Err("the key to share does not follow what the browser offers".into());
    }
    let (given, said) = shared(&journey, "").await?;
    let title = given["title"].as_str().unwrap_or_default();
    if !(title.contains("Hop lorry") && title.ends_with("Paint") && said.is_empty()) {
        return Err(format!("shared as `{title}`, and the page says `{said}`"));
    }
    // Thinking better of it is no fault; a browser that refuses is.
    let (_, given_up) = shared(&journey, "AbortError").await?;
    let (_, refused) = shared(&journey, "NotAllowedError").await?;
    journey.reload().await?;
    if given_up.is_empty() && refused.contains("Copy the link") {
        Ok(())
    } else {
        Err(format!("given up: `{given_up}`; refused: `{refused}`"))
    }
}
