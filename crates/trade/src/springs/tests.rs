//! Tests of the springs as sentences.
