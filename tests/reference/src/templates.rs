//! What the reference checks of shapes, templates and paper are computed with. Plain millimetres, square millimetres, degrees.

use measure::{Kind, Length, Ratio};
use toml::Value;
use trade::marking::{
    Outline, Placed, Point, Series, Shape, clearance_hole, land_between, land_to_edge, plate,
};

use crate::Inputs;

/// The values named `of`, in millimetres and degrees, from these inputs.
///
/// # Errors
/// When nothing here has that name, an input is missing, or the calculation refuses the inputs.
pub fn computed(of: &str, inputs: &Inputs) -> Result<Vec<f64>, String> {
    let none = Length::exact(0.0);
    match of {
        "outline" => {
            let outline = shape(inputs, "shape")?.outline();
            let [least, most] = outline.bounds();
            let mut values = area_and_edge(&outline);
            values.extend([least, most].iter().flatten().map(|metres| metres * 1e3));
            Ok(values)
        }
        "offset" => {
            let by = millimetres(inputs.number("by")?);
            Ok(area_and_edge(&refuse(shape(inputs, "shape")?.offset(&by))?))
        }
        "apart" => {
            let left = land_between(&shape(inputs, "a")?, &shape(inputs, "b")?, &none).left;
            Ok(vec![left.value() * 1e3])
        }
        "to_strip" => {
            let ends = inputs.quantities("ends", Kind::Length)?;
            let [ax, ay, bx, by] =
                <[Length; 4]>::try_from(ends).map_err(|_| "two ends have four numbers")?;
            let ends = [Point { x: ax, y: ay }, Point { x: bx, y: by }];
            let strip = refuse(Placed::strip(
                &ends,
                inputs.quantity("width", Kind::Length)?,
            ))?;
            let left = land_between(&shape(inputs, "shape")?, &strip, &none).left;
            Ok(vec![left.value() * 1e3, left.plus() * 1e3])
        }
        "to_edge" => {
            let ends = inputs.list("edge")?;
            let edge = [point(&ends[0])?, point(&ends[1])?];
            let metal = point(&inputs.list("metal")?[0])?;
            let left = land_to_edge(&shape(inputs, "shape")?, &edge, &metal, &none).left;
            Ok(vec![left.value() * 1e3])
        }
        "plate" => {
            let gap = millimetres(inputs.number("gap")?);
            let plate = refuse(plate(&shape(inputs, "shape")?.shape, &gap))?;
            Ok(vec![plate.sheet.value() * 1e6, plate.weld.value() * 1e3])
        }
        "clearance" => {
            let bolt = millimetres(inputs.number("bolt")?);
            [Series::Fine, Series::Medium, Series::Coarse]
                .into_iter()
                .map(|series| {
                    let hole = clearance_hole(&bolt, series).ok_or("no such bolt")?;
                    Ok(hole.value() * 1e3)
                })
                .collect()
        }
        _ => Err(crate::unknown(of)),
    }
}

fn refuse<T>(found: Result<T, trade::TradeError>) -> Result<T, String> {
    found.map_err(|error| format!("{error:?}"))
}

fn area_and_edge(outline: &Outline) -> Vec<f64> {
    vec![outline.area_m2() * 1e6, outline.length_m() * 1e3]
}

fn millimetres(number: f64) -> Length {
    Length::exact(number / 1e3)
}

fn point(value: &Value) -> Result<Point, String> {
    let number = |axis: usize| {
        let value = value.as_array().and_then(|at| at.get(axis));
        crate::inputs::number_of("point", value.ok_or("a point has two numbers")?)
    };
    Ok(Point::exact(number(0)? / 1e3, number(1)? / 1e3))
}

/// The one shape in a list of that name, in its place.
fn shape(inputs: &Inputs, name: &str) -> Result<Placed, String> {
    placed(inputs.rows(name)?.first().ok_or("no shape")?)
}

/// A shape in its place: its form, sizes, place, turn and whether it is mirrored, in millimetres and degrees.
///
/// # Errors
/// When one of them is missing, or they make no shape.
pub fn placed(row: &Inputs) -> Result<Placed, String> {
    let sizes: Vec<Length> = row.numbers("sizes")?.into_iter().map(millimetres).collect();
    let size = |which: usize| {
        sizes
            .get(which)
            .cloned()
            .ok_or_else(|| "too few sizes".to_owned())
    };
    let shape = match row.text("form")? {
        "round" => Shape::round(size(0)?),
        "slot" => Shape::slot(size(0)?, size(1)?),
        "rectangle" => Shape::rectangle(size(0)?, size(1)?, size(2)?),
        "d_hole" => Shape::d_hole(size(0)?, size(1)?),
        "bracket" => Shape::bracket(size(0)?, size(1)?),
        "free" => Shape::free(
            sizes
                .chunks_exact(2)
                .map(|at| [at[0].clone(), at[1].clone()])
                .collect(),
        ),
        "stud" => Shape::stud(size(0)?),
        other => return Err(format!("no shape is called `{other}`")),
    };
    let turn = Ratio::exact(row.number("turn")?.to_radians());
    let mut placed = Placed::new(refuse(shape)?, point(row.value("at")?)?, turn);
    placed.mirrored = row.yes("mirrored")?;
    Ok(placed)
}
