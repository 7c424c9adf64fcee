//! Drawings.

mod fills;
mod front;
mod grid;
mod hidden_lines;
mod layout;
mod merge;
mod scene;
pub mod scenes;
mod view;

pub use fills::{VisibleFill, visible_fills};
pub use hidden_lines::{VisibleLine, drawn_lines, visible_lines};
pub use layout::cutting_layouts;
pub use scene::{BodyId, EdgeKind, Scene, SceneEdge, SceneFace};
pub use view::{View, ViewPoint, WorldPoint};
