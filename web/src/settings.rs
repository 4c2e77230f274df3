//! How this browser shows every book: units, decimal mark, language, look, thumb side, keypad.

use crate::words::Tongue;
use buildbook::{Book, UNITS};
use measure::{Manner, Mark, System};

/// Which colours the pages wear.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Look {
    /// Light or dark, as the tablet asks for.
    #[default]
    Auto,
    /// Chalk and linen.
    Light,
    /// Slate.
    Dark,
    /// Black on white.
    Sun,
}

/// The edge the keys stand at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Thumb {
    /// For a right hand.
    #[default]
    Right,
    /// For a left hand.
    Left,
}

/// When our own keypad comes up.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum KeypadUse {
    /// Where fingers are the pointer.
    #[default]
    OnTouch,
    /// Wherever a figure is entered.
    Always,
    /// Never: the system's keyboard does it.
    Never,
}

/// The settings of this browser.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Settings {
    /// The family of units that the open book is shown in.
    pub units: System,
    /// The reader's usual units: those of new books, and of books that name none.
    pub usual: System,
    /// The decimal mark.
    pub mark: Mark,
    /// Inches as fractions.
    pub fractions: bool,
    /// Which English.
    pub tongue: Tongue,
    /// Which colours.
    pub look: Look,
    /// Which edge.
    pub thumb: Thumb,
    /// When the keypad comes up.
    pub keypad: KeypadUse,
}

/// One value of a setting with the name it is kept under.
type Kept<T> = (&'static str, T);

const MARKS: [Kept<Mark>; 2] = [("point", Mark::Point), ("comma", Mark::Comma)];
const TONGUES: [Kept<Tongue>; 2] = [("en-GB", Tongue::British), ("en-US", Tongue::American)];
const LOOKS: [Kept<Look>; 4] = [
    ("auto", Look::Auto),
    ("light", Look::Light),
    ("dark", Look::Dark),
    ("sun", Look::Sun),
];
const THUMBS: [Kept<Thumb>; 2] = [("right", Thumb::Right), ("left", Thumb::Left)];
const KEYPADS: [Kept<KeypadUse>; 3] = [
    ("touch", KeypadUse::OnTouch),
    ("always", KeypadUse::Always),
    ("never", KeypadUse::Never),
];
const FRACTIONS: [Kept<bool>; 2] = [("no", false), ("yes", true)];

fn name<T: PartialEq>(kept: &[Kept<T>], value: &T) -> &'static str {
    kept.iter()
        .find(|(_, v)| v == value)
        .map_or("", |(name, _)| name)
}

fn put<T: Copy>(kept: &[Kept<T>], name: &str, into: &mut T) {
    if let Some((_, value)) = kept.iter().find(|(known, _)| *known == name) {
        *into = *value;
    }
}

impl Settings {
    /// How figures are written.
    pub fn manner(&self) -> Manner {
        Manner {
            units: self.units,
            mark: self.mark,
            fractions: self.fractions,
            ..Manner::default()
        }
    }

    /// Shows a book in its own units, or in the reader's usual ones where it names none.
    pub fn open(&mut self, book: &Book) {
        self.units = book.units().unwrap_or(self.usual);
    }

    /// The settings as text, a line each.
    pub fn written(&self) -> String {
        format!(
            "units={}\nmark={}\nfractions={}\ntongue={}\nlook={}\nthumb={}\nkeypad={}\n",
            name(&UNITS, &self.usual),
            name(&MARKS, &self.mark),
            name(&FRACTIONS, &self.fractions),
            name(&TONGUES, &self.tongue),
            name(&LOOKS, &self.look),
            name(&THUMBS, &self.thumb),
            name(&KEYPADS, &self.keypad),
        )
    }

    /// The settings from text; what is missing or unknown keeps its usual value.
    pub fn read(text: &str) -> Self {
        let mut settings = Self::default();
        for (setting, value) in text.lines().filter_map(|line| line.split_once('=')) {
            settings.put(setting, value.trim());
        }
        settings
    }

    /// One setting by its kept name and value; an unknown one changes nothing. Units that are chosen are shown until a book says its own.
    pub fn put(&mut self, setting: &str, value: &str) {
        match setting {
            "units" => {
                put(&UNITS, value, &mut self.usual);
                self.units = self.usual;
            }
            "mark" => put(&MARKS, value, &mut self.mark),
            "fractions" => put(&FRACTIONS, value, &mut self.fractions),
            "tongue" => put(&TONGUES, value, &mut self.tongue),
            "look" => put(&LOOKS, value, &mut self.look),
            "thumb" => put(&THUMBS, value, &mut self.thumb),
            "keypad" => put(&KEYPADS, value, &mut self.keypad),
            _ => {}
        }
    }

    /// The kept value of one setting, or the name of the units that the open book is shown in.
    pub fn value(&self, setting: &str) -> &'static str {
        match setting {
            "book-units" => name(&UNITS, &self.units),
            "units" => name(&UNITS, &self.usual),
            "mark" => name(&MARKS, &self.mark),
            "fractions" => name(&FRACTIONS, &self.fractions),
            "tongue" => name(&TONGUES, &self.tongue),
            "look" => name(&LOOKS, &self.look),
            "thumb" => name(&THUMBS, &self.thumb),
            "keypad" => name(&KEYPADS, &self.keypad),
            _ => "",
        }
    }

    /// The settings of someone who has never been here, by the language their browser asks for, and by the way it writes one and a
    /// half: of a language that is none (`C`, or nothing at all) it makes a point.
    pub fn for_language(language: &str, one_and_a_half: &str) -> Self {
        let american = language.eq_ignore_ascii_case("en-us");
        let comma = one_and_a_half.contains(',');
        let units = if american {
            System::UnitedStates
        } else {
            System::Metric
        };
        Self {
            tongue: if american {
                Tongue::American
            } else {
                Tongue::British
            },
            units,
            usual: units,
            mark: if comma { Mark::Comma } else { Mark::Point },
            ..Self::default()
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn settings_that_were_kept_are_read_again() {
        let mut settings = Settings::for_language("en-US", "1.5");
        settings.put("look", "sun");
        settings.put("thumb", "left");
        settings.put("keypad", "never");
        settings.put("fractions", "yes");
        settings.put("mark", "comma");
        assert_eq!(Settings::read(&settings.written()), settings);
    }

    #[test]
    fn unknown_settings_and_values_change_nothing() {
        assert_eq!(
            Settings::read("units=parsec\nnonsense\ncolour=red\n"),
            Settings::default()
        );
    }

    #[test]
    fn a_language_that_writes_a_comma_gets_one_and_no_language_a_point() {
        // As CLDR has the decimal marks of these languages.
        for (language, written, mark) in [
            ("de-AT", "1,5", Mark::Comma),
            ("en-GB", "1.5", Mark::Point),
            ("ja", "1.5", Mark::Point),
            ("C", "1.5", Mark::Point),
            ("", "1.5", Mark::Point),
        ] {
            let settings = Settings::for_language(language, written);
            assert_eq!(settings.mark, mark, "{language}");
        }
    }

    #[test]
    fn the_usual_units_are_kept_whatever_book_is_shown() {
        let mut settings = Settings::default();
        settings.put("units", "imperial");
        let kept = settings.written();
        settings.open(&Book::new("b").carrying("us"));
        assert_eq!(settings.manner().units, System::UnitedStates);
        assert_eq!(settings.written(), kept);
        settings.open(&Book::new("b"));
        assert_eq!(settings.manner().units, System::Imperial);
    }
}
