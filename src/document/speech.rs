//! What templates ask for words with: `say("buy-packs", packs=3)` and `date("2026-03-01")`.

use minijinja::value::{Kwargs, ValueKind};
use minijinja::{Environment, Error, ErrorKind, HtmlEscape, Value};

use crate::words::{Filling, Words};

/// Gives templates the words of a language.
pub(super) fn teach(engine: &mut Environment, words: &Words) {
    let own = words.clone();
    engine.add_function("say", move |id: &str, places: Kwargs| {
        say(&own, id, &places)
    });
    let own = words.clone();
    engine.add_function("date", move |day: &str| own.date(day));
}

/// A message of the catalogue, which may hold markup, with its places filled: with counts, by which it chooses
/// its form, with markup that templates made, and with text, which is escaped.
fn say(words: &Words, id: &str, places: &Kwargs) -> Result<Value, Error> {
    let mut fillings = Vec::new();
    // Names of the template language have no hyphens, and those of the catalogues no underscores.
    let names: Vec<String> = places.args().map(|name| name.replace('_', "-")).collect();
    for (name, place) in names.iter().zip(places.args()) {
        fillings.push((name.as_str(), filling(id, name, &places.get(place)?)?));
    }
    places.assert_all_used()?;
    let said = words.say(id, &fillings);
    said.map(Value::from_safe_string)
        .map_err(|fault| Error::new(ErrorKind::InvalidOperation, fault))
}

fn filling(id: &str, name: &str, value: &Value) -> Result<Filling, Error> {
    let kind = value.kind();
    if value.is_integer() {
        i64::try_from(value.clone()).map(Filling::Count)
    } else if kind == ValueKind::Number || (kind == ValueKind::String && value.is_safe()) {
        Ok(Filling::Words(value.to_string()))
    } else if kind == ValueKind::String {
        Ok(Filling::Words(HtmlEscape(&value.to_string()).to_string()))
    } else {
        let fault =
            format!("the place `{name}` of the message `{id}` takes words or a number, not {kind}");
        Err(Error::new(ErrorKind::InvalidOperation, fault))
    }
}
