//! Pinion position: the shim pack for the depth that the head asks for.

use measure::{Held, Kind, Length, Source};

static DEPTH: Source = Source {
    title: "Bevel gear mounting distance: from the crown wheel's axis to the pinion's bearing face",
    place: "the gear maker's drawing; the mark on the head corrects it",
    held: Held::CommonPractice,
};

/// What a plus on the pinion head means; the maker's manual says which.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MarkSense {
    /// The pinion wants to stand further from the crown wheel's axis than nominal.
    PlusIsFurther,
    /// It wants to stand nearer.
    PlusIsNearer,
}

/// Where the shim sits, and so which way a thicker one moves the pinion.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ShimPlace {
    /// Between pinion head and bearing cone: thicker moves the pinion towards the crown wheel.
    HeadToCone,
    /// Behind the bearing cup in the housing: thicker moves the pinion towards the crown wheel.
    BehindCup,
    /// Under the flange of a pinion carrier: thicker moves the pinion away.
    CarrierFlange,
}

impl ShimPlace {
    /// Plus one where a thicker shim moves the pinion in, minus one where it moves it out.
    #[must_use]
    pub fn inward(self) -> f64 {
        match self {
            Self::HeadToCone | Self::BehindCup => 1.0,
            Self::CarrierFlange => -1.0,
        }
    }
}

impl MarkSense {
    /// How far the mark moves the pinion away from the axis, as a sign.
    fn further(self) -> f64 {
        match self {
            Self::PlusIsFurther => 1.0,
            Self::PlusIsNearer => -1.0,
        }
    }
}

/// The shim from measurements of the housing: depth from the crown wheel's axis to the bearing's seat, less bearing
/// height, less the mounting distance of this pinion (nominal and its mark).
///
/// Under a carrier flange the same gap is closed from the other side: the sign turns.
///
/// # Units
/// Metres.
///
/// # Source
/// Definition of the mounting distance; the sense of the mark is the maker's.
#[must_use]
pub fn shim_by_depth(
    depth: &Length,
    bearing: &Length,
    nominal: &Length,
    mark: &Length,
    sense: MarkSense,
    place: ShimPlace,
) -> Length {
    let mounting = (nominal + mark * sense.further())
        .called("mounting distance")
        .of_kind(Kind::Thickness);
    let gap = depth - bearing - mounting;
    (gap * place.inward())
        .called("shim")
        .of_kind(Kind::Thickness)
        .cited(&DEPTH)
}

/// The shim from the old one and the marks on both heads: old + (old mark - new mark) where a thicker shim moves the
/// pinion in and a plus means further out; each of the two turned round turns the sign.
///
/// # Units
/// Metres.
///
/// # Source
/// Definition of the mounting distance; the sense of the mark is the maker's.
#[must_use]
pub fn shim_by_marks(
    old_shim: &Length,
    old_mark: &Length,
    new_mark: &Length,
    sense: MarkSense,
    place: ShimPlace,
) -> Length {
    let change = (old_mark - new_mark) * (sense.further() * place.inward());
    (old_shim + change)
        .called("shim")
        .of_kind(Kind::Thickness)
        .cited(&DEPTH)
}

/// How the preload pack changes with the depth shim: behind the cup by as much, elsewhere not at all.
///
/// # Source
/// Geometry of the bearing spread.
#[must_use]
pub fn preload_pack_change(shim_change: &Length, place: ShimPlace) -> Length {
    match place {
        ShimPlace::BehindCup => shim_change.clone(),
        ShimPlace::HeadToCone | ShimPlace::CarrierFlange => Length::exact(0.0),
    }
}
