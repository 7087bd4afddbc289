//! How much of the signal of a thick piece a thin one gives.
//!
//! share = 1 - exp(-4.605 t / t99), with t99 the thickness that gives 99 % of the bulk signal. The plastic is taken
//! as polyethylene, the most transparent of the common ones, so that the share is never too high for a plastic
//! without heavy filler.
//!
//! # Source
//! t99 in polyethylene (density 0.94 g/cm³), 45°/45°, primary 18 keV (35 keV for Cd K, 8 keV for Cr K): computed
//! from tabulated mass attenuation (Elam, Ravel and Sieber tables as carried by the xraydb library 4.5.8). Geometry
//! and spectrum shift these by tens of percent, so they guard a BL and never correct a value.

use crate::substance::Substance;

/// Thickness for 99 % of the bulk signal in polyethylene, in micrometres.
const T99_MICROMETRES: [(Substance, u32); 5] = [
    (Substance::Cd, 58_000),
    (Substance::Pb, 15_000),
    // Hg L-alpha lies just below Pb L-alpha; the lead figure is the cautious one.
    (Substance::Hg, 15_000),
    (Substance::Cr, 2_100),
    (Substance::Br, 19_000),
];

/// ln 100: the depth, in e-foldings, at which 99 % of the signal is in.
const NINETY_NINE_PERCENT: f64 = 4.605_170_185_988_091;

/// The share of the bulk signal, in millionths, that a plastic of this thickness gives for a substance.
///
/// # Units
/// Thickness in micrometres; the share is rounded down.
pub fn share_in_plastic(substance: Substance, micrometres: u32) -> u32 {
    let t99 = T99_MICROMETRES.iter().find(|(of, _)| *of == substance).map_or(u32::MAX, |(_, t99)| *t99);
    let depth = NINETY_NINE_PERCENT * f64::from(micrometres) / f64::from(t99);
    let share = (1.0 - libm::exp(-depth)) * 1_000_000.0;
    (libm::floor(share) as u32).min(1_000_000)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ninety_nine_percent_of_the_signal_comes_from_t99() {
        for (substance, t99) in T99_MICROMETRES {
            let share = share_in_plastic(substance, t99);
            assert!((989_999..=990_001).contains(&share), "{substance:?} {share}");
        }
    }

    #[test]
    fn five_millimetres_are_thin_for_cadmium() {
        assert!(share_in_plastic(Substance::Cd, 5_000) < 360_000);
        assert!(share_in_plastic(Substance::Pb, 5_000) > 700_000);
        assert_eq!(share_in_plastic(Substance::Cd, 0), 0);
    }
}
