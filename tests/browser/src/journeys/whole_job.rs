//! The whole job: entered by hand from an empty book, on a tablet, by touch; found again; without a network.

use std::collections::BTreeMap;

use super::{Running, cases, costs, gearing, handover, paint, springs, vehicle};
use crate::{Device, Journey, Machine, Outcome};

cases![
    the_whole_job_is_entered_by_hand_and_found_again_without_a_network,
    the_example_book_is_sound_on_every_page_and_screen,
];

/// A sheet, and how it is entered.
struct Sheet {
    route: &'static str,
    by_hand: for<'a> fn(&'a Journey) -> Running<'a>,
}

const SHEETS: &[Sheet] = &[
    Sheet {
        route: "#/vehicle",
        by_hand: |journey| Box::pin(vehicle::by_hand(journey)),
    },
    Sheet {
        route: "#/gearing",
        by_hand: |journey| Box::pin(gearing::by_hand(journey)),
    },
    Sheet {
        route: "#/springs",
        by_hand: |journey| Box::pin(springs::by_hand(journey)),
    },
    Sheet {
        route: "#/paint",
        by_hand: |journey| Box::pin(paint::by_hand(journey)),
    },
    Sheet {
        route: "#/costs",
        by_hand: |journey| Box::pin(costs::by_hand(journey)),
    },
    Sheet {
        route: "#/handover",
        by_hand: |journey| Box::pin(handover::by_hand(journey)),
    },
];

/// Every entry and every result of every sheet, as shown.
pub(super) type Everything = BTreeMap<String, String>;

/// Reads the whole book, sheet by sheet.
pub(super) async fn everything(journey: &Journey) -> Outcome<Everything> {
    let mut all = Everything::new();
    for sheet in SHEETS {
        journey.open(sheet.route).await?;
        unfold(journey).await?;
        let entries = journey.entries().await?;
        if entries.is_empty() {
            return Err(format!("{} has no fields", sheet.route));
        }
        all.extend(
            entries
                .into_iter()
                .map(|(key, text)| (format!("entry {key}"), text)),
        );
        let results = journey.results().await?;
        all.extend(
            results
                .into_iter()
                .map(|(key, text)| (format!("result {key}"), text)),
        );
    }
    Ok(all)
}

/// Opens every row that is folded and what stands behind "More", rows within rows too.
pub(super) async fn unfold(journey: &Journey) -> Outcome {
    let open = "const shut = [...document.querySelectorAll('main :is(.fold, .more)[aria-expanded=false]')]; \
                shut.forEach((key) => key.click()); return shut.length;";
    for _ in 0..20 {
        journey.drawn().await?;
        if journey.ask(open, vec![]).await?.as_u64() == Some(0) {
            return Ok(());
        }
    }
    Err("rows stay folded".into())
}

/// Complains of every value that differs.
pub(super) fn same(before: &Everything, after: &Everything) -> Outcome {
    let mut differ = Vec::new();
    for name in before
        .keys()
        .chain(after.keys().filter(|name| !before.contains_key(*name)))
    {
        let (was, is) = (before.get(name), after.get(name));
        if was != is {
            differ.push(format!("{name}: was {was:?}, is {is:?}"));
        }
    }
    if differ.is_empty() {
        Ok(())
    } else {
        Err(differ.join("\n      "))
    }
}

async fn the_whole_job_is_entered_by_hand_and_found_again_without_a_network(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    for sheet in SHEETS {
        (sheet.by_hand)(&journey)
            .await
            .map_err(|why| format!("{}: {why}", sheet.route))?;
    }
    let entered = everything(&journey).await?;
    journey.reload().await?;
    same(&entered, &everything(&journey).await?).map_err(|why| format!("after a reload: {why}"))?;
    journey.wait_until_kept().await?;
    journey.go_offline();
    journey.reload().await?;
    same(&entered, &everything(&journey).await?).map_err(|why| format!("offline: {why}"))?;
    journey.console_is_quiet().await
}

/// The routes of all sheets, as the front page asks for them: none can be forgotten.
pub(super) async fn asked_sheets(journey: &Journey) -> Outcome<Vec<String>> {
    const ROUTES: &str = "return [...document.querySelectorAll('a.question')].map((key) => key.getAttribute('href'));";
    let routes: Vec<String> = serde_json::from_value(journey.ask(ROUTES, vec![]).await?)
        .map_err(|error| format!("the questions lead nowhere: {error}"))?;
    match routes.is_empty() {
        true => Err("the front page asks nothing".to_owned()),
        false => Ok(routes),
    }
}

async fn the_example_book_is_sound_on_every_page_and_screen(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.page_is_sound().await?;
    journey.tap("example").await?;
    let mut pages = asked_sheets(&journey).await?;
    pages.extend(["#/tick-off", "#/", "#/books", "#/settings", "#/pack"].map(str::to_owned));
    let mut wrong = Vec::new();
    for route in pages {
        for (name, device) in [
            ("tablet", Device::TABLET),
            ("upright", Device::TABLET_UPRIGHT),
            ("phone", Device::PHONE),
            ("desk", Device::DESK),
        ] {
            journey.device(device).await?;
            journey.open(&route).await?;
            let page = route.trim_start_matches("#/");
            let page = if page.is_empty() { "questions" } else { page };
            journey.screenshot(&format!("{page}-{name}")).await?;
            if name == "tablet" {
                journey.readme_picture(page).await?;
            }
            if let Err(why) = journey.page_is_sound().await {
                wrong.push(format!("on the {name}: {why}"));
            }
        }
    }
    if wrong.is_empty() {
        Ok(())
    } else {
        Err(wrong.join("\n      "))
    }
}
