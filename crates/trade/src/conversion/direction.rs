//! Before anything else: does the vehicle steer the way the wheel is turned?

/// Which way the end of the box's arm moves when the steering wheel is turned to the right.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ArmSwing {
    /// Towards the front of the vehicle.
    Forward,
    /// Towards the back.
    Backward,
    /// To the left of the vehicle.
    Left,
    /// To the right.
    Right,
}

/// Where the ball of the steering arm stands as seen from its king pin, from above.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BallPlace {
    /// In front of the axle.
    Front,
    /// Behind the axle.
    Behind,
    /// To the left of the king pin.
    LeftOfPin,
    /// To the right of the king pin.
    RightOfPin,
}

/// Which way the wheels go when the steering wheel is turned to the right.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Steers {
    /// To the right, as they must.
    True,
    /// To the left: a fault that stops the work.
    Backwards,
    /// The link pulls along the arm and turns nothing.
    NotAtAll,
}

/// Which way the wheels go: a ball moved along (dx, dy) turns an arm that stands at (ax, ay) by the sign of
/// ax·dy - ay·dx, positive to the left.
///
/// # Source
/// Plane kinematics: the moment of the link's pull about the king pin.
#[must_use]
pub fn steers(swing: ArmSwing, ball: BallPlace) -> Steers {
    let (dx, dy) = match swing {
        ArmSwing::Forward => (1, 0),
        ArmSwing::Backward => (-1, 0),
        ArmSwing::Left => (0, 1),
        ArmSwing::Right => (0, -1),
    };
    let (ax, ay) = match ball {
        BallPlace::Front => (1, 0),
        BallPlace::Behind => (-1, 0),
        BallPlace::LeftOfPin => (0, 1),
        BallPlace::RightOfPin => (0, -1),
    };
    match ax * dy - ay * dx {
        turn if turn < 0 => Steers::True,
        0 => Steers::NotAtAll,
        _ => Steers::Backwards,
    }
}
