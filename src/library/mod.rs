//! The shipped library `std`: what makers use again and again, described in the language itself.
//!
//! Texts alone, handed in like any other source; nothing here is read from a disk.

/// How its file is called in messages.
pub const STD: &str = "std";

/// The texts of `std`, in the order in which they make one file.
const TEXTS: &[&str] = &[
    include_str!("std/library.wright"),
    include_str!("std/sheets.wright"),
    include_str!("std/lumber.wright"),
    include_str!("std/fasteners.wright"),
    include_str!("std/drawers.wright"),
    include_str!("std/frames.wright"),
    include_str!("std/supports.wright"),
];

/// The text of `std`.
pub fn std_text() -> String {
    TEXTS.join("\n")
}
