//! What was wrong with an entry, in a sentence that ends in a right example.

use super::{Phrase, Tongue, filled, pair, same};
use buildbook::BookError;
use measure::MoneyFault;
use measure::{EntryError, EntryProblem, Manner, MoneyEntryError};
use std::ops::Range;
use trade::TradeError;
use trade::gearing::TyreFault;

/// An entry's fault as the row shows it: where in the text, and the sentence.
#[derive(Clone, Debug, PartialEq)]
pub struct Fault {
    /// The characters at fault; none where no place can be named.
    pub at: Option<Range<usize>>,
    /// What is wrong, and a right example.
    pub said: String,
}

fn problem(why: &EntryProblem) -> Phrase {
    match why {
        EntryProblem::Empty => same("Nothing was entered."),
        EntryProblem::TooLong { .. } => same("That is longer than any entry needs."),
        EntryProblem::NoNumber => same("A number is expected here."),
        EntryProblem::Character(_) => same("{0} has no meaning here."),
        EntryProblem::Thousands => same("The marks do not part the number into thousands."),
        EntryProblem::Fraction => {
            same("This is no fraction: a whole number above and one below, not nought.")
        }
        EntryProblem::ImproperFraction => {
            same("The fraction after a whole number must be less than one.")
        }
        EntryProblem::UnknownUnit(_) => same("{0} is no unit known here."),
        EntryProblem::WrongUnit(_) => same("{0} does not measure this."),
        EntryProblem::UnitMissing => same("A unit is missing here."),
        EntryProblem::PartsNotDescending => same("Larger units come first: feet, then inches."),
        EntryProblem::PartTooLarge => same("This part makes one or more of the unit before it."),
        EntryProblem::PartNotWhole => same("Only the last part may have decimals."),
        EntryProblem::NotOneValue => same("One value is expected; sums and ranges are not read."),
        EntryProblem::OneSided => same("A + or a − alone is no tolerance: give both, or ±."),
        EntryProblem::SignedTolerance => same("A tolerance has no sign of its own."),
        EntryProblem::ToleranceTooLarge => same("The ± must be less than the value itself."),
        EntryProblem::PercentOfDegrees => same("A temperature takes its ± in degrees."),
        EntryProblem::Brackets => same("The brackets do not match."),
        EntryProblem::UnknownGauge => pair(
            "There is no such gauge number.",
            "There is no such gage number.",
        ),
        EntryProblem::GaugeSeries => same("Say which gauge: SWG (British) or ga (American)."),
        EntryProblem::Negative => same("It cannot be less than nought."),
        EntryProblem::NotWhole => same("It must be a whole number."),
        EntryProblem::TooSmall { .. } => same("It must be at least {0}."),
        EntryProblem::TooLarge { .. } => same("It must be at most {0}."),
        EntryProblem::Boundless => same("That number is beyond all reckoning."),
        _ => same("This cannot be read."),
    }
}

/// A limit in its unit, as short as it can be said.
fn limit(value: f64, symbol: &str, manner: &Manner) -> String {
    let rounded = if value == 0.0 {
        0.0
    } else {
        let digits = 10_f64.powf(3.0 - value.abs().log10().floor());
        (value * digits).round() / digits
    };
    let text = rounded
        .to_string()
        .replace('.', &manner.mark.sign().to_string());
    if symbol.is_empty() {
        text
    } else {
        format!("{text}\u{a0}{symbol}")
    }
}

fn part(why: &EntryProblem, manner: &Manner) -> Vec<String> {
    match why {
        EntryProblem::Character(c) => vec![format!("“{}”", seen(*c))],
        EntryProblem::UnknownUnit(unit) => vec![format!("“{unit}”")],
        EntryProblem::WrongUnit(unit) => vec![format!("“{}”", unit.symbol)],
        EntryProblem::TooSmall { lowest, unit } => vec![limit(*lowest, unit.symbol, manner)],
        EntryProblem::TooLarge { highest, unit } => vec![limit(*highest, unit.symbol, manner)],
        _ => Vec::new(),
    }
}

/// A fault at these characters that ends in a right example.
fn ending_in(example: &String, said: String, at: Range<usize>, tongue: Tongue) -> Fault {
    let example = filled(
        tongue.say(super::frame::FOR_EXAMPLE),
        std::slice::from_ref(example),
    );
    Fault {
        at: Some(at),
        said: format!("{said} {example}"),
    }
}

/// A character as it can be told: one that is not seen, or that turns what follows it round, by its number in Unicode.
fn seen(c: char) -> String {
    let unseen = c.is_control()
        || matches!(c, '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2060}'..='\u{206f}' | '\u{feff}');
    if unseen {
        format!("U+{:04X}", u32::from(c))
    } else {
        c.to_string()
    }
}

fn of_number(error: &EntryError, manner: &Manner, tongue: Tongue) -> Fault {
    let said = filled(tongue.say(problem(&error.why)), &part(&error.why, manner));
    ending_in(&error.example, said, error.at.clone(), tongue)
}

/// What is wrong with an amount of money or an exact number.
fn money_problem(why: &MoneyFault, tongue: Tongue) -> String {
    let said = |phrase: Phrase| tongue.say(phrase).to_owned();
    match why {
        MoneyFault::Empty => said(same("Nothing was entered.")),
        MoneyFault::NoDigits => said(same("A number is expected here.")),
        MoneyFault::Unexpected(c) | MoneyFault::Twice(c) => {
            filled(tongue.say(same("“{0}” has no meaning here.")), &[seen(*c)])
        }
        MoneyFault::Thousands => said(same("The marks do not part the amount into thousands.")),
        MoneyFault::UnknownCurrency => said(same(
            "This is no currency known here; its three letters are, such as EUR.",
        )),
        MoneyFault::SharedSign => said(same(
            "Several currencies share this sign; write its three letters, such as SEK.",
        )),
        MoneyFault::TooFine { places: 0 } => said(same("Only whole units here, no decimals.")),
        MoneyFault::TooFine { places } => filled(
            tongue.say(same("No more than {0} decimals here.")),
            &[places.to_string()],
        ),
        _ => said(same("That amount is beyond all reckoning.")),
    }
}

fn of_money(error: &MoneyEntryError, tongue: Tongue) -> Fault {
    let said = money_problem(&error.why, tongue);
    ending_in(&error.example, said, error.at.clone(), tongue)
}

fn of_trade(error: &TradeError, tongue: Tongue) -> Fault {
    let at = match error {
        TradeError::Tyre(TyreFault::Unread { at }) => Some(*at..*at + 1),
        _ => None,
    };
    Fault {
        at,
        said: super::lack::refusal(error, tongue),
    }
}

/// What is wrong with an entry.
pub fn fault(error: &BookError, manner: &Manner, tongue: Tongue) -> Fault {
    match error {
        BookError::Entry(error) => of_number(error, manner, tongue),
        BookError::Money(error) => of_money(error, tongue),
        BookError::Choice { .. } => Fault {
            at: None,
            said: tongue.say(same("Choose one of these.")).to_owned(),
        },
        BookError::Limits { lowest, highest } => Fault {
            at: None,
            said: filled(
                tongue.say(same("It must be at least {0} and at most {1}.")),
                &[limit(*lowest, "", manner), limit(*highest, "", manner)],
            ),
        },
        BookError::Date(_) => Fault {
            at: None,
            said: tongue
                .say(same("This is no day. A right one: 2026-03-14"))
                .to_owned(),
        },
        BookError::Trade(error) => of_trade(error, tongue),
        _ => Fault {
            at: None,
            said: tongue.say(same("This entry cannot be used.")).to_owned(),
        },
    }
}
