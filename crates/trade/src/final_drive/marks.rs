//! Reading the tooth marks, and the next trial from those made.

/// Which flank carries the marks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Flank {
    /// The convex flank that drives.
    Drive,
    /// The concave flank on the overrun.
    Coast,
}

/// Where the marks lie along the tooth.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lengthwise {
    /// At the inner, small end.
    Toe,
    /// In the middle, or a little towards the toe, as an unloaded set should show.
    Middle,
    /// At the outer, large end.
    Heel,
}

/// Where the marks lie up the tooth.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Height {
    /// Low, towards the root: called flank.
    Flank,
    /// In the middle.
    Middle,
    /// High, towards the tip: called face.
    Face,
}

/// The marks of a trial on the crown wheel.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TrialMark {
    /// Along the drive flank.
    pub drive: Lengthwise,
    /// Along the coast flank.
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

/// What to change first for the marks seen: height tells of the pinion; the same end on both flanks tells of the crown
/// wheel; opposite ends on drive and coast tell of the pinion.
///
/// # Source
/// Common practice, no source: face or heel on drive, pinion in; flank or toe on drive, pinion out. The tooth system
/// matters, and the gear maker's guide comes first.
#[must_use]
pub fn advice(marks: TrialMark) -> Advice {
    match (marks.height, marks.drive, marks.coast) {
        (Height::Face, _, _) => Advice::PinionIn,
        (Height::Flank, _, _) => Advice::PinionOut,
        (_, Lengthwise::Heel, Lengthwise::Heel) => Advice::CrownIn,
        (_, Lengthwise::Toe, Lengthwise::Toe) => Advice::CrownOut,
        (_, Lengthwise::Heel, Lengthwise::Toe) => Advice::PinionIn,
        (_, Lengthwise::Toe, Lengthwise::Heel) => Advice::PinionOut,
        (_, Lengthwise::Heel, Lengthwise::Middle) | (_, Lengthwise::Middle, Lengthwise::Heel) => {
            Advice::CrownIn
        }
        (_, Lengthwise::Toe, Lengthwise::Middle) | (_, Lengthwise::Middle, Lengthwise::Toe) => {
            Advice::CrownOut
        }
        (_, Lengthwise::Middle, Lengthwise::Middle) => Advice::Good,
    }
}

impl Height {
    /// The height as a number: low below nothing, high above.
    fn number(self) -> f64 {
        match self {
            Self::Flank => -1.0,
            Self::Middle => 0.0,
            Self::Face => 1.0,
        }
    }
}

/// The next pinion shim (metres) from the trials made so far, each a shim and the height of its marks: where the straight
/// line of least squares through them crosses the middle. None with fewer than two trials of different shims and heights.
///
/// # Source
/// Least squares of a straight line; that marks move evenly with the shim is common practice, no source.
#[must_use]
pub fn next_shim(trials: &[(f64, Height)]) -> Option<f64> {
    let count = trials.len() as f64;
    let (mx, my) = (
        trials.iter().map(|(shim, _)| shim).sum::<f64>() / count,
        trials
            .iter()
            .map(|(_, height)| height.number())
            .sum::<f64>()
            / count,
    );
    let above: f64 = trials
        .iter()
        .map(|(shim, height)| (shim - mx) * (height.number() - my))
        .sum();
    let below: f64 = trials.iter().map(|(shim, _)| (shim - mx).powi(2)).sum();
    let slope = above / below;
    (slope.is_finite() && slope != 0.0).then_some(mx - my / slope)
}
