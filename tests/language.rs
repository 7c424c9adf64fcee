//! The language's reference: its examples are read.
