//! Tables for other programs, written by the command and read back by another reader.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use std::process::Command;

const EXAMPLES: [&str; 2] = [
    "examples/potting-bench/potting-bench.wright",
    "examples/seed-cabinet/seed-cabinet.wright",
];
const TABLES: [&str; 4] = ["cut-list", "hardware", "layout", "purchases"];

fn exported(table: &str, file: &str, format: &str) -> String {
    let output = Command::new(env!("CARGO_BIN_EXE_leafwright"))
        .args(["export", table, file, "--format", format])
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .output()
        .unwrap();
    assert!(output.status.success(), "{table} {file}");
    String::from_utf8(output.stdout).unwrap()
}

/// Rows by column, as another program reads them.
fn rows(text: &str) -> Vec<BTreeMap<String, String>> {
    let text = text.strip_prefix('\u{feff}').unwrap();
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    reader.deserialize().map(Result::unwrap).collect()
}

#[test]
fn every_table_is_rfc_4180_and_says_what_its_json_says() {
    for file in EXAMPLES {
        for table in TABLES {
            let csv = exported(table, file, "csv");
            // A byte order mark, and every line ends in CRLF (RFC 4180, section 2, rule 1).
            assert!(csv.starts_with('\u{feff}'));
            assert!(csv.ends_with("\r\n"));
            assert_eq!(csv.matches('\n').count(), csv.matches("\r\n").count());
            let rows = rows(&csv);
            let json = exported(table, file, "json");
            let objects: Vec<serde_json::Map<String, serde_json::Value>> =
                serde_json::from_str(&json).unwrap();
            assert_eq!(rows.len(), objects.len());
            for (row, object) in rows.iter().zip(&objects) {
                assert!(row.keys().eq(object.keys()), "{table}");
                for (column, cell) in row {
                    let value = &object[column];
                    let value = if value.is_null() {
                        String::new()
                    } else {
                        value
                            .as_str()
                            .map_or_else(|| value.to_string(), str::to_owned)
                    };
                    let same = *cell == value
                        || cell
                            .parse::<f64>()
                            .ok()
                            .zip(value.parse().ok())
                            .is_some_and(|(a, b): (f64, f64)| a == b);
                    assert!(same, "{table} {column}: {cell} {value}");
                }
            }
        }
    }
}

#[test]
fn every_column_is_described() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("grammar/LANGUAGE.md");
    let text = fs::read_to_string(path).unwrap();
    let described = text.split("## Tables for other programs").nth(1).unwrap();
    for table in TABLES {
        let csv = exported(table, EXAMPLES[0], "csv");
        let head = csv.trim_start_matches('\u{feff}').lines().next().unwrap();
        for column in head.split(',') {
            assert!(
                described.contains(&format!("`{column}`")),
                "{table}: {column}"
            );
        }
    }
}

#[test]
fn umlauts_quotes_and_commas_come_through() {
    let text = r#"plan "Regal" { revision "A" on 2026-01-15 }
material ply is sheet { name "Birke, 18 mm"; thickness 18 mm; stock 2440 mm by 1220 mm price 79.00 EUR }
part side from ply "Türe \"links\", groß" { length 400 mm; width 200 mm; extra 2 }
"#;
    let folder = std::env::temp_dir().join(format!("leafwright-export-{}", std::process::id()));
    fs::create_dir_all(&folder).unwrap();
    let path = folder.join("regal.wright");
    fs::write(&path, text).unwrap();
    let rows = rows(&exported("cut-list", path.to_str().unwrap(), "csv"));
    assert_eq!(rows[0]["title"], "Türe \"links\", groß");
    assert_eq!(rows[0]["material"], "Birke, 18 mm");
    assert_eq!(rows[0]["pieces"], "2");
    // 400 mm are 15-3/4 in and 0.05 mm more: the printed inches are 0.05 mm too long.
    assert_eq!(rows[0]["length_in"], "15-3/4");
    assert_eq!(rows[0]["length_in_error_mm"], "0.05");
    fs::remove_dir_all(&folder).unwrap();
}

#[test]
fn the_tables_agree_with_each_other() {
    for file in EXAMPLES {
        let number =
            |row: &BTreeMap<String, String>, column: &str| -> i64 { row[column].parse().unwrap() };
        let mut blanks: BTreeMap<String, i64> = BTreeMap::new();
        for row in rows(&exported("cut-list", file, "csv")) {
            *blanks.entry(row["label"].clone()).or_default() += number(&row, "blanks");
        }
        let mut pieces: BTreeMap<String, i64> = BTreeMap::new();
        let mut sheets = std::collections::BTreeSet::new();
        for row in rows(&exported("layout", file, "csv")) {
            sheets.insert((row["material"].clone(), row["number"].clone()));
            if row["kind"] == "piece" {
                *pieces.entry(row["label"].clone()).or_default() += 1;
            }
        }
        assert_eq!(blanks, pieces, "{file}");
        let purchases = rows(&exported("purchases", file, "csv"));
        let of_kind = |kind: &str| -> Vec<&BTreeMap<String, String>> {
            purchases.iter().filter(|row| row["kind"] == kind).collect()
        };
        let cut = |kind, column| -> i64 {
            let lines = of_kind(kind);
            lines.iter().map(|row| number(row, column)).sum()
        };
        let cut = cut("stock", "buy") + cut("offcut", "needed");
        assert_eq!(cut, i64::try_from(sheets.len()).unwrap(), "{file}");
        for row in rows(&exported("hardware", file, "csv")) {
            let bought = of_kind("hardware")
                .into_iter()
                .find(|one| one["name"] == row["hardware"])
                .unwrap();
            assert_eq!(row["used"], bought["needed"]);
            assert!(
                number(bought, "buy") * number(bought, "pack")
                    >= number(bought, "needed") + number(bought, "spares")
            );
        }
    }
}
