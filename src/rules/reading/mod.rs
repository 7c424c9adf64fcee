//! What must read well: a revision, no name that leads nowhere.

pub mod no_revision;
pub mod unused_name;

super::rules! {
    Always no_revision
    Complete unused_name
}
