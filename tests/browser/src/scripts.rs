//! What is asked of the page itself. Each is the body of a function that gets its arguments by place.

/// Brings the element with this selector into view; gives the middle of it, or says why it cannot be tapped.
pub(crate) const MIDDLE: &str = r#"
const found = [...document.querySelectorAll(arguments[0])].filter((e) => e.getClientRects().length > 0);
if (found.length === 0) return { why: "is not on the page" };
const element = found[0];
if (element.disabled) return { why: "is switched off" };
element.scrollIntoView({ block: "center", inline: "center", behavior: "instant" });
const box = element.getBoundingClientRect();
const x = Math.round(box.left + box.width / 2), y = Math.round(box.top + box.height / 2);
const top = document.elementFromPoint(x, y);
if (!top) return { why: "lies outside the screen" };
const label = element.closest("label") ?? element;
if (!(element.contains(top) || top.contains(element) && top === element.parentElement || label.contains(top))) {
  return { why: "is covered by " + top.outerHTML.slice(0, 120) };
}
return { x, y };
"#;

/// The text that the first element with this selector shows.
pub(crate) const TEXT: &str = r#"
const element = document.querySelector(arguments[0]);
return element ? (element.innerText ?? element.textContent) : null;
"#;

/// What a field holds: its text, its tick, or the choice that is taken.
pub(crate) const HELD: &str = r#"
const element = document.querySelector(arguments[0]);
if (!element) return null;
if (element.type === "checkbox") return String(element.checked);
if ("value" in element && element.tagName !== "BUTTON") return element.value;
return element.querySelector("[aria-checked=true]")?.dataset.choice ?? "";
"#;

/// Every result on the page, by its name.
pub(crate) const RESULTS: &str = r#"
return Object.fromEntries([...document.querySelectorAll("[data-result]")].map((e) => [e.dataset.result, e.innerText ?? e.textContent]));
"#;

/// Every entry on the page, by its key.
pub(crate) const ENTRIES: &str = r#"
return Object.fromEntries([...document.querySelectorAll("[data-key]")].map((e) => [e.dataset.key,
  e.type === "checkbox" ? String(e.checked) : "value" in e && e.tagName !== "BUTTON" ? e.value :
  e.querySelector("[aria-checked=true]")?.dataset.choice ?? ""]));
"#;

/// Done when what was typed has been drawn. (A page in the background draws nothing, so a moment's patience is enough.)
pub(crate) const DRAWN: &str = r#"
const done = arguments[arguments.length - 1];
const late = setTimeout(() => done(true), 300);
requestAnimationFrame(() => requestAnimationFrame(() => { clearTimeout(late); done(true); }));
"#;

/// How far the page reaches beyond the screen sideways, and what sticks out most.
pub(crate) const OVERFLOW: &str = r#"
const wide = document.documentElement.clientWidth;
const over = document.documentElement.scrollWidth - wide;
if (over <= 0) return null;
let worst = null, reach = wide;
const ancestors = function* (e) { for (let a = e.parentElement; a && a !== document.body; a = a.parentElement) yield a; };
for (const e of document.body.querySelectorAll("*")) {
  // What scrolls in a frame of its own does not widen the page.
  if ([...ancestors(e)].some((a) => getComputedStyle(a).overflowX !== "visible")) continue;
  const right = e.getBoundingClientRect().right;
  if (right > reach + 0.5) { reach = right; worst = e; }
}
return `${over} px beyond ${wide} px` + (worst ? `: ${worst.outerHTML.slice(0, 140)}` : "");
"#;

/// Things to tap that are smaller than the size given, in either direction.
pub(crate) const SMALL_TARGETS: &str = r#"
const least = arguments[0], small = [];
for (const e of document.querySelectorAll("button, a[href], input, select, textarea, summary, [role=button], [tabindex='0']")) {
  if (e.getClientRects().length === 0 || e.disabled) continue;
  let box = e.getBoundingClientRect();
  // A field that is not seen is tapped by its label.
  const label = e.closest("label") ?? e.labels?.[0];
  if (label) { const b = label.getBoundingClientRect(); if (b.width >= box.width && b.height >= box.height) box = b; }
  // A link in the middle of a sentence is text; a link that stands alone is a key.
  if (e.tagName === "A" && getComputedStyle(e).display === "inline") continue;
  if (box.width + 0.5 < least || box.height + 0.5 < least) {
    small.push(`${Math.round(box.width)} x ${Math.round(box.height)}: ${e.outerHTML.slice(0, 120)}`);
  }
}
return small;
"#;

/// What a person who cannot see the page, or works by keys, would miss.
pub(crate) const UNNAMED: &str = r##"
const wrong = [];
const text = (e) => (e?.innerText ?? e?.textContent ?? "").trim();
const named = (e) =>
  text(e) || e.getAttribute("aria-label")?.trim() || e.getAttribute("title")?.trim() ||
  (e.getAttribute("aria-labelledby") ?? "").split(/\s+/).some((id) => id && text(document.getElementById(id))) ||
  [...(e.labels ?? [])].some(text) || e.querySelector("title, img[alt]");
const shown = (e) => e.getClientRects().length > 0;
for (const e of document.querySelectorAll("button, a[href], input, select, textarea, summary, [role=button]")) {
  if (!shown(e)) continue;
  const field = ["INPUT", "SELECT", "TEXTAREA"].includes(e.tagName);
  const has = field
    ? e.getAttribute("aria-label")?.trim() || [...(e.labels ?? [])].some(text) ||
      (e.getAttribute("aria-labelledby") ?? "").split(/\s+/).some((id) => id && text(document.getElementById(id)))
    : named(e);
  if (!has) wrong.push("without a name: " + e.outerHTML.slice(0, 120));
}
for (const e of document.querySelectorAll("[role=img], img")) {
  if (shown(e) && !named(e) && !e.getAttribute("alt")) wrong.push("a picture without a name: " + e.outerHTML.slice(0, 100));
}
const seen = new Set();
for (const e of document.querySelectorAll("[id]")) {
  if (seen.has(e.id)) wrong.push("an id twice: " + e.id);
  seen.add(e.id);
}
for (const e of document.querySelectorAll("[aria-labelledby], [aria-describedby], [aria-controls], label[for]")) {
  for (const name of ["aria-labelledby", "aria-describedby", "for"]) {
    for (const id of (e.getAttribute(name) ?? "").split(/\s+/)) {
      if (id && !document.getElementById(id)) wrong.push(`${name} points nowhere (${id}): ` + e.outerHTML.slice(0, 100));
    }
  }
}
const headings = [...document.querySelectorAll("h1, h2, h3, h4, h5, h6")].filter(shown).map((e) => Number(e.tagName[1]));
if (headings.filter((n) => n === 1).length !== 1) wrong.push(`${headings.filter((n) => n === 1).length} main headings`);
headings.forEach((n, i) => { if (i > 0 && n > headings[i - 1] + 1) wrong.push(`a heading of rank ${n} right after ${headings[i - 1]}`); });
if (!document.title.trim()) wrong.push("no title");
if (!document.documentElement.lang) wrong.push("no language");
if (document.querySelectorAll("main").length !== 1) wrong.push(`${document.querySelectorAll("main").length} main parts`);
return wrong;
"##;

/// Runs axe-core, which must be in the page; gives a line for each thing found.
pub(crate) const BARRIERS: &str = r#"
const done = arguments[arguments.length - 1];
axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"], resultTypes: ["violations"] }).then(
  (result) => done(result.violations.map((v) => `${v.id} (${v.impact}): ${v.nodes[0].html.slice(0, 120)} ${(v.nodes[0].any[0] ?? v.nodes[0].all[0])?.message ?? v.help}`)),
  (error) => done(["axe-core: " + error]),
);
"#;

/// Words of the page itself that meet other words, or are cut by what holds them or by the key that they stand on. Drawings place
/// their words themselves and are left out.
pub(crate) const WORDS_THAT_MEET: &str = r#"
const found = [], said = [];
// What keeps its place while the page moves lies over what moves.
const own = (e) => {
  for (let up = e; up; up = up.parentElement) if (["fixed", "sticky"].includes(getComputedStyle(up).position)) return up;
  return document.body;
};
const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
while (walk.nextNode()) {
  const text = walk.currentNode, parent = text.parentElement;
  if (!text.data.trim() || !parent.checkVisibility() || parent.closest(".unseen, svg, math, script, .line .row-label")) continue;
  const range = document.createRange();
  range.selectNodeContents(text);
  for (const box of range.getClientRects()) if (box.width > 1 && box.height > 1) said.push({ box, text, parent, own: own(parent) });
}
const words = (one) => "`" + one.text.data.trim().slice(0, 30) + "`";
said.forEach((one, at) => {
  for (const other of said.slice(at + 1)) {
    if (one.text === other.text || one.own !== other.own) continue;
    const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
    const down = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
    if (across > 3 && down > Math.min(one.box.height, other.box.height) * 0.35) found.push(`${words(one)} meets ${words(other)}`);
  }
  const key = one.parent.closest("button, a.key, a.question, a.drawer-key, a.rail-key");
  const edge = key?.getBoundingClientRect();
  if (edge && (one.box.right > edge.right + 1 || one.box.left < edge.left - 1 || one.box.bottom > edge.bottom + 3)) found.push(`${words(one)} reaches out of its key`);
  for (let held = one.parent; held && held !== document.body; held = held.parentElement) {
    const way = getComputedStyle(held).overflowX;
    if (way === "visible") continue;
    const box = held.getBoundingClientRect();
    if (way !== "auto" && way !== "scroll" && (one.box.right > box.right + 2 || one.box.left < box.left - 2)) found.push(`${words(one)} is cut`);
    break;
  }
});
return [...new Set(found)];
"#;
