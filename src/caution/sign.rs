//! The safety signs a plan may show, one line each.

use serde::Serialize;

/// What a sign tells, and with that its outer shape (ISO 3864-1 [M]).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SignKind {
    /// What must be done: a full disc.
    Mandatory,
    /// What must not be done: a ring with a bar across.
    Prohibition,
    /// What is dangerous: a triangle.
    Warning,
}

macro_rules! signs {
    ($($(#[$doc:meta])+ $name:ident: $kind:ident $code:literal;)+) => {
        /// A safety sign (ISO 7010; ref: safety, "Sign codes"). The code's letter is its kind.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
        #[serde(rename_all = "snake_case")]
        pub enum Sign {
            $($(#[$doc])+ $name,)+
        }

        impl Sign {
            /// Every sign there is, in order.
            pub const ALL: &[Self] = &[$(Self::$name),+];

            /// What it tells.
            pub const fn kind(self) -> SignKind {
                match self {
                    $(Self::$name => SignKind::$kind,)+
                }
            }

            /// Its code: `M004`.
            pub const fn code(self) -> &'static str {
                match self {
                    $(Self::$name => $code,)+
                }
            }

        }
    };
}

signs! {
    /// Read the instruction manual. [M]
    Manual: Mandatory "M002";
    /// Wear ear protection. [V]
    Ears: Mandatory "M003";
    /// Wear eye protection. [V]
    Eyes: Mandatory "M004";
    /// Wear safety footwear. [M]
    Feet: Mandatory "M008";
    /// Wear protective gloves. [M] Never near a turning blade or bit.
    Gloves: Mandatory "M009";
    /// Wear a mask. [M]
    Mask: Mandatory "M016";
    /// No open flame. [V]
    NoFlame: Prohibition "P003";
    /// Do not wear gloves. [M]
    NoGloves: Prohibition "P028";
    /// Electricity. [M]
    Electricity: Warning "W012";
    /// Crushing of hands. [M]
    CrushedHands: Warning "W024";
}

impl Sign {
    /// True for what is put on, and stays on while the work lasts.
    pub fn is_worn(self) -> bool {
        self.kind() == SignKind::Mandatory && self != Self::Manual
    }

    /// The name of its figure, and of the message that tells what it means: `sign-M004`.
    pub fn figure(self) -> String {
        format!("sign-{}", self.code())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Words;

    #[test]
    fn every_sign_says_what_it_means() {
        for sign in Sign::ALL {
            assert!(
                Words::english().say(&sign.figure(), &[]).is_ok(),
                "{sign:?}"
            );
        }
    }

    #[test]
    fn a_code_is_the_letter_of_its_kind_and_three_digits() {
        for sign in Sign::ALL {
            let letter = match sign.kind() {
                SignKind::Mandatory => 'M',
                SignKind::Prohibition => 'P',
                SignKind::Warning => 'W',
            };
            let digits = sign.code().strip_prefix(letter).unwrap();
            assert!(digits.len() == 3 && digits.chars().all(|c| c.is_ascii_digit()));
        }
        assert!(Sign::ALL.is_sorted_by(|a, b| a.code() < b.code()));
    }
}
