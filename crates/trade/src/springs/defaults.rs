//! What a spring shop assumes until it is told otherwise. Every figure is an assumption that the sheet shows.

use measure::{Held, Source};

use super::source;

/// A figure of the trade with where it comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Assumed {
    /// As one would type it.
    pub text: &'static str,
    /// Where it comes from.
    pub source: &'static Source,
}

/// Young's modulus of spring steel.
pub const MODULUS: Assumed = Assumed {
    text: "200 GPa",
    source: &source::HANDBOOK_RATE,
};

/// Friction between the leaves as a share of the load, greased and clean.
pub const FRICTION_GREASED: Assumed = Assumed {
    text: "5 %",
    source: &source::COMMON_PRACTICE,
};

/// Friction between the leaves as a share of the load, dry or rusty.
pub const FRICTION_DRY: Assumed = Assumed {
    text: "12 %",
    source: &source::COMMON_PRACTICE,
};

/// How far a re-arched or new spring settles in its first miles.
pub const SETTLING: Assumed = Assumed {
    text: "5 ± 5 mm",
    source: &source::COMMON_PRACTICE,
};

/// A spring steel, hardened and tempered.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Steel {
    /// The name of the choice.
    pub id: &'static str,
    /// 0.2 % proof stress, N/mm².
    pub proof_n_per_mm2: f64,
    /// Stress allowed under the standing load and at full bump, as one would type them: half and nine tenths of the
    /// proof stress, common practice.
    pub allowed: (&'static str, &'static str),
    /// Where the figure comes from.
    pub source: &'static Source,
}

/// The steels that leaves were and are made of, the oldest first.
pub static STEELS: [Steel; 4] = [
    Steel {
        id: "carbon",
        proof_n_per_mm2: 900.0,
        allowed: ("450 N/mm²", "810 N/mm²"),
        source: &CARBON,
    },
    Steel {
        id: "silicon_manganese",
        proof_n_per_mm2: 1100.0,
        allowed: ("550 N/mm²", "990 N/mm²"),
        source: &SILICON_MANGANESE,
    },
    Steel {
        id: "chrome_vanadium",
        proof_n_per_mm2: 1080.0,
        allowed: ("540 N/mm²", "972 N/mm²"),
        source: &CHROME_VANADIUM,
    },
    Steel {
        id: "chrome_molybdenum",
        proof_n_per_mm2: 1200.0,
        allowed: ("600 N/mm²", "1080 N/mm²"),
        source: &CHROME_MOLYBDENUM,
    },
];

/// The names of the steels, for a choice.
pub const STEEL_IDS: &[&str] = &[
    "carbon",
    "silicon_manganese",
    "chrome_vanadium",
    "chrome_molybdenum",
];

/// The steel with this name.
#[must_use]
pub fn steel(id: &str) -> Option<&'static Steel> {
    STEELS.iter().find(|steel| steel.id == id)
}

static CARBON: Source = Source {
    title: "Plain carbon spring steel of about 0.75 % carbon, oil hardened",
    place: "proof stress about 900 N/mm²",
    held: Held::Memory,
};
static SILICON_MANGANESE: Source = Source {
    title: "Silicon-manganese spring steel (55Si7 and its like), EN 10089",
    place: "proof stress about 1100 N/mm²",
    held: Held::Memory,
};
static CHROME_VANADIUM: Source = Source {
    title: "Chrome-vanadium spring steel 51CrV4 (50HF), mill page at moris.eu",
    place: "proof stress at least 1080 N/mm²",
    held: Held::Seen,
};
static CHROME_MOLYBDENUM: Source = Source {
    title: "52CrMoV4, mill data sheet for flats of 16 mm",
    place: "proof stress at least 1200 N/mm²",
    held: Held::Seen,
};
