//! What a typed entry was understood to say, and the tools whose usual error stands in for an untyped ±.

use crate::mark::Mark;
use crate::unit::{self, Unit};

/// Where the ± of a reading comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Stated {
    /// The ± was typed with the value.
    Typed,
    /// Nothing was typed: the usual error of the tool stands in for it.
    Assumed,
    /// The value has no error: a count, a definition, or typed as `exact`.
    Exact,
}

/// A value in SI base units with its ± at 95 % (k = 2), as understood from what was typed.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// The value in SI base units (radians for angles, turns per second for rotation, plain numbers for ratios).
    pub value: f64,
    /// How far above the value the truth may lie, SI, 95 %, never negative.
    pub plus: f64,
    /// How far below the value the truth may lie, SI, 95 %, never negative.
    pub minus: f64,
    /// Whether the ± was typed, assumed or exact.
    pub stated: Stated,
    /// The unit that was typed (the smallest of several), or the field's own for a bare number.
    pub unit: &'static Unit,
    /// No unit was typed: the field's own was taken.
    pub bare: bool,
    /// The decimal mark that the meaning of the text hangs on: keep it with the text, so that a book with another mark
    /// understands the same. None where the text says it all.
    pub mark: Option<Mark>,
    /// The unit whose bare name another country fills differently (`gal`, `cwt`, `ton`), as understood: keep it with the
    /// text for the same reason. None where every unit was named in full.
    pub shared: Option<&'static Unit>,
    /// What was typed could also mean something else: ask.
    pub ambiguous: Option<Ambiguous>,
}

impl Reading {
    /// A reading without error.
    #[must_use]
    pub const fn exact(value: f64, unit: &'static Unit) -> Self {
        Self {
            value,
            plus: 0.0,
            minus: 0.0,
            stated: Stated::Exact,
            unit,
            bare: false,
            mark: None,
            shared: None,
            ambiguous: None,
        }
    }
}

/// Two ways to understand one entry. The reading holds the first; the page asks.
#[derive(Debug, Clone, PartialEq)]
pub struct Ambiguous {
    /// What is in doubt.
    pub doubt: Doubt,
    /// The value in SI as understood.
    pub understood: f64,
    /// The value in SI that the other way of reading gives.
    pub otherwise: f64,
}

/// What in an entry can be read in two ways.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Doubt {
    /// `1,250` or `1.250`: a decimal mark or a thousands mark. Settled by `Ask::mark`.
    Mark {
        /// The decimal mark that gives the value as understood.
        understood: Mark,
        /// The decimal mark that gives the other value.
        otherwise: Mark,
    },
    /// A unit name that two countries fill differently: `gal`, `pt`, `fl oz`, `cwt`, `ton`; or a bare `5/16` in a field
    /// for millimetres.
    Unit {
        /// The unit that was taken.
        understood: &'static Unit,
        /// The unit that it could also be.
        otherwise: &'static Unit,
    },
}

/// What a field is measured with, for the usual error when no ± was typed.
///
/// The figures for tape, rule, trammel, centre punch, caliper and micrometer are common practice in the trade, as is
/// every other figure here; a typed ± always wins over them.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Tool {
    /// Tape measure: 1 mm.
    Tape,
    /// Steel rule: 0.5 mm.
    Rule,
    /// Trammel: 0.3 mm.
    Trammel,
    /// Centre punch: 0.3 mm.
    CentrePunch,
    /// Caliper: 0.05 mm.
    Caliper,
    /// Micrometer: 0.01 mm.
    Micrometer,
    /// Dial gauge: 0.02 mm.
    DialGauge,
    /// Feeler gauge: 0.02 mm.
    FeelerGauge,
    /// Film gauge for paint: 5 %.
    FilmGauge,
    /// Protractor or angle gauge: 0.5°.
    Protractor,
    /// Workshop scale: 1 %.
    Scale,
    /// Weighbridge or axle pads: 20 kg.
    Weighbridge,
    /// Pressure gauge: 3 %.
    PressureGauge,
    /// Measuring jug: 2 %.
    Jug,
    /// Stopwatch in the hand: 0.3 s.
    Stopwatch,
    /// Thermometer: 1 °C.
    Thermometer,
    /// Rev counter or speedometer: 3 %.
    Dial,
    /// A maker's data sheet: 5 %.
    DataSheet,
    /// A guess by eye: 20 %.
    Guess,
    /// Any other tool, by its usual error in SI units.
    Within(f64),
    /// Any other tool, by its usual error as a share of the value: 0.05 is 5 %.
    Share(f64),
}

impl Tool {
    /// The usual error at 95 % of this tool when it reads `value`, both in SI base units.
    #[must_use]
    pub fn usual_error(self, value: f64) -> f64 {
        self.error_at(value).abs()
    }

    fn error_at(self, value: f64) -> f64 {
        match self {
            Self::Tape => 0.001,
            Self::Rule => 0.0005,
            Self::Trammel | Self::CentrePunch => 0.0003,
            Self::Caliper => 0.00005,
            Self::Micrometer => 0.00001,
            Self::DialGauge | Self::FeelerGauge => 0.00002,
            Self::Protractor => 0.5 * unit::DEGREE.factor,
            Self::Weighbridge => 20.0,
            Self::Stopwatch => 0.3,
            Self::Thermometer => 1.0,
            Self::Scale => 0.01 * value,
            Self::Jug => 0.02 * value,
            Self::PressureGauge | Self::Dial => 0.03 * value,
            Self::FilmGauge | Self::DataSheet => 0.05 * value,
            Self::Guess => 0.20 * value,
            Self::Within(error) => error,
            Self::Share(share) => share * value,
        }
    }

    /// Whether the usual error grows with the value.
    #[must_use]
    pub fn is_relative(self) -> bool {
        self.error_at(1.0) != self.error_at(2.0)
    }
}
