//! The one invented table, and what is true of it.

use super::amounts::Micro;

/// The elements of the table, in the order of its columns.
pub const ELEMENTS: [&str; 6] = ["Cd", "Pb", "Hg", "Cr", "Br", "Cl"];

/// What is true of one element in one reading. Amounts are millionths of mg/kg.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Truth {
    /// A number with one standard uncertainty, which is this many hundredths of a percent of it.
    Number(Micro, i64),
    /// Zero, without an uncertainty.
    Zero,
    /// Below this.
    Below(Micro),
    /// Not detected, without a limit.
    NotDetected,
    /// Above this.
    Above(Micro),
    /// Not measured.
    Blank,
}

impl Truth {
    /// One standard uncertainty.
    pub fn sigma(self) -> Micro {
        match self {
            Truth::Number(value, share) => value / 10_000 * share,
            _ => 0,
        }
    }
}

/// One reading.
#[derive(Clone, Copy, Debug)]
pub struct Reading {
    /// Sample id.
    pub id: &'static str,
    /// Part.
    pub part: &'static str,
    /// Lot.
    pub lot: &'static str,
    /// Spot.
    pub spot: &'static str,
    /// Moment, as ISO 8601 writes it.
    pub moment: &'static str,
    /// Measuring seconds.
    pub seconds: &'static str,
    /// One for each of [`ELEMENTS`].
    pub cells: [Truth; 6],
}

/// Hundredths of mg/kg.
const fn n(hundredths: i64, share: i64) -> Truth {
    Truth::Number(hundredths * 10_000, share)
}

const fn below(hundredths: i64) -> Truth {
    Truth::Below(hundredths * 10_000)
}

const ND: Truth = Truth::NotDetected;
const NONE: Truth = Truth::Blank;
const ZERO: Truth = Truth::Zero;
/// Beyond the range of the instrument.
const OVER: Truth = Truth::Above(50_000_500_000);

/// The readings. Numbers of a thousand and more have decimals, so that a comma or a point before their last three
/// digits can be nothing but a thousands mark; some days are past the twelfth, so that days are told from months.
pub const READINGS: [Reading; 12] = [
    Reading {
        id: "FB-0001",
        part: "P-100",
        lot: "L-21",
        spot: "1",
        moment: "2026-03-04T08:05:00",
        seconds: "60",
        cells: [n(4_250, 400), n(64_000, 250), n(1_250, 800), n(8_500, 400), n(28_550, 200), n(120_050, 200)],
    },
    Reading {
        id: "FB-0001",
        part: "P-100",
        lot: "L-21",
        spot: "2",
        moment: "2026-03-04T08:07:30",
        seconds: "60",
        cells: [below(500), n(65_050, 200), ND, n(9_075, 400), n(30_000, 250), n(125_550, 200)],
    },
    Reading {
        id: "FB-0002",
        part: "P-100",
        lot: "L-21",
        spot: "1",
        moment: "2026-03-14T09:11:12",
        seconds: "30",
        cells: [ND, ZERO, below(250), NONE, OVER, n(51_225, 400)],
    },
    Reading {
        id: "FB-0003",
        part: "P-200",
        lot: "L-22",
        spot: "1",
        moment: "2026-03-14T09:20:00",
        seconds: "30",
        cells: [below(80), n(1_234_550, 200), below(500), n(12_800_075, 100), n(950, 1000), NONE],
    },
    Reading {
        id: "FB-0004",
        part: "P-200",
        lot: "L-22",
        spot: "1",
        moment: "2026-03-14T09:31:45",
        seconds: "45",
        cells: [n(125, 2_000), NONE, NONE, n(250, 1_000), below(1_000), ND],
    },
    Reading {
        id: "FB-0005",
        part: "P-200",
        lot: "L-22",
        spot: "3",
        moment: "2026-03-15T10:00:00",
        seconds: "45",
        cells: [ZERO, ZERO, ZERO, ZERO, ZERO, ZERO],
    },
    Reading {
        id: "FB-0006",
        part: "P-300",
        lot: "L-22",
        spot: "1",
        moment: "2026-03-15T10:04:10",
        seconds: "120",
        cells: [
            n(6_850, 200),
            n(98_750, 160),
            n(64_025, 320),
            n(72_500, 120),
            n(24_075, 400),
            n(89_950, 240),
        ],
    },
    Reading {
        id: "FB-0007",
        part: "P-300",
        lot: "L-23",
        spot: "1",
        moment: "2026-03-15T10:09:59",
        seconds: "120",
        cells: [OVER, ND, n(33, 10_000), below(450), n(6, 5_000), below(12_500)],
    },
    Reading {
        id: "FB-0008",
        part: "P-300",
        lot: "L-23",
        spot: "1",
        moment: "2026-03-16T11:00:00",
        seconds: "120",
        cells: [
            n(9_975, 80),
            n(104_025, 120),
            n(102_550, 160),
            n(50_550, 160),
            n(91_125, 80),
            n(149_975, 40),
        ],
    },
    Reading {
        id: "FB-0009",
        part: "P-300",
        lot: "L-23",
        spot: "2",
        moment: "2026-03-16T11:02:30",
        seconds: "60",
        cells: [NONE, below(550), ND, ND, NONE, n(17_525, 400)],
    },
    Reading {
        id: "FB-0010",
        part: "P-400",
        lot: "L-24",
        spot: "1",
        moment: "2026-03-17T07:45:00",
        seconds: "60",
        cells: [below(500), below(500), below(500), n(17_250, 400), below(300), NONE],
    },
    Reading {
        id: "FB-0011",
        part: "P-400",
        lot: "L-24",
        spot: "1",
        moment: "2026-03-17T23:59:59",
        seconds: "60",
        cells: [
            n(13_050, 200),
            n(70_075, 240),
            n(70_000, 100),
            n(69_950, 200),
            n(150_075, 120),
            n(90_025, 400),
        ],
    },
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_uncertainty_is_whole_in_every_factor_and_as_a_share() {
        for reading in READINGS {
            for cell in reading.cells {
                if let Truth::Number(value, share) = cell {
                    assert_eq!(value % 10_000, 0, "{cell:?}");
                    assert_eq!(cell.sigma() * 196 % 100, 0, "{cell:?}");
                    assert_eq!(value * share % 10_000, 0, "{cell:?}");
                    assert!(value < 1_000_000_000 || value % 1_000_000 != 0, "{cell:?}");
                }
            }
        }
    }
}
