//! One set-up of the steering, from its entries to the linkage, and whether it steers the way the wheel is turned.

use ::trade::TradeError;
use ::trade::conversion::{ArmSwing, BallPlace, Shaft, SpringEye, Steering, Steers, steers};
use measure::{Angle, Length, Ratio};

use super::{ConversionSheet, SteeringEntry};
use crate::sheets::vehicle::VehicleFindings;
use crate::{All, Found, Lack, Rank, Remark};

/// A set-up of the steering.
#[derive(Debug, Clone)]
pub struct SetUp {
    /// `was` or `now`, as in its keys and results.
    pub name: &'static str,
    /// The linkage, or what it lacks. Where the spring is not known the axle stands still.
    pub steering: Result<Steering, Lack>,
    /// Whether the spring is known on which the axle moves, or what that lacks.
    pub spring: Result<(), Lack>,
    /// What stops it: it steers backwards, or nobody has looked yet.
    pub stopped: Option<Lack>,
    /// The side that the driver sits on: 1 left, -1 right.
    pub side: f64,
    /// The side of the wheel that carries the steering arm.
    pub arm_side: f64,
    /// At full left lock and at full right lock: the angles of the inner and the outer wheel, where they are known.
    pub locks: [Option<(f64, f64)>; 2],
}

impl SetUp {
    /// The linkage, where it may be used: it steers the way the wheel is turned.
    ///
    /// # Errors
    /// What is missing, or that it steers backwards.
    pub fn usable(&self) -> Result<&Steering, Lack> {
        match (&self.steering, &self.stopped) {
            (_, Some(stopped)) if stopped.refusal().is_some() => Err(stopped.clone()),
            (Ok(steering), None) => Ok(steering),
            (Ok(_), Some(stopped)) => Err(stopped.clone()),
            (Err(lack), None) => Err(lack.clone()),
            // The question of direction comes first among what is missing.
            (Err(lack), Some(stopped)) => Err(stopped.clone().and(lack.clone())),
        }
    }

    /// The linkage of an axle that moves on its spring: what bump steer rests on.
    ///
    /// # Errors
    /// As [`Self::usable`], or what is missing of the spring.
    pub fn on_spring(&self) -> Result<&Steering, Lack> {
        let both = (self.usable(), self.spring.clone()).all();
        both.map(|(steering, ())| steering)
    }
}

/// The set-up as it was and the new one, with what has to be said of their direction.
pub(super) fn both(
    sheet: &ConversionSheet,
    vehicle: &VehicleFindings,
    found: &mut Found,
) -> [SetUp; 2] {
    let sides = [&vehicle.sheet.steering_now, &vehicle.sheet.steering_wanted];
    let [was_side, now_side] = sides.map(|side| side.value().copied());
    [
        set_up("was", sheet, &sheet.was[0], was_side, found),
        set_up("now", sheet, &sheet.now[0], now_side, found),
    ]
}

fn set_up(
    name: &'static str,
    sheet: &ConversionSheet,
    entry: &SteeringEntry,
    vehicle_side: Option<&'static str>,
    found: &mut Found,
) -> SetUp {
    let side = entry.side.value().copied().or(vehicle_side);
    let sign = if side == Some("left") { 1.0 } else { -1.0 };
    let arm_side = if entry.arm_wheel.value() == Some(&"far") {
        -sign
    } else {
        sign
    };
    let known = match side {
        Some(_) => Ok(()),
        None => Err(Lack::needs([entry.side.key().clone()])),
    };
    let steering = (known.clone(), linkage(sheet, entry, sign, arm_side)).all();
    let steering = steering.map(|((), steering)| steering);
    let arm_at = known.map(|()| arm_side);
    let stopped = stopped(name, entry, steering.as_ref().ok(), arm_at, found);
    SetUp {
        name,
        steering,
        spring: spring(sheet).map(|_| ()),
        stopped,
        side: sign,
        arm_side,
        locks: [None; 2],
    }
}

fn to_side(out: &Length, side: f64) -> Length {
    if side > 0.0 { out.clone() } else { -out }
}

fn linkage(
    sheet: &ConversionSheet,
    entry: &SteeringEntry,
    side: f64,
    arm_side: f64,
) -> Result<Steering, Lack> {
    let shaft = match entry.gear.value() {
        Some(&"along") => Shaft::Along,
        Some(&"upright") => Shaft::Upright,
        Some(&"rack") => Shaft::Rack,
        _ => Shaft::Across,
    };
    let arm = if shaft == Shaft::Rack {
        let turn = entry.rack_turn.ask();
        turn.map(|turn| (turn / std::f64::consts::TAU).called("r_z"))
    } else {
        entry.drop_arm.ask().cloned()
    };
    let pin_out = match sheet.pin_out.value() {
        Some(out) => Ok(out.clone()),
        None if sheet.pin_out.is_bad() => Err(Lack::entry(sheet.pin_out.key().clone())),
        None => sheet.pivots.ask().map(|pivots| pivots / 2.0),
    };
    let gear = (
        entry.box_x.ask(),
        entry.box_out.ask(),
        entry.box_z.ask(),
        arm,
        entry.at_centre.ask(),
    );
    let ball = (entry.ball_x.ask(), entry.ball_out.ask(), entry.ball_z.ask());
    let pin = (pin_out, sheet.pin_x.ask());
    let lean = (sheet.castor.ask(), sheet.inclination.ask());
    let (gear, ball) = (gear.all(), ball.all()).all()?;
    let (pin, lean) = (pin.all(), lean.all()).all()?;
    let (fixed_eye, half_spring, seat_above_eye) =
        spring(sheet).unwrap_or((SpringEye::Front, Length::exact(1.0), Length::exact(0.0)));
    let centre: Angle = match shaft {
        Shaft::Along | Shaft::Upright if side < 0.0 => -gear.4,
        Shaft::Rack => Ratio::exact(0.0),
        _ => gear.4.clone(),
    };
    Ok(Steering {
        shaft,
        box_at: [gear.0.clone(), to_side(gear.1, side), gear.2.clone()],
        drop_arm: gear.3,
        at_centre: centre,
        ball: [ball.0.clone(), to_side(ball.1, arm_side), ball.2.clone()],
        pin: [pin.1.clone(), to_side(&pin.0, arm_side)],
        castor: lean.0.clone(),
        inclination: lean.1.clone(),
        fixed_eye,
        half_spring,
        seat_above_eye,
    })
}

/// The front spring: its fixed eye, from there to the axle, and how far the axle's seat lies above it.
fn spring(sheet: &ConversionSheet) -> Result<(SpringEye, Length, Length), Lack> {
    let (fixed_eye, half_spring, seat_above_eye) = (
        sheet.fixed_eye.ask(),
        sheet.half_spring.ask(),
        sheet.seat_above_eye.ask(),
    )
        .all()?;
    let fixed_eye = if *fixed_eye == "rear" {
        SpringEye::Rear
    } else {
        SpringEye::Front
    };
    Ok((fixed_eye, half_spring.clone(), seat_above_eye.clone()))
}

/// Whether the set-up may be used. The new one must have its direction looked at; the old one was driven.
fn stopped(
    name: &'static str,
    entry: &SteeringEntry,
    steering: Option<&Steering>,
    arm_side: Result<f64, Lack>,
    found: &mut Found,
) -> Option<Lack> {
    let looked = (entry.arm_swings.ask(), entry.ball_stands.ask()).all();
    let (swings, stands) = match looked {
        Ok(looked) => looked,
        Err(lack) => return (name == "now").then_some(lack),
    };
    let swing = match *swings {
        "forward" => ArmSwing::Forward,
        "backward" => ArmSwing::Backward,
        "left" => ArmSwing::Left,
        _ => ArmSwing::Right,
    };
    // What is inside on one side is outside on the other.
    let left_is_outside = match (arm_side, *stands) {
        (Ok(side), _) => side > 0.0,
        (Err(lack), "inside" | "outside") => return (name == "now").then_some(lack),
        _ => false,
    };
    let place = match *stands {
        "front" => BallPlace::Front,
        "behind" => BallPlace::Behind,
        "outside" if left_is_outside => BallPlace::LeftOfPin,
        "inside" if !left_is_outside => BallPlace::LeftOfPin,
        _ => BallPlace::RightOfPin,
    };
    let told = steers(swing, place);
    let measured = steering.and_then(|steering| measured(steering, swing));
    if told == Steers::True && measured.is_some_and(|measured| measured != Steers::True) {
        let remark = Remark::new(Rank::Danger, "measures_steer_backwards");
        found.remark(remark.at(entry.ball_stands.key().clone()));
        return Some(Lack::refused(TradeError::SteersBackwards));
    }
    let (fact, refused) = match told {
        Steers::True => return None,
        Steers::Backwards => ("steers_backwards", TradeError::SteersBackwards),
        Steers::NotAtAll => ("steers_not_at_all", TradeError::SteersNotAtAll),
    };
    found.remark(Remark::new(Rank::Danger, fact).at(entry.arm_swings.key().clone()));
    Some(Lack::refused(refused))
}

/// The same by the measures: which way the wheels go with the arm swinging so. `None` where the arm cannot swing that
/// way by how the gear lies.
fn measured(steering: &Steering, swing: ArmSwing) -> Option<Steers> {
    let first = match (steering.shaft, swing) {
        (Shaft::Across, ArmSwing::Forward) => 1.0,
        (Shaft::Across, ArmSwing::Backward) => -1.0,
        (Shaft::Across, _) | (_, ArmSwing::Forward | ArmSwing::Backward) => return None,
        (_, ArmSwing::Left) => 1.0,
        (_, ArmSwing::Right) => -1.0,
    };
    let ratio = steering
        .linkage()
        .ratio(0.0)
        .filter(|ratio| ratio.is_finite())?;
    // Positive: the wheels go to the left as the arm swings first; the wheel was turned to the right.
    Some(if first * ratio < 0.0 {
        Steers::True
    } else {
        Steers::Backwards
    })
}
