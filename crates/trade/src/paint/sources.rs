//! Where the formulas and figures of this subject come from.

use measure::{Held, Source};

/// Plane and solid geometry.
pub(super) static GEOMETRY: Source = Source {
    title: "Elementary mensuration",
    place: "areas of plane figures and of surfaces that unroll flat",
    held: Held::Computed,
};

/// The box that stands for a body.
pub(super) static BODY_BOX: Source = Source {
    title: "Common practice of paint shops",
    place: "sides, ends and roof of the enclosing box, times the share that is sheet metal",
    held: Held::CommonPractice,
};

/// Volume solids, film and spreading rate.
pub(super) static SPREADING: Source = Source {
    title: "Coating maker's guide to theoretical spreading rate (scribd 343849341) and coverage table (scribd 290710110)",
    place: "10 x volume solids in % / dry film in micrometres, in square metres a litre",
    held: Held::Seen,
};

/// Wet film from dry.
pub(super) static WET_FILM: Source = Source {
    title: "R. Joseph, Converting dry film thickness to wet film thickness, paintcenter.org",
    place: "October 2003",
    held: Held::Seen,
};

/// Solids after thinning.
pub(super) static THINNED: Source = Source {
    title: "Volume solids of a coating, strandsindustrialcoatings.com",
    place: "worked example of a thinned coating",
    held: Held::Seen,
};

/// What reaches the panel.
pub(super) static TRANSFER: Source = Source {
    title: "R. Joseph, Transfer efficiency, finishing.com library",
    place: "solids on the part / solids used",
    held: Held::Seen,
};

/// Parts to litres to grams.
pub(super) static MIXING: Source = Source {
    title: "Conservation of mass and volume",
    place: "parts, densities; liquids taken to keep their volumes when mixed",
    held: Held::Computed,
};

/// Cup, hose, reserve.
pub(super) static ALLOWANCES: Source = Source {
    title: "Common practice of paint shops",
    place: "what stays in cup and hose with each mix, and a reserve",
    held: Held::CommonPractice,
};

/// What solvent content is.
pub(super) static SOLVENT: Source = Source {
    title: "Directive 2004/42/EC; SI 2005/2773 reg. 2",
    place: "VOC content: mass of volatile organic compounds a litre, ready to use",
    held: Held::Seen,
};

/// Solvent content without the water.
pub(super) static SOLVENT_LESS_WATER: Source = Source {
    title: "40 CFR 59.104(a)(1); Directive 2004/42/EC, Annex II",
    place: "water left out of the volume (terms seen; the fraction from memory)",
    held: Held::Memory,
};

/// Pot life against temperature.
pub(super) static POT_LIFE: Source = Source {
    title: "UFGS 09 97 00.27, pot life; firwood.co.uk, Pot life of 2 pack paints",
    place: "about half for each 10 °C warmer, double for each 10 °C colder",
    held: Held::Seen,
};

/// Drying against temperature, taken like the pot life.
pub(super) static DRYING: Source = Source {
    title: "Common practice: drying taken to follow temperature as pot life does",
    place: "the maker's table for the temperature comes first",
    held: Held::CommonPractice,
};

/// Dew point.
pub(super) static MAGNUS: Source = Source {
    title: "Magnus formula over water, constants of D. Sonntag (1990), also WMO-No. 8",
    place: "17.62 and 243.12 °C, for -45 to 60 °C",
    held: Held::Memory,
};

/// How far above the dew point.
pub(super) static DEW_MARGIN: Source = Source {
    title: "ISO 8502-4; manual.ingal.com.au, chapter 13, Dewpoint tables",
    place: "metal at least 3 °C above the dew point",
    held: Held::Seen,
};

/// Air used and air made.
pub(super) static AIR: Source = Source {
    title: "Conservation of mass at constant temperature",
    place: "free air: volume at the pressure of the room",
    held: Held::Computed,
};
