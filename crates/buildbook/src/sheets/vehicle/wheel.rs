//! What a wheel rolls on: the tyre's designation, its diameter, and the rolling circumference, which a roll-out always wins.

use std::rc::Rc;

use measure::{Kind, Length, Ratio, Reading, Stated, unit};
use trade::TradeError;
use trade::gearing::{
    Basis, Designation, rolled_out, rolling_circumference, rolling_factor, tyre_diameter,
};

use super::VehicleSheet;
use crate::{All, Found, Given, Lack, Rank, Remark};

/// One axle's wheel on the road.
#[derive(Debug, Clone)]
pub struct Wheel {
    /// The tyre, where its designation can be read.
    pub tyre: Option<Designation>,
    /// What its diameter rests on.
    pub basis: Option<Basis>,
    /// Overall diameter of the new tyre, from the designation.
    pub diameter: Result<Length, Lack>,
    /// How far the wheel rolls in one turn.
    pub circumference: Result<Length, Lack>,
    /// Whether the circumference was rolled out.
    pub measured: bool,
}

impl Wheel {
    /// A front wheel.
    pub(super) fn front(sheet: &VehicleSheet, found: &mut Found) -> Self {
        let roll_out = (&sheet.roll_out_front, &sheet.roll_out_front_turns);
        let wheel = Self::of(&sheet.tyre_front, roll_out, &sheet.rolling_factor, found);
        wheel.show("front", &sheet.tyre_front, found);
        wheel
    }

    /// A rear wheel.
    pub(super) fn rear(sheet: &VehicleSheet, found: &mut Found) -> Self {
        let roll_out = (&sheet.roll_out_rear, &sheet.roll_out_rear_turns);
        let wheel = Self::of(&sheet.tyre_rear, roll_out, &sheet.rolling_factor, found);
        wheel.show("rear", &sheet.tyre_rear, found);
        wheel
    }

    fn of(
        typed: &Given<Rc<str>>,
        (distance, turns): (&Given<Length>, &Given<Ratio>),
        factor: &Given<Ratio>,
        found: &mut Found,
    ) -> Self {
        let tyre = typed.ask().and_then(|text| {
            Designation::read(text).map_err(|fault| {
                let fault = TradeError::from(fault);
                found.errors.push((typed.key().clone(), fault.into()));
                Lack::Entry(typed.key().clone())
            })
        });
        let size = tyre.as_ref().map(tyre_diameter);
        let diameter = size.map_err(Clone::clone).map(|size| {
            let reading = Reading {
                plus: size.plus_m,
                minus: size.minus_m,
                stated: Stated::Assumed,
                ..Reading::exact(size.metres, &unit::METRE)
            };
            Length::entry(typed.key().shared(), "D", Kind::Length, &reading)
        });
        let measured = !distance.is_blank();
        let circumference = if measured {
            (distance.ask(), turns.ask())
                .all()
                .map(|(distance, turns)| rolled_out(distance, turns))
        } else {
            let factor = tyre
                .as_ref()
                .map_err(Clone::clone)
                .and_then(|tyre| factor_of(tyre, factor));
            (diameter.clone(), factor)
                .all()
                .map(|(diameter, factor)| rolling_circumference(&diameter, &factor))
        };
        Self {
            basis: size.ok().map(|size| size.basis),
            tyre: tyre.ok(),
            diameter,
            circumference,
            measured,
        }
    }

    fn show(&self, place: &str, typed: &Given<Rc<str>>, found: &mut Found) {
        found.show(
            format!("vehicle/diameter_{place}"),
            Kind::Length,
            &self.diameter,
        );
        found.show(
            format!("vehicle/circumference_{place}"),
            Kind::Length,
            &self.circumference,
        );
        if self.basis == Some(Basis::RuleOfThumb) && !self.measured {
            let remark = Remark::new(Rank::Remark, "tyre_by_rule_of_thumb").at(typed.key().clone());
            found.remark(match &self.diameter {
                Ok(diameter) => remark.with(diameter.figure(Kind::Length)),
                Err(_) => remark,
            });
        }
    }
}

/// The share of circumference to diameter: typed, or the usual one for the way the tyre is built.
fn factor_of(tyre: &Designation, typed: &Given<Ratio>) -> Result<Ratio, Lack> {
    match typed.ask() {
        Ok(factor) => Ok(factor.clone()),
        Err(Lack::Needs(_)) => {
            let (value, off) = rolling_factor(tyre.construction);
            let reading = Reading {
                plus: off,
                minus: off,
                stated: Stated::Assumed,
                ..Reading::exact(value, &unit::ONE)
            };
            Ok(Ratio::entry(
                typed.key().shared(),
                "F",
                Kind::Ratio,
                &reading,
            ))
        }
        Err(lack) => Err(lack),
    }
}
