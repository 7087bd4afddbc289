//! The invented table that is measured with: one ordinary shape, the same bytes every time, as long as one likes.
//!
//! The same shape and sequence as in `crates/intake/benches/pipeline.rs`, so that their figures speak of one thing.

use crate::Failure;
use std::fs::File;
use std::io::{BufWriter, Write};
use std::path::Path;

const ELEMENTS: [&str; 10] = ["Cd", "Pb", "Hg", "Cr", "Br", "Cl", "Cu", "Zn", "Fe", "Ti"];
const CLASSES: [&str; 3] = ["polymer", "metal", "composite"];

/// Writes a table of `rows` rows to `out`.
pub(crate) fn write(rows: u32, out: &Path) -> Result<(), Failure> {
    let cannot = |error: std::io::Error| format!("cannot write {}: {error}", out.display());
    if let Some(folder) = out.parent() {
        std::fs::create_dir_all(folder).map_err(cannot)?;
    }
    let mut sink = BufWriter::with_capacity(1 << 20, File::create(out).map_err(cannot)?);
    write_to(rows, &mut sink).and_then(|()| sink.flush()).map_err(cannot)
}

/// Ten elements with errors, a third of the cells below detection with the limit in the error cell, three classes.
fn write_to(rows: u32, sink: &mut impl Write) -> std::io::Result<()> {
    write!(sink, "Sample,Part,Material,Class,Lot,Supplier,Date,Seconds")?;
    for element in ELEMENTS {
        write!(sink, ",{element} mg/kg,{element} u (1s)")?;
    }
    writeln!(sink)?;
    let mut seed = 1_u32;
    let mut next = |below: u32| {
        // A linear congruential sequence (constants of ISO/IEC 9899:1999, 7.20.2.2): the same table every time.
        seed = seed.wrapping_mul(1_103_515_245).wrapping_add(12_345);
        (seed >> 8) % below
    };
    for row in 0..rows {
        // A material has one class; with several it would be contested, which is not the ordinary day.
        let class = CLASSES[(row % 120 % 3) as usize];
        let (part, material, lot, works) = (row % 50, row % 120, row % 40, row % 7);
        write!(sink, "S{row},P{part},M{material},{class},L{lot},Works {works},2026-11-25 08:00,30")?;
        for _ in ELEMENTS {
            if next(3) == 0 {
                write!(sink, ",<LOD,{}.{}", next(9), next(10))?;
            } else {
                write!(sink, ",{}.{},{}.{:02}", next(900), next(10), next(20), next(100))?;
            }
        }
        writeln!(sink)?;
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::{ELEMENTS, write_to};

    fn table(rows: u32) -> Vec<u8> {
        let mut bytes = Vec::new();
        write_to(rows, &mut bytes).expect("a Vec takes all bytes");
        bytes
    }

    #[test]
    fn every_row_has_a_cell_under_every_heading() {
        let text = String::from_utf8(table(200)).expect("text");
        let widths: Vec<usize> = text.lines().map(|line| line.split(',').count()).collect();
        assert_eq!(widths.len(), 201);
        assert!(widths.iter().all(|width| *width == 8 + 2 * ELEMENTS.len()));
    }

    #[test]
    fn a_longer_table_only_goes_on_where_the_shorter_one_ends() {
        let (short, long) = (table(50), table(80));
        assert!(long.starts_with(&short));
        assert!(long.len() > short.len());
    }

    #[test]
    fn about_a_third_of_the_cells_are_below_detection() {
        let text = String::from_utf8(table(1000)).expect("text");
        let censored = text.matches("<LOD").count();
        assert!((3000..3700).contains(&censored), "{censored} of 10000");
    }
}
