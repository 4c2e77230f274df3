//! Books as files: out and in again, and files that nobody of good will made.

use serde_json::{Value, json};

use super::cases;
use super::whole_job::{everything, same};
use crate::{Journey, Machine, Outcome};

cases![
    a_book_goes_out_as_a_file_and_comes_in_value_by_value_beside_its_original,
    a_file_that_is_no_book_says_why_and_changes_nothing,
    a_file_with_odd_texts_is_a_book_like_any_other,
];

const STORED: &str = "return JSON.stringify(Object.entries(localStorage).sort())";

/// Chooses a file in a field of the page, as a person does; its text is what a script gives.
const CHOOSE: &str = "const [field, name, script] = arguments; const text = new Function('return ' + script)(); \
    const files = new DataTransfer(); files.items.add(new File([text], name)); \
    const e = document.querySelector(field); e.files = files.files; e.dispatchEvent(new Event('change', { bubbles: true }));";

async fn brought_in(journey: &Journey, script: &str) -> Outcome {
    let field = "[data-do=import]";
    journey.wait_for(field).await?;
    journey
        .ask(
            CHOOSE,
            vec![json!(field), json!("book.json"), json!(script)],
        )
        .await?;
    Ok(())
}

async fn a_book_goes_out_as_a_file_and_comes_in_value_by_value_beside_its_original(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.tap("example").await?;
    let sent = everything(&journey).await?;
    journey.open("#/books").await?;
    let folder = journey.saving_into("book-file").await?;
    journey.tap("file-copy example").await?;
    let bytes = journey
        .saved_file(&folder.join("hop-lorry-example.json"))
        .await?;
    let text = String::from_utf8(bytes).map_err(|error| error.to_string())?;
    let books = journey.count(".book-card").await?;
    brought_in(&journey, &json!(text).to_string()).await?;
    journey.wait_for("[data-page=questions]").await?;
    same(&sent, &everything(&journey).await?)?;
    journey.open("#/books").await?;
    if journey.count(".book-card").await? == books + 1 {
        Ok(())
    } else {
        Err("the book that came in does not stand beside the others".into())
    }
}

/// A book with these entries, as a script that gives the text.
fn book(format: u32, entries: &Value) -> String {
    let book = json!({ "what": "rebuild reckoner build book", "format": format, "id": "odd", "entries": entries });
    json!(book.to_string()).to_string()
}

async fn a_file_that_is_no_book_says_why_and_changes_nothing(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("#/vehicle").await?;
    journey.enter("vehicle/wheelbase", "3185").await?;
    journey
        .until("the wheelbase is kept", async || {
            let stored = journey.ask(STORED, Vec::new()).await?;
            Ok(stored.as_str().unwrap_or_default().contains("3185"))
        })
        .await?;
    journey.open("#/books").await?;
    let before = journey.ask(STORED, Vec::new()).await?;
    let entry = json!({ "vehicle/wheelbase": "1" });
    let whole = book(1, &entry);
    for (what, script, told) in [
        ("nothing", "''".to_owned(), "not from the reckoner"),
        ("noughts", "'\\u0000'.repeat(5000)".to_owned(), "not from the reckoner"),
        ("lists without end", "'['.repeat(300000)".to_owned(), "not from the reckoner"),
        ("maps without end", "'{\"entries\":'.repeat(100000)".to_owned(), "not from the reckoner"),
        ("a picture", "'\\u0089PNG\\r\\n'".to_owned(), "not from the reckoner"),
        ("fifty megabytes", "' '.repeat(50 << 20)".to_owned(), "larger than anything"),
        ("a text too long", book(1, &json!({ "vehicle/wheelbase": "9".repeat(20_001) })), "larger than anything"),
        ("entries without end", "JSON.stringify({ what: 'rebuild reckoner build book', format: 1, id: 'odd', \
            entries: Object.fromEntries(Array.from({ length: 50001 }, (_, i) => ['costs/lines/' + i + '/what', 'x'])) })".to_owned(), "larger than anything"),
        ("a newer one", book(99, &entry), "newer version"),
        ("a key with a gap", book(1, &json!({ "vehicle//wheelbase": "1" })), "cut or changed"),
        ("a name of another sort", book(1, &json!({ "vehicle/wheelbase": { "text": ["1"] } })), "cut or changed"),
        ("half of one", format!("({whole}).slice(0, -20)"), "not from the reckoner"),
    ] {
        brought_in(&journey, &script).await?;
        journey.wait_for("[data-fault=books]").await.map_err(|error| format!("{what}: {error}"))?;
        let said = journey.text("[data-fault=books]").await?;
        if !said.contains(told) {
            return Err(format!("{what}: the page says `{said}`"));
        }
        if journey.ask(STORED, Vec::new()).await? != before {
            return Err(format!("{what} changed the store"));
        }
        // The next fault is told anew.
        journey.open("#/").await?;
        journey.open("#/books").await?;
    }
    journey.open("#/vehicle").await?;
    if journey.entry("vehicle/wheelbase").await? != "3185" {
        return Err("the open book was changed".into());
    }
    journey.console_is_quiet().await
}

async fn a_file_with_odd_texts_is_a_book_like_any_other(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("#/books").await?;
    // Names of a language's own objects, letters that turn others round, marks that end a line, markup, and a key given twice.
    let script = "'{\"what\":\"rebuild reckoner build book\",\"format\":1,\"id\":\"odd\",\"entries\":{' + \
        '\"book/name\":\"\\\\u202e\\\\u0000<b>Van</b>\\\\n\\\\u2028\",\"vehicle/wheelbase\":\"1\",\"vehicle/wheelbase\":\"3185\",' + \
        '\"costs/lines/constructor/what\":\"\\\\u202eyrrol\",\"costs/lines/constructor/price\":\"12\",\"__proto__/polluted\":\"yes\"}}'";
    brought_in(&journey, script).await?;
    journey.wait_for("[data-page=questions]").await?;
    let sound = "return ({}).polluted === undefined && !document.querySelector('main b');";
    if journey.ask(sound, Vec::new()).await? != json!(true) {
        return Err("a text of the book was taken for more than a text".into());
    }
    journey.open("#/costs").await?;
    journey.expect("costs/lines/constructor", "£12.00").await?;
    journey.open("#/vehicle").await?;
    if journey.entry("vehicle/wheelbase").await? != "3185" {
        return Err("of a key given twice the last should stand".into());
    }
    for route in ["#/books", "#/send/book", "#/pack"] {
        journey.open(route).await?;
        let stuck = journey.sticks_out_or_meets().await?;
        if !stuck.is_empty() {
            return Err(format!("{route}: {}", stuck.join("; ")));
        }
    }
    journey.console_is_quiet().await
}
