//! Amounts as digits: in any unit, with any marks, without a digit lost.

use super::axes::{Mark, Thousands, axis};

/// Millionths of mg/kg.
pub type Micro = i64;

axis! {
    /// How amounts are counted.
    Unit {
        /// mg/kg.
        MgPerKg => "mg/kg",
        /// ppm.
        Ppm => "ppm",
        /// Percent.
        Percent => "%",
        /// Percent by weight.
        WeightPercent => "wt%",
        /// g/kg.
        GramPerKg => "g/kg",
        /// ug/g with a Greek letter.
        MicrogramPerGram => "µg/g",
        /// Per mille.
        PerMille => "‰",
        /// ppb.
        Ppb => "ppb",
    }
}

impl Unit {
    /// Decimals that a millionth of mg/kg needs.
    const fn decimals(self) -> usize {
        match self {
            Unit::MgPerKg | Unit::Ppm | Unit::MicrogramPerGram => 6,
            Unit::Percent | Unit::WeightPercent => 10,
            Unit::GramPerKg | Unit::PerMille => 9,
            Unit::Ppb => 3,
        }
    }

    /// An amount in this unit.
    pub fn write(self, amount: Micro, mark: Mark, thousands: Thousands) -> String {
        write(amount, self.decimals(), mark, thousands)
    }
}

/// A whole number of the last decimal, without zeros at its end.
pub fn write(amount: i64, decimals: usize, mark: Mark, thousands: Thousands) -> String {
    let digits = format!("{:0width$}", amount.unsigned_abs(), width = decimals + 1);
    let (whole, part) = digits.split_at(digits.len() - decimals);
    let (decimal, other) = match mark {
        Mark::Point => ('.', ","),
        Mark::Comma => (',', "."),
    };
    let between = match thousands {
        Thousands::None => "",
        Thousands::Space => " ",
        Thousands::ThinSpace => "\u{2009}",
        Thousands::NoBreakSpace => "\u{A0}",
        Thousands::Apostrophe => "'",
        Thousands::OtherMark => other,
    };
    let mut text = if amount < 0 { "-".to_owned() } else { String::new() };
    for (at, digit) in whole.chars().enumerate() {
        if at > 0 && (whole.len() - at) % 3 == 0 {
            text += between;
        }
        text.push(digit);
    }
    let part = part.trim_end_matches('0');
    if !part.is_empty() {
        text.push(decimal);
        text += part;
    }
    text
}

/// Atomic weights in ten-thousandths and atoms of element and oxygen: Cd, Pb, Hg, Cr (IUPAC abridged standard atomic
/// weights 2021, from memory); written once more here, so that a slip in the program's table shows.
pub fn oxide(symbol: &str) -> Option<(&'static str, i128, i128)> {
    let oxygen = 159_990;
    let of = |formula, weight: i128, atoms: i128, oxygens: i128| {
        Some((formula, weight * atoms, weight * atoms + oxygen * oxygens))
    };
    match symbol {
        "Cd" => of("CdO", 1_124_140, 1, 1),
        "Pb" => of("PbO", 2_072_000, 1, 1),
        "Hg" => of("HgO", 2_005_920, 1, 1),
        "Cr" => of("Cr2O3", 519_961, 2, 3),
        _ => None,
    }
}

/// The amount of oxide that holds this amount of the element, to the nearest millionth.
pub fn as_oxide(amount: Micro, symbol: &str) -> Micro {
    let Some((_, share, whole)) = oxide(symbol) else { return amount };
    let times_share = i128::from(amount) * whole;
    i64::try_from((times_share + times_share.signum() * share / 2) / share).expect("an amount")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_amount_is_spelt_exactly_with_any_marks() {
        assert_eq!(Unit::MgPerKg.write(1_250_500_000, Mark::Comma, Thousands::OtherMark), "1.250,5");
        assert_eq!(Unit::Percent.write(640_000_000, Mark::Point, Thousands::None), "0.064");
        assert_eq!(Unit::Ppb.write(1_250_500_000, Mark::Point, Thousands::Apostrophe), "1'250'500");
        assert_eq!(Unit::PerMille.write(-500_000, Mark::Comma, Thousands::Space), "-0,0005");
        // 207.2 of 223.199 parts of PbO are lead.
        assert_eq!(as_oxide(207_200_000, "Pb"), 223_199_000);
    }
}
