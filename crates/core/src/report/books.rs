//! Rule books in plain words, row by row: what the command line prints and a page can show.

use crate::exempt::{AreaRule, Exemption};
use crate::material::MaterialClass;
use crate::quantity::MassFraction;
use crate::rules::{Band, Citation, Halogens, Limit, LowEdge, Route, RuleBook, Screening, Validity};
use crate::substance::{Element, Halogen, Substance};
use crate::words::Words;

/// What a book is called, for a list: its title, its edition and days, how sure it is and what it holds, its digest.
pub fn listed(words: &Words, book: &RuleBook) -> Vec<String> {
    let mut about = vec![words.with("rules-edition", &[("edition", &book.edition)])];
    if !book.jurisdiction.is_empty() {
        about.push(book.jurisdiction.clone());
    }
    // Bands and halogen limits are not asked for the day of placing on the market.
    if !book.limits.is_empty() {
        about.push(days(words, book.validity));
    }
    vec![
        book.title.clone(),
        about.join(" · "),
        format!("{} · {}", confidence(words, &book.confidence), holds(words, book)),
        words.with("rules-digest", &[("digest", &book.sha256)]),
    ]
}

/// A whole book: what it is, then every row with its source and clause.
pub fn explained(words: &Words, book: &RuleBook) -> Vec<String> {
    let mut lines = listed(words, book);
    if !book.note.is_empty() {
        lines.push(book.note.clone());
    }
    if let Some(rule) = &book.screening {
        lines.push(cited(words, &words.say("rules-screening"), &rule.citation));
        lines.extend(rule.bands().map(|(of, class, one)| band(words, rule, of, class, one)));
    }
    if let Some(rule) = &book.halogens {
        lines.push(cited(words, &words.say("rules-halogens"), &rule.citation));
        lines.extend(Halogen::ALL.map(|of| halogen(words, rule, of)));
    }
    lines.extend(book.limits.iter().map(|row| limit(words, row)));
    lines.extend(book.exemptions.iter().map(|row| exemption(words, row)));
    lines.extend(book.cr6_area.iter().map(|rule| area(words, rule, &book.confidence)));
    lines.extend(book.routes.iter().map(|row| route(words, row)));
    lines
}

/// How sure a value is, in words; a book's own words as they stand.
pub fn confidence(words: &Words, said: &str) -> String {
    let id = match said {
        "confirmed" => "confidence-confirmed",
        "restated by a secondary source" => "confidence-restated",
        "from memory" => "confidence-memory",
        "derived" => "confidence-derived",
        own => return words.with("confidence-own", &[("words", own)]),
    };
    words.say(id)
}

/// How sure a value is, in a few words within a sentence; a book's own words as they stand.
pub fn confidence_short(words: &Words, said: &str) -> String {
    let id = match said {
        "confirmed" => "sure-confirmed",
        "restated by a secondary source" => "sure-restated",
        "from memory" => "sure-memory",
        "derived" => "sure-derived",
        own => return own.to_owned(),
    };
    words.say(id)
}

/// The days of placing on the market that something holds for.
pub fn days(words: &Words, validity: Validity) -> String {
    let day = |day: Option<crate::day::Day>| day.map(|day| day.to_string()).unwrap_or_default();
    let (from, until) = (day(validity.from), day(validity.until));
    let id = match (validity.from, validity.until) {
        (None, None) => "rules-days-any",
        (Some(_), None) => "rules-days-from",
        (None, Some(_)) => "rules-days-until",
        (Some(_), Some(_)) => "rules-days-both",
    };
    words.with(id, &[("from", &from), ("until", &until)])
}

fn holds(words: &Words, book: &RuleBook) -> String {
    let bands = book.screening.iter().flat_map(Screening::bands).count();
    let halogens = if book.halogens.is_some() { Halogen::ALL.len() } else { 0 };
    let kinds = [
        ("rules-holds-bands", bands),
        ("rules-holds-halogens", halogens),
        ("rules-holds-limits", book.limits.len()),
        ("rules-holds-exemptions", book.exemptions.len()),
        ("rules-holds-areas", book.cr6_area.iter().count()),
        ("rules-holds-routes", book.routes.len()),
    ];
    let held = kinds.into_iter().filter(|(_, count)| *count > 0);
    words.list(&held.map(|(id, count)| words.with(id, &[("count", &count.to_string())])).collect::<Vec<_>>())
}

fn cited(words: &Words, text: &str, citation: &Citation) -> String {
    words.with(
        "rules-cited",
        &[
            ("text", text),
            ("source", &citation.source),
            ("clause", &citation.clause),
            ("confidence", &confidence(words, &citation.confidence)),
        ],
    )
}

/// The two words an operator chooses between in the catalogue.
const fn equal(counts: bool) -> &'static str {
    if counts { "yes" } else { "no" }
}

/// One band in words, with its source.
pub fn band(words: &Words, rule: &Screening, of: Substance, class: MaterialClass, band: &Band) -> String {
    let about = words.say(&format!("substance-{}", of.symbol()));
    let class = words.say(&format!("class-{}", class.code()));
    let Some(edges) = band.edges else {
        let text = words.with("rules-band-none", &[("about", &about), ("class", &class)]);
        return cited(words, &text, &band.citation);
    };
    let k = rule.sigma_factor.to_string();
    let low = match edges.low {
        LowEdge::Fixed(low) => words.with(
            "rules-low",
            &[("k", &k), ("limit", &low.to_string()), ("equal", equal(rule.equal_is_below))],
        ),
        LowEdge::DetectionLimit { at_most } => {
            words.with("rules-low-detection", &[("limit", &at_most.to_string())])
        }
    };
    let high = match edges.high {
        Some(high) => words.with(
            "rules-high",
            &[("k", &k), ("limit", &high.to_string()), ("equal", equal(rule.equal_is_over))],
        ),
        None => words.say("rules-high-none"),
    };
    let text =
        words.with("rules-band", &[("about", &about), ("class", &class), ("low", &low), ("high", &high)]);
    cited(words, &text, &band.citation)
}

/// When a value is within a limit and when over it, in words: the text for the second, and what counts for it alone.
fn within(words: &Words, k: &str, limit: MassFraction, equal_is_within: bool, over: (&str, &str)) -> String {
    let (over, alone) = over;
    let limit = limit.to_string();
    let arguments = [("k", k), ("limit", &limit), ("equal", equal(equal_is_within)), ("about", alone)];
    words.series(&[words.with("rules-within", &arguments), words.with(over, &arguments)])
}

/// One halogen limit in words, with its source.
pub fn halogen(words: &Words, rule: &Halogens, of: Halogen) -> String {
    let about = words.say(&format!("substance-{}", of.name()));
    let k = rule.sigma_factor.to_string();
    let rule_text = within(words, &k, rule.limit(of), rule.equal_is_within, ("rules-over", ""));
    let text = words.with("rules-halogen", &[("about", &about), ("rule", &rule_text)]);
    cited(words, &text, rule.citation_of(of))
}

/// One limit in words, with its source: what it is about, when a reading is within and over it, and what a reading
/// can't show of it.
pub fn limit(words: &Words, row: &Limit) -> String {
    let elements = row.of.iter().map(|of| element(words, *of)).collect::<Vec<_>>().join(" + ");
    let classes: Vec<String> =
        row.classes.iter().map(|class| words.say(&format!("class-{}", class.code()))).collect();
    let counted = row.of.iter().filter(|of| row.species_of(**of).is_none());
    let counted = counted.map(|of| element(words, *of)).collect::<Vec<_>>().join(" + ");
    let over = match (row.source_unknown || counted.is_empty(), row.species.is_empty()) {
        (true, _) => "rules-over-never",
        (false, true) => "rules-over",
        (false, false) => "rules-over-without",
    };
    let k = row.sigma_factor.to_string();
    let rule = within(words, &k, row.limit, row.equal_is_within, (over, &counted));
    let mut text = vec![words.with(
        "rules-limit",
        &[
            ("id", &row.id),
            ("about", &elements),
            ("classes", &words.series(&classes)),
            ("basis", &words.say(&format!("basis-{}", row.basis.code().replace(' ', "_")))),
            ("rule", &rule),
        ],
    )];
    for (of, species) in &row.species {
        text.push(words.with("rules-species", &[("about", &element(words, *of)), ("species", species)]));
    }
    if row.source_unknown {
        text.push(words.say("rules-source_unknown"));
    }
    if row.basis.is_one_material() && row.classes.contains(&MaterialClass::Composite) {
        text.push(words.say("rules-mixed"));
    }
    if !row.scope.is_empty() {
        text.push(words.with("rules-scope", &[("scope", &row.scope)]));
    }
    if !row.question.is_empty() {
        text.push(words.with("rules-question", &[("question", &row.question)]));
    }
    if row.validity.is_dated() {
        text.push(words.with("rules-dated", &[("days", &days(words, row.validity))]));
    }
    cited(words, &words.sentences(&text), &row.citation)
}

/// One exemption in words, with its source.
pub fn exemption(words: &Words, row: &Exemption) -> String {
    let day = |day: Option<crate::day::Day>| day.map_or_else(|| "none".to_owned(), |day| day.to_string());
    let number = row.bound.limit().map(|limit| limit.to_string()).unwrap_or_default();
    let mut text = vec![words.with(
        "rules-exemption",
        &[
            ("entry", &row.entry),
            ("scope", &row.scope),
            ("bound", row.bound.code()),
            ("limit", &number),
            ("from", &day(row.from)),
            ("until", &day(row.expires)),
        ],
    )];
    if row.starred {
        text.push(words.say("rules-exemption-starred"));
    }
    if !row.found || row.categories.is_none() {
        text.push(words.say("rules-exemption-not_found"));
    }
    let (source, clause, confidence) = (row.source.clone(), row.clause.clone(), row.confidence.clone());
    cited(words, &words.sentences(&text), &Citation { source, clause, confidence })
}

/// The rule for chromium(VI) by area in words, with its source.
pub fn area(words: &Words, rule: &AreaRule, confidence: &str) -> String {
    let [below, above] =
        [rule.negative_below, rule.positive_above].map(|area| area.to_ug_per_cm2().to_string());
    let text = words.with("rules-area", &[("below", &below), ("above", &above)]);
    let (source, clause) = (rule.source.clone(), rule.clause.clone());
    cited(words, &text, &Citation { source, clause, confidence: confidence.to_owned() })
}

fn element(words: &Words, of: Element) -> String {
    words.say(&format!("substance-{}", of.symbol()))
}

/// One route to a reference method in words, with its source.
pub fn route(words: &Words, row: &Route) -> String {
    let about = match row.substance {
        Some(substance) => words.say(&format!("substance-{}", substance.symbol())),
        None => words.say("rules-route-halogens"),
    };
    let classes: Vec<String> =
        row.classes.iter().map(|class| words.say(&format!("class-{}", class.code()))).collect();
    words.with(
        "rules-route",
        &[
            ("about", &about),
            ("classes", &words.series(&classes)),
            ("method", &row.method),
            ("technique", &row.technique),
            ("source", &row.source),
            ("confidence", &confidence(words, &row.confidence)),
        ],
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules::library;

    fn book(id: &str) -> &'static RuleBook {
        library().iter().find(|book| book.id == id).unwrap_or_else(|| panic!("{id}"))
    }

    #[test]
    fn every_row_of_every_edition_is_said_in_whole_words() {
        let words = Words::english();
        for book in library() {
            let lines = explained(&words, book);
            let rows = book.screening.iter().flat_map(Screening::bands).count()
                + book.limits.len()
                + book.exemptions.len()
                + book.cr6_area.iter().count()
                + book.routes.len()
                + if book.halogens.is_some() { 3 } else { 0 };
            assert!(lines.len() > rows, "{}", book.id);
            for line in lines {
                assert!(!line.contains('[') && !line.contains('{'), "{}: {line}", book.id);
            }
        }
    }

    #[test]
    fn a_band_says_both_edges_with_their_strictness() {
        let words = Words::english();
        let lines = explained(&words, book("iec-62321-3-1-2013"));
        let starting = |start: &str| lines.iter().find(|line| line.starts_with(start)).unwrap().as_str();
        assert_eq!(
            starting("lead, polymer"),
            "lead, polymer: below limit when value + 3 s is at or under 700 mg/kg; over limit when value - 3 s is at \
             or over 1300 mg/kg; undecided between. Source: IEC 62321-3-1:2013, table of screening limits, Pb, \
             polymer. Confirmed in the text of the law or standard."
        );
        assert!(starting("chromium (total), metal").contains("never over limit"));
        assert!(starting("bromine (total), metal").contains("does not apply"));
        assert!(starting("cadmium, composite").contains("at most 50 mg/kg"));
    }

    #[test]
    fn a_limit_says_its_operator_its_days_and_what_no_reading_shows() {
        let words = Words::english();
        let said = |id: &str| explained(&words, book(id)).join("\n");
        let strict = said("eu-reach-xvii-63");
        assert!(
            strict
                .contains("value + 3 s is under 500 mg/kg; over it when value - 3 s is at or over 500 mg/kg")
        );
        assert!(strict.contains("Can a child put the article"));
        assert!(strict.contains("placed on the market from 2016-06-01 on"));
        let sum = said("eu-packaging-94-62");
        assert!(sum.contains("cadmium + mercury + chromium (total)"), "{sum}");
        let over = "over it when lead + cadmium + mercury alone - 3 s is over 100 mg/kg";
        assert!(sum.contains(&format!("value + 3 s is at or under 100 mg/kg; {over}")), "{sum}");
        let never = said("eu-rohs-annex-ii");
        assert!(never.contains("value + 3 s is at or under 320 mg/kg; never over it by a reading"));
        assert!(said("js709b-2015").contains("value + 3 s is under 1000 mg/kg; never over it by a reading"));
        assert!(sum.contains("placed on the market until 2026-08-11"));
        assert!(sum.contains("Cr(VI)"));
        assert!(said("js709b-2015").contains("X-rays do not show"));
        assert!(said("eu-elv-2000-53").contains("From memory"));
        assert!(said("eu-rohs-annex-ii").contains("placed on the market on any day"));
        assert!(said("eu-rohs-annex-ii").contains("Derived"));
        let alloys = said("rohs-annex-iii-2025");
        assert!(
            alloys.contains(
                "6(a)-I: lead in steel for machining; up to 3500 mg/kg, the number itself conforms."
            ),
            "{alloys}"
        );
        assert!(alloys.contains("Expires: 2027-06-30."));
        assert!(alloys.contains("could put in the mouth"));
        assert!(said("iec-62321-7-1-2015").contains("negative below 0.1"), "{}", said("iec-62321-7-1-2015"));
        assert_eq!(confidence(&words, "invented"), "In the book's own words: invented.");
    }

    #[test]
    fn a_list_counts_what_a_book_holds() {
        let words = Words::english();
        let lines = listed(&words, book("iec-62321-3-1-2013"));
        assert!(lines[2].ends_with("15 bands, 6 reference methods"), "{}", lines[2]);
        assert!(listed(&words, book("us-cpsia-101"))[2].ends_with("one limit"));
        let both = Validity {
            from: crate::day::Day::parse("2020-01-01"),
            until: crate::day::Day::parse("2021-01-01"),
        };
        assert!(days(&words, both).contains("2020-01-01") && days(&words, both).contains("2021-01-01"));
    }
}
