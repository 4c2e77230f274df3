//! The overall diameter that a designation stands for, and how far off it can be.

use super::designation::{Construction, Designation, Form};

/// What a diameter rests on, best first.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Basis {
    /// The published rule: rim plus two section heights.
    Rule,
    /// A published table of the sizes that print no aspect ratio.
    Table,
    /// The diameter printed in the designation.
    Printed,
    /// A rule of thumb: the ± is wide, and a roll-out is better.
    RuleOfThumb,
}

/// A new tyre's overall diameter with the limits within which it lies.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TyreDiameter {
    /// Metres.
    pub metres: f64,
    /// How much greater it can be, metres.
    pub plus_m: f64,
    /// How much smaller it can be, metres.
    pub minus_m: f64,
    /// What it rests on.
    pub basis: Basis,
}

/// The overall diameter of a new tyre.
///
/// Sizes with an aspect ratio: D = d + 2 H, H = S x aspect; H may lie 3 % below and 4 % above (8 % where diagonal), the
/// limits of approval. Sizes without one: the table where it lists the size, within the same limits, else a rule of
/// thumb. Flotation and beaded-edge sizes: as printed.
///
/// # Units
/// Metres.
///
/// # Source
/// UN Regulation No. 30, paragraphs 6.1.2, 6.1.4 and annex 5; UN Regulation No. 54 likewise (from memory). Cross-plies of one
/// size differ by as much as those limits: 5.90 x 15 of several makes rolled 79 1/2 to 81 3/4 in (Motor Sport, September
/// 1973, page 88). The shares of the rule of thumb are common practice, held against listed sizes.
#[must_use]
pub fn tyre_diameter(tyre: &Designation) -> TyreDiameter {
    let rim_mm = tyre.rim_mm.unwrap_or_default();
    if let Some(overall_mm) = tyre.overall_mm {
        return printed(tyre, overall_mm);
    }
    let by_rule = tyre.aspect.map(|aspect| {
        let two_heights = 2.0 * tyre.width_mm * aspect / 100.0;
        (rim_mm + two_heights, Basis::Rule)
    });
    let listed = || Some((listed_mm(tyre)?, Basis::Table));
    if let Some((diameter_mm, basis)) = by_rule.or_else(listed) {
        let two_heights = diameter_mm - rim_mm;
        let above = match tyre.construction {
            Construction::Radial => 0.04,
            Construction::Diagonal => 0.08,
        };
        return from_mm(diameter_mm, above * two_heights, 0.03 * two_heights, basis);
    }
    let (share, off) = height_share(tyre);
    let two_heights = 2.0 * tyre.width_mm * share;
    let off = 2.0 * tyre.width_mm * off;
    from_mm(rim_mm + two_heights, off, off, Basis::RuleOfThumb)
}

fn from_mm(value: f64, plus: f64, minus: f64, basis: Basis) -> TyreDiameter {
    TyreDiameter {
        metres: value / 1e3,
        plus_m: plus / 1e3,
        minus_m: minus / 1e3,
        basis,
    }
}

/// Flotation sizes differ from what they print by up to half an inch either way (33X10.00R16 measures 33.5 in).
fn printed(tyre: &Designation, overall_mm: f64) -> TyreDiameter {
    let off = match tyre.form {
        Form::Flotation => 12.7,
        _ => 0.025 * overall_mm,
    };
    from_mm(overall_mm, off, off, Basis::Printed)
}

/// Section height by width where nothing better is known, and how far that can be off.
///
/// Tractors: 85 % as a rule (guide of tractortyres.co.uk). Tubeless lorry tyres: 88 % (motorhometires.com, otrusa.com); 12-16.5
/// is listed at 32.9 in. 34x7 is the later 7.00-20 or 7.50-20 (mapleleafup.net, thread 29794). The others: common practice.
fn height_share(tyre: &Designation) -> (f64, f64) {
    let (rim_in, width_in) = (tyre.rim_in().unwrap_or_default(), tyre.width_in());
    // Rims of half inches are for tubeless tyres; widths such as 12.4 are those of tractors.
    let tubeless = (rim_in.fract() - 0.5).abs() < 0.01;
    let tractor = rim_in > 24.9 || rim_in > 19.9 && (4.0 * width_in).fract().abs() > 0.1;
    match (tyre.form, tyre.construction) {
        (Form::HighPressure, _) => (1.15, 0.12),
        (Form::MetricPlain, Construction::Radial) => (0.80, 0.05),
        (Form::MetricPlain, Construction::Diagonal) => (0.92, 0.10),
        _ if tubeless && rim_in > 17.0 => (0.88, 0.06),
        _ if tubeless => (0.74, 0.09),
        _ if tractor => (0.86, 0.07),
        _ if rim_in >= 19.5 && width_in >= 9.6 => (1.04, 0.08),
        _ if rim_in >= 19.5 && width_in >= 6.2 => (1.10, 0.08),
        _ if tyre.commercial || rim_in >= 15.5 && width_in >= 6.0 => (1.05, 0.08),
        _ if rim_in >= 15.5 => (1.00, 0.10),
        (_, Construction::Radial) => (0.90, 0.08),
        _ => (0.95, 0.09),
    }
}

struct Listed {
    width: f64,
    rim: f64,
    diameter_mm: f64,
}

const fn listed(width: f64, rim: f64, diameter_mm: f64) -> Listed {
    Listed {
        width,
        rim,
        diameter_mm,
    }
}

/// Sizes without an aspect ratio, radial: widths in millimetres, and in inches for light lorries.
const PLAIN_RADIALS: [Listed; 41] = [
    listed(145.0, 10.0, 492.0),
    listed(125.0, 12.0, 510.0),
    listed(135.0, 12.0, 522.0),
    listed(145.0, 12.0, 542.0),
    listed(155.0, 12.0, 550.0),
    listed(125.0, 13.0, 536.0),
    listed(135.0, 13.0, 548.0),
    listed(145.0, 13.0, 566.0),
    listed(155.0, 13.0, 578.0),
    listed(165.0, 13.0, 596.0),
    listed(175.0, 13.0, 608.0),
    listed(185.0, 13.0, 624.0),
    listed(145.0, 14.0, 590.0),
    listed(155.0, 14.0, 604.0),
    listed(165.0, 14.0, 622.0),
    listed(175.0, 14.0, 634.0),
    listed(185.0, 14.0, 650.0),
    listed(195.0, 14.0, 666.0),
    listed(205.0, 14.0, 686.0),
    listed(215.0, 14.0, 700.0),
    listed(225.0, 14.0, 714.0),
    listed(125.0, 15.0, 588.0),
    listed(135.0, 15.0, 600.0),
    listed(145.0, 15.0, 616.0),
    listed(155.0, 15.0, 630.0),
    listed(165.0, 15.0, 646.0),
    listed(175.0, 15.0, 660.0),
    listed(185.0, 15.0, 674.0),
    listed(195.0, 15.0, 690.0),
    listed(205.0, 15.0, 710.0),
    listed(215.0, 15.0, 724.0),
    listed(225.0, 15.0, 738.0),
    listed(235.0, 15.0, 752.0),
    listed(175.0, 16.0, 686.0),
    listed(185.0, 16.0, 698.0),
    listed(205.0, 16.0, 736.0),
    listed(6.00, 16.0, 728.0),
    listed(6.50, 16.0, 742.0),
    listed(7.00, 16.0, 778.0),
    listed(7.50, 16.0, 802.0),
    listed(8.25, 16.0, 860.0),
];

/// Inch sizes, diagonal.
const DIAGONALS: [Listed; 25] = [
    listed(4.80, 10.0, 490.0),
    listed(5.20, 10.0, 508.0),
    listed(5.20, 12.0, 558.0),
    listed(5.50, 12.0, 552.0),
    listed(6.00, 12.0, 574.0),
    listed(5.20, 13.0, 582.0),
    listed(5.60, 13.0, 600.0),
    listed(5.90, 13.0, 616.0),
    listed(6.40, 13.0, 642.0),
    listed(6.70, 13.0, 660.0),
    listed(7.00, 13.0, 644.0),
    listed(5.20, 14.0, 612.0),
    listed(5.60, 14.0, 626.0),
    listed(5.90, 14.0, 642.0),
    listed(6.40, 14.0, 666.0),
    listed(7.00, 14.0, 668.0),
    listed(7.50, 14.0, 688.0),
    listed(8.00, 14.0, 702.0),
    listed(5.60, 15.0, 650.0),
    listed(5.90, 15.0, 668.0),
    listed(6.40, 15.0, 692.0),
    listed(6.70, 15.0, 710.0),
    listed(7.10, 15.0, 724.0),
    listed(7.60, 15.0, 742.0),
    listed(8.20, 15.0, 760.0),
];

fn listed_mm(tyre: &Designation) -> Option<f64> {
    let (table, width): (&[Listed], f64) = match (tyre.form, tyre.construction) {
        (Form::MetricPlain, Construction::Radial) => (&PLAIN_RADIALS, tyre.width_mm),
        (Form::Inch, Construction::Radial) => (&PLAIN_RADIALS, tyre.width_in()),
        (Form::Inch, Construction::Diagonal) if !tyre.commercial => (&DIAGONALS, tyre.width_in()),
        _ => return None,
    };
    let rim = tyre.rim_in()?;
    table
        .iter()
        .find(|row| (row.width - width).abs() < 0.005 && (row.rim - rim).abs() < 0.05)
        .map(|row| row.diameter_mm)
}
