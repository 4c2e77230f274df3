//! A text as a QR code (ISO/IEC 18004): the matrix, for a page to draw.

use qrcodegen::{QrCode, QrCodeEcc};

/// A QR code.
#[derive(Debug, Clone, PartialEq)]
pub struct Qr {
    /// How many modules it has along each edge.
    pub size: usize,
    dark: Vec<bool>,
}

impl Qr {
    /// Whether the module in this column and row is dark.
    #[must_use]
    pub fn is_dark(&self, column: usize, row: usize) -> bool {
        column < self.size
            && self
                .dark
                .get(row * self.size + column)
                .copied()
                .unwrap_or(false)
    }
}

/// The QR code of a text, or `None` where the text is too long for one.
#[must_use]
pub fn qr_code(text: &str) -> Option<Qr> {
    let code = QrCode::encode_text(text, QrCodeEcc::Low).ok()?;
    let size = usize::try_from(code.size()).ok()?;
    let dark = (0..code.size())
        .flat_map(|y| (0..code.size()).map(move |x| (x, y)))
        .map(|(x, y)| code.get_module(x, y));
    Some(Qr {
        size,
        dark: dark.collect(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_code_carries_its_three_finder_patterns() {
        let code = qr_code("rebuild").unwrap();
        // ISO/IEC 18004, 6.3.3: 7 by 7 in three corners, dark ring, light ring, dark 3 by 3. Version 1 has 21 modules.
        assert_eq!(code.size, 21);
        for (x, y) in [(0, 0), (14, 0), (0, 14)] {
            assert!(
                code.is_dark(x, y) && code.is_dark(x + 3, y + 3) && !code.is_dark(x + 1, y + 1)
            );
        }
    }

    #[test]
    fn a_text_too_long_for_a_code_gives_none() {
        assert!(qr_code(&"a".repeat(2_900)).is_some());
        // ISO/IEC 18004, table 7: 2,953 bytes at most.
        assert!(qr_code(&"a".repeat(2_954)).is_none());
    }
}
