//! The traced steering: ratio, link, lock and bump steer of a linkage, each with its ±.

use measure::{Angle, Held, Kind, Length, Ratio, Source, Table, Traced};

use super::{Linkage, Shaft, SpringEye};
use crate::TradeError;

static LINKAGE: Source = Source {
    title: "Spatial geometry of the steering linkage: the drag link keeps its length",
    place: "solved for the steer angle; axle arc as SAE HS-788",
    held: Held::Computed,
};

/// A steering linkage as measured on the vehicle.
#[derive(Debug, Clone)]
pub struct Steering {
    /// How the box's shaft lies.
    pub shaft: Shaft,
    /// The middle of the shaft at the drop arm: x, y, z.
    pub box_at: [Length; 3],
    /// The drop arm from shaft to ball.
    pub drop_arm: Length,
    /// The drop arm's angle at centre.
    pub at_centre: Angle,
    /// The ball of the steering arm: x, y, z.
    pub ball: [Length; 3],
    /// The king pin at the height of that ball: x, y.
    pub pin: [Length; 2],
    /// Which spring eye is fixed.
    pub fixed_eye: SpringEye,
    /// From the fixed eye to the axle along the main leaf.
    pub half_spring: Length,
    /// How far the axle's seat lies above the fixed eye.
    pub seat_above_eye: Length,
}

/// A curve: x and y, SI.
pub type Swept = Vec<(f64, f64)>;

impl Steering {
    fn inputs(&self) -> Vec<&dyn Traced> {
        let mut inputs: Vec<&dyn Traced> = Vec::new();
        inputs.extend(self.box_at.iter().map(|x| x as &dyn Traced));
        inputs.push(&self.drop_arm);
        inputs.push(&self.at_centre);
        inputs.extend(self.ball.iter().map(|x| x as &dyn Traced));
        inputs.extend(self.pin.iter().map(|x| x as &dyn Traced));
        inputs.push(&self.half_spring);
        inputs.push(&self.seat_above_eye);
        inputs
    }

    /// The linkage as plain numbers.
    #[must_use]
    pub fn linkage(&self) -> Linkage {
        let numbers: Vec<f64> = [
            &self.box_at[0],
            &self.box_at[1],
            &self.box_at[2],
            &self.drop_arm,
        ]
        .iter()
        .map(|x| x.value())
        .chain([self.at_centre.value()])
        .chain(self.ball.iter().chain(&self.pin).map(Length::value))
        .chain([self.half_spring.value(), self.seat_above_eye.value()])
        .collect();
        linkage(self.shaft, self.fixed_eye, &numbers)
    }

    fn angle(
        &self,
        name: &'static str,
        of: impl Fn(&Linkage) -> Option<f64> + 'static,
    ) -> Result<Angle, TradeError> {
        let (shaft, eye) = (self.shaft, self.fixed_eye);
        let table = Table::new(name, &self.inputs(), move |numbers| {
            vec![of(&linkage(shaft, eye, numbers)).unwrap_or(f64::NAN)]
        });
        let found: Angle = table.output(0).of_kind(Kind::Angle).cited(&LINKAGE);
        found
            .finite()
            .map_err(|_| TradeError::Undetermined { entry: "drag link" })
    }

    /// The drag link, ball to ball, for straight ahead with the box on centre.
    ///
    /// # Units
    /// Metres.
    ///
    /// # Source
    /// Spatial geometry.
    #[must_use]
    pub fn drag_link(&self) -> Length {
        let linkage = self.linkage();
        let [dx, dy, dz] = match self.shaft {
            Shaft::Across => [
                self.at_centre.sin(),
                Ratio::exact(0.0),
                -self.at_centre.cos(),
            ],
            Shaft::Along => [
                Ratio::exact(0.0),
                self.at_centre.sin(),
                -self.at_centre.cos(),
            ],
            Shaft::Upright => [
                -self.at_centre.cos(),
                self.at_centre.sin(),
                Ratio::exact(0.0),
            ],
        };
        let along = |i: usize, d: Ratio| &self.box_at[i] + &self.drop_arm * d - &self.ball[i];
        let parts = [along(0, dx), along(1, dy), along(2, dz)];
        let squares: Vec<_> = parts.iter().map(Length::squared).collect();
        debug_assert!(
            (parts[2].value() - (linkage.drop_ball(0.0)[2] - linkage.ball[2])).abs() < 1e-9
        );
        (&squares[0] + &squares[1] + &squares[2])
            .sqrt()
            .of_kind(Kind::Length)
            .cited(&LINKAGE)
    }

    /// The steer angle of this wheel with the drop arm swung by an angle.
    ///
    /// # Errors
    /// [`TradeError::Undetermined`] where the link cannot reach.
    pub fn steer(&self, swing: &Angle) -> Result<Angle, TradeError> {
        let swing = swing.value();
        self.angle("steer angle", move |linkage| linkage.steer(swing, 0.0))
    }

    /// The swing of the drop arm for a radian of steer, at a steer angle: the linkage's part of the steering ratio.
    ///
    /// # Errors
    /// [`TradeError::Undetermined`] where the link cannot reach.
    pub fn ratio(&self, at: f64) -> Result<Ratio, TradeError> {
        let ratio = self.angle("swing for a unit of steer", move |linkage| {
            let step = 1e-4;
            Some((linkage.swing(at + step)? - linkage.swing(at - step)?) / (2.0 * step))
        })?;
        Ok(ratio.abs().of_kind(Kind::Ratio))
    }

    /// The steer that the wheel takes by itself when the axle rises, the steering wheel held: positive to the left.
    ///
    /// # Errors
    /// [`TradeError::Undetermined`] where the link cannot reach.
    pub fn bump_steer(&self, rise: &Length) -> Result<Angle, TradeError> {
        let rise = rise.value();
        self.angle("steer by the axle's rise", move |linkage| {
            linkage.steer(0.0, rise)
        })
    }

    /// The curve of bump steer over a range of axle rise.
    #[must_use]
    pub fn bump_curve(&self, lowest: f64, highest: f64, points: usize) -> Swept {
        let linkage = self.linkage();
        (0..points)
            .filter_map(|i| {
                let rise = lowest + (highest - lowest) * i as f64 / (points.max(2) - 1) as f64;
                linkage.steer(0.0, rise).map(|steer| (rise, steer))
            })
            .collect()
    }

    /// The height of the drop arm's shaft that makes the bump steer least: the box raised or lowered so that the
    /// steepest part of the curve, at ride height, has no slope.
    ///
    /// # Units
    /// Metres, from where the box is now.
    ///
    /// # Errors
    /// [`TradeError::Undetermined`] where no height within 0.4 m does.
    pub fn best_box_height(&self) -> Result<Length, TradeError> {
        let (shaft, eye) = (self.shaft, self.fixed_eye);
        let table = Table::new(
            "height without bump steer at ride height",
            &self.inputs(),
            move |numbers| {
                let linkage = linkage(shaft, eye, numbers);
                vec![best_height(&linkage).unwrap_or(f64::NAN)]
            },
        );
        let found: Length = table.output(0).of_kind(Kind::Length).cited(&LINKAGE);
        found.finite().map_err(|_| TradeError::Undetermined {
            entry: "height of the box",
        })
    }
}

fn linkage(shaft: Shaft, fixed_eye: SpringEye, n: &[f64]) -> Linkage {
    Linkage {
        shaft,
        box_at: [n[0], n[1], n[2]],
        drop_arm: n[3],
        at_centre: n[4],
        ball: [n[5], n[6], n[7]],
        pin: [n[8], n[9]],
        fixed_eye,
        half_spring: n[10],
        seat_above_eye: n[11],
    }
}

/// The change of height nearest to nothing at which the curve is level at ride height.
fn best_height(linkage: &Linkage) -> Option<f64> {
    let slope = |dz: f64| {
        let mut moved = *linkage;
        moved.box_at[2] += dz;
        let step = 1e-4;
        match (moved.steer(0.0, step), moved.steer(0.0, -step)) {
            (Some(up), Some(down)) => (up - down) / (2.0 * step),
            _ => f64::NAN,
        }
    };
    let found = measure::zeros(-0.4, 0.4, slope).ok()?;
    found.into_iter().min_by(|a, b| a.abs().total_cmp(&b.abs()))
}
