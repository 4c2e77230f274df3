//! The checksum of envelopes and links.

/// CRC-32 as in ISO/IEC 13239 and ITU-T V.42: polynomial 0x04C11DB7, reflected, all ones at start and end.
#[must_use]
pub(crate) fn crc32(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(!0, |crc, byte| {
        (crc >> 8) ^ TABLE[((crc ^ u32::from(*byte)) & 0xFF) as usize]
    })
}

static TABLE: [u32; 256] = table();

const fn table() -> [u32; 256] {
    let mut table = [0; 256];
    let mut byte = 0;
    while byte < 256 {
        let mut crc = byte as u32;
        let mut bit = 0;
        while bit < 8 {
            crc = if crc & 1 == 1 {
                (crc >> 1) ^ 0xEDB8_8320
            } else {
                crc >> 1
            };
            bit += 1;
        }
        table[byte] = crc;
        byte += 1;
    }
    table
}

#[cfg(test)]
mod tests {
    use super::crc32;

    #[test]
    fn the_checksum_of_the_nine_digits_is_the_published_one() {
        // CRC-32/ISO-HDLC: check value 0xCBF43926 of "123456789" (catalogue of parametrised CRC algorithms; also zlib's crc32).
        assert_eq!(crc32(b"123456789"), 0xCBF4_3926);
        assert_eq!(crc32(b""), 0);
    }
}
