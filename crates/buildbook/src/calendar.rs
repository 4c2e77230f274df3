//! A calendar file: days with something to do, as RFC 5545 (iCalendar) writes them. Bytes out; the time comes in as an argument.

use crate::Date;

/// The longest line, in bytes, without its end (RFC 5545, 3.1).
const LONGEST_LINE: usize = 75;

/// Something to do on a day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Event {
    /// What makes it the same event when the file is written again: a calendar then moves it instead of showing it twice.
    pub uid: String,
    /// The day.
    pub day: Date,
    /// What is to be done, in a few words.
    pub summary: String,
    /// What else there is to say.
    pub description: String,
}

/// A moment of world time (UTC).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Moment {
    /// The day.
    pub day: Date,
    /// The seconds since its midnight.
    pub seconds: u32,
}

/// The events as a calendar file under this name, written at this moment.
///
/// ```
/// use buildbook::{Date, Event, Moment, calendar};
/// let day = Date::new(2026, 6, 1).unwrap();
/// let event = Event {
///     uid: "wheel_nuts.b1@rebuild-reckoner".into(),
///     day,
///     summary: "Wheel nuts again; U-bolts too".into(),
///     description: String::new(),
/// };
/// let file = calendar("Hop lorry", Moment { day, seconds: 3_661 }, &[event]);
/// assert!(file.contains("DTSTAMP:20260601T010101Z\r\n"));
/// assert!(file.contains("DTSTART;VALUE=DATE:20260601\r\nDTEND;VALUE=DATE:20260602\r\n"));
/// assert!(file.contains("SUMMARY:Wheel nuts again\\; U-bolts too\r\n"));
/// ```
#[must_use]
pub fn calendar(name: &str, written: Moment, events: &[Event]) -> String {
    let mut file = String::new();
    for line in [
        "BEGIN:VCALENDAR",
        "VERSION:2.0",
        "PRODID:-//Rebuild Reckoner//Handover//EN",
        "CALSCALE:GREGORIAN",
        "METHOD:PUBLISH",
    ] {
        put(&mut file, line, "");
    }
    put(&mut file, "X-WR-CALNAME:", name);
    let (hours, rest) = (written.seconds / 3600 % 24, written.seconds % 3600);
    let stamp = format!(
        "{}T{hours:02}{:02}{:02}Z",
        basic(written.day),
        rest / 60,
        rest % 60
    );
    for event in events {
        put(&mut file, "BEGIN:VEVENT", "");
        put(&mut file, "UID:", &event.uid);
        put(&mut file, "DTSTAMP:", &stamp);
        put(&mut file, "DTSTART;VALUE=DATE:", &basic(event.day));
        // The end is the day after: it does not belong to the event any more.
        if let Some(after) = event.day.plus_days(1) {
            put(&mut file, "DTEND;VALUE=DATE:", &basic(after));
        }
        put(&mut file, "SUMMARY:", &event.summary);
        if !event.description.is_empty() {
            put(&mut file, "DESCRIPTION:", &event.description);
        }
        // A whole day that is not spoken for: one is free to do something else on it.
        put(&mut file, "TRANSP:TRANSPARENT", "");
        put(&mut file, "END:VEVENT", "");
    }
    put(&mut file, "END:VCALENDAR", "");
    file
}

fn basic(day: Date) -> String {
    format!("{:04}{:02}{:02}", day.year(), day.month(), day.day())
}

/// One property on its line: the text escaped (RFC 5545, 3.3.11), the line folded before its 76th byte, never within a character.
fn put(file: &mut String, property: &str, text: &str) {
    let mut length = property.len();
    file.push_str(property);
    let mut add = |character: char| {
        let bytes = character.len_utf8();
        if length + bytes > LONGEST_LINE {
            file.push_str("\r\n ");
            length = 1;
        }
        file.push(character);
        length += bytes;
    };
    for character in text.chars() {
        match character {
            '\\' | ';' | ',' => {
                add('\\');
                add(character);
            }
            '\n' => {
                add('\\');
                add('n');
            }
            // Other control characters have no place in a text.
            other if other.is_control() => {}
            other => add(other),
        }
    }
    file.push_str("\r\n");
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const FIXTURE: &str = include_str!("../../../tests/fixtures/calendar/look-again.ics");
    const EVENTS: &str = include_str!("../../../tests/fixtures/calendar/look-again.toml");

    fn event(table: &toml::Value) -> Event {
        let text = |name: &str| table[name].as_str().unwrap().to_owned();
        Event {
            uid: text("uid"),
            day: Date::read(&text("day")).unwrap(),
            summary: text("summary"),
            description: text("description"),
        }
    }

    #[test]
    fn the_file_is_the_one_that_a_library_reads_as_these_events() {
        let table: toml::Value = toml::from_str(EVENTS).unwrap();
        let events: Vec<Event> = table["event"]
            .as_array()
            .unwrap()
            .iter()
            .map(event)
            .collect();
        assert_eq!(table["written"].as_str(), Some("2026-06-05T16:07:09+00:00"));
        let written = Moment {
            day: Date::new(2026, 6, 5).unwrap(),
            seconds: (16 * 60 + 7) * 60 + 9,
        };
        let file = calendar(table["name"].as_str().unwrap(), written, &events);
        assert_eq!(file, FIXTURE);
    }

    /// The text of a property as a reader gets it: unfolded, then unescaped.
    fn read_back(file: &str, property: &str) -> String {
        let unfolded = file.replace("\r\n ", "");
        let line = unfolded
            .split("\r\n")
            .find_map(|line| line.strip_prefix(property));
        let mut text = String::new();
        let mut characters = line.unwrap().chars();
        while let Some(character) = characters.next() {
            match (character, character == '\\') {
                (_, true) => match characters.next() {
                    Some('n') => text.push('\n'),
                    Some(other) => text.push(other),
                    None => panic!("a backslash at the end of {line:?}"),
                },
                (other, false) => text.push(other),
            }
        }
        text
    }

    proptest! {
        #[test]
        fn any_text_comes_back_from_lines_of_75_bytes(text in "[^\\p{Cc}]{0,200}(\n[^\\p{Cc}]{0,80})?") {
            let day = Date::new(2026, 1, 1).unwrap();
            let event = Event { uid: "a".into(), day, summary: text.clone(), description: String::new() };
            let file = calendar(&text, Moment { day, seconds: 0 }, &[event]);
            for line in file.split("\r\n") {
                prop_assert!(line.len() <= 75 && !line.contains(['\n', '\r']), "{line:?}");
            }
            prop_assert_eq!(read_back(&file, "SUMMARY:"), text.clone());
            prop_assert_eq!(read_back(&file, "X-WR-CALNAME:"), text);
        }
    }
}
