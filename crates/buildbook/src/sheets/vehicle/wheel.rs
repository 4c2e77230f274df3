//! What a wheel rolls on: the tyre's designation, its diameter, and the rolling circumference, which a roll-out always wins.

use std::rc::Rc;

use measure::{Kind, Length, Ratio, Reading, Stated, unit};
use trade::TradeError;
use trade::gearing::{
    Basis, Construction, Designation, rolled_out, rolling_circumference, tyre_diameter,
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
                Lack::entry(typed.key().clone())
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
            // A factor that was not typed follows the tyre; the page shows the one of the wheels reckoned last.
            let factor = tyre.as_ref().map_err(Clone::clone).and_then(|tyre| {
                found
                    .assume(factor, usual_factor(tyre.construction))
                    .ask()
                    .cloned()
            });
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

/// The usual share of circumference to diameter, as it would be typed.
fn usual_factor(construction: Construction) -> &'static str {
    match construction {
        Construction::Radial => "3.05 ± 0.05",
        Construction::Diagonal => "2.99 ± 0.06",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_usual_factor_is_the_one_of_the_trade() {
        for construction in [Construction::Radial, Construction::Diagonal] {
            let (value, off) = usual_factor(construction).split_once(" ± ").unwrap();
            let told = (value.parse::<f64>().unwrap(), off.parse::<f64>().unwrap());
            assert_eq!(told, trade::gearing::rolling_factor(construction));
        }
    }
}
