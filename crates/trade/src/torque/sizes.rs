//! The threads met on old vehicles, by their designation.

use measure::{Length, unit};

use super::{Form, Thread};

/// A standard thread: major diameter and pitch in millimetres, or in inches and threads per inch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ThreadSize {
    /// As it is written: `M10x1.25`, `3/8-24 UNF`, `5/16 BSF`, `2 BA`.
    pub name: &'static str,
    /// Its form.
    pub form: Form,
    /// Millimetres, or inches for Unified and Whitworth.
    major: f64,
    /// Millimetres, or threads per inch for Unified and Whitworth.
    pitch: f64,
    /// The width across flats of the usual hexagon, millimetres; none where there is more than one in use.
    pub across_flats: Option<f64>,
}

impl ThreadSize {
    /// The thread itself, exact.
    #[must_use]
    pub fn thread(&self) -> Thread {
        let (major, pitch) = match self.form {
            Form::Metric | Form::Association => (
                Length::of(self.major, &unit::MILLIMETRE),
                Length::of(self.pitch, &unit::MILLIMETRE),
            ),
            Form::Unified | Form::Whitworth => (
                Length::of(self.major, &unit::INCH),
                Length::of(1.0 / self.pitch, &unit::INCH),
            ),
        };
        Thread {
            form: self.form,
            major,
            pitch,
        }
    }
}

macro_rules! threads {
    ($($name:literal $form:ident $major:literal $pitch:literal $flats:expr;)*) => {
        &[$(ThreadSize { name: $name, form: Form::$form, major: $major, pitch: $pitch, across_flats: $flats },)*]
    };
}

/// ISO 261 and ISO 262, ASME B1.1, BS 84, BS 93; hexagons ISO 4014, ASME B18.2.1 (from memory), of BSF the smaller British ones (table of
/// the article British Standard Fine), of BA one and three quarters of the major diameter; Whitworth coarse went with two, so none stands here.
const SIZES: &[ThreadSize] = threads! {
    "M4" Metric 4.0 0.7 Some(7.0);
    "M5" Metric 5.0 0.8 Some(8.0);
    "M6" Metric 6.0 1.0 Some(10.0);
    "M8" Metric 8.0 1.25 Some(13.0);
    "M8x1" Metric 8.0 1.0 Some(13.0);
    "M10" Metric 10.0 1.5 Some(16.0);
    "M10x1.25" Metric 10.0 1.25 Some(16.0);
    "M10x1" Metric 10.0 1.0 Some(16.0);
    "M12" Metric 12.0 1.75 Some(18.0);
    "M12x1.5" Metric 12.0 1.5 Some(18.0);
    "M12x1.25" Metric 12.0 1.25 Some(18.0);
    "M14" Metric 14.0 2.0 Some(21.0);
    "M14x1.5" Metric 14.0 1.5 Some(21.0);
    "M16" Metric 16.0 2.0 Some(24.0);
    "M16x1.5" Metric 16.0 1.5 Some(24.0);
    "M18" Metric 18.0 2.5 Some(27.0);
    "M18x1.5" Metric 18.0 1.5 Some(27.0);
    "M20" Metric 20.0 2.5 Some(30.0);
    "M20x1.5" Metric 20.0 1.5 Some(30.0);
    "M22" Metric 22.0 2.5 Some(34.0);
    "M22x1.5" Metric 22.0 1.5 Some(34.0);
    "M24" Metric 24.0 3.0 Some(36.0);
    "M24x2" Metric 24.0 2.0 Some(36.0);
    "1/4-20 UNC" Unified 0.25 20.0 Some(11.1125);
    "5/16-18 UNC" Unified 0.3125 18.0 Some(12.7);
    "3/8-16 UNC" Unified 0.375 16.0 Some(14.2875);
    "7/16-14 UNC" Unified 0.4375 14.0 Some(15.875);
    "1/2-13 UNC" Unified 0.5 13.0 Some(19.05);
    "9/16-12 UNC" Unified 0.5625 12.0 Some(20.6375);
    "5/8-11 UNC" Unified 0.625 11.0 Some(23.8125);
    "3/4-10 UNC" Unified 0.75 10.0 Some(28.575);
    "7/8-9 UNC" Unified 0.875 9.0 Some(33.3375);
    "1-8 UNC" Unified 1.0 8.0 Some(38.1);
    "1/4-28 UNF" Unified 0.25 28.0 Some(11.1125);
    "5/16-24 UNF" Unified 0.3125 24.0 Some(12.7);
    "3/8-24 UNF" Unified 0.375 24.0 Some(14.2875);
    "7/16-20 UNF" Unified 0.4375 20.0 Some(15.875);
    "1/2-20 UNF" Unified 0.5 20.0 Some(19.05);
    "9/16-18 UNF" Unified 0.5625 18.0 Some(20.6375);
    "5/8-18 UNF" Unified 0.625 18.0 Some(23.8125);
    "3/4-16 UNF" Unified 0.75 16.0 Some(28.575);
    "7/8-14 UNF" Unified 0.875 14.0 Some(33.3375);
    "1-12 UNF" Unified 1.0 12.0 Some(38.1);
    "1/4 BSW" Whitworth 0.25 20.0 None;
    "5/16 BSW" Whitworth 0.3125 18.0 None;
    "3/8 BSW" Whitworth 0.375 16.0 None;
    "7/16 BSW" Whitworth 0.4375 14.0 None;
    "1/2 BSW" Whitworth 0.5 12.0 None;
    "9/16 BSW" Whitworth 0.5625 12.0 None;
    "5/8 BSW" Whitworth 0.625 11.0 None;
    "3/4 BSW" Whitworth 0.75 10.0 None;
    "7/8 BSW" Whitworth 0.875 9.0 None;
    "1 BSW" Whitworth 1.0 8.0 None;
    "3/16 BSF" Whitworth 0.1875 32.0 Some(8.59);
    "1/4 BSF" Whitworth 0.25 26.0 Some(11.3);
    "5/16 BSF" Whitworth 0.3125 22.0 Some(13.34);
    "3/8 BSF" Whitworth 0.375 20.0 Some(15.24);
    "7/16 BSF" Whitworth 0.4375 18.0 Some(18.03);
    "1/2 BSF" Whitworth 0.5 16.0 Some(20.83);
    "9/16 BSF" Whitworth 0.5625 16.0 Some(23.37);
    "5/8 BSF" Whitworth 0.625 14.0 Some(25.65);
    "3/4 BSF" Whitworth 0.75 12.0 Some(30.48);
    "7/8 BSF" Whitworth 0.875 11.0 Some(33.02);
    "1 BSF" Whitworth 1.0 10.0 Some(37.59);
    "0 BA" Association 6.0 1.0 Some(10.5);
    "1 BA" Association 5.3 0.9 Some(9.275);
    "2 BA" Association 4.7 0.81 Some(8.225);
    "3 BA" Association 4.1 0.73 Some(7.175);
    "4 BA" Association 3.6 0.66 Some(6.3);
    "5 BA" Association 3.2 0.59 Some(5.6);
    "6 BA" Association 2.8 0.53 Some(4.9);
};

/// Every thread of the table.
#[must_use]
pub fn sizes() -> &'static [ThreadSize] {
    SIZES
}

/// A thread by its name, however it is spaced or cased: `m10 x 1.25`, `M10 x 1,5`, `3/8" unf`, `2ba`.
#[must_use]
pub fn size(name: &str) -> Option<&'static ThreadSize> {
    let wanted = plain(name);
    SIZES.iter().find(|size| {
        let known = plain(size.name);
        known == wanted
            || size
                .otherwise()
                .is_some_and(|other| plain(&other) == wanted)
    })
}

impl ThreadSize {
    /// How the thread may be written too: `3/8 UNF` names its pitch already, so the count may be left out; a coarse metric pitch may be
    /// put in.
    fn otherwise(&self) -> Option<String> {
        if self.form == Form::Metric {
            return (!self.name.contains('x')).then(|| format!("{}x{}", self.name, self.pitch));
        }
        let (diameter, rest) = self.name.split_once('-')?;
        let series = rest.split_once(' ')?.1;
        Some(format!("{diameter}{series}"))
    }
}

/// A name without spaces, hyphens and inch marks, in small letters, with a point.
fn plain(name: &str) -> String {
    let kept = name
        .chars()
        .filter(|c| !c.is_whitespace() && !"-\"″”".contains(*c));
    kept.map(|c| match c {
        '×' => 'x',
        ',' => '.',
        _ => c.to_ascii_lowercase(),
    })
    .collect()
}
