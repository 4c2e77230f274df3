//! Where the formulas and figures of leaf springs come from.

use measure::{Held, Source};

/// The handbook rate of a laminated spring.
pub static HANDBOOK_RATE: Source = Source {
    title: "SAE HS-788, Manual on Design and Application of Leaf Springs (form 32 E ΣI SF / L³)",
    place: "chapter on rate, the form as quoted at ck5.com, thread 228559; the stiffening factor 1.1 for thinned ends as \
            used by Arora, Bhushan and Aggarwal, ISRN 2014, 762561, table 3",
    held: Held::Seen,
};

/// The handbook rate when the seat is not half-way: elementary beam theory.
pub static BEAM_THEORY: Source = Source {
    title: "Beam theory: cantilevers of constant stress on a seat that may turn",
    place: "superposition of the two halves",
    held: Held::Computed,
};

/// Stress of a leaf that shares the curve of all the others.
pub static SHARED_CURVE: Source = Source {
    title: "Beam theory: stress = E t Δκ / 2, with the moment shared as the second moments",
    place: "equals 3 F S / (2 n b t²) for equal leaves",
    held: Held::Computed,
};

/// Stress locked in when leaves of different curve are bolted together.
pub static NIP_STRESS: Source = Source {
    title: "SAE HS-788, Manual on Design and Application of Leaf Springs",
    place: "assembly stress: leaves of curve κ drawn to the common curve Σ(I κ) / ΣI",
    held: Held::Memory,
};

/// Full-length leaves beside graduated ones.
pub static FULL_LENGTH_LEAVES: Source = Source {
    title: "V. B. Bhandari, Design of Machine Elements",
    place: "examples 10.24 and 10.25 (deflection 12 P L³ / (E b t³ (3 nf + 2 ng)); equal-stress nip 2 P L³ / (E n b t³))",
    held: Held::Seen,
};

/// The leaf-by-leaf beam.
pub static TOUCHING_LEAVES: Source = Source {
    title: "Beam theory: cantilevers touching at the tip of the shorter leaf, pushing but not pulling",
    place: "compared with a finite element frame (PyNiteFEA) in the reference checks",
    held: Held::Computed,
};

/// Seat under a solid clamp or a band: its whole width does not bend.
pub static BAND_RULE: Source = Source {
    title: "Machine design lecture notes (effective length of laminated springs)",
    place: "span less the width of the band; with U-bolts, span less two thirds of their spacing",
    held: Held::Seen,
};

/// Arcs, chords and triangles.
pub static GEOMETRY: Source = Source {
    title: "Plane geometry",
    place: "arc, chord and triangle of three sides",
    held: Held::Computed,
};

/// A mass on a spring.
pub static VIBRATION: Source = Source {
    title: "T. Bevan, The Theory of Machines",
    place: "chapter 15, example 4: f = √(k / m) / 2π",
    held: Held::Seen,
};

/// The acceleration that turns a mass into a load.
pub static STANDARD_GRAVITY: Source = Source {
    title: "ISO 80000-3, standard acceleration of free fall 9.806 65 m/s²",
    place: "exact by definition",
    held: Held::Memory,
};

/// Straight lines through measured points.
pub static LEAST_SQUARES: Source = Source {
    title: "Ordinary least squares: one slope, one line for load going up and one for load coming off",
    place: "compared with NumPy in the reference checks",
    held: Held::Computed,
};

/// Figures every spring shop uses and nobody signs for.
pub static COMMON_PRACTICE: Source = Source {
    title: "Common practice of the trade, no source",
    place: "",
    held: Held::CommonPractice,
};

/// Stiffening factor of square-ended leaves.
pub static SQUARE_ENDS: Source = Source {
    title: "SAE HS-788, Manual on Design and Application of Leaf Springs",
    place: "stiffening factor of leaves with square ends; a beam of six leaves stepped evenly gives 1.14",
    held: Held::Memory,
};

/// Stiffening factor of thinned leaves.
pub static THINNED_ENDS: Source = Source {
    title: "V. K. Arora, G. Bhushan, M. L. Aggarwal, Effect of Assembly Stresses on Fatigue Life of Symmetrical \
            65Si7 Leaf Springs, ISRN 2014, 762561",
    place: "table 3: twelve leaves, two of them full length, stiffening factor 1.1",
    held: Held::Seen,
};

/// Stiffening factor when every leaf runs the whole length.
pub static ALL_FULL_LENGTH: Source = Source {
    title: "Beam theory: leaves of one length are one beam, 48 E ΣI / L³",
    place: "ratio of the uniform to the triangular beam: 48 / 32",
    held: Held::Computed,
};
