//! What is entered is kept: through a reload, beside a second tab, in a damaged and in a full store.

use serde_json::json;

use super::cases;
use crate::{Journey, Machine, Outcome};

cases![
    an_edit_made_before_a_reload_can_be_undone_after_it,
    a_second_tab_shows_the_book_and_edits_it_once_it_was_handed_over,
    a_damaged_book_is_set_aside_and_the_others_open,
    a_full_store_says_so_at_once_and_keeps_again_when_there_is_room,
    a_book_that_a_full_store_does_not_take_stays_open,
    what_was_typed_a_moment_before_the_tab_closed_is_kept,
    naming_the_rough_book_keeps_it_and_leaves_an_empty_one,
    a_book_is_copied_renamed_deleted_and_brought_back,
    the_rough_book_is_there_before_anything_was_entered_in_it,
];

const WHEELBASE: &str = "vehicle/wheelbase";
const NAMES: &str = "return Object.keys(localStorage).filter(n => n.includes('/book/'))";

/// Enters a wheelbase and waits until it is in the store.
async fn entered(journey: &Journey, text: &str) -> Outcome {
    journey.open("#/vehicle").await?;
    journey.enter(WHEELBASE, text).await?;
    kept(journey, text).await
}

/// Waits until some book of the store holds a text.
async fn kept(journey: &Journey, text: &str) -> Outcome {
    let script = "return Object.keys(localStorage).some(n => n.includes('/book/') && localStorage.getItem(n).includes(arguments[0]))";
    journey
        .until("the book is kept", async || {
            Ok(journey.ask(script, vec![json!(text)]).await? == json!(true))
        })
        .await
}

fn equal(what: &str, found: &str, wanted: &str) -> Outcome {
    if found == wanted {
        Ok(())
    } else {
        Err(format!("{what} is `{found}`, not `{wanted}`"))
    }
}

/// Waits until a field holds a text.
async fn holds(journey: &Journey, key: &str, text: &str) -> Outcome {
    journey
        .until(&format!("{key} holds `{text}`"), async || {
            Ok(journey.entry(key).await? == text)
        })
        .await
}

async fn an_edit_made_before_a_reload_can_be_undone_after_it(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    entered(&journey, "3185").await?;
    // What is typed while the cursor stays in a field is one edit, so it goes elsewhere first.
    journey.enter("vehicle/length", "5290").await?;
    entered(&journey, "3190").await?;
    journey.reload().await?;
    holds(&journey, WHEELBASE, "3190").await?;
    journey.tap("undo").await?;
    holds(&journey, WHEELBASE, "3185").await
}

async fn a_second_tab_shows_the_book_and_edits_it_once_it_was_handed_over(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    entered(&journey, "3185").await?;
    let client = journey.client();
    let told = |error| format!("windows: {error}");
    let first = client.window().await.map_err(told)?;
    let second = client.new_window(true).await.map_err(told)?.handle;
    client
        .switch_to_window(second.clone())
        .await
        .map_err(told)?;
    journey.open("#/vehicle").await?;
    journey.wait_for("[data-notice=read-only]").await?;
    equal(
        "the second tab's wheelbase",
        &journey.entry(WHEELBASE).await?,
        "3185",
    )?;

    client.switch_to_window(first.clone()).await.map_err(told)?;
    entered(&journey, "3190").await?;
    client
        .switch_to_window(second.clone())
        .await
        .map_err(told)?;
    holds(&journey, WHEELBASE, "3190").await?;

    // What was typed a moment ago, and is not in the store yet, is handed over as well.
    client.switch_to_window(first.clone()).await.map_err(told)?;
    journey.type_into("vehicle/length", "5290").await?;
    client
        .switch_to_window(second.clone())
        .await
        .map_err(told)?;
    journey.tap("edit-here").await?;
    journey.wait_gone("[data-notice=read-only]").await?;
    holds(&journey, "vehicle/length", "5290").await?;
    journey.enter("vehicle/height", "2180").await?;
    kept(&journey, "2180").await?;

    client.switch_to_window(first.clone()).await.map_err(told)?;
    journey.wait_for("[data-notice=read-only]").await?;
    holds(&journey, "vehicle/height", "2180").await?;
    client.switch_to_window(second).await.map_err(told)?;
    client.close_window().await.map_err(told)?;
    client.switch_to_window(first).await.map_err(told)
}

async fn a_damaged_book_is_set_aside_and_the_others_open(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("#/books").await?;
    journey.type_into("new-book", "Van").await?;
    journey.tap("new-book").await?;
    entered(&journey, "2600").await?;
    journey.open("#/books").await?;
    journey.type_into("new-book", "Lorry").await?;
    journey.tap("new-book").await?;
    entered(&journey, "3185").await?;
    let damage = "for (const n of Object.keys(localStorage)) { const t = localStorage.getItem(n); \
        if (t.includes('Lorry')) localStorage.setItem(n, t.replace('Lorry', 'Lorrz')); }";
    journey.ask(damage, Vec::new()).await?;
    journey.open("#/books").await?;
    journey.reload().await?;
    journey.wait_for("[data-notice=not-kept]").await?;
    journey.wait_for("[data-aside]").await?;
    let listed = journey.text(".book-list").await?;
    if listed.contains("Lorr") || !listed.contains("Van") {
        return Err(format!("the list shows `{listed}`"));
    }
    let van = journey
        .ask("return [...document.querySelectorAll('[data-book]')].find(b => b.textContent.includes('Van')).dataset.book", Vec::new())
        .await?;
    journey
        .tap(&format!("open-book {}", van.as_str().unwrap_or_default()))
        .await?;
    journey.open("#/vehicle").await?;
    holds(&journey, WHEELBASE, "2600").await?;
    let still = "return Object.keys(localStorage).filter(n => (localStorage.getItem(n) || '').includes('Lorrz')).length";
    let still = journey.ask(still, Vec::new()).await?;
    if still.as_u64().unwrap_or_default() == 0 {
        return Err("the damaged book was overwritten".into());
    }
    Ok(())
}

const FILL: &str = "for (const size of [100000, 1000, 100, 10, 1]) { \
    try { for (let i = 0;; i++) localStorage.setItem(`fill-${size}-${i}`, 'x'.repeat(size)); } catch (full) {} }";
const EMPTY: &str = "for (const n of Object.keys(localStorage)) if (n.startsWith('fill-')) localStorage.removeItem(n);";

async fn a_full_store_says_so_at_once_and_keeps_again_when_there_is_room(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    entered(&journey, "3185").await?;
    journey.ask(FILL, Vec::new()).await?;
    journey.type_into("vehicle/length", "5290").await?;
    journey.wait_for("[data-notice=not-kept]").await?;
    // The page goes on working meanwhile.
    journey.type_into("vehicle/width", "1980").await?;
    journey.ask(EMPTY, Vec::new()).await?;
    journey.type_into("vehicle/height", "2180").await?;
    journey.wait_gone("[data-notice=not-kept]").await?;
    journey.reload().await?;
    for (key, text) in [
        ("vehicle/length", "5290"),
        ("vehicle/width", "1980"),
        ("vehicle/height", "2180"),
    ] {
        holds(&journey, key, text).await?;
    }
    Ok(())
}

async fn a_book_that_a_full_store_does_not_take_stays_open(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    // The rough book, to which one could go.
    entered(&journey, "3185").await?;
    journey.open("#/books").await?;
    journey.type_into("new-book", "Van").await?;
    journey.tap("new-book").await?;
    entered(&journey, "2600").await?;
    journey.ask(FILL, Vec::new()).await?;
    journey.type_into("vehicle/length", "5290").await?;
    journey.wait_for("[data-notice=not-kept]").await?;
    // Whatever would put another book in its place is refused, and says why.
    for other in ["open-book rough", "example", "new-book"] {
        journey.open("#/books").await?;
        journey.tap(other).await?;
        journey.wait_for("[data-fault=books]").await?;
        journey.open("#/vehicle").await?;
        holds(&journey, "vehicle/length", "5290").await?;
    }
    journey.ask(EMPTY, Vec::new()).await?;
    journey.open("#/books").await?;
    journey.tap("open-book rough").await?;
    kept(&journey, "5290").await?;
    journey.open("#/vehicle").await?;
    holds(&journey, WHEELBASE, "3185").await
}

async fn what_was_typed_a_moment_before_the_tab_closed_is_kept(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    entered(&journey, "2600").await?;
    journey.type_into(WHEELBASE, "2650").await?;
    // Another page in the same tab.
    journey.goto("about:blank").await?;
    let client = journey.client();
    let told = |error| format!("windows: {error}");
    let first = client.window().await.map_err(told)?;
    let second = client.new_window(true).await.map_err(told)?.handle;
    client.switch_to_window(second).await.map_err(told)?;
    journey.open("#/vehicle").await?;
    holds(&journey, WHEELBASE, "2650").await?;
    journey.type_into(WHEELBASE, "2700").await?;
    client.close_window().await.map_err(told)?;
    client.switch_to_window(first).await.map_err(told)?;
    journey.open("#/vehicle").await?;
    holds(&journey, WHEELBASE, "2700").await?;
    journey.tap("undo").await?;
    holds(&journey, WHEELBASE, "2650").await
}

async fn naming_the_rough_book_keeps_it_and_leaves_an_empty_one(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    entered(&journey, "3185").await?;
    journey.open("").await?;
    journey.type_into("book/name", "Hop lorry").await?;
    kept(&journey, "Hop lorry").await?;
    journey.open("#/books").await?;
    let listed = journey.text(".book-list").await?;
    if !listed.contains("Hop lorry") {
        return Err(format!("the list shows `{listed}`"));
    }
    journey.open("#/vehicle").await?;
    holds(&journey, WHEELBASE, "3185").await?;
    journey.open("#/books").await?;
    journey.tap("open-book rough").await?;
    journey.open("#/vehicle").await?;
    holds(&journey, WHEELBASE, "").await
}

async fn a_book_is_copied_renamed_deleted_and_brought_back(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("#/books").await?;
    journey.type_into("new-book", "Van").await?;
    journey.tap("new-book").await?;
    entered(&journey, "2600").await?;
    let names = journey.ask(NAMES, Vec::new()).await?;
    let names = names.as_array().cloned().unwrap_or_default();
    let id = names
        .iter()
        .filter_map(|name| name.as_str()?.split('/').nth(2))
        .find(|id| *id != "rough")
        .ok_or("the new book is not in the store")?
        .to_owned();
    journey.open("#/books").await?;
    journey.tap(&format!("rename-book {id}")).await?;
    journey.type_into("book-name", "Blue van").await?;
    journey.tap("take-name").await?;
    journey
        .until("the new name stands in the list", async || {
            Ok(journey.text(".book-list").await?.contains("Blue van"))
        })
        .await?;
    journey.tap(&format!("copy-book {id}")).await?;
    journey
        .until("there are two of them", async || {
            Ok(journey.count(".book-card h2").await? >= 2)
        })
        .await?;
    journey.tap(&format!("delete-book {id}")).await?;
    journey.wait_gone(&format!("[data-book=\"{id}\"]")).await?;
    journey.tap(&format!("bring-back {id}")).await?;
    journey.tap(&format!("open-book {id}")).await?;
    journey.open("#/vehicle").await?;
    holds(&journey, WHEELBASE, "2600").await
}

async fn the_rough_book_is_there_before_anything_was_entered_in_it(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.tap("example").await?;
    journey.wait_gone("[data-do=example]").await?;
    // A book that is opened says when it was kept, and no longer that it is the rough one.
    let said = journey.text("[data-saved]").await?;
    if !said.starts_with("Saved ") {
        return Err(format!("of the example it is said `{said}`"));
    }
    journey.open("#/books").await?;
    if journey.has("[data-do=\"file-copy rough\"]").await? {
        return Err("a book with nothing in it can be copied".into());
    }
    journey.tap("open-book rough").await?;
    journey.wait_for("[data-page=questions]").await?;
    journey.open("#/vehicle").await?;
    holds(&journey, WHEELBASE, "").await
}
