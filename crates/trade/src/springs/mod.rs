//! Semi-elliptic leaf springs.
