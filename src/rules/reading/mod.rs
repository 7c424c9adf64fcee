//! What must read well: a revision, no name that leads nowhere.

pub mod letters_out_of_order;
pub mod no_revision;
pub mod revision_without_note;
pub mod revisions_out_of_order;
pub mod template_never_made;
pub mod unused_name;

super::rules! {
    Always no_revision
    Complete unused_name
    Always revision_without_note
    Always revisions_out_of_order
    Complete letters_out_of_order
    Complete template_never_made
}
