//! The journeys, a file a subject, and the list of them.

use std::pin::Pin;

use crate::{Machine, Outcome};

mod axle;
mod bounds;
mod conversion;
mod costs;
mod files;
mod gearing;
mod handover;
mod keeping;
mod links;
mod looks;
mod marking;
mod marking_places;
mod opening;
mod paint;
mod quick_answers;
mod springs;
mod templates;
mod units;
mod vehicle;
mod versions;
mod way;
mod whole_job;

/// A journey under way.
pub type Running<'a> = Pin<Box<dyn Future<Output = Outcome> + 'a>>;

/// A journey: a sentence, and what is done.
pub struct Case {
    /// What holds when it ends well.
    pub name: &'static str,
    /// Does it.
    pub run: for<'a> fn(&'a Machine) -> Running<'a>,
}

/// Makes the list of a file's journeys from the names of its functions.
macro_rules! cases {
    ($($name:ident),* $(,)?) => {
        /// The journeys of this file.
        pub const CASES: &[$crate::journeys::Case] = &[$($crate::journeys::Case {
            name: stringify!($name),
            run: |machine| Box::pin($name(machine)),
        }),*];
    };
}
pub(crate) use cases;

/// Every journey, in the order of the job.
pub fn all() -> impl Iterator<Item = &'static Case> {
    [
        opening::CASES,
        conversion::CASES,
        costs::CASES,
        templates::CASES,
        marking::CASES,
        marking_places::CASES,
        versions::CASES,
        quick_answers::CASES,
        axle::CASES,
        whole_job::CASES,
        handover::CASES,
        keeping::CASES,
        files::CASES,
        links::CASES,
        units::CASES,
        looks::CASES,
        way::CASES,
        bounds::CASES,
    ]
    .into_iter()
    .flatten()
}
