//! What the numbers of colours mean: sRGB (IEC 61966-2-1), said by a profile in the file itself (output
//! intent, ISO 32000-1, 14.11.5), as a plan that is kept for years needs.

use lopdf::{Document, Object, Stream, StringFormat, dictionary};

/// A profile of ISO 15076-1:2005; `tests/kernel/srgb_profile.py` says how it was made.
const SRGB: &[u8] = include_bytes!("../../templates/colours/srgb.icc");
/// Its name in the registry of the International Color Consortium.
const NAME: &[u8] = b"sRGB IEC61966-2.1";

/// Adds the profile; the catalog's list of output intents.
pub(super) fn intents(document: &mut Document) -> Object {
    // Red, green and blue; grey is taken for what the three are together.
    let about = dictionary! { "N" => 3 };
    let profile = document.add_object(Stream::new(about, SRGB.to_vec()));
    let name = Object::String(NAME.to_vec(), StringFormat::Literal);
    let intent = document.add_object(dictionary! {
        "Type" => "OutputIntent",
        // The subtype that ISO 19005 asks for in all of its parts.
        "S" => "GTS_PDFA1",
        "OutputConditionIdentifier" => name.clone(),
        "Info" => name,
        "RegistryName" => Object::String(b"http://www.color.org".to_vec(), StringFormat::Literal),
        "DestOutputProfile" => profile,
    });
    Object::Array(vec![Object::Reference(intent)])
}
