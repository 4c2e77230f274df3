//! What the reference checks of marking out are computed with. Points and readings are plain millimetres, angles degrees.

use buildbook::{Book, Entry, Key, evaluate};
use measure::{Kind, Length, Ratio, Reading, Stated, unit};
use toml::Value;
use trade::marking::{
    self, MirrorLine, Point, Reach, Side, Sight, arc_over_chord, centre_distance, chord_of_arc,
    circle_through, error_ellipse, mirror_line, mirrored, patch, rigid_fit, slanted_length,
    slug_diameter,
};

use crate::Inputs;

/// The values named `of`, in millimetres and degrees, from these inputs.
///
/// # Errors
/// When nothing here has that name, an input is missing, or the calculation refuses the inputs.
pub fn computed(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    match of {
        "fix" | "fix_error" | "ellipse" => fix(of, inputs),
        "frame" => frame(inputs),
        "fix_from" => fix_from(inputs),
        "pattern_image" => pattern(inputs, "mirror"),
        "pattern_fit" => pattern(inputs, "fit"),
        "mirror_in_line" | "offsets" | "arcs" => about_a_line(of, inputs),
        "mirror_by_pairs" => mirror_by_pairs(inputs),
        "rigid_fit" => fit(inputs),
        "circle" => {
            let p = points(inputs, "points")?;
            let circle = refuse(circle_through(&p[0], &p[1], &p[2]))?;
            Ok([circle.centre.x, circle.centre.y, circle.radius]
                .iter()
                .map(mm)
                .collect())
        }
        "land" => {
            let p = points(inputs, "points")?;
            let texts = inputs.texts("diameters")?;
            let diameter = |i: usize| length_of(texts[i]);
            let (a, b) = (diameter(0)?, diameter(1)?);
            let land = marking::land((&p[0], &a), (&p[1], &b), &Length::exact(0.0));
            Ok(vec![mm(&land.left)])
        }
        _ => hole(of, inputs),
    }
}

/// What follows from one hole's sizes.
fn hole(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let size = |name: &str| length_of(inputs.text(name)?);
    let one = |length: Length| Ok(vec![mm(&length)]);
    match of {
        "arc_over_chord" => one(refuse(arc_over_chord(&size("chord")?, &size("radius")?))?),
        "chord_of_arc" => one(chord_of_arc(&size("arc")?, &size("radius")?)),
        "slanted_length" => {
            let angle = Ratio::exact(inputs.number("angle")?.to_radians());
            one(refuse(slanted_length(
                &size("tube")?,
                &size("sheet")?,
                &angle,
            ))?)
        }
        "centre_distance" => {
            let reach = match inputs.text("reach")? {
                "centres" => Reach::Centres,
                "inside" => Reach::Inside,
                "outside" => Reach::Outside,
                "near_edge" => Reach::NearEdge,
                "far_edge" => Reach::FarEdge,
                "same_edges" => Reach::SameEdges,
                other => return Err(format!("no reach is called `{other}`")),
            };
            one(centre_distance(
                &size("reading")?,
                reach,
                &size("datum")?,
                &size("hole")?,
            ))
        }
        "patch" => {
            let disc = refuse(patch(&size("hole")?, &size("gap")?))?;
            Ok(vec![mm(&disc.diameter), mm(&disc.weld)])
        }
        "slug" => one(refuse(slug_diameter(&size("hole")?, &size("kerf")?))?),
        _ => Err(crate::unknown(of)),
    }
}

fn refuse<T>(found: Result<T, trade::TradeError>) -> Result<T, String> {
    found.map_err(|error| format!("{error:?}"))
}

fn mm(length: &Length) -> f64 {
    length.in_unit(&unit::MILLIMETRE)
}

fn length_of(text: &str) -> Result<Length, String> {
    let number = text
        .strip_suffix(" mm")
        .ok_or_else(|| format!("`{text}` is not in mm"))?;
    let number: f64 = number
        .parse()
        .map_err(|_| format!("`{text}` is not a number"))?;
    Ok(Length::of(number, &unit::MILLIMETRE))
}

fn numbers(value: &Value) -> Result<Vec<f64>, String> {
    let list = value.as_array().ok_or("not a list")?;
    let number = |value: &Value| {
        value
            .as_float()
            .or_else(|| value.as_integer().map(|whole| whole as f64))
    };
    list.iter()
        .map(|value| number(value).ok_or_else(|| "not a number".to_owned()))
        .collect()
}

fn point(value: &Value) -> Result<Point, String> {
    let at = numbers(value)?;
    let [x, y] = at[..] else {
        return Err("a point has two numbers".to_owned());
    };
    Ok(Point::exact(x / 1000.0, y / 1000.0))
}

fn points(inputs: &Inputs, name: &str) -> Result<Vec<Point>, String> {
    inputs.list(name)?.iter().map(point).collect()
}

fn side(name: &str) -> Result<Side, String> {
    match name {
        "left" => Ok(Side::Left),
        "right" => Ok(Side::Right),
        other => Err(format!("no side is called `{other}`")),
    }
}

fn fix(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let (readings, errors) = (inputs.numbers("readings")?, inputs.numbers("errors")?);
    let sights: Vec<Sight> = points(inputs, "datums")?
        .into_iter()
        .enumerate()
        .map(|(i, datum)| {
            let error = errors[i] / 1000.0;
            let reading = Reading {
                plus: error,
                minus: error,
                stated: Stated::Typed,
                ..Reading::exact(readings[i] / 1000.0, &unit::METRE)
            };
            let distance = Length::entry(format!("reading/{i}"), "r", Kind::Length, &reading);
            Sight::From { datum, distance }
        })
        .collect();
    let fixed = refuse(marking::fix(&sights, side(inputs.text("side")?)?))?;
    Ok(match of {
        "fix" => vec![mm(&fixed.at.x), mm(&fixed.at.y)],
        "fix_error" => vec![fixed.at.x.plus() * 1000.0, fixed.at.y.plus() * 1000.0],
        _ => {
            let ellipse = error_ellipse(&fixed.at);
            vec![ellipse.long * 1000.0, ellipse.short * 1000.0]
        }
    })
}

fn frame(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let lengths = inputs.numbers("lengths")?;
    let mut distances = Vec::new();
    for (i, pair) in inputs.list("pairs")?.iter().enumerate() {
        let pair = numbers(pair)?;
        let length = Length::of(lengths[i], &unit::MILLIMETRE);
        distances.push((pair[0] as usize - 1, pair[1] as usize - 1, length));
    }
    let sides: Result<Vec<Side>, String> = inputs.texts("sides")?.into_iter().map(side).collect();
    let datums = refuse(marking::frame(&sides?, &distances))?;
    let mut out = vec![mm(&datums[1].x)];
    out.extend(datums[2..].iter().flat_map(|at| [mm(&at.x), mm(&at.y)]));
    Ok(out)
}

fn about_a_line(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let line = points(inputs, "line")?;
    let at = point(inputs.value("point")?)?;
    let datums = [line[0].clone(), line[1].clone()];
    let pair = match of {
        "mirror_in_line" => {
            let over = mirrored(&at, &refuse(MirrorLine::through(&datums[0], &datums[1]))?);
            [over.x, over.y]
        }
        "offsets" => marking::offsets(&datums, &at),
        _ => marking::arcs(&datums, &at),
    };
    Ok(pair.iter().map(mm).collect())
}

fn mirror_by_pairs(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let (left, right) = (points(inputs, "left")?, points(inputs, "right")?);
    let pairs: Vec<(Point, Point)> = left.into_iter().zip(right).collect();
    let line = refuse(mirror_line(&pairs))?;
    let over = mirrored(&point(inputs.value("probe")?)?, &line);
    Ok(vec![mm(&over.x), mm(&over.y)])
}

fn fit(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let fit = refuse(rigid_fit(
        &points(inputs, "from")?,
        &points(inputs, "to")?,
        inputs.yes("mirrored")?,
    ))?;
    let turn = fit.by.turn.value().to_degrees();
    Ok(vec![turn, mm(&fit.by.dx), mm(&fit.by.dy), fit.rms * 1000.0])
}

fn fix_from(inputs: &Inputs) -> Result<Vec<f64>, String> {
    let (readings, errors) = (inputs.numbers("readings")?, inputs.numbers("errors")?);
    let deviations: Vec<f64> = inputs
        .numbers("datum_errors")?
        .iter()
        .map(|error| error / 2000.0)
        .collect();
    let sights = points(inputs, "datums")?
        .into_iter()
        .zip(readings)
        .zip(errors);
    let sights: Vec<Sight> = sights
        .map(|((datum, reading), error)| {
            let reading = Reading {
                plus: error / 1000.0,
                minus: error / 1000.0,
                stated: Stated::Typed,
                ..Reading::exact(reading / 1000.0, &unit::METRE)
            };
            let distance = Length::entry("reading", "r", Kind::Length, &reading);
            Sight::From { datum, distance }
        })
        .collect();
    let side = side(inputs.text("side")?)?;
    let fixed = refuse(marking::fix_from(&sights, &deviations, side))?;
    Ok(vec![mm(&fixed.at.x), mm(&fixed.at.y)])
}

/// A whole sheet: datums and features typed as exact, and where each feature is set out, along and above the new line.
fn pattern(inputs: &Inputs, by: &str) -> Result<Vec<f64>, String> {
    let mut entries = vec![("marking/move_by".to_owned(), by.to_owned())];
    let mut typed = |key: String, value: f64| entries.push((key, format!("{value} mm exact")));
    let names = ["ab", "ac", "bc", "ad", "bd", "cd"];
    for (name, value) in names.iter().zip(inputs.numbers("between")?) {
        typed(format!("marking/{name}"), value);
    }
    if by == "fit" {
        for (name, value) in names.iter().zip(inputs.numbers("new")?) {
            typed(format!("marking/new_{name}"), value);
        }
    } else {
        for (row, twin) in inputs.list("twins")?.iter().enumerate() {
            for (letter, value) in ["a", "b", "c"].iter().zip(numbers(twin)?) {
                typed(format!("marking/pairs/{}/twin_{letter}", row + 1), value);
            }
        }
    }
    let features = inputs.list("features")?;
    for (row, feature) in features.iter().enumerate() {
        for (letter, value) in ["a", "b", "c", "d"].iter().zip(numbers(feature)?) {
            typed(format!("marking/features/{}/{letter}", row + 1), value);
        }
    }
    if by == "mirror" {
        entries.push(("marking/pairs/2/of".to_owned(), "b".to_owned()));
    }
    let entries = entries
        .into_iter()
        .map(|(key, text)| (Key::from(key.as_str()), Entry::new(text)));
    let findings = evaluate(&Book::of("pattern", entries), None);
    let mut out = Vec::new();
    for row in 1..=features.len() {
        for name in ["along", "across"] {
            let id = format!("marking/{name}/{row}");
            let figure = findings.marking.found.figure(&id);
            out.push(figure.ok_or(id)?.value() * 1000.0);
        }
    }
    Ok(out)
}
