//! The looks, and what a device may prefer: forced colours, less motion, everything twice as large.

use serde_json::json;

use super::cases;
use super::whole_job::asked_sheets;
use crate::{Device, Journey, Machine, Outcome};

cases![
    every_look_keeps_its_contrast,
    forced_colours_keep_focus_states_and_drawings_in_sight,
    nothing_moves_where_less_motion_is_asked_for,
    at_twice_the_size_nothing_is_cut_and_nothing_reaches_sideways,
];

/// A colour, whatever way it is written, as the browser paints it; and the contrast of two of them (WCAG 2.2, "contrast ratio").
const CONTRAST: &str = r#"
const brush = document.createElement("canvas").getContext("2d", { willReadFrequently: true });
const painted = (colour) => {
  brush.clearRect(0, 0, 1, 1);
  brush.fillStyle = colour;
  brush.fillRect(0, 0, 1, 1);
  return [...brush.getImageData(0, 0, 1, 1).data];
};
const luminance = ([r, g, b]) => [r, g, b]
  .map((c) => c / 255)
  .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4))
  .reduce((sum, c, at) => sum + c * [0.2126, 0.7152, 0.0722][at], 0);
const contrast = (one, other) => {
  const [light, dark] = [one, other].map((c) => luminance(painted(c))).sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
};
"#;

/// Asks the page for what is wrong with it, with a measure of contrast at hand.
async fn asked(journey: &Journey, script: &str) -> Outcome<Vec<String>> {
    let found = journey
        .ask(&format!("{CONTRAST}{script}"), Vec::new())
        .await?;
    serde_json::from_value(found).map_err(|error| format!("the page answers oddly: {error}"))
}

fn none(wrong: Vec<String>) -> Outcome {
    if wrong.is_empty() {
        Ok(())
    } else {
        Err(wrong.join("\n      "))
    }
}

async fn with_the_example(machine: &Machine) -> Outcome<Journey> {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.tap("example").await?;
    Ok(journey)
}

/// Words 7 : 1, what is drawn or pressed 3 : 1 (WCAG 2.2, 1.4.6 and 1.4.11), on each ground that they stand on.
const EVERY_ROLE: &str = r#"
const style = getComputedStyle(document.documentElement);
const role = (name) => style.getPropertyValue("--" + name).trim();
const paper = ["ground", "card", "well"];
const wanted = [
  ...["ink", "muted", "blue", "brass", "oxide", "green"].map((name) => [name, paper, 7]),
  ["edge", paper, 3],
  ["brass-line", ["ground", "card"], 3],
  ...["chalk", "chalk-muted", "slate-brass"].map((name) => [name, ["slate"], 7]),
  ["slate-edge", ["slate"], 3],
  ["on-rail", ["rail", "rail-press"], 7],
  ["on-blue", ["blue"], 7],
  ["ink", ["blue-wash", "brass-wash", "oxide-wash", "green-wash"], 7],
  ["oxide", ["oxide-wash"], 4.5],
];
return wanted.flatMap(([name, grounds, least]) => grounds.flatMap((ground) => {
  const found = contrast(role(name), role(ground));
  return found >= least ? [] : [`${name} on ${ground} has ${found.toFixed(2)} : 1, and needs ${least}`];
}));
"#;

async fn every_look_keeps_its_contrast(machine: &Machine) -> Outcome {
    let journey = with_the_example(machine).await?;
    let mut wrong = Vec::new();
    for look in ["light", "dark", "sun"] {
        journey.open("#/settings").await?;
        journey.tap(&format!("set look {look}")).await?;
        journey.wait_for(&format!("html[data-look={look}]")).await?;
        let found = asked(&journey, EVERY_ROLE).await?;
        wrong.extend(found.into_iter().map(|line| format!("{look}: {line}")));
        for route in [
            "#/",
            "#/gearing",
            "#/springs",
            "#/paint",
            "#/costs",
            "#/books",
        ] {
            journey.open(route).await?;
            if let Err(why) = journey.page_is_sound().await {
                wrong.push(format!("{look}: {why}"));
            }
        }
    }
    // As the tablet wishes: the dark look is the same by wish as by choice.
    journey.open("#/settings").await?;
    journey.tap("set look auto").await?;
    const GROUND: &str = "return getComputedStyle(document.body).backgroundColor;";
    let mut grounds = Vec::new();
    for wish in ["dark", "light"] {
        journey.prefer(&[("prefers-color-scheme", wish)]).await?;
        journey
            .wait_for(&format!("html[data-system={wish}]"))
            .await?;
        grounds.push(journey.ask(GROUND, Vec::new()).await?);
    }
    journey.prefer(&[]).await?;
    // #171A1C and #F3EFE4.
    if grounds != [json!("rgb(23, 26, 28)"), json!("rgb(243, 239, 228)")] {
        wrong.push(format!("as the tablet wishes the ground is {grounds:?}"));
    }
    none(wrong)
}

/// Every line and area of every drawing on the page stands out from its ground, which is the system's; what is pressed, chosen or
/// here is filled with another colour than what is not, and its words can be read.
const FORCED: &str = r#"
const wrong = [];
const shown = (e) => e.getClientRects().length > 0;
const name = (e) => (e.getAttribute("class") ?? e.tagName) + " " + (e.dataset?.do ?? e.textContent.trim().slice(0, 24));
for (const plate of document.querySelectorAll("svg.plate")) {
  if (!shown(plate)) continue;
  const ground = getComputedStyle(plate).backgroundColor;
  if (contrast(ground, "Canvas") > 1.01) wrong.push(`a drawing lies on ${ground}, not on the system's ground`);
  let lines = 0;
  // What lays paper under words is not to be seen.
  for (const mark of plate.querySelectorAll("path:not(.paper), circle:not(.paper)")) {
    const style = getComputedStyle(mark);
    const paints = [style.stroke, style.fill].filter((paint) => paint !== "none" && !paint.startsWith("url"));
    if (paints.length === 0) continue;
    lines += 1;
    if (!paints.some((paint) => contrast(paint, ground) >= 3)) wrong.push(`${name(mark)}: ${paints.join(" and ")} on ${ground}`);
  }
  for (const words of plate.querySelectorAll("text")) {
    const fill = getComputedStyle(words).fill;
    if (contrast(fill, ground) < 4.5) wrong.push(`the words ${words.textContent}: ${fill} on ${ground}`);
  }
  if (lines === 0) wrong.push("a drawing without lines");
}
const marked = [".other[aria-pressed=true]", ".choice[aria-checked=true]", ".drawer-key[aria-current=page]", ".rail-key[aria-current=page]",
  ".key[aria-pressed=true]", ".key[aria-current=page]"];
for (const selector of marked) {
  for (const e of document.querySelectorAll(selector)) {
    if (!shown(e)) continue;
    const style = getComputedStyle(e);
    const dot = getComputedStyle(e, "::before").backgroundImage;
    // What is only assumed is framed by dashes, its dot filled.
    const assumed = e.classList.contains("assumed") && style.borderStyle === "dashed" && contrast(style.borderColor, "Canvas") >= 3 && dot !== "none";
    if (!assumed && contrast(style.backgroundColor, "Canvas") < 3) wrong.push(`${name(e)} is marked, and looks like its neighbours`);
    for (const words of [e, ...e.querySelectorAll("span, small, b")]) {
      const colour = getComputedStyle(words).color;
      if (contrast(colour, style.backgroundColor) < 4.5) wrong.push(`${name(words)}: ${colour} on ${style.backgroundColor}`);
    }
  }
}
return wrong;
"#;

/// What has the cursor shows it: an outline of 4 px that stands out from the page.
const FOCUS: &str = r#"
const e = document.activeElement, style = getComputedStyle(e);
const good = e !== document.body && style.outlineStyle === "solid" && parseFloat(style.outlineWidth) >= 4 && contrast(style.outlineColor, "Canvas") >= 3;
return good ? [] : [`${e.outerHTML.slice(0, 80)} has the cursor, and an outline of ${style.outline}`];
"#;

/// The character at fault can be read, and told from those beside it.
const FAULT: &str = r#"
const mark = document.querySelector(".typed mark"), style = getComputedStyle(mark);
const beside = getComputedStyle(mark.parentElement).backgroundColor;
return contrast(style.color, style.backgroundColor) >= 4.5 && contrast(style.backgroundColor, beside) >= 3
  ? [] : [`the character at fault: ${style.color} on ${style.backgroundColor} beside ${beside}`];
"#;

async fn forced_colours_keep_focus_states_and_drawings_in_sight(machine: &Machine) -> Outcome {
    let journey = with_the_example(machine).await?;
    let outcome = forced(&journey).await;
    journey.prefer(&[]).await?;
    outcome
}

async fn forced(journey: &Journey) -> Outcome {
    let mut wrong = Vec::new();
    let mut pages = asked_sheets(journey).await?;
    pages.extend(["#/", "#/books", "#/send/paint", "#/settings"].map(str::to_owned));
    for scheme in ["dark", "light"] {
        journey
            .prefer(&[
                ("forced-colors", "active"),
                ("prefers-color-scheme", scheme),
            ])
            .await?;
        for route in &pages {
            journey.open(route).await?;
            journey.tap("sheets").await?;
            let found = asked(journey, FORCED).await?;
            wrong.extend(
                found
                    .into_iter()
                    .map(|line| format!("{route} ({scheme}): {line}")),
            );
            journey
                .screenshot(&format!(
                    "forced-{scheme}-{}",
                    route.replace(['#', '/'], "")
                ))
                .await?;
            // The way through the panel by keys: each press shows where it has come to.
            for _ in 0..3 {
                journey.press_tab().await?;
                wrong.extend(asked(journey, FOCUS).await?);
            }
        }
    }
    journey.open("#/vehicle").await?;
    journey.type_into("vehicle/wheelbase", "31x85").await?;
    journey.wait_for(".typed mark").await?;
    wrong.extend(asked(journey, FAULT).await?);
    wrong.extend(asked(journey, FOCUS).await?);
    none(wrong)
}

/// Anything that moves by itself, or takes its time to change.
const MOVES: &str = r#"
const moving = document.getAnimations().map((a) => `moves: ${a.effect?.target?.outerHTML?.slice(0, 80)}`);
const slow = [...document.querySelectorAll("*")].filter((e) => {
  const style = getComputedStyle(e);
  return style.animationName !== "none" || style.transitionDuration.split(",").some((time) => parseFloat(time) > 0) || style.scrollBehavior === "smooth";
});
return [...moving, ...slow.map((e) => `may move: ${e.outerHTML.slice(0, 80)}`)];
"#;

async fn nothing_moves_where_less_motion_is_asked_for(machine: &Machine) -> Outcome {
    let journey = with_the_example(machine).await?;
    journey
        .prefer(&[("prefers-reduced-motion", "reduce")])
        .await?;
    let mut wrong = Vec::new();
    for route in asked_sheets(&journey).await? {
        journey.open(&route).await?;
        wrong.extend(asked(&journey, MOVES).await?);
        for press in ["sheets", "more"] {
            journey.tap(press).await?;
            wrong.extend(asked(&journey, MOVES).await?);
        }
    }
    journey.prefer(&[]).await?;
    none(wrong)
}

async fn at_twice_the_size_nothing_is_cut_and_nothing_reaches_sideways(
    machine: &Machine,
) -> Outcome {
    let journey = with_the_example(machine).await?;
    let mut pages = asked_sheets(&journey).await?;
    pages.extend(["#/", "#/books", "#/send/paint", "#/settings"].map(str::to_owned));
    // 1280 x 720 at 200 %.
    journey.device(Device::touched(640, 360)).await?;
    let mut wrong = Vec::new();
    for route in pages {
        journey.open(&route).await?;
        wrong.extend(
            journey
                .sticks_out_or_meets()
                .await?
                .into_iter()
                .map(|line| format!("{route}: {line}")),
        );
    }
    // An entry is still in sight when the cursor stands in it.
    journey.open("#/gearing").await?;
    journey.enter("gearing/gears/1/ratio", "5.42").await?;
    const SEEN: &str = r#"
const field = document.activeElement, box = field.getBoundingClientRect();
const top = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
return field.dataset.key === "gearing/gears/1/ratio" && top === field ? [] : ["the entry is covered by " + top?.outerHTML.slice(0, 80)];
"#;
    wrong.extend(asked(&journey, SEEN).await?);
    none(wrong)
}
