//! What the reference checks of measure are computed with: reading, units, gauges, showing, and the ± of results.

use measure::{
    Ask, Gauge, Kind, Length, Manner, Mark, Quantity, Ratio, Reading, Speed, System, Unit,
    difference, read, show_reading,
};

use crate::Inputs;

/// The values named `of`, in SI units, from these inputs.
///
/// # Errors
/// When nothing here has that name, an input is missing, or the calculation refuses the inputs.
pub fn computed(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    match of {
        "factors" => factors(inputs),
        "read" => inputs
            .texts("texts")?
            .into_iter()
            .map(|text| Ok(reading(inputs, text)?.value))
            .collect(),
        "error" => {
            reading(inputs, inputs.text("text")?).map(|reading| vec![reading.plus, reading.minus])
        }
        "otherwise" => {
            let doubt = reading(inputs, inputs.text("text")?)?
                .ambiguous
                .ok_or("nothing is in doubt")?;
            Ok(vec![doubt.understood, doubt.otherwise])
        }
        "gauge" => gauge(inputs),
        "shown" => shown(inputs),
        "propagated" => propagated(inputs).map(|(value, plus, _)| vec![value, plus]),
        "shares" => propagated(inputs).map(|(_, _, shares)| shares),
        _ => Err(crate::unknown(of)),
    }
}

fn kind(inputs: &Inputs) -> Result<Kind, String> {
    let name = inputs.text("kind")?;
    Kind::all()
        .find(|kind| kind.name() == name)
        .ok_or_else(|| format!("no kind is named `{name}`"))
}

fn manner(inputs: &Inputs) -> Result<Manner, String> {
    let system = match inputs
        .has("system")
        .then(|| inputs.text("system"))
        .transpose()?
    {
        None | Some("metric") => System::Metric,
        Some("imperial") => System::Imperial,
        Some("United States") => System::UnitedStates,
        Some(other) => return Err(format!("no system is named `{other}`")),
    };
    let mark = match inputs
        .has("mark")
        .then(|| inputs.text("mark"))
        .transpose()?
    {
        None | Some("point") => Mark::Point,
        Some("comma") => Mark::Comma,
        Some(other) => return Err(format!("no mark is named `{other}`")),
    };
    Ok(Manner {
        mark,
        ..Manner::of(system)
    })
}

fn reading(inputs: &Inputs, text: &str) -> Result<Reading, String> {
    let ask = Ask {
        signed: true,
        ..Ask::of(kind(inputs)?, &manner(inputs)?)
    };
    read(text, &ask).map_err(|error| format!("`{text}`: {:?}", error.why))
}

/// The unit of a kind that is written this way.
fn unit(kind: Kind, symbol: &str) -> Result<&'static Unit, String> {
    let found = kind.units().iter().find(|unit| unit.symbol == symbol);
    found
        .copied()
        .ok_or_else(|| format!("no unit of {} is written `{symbol}`", kind.name()))
}

/// How many of the unit `in` each of the `units` is.
fn factors(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let kind = kind(inputs)?;
    let scale = unit(kind, inputs.text("in")?)?;
    inputs
        .texts("units")?
        .into_iter()
        .map(|symbol| Ok(unit(kind, symbol)?.factor / scale.factor))
        .collect()
}

fn gauge(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let series = match inputs.text("series")? {
        "SWG" => Gauge::StandardWire,
        "Manufacturers' Standard" => Gauge::ManufacturersStandard,
        other => return Err(format!("no series is named `{other}`")),
    };
    let thickness = |value: &toml::Value| {
        let number = value
            .as_integer()
            .and_then(|number| i32::try_from(number).ok())
            .ok_or("not a gauge number")?;
        series
            .thickness(number)
            .ok_or_else(|| format!("there is no {number} {}", series.symbol()))
    };
    inputs.list("numbers")?.iter().map(thickness).collect()
}

/// Value and ± as shown, in the unit typed.
fn shown(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let reading = reading(inputs, inputs.text("text")?)?;
    let shown = show_reading(&reading, reading.unit, &manner(inputs)?);
    let number = |text: &str| {
        let plain: String = text
            .chars()
            .filter(|c| c.is_ascii_digit() || *c == '.')
            .collect();
        plain
            .parse::<f64>()
            .map_err(|error| format!("`{text}`: {error}"))
    };
    Ok(vec![number(&shown.value)?, number(&shown.plus_minus)?])
}

type Propagated = (f64, f64, Vec<f64>);

/// The value, ± and shares (in the order of `entries`) of a formula of entries.
fn propagated(inputs: &Inputs) -> Result<Propagated, String> {
    let entry = |name: &str| inputs.ratio(name);
    let all = |quantity: Ratio| outcome(inputs, &quantity);
    match inputs.text("formula")? {
        "C n / (i_g i_f)" => {
            let (circumference, turns) = (inputs.length("C")?, inputs.rotation("n")?);
            let speed: Speed = circumference * turns / (entry("i_g")? * entry("i_f")?);
            outcome(inputs, &speed)
        }
        "x - x" => entry("x").and_then(|x| all(x.clone() - x)),
        "(a - b) / (a + b)" => {
            let (a, b) = (entry("a")?, entry("b")?);
            all((&a - &b) / (&a + &b))
        }
        "(a + b) - a" => {
            let (a, b) = (entry("a")?, entry("b")?);
            all((&a + &b) - &a)
        }
        "b t^3 / L^3 + b t" => {
            let (b, t, length) = (entry("b")?, entry("t")?, entry("L")?);
            all(&b * t.cubed() / length.cubed() + &b * &t)
        }
        "sqrt(a^2 + b^2 - 2 a b cos(g))" => {
            let (a, b, angle) = (inputs.length("a")?, inputs.length("b")?, inputs.angle("g")?);
            let side: Length = (a.squared() + b.squared() - &a * &b * 2.0 * angle.cos()).sqrt();
            outcome(inputs, &side)
        }
        "(a - b) / ln(a / b)" => {
            let (a, b) = (entry("a")?, entry("b")?);
            all((&a - &b) / (&a / &b).ln())
        }
        "exp(-m g)" => all((-(entry("m")? * entry("g")?)).exp()),
        "a atan(b / a)" => {
            let (a, b) = (entry("a")?, entry("b")?);
            all(&a * (&b / &a).atan())
        }
        "x^3 + a x = b" => {
            let (a, b) = (entry("a")?, entry("b")?);
            let root = Ratio::root("x", 0.0, 10.0, |x| x.cubed() + &a * x - &b);
            all(root.map_err(|error| format!("{error:?}"))?)
        }
        "now - before" => {
            let (shared, before, now) = (entry("shared")?, entry("before")?, entry("now")?);
            let [before, now] = [before, now].map(|part| (&shared * part).figure(Kind::Ratio));
            let change = difference(&before, &now);
            Ok((change.value(), change.plus(), Vec::new()))
        }
        "V cos(phi) / I" => gum_h2(inputs, |v, i, phi| v * phi.cos() / i),
        "V sin(phi) / I" => gum_h2(inputs, |v, i, phi| v * phi.sin() / i),
        "V / I" => gum_h2(inputs, |v, i, _| v / i),
        other => Err(format!("no formula is written `{other}`")),
    }
}

fn outcome<D: measure::Dimension>(
    inputs: &Inputs,
    quantity: &Quantity<D>,
) -> Result<Propagated, String> {
    let kind = Kind::all()
        .find(|kind| kind.dims() == D::POWERS)
        .ok_or("no kind has this dimension")?;
    let figure = quantity.figure(kind);
    let shares = figure.shares();
    let share = |key: &str| {
        shares
            .iter()
            .find(|share| &*share.key == key)
            .map_or(0.0, |share| share.fraction)
    };
    let names = if inputs.has("entries") {
        inputs.texts("entries")?
    } else {
        Vec::new()
    };
    Ok((
        figure.value(),
        figure.plus(),
        names.into_iter().map(share).collect(),
    ))
}

/// Three readings that depend on each other, as sums of independent entries (the Cholesky factor of their correlations).
fn gum_h2(
    inputs: &Inputs,
    formula: impl Fn(&Ratio, &Ratio, &Ratio) -> Ratio,
) -> Result<Propagated, String> {
    let (values, standard) = (inputs.numbers("values")?, inputs.numbers("standard")?);
    let [r01, r02, r12] = inputs.numbers("correlations")?[..] else {
        return Err("three correlations are wanted".into());
    };
    let unit = |key: &'static str| {
        let reading = read("0 ± 2", &Ask::of(Kind::Ratio, &Manner::default()))
            .map_err(|error| error.to_string())?;
        Ok::<_, String>(Ratio::entry(key, key, Kind::Ratio, &reading))
    };
    let (z0, z1, z2) = (unit("z0")?, unit("z1")?, unit("z2")?);
    let l11 = (1.0 - r01 * r01).sqrt();
    let l21 = (r12 - r01 * r02) / l11;
    let l22 = (1.0 - r02 * r02 - l21 * l21).sqrt();
    let v = values[0] + &z0 * standard[0];
    let i = values[1] + (&z0 * r01 + &z1 * l11) * standard[1];
    let phi = values[2] + (&z0 * r02 + &z1 * l21 + &z2 * l22) * standard[2];
    let result = formula(&v, &i, &phi);
    // The published ± are standard uncertainties (k = 1).
    outcome(inputs, &result).map(|(value, plus, shares)| (value, plus / 2.0, shares))
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;

    #[test]
    fn every_unit_of_every_kind_is_checked_against_a_definition_from_outside() {
        let data = include_str!("../measure.toml");
        let file: crate::CheckFile = toml::from_str(data).expect("the data file");
        let mut checked = BTreeSet::new();
        for check in file.check.iter().filter(|check| check.of == "factors") {
            let inputs = Inputs::new(check.inputs.clone());
            let kind = kind(&inputs).expect("a kind");
            for symbol in inputs.texts("units").expect("units") {
                checked.insert((symbol.to_owned(), kind.dims()));
            }
        }
        for kind in Kind::all() {
            for unit in kind.units() {
                assert!(
                    checked.contains(&(unit.symbol.to_owned(), unit.dims)),
                    "{} of {}",
                    unit.symbol,
                    kind.name()
                );
            }
        }
    }
}
