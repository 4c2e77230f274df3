//! A leaf, and the pack that it is bolted into.

use std::cell::OnceCell;
use std::rc::Rc;

use measure::{Kind, Length, PerLength, Quantity, Ratio, SecondMoment, SectionModulus, Stress};

use super::{arch, source};
use crate::TradeError;

/// What a leaf does in the pack.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LeafKind {
    /// The leaf with the eyes.
    Main,
    /// Full length, with ends that wrap round the eyes of the main leaf.
    Wrapper,
    /// Shorter than the main leaf, one step in the pile.
    Graduated,
    /// As long as the main leaf, without eyes.
    FullLength,
    /// Bears only when the load brings the leaf above down to it.
    Helper,
    /// Above the main leaf; works only when the spring rebounds.
    Rebound,
}

impl LeafKind {
    /// The names of the kinds, for a choice.
    pub const IDS: &'static [&'static str] = &[
        "main",
        "wrapper",
        "graduated",
        "full_length",
        "helper",
        "rebound",
    ];

    /// The kind with this name.
    #[must_use]
    pub fn named(id: &str) -> Option<Self> {
        Some(match id {
            "main" => Self::Main,
            "wrapper" => Self::Wrapper,
            "graduated" => Self::Graduated,
            "full_length" => Self::FullLength,
            "helper" => Self::Helper,
            "rebound" => Self::Rebound,
            _ => return None,
        })
    }

    /// Whether the leaf runs from eye to eye.
    #[must_use]
    pub fn is_full_length(self) -> bool {
        matches!(self, Self::Main | Self::Wrapper | Self::FullLength)
    }
}

/// One leaf as it lies on the bench.
#[derive(Debug, Clone)]
pub struct Leaf {
    /// What it does.
    pub kind: LeafKind,
    /// Width.
    pub width: Length,
    /// Thickness at the worst pit.
    pub thickness: Length,
    /// Along the leaf from the centre bolt to the front tip (the front eye, of a main leaf).
    pub front: Length,
    /// Along the leaf from the centre bolt to the rear tip.
    pub rear: Length,
    /// Arch of the leaf lying loose, from the chord of its tips to its upper face at the centre bolt.
    pub arch: Option<Length>,
    /// Of a helper: the clear gap above its tip when the spring is free.
    pub gap: Option<Length>,
}

impl Leaf {
    /// Second moment of area of the leaf's section.
    ///
    /// I = b t³ / 12
    ///
    /// # Units
    /// Metres; metres to the fourth power.
    /// # Valid range
    /// Flat stock; rounded edges take off one or two per cent.
    /// # Errors
    /// None.
    /// # Source
    /// Beam theory.
    #[must_use]
    pub fn second_moment(&self) -> SecondMoment {
        (&self.width * self.thickness.cubed() / 12.0)
            .of_kind(Kind::SecondMoment)
            .called("I")
    }

    /// Section modulus of the leaf's section: b t² / 6.
    #[must_use]
    pub fn section_modulus(&self) -> SectionModulus {
        &self.width * self.thickness.squared() / 6.0
    }
}

/// The leaves of one spring, bolted together.
#[derive(Debug, Clone)]
pub struct Pack {
    /// Young's modulus of the leaves.
    pub modulus: Stress,
    /// Length held rigid by the seat, over and above which the leaves bend.
    pub dead: Length,
    /// Rebound leaves first, then the main leaf and those under it.
    leaves: Rc<[Leaf]>,
    /// Where the main leaf stands in `leaves`.
    main: usize,
    /// What every formula asks of a leaf, worked out once.
    known: Rc<[Known]>,
    /// Both halves as they bend.
    halves: [Length; 2],
    /// Sum of the second moments of the leaves that carry, and of all that work.
    sums: [SecondMoment; 2],
    /// The curve that the carrying leaves settle on, once asked for.
    common: OnceCell<Option<PerLength>>,
}

/// What the formulas ask of a leaf.
#[derive(Debug)]
struct Known {
    second_moment: SecondMoment,
    curvature: OnceCell<Option<PerLength>>,
    nip: OnceCell<Option<Stress>>,
    active: (Length, Length),
}

/// The shortest half of a leaf that still bends, beyond the edge of the seat.
const SHORTEST_ACTIVE_M: f64 = 0.005;

impl Pack {
    /// The pack of these leaves in the order of the pile, from the top.
    ///
    /// # Errors
    /// [`TradeError::NoMainLeaf`] when no leaf has the eyes; [`TradeError::LeafHasNoBody`] when a leaf's width or
    /// thickness is nothing or less; [`TradeError::LeafWithinSeat`] when a leaf ends inside the clamped length.
    pub fn new(modulus: Stress, dead: Length, leaves: Vec<Leaf>) -> Result<Self, TradeError> {
        let main = leaves
            .iter()
            .position(|leaf| leaf.kind == LeafKind::Main)
            .ok_or(TradeError::NoMainLeaf)?;
        for (number, leaf) in leaves.iter().enumerate() {
            if !(leaf.width.value() > 0.0 && leaf.thickness.value() > 0.0) {
                return Err(TradeError::LeafHasNoBody { leaf: number + 1 });
            }
            let half_dead = dead.value() / 2.0;
            let shortest = leaf.front.value().min(leaf.rear.value());
            if shortest - half_dead < SHORTEST_ACTIVE_M {
                return Err(TradeError::LeafWithinSeat { leaf: number + 1 });
            }
        }
        let (mut above, mut working): (Vec<_>, Vec<_>) = leaves
            .into_iter()
            .enumerate()
            .partition(|(_, leaf)| leaf.kind == LeafKind::Rebound);
        measure::sort_by_key(&mut working, |(place, _)| (*place != main, *place));
        let rebound = above.len();
        above.append(&mut working);
        let leaves: Rc<[Leaf]> = above.into_iter().map(|(_, leaf)| leaf).collect();
        let half_dead = (dead.value() != 0.0).then(|| &dead / 2.0);
        let known: Rc<[Known]> = leaves
            .iter()
            .map(|leaf| Known {
                second_moment: leaf.second_moment(),
                curvature: OnceCell::new(),
                nip: OnceCell::new(),
                active: [&leaf.front, &leaf.rear]
                    .map(|half| active(half, half_dead.as_ref()))
                    .into(),
            })
            .collect();
        let sum = |helpers: bool| {
            let moments = leaves[rebound..]
                .iter()
                .zip(&known[rebound..])
                .filter(|(leaf, _)| helpers || leaf.kind != LeafKind::Helper)
                .map(|(_, known)| &known.second_moment);
            SecondMoment::sum_of(moments)
                .of_kind(Kind::SecondMoment)
                .called("ΣI")
        };
        let sums = [sum(false), sum(true)];
        let (a, b) = known[rebound].active.clone();
        Ok(Self {
            halves: [a.called("a"), b.called("b")],
            modulus,
            dead,
            leaves,
            main: rebound,
            known,
            sums,
            common: OnceCell::new(),
        })
    }

    /// Every leaf, rebound leaves first.
    #[must_use]
    pub fn leaves(&self) -> &[Leaf] {
        &self.leaves
    }

    /// The leaf with the eyes.
    #[must_use]
    pub fn main(&self) -> &Leaf {
        &self.leaves[self.main]
    }

    /// The leaves that carry a load: the main leaf and those under it.
    #[must_use]
    pub fn working(&self) -> &[Leaf] {
        &self.leaves[self.main..]
    }

    /// The leaves that carry from the first newton: all that work but the helpers.
    pub fn carrying(&self) -> impl Iterator<Item = &Leaf> {
        self.working()
            .iter()
            .filter(|leaf| leaf.kind != LeafKind::Helper)
    }

    /// The leaves that lie above the main leaf.
    #[must_use]
    pub fn rebound(&self) -> &[Leaf] {
        &self.leaves[..self.main]
    }

    /// The first helper leaf, if there is one.
    #[must_use]
    pub fn helper(&self) -> Option<&Leaf> {
        self.working()
            .iter()
            .find(|leaf| leaf.kind == LeafKind::Helper)
    }

    /// Whether every carrying leaf runs from eye to eye.
    #[must_use]
    pub fn all_full_length(&self) -> bool {
        self.carrying().all(|leaf| leaf.kind.is_full_length())
    }

    /// Length of the front half that bends.
    #[must_use]
    pub fn active_front(&self) -> Length {
        self.halves[0].clone()
    }

    /// Length of the rear half that bends.
    #[must_use]
    pub fn active_rear(&self) -> Length {
        self.halves[1].clone()
    }

    /// Both halves of a leaf as they bend.
    pub(super) fn active_halves(&self, leaf: &Leaf) -> (Length, Length) {
        match self.known(leaf) {
            Some(known) => known.active.clone(),
            None => {
                let half_dead = (self.dead.value() != 0.0).then(|| &self.dead / 2.0);
                let active = |half| active(half, half_dead.as_ref());
                (active(&leaf.front), active(&leaf.rear))
            }
        }
    }

    /// Second moment of a leaf's section.
    pub(super) fn second_moment(&self, leaf: &Leaf) -> SecondMoment {
        self.known(leaf)
            .map_or_else(|| leaf.second_moment(), |known| known.second_moment.clone())
    }

    /// Curve of a leaf lying loose.
    pub(super) fn curvature(&self, leaf: &Leaf) -> Option<PerLength> {
        self.known(leaf).map_or_else(
            || arch::loose_curvature(leaf),
            |known| {
                let curvature = known.curvature.get_or_init(|| arch::loose_curvature(leaf));
                curvature.clone()
            },
        )
    }

    /// Stress that bolting locks into a leaf: `reckoned` once, and kept.
    pub(super) fn nip(&self, leaf: &Leaf, reckoned: &dyn Fn() -> Option<Stress>) -> Option<Stress> {
        let Some(known) = self.known(leaf) else {
            return reckoned();
        };
        known.nip.get_or_init(reckoned).clone()
    }

    /// Sum of the second moments of the leaves that carry from the first newton.
    pub(super) fn carrying_moment(&self) -> &SecondMoment {
        &self.sums[0]
    }

    /// Sum of the second moments of all leaves that work.
    pub(super) fn working_moment(&self) -> &SecondMoment {
        &self.sums[1]
    }

    /// Curve that the carrying leaves settle on when they are bolted together; none when a loose arch is missing.
    ///
    /// κ0 = Σ(I κ) / ΣI
    ///
    /// # Units
    /// Per metre.
    /// # Valid range
    /// Leaves that touch all along.
    /// # Errors
    /// None.
    /// # Source
    /// SAE HS-788 (assembly stress).
    #[must_use]
    pub fn common_curvature(&self) -> Option<PerLength> {
        let common = self.common.get_or_init(|| {
            let mut weighted = Vec::with_capacity(self.leaves.len());
            for leaf in self.carrying() {
                weighted.push(self.second_moment(leaf) * self.curvature(leaf)?);
            }
            let total = Quantity::sum_of(weighted.iter());
            Some(
                (total / self.carrying_moment())
                    .cited(&source::NIP_STRESS)
                    .called("κ₀"),
            )
        });
        common.clone()
    }

    /// What is known of a leaf of this pack.
    fn known(&self, leaf: &Leaf) -> Option<&Known> {
        let place = self
            .leaves
            .iter()
            .position(|own| core::ptr::eq(own, leaf))?;
        self.known.get(place)
    }

    /// The pack with another set of leaves, on the same seat and of the same steel.
    ///
    /// # Errors
    /// As [`Pack::new`].
    pub fn with_leaves(&self, leaves: Vec<Leaf>) -> Result<Self, TradeError> {
        Self::new(self.modulus.clone(), self.dead.clone(), leaves)
    }

    /// Thickness of the pile from the upper face of the main leaf down.
    #[must_use]
    pub fn pile(&self) -> Length {
        Length::sum_of(self.working().iter().map(|leaf| &leaf.thickness)).called("Σt")
    }

    /// Thickness of the leaves above the main leaf.
    #[must_use]
    pub fn pile_above(&self) -> Length {
        Length::sum_of(self.rebound().iter().map(|leaf| &leaf.thickness))
    }
}

/// What bends of a half: what lies beyond the edge of the seat.
fn active(half: &Length, half_dead: Option<&Length>) -> Length {
    match half_dead {
        None => half.clone(),
        Some(half_dead) => half - half_dead,
    }
}

/// How much of the clamped length does not bend.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SeatRule {
    /// All of it: a band, or a seat of solid metal under tight U-bolts.
    Whole,
    /// Two thirds of the spacing of the U-bolts.
    TwoThirds,
    /// Half of it: thick pads of rubber or wood.
    Half,
    /// None: the spring stands free on a press, or its lengths were taken from the edge of the seat.
    None,
}

impl SeatRule {
    /// The names of the rules, for a choice.
    pub const IDS: &'static [&'static str] = &["whole", "two_thirds", "half", "none"];

    /// The rule with this name.
    #[must_use]
    pub fn named(id: &str) -> Option<Self> {
        Some(match id {
            "whole" => Self::Whole,
            "two_thirds" => Self::TwoThirds,
            "half" => Self::Half,
            "none" => Self::None,
            _ => return None,
        })
    }

    /// The share of the clamped length that is dead.
    #[must_use]
    pub fn share(self) -> f64 {
        match self {
            Self::Whole => 1.0,
            Self::TwoThirds => 2.0 / 3.0,
            Self::Half => 0.5,
            Self::None => 0.0,
        }
    }
}

/// Length that does not bend: the clamped length times the share that the rule takes.
///
/// d = s × clamped
///
/// # Units
/// Metres.
/// # Valid range
/// To be taken off lengths that run to the centre bolt; lengths that start at the edge of the seat have had it taken off.
/// # Errors
/// None.
/// # Source
/// Machine design lecture notes: band, whole width; U-bolts, two thirds of their spacing.
#[must_use]
pub fn dead_length(clamped: &Length, rule: SeatRule) -> Length {
    match rule {
        SeatRule::None => Length::exact(0.0),
        SeatRule::Whole => clamped.clone().called("d"),
        _ => (clamped * Ratio::exact(rule.share()))
            .cited(&source::BAND_RULE)
            .called("d"),
    }
}
