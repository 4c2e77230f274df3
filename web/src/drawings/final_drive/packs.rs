//! The pack of shims for the pinion, and those that change sides: how many of which, lying on one another.

use crate::drawings::parts::{Fill, Lean, Line, area, outline, text};
use crate::drawings::{Drawing, Paper, Plate, Table};
use crate::shown;
use crate::state::State;
use crate::words::{Phrase, filled, final_drive};
use buildbook::sheets::final_drive::Packed;
use measure::Kind;
use yew::{Html, html};

/// The packs as stacks.
pub static PACK: Plate = Plate::new("final_drive/pack", 0.66, pack);

/// A shim of a pack: as it was typed, how often, and its thickness in metres.
struct Layer {
    said: String,
    count: usize,
    thickness: f64,
}

/// The shims of a pack, by their rows, as they were typed.
fn layers(state: &State, pack: &Packed) -> Vec<Layer> {
    let of_row = |(row, count): &(buildbook::Key, usize)| {
        let key = row.under("thickness");
        let entry = state.book.entry(key.as_str())?;
        let field = buildbook::field_of(&key)?;
        let number = field.number()?;
        let reading = measure::read(&entry.text, &buildbook::ask(number, entry)).ok()?;
        let mut said = entry.text.trim().to_owned();
        if reading.bare {
            said.push(shown::NBSP);
            said.push_str(reading.unit.symbol);
        }
        Some(Layer {
            said,
            count: *count,
            thickness: reading.value,
        })
    };
    pack.shims.iter().filter_map(of_row).collect()
}

fn pack(state: &State, paper: &Paper) -> Option<Drawing> {
    let findings = &state.findings.final_drive;
    let (pinion, side) = (
        findings.pack.as_ref().ok(),
        findings.side.as_ref().and_then(|side| side.as_ref().ok()),
    );
    let back = findings
        .found
        .figure("final_drive/move")
        .is_some_and(|moved| moved.value() < 0.0);
    let title = if back {
        final_drive::SIDE_BACK_TITLE
    } else {
        final_drive::SIDE_TITLE
    };
    let mut stacks = Vec::new();
    if let Some(pack) = pinion {
        stacks.push((final_drive::PACK_TITLE, "final_drive/shim", pack));
    }
    if let Some(pack) = side {
        stacks.push((title, "final_drive/move", pack));
    }
    let (_, _, first) = stacks.first()?;
    let tongue = paper.tongue;
    let size = |metres: f64| shown::plain(metres.abs(), Kind::Thickness, &paper.manner);
    let wanted = |id: &str| {
        let figure = findings.found.figure(id);
        figure.map_or_else(String::new, |figure| {
            shown::written(figure, &paper.manner).shortly()
        })
    };
    let rows: Vec<Vec<String>> = stacks
        .iter()
        .flat_map(|(_, _, pack)| layers(state, pack))
        .map(|layer| vec![layer.said, layer.count.to_string()])
        .collect();
    let said: Vec<String> = rows
        .iter()
        .map(|row| format!("{} × {}", row[1], row[0]))
        .collect();
    let tall = paper.height / stacks.len() as f64;
    let many = stacks.len() > 1;
    let drawn = stacks.iter().enumerate().map(|(at, (title, id, pack))| {
        let below = [
            filled(tongue.say(final_drive::TOGETHER), &[size(pack.thickness)]),
            filled(tongue.say(final_drive::WANTED), &[wanted(id)]),
        ];
        stack(
            &layers(state, pack),
            many.then_some(*title),
            &below,
            (tall * at as f64, tall),
            paper,
        )
    });
    Some(Drawing {
        title: tongue.say(stacks[0].0).to_owned(),
        description: filled(
            tongue.say(final_drive::PACK_SAID),
            &[said.join(", "), size(first.thickness), wanted(stacks[0].1)],
        ),
        marks: drawn.collect(),
        table: Table {
            head: vec![
                tongue.say(final_drive::SHIM).to_owned(),
                tongue.say(final_drive::HOW_MANY).to_owned(),
            ],
            rows,
        },
    })
}

/// A stack between two faces, each kind of shim as high as all of it is thick, its count and thickness beside it.
fn stack(
    layers: &[Layer],
    title: Option<Phrase>,
    below: &[String; 2],
    (top, tall): (f64, f64),
    paper: &Paper,
) -> Html {
    let tongue = paper.tongue;
    let sum: f64 = layers.iter().map(|l| l.thickness * l.count as f64).sum();
    let (left, right) = (20.0, (paper.width * 0.5).min(280.0));
    // The title above, what it comes to below; no layer lower than its writing.
    let head = if title.is_some() { 40.0 } else { 16.0 };
    let (first, room) = (top + head, tall - head - 68.0);
    let least = 26.0_f64.min(room / layers.len().max(1) as f64);
    let spare = (room - least * layers.len() as f64).max(0.0);
    let mut at = first;
    let drawn = layers.iter().map(|layer| {
        let share = layer.thickness * layer.count as f64 / sum.max(1e-12);
        let (from, to) = (at, at + least + spare * share);
        at = to;
        let body = [(left, from), (right, from), (right, to), (left, to)];
        let each = (to - from) / layer.count as f64;
        let parts = (1..layer.count).map(|n| {
            let y = from + each * n as f64;
            outline(&[(left, y), (right, y)], Line::Outline)
        });
        let said = format!("{} × {}", layer.count, layer.said);
        html! {
            <>
                { area(&body, Fill::Metal) }
                { outline(&body, Line::Outline) }
                { parts.collect::<Html>() }
                { text((right + 14.0, (from + to) / 2.0 + 6.0), Lean::Start, &said) }
            </>
        }
    });
    let drawn: Html = drawn.collect();
    let foot = top + tall - 14.0;
    html! {
        <>
            if let Some(title) = title { { text((left, top + 26.0), Lean::Start, tongue.say(title)) } }
            { drawn }
            { text((left, foot - 24.0), Lean::Start, &below[0]) }
            { text((left, foot), Lean::Start, &below[1]) }
        </>
    }
}
