//! Few forms that hold every value of every axis, and every two values that go together.

use std::collections::BTreeSet;
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

/// The forms, the same in every run.
pub fn forms() -> &'static [Form] {
    static FORMS: OnceLock<Vec<Form>> = OnceLock::new();
    FORMS.get_or_init(make)
}

fn make() -> Vec<Form> {
    let mut chance = Chance::new(62_321);
    let mut open = possible_pairs(&mut chance);
    let mut forms: Vec<Vec<u8>> = Vec::new();
    while let Some(pair) = open.first().copied() {
        let best = (0..CANDIDATES)
            .filter_map(|_| complete(pair, TRIES, &mut chance))
            .max_by_key(|choices| pairs(choices).filter(|pair| open.contains(pair)).count())
            .expect("a possible pair was completed once");
        for pair in pairs(&best) {
            open.remove(&pair);
        }
        forms.push(best);
    }
    while forms.len() < AT_LEAST {
        let more = anything(&mut chance);
        if Form::of(&more).goes_together() && !forms.contains(&more) {
            forms.push(more);
        }
    }
    forms.iter().map(|choices| Form::of(choices)).collect()
}

fn possible_pairs(chance: &mut Chance) -> BTreeSet<Pair> {
    let mut known = BTreeSet::new();
    let axes = Form::SIZES.len() as u8;
    for first in 0..axes {
        for second in first + 1..axes {
            for of_first in 0..size(first) {
                for of_second in 0..size(second) {
                    let pair = (first, of_first, second, of_second);
                    if !known.contains(&pair)
                        && let Some(choices) = complete(pair, TRIES, chance)
                    {
                        known.extend(pairs(&choices));
                    }
                }
            }
        }
    }
    known
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
    use super::*;

    #[test]
    fn every_form_goes_together_and_none_comes_twice() {
        let forms = forms();
        assert!(forms.len() >= AT_LEAST);
        assert!(forms.iter().all(Form::goes_together));
        let names: BTreeSet<_> = forms.iter().map(Form::name).collect();
        assert_eq!(names.len(), forms.len());
    }
}
