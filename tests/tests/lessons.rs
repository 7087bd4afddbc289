//! The trainer's exercises: made from a seed, answered by nothing but the review of the files they come as.

use std::collections::{BTreeMap, BTreeSet};

use plumbline_core::inspection::review;
use plumbline_lessons::{Ask, Delivery, Exercise, Lesson, exercise, whole};
use plumbline_tests::program::{built_in_books, inspect};

/// The answer by the ordinary way: the exercise's two files, read and reviewed like any other delivery.
fn answer_by_files(exercise: &Exercise) -> &'static str {
    let Delivery { results, settings } = &exercise.delivery;
    let inspection = inspect(&settings.text, &[(results.name.as_str(), results.text.as_bytes())]);
    assert!(inspection.settings().is_invented(), "{}", settings.text);
    exercise.right(&review(&inspection)).unwrap_or_else(|| panic!("no answer:\n{}", results.text))
}

fn made(seed: u64, lesson: Lesson, number: u32) -> Exercise {
    exercise(&built_in_books(), seed, lesson, number).expect("the built-in books hold what it is about")
}

/// What can come up in each lesson. A kind of exercise that stops showing what it is for is missed here.
const OUTCOMES: [(Lesson, &[&str]); 8] = [
    (Lesson::Band, &["BL", "X", "OL"]),
    (Lesson::Sigma, &["BL", "X", "OL", "not_capable", "no_uncertainty"]),
    (Lesson::Element, &["BL", "X", "OL", "not_applicable"]),
    (Lesson::Censored, &["BL", "X", "OL", "detection_too_high", "not_measured"]),
    (Lesson::Material, &["BL", "X", "OL", "accept", "hold", "not_accept"]),
    (Lesson::Exemption, &["accept", "hold", "not_accept"]),
    (Lesson::Trust, &["accept", "hold", "not_accept"]),
    (Lesson::Sampling, &["accept", "hold", "not_accept"]),
];

#[test]
fn every_lesson_asks_for_each_answer_it_teaches_and_for_no_other() {
    for (lesson, expected) in OUTCOMES {
        let mut found: BTreeMap<&str, u32> = BTreeMap::new();
        for seed in 0..12 {
            for number in 1..=9 {
                *found.entry(answer_by_files(&made(seed, lesson, number))).or_default() += 1;
            }
        }
        let codes: BTreeSet<&str> = found.keys().copied().collect();
        assert_eq!(codes, expected.iter().copied().collect(), "{lesson:?}: {found:?}");
        // None is so rare that a trainee never meets it.
        assert!(found.values().all(|times| *times >= 5), "{lesson:?}: {found:?}");
    }
}

#[test]
fn the_first_three_exercises_of_a_lesson_never_have_one_answer_only() {
    for lesson in Lesson::ALL {
        for seed in 0..20 {
            let answers: BTreeSet<&str> =
                (1..=3).map(|number| answer_by_files(&made(seed, lesson, number))).collect();
            assert!(answers.len() >= 2, "{lesson:?} {seed}: {answers:?}");
        }
    }
}

#[test]
fn the_right_answer_is_always_among_those_offered() {
    for lesson in Lesson::ALL {
        for seed in 0..5 {
            for number in 1..=6 {
                let made = made(seed, lesson, number);
                assert!(made.choices().contains(&answer_by_files(&made)));
            }
        }
    }
}

#[test]
fn one_seed_gives_the_same_exercises_and_another_gives_others() {
    for lesson in Lesson::ALL {
        let texts = |seed| -> Vec<Exercise> { (1..=6).map(|number| made(seed, lesson, number)).collect() };
        assert_eq!(texts(4711), texts(4711));
        assert_ne!(texts(4711), texts(4712));
    }
    assert_eq!(whole(&built_in_books(), 9), whole(&built_in_books(), 9));
}

/// Written once by this program and looked at: numbers that change on another machine or in another version are seen here.
#[test]
fn the_exercises_of_a_seed_are_those_on_record() {
    let mut record = String::new();
    for lesson in Lesson::ALL {
        for number in 1..=3 {
            let made = made(4711, lesson, number);
            let last = made.delivery.results.text.lines().last().unwrap_or_default();
            record = format!("{record}{} {number} {} {last}\n", lesson.code(), answer_by_files(&made));
        }
    }
    let path = plumbline_tests::places::in_project("tests/vectors/lessons_seed_4711.txt");
    if std::env::var_os("UPDATE_GOLDEN").is_some() {
        std::fs::write(&path, &record).expect("written");
    }
    assert_eq!(record, std::fs::read_to_string(&path).expect("the record").replace("\r\n", "\n"));
}

#[test]
fn all_that_is_made_says_that_it_is_invented_and_names_nobody_real() {
    let houses =
        ["Alder", "Birch", "Cedar", "Dogwood", "Elm", "Fir", "Gorse"].map(|name| format!("{name} Works"));
    for seed in 0..60 {
        let of_lessons =
            Lesson::ALL.into_iter().map(|lesson| made(seed, lesson, 1 + seed as u32 % 9).delivery);
        for delivery in of_lessons.chain(whole(&built_in_books(), seed)) {
            assert!(delivery.results.name.starts_with("invented"), "{}", delivery.results.name);
            assert!(delivery.settings.text.contains("invented = \"yes\""));
            assert!(houses.iter().any(|house| delivery.results.text.contains(house)));
        }
    }
}

#[test]
fn whole_deliveries_are_read_to_the_last_row_and_end_in_every_way() {
    let mut ends = BTreeSet::new();
    for seed in 0..80 {
        let Delivery { results, settings } = whole(&built_in_books(), seed).expect("a delivery");
        let inspection = inspect(&settings.text, &[(results.name.as_str(), results.text.as_bytes())]);
        let findings = review(&inspection);
        let counts = findings.counts(&inspection, 0);
        assert!(counts.adds_up() && counts.refused == 0 && counts.set_aside == 0, "{}", results.text);
        assert_eq!(findings.lots.len(), 1, "{}", results.text);
        ends.insert(findings.lots[0].disposition.code());
    }
    assert_eq!(ends, BTreeSet::from(["accept", "hold", "not_accept"]));
}

#[test]
fn a_reading_exercise_asks_of_the_one_reading_it_shows() {
    for lesson in [Lesson::Band, Lesson::Sigma, Lesson::Element, Lesson::Censored] {
        for seed in 0..20 {
            let made = made(seed, lesson, 2);
            let Ask::Outcome(asked) = &made.ask else { panic!("{lesson:?} asks of a lot") };
            assert_eq!(made.delivery.results.text.lines().count(), 2);
            assert!(made.delivery.results.text.contains(&asked.written));
        }
    }
}
