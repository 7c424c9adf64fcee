//! What the file says of itself: the information dictionary and the same as XMP.

use lopdf::{Dictionary, Object, Stream, StringFormat, dictionary};

use super::date::Date;
use crate::page::Pages;

/// The program's name and version.
const CREATOR: &str = concat!("Leafwright ", env!("CARGO_PKG_VERSION"));

/// Text as PDF writes it: plain where it is ASCII, otherwise UTF-16 with a byte order mark.
pub(super) fn text(text: &str) -> Object {
    if text.is_ascii() {
        return Object::String(text.as_bytes().to_vec(), StringFormat::Literal);
    }
    let mut bytes = vec![0xfe, 0xff];
    for unit in text.encode_utf16() {
        bytes.extend(unit.to_be_bytes());
    }
    Object::String(bytes, StringFormat::Hexadecimal)
}

/// The information dictionary.
pub(super) fn information(pages: &Pages<'_>, date: Option<Date>) -> Dictionary {
    let mut information = dictionary! {
        "Title" => text(&pages.title),
        "Creator" => text(CREATOR),
        "Producer" => text(CREATOR),
    };
    if !pages.author.is_empty() {
        information.set("Author", text(&pages.author));
    }
    if let Some(date) = date {
        information.set("CreationDate", text(&date.pdf()));
        information.set("ModDate", text(&date.pdf()));
    }
    information
}

/// That the file keeps to PDF/UA-1 and to PDF/A-2a. PDF/A asks that whatever it does not know itself is
/// described: the schema of PDF/UA.
const CLAIMS: &str = "   \
    <pdfuaid:part>1</pdfuaid:part>\n   \
    <pdfaid:part>2</pdfaid:part>\n   \
    <pdfaid:conformance>A</pdfaid:conformance>\n   \
    <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType=\"Resource\">\n    \
    <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>\n    \
    <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>\n    \
    <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>\n    \
    <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType=\"Resource\">\n     \
    <pdfaProperty:name>part</pdfaProperty:name>\n     \
    <pdfaProperty:valueType>Integer</pdfaProperty:valueType>\n     \
    <pdfaProperty:category>internal</pdfaProperty:category>\n     \
    <pdfaProperty:description>The part of ISO 14289 that the file keeps to</pdfaProperty:description>\n    \
    </rdf:li></rdf:Seq></pdfaSchema:property>\n   \
    </rdf:li></rdf:Bag></pdfaExtension:schemas>\n";

/// The same as an XMP packet (ISO 16684-1), which is never compressed, and which standards the file keeps to.
pub(super) fn packet(pages: &Pages<'_>, date: Option<Date>) -> Stream {
    let title = escaped(&pages.title);
    let language = escaped(language(pages));
    let author = if pages.author.is_empty() {
        String::new()
    } else {
        let author = escaped(&pages.author);
        format!("   <dc:creator><rdf:Seq><rdf:li>{author}</rdf:li></rdf:Seq></dc:creator>\n")
    };
    let dates = date.map_or_else(String::new, |date| {
        let date = date.xmp();
        format!(
            "   <xmp:CreateDate>{date}</xmp:CreateDate>\n   <xmp:ModifyDate>{date}</xmp:ModifyDate>\n   <xmp:MetadataDate>{date}</xmp:MetadataDate>\n"
        )
    });
    let packet = format!(
        "<?xpacket begin=\"\u{feff}\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n\
         <x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n \
         <rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n  \
         <rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\" \
         xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\" \
         xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\" \
         xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\" \
         xmlns:pdfaExtension=\"http://www.aiim.org/pdfa/ns/extension/\" \
         xmlns:pdfaSchema=\"http://www.aiim.org/pdfa/ns/schema#\" \
         xmlns:pdfaProperty=\"http://www.aiim.org/pdfa/ns/property#\">\n\
         {CLAIMS}   \
         <dc:format>application/pdf</dc:format>\n   \
         <dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">{title}</rdf:li></rdf:Alt></dc:title>\n   \
         <dc:language><rdf:Bag><rdf:li>{language}</rdf:li></rdf:Bag></dc:language>\n\
         {author}{dates}   \
         <xmp:CreatorTool>{CREATOR}</xmp:CreatorTool>\n   \
         <pdf:Producer>{CREATOR}</pdf:Producer>\n  \
         </rdf:Description>\n </rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>"
    );
    let about = dictionary! { "Type" => "Metadata", "Subtype" => "XML" };
    Stream::new(about, packet.into_bytes()).with_compression(false)
}

/// The document's language, English where it names none.
pub(super) fn language<'p>(pages: &'p Pages<'_>) -> &'p str {
    if pages.language.is_empty() {
        "en"
    } else {
        &pages.language
    }
}

/// Text that is safe inside of XML; characters XML has no place for are left out.
fn escaped(text: &str) -> String {
    let mut escaped = String::with_capacity(text.len());
    for character in text.chars() {
        match character {
            '&' => escaped.push_str("&amp;"),
            '<' => escaped.push_str("&lt;"),
            '>' => escaped.push_str("&gt;"),
            '"' => escaped.push_str("&quot;"),
            '\u{fffe}' | '\u{ffff}' => {}
            c if c.is_control() => escaped.push(' '),
            c => escaped.push(c),
        }
    }
    escaped
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn xml_is_escaped_and_text_is_encoded() {
        assert_eq!(escaped("a<b>&\"c\"\u{1}"), "a&lt;b&gt;&amp;&quot;c&quot; ");
        assert_eq!(
            text("a"),
            Object::String(b"a".to_vec(), StringFormat::Literal)
        );
        let wide = Object::String(vec![0xfe, 0xff, 0, 0xfc], StringFormat::Hexadecimal);
        assert_eq!(text("ü"), wide);
    }
}
