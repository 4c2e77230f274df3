//! The full-load torque of an engine: through measured points, or between its peaks of torque and power.

use core::f64::consts::PI;
use std::cell::OnceCell;
use std::rc::Rc;

use measure::{Kind, Power, Ratio, Rotation, Torque, Traced};

use super::pchip::{Pchip, hermite};
use super::sources;
use crate::TradeError;

/// Full-load torque over engine speed.
#[derive(Clone)]
pub struct TorqueCurve {
    shape: Shape,
    condition: Ratio,
    /// The same as a plain function, once a search has asked for it.
    plain: OnceCell<Rc<dyn Fn(f64) -> f64>>,
}

#[derive(Clone)]
enum Shape {
    Points {
        speeds: Rc<[f64]>,
        torques: Vec<Torque>,
    },
    Peaks {
        torque: Torque,
        torque_at: Rotation,
        power: Power,
        power_at: Rotation,
    },
}

impl TorqueCurve {
    /// The monotone cubic through points of torque at engine speeds, taken in ascending order of speed.
    ///
    /// # Errors
    /// [`TradeError::TorquePoints`] with fewer than two points, or two at one speed.
    ///
    /// # Source
    /// F. N. Fritsch and J. Butland, 1984; the same as SciPy's `PchipInterpolator`.
    pub fn through(points: &[(Rotation, Torque)]) -> Result<Self, TradeError> {
        let mut points: Vec<_> = points.to_vec();
        measure::sort_by(&mut points, |a, b| a.0.value().total_cmp(&b.0.value()));
        let speeds: Rc<[f64]> = points.iter().map(|(n, _)| n.value()).collect();
        let ascending = speeds.windows(2).all(|two| two[0] < two[1]);
        if speeds.len() < 2 || !ascending || speeds[0] <= 0.0 {
            return Err(TradeError::TorquePoints);
        }
        let torques = points.into_iter().map(|(_, torque)| torque).collect();
        Ok(Self {
            shape: Shape::Points { speeds, torques },
            condition: Ratio::exact(1.0),
            plain: OnceCell::new(),
        })
    }

    /// A curve from the peaks of torque and power.
    ///
    /// Between the peaks the cubic that is level at peak torque and falls as -T/n at peak power, so that power is level
    /// there; below, a parabola through peak torque; above, power falls as a parabola.
    ///
    /// # Valid range
    /// From a quarter of the speed of peak power to a quarter above it.
    ///
    /// # Errors
    /// [`TradeError::TorquePeaks`] where peak power comes at no higher speed than peak torque, or asks for more than peak
    /// torque.
    ///
    /// # Source
    /// The conditions at the two peaks; the shape below peak torque is common practice, no source.
    pub fn between_peaks(
        torque: &Torque,
        torque_at: &Rotation,
        power: &Power,
        power_at: &Rotation,
    ) -> Result<Self, TradeError> {
        let torque_at_power = power.value() / (2.0 * PI * power_at.value());
        let sound = power_at.value() > torque_at.value()
            && torque_at.value() > 0.0
            && torque_at_power > 0.0
            && torque_at_power <= torque.value();
        if !sound {
            return Err(TradeError::TorquePeaks);
        }
        let shape = Shape::Peaks {
            torque: torque.clone(),
            torque_at: torque_at.clone(),
            power: power.clone(),
            power_at: power_at.clone(),
        };
        Ok(Self {
            shape,
            condition: Ratio::exact(1.0),
            plain: OnceCell::new(),
        })
    }

    /// The same engine in another state: every torque times a share (the air, the way it was rated).
    #[must_use]
    pub fn in_condition(&self, share: &Ratio) -> Self {
        Self {
            shape: self.shape.clone(),
            condition: share * &self.condition,
            plain: OnceCell::new(),
        }
    }

    /// The torque at an engine speed; beyond the measured points, that of the last.
    ///
    /// # Units
    /// Newton metres from turns per second.
    ///
    /// # Source
    /// As the curve's.
    #[must_use]
    pub fn torque(&self, engine_speed: &Rotation) -> Torque {
        let full_load = match &self.shape {
            Shape::Points { speeds, torques } => {
                let mut inputs: Vec<&dyn Traced> = vec![engine_speed];
                inputs.extend(torques.iter().map(|torque| torque as &dyn Traced));
                let speeds = Rc::clone(speeds);
                Torque::tabled("torque curve", &inputs, move |x| {
                    Pchip::through(&speeds, &x[1..]).map_or(f64::NAN, |curve| curve.at(x[0]))
                })
                .cited(&sources::MONOTONE)
            }
            Shape::Peaks {
                torque,
                torque_at,
                power,
                power_at,
            } => {
                let inputs: [&dyn Traced; 5] = [engine_speed, torque, torque_at, power, power_at];
                Torque::tabled("torque curve", &inputs, |x| {
                    between_peaks(x[0], [x[1], x[2], x[3], x[4]])
                })
                .cited(&sources::PEAKS)
            }
        };
        (full_load * &self.condition)
            .of_kind(Kind::Torque)
            .called("T")
    }

    /// The curve as a plain function for searches: N·m over turns per second.
    pub(super) fn plain(&self) -> Rc<dyn Fn(f64) -> f64> {
        Rc::clone(self.plain.get_or_init(|| self.made_plain()))
    }

    fn made_plain(&self) -> Rc<dyn Fn(f64) -> f64> {
        let share = self.condition.value();
        match &self.shape {
            Shape::Points { speeds, torques } => {
                let torques: Vec<f64> = torques.iter().map(Torque::value).collect();
                let curve = Pchip::through(speeds, &torques);
                Rc::new(move |n| curve.as_ref().map_or(f64::NAN, |curve| curve.at(n)) * share)
            }
            Shape::Peaks {
                torque,
                torque_at,
                power,
                power_at,
            } => {
                let peaks = [
                    torque.value(),
                    torque_at.value(),
                    power.value(),
                    power_at.value(),
                ];
                Rc::new(move |n| between_peaks(n, peaks) * share)
            }
        }
    }

    /// The lowest and highest engine speed that the curve speaks for, turns per second.
    #[must_use]
    pub fn range(&self) -> (f64, f64) {
        match &self.shape {
            Shape::Points { speeds, .. } => (speeds[0], speeds[speeds.len() - 1]),
            Shape::Peaks { power_at, .. } => (0.25 * power_at.value(), 1.15 * power_at.value()),
        }
    }

    /// The engine speed between two others at which torque is greatest.
    #[must_use]
    pub fn peak_torque_at(&self, lowest: f64, highest: f64) -> f64 {
        peak(&*self.plain(), lowest, highest).0
    }

    /// Torque and power over speed for a drawing: turns per second, N·m, W.
    #[must_use]
    pub fn points(&self, lowest: f64, highest: f64, count: usize) -> Vec<(f64, f64, f64)> {
        let torque = self.plain();
        (0..count)
            .map(|k| lowest + (highest - lowest) * k as f64 / (count.max(2) - 1) as f64)
            .map(|n| (n, torque(n), 2.0 * PI * n * torque(n)))
            .collect()
    }
}

/// Where a function is greatest, and what it is there: a coarse look, then golden sections round the best place.
pub(super) fn peak(f: &dyn Fn(f64) -> f64, lowest: f64, highest: f64) -> (f64, f64) {
    const PLACES: usize = 40;
    /// The last section is a thousand-millionth of the whole: so near its top no curve is any lower.
    const SECTIONS: usize = 38;
    let place = |k: usize| lowest + (highest - lowest) * k as f64 / PLACES as f64;
    let tried = (0..=PLACES).map(|k| (k, f(place(k))));
    let (at, value) = tried
        .max_by(|a, b| a.1.total_cmp(&b.1))
        .unwrap_or((0, f64::NAN));
    let golden = 0.5 * (5.0f64.sqrt() - 1.0);
    let (mut a, mut b) = (place(at.saturating_sub(1)), place((at + 1).min(PLACES)));
    let (mut c, mut d) = (b - golden * (b - a), a + golden * (b - a));
    let (mut at_c, mut at_d) = (f(c), f(d));
    for _ in 0..SECTIONS {
        if at_c > at_d {
            (b, d, at_d) = (d, c, at_c);
            c = b - golden * (b - a);
            at_c = f(c);
        } else {
            (a, c, at_c) = (c, d, at_d);
            d = a + golden * (b - a);
            at_d = f(d);
        }
    }
    let found = if at_c > at_d { (c, at_c) } else { (d, at_d) };
    if found.1 >= value {
        found
    } else {
        (place(at), value)
    }
}

fn between_peaks(n: f64, [torque, torque_at, power, power_at]: [f64; 4]) -> f64 {
    let torque_at_power = power / (2.0 * PI * power_at);
    let span = power_at - torque_at;
    let fall = torque - torque_at_power;
    if n < torque_at {
        let drop = (fall * (torque_at / span).powi(2)).min(0.35 * torque);
        return torque - drop * (1.0 - n / torque_at).powi(2);
    }
    if n > power_at {
        let over = n / power_at - 1.0;
        return power * (1.0 - over * over) / (2.0 * PI * n);
    }
    // A steeper end than three chords would make the cubic rise above peak torque.
    let end = (torque_at_power / power_at * span).min(3.0 * fall);
    hermite(
        (n - torque_at) / span,
        [torque, torque_at_power],
        [0.0, -end],
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn built(torque: f64, at: f64, kilowatts: f64, power_at: f64) -> TorqueCurve {
        TorqueCurve::between_peaks(
            &Torque::exact(torque),
            &Rotation::exact(at / 60.0),
            &Power::exact(kilowatts * 1e3),
            &Rotation::exact(power_at / 60.0),
        )
        .unwrap()
    }

    #[test]
    fn a_built_curve_meets_both_peaks_and_is_level_there() {
        let curve = built(255.0, 1600.0, 70.0, 3200.0);
        let torque = curve.plain();
        assert!((torque(1600.0 / 60.0) - 255.0).abs() < 1e-9);
        let watts = |rpm: f64| 2.0 * PI * rpm / 60.0 * torque(rpm / 60.0);
        assert!((watts(3200.0) - 70e3).abs() < 1e-6);
        assert!((watts(3201.0) - watts(3199.0)).abs() < 0.1);
        assert!((torque(1601.0 / 60.0) - torque(1599.0 / 60.0)).abs() < 1e-3);
    }

    #[test]
    fn peaks_that_cannot_belong_together_are_refused() {
        let peaks = |torque: f64, at: f64, power: f64, power_at: f64| {
            TorqueCurve::between_peaks(
                &Torque::exact(torque),
                &Rotation::exact(at),
                &Power::exact(power),
                &Rotation::exact(power_at),
            )
            .err()
        };
        assert_eq!(
            peaks(200.0, 50.0, 40e3, 40.0),
            Some(TradeError::TorquePeaks)
        );
        assert_eq!(
            peaks(100.0, 20.0, 90e3, 50.0),
            Some(TradeError::TorquePeaks)
        );
    }

    proptest! {
        #[test]
        fn a_built_curve_never_exceeds_its_peak_torque(
            torque in 80.0f64..400.0, at in 800.0f64..2500.0, further in 500.0f64..3000.0, share in 0.55f64..1.0, n in 0.3f64..1.2,
        ) {
            let power_at = at + further;
            let kilowatts = share * torque * 2.0 * PI * power_at / 60.0 / 1e3;
            let curve = built(torque, at, kilowatts, power_at).plain();
            prop_assert!(curve(n * power_at / 60.0) <= torque * (1.0 + 1e-9));
        }
    }
}
