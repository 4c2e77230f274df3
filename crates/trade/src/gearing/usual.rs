//! What stands in, visibly, where nothing was entered.

/// A usual value and how far off it can be (95 %).
pub type Usual = (f64, f64);

/// Share of power that reaches the wheels in direct drive. Usual practice, no source.
pub const EFFICIENCY_DIRECT: Usual = (0.90, 0.03);
/// The same through gears. Usual practice, no source.
pub const EFFICIENCY_INDIRECT: Usual = (0.85, 0.04);
/// The same through a worm axle. From memory, no source.
pub const EFFICIENCY_WORM: Usual = (0.85, 0.06);

/// Rolling resistance of radial tyres on a hard road.
/// Source: Gillespie; 0.010 to 0.015 on concrete and new asphalt at engineeringtoolbox.com.
pub const ROLLING_RADIAL: Usual = (0.013, 0.003);
/// Rolling resistance of diagonal tyres on a hard road. Usual practice, no source.
pub const ROLLING_DIAGONAL: Usual = (0.018, 0.004);
/// Rolling resistance on a farm track. Source: medium soil 0.04 to 0.08 at engineeringtoolbox.com.
pub const ROLLING_TRACK: Usual = (0.04, 0.015);
/// Rolling resistance on a wet field. Usual practice, no source.
pub const ROLLING_FIELD: Usual = (0.10, 0.04);

/// Grip on a dry hard road. Usual practice, no source.
pub const GRIP_DRY: Usual = (0.7, 0.1);
/// Grip on a wet hard road. Usual practice, no source.
pub const GRIP_WET: Usual = (0.4, 0.1);
/// Grip on grass. Usual practice, no source.
pub const GRIP_GRASS: Usual = (0.3, 0.1);

/// Share of width by height that is frontal area. Usual practice, no source.
pub const FRONTAL_SHARE: f64 = 0.85;

/// The highest mean piston speed that old engines keep up, m/s (2500 ft/min). Usual practice, no source.
pub const SUSTAINED_PISTON_SPEED_M_S: f64 = 12.7;

/// The ground under the tyres, for rolling resistance and grip.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ground {
    /// Dry hard road.
    Dry,
    /// Wet hard road.
    Wet,
    /// A farm track.
    Track,
    /// Wet grass or a field.
    Field,
}

impl Ground {
    /// Rolling resistance with radial or diagonal tyres.
    #[must_use]
    pub fn rolling(self, radial: bool) -> Usual {
        match (self, radial) {
            (Self::Dry | Self::Wet, true) => ROLLING_RADIAL,
            (Self::Dry | Self::Wet, false) => ROLLING_DIAGONAL,
            (Self::Track, _) => ROLLING_TRACK,
            (Self::Field, _) => ROLLING_FIELD,
        }
    }

    /// Grip of the driven tyres.
    #[must_use]
    pub fn grip(self) -> Usual {
        match self {
            Self::Dry => GRIP_DRY,
            Self::Wet | Self::Track => GRIP_WET,
            Self::Field => GRIP_GRASS,
        }
    }
}
