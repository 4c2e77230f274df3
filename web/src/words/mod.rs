//! Every sentence the reckoner shows, in British and American English, a file a subject.
//!
//! Labels are found by field pattern (`gearing/gears/*/ratio`), results by result pattern, remarks and refusals by
//! their names. Nothing outside this folder holds a sentence. A subject's file holds one [`Subject`]:
//!
//! ```ignore
//! pub static WORDS: Subject = Subject {
//!     name: same("Gearing"),
//!     asks: same("Which axle ratio?"),
//!     tells: same("Road speed in each gear, the ratio to fit, and what the speedometer will read."),
//!     fields: &[("gearing/crown_teeth", pair("Crown wheel teeth", "Ring gear teeth")),
//!               ("gearing/gears/*/ratio", same("Ratio"))],
//!     hints: &[("gearing/roll_out", same("Straight line, laden, several turns, divided by the turns."))],
//!     choices: &[("radial", same("Radial")), ("gearing/drive=rear", same("Rear axle"))],
//!     groups: &[("gearing/tyre", pair("Tyre", "Tire"))],
//!     lists: &[("gearing/gears", list(same("Gears"), same("gear"), same("Gear {0}")))],
//!     results: &[told("gearing/top_speed", same("Top speed")),
//!                told_of("gearing/speed_per_1000/*", &["gearing/gears"], same("Speed at 1000 rpm in {0}"))],
//!     remarks: &[("tyre_over_speed", pair("The tyre is made for {0} at most.", "The tire is made for {0} at most."))],
//!     plates: &[("gearing/speeds", same("Enter the tyre, one gear and the final drive."))],
//!     words: &[],
//! };
//! ```
//! and is named in [`SUBJECTS`]. A test here fails when a field, a list, a choice or a result has no words.

pub mod books;
pub mod conversion;
pub mod costs;
pub mod entry;
pub mod final_drive;
pub mod frame;
pub mod gearing;
pub mod handover;
pub mod lack;
pub mod marking;
pub mod paint;
mod phrase;
pub mod springs;
mod subject;
pub mod templates;
pub mod torque;
pub mod vehicle;

#[cfg(test)]
mod tests;

pub use phrase::{Phrase, Tongue, filled, found, matches, pair, same};
pub use subject::{ListWords, Subject, Told, list, told, told_of};

use buildbook::sheets::torque::FIRST_WRENCH;
use buildbook::{Book, Findings, Form, Key, field_of};

/// The words of every sheet.
pub static SUBJECTS: [(&str, &Subject); 10] = [
    ("vehicle", &vehicle::WORDS),
    ("marking", &marking::WORDS),
    ("conversion", &conversion::WORDS),
    ("gearing", &gearing::WORDS),
    ("springs", &springs::WORDS),
    ("final_drive", &final_drive::WORDS),
    ("torque", &torque::WORDS),
    ("paint", &paint::WORDS),
    ("costs", &costs::WORDS),
    ("handover", &handover::WORDS),
];

/// The words of the sheet that a key or a sheet's name begins with.
pub fn subject(key: &str) -> Option<&'static Subject> {
    let sheet = key.split('/').next().unwrap_or_default();
    SUBJECTS
        .iter()
        .find(|(name, _)| *name == sheet)
        .map(|(_, words)| *words)
}

/// The name of a page.
pub fn page_name(page: &str, tongue: Tongue) -> String {
    let phrase = match page {
        "questions" => frame::WHAT_TO_KNOW,
        "books" => frame::BOOKS,
        "settings" => frame::SETTINGS,
        "link" => frame::RECEIVED,
        "send" => frame::SEND,
        "tick-off" => torque::TICK_OFF,
        "pack" => handover::PACK,
        sheet => match subject(sheet) {
            Some(words) => words.name,
            None => return bare(sheet),
        },
    };
    tongue.say(phrase).to_owned()
}

/// A name of the code as a person might read it: the last resort where words are missing, which a test forbids.
fn bare(name: &str) -> String {
    name.rsplit('/')
        .next()
        .unwrap_or_default()
        .replace('_', " ")
}

/// The label of a field, without the row it stands in.
pub fn label(key: &str, tongue: Tongue) -> String {
    let phrase = subject(key).and_then(|words| found(words.fields, &Key::from(key).pattern()));
    phrase.map_or_else(|| bare(key), |phrase| tongue.say(phrase).to_owned())
}

/// A piece of advice for a field, where there is one.
pub fn hint(key: &str, tongue: Tongue) -> Option<&'static str> {
    let words = subject(key)?;
    found(words.hints, &Key::from(key).pattern()).map(|phrase| tongue.say(phrase))
}

/// The words of a choice of a field by its pattern; a choice that is a sheet is called as that is. The book itself chooses its units.
fn choice_words(pattern: &str, chosen: &str) -> Option<Phrase> {
    let choices = subject(pattern).map_or(frame::FAMILIES, |words| words.choices);
    found(choices, &format!("{pattern}={chosen}"))
        .or_else(|| found(choices, chosen))
        .or_else(|| subject(chosen).map(|sheet| sheet.name))
}

/// A choice of a field.
pub fn choice(key: &str, chosen: &str, tongue: Tongue) -> String {
    choice_words(&Key::from(key).pattern(), chosen)
        .map_or_else(|| bare(chosen), |phrase| tongue.say(phrase).to_owned())
}

/// A heading within a sheet.
pub fn group(id: &str, tongue: Tongue) -> String {
    let phrase = subject(id).and_then(|words| found(words.groups, id));
    phrase.map_or_else(|| bare(id), |phrase| tongue.say(phrase).to_owned())
}

/// The pattern of a list: every second part that is not the last is a row's id.
fn list_pattern(list: &str) -> String {
    Key::from(list)
        .under("x")
        .pattern()
        .trim_end_matches("/x")
        .to_owned()
}

/// The words of a list.
pub fn list_words(list: &str) -> Option<ListWords> {
    let pattern = list_pattern(list);
    let words = subject(list)?;
    words
        .lists
        .iter()
        .find(|(known, _)| *known == pattern)
        .map(|(_, words)| *words)
}

/// The name of a row: what its owner called it, else its place in the list.
pub fn row_name(book: &Book, list: &Key, id: &str, tongue: Tongue) -> String {
    let row = list.under(id);
    let own = |field: &str| {
        let apart = row_apart(list).filter(|(apart, _)| *apart == id);
        let key = apart.map_or_else(|| row.under(field), |(_, name)| Key::from(name));
        let entry = book.entry(key.as_str());
        entry
            .map(|entry| entry.text.trim().to_owned())
            .filter(|own| !own.is_empty())
    };
    if let Some(own) = own("name").or_else(|| own("what")) {
        return own;
    }
    // A preset row's name stands in the words, by its id.
    let preset = subject(list.as_str()).and_then(|words| words.word(row.as_str()));
    let preset = preset.map(|preset| tongue.say(preset));
    let sides =
        || (list.as_str() == "conversion/changes").then(|| conversion::change_name(id, tongue))?;
    if let Some(preset) = preset.or_else(sides) {
        return preset.to_owned();
    }
    if let Some(place) = place_of(book, &row, tongue) {
        return place;
    }
    let place = book
        .rows(list)
        .iter()
        .position(|row| &**row == id)
        .map_or_else(|| id.to_owned(), |at| (at + 1).to_string());
    match list_words(list.as_str()) {
        Some(words) => filled(tongue.say(words.nth), &[place]),
        None => format!("{} {place}", bare(list.as_str())),
    }
}

/// The id of what can be chosen beside a list's rows, since it stands on the sheet itself, and the key of its name: the first wrench.
pub fn row_apart(list: &Key) -> Option<(&'static str, &'static str)> {
    (list.as_str() == "torque/wrenches").then_some((FIRST_WRENCH, "torque/wrench_name"))
}

/// Where the thing stands that a row is about, for rows that are told apart by that: `Front left`.
fn place_of(book: &Book, row: &Key, tongue: Tongue) -> Option<String> {
    let key = row.under("place");
    let Form::Choice(places) = field_of(&key)?.form else {
        return None;
    };
    let entry = book.entry(key.as_str())?;
    places
        .contains(&entry.text.trim())
        .then(|| choice(key.as_str(), entry.text.trim(), tongue))
}

/// The rows a key stands in, the outermost first, by their names.
pub fn row_names(book: &Book, key: &Key, tongue: Tongue) -> Vec<String> {
    let mut names = Vec::new();
    let mut above = key.row();
    while let Some(row) = above {
        if let Some(list) = row.parent() {
            names.push(row_name(book, &list, row.field(), tongue));
            above = list.row();
        } else {
            above = None;
        }
    }
    names.reverse();
    names
}

/// The label of an entry with the rows it stands in: `Gear 2: ratio`.
pub fn entry_name(book: &Book, key: &Key, tongue: Tongue) -> String {
    let mut parts = row_names(book, key, tongue);
    parts.push(label(key.as_str(), tongue));
    parts.join(": ")
}

/// What governs a result: a limit that is entered by its label, a leaf by its number, anything else by its own name.
pub fn governed(figure: &measure::Figure, id: &str, tongue: Tongue) -> Option<String> {
    let name = figure.governing()?;
    let sheet = id.split('/').next().unwrap_or_default();
    let key = Key::from([sheet, "/", name].concat());
    let said = if field_of(&key).is_some() {
        label(key.as_str(), tongue)
    } else if name.bytes().all(|byte| byte.is_ascii_digit()) {
        filled(tongue.say(frame::LEAF), &[name.to_owned()])
    } else {
        name.to_owned()
    };
    Some(filled(tongue.say(frame::GOVERNED_BY), &[said]))
}

/// What a result tells, and what governs it where one of several limits does.
pub fn told_whole(book: &Book, findings: &Findings, id: &str, tongue: Tongue) -> String {
    let mut told = result(book, id, tongue);
    let figure = findings.result(id).and_then(|found| found.as_ref().ok());
    if let Some(governed) = figure.and_then(|figure| governed(figure, id, tongue)) {
        told.push_str(". ");
        told.push_str(&governed);
    }
    told
}

/// The parts of a result's id that the stars of its pattern stand for.
fn stars<'a>(told: &Told, id: &'a str) -> Vec<&'a str> {
    let parts = told.pattern.split('/').zip(id.split('/'));
    let stars = parts.filter(|(pattern, _)| *pattern == "*");
    stars.map(|(_, part)| part).collect()
}

/// The rows that a result belongs to, the outermost first, and the stars that stand for no row: the number of a stage.
pub fn result_rows<'a>(told: &Told, id: &'a str) -> (Vec<Key>, Vec<&'a str>) {
    let mut stars = stars(told, id);
    let others = stars.split_off(told.rows.len().min(stars.len()));
    let rows = told.rows.iter().zip(&stars).map(|(list, id)| {
        // A list within rows carries a star for each row above it.
        let mut above = stars.iter();
        let path: Vec<&str> = list
            .split('/')
            .map(|part| match part {
                "*" => above.next().copied().unwrap_or("*"),
                part => part,
            })
            .collect();
        Key::from(path.join("/").as_str()).under(id)
    });
    (rows.collect(), others)
}

/// What a result tells, with the names of the rows it belongs to.
pub fn result(book: &Book, id: &str, tongue: Tongue) -> String {
    let told = subject(id).and_then(|words| words.result(id));
    let Some(told) = told else { return bare(id) };
    let (rows, others) = result_rows(told, id);
    let names = rows.iter().map(|row| {
        let list = row.parent().unwrap_or_else(|| row.clone());
        row_name(book, &list, row.field(), tongue)
    });
    // A star that stands for no row is put in as it is.
    let names: Vec<String> = names.chain(others.into_iter().map(bare)).collect();
    filled(tongue.say(told.phrase), &names)
}

/// What a remark says; the numbers and names it speaks of stand at `{0}`, `{1}`, ..., numbers first.
pub fn remark(sheet: &str, fact: &str, said: &[String], tongue: Tongue) -> String {
    let phrase = subject(sheet).and_then(|words| found(words.remarks, fact));
    phrase.map_or_else(|| bare(fact), |phrase| filled(tongue.say(phrase), said))
}
