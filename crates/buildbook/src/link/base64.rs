//! base64url without padding (RFC 4648, section 5).

const DIGITS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

/// Writes bytes as base64url.
pub(super) fn encode(bytes: &[u8], into: &mut String) {
    for chunk in bytes.chunks(3) {
        let mut bits = 0_u32;
        for place in 0..3 {
            bits = bits << 8 | u32::from(chunk.get(place).copied().unwrap_or(0));
        }
        for place in 0..=chunk.len() {
            let digit = bits >> (18 - 6 * place) & 63;
            into.push(char::from(DIGITS[digit as usize]));
        }
    }
}

/// Reads base64url; `None` for anything else.
pub(super) fn decode(text: &str) -> Option<Vec<u8>> {
    let mut bytes = Vec::with_capacity(text.len() / 4 * 3 + 3);
    for chunk in text.as_bytes().chunks(4) {
        if chunk.len() == 1 {
            return None;
        }
        let mut bits = 0_u32;
        for place in 0..4 {
            let digit = chunk.get(place).map_or(Some(0), |byte| value(*byte))?;
            bits = bits << 6 | digit;
        }
        let all = bits.to_be_bytes();
        bytes.extend_from_slice(&all[1..chunk.len()]);
        // Bits beyond the last byte must be nought, or two texts would say the same.
        if all[chunk.len()..].iter().any(|byte| *byte != 0) {
            return None;
        }
    }
    Some(bytes)
}

fn value(byte: u8) -> Option<u32> {
    Some(u32::from(match byte {
        b'A'..=b'Z' => byte - b'A',
        b'a'..=b'z' => byte - b'a' + 26,
        b'0'..=b'9' => byte - b'0' + 52,
        b'-' => 62,
        b'_' => 63,
        _ => return None,
    }))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_examples_of_rfc_4648_section_10_hold() {
        // Without the padding of the printed examples.
        for (plain, coded) in [
            ("", ""),
            ("f", "Zg"),
            ("fo", "Zm8"),
            ("foo", "Zm9v"),
            ("foob", "Zm9vYg"),
            ("fooba", "Zm9vYmE"),
            ("foobar", "Zm9vYmFy"),
        ] {
            let mut text = String::new();
            encode(plain.as_bytes(), &mut text);
            assert_eq!(text, coded);
            assert_eq!(decode(coded).as_deref(), Some(plain.as_bytes()));
        }
    }

    #[test]
    fn what_is_not_base64url_is_refused() {
        for text in ["Z", "Zg==", "Z+8", "Z/8", "Zm 9", "Zh"] {
            assert_eq!(decode(text), None, "{text}");
        }
    }
}
