//! Property classes and grades of bolts.

use measure::{Held, Length, Source, Stress, unit};

static ISO_898_1: Source = Source {
    title: "ISO 898-1, Mechanical properties of fasteners",
    place: "Table 3",
    held: Held::Seen,
};
static SAE_J429: Source = Source {
    title: "SAE J429, Mechanical requirements for externally threaded fasteners",
    place: "Table 1",
    held: Held::Seen,
};
static BS_1768: Source = Source {
    title: "BS 1768 and BS 1083, letter grades of old British bolts",
    place: "tensile strength in tons per square inch",
    held: Held::Memory,
};

/// A class or grade: minimum strengths in megapascals for a band of diameters.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Grade {
    /// As the head says it: `8.8`, `grade 5`, `R`.
    pub name: &'static str,
    /// Above this diameter, millimetres.
    above: f64,
    /// Up to this diameter, millimetres.
    up_to: f64,
    tensile: f64,
    yielding: f64,
    proof: f64,
    /// Where it is published.
    pub source: &'static Source,
}

impl Grade {
    /// The minimum tensile strength.
    #[must_use]
    pub fn tensile(&self) -> Stress {
        Stress::of(self.tensile, &unit::MEGAPASCAL)
            .called("Rm")
            .cited(self.source)
    }

    /// The minimum yield strength, or the 0.2 % proof strength.
    #[must_use]
    pub fn yielding(&self) -> Stress {
        Stress::of(self.yielding, &unit::MEGAPASCAL)
            .called("Rp")
            .cited(self.source)
    }

    /// The stress under proof load.
    #[must_use]
    pub fn proof(&self) -> Stress {
        Stress::of(self.proof, &unit::MEGAPASCAL)
            .called("Sp")
            .cited(self.source)
    }
}

const KSI: f64 = 6.894_757_293_168_361;
const TSI: f64 = 15.444_256_336_697_13;

macro_rules! grade {
    ($name:literal ($above:literal, $up_to:expr) $tensile:literal $yield:literal $proof:literal $source:ident $scale:expr) => {
        Grade {
            name: $name,
            above: $above,
            up_to: $up_to,
            tensile: $tensile * $scale,
            yielding: $yield * $scale,
            proof: $proof * $scale,
            source: &$source,
        }
    };
}

static GRADES: &[Grade] = &[
    grade!("4.6" (0.0, 39.0) 400.0 240.0 225.0 ISO_898_1 1.0),
    grade!("4.8" (0.0, 39.0) 420.0 340.0 310.0 ISO_898_1 1.0),
    grade!("5.8" (0.0, 39.0) 520.0 420.0 380.0 ISO_898_1 1.0),
    grade!("8.8" (0.0, 16.0) 800.0 640.0 580.0 ISO_898_1 1.0),
    grade!("8.8" (16.0, 39.0) 830.0 660.0 600.0 ISO_898_1 1.0),
    grade!("9.8" (0.0, 16.0) 900.0 720.0 650.0 ISO_898_1 1.0),
    grade!("10.9" (0.0, 39.0) 1040.0 940.0 830.0 ISO_898_1 1.0),
    grade!("12.9" (0.0, 39.0) 1220.0 1100.0 970.0 ISO_898_1 1.0),
    grade!("grade 1" (0.0, 38.1) 60.0 36.0 33.0 SAE_J429 KSI),
    grade!("grade 2" (0.0, 19.05) 74.0 57.0 55.0 SAE_J429 KSI),
    grade!("grade 2" (19.05, 38.1) 60.0 36.0 33.0 SAE_J429 KSI),
    grade!("grade 4" (0.0, 38.1) 115.0 100.0 65.0 SAE_J429 KSI),
    grade!("grade 5" (0.0, 25.4) 120.0 92.0 85.0 SAE_J429 KSI),
    grade!("grade 5" (25.4, 38.1) 105.0 81.0 74.0 SAE_J429 KSI),
    grade!("grade 7" (0.0, 38.1) 133.0 115.0 105.0 SAE_J429 KSI),
    grade!("grade 8" (0.0, 38.1) 150.0 130.0 120.0 SAE_J429 KSI),
    // Yield and proof of the letter grades are taken as 0.8 and 0.7 of the tensile strength: from memory, not a standard's figures.
    grade!("R" (0.0, 38.1) 45.0 36.0 31.5 BS_1768 TSI),
    grade!("S" (0.0, 38.1) 50.0 40.0 35.0 BS_1768 TSI),
    grade!("T" (0.0, 38.1) 55.0 44.0 38.5 BS_1768 TSI),
    grade!("V" (0.0, 38.1) 65.0 52.0 45.5 BS_1768 TSI),
    grade!("X" (0.0, 38.1) 75.0 60.0 52.5 BS_1768 TSI),
];

/// Every class and grade, a row a band of diameters.
#[must_use]
pub fn grades() -> &'static [Grade] {
    GRADES
}

/// The class or grade of a bolt by its name and diameter, with or without the word before it (`8,8`, `class 8.8`, `SAE 5`, `grade R`);
/// none where it is unknown or not made so large.
#[must_use]
pub fn grade(name: &str, major: &Length) -> Option<&'static Grade> {
    let wanted = plain(name);
    let diameter = major.in_unit(&unit::MILLIMETRE);
    GRADES.iter().find(|grade| {
        plain(grade.name) == wanted && diameter > grade.above && diameter <= grade.up_to + 1e-9
    })
}

fn plain(name: &str) -> String {
    let mut plain = measure::small_letters(name)
        .replace(' ', "")
        .replace(',', ".");
    for word in ["sae", "class", "grade"] {
        plain = plain.replace(word, "");
    }
    plain
}
