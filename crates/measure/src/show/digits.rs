//! Digits: where a number is rounded, and how it is written in the book's manner.

use crate::mark::Mark;

/// Figures of an exact value or of a number in a working that are written at most.
pub(super) const MOST_FIGURES: i32 = 7;

/// From here on up, and below its counterpart, powers of ten are written: `1.2e12`.
const GREAT: f64 = 1e12;
const SMALL: f64 = 1e-6;

/// A typographic minus.
const MINUS: char = '\u{2212}';
/// A thin space that does not break, between thousands.
const THIN: char = '\u{202F}';

/// The power of ten of the first figure, and that figure; nought has none.
///
/// What is nearer than the twelfth figure counts as reached, so that the last bits of a conversion (0.000 999 999 999 999 9) do
/// not matter.
pub(super) fn first_figure(value: f64) -> Option<(i32, u32)> {
    if value == 0.0 || !value.is_finite() {
        return None;
    }
    #[allow(
        clippy::cast_possible_truncation,
        reason = "a power of ten of a number is between -324 and 308"
    )]
    let mut power = value.abs().log10().floor() as i32;
    // In two steps, for the power of the smallest numbers is itself too small to divide by.
    let scaled = |power: i32| {
        value.abs() / 10f64.powi(power / 2) / 10f64.powi(power - power / 2) * (1.0 + 5e-12)
    };
    if scaled(power) >= 10.0 {
        power += 1;
    } else if scaled(power) < 1.0 {
        power -= 1;
    }
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "between 1 and 10"
    )]
    let first = scaled(power) as u32;
    Some((power, first.clamp(1, 9)))
}

/// The power of ten a ± is rounded to: one figure, two where the first is a 1.
pub(super) fn place_of_error(error: f64) -> Option<i32> {
    first_figure(error).map(|(exponent, first)| if first == 1 { exponent - 1 } else { exponent })
}

/// The power of ten for a value of so many figures at most; all figures before the mark stay.
pub(super) fn place_of_figures(value: f64, figures: i32) -> i32 {
    first_figure(value).map_or(0, |(exponent, _)| (exponent + 1 - figures).min(0))
}

/// The coarsest power of ten at which rounding changes a value by a thousandth of it at most; all figures before the mark stay.
pub(super) fn place_of_a_thousandth(value: f64) -> i32 {
    // Half a step is a thousandth where the value begins with five or more: three figures, else four.
    first_figure(value).map_or(0, |(exponent, first)| {
        let figures = if first >= 5 { 3 } else { 4 };
        (exponent + 1 - figures).min(0)
    })
}

/// Whether a value is written with a power of ten.
pub(super) fn is_beyond(value: f64) -> bool {
    value != 0.0 && !(SMALL..GREAT).contains(&value.abs())
}

/// The value rounded at a power of ten, in plain characters: `-1250.5`.
pub(super) fn rounded(value: f64, place: i32) -> String {
    let text = match usize::try_from(-place) {
        Ok(decimals) => format!("{value:.decimals$}"),
        Err(_) => {
            let step = 10f64.powi(place);
            format!("{:.0}", (value / step).round() * step)
        }
    };
    let nought = !text.contains(|c: char| c.is_ascii_digit() && c != '0');
    if nought {
        text.trim_start_matches('-').to_owned()
    } else {
        text
    }
}

/// The same without noughts at the end of the decimals.
pub(super) fn trimmed(text: &str) -> &str {
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.')
    } else {
        text
    }
}

/// A plain number in the book's manner: its mark, thousands from five figures on, a true minus.
pub(super) fn localised(plain: &str, mark: Mark) -> String {
    let (sign, figures) = plain
        .strip_prefix('-')
        .map_or(("", plain), |rest| ("-", rest));
    let (figures, power) = figures
        .split_once('e')
        .map_or((figures, None), |(f, e)| (f, Some(e)));
    let (whole, decimals) = figures
        .split_once('.')
        .map_or((figures, None), |(w, d)| (w, Some(d)));
    let mut written = String::with_capacity(plain.len() + 8);
    if !sign.is_empty() {
        written.push(MINUS);
    }
    for (place, figure) in whole.chars().enumerate() {
        let behind = whole.len() - place;
        if place > 0 && whole.len() > 4 && behind.is_multiple_of(3) {
            written.push(THIN);
        }
        written.push(figure);
    }
    if let Some(decimals) = decimals {
        written.push(mark.sign());
        written.push_str(decimals);
    }
    if let Some(power) = power {
        written.push('e');
        written.push_str(&power.replace('-', "\u{2212}"));
    }
    written
}
