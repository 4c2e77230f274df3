//! What a tyre may carry and how fast: load index and speed symbol.

/// The load in kilograms that a load index stands for: 45 kg at index 0, times 10 each 40 steps, on the steps of the list.
///
/// L = 45 x 10^(LI/80), rounded to the listed steps, which lie within 1.5 % of it.
///
/// # Valid range
/// 50 to 180.
///
/// # Source
/// UN Regulation No. 54, annex 4, list of load-capacity indices (the progression from memory; the list's 62 = 265 kg,
/// 82 = 475 kg and 100 = 800 kg seen at vintagetyres.com/tools and barretire.com).
#[must_use]
pub fn load_of_index(index: u16) -> Option<f64> {
    (50..=180)
        .contains(&index)
        .then(|| 45.0 * 10f64.powf(f64::from(index) / 80.0))
}

/// The highest speed in km/h that a speed symbol stands for.
///
/// # Source
/// UN Regulation No. 30, paragraph 2.29; N to Y seen at vintagetyres.com/tools, the lower ones from memory.
#[must_use]
pub fn speed_of_symbol(symbol: char) -> Option<f64> {
    const SYMBOLS: [(char, f64); 20] = [
        ('D', 65.0),
        ('E', 70.0),
        ('F', 80.0),
        ('G', 90.0),
        ('J', 100.0),
        ('K', 110.0),
        ('L', 120.0),
        ('M', 130.0),
        ('N', 140.0),
        ('P', 150.0),
        ('Q', 160.0),
        ('R', 170.0),
        ('S', 180.0),
        ('T', 190.0),
        ('U', 200.0),
        ('H', 210.0),
        ('V', 240.0),
        ('Z', 240.0),
        ('W', 270.0),
        ('Y', 300.0),
    ];
    SYMBOLS
        .iter()
        .find_map(|(sign, speed)| (*sign == symbol).then_some(*speed))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_progression_meets_the_printed_list() {
        for (index, load) in [
            (70, 335.0),
            (82, 475.0),
            (88, 560.0),
            (100, 800.0),
            (110, 1060.0),
        ] {
            let found = load_of_index(index).unwrap();
            assert!(
                (found / load - 1.0).abs() < 0.015,
                "{index}: {found} for {load}"
            );
        }
    }
}
