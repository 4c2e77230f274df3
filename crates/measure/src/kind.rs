//! The kinds of quantity: what a field holds or a finding tells, which units serve it and which one a book shows.
//!
//! Dimensions alone do not tell torque from energy, or a paint film from a wheelbase; the kind does.

use crate::kinds::{KINDS, Row};
use crate::manner::System;
use crate::unit::{Powers, Unit};

/// What sort of quantity a field or a finding is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[non_exhaustive]
pub enum Kind {
    /// A length on the vehicle, in millimetres or inches.
    Length,
    /// Thickness of sheet, plate or leaf; gauge numbers are understood.
    Thickness,
    /// Thickness of a film of paint, or a shim.
    Film,
    /// A distance on the road.
    Distance,
    /// Height above the sea, or a length in a building.
    Altitude,
    /// An area to cover.
    Area,
    /// A cross-section.
    Section,
    /// A volume of paint, oil, fuel or swept by pistons.
    Volume,
    /// A volume in the cup or syringe.
    SmallVolume,
    /// A mass, or a load on a scale.
    Mass,
    /// A mass on the bench scale.
    SmallMass,
    /// A force.
    Force,
    /// A torque.
    Torque,
    /// How far a torque may be out.
    TorqueError,
    /// An energy.
    Energy,
    /// A pressure in a tyre, line or hose.
    Pressure,
    /// A stress in steel.
    Stress,
    /// An angle.
    Angle,
    /// A speed on the road.
    Speed,
    /// The speed of a surface, a piston or air.
    SurfaceSpeed,
    /// Turns of a shaft in a time.
    Rotation,
    /// Swings in a time.
    Frequency,
    /// The rate of a spring.
    SpringRate,
    /// A power.
    Power,
    /// Power for each unit of mass.
    PowerToMass,
    /// A temperature.
    Temperature,
    /// A difference of two temperatures.
    TemperatureStep,
    /// A short time, in seconds.
    Seconds,
    /// A time at the bench, in minutes.
    Time,
    /// Hours of work.
    Duration,
    /// Days of waiting or hire.
    Days,
    /// A density.
    Density,
    /// A density of air, a thousandth of that of a liquid.
    AirDensity,
    /// Mass of one substance in a volume, such as solvent.
    Concentration,
    /// A ratio: teeth to teeth, turns to turns.
    Ratio,
    /// A share in per cent.
    Percent,
    /// A slope: rise to run.
    Slope,
    /// Area covered by a volume of paint.
    SpreadingRate,
    /// Turns of a shaft or cable in a distance.
    TurnsPerDistance,
    /// An acceleration.
    Acceleration,
    /// Second moment of area of a section.
    SecondMoment,
    /// Section modulus.
    SectionModulus,
    /// A flow of air, oil or paint.
    Flow,
    /// Moment of inertia of something that turns.
    Inertia,
    /// A count: teeth, leaves, coats.
    Count,
}

impl Kind {
    /// Every kind, in the order of the enum.
    #[must_use]
    pub fn all() -> impl ExactSizeIterator<Item = Self> {
        KINDS.iter().map(|row| row.kind)
    }

    fn row(self) -> &'static Row {
        &KINDS[self as usize]
    }

    /// A short English name, for messages to developers and for `data-kind` hooks.
    #[must_use]
    pub fn name(self) -> &'static str {
        self.row().name
    }

    /// Whether no instrument of a workshop reads it finer than a thousandth: a wrench, a spring balance, a gauge, a dynamometer, a
    /// measuring cup, a speedometer and the odometer in it. An exact figure of such a kind that does not end is shown no finer either.
    #[must_use]
    pub fn read_to_a_thousandth(self) -> bool {
        matches!(
            self,
            Self::Force
                | Self::Torque
                | Self::Energy
                | Self::Pressure
                | Self::Stress
                | Self::Power
                | Self::Volume
                | Self::SmallVolume
                | Self::Speed
                | Self::Distance
        )
    }

    /// Whether it is itself an error, which is shown as every ± is.
    #[must_use]
    pub fn is_error(self) -> bool {
        self == Self::TorqueError
    }

    /// Powers of length, mass, time and temperature in SI base units. Angles, ratios and counts are plain numbers.
    #[must_use]
    pub fn dims(self) -> Powers {
        self.row().shown[0].dims
    }

    /// The kind that a dimension without one is shown as.
    #[must_use]
    pub fn usual(dims: Powers) -> Option<Self> {
        if dims == [0; 4] {
            return Some(Self::Ratio);
        }
        Self::all().find(|kind| kind.dims() == dims)
    }

    /// The units that this kind may be typed in.
    #[must_use]
    pub fn units(self) -> &'static [&'static Unit] {
        self.row().units
    }

    /// The unit that a book of this system shows.
    #[must_use]
    pub fn default_unit(self, system: System) -> &'static Unit {
        self.row().shown[system as usize]
    }

    /// A right example of an entry, as such a book's owner would type it with a decimal point.
    #[must_use]
    pub fn example(self, system: System) -> &'static str {
        self.row().examples[system as usize]
    }
}
