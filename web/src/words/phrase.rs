//! Phrases in two kinds of English, and how they are found and filled.

/// A word or sentence in both kinds of English.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Phrase {
    british: &'static str,
    american: &'static str,
}

/// A phrase that is the same on both sides of the water.
pub const fn same(text: &'static str) -> Phrase {
    Phrase {
        british: text,
        american: text,
    }
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

/// A phrase with `{0}`, `{1}`, ... put in.
pub fn filled(text: &str, parts: &[String]) -> String {
    let mut whole = text.to_owned();
    for (at, part) in parts.iter().enumerate() {
        whole = whole.replace(&format!("{{{at}}}"), part);
    }
    whole
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
