//! Reads a tyre's designation, in every form met on old vehicles and their modern substitutes.

use super::TyreFault;

/// How the cords lie.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Construction {
    /// Radial, marked R.
    Radial,
    /// Diagonal (cross-ply), marked with a hyphen or D; belted bias (B) counts with it.
    Diagonal,
}

/// Which way of marking a tyre has.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Form {
    /// Millimetres and an aspect ratio: 185/80 R 14.
    Metric,
    /// Millimetres, aspect ratio not printed: 185 R 14 C.
    MetricPlain,
    /// Inches: 6.40-13, 7.50 R 16.
    Inch,
    /// Overall diameter by width in inches: 31x10.50 R 15 LT.
    Flotation,
    /// Overall diameter by width of a beaded-edge tyre: 820x120, 30x3 1/2.
    BeadedEdge,
    /// A high-pressure lorry tyre by the diameter it once had and its width: 34x7, on a rim of 20 in.
    HighPressure,
}

/// A tyre's designation, understood.
#[derive(Debug, Clone, PartialEq)]
pub struct Designation {
    /// The way of marking.
    pub form: Form,
    /// How the cords lie; for plain metric sizes with a hyphen taken as radial, since most are.
    pub construction: Construction,
    /// Section width in millimetres.
    pub width_mm: f64,
    /// Section height as a share of the width, in per cent, where printed.
    pub aspect: Option<f64>,
    /// Rim diameter in millimetres; beaded-edge sizes have none.
    pub rim_mm: Option<f64>,
    /// Printed overall diameter in millimetres.
    pub overall_mm: Option<f64>,
    /// Marked C, LT or CP, or with a ply rating of 8 and more: a van or lorry tyre.
    pub commercial: bool,
    /// The load index for single fitting, where printed.
    pub load_index: Option<u16>,
    /// The speed symbol, where printed.
    pub speed_symbol: Option<char>,
}

const INCH: f64 = 25.4;

#[derive(Debug, Clone, PartialEq)]
enum Token {
    Number(f64, bool),
    Word(String),
    Slash,
    Dash,
    Cross,
}

impl Designation {
    /// Reads a designation as it is typed or moulded on the wall.
    ///
    /// # Errors
    /// [`TyreFault`] with what is missing or cannot be.
    pub fn read(text: &str) -> Result<Self, TyreFault> {
        let tokens = tokens(text)?;
        if tokens.is_empty() {
            return Err(TyreFault::Empty);
        }
        let body = match tokens.first() {
            Some(Token::Word(word)) if matches!(word.as_str(), "P" | "LT" | "T" | "ST") => {
                &tokens[1..]
            }
            Some(Token::Word(word)) if is_letter_size(word, &tokens) => {
                return Err(TyreFault::LetterSize);
            }
            _ => &tokens[..],
        };
        let light_truck = matches!(tokens.first(), Some(Token::Word(word)) if word == "LT");
        let (mut tyre, rest) = sized(body)?;
        tyre.commercial |= light_truck;
        serviced(&mut tyre, rest);
        tyre.checked()
    }

    fn checked(self) -> Result<Self, TyreFault> {
        let widest = if self.form == Form::BeadedEdge {
            150.0
        } else {
            700.0
        };
        if !(50.0..=widest).contains(&self.width_mm) {
            return Err(TyreFault::Width);
        }
        if self
            .aspect
            .is_some_and(|aspect| !(25.0..=105.0).contains(&aspect))
        {
            return Err(TyreFault::Aspect);
        }
        if self
            .rim_mm
            .is_some_and(|rim| !(190.0..=1080.0).contains(&rim))
        {
            return Err(TyreFault::Rim);
        }
        let least = self.rim_mm.unwrap_or(300.0) * 1.1;
        if self
            .overall_mm
            .is_some_and(|overall| !(least..=1600.0).contains(&overall))
        {
            return Err(TyreFault::Overall);
        }
        Ok(self)
    }

    /// Section width as the inch code prints it.
    #[must_use]
    pub fn width_in(&self) -> f64 {
        self.width_mm / INCH
    }

    /// Rim diameter as the code prints it.
    #[must_use]
    pub fn rim_in(&self) -> Option<f64> {
        self.rim_mm.map(|rim| rim / INCH)
    }
}

/// The letter sizes of the 1970s (E78-14, FR70-15) give a load, not a width.
fn is_letter_size(word: &str, tokens: &[Token]) -> bool {
    let letter = word.strip_suffix('R').unwrap_or(word);
    let followed =
        matches!(tokens.get(1), Some(Token::Number(aspect, _)) if (50.0..=85.0).contains(aspect));
    letter.len() == 1 && followed
}

fn tokens(text: &str) -> Result<Vec<Token>, TyreFault> {
    let characters: Vec<char> = text.to_ascii_uppercase().chars().collect();
    let mut found = Vec::new();
    let mut at = 0;
    while let Some(&c) = characters.get(at) {
        let here = at;
        match c {
            '0'..='9' | '.' | ',' => {
                while characters
                    .get(at)
                    .is_some_and(|c| c.is_ascii_digit() || ".,".contains(*c))
                {
                    at += 1;
                }
                let digits: String = characters[here..at].iter().collect();
                let digits = digits.replace(',', ".");
                let number = digits.parse().map_err(|_| TyreFault::Unread { at: here })?;
                found.push(Token::Number(number, digits.contains('.')));
                continue;
            }
            '¼' | '½' | '¾' => {
                let part = [('¼', 0.25), ('½', 0.5), ('¾', 0.75)]
                    .iter()
                    .find_map(|(sign, part)| (*sign == c).then_some(*part))
                    .unwrap_or_default();
                match found.last_mut() {
                    Some(Token::Number(whole, _)) => *whole += part,
                    _ => return Err(TyreFault::Unread { at: here }),
                }
            }
            'X' | '×' | '*' => found.push(Token::Cross),
            '/' | '⁄' => found.push(Token::Slash),
            '-' | '\u{2010}'..='\u{2015}' | '\u{2212}' => found.push(Token::Dash),
            c if c.is_alphabetic() => {
                while characters
                    .get(at)
                    .is_some_and(|c| c.is_alphabetic() && !"X×".contains(*c))
                {
                    at += 1;
                }
                found.push(Token::Word(characters[here..at].iter().collect()));
                continue;
            }
            c if c.is_whitespace() || "\"'()+&".contains(c) => {}
            _ => return Err(TyreFault::Unread { at: here }),
        }
        at += 1;
    }
    Ok(found)
}

/// Width, rim and what stands between; the rest is the service description.
fn sized(tokens: &[Token]) -> Result<(Designation, &[Token]), TyreFault> {
    let Some((Token::Number(first, dotted), rest)) = tokens.split_first() else {
        return Err(TyreFault::NoWidth);
    };
    match rest {
        [] => Err(TyreFault::NoRim),
        [Token::Slash, Token::Number(second, _), rest @ ..]
            if *first < 30.0 && !is_rim(between(rest).1) =>
        {
            // 5.60/15: a stroke in place of the hyphen.
            Ok((by_width(*first, true, None, rim_mm(*second)), rest))
        }
        [Token::Slash, Token::Number(second, _), rest @ ..]
            if *first < 30.0 && *second < 1.4 * first =>
        {
            // 5.25/5.50-16: one cover in place of two sizes, between both.
            let (construction, rest) = between(rest);
            let (rim, rest) = rim(rest)?;
            Ok((
                by_width(first.midpoint(*second), true, construction, rim),
                rest,
            ))
        }
        [Token::Slash, Token::Number(aspect, _), rest @ ..] => {
            let (construction, rest) = between(rest);
            let (rim, rest) = rim(rest)?;
            // 10.0/75-15.3 prints its width in inches.
            let width = if *first < 30.0 { first * INCH } else { *first };
            let tyre = plain(
                Form::Metric,
                width,
                construction.unwrap_or(Construction::Radial),
                rim,
            );
            Ok((
                Designation {
                    aspect: Some(*aspect),
                    ..tyre
                },
                rest,
            ))
        }
        [Token::Cross, Token::Number(second, _), rest @ ..] => crossed(*first, *second, rest),
        rest => {
            let (construction, rest) = between(rest);
            let (rim, rest) = rim(rest)?;
            Ok((by_width(*first, *dotted, construction, rim), rest))
        }
    }
}

/// 31x10.50 R 15, 820x120, 30x3 1/2, 150x40; or a cross in place of the hyphen: 5.60x15, 165x400.
fn crossed(first: f64, second: f64, rest: &[Token]) -> Result<(Designation, &[Token]), TyreFault> {
    let (construction, after) = between(rest);
    let under = first - 2.0 * second;
    if (5.0..12.0).contains(&second) && (under == 20.0 || under == 24.0) {
        let rest = match after {
            [Token::Number(code, _), after @ ..] if *code == under => after,
            _ => rest,
        };
        let made = construction.unwrap_or(Construction::Diagonal);
        let tyre = plain(Form::HighPressure, second * INCH, made, rim_mm(under));
        return Ok((tyre, rest));
    }
    if let [Token::Number(code, _), after @ ..] = after
        && (22.0..=45.0).contains(&first)
        && second < 22.0
        && after.first() != Some(&Token::Slash)
    {
        let made = construction.unwrap_or(Construction::Diagonal);
        let tyre = plain(Form::Flotation, second * INCH, made, rim_mm(*code));
        return Ok((
            Designation {
                overall_mm: Some(first * INCH),
                ..tyre
            },
            after,
        ));
    }
    let beaded = |overall_mm, width_mm| Designation {
        rim_mm: None,
        overall_mm: Some(overall_mm),
        ..plain(Form::BeadedEdge, width_mm, Construction::Diagonal, 0.0)
    };
    if (500.0..=1000.0).contains(&first) && (60.0..=150.0).contains(&second) {
        return Ok((beaded(first, second), rest));
    }
    if (24.0..=40.0).contains(&first) && second < 7.0 {
        let (width, rest) = match rest {
            [
                Token::Number(over, false),
                Token::Slash,
                Token::Number(under, false),
                rest @ ..,
            ] => (second + over / under, rest),
            rest => (second, rest),
        };
        return Ok((beaded(first * INCH, width * INCH), rest));
    }
    // 150x40 and 12x45 print the rim in centimetres; no inch rim has such a code.
    if second == 40.0 || second == 45.0 {
        let rim = 10.0 * second;
        let made = Construction::Diagonal;
        let tyre = if first < 30.0 {
            plain(Form::Inch, 10.0 * first, made, rim)
        } else {
            plain(Form::MetricPlain, first, made, rim)
        };
        return Ok((tyre, rest));
    }
    Ok((
        by_width(first, first.fract() != 0.0, None, rim_mm(second)),
        rest,
    ))
}

/// Sizes that print a width and a rim: inches below 20 (7.50, or 750 without its point), else millimetres.
fn by_width(width: f64, dotted: bool, construction: Option<Construction>, rim: f64) -> Designation {
    let unpointed = !dotted && (400.0..=1400.0).contains(&width) && rim < 640.0;
    if width < 30.0 || unpointed {
        let inches = if unpointed { width / 100.0 } else { width };
        let made = construction.unwrap_or(Construction::Diagonal);
        plain(Form::Inch, inches * INCH, made, rim)
    } else {
        plain(
            Form::MetricPlain,
            width,
            construction.unwrap_or(Construction::Radial),
            rim,
        )
    }
}

fn plain(form: Form, width_mm: f64, construction: Construction, rim_mm: f64) -> Designation {
    Designation {
        form,
        construction,
        width_mm,
        aspect: None,
        rim_mm: Some(rim_mm),
        overall_mm: None,
        commercial: false,
        load_index: None,
        speed_symbol: None,
    }
}

/// The marks between width and rim: R, SR, HR, ZR, D, B, a hyphen, a cross. A bare gap or hyphen tells nothing.
fn between(tokens: &[Token]) -> (Option<Construction>, &[Token]) {
    let mut rest = tokens;
    let mut made = None;
    loop {
        match rest {
            [Token::Word(word), after @ ..] => {
                if word.ends_with('R') {
                    made = Some(Construction::Radial);
                } else if matches!(word.as_str(), "D" | "B" | "S" | "H" | "V") {
                    made = made.or(Some(Construction::Diagonal));
                } else {
                    return (made, rest);
                }
                rest = after;
            }
            [Token::Dash, after @ ..] => rest = after,
            [Token::Cross, after @ ..] => {
                made = made.or(Some(Construction::Radial));
                rest = after;
            }
            _ => return (made, rest),
        }
    }
}

/// Whether a rim's diameter stands here: no ply rating and no load index.
fn is_rim(tokens: &[Token]) -> bool {
    let ply = |word: &str| matches!(word, "PR" | "PLY");
    match tokens {
        [Token::Number(..), Token::Word(word), ..] if ply(word) => false,
        [Token::Number(code, _), ..] => (8.0..=50.0).contains(code),
        _ => false,
    }
}

fn rim(tokens: &[Token]) -> Result<(f64, &[Token]), TyreFault> {
    match tokens {
        [Token::Number(code, _), rest @ ..] => Ok((rim_mm(*code), rest)),
        _ => Err(TyreFault::NoRim),
    }
}

/// Rim codes below 100 are inches; 400 and its like are millimetres.
fn rim_mm(code: f64) -> f64 {
    if code < 100.0 { code * INCH } else { code }
}

/// Load index, speed symbol, ply rating, C and LT, wherever they stand behind the size; other marks are passed over.
fn serviced(tyre: &mut Designation, mut rest: &[Token]) {
    while let Some((token, after)) = rest.split_first() {
        rest = after;
        match token {
            Token::Word(word) if matches!(word.as_str(), "C" | "LT" | "CP" | "LTC") => {
                tyre.commercial = true;
            }
            Token::Number(number, false) => match after {
                [Token::Word(word), ..] if matches!(word.as_str(), "PR" | "PLY") => {
                    tyre.commercial |= *number >= 8.0;
                }
                _ if (50.0..=180.0).contains(number) && tyre.load_index.is_none() => {
                    #[expect(
                        clippy::cast_possible_truncation,
                        clippy::cast_sign_loss,
                        reason = "50 to 180"
                    )]
                    let index = *number as u16;
                    tyre.load_index = Some(index);
                }
                _ => {}
            },
            Token::Word(word) if tyre.load_index.is_some() && tyre.speed_symbol.is_none() => {
                let mut letters = word.chars();
                if let (Some(symbol), None) = (letters.next(), letters.next()) {
                    tyre.speed_symbol = Some(symbol);
                }
            }
            _ => {}
        }
    }
}
