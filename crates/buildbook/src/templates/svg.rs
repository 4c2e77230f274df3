//! The whole template as one drawing: SVG, its size in millimetres.

use std::fmt::Write;

use trade::marking::{Outline, Piece};

use super::bars::{LEFT, TEXTS, foot, foot_height};
use super::drawing::drawing;
use super::ink::{Ink, around};
use super::{Labels, Template, number};

/// White paper around everything, millimetres.
const EDGE: f64 = 8.0;

/// A template as an SVG file at true scale; none where there is nothing to draw.
///
/// One unit of the file is a millimetre of paper, and width and height say so. Arcs are arcs.
#[must_use]
pub fn svg(template: &Template, labels: &Labels) -> Option<String> {
    let mut ink = drawing(template, labels).concat();
    let [low, high] = ink.iter().map(Ink::bounds).reduce(around)?;
    let corner = [
        low[0] - LEFT,
        low[1] - foot_height(template, labels, "") - 4.0,
    ];
    ink.extend(foot(corner, template, labels, ""));
    // The bars stand 118 mm up the left edge, and the foot runs as far as its arrow.
    let right = high[0].max(corner[0] + TEXTS + 24.0) + EDGE;
    let top = high[1].max(corner[1] + 120.0) + EDGE;
    let (left, bottom) = (corner[0] - EDGE, corner[1] - EDGE);
    let [width, height] = [right - left, top - bottom].map(number);
    let mut text = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\">\n\
         <title>{}</title>\n<rect width=\"{width}\" height=\"{height}\" fill=\"#fff\"/>\n\
         <g font-family=\"Helvetica, Arial, sans-serif\" stroke-linecap=\"round\" stroke-linejoin=\"round\">\n",
        escaped(&template.title)
    );
    for ink in &ink {
        write_ink(&mut text, ink, [left, top]);
    }
    text.push_str("</g>\n</svg>\n");
    Some(text)
}

fn write_ink(out: &mut String, ink: &Ink, corner: [f64; 2]) {
    let there = |at: [f64; 2]| [number(at[0] - corner[0]), number(corner[1] - at[1])];
    let _ = match ink {
        Ink::Line(pen, outline) => {
            let (width, dashes, shade) = pen.look();
            let dashes: Vec<String> = dashes.iter().map(|dash| number(*dash)).collect();
            let dashed = if dashes.is_empty() {
                String::new()
            } else {
                format!(" stroke-dasharray=\"{}\"", dashes.join(" "))
            };
            let (path, grey) = (path(outline, &there), grey(shade));
            writeln!(
                out,
                "<path d=\"{path}\" fill=\"none\" stroke=\"{grey}\" stroke-width=\"{}\"{dashed}/>",
                number(width)
            )
        }
        Ink::Area(shade, outline) => writeln!(
            out,
            "<path d=\"{}\" fill=\"{}\"/>",
            path(outline, &there),
            grey(*shade)
        ),
        Ink::Text {
            at,
            high,
            turn,
            bold,
            text,
        } => {
            let [x, y] = there(*at);
            let turn = match number(-turn.to_degrees()) {
                level if level == "0" => String::new(),
                turned => format!(" transform=\"rotate({turned} {x} {y})\""),
            };
            let weight = if *bold { " font-weight=\"bold\"" } else { "" };
            let size = number(*high);
            writeln!(
                out,
                "<text x=\"{x}\" y=\"{y}\" font-size=\"{size}\"{weight}{turn}>{}</text>",
                escaped(text)
            )
        }
    };
}

fn path(outline: &Outline, there: &dyn Fn([f64; 2]) -> [String; 2]) -> String {
    let mut path = String::new();
    for (i, Piece { from, to, arc }) in outline.pieces().enumerate() {
        if i == 0 {
            let [x, y] = there(from);
            let _ = write!(path, "M{x} {y}");
        }
        let [x, y] = there(to);
        let _ = match arc {
            Some(arc) => {
                // Down the screen is up the paper, so that anticlockwise is against the file's angles.
                let (large, way) = (
                    u8::from(arc.sweep.abs() > std::f64::consts::PI),
                    u8::from(arc.sweep < 0.0),
                );
                let radius = number(arc.radius);
                write!(path, "A{radius} {radius} 0 {large} {way} {x} {y}")
            }
            None => write!(path, "L{x} {y}"),
        };
    }
    if outline.closed {
        path.push('Z');
    }
    path
}

fn grey(shade: f64) -> String {
    let part = (shade * 255.0).round() as u8;
    format!("#{part:02x}{part:02x}{part:02x}")
}

fn escaped(text: &str) -> String {
    let mut out = String::new();
    for letter in text.chars() {
        match letter {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            ' '..='~' => out.push(letter),
            // What is not ASCII is said by its number, so that no program can take it for another letter; controls are dropped.
            _ if letter.is_control() => {}
            _ => {
                let _ = write!(out, "&#{};", letter as u32);
            }
        }
    }
    out
}
