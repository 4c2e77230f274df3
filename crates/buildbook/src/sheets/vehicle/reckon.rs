//! What the vehicle's entries come to.

use measure::{Kind, Mass, Ratio, Standing};
use trade::vehicle as trade;

use super::VehicleSheet;
use crate::{All, Found, Given, Lack, Rank, Remark};

/// What stands on each axle.
pub(super) struct AxleLoads {
    pub(super) front_unladen: Result<Mass, Lack>,
    pub(super) rear_unladen: Result<Mass, Lack>,
    pub(super) front_laden: Result<Mass, Lack>,
    pub(super) rear_laden: Result<Mass, Lack>,
}

fn owned<T: Clone>(given: &Given<T>) -> Result<T, Lack> {
    given.ask().cloned()
}

fn sum(a: &Result<Mass, Lack>, b: &Result<Mass, Lack>) -> Result<Mass, Lack> {
    (a.clone(), b.clone()).all().map(|(a, b)| a + b)
}

impl AxleLoads {
    pub(super) fn of(sheet: &VehicleSheet) -> Self {
        let front_unladen = owned(&sheet.front_unladen);
        let rear_unladen = owned(&sheet.rear_unladen);
        let payload = (
            sheet.payload.ask(),
            sheet.payload_ahead.ask(),
            sheet.wheelbase.ask(),
        );
        let on_front = payload.all().map(|(load, ahead, wheelbase)| {
            let front = trade::load_on_front_axle(load, ahead, wheelbase);
            (load.clone(), front)
        });
        // A weighed axle wins over a reckoned one.
        let front_laden = match sheet.front_laden.ask() {
            Ok(weighed) => Ok(weighed.clone()),
            Err(lack) if lack.is_entry() => Err(lack),
            Err(_) => (front_unladen.clone(), on_front.clone())
                .all()
                .map(|(empty, (_, load))| (empty + load).called("m_fl")),
        };
        let rear_laden = match sheet.rear_laden.ask() {
            Ok(weighed) => Ok(weighed.clone()),
            Err(lack) if lack.is_entry() => Err(lack),
            Err(_) => (rear_unladen.clone(), on_front)
                .all()
                .map(|(empty, (load, front))| (empty + load - front).called("m_rl")),
        };
        Self {
            front_unladen,
            rear_unladen,
            front_laden,
            rear_laden,
        }
    }

    fn unladen(&self) -> Result<Mass, Lack> {
        sum(&self.front_unladen, &self.rear_unladen).map(|mass| mass.called("m_0"))
    }

    fn laden(&self) -> Result<Mass, Lack> {
        sum(&self.front_laden, &self.rear_laden).map(|mass| mass.called("m_l"))
    }

    pub(super) fn show(&self, found: &mut Found, sheet: &VehicleSheet) {
        found.headline("vehicle/unladen", Kind::Mass, &self.unladen());
        found.show("vehicle/laden", Kind::Mass, &self.laden());
        found.show("vehicle/front_laden", Kind::Mass, &self.front_laden);
        found.show("vehicle/rear_laden", Kind::Mass, &self.rear_laden);
        let pairs = [
            ("unladen", &self.front_unladen, &self.rear_unladen),
            ("laden", &self.front_laden, &self.rear_laden),
        ];
        for (state, front, rear) in pairs {
            let both = (
                front.as_ref().map_err(Clone::clone),
                rear.as_ref().map_err(Clone::clone),
            );
            let share = both
                .clone()
                .all()
                .map(|(front, rear)| trade::front_share(front, rear));
            found.show(
                format!("vehicle/front_share_{state}"),
                Kind::Percent,
                &share,
            );
            let (front, rear) = both;
            let centre =
                (front, rear, sheet.wheelbase.ask())
                    .all()
                    .map(|(front, rear, wheelbase)| {
                        trade::centre_behind_front_axle(front, rear, wheelbase)
                    });
            found.show(format!("vehicle/centre_{state}"), Kind::Length, &centre);
        }
    }
}

/// What is left of each limit, and the load that can still be taken.
pub(super) fn show_limits(found: &mut Found, sheet: &VehicleSheet, loads: &AxleLoads) {
    let left = |limit: &Given<Mass>, load: &Result<Mass, Lack>| {
        (limit.ask(), load.clone())
            .all()
            .map(|(limit, load)| (limit - load).called("m_left"))
    };
    found.show(
        "vehicle/front_left",
        Kind::Mass,
        &left(&sheet.front_limit, &loads.front_laden),
    );
    found.show(
        "vehicle/rear_left",
        Kind::Mass,
        &left(&sheet.rear_limit, &loads.rear_laden),
    );
    found.show(
        "vehicle/gross_left",
        Kind::Mass,
        &left(&sheet.gross_limit, &loads.laden()),
    );
    found.headline("vehicle/load_room", Kind::Mass, &load_room(sheet, loads));
}

/// The most that may be loaded at the place of the load: the first limit that it meets.
fn load_room(sheet: &VehicleSheet, loads: &AxleLoads) -> Result<Mass, Lack> {
    let (front, rear) = (loads.front_unladen.clone(), loads.rear_unladen.clone());
    let unladen = loads.unladen();
    let (front, rear, unladen) = (front, rear, unladen).all()?;
    let mut limits: Vec<(&'static str, Mass)> = Vec::new();
    if let Some(limit) = sheet.gross_limit.value() {
        limits.push(("gross_limit", limit - &unladen));
    }
    let place = (sheet.payload_ahead.ask(), sheet.wheelbase.ask()).all();
    let axles = [
        ("front_limit", &sheet.front_limit, &front, true),
        ("rear_limit", &sheet.rear_limit, &rear, false),
    ];
    for (name, limit, load, ahead) in axles {
        let (Some(limit), Ok((distance, wheelbase))) = (limit.value(), &place) else {
            continue;
        };
        let front: Ratio = *distance / *wheelbase;
        let share = if ahead { front } else { 1.0 - front };
        // An axle that the load does not rest on sets no limit.
        if share.value() > 1e-3 {
            limits.push((name, trade::load_to_axle_limit(limit, load, &share)));
        }
    }
    if limits.is_empty() {
        let ask = (sheet.gross_limit.ask(), place).all();
        return Err(ask
            .err()
            .unwrap_or_else(|| Lack::needs([sheet.gross_limit.key().clone()])));
    }
    Ok(Mass::least_of(&limits).called("m_room"))
}

/// What the engine's figures come to.
pub(super) fn show_engine(found: &mut Found, sheet: &VehicleSheet, loads: &AxleLoads) {
    let swept = (sheet.bore.ask(), sheet.stroke.ask(), sheet.cylinders.ask())
        .all()
        .map(|(bore, stroke, cylinders)| trade::swept_volume(bore, stroke, cylinders));
    found.headline("vehicle/swept_volume", Kind::Volume, &swept);
    let piston = (sheet.stroke.ask(), sheet.red_line.ask())
        .all()
        .map(|(stroke, speed)| trade::mean_piston_speed(stroke, speed));
    found.show("vehicle/piston_speed", Kind::SurfaceSpeed, &piston);
    let torque = (sheet.peak_power.ask(), sheet.peak_power_at.ask())
        .all()
        .map(|(power, speed)| trade::torque_at_power(power, speed));
    found.show("vehicle/torque_at_peak_power", Kind::Torque, &torque);
    for (id, mass) in [
        ("vehicle/power_to_mass_unladen", loads.unladen()),
        ("vehicle/power_to_mass_laden", loads.laden()),
    ] {
        let by_mass = (sheet.peak_power.ask(), mass).all();
        let by_mass = by_mass.map(|(power, mass)| trade::power_to_mass(power, &mass));
        found.show(id, Kind::PowerToMass, &by_mass);
    }
    let area = (
        sheet.frontal_share.ask(),
        sheet.width.ask(),
        sheet.height.ask(),
    )
        .all()
        .map(|(share, width, height)| trade::frontal_area(share, width, height));
    found.show("vehicle/frontal_area", Kind::Area, &area);
}

/// What is to be known beside the results.
pub(super) fn remark(found: &mut Found, sheet: &VehicleSheet, loads: &AxleLoads) {
    let checks = [
        ("front_axle", &sheet.front_limit, loads.front_laden.clone()),
        ("rear_axle", &sheet.rear_limit, loads.rear_laden.clone()),
        ("gross", &sheet.gross_limit, loads.laden()),
    ];
    for (place, limit, load) in checks {
        let (Some(limit), Ok(load)) = (limit.value(), load) else {
            continue;
        };
        let (rank, fact) = match (load.standing(limit), place) {
            (Standing::Above, "front_axle") => (Rank::Warning, "front_axle_over_limit"),
            (Standing::Above, "rear_axle") => (Rank::Warning, "rear_axle_over_limit"),
            (Standing::Above, _) => (Rank::Warning, "gross_over_limit"),
            (Standing::TooCloseToCall, "front_axle") => (Rank::Caution, "front_axle_near_limit"),
            (Standing::TooCloseToCall, "rear_axle") => (Rank::Caution, "rear_axle_near_limit"),
            (Standing::TooCloseToCall, _) => (Rank::Caution, "gross_near_limit"),
            (Standing::Below, _) => continue,
        };
        let over = load - limit;
        found.remark(Remark::new(rank, fact).with(over.figure(Kind::Mass)));
    }
    if let (Some(peak), Some(at_power)) = (
        sheet.peak_torque.value(),
        found.figure("vehicle/torque_at_peak_power"),
    ) && at_power.value() - at_power.minus() > peak.value() + peak.plus()
    {
        // The torque at peak power can at most equal the peak torque: one of the four figures is off, or of another basis.
        found.remark(
            Remark::new(Rank::Caution, "power_exceeds_torque").at(sheet.peak_power.key().clone()),
        );
    }
    if let (Some(torque_at), Some(power_at)) =
        (sheet.peak_torque_at.value(), sheet.peak_power_at.value())
        && torque_at.value() >= power_at.value()
    {
        let remark = Remark::new(Rank::Caution, "peak_torque_above_peak_power");
        found.remark(remark.at(sheet.peak_torque_at.key().clone()));
    }
    if let (Some(width), Some(track)) = (sheet.width.value(), sheet.track_front.value())
        && track.value() >= width.value()
    {
        found.remark(
            Remark::new(Rank::Caution, "track_wider_than_body").at(sheet.track_front.key().clone()),
        );
    }
}
