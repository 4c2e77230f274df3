//! Kinds of layer, and what the trade assumes of them until the data sheet is at hand.

use measure::{Held, Source};

use super::solvent::Subcategory;

/// What a layer is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LayerKind {
    /// Etch (wash) primer.
    Etch,
    /// Epoxy primer.
    Epoxy,
    /// Filler primer, sanded flat.
    FillerPrimer,
    /// Colour that wants a clear coat over it.
    Base,
    /// Clear coat.
    Clear,
    /// Colour and gloss in one, with hardener.
    SingleStage,
    /// Cellulose.
    Cellulose,
}

/// What the trade assumes of a kind of layer: texts as a user would type them, each with its ±.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Defaults {
    /// Coats.
    pub coats: &'static str,
    /// Volume solids of the paint as it is sprayed.
    pub solids: &'static str,
    /// Dry film of one coat, in micrometres.
    pub film: &'static str,
    /// The least dry film of the whole layer, in micrometres.
    pub film_least: &'static str,
    /// The most dry film of the whole layer, in micrometres.
    pub film_most: &'static str,
    /// Pot life at 20 °C in minutes; nothing for paint without hardener.
    pub pot_life: Option<&'static str>,
    /// The wait between coats at 20 °C, in minutes.
    pub wait: &'static str,
    /// The wait before the next layer at 20 °C, in minutes.
    pub earliest_over: &'static str,
    /// Solvent in the paint as it is sprayed, in grams a litre.
    pub solvent: &'static str,
    /// Which limit of Annex II B stands beside it.
    pub subcategory: Subcategory,
}

/// Where the defaults come from.
pub static COMMON_PRACTICE: Source = Source {
    title: "Common practice of paint shops; the data sheet wins",
    place: "usual solids, films, waits and bands by kind of layer",
    held: Held::CommonPractice,
};

const ETCH: Defaults = Defaults {
    coats: "1",
    solids: "12 ± 3",
    film: "9 ± 3",
    film_least: "8",
    film_most: "12",
    pot_life: None,
    wait: "10 ± 5",
    earliest_over: "30 ± 10",
    solvent: "750 ± 50",
    subcategory: Subcategory::WashPrimer,
};

const EPOXY: Defaults = Defaults {
    coats: "2",
    solids: "45 ± 5",
    film: "28 ± 5",
    film_least: "40",
    film_most: "60",
    pot_life: Some("240 ± 60"),
    wait: "20 ± 10",
    earliest_over: "60 ± 20",
    solvent: "500 ± 50",
    subcategory: Subcategory::Primer,
};

const FILLER: Defaults = Defaults {
    coats: "2",
    solids: "48 ± 5",
    film: "50 ± 10",
    film_least: "75",
    film_most: "150",
    pot_life: Some("60 ± 15"),
    wait: "10 ± 5",
    earliest_over: "180 ± 60",
    solvent: "500 ± 50",
    subcategory: Subcategory::Primer,
};

const BASE: Defaults = Defaults {
    coats: "3",
    solids: "15 ± 3",
    film: "10 ± 3",
    film_least: "15",
    film_most: "30",
    pot_life: None,
    wait: "10 ± 5",
    earliest_over: "20 ± 5",
    solvent: "750 ± 50",
    subcategory: Subcategory::Topcoat,
};

const CLEAR: Defaults = Defaults {
    coats: "2",
    solids: "45 ± 5",
    film: "28 ± 5",
    film_least: "50",
    film_most: "64",
    pot_life: Some("120 ± 30"),
    wait: "10 ± 5",
    earliest_over: "720 ± 240",
    solvent: "480 ± 50",
    subcategory: Subcategory::Topcoat,
};

const SINGLE: Defaults = Defaults {
    coats: "3",
    film_most: "100",
    ..CLEAR
};

const CELLULOSE: Defaults = Defaults {
    coats: "4",
    solids: "17 ± 3",
    film: "10 ± 3",
    film_least: "40",
    film_most: "75",
    pot_life: None,
    wait: "10 ± 5",
    earliest_over: "60 ± 20",
    solvent: "750 ± 50",
    subcategory: Subcategory::Topcoat,
};

impl LayerKind {
    /// Every kind, in the order in which they go on.
    pub const ALL: [Self; 7] = [
        Self::Etch,
        Self::Epoxy,
        Self::FillerPrimer,
        Self::Base,
        Self::Clear,
        Self::SingleStage,
        Self::Cellulose,
    ];

    /// The word that an entry holds for it.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Etch => "etch",
            Self::Epoxy => "epoxy",
            Self::FillerPrimer => "filler",
            Self::Base => "base",
            Self::Clear => "clear",
            Self::SingleStage => "single",
            Self::Cellulose => "cellulose",
        }
    }

    /// The kind that a word stands for.
    #[must_use]
    pub fn from_word(word: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|kind| kind.word() == word)
    }

    /// What the trade assumes of it.
    #[must_use]
    pub fn defaults(self) -> &'static Defaults {
        match self {
            Self::Etch => &ETCH,
            Self::Epoxy => &EPOXY,
            Self::FillerPrimer => &FILLER,
            Self::Base => &BASE,
            Self::Clear => &CLEAR,
            Self::SingleStage => &SINGLE,
            Self::Cellulose => &CELLULOSE,
        }
    }

    /// Whether its usual sort is mixed with a hardener, and so brings the danger that goes with one.
    #[must_use]
    pub fn takes_hardener(self) -> bool {
        self.defaults().pot_life.is_some()
    }
}

/// What the paint is sprayed with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Gun {
    /// A conventional gun at high pressure.
    Conventional,
    /// High volume, low pressure, on panels.
    LowPressure,
    /// High volume, low pressure, on small parts.
    LowPressureSmall,
}

impl Gun {
    /// Every gun.
    pub const ALL: [Self; 3] = [
        Self::Conventional,
        Self::LowPressure,
        Self::LowPressureSmall,
    ];

    /// The word that an entry holds for it.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Conventional => "conventional",
            Self::LowPressure => "low_pressure",
            Self::LowPressureSmall => "low_pressure_small",
        }
    }

    /// The gun that a word stands for.
    #[must_use]
    pub fn from_word(word: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|gun| gun.word() == word)
    }

    /// The share of the paint that reaches the panel, in per cent, as the trade assumes it: common practice, within what
    /// R. Joseph (paintcenter.org, April 2009) saw measured: 60 to 70 on large surfaces, 20 to 50 on small ones.
    #[must_use]
    pub fn transfer(self) -> &'static str {
        match self {
            Self::Conventional => "35 ± 10",
            Self::LowPressure => "60 ± 10",
            Self::LowPressureSmall => "40 ± 10",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_is_found_by_its_word() {
        for kind in LayerKind::ALL {
            assert_eq!(LayerKind::from_word(kind.word()), Some(kind));
        }
        assert_eq!(LayerKind::from_word("gilding"), None);
        for gun in Gun::ALL {
            assert_eq!(Gun::from_word(gun.word()), Some(gun));
        }
    }
}
