//! Templates at true scale: handed out as files, and read back by libraries that are not ours.

use std::path::PathBuf;

use fantoccini::wd::PrintSize;
use serde::Deserialize;

use super::cases;
use crate::paper::{close, read_by};
use crate::{Device, Journey, Machine, Outcome};

cases![
    a_pattern_entered_by_hand_is_handed_out_as_drawing_pages_and_cutters_file,
    all_files_of_the_example_say_up_side_and_scale_and_a_measured_print_corrects_the_next,
    the_schedule_and_the_old_holes_are_printed_with_the_sheet,
];

/// A page of a PDF.
#[derive(Debug, Deserialize)]
struct Page {
    size: [f64; 2],
    text: String,
    along: Vec<f64>,
    up: Vec<f64>,
}

/// A cutter's file.
#[derive(Debug, Deserialize)]
struct Cutter {
    faults: usize,
    units: u32,
    circles: Vec<[f64; 3]>,
    outlines: usize,
    pieces: usize,
    square: [f64; 2],
    words: String,
}

/// Where files are saved to in a journey.
struct Saving<'a> {
    journey: &'a Journey,
    folder: PathBuf,
}

impl<'a> Saving<'a> {
    async fn begin(journey: &'a Journey, name: &str) -> Outcome<Self> {
        let folder = journey.saving_into(name).await?;
        Ok(Self { journey, folder })
    }

    /// Presses a file's key and gives the file.
    async fn file(&self, name: &str) -> Outcome<PathBuf> {
        let file = self.folder.join(name);
        // One that was saved before makes way.
        let _ = std::fs::remove_file(&file);
        self.journey.tap(&format!("[data-do=\"{name}\"]")).await?;
        let bytes = self.journey.saved_file(&file).await?;
        if bytes.is_empty() {
            Err(format!("{name} is empty"))
        } else {
            Ok(file)
        }
    }

    /// Pages and what their key says of their number.
    async fn pages(&self, name: &str) -> Outcome<Vec<Page>> {
        let said = self.journey.text(&format!("[data-do=\"{name}\"]")).await?;
        let pages: Vec<Page> = read_by("template_read.py", &self.file(name).await?)?;
        if said.ends_with(&format!(": {}", pages.len())) {
            Ok(pages)
        } else {
            Err(format!(
                "{name} has {} pages, and its key says `{said}`",
                pages.len()
            ))
        }
    }
}

fn near(found: &[f64], wanted: &[f64], within: f64) -> bool {
    found.len() == wanted.len()
        && found
            .iter()
            .zip(wanted)
            .all(|(a, b)| (a - b).abs() <= within)
}

/// Every page has its bars of 100 mm and 4 in, so long along and up, says where UP is and what is said besides.
fn all_pages(pages: &[Page], paper: [f64; 2], stretch: [f64; 2], said: &[&str]) -> Outcome {
    for (i, page) in pages.iter().enumerate() {
        let mut size = page.size;
        size.sort_unstable_by(f64::total_cmp);
        let bars = |by: f64| [100.0 * by, 101.6 * by];
        let text = said
            .iter()
            .chain(&["UP"])
            .find(|said| !page.text.contains(&close(said)));
        if let Some(missing) = text {
            return Err(format!("page {i} does not say `{missing}`: {}", page.text));
        }
        if !near(&size, &paper, 0.01)
            || !near(&page.along, &bars(stretch[0]), 0.01)
            || !near(&page.up, &bars(stretch[1]), 0.01)
        {
            return Err(format!(
                "page {i} is {:?}, its bars are {:?} and {:?}",
                page.size, page.along, page.up
            ));
        }
    }
    Ok(())
}

const A4: [f64; 2] = [210.0, 297.0];
const LETTER: [f64; 2] = [215.9, 279.4];

async fn a_pattern_entered_by_hand_is_handed_out_as_drawing_pages_and_cutters_file(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    // The side that it goes on is said once, where the vehicle is.
    journey.open("#/vehicle").await?;
    journey.choose("vehicle/steering_wanted", "left").await?;
    journey.open("#/marking").await?;
    journey.tap("open marking/templates").await?;
    if journey.has("[data-do=\"template.svg\"]").await? {
        return Err("a template is offered before there is anything to draw".into());
    }
    // Triangles of 300, 400 and 500: the holes lie at 180 and 320 along and 240 up, 140 mm apart.
    journey.enter("marking/ab", "500 exact").await?;
    for (row, a, b, diameter) in [
        ("1", "300 exact", "400 exact", "30"),
        ("2", "400 exact", "300 exact", "20"),
    ] {
        if row != "1" {
            journey.tap("add marking/features").await?;
        }
        for (field, text) in [("diameter", diameter), ("a", a), ("b", b)] {
            journey
                .enter(&format!("marking/features/{row}/{field}"), text)
                .await?;
        }
    }
    let saving = Saving::begin(&journey, "templates-by-hand").await?;
    let drawing = std::fs::read_to_string(saving.file("template.svg").await?)
        .map_err(|error| error.to_string())?;
    for part in ["<svg", "mm\" height=\"", "UP", "A15 15 0 ", "A10 10 0 "] {
        if !drawing.contains(part) {
            return Err(format!("the drawing lacks `{part}`"));
        }
    }
    all_pages(
        &saving.pages("template-a4.pdf").await?,
        A4,
        [1.0; 2],
        &["Seen from: the seat", "LEFT-HAND", "100 %"],
    )?;
    journey.enter("marking/cutter_kerf", "0.3").await?;
    let cutter: Cutter = read_by("template_read.py", &saving.file("template.dxf").await?)?;
    let [one, two] = cutter.circles[..] else {
        return Err(format!("two circles are cut, not {:?}", cutter.circles));
    };
    let apart = (one[0] - two[0]).hypot(one[1] - two[1]);
    // Half the kerf lies inside each hole. The pieces for the old holes are cut outside theirs.
    if !near(&[apart, one[2], two[2]], &[140.0, 14.85, 9.85], 0.001) || cutter.pieces != 2 {
        return Err(format!("the cutter's file has {cutter:?}"));
    }
    journey.page_is_sound().await
}

async fn all_files_of_the_example_say_up_side_and_scale_and_a_measured_print_corrects_the_next(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.tap("example").await?;
    journey.open("#/marking").await?;
    journey.tap("open marking/templates").await?;
    let saving = Saving::begin(&journey, "templates-example").await?;
    let cutter: Cutter = read_by("template_read.py", &saving.file("template.dxf").await?)?;
    let sound = cutter.faults == 0 && cutter.units == 4 && near(&cutter.square, &[100.0; 2], 1e-6);
    // Eleven of the twelve are cut, one is a stud; seven are round.
    if !sound
        || cutter.circles.len() + cutter.outlines != 11
        || cutter.pieces != 11
        || !cutter.words.contains("millimetres")
    {
        return Err(format!("the cutter's file has {cutter:?}"));
    }
    let said = ["Seen from: the seat", "LEFT-HAND"];
    all_pages(&saving.pages("template-a4.pdf").await?, A4, [1.0; 2], &said)?;
    all_pages(
        &saving.pages("template-letter.pdf").await?,
        LETTER,
        [1.0; 2],
        &said,
    )?;
    // The printer made 100 mm into 99.2 mm along and 100.5 mm up: the next file gives it so much more and less.
    journey.enter("marking/bar_along", "99.2").await?;
    journey.enter("marking/bar_up", "100.5").await?;
    journey.choose("marking/template_for", "spraying").await?;
    journey.choose("marking/template_seen", "behind").await?;
    let pages = saving.pages("template-a4.pdf").await?;
    let said = [
        "99.2 mm along",
        "from behind the sheet metal",
        "cut away what is grey",
    ];
    all_pages(&pages, A4, [100.0 / 99.2, 100.0 / 100.5], &said)?;
    journey.device(Device::PHONE).await?;
    journey.page_is_sound().await
}

async fn the_schedule_and_the_old_holes_are_printed_with_the_sheet(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.tap("example").await?;
    journey.open("#/marking").await?;
    // The disc for the loom's hole of 1 1/2 in: 38.1 mm less twice 0.8 mm.
    journey.tap("open marking/closing").await?;
    journey.tap("open marking/schedule").await?;
    let closing = journey.text("[data-table=\"marking/closing\"]").await?;
    let schedule = journey.text("[data-table=\"marking/schedule\"]").await?;
    if !closing.contains("36.50") || !schedule.contains("Hole saw 38.1 mm") {
        return Err(format!("the page says: {closing}; {schedule}"));
    }
    // Folded up again: on paper all of it stands open.
    journey.tap("open marking/closing").await?;
    journey
        .wait_gone("[data-table=\"marking/closing\"]")
        .await?;
    let printed: String = journey
        .printed_pages("marking", PrintSize::A4)
        .await?
        .into_iter()
        .map(|page| page.text)
        .collect();
    for said in [
        "Hole saw 38.1 mm",
        "Pilot drill 3 mm",
        "36.50",
        "Close the old holes",
        "Points that lie alike on both sides",
        "fuel tank and battery away",
    ] {
        if !printed.contains(&close(said)) {
            return Err(format!("the print does not say `{said}`"));
        }
    }
    Ok(())
}
