//! Plans of any size.
