//! Where the frame comes to stand: pile, seat, block, eyes, shackle; rake and lean.

use measure::{Angle, Kind, Length, Ratio};

use super::leaf::Pack;
use super::source;
use crate::TradeError;

/// On which side of the axle the spring lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mounting {
    /// The spring lies on the axle: a block between them lifts the vehicle.
    SpringOverAxle,
    /// The spring hangs under the axle: a block between them lowers the vehicle.
    SpringUnderAxle,
}

impl Mounting {
    /// The names of the choices.
    pub const IDS: &'static [&'static str] = &["spring_over_axle", "spring_under_axle"];

    /// The choice with this name.
    #[must_use]
    pub fn named(id: &str) -> Option<Self> {
        Some(match id {
            "spring_over_axle" => Self::SpringOverAxle,
            "spring_under_axle" => Self::SpringUnderAxle,
            _ => return None,
        })
    }

    /// What a block does to the height: +1 lifts, -1 lowers.
    #[must_use]
    pub fn block_sign(self) -> f64 {
        match self {
            Self::SpringOverAxle => 1.0,
            Self::SpringUnderAxle => -1.0,
        }
    }
}

/// Arch under a load: what is left of the free arch; negative when the spring has reversed.
///
/// arch = free arch - δ
///
/// # Units
/// Metres.
/// # Valid range
/// From the line of the eye centres to the upper (tension) face of the main leaf at the seat.
/// # Errors
/// None.
/// # Source
/// Definition.
#[must_use]
pub fn loaded_arch(free_arch: &Length, travel: &Length) -> Length {
    (free_arch - travel).called("arch")
}

/// What lies between the centre of the axle and the upper face of the main leaf.
#[derive(Debug, Clone)]
pub struct Seat {
    /// On which side of the axle the spring lies.
    pub mounting: Mounting,
    /// From the centre of the axle to the face that the spring (or its block) sits on.
    pub pad: Length,
    /// Block between the axle and the spring.
    pub block: Length,
    /// Leaves between the pad and the upper face of the main leaf.
    pub pile: Length,
}

impl Seat {
    /// The seat of a pack: its whole pile when it lies on the axle, the rebound leaves alone when it hangs under it.
    #[must_use]
    pub fn of(pack: &Pack, mounting: Mounting, pad: Length, block: Length) -> Self {
        let pile = match mounting {
            Mounting::SpringOverAxle => pack.pile(),
            Mounting::SpringUnderAxle => pack.pile_above(),
        };
        Self {
            mounting,
            pad,
            block,
            pile,
        }
    }

    /// Height of the line of the eyes over the centre of the axle.
    ///
    /// spring over the axle: H = pad + block + pile + arch; under it: H = arch - pad - block - leaves above the main leaf
    ///
    /// # Units
    /// Metres.
    /// # Valid range
    /// Axle and frame level across; the swing of the shackle is left out.
    /// # Errors
    /// None.
    /// # Source
    /// Definition.
    #[must_use]
    pub fn eye_line_height(&self, arch: &Length) -> Length {
        let below = &self.pad + &self.block + &self.pile;
        match self.mounting {
            Mounting::SpringOverAxle => (below + arch).called("H_eyes"),
            Mounting::SpringUnderAxle => (arch - below).called("H_eyes"),
        }
    }

    /// Arch that puts the line of the eyes at a height: the height turned round.
    #[must_use]
    pub fn arch_for(&self, eye_line_height: &Length) -> Length {
        let below = &self.pad + &self.block + &self.pile;
        match self.mounting {
            Mounting::SpringOverAxle => (eye_line_height - below).called("arch"),
            Mounting::SpringUnderAxle => (eye_line_height + below).called("arch"),
        }
    }
}

/// Where the shackle hangs: pins on the frame and the shackle's length.
#[derive(Debug, Clone)]
pub struct Shackle {
    /// Between the centres of its pins.
    pub length: Length,
    /// Level distance from the fixed eye's pin to the shackle's pin on the frame.
    pub pins_apart: Length,
    /// How much higher the shackle's pin on the frame lies than the fixed eye's pin.
    pub pin_higher: Length,
}

/// Lean of the shackle from upright, when the eyes are a given distance apart; positive away from the fixed eye.
///
/// lean = ψ + acos((q² + s² - c²) / 2 q s) - 90°, with q between the frame pins, s the shackle, c the eyes, ψ the slope of q
///
/// # Units
/// Metres; radians.
/// # Valid range
/// The shackle's lower pin below the line of the frame pins.
/// # Errors
/// [`TradeError::ShackleCannotReach`] when no triangle has these sides.
/// # Source
/// Plane geometry.
pub fn shackle_lean(shackle: &Shackle, eyes_apart: &Length) -> Result<Angle, TradeError> {
    let (s, c) = (&shackle.length, eyes_apart);
    let q_squared = shackle.pins_apart.squared() + shackle.pin_higher.squared();
    let q = q_squared.sqrt().called("q");
    let cosine: Ratio = (&q_squared + s.squared() - c.squared()) / (&q * s * 2.0);
    if cosine.value().abs() >= 1.0 || cosine.value().is_nan() {
        return Err(TradeError::ShackleCannotReach {
            shortest: (q.value() - s.value()).abs(),
            longest: q.value() + s.value(),
        });
    }
    let slope = (&shackle.pin_higher / &shackle.pins_apart).atan();
    // Seen from the shackle's upper pin, the fixed pin lies at 180° + ψ; the lower pin lies below that line.
    let inside = cosine.acos();
    Ok((slope + inside - core::f64::consts::FRAC_PI_2)
        .of_kind(Kind::Angle)
        .cited(&source::GEOMETRY)
        .called("lean"))
}

/// Slope of the vehicle, nose up positive.
///
/// rake = atan((Hf - Hr) / wheelbase)
///
/// # Units
/// Metres; radians.
/// # Valid range
/// Heights of marks that are level on the drawing board; wheels of one size, or heights taken from the ground.
/// # Errors
/// None.
/// # Source
/// Plane geometry.
#[must_use]
pub fn rake(front: &Length, rear: &Length, wheelbase: &Length) -> Angle {
    ((front - rear) / wheelbase)
        .atan()
        .of_kind(Kind::Angle)
        .cited(&source::GEOMETRY)
        .called("rake")
}

/// Lean of the vehicle across an axle, left side high positive.
///
/// lean = atan((Hl - Hr) / spring base)
///
/// # Units
/// Metres; radians.
/// # Valid range
/// Level ground; tyres of one size and pressure.
/// # Errors
/// None.
/// # Source
/// Plane geometry.
#[must_use]
pub fn lean_across(left: &Length, right: &Length, spring_base: &Length) -> Angle {
    ((left - right) / spring_base)
        .atan()
        .of_kind(Kind::Angle)
        .cited(&source::GEOMETRY)
        .called("lean")
}

/// Turn of the seat against the line of the eyes when the spring travels, nose up positive.
///
/// θ = (δf - δr) / (a + b) = δ (a - b) / (a b), since a spring of even stress gives δf = δ a / b and δr = δ b / a
///
/// # Units
/// Metres; radians.
/// # Valid range
/// Small angles; a seat half-way does not turn.
/// # Errors
/// None.
/// # Source
/// Beam theory.
#[must_use]
pub fn seat_turn(pack: &Pack, travel: &Length) -> Angle {
    let (a, b) = (pack.active_front(), pack.active_rear());
    (travel * (&a - &b) / (&a * &b))
        .of_kind(Kind::Angle)
        .cited(&source::BEAM_THEORY)
        .called("θ")
}
