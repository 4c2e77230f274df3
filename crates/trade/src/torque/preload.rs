//! Torque and clamp load of a bolted joint, and the share of its strength that they use.

use measure::{Force, Held, Kind, Length, Ratio, Source, Torque};

use super::{Grade, Thread};
use crate::TradeError;

static VDI_2230: Source = Source {
    title: "VDI 2230 Part 1, Systematic calculation of highly stressed bolted joints",
    place: "tightening torque and assembly preload (R8, R13)",
    held: Held::Memory,
};

/// Friction in the thread and under the head.
#[derive(Debug, Clone)]
pub struct Friction {
    /// In the thread.
    pub thread: Ratio,
    /// Under the head.
    pub head: Ratio,
}

/// What the head or nut bears on.
#[derive(Debug, Clone)]
pub struct Head {
    /// The outer diameter of the bearing face.
    pub bearing: Length,
    /// The clearance hole.
    pub hole: Length,
}

impl Head {
    /// The mean diameter at which the head rubs: (dw + dh)/2.
    #[must_use]
    pub fn mean(&self) -> Length {
        ((&self.bearing + &self.hole) / 2.0)
            .called("Dm")
            .of_kind(Kind::Thickness)
    }
}

/// The usual outer diameter of a flanged head's or nut's bearing face: 1.87 times the thread.
///
/// # Units
/// Metres.
///
/// # Valid range
/// M5 to M16, the small series; measured, a face goes before it.
///
/// # Source
/// ISO 4162, smallest bearing face d_w: 9.4 at M5 to 30.6 at M16, 1.86 to 1.93 times the thread; the table as held in an open library of
/// parts (github.com/shaise/FreeCAD_FastenersWB, FsData/iso4162def.csv).
///
/// # Example
/// M10: 18.7 mm.
#[must_use]
pub fn flange_face(major: &Length) -> Length {
    (major * 1.87).called("d_w").of_kind(Kind::Thickness)
}

/// What a bolt or stud screws into.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Female {
    /// Steel.
    Steel,
    /// Cast iron.
    Iron,
    /// Aluminium.
    Aluminium,
}

/// The thread that has to be engaged so that the bolt breaks before the thread strips: once the diameter in steel, one and a half
/// times in cast iron, twice in aluminium.
///
/// # Units
/// Metres.
///
/// # Source
/// Common practice, no source; other rules of thumb ask for half a diameter more in each.
///
/// # Example
/// M10 in aluminium: 20 mm.
#[must_use]
pub fn least_engagement(major: &Length, female: Female) -> Length {
    let times = match female {
        Female::Steel => 1.0,
        Female::Iron => 1.5,
        Female::Aluminium => 2.0,
    };
    (major * times).called("m").of_kind(Kind::Thickness)
}

/// What a joint holds. A computed figure is never for steering, brakes or wheels.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Purpose {
    /// Steering.
    Steering,
    /// Brakes.
    Brakes,
    /// Wheel fixings.
    Wheels,
    /// Anything else.
    Other,
}

/// How a joint is tightened, and how widely the clamp load scatters (± of the mean).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Scatter {
    /// By feel: 35 %.
    ByFeel,
    /// By torque wrench: 25 %.
    TorqueWrench,
    /// By torque and angle: 15 %.
    Angle,
}

impl Scatter {
    /// The half width of the scatter, as a share of the mean.
    ///
    /// # Source
    /// By torque wrench 25 % on oiled threads: NASA-STD-5020B, table 3; VDI 2230 (1986), tightening factors: ± 23 to 28 % where the
    /// friction is estimated, as it is here. By angle VDI 2230 gives ± 5 to 12 %, for a turn that was found by trials; 15 % leaves room
    /// for one that was not. By feel 35 % is common practice, no source: VDI 2230's factors reach ± 60 %.
    #[must_use]
    pub fn share(self) -> f64 {
        match self {
            Self::ByFeel => 0.35,
            Self::TorqueWrench => 0.25,
            Self::Angle => 0.15,
        }
    }
}

/// A joint whose torque is to be computed.
#[derive(Debug, Clone)]
pub struct Joint {
    /// What it holds.
    pub purpose: Purpose,
    /// Its thread.
    pub thread: Thread,
    /// The bolt's grade.
    pub grade: &'static Grade,
    /// Friction.
    pub friction: Friction,
    /// What the head bears on.
    pub head: Head,
    /// The diameter of a reduced shank, where the bolt has one.
    pub shank: Option<Length>,
    /// The share of the yield strength to use, twist included: 0.9 as VDI 2230, less for old bolts.
    pub use_of_yield: Ratio,
    /// How it is tightened.
    pub scatter: Scatter,
}

/// A computed tightening.
#[derive(Debug, Clone)]
pub struct Tightening {
    /// The torque at the wrench.
    pub torque: Torque,
    /// The clamp load it makes.
    pub clamp: Force,
    /// The least clamp load by the scatter of the method.
    pub least_clamp: Force,
    /// The tension in the bolt as a share of its yield strength.
    pub share_of_yield: Ratio,
}

impl Joint {
    /// The diameter that carries the bolt: of the stress area, or of a reduced shank where that is less.
    fn carrying(&self) -> Length {
        let area = (&self.thread.stress_area() * (4.0 / std::f64::consts::PI)).sqrt();
        let area = area.of_kind(Kind::Thickness);
        match &self.shank {
            Some(shank) => Length::least_of(&[("thread", area), ("shank", shank.clone())]),
            None => area,
        }
        .called("d0")
    }

    /// Torque for a unit of clamp load: P/2π + d2 μ/(2 cos α) + Dm μ/2, with 1/2π as 0.16 and, at 60°, 1/(2 cos α) as
    /// 0.58 as the guideline rounds them.
    fn lever(&self) -> Length {
        let pitch = &self.thread.pitch * 0.16;
        let flank = if self.thread.form.flank_angle() == 60_f64.to_radians() {
            Ratio::exact(0.58)
        } else {
            1.0 / (self.thread.half_flank().cos() * 2.0)
        };
        let thread = self.thread.effective() * flank * &self.friction.thread;
        let head = self.head.mean() / 2.0 * &self.friction.head;
        (pitch + thread + head)
            .called("k")
            .of_kind(Kind::Thickness)
            .cited(&VDI_2230)
    }
}

/// The torque and clamp load that use a share of the yield strength, twist included.
///
/// F = A0 ν Rp / sqrt(1 + 3 (1.5 (d2/d0) (P/(π d2) + 1.155 μ))²), M = F (0.16 P + 0.58 d2 μ + Dm μ / 2);
/// 1.155 and 0.58 stand for 60° threads and follow the flank angle of the others.
///
/// # Units
/// Newtons, newton metres.
///
/// # Valid range
/// Friction 0.04 to 0.40; use of yield up to 0.9.
///
/// # Errors
/// [`TradeError::MakersFigureOnly`] for steering, brakes and wheel fixings; [`TradeError::OutOfRange`] outside the range.
///
/// # Source
/// VDI 2230 Part 1.
pub fn tightening(joint: &Joint) -> Result<Tightening, TradeError> {
    if joint.purpose != Purpose::Other {
        return Err(TradeError::MakersFigureOnly);
    }
    for (entry, value) in [
        ("thread friction", &joint.friction.thread),
        ("head friction", &joint.friction.head),
    ] {
        if !(0.04..=0.40).contains(&value.value()) {
            return Err(TradeError::OutOfRange {
                entry,
                lowest: 0.04,
                highest: 0.40,
            });
        }
    }
    if !(0.1..=0.9).contains(&joint.use_of_yield.value()) {
        return Err(TradeError::OutOfRange {
            entry: "use of yield",
            lowest: 0.1,
            highest: 0.9,
        });
    }
    let (d2, d0) = (joint.thread.effective(), joint.carrying());
    let area = (d0.squared() * (std::f64::consts::PI / 4.0))
        .called("A0")
        .of_kind(Kind::Section);
    let wedge = if joint.thread.form.flank_angle() == 60_f64.to_radians() {
        Ratio::exact(1.155)
    } else {
        1.0 / joint.thread.half_flank().cos()
    };
    let slope: Ratio =
        &joint.thread.pitch / (&d2 * std::f64::consts::PI) + wedge * &joint.friction.thread;
    let twist = (&d2 / &d0 * 1.5 * slope).called("τ");
    let yielding = joint.grade.yielding();
    let clamp = (&area * &joint.use_of_yield * &yielding / (1.0 + twist.squared() * 3.0).sqrt())
        .called("F")
        .of_kind(Kind::Force)
        .cited(&VDI_2230);
    let torque = (&clamp * joint.lever())
        .called("M")
        .of_kind(Kind::Torque)
        .cited(&VDI_2230);
    let least_clamp = (&clamp * (1.0 - joint.scatter.share()))
        .called("Fmin")
        .of_kind(Kind::Force);
    let share_of_yield = (&clamp / &area / &yielding)
        .called("use")
        .of_kind(Kind::Percent);
    Ok(Tightening {
        torque,
        clamp,
        least_clamp,
        share_of_yield,
    })
}

/// The clamp load that a torque makes in a joint.
///
/// # Units
/// Newtons.
///
/// # Source
/// VDI 2230 Part 1.
#[must_use]
pub fn clamp_load_of(torque: &Torque, joint: &Joint) -> Force {
    (torque / joint.lever())
        .called("F")
        .of_kind(Kind::Force)
        .cited(&VDI_2230)
}
