//! The steering linkage of a beam axle as plain numbers: box, drop arm, drag link, steering arm, axle on its springs.

use measure::zeros;

/// How the box's shaft lies, and so in which plane the drop arm swings.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shaft {
    /// Across the vehicle: the arm hangs down and swings fore and aft.
    Across,
    /// Along the vehicle: the arm hangs down and swings from side to side.
    Along,
    /// Upright: the arm lies flat, points to the rear and swings from side to side.
    Upright,
}

/// Which end of the front spring is fixed; the axle moves on an arc about it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SpringEye {
    /// The front eye; the shackle is behind.
    Front,
    /// The rear eye; the shackle is in front.
    Rear,
}

/// A linkage, metres and radians, with the wheels straight ahead and the box on centre.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Linkage {
    /// How the box's shaft lies.
    pub shaft: Shaft,
    /// The middle of the shaft at the drop arm.
    pub box_at: [f64; 3],
    /// The drop arm from shaft to ball.
    pub drop_arm: f64,
    /// The drop arm's angle at centre: from straight down (or straight back), positive forward or to the left.
    pub at_centre: f64,
    /// The ball of the steering arm.
    pub ball: [f64; 3],
    /// Where the king pin meets the height of that ball, from above: x and y.
    pub pin: [f64; 2],
    /// Which spring eye is fixed.
    pub fixed_eye: SpringEye,
    /// From the fixed eye to the axle, along the main leaf.
    pub half_spring: f64,
    /// How far the axle's seat lies above the fixed eye (negative below).
    pub seat_above_eye: f64,
}

/// The axle of a leaf spring moves on an arc of three quarters of the half spring (SAE HS-788; from memory).
const ARC_SHARE: f64 = 0.75;

impl Linkage {
    /// The ball of the drop arm when the arm has swung by an angle from centre.
    #[must_use]
    pub fn drop_ball(&self, swing: f64) -> [f64; 3] {
        let (sin, cos) = (self.at_centre + swing).sin_cos();
        let r = self.drop_arm;
        let [x, y, z] = self.box_at;
        match self.shaft {
            Shaft::Across => [x + r * sin, y, z - r * cos],
            Shaft::Along => [x, y + r * sin, z - r * cos],
            Shaft::Upright => [x - r * cos, y + r * sin, z],
        }
    }

    /// The ball of the steering arm at a steer angle with the axle raised.
    #[must_use]
    pub fn arm_ball(&self, steer: f64, rise: f64) -> [f64; 3] {
        let (sin, cos) = steer.sin_cos();
        let (ax, ay) = (self.ball[0] - self.pin[0], self.ball[1] - self.pin[1]);
        [
            self.pin[0] + cos * ax - sin * ay + self.axle_shift(rise),
            self.pin[1] + sin * ax + cos * ay,
            self.ball[2] + rise,
        ]
    }

    /// How far the axle moves forward as it rises, on its arc about the fixed eye.
    #[must_use]
    pub fn axle_shift(&self, rise: f64) -> f64 {
        let radius = ARC_SHARE * self.half_spring;
        let along = |height: f64| (radius * radius - height * height).max(0.0).sqrt();
        let shorter = along(self.seat_above_eye + rise) - along(self.seat_above_eye);
        match self.fixed_eye {
            // Behind a front eye the axle stands to the rear of it; a longer reach moves it back.
            SpringEye::Front => -shorter,
            SpringEye::Rear => shorter,
        }
    }

    /// The drag link that fits with the box on centre and the wheels straight ahead.
    #[must_use]
    pub fn drag_link(&self) -> f64 {
        apart(self.drop_ball(0.0), self.arm_ball(0.0, 0.0))
    }

    /// The steer angle with the drop arm swung and the axle raised; none where the link cannot reach.
    #[must_use]
    pub fn steer(&self, swing: f64, rise: f64) -> Option<f64> {
        let (drop, link) = (self.drop_ball(swing), self.drag_link());
        let miss = |steer: f64| apart(drop, self.arm_ball(steer, rise)) - link;
        let found = zeros(-1.2, 1.2, miss).ok()?;
        found.into_iter().min_by(|a, b| a.abs().total_cmp(&b.abs()))
    }

    /// The swing of the drop arm that gives a steer angle; none where it cannot.
    #[must_use]
    pub fn swing(&self, steer: f64) -> Option<f64> {
        let (ball, link) = (self.arm_ball(steer, 0.0), self.drag_link());
        let miss = |swing: f64| apart(self.drop_ball(swing), ball) - link;
        let found = zeros(-1.3, 1.3, miss).ok()?;
        found.into_iter().min_by(|a, b| a.abs().total_cmp(&b.abs()))
    }
}

fn apart(a: [f64; 3], b: [f64; 3]) -> f64 {
    (0..3).map(|i| (a[i] - b[i]).powi(2)).sum::<f64>().sqrt()
}
