//! Reading the money people type: signs and codes, points and commas, thousands marks.

use std::ops::Range;
use std::str::FromStr;

use rust_decimal::Decimal;

use super::currency::Meant;
use super::{Currency, Money, MoneyEntryError, MoneyFault};
use crate::Mark;

/// The most digits before the decimal mark.
const LONGEST: usize = 12;

/// What a money field asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct MoneyAsk {
    /// The currency of a bare number.
    pub currency: Currency,
    /// The decimal mark of the reader's locale: how a doubtful amount is understood until it is settled.
    pub usual: Mark,
    /// The decimal mark where the person has settled it.
    pub mark: Option<Mark>,
    /// How many decimals there may be; the currency's own where there is none.
    pub places: Option<u32>,
}

impl MoneyAsk {
    /// A plain amount of a currency.
    #[must_use]
    pub fn amount(currency: Currency, usual: Mark) -> Self {
        Self {
            currency,
            usual,
            mark: None,
            places: None,
        }
    }

    /// A unit price, which may be finer than the currency's smallest unit.
    #[must_use]
    pub fn price(currency: Currency, usual: Mark) -> Self {
        Self {
            places: Some(6),
            ..Self::amount(currency, usual)
        }
    }
}

/// An amount as it was understood.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct MoneyReading {
    /// The amount understood.
    pub money: Money,
    /// What it would be with the other decimal mark, where that is in doubt: ask.
    pub otherwise: Option<Money>,
    /// Whether the text named its currency; a bare amount may take that of the line it stands on.
    pub named: bool,
}

impl MoneyReading {
    /// The amount, in another currency where the text named none.
    #[must_use]
    pub fn in_line_of(&self, currency: Currency) -> Money {
        if self.named {
            self.money
        } else {
            Money::new(self.money.amount(), currency)
        }
    }
}

/// A plain decimal number as it was understood.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DecimalReading {
    /// The number understood.
    pub value: Decimal,
    /// What it would be with the other decimal mark, where that is in doubt: ask.
    pub otherwise: Option<Decimal>,
}

/// Reads an amount of money.
///
/// # Errors
/// [`MoneyEntryError`] with the characters at fault and a right example.
///
/// # Example
/// ```
/// use measure::{read_money, Currency, Mark, MoneyAsk};
/// let ask = MoneyAsk::amount(Currency::GBP, Mark::Point);
/// assert_eq!(read_money("£1,234.50", &ask).unwrap().money.to_string(), "1234.50 GBP");
/// assert_eq!(read_money("12 500 Ft", &ask).unwrap().money.to_string(), "12500.00 HUF");
/// ```
pub fn read_money(text: &str, ask: &MoneyAsk) -> Result<MoneyReading, MoneyEntryError> {
    let example = || {
        let shown =
            Money::new(Decimal::new(12_345, 1), ask.currency).rounded(super::Rounding::HalfUp);
        shown.shown(ask.usual, ask.currency).replace('\u{a0}', " ")
    };
    let fault = |(at, why)| MoneyEntryError {
        at,
        why,
        example: example(),
    };
    let cut = Cut::of(text).map_err(fault)?;
    let currency = match &cut.word {
        None => ask.currency,
        Some((written, at)) => match Currency::meant_by(written, ask.currency) {
            Meant::One(currency) => currency,
            Meant::Several => return Err(fault((at.clone(), MoneyFault::SharedSign))),
            Meant::Unknown => return Err(fault((at.clone(), MoneyFault::UnknownCurrency))),
        },
    };
    let places = ask
        .places
        .unwrap_or_else(|| currency.minor_units())
        .max(currency.minor_units());
    let (value, otherwise) = cut.value(ask.usual, ask.mark, places).map_err(fault)?;
    Ok(MoneyReading {
        money: Money::new(value, currency),
        otherwise: otherwise.map(|value| Money::new(value, currency)),
        named: cut.word.is_some(),
    })
}

/// Reads a plain decimal number: a count, a rate of exchange, a percentage (whose sign may stand behind it).
///
/// # Errors
/// [`MoneyEntryError`] with the characters at fault and a right example.
pub fn read_decimal(
    text: &str,
    usual: Mark,
    mark: Option<Mark>,
    places: u32,
) -> Result<DecimalReading, MoneyEntryError> {
    let fault = |(at, why)| MoneyEntryError {
        at,
        why,
        example: super::shown_decimal(Decimal::new(25, u32::from(places > 0)), usual),
    };
    let cut = Cut::of(text).map_err(fault)?;
    if let Some((written, at)) = &cut.word
        && written != "%"
    {
        let first = written.chars().next().unwrap_or(' ');
        return Err(fault((at.clone(), MoneyFault::Unexpected(first))));
    }
    let (value, otherwise) = cut.value(usual, mark, places).map_err(fault)?;
    Ok(DecimalReading { value, otherwise })
}

type Fault = (Range<usize>, MoneyFault);

/// The typed text cut into sign, currency word and the figures between.
struct Cut {
    negative: bool,
    word: Option<(String, Range<usize>)>,
    /// Digits, points, commas and thousands marks, each with its place in the text.
    figures: Vec<(usize, char)>,
}

fn is_gap(c: char) -> bool {
    c.is_whitespace() || c == '\u{a0}' || c == '\u{202f}' || c == '\u{2009}'
}

fn is_minus(c: char) -> bool {
    matches!(c, '-' | '\u{2212}' | '\u{2013}')
}

fn is_mark(c: char) -> bool {
    matches!(c, '.' | ',')
}

fn is_figure(c: char) -> bool {
    c.is_ascii_digit() || matches!(c, '.' | ',' | '\'' | '\u{2019}')
}

/// Up to so many digits fit a whole number of the machine.
const PLAIN: usize = 18;

impl Cut {
    fn of(text: &str) -> Result<Self, Fault> {
        let chars: Vec<char> = text.chars().collect();
        let mut cut = Self {
            negative: false,
            word: None,
            figures: Vec::with_capacity(chars.len()),
        };
        let mut signed = false;
        let mut at = 0;
        while let Some(&c) = chars.get(at) {
            if is_gap(c) {
                at += 1;
            } else if c.is_ascii_digit() || (is_figure(c) && starts_figures(&chars, at)) {
                if let Some(&(seen, _)) = cut.figures.first() {
                    return Err((seen..chars.len(), MoneyFault::Unexpected(c)));
                }
                at = cut.take_figures(&chars, at);
            } else if is_minus(c) || c == '+' {
                if signed || !cut.figures.is_empty() {
                    return Err((at..at + 1, MoneyFault::Twice(c)));
                }
                signed = true;
                cut.negative = is_minus(c);
                at += 1;
            } else {
                at = cut.take_word(&chars, at)?;
            }
        }
        if chars.iter().all(|c| is_gap(*c)) {
            Err((0..chars.len(), MoneyFault::Empty))
        } else if cut.figures.iter().any(|(_, c)| c.is_ascii_digit()) {
            Ok(cut)
        } else {
            Err((0..chars.len(), MoneyFault::NoDigits))
        }
    }

    /// Takes digits and marks, and gaps between digits; a dash for no pence (`12,-`) ends them.
    fn take_figures(&mut self, chars: &[char], mut at: usize) -> usize {
        while let Some(&c) = chars.get(at) {
            let digit_next = chars.get(at + 1).is_some_and(char::is_ascii_digit);
            if is_figure(c) || (is_gap(c) && digit_next) {
                self.figures.push((at, c));
                at += 1;
            } else if is_minus(c) && matches!(self.figures.last(), Some((_, '.' | ','))) {
                self.figures.pop();
                return at + 1;
            } else {
                break;
            }
        }
        at
    }

    fn take_word(&mut self, chars: &[char], from: usize) -> Result<usize, Fault> {
        let mut at = from;
        while let Some(&c) = chars.get(at) {
            let stop_in_word = c == '.' && !chars.get(at + 1).is_some_and(char::is_ascii_digit);
            if is_gap(c) || is_minus(c) || (is_figure(c) && !stop_in_word) {
                break;
            }
            at += 1;
        }
        let word: String = chars[from..at].iter().collect();
        if self.word.is_some() || word.is_empty() {
            return Err((from..at.max(from + 1), MoneyFault::Unexpected(chars[from])));
        }
        self.word = Some((word, from..at));
        Ok(at)
    }

    /// The number the figures stand for, and the one they would be with the other mark.
    fn value(
        &self,
        usual: Mark,
        mark: Option<Mark>,
        places: u32,
    ) -> Result<(Decimal, Option<Decimal>), Fault> {
        if !self.is_doubtful() {
            let decimal_mark = mark.map(mark_char).or(self.plain_mark());
            return self.number(decimal_mark, places).map(|value| (value, None));
        }
        let meant = mark.unwrap_or(usual);
        let other = match meant {
            Mark::Point => Mark::Comma,
            Mark::Comma => Mark::Point,
        };
        let value = self.number(Some(mark_char(meant)), places);
        let otherwise = self.number(Some(mark_char(other)), places).ok();
        match (value, otherwise) {
            (Ok(value), otherwise) => {
                let asked = otherwise.filter(|other| mark.is_none() && *other != value);
                Ok((value, asked))
            }
            // Finer than the currency goes: only the thousands mark makes sense of it.
            (Err(_), Some(otherwise)) => Ok((otherwise, None)),
            (Err(fault), None) => Err(fault),
        }
    }

    fn marks(&self) -> impl DoubleEndedIterator<Item = char> + '_ {
        let all = self.figures.iter().map(|(_, c)| *c);
        all.filter(|c| is_mark(*c))
    }

    /// One point or comma before exactly three digits, with one to three before it: thousands or decimals?
    fn is_doubtful(&self) -> bool {
        if self.marks().count() != 1 || self.figures.iter().any(|(_, c)| is_thousands_only(*c)) {
            return false;
        }
        let before = self
            .figures
            .iter()
            .take_while(|(_, c)| !is_mark(*c))
            .count();
        let after = self.figures.len() - before - 1;
        after == 3 && (1..=3).contains(&before) && self.figures[0].1 != '0'
    }

    /// The decimal mark where there is no doubt: the last of two kinds, or the only one that stands once.
    fn plain_mark(&self) -> Option<char> {
        let last = self.marks().next_back()?;
        let same = self.marks().filter(|c| *c == last).count();
        if same == 1 || same < self.marks().count() {
            Some(last)
        } else {
            None
        }
    }

    fn number(&self, decimal_mark: Option<char>, places: u32) -> Result<Decimal, Fault> {
        let mut whole = String::new();
        let mut decimals: Option<String> = None;
        for (index, &(at, c)) in self.figures.iter().enumerate() {
            if c.is_ascii_digit() {
                decimals.as_mut().unwrap_or(&mut whole).push(c);
            } else if Some(c) == decimal_mark {
                if decimals.is_some() {
                    return Err((at..at + 1, MoneyFault::Twice(c)));
                }
                decimals = Some(String::new());
            } else if decimals.is_some() || !self.groups_thousands(index) {
                return Err((at..at + 1, MoneyFault::Thousands));
            }
        }
        let first = self.figures.first().map_or(0, |(at, _)| *at);
        let end = self.figures.last().map_or(0, |(at, _)| at + 1);
        let decimals = decimals.unwrap_or_default();
        let kept = decimals.trim_end_matches('0');
        if kept.len() > places as usize {
            let surplus = decimals.len() - places as usize;
            return Err((end - surplus..end, MoneyFault::TooFine { places }));
        }
        if whole.trim_start_matches('0').len() > LONGEST {
            return Err((first..end, MoneyFault::TooLong));
        }
        // The decimals typed are kept as far as the field goes: 12.50 stays 12.50.
        let kept = &decimals[..decimals.len().min(places as usize)];
        let digits = || whole.bytes().chain(kept.bytes());
        if !self.negative && digits().count() <= PLAIN {
            let value = digits().fold(0, |value, digit| value * 10 + i64::from(digit - b'0'));
            return Ok(Decimal::new(value, kept.len() as u32));
        }
        let sign = if self.negative { "-" } else { "" };
        Decimal::from_str(&format!("{sign}0{whole}.{kept}0"))
            .map(|value| value.trunc_with_scale(u32::try_from(kept.len()).unwrap_or(0)))
            .map_err(|_| (first..end, MoneyFault::TooLong))
    }

    /// Whether the mark at this place stands before exactly three digits and after at most three.
    fn groups_thousands(&self, index: usize) -> bool {
        let digits = |figures: &mut dyn Iterator<Item = &(usize, char)>| {
            figures.take_while(|(_, c)| c.is_ascii_digit()).count()
        };
        let after = digits(&mut self.figures[index + 1..].iter());
        let before = digits(&mut self.figures[..index].iter().rev());
        after == 3 && (1..=3).contains(&before)
    }
}

fn starts_figures(chars: &[char], at: usize) -> bool {
    matches!(chars[at], '.' | ',') && chars.get(at + 1).is_some_and(char::is_ascii_digit)
}

fn is_thousands_only(c: char) -> bool {
    is_gap(c) || matches!(c, '\'' | '\u{2019}')
}

fn mark_char(mark: Mark) -> char {
    match mark {
        Mark::Point => '.',
        Mark::Comma => ',',
    }
}
