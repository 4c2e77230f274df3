//! What the reference checks of paint are computed with.

use measure::{
    Area, Ask, Decimal, Density, Dimension, Flow, Kind, Length, Manner, PerLength, Pressure,
    Quantity, Ratio, Temperature, Time, Volume, read, unit,
};
use trade::TradeError;
use trade::paint::{self, Amount, By, Component, Faces, ReadyMix, Shares, Tin};

use crate::Inputs;

/// The values named `of`, in SI units, from these inputs.
///
/// # Errors
/// When nothing here has that name, an input is missing, or the calculation refuses the inputs.
pub fn computed(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    match of {
        "spreading_rate" | "wet_film" | "dry_film" | "thinned_solids" | "covered"
        | "litres_both_ways" | "film_from_stock" => films(of, inputs),
        "box" | "trapezium" | "disc" | "curved" | "closed_drum" | "polygon" | "panel" => {
            areas(of, inputs)
        }
        "solvent" | "solvent_limits" | "mixed_density" | "scale" => mixes(of, inputs),
        "cheapest_tins" => tins(inputs),
        "job" => crate::books::results(inputs),
        "time_at" | "dew_point" | "least_metal" | "air_time" => day(of, inputs),
        _ => Err(crate::unknown(of)),
    }
}

fn said(error: TradeError) -> String {
    error.to_string()
}

fn one<D: Dimension>(quantity: &Quantity<D>) -> Vec<f64> {
    vec![quantity.value()]
}

fn understood<D: Dimension>(text: &str, kind: Kind) -> Result<Quantity<D>, String> {
    let reading = read(text, &Ask::of(kind, &Manner::default()))
        .map_err(|error| format!("`{text}` cannot be read: {:?}", error.why))?;
    Ok(Quantity::exact(reading.value))
}

fn quantity<D: Dimension>(inputs: &Inputs, name: &str, kind: Kind) -> Result<Quantity<D>, String> {
    understood(inputs.text(name)?, kind)
}

fn quantities<D: Dimension>(
    inputs: &Inputs,
    name: &str,
    kind: Kind,
) -> Result<Vec<Quantity<D>>, String> {
    inputs
        .texts(name)?
        .into_iter()
        .map(|text| understood(text, kind))
        .collect()
}

fn length(inputs: &Inputs, name: &str) -> Result<Length, String> {
    quantity(inputs, name, Kind::Length)
}

fn film(inputs: &Inputs, name: &str) -> Result<Length, String> {
    quantity(inputs, name, Kind::Film)
}

fn share(inputs: &Inputs, name: &str) -> Result<Ratio, String> {
    quantity(inputs, name, Kind::Percent)
}

fn area(inputs: &Inputs, name: &str) -> Result<Area, String> {
    quantity(inputs, name, Kind::Area)
}

fn volume(inputs: &Inputs, name: &str) -> Result<Volume, String> {
    quantity(inputs, name, Kind::Volume)
}

fn films(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    if of == "covered" {
        let rate: PerLength = quantity(inputs, "rate", Kind::SpreadingRate)?;
        let transfer = share(inputs, "transfer")?;
        return Ok(one(&paint::area_from_rate(
            &volume(inputs, "volume")?,
            &rate,
            &transfer,
        )));
    }
    let solids = share(inputs, "solids")?;
    Ok(match of {
        "spreading_rate" => one(&paint::spreading_rate(&solids, &film(inputs, "dry")?)),
        "wet_film" => one(&paint::wet_film(&film(inputs, "dry")?, &solids)),
        "dry_film" => one(&paint::dry_film(&film(inputs, "wet")?, &solids)),
        "thinned_solids" => {
            let amount = amount(inputs.text("thinner_of")?, share(inputs, "thinner")?)?;
            let mut mix = in_parts(&inputs.numbers("parts")?);
            mix.push(Component {
                amount,
                density: water(),
            });
            let shares = Shares::of(&mix, By::Volume, By::Volume).map_err(said)?;
            one(&paint::mixed_solids(&solids, &shares.unthinned))
        }
        "litres_both_ways" => {
            let (area, dry) = (area(inputs, "area")?, film(inputs, "dry")?);
            let transfer = share(inputs, "transfer")?;
            let rate = paint::spreading_rate(&solids, &dry);
            let by_film = paint::litres_by_film(&area, &dry, &solids, &transfer);
            vec![
                by_film.value(),
                paint::litres_by_rate(&area, &rate, Some(&transfer)).value(),
            ]
        }
        _ => one(&paint::film_from_stock(
            &volume(inputs, "stock")?,
            &area(inputs, "area")?,
            &Ratio::exact(f64::from(inputs.count("coats")?)),
            &solids,
            &share(inputs, "transfer")?,
            &volume(inputs, "left")?,
            &share(inputs, "reserve")?,
        )),
    })
}

fn areas(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    if of == "polygon" {
        let unit = crate::units::unit(inputs.text("unit")?)?;
        let (xs, ys) = (inputs.numbers("xs")?, inputs.numbers("ys")?);
        let corners = xs
            .iter()
            .zip(&ys)
            .map(|(x, y)| (Length::of(*x, unit), Length::of(*y, unit)));
        let corners = paint::Corners::new(corners.collect()).map_err(said)?;
        return Ok(one(&corners.area()));
    }
    let size = |name| length(inputs, name);
    Ok(match of {
        "box" => {
            let share = share(inputs, "share")?;
            one(&paint::box_area(
                &size("length")?,
                &size("width")?,
                &size("height")?,
                &share,
            ))
        }
        "trapezium" => one(&paint::trapezium_area(
            &size("length")?,
            &size("top")?,
            &size("height")?,
        )),
        "disc" => one(&paint::disc_area(&size("diameter")?)),
        "curved" => one(
            &paint::curved_area(&size("chord")?, &size("rise")?, &size("length")?).map_err(said)?,
        ),
        "closed_drum" => {
            let end = paint::disc_area(&size("diameter")?);
            one(&(paint::tube_area(&size("diameter")?, &size("length")?) + 2.0 * end))
        }
        _ => panel(inputs)?,
    })
}

fn panel(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let size = |name| length(inputs, name);
    let sheet = paint::rectangle_area(&size("length")?, &size("height")?);
    let mut openings = vec![paint::rectangle_area(
        &size("window_length")?,
        &size("window_height")?,
    )];
    for _ in 0..inputs.count("holes")? {
        openings.push(paint::disc_area(&size("hole")?));
    }
    let faces = match inputs.count("faces")? {
        1 => Faces::One,
        2 => Faces::Both,
        other => return Err(format!("a panel has no {other} faces")),
    };
    let count = Ratio::exact(f64::from(inputs.count("count")?));
    let edges = share(inputs, "edges")?;
    let area = paint::painted_area(&sheet, &openings, faces, &edges, &count).map_err(said)?;
    Ok(one(&area))
}

fn water() -> Density {
    Density::of(1.0, &unit::KILOGRAM_PER_LITRE)
}

fn in_parts(parts: &[f64]) -> Vec<Component> {
    let part = |number: &f64| Component {
        amount: Amount::Parts(Ratio::exact(*number)),
        density: water(),
    };
    parts.iter().map(part).collect()
}

fn amount(of: &str, number: Ratio) -> Result<Amount, String> {
    match of {
        "parts" => Ok(Amount::Parts(number)),
        "paint" => Ok(Amount::OfPaint(number)),
        "both" => Ok(Amount::OfPaintAndHardener(number)),
        other => Err(format!("nothing is measured by `{other}`")),
    }
}

fn mixes(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    if of == "solvent_limits" {
        return Ok(paint::ANNEX_II_B
            .iter()
            .map(|row| row.subcategory.limit_content().value())
            .collect());
    }
    if of == "scale" {
        return scale(inputs);
    }
    let mix = in_parts(&inputs.numbers("parts")?);
    let shares = Shares::of(&mix, By::Volume, By::Volume).map_err(said)?;
    if of == "mixed_density" {
        let densities: Vec<Density> = quantities(inputs, "densities", Kind::Density)?;
        return Ok(one(&paint::mixed_density(&shares, &densities)));
    }
    let solvents: Vec<Density> = quantities(inputs, "solvents", Kind::Concentration)?;
    let waters: Vec<_> = inputs
        .numbers("waters")?
        .into_iter()
        .map(Ratio::exact)
        .collect();
    let mix = ReadyMix {
        shares: &shares,
        solvents: &solvents,
        waters: &waters,
    };
    Ok(one(&paint::solvent_content_less_water(&mix)))
}

fn scale(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let by = match inputs.text("by")? {
        "volume" => By::Volume,
        "weight" => By::Weight,
        other => return Err(format!("nothing is mixed by `{other}`")),
    };
    let densities: Vec<Density> = quantities(inputs, "densities", Kind::Density)?;
    let (parts, last_of) = (inputs.numbers("parts")?, inputs.text("thinner_of")?);
    let mut mix = Vec::new();
    for (place, (number, density)) in parts.iter().zip(densities).enumerate() {
        let of = if place + 1 == parts.len() {
            last_of
        } else {
            "parts"
        };
        mix.push(Component {
            amount: amount(of, Ratio::exact(*number))?,
            density,
        });
    }
    let shares = Shares::of(&mix, by, by).map_err(said)?;
    let steps = paint::scale_steps(&mix, &shares, &volume(inputs, "volume")?);
    Ok(steps.iter().map(|step| step.scale.value()).collect())
}

fn tins(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let microlitres = |volume: &Volume| (volume.value() * 1e9).round() as u64;
    let sizes: Vec<Volume> = quantities(inputs, "sizes", Kind::Volume)?;
    let tins: Vec<Tin> = sizes
        .iter()
        .zip(inputs.texts("prices")?)
        .map(|(size, price)| {
            let price: Decimal = price
                .parse()
                .map_err(|_| format!("`{price}` is no price"))?;
            Ok(Tin {
                microlitres: microlitres(size),
                price,
            })
        })
        .collect::<Result<_, String>>()?;
    let purchase = paint::cheapest_tins(microlitres(&volume(inputs, "needed")?), &tins)
        .ok_or("there is nothing to buy")?;
    let cost = purchase
        .cost
        .to_string()
        .parse()
        .map_err(|_| "the cost is no number")?;
    Ok(vec![cost])
}

fn day(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let temperature =
        |name| -> Result<Temperature, String> { quantity(inputs, name, Kind::Temperature) };
    Ok(match of {
        "time_at" => {
            let time: Time = quantity(inputs, "time", Kind::Time)?;
            let factor = Ratio::exact(inputs.number("factor")?);
            let (today, reference) = (temperature("temperature")?, temperature("reference")?);
            one(&paint::time_at(&time, &today, &reference, &factor))
        }
        "dew_point" => {
            let humidity = share(inputs, "humidity")?;
            one(&paint::dew_point(&temperature("air")?, &humidity).map_err(said)?)
        }
        "least_metal" => one(&paint::least_metal_temperature(&temperature("dew")?)),
        _ => {
            let pressure =
                |name| -> Result<Pressure, String> { quantity(inputs, name, Kind::Pressure) };
            let flow = |name| -> Result<Flow, String> { quantity(inputs, name, Kind::Flow) };
            let receiver = volume(inputs, "receiver")?;
            let (high, low) = (pressure("high")?, pressure("low")?);
            let time = paint::compressed_air_time(
                &receiver,
                &high,
                &low,
                &flow("gun")?,
                &flow("delivered")?,
            );
            one(&time.map_err(said)?)
        }
    })
}
