//! What is kept in this browser: the store of its books, the locks on them, and who keeps what is entered. Only this
//! module touches the browser's storage.

mod channel;
mod keeper;
mod local;
mod locks;

pub use keeper::{Keeper, keeper};
