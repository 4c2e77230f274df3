//! The handbook method: one rate for the whole pack, with a factor for how its leaves end.

use measure::{Force, Kind, Length, Ratio, SecondMoment, SpringRate, Stress};

use super::leaf::{Leaf, LeafKind, Pack};
use super::source;
use crate::TradeError;

/// How the tips of the leaves are cut, which says how far the pack is from a spring of even stress.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LeafEnds {
    /// Rolled thinner towards the tip, or cut to a point.
    Thinned,
    /// Cut off square at full thickness.
    Square,
    /// By the number of full-length leaves, as textbooks do.
    Counted,
}

impl LeafEnds {
    /// The names of the choices.
    pub const IDS: &'static [&'static str] = &["thinned", "square", "counted"];

    /// The choice with this name.
    #[must_use]
    pub fn named(id: &str) -> Option<Self> {
        Some(match id {
            "thinned" => Self::Thinned,
            "square" => Self::Square,
            "counted" => Self::Counted,
            _ => return None,
        })
    }
}

/// Stiffening factor: how much stiffer the pack is than the triangular beam of even stress.
///
/// SF = 1.10 thinned ends, 1.15 square ends, (2 ng + 3 nf) / 2 n counted, 1.50 when every leaf is full length
/// (ng graduated leaves and the main leaf, nf further full-length leaves)
///
/// # Units
/// None.
/// # Valid range
/// Packs whose leaf lengths step down evenly.
/// # Errors
/// None.
/// # Source
/// SAE HS-788; ISRN 2014, 762561, table 3; Bhandari, example 10.25.
/// # Example
/// Two further full-length leaves and ten graduated: (20 + 6) / 24 = 1.083.
#[must_use]
pub fn stiffening_factor(pack: &Pack, ends: LeafEnds) -> Ratio {
    if pack.all_full_length() {
        return Ratio::constant("SF", 1.5, Kind::Ratio, &source::ALL_FULL_LENGTH);
    }
    match ends {
        LeafEnds::Thinned => Ratio::constant("SF", 1.10, Kind::Ratio, &source::THINNED_ENDS),
        LeafEnds::Square => Ratio::constant("SF", 1.15, Kind::Ratio, &source::SQUARE_ENDS),
        LeafEnds::Counted => {
            let leaves = pack.carrying().count();
            let full = pack
                .carrying()
                .filter(|leaf| leaf.kind.is_full_length() && leaf.kind != LeafKind::Main)
                .count();
            let [n, nf] = [leaves, full].map(|count| Ratio::exact(small(count)));
            let ng = &n - &nf;
            ((ng * 2.0 + nf * 3.0) / (n * 2.0))
                .cited(&source::FULL_LENGTH_LEAVES)
                .called("SF")
        }
    }
}

/// A count of leaves as a number.
fn small(count: usize) -> f64 {
    u16::try_from(count).map_or(f64::NAN, f64::from)
}

/// Rate of a laminated spring by the handbook: load on the seat for each length of travel.
///
/// k = 2 E ΣI SF (a + b) / (a² b²), which is 32 E ΣI SF / L³ when the seat is half-way
///
/// # Units
/// Pascals and metres; newtons per metre.
/// # Valid range
/// Arch up to about a fifth of the span; leaves stepped evenly; a and b as they bend, the dead length taken off.
/// # Errors
/// None.
/// # Source
/// SAE HS-788; the form for a and b by superposing its two halves.
/// # Example
/// Six leaves 60 × 8 mm over 1200 mm, E 206 GPa, SF 1: 58.6 N/mm.
#[must_use]
pub fn rate_of<'a>(
    pack: &Pack,
    leaves: impl Iterator<Item = &'a Leaf>,
    stiffening: &Ratio,
) -> SpringRate {
    let moments: Vec<SecondMoment> = leaves.map(|leaf| pack.second_moment(leaf)).collect();
    let sum = SecondMoment::sum_of(moments.iter())
        .of_kind(Kind::SecondMoment)
        .called("ΣI");
    rate_with(pack, &sum, stiffening)
}

/// Rate of the pack off its seat, all of every leaf bending: what a spring maker quotes as the unclamped rate.
///
/// As [`rate_of`], with a and b from the centre bolt.
///
/// # Units
/// Newtons per metre.
/// # Valid range
/// As [`rate_of`].
/// # Errors
/// None.
/// # Source
/// SAE HS-788.
#[must_use]
pub fn unclamped_rate(pack: &Pack, stiffening: &Ratio) -> SpringRate {
    let main = pack.main();
    let halves = (main.front.clone(), main.rear.clone());
    rate_over(pack, pack.carrying_moment(), stiffening, halves).called("k_free")
}

fn rate_with(pack: &Pack, sum: &SecondMoment, stiffening: &Ratio) -> SpringRate {
    let halves = (pack.active_front(), pack.active_rear());
    rate_over(pack, sum, stiffening, halves)
}

fn rate_over(
    pack: &Pack,
    sum: &SecondMoment,
    stiffening: &Ratio,
    (a, b): (Length, Length),
) -> SpringRate {
    let span = &a + &b;
    (&pack.modulus * sum * stiffening * span * 2.0 / ((&a * &b) * (&a * &b)))
        .of_kind(Kind::SpringRate)
        .cited(&source::HANDBOOK_RATE)
        .called("k")
}

/// How the travel grows with the load: one rate, or two when a helper comes in.
#[derive(Debug, Clone)]
pub struct LoadLine {
    /// Rate from no load on.
    pub rate: SpringRate,
    /// Where the helper begins to bear, and the rate from there.
    pub helper: Option<HelperStep>,
}

/// Where a helper leaf comes in.
#[derive(Debug, Clone)]
pub struct HelperStep {
    /// Load on the seat when it touches.
    pub load: Force,
    /// Rate from there on.
    pub rate: SpringRate,
}

impl LoadLine {
    /// The line of a spring without helper.
    #[must_use]
    pub fn straight(rate: SpringRate) -> Self {
        Self { rate, helper: None }
    }

    /// The helper, when the load is enough to reach it.
    fn reached(&self, load: &Force) -> Option<&HelperStep> {
        self.helper
            .as_ref()
            .filter(|step| load.value() > step.load.value())
    }

    /// Whether the helper bears at this load.
    #[must_use]
    pub fn helper_bears(&self, load: &Force) -> bool {
        self.reached(load).is_some()
    }

    /// Travel from the free spring: F / k, or in two pieces when the helper bears.
    #[must_use]
    pub fn travel(&self, load: &Force) -> Length {
        match self.reached(load) {
            None => (load / &self.rate).called("δ"),
            Some(step) => {
                let first = &step.load / &self.rate;
                (first + (load - &step.load) / &step.rate).called("δ")
            }
        }
    }

    /// The rate at this load.
    #[must_use]
    pub fn rate_at(&self, load: &Force) -> &SpringRate {
        self.reached(load).map_or(&self.rate, |step| &step.rate)
    }

    /// Load after `more` travel from a load.
    #[must_use]
    pub fn load_after(&self, load: &Force, more: &Length) -> Force {
        if let Some(step) = &self.helper
            && load.value() <= step.load.value()
        {
            let to_touch = (&step.load - load) / &self.rate;
            if more.value() > to_touch.value() {
                return (&step.load + &step.rate * (more - to_touch)).called("F_b");
            }
            return (load + &self.rate * more).called("F_b");
        }
        (load + self.rate_at(load) * more).called("F_b")
    }
}

/// The handbook's load line of a pack, helper included.
///
/// The helper touches when the leaf above has come down to its tip: travel = gap × a b / (af ar), with the helper's
/// own halves af and ar, since a spring of even stress bends to an arc.
///
/// # Errors
/// [`TradeError::HelperWithoutGap`] when a helper has neither a gap nor an arch.
pub fn load_line(pack: &Pack, stiffening: &Ratio) -> Result<LoadLine, TradeError> {
    let rate = rate_with(pack, pack.carrying_moment(), stiffening);
    let Some(helper) = pack.helper() else {
        return Ok(LoadLine::straight(rate));
    };
    let (front, rear) = pack.active_halves(helper);
    let gap = helper_gap(pack, helper)?;
    let arms = pack.active_front() * pack.active_rear();
    let travel = (gap * arms / (front * rear)).called("δ_h");
    let travel = travel.greatest(&Length::exact(0.0));
    let load = (&rate * travel).of_kind(Kind::Force).called("F_h");
    let with_helper = rate_with(pack, pack.working_moment(), stiffening).called("k_h");
    Ok(LoadLine {
        rate,
        helper: Some(HelperStep {
            load,
            rate: with_helper,
        }),
    })
}

/// Clear gap above the helper's tip in the free spring: as entered, or from how much flatter it is than the pack.
fn helper_gap(pack: &Pack, helper: &Leaf) -> Result<Length, TradeError> {
    if let Some(gap) = &helper.gap {
        return Ok(gap.clone());
    }
    let number = pack
        .leaves()
        .iter()
        .position(|leaf| core::ptr::eq(leaf, helper))
        .map_or(0, |place| place + 1);
    let (Some(own), Some(pack_curve)) = (pack.curvature(helper), pack.common_curvature()) else {
        return Err(TradeError::HelperWithoutGap { leaf: number });
    };
    let (front, rear) = pack.active_halves(helper);
    Ok((pack_curve - own) * front * rear / 2.0)
}

/// Stress that bolting the pack together locks into a leaf; positive where the load will add to it.
///
/// σ = E t (κ - κ0) / 2
///
/// # Units
/// Pascals.
/// # Valid range
/// Leaves that touch all along; what peening or scragging left behind is not in it.
/// # Errors
/// None.
/// # Source
/// SAE HS-788 (assembly stress).
#[must_use]
pub fn nip_stress(pack: &Pack, leaf: &Leaf) -> Option<Stress> {
    pack.nip(leaf, &|| {
        let own = pack.curvature(leaf)?;
        let common = pack.common_curvature()?;
        Some(
            (&pack.modulus * &leaf.thickness * (own - common) / 2.0)
                .of_kind(Kind::Stress)
                .cited(&source::NIP_STRESS)
                .called("σ_nip"),
        )
    })
}

/// Moment at the seat of a load that the eyes share by the rule of the lever: M = F a b / (a + b).
fn seat_moment(pack: &Pack, load: &Force) -> measure::Torque {
    let (a, b) = (pack.active_front(), pack.active_rear());
    (load * &a * &b / (&a + &b)).called("M")
}

/// How a load bends the leaves at the edge of the seat: reckoned once, and then asked leaf by leaf.
#[derive(Debug, Clone)]
pub struct Bending {
    /// What the load brings up to the helper's touch, over the leaves that carry it.
    first: Bend,
    /// What it brings from there on, over all leaves.
    later: Option<Bend>,
}

/// A moment, and twice the second moments that share it.
#[derive(Debug, Clone)]
struct Bend {
    moment: measure::Torque,
    twice_sum: SecondMoment,
}

impl Bend {
    fn of(pack: &Pack, load: &Force, sum: &SecondMoment) -> Self {
        Self {
            moment: seat_moment(pack, load),
            twice_sum: sum * 2.0,
        }
    }

    fn stress(&self, leaf: &Leaf) -> Stress {
        (&self.moment * &leaf.thickness / &self.twice_sum)
            .of_kind(Kind::Stress)
            .cited(&source::SHARED_CURVE)
    }
}

impl Bending {
    /// What a load on the seat brings.
    #[must_use]
    pub fn of(pack: &Pack, load: &Force, line: &LoadLine) -> Self {
        let step = line.reached(load);
        Self {
            first: Bend::of(
                pack,
                step.map_or(load, |step| &step.load),
                pack.carrying_moment(),
            ),
            later: step.map(|step| Bend::of(pack, &(load - &step.load), pack.working_moment())),
        }
    }

    /// Stress that the load brings into a leaf at the edge of the seat, nip left out.
    ///
    /// σ = M t / (2 ΣI), M = F a b / (a + b); a helper takes its share of the load from its touch on
    ///
    /// # Units
    /// Pascals.
    /// # Valid range
    /// As the rate.
    /// # Errors
    /// None.
    /// # Source
    /// Beam theory; 3 F S / (2 n b t²) for equal leaves.
    /// # Example
    /// 4 kN on six leaves 60 × 8 mm over 1200 mm: 312.5 N/mm².
    #[must_use]
    pub fn load_stress(&self, leaf: &Leaf) -> Stress {
        let helps = leaf.kind == LeafKind::Helper;
        match &self.later {
            None if helps => Stress::exact(0.0),
            None => self.first.stress(leaf).called("σ"),
            Some(later) if helps => later.stress(leaf).called("σ"),
            Some(later) => (self.first.stress(leaf) + later.stress(leaf)).called("σ"),
        }
    }

    /// Stress in a leaf under the load, nip included where the loose arches are known.
    #[must_use]
    pub fn stress(&self, pack: &Pack, leaf: &Leaf) -> Stress {
        let from_load = self.load_stress(leaf);
        if leaf.kind == LeafKind::Helper {
            return from_load;
        }
        match nip_stress(pack, leaf) {
            Some(nip) => (from_load + nip).called("σ"),
            None => from_load,
        }
    }
}

/// Load on the seat at which the first leaf reaches a stress; says which leaf.
///
/// F = (σ - σ_nip) 2 ΣI (a + b) / (t a b), the least of the leaves
///
/// # Units
/// Newtons.
/// # Valid range
/// Below the touch of a helper.
/// # Errors
/// None.
/// # Source
/// The stress formula turned round.
#[must_use]
pub fn load_at_stress(pack: &Pack, allowed: &Stress) -> Force {
    let (a, b) = (pack.active_front(), pack.active_rear());
    let sum = pack.carrying_moment();
    let (span, arms) = (&a + &b, &a * &b);
    let limits: Vec<(&'static str, Force)> = pack
        .carrying()
        .zip(LEAF_NAMES)
        .map(|(leaf, name)| {
            let left = match nip_stress(pack, leaf) {
                Some(nip) => allowed - nip,
                None => allowed.clone(),
            };
            let load = left * sum * 2.0 * &span / (&leaf.thickness * &arms);
            (name, load.of_kind(Kind::Force))
        })
        .collect();
    Force::least_of(&limits).called("F_max")
}

/// The number of a leaf in the pile, as a label.
pub const LEAF_NAMES: [&str; 24] = [
    "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "13", "14", "15", "16", "17",
    "18", "19", "20", "21", "22", "23", "24",
];

/// Nip between the full-length and the graduated leaves that would make them share a load evenly.
///
/// c = F L³ / (8 E n b t³) in the span L; with second moments c = F L³ / (96 E ΣI)
///
/// # Units
/// Metres.
/// # Valid range
/// Leaves of one thickness, seat half-way.
/// # Errors
/// None.
/// # Source
/// Bhandari, example 10.24: 2 P (L/2)³ / (E n b t³) with F = 2 P.
/// # Example
/// 75 kN, 1 m, 18 leaves 108 × 12 mm, E 207 GPa: 13.48 mm.
#[must_use]
pub fn even_nip(pack: &Pack, load: &Force) -> Length {
    let span = pack.active_front() + pack.active_rear();
    (load * span.cubed() / (&pack.modulus * pack.carrying_moment() * 96.0))
        .of_kind(Kind::Length)
        .cited(&source::FULL_LENGTH_LEAVES)
        .called("c")
}

/// Pull of the centre bolt that closes the even nip.
///
/// B = nf ng F / (n (3 nf + 2 ng)), nf full-length leaves besides the main leaf
///
/// # Units
/// Newtons.
/// # Valid range
/// Leaves of one thickness.
/// # Errors
/// None.
/// # Source
/// Bhandari, example 10.24.
/// # Example
/// nf 3, ng 15, F 75 kN: 4808 N.
#[must_use]
pub fn even_nip_bolt_pull(pack: &Pack, load: &Force) -> Force {
    let n = pack.carrying().count();
    let nf = pack
        .carrying()
        .filter(|leaf| leaf.kind.is_full_length() && leaf.kind != LeafKind::Main)
        .count();
    let (n, nf) = (small(n), small(nf));
    let ng = n - nf;
    (load * (nf * ng / (n * (3.0 * nf + 2.0 * ng))))
        .cited(&source::FULL_LENGTH_LEAVES)
        .called("B")
}
