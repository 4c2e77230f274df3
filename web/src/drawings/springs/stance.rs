//! The stance: the marks on the frame over both axles, as the vehicle stands and after the work.

use super::{figure, said};
use crate::drawings::parts::{Fill, Lean, Line, circle, dot, line, text_on};
use crate::drawings::{Drawing, Paper, Plate, Table};
use crate::shown::written;
use crate::state::State;
use crate::words::{self, springs as phrases};
use buildbook::Key;
use yew::{Html, html};

/// The stance of the vehicle on its springs.
pub static STANCE: Plate = Plate::new("springs/stance", 0.56, draw);

/// One spring's mark.
struct Mark {
    front: bool,
    name: String,
    now: f64,
    now_said: String,
    after: Option<(f64, String)>,
}

fn marks_of(state: &State, paper: &Paper) -> Vec<Mark> {
    let value = |id: String| {
        let figure = state.findings.result(&id)?.as_ref().ok()?;
        Some(figure.value())
    };
    let list = Key::from("springs/springs");
    let pictures = state.findings.springs.pictures.iter();
    pictures
        .filter_map(|picture| {
            let id = &*picture.id;
            let after = value(format!("springs/height_after/{id}"));
            Some(Mark {
                front: picture.place?.starts_with("front"),
                name: words::row_name(&state.book, &list, id, paper.tongue),
                now: value(format!("springs/height/{id}"))?,
                now_said: figure(state, "height", id, paper)?,
                after: after.zip(figure(state, "height_after", id, paper)),
            })
        })
        .collect()
}

fn mean(values: impl Iterator<Item = f64>) -> Option<f64> {
    let all: Vec<f64> = values.collect();
    (!all.is_empty()).then(|| all.iter().sum::<f64>() / all.len() as f64)
}

fn draw(state: &State, paper: &Paper) -> Option<Drawing> {
    let marks = marks_of(state, paper);
    let of = |front: bool, after: bool| {
        let side = marks.iter().filter(|mark| mark.front == front);
        mean(side.map(|mark| {
            mark.after
                .as_ref()
                .filter(|_| after)
                .map_or(mark.now, |after| after.0)
        }))
    };
    let (front, rear) = (of(true, false)?, of(false, false)?);
    let (front_after, rear_after) = (of(true, true)?, of(false, true)?);
    let planned = marks.iter().any(|mark| mark.after.is_some());
    let highest = marks
        .iter()
        .flat_map(|mark| [Some(mark.now), mark.after.as_ref().map(|after| after.0)]);
    let highest = highest.flatten().fold(0.05_f64, f64::max);
    let ground = paper.height - 64.0;
    let top = if paper.width < 460.0 {
        24.0 + 22.0 * marks.len() as f64
    } else {
        84.0
    };
    let up = (ground - top - 26.0).max(20.0) / highest;
    let (left, right) = (paper.width * 0.24, paper.width * 0.76);
    let at = |front: bool, height: f64| (if front { left } else { right }, ground - height * up);
    let beyond = |a: f64, b: f64| {
        // The frame runs on beyond both axles.
        let (a, b) = (at(true, a), at(false, b));
        let slope = (b.1 - a.1) / (b.0 - a.0);
        let off = paper.width * 0.14;
        (
            (a.0 - off, a.1 - slope * off),
            (b.0 + off, b.1 + slope * off),
        )
    };
    let (now, after) = (beyond(front, rear), beyond(front_after, rear_after));
    let dots = marks.iter().map(|mark| {
        let after = mark
            .after
            .as_ref()
            .map(|(height, _)| dot(at(mark.front, *height), Fill::Now));
        let fill = if mark.after.is_some() {
            Fill::Before
        } else {
            Fill::Now
        };
        html! { <>{ dot(at(mark.front, mark.now), fill) }{ after.unwrap_or_default() }</> }
    });
    let wheels = [left, right].map(|x| {
        html! { <>{ circle((x, ground), 26.0, Line::Outline) }{ line((x, ground), (x, top), Line::Centre) }</> }
    });
    let drawn = html! {
        <>
            { line((left - 90.0, ground), (right + 90.0, ground), Line::Fine) }
            { wheels.into_iter().collect::<Html>() }
            { line(now.0, now.1, if planned { Line::Before } else { Line::Now }) }
            if planned { { line(after.0, after.1, Line::Now) } }
            { dots.collect::<Html>() }
            { text_on((paper.width / 2.0, ground + 46.0), Lean::Middle, &rake_said(state, paper, planned)) }
            { figures(&marks, paper) }
        </>
    };
    let rows: Vec<Vec<String>> = marks
        .iter()
        .map(|mark| {
            let after = mark
                .after
                .as_ref()
                .map_or_else(|| "—".to_owned(), |after| after.1.clone());
            vec![mark.name.clone(), mark.now_said.clone(), after]
        })
        .collect();
    let sentence: Vec<String> = rows.iter().map(|row| row.join(" ")).collect();
    Some(Drawing {
        title: paper.tongue.say(phrases::STANCE_TITLE).to_owned(),
        description: said(paper, phrases::STANCE_SAID, &sentence.join(", ")),
        marks: drawn,
        table: Table {
            head: [
                words::frame::QUANTITY,
                phrases::AS_IT_STANDS,
                phrases::AFTER,
            ]
            .map(|head| paper.tongue.say(head).to_owned())
            .to_vec(),
            rows,
        },
    })
}

/// The figures: the front's at the left, the rear's at the right; on a narrow paper one below the other.
fn figures(marks: &[Mark], paper: &Paper) -> Html {
    let narrow = paper.width < 460.0;
    let fronts = marks.iter().filter(|mark| mark.front).count();
    let sides = [true, false].map(|front| {
        let first = if narrow && !front { fronts } else { 0 };
        let side = marks.iter().filter(|mark| mark.front == front);
        side.enumerate()
            .map(|(row, mark)| {
                let after = mark.after.as_ref().map_or(&mark.now_said, |after| &after.1);
                let y = 26.0 + 22.0 * (first + row) as f64;
                let said = format!("{} {after}", mark.name);
                if front || narrow {
                    text_on((12.0, y), Lean::Start, &said)
                } else {
                    text_on((paper.width - 12.0, y), Lean::End, &said)
                }
            })
            .collect::<Html>()
    });
    sides.into_iter().collect()
}

/// The rake in words under the drawing.
fn rake_said(state: &State, paper: &Paper, planned: bool) -> String {
    let said = |id: &str| {
        let figure = state.findings.result(id)?.as_ref().ok()?;
        let told = words::result(&state.book, id, paper.tongue);
        Some(format!("{told} {}", written(figure, &paper.manner).whole()))
    };
    let rake = said(if planned {
        "springs/rake_after"
    } else {
        "springs/rake"
    });
    rake.unwrap_or_default()
}
