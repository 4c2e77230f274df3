//! The date code at the end of a tyre's identification number.

use crate::TradeError;

/// The week a tyre was made in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DateCode {
    /// The week, from 1: the first full week of the year, which begins on a Sunday.
    pub week: u8,
    /// The year; of a code of three figures the latest that it can mean.
    pub year: u16,
    /// Whether the year is beyond doubt: three figures fit each decade before 2000.
    pub sure: bool,
}

impl DateCode {
    /// The decades in which codes had three figures, the latest first: the rule is of 1971.
    pub const DECADES: [u16; 3] = [1990, 1980, 1970];

    /// The code as it stands on the tyre: `2319`, the 23rd week of 2019; with or without the letters before it. Three figures
    /// were used until 2000, and do not tell the decade.
    ///
    /// # Errors
    /// [`TradeError::TyreDate`] for anything else, or a week that no year has.
    ///
    /// # Source
    /// 49 CFR 574.5: week 01 is the first full calendar week of the year, from Sunday to Saturday; four figures since July 2000.
    ///
    /// # Example
    /// 3500 is the 35th week of 2000, 439 the 43rd week of 1999 or of a decade before.
    pub fn read(text: &str) -> Result<Self, TradeError> {
        let last = text.trim().rsplit(char::is_whitespace).next();
        let figures = last.unwrap_or_default();
        // A sign would be read as part of the number.
        if !figures.bytes().all(|byte| byte.is_ascii_digit()) {
            return Err(TradeError::TyreDate);
        }
        let number: u16 = figures.parse().map_err(|_| TradeError::TyreDate)?;
        let (week, year, sure) = match figures.len() {
            4 => (number / 100, 2000 + number % 100, true),
            3 => (number / 10, Self::DECADES[0] + number % 10, false),
            _ => return Err(TradeError::TyreDate),
        };
        let week = u8::try_from(week).unwrap_or(0);
        if (1..=53).contains(&week) {
            Ok(Self { week, year, sure })
        } else {
            Err(TradeError::TyreDate)
        }
    }

    /// The same code of three figures in a decade that is known: `1980`. One of four figures stays what it is.
    #[must_use]
    pub fn in_decade(self, decade: u16) -> Self {
        if self.sure {
            return self;
        }
        Self {
            year: decade + self.year % 10,
            sure: true,
            ..self
        }
    }
}
