//! One spelling for the many characters that keyboards and copied text bring: every sort of space, dash, prime and quote.
//!
//! One character always becomes one character, so that places in the text stay what they were.

/// The character as the reader understands it.
pub(super) fn plain(c: char) -> char {
    match c {
        ' '..='_' | 'a'..='~' => c,
        c if c.is_whitespace() => ' ',
        '\u{200B}'..='\u{200F}' | '\u{2060}' | '\u{FEFF}' => ' ',
        '\u{2010}'..='\u{2015}' | '\u{2212}' | '\u{FE63}' => '-',
        '\u{2018}'..='\u{201B}' | '\u{2032}' | '\u{02B9}' | '\u{00B4}' | '`' => '\'',
        '\u{201C}'..='\u{201F}' | '\u{2033}' | '\u{02BA}' => '"',
        '\u{00BA}' | '\u{02DA}' => '°',
        '\u{2044}' | '\u{2215}' => '/',
        '\u{2236}' => ':',
        '\u{03BC}' => 'µ',
        // Full-width forms of the ASCII characters.
        '\u{FF01}'..='\u{FF5E}' => {
            char::from_u32(u32::from(c) - 0xFF01 + 0x21).map_or(c, plain_ascii)
        }
        c => c,
    }
}

fn plain_ascii(c: char) -> char {
    if c == '`' { '\'' } else { c }
}

/// A fraction that is one character: ¼, ⅞.
pub(super) fn vulgar_fraction(c: char) -> Option<(u32, u32)> {
    Some(match c {
        '¼' => (1, 4),
        '½' => (1, 2),
        '¾' => (3, 4),
        '⅐' => (1, 7),
        '⅑' => (1, 9),
        '⅒' => (1, 10),
        '⅓' => (1, 3),
        '⅔' => (2, 3),
        '⅕' => (1, 5),
        '⅖' => (2, 5),
        '⅗' => (3, 5),
        '⅘' => (4, 5),
        '⅙' => (1, 6),
        '⅚' => (5, 6),
        '⅛' => (1, 8),
        '⅜' => (3, 8),
        '⅝' => (5, 8),
        '⅞' => (7, 8),
        _ => return None,
    })
}

/// The spelling of a unit that names are compared in: lower case, no spaces, dots, hyphens or carets, plain digits for
/// raised ones, a stroke for a spoken `per`.
pub(super) fn spell(spelling: &mut String, written: &[char]) {
    spelling.clear();
    let mut at = 0;
    while let Some(&c) = written.get(at) {
        if c == ' ' && is_spoken_per(&written[at..]) {
            spelling.push('/');
            at += 4;
            continue;
        }
        match plain(c) {
            ' ' | '.' | '·' | '⋅' | '•' | '*' | '-' | '^' | '⁻' => {}
            '¹' => spelling.push('1'),
            '²' => spelling.push('2'),
            '³' => spelling.push('3'),
            '⁴' => spelling.push('4'),
            'µ' => spelling.push('u'),
            '×' => spelling.push('x'),
            'ℓ' => spelling.push('l'),
            '℃' => spelling.push_str("°c"),
            '℉' => spelling.push_str("°f"),
            '\'' if spelling.ends_with('\'') && at > 0 && written[at - 1] != ' ' => {
                spelling.pop();
                spelling.push('"');
            }
            c => spelling.push(crate::small(c)),
        }
        at += 1;
    }
}

/// Whether the space that stands first is followed by the word `per`.
fn is_spoken_per(written: &[char]) -> bool {
    let is = |place: usize, letter: char| {
        written
            .get(place)
            .is_some_and(|c| c.eq_ignore_ascii_case(&letter))
    };
    is(1, 'p') && is(2, 'e') && is(3, 'r') && written.get(4).is_none_or(|c| *c == ' ')
}
