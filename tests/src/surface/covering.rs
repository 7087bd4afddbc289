//! Few forms that hold every value of every axis, and every two values that go together.

use std::sync::OnceLock;

use super::axes::Form;
use crate::chance::Chance;

/// Two axes, with a value each.
type Pair = (u8, u8, u8, u8);

/// Tries to complete a pair before it is taken for impossible.
const TRIES: usize = 3_000;
/// Candidates of which the one that covers most is taken.
const CANDIDATES: usize = 30;
/// At least so many forms.
const AT_LEAST: usize = 220;

/// A set of pairs.
struct Pairs {
    /// Where each axis begins among all values of all axes.
    begins: Vec<usize>,
    values: usize,
    held: Vec<bool>,
}

impl Pairs {
    fn none() -> Pairs {
        let mut begins = vec![0];
        for size in Form::SIZES {
            begins.push(begins.last().copied().unwrap_or(0) + size);
        }
        let values = begins.pop().unwrap_or(0);
        Pairs { begins, values, held: vec![false; values * values] }
    }

    fn place(&self, (first, of_first, second, of_second): Pair) -> usize {
        let value = |axis: u8, value: u8| self.begins[usize::from(axis)] + usize::from(value);
        value(first, of_first) * self.values + value(second, of_second)
    }

    fn holds(&self, pair: Pair) -> bool {
        self.held[self.place(pair)]
    }

    fn set(&mut self, pair: Pair, held: bool) {
        let place = self.place(pair);
        self.held[place] = held;
    }
}

/// The forms, the same in every run.
pub fn forms() -> &'static [Form] {
    static FORMS: OnceLock<Vec<Form>> = OnceLock::new();
    FORMS.get_or_init(make)
}

fn make() -> Vec<Form> {
    make_choices().iter().map(|choices| Form::of(choices)).collect()
}

fn make_choices() -> Vec<Vec<u8>> {
    let mut chance = Chance::new(62_321);
    let mut open = Pairs::none();
    let possible: Vec<Pair> =
        every_pair().filter(|pair| is_possible(*pair, &mut open, &mut chance)).collect();
    let mut forms: Vec<Vec<u8>> = Vec::new();
    for pair in possible {
        if !open.holds(pair) {
            continue;
        }
        let best = (0..CANDIDATES)
            .filter_map(|_| complete(pair, TRIES, &mut chance))
            .max_by_key(|choices| pairs(choices).filter(|pair| open.holds(*pair)).count())
            .expect("a possible pair was completed once");
        for pair in pairs(&best) {
            open.set(pair, false);
        }
        forms.push(best);
    }
    while forms.len() < AT_LEAST {
        let more = anything(&mut chance);
        if Form::of(&more).goes_together() && !forms.contains(&more) {
            forms.push(more);
        }
    }
    forms
}

fn every_pair() -> impl Iterator<Item = Pair> {
    let axes = Form::SIZES.len() as u8;
    (0..axes).flat_map(move |first| {
        (first + 1..axes).flat_map(move |second| {
            (0..size(first)).flat_map(move |of_first| {
                (0..size(second)).map(move |of_second| (first, of_first, second, of_second))
            })
        })
    })
}

/// True where some form has both values; all pairs of the form that was found are known then.
fn is_possible(pair: Pair, known: &mut Pairs, chance: &mut Chance) -> bool {
    if !known.holds(pair)
        && let Some(choices) = complete(pair, TRIES, chance)
    {
        for pair in pairs(&choices) {
            known.set(pair, true);
        }
    }
    known.holds(pair)
}

fn size(axis: u8) -> u8 {
    Form::SIZES[usize::from(axis)] as u8
}

fn anything(chance: &mut Chance) -> Vec<u8> {
    // Every second choice is an axis's first value: the plain ones go with most others.
    Form::SIZES.iter().map(|size| if chance.once_in(2) { 0 } else { chance.below(*size) as u8 }).collect()
}

/// A form that goes together and holds the pair.
fn complete(pair: Pair, tries: usize, chance: &mut Chance) -> Option<Vec<u8>> {
    let (first, of_first, second, of_second) = pair;
    (0..tries).find_map(|_| {
        let mut choices = anything(chance);
        choices[usize::from(first)] = of_first;
        choices[usize::from(second)] = of_second;
        Form::of(&choices).goes_together().then_some(choices)
    })
}

fn pairs(choices: &[u8]) -> impl Iterator<Item = Pair> + '_ {
    (0..choices.len()).flat_map(move |first| {
        (first + 1..choices.len())
            .map(move |second| (first as u8, choices[first], second as u8, choices[second]))
    })
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;

    #[test]
    fn every_form_goes_together_and_none_comes_twice() {
        let forms = forms();
        assert!(forms.len() >= AT_LEAST);
        assert!(forms.iter().all(Form::goes_together));
        let choices = make_choices();
        for (axis, size) in Form::SIZES.iter().enumerate() {
            let values: BTreeSet<u8> = choices.iter().map(|choices| choices[axis]).collect();
            assert_eq!(values.len(), *size, "every value of axis {axis}");
        }
        let names: BTreeSet<_> = forms.iter().map(Form::name).collect();
        assert_eq!(names.len(), forms.len());
    }
}
