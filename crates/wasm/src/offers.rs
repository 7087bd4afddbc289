//! What the page can offer to be given: rule books to name, exemptions to claim with what became of the claims, rows for
//! the site's table. It decides nothing: everything here was judged by the core.

use std::collections::BTreeMap;

use plumbline_core::claims::{Candidate, Cr6Finding, EXEMPTED, JudgedClaim};
use plumbline_core::exempt::{AreaResult, Categories, CategoryFit, Exemption, Number, Verdict};
use plumbline_core::inspection::{Findings, Inspection, MaterialFinding};
use plumbline_core::material::MaterialClass;
use plumbline_core::outcome::Outcome;
use plumbline_core::report::{books, exemptions, phrases};
use plumbline_core::rules::{self, RuleBook};
use plumbline_core::site_table;
use plumbline_core::substance::Substance;
use plumbline_core::words::Words;
use serde::Serialize;

/// Materials that are listed; the page says how many more there are.
const LISTED: usize = 300;

/// The product categories an entry may list, as the act `category` writes them.
const CATEGORIES: [&str; 13] = ["1", "2", "3", "4", "5", "6", "7", "8ivd", "8o", "9i", "9o", "10", "11"];

/// The outcomes of total chromium that a result by area speaks to.
const CHROMIUM_OPEN: [Outcome; 4] =
    [Outcome::Undecided, Outcome::NotCapable, Outcome::DetectionTooHigh, Outcome::NoUncertainty];

#[derive(Serialize)]
pub(crate) struct OffersView {
    books: Vec<BookOffer>,
    exemptions: Vec<ExemptionView>,
    guard: String,
    materials: Vec<MaterialOffer>,
    materials_left_out: usize,
    site_rows: Vec<SiteOffer>,
}

#[derive(Serialize)]
pub(crate) struct BookOffer {
    id: String,
    title: String,
    about: Vec<String>,
    from_memory: bool,
    note: String,
    named: bool,
    loaded: bool,
    problem: &'static str,
}

#[derive(Serialize)]
pub(crate) struct ExemptionView {
    entry: String,
    substance: &'static str,
    scope: String,
    limit: String,
    categories: String,
    from: Option<String>,
    expires: Option<String>,
    found: bool,
    not_filed: bool,
    starred: bool,
    groups: Vec<CodeText>,
    source: String,
    confidence: String,
    from_memory: bool,
    note: String,
}

#[derive(Serialize)]
pub(crate) struct MaterialOffer {
    part: Option<String>,
    material: Option<String>,
    classes: Vec<String>,
    substances: Vec<SubstanceOffer>,
    claims: Vec<ClaimView>,
    cr6_open: bool,
    cr6: Vec<Cr6View>,
}

#[derive(Serialize)]
pub(crate) struct SubstanceOffer {
    substance: &'static str,
    text: String,
    entries: Vec<EntryOffer>,
}

#[derive(Serialize)]
pub(crate) struct EntryOffer {
    row: usize,
    number: String,
    exceeded: bool,
    questions: Vec<String>,
}

#[derive(Serialize)]
pub(crate) struct CodeText {
    code: &'static str,
    text: String,
}

#[derive(Serialize)]
pub(crate) struct ClaimView {
    entry: String,
    substance: &'static str,
    row: Option<usize>,
    group: &'static str,
    evidence: String,
    by: String,
    second: String,
    state: &'static str,
    state_text: String,
    number: String,
    why: Vec<CodeText>,
}

#[derive(Serialize)]
pub(crate) struct Cr6View {
    result: &'static str,
    text: String,
}

#[derive(Serialize)]
pub(crate) struct SiteOffer {
    value: String,
    sample: String,
    instrument: Option<String>,
    element: &'static str,
    class: &'static str,
    class_text: String,
    readings: usize,
    mean: String,
    sigma: String,
    seconds: Option<String>,
    near: bool,
}

pub(crate) fn offers(inspection: &Inspection, findings: &Findings, words: &Words) -> OffersView {
    let rows = inspection.books.exemptions();
    let factor = inspection.books.screening().map_or(3.0, |(_, rule)| rule.sigma_factor.to_f64());
    let mut materials = materials(rows, findings, words);
    let left_out = materials.len().saturating_sub(LISTED);
    materials.truncate(LISTED);
    OffersView {
        books: book_offers(inspection, words),
        exemptions: rows.iter().map(|row| exemption(words, row)).collect(),
        guard: words.with("claims-guard", &[("k", &factor.to_string())]),
        materials,
        materials_left_out: left_out,
        site_rows: site_table::offers(inspection, findings).iter().map(|row| site_row(words, row)).collect(),
    }
}

/// Books of limits that come with the program or were loaded, and whatever else is named.
fn book_offers(inspection: &Inspection, words: &Words) -> Vec<BookOffer> {
    let names = inspection.settings().books;
    let in_force = inspection.books.in_force(&names);
    let id_of = |name: &str| rules::Named::parse(name).map_or(name.to_owned(), |named| named.id.to_owned());
    let problem_of = |id: &str| {
        let about = |list: &[String]| list.iter().any(|name| id_of(name) == id);
        if about(&in_force.differing) {
            "differs"
        } else if about(&in_force.not_loaded) {
            "not_loaded"
        } else {
            ""
        }
    };
    let mut offers: Vec<BookOffer> = Vec::new();
    let mut add = |id: &str, book: Option<&RuleBook>, loaded: bool| {
        if offers.iter().any(|one| one.id == id) {
            return;
        }
        let mut about = book.map_or_else(Vec::new, |book| books::listed(words, book));
        let title = if about.is_empty() { id.to_owned() } else { about.remove(0) };
        offers.push(BookOffer {
            id: id.to_owned(),
            title,
            about,
            from_memory: book.is_some_and(is_from_memory),
            note: book.map_or_else(String::new, |book| book.note.clone()),
            named: names.iter().any(|name| id_of(name) == id),
            loaded,
            problem: problem_of(id),
        });
    };
    for book in inspection.books.all().iter().filter(|book| !book.limits.is_empty()) {
        add(&book.id, Some(book), true);
    }
    for book in rules::library().iter().filter(|book| !book.limits.is_empty()) {
        add(&book.id, Some(book), false);
    }
    for name in &names {
        let id = id_of(name);
        add(&id, inspection.books.find(&id), false);
    }
    offers
}

fn is_from_memory(book: &RuleBook) -> bool {
    const MEMORY: &str = "from memory";
    book.confidence == MEMORY || book.limits.iter().any(|row| row.citation.confidence == MEMORY)
}

fn exemption(words: &Words, row: &Exemption) -> ExemptionView {
    let limit = row.bound.limit().map(phrases::rounded).unwrap_or_default();
    let covers = |code: &&&str| {
        let fit = row.categories.zip(Categories::from_code(code)).map(|(entry, product)| product.fit(entry));
        fit == Some(CategoryFit::Covered)
    };
    let covered: Vec<&str> = CATEGORIES.iter().filter(covers).copied().collect();
    ExemptionView {
        entry: row.entry.clone(),
        substance: row.substance.symbol(),
        scope: row.scope.clone(),
        limit: words.with(&format!("direction-{}", row.bound.code()), &[("limit", &limit)]),
        categories: if covered.len() == CATEGORIES.len() { "all".to_owned() } else { covered.join(", ") },
        from: row.from.map(|day| day.to_string()),
        expires: row.expires.map(|day| day.to_string()),
        found: row.found,
        not_filed: row.not_filed,
        starred: row.starred,
        groups: row
            .groups
            .iter()
            .map(|group| CodeText { code: group.code(), text: words.say(&format!("group-{}", group.code())) })
            .collect(),
        source: format!("{}, {}; {}", row.source, row.clause, row.act),
        confidence: books::confidence(words, &row.confidence),
        from_memory: row.confidence == "from memory",
        note: row.note.clone(),
    }
}

/// Materials of one part and name are one target of an act, whatever their lots.
fn materials(rows: &[Exemption], findings: &Findings, words: &Words) -> Vec<MaterialOffer> {
    let mut place: BTreeMap<(&Option<String>, &Option<String>), usize> = BTreeMap::new();
    let mut found: Vec<MaterialOffer> = Vec::new();
    for material in &findings.materials {
        let open: Vec<Substance> = EXEMPTED.into_iter().filter(|of| needs_claim(material, *of)).collect();
        let cr6_open = is_cr6_open(material);
        let claims = &material.claims;
        if open.is_empty() && claims.claims.is_empty() && claims.cr6.is_empty() && !cr6_open {
            continue;
        }
        let at = *place.entry((&material.part, &material.name)).or_insert(found.len());
        if at == found.len() {
            found.push(MaterialOffer {
                part: material.part.clone(),
                material: material.name.clone(),
                classes: Vec::new(),
                substances: Vec::new(),
                claims: Vec::new(),
                cr6_open: false,
                cr6: Vec::new(),
            });
        }
        let Some(offer) = found.get_mut(at) else { continue };
        let class = class_text(words, material.class);
        if !offer.classes.contains(&class) {
            offer.classes.push(class);
        }
        offer.cr6_open |= cr6_open;
        for substance in open {
            add_substance(words, rows, offer, material, substance);
        }
        for claim in &claims.claims {
            add_claim(words, offer, claim);
        }
        offer.cr6.extend(claims.cr6.iter().map(|one| cr6(words, one)));
    }
    found
}

fn count_of(material: &MaterialFinding, substance: Substance, outcome: Outcome) -> u64 {
    let counts = material.tally.counts.get(substance as usize);
    counts.and_then(|counts| counts.get(outcome as usize)).copied().unwrap_or(0)
}

fn needs_claim(material: &MaterialFinding, substance: Substance) -> bool {
    [Outcome::Over, Outcome::Undecided].into_iter().any(|outcome| count_of(material, substance, outcome) > 0)
}

fn is_cr6_open(material: &MaterialFinding) -> bool {
    matches!(material.class, MaterialClass::Metal | MaterialClass::Plated)
        && CHROMIUM_OPEN.into_iter().any(|outcome| count_of(material, Substance::Cr, outcome) > 0)
}

fn class_text(words: &Words, class: MaterialClass) -> String {
    words.say(&format!("class-{}", class.code()))
}

fn add_substance(
    words: &Words,
    rows: &[Exemption],
    offer: &mut MaterialOffer,
    material: &MaterialFinding,
    of: Substance,
) {
    let symbol = of.symbol();
    if offer.substances.iter().all(|one| one.substance != symbol) {
        let text = phrases::outcome(words, material.tally.worst(of));
        offer.substances.push(SubstanceOffer { substance: symbol, text, entries: Vec::new() });
    }
    let Some(into) = offer.substances.iter_mut().find(|one| one.substance == symbol) else { return };
    for candidate in &material.claims.candidates {
        let is_new = into.entries.iter().all(|known| known.row != candidate.row);
        if is_new && rows.get(candidate.row).is_some_and(|row| row.substance == of) {
            into.entries.push(entry(words, candidate));
        }
    }
}

fn entry(words: &Words, candidate: &Candidate) -> EntryOffer {
    EntryOffer {
        row: candidate.row,
        number: words.say(&format!("number-{}", candidate.number.code())),
        exceeded: candidate.number == Number::Exceeded,
        questions: candidate
            .questions
            .iter()
            .map(|question| words.say(&format!("question-{}", question.code())))
            .collect(),
    }
}

/// A claim speaks of every lot with that material: what is open anywhere is open.
fn add_claim(words: &Words, offer: &mut MaterialOffer, judged: &JudgedClaim) {
    let claim = &judged.claim;
    let verdict = judged.verdict.as_ref();
    let why = exemptions::why(words, verdict).into_iter().map(|(code, text)| CodeText { code, text });
    let symbol = claim.substance.symbol();
    let same = |one: &&mut ClaimView| one.entry == claim.entry && one.substance == symbol;
    let state = exemptions::state(verdict);
    let rank = |state: &str| Verdict::CODES.iter().position(|code| *code == state);
    if let Some(known) = offer.claims.iter_mut().find(same) {
        let new: Vec<CodeText> = why.filter(|one| known.why.iter().all(|had| had.code != one.code)).collect();
        known.why.extend(new);
        if rank(state) > rank(known.state) {
            known.state = state;
            known.state_text = words.say(&format!("claim-{state}"));
            known.number = words.say(&format!("number-{}", judged.number.code()));
        }
        return;
    }
    offer.claims.push(ClaimView {
        entry: claim.entry.clone(),
        substance: symbol,
        row: judged.row,
        group: claim.group.map_or("", |group| group.code()),
        evidence: claim.evidence.clone(),
        by: claim.by.clone(),
        second: claim.second.clone(),
        state,
        state_text: words.say(&format!("claim-{state}")),
        number: if verdict.is_some() && judged.row.is_some() {
            words.say(&format!("number-{}", judged.number.code()))
        } else {
            String::new()
        },
        why: why.collect(),
    });
}

fn cr6(words: &Words, found: &Cr6Finding) -> Cr6View {
    let result = found.result.map_or("", AreaResult::code);
    Cr6View {
        result,
        text: if result.is_empty() { String::new() } else { words.say(&format!("cr6-{result}")) },
    }
}

fn site_row(words: &Words, row: &site_table::Offer) -> SiteOffer {
    SiteOffer {
        value: row.act_value(),
        sample: row.sample.clone(),
        instrument: row.instrument.clone(),
        element: row.element.symbol(),
        class: row.class.code(),
        class_text: class_text(words, row.class),
        readings: row.readings,
        mean: phrases::rounded(row.mean),
        sigma: phrases::rounded(row.sigma),
        seconds: row.deciseconds.map(|tenths| (f64::from(tenths) / 10.0).to_string()),
        near: row.near_the_limit,
    }
}
