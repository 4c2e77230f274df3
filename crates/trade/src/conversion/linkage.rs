//! The steering linkage of a beam axle as plain numbers: box, drop arm, drag link, steering arm, axle on its springs.

/// How the box's shaft lies, and so in which plane the drop arm swings.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shaft {
    /// Across the vehicle: the arm hangs down and swings fore and aft.
    Across,
    /// Along the vehicle: the arm hangs down and swings from side to side.
    Along,
    /// Upright: the arm lies flat, points to the rear and swings from side to side.
    Upright,
    /// No shaft but a rack that slides across the vehicle: its travel for a radian of the pinion stands for the arm.
    Rack,
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
    /// The way along the king pin, upward: a unit vector.
    pub pin_way: [f64; 3],
    /// Which spring eye is fixed.
    pub fixed_eye: SpringEye,
    /// From the fixed eye to the axle, along the main leaf.
    pub half_spring: f64,
    /// How far the axle's seat lies above the fixed eye (negative below).
    pub seat_above_eye: f64,
}

/// The axle of a leaf spring moves on an arc of three quarters of the half spring (SAE HS-788; from memory).
pub(super) const ARC_SHARE: f64 = 0.75;

impl Linkage {
    /// The way the arm hangs and the way it swings first; neither for a rack.
    fn ways(&self) -> ([f64; 3], [f64; 3]) {
        match self.shaft {
            Shaft::Across => ([0.0, 0.0, -1.0], [1.0, 0.0, 0.0]),
            Shaft::Along => ([0.0, 0.0, -1.0], [0.0, 1.0, 0.0]),
            Shaft::Upright => ([-1.0, 0.0, 0.0], [0.0, 1.0, 0.0]),
            Shaft::Rack => ([0.0; 3], [0.0, 1.0, 0.0]),
        }
    }

    /// The ball of the drop arm, or the end of the rack, when the shaft or pinion has turned by an angle from centre.
    #[must_use]
    pub fn drop_ball(&self, swing: f64) -> [f64; 3] {
        let (hangs, swings) = self.ways();
        let (sin, cos) = (self.at_centre + swing).sin_cos();
        let along = if self.shaft == Shaft::Rack {
            swing
        } else {
            sin
        };
        let at = |i: usize| self.box_at[i] + self.drop_arm * (hangs[i] * cos + swings[i] * along);
        [at(0), at(1), at(2)]
    }

    /// How fast that ball moves, for a radian of swing.
    fn drop_way(&self, swing: f64) -> [f64; 3] {
        let (hangs, swings) = self.ways();
        let (sin, cos) = (self.at_centre + swing).sin_cos();
        let along = if self.shaft == Shaft::Rack { 1.0 } else { cos };
        let at = |i: usize| self.drop_arm * (swings[i] * along - hangs[i] * sin);
        [at(0), at(1), at(2)]
    }

    /// The ball of the steering arm at a steer angle with the axle raised.
    #[must_use]
    pub fn arm_ball(&self, steer: f64, rise: f64) -> [f64; 3] {
        let turned = about_pin(self.pin_way, steer).unwrap_or(f64::NAN);
        let (pin, ball) = (self.pin_at(rise), turned_arm(self.arm(), turned));
        [0, 1, 2].map(|i: usize| pin[i] + ball[i])
    }

    /// The king pin at the height of the ball, with the axle raised.
    fn pin_at(&self, rise: f64) -> [f64; 3] {
        let x = self.pin[0] + self.axle_shift(rise);
        [x, self.pin[1], self.ball[2] + rise]
    }

    /// The steering arm straight ahead, from the pin to the ball, as [`arm_parts`].
    fn arm(&self) -> [[f64; 3]; 3] {
        let arm = [self.ball[0] - self.pin[0], self.ball[1] - self.pin[1], 0.0];
        arm_parts(self.pin_way, arm)
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
        dot(self.link(0.0, 0.0), self.link(0.0, 0.0)).sqrt()
    }

    /// From the drop arm's ball to the steering arm's.
    fn link(&self, swing: f64, steer: f64) -> [f64; 3] {
        less(self.arm_ball(steer, 0.0), self.drop_ball(swing))
    }

    /// The steer angle, as the wheel heads on the ground, with the drop arm swung and the axle raised; none where the link cannot reach.
    #[must_use]
    pub fn steer(&self, swing: f64, rise: f64) -> Option<f64> {
        let [middle, out, across] = self.arm();
        let away = less(less(self.drop_ball(swing), self.pin_at(rise)), middle);
        let apart = dot(out, out) + dot(away, away) - self.drag_link().powi(2);
        let turned = angle_near(0.0, dot(out, away), dot(across, away), apart / 2.0)?;
        Some(heading(self.pin_way, turned))
    }

    /// The swing of the drop arm that gives a steer angle; none where it cannot.
    #[must_use]
    pub fn swing(&self, steer: f64) -> Option<f64> {
        let (hangs, swings) = self.ways();
        let away = less(self.arm_ball(steer, 0.0), self.box_at);
        let (arm, link) = (self.drop_arm, self.drag_link());
        let rest = dot(away, away) - link * link;
        if self.shaft == Shaft::Rack {
            // The rack slides along y until the link is as long as it is.
            let reach = (away[1] * away[1] - rest).sqrt();
            let ends = [away[1] - reach, away[1] + reach];
            let end = ends.into_iter().filter(|end| end.is_finite());
            return end
                .min_by(|a, b| a.abs().total_cmp(&b.abs()))
                .map(|end| end / arm);
        }
        let (a, b) = (dot(away, hangs), dot(away, swings));
        let found = angle_near(self.at_centre, a, b, (arm * arm + rest) / (2.0 * arm))?;
        Some(found - self.at_centre)
    }

    /// The swing of the drop arm for a radian of steer, at a steer angle; none where the link cannot reach.
    #[must_use]
    pub fn ratio(&self, steer: f64) -> Option<f64> {
        let (swing, turned) = (self.swing(steer)?, about_pin(self.pin_way, steer)?);
        let link = self.link(swing, steer);
        let [_, out, across] = self.arm();
        let (sin, cos) = turned.sin_cos();
        let goes = |i: usize| across[i] * cos - out[i] * sin;
        let for_turn = dot(link, [goes(0), goes(1), goes(2)]) / dot(link, self.drop_way(swing));
        Some(for_turn / self.heading_rate(turned))
    }

    /// How fast the heading on the ground follows a turn about the pin.
    fn heading_rate(&self, about_pin: f64) -> f64 {
        let [x, y, z] = self.pin_way;
        let (sin, cos) = about_pin.sin_cos();
        let (up, ahead) = heading_parts(self.pin_way, about_pin);
        let (up_goes, ahead_goes) = (z * cos - x * y * sin, (y * y - 1.0) * sin);
        (up_goes * ahead - up * ahead_goes) / (up * up + ahead * ahead)
    }
}

/// The way along a king pin, upward: its top leans back by the castor and in, towards the vehicle's middle, by the inclination. `side` is
/// above nothing for a pin on the left.
pub(super) fn pin_way(castor: f64, inclination: f64, side: f64) -> [f64; 3] {
    let way = [-castor.tan(), -inclination.tan() * side.signum(), 1.0];
    let long = dot(way, way).sqrt();
    way.map(|part| part / long)
}

/// An arm straight ahead, from the pin to its ball: the part of it that lies along the pin, the part square to the pin, and the way
/// that one goes when the arm turns to the left.
pub(super) fn arm_parts(way: [f64; 3], arm: [f64; 3]) -> [[f64; 3]; 3] {
    let along = dot(way, arm);
    let middle = way.map(|part| part * along);
    [middle, less(arm, middle), cross(way, arm)]
}

/// The ball of an arm of these parts, from the pin, once it has turned about it.
pub(super) fn turned_arm([middle, out, across]: [[f64; 3]; 3], about_pin: f64) -> [f64; 3] {
    let (sin, cos) = about_pin.sin_cos();
    [0, 1, 2].map(|i: usize| middle[i] + out[i] * cos + across[i] * sin)
}

/// What a turn about the pin makes of the wheel's heading on the ground: its sine and cosine, each to one scale. The spindle,
/// which lay across, is turned about the pin (Rodrigues) and seen from above.
fn heading_parts([x, y, z]: [f64; 3], about_pin: f64) -> (f64, f64) {
    let (sin, cos) = about_pin.sin_cos();
    (z * sin - x * y * (1.0 - cos), cos + y * y * (1.0 - cos))
}

/// The wheel's heading on the ground after a turn about the pin.
pub(super) fn heading(way: [f64; 3], about_pin: f64) -> f64 {
    let (sin, cos) = heading_parts(way, about_pin);
    sin.atan2(cos)
}

/// The turn about the pin that gives the wheel a heading on the ground; none where there is no such turn.
pub(super) fn about_pin([x, y, z]: [f64; 3], steer: f64) -> Option<f64> {
    let (sin, cos) = steer.sin_cos();
    let rest = sin * y * y + cos * x * y;
    angle_near(steer, sin - rest, -cos * z, -rest)
}

pub(super) fn less(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
    [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
}

fn cross(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
    [
        a[1] * b[2] - a[2] * b[1],
        a[2] * b[0] - a[0] * b[2],
        a[0] * b[1] - a[1] * b[0],
    ]
}

pub(super) fn dot(a: [f64; 3], b: [f64; 3]) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

/// The angle nearest to `near` at which a cos + b sin comes to c: two circles meet in two places or in none. Beyond a
/// good right angle from there a linkage has passed its dead point.
pub(super) fn angle_near(near: f64, a: f64, b: f64, c: f64) -> Option<f64> {
    use std::f64::consts::TAU;
    let off = (c / a.hypot(b)).acos();
    let middle = b.atan2(a);
    [middle - off, middle + off]
        .into_iter()
        .map(|angle| angle - TAU * ((angle - near) / TAU).round())
        .filter(|angle| (angle - near).abs() < 1.6)
        .min_by(|a, b| (a - near).abs().total_cmp(&(b - near).abs()))
}
