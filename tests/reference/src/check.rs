//! One reference check as it stands in a data file.

use std::collections::BTreeMap;

use serde::Deserialize;

/// A data file: a list of `[[check]]` tables and nothing else.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CheckFile {
    /// The checks, in the order of the file.
    pub check: Vec<Check>,
}

/// A value known from outside this project, what it is a value of, and how it is known.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Check {
    /// A short name, unique in its file.
    pub id: String,
    /// What the value is, in words.
    pub what: String,
    /// The name under which the subject's module computes it.
    pub of: String,
    /// What goes in: numbers, texts with a unit, or lists of either.
    #[serde(default)]
    pub inputs: BTreeMap<String, toml::Value>,
    /// The value or values expected, in `unit`.
    pub expected: Option<Expected>,
    /// In place of `expected`: a part of the error that the inputs must be refused with.
    pub refused: Option<String>,
    /// The unit of `expected`; absent for pure numbers.
    pub unit: Option<String>,
    /// The greatest difference that passes, in `unit`.
    pub tolerance: Option<f64>,
    /// Why that tolerance (or, where the inputs must be refused, why).
    pub why: String,
    /// Title, edition, clause or page, and where it was seen.
    pub source: String,
    /// How the value is known.
    pub held: Held,
    /// The reference library and its version, when `held` is `library`.
    pub library: Option<String>,
}

/// One number, or several.
#[derive(Debug, Deserialize)]
#[serde(untagged)]
pub enum Expected {
    /// A single value.
    One(f64),
    /// Values in the order in which they are computed.
    Many(Vec<f64>),
}

impl Expected {
    /// The values as a list.
    #[must_use]
    pub fn values(&self) -> &[f64] {
        match self {
            Self::One(value) => std::slice::from_ref(value),
            Self::Many(values) => values,
        }
    }
}

/// How an expected value is known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
pub enum Held {
    /// Read in the published source.
    #[serde(rename = "seen")]
    Seen,
    /// Calculated by hand, or independently, from the cited formula.
    #[serde(rename = "computed")]
    Computed,
    /// Calculated by a reference library; a script recomputes it on every run.
    #[serde(rename = "library")]
    Library,
    /// Recalled from a source that was not at hand.
    #[serde(rename = "memory")]
    Memory,
    /// A rule of the trade without a published source.
    #[serde(rename = "common practice")]
    CommonPractice,
}

impl Held {
    /// Every kind, in the order of trust.
    pub const ALL: [Self; 5] = [
        Self::Seen,
        Self::Computed,
        Self::Library,
        Self::Memory,
        Self::CommonPractice,
    ];

    /// The word for it in a report.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Seen => "seen",
            Self::Computed => "computed",
            Self::Library => "library",
            Self::Memory => "memory",
            Self::CommonPractice => "practice",
        }
    }
}

impl Check {
    /// What is wrong with the entry itself, before anything is computed.
    ///
    /// # Errors
    /// One sentence naming the first thing missing or contradictory.
    pub fn well_formed(&self) -> Result<(), String> {
        for (name, text) in [
            ("id", &self.id),
            ("what", &self.what),
            ("of", &self.of),
            ("why", &self.why),
            ("source", &self.source),
        ] {
            if text.trim().is_empty() {
                return Err(format!("`{name}` is empty"));
            }
        }
        match (&self.expected, &self.refused, self.tolerance) {
            (Some(_), Some(_), _) => {
                return Err("has both `expected` and `refused`".into());
            }
            (None, None, _) => return Err("has neither `expected` nor `refused`".into()),
            (Some(expected), None, Some(tolerance)) => {
                if expected.values().is_empty() {
                    return Err("`expected` is empty".into());
                }
                if !(tolerance.is_finite() && tolerance >= 0.0) {
                    return Err("`tolerance` is not a number from 0 up".into());
                }
                if expected.values().iter().any(|value| !value.is_finite()) {
                    return Err("`expected` holds something that is not a number".into());
                }
            }
            (Some(_), None, None) => return Err("has no `tolerance`".into()),
            (None, Some(part), _) => {
                if part.trim().is_empty() {
                    return Err("`refused` is empty, so any error would do".into());
                }
            }
        }
        match (self.held, &self.library) {
            (Held::Library, None) => Err("is held by a library but names none".into()),
            (held, Some(_)) if held != Held::Library => {
                Err("names a library but is not held by one".into())
            }
            _ => Ok(()),
        }
    }
}
