//! Showing figures: in the book's units and manner of writing, with no more digits than the ± supports.

mod digits;
mod fraction;
#[cfg(test)]
mod tests;
mod working;

pub use working::{ShownLine, show_term, show_working};

use std::borrow::Cow;
use std::fmt;

use crate::figure::Figure;
use crate::manner::Manner;
use crate::mark::Mark;
use crate::reading::Reading;
use crate::unit::{self, Unit};

/// A figure as it is written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Shown {
    /// The value, rounded to what the ± supports.
    pub value: String,
    /// `± 0.5` or `+0.1 −0.3`; empty for an exact figure.
    pub plus_minus: String,
    /// The unit's symbol; empty for plain numbers.
    pub unit: Cow<'static, str>,
    /// The figure has no error.
    pub exact: bool,
}

/// The gap before a unit: a space that does not break, none before the marks of an angle.
fn gap(unit: &str) -> &'static str {
    if matches!(unit, "" | "°" | "′" | "″") {
        ""
    } else {
        "\u{a0}"
    }
}

impl Shown {
    /// Value and unit, without the ±.
    #[must_use]
    pub fn without_error(&self) -> String {
        format!("{}{}{}", self.value, gap(&self.unit), self.unit)
    }
}

/// Value, ± and unit, as the reader of entries understands them.
impl fmt::Display for Shown {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let between = if self.plus_minus.is_empty() {
            ""
        } else {
            "\u{a0}"
        };
        write!(
            f,
            "{}{between}{}{}{}",
            self.value,
            self.plus_minus,
            gap(&self.unit),
            self.unit
        )
    }
}

/// A figure in the book's manner.
///
/// The ± is rounded to one figure, two where it begins with 1, and the value to the same place. An exact figure is written out where
/// it ends; one that never ends is cut to five figures, and one of a kind that no workshop reads so finely
/// ([`Kind::read_to_a_thousandth`](crate::Kind::read_to_a_thousandth)) to where the cut is at most a thousandth of it: 78.6 for 78.637...
/// The working keeps the exact one. A figure that is itself an error has no ± of its own, and the figures of one.
///
/// # Example
/// ```
/// use measure::{read, show, Ask, Kind, Length, Manner, System};
/// let manner = Manner::of(System::Metric);
/// let reading = read("412.52 ± 0.48 mm", &Ask::of(Kind::Length, &manner)).unwrap();
/// let figure = Length::entry("marking_out/wheelbase", "L", Kind::Length, &reading).figure(Kind::Length);
/// assert_eq!(show(&figure, &manner).to_string(), "412.5\u{a0}±\u{a0}0.5\u{a0}mm");
/// assert_eq!(show(&figure, &Manner::of(System::Imperial)).value, "16.241");
/// ```
#[must_use]
pub fn show(figure: &Figure, manner: &Manner) -> Shown {
    show_in(figure, manner.unit(figure.kind()), manner)
}

/// A figure in a unit of choice.
#[must_use]
pub fn show_in(figure: &Figure, unit: &'static Unit, manner: &Manner) -> Shown {
    if figure.kind().is_error() {
        let size = figure.value();
        return shown_no_finer(size, (size, size), unit, manner);
    }
    if !figure.is_exact() {
        return shown(figure.value(), figure.plus(), figure.minus(), unit, manner);
    }
    // A result that never ends (41/9) is cut to five figures; one that ends keeps what it has. What no instrument of
    // a workshop reads so finely (58 lbf·ft are 78.637... N·m) keeps five figures where it has no more, else a thousandth of it.
    let value = unit.from_si(figure.value());
    let coarse = figure.kind().read_to_a_thousandth();
    let most = if coarse { 5 } else { digits::MOST_FIGURES };
    let whole = digits::rounded(value, digits::place_of_figures(value, most));
    let ends = whole
        .parse()
        .is_ok_and(|whole: f64| (whole - value).abs() <= 1e-11 * value.abs());
    let place = if coarse {
        digits::place_of_a_thousandth(value)
    } else {
        digits::place_of_figures(value, 5)
    };
    let kept = if ends {
        None
    } else {
        digits::rounded(value, place).parse().ok()
    };
    show_exact(
        kept.map_or(figure.value(), |cut| unit.to_si(cut)),
        unit,
        manner,
    )
}

/// An entry's reading in a unit of choice: `412.5 mm` shown in inches. The typed text stays what it is.
#[must_use]
pub fn show_reading(reading: &Reading, unit: &'static Unit, manner: &Manner) -> Shown {
    shown(reading.value, reading.plus, reading.minus, unit, manner)
}

/// A limit, a step or another exact SI value in the book's manner, as long as it is: at most seven figures.
#[must_use]
pub fn show_exact(si: f64, unit: &'static Unit, manner: &Manner) -> Shown {
    shown(si, 0.0, 0.0, unit, manner)
}

/// An SI value with its ± in a unit, in the book's manner.
#[must_use]
pub fn shown(si: f64, plus: f64, minus: f64, unit: &'static Unit, manner: &Manner) -> Shown {
    let value = unit.from_si(si);
    let (plus, minus) = (unit.step_from_si(plus), unit.step_from_si(minus));
    let written = |value, plus_minus, exact| Shown {
        value,
        plus_minus,
        unit: Cow::Borrowed(unit.symbol),
        exact,
    };
    if !(value.is_finite() && plus.is_finite() && minus.is_finite()) {
        return written("—".to_owned(), String::new(), false);
    }
    let exact = plus == 0.0 && minus == 0.0;
    let in_fractions = manner.fractions && unit == &unit::INCH;
    let fraction = if in_fractions {
        fraction::binary_fraction(value, plus.min(minus))
    } else {
        None
    };
    let place = place(value, plus, minus);
    let value = match fraction {
        Some(fraction) => fraction,
        None if exact => number(value, place, true, manner.mark),
        None => number(value, place, false, manner.mark),
    };
    let plus_minus = if exact {
        String::new()
    } else {
        error(plus, minus, manner.mark)
    };
    written(value, plus_minus, exact)
}

/// An SI value in a unit without its ±, and no finer than that supports: what is smaller is nothing. For what remains of readings.
#[must_use]
pub fn shown_no_finer(
    si: f64,
    (plus, minus): (f64, f64),
    unit: &'static Unit,
    manner: &Manner,
) -> Shown {
    let value = unit.from_si(si);
    let (plus, minus) = (unit.step_from_si(plus), unit.step_from_si(minus));
    let place = place_of_errors(plus, minus).unwrap_or_else(|| place(value, plus, minus));
    Shown {
        value: number(value, place, false, manner.mark),
        plus_minus: String::new(),
        unit: Cow::Borrowed(unit.symbol),
        exact: false,
    }
}

/// The power of ten that a value with this ± is rounded to.
fn place(value: f64, plus: f64, minus: f64) -> i32 {
    match place_of_errors(plus, minus) {
        // A value that is smaller than its ± still shows its first figure.
        Some(place) => digits::first_figure(value).map_or(place, |(first, _)| place.min(first)),
        None => digits::place_of_figures(value, digits::MOST_FIGURES),
    }
}

/// The place of the finer of two errors, but no more than one figure finer than the coarser one has.
fn place_of_errors(plus: f64, minus: f64) -> Option<i32> {
    match (digits::place_of_error(plus), digits::place_of_error(minus)) {
        (Some(above), Some(below)) => Some(above.min(below).max(above.max(below) - 1)),
        (above, below) => above.or(below),
    }
}

/// The ± alone: `± 0.5`, or `+0.1 −0.3` where the sides differ as shown.
fn error(plus: f64, minus: f64, mark: Mark) -> String {
    let place = place_of_errors(plus, minus).unwrap_or(0);
    let (above, below) = (
        number(plus, place, false, mark),
        number(minus, place, false, mark),
    );
    if above == below {
        // Of two sides that look the same the wider one sets the figures.
        let widest = plus.max(minus);
        let place = digits::place_of_error(widest).unwrap_or(place);
        return format!("±\u{a0}{}", number(widest, place, false, mark));
    }
    format!("+{above}\u{a0}\u{2212}{below}")
}

/// A number rounded at a power of ten, in the book's manner; powers of ten are written for what is beyond measure.
fn number(value: f64, place: i32, trim: bool, mark: Mark) -> String {
    if digits::is_beyond(value) {
        let power = digits::first_figure(value).map_or(0, |(power, _)| power);
        let figures = if trim {
            digits::MOST_FIGURES - 1
        } else {
            (power - place).clamp(0, 15)
        };
        let text = digits::rounded(value / 10f64.powi(power), -figures);
        let text = if trim { digits::trimmed(&text) } else { &text };
        return digits::localised(&format!("{text}e{power}"), mark);
    }
    // Beyond the fifteenth figure a number holds nothing.
    let first = digits::first_figure(value).map_or(6, |(first, _)| first);
    let text = digits::rounded(value, place.max(first - 15));
    digits::localised(if trim { digits::trimmed(&text) } else { &text }, mark)
}
