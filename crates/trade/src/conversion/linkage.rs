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
        let [ax, ay] = self.arm(steer);
        [
            self.pin[0] + ax + self.axle_shift(rise),
            self.pin[1] + ay,
            self.ball[2] + rise,
        ]
    }

    /// The steering arm from above, from pin to ball, at a steer angle.
    fn arm(&self, steer: f64) -> [f64; 2] {
        let (sin, cos) = steer.sin_cos();
        let (ax, ay) = (self.ball[0] - self.pin[0], self.ball[1] - self.pin[1]);
        [cos * ax - sin * ay, sin * ax + cos * ay]
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

    /// The steer angle with the drop arm swung and the axle raised; none where the link cannot reach.
    #[must_use]
    pub fn steer(&self, swing: f64, rise: f64) -> Option<f64> {
        let [ax, ay] = self.arm(0.0);
        let drop = self.drop_ball(swing);
        let [dx, dy] = [
            drop[0] - self.pin[0] - self.axle_shift(rise),
            drop[1] - self.pin[1],
        ];
        let dz = drop[2] - self.ball[2] - rise;
        let link = self.drag_link().powi(2) - dz * dz;
        let apart = ax * ax + ay * ay + dx * dx + dy * dy - link;
        angle_near(0.0, dx * ax + dy * ay, dy * ax - dx * ay, apart / 2.0)
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
        let swing = self.swing(steer)?;
        let link = self.link(swing, steer);
        let [ax, ay] = self.arm(steer);
        Some(dot(link, [-ay, ax, 0.0]) / dot(link, self.drop_way(swing)))
    }
}

fn less(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
    [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
}

fn dot(a: [f64; 3], b: [f64; 3]) -> f64 {
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
