//! What the page can offer to be given: rule books to name, exemptions to claim with what became of the claims, rows for
//! the site's table. It decides nothing: everything here was judged by the core.

use std::collections::BTreeMap;

use plumbline_core::claims::{Candidate, Cr6Finding, EXEMPTED, JudgedClaim};
use plumbline_core::exempt::{AreaResult, Categories, CategoryFit, Exemption, Number, Verdict};
use plumbline_core::inspection::{Findings, Inspection, MaterialFinding};
use plumbline_core::learned::{self, BillOffer};
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
    bills: Vec<BillOfferView>,
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
    questions: Vec<QuestionOffer>,
}

/// A bill of materials as an earlier accepted lot of the part had it, and the act that takes it over.
#[derive(Serialize)]
pub(crate) struct BillOfferView {
    part: String,
    supplier: String,
    lot: String,
    day: String,
    materials: Vec<String>,
    target: String,
    value: String,
}

fn bill_offer(offer: &BillOffer) -> BillOfferView {
    let act = offer.act();
    BillOfferView {
        part: offer.part.clone(),
        supplier: offer.supplier.clone(),
        lot: offer.lot.clone(),
        day: offer.day.map(|day| day.to_string()).unwrap_or_default(),
        materials: offer.materials.clone(),
        target: act.target.to_text(),
        value: act.value,
    }
}

#[derive(Serialize)]
pub(crate) struct QuestionOffer {
    row: String,
    text: String,
}

#[derive(Serialize)]
#[allow(clippy::struct_excessive_bools, reason = "each is a mark of its own beside the entry")]
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
    over: bool,
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
    earlier: usize,
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
    // Claimed first, then what is over limit: what is left out is what matters least.
    materials.sort_by_key(|one| (one.claims.is_empty(), one.substances.iter().all(|of| !of.over)));
    materials.truncate(LISTED);
    OffersView {
        books: book_offers(inspection, words),
        exemptions: rows.iter().map(|row| exemption(words, row)).collect(),
        guard: words.with("claims-guard", &[("k", &factor.to_string())]),
        materials,
        materials_left_out: left_out,
        bills: learned::bill_offers(inspection, findings).iter().take(LISTED).map(bill_offer).collect(),
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
            questions: book.map_or_else(Vec::new, |book| {
                let asking = book.limits.iter().filter(|row| !row.question.is_empty());
                asking.map(|row| QuestionOffer { row: row.id.clone(), text: row.question.clone() }).collect()
            }),
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
        from: row.from.map(|day| words.day(day)),
        expires: row.expires.map(|day| words.day(day)),
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
            add_claim(words, rows, offer, claim);
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
    let over = count_of(material, of, Outcome::Over) > 0;
    // What an exemption would have to cover, not the worst that stands beside it.
    let text = phrases::outcome(words, if over { Outcome::Over } else { Outcome::Undecided });
    match offer.substances.iter_mut().find(|one| one.substance == symbol) {
        None => {
            offer.substances.push(SubstanceOffer { substance: symbol, over, text, entries: Vec::new() });
        }
        Some(known) if over && !known.over => (known.over, known.text) = (over, text),
        Some(_) => {}
    }
    let Some(into) = offer.substances.iter_mut().find(|one| one.substance == symbol) else { return };
    for candidate in &material.claims.candidates {
        let is_new = into.entries.iter().all(|known| known.row != candidate.row);
        if is_new && rows.get(candidate.row).is_some_and(|row| row.substance == of) {
            into.entries.push(entry(words, rows, candidate));
        }
    }
}

fn entry(words: &Words, rows: &[Exemption], candidate: &Candidate) -> EntryOffer {
    EntryOffer {
        row: candidate.row,
        number: exemptions::number(words, rows, Some(candidate.row), candidate.number),
        exceeded: candidate.number == Number::Exceeded,
        questions: candidate
            .questions
            .iter()
            .map(|question| words.say(&format!("question-{}", question.code())))
            .collect(),
    }
}

/// A claim speaks of every lot with that material: what is open anywhere is open.
fn add_claim(words: &Words, rows: &[Exemption], offer: &mut MaterialOffer, judged: &JudgedClaim) {
    let number = || exemptions::number(words, rows, judged.row, judged.number);
    let claim = &judged.claim;
    let verdict = judged.verdict.as_ref();
    let why = exemptions::why(words, rows, judged).into_iter().map(|(code, text)| CodeText { code, text });
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
            known.number = number();
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
        number: if verdict.is_some() && judged.row.is_some() { number() } else { String::new() },
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
        earlier: row.earlier,
        mean: words.number(&phrases::rounded(row.mean)),
        sigma: words.number(&phrases::rounded(row.sigma)),
        seconds: row.deciseconds.map(|tenths| words.number(&(f64::from(tenths) / 10.0))),
        near: row.near_the_limit,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use plumbline_core::inspection;
    use plumbline_core::settings_file::parse_settings;
    use plumbline_intake::SourceReader;
    use serde_json::Value;

    const DOOR: &str = include_str!("../../../web/src/shared/door.ts");

    /// The page's interface names exactly the keys that cross.
    fn same_keys(interface: &str, value: &Value) {
        let body = DOOR.split_once(&format!("export interface {interface} {{\n")).expect(interface).1;
        let fields = body.split("\n}").next().unwrap_or_default().lines().map(str::trim);
        let mut named: Vec<&str> = fields
            .filter(|line| !line.starts_with("/**"))
            .filter_map(|line| line.split_once(": "))
            .map(|(key, _)| key)
            .collect();
        let mut keys: Vec<&String> = value.as_object().expect(interface).keys().collect();
        named.sort_unstable();
        keys.sort_unstable();
        assert_eq!(keys, named, "{interface}");
    }

    fn offered(settings: &str, table: &[u8]) -> Value {
        let mut inspection = Inspection::new().unwrap();
        let settings = format!("schema = \"plumbline.settings/1\"\n{settings}");
        inspection.acts = parse_settings(&settings, "s").unwrap();
        let mut reader = SourceReader::new("one.csv", &inspection.settings());
        reader.push(table);
        inspection.add_sources(reader.finish());
        let findings = inspection::review(&inspection);
        serde_json::to_value(offers(&inspection, &findings, &Words::english())).unwrap()
    }

    const TABLE: &[u8] =
        b"Sample,Part,Material,Lot,Class,Pb mg/kg,Pb u (1s),Cr mg/kg,Cr u (1s),Cu %,Cu u (1s)\n\
        S1,P1,brass,A,metal,28000,200,2000,20,58,0.1\n\
        S2,P1,brass,B,metal,50000,200,2000,20,58,0.1\n\
        CHK,,,,metal,28000,200,,,,\nCHK,,,,metal,28100,200,,,,\n";

    const SETTINGS: &str = "books = [\"eu-rohs-annex-ii\", \"eu-elv-2000-53@00000000\", \"gone\"]\n\
        check_samples = [\"CHK\"]\n\
        [[claim]]\npart = \"P1\"\nmaterial = \"brass\"\nentry = \"6(c)\"\nsubstance = \"Pb\"\n\
        [[cr6_area]]\npart = \"P1\"\nmaterial = \"brass\"\narea = \"0.2 ug/cm2\"\n";

    #[test]
    fn every_view_has_the_keys_that_the_page_reads() {
        let table = [TABLE, b"S3,P2,brass,B,metal,28000,200,2000,20,58,0.1\n"].concat();
        let offers = offered(SETTINGS, &table);
        same_keys("OffersView", &offers);
        same_keys("BookOffer", &offers["books"][0]);
        same_keys("ExemptionView", &offers["exemptions"][0]);
        same_keys("CodeText", &offers["exemptions"][0]["groups"][0]);
        same_keys("MaterialOffer", &offers["materials"][0]);
        same_keys("SubstanceOffer", &offers["materials"][0]["substances"][0]);
        // The claimed brass holds more than any entry lets it; the other is what 6(c) is for.
        same_keys("EntryOffer", &offers["materials"][1]["substances"][0]["entries"][0]);
        same_keys("ClaimView", &offers["materials"][0]["claims"][0]);
        same_keys("Cr6View", &offers["materials"][0]["cr6"][0]);
        same_keys("SiteOffer", &offers["site_rows"][0]);
    }

    #[test]
    fn a_claim_that_is_exceeded_in_one_lot_and_open_in_another_is_shown_as_exceeded() {
        let offers = offered(SETTINGS, TABLE);
        let materials = offers["materials"].as_array().unwrap();
        assert_eq!(materials.len(), 1, "one part and name is one target");
        let claims = materials[0]["claims"].as_array().unwrap();
        assert_eq!(claims.len(), 1);
        assert_eq!(claims[0]["state"], "exceeded");
        assert!(claims[0]["why"].as_array().unwrap().iter().any(|one| one["code"] == "evidence_missing"));
        assert_eq!(materials[0]["substances"][0]["text"], "over limit");
    }

    #[test]
    fn books_say_whether_they_are_named_and_what_is_wrong_with_that() {
        let offers = offered(SETTINGS, TABLE);
        let books = offers["books"].as_array().unwrap();
        let of = |id: &str| books.iter().find(|book| book["id"] == id).unwrap();
        let told = |id: &str| (of(id)["named"].as_bool().unwrap(), of(id)["problem"].as_str().unwrap());
        assert_eq!(told("eu-rohs-annex-ii"), (true, ""));
        assert_eq!(told("eu-elv-2000-53"), (true, "differs"));
        assert_eq!(told("gone"), (true, "not_loaded"));
        assert_eq!(told("js709b-2015"), (false, ""));
        assert!(of("eu-elv-2000-53")["from_memory"].as_bool().unwrap());
    }

    #[test]
    fn rows_for_the_sites_table_come_with_the_act_that_takes_them_over() {
        let offers = offered(SETTINGS, TABLE);
        let row = &offers["site_rows"][0];
        assert!(row["value"].as_str().unwrap().starts_with("element=Pb;class=metal;s="));
        assert_eq!((row["readings"].as_u64(), row["near"].as_bool()), (Some(2), Some(false)));
    }
}
