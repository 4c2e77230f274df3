//! The paper of the pack: its size, what runs along its edge, and the pages that the contents name. The rules go in as a constructed
//! sheet, which the policy allows where it allows no `<style>`.

use js_sys::{Array, Function, Reflect};
use wasm_bindgen::{JsCast, JsValue, closure::Closure};
use web_sys::Element;

/// The pack's rules while it is shown, and what counts its pages before it is printed.
pub struct Set {
    counted: Closure<dyn Fn()>,
}

/// Sections that share their pages, and what stands above them.
pub struct Run {
    /// The sections by their ids.
    pub sections: Vec<&'static str>,
    /// What stands above them.
    pub title: String,
}

impl Set {
    /// Puts the rules in and the pages' numbers into the contents.
    pub fn new(letter: bool, two_sides: bool, running: &str, runs: &[Run]) -> Self {
        adopt(Some(&rules(letter, two_sides, running, runs)));
        let counted = Closure::<dyn Fn()>::new(count);
        count();
        if let Some(window) = web_sys::window() {
            let _ = window
                .add_event_listener_with_callback("beforeprint", counted.as_ref().unchecked_ref());
        }
        // Drawings take their width a moment later.
        super::after(400, count);
        Self { counted }
    }
}

impl Drop for Set {
    fn drop(&mut self) {
        adopt(None);
        if let Some(window) = web_sys::window() {
            let _ = window.remove_event_listener_with_callback(
                "beforeprint",
                self.counted.as_ref().unchecked_ref(),
            );
        }
    }
}

/// A text as CSS takes it in quotes.
fn quoted(text: &str) -> String {
    let plain = text.replace(['\\', '"'], " ");
    let plain: String = plain.chars().filter(|c| !c.is_control()).collect();
    format!("\"{plain}\"")
}

fn rules(letter: bool, two_sides: bool, running: &str, runs: &[Run]) -> String {
    let (name, width, height) = if letter {
        ("letter", 215.9, 279.4)
    } else {
        ("A4", 210.0, 297.0)
    };
    // 24 mm to bind, 14 mm beyond, 17 mm above and below.
    let mut rules = format!(
        "@page{{size:{name};margin:17mm 14mm 17mm 24mm;@top-left{{content:{};font:9pt sans-serif}}\
         @bottom-right{{content:counter(page) \" / \" counter(pages);font:9pt sans-serif}}}}\
         .pack{{width:{}mm}}.pack.counting{{height:{}mm}}",
        quoted(running),
        width - 38.0,
        height - 34.0
    );
    if two_sides {
        rules.push_str("@page:left{margin:17mm 24mm 17mm 14mm}");
    }
    for Run { sections, title } in runs {
        let page = sections.first().copied().unwrap_or_default();
        rules.push_str(&format!(
            "@page leaf-{page}{{@top-right{{content:{};font:9pt sans-serif}}}}",
            quoted(title)
        ));
        for section in sections {
            rules.push_str(&format!("#leaf-{section}{{page:leaf-{page}}}"));
        }
    }
    rules
}

/// Gives the document these rules besides its own, or takes them back.
fn adopt(rules: Option<&str>) {
    let adopted = || -> Result<(), JsValue> {
        let window: JsValue = web_sys::window().into();
        let document = Reflect::get(&window, &"document".into())?;
        let sheets = Array::new();
        if let Some(rules) = rules {
            let made: Function = Reflect::get(&window, &"CSSStyleSheet".into())?.dyn_into()?;
            let sheet = Reflect::construct(&made, &Array::new())?;
            let replace: Function = Reflect::get(&sheet, &"replaceSync".into())?.dyn_into()?;
            replace.call1(&sheet, &rules.into())?;
            sheets.push(&sheet);
        }
        Reflect::set(&document, &"adoptedStyleSheets".into(), &sheets).map(drop)
    };
    // A browser without constructed sheets prints on the paper that its dialogue names.
    let _ = adopted();
}

/// Whether this browser writes numbers on the pages. One that does not also breaks pages in its own way, and a number in the contents
/// would be a guess.
fn numbers_pages() -> bool {
    let window: JsValue = web_sys::window().into();
    Reflect::has(&window, &"CSSMarginRule".into()).unwrap_or(false)
}

/// Lays the pack out in columns as high as a page, where the browser breaks it as on paper, and reads on which each section begins.
fn count() {
    let numbers = || -> Option<()> {
        if !numbers_pages() {
            return None;
        }
        let document = super::document()?;
        let pack = document.query_selector(".pack").ok().flatten()?;
        let wide = pack.get_bounding_client_rect().width();
        pack.class_list().add_1("counting").ok()?;
        let origin = pack.get_bounding_client_rect().left();
        let all = document.query_selector_all("[data-page-of]").ok()?;
        let of = |place: u32| -> Option<(Element, f64)> {
            let number: Element = all.get(place)?.dyn_into().ok()?;
            let id = number.get_attribute("data-page-of")?;
            let heading = document.query_selector(&format!("#leaf-{id} h2")).ok()??;
            let left = heading.get_client_rects().get(0)?.left();
            Some((number, ((left - origin) / wide).round() + 1.0))
        };
        let pages: Vec<_> = (0..all.length()).filter_map(of).collect();
        pack.class_list().remove_1("counting").ok()?;
        for (number, page) in pages {
            number.set_text_content(Some(&page.to_string()));
        }
        Some(())
    };
    // Without numbers the contents still name the sections in their order.
    let _ = numbers();
}
