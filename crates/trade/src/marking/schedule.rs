//! In what order the holes are made, and with what.

use measure::{Kind, Length};

use super::{Form, Shape};

/// What does one step of the work, in the order in which it is worked.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Tool {
    /// A scriber, for what is only marked.
    Scriber,
    /// A centre punch.
    CentrePunch,
    /// A twist drill for the pilot hole.
    Pilot,
    /// A twist drill to size.
    Drill,
    /// A step drill, which leaves a thin sheet flat.
    StepDrill,
    /// A hole saw.
    HoleSaw,
    /// A nibbler, jig saw or cut-off disc, up to the line.
    Cutter,
    /// A file, to the line.
    File,
    /// The burr taken off, and the bare edge painted.
    Finish,
}

/// One step: a tool at its size, and the features it serves.
#[derive(Debug, Clone)]
pub struct Step {
    /// The tool.
    pub tool: Tool,
    /// Its diameter, where it has one.
    pub size: Option<Length>,
    /// The features, by their places in the list, with at how many spots of each.
    pub at: Vec<(usize, usize)>,
}

/// A twist drill fits a usual chuck up to this; metres. Common practice, no source, as the limits below.
const CHUCK_M: f64 = 0.013;
/// Above this a twist drill tears a thin sheet into three corners; metres.
const TWIST_IN_SHEET_M: f64 = 0.006;
/// What counts as a thin sheet, which one step of a step drill still clears; metres.
const THIN_M: f64 = 0.003;
/// The largest usual step drill; metres.
const STEP_DRILL_M: f64 = 0.030;
/// The smallest and largest usual hole saw; metres.
const SAW_M: [f64; 2] = [0.016, 0.150];

/// The tool that makes a round hole to size in a sheet, once it has a pilot hole.
///
/// A twist drill to 6 mm, and to 13 mm in plate; a step drill to 30 mm in sheet up to 3 mm; a hole saw from 16 to 150 mm; a
/// cutter beyond.
///
/// # Units
/// Metres.
///
/// # Source
/// Common practice, no source.
#[must_use]
pub fn round_tool(diameter: &Length, sheet: &Length) -> Tool {
    // Sizes that were typed in inches come a little beside a limit.
    let upto = |limit: f64| diameter.value() <= limit + 1e-6;
    let thin = sheet.value() <= THIN_M + 1e-6;
    if upto(TWIST_IN_SHEET_M) || !thin && upto(CHUCK_M) {
        Tool::Drill
    } else if thin && upto(STEP_DRILL_M) {
        Tool::StepDrill
    } else if !upto(SAW_M[0] - 2e-6) && upto(SAW_M[1]) {
        Tool::HoleSaw
    } else {
        Tool::Cutter
    }
}

/// The steps that make all features, in an order that can be worked: everything is marked while the template lies flat, every
/// pilot hole is drilled while the sheet is still stiff, then small before large, what is cut after what is drilled, and the
/// burrs last. A tool is set up once for each size.
///
/// A slot is drilled at both ends and cut between; a rectangle at its corners; a D-hole is opened as far as its flat allows and
/// filed to the line; an oval and a free outline get one hole to start the cutter in; studs and bracket corners are only marked.
///
/// # Units
/// Metres.
///
/// # Source
/// Common practice, no source.
#[must_use]
pub fn drill_schedule(shapes: &[&Shape], sheet: &Length, pilot: &Length) -> Vec<Step> {
    let mut steps: Vec<Step> = Vec::new();
    for (which, shape) in shapes.iter().enumerate() {
        for (tool, size, spots) in steps_of(shape, sheet, pilot) {
            let like = |step: &&mut Step| {
                let sizes = (step.size.as_ref(), size.as_ref());
                let same = match sizes {
                    (Some(a), Some(b)) => (a.value() - b.value()).abs() < 1e-6,
                    (a, b) => a.is_none() && b.is_none(),
                };
                step.tool == tool && same
            };
            match steps.iter_mut().find(like) {
                Some(step) => step.at.push((which, spots)),
                None => steps.push(Step {
                    tool,
                    size,
                    at: vec![(which, spots)],
                }),
            }
        }
    }
    let size = |step: &Step| step.size.as_ref().map_or(0.0, Length::value);
    measure::sort_by(&mut steps, |a, b| {
        a.tool.cmp(&b.tool).then(size(a).total_cmp(&size(b)))
    });
    steps
}

/// What one feature needs: tool, size, and at how many spots.
fn steps_of(shape: &Shape, sheet: &Length, pilot: &Length) -> Vec<(Tool, Option<Length>, usize)> {
    let sizes = shape.sizes();
    let mut steps = Vec::new();
    let mut open = |diameter: Length, spots: usize| {
        steps.push((Tool::CentrePunch, None, spots));
        let larger = diameter.value() > pilot.value() + 1e-6;
        let tool = round_tool(&diameter, sheet);
        steps.push((Tool::Pilot, Some(pilot.clone()), spots));
        if larger {
            steps.push((tool, (tool != Tool::Cutter).then_some(diameter), spots));
        }
        tool == Tool::Cutter
    };
    let by_hand = match shape.form() {
        Form::Round => open(sizes[0].clone(), 1),
        Form::Slot => {
            open(sizes[1].clone(), 2);
            true
        }
        Form::Rectangle => {
            // Corners without a radius are filed out of pilot holes.
            open((&sizes[2] * 2.0).of_kind(Kind::Length), 4);
            true
        }
        Form::DHole => {
            open((&sizes[1] * 2.0 - &sizes[0]).of_kind(Kind::Length), 1);
            true
        }
        Form::Oval | Form::Free => {
            open(Length::exact(TWIST_IN_SHEET_M), 1);
            true
        }
        Form::Stud => return vec![(Tool::CentrePunch, None, 1)],
        Form::Bracket => return vec![(Tool::Scriber, None, 1)],
    };
    if by_hand {
        // A D-hole's flat is filed; everything else is cut to the line first.
        if !matches!(shape.form(), Form::DHole) && !steps.iter().any(|step| step.0 == Tool::Cutter)
        {
            steps.push((Tool::Cutter, None, 1));
        }
        steps.push((Tool::File, None, 1));
    }
    steps.push((Tool::Finish, None, 1));
    steps
}
