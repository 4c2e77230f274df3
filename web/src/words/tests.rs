//! Nothing is shown without words: every field, list, choice and result has them, in both kinds of English.

mod said;

use super::*;
use buildbook::{Form, SHEETS, Spec, sheets::spec_of};

#[test]
fn a_star_stands_for_one_part_of_the_path_and_no_more() {
    assert!(matches("gearing/gears/*/ratio", "gearing/gears/2/ratio"));
    assert!(!matches("gearing/gears/*/ratio", "gearing/gears/2/3/ratio"));
    assert!(!matches("gearing/gears/*", "gearing/gears"));
}

#[test]
fn an_exact_key_wins_over_a_pattern() {
    let table = [("a/*", same("any")), ("a/b", same("this one"))];
    assert_eq!(found(&table, "a/b"), Some(same("this one")));
    assert_eq!(found(&table, "a/c"), Some(same("any")));
    assert_eq!(found(&table, "b"), None);
}

#[test]
fn parts_are_put_in_where_they_are_named() {
    let parts = ["12 L".to_owned(), "3".to_owned()];
    assert_eq!(filled("{1} tins of {0}", &parts), "3 tins of 12 L");
}

fn lists(spec: &Spec, above: &str, all: &mut Vec<String>) {
    for item in spec.items {
        if let Some(row) = item.row {
            let list = format!("{above}/{}", item.name);
            lists(row, &format!("{list}/*"), all);
            all.push(list);
        }
    }
}

#[test]
fn every_field_and_every_choice_has_words() {
    let mut missing = Vec::new();
    for sheet in SHEETS {
        let Some(spec) = spec_of(sheet) else {
            panic!("{sheet} has no table of fields")
        };
        let Some(words) = subject(sheet) else {
            panic!("{sheet} has no words")
        };
        for (pattern, field) in spec.fields(sheet) {
            if found(words.fields, &pattern).is_none() {
                missing.push(pattern.clone());
            }
            if let Form::Choice(choices) = field.form {
                let unsaid = choices
                    .iter()
                    .filter(|choice| choice_words(&pattern, choice).is_none());
                missing.extend(unsaid.map(|choice| format!("{pattern}={choice}")));
            }
        }
    }
    assert!(missing.is_empty(), "no words for {missing:#?}");
}

#[test]
fn every_list_has_words() {
    let mut all = Vec::new();
    for sheet in SHEETS {
        if let Some(spec) = spec_of(sheet) {
            lists(spec, sheet, &mut all);
        }
    }
    let missing: Vec<_> = all
        .into_iter()
        .filter(|list| list_words(&list.replace('*', "1")).is_none())
        .collect();
    assert!(missing.is_empty(), "no words for the lists {missing:#?}");
}

#[test]
fn every_preset_row_has_a_name() {
    let mut all = Vec::new();
    for sheet in SHEETS {
        let items = spec_of(sheet).map_or(&[] as &[_], |spec| spec.items);
        let rows = items.iter().flat_map(|item| {
            let ids = item.preset.iter();
            ids.map(move |id| format!("{sheet}/{}/{id}", item.name))
        });
        all.extend(rows);
    }
    assert!(all.len() > 50, "{}", all.len());
    let missing: Vec<_> = all
        .iter()
        .filter(|row| subject(row).and_then(|words| words.word(row)).is_none())
        .collect();
    assert!(missing.is_empty(), "no names for {missing:#?}");
}

#[test]
fn words_stand_for_fields_that_exist() {
    for (sheet, words) in SUBJECTS {
        let Some(spec) = spec_of(sheet) else {
            panic!("{sheet} is no sheet")
        };
        let known: Vec<String> = spec
            .fields(sheet)
            .into_iter()
            .map(|(pattern, _)| pattern)
            .collect();
        for (pattern, _) in words.fields.iter().chain(words.hints) {
            assert!(
                known.iter().any(|k| k == pattern || matches(pattern, k)),
                "{pattern} is no field of {sheet}"
            );
        }
    }
}

#[test]
fn no_phrase_is_blank() {
    for (sheet, words) in SUBJECTS {
        let tables = [
            words.fields,
            words.hints,
            words.choices,
            words.groups,
            words.remarks,
            words.plates,
            words.words,
        ];
        for (name, phrase) in tables.into_iter().flatten() {
            for tongue in [Tongue::British, Tongue::American] {
                assert!(
                    !tongue.say(*phrase).trim().is_empty(),
                    "{sheet}: {name} says nothing"
                );
            }
        }
    }
}

#[test]
fn no_american_phrase_keeps_a_british_spelling() {
    const BRITISH: &[&str] = &[
        "centre",
        "colour",
        "tyre",
        "litre",
        "grey",
        "metre",
        "per cent",
        "aluminium",
        "vapour",
        "crown wheel",
        "propeller shaft",
        "half-shaft",
        "gearbox",
    ];
    let mut kept = Vec::new();
    for (sheet, words) in SUBJECTS {
        let tables = [
            words.fields,
            words.hints,
            words.choices,
            words.groups,
            words.remarks,
            words.plates,
            words.words,
        ];
        let results = words.results.iter().map(|told| (told.pattern, told.phrase));
        let named = tables.into_iter().flatten().copied().chain(results);
        for (name, phrase) in named.chain([
            ("asks", words.asks),
            ("tells", words.tells),
            ("name", words.name),
        ]) {
            let said = Tongue::American.say(phrase).to_lowercase();
            if BRITISH.iter().any(|british| said.contains(british)) {
                kept.push(format!("{sheet}: {name}: {said}"));
            }
        }
    }
    assert!(kept.is_empty(), "{kept:#?}");
}
