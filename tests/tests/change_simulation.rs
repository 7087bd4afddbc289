//! How often an unchanged lot is called changed, and how often a doubled element is found: simulated, with fixed seeds.
//!
//! Lots are log-normal, with elements that hang together or not, some of them partly below a detection limit. The rate of
//! false alarms lies at or below the stated one: it comes near it with few independent elements and without readings' own
//! sigma, and lies below it where elements hang together, where values are censored, and where own sigma is added.

use std::collections::BTreeSet;
use std::f64::consts::PI;

use plumbline_core::change::{Accepted, Change, ChangeVerdict, Compared, Composed, RATE};
use plumbline_core::history::{Amount, History, LotRecord};
use plumbline_core::lot::Disposition;
use plumbline_core::material::MaterialClass;
use plumbline_core::quantity::MassFraction;
use plumbline_core::substance::Element;
use plumbline_tests::chance::Chance;

/// One way lots come about.
#[derive(Clone, Copy, Debug)]
struct World {
    lots: usize,
    elements: usize,
    /// Standard deviation of the logarithm from lot to lot.
    scatter: f64,
    /// Share of the scatter's variance that all elements have in common.
    together: f64,
    /// Detection limit over the median, for every second element.
    limit: Option<f64>,
    /// Own relative sigma of a lot's mean, in the values and stated.
    own: f64,
}

const USUAL: World = World { lots: 10, elements: 6, scatter: 0.1, together: 0.0, limit: None, own: 0.0 };

fn normal(chance: &mut Chance) -> f64 {
    let unit = |chance: &mut Chance| ((chance.bits() >> 11) as f64 + 0.5) / (1_u64 << 53) as f64;
    let (first, second) = (unit(chance), unit(chance));
    (-2.0 * first.ln()).sqrt() * (2.0 * PI * second).cos()
}

/// One lot of a world; `times` multiplies its first element.
fn lot(world: &World, chance: &mut Chance, times: f64) -> Vec<Composed> {
    let common = normal(chance);
    (0..world.elements)
        .map(|at| {
            let median = 50.0 * 3.0_f64.powi((at % 5) as i32);
            let own = normal(chance);
            let lots = world.together.sqrt() * common + (1.0 - world.together).sqrt() * own;
            let mut value = median * (world.scatter * lots + world.own * normal(chance)).exp();
            if at == 0 {
                value *= times;
            }
            let limit = world.limit.filter(|_| at % 2 == 1).map(|limit| limit * median);
            let below = limit.is_some_and(|limit| value < limit);
            let shown = if below { limit.unwrap_or(value) } else { value };
            let element = Element::from_atomic_number(20 + at as u8).expect("an element");
            let value = MassFraction::from_units((shown * 1e6) as i64);
            Composed {
                amount: Amount { element, value, below },
                sigma: if below { 0.0 } else { world.own * shown },
            }
        })
        .collect()
}

fn record(at: usize, composition: Vec<Composed>) -> LotRecord {
    LotRecord {
        supplier: "Alder Works".to_owned(),
        part: "P-1".to_owned(),
        material: "housing".to_owned(),
        lot: format!("L-{at}"),
        class: MaterialClass::Polymer,
        day: None,
        disposition: Disposition::Accept,
        of_material: Disposition::Accept,
        outcomes: std::array::from_fn(|_| "BL".to_owned()),
        nearest: None,
        laboratory: Vec::new(),
        composition: composition.into_iter().map(|one| one.amount).collect(),
        readings: 1,
        inspection: format!("of L-{at}"),
    }
}

/// One history and one more lot.
fn trial(world: &World, chance: &mut Chance, times: f64) -> Change {
    let lots = (0..world.lots).map(|at| record(at, lot(world, chance, 1.0))).collect();
    let history = History { checks: BTreeSet::new(), lots };
    let composition = lot(world, chance, times);
    let accepted = Accepted::new(&history, "this one".to_owned()).expect("lots");
    accepted.compare(Compared {
        supplier: "Alder Works",
        part: "P-1",
        material: "housing",
        lot: "L-new",
        class: MaterialClass::Polymer,
        composition: &composition,
    })
}

/// The share of trials that are called changed.
fn share(world: &World, seed: u64, trials: usize, times: f64) -> f64 {
    let mut chance = Chance::new(seed);
    let called = (0..trials)
        .map(|_| trial(world, &mut chance, times))
        .inspect(|change| assert_ne!(change.verdict, ChangeVerdict::TooFew))
        .filter(|change| change.verdict == ChangeVerdict::Changed)
        .count();
    called as f64 / trials as f64
}

/// Three sigma of the Monte Carlo error of a rate.
fn error(trials: usize) -> f64 {
    3.0 * (RATE * (1.0 - RATE) / trials as f64).sqrt()
}

const TRIALS: usize = 3000;

fn rates(worlds: impl IntoIterator<Item = World>) -> Vec<(World, f64)> {
    let with_rate = |(at, world): (usize, World)| {
        let rate = share(&world, 1 + at as u64, TRIALS, 1.0);
        println!("{rate:.4} {world:?}");
        (world, rate)
    };
    worlds.into_iter().enumerate().map(with_rate).collect()
}

#[test]
fn independent_elements_give_the_stated_rate_of_false_alarms_for_few_lots_and_many() {
    // A scatter so wide that the least spread, which only ever lowers the rate, is out of the way.
    let worlds = [(5, 3), (5, 12), (7, 6), (10, 3), (20, 12), (30, 6)];
    let worlds = worlds.map(|(lots, elements)| World { lots, elements, scatter: 0.4, ..USUAL });
    for (world, rate) in rates(worlds) {
        assert!((rate - RATE).abs() <= error(TRIALS) + 0.001, "{rate} for {world:?}");
    }
}

#[test]
fn elements_that_hang_together_stay_below_the_stated_rate() {
    let worlds = [(5, 6, 0.9), (10, 12, 0.9), (30, 6, 0.5)];
    let worlds = worlds.map(|(lots, elements, together)| World { lots, elements, together, ..USUAL });
    for (world, rate) in rates(worlds) {
        assert!(rate <= RATE + error(TRIALS), "{rate} for {world:?}");
    }
}

#[test]
fn values_below_detection_and_readings_own_sigma_stay_below_the_stated_rate() {
    // Limits far below, at, and far above the median; scatters small and large.
    let mut worlds = Vec::new();
    for limit in [0.8, 1.0, 1.3] {
        worlds.extend([(5, 0.1), (5, 0.7), (10, 0.5), (30, 0.3)].map(|(lots, scatter)| World {
            lots,
            scatter,
            limit: Some(limit),
            ..USUAL
        }));
    }
    worlds.push(World { own: 0.1, ..USUAL });
    for (world, rate) in rates(worlds) {
        assert!(rate <= RATE + error(TRIALS), "{rate} for {world:?}");
    }
}

#[test]
fn a_doubled_element_is_found_the_more_surely_the_more_lots_there_are() {
    let found = |lots, scatter| share(&World { lots, scatter, ..USUAL }, 77, 500, 2.0);
    let by_lots = [5, 10, 20, 30].map(|lots| found(lots, 0.1));
    let wider = [5, 10, 20, 30].map(|lots| found(lots, 0.2));
    println!("{by_lots:?} {wider:?}");
    assert!(by_lots.windows(2).all(|pair| pair[0] <= pair[1] + 0.02), "{by_lots:?}");
    // Few lots show little: with five, most doublings at ten percent scatter stay unseen, with thirty hardly one.
    assert!(by_lots[0] > 0.05 && by_lots[1] > 0.6 && by_lots[3] > 0.97, "{by_lots:?}");
    assert!(wider[3] > 0.3, "{wider:?}");
}

#[test]
fn what_moved_is_the_element_that_was_doubled() {
    let mut chance = Chance::new(5);
    let world = World { lots: 20, ..USUAL };
    for _ in 0..200 {
        let change = trial(&world, &mut chance, 4.0);
        assert_eq!(change.verdict, ChangeVerdict::Changed);
        let first = &change.moved[0];
        assert_eq!(first.element.atomic_number(), 20);
        assert!(first.factor > 2.5 && first.factor < 6.5, "{first:?}");
    }
}
