//! The house rules: each holds over the whole workspace, and each complains of a sample that breaks it.

use std::sync::LazyLock;

use xtask::places;
use xtask::rules::{self, File};

static FILES: LazyLock<Vec<File>> = LazyLock::new(|| rules::files(&places::root()));

fn holds(complaints: &[String]) {
    assert!(complaints.is_empty(), "\n{}\n", complaints.join("\n"));
}

/// The rule complains of the bad text at this path, and not of the good one.
fn tells_apart(rule: impl Fn(&[File]) -> Vec<String>, path: &str, bad: &str, good: &str) {
    assert_eq!(
        rule(&[File::new(path, bad)]).len(),
        1,
        "the bad sample: {bad}"
    );
    assert_eq!(rule(&[File::new(path, good)]), Vec::<String>::new());
}

#[test]
fn the_rules_look_at_the_whole_workspace() {
    for path in [
        "crates/measure/src/lib.rs",
        "crates/xtask/src/rules/mod.rs",
        "web/src/main.rs",
        "tests/browser/src/lib.rs",
        "index.html",
    ] {
        assert!(FILES.iter().any(|file| file.path == path), "{path}");
    }
}

#[test]
fn every_file_says_what_it_holds() {
    holds(&rules::files_say_what_they_hold(&FILES));
    tells_apart(
        rules::files_say_what_they_hold,
        "web/src/a.rs",
        "use std::rc::Rc;\n",
        "//! What it holds.\n",
    );
}

#[test]
fn no_file_is_too_long() {
    holds(&rules::files_are_short(&FILES));
    tells_apart(
        rules::files_are_short,
        "crates/trade/src/a.rs",
        &"//!\n".repeat(501),
        &"//!\n".repeat(500),
    );
}

#[test]
fn functions_are_named_after_what_they_return() {
    holds(&rules::names_are_quantities(&FILES));
    tells_apart(
        rules::names_are_quantities,
        "crates/trade/src/a.rs",
        concat!("pub fn calculate", "_speed() {}\n"),
        "pub fn speed() {}\n",
    );
}

#[test]
fn the_core_has_no_clock_chance_files_or_console() {
    holds(&rules::core_has_no_surroundings(&FILES));
    tells_apart(
        rules::core_has_no_surroundings,
        "crates/buildbook/src/a.rs",
        "let now = Instant::now();\n",
        "#[cfg(test)]\nmod tests {\n    use std::fs;\n}\n",
    );
}

#[test]
fn the_pages_cannot_give_up() {
    holds(&rules::the_pages_cannot_panic(&FILES));
    tells_apart(
        rules::the_pages_cannot_panic,
        "web/src/a.rs",
        "let it = maybe.unwrap();\n",
        "let it = maybe.unwrap_or_default();\n",
    );
}

#[test]
fn crates_do_not_depend_upward_nor_on_the_browser() {
    holds(&rules::layers_point_down(&FILES));
    let manifest = "crates/trade/Cargo.toml";
    for bad in [
        "[dependencies]\nbuildbook.workspace = true\n",
        "[dev-dependencies]\nbuildbook = { path = \"../buildbook\" }\n",
        "[dependencies.web-sys]\nversion = \"0.3\"\n",
        "[target.'cfg(unix)'.dependencies]\nyew = \"0.23\"\n",
    ] {
        tells_apart(
            rules::layers_point_down,
            manifest,
            bad,
            "[dependencies]\nmeasure.workspace = true\n[features]\nweb = []\n",
        );
    }
}

#[test]
fn storage_fragment_and_worker_are_touched_in_one_place_each() {
    holds(&rules::only_their_file_touches(&FILES));
    for (bad, owner) in [
        ("window.local_storage();\n", "web/src/storage.rs"),
        ("location.set_hash(\"a\");\n", "web/src/route.rs"),
        ("navigator.service_worker();\n", "web/src/offline.rs"),
    ] {
        tells_apart(
            rules::only_their_file_touches,
            "web/src/pages/a.rs",
            bad,
            "let a = 1;\n",
        );
        holds(&rules::only_their_file_touches(&[File::new(owner, bad)]));
    }
}

#[test]
fn widgets_and_drawings_know_no_page() {
    holds(&rules::pages_use_widgets_only(&FILES));
    tells_apart(
        rules::pages_use_widgets_only,
        "web/src/widgets/a.rs",
        "use crate::pages::gearing;\n",
        "use crate::words;\n",
    );
}

#[test]
fn sentences_for_the_user_stand_in_words_only() {
    holds(&rules::sentences_in_words_only(&FILES));
    for bad in [
        "html! { <p>{\"Which axle ratio\"}</p> }\n",
        "let said = \"store is full now.\";\n",
    ] {
        tells_apart(
            rules::sentences_in_words_only,
            "web/src/pages/a.rs",
            bad,
            "html! { <p class=\"row wide open\">{words.title}</p> } // \"A comment may say it.\"\n",
        );
    }
    holds(&rules::sentences_in_words_only(&[File::new(
        "web/src/words/a.rs",
        "\"Which axle ratio?\"\n",
    )]));
}

#[test]
fn nothing_has_a_style_attribute() {
    holds(&rules::no_style_attributes(&FILES));
    tells_apart(
        rules::no_style_attributes,
        "web/src/drawings/a.rs",
        "html! { <p style=\"color: red\" /> }\n",
        "html! { <p class=\"red\" /> }\n",
    );
}

#[test]
fn the_project_speaks_of_itself() {
    holds(&rules::the_project_speaks_of_itself(&FILES));
    for bad in [
        concat!("see /", "home/somebody\n"),
        concat!("// TO", "DO: later\n"),
    ] {
        tells_apart(
            rules::the_project_speaks_of_itself,
            "README.md",
            bad,
            concat!("see docs/", "work/ and the workshop\n"),
        );
    }
}

#[test]
fn the_code_map_names_what_there_is() {
    let developers = FILES
        .iter()
        .find(|file| file.path == "DEVELOPERS.md")
        .expect("DEVELOPERS.md");
    let root = places::root();
    let members = rules::members(&root);
    assert!(members.contains(&"crates/measure".to_owned()) && members.contains(&"web".to_owned()));
    holds(&rules::code_map_is_true(developers, &root, &members));
}

#[test]
fn a_code_map_with_a_gone_module_or_a_missing_member_is_found_out() {
    let map = File::new(
        "DEVELOPERS.md",
        "`crates/xtask/` and `crates/xtask/src/gone.rs`, as in `crates/<name>/`\n",
    );
    let members = ["crates/xtask", "web"].map(str::to_owned);
    let complaints = rules::code_map_is_true(&map, &places::root(), &members);
    assert_eq!(complaints.len(), 2, "{complaints:?}");
}

#[test]
fn every_reference_entry_is_whole() {
    holds(&rules::reference_entries_are_whole(&FILES));
    let entry = "[[check]]\nid = \"a\"\nwhat = \"b\"\nof = \"c\"\nexpected = 1.0\nwhy = \"d\"\nsource = \"e\"\nheld = \"seen\"\n";
    for missing in ["source = \"e\"\n", "expected = 1.0\n", "why = \"d\"\n"] {
        tells_apart(
            rules::reference_entries_are_whole,
            "tests/reference/a.toml",
            &entry.replace(missing, ""),
            entry,
        );
    }
}
