//! What is kept in this browser: the store of its books, the locks on them, and who keeps what is entered. Only this
//! module touches the browser's storage.

mod books;
mod channel;
mod keeper;
mod local;
mod locks;
mod tabs;

pub use keeper::{Keeper, keeper};
