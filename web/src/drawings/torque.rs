//! The order in which the bolts of a joint are tightened.

use super::parts::{Lean, Line, circle, line, text};
use super::{Drawing, Paper, Plate, Point, Table};
use crate::state::State;
use crate::words::{self, filled, torque};
use buildbook::Key;
use buildbook::sheets::torque::{JointEntry, JointFindings};
use yew::{Html, html};

/// The order of the joint that comes next, else of the first one with a pattern.
pub static ORDER: Plate = Plate::new("torque/order", 0.8, order);

fn order(state: &State, paper: &Paper) -> Option<Drawing> {
    let findings = &state.findings.torque;
    let with_order = |at: &usize| !findings.joints[*at].order.is_empty();
    let at = findings
        .next
        .filter(with_order)
        .or_else(|| (0..findings.joints.len()).find(with_order))?;
    Some(of_joint(state, at, paper))
}

/// The order of one joint, by its place in the list.
pub fn of_joint(state: &State, at: usize, paper: &Paper) -> Drawing {
    let findings = &state.findings.torque;
    let (entry, joint) = (&findings.sheet.joints[at], &findings.joints[at]);
    let list = Key::from("torque/joints");
    let name = words::row_name(&state.book, &list, entry.id(), paper.tongue);
    let numbers: Vec<String> = joint.order.iter().map(ToString::to_string).collect();
    let rows = numbers
        .iter()
        .enumerate()
        .map(|(turn, bolt)| vec![(turn + 1).to_string(), bolt.clone()]);
    Drawing {
        title: format!("{}: {name}", paper.tongue.say(torque::ORDER_TITLE)),
        description: filled(
            paper.tongue.say(torque::ORDER_SAID),
            &[name, numbers.join(", ")],
        ),
        marks: marks(entry, joint, paper),
        table: Table {
            head: vec![
                paper.tongue.say(torque::ORDER_PLACE).to_owned(),
                paper.tongue.say(torque::ORDER_BOLT).to_owned(),
            ],
            rows: rows.collect(),
        },
    }
}

/// More bolts than this take all the paper there is, and no lines lead from one to the next.
const FEW: usize = 8;
/// Nearer together than this two numbers would run into one another: the table tells the order then.
const NUMBERED: f64 = 25.0;

/// The radius of a bolt's head: as large as the nearest neighbour allows.
fn head(places: &[Point]) -> f64 {
    let apart = |a: &Point, b: &Point| (a.0 - b.0).hypot(a.1 - b.1);
    let nearest = places
        .iter()
        .enumerate()
        .flat_map(|(at, a)| places[at + 1..].iter().map(move |b| apart(a, b)))
        .fold(f64::MAX, f64::min);
    (0.44 * nearest).min(24.0)
}

/// Where each bolt lies on the paper.
fn places(entry: &JointEntry, count: usize, paper: &Paper) -> Vec<Point> {
    let (middle_x, middle_y) = (paper.width / 2.0, paper.height / 2.0);
    let edge = if count > FEW { 24.0 } else { 48.0 };
    let reach = middle_x.min(middle_y) - edge;
    if entry.pattern.value() == Some(&"rectangle") {
        let whole = |given: &buildbook::Given<measure::Ratio>| {
            given.value().map_or(1.0, |count| count.value().max(1.0))
        };
        let (rows, columns) = (whole(&entry.rows), whole(&entry.columns));
        let step = ((paper.width - 2.0 * edge - 14.0) / (columns - 1.0).max(1.0))
            .min((paper.height - 2.0 * edge - 14.0) / (rows - 1.0).max(1.0))
            .clamp(1.0, 140.0);
        return (0..count)
            .map(|i| {
                let (row, column) = ((i as f64 / columns).floor(), i as f64 % columns);
                (
                    middle_x + (column - (columns - 1.0) / 2.0) * step,
                    middle_y + (row - (rows - 1.0) / 2.0) * step,
                )
            })
            .collect();
    }
    (0..count)
        .map(|i| {
            let angle = std::f64::consts::TAU * i as f64 / count as f64;
            (
                middle_x + reach * angle.sin(),
                middle_y - reach * angle.cos(),
            )
        })
        .collect()
}

/// Bolts as heads with the turn in which they come; where they are few a thin line leads from each to the next.
fn marks(entry: &JointEntry, joint: &JointFindings, paper: &Paper) -> Html {
    let places = places(entry, joint.order.len(), paper);
    let at = |bolt: &usize| places.get(bolt.wrapping_sub(1)).copied();
    let head = head(&places);
    let clear = head + 6.0;
    // Of many bolts the lines would only run through the numbers.
    let few = joint.order.len() <= FEW;
    let pairs = joint.order.windows(2).filter(|_| few);
    let paths = pairs.filter_map(|pair| {
        let (from, to) = (at(&pair[0])?, at(&pair[1])?);
        // From rim to rim: the figures in the heads stay clear.
        let (dx, dy) = (to.0 - from.0, to.1 - from.1);
        let share = clear / dx.hypot(dy).max(2.0 * clear);
        let start = (from.0 + dx * share, from.1 + dy * share);
        let end = (to.0 - dx * share, to.1 - dy * share);
        Some(line(start, end, Line::Centre))
    });
    let heads = joint.order.iter().enumerate().filter_map(|(turn, bolt)| {
        let place = at(bolt)?;
        // The first one stands out: there the work begins.
        let ring = if turn == 0 {
            circle(place, clear, Line::Now)
        } else {
            html! {}
        };
        Some(html! {
            <>
                { circle(place, head, Line::Outline) }
                { ring }
                if 2.0 * head >= 0.88 * NUMBERED {
                    { text((place.0, place.1 + 6.0), Lean::Middle, &(turn + 1).to_string()) }
                }
            </>
        })
    });
    html! { <>{ paths.collect::<Html>() }{ heads.collect::<Html>() }</> }
}
