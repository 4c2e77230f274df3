//! The springs together: what each axle carries, rake and lean, castor and pinion.

use ::trade::springs as trade;
use measure::{Angle, Force, Kind, Length, Mass};

use super::one::Spring;
use super::plan;
use super::{SpringEntry, SpringsSheet};
use crate::sheets::vehicle::VehicleFindings;
use crate::{All, Found, Given, Lack};

/// Whether the springs stand under the laden vehicle: as chosen, else laden when that is known.
pub(super) fn laden(sheet: &SpringsSheet, vehicle: &VehicleFindings) -> bool {
    match sheet.under.value() {
        Some(state) => *state == "laden",
        None => {
            let [_, front] = &vehicle.front;
            let [_, rear] = &vehicle.rear;
            front.is_ok() || rear.is_ok()
        }
    }
}

/// An axle by name.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Axle {
    Front,
    Rear,
}

impl Axle {
    fn of(entry: &SpringEntry) -> Option<Self> {
        match *entry.place.value()? {
            "front_left" | "front_right" => Some(Self::Front),
            _ => Some(Self::Rear),
        }
    }

    fn name(self) -> &'static str {
        match self {
            Self::Front => "front",
            Self::Rear => "rear",
        }
    }

    fn load(self, vehicle: &VehicleFindings, laden: bool) -> Result<Mass, Lack> {
        let loads = match self {
            Self::Front => &vehicle.front,
            Self::Rear => &vehicle.rear,
        };
        loads[usize::from(laden)].clone()
    }

    fn unsprung(self, vehicle: &VehicleFindings) -> &Given<Mass> {
        match self {
            Self::Front => &vehicle.sheet.unsprung_front,
            Self::Rear => &vehicle.sheet.unsprung_rear,
        }
    }

    fn limit(self, vehicle: &VehicleFindings) -> &Given<Mass> {
        match self {
            Self::Front => &vehicle.sheet.front_limit,
            Self::Rear => &vehicle.sheet.rear_limit,
        }
    }
}

/// Load on a spring: as weighed, else its share of what its axle carries.
pub(super) fn load_on(
    entry: &SpringEntry,
    vehicle: &VehicleFindings,
    laden: bool,
) -> Result<Force, Lack> {
    if !entry.load.is_blank() {
        return entry.load.ask().cloned();
    }
    let Some(axle) = Axle::of(entry) else {
        return Err(match entry.place.ask() {
            Err(lack) if lack.is_entry() => lack,
            _ => Lack::needs([entry.load.key().clone()]),
        });
    };
    let (load, unsprung, share) = (
        axle.load(vehicle, laden),
        axle.unsprung(vehicle).ask(),
        entry.share.ask(),
    )
        .all()?;
    Ok(trade::spring_load(&load, unsprung, share))
}

/// The springs of one axle side by side.
struct Side<'a> {
    left: Option<&'a Spring>,
    right: Option<&'a Spring>,
}

impl<'a> Side<'a> {
    fn of(springs: &'a [Spring], axle: Axle) -> Self {
        let at = |side: &str| {
            let place = format!("{}_{side}", axle.name());
            springs
                .iter()
                .find(|spring| spring.entry.place.value().is_some_and(|is| **is == *place))
        };
        Self {
            left: at("left"),
            right: at("right"),
        }
    }

    fn each(&self) -> impl Iterator<Item = &'a Spring> {
        self.left.into_iter().chain(self.right)
    }

    /// The mean of a length over the sides that are there.
    fn mean(&self, of: impl Fn(&Spring) -> Result<Length, Lack>) -> Option<Result<Length, Lack>> {
        match (self.left, self.right) {
            (Some(left), Some(right)) => {
                Some((of(left), of(right)).all().map(|(l, r)| (l + r) / 2.0))
            }
            (Some(one), None) | (None, Some(one)) => Some(of(one)),
            (None, None) => None,
        }
    }
}

/// Height after the planned work; as it stands where nothing is planned.
fn height_after(spring: &Spring) -> Result<Length, Lack> {
    match &spring.plan {
        Some(plan) => plan.height(spring),
        None => spring.height(),
    }
}

/// Results of the vehicle as a whole.
pub(super) fn show(
    sheet: &SpringsSheet,
    vehicle: &VehicleFindings,
    springs: &[Spring],
    laden: bool,
    found: &mut Found,
) {
    let (front, rear) = (
        Side::of(springs, Axle::Front),
        Side::of(springs, Axle::Rear),
    );
    for (axle, side) in [(Axle::Front, &front), (Axle::Rear, &rear)] {
        show_axle(axle, side, vehicle, laden, found);
    }
    for (name, side, base) in [
        ("lean_front", &front, &sheet.base_front),
        ("lean_rear", &rear, &sheet.base_rear),
    ] {
        if let (Some(left), Some(right)) = (side.left, side.right) {
            let lean = |of: &dyn Fn(&Spring) -> Result<Length, Lack>| {
                (of(left), of(right), base.ask())
                    .all()
                    .map(|(left, right, base)| trade::lean_across(&left, &right, base))
            };
            found.show(
                format!("springs/{name}"),
                Kind::Angle,
                &lean(&Spring::height),
            );
            if side.each().any(|spring| spring.plan.is_some()) {
                found.show(
                    format!("springs/{name}_after"),
                    Kind::Angle,
                    &lean(&height_after),
                );
            }
        }
    }
    let rakes = show_rake(vehicle, &front, &rear, found);
    let raked = match rakes {
        Some((before, after)) => Some((before, after).all().map(|(before, after)| after - before)),
        None => raked_by_one(vehicle, &front, &rear),
    };
    show_angles(sheet, &front, &rear, raked, found);
}

/// Load, limit and what the springs themselves allow, axle by axle.
fn show_axle(
    axle: Axle,
    side: &Side<'_>,
    vehicle: &VehicleFindings,
    laden: bool,
    found: &mut Found,
) {
    let name = axle.name();
    if side.each().next().is_none() {
        return;
    }
    let load = axle.load(vehicle, laden);
    let room = (axle.limit(vehicle).ask(), load.clone())
        .all()
        .map(|(limit, load)| (limit - load).called("room"));
    found.show(format!("springs/axle_load_{name}"), Kind::Mass, &load);
    found.show(format!("springs/axle_room_{name}"), Kind::Mass, &room);
    if let (Some(left), Some(right)) = (side.left, side.right) {
        let [left, right] = [left, right].map(Spring::load_allowed);
        let allowed =
            (left, right, axle.unsprung(vehicle).ask())
                .all()
                .map(|(left, right, unsprung)| {
                    ((left + right) / trade::gravity() + unsprung).called("m_springs")
                });
        found.show(format!("springs/axle_allowed_{name}"), Kind::Mass, &allowed);
    }
}

/// Rake as it stands and after the planned work.
fn show_rake(
    vehicle: &VehicleFindings,
    front: &Side<'_>,
    rear: &Side<'_>,
    found: &mut Found,
) -> Option<(Result<Angle, Lack>, Result<Angle, Lack>)> {
    let of = |height: &dyn Fn(&Spring) -> Result<Length, Lack>| {
        let (front, rear) = (front.mean(height)?, rear.mean(height)?);
        let all = (front, rear, vehicle.sheet.wheelbase.ask()).all();
        Some(all.map(|(front, rear, wheelbase)| trade::rake(&front, &rear, wheelbase)))
    };
    let now = of(&Spring::height)?;
    let after = of(&height_after)?;
    found.show("springs/rake", Kind::Angle, &now);
    if front
        .each()
        .chain(rear.each())
        .any(|spring| spring.plan.is_some())
    {
        let change = (now.clone(), after.clone())
            .all()
            .map(|(now, after)| (after - now).called("Δrake"));
        found.show("springs/rake_after", Kind::Angle, &after);
        found.show("springs/rake_change", Kind::Angle, &change);
    }
    Some((now, after))
}

/// The change of rake where the springs of one axle only were entered: those of the other stay as they are.
fn raked_by_one(
    vehicle: &VehicleFindings,
    front: &Side<'_>,
    rear: &Side<'_>,
) -> Option<Result<Angle, Lack>> {
    let rise = |spring: &Spring| {
        (spring.height(), height_after(spring))
            .all()
            .map(|(now, after)| after - now)
    };
    let as_is = || Ok(Length::exact(0.0));
    let planned = |side: &Side<'_>| side.each().any(|spring| spring.plan.is_some());
    let (front, rear) = match (front.mean(rise), rear.mean(rise)) {
        (Some(rise), None) if planned(front) => (rise, as_is()),
        (None, Some(rise)) if planned(rear) => (as_is(), rise),
        _ => return None,
    };
    let all = (front, rear, vehicle.sheet.wheelbase.ask()).all();
    Some(all.map(|(front, rear, wheelbase)| trade::rake(&front, &rear, wheelbase)))
}

/// What the planned work does to castor and pinion: the seat's turn against the frame, and the frame's own rake.
fn show_angles(
    sheet: &SpringsSheet,
    front: &Side<'_>,
    rear: &Side<'_>,
    raked: Option<Result<Angle, Lack>>,
    found: &mut Found,
) {
    let Some(raked) = raked else { return };
    let raked = raked.map(|raked| raked.called("Δrake"));
    for (name, changed, side, as_is) in [
        ("castor", "Δcastor", front, &sheet.castor),
        ("pinion", "Δpinion", rear, &sheet.pinion),
    ] {
        let turns: Result<Vec<Angle>, Lack> = side
            .each()
            .filter_map(|spring| Some(plan::seat_turn(spring, spring.plan.as_ref()?)))
            .collect();
        let sides = side.each().count();
        if sides == 0 {
            continue;
        }
        let change = (turns, raked.clone()).all().map(|(turns, raked)| {
            #[expect(clippy::cast_precision_loss, reason = "two sides at most")]
            let turn = Angle::sum_of(turns.iter()) / sides as f64;
            (turn + raked).called(changed)
        });
        found.show(format!("springs/{name}_change"), Kind::Angle, &change);
        let angle = (as_is.ask(), change)
            .all()
            .map(|(as_is, change)| (as_is + change).called(name));
        found.show(format!("springs/{name}_after"), Kind::Angle, &angle);
    }
}
