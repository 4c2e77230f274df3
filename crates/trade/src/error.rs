//! The one error of this crate: what was wrong, where, and what would be right.

use thiserror::Error;

/// Why a calculation of the trade has no answer.
#[derive(Debug, Clone, PartialEq, Error)]
#[non_exhaustive]
pub enum TradeError {
    /// An entry lies outside what the calculation can use; limits in the SI unit of the entry.
    #[error("{entry} must lie between {lowest} and {highest}")]
    OutOfRange {
        /// The entry at fault, by its field name.
        entry: &'static str,
        /// The lowest usable value.
        lowest: f64,
        /// The highest usable value.
        highest: f64,
    },
    /// A reckoning of money has no answer.
    #[error("{0}")]
    Money(measure::MoneyError),
    /// More is paid than the line comes to.
    #[error("more is paid than the line comes to")]
    PaidTooMuch,
    /// A list is too short for the calculation.
    #[error("{entry} needs at least {least}")]
    TooFew {
        /// The list, by its field name.
        entry: &'static str,
        /// How many it needs.
        least: usize,
    },
    /// Two edges of a traced outline cross, so it has no inside.
    #[error("edges {first} and {second} of the outline cross")]
    OutlineCrosses {
        /// The place of the first edge, counted from 0.
        first: usize,
        /// The place of the second edge.
        second: usize,
    },
    /// The entries do not fix an answer: too few, or all in one line or place.
    #[error("{entry}: not enough to fix an answer")]
    Undetermined {
        /// The entries at fault.
        entry: &'static str,
    },
    /// Distances that cannot meet, and by how much they miss (metres).
    #[error("the distances miss each other by {gap} m")]
    CannotMeet {
        /// How far they miss each other.
        gap: f64,
    },
    /// A reading that does not agree with the others, and by how much it is out (metres; above nothing is too long).
    #[error("the reading is out by {by} m")]
    ReadingSpoils {
        /// How far it is out.
        by: f64,
    },
    /// A tyre's designation that stands for no tyre.
    #[error("{0}")]
    Tyre(#[from] crate::gearing::TyreFault),
    /// A wheel without teeth, or with more than any axle has.
    #[error("a gear wheel has 1 to 200 teeth")]
    Teeth,
    /// Torque points that make no curve.
    #[error("a torque curve needs two points or more, each at its own engine speed")]
    TorquePoints,
    /// Peaks of torque and power that no engine has together.
    #[error(
        "peak power must come at a higher speed than peak torque, and ask for no more torque than that"
    )]
    TorquePeaks,
    /// The engine cannot drive the vehicle so, or not so fast.
    #[error("the engine does not pull it")]
    NoPull,
    /// No axle ratio from 1 to 20 does what is wanted.
    #[error("no axle ratio from 1 to 20 does it")]
    NoAxle,
    /// The limit that is asked for does not exist: nothing within reach stops the vehicle.
    #[error("nothing limits it")]
    NoLimit,
    /// No leaf of the spring has the eyes.
    #[error("a spring needs one main leaf, the one with the eyes")]
    NoMainLeaf,
    /// A leaf's width or thickness is nothing or less.
    #[error("leaf {leaf} has no width or no thickness")]
    LeafHasNoBody {
        /// The number of the leaf in the pile, from 1.
        leaf: usize,
    },
    /// A leaf ends inside the clamped length, so that nothing of it bends.
    #[error("leaf {leaf} ends inside the seat")]
    LeafWithinSeat {
        /// The number of the leaf in the pile, from 1.
        leaf: usize,
    },
    /// A helper leaf has neither a gap nor a loose arch, so nobody can say when it bears.
    #[error("helper leaf {leaf} needs its gap or its loose arch")]
    HelperWithoutGap {
        /// The number of the leaf in the pile, from 1.
        leaf: usize,
    },
    /// There is no leaf of this number.
    #[error("there is no leaf {number} among {count}")]
    NoSuchLeaf {
        /// The number asked for.
        number: usize,
        /// How many leaves there are.
        count: usize,
    },
    /// The shackle does not reach from its pin to the eye.
    #[error("the shackle reaches eyes from {shortest:.3} m to {longest:.3} m apart")]
    ShackleCannotReach {
        /// The least distance between the eyes that it reaches (SI).
        shortest: f64,
        /// The greatest distance between the eyes that it reaches (SI).
        longest: f64,
    },
    /// Too few measured points to draw a line through.
    #[error("{have} points, and at least {need} different ones are needed")]
    TooFewPoints {
        /// How many there are.
        have: usize,
        /// How many are needed.
        need: usize,
    },
    /// The load of a press test does not grow as the spring is pressed down, or is more coming off than going up.
    #[error("the load does not grow as the spring is pressed down, or is more coming off")]
    PressFalls,
    /// A quantity has no answer.
    #[error(transparent)]
    Measure(#[from] measure::MeasureError),
    /// A computed torque is never for steering, brakes or wheel fixings: the maker's figure only.
    #[error("only the vehicle maker's figure serves here")]
    MakersFigureOnly,
    /// No pack of the shims to hand comes within the tolerance; what the nearest comes to (metres).
    #[error("no pack comes within the tolerance; the nearest comes to {nearest} m")]
    NoPack {
        /// What the nearest pack comes to.
        nearest: f64,
    },
    /// A date code that no tyre carries.
    #[error("a tyre's date code is the week and the year: 2319 is the 23rd week of 2019")]
    TyreDate,
    /// A link of the steering is too short or too long for where its ends have to go.
    #[error("the {link} cannot reach")]
    CannotReach {
        /// Which one.
        link: &'static str,
    },
    /// The wheels would turn to the other side than the steering wheel.
    #[error("it steers backwards")]
    SteersBackwards,
    /// The drag link would pull along the steering arm and turn nothing.
    #[error("it does not steer at all")]
    SteersNotAtAll,
    /// The upper one of two figures lies below the lower one.
    #[error("the upper figure lies below the lower one")]
    UpsideDown,
    /// A thread that no table here has.
    #[error("no thread is called so")]
    UnknownThread,
    /// A class or grade that no table here has, or that is not made in this size.
    #[error("no class or grade of this size is called so")]
    UnknownGrade,
}
