//! One table in hundreds of forms: every one of them is read as the same readings.

use std::collections::BTreeMap;

use plumbline_core::inspection::review;
use plumbline_tests::program::inspect;
use plumbline_tests::surface::{Form, differences, forms};

fn told(form: &Form) -> Vec<String> {
    let (name, bytes) = form.file();
    let inspection = inspect("", &[(&name, &bytes)]);
    let findings = review(&inspection);
    let mut told = differences(form, &inspection);
    for at in 0..inspection.sources.len() {
        let counts = findings.counts(&inspection, at);
        if !counts.adds_up() {
            told.push(format!("{counts:?}"));
        }
    }
    told
}

/// `SURFACE_FORM=words of its name` looks at some only and prints the file.
#[test]
fn one_table_reads_the_same_in_every_form() {
    let wanted = std::env::var("SURFACE_FORM").ok();
    let all = forms();
    let mut wrong: BTreeMap<String, Vec<String>> = BTreeMap::new();
    for form in all {
        let name = form.name();
        if let Some(wanted) = &wanted {
            if !name.contains(wanted.as_str()) {
                continue;
            }
            println!("{name}\n{}", form.text());
        }
        let told = told(form);
        if !told.is_empty() {
            wrong.insert(name, told);
        }
    }
    for (name, told) in &wrong {
        println!("{name}");
        for line in told.iter().take(3) {
            println!("    {line}");
        }
        if told.len() > 3 {
            println!("    and {} more", told.len() - 3);
        }
    }
    assert!(wrong.is_empty(), "{} of {} forms are not read as the table is", wrong.len(), all.len());
}

#[test]
fn there_are_more_than_two_hundred_forms() {
    assert!(forms().len() > 200, "{}", forms().len());
}
