//! `--paper`: the pages of a plan, in place of those it names.

use std::path::{Path, PathBuf};

use clap::ValueEnum;
use clap::builder::PossibleValue;

use crate::build::{Paper, Sheet};

/// The pages of a document.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum PaperArgument {
    /// 210 by 297 mm
    #[value(name = "A4")]
    A4,
    /// 8-1/2 by 11 in
    #[value(name = "Letter")]
    Letter,
    /// 297 by 420 mm
    #[value(name = "A3")]
    A3,
    /// 11 by 17 in
    #[value(name = "Tabloid")]
    Tabloid,
    /// 90 by 180 mm, for reading on a phone
    #[value(name = "phone")]
    Phone,
    /// 165 by 220 mm, for reading on a tablet
    #[value(name = "tablet")]
    Tablet,
}

impl From<PaperArgument> for Paper {
    fn from(paper: PaperArgument) -> Self {
        match paper {
            PaperArgument::A4 => Self::A4,
            PaperArgument::Letter => Self::Letter,
            PaperArgument::A3 => Self::A3,
            PaperArgument::Tabloid => Self::Tabloid,
            PaperArgument::Phone => Self::Phone,
            PaperArgument::Tablet => Self::Tablet,
        }
    }
}

/// The pages of a plan, or two plans at once.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum PapersArgument {
    /// One plan.
    One(PaperArgument),
    /// Two files, on A4 and on Letter.
    Both,
}

impl ValueEnum for PapersArgument {
    fn value_variants<'a>() -> &'a [Self] {
        use PaperArgument::{A3, A4, Letter, Phone, Tablet, Tabloid};
        const ALL: [PapersArgument; 7] = [
            PapersArgument::One(A4),
            PapersArgument::One(Letter),
            PapersArgument::One(A3),
            PapersArgument::One(Tabloid),
            PapersArgument::One(Phone),
            PapersArgument::One(Tablet),
            PapersArgument::Both,
        ];
        &ALL
    }

    fn to_possible_value(&self) -> Option<PossibleValue> {
        match self {
            Self::One(paper) => paper.to_possible_value(),
            Self::Both => Some(PossibleValue::new("both").help("Two files, on A4 and on Letter")),
        }
    }
}

/// The one sheet of a template.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum SheetArgument {
    /// 210 by 297 mm
    #[value(name = "A4")]
    A4,
    /// 8-1/2 by 11 in
    #[value(name = "Letter")]
    Letter,
    /// 297 by 420 mm
    #[value(name = "A3")]
    A3,
    /// 11 by 17 in
    #[value(name = "Tabloid")]
    Tabloid,
    /// 420 by 594 mm
    #[value(name = "A2")]
    A2,
    /// 17 by 22 in
    #[value(name = "ANSI_C")]
    AnsiC,
    /// 594 by 841 mm
    #[value(name = "A1")]
    A1,
    /// 22 by 34 in
    #[value(name = "ANSI_D")]
    AnsiD,
    /// 841 by 1189 mm
    #[value(name = "A0")]
    A0,
    /// 34 by 44 in
    #[value(name = "ANSI_E")]
    AnsiE,
}

impl From<SheetArgument> for Sheet {
    fn from(sheet: SheetArgument) -> Self {
        match sheet {
            SheetArgument::A4 => Self::A4,
            SheetArgument::Letter => Self::Letter,
            SheetArgument::A3 => Self::A3,
            SheetArgument::Tabloid => Self::Tabloid,
            SheetArgument::A2 => Self::A2,
            SheetArgument::AnsiC => Self::AnsiC,
            SheetArgument::A1 => Self::A1,
            SheetArgument::AnsiD => Self::AnsiD,
            SheetArgument::A0 => Self::A0,
            SheetArgument::AnsiE => Self::AnsiE,
        }
    }
}

impl PapersArgument {
    /// Each paper with the file it goes to: with several, each is named in its file's name.
    pub(super) fn outputs(asked: Option<Self>, own: Paper, output: &Path) -> Vec<(Paper, PathBuf)> {
        let paper = match asked {
            None => own,
            Some(Self::One(paper)) => paper.into(),
            Some(Self::Both) => {
                let beside = |paper| (paper, named(output, paper));
                return vec![beside(Paper::A4), beside(Paper::Letter)];
            }
        };
        vec![(paper, output.to_owned())]
    }
}

/// `plan.pdf` as `plan-A4.pdf`.
fn named(output: &Path, paper: Paper) -> PathBuf {
    let mut name = output.file_stem().unwrap_or_default().to_owned();
    name.push("-");
    name.push(paper.word());
    if let Some(ending) = output.extension() {
        name.push(".");
        name.push(ending);
    }
    output.with_file_name(name)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn two_plans_stand_beside_each_other() {
        let both = PapersArgument::outputs(
            Some(PapersArgument::Both),
            Paper::A3,
            Path::new("out/plan.v2.pdf"),
        );
        let names: Vec<String> = both
            .iter()
            .map(|(_, path)| path.display().to_string())
            .collect();
        assert_eq!(names, ["out/plan.v2-A4.pdf", "out/plan.v2-Letter.pdf"]);
        let one = PapersArgument::outputs(None, Paper::A3, Path::new("plan"));
        assert_eq!(one, [(Paper::A3, PathBuf::from("plan"))]);
    }
}
