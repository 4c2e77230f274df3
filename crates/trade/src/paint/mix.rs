//! Mixing: parts and thinner, by volume or on the scale.

use measure::{Density, Kind, Mass, Ratio, Volume};

use super::sources::MIXING;
use crate::TradeError;

/// Whether a ratio counts volumes or weights.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum By {
    /// By volume: stick, jug, cup marks.
    #[default]
    Volume,
    /// By weight: the scale.
    Weight,
}

/// How much of a component goes into the mix.
#[derive(Debug, Clone)]
pub enum Amount {
    /// So many parts, as in 4 : 1.
    Parts(Ratio),
    /// A share of the paint alone (of the first component).
    OfPaint(Ratio),
    /// A share of paint, hardener and all else that is given in parts.
    OfPaintAndHardener(Ratio),
}

/// One component of a mix.
#[derive(Debug, Clone)]
pub struct Component {
    /// How much of it.
    pub amount: Amount,
    /// What a litre of it weighs.
    pub density: Density,
}

/// The volume shares of a ready mix.
#[derive(Debug, Clone)]
pub struct Shares {
    /// Each component's share of the ready mix by volume, in the order of pouring.
    pub each: Vec<Ratio>,
    /// What is in parts (paint and hardener, not thinner) as a share of the ready mix by volume.
    pub unthinned: Ratio,
}

impl Shares {
    /// The volume shares of a mix of any number of parts, and of thinner as a share of the paint or of paint and
    /// hardener.
    ///
    /// By volume a component's volume is its parts; by weight it is parts / density. A share is taken of the volume or
    /// of the weight of what it is a share of. `φ_i = v_i / Σ v`
    ///
    /// # Units
    /// Pure numbers and densities.
    /// # Valid range
    /// The first component is the paint and is given in parts.
    /// # Errors
    /// [`TradeError::TooFew`] without components, [`TradeError::OutOfRange`] where the first is not in parts or the
    /// whole comes to nothing.
    /// # Source
    /// Conservation of mass; volumes are taken to add.
    pub fn of(mix: &[Component], parts_by: By, thinner_by: By) -> Result<Self, TradeError> {
        let first = mix.first().ok_or(TradeError::TooFew {
            entry: "parts",
            least: 1,
        })?;
        let in_parts: Vec<_> = mix
            .iter()
            .map(|component| volume_in_parts(component, parts_by))
            .collect();
        let Some(paint) = &in_parts[0] else {
            return Err(TradeError::OutOfRange {
                entry: "parts",
                lowest: 0.0,
                highest: 1e4,
            });
        };
        let unthinned = Ratio::sum_of(in_parts.iter().flatten());
        if paint.value() <= 0.0 {
            return Err(TradeError::OutOfRange {
                entry: "parts",
                lowest: 0.0,
                highest: 1e4,
            });
        }
        // Weights of what stands in parts, a litre a part, in units of the first component's density.
        let weight = |i: usize| {
            let volume = in_parts[i].as_ref()?;
            Some(volume * (&mix[i].density / &first.density))
        };
        let weights: Vec<_> = (0..mix.len()).filter_map(weight).collect();
        let base_weight = Ratio::sum_of(&weights);
        let volumes: Vec<Ratio> = mix
            .iter()
            .zip(&in_parts)
            .map(|(component, volume)| {
                let (share, base_volume, base_weight) = match (&component.amount, volume) {
                    (_, Some(volume)) => return volume.clone(),
                    (Amount::OfPaint(share), _) => (share, paint, &weights[0]),
                    (Amount::OfPaintAndHardener(share) | Amount::Parts(share), _) => {
                        (share, &unthinned, &base_weight)
                    }
                };
                match thinner_by {
                    By::Volume => share * base_volume,
                    By::Weight => share * base_weight * (&first.density / &component.density),
                }
            })
            .collect();
        let whole = Ratio::sum_of(&volumes);
        let share = |part: &Ratio| {
            (part / &whole)
                .called("φ")
                .of_kind(Kind::Percent)
                .cited(&MIXING)
        };
        Ok(Self {
            each: volumes.iter().map(share).collect(),
            unthinned: share(&unthinned).called("u"),
        })
    }
}

/// A component's volume where it is given in parts.
fn volume_in_parts(component: &Component, by: By) -> Option<Ratio> {
    let Amount::Parts(parts) = &component.amount else {
        return None;
    };
    Some(match by {
        By::Volume => parts.clone(),
        // Only the proportions count, so the litre's weight of water serves as the unit.
        By::Weight => parts / (&component.density / Density::exact(1000.0)),
    })
}

/// One pour: how much of a component, and what the scale shows then.
#[derive(Debug, Clone)]
pub struct ScaleStep {
    /// The component's volume.
    pub volume: Volume,
    /// The component's weight.
    pub mass: Mass,
    /// What the scale shows once it is in, zeroed on the empty cup.
    pub scale: Mass,
}

/// The pours of a mix, in order.
///
/// `V_i = φ_i V`, `m_i = V_i ρ_i`, the scale showing `m_1 + ... + m_i`
///
/// # Units
/// Volumes, densities, masses.
/// # Source
/// Conservation of mass.
#[must_use]
pub fn scale_steps(mix: &[Component], shares: &Shares, volume: &Volume) -> Vec<ScaleStep> {
    let mut poured: Vec<Mass> = Vec::new();
    mix.iter()
        .zip(&shares.each)
        .map(|(component, share)| {
            let volume = (share * volume)
                .called("V_i")
                .of_kind(Kind::Volume)
                .cited(&MIXING);
            let mass = (&volume * &component.density)
                .called("m_i")
                .of_kind(Kind::SmallMass);
            poured.push(mass.clone());
            let scale = Mass::sum_of(&poured)
                .called("m_scale")
                .of_kind(Kind::SmallMass)
                .cited(&MIXING);
            ScaleStep {
                volume,
                mass,
                scale,
            }
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn part(amount: Amount, kg_per_litre: f64) -> Component {
        Component {
            amount,
            density: Density::exact(kg_per_litre * 1000.0),
        }
    }

    fn parts(number: f64, kg_per_litre: f64) -> Component {
        part(Amount::Parts(Ratio::exact(number)), kg_per_litre)
    }

    fn values(shares: &Shares) -> Vec<f64> {
        shares.each.iter().map(Ratio::value).collect()
    }

    #[test]
    fn four_to_one_to_one_by_volume_is_in_sixths() {
        let mix = [parts(4.0, 1.2), parts(1.0, 1.1), parts(1.0, 0.9)];
        let shares = Shares::of(&mix, By::Volume, By::Volume).unwrap();
        for (share, sixths) in values(&shares).iter().zip([4.0, 1.0, 1.0]) {
            assert!((share - sixths / 6.0).abs() < 1e-12);
        }
    }

    #[test]
    fn thinner_of_the_paint_alone_is_less_than_of_paint_and_hardener() {
        let tenth = Ratio::exact(0.1);
        let with = |amount| [parts(2.0, 1.2), parts(1.0, 1.0), part(amount, 0.9)];
        let share = |amount| values(&Shares::of(&with(amount), By::Volume, By::Volume).unwrap())[2];
        assert!((share(Amount::OfPaint(tenth.clone())) - 0.2 / 3.2).abs() < 1e-12);
        assert!((share(Amount::OfPaintAndHardener(tenth)) - 0.3 / 3.3).abs() < 1e-12);
    }

    #[test]
    fn parts_by_weight_weigh_as_their_parts() {
        let mix = [
            parts(100.0, 1.25),
            parts(40.0, 1.02),
            part(Amount::OfPaint(Ratio::exact(0.2)), 0.87),
        ];
        let shares = Shares::of(&mix, By::Weight, By::Weight).unwrap();
        let steps = scale_steps(&mix, &shares, &Volume::exact(0.001));
        let mass: Vec<_> = steps.iter().map(|step| step.mass.value()).collect();
        assert!((mass[1] / mass[0] - 0.4).abs() < 1e-12);
        assert!((mass[2] / mass[0] - 0.2).abs() < 1e-12);
        let litres: f64 = steps.iter().map(|step| step.volume.value()).sum();
        assert!((litres - 0.001).abs() < 1e-15);
    }

    #[test]
    fn a_mix_must_begin_with_paint_in_parts() {
        let mix = [part(Amount::OfPaint(Ratio::exact(0.1)), 0.9)];
        assert!(Shares::of(&mix, By::Volume, By::Volume).is_err());
        assert!(Shares::of(&[], By::Volume, By::Volume).is_err());
    }
}
