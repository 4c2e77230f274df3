//! Writes templates of the pattern in `pattern.toml` into a folder, for `scripts/template_files.py` to measure.

use std::path::Path;

use buildbook::templates::{
    A4, Feature, For, LETTER, Labels, Paper, Part, Template, dxf, pages, pdf, svg,
};
use measure::Length;
use reference_tests::{Inputs, templates::placed};

/// Millimetres that a cutter takes away.
const KERF: f64 = 0.3;

fn main() -> Result<(), String> {
    let folder = std::env::args()
        .nth(1)
        .ok_or("name the folder to write into")?;
    let folder = Path::new(&folder);
    std::fs::create_dir_all(folder).map_err(|error| error.to_string())?;
    let data = Path::new(env!("CARGO_MANIFEST_DIR")).join("pattern.toml");
    let data = std::fs::read_to_string(data).map_err(|error| error.to_string())?;
    let labels = labels();
    let write = |name: &str, text: Option<String>| {
        let text = text.ok_or_else(|| format!("{name}: nothing to draw"))?;
        std::fs::write(folder.join(name), text).map_err(|error| error.to_string())
    };
    let template = |purpose, from_behind| template(&data, purpose, from_behind);
    let printed = |template: &Template, paper: Paper, overlap_mm: f64, correction: [f64; 2]| {
        let pages = pages(template, &labels, paper, overlap_mm / 1e3, correction)?;
        Some(pdf(&pages, template, &labels))
    };
    let full = template(For::Marking, false)?;
    write("marking-a4.pdf", printed(&full, A4, 15.0, [1.0; 2]))?;
    write("marking-letter.pdf", printed(&full, LETTER, 20.0, [1.0; 2]))?;
    // A printer whose bars come out at 99.2 mm along and 100.5 mm up.
    write(
        "corrected-a4.pdf",
        printed(&full, A4, 12.0, [100.0 / 99.2, 100.0 / 100.5]),
    )?;
    write(
        "spraying-a4.pdf",
        printed(&template(For::Spraying, false)?, A4, 15.0, [1.0; 2]),
    )?;
    write(
        "punching-letter.pdf",
        printed(&template(For::Punching, false)?, LETTER, 15.0, [1.0; 2]),
    )?;
    write("pattern.svg", svg(&full, &labels))?;
    write("pattern.dxf", dxf(&full, &labels))?;
    let behind = template(For::Marking, true)?;
    write("behind-a4.pdf", printed(&behind, A4, 15.0, [1.0; 2]))?;
    write("behind.dxf", dxf(&behind, &labels))
}

fn labels() -> Labels {
    let text = str::to_owned;
    Labels {
        up: text("UP"),
        bar_mm: text("100 mm"),
        bar_in: text("4 in"),
        scale: text(
            "True scale. Print at 100 %, not fitted to the page; then measure the bars both ways before you mark anything.",
        ),
        page: text("Page"),
        centre_line: text("centre line of the vehicle"),
        cut_away: text("cut away"),
        millimetres: text(
            "All of this file is in millimetres. The square is 100 mm by 100 mm: measure it before anything is cut.",
        ),
    }
}

/// The pattern as a template.
fn template(data: &str, purpose: For, from_behind: bool) -> Result<Template, String> {
    let inputs = Inputs::new(toml::from_str(data).map_err(|error| error.to_string())?);
    let place = |at: &toml::Value| {
        let axis = |axis: usize| {
            at.as_array()
                .and_then(|at| at.get(axis)?.as_integer())
                .map(|mm| mm as f64 / 1e3)
        };
        Some([axis(0)?, axis(1)?])
    };
    let line = |name: &str| {
        let points: Vec<_> = inputs.list(name)?.iter().filter_map(place).collect();
        <[[f64; 2]; 2]>::try_from(points).map_err(|_| format!("{name} has two points"))
    };
    let kerf = Length::exact(KERF / 1e3);
    let mut features = Vec::new();
    let mut pieces = Vec::new();
    for row in inputs.rows("feature")? {
        let shape = placed(row.rows("shape")?.first().ok_or("no shape")?)?;
        let name = row.text("name")?.to_owned();
        if let (true, Ok(outline)) = (pieces.len() < 3, shape.shape.offset(&(&kerf / 2.0))) {
            pieces.push((name.clone(), outline));
        }
        features.push(Feature {
            name,
            size: row.text("size")?.to_owned(),
            part: if shape.shape.is_cut() {
                Part::Cut
            } else {
                Part::Marked
            },
            outline: shape.outline(),
            cut: shape
                .offset(&(&kerf / -2.0))
                .ok()
                .filter(|_| shape.shape.is_cut()),
            centre: shape.at.values(),
            turn: shape.turn.value(),
            spots: shape.spots(),
        });
    }
    for row in inputs.rows("there")? {
        let shape = placed(row.rows("shape")?.first().ok_or("no shape")?)?;
        features.push(Feature {
            name: "rib".to_owned(),
            size: String::new(),
            part: Part::There,
            outline: shape.outline(),
            cut: None,
            centre: shape.at.values(),
            turn: shape.turn.value(),
            spots: shape.spots(),
        });
    }
    let datums = inputs.list("datums")?.iter().filter_map(place);
    let datums = ["A", "B", "C", "D"]
        .map(str::to_owned)
        .into_iter()
        .zip(datums);
    Ok(Template {
        title: "Bulkhead of the hop lorry, left-hand drive".to_owned(),
        lines: vec!["Seen from inside the cab. Goes on the left-hand side.".to_owned()],
        purpose,
        up: inputs.number("up")?.to_radians(),
        from_behind,
        features,
        datums: datums.collect(),
        datum_line: "A to B: 640 mm".to_owned(),
        centre_line: Some(line("centre_line")?),
        edges: vec![line("edge")?],
        pieces,
    })
}
