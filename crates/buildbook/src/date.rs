//! A day of the calendar.

use std::fmt;

/// A day of the Gregorian calendar.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Date {
    year: u16,
    month: u8,
    day: u8,
}

/// English months by their first three letters, as people write them on invoices.
const MONTHS: [&str; 12] = [
    "jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec",
];

impl Date {
    /// A day, when there is such a one.
    #[must_use]
    pub fn new(year: u16, month: u8, day: u8) -> Option<Self> {
        let sound = (1800..=2200).contains(&year) && (1..=12).contains(&month) && day >= 1;
        (sound && day <= days_in(year, month)).then_some(Self { year, month, day })
    }

    /// The day as typed: `2026-03-14` (ISO 8601), `14 March 2026`, `14 Mar 2026` or `14.3.2026`. A slash is not read: whether day or
    /// month comes first differs by country.
    #[must_use]
    pub fn read(text: &str) -> Option<Self> {
        let text = text.trim();
        if let [year, month, day] = parts(text, '-')[..]
            && year.len() == 4
        {
            return Self::new(year.parse().ok()?, month.parse().ok()?, day.parse().ok()?);
        }
        if let [day, month, year] = parts(text, '.')[..] {
            return Self::new(year.parse().ok()?, month.parse().ok()?, day.parse().ok()?);
        }
        let words: Vec<&str> = text.split_whitespace().collect();
        let [day, month, year] = words[..] else {
            return None;
        };
        let start: String = month.chars().take(3).map(measure::small).collect();
        let month = MONTHS.iter().position(|known| *known == start)?;
        Self::new(
            year.parse().ok()?,
            u8::try_from(month + 1).ok()?,
            day.trim_end_matches('.').parse().ok()?,
        )
    }

    /// The days from 1 March of the year 0 of the Gregorian calendar, carried back: years that begin in March have their leap day last.
    #[must_use]
    pub fn number(self) -> i64 {
        let (year, month) = if self.month > 2 {
            (i64::from(self.year), i64::from(self.month) - 3)
        } else {
            (i64::from(self.year) - 1, i64::from(self.month) + 9)
        };
        year * 365 + year / 4 - year / 100
            + year / 400
            + (153 * month + 2) / 5
            + i64::from(self.day)
            - 1
    }

    /// The day so many days later; `None` beyond the calendar of the book.
    #[must_use]
    pub fn plus_days(self, days: i64) -> Option<Self> {
        let wanted = self.number().checked_add(days)?;
        // A year too early at most, and then by less than two years.
        let mut year = u16::try_from(wanted / 366).ok()?.max(1800);
        while Self::new(year + 1, 1, 1)?.number() <= wanted {
            year += 1;
        }
        let mut left = u16::try_from(wanted - Self::new(year, 1, 1)?.number()).ok()?;
        let mut month = 1;
        while left >= u16::from(days_in(year, month)) {
            left -= u16::from(days_in(year, month));
            month += 1;
        }
        Self::new(year, month, u8::try_from(left + 1).ok()?)
    }

    /// The Sunday that begins a tyre maker's week: week 1 is the first full one of the year.
    #[must_use]
    pub fn of_tyre_week(year: u16, week: u8) -> Option<Self> {
        let first = Self::new(year, 1, 1)?;
        // 2 January 2000 was a Sunday.
        let sunday = Self::new(2000, 1, 2)?.number();
        let ahead = (sunday - first.number()).rem_euclid(7);
        first.plus_days(ahead + 7 * (i64::from(week) - 1))
    }

    /// The whole years and months from an earlier day to this one, as an age is counted; `None` where that day is later. What began on
    /// a 31st has its month on the last day of a shorter one.
    #[must_use]
    pub fn age_since(self, earlier: Self) -> Option<(u16, u16)> {
        let months = |day: Self| day.year * 12 + u16::from(day.month);
        let last = days_in(self.year, self.month);
        let begun = u16::from(self.day < earlier.day.min(last));
        let whole = months(self).checked_sub(months(earlier) + begun)?;
        Some((whole / 12, whole % 12))
    }

    /// The year.
    #[must_use]
    pub fn year(self) -> u16 {
        self.year
    }

    /// The month, from 1.
    #[must_use]
    pub fn month(self) -> u8 {
        self.month
    }

    /// The day of the month, from 1.
    #[must_use]
    pub fn day(self) -> u8 {
        self.day
    }
}

fn parts(text: &str, at: char) -> Vec<&str> {
    text.split(at).map(str::trim).collect()
}

fn days_in(year: u16, month: u8) -> u8 {
    let leap = year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400));
    match month {
        2 => 28 + u8::from(leap),
        4 | 6 | 9 | 11 => 30,
        _ => 31,
    }
}

impl fmt::Display for Date {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:04}-{:02}-{:02}", self.year, self.month, self.day)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_are_read_as_they_stand_on_invoices() {
        let day = Date::new(2026, 3, 4);
        for text in [
            "2026-03-04",
            "4 March 2026",
            "4 mar 2026",
            "4.3.2026",
            " 04. 03. 2026 ",
        ] {
            assert_eq!(Date::read(text), day, "{text}");
        }
        for text in [
            "",
            "3/4/2026",
            "2026-13-01",
            "31.4.2026",
            "29 Feb 2025",
            "4 Smarch 2026",
            "-4.3.2026",
        ] {
            assert_eq!(Date::read(text), None, "{text}");
        }
    }

    #[test]
    fn every_day_of_the_calendar_is_one_after_the_day_before() {
        let mut day = Date::new(1800, 1, 1).unwrap();
        let mut days = 1;
        while let Some(next) = day.plus_days(1) {
            assert_eq!(next.number(), day.number() + 1, "{next}");
            assert!(next > day);
            assert_eq!(next.plus_days(-1), Some(day));
            day = next;
            days += 1;
        }
        // 400 years of the Gregorian calendar are 146 097 days; the calendar ends a year before its last, so that each year has a next.
        assert_eq!(day.plus_days(1), None);
        assert!(day >= Date::new(2199, 12, 31).unwrap(), "{day}");
        assert_eq!(
            days,
            day.number() - Date::new(1800, 1, 1).unwrap().number() + 1
        );
    }

    #[test]
    fn a_tyre_maker_begins_the_year_with_its_first_full_week() {
        // 1 January 2012 was a Sunday, so that year had a 53rd week, which ended in 2013.
        assert_eq!(Date::of_tyre_week(2012, 53), Date::new(2012, 12, 30));
        assert_eq!(Date::of_tyre_week(2013, 1), Date::new(2013, 1, 6));
    }

    #[test]
    fn a_leap_day_is_there_every_fourth_year_but_not_in_1900() {
        assert!(Date::new(1900, 2, 29).is_none());
        assert!(Date::new(2000, 2, 29).is_some());
        assert!(Date::new(2024, 2, 29).is_some());
    }
}
