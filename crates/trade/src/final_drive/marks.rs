//! Reading the tooth marks: what to change first, and by how much.

/// Where the marks lie along the tooth.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lengthwise {
    /// At the inner, small end.
    Toe,
    /// Between the toe and the middle: right for an unloaded set, since the load moves the marks towards the heel.
    TowardsToe,
    /// In the middle.
    Middle,
    /// Between the middle and the heel.
    TowardsHeel,
    /// At the outer, large end.
    Heel,
}

/// Where the marks lie up the tooth.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Height {
    /// At the root: called flank.
    Flank,
    /// Between the root and the middle.
    Low,
    /// In the middle.
    Middle,
    /// Between the middle and the tip.
    High,
    /// At the tip: called face.
    Face,
}

/// The marks of a trial on the crown wheel.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TrialMark {
    /// Along the drive flank, the convex one.
    pub drive: Lengthwise,
    /// Along the coast flank, the concave one.
    pub coast: Lengthwise,
    /// Up the tooth.
    pub height: Height,
}

/// What to change first.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Advice {
    /// Nothing.
    Good,
    /// The pinion goes towards the crown wheel.
    PinionIn,
    /// The pinion goes away from the crown wheel.
    PinionOut,
    /// The crown wheel goes towards the pinion; backlash falls.
    CrownIn,
    /// The crown wheel goes away; backlash grows.
    CrownOut,
}

impl Lengthwise {
    /// The place along the tooth as a number: the toe is minus one, the heel plus one.
    #[must_use]
    pub fn number(self) -> f64 {
        match self {
            Self::Toe => -1.0,
            Self::TowardsToe => -0.5,
            Self::Middle => 0.0,
            Self::TowardsHeel => 0.5,
            Self::Heel => 1.0,
        }
    }

    /// Where unloaded marks may lie: in the middle, or from there to the toe.
    fn good(self) -> bool {
        matches!(self, Self::Middle | Self::TowardsToe)
    }
}

impl Height {
    /// The height as a number: low below nothing, high above.
    #[must_use]
    pub fn number(self) -> f64 {
        match self {
            Self::Flank => -1.0,
            Self::Low => -0.5,
            Self::Middle => 0.0,
            Self::High => 0.5,
            Self::Face => 1.0,
        }
    }
}

/// What to change first for the marks seen: height tells of the pinion; the same end on both flanks tells of the crown
/// wheel; opposite ends on drive and coast tell of the pinion.
///
/// # Source
/// Common practice, no source: face or heel on drive, pinion in; flank or toe on drive, pinion out. The tooth system
/// matters, and the gear maker's guide comes first.
#[must_use]
pub fn advice(marks: TrialMark) -> Advice {
    let (drive, coast) = (marks.drive.number(), marks.coast.number());
    let (same, opposite) = (drive + coast, drive - coast);
    match marks.height {
        Height::Face | Height::High => Advice::PinionIn,
        Height::Flank | Height::Low => Advice::PinionOut,
        Height::Middle if marks.drive.good() && marks.coast.good() => Advice::Good,
        Height::Middle if same.abs() >= opposite.abs() && same > 0.0 => Advice::CrownIn,
        Height::Middle if same.abs() >= opposite.abs() => Advice::CrownOut,
        Height::Middle if opposite > 0.0 => Advice::PinionIn,
        Height::Middle => Advice::PinionOut,
    }
}

/// How far to move at a first step, metres: a tenth of a millimetre where the marks lie at an edge of the tooth, half of that
/// where they lie part of the way; nothing where they are good.
///
/// # Source
/// Common practice, no source. From the second trial on the trend of the axle itself is better.
#[must_use]
pub fn first_step(marks: TrialMark) -> f64 {
    let along = marks.drive.number().abs().max(marks.coast.number().abs());
    match advice(marks) {
        Advice::Good => 0.0,
        Advice::PinionIn | Advice::PinionOut if marks.height != Height::Middle => {
            1e-4 * marks.height.number().abs()
        }
        _ => 1e-4 * along,
    }
}
