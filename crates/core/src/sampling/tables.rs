//! The tables of MIL-STD-105E, read from their file.

use super::{Level, Severity};

const TABLES: &str = include_str!("../../data/mil105e.txt");

/// A plan of the tables, arrows followed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TablePlan {
    /// The letter the plan stands at, which is another than that of the lot where an arrow led to it.
    pub letter: char,
    /// How many units to take.
    pub n: u64,
    /// Acceptance number.
    pub ac: u32,
    /// Rejection number.
    pub re: u32,
}

/// The lines of one table.
fn table(name: &str) -> impl Iterator<Item = &'static str> {
    let head = |line: &str| line.strip_prefix('[').and_then(|rest| rest.strip_suffix(']')) == Some(name);
    TABLES.lines().skip_while(move |line| !head(line)).skip(1).take_while(|line| !line.starts_with('['))
}

fn words_of(name: &str) -> impl Iterator<Item = &'static str> {
    table("I").find_map(|line| line.strip_prefix(name)).unwrap_or("").split_ascii_whitespace()
}

/// The AQLs that have a column, as the tables head them.
pub fn aqls() -> impl Iterator<Item = &'static str> {
    words_of("aql ")
}

/// True where an AQL is a percentage of nonconforming units; above 10 it counts nonconformities per hundred units, of which
/// one unit may have several.
pub fn counts_units(aql: &str) -> bool {
    aqls().position(|known| known == aql) <= aqls().position(|known| known == "10")
}

/// The code letter of a lot size, by Table I; `None` below two units.
pub fn code_letter(lot_size: u64, level: Level) -> Option<char> {
    let rows = table("I").filter_map(|line| {
        let (from, letters) = line.split_once(' ')?;
        Some((from.parse::<u64>().ok()?, letters))
    });
    let (_, letters) = rows.take_while(|(from, _)| *from <= lot_size).last()?;
    letters.chars().nth(level as usize)
}

/// The plan of a code letter, by Table II-A, II-B or II-C: where there is an arrow, the next plan in its direction, with its
/// own sample size. `None` for an AQL or letter the table doesn't have.
pub fn plan_of_letter(letter: char, severity: Severity, aql: &str) -> Option<TablePlan> {
    let column = aqls().position(|known| known == aql)?;
    let name = match severity {
        Severity::Normal => "II-A",
        Severity::Tightened => "II-B",
        Severity::Reduced => "II-C",
    };
    let row_of = |line: &'static str| {
        let mut words = line.split_ascii_whitespace();
        let letter = words.next()?.chars().next()?;
        Some((letter, words.next()?.parse().ok()?, words.next()?.chars().nth(column)?))
    };
    let rows: Vec<(char, u64, char)> = table(name).filter_map(row_of).collect();
    let mut at = rows.iter().position(|(known, _, _)| *known == letter)?;
    loop {
        let (letter, n, cell) = *rows.get(at)?;
        at = match cell {
            'v' => at + 1,
            '^' => at.checked_sub(1)?,
            plan => {
                let found = words_of("plans ").find_map(|word| word.strip_prefix(plan)?.strip_prefix('='));
                let (ac, re) = found?.split_once('/')?;
                return Some(TablePlan { letter, n, ac: ac.parse().ok()?, re: re.parse().ok()? });
            }
        };
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_begin_at_two_units_and_have_no_end() {
        assert_eq!(code_letter(1, Level::II), None);
        assert_eq!(code_letter(2, Level::II), Some('A'));
        assert_eq!(code_letter(8, Level::III), Some('B'));
        assert_eq!(code_letter(9, Level::III), Some('C'));
        assert_eq!(code_letter(480, Level::II), Some('H'));
        assert_eq!(code_letter(1_000_000_000, Level::S4), Some('K'));
    }

    /// Source: MIL-STD-105E, Table II-B, whose last row is there for one plan only.
    #[test]
    fn arrows_lead_to_a_plan_with_its_own_size() {
        let plan = plan_of_letter('R', Severity::Tightened, "0.025").unwrap();
        assert_eq!(plan, TablePlan { letter: 'S', n: 3150, ac: 1, re: 2 });
        let plan = plan_of_letter('B', Severity::Normal, "1.0").unwrap();
        assert_eq!(plan, TablePlan { letter: 'E', n: 13, ac: 0, re: 1 });
        assert_eq!(plan_of_letter('B', Severity::Normal, "1.1"), None);
        assert_eq!(plan_of_letter('I', Severity::Normal, "1.0"), None);
        assert!(counts_units("0.010") && counts_units("10") && !counts_units("15"));
    }

    #[test]
    fn every_cell_of_every_letter_leads_to_a_plan() {
        let mut plans = 0;
        for severity in Severity::ALL {
            for aql in aqls() {
                for letter in "ABCDEFGHJKLMNPQR".chars() {
                    let plan = plan_of_letter(letter, *severity, aql);
                    plans += usize::from(plan.is_some_and(|plan| plan.ac < plan.re && plan.n > 1));
                }
            }
        }
        assert_eq!(plans, 3 * 16 * 26);
    }
}
