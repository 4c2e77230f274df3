//! What a key of the keypad does to the text in a field. Pure: text and selection in, text and caret out.

use std::ops::Range;

/// A text with the caret's place, in characters.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Typed {
    /// The text.
    pub text: String,
    /// Characters before the caret.
    pub caret: usize,
}

fn split(text: &str, selection: &Range<usize>) -> (String, String) {
    let end = selection.end.max(selection.start);
    (
        text.chars().take(selection.start).collect(),
        text.chars().skip(end).collect(),
    )
}

/// The selection replaced by `pressed`.
pub fn inserted(text: &str, selection: &Range<usize>, pressed: &str) -> Typed {
    let (before, after) = split(text, selection);
    let caret = before.chars().count() + pressed.chars().count();
    Typed {
        text: before + pressed + &after,
        caret,
    }
}

/// The selection taken out, or the character before the caret when nothing is selected.
pub fn erased(text: &str, selection: &Range<usize>) -> Typed {
    let from = if selection.start == selection.end {
        selection.start.saturating_sub(1)
    } else {
        selection.start
    };
    inserted(text, &(from..selection.end), "")
}

/// Whether the character before the caret is the stroke of a fraction, so that the digits offer denominators.
pub fn after_stroke(text: &str, caret: usize) -> bool {
    caret > 0 && text.chars().nth(caret - 1) == Some('/')
}

/// The entry's own part and its tolerance: `412.5 mm` and `± 0.5 mm`.
fn parted(text: &str) -> (&str, &str) {
    let marks = ["±", "+/-", "+-", " exact"];
    let at = marks.iter().filter_map(|m| text.find(m)).min();
    at.map_or((text, ""), |at| text.split_at(at))
}

/// A unit put after what was typed, before a tolerance: `412` becomes `412 mm`.
pub fn with_unit_added(text: &str, unit: &str) -> Typed {
    let (value, tolerance) = parted(text);
    let value = value.trim_end();
    let mut whole = if value.is_empty() {
        String::new()
    } else {
        format!("{value} {unit}")
    };
    let caret = whole.chars().count();
    if !tolerance.is_empty() {
        whole = format!("{whole} {}", tolerance.trim_start());
    }
    Typed { text: whole, caret }
}

/// The unit of a finished entry replaced: `16.25 mm` meant inches becomes `16.25 in`.
pub fn with_unit_meant(text: &str, unit: &str) -> Typed {
    let (value, tolerance) = parted(text);
    let number = |part: &str| {
        let end = part
            .char_indices()
            .rev()
            .find(|(_, c)| c.is_ascii_digit() || "¼½¾⅛⅜⅝⅞".contains(*c))
            .map_or(0, |(at, c)| at + c.len_utf8());
        part[..end].trim().to_owned()
    };
    let mut whole = format!("{} {unit}", number(value));
    if !tolerance.is_empty() {
        let bare = number(tolerance);
        whole = if bare.is_empty() {
            format!("{whole} {}", tolerance.trim())
        } else {
            format!("{whole} {bare} {unit}")
        };
    }
    let caret = whole.chars().count();
    Typed { text: whole, caret }
}

/// A unit put between the value and its tolerance: `12 ± 5 thou` was twelve millimetres.
pub fn with_unit_of_value(text: &str, unit: &str) -> Typed {
    let (value, tolerance) = parted(text);
    let whole = format!("{} {unit} {}", value.trim_end(), tolerance.trim_start());
    let whole = whole.trim_end().to_owned();
    let caret = whole.chars().count();
    Typed { text: whole, caret }
}

/// The tolerance replaced by another: `± 1 mm`, `exact`, or a bare `±` to type after.
pub fn with_tolerance(text: &str, tolerance: &str) -> Typed {
    let (value, _) = parted(text);
    let whole = format!("{} {tolerance}", value.trim_end());
    let caret = whole.chars().count();
    Typed { text: whole, caret }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_unit_goes_between_value_and_tolerance() {
        assert_eq!(
            with_unit_of_value("12 ± 5 thou", "mm").text,
            "12 mm ± 5 thou"
        );
        assert_eq!(with_unit_of_value("12", "mm").text, "12 mm");
    }

    #[test]
    fn a_digit_goes_in_at_the_caret() {
        assert_eq!(
            inserted("15", &(1..1), "2"),
            Typed {
                text: "125".into(),
                caret: 2
            }
        );
    }

    #[test]
    fn a_digit_takes_the_place_of_a_selection() {
        assert_eq!(
            inserted("15 ± 1", &(0..2), "7"),
            Typed {
                text: "7 ± 1".into(),
                caret: 1
            }
        );
    }

    #[test]
    fn erasing_takes_one_character_or_the_selection() {
        assert_eq!(
            erased("1½", &(2..2)),
            Typed {
                text: "1".into(),
                caret: 1
            }
        );
        assert_eq!(
            erased("125", &(0..3)),
            Typed {
                text: String::new(),
                caret: 0
            }
        );
        assert_eq!(
            erased("", &(0..0)),
            Typed {
                text: String::new(),
                caret: 0
            }
        );
    }

    #[test]
    fn denominators_are_offered_right_after_the_stroke_only() {
        assert!(after_stroke("5/", 2));
        assert!(!after_stroke("5/1", 3));
        assert!(!after_stroke("5/", 0));
    }

    #[test]
    fn a_unit_goes_before_a_tolerance() {
        assert_eq!(with_unit_added("412 ± 0.5", "mm").text, "412 mm ± 0.5");
        assert_eq!(
            with_unit_added("412", "mm"),
            Typed {
                text: "412 mm".into(),
                caret: 6
            }
        );
        assert_eq!(with_unit_added("", "mm").text, "");
    }

    #[test]
    fn a_meant_unit_takes_the_place_of_the_typed_one_in_value_and_tolerance() {
        assert_eq!(with_unit_meant("16.25 mm", "in").text, "16.25 in");
        assert_eq!(with_unit_meant("16 1/4", "in").text, "16 1/4 in");
        assert_eq!(
            with_unit_meant("412 mm ± 0.5 mm", "in").text,
            "412 in ± 0.5 in"
        );
        assert_eq!(with_unit_meant("4 mm exact", "in").text, "4 in exact");
    }

    #[test]
    fn a_tolerance_takes_the_place_of_the_last_one() {
        assert_eq!(with_tolerance("412.5", "± 1 mm").text, "412.5 ± 1 mm");
        assert_eq!(with_tolerance("412.5 ± 1 mm", "exact").text, "412.5 exact");
        assert_eq!(with_tolerance("412.5 exact", "± ").text, "412.5 ± ");
    }
}
