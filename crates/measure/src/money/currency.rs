//! The currencies of ISO 4217 and their minor units.

use std::fmt;

/// Active currencies by the number of decimals of their minor unit; funds and units without one are left out.
///
/// # Source
/// ISO 4217 list one (current currencies), as published on 1 January 2026 by the maintenance agency.
const BY_MINOR_UNITS: &[(u32, &str)] = &[
    (
        0,
        "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF",
    ),
    (
        2,
        "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY \
         COP CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF \
         IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR \
         MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG \
         SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD UYU UZS VED VES \
         WST XAD XCD XCG YER ZAR ZMW ZWG",
    ),
    (3, "BHD IQD JOD KWD LYD OMR TND"),
    (4, "UYW"),
];

/// Signs and abbreviations people write, each with the currencies that use it.
///
/// # Source
/// Common practice, no source: ISO 4217 holds no signs.
const SIGNS: &[(&str, &[&str])] = &[
    ("£", &["GBP", "FKP", "GIP", "SHP", "EGP", "SSP"]),
    ("€", &["EUR"]),
    (
        "$",
        &[
            "USD", "CAD", "AUD", "NZD", "HKD", "SGD", "MXN", "TWD", "ARS", "CLP", "COP", "BBD",
            "BMD", "BSD", "BZD", "FJD", "GYD", "JMD", "KYD", "LRD", "NAD", "SBD", "SRD", "TTD",
            "XCD", "BND", "UYU",
        ],
    ),
    ("US$", &["USD"]),
    ("¥", &["JPY", "CNY"]),
    ("Ft", &["HUF"]),
    ("kr", &["SEK", "NOK", "DKK", "ISK"]),
    ("kr.", &["DKK", "ISK"]),
    ("zł", &["PLN"]),
    ("Kč", &["CZK"]),
    ("Fr.", &["CHF"]),
    ("SFr.", &["CHF"]),
    ("₹", &["INR"]),
    ("₺", &["TRY"]),
    ("₴", &["UAH"]),
    ("R$", &["BRL"]),
    ("R", &["ZAR"]),
    ("₩", &["KRW", "KPW"]),
    ("₪", &["ILS"]),
    ("₫", &["VND"]),
    ("lei", &["RON", "MDL"]),
];

/// A currency of ISO 4217.
#[derive(Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Currency {
    code: &'static str,
    minor_units: u32,
}

impl Currency {
    /// Pound sterling.
    pub const GBP: Self = Self {
        code: "GBP",
        minor_units: 2,
    };
    /// Euro.
    pub const EUR: Self = Self {
        code: "EUR",
        minor_units: 2,
    };
    /// United States dollar.
    pub const USD: Self = Self {
        code: "USD",
        minor_units: 2,
    };

    /// The currency of a three-letter code, in capitals or not.
    #[must_use]
    pub fn of_code(code: &str) -> Option<Self> {
        Self::all().find(|currency| currency.code.eq_ignore_ascii_case(code))
    }

    /// All currencies, by number of decimals and then by code.
    pub fn all() -> impl Iterator<Item = Self> {
        BY_MINOR_UNITS.iter().flat_map(|&(minor_units, codes)| {
            codes.split(' ').map(move |code| Self { code, minor_units })
        })
    }

    /// The three letters.
    #[must_use]
    pub fn code(self) -> &'static str {
        self.code
    }

    /// How many decimals the smallest unit has: 2 for pence and cents, 0 for yen, 3 for fils.
    #[must_use]
    pub fn minor_units(self) -> u32 {
        self.minor_units
    }

    /// The sign that tells this currency in a book kept in `home`: none where the two share it.
    #[must_use]
    pub fn sign_beside(self, home: Self) -> Option<&'static str> {
        let (sign, codes) = SIGNS.iter().find(|(_, codes)| codes.contains(&self.code))?;
        let plain = codes.first() == Some(&self.code) && !codes.contains(&home.code);
        (self == home || plain).then_some(*sign)
    }

    /// What a sign, abbreviation or code stands for, when `usual` is the currency of the field.
    pub(super) fn meant_by(written: &str, usual: Self) -> Meant {
        if let Some(currency) = Self::of_code(written) {
            return Meant::One(currency);
        }
        let lower = crate::small_letters(written);
        let Some((_, codes)) = SIGNS
            .iter()
            .find(|(sign, _)| crate::small_letters(sign) == lower)
        else {
            return Meant::Unknown;
        };
        if codes.contains(&usual.code) {
            return Meant::One(usual);
        }
        match codes {
            [code] => Self::of_code(code).map_or(Meant::Unknown, Meant::One),
            // A bare pound sign is sterling wherever the pound of another country was not asked for.
            ["GBP", ..] => Meant::One(Self::GBP),
            _ => Meant::Several,
        }
    }
}

/// What a written sign stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Meant {
    One(Currency),
    Several,
    Unknown,
}

impl fmt::Debug for Currency {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.code)
    }
}

impl fmt::Display for Currency {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.code)
    }
}
