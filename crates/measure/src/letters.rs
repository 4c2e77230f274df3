//! Small letters for capitals, for the alphabets that a restorer of old vehicles types in: Latin, Greek and Cyrillic. The standard
//! library's knows every alphabet there is, from twenty-four kilobytes of tables.

/// The small letter of a capital; any other sign as it is.
#[must_use]
pub fn small(letter: char) -> char {
    let code = letter as u32;
    let changed = match letter {
        'A'..='Z' | 'À'..='Ö' | 'Ø'..='Þ' | 'Α'..='Ρ' | 'Σ'..='Ϋ' | 'А'..='Я' => {
            code + 32
        }
        'Ѐ'..='Џ' => code + 80,
        // Pairs, the capital first: even in most of the block, odd in two stretches of it.
        'Ā'..='Į' | 'Ĳ'..='Ķ' | 'Ŋ'..='Ŷ' => code | 1,
        'Ĺ'..='Ň' | 'Ź'..='Ž' => code + code % 2,
        'Ÿ' => return 'ÿ',
        '\u{2126}' => return 'ω',
        '\u{212a}' => return 'k',
        '\u{212b}' => return 'å',
        _ => return letter,
    };
    char::from_u32(changed).unwrap_or(letter)
}

/// The capital of a small letter; any other sign as it is.
#[must_use]
pub fn capital(letter: char) -> char {
    let by = |step: u32| char::from_u32((letter as u32).checked_sub(step)?);
    let mut capitals = [32, 80, 1].into_iter().filter_map(by);
    let known = capitals.find(|capital| *capital != letter && small(*capital) == letter);
    known.unwrap_or(letter)
}

/// A text in small letters.
#[must_use]
pub fn small_letters(text: &str) -> String {
    text.chars().map(small).collect()
}

#[cfg(test)]
mod tests {
    use super::{capital, small};

    /// The standard library, which follows the Unicode Character Database, is the reference.
    #[test]
    fn letters_of_the_alphabets_in_use_become_small_as_unicode_says() {
        // U+0130 becomes two signs there; it stays as it is here.
        let blocks = [
            '\0'..='\u{12f}',
            '\u{131}'..='\u{17f}',
            '\u{391}'..='\u{3ab}',
            '\u{400}'..='\u{45f}',
        ];
        for letter in blocks
            .into_iter()
            .flatten()
            .chain(['\u{2126}', '\u{212a}', '\u{212b}'])
        {
            let theirs: Vec<char> = letter.to_lowercase().collect();
            assert_eq!(
                vec![small(letter)],
                theirs,
                "{letter} U+{:04X}",
                letter as u32
            );
        }
    }

    /// As above; those whose capitals lie elsewhere or are two letters stay as they are.
    #[test]
    fn small_letters_of_those_alphabets_become_capitals_again() {
        let blocks = ['a'..='z', 'à'..='ö', 'ø'..='þ', 'α'..='ρ', 'а'..='џ'];
        for letter in blocks.into_iter().flatten() {
            let theirs = letter.to_uppercase().next();
            assert_eq!(Some(capital(letter)), theirs, "{letter}");
        }
        for letter in "1-ß€Ä".chars() {
            assert_eq!(capital(letter), letter);
        }
    }
}
