//! The declaration of a sheet.

/// Declares a sheet and the rows of its lists: the structs, how they are read, and the table of their fields.
///
/// The first struct names its sheet; the others are rows. A field is `name: Given<Type> = form`, a list is `name: Vec<RowStruct>`,
/// and rows may hold lists in turn. Each struct gets a `key` besides: its own path (`gearing`, `gearing/gears/2`).
///
/// | the field's type | its form |
/// | --- | --- |
/// | `Given<Length>` or any other quantity | `number("L", Kind::Length)`, `count("n")` |
/// | `Given<Rc<str>>` | `text()`, or `one_of("paint/systems")` for the id of a row of that list |
/// | `Given<&'static str>` | `choice(&["radial", "diagonal"])` |
/// | `Given<bool>` | `yes_no()` |
/// | `Given<Money>` | `money()`, or `price()` for a unit price |
/// | `Given<MoneyReading>` | the same, where a bare amount takes the currency of its line |
/// | `Given<Decimal>` | `decimal(3)` for an exact number with three places at most |
/// | `Given<Date>` | `date()` |
///
/// Limits are in SI units. See the crate's front page for a worked example.
#[macro_export]
macro_rules! sheet {
    ($(
        $(#[$meta:meta])*
        pub struct $Name:ident $(= $sheet:literal)? {
            $($(#[$field_meta:meta])* $field:ident : $ty:ty $(= $form:expr)?),* $(,)?
        }
    )+) => {$(
        $(#[$meta])*
        #[derive(Debug, Clone)]
        pub struct $Name {
            /// Where it stands in the book.
            pub key: $crate::Key,
            $($(#[$field_meta])* pub $field: $ty,)*
        }

        impl $crate::Row for $Name {
            const SPEC: &'static $crate::Spec = &$crate::Spec {
                items: &[$($crate::Item::of(
                    stringify!($field),
                    const { &[$($form.named(stringify!($field)))?] as &'static [$crate::Field] },
                    <$ty as $crate::Part>::ROW,
                    <$ty as $crate::Part>::ALWAYS,
                    <$ty as $crate::Part>::PRESET,
                )),*],
            };

            fn read_at(reader: &mut $crate::Reader<'_>, at: $crate::Key) -> Self {
                let mut items = Self::SPEC.items.iter();
                Self {
                    $($field: <$ty as $crate::Part>::next(reader, &at, &mut items),)*
                    key: at,
                }
            }
        }

        impl $Name {
            /// The row's id: the last part of its key.
            #[must_use]
            pub fn id(&self) -> &str {
                self.key.field()
            }
        }

        $(impl $crate::Sheet for $Name {
            const NAME: &'static str = $sheet;
        })?
    )+};
}
