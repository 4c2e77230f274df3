//! A day of the calendar: when something was paid, a rate of exchange held, or a quote runs out.

use std::fmt;

use thiserror::Error;

/// A day of the Gregorian calendar.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Day {
    year: u16,
    month: u8,
    day: u8,
}

/// Which comes first in a date such as `3/4/2026`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum DayOrder {
    /// The third of April.
    #[default]
    DayFirst,
    /// The fourth of March.
    MonthFirst,
}

/// Why a text is no day.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum DayError {
    /// Not three numbers with marks between.
    #[error("a date is written like 2026-03-25")]
    Form,
    /// A month or day that the calendar lacks.
    #[error("the calendar has no such day")]
    NoSuchDay,
}

impl Day {
    /// A day of the calendar, from 1900 to 2199.
    ///
    /// # Errors
    /// [`DayError::NoSuchDay`].
    pub fn new(year: u16, month: u8, day: u8) -> Result<Self, DayError> {
        let leap =
            year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400));
        let days = match month {
            2 if leap => 29,
            2 => 28,
            4 | 6 | 9 | 11 => 30,
            1..=12 => 31,
            _ => 0,
        };
        if (1900..2200).contains(&year) && (1..=days).contains(&day) {
            Ok(Self { year, month, day })
        } else {
            Err(DayError::NoSuchDay)
        }
    }

    /// Reads `2026-03-25`, `25.3.2026`, `25/3/2026`, `25/3/26`; the order of day and month is the reader's, unless only
    /// one order makes a day.
    ///
    /// # Errors
    /// [`DayError`].
    ///
    /// # Source
    /// The form with the year first: ISO 8601.
    pub fn read(text: &str, order: DayOrder) -> Result<Self, DayError> {
        let parts: Vec<&str> = text
            .trim()
            .split(['-', '.', '/', ' '])
            .filter(|part| !part.is_empty())
            .collect();
        let [first, second, third] = parts[..] else {
            return Err(DayError::Form);
        };
        let number = |part: &str| part.parse::<u16>().map_err(|_| DayError::Form);
        let small = |part: &str| part.parse::<u8>().map_err(|_| DayError::Form);
        if first.len() == 4 {
            return Self::new(number(first)?, small(second)?, small(third)?);
        }
        let year = match third.len() {
            4 => number(third)?,
            2 => 2000 + number(third)?,
            _ => return Err(DayError::Form),
        };
        let (one, two) = (small(first)?, small(second)?);
        // Points are written with the day first everywhere.
        let month_first = order == DayOrder::MonthFirst && !text.contains('.');
        let (usual, other) = if month_first {
            ((two, one), (one, two))
        } else {
            ((one, two), (two, one))
        };
        Self::new(year, usual.1, usual.0).or_else(|_| Self::new(year, other.1, other.0))
    }
}

/// The form with the year first.
impl fmt::Display for Day {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:04}-{:02}-{:02}", self.year, self.month, self.day)
    }
}
