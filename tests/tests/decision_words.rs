//! Every code of pooling, conformity and measuring longer has its words, and numbers fall into their places.

use plumbline_core::conformity::{DecisionRule, Statement, phrase};
use plumbline_core::longer::Never;
use plumbline_core::pool::PooledFrom;
use plumbline_core::words::Words;

#[test]
fn every_code_of_a_decision_has_its_words() {
    let words = Words::english();
    let mut wanted: Vec<String> = Vec::new();
    wanted.extend(PooledFrom::ALL.iter().map(|code| format!("pooled-from-{}", code.code())));
    wanted.extend(DecisionRule::ALL.iter().map(|code| format!("rule-{}", code.code())));
    wanted.extend(Statement::ALL.iter().map(|code| format!("statement-{}", code.code())));
    wanted.extend(Never::ALL.iter().map(|code| format!("longer-never-{}", code.code())));
    assert_eq!(wanted.len(), 14);
    let missing: Vec<_> = wanted.iter().filter(|id| !words.has(id)).collect();
    assert!(missing.is_empty(), "{missing:?}");
}

#[test]
fn a_probability_reads_as_a_person_says_it() {
    let words = Words::english();
    let said = |of, rest| {
        let (message, percent) = phrase(of, rest);
        words.with(message, &[("percent", &percent)])
    };
    assert_eq!(said(0.662_629_8, 0.337_370_2), "66.3 %");
    assert_eq!(said(1.0, 1e-24), "more than 99.99 %");
    assert_eq!(said(1e-24, 1.0), "less than 0.01 %");
}

#[test]
fn a_plan_counts_its_readings() {
    let words = Words::english();
    let said = |readings| {
        words.with(
            "longer-plan",
            &[("readings", readings), ("longest", "245"), ("total", "490"), ("settles", "3"), ("of", "7")],
        )
    };
    assert_eq!(
        said("1"),
        "1 reading of 245 s would settle 3 of 7 open outcomes with a chance of 90 % each (estimate)."
    );
    assert_eq!(
        said("2"),
        "2 readings of at most 245 s, 490 s together, would settle 3 of 7 open outcomes with a chance of 90 % each \
         (estimate)."
    );
}
