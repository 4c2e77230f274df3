//! The runner of the reference checks: published values, their sources, and what our own code makes of the same inputs.
//!
//! A subject is one file of data, `tests/reference/<subject>.toml`, and one module here that knows how to compute each
//! value the data names. The runner is strict: a subject without checks, a name nobody computes, an input nobody reads
//! and a key that is not part of the format are failures.

mod books;
mod check;
mod inputs;
mod quantities;
mod report;
mod run_checks;
mod units;

pub mod conversion;
pub mod costs;
pub mod final_drive;
pub mod gearing;
mod gearing_engine;
pub mod handover;
pub mod marking;
pub mod measure;
pub mod paint;
pub mod springs;
pub mod templates;
pub mod torque;
pub mod vehicle;

pub use check::{Check, CheckFile, Held};
pub use inputs::Inputs;
pub use report::Report;
pub use run_checks::{Subject, outcome, unknown};

/// Every subject, in the order of the job, with the fewest checks it may have.
pub const SUBJECTS: &[Subject] = &[
    Subject {
        name: "measure",
        least: 25,
        computed: measure::computed,
    },
    Subject {
        name: "vehicle",
        least: 15,
        computed: vehicle::computed,
    },
    Subject {
        name: "gearing",
        least: 25,
        computed: gearing::computed,
    },
    Subject {
        name: "springs",
        least: 25,
        computed: springs::computed,
    },
    Subject {
        name: "paint",
        least: 25,
        computed: paint::computed,
    },
    Subject {
        name: "costs",
        least: 30,
        computed: costs::computed,
    },
    Subject {
        name: "marking",
        least: 30,
        computed: marking::computed,
    },
    Subject {
        name: "templates",
        least: 30,
        computed: templates::computed,
    },
    Subject {
        name: "conversion",
        least: 30,
        computed: conversion::computed,
    },
    Subject {
        name: "final_drive",
        least: 30,
        computed: final_drive::computed,
    },
    Subject {
        name: "torque",
        least: 30,
        computed: torque::computed,
    },
    Subject {
        name: "handover",
        least: 30,
        computed: handover::computed,
    },
];
