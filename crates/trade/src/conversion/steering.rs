//! The traced steering: ratio, link, lock and bump steer of a linkage, each with its ±.

use measure::{Angle, Held, Kind, Length, Ratio, Source, Table, Traced};

use super::linkage::{ARC_SHARE, pin_way};
use super::{Linkage, Shaft, SpringEye};
use crate::TradeError;

static LINKAGE: Source = Source {
    title: "Spatial geometry of the steering linkage: the drag link keeps its length",
    place: "solved for the steer angle; axle arc as SAE HS-788",
    held: Held::Computed,
};

static SQUARE_LINK: Source = Source {
    title: "Spatial geometry: a link whose end moves square to it turns nothing",
    place: "axle arc as SAE HS-788",
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
    /// How far the king pin's top leans back.
    pub castor: Angle,
    /// How far the king pin's top leans in, towards the vehicle's middle.
    pub inclination: Angle,
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
        inputs.push(&self.castor);
        inputs.push(&self.inclination);
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
        .chain([self.castor.value(), self.inclination.value()])
        .collect();
        linkage(self.shaft, self.fixed_eye, &numbers)
    }

    /// An angle or ratio of the linkage as one named step, resting on its measures and on `more`.
    fn solved(
        &self,
        name: &'static str,
        more: &[&dyn Traced],
        of: impl Fn(&Linkage, &[f64]) -> Option<f64> + 'static,
    ) -> Result<Angle, TradeError> {
        let (shaft, eye) = (self.shaft, self.fixed_eye);
        let mut inputs = self.inputs();
        let own = inputs.len();
        inputs.extend(more);
        let table = Table::new(name, &inputs, move |numbers| {
            let linkage = linkage(shaft, eye, numbers);
            vec![of(&linkage, &numbers[own..]).unwrap_or(f64::NAN)]
        });
        let found: Angle = table.output(0).of_kind(Kind::Angle).cited(&LINKAGE);
        found
            .finite()
            .map_err(|_| TradeError::CannotReach { link: "drag link" })
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
        let [x, y, z] = self.link();
        (x.squared() + y.squared() + z.squared())
            .sqrt()
            .of_kind(Kind::Length)
            .cited(&LINKAGE)
    }

    /// From the drop arm's ball to the steering arm's, straight ahead.
    fn link(&self) -> [Length; 3] {
        let [x, y, z] = &self.ball;
        let [box_x, box_y, box_z] = &self.box_at;
        let hangs = &self.drop_arm * self.at_centre.cos();
        let swings = &self.drop_arm * self.at_centre.sin();
        match self.shaft {
            Shaft::Across => [x - box_x - swings, y - box_y, z - box_z + hangs],
            Shaft::Along => [x - box_x, y - box_y - swings, z - box_z + hangs],
            Shaft::Upright => [x - box_x + hangs, y - box_y - swings, z - box_z],
            Shaft::Rack => [x - box_x, y - box_y, z - box_z],
        }
    }

    /// The steer angle of this wheel with the drop arm swung by an angle.
    ///
    /// # Errors
    /// [`TradeError::CannotReach`] where the link cannot.
    pub fn steer(&self, swing: &Angle) -> Result<Angle, TradeError> {
        self.solved("steer angle", &[swing], |linkage, more| {
            linkage.steer(more[0], 0.0)
        })
    }

    /// The swing of the drop arm, from centre, that gives a steer angle.
    ///
    /// # Errors
    /// [`TradeError::CannotReach`] where the link cannot.
    pub fn swing(&self, steer: &Angle) -> Result<Angle, TradeError> {
        self.solved("swing of the arm", &[steer], |linkage, more| {
            linkage.swing(more[0])
        })
    }

    /// The swing of the drop arm for a radian of steer, at a steer angle: the linkage's part of the steering ratio.
    ///
    /// # Errors
    /// [`TradeError::CannotReach`] where the link cannot.
    pub fn ratio(&self, at: &Angle) -> Result<Ratio, TradeError> {
        let ratio = self.solved("swing for a unit of steer", &[at], |linkage, more| {
            linkage.ratio(more[0])
        })?;
        Ok(ratio.abs().of_kind(Kind::Ratio))
    }

    /// The steer that the wheel takes by itself when the axle rises, the steering wheel held: positive to the left.
    ///
    /// # Errors
    /// [`TradeError::CannotReach`] where the link cannot.
    pub fn bump_steer(&self, rise: &Length) -> Result<Angle, TradeError> {
        self.solved("steer by the axle's rise", &[rise], |linkage, more| {
            linkage.steer(0.0, more[0])
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

    /// How far the axle moves forward for a rise, at ride height, on its arc about the fixed eye.
    fn lean(&self) -> Result<Ratio, TradeError> {
        let radius = &self.half_spring * ARC_SHARE;
        let along = (radius.squared() - self.seat_above_eye.squared()).sqrt();
        let lean = (&self.seat_above_eye / along).called("a").finite();
        let lean = lean.map_err(|_| TradeError::Undetermined {
            entry: "half spring",
        })?;
        Ok(match self.fixed_eye {
            SpringEye::Front => lean,
            SpringEye::Rear => -lean,
        })
    }

    /// How far the box must be raised for the least bump steer: then the drag link stands square to the way that the
    /// axle moves at ride height, z + a x = 0 with the link's x and z and the axle's lean a. A ball of the steering arm
    /// lowered by as much does the same.
    ///
    /// # Units
    /// Metres, from where the box is now.
    ///
    /// # Errors
    /// [`TradeError::Undetermined`] where the axle stands at the end of its arc.
    ///
    /// # Source
    /// Spatial geometry: a link whose end moves square to it keeps its length without turning anything.
    pub fn best_box_height(&self) -> Result<Length, TradeError> {
        let [x, _, z] = self.link();
        Ok((z + x * self.lean()?)
            .of_kind(Kind::Length)
            .cited(&SQUARE_LINK))
    }

    /// The drop arm for the least bump steer at ride height, the box left where it is.
    ///
    /// # Units
    /// Metres.
    ///
    /// # Errors
    /// [`TradeError::Undetermined`] where the arm lies flat or is a rack, so that its length does not raise the ball;
    /// [`TradeError::OutOfRange`] where it would come out shorter than 30 mm or longer than half a metre.
    ///
    /// # Source
    /// As [`Self::best_box_height`].
    pub fn best_drop_arm(&self) -> Result<Length, TradeError> {
        let lean = self.lean()?;
        let away = |i: usize| &self.ball[i] - &self.box_at[i];
        let gain = match self.shaft {
            Shaft::Across => self.at_centre.sin() * &lean - self.at_centre.cos(),
            Shaft::Along => -self.at_centre.cos(),
            Shaft::Upright | Shaft::Rack => {
                return Err(TradeError::Undetermined { entry: "drop arm" });
            }
        };
        let arm = (away(2) + away(0) * lean) / gain;
        if !(0.03..=0.5).contains(&arm.value()) {
            return Err(TradeError::OutOfRange {
                entry: "drop arm",
                lowest: 0.03,
                highest: 0.5,
            });
        }
        Ok(arm.of_kind(Kind::Length).cited(&SQUARE_LINK))
    }

    /// The steering with the end of its box moved by so much forward, to the left and up.
    #[must_use]
    pub fn moved(&self, by: [f64; 3]) -> Self {
        let mut moved = self.clone();
        for (at, by) in moved.box_at.iter_mut().zip(by) {
            *at = &*at + Length::exact(by);
        }
        moved
    }
}

fn linkage(shaft: Shaft, fixed_eye: SpringEye, n: &[f64]) -> Linkage {
    Linkage {
        pin_way: pin_way(n[12], n[13], n[9]),
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
