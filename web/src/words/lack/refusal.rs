//! Why a calculation refuses, a sentence for each reason, ending in what would be right.

use super::limits::{named, out_of_range};
use crate::words::{Phrase, Tongue, filled, gearing, pair, same};
use measure::{MeasureError, MoneyError};
use trade::TradeError;

/// Why there is no number for an answer.
pub fn no_answer(error: &MeasureError) -> Phrase {
    match error {
        MeasureError::NoRoot { .. } => same(
            "No value within the limits gives that: wish for something nearer to what there is.",
        ),
        _ => same(
            "These entries lead to a division by nothing: look for one that should not be nought.",
        ),
    }
}

/// Why a reckoning of money has no answer.
fn money(error: &MoneyError) -> Phrase {
    match error {
        MoneyError::Mixed { .. } => same("Two currencies meet here: enter the rate of exchange."),
        MoneyError::Fraction => same(
            "The amount holds parts of the smallest coin: enter one that ends with it, as 12.50.",
        ),
        MoneyError::DividedByNothing => {
            same("Nothing cannot be shared out: enter a number above nought.")
        }
        MoneyError::Shares => same("The shares come to nothing: one of them must be above nought."),
        MoneyError::Quantity => {
            same("The quantity cannot be priced: look at the entries it comes from.")
        }
        MoneyError::Unreadable => same("The amount cannot be read. A right one: 12.50"),
        _ => same("The amount is beyond all reckoning: enter a smaller one."),
    }
}

/// Why a calculation refuses, in a sentence.
pub fn refusal(error: &TradeError, tongue: Tongue) -> String {
    let (phrase, parts) = match error {
        TradeError::OutOfRange {
            entry,
            lowest,
            highest,
        } => return out_of_range(entry, *lowest, *highest, tongue),
        TradeError::Money(error) => (money(error), Vec::new()),
        TradeError::Measure(error) => (no_answer(error), Vec::new()),
        error => gearing::refusal(error)
            .map(|phrase| (phrase, Vec::new()))
            .or_else(|| of_lists(error, tongue))
            .or_else(|| of_measures(error, tongue))
            .or_else(|| of_springs(error))
            .or_else(|| of_joints(error))
            .unwrap_or((super::super::frame::NO_ANSWER, Vec::new())),
    };
    filled(tongue.say(phrase), &parts)
}

type Said = Option<(Phrase, Vec<String>)>;

/// A length in both units, since nobody has asked for either.
fn both(metres: f64, places: usize) -> String {
    let (mm, inches) = (metres * 1000.0, metres / 0.0254);
    format!("{mm:.places$} mm ({inches:.0$} in)", places + 2)
}

/// Lists that are too short, or whose rows agree too little.
fn of_lists(error: &TradeError, tongue: Tongue) -> Said {
    Some(match error {
        TradeError::TooFew { entry, least } => (
            same("{0}: enter at least {1}."),
            vec![named(entry, tongue), least.to_string()],
        ),
        TradeError::TooFewPoints { have, need } => (
            same("{0} points are too few: enter at least {1} different ones."),
            vec![have.to_string(), need.to_string()],
        ),
        TradeError::Undetermined { entry: "marks" } => (
            same("The marks did not move between the trials: change the shim by more."),
            Vec::new(),
        ),
        TradeError::Undetermined {
            entry: "turning torque",
        } => (
            same("The turning torque did not change between the packs: change the pack by more."),
            Vec::new(),
        ),
        TradeError::Undetermined { entry: "edge" } => (
            same(
                "This gives no edge: it runs through both datums, or its two points lie in one place.",
            ),
            Vec::new(),
        ),
        TradeError::Undetermined { entry: "strip" } => (
            same("Both ends lie in one place: measure to the middle of each end."),
            Vec::new(),
        ),
        TradeError::Undetermined { entry } => (
            same(
                "{0} do not fix an answer: measure one more, away from the line or place of the others.",
            ),
            vec![named(entry, tongue)],
        ),
        TradeError::OutlineCrosses { first, second } => (
            same(
                "The outline crosses or touches itself at its edges {0} and {1}: go round the corners in order.",
            ),
            vec![(first + 1).to_string(), (second + 1).to_string()],
        ),
        TradeError::PaidTooMuch => (
            same("More is paid than the line comes to: pay at most the whole of it."),
            Vec::new(),
        ),
        _ => return None,
    })
}

/// Distances and links that do not meet.
fn of_measures(error: &TradeError, tongue: Tongue) -> Said {
    Some(match error {
        TradeError::CannotMeet { gap } => (
            same("The distances cannot meet: they miss each other by {0}. Measure them again."),
            vec![both(*gap, 1)],
        ),
        TradeError::ReadingSpoils { by } => (
            if *by > 0.0 {
                same("This reading is {0} too long for the others. Measure it again.")
            } else {
                same("This reading is {0} too short for the others. Measure it again.")
            },
            vec![both(by.abs(), 1)],
        ),
        TradeError::CannotReach { link } => (
            same(
                "The {0} cannot reach so far: look at the measures, and at how far the arm swings.",
            ),
            vec![named(link, tongue)],
        ),
        TradeError::SteersBackwards | TradeError::SteersNotAtAll => (
            pair(
                "Stopped: it would steer backwards, or not at all. Mend the direction first.",
                "Stopped: it would steer backward, or not at all. Mend the direction first.",
            ),
            Vec::new(),
        ),
        TradeError::TyreDate => (
            pair(
                "A tyre's date code is four figures, the week and the year. A right one: 2319",
                "A tire's date code is four figures, the week and the year. A right one: 2319",
            ),
            Vec::new(),
        ),
        _ => return None,
    })
}

/// Springs that cannot be.
fn of_springs(error: &TradeError) -> Said {
    Some(match error {
        TradeError::NoMainLeaf => (
            same("A spring needs one main leaf: say which leaf has the eyes."),
            Vec::new(),
        ),
        TradeError::LeafHasNoBody { leaf } => (
            same("Leaf {0} has no width or no thickness. A right one: 60 mm by 8 mm."),
            vec![leaf.to_string()],
        ),
        TradeError::LeafWithinSeat { leaf } => (
            same("Leaf {0} ends inside the seat: it must reach further than the clamped length."),
            vec![leaf.to_string()],
        ),
        TradeError::HelperWithoutGap { leaf } => (
            same("Helper leaf {0} bears nobody knows when: enter its gap or its loose arch."),
            vec![leaf.to_string()],
        ),
        TradeError::PressFalls => (
            same(
                "The load must grow as the spring is pressed down, and be less coming off than going up: look at the points.",
            ),
            Vec::new(),
        ),
        TradeError::NoSuchLeaf { number, count } => (
            same("There is no leaf {0}: name one from 1 to {1}."),
            vec![number.to_string(), count.to_string()],
        ),
        TradeError::ShackleCannotReach { shortest, longest } => (
            same("The shackle cannot reach: it spans eyes from {0} to {1} apart."),
            vec![both(*shortest, 0), both(*longest, 0)],
        ),
        _ => return None,
    })
}

/// Joints, wrenches and shims.
fn of_joints(error: &TradeError) -> Said {
    Some(match error {
        TradeError::NoPack { nearest } => (
            same(
                "No pack of these shims comes near enough; the nearest comes to {0}. Add a shim, or let it be further off.",
            ),
            vec![both(*nearest, 2)],
        ),
        TradeError::UpsideDown => (
            same(
                "The upper figure lies below the lower one: the lower one comes first, as in 0.15 to 0.20.",
            ),
            Vec::new(),
        ),
        TradeError::UnknownThread => (
            same(
                "No thread here is called that. Right ones are M10x1.25, 3/8 UNF, 5/16 BSF and 2 BA.",
            ),
            Vec::new(),
        ),
        TradeError::UnknownGrade => (
            same(
                "No class or grade of this size is called that. Right ones are 8.8, 10.9, grade 5 and R.",
            ),
            Vec::new(),
        ),
        TradeError::MakersFigureOnly => (
            same("Nothing is computed here: enter the vehicle maker's figure."),
            Vec::new(),
        ),
        _ => return None,
    })
}
