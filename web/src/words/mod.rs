//! Every sentence the reckoner shows, in British and American English, a file a subject.
//!
//! Labels are found by field pattern (`gearing/gears/*/ratio`), results by result pattern, remarks and lacks by
//! their ids. Nothing outside this folder holds a sentence.

pub mod frame;

/// A word or sentence in both kinds of English.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Phrase {
    british: &'static str,
    american: &'static str,
}

/// A phrase that is the same on both sides of the water.
pub const fn same(text: &'static str) -> Phrase {
    Phrase { british: text, american: text }
}

/// A phrase that differs: British first, American second.
pub const fn pair(british: &'static str, american: &'static str) -> Phrase {
    Phrase { british, american }
}

/// Which English the pages speak.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Tongue {
    /// en-GB
    #[default]
    British,
    /// en-US
    American,
}

impl Tongue {
    /// The phrase in this tongue.
    pub fn say(self, phrase: Phrase) -> &'static str {
        match self {
            Self::British => phrase.british,
            Self::American => phrase.american,
        }
    }

    /// The tag for the page's `lang`.
    pub fn tag(self) -> &'static str {
        match self {
            Self::British => "en-GB",
            Self::American => "en-US",
        }
    }
}

/// Whether `key` is an instance of `pattern`, in which `*` stands for one part of the path.
pub fn matches(pattern: &str, key: &str) -> bool {
    let mut wanted = pattern.split('/');
    let mut given = key.split('/');
    loop {
        match (wanted.next(), given.next()) {
            (None, None) => return true,
            (Some("*"), Some(_)) => {}
            (Some(w), Some(g)) if w == g => {}
            _ => return false,
        }
    }
}

/// The phrase a table holds for a key, the exact key before a pattern with stars.
pub fn found(table: &[(&'static str, Phrase)], key: &str) -> Option<Phrase> {
    table
        .iter()
        .find(|(pattern, _)| *pattern == key)
        .or_else(|| table.iter().find(|(pattern, _)| matches(pattern, key)))
        .map(|(_, phrase)| *phrase)
}

#[cfg(test)]
mod tests {
    use super::*;

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
}
