//! A number as text to the float that lies nearest, without the ten kilobytes of tables that the standard library does it with.

use std::cmp::Ordering;

/// Digits beyond these change nothing but on which side of a half the number lies.
const MOST_DIGITS: usize = 800;

/// The float nearest to a decimal number as it is written in plain: `-412.50`, `.5`, `1e-3`. The same as the standard library's, except
/// that it knows no words (`inf`, `nan`). `None` where the text is something else.
#[must_use]
pub fn float(text: &str) -> Option<f64> {
    let (negative, plain) = match text.as_bytes() {
        [b'-', plain @ ..] => (true, plain),
        [b'+', plain @ ..] => (false, plain),
        plain => (false, plain),
    };
    let mut digits: Vec<u8> = Vec::new();
    let (mut seen, mut point, mut power) = (false, false, 0i32);
    let mut rest = plain.iter();
    while let Some(&sign) = rest.next() {
        match sign {
            b'0'..=b'9' => {
                seen = true;
                let kept = digits.len() < MOST_DIGITS;
                power += i32::from(!kept) - i32::from(point);
                if !kept {
                    // What is left out still makes the number a little more than what is kept.
                    let last = digits.last_mut()?;
                    *last = (*last).max(u8::from(sign != b'0'));
                } else if sign != b'0' || !digits.is_empty() {
                    digits.push(sign - b'0');
                }
            }
            b'.' if !point => point = true,
            b'e' | b'E' if seen => {
                let written = std::str::from_utf8(rest.as_slice()).ok()?;
                power = power.saturating_add(exponent(written)?);
                rest = [].iter();
            }
            _ => return None,
        }
    }
    seen.then(|| {
        let size = nearest(&digits, power);
        if negative { -size } else { size }
    })
}

/// An exponent; one beyond all floats counts as just that.
fn exponent(written: &str) -> Option<i32> {
    let digits = written.strip_prefix(['-', '+']).unwrap_or(written);
    let sound = !digits.is_empty() && digits.bytes().all(|c| c.is_ascii_digit());
    let sign = if written.starts_with('-') { -1 } else { 1 };
    sound.then(|| sign * digits.parse().unwrap_or(99_999).min(99_999))
}

/// The float nearest to these digits times this power of ten.
fn nearest(digits: &[u8], power: i32) -> f64 {
    // Fifteen digits and a power of ten up to the 22nd are floats themselves, so that one operation rounds just once.
    if digits.len() <= 15 && power.abs() <= 22 {
        let whole = digits
            .iter()
            .fold(0.0, |whole, digit| whole * 10.0 + f64::from(*digit));
        let ten = (0..power.abs()).fold(1.0, |ten, _| ten * 10.0);
        return if power < 0 { whole / ten } else { whole * ten };
    }
    let places = digits.len() as i32 + power;
    if digits.is_empty() || places < -330 {
        return 0.0;
    }
    if places > 310 {
        return f64::INFINITY;
    }
    let mut top = Large::default();
    digits.iter().for_each(|digit| top.times_ten_and(*digit));
    (0..power).for_each(|_| top.times_ten_and(0));
    let mut bottom = Large(vec![1]);
    (power..0).for_each(|_| bottom.times_ten_and(0));
    // The quotient is wanted with 64 or 65 bits: enough to round to 53.
    let shift = 64 - (top.bits() - bottom.bits());
    top.shift_up(shift.max(0));
    bottom.shift_up((-shift).max(0) + 64);
    let (quotient, more) = top.over_in_steps(bottom);
    rounded(quotient, more, -shift)
}

/// `whole` times two to a power, and a little more where there was a rest, as the nearest float; halves go to the even one.
fn rounded(whole: u128, more: bool, power: i32) -> f64 {
    let bits = 128 - whole.leading_zeros() as i32;
    // Below the least power of two that a float has, there are fewer bits to keep.
    let kept = (bits + power + 1074).clamp(-1, 53);
    if kept < 0 {
        return 0.0;
    }
    let dropped = bits - kept;
    let (mut high, low) = (whole >> dropped, whole & ((1 << dropped) - 1));
    let half = 1 << (dropped - 1);
    if low > half || low == half && (more || high % 2 == 1) {
        high += 1;
    }
    let power = power + dropped;
    let two = match power {
        1024.. => f64::INFINITY,
        -1022..1024 => f64::from_bits(u64::from((power + 1023).unsigned_abs()) << 52),
        _ => f64::from_bits(1 << (power + 1074)),
    };
    high as f64 * two
}

/// A whole number of any size, its lowest part first.
#[derive(Default)]
struct Large(Vec<u32>);

impl Large {
    fn times_ten_and(&mut self, digit: u8) {
        let mut carried = u64::from(digit);
        for part in &mut self.0 {
            carried += u64::from(*part) * 10;
            *part = carried as u32;
            carried >>= 32;
        }
        if carried > 0 {
            self.0.push(carried as u32);
        }
    }

    fn bits(&self) -> i32 {
        let highest = self.0.last().map_or(32, |part| part.leading_zeros());
        self.0.len() as i32 * 32 - highest as i32
    }

    fn shift_up(&mut self, bits: i32) {
        let mut carried = 0;
        for part in &mut self.0 {
            let wide = u64::from(*part) << (bits % 32) | carried;
            *part = wide as u32;
            carried = wide >> 32;
        }
        self.0.push(carried as u32);
        let parts = vec![0; (bits / 32).unsigned_abs() as usize];
        self.0.splice(0..0, parts);
    }

    fn halve(&mut self) {
        let mut carried = 0;
        for part in self.0.iter_mut().rev() {
            let low = *part << 31;
            *part = *part >> 1 | carried;
            carried = low;
        }
    }

    fn take_away(&mut self, other: &Self) {
        let mut borrowed = 0i64;
        for (part, less) in self.0.iter_mut().zip(&other.0) {
            borrowed += i64::from(*part) - i64::from(*less);
            *part = borrowed as u32;
            borrowed >>= 32;
        }
    }

    /// How often a divisor, given times two to the 64th, is in this; and whether there is a rest.
    fn over_in_steps(mut self, mut divisor: Self) -> (u128, bool) {
        let parts = self.0.len().max(divisor.0.len());
        self.0.resize(parts, 0);
        divisor.0.resize(parts, 0);
        let mut quotient = 0;
        for _ in 0..=64 {
            quotient *= 2;
            if self.0.iter().rev().cmp(divisor.0.iter().rev()) != Ordering::Less {
                self.take_away(&divisor);
                quotient += 1;
            }
            divisor.halve();
        }
        (quotient, self.0.iter().any(|part| *part > 0))
    }
}

#[cfg(test)]
mod tests {
    use super::float;
    use proptest::prelude::*;

    /// The standard library's is the reference: it rounds to the nearest float, ties to even (IEEE 754).
    fn alike(text: &str) {
        let theirs: Option<f64> = text.parse().ok();
        assert_eq!(
            float(text).map(f64::to_bits),
            theirs.map(f64::to_bits),
            "{text}"
        );
    }

    #[test]
    fn numbers_are_read_as_the_standard_library_reads_them() {
        for text in [
            "0",
            "-0",
            "1",
            ".5",
            "5.",
            "+1.25",
            "412.50",
            "1e3",
            "1E-3",
            "1e+3",
            "0.1",
            "123456789012345678",
            "9007199254740993",
            "9007199254740992.5",
            "1.7976931348623157e308",
            "1.7976931348623159e308",
            "1e309",
            "-1e400",
            "2.2250738585072011e-308",
            "4.9e-324",
            "2.4703282292062327e-324",
            "2.4703282292062328e-324",
            "1e-400",
            "0e999999",
            "0.000000000000000000000000000000123456789",
            "100000000000000000000000000000000000000001",
            "179769313486231580793728971405301e276",
            "",
            ".",
            "e5",
            "1e",
            "1e+",
            "1..2",
            "1 ",
            "0x1",
            "--1",
            "1e5.5",
            "1_0",
        ] {
            alike(text);
        }
        // A half of the last bit, exactly, and with a digit far behind it that tips it.
        let half = format!("9007199254740993.{}", "0".repeat(900));
        alike(&half);
        alike(&format!("{half}1"));
    }

    proptest! {
        #[test]
        fn any_float_comes_back_from_its_text(bits in any::<u64>()) {
            let value = f64::from_bits(bits);
            prop_assume!(value.is_finite());
            for text in [format!("{value}"), format!("{value:e}"), format!("{value:.25e}")] {
                alike(&text);
            }
        }

        #[test]
        fn any_digits_and_power_are_read_as_the_standard_library_reads_them(
            whole in "[0-9]{0,30}", behind in "[0-9]{0,30}", power in -345i32..320
        ) {
            alike(&format!("{whole}.{behind}e{power}"));
        }
    }
}
