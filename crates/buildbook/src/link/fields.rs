//! The table of fields that links name by number: a part of the format of links, so lines are only ever added at its end.
//!
//! A field that is not in the table is spelled out; a link that names a line the table lacks is of a newer version.

use std::sync::OnceLock;

static TEXT: &str = include_str!("fields.txt");

fn table() -> &'static [&'static str] {
    static TABLE: OnceLock<Vec<&'static str>> = OnceLock::new();
    TABLE.get_or_init(|| TEXT.lines().collect())
}

/// The field's place in the table.
pub(super) fn place(pattern: &str) -> Option<usize> {
    table().iter().position(|known| *known == pattern)
}

/// The field at a place of the table.
pub(super) fn at(place: usize) -> Option<&'static str> {
    table().get(place).copied()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_field_stands_twice_in_the_table() {
        let mut lines: Vec<&str> = table().to_vec();
        lines.sort_unstable();
        let all = lines.len();
        lines.dedup();
        assert_eq!(lines.len(), all);
        assert!(all > 100);
    }

    #[test]
    fn the_first_lines_stay_what_they_are() {
        assert_eq!(at(0), Some("book/name"));
        assert_eq!(place("vehicle/wheelbase"), Some(10));
    }

    fn ranks(spec: &crate::Spec, above: &str) -> Vec<String> {
        let lists = spec
            .items
            .iter()
            .filter_map(|item| Some((item.name, item.row?)));
        lists
            .flat_map(|(name, row)| {
                let rows = format!("{above}/{name}/*");
                let below = ranks(row, &rows);
                [format!("{rows}/{}", crate::RANK)].into_iter().chain(below)
            })
            .collect()
    }

    #[test]
    fn every_field_stands_in_the_table() {
        let missing: Vec<String> = ["book"]
            .into_iter()
            .chain(crate::SHEETS)
            .filter_map(|sheet| Some((sheet, crate::sheets::spec_of(sheet)?)))
            .flat_map(|(sheet, spec)| {
                let fields = spec.fields(sheet).into_iter().map(|(pattern, _)| pattern);
                fields.chain(ranks(spec, sheet)).collect::<Vec<_>>()
            })
            .filter(|pattern| place(pattern).is_none())
            .collect();
        assert!(
            missing.is_empty(),
            "add these lines at the end of fields.txt:\n{}",
            missing.join("\n")
        );
    }
}
