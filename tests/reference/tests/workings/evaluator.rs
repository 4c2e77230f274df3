//! Evaluates the text of a working with an expression evaluator and a table of units that are not ours.

/// Factors to SI by symbol, written out from the definitions (NIST SP 811, appendix B.8), for the units that books show.
const UNITS: &[(&str, f64)] = &[
    ("mm", 0.001),
    ("in", 0.0254),
    ("µm", 1e-6),
    ("thou", 0.000_025_4),
    ("mil", 0.000_025_4),
    ("km", 1000.0),
    ("mi", 1609.344),
    ("m", 1.0),
    ("ft", 0.3048),
    ("m²", 1.0),
    ("ft²", 0.092_903_04),
    ("mm²", 1e-6),
    ("in²", 0.000_645_16),
    ("L", 0.001),
    ("mL", 1e-6),
    ("imp pt", 0.000_568_261_25),
    ("imp fl oz", 0.000_028_413_062_5),
    ("US qt", 0.000_946_352_946),
    ("US fl oz", 0.000_029_573_529_562_5),
    ("kg", 1.0),
    ("g", 0.001),
    ("lb", 0.453_592_37),
    ("oz", 0.028_349_523_125),
    ("N", 1.0),
    ("lbf", 4.448_221_615_260_5),
    ("N·m", 1.0),
    ("lbf·ft", 1.355_817_948_331_400_4),
    ("J", 1.0),
    ("ft·lbf", 1.355_817_948_331_400_4),
    ("bar", 100_000.0),
    ("psi", 6_894.757_293_168_361),
    ("N/mm²", 1e6),
    ("ksi", 6_894_757.293_168_361),
    ("tonf/in²", 15_444_256.336_697_13),
    ("°", 0.017_453_292_519_943_295),
    ("km/h", 0.277_777_777_777_777_8),
    ("mph", 0.447_04),
    ("m/s", 1.0),
    ("ft/min", 0.005_08),
    ("rpm", 0.016_666_666_666_666_666),
    ("Hz", 1.0),
    ("N/mm", 1000.0),
    ("lbf/in", 175.126_835_246_476_26),
    ("kW", 1000.0),
    ("kW/t", 1.0),
    ("hp/long ton", 0.733_922_681_25),
    ("hp/short ton", 0.821_993_403),
    ("hp", 745.699_871_582_270_2),
    ("K", 1.0),
    ("s", 1.0),
    ("min", 60.0),
    ("h", 3600.0),
    ("d", 86_400.0),
    ("kg/L", 1000.0),
    ("kg/m³", 1.0),
    ("lb/ft³", 16.018_463_373_960_14),
    ("g/L", 1.0),
    ("lb/imp gal", 99.776_372_663_101_7),
    ("lb/US gal", 119.826_427_316_897_93),
    ("%", 0.01),
    ("m²/L", 1000.0),
    ("ft²/imp gal", 20.435_812_973_698_37),
    ("ft²/US gal", 24.542_391_005_085_43),
    ("turns/km", 0.001),
    ("turns/mi", 0.000_621_371_192_237_334),
    ("m/s²", 1.0),
    ("ft/s²", 0.3048),
    ("mm⁴", 1e-12),
    ("in⁴", 4.162_314_256e-7),
    ("mm³", 1e-9),
    ("in³", 1.638_706_4e-5),
    ("L/min", 1.666_666_666_666_666_7e-5),
    ("ft³/min", 0.000_471_947_443_2),
    ("kg·m²", 1.0),
    ("lb·ft²", 0.042_140_110_093_8),
];

/// The most figures of a number in a working.
pub const FIGURES: usize = 7;

/// Factor to SI of a unit: of the table, or of SI base units as a working writes them (`m·kg·s⁻²`).
fn factor(symbol: &str) -> Result<f64, String> {
    if symbol.is_empty() {
        return Ok(1.0);
    }
    if let Some((_, factor)) = UNITS.iter().find(|(name, _)| *name == symbol) {
        return Ok(*factor);
    }
    let is_base = |part: &str| {
        ["kg", "m", "s", "K"].iter().any(|base| {
            part.strip_prefix(base)
                .is_some_and(|power| power.chars().all(|c| "⁻⁰¹²³⁴⁵⁶⁷⁸⁹".contains(c)))
        })
    };
    symbol
        .split('·')
        .all(is_base)
        .then_some(1.0)
        .ok_or_else(|| format!("no unit `{symbol}` is known"))
}

/// A number as a book with a decimal point writes it.
fn number(text: &str) -> Result<f64, String> {
    let plain: String = text
        .chars()
        .filter(|c| *c != '\u{202F}')
        .map(|c| if c == '\u{2212}' { '-' } else { c })
        .collect();
    plain.parse().map_err(|error| format!("`{text}`: {error}"))
}

/// A displayed value in SI.
pub fn displayed(value: &str, unit: &str) -> Result<f64, String> {
    Ok(number(value)? * factor(unit)?)
}

fn is_of_number(c: char) -> bool {
    c.is_ascii_digit() || matches!(c, '.' | '\u{202F}')
}

/// The expression with every number in SI and nothing but ASCII: `(1.98738) * (16.666) / 4.11`.
fn plain(text: &str, off: Option<usize>) -> Result<(String, usize), String> {
    let chars: Vec<char> = text.chars().collect();
    let mut plain = String::new();
    let (mut at, mut numbers) = (0, 0);
    while at < chars.len() {
        let c = chars[at];
        let named = at > 0 && (chars[at - 1].is_alphanumeric() || chars[at - 1] == '_');
        if c.is_ascii_digit() && !named {
            let start = at;
            while at < chars.len() && is_of_number(chars[at]) {
                at += 1;
            }
            if chars.get(at) == Some(&'e') {
                at += 1 + usize::from(chars.get(at + 1) == Some(&'\u{2212}'));
                while chars.get(at).is_some_and(char::is_ascii_digit) {
                    at += 1;
                }
            }
            let written: String = chars[start..at].iter().collect();
            let mut value = number(&written)?;
            // A number of few figures is shown whole; noughts at the end of seven are not written.
            if written.chars().filter(char::is_ascii_digit).count() + 2 >= FIGURES {
                let half = 0.5 * 10f64.powf(value.abs().log10().floor() + 1.0 - FIGURES as f64);
                value += if off == Some(numbers) { half } else { 0.0 };
                numbers += 1;
            }
            // A unit stands behind the number up to the closing bracket.
            let has_unit = matches!(chars.get(at), Some('\u{a0}' | '°' | '′' | '″'));
            let unit: String = if has_unit {
                chars[at..].iter().take_while(|c| **c != ')').collect()
            } else {
                String::new()
            };
            at += unit.chars().count();
            // Written without an exponent, which the evaluator does not read.
            plain.push_str(&format!(
                "{}",
                value * factor(unit.trim_start_matches('\u{a0}'))?
            ));
            continue;
        }
        plain.push(match c {
            '\u{2212}' => '-',
            ';' => ',',
            c => c,
        });
        at += 1;
    }
    Ok((plain, numbers))
}

/// `min(a, b, c)` as `((a) min (b) min (c))`, the evaluator's way for more than two.
fn infix(text: &str) -> String {
    let Some((start, name)) = ["min", "max"]
        .into_iter()
        .filter_map(|name| Some((text.find(&format!("{name}("))?, name)))
        .min()
    else {
        return text.to_owned();
    };
    let inside = start + name.len() + 1;
    let (mut depth, mut from, mut parts, mut end) = (0, inside, Vec::new(), text.len());
    for (place, c) in text.char_indices().skip_while(|(place, _)| *place < inside) {
        match c {
            '(' => depth += 1,
            ')' if depth == 0 => {
                end = place;
                break;
            }
            ')' => depth -= 1,
            ',' if depth == 0 => {
                parts.push(&text[from..place]);
                from = place + 1;
            }
            _ => {}
        }
    }
    parts.push(&text[from..end]);
    let parts: Vec<String> = parts
        .into_iter()
        .map(|part| format!("({})", infix(part)))
        .collect();
    let after = text.get(end + 1..).unwrap_or_default();
    format!(
        "{}({}){}",
        &text[..start],
        parts.join(&format!(" {name} ")),
        infix(after)
    )
}

/// The value of an expression as a working shows it, in SI.
pub fn evaluated(text: &str) -> Result<f64, String> {
    evaluated_with(text, None).map(|(value, _)| value)
}

/// The value with one of the rounded numbers a little off, and how many numbers there are.
fn evaluated_with(text: &str, off: Option<usize>) -> Result<(f64, usize), String> {
    let (plain, numbers) = plain(text, off)?;
    let plain = infix(&plain);
    let value = exmex::eval_str::<f64>(&plain).map_err(|error| format!("`{plain}`: {error}"))?;
    Ok((value, numbers))
}

/// How far the value can be off because its numbers are shown with seven figures: each one moved by half a unit of the
/// last of them.
pub fn slack(text: &str) -> Result<f64, String> {
    let (value, numbers) = evaluated_with(text, None)?;
    (0..numbers).try_fold(1e-13 * value.abs(), |slack, moved| {
        let (other, _) = evaluated_with(text, Some(moved))?;
        Ok(slack + (other - value).abs())
    })
}
