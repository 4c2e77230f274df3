//! What the reference checks of springs are computed with.

use measure::{Dim, Force, Length, Mass, Quantity, Ratio, SpringRate, Stress};
use trade::springs::{
    self, Beam, Going, Leaf, LeafEnds, LeafKind, LoadLine, Mounting, Pack, PressPoint, Seat,
    SeatRule, Shackle,
};

use crate::{Inputs, units};

/// The values named `of`, in SI units, from these inputs.
///
/// # Errors
/// When nothing here has that name, an input is missing, or the calculation refuses the inputs.
pub fn computed(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    match of {
        "rate" | "stiffening_factor" | "travel" | "load_stress" | "load_at_stress" | "even_nip"
        | "even_nip_bolt_pull" | "nip_stress" | "common_curve" => handbook(of, inputs),
        "helper_line" => helper_line(inputs),
        "beam_rate" | "beam_travel" | "beam_stress" | "beam_nip" | "bolt_pull" | "tight_rate" => {
            beam(of, inputs)
        }
        "rate_share" => rate_share(inputs),
        "press_rate" | "press_friction" | "press_friction_share" => press(of, inputs),
        "ram_load" => {
            let area = springs::ram_area(&si(inputs, "bore")?);
            one(springs::ram_load(&si(inputs, "pressure")?, &area).value())
        }
        "spring_load" => spring_load(inputs),
        "natural_frequency" => {
            let rate: SpringRate = si(inputs, "rate")?;
            one(springs::natural_frequency(&rate, &si(inputs, "load")?).value())
        }
        "friction_height" => {
            let friction = Ratio::exact(inputs.number("friction")?);
            let load: Force = si(inputs, "load")?;
            one(springs::friction_height(&friction, &load, &si(inputs, "rate")?).value())
        }
        "loose_curve" | "eye_to_eye" | "camber" => curves(of, inputs),
        "shackle_lean" => {
            let shackle = Shackle {
                length: si(inputs, "length")?,
                pins_apart: si(inputs, "pins_apart")?,
                pin_higher: si(inputs, "pin_higher")?,
            };
            let lean = springs::shackle_lean(&shackle, &si(inputs, "eyes_apart")?);
            one(lean.map_err(|error| format!("{error:?}"))?.value())
        }
        "rake" => {
            let front: Length = si(inputs, "front")?;
            one(springs::rake(&front, &si(inputs, "rear")?, &si(inputs, "wheelbase")?).value())
        }
        "eye_line_height" | "block_for" | "free_arch_for" => height(of, inputs),
        "seat_turn" => {
            let travel: Length = si(inputs, "travel")?;
            one(springs::seat_turn(&pack(inputs)?, &travel).value())
        }
        "dead_length" => {
            let clamped: Length = si(inputs, "clamped")?;
            let rule = SeatRule::named(inputs.text("rule")?).ok_or("no such rule")?;
            one(springs::dead_length(&clamped, rule).value())
        }
        _ => Err(crate::unknown(of)),
    }
}

/// One value.
#[expect(
    clippy::unnecessary_wraps,
    reason = "every branch of the table answers so"
)]
fn one(value: f64) -> Result<Vec<f64>, String> {
    Ok(vec![value])
}

/// An exact quantity from a text such as `600 mm`.
fn si<L, M, T, K>(inputs: &Inputs, name: &str) -> Result<Quantity<Dim<L, M, T, K>>, String>
where
    Dim<L, M, T, K>: measure::Dimension,
{
    let text = inputs.text(name)?;
    let (number, symbol) = text.split_once(' ').ok_or("a number and a unit")?;
    let number: f64 = number.parse().map_err(|_| format!("`{text}`"))?;
    Ok(Quantity::exact(units::unit(symbol)?.to_si(number)))
}

fn optional(inputs: &Inputs, name: &str) -> Result<Option<Length>, String> {
    inputs.has(name).then(|| si(inputs, name)).transpose()
}

fn leaf(row: &Inputs) -> Result<Leaf, String> {
    let kind = if row.has("kind") {
        LeafKind::named(row.text("kind")?).ok_or("no such kind of leaf")?
    } else {
        LeafKind::Graduated
    };
    Ok(Leaf {
        kind,
        width: si(row, "width")?,
        thickness: si(row, "thickness")?,
        front: si(row, "front")?,
        rear: si(row, "rear")?,
        arch: optional(row, "arch")?,
        gap: optional(row, "gap")?,
    })
}

/// The pack in the inputs: a list of leaves, the first of them the main leaf, or so many alike.
fn pack(inputs: &Inputs) -> Result<Pack, String> {
    let mut leaves = Vec::new();
    for row in inputs.rows("leaves")? {
        let count = if row.has("count") {
            row.count("count")?
        } else {
            1
        };
        let leaf = leaf(&row)?;
        leaves.extend((0..count).map(|_| leaf.clone()));
        if !row.unread().is_empty() {
            return Err(format!("a leaf has more than is read: {:?}", row.unread()));
        }
    }
    if let Some(first) = leaves.first_mut()
        && first.kind == LeafKind::Graduated
    {
        first.kind = LeafKind::Main;
    }
    let dead = optional(inputs, "dead")?.unwrap_or_else(|| Length::exact(0.0));
    Pack::new(si::<_, _, _, _>(inputs, "modulus")?, dead, leaves)
        .map_err(|error| format!("{error:?}"))
}

fn stiffening(inputs: &Inputs, pack: &Pack) -> Result<Ratio, String> {
    if inputs.has("stiffening") {
        return Ok(Ratio::exact(inputs.number("stiffening")?));
    }
    let ends = LeafEnds::named(inputs.text("ends")?).ok_or("no such ends")?;
    Ok(springs::stiffening_factor(pack, ends))
}

fn handbook(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let pack = pack(inputs)?;
    match of {
        "nip_stress" => {
            let nip = |leaf| springs::nip_stress(&pack, leaf).map(|stress| stress.value());
            let all: Option<Vec<f64>> = pack.carrying().map(nip).collect();
            return all.ok_or_else(|| "an arch is missing".into());
        }
        "common_curve" => {
            let curve = pack.common_curvature().ok_or("an arch is missing")?;
            return one(curve.value());
        }
        "even_nip" => return one(springs::even_nip(&pack, &si(inputs, "load")?).value()),
        "even_nip_bolt_pull" => {
            return one(springs::even_nip_bolt_pull(&pack, &si(inputs, "load")?).value());
        }
        "load_at_stress" => {
            return one(springs::load_at_stress(&pack, &si(inputs, "stress")?).value());
        }
        _ => {}
    }
    let factor = stiffening(inputs, &pack)?;
    let line = springs::load_line(&pack, &factor).map_err(|error| format!("{error:?}"))?;
    match of {
        "stiffening_factor" => one(factor.value()),
        "rate" => one(line.rate.value()),
        "travel" => one(line.travel(&si(inputs, "load")?).value()),
        _ => {
            let load: Force = si(inputs, "load")?;
            one(springs::Bending::of(&pack, &load, &line)
                .load_stress(pack.main())
                .value())
        }
    }
}

/// Load at the helper's touch and travel at a load beyond it.
fn helper_line(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let pack = pack(inputs)?;
    let factor = stiffening(inputs, &pack)?;
    let line = springs::load_line(&pack, &factor).map_err(|error| format!("{error:?}"))?;
    let step = line.helper.as_ref().ok_or("there is no helper")?;
    let touch = (&step.load / &line.rate).value();
    Ok(vec![touch, line.travel(&si(inputs, "load")?).value()])
}

fn beam(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let pack = pack(inputs)?;
    if of == "tight_rate" {
        return one(springs::tight_rate(&pack).value());
    }
    let load: Force = if inputs.has("load") {
        si(inputs, "load")?
    } else {
        Force::exact(0.0)
    };
    let beam = Beam::new(&pack, &load, &load);
    let each =
        |stress: &dyn Fn(usize) -> Stress| (0..beam.leaves()).map(|i| stress(i).value()).collect();
    Ok(match of {
        "beam_rate" => vec![beam.rate().value()],
        "beam_travel" => vec![beam.travel().value()],
        "beam_stress" => each(&|i| beam.load_stress(i)),
        "beam_nip" => each(&|i| beam.nip_stress(i)),
        _ => vec![beam.bolt_pull().value()],
    })
}

/// What the rate of a rusted pack is of the rate it had when new.
fn rate_share(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let now = pack(inputs)?;
    let new: Vec<Option<Length>> = inputs
        .rows("new")?
        .iter()
        .map(|row| optional(row, "thickness"))
        .collect::<Result<_, _>>()?;
    let new = springs::as_new(&now, &new).map_err(|error| format!("{error:?}"))?;
    let factor = Ratio::exact(1.1);
    let rate = |pack: &Pack| springs::rate_of(pack, pack.carrying(), &factor);
    one((rate(&now) / rate(&new)).value())
}

fn press(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let travel = inputs.numbers("travel_mm")?;
    let load = inputs.numbers("load_N")?;
    let going = inputs.texts("going")?;
    let mut points = Vec::new();
    for ((travel, load), going) in travel.iter().zip(&load).zip(going) {
        points.push(PressPoint {
            travel: Length::exact(travel / 1000.0),
            load: Force::exact(*load),
            going: Going::named(going).ok_or("up or down")?,
        });
    }
    let test = springs::press_test(&points).map_err(|error| format!("{error:?}"))?;
    match of {
        "press_friction" => one(test.friction.ok_or("one branch only")?.value()),
        "press_friction_share" => one(test.friction_share.ok_or("one branch only")?.value()),
        _ => Ok(vec![
            test.rate.value(),
            test.standard_error.ok_or("no points to spare")?,
        ]),
    }
}

fn spring_load(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let axle: Mass = si(inputs, "axle_load")?;
    let share = Ratio::exact(inputs.number("share")?);
    one(springs::spring_load(&axle, &si(inputs, "unsprung")?, &share).value())
}

/// A pack of one strip, for the geometry of its arc.
fn strip(inputs: &Inputs) -> Result<Pack, String> {
    let main = Leaf {
        kind: LeafKind::Main,
        width: Length::exact(0.06),
        thickness: Length::exact(0.008),
        front: si(inputs, "front")?,
        rear: si(inputs, "rear")?,
        arch: optional(inputs, "arch")?,
        gap: None,
    };
    let dead = optional(inputs, "dead")?.unwrap_or_else(|| Length::exact(0.0));
    Pack::new(Stress::exact(2e11), dead, vec![main]).map_err(|error| format!("{error:?}"))
}

fn curves(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    match of {
        "camber" => {
            let arch: Length = si(inputs, "arch")?;
            let thickness = si(inputs, "thickness")?;
            one(springs::camber(&arch, &thickness, &si(inputs, "eye_rise")?).value())
        }
        "loose_curve" => {
            let pack = strip(inputs)?;
            let curve = springs::loose_curvature(pack.main()).ok_or("no arch")?;
            one(curve.value())
        }
        _ => one(springs::eye_to_eye(&strip(inputs)?, &si(inputs, "camber")?).value()),
    }
}

fn height(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let seat = Seat {
        mounting: Mounting::named(inputs.text("mounting")?).ok_or("no such mounting")?,
        pad: si(inputs, "pad")?,
        block: si(inputs, "block")?,
        pile: si(inputs, "pile")?,
    };
    match of {
        "eye_line_height" => {
            let free: Length = si(inputs, "free_arch")?;
            let line = LoadLine::straight(si(inputs, "rate")?);
            let arch = springs::loaded_arch(&free, &line.travel(&si(inputs, "load")?));
            one(seat.eye_line_height(&arch).value())
        }
        "block_for" => {
            let now: Length = si(inputs, "height_now")?;
            one(springs::block_for(&seat, &now, &si(inputs, "wanted")?).value())
        }
        _ => {
            let wanted: Length = si(inputs, "wanted")?;
            let travel = si(inputs, "travel")?;
            let settling = si(inputs, "settling")?;
            one(springs::free_arch_for(&seat, &wanted, &travel, &settling).value())
        }
    }
}
