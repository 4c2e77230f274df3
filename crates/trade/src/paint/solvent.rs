//! Solvent: how much of it a litre of ready paint gives off, beside the published limits, and what else mixing changes.

use measure::{Density, Held, Kind, Ratio, Source};

use super::mix::Shares;
use super::sources::{MIXING, SOLVENT, SOLVENT_LESS_WATER, THINNED};

/// What each component brings into a ready mix.
#[derive(Debug, Clone)]
pub struct ReadyMix<'a> {
    /// The volume shares.
    pub shares: &'a Shares,
    /// Each component's solvent (mass a volume), in the same order.
    pub solvents: &'a [Density],
    /// Each component's water as a share of its volume, in the same order.
    pub waters: &'a [Ratio],
}

/// Solvent in a volume of ready mix.
///
/// `c = Σ φ_i c_i`
///
/// # Units
/// Mass a volume; volume shares as pure numbers.
/// # Source
/// The definition of VOC content in Directive 2004/42/EC, applied to a mix.
/// # Example
/// One gallon at 2.5 lb/gal with a quarter of a gallon at 6.8 lb/gal: 3.36 lb/gal.
#[must_use]
pub fn solvent_content(mix: &ReadyMix<'_>) -> Density {
    let parts: Vec<_> = mix
        .shares
        .each
        .iter()
        .zip(mix.solvents)
        .map(|(share, c)| share * c)
        .collect();
    Density::sum_of(&parts)
        .called("c")
        .of_kind(Kind::Concentration)
        .cited(&SOLVENT)
}

/// Solvent in a volume of ready mix, its water left out of the volume, as the limits count it.
///
/// `c = Σ φ_i c_i / (1 - Σ φ_i w_i)`
///
/// # Units
/// Mass a volume; shares as pure numbers.
/// # Valid range
/// A mix that is not all water.
/// # Source
/// 40 CFR 59.104(a)(1); the directive likewise leaves out water for all but preparatory products.
#[must_use]
pub fn solvent_content_less_water(mix: &ReadyMix<'_>) -> Density {
    let parts: Vec<_> = mix
        .shares
        .each
        .iter()
        .zip(mix.waters)
        .map(|(share, w)| share * w)
        .collect();
    let water = Ratio::sum_of(&parts);
    (solvent_content(mix) / (1.0 - water))
        .called("c_dry")
        .of_kind(Kind::Concentration)
        .cited(&SOLVENT_LESS_WATER)
}

/// What a volume of the ready mix weighs.
///
/// `ρ = Σ φ_i ρ_i`
///
/// # Units
/// Mass a volume; shares as pure numbers.
/// # Source
/// Conservation of mass; volumes are taken to add.
#[must_use]
pub fn mixed_density(shares: &Shares, densities: &[Density]) -> Density {
    let parts: Vec<_> = shares
        .each
        .iter()
        .zip(densities)
        .map(|(share, rho)| share * rho)
        .collect();
    Density::sum_of(&parts)
        .called("ρ")
        .of_kind(Kind::Density)
        .cited(&MIXING)
}

/// Volume solids of the paint as it is sprayed, from its solids before thinning.
///
/// `VS_ready = VS u`, where u is the share of paint and hardener in the mix
///
/// # Units
/// Pure numbers.
/// # Source
/// A worked example of a thinned coating: 60 % with a quart of thinner to the gallon is 48 %.
#[must_use]
pub fn mixed_solids(before_thinning: &Ratio, unthinned: &Ratio) -> Ratio {
    (before_thinning * unthinned)
        .called("VS_ready")
        .of_kind(Kind::Percent)
        .cited(&THINNED)
}

/// A subcategory of Annex II B of Directive 2004/42/EC.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Subcategory {
    /// B a: preparatory.
    Preparatory,
    /// B a: pre-cleaner.
    PreCleaner,
    /// B b: body filler and stopper.
    Stopper,
    /// B c: surfacer, filler and general metal primer.
    Primer,
    /// B c: wash primer.
    WashPrimer,
    /// B d: topcoat, of any kind.
    Topcoat,
    /// B e: special finishes.
    Special,
}

/// One row of the annex.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limit {
    /// What it is a limit for.
    pub subcategory: Subcategory,
    /// The letter it stands under.
    pub letter: &'static str,
    /// Grams of solvent a litre, ready to use.
    pub grams_per_litre: f64,
}

static ANNEX: Source = Source {
    title: "Directive 2004/42/EC, Annex II B; UK table at nibusinessinfo.co.uk",
    place: "phase I, from 1 January 2007; not for vintage or historic vehicles (UK table)",
    held: Held::Seen,
};

const fn limit(subcategory: Subcategory, letter: &'static str, grams_per_litre: f64) -> Limit {
    Limit {
        subcategory,
        letter,
        grams_per_litre,
    }
}

/// The limits of Annex II B. They bind who puts a product on the market, and leave out historic vehicles in places:
/// no verdict follows from them alone.
pub static ANNEX_II_B: [Limit; 7] = [
    limit(Subcategory::Preparatory, "B(a)", 850.0),
    limit(Subcategory::PreCleaner, "B(a)", 200.0),
    limit(Subcategory::Stopper, "B(b)", 250.0),
    limit(Subcategory::Primer, "B(c)", 540.0),
    limit(Subcategory::WashPrimer, "B(c)", 780.0),
    limit(Subcategory::Topcoat, "B(d)", 420.0),
    limit(Subcategory::Special, "B(e)", 840.0),
];

impl Subcategory {
    /// The row of the annex.
    #[must_use]
    pub fn limit(self) -> &'static Limit {
        let row = match self {
            Self::Preparatory => 0,
            Self::PreCleaner => 1,
            Self::Stopper => 2,
            Self::Primer => 3,
            Self::WashPrimer => 4,
            Self::Topcoat => 5,
            Self::Special => 6,
        };
        &ANNEX_II_B[row]
    }

    /// The limit as a quantity.
    #[must_use]
    pub fn limit_content(self) -> Density {
        // Grams a litre are kilograms a cubic metre.
        Density::constant(
            "c_limit",
            self.limit().grams_per_litre,
            Kind::Concentration,
            &ANNEX,
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_subcategory_finds_its_own_row() {
        for row in &ANNEX_II_B {
            assert_eq!(row.subcategory.limit(), row);
        }
    }
}
