//! The whole state of an inspection, and the whole program: [`review`].

use std::cell::OnceCell;
use std::collections::{BTreeMap, BTreeSet};

use crate::acts::{Act, ActKind, Settings, Target, Weight};
use crate::claims::{self, Claims, Expiry, Look, Material, MaterialClaims};
use crate::composition::CompositionReview;
use crate::exempt::{Group, Seen};
use crate::history::History;
use crate::judging::{Assessed, GroupAssessed, SourceReview};
use crate::lot::{Disposition, LimitTally, LotReason, LotReasonCode, MaterialTally, Reasons};
use crate::material::{ClassFrom, MaterialClass};
use crate::outcome::Outcome;
use crate::reading::{Cell, CellState, Identity, NoticeCode, Source};
use crate::rules::{InForce, Problem, RuleBooks};
use crate::substance::{Halogen, Substance};
use crate::text_pool::TextId;
use crate::trust::{self, Taken, TrustFindings};

/// Sources, rule books and acts: everything a review rests on.
#[derive(Clone, Debug)]
pub struct Inspection {
    /// The sources, sorted by the bytes of their names, then by digest.
    pub sources: Vec<Source>,
    /// The rule books.
    pub books: RuleBooks,
    /// What people did, in order.
    pub acts: Vec<Act>,
    /// What earlier inspections found.
    pub history: History,
}

impl Inspection {
    /// An inspection with the built-in rule books and nothing else.
    ///
    /// # Errors
    /// The problems of a built-in book; a test keeps this from happening.
    pub fn new() -> Result<Inspection, Vec<Problem>> {
        Ok(Inspection {
            sources: Vec::new(),
            books: RuleBooks::built_in()?,
            acts: Vec::new(),
            history: History::default(),
        })
    }

    /// Adds a source in its place, whatever order sources arrive in.
    pub fn add_source(&mut self, source: Source) {
        let key = |one: &Source| (one.name.clone().into_bytes(), one.sha256.clone());
        let wanted = key(&source);
        let at = self.sources.partition_point(|one| key(one) <= wanted);
        self.sources.insert(at, source);
    }

    /// Adds every source of a file: one, or one for each table of an archive.
    pub fn add_sources(&mut self, sources: impl IntoIterator<Item = Source>) {
        for source in sources {
            self.add_source(source);
        }
    }

    /// The settings the acts add up to.
    pub fn settings(&self) -> Settings {
        Settings::from_acts(&self.acts)
    }
}

/// What a reading's verdicts come down to, kept for every reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Verdicts {
    /// Outcomes of the five substances.
    pub substances: [Outcome; 5],
    /// Outcomes of Cl, Br and the total.
    pub halogens: [Outcome; 3],
    /// The class.
    pub class: MaterialClass,
    /// Where the class came from.
    pub class_from: ClassFrom,
    /// A check reading: no product, in no material.
    pub check: bool,
}

impl Verdicts {
    /// What trust is asked of it: of elements that were measured and apply; of chlorine where a halogen book counts.
    fn subject(&self, halogens_count: bool) -> trust::Subject {
        let matters = |outcome: Outcome| !matches!(outcome, Outcome::NotMeasured | Outcome::NotApplicable);
        let [cd, pb, hg, cr, br] = self.substances.map(matters);
        let [chlorine, ..] = self.halogens.map(matters);
        let needed = [cd, pb, hg, cr, br, halogens_count && chlorine];
        trust::Subject { class: self.class, needed: needed.map(|one| one && !self.check) }
    }

    /// The worst outcome over the five substances.
    pub fn worst(&self) -> Outcome {
        self.substances.iter().copied().max().unwrap_or(Outcome::NotMeasured)
    }
}

/// One material with all its readings.
#[derive(Clone, Debug)]
pub struct MaterialFinding {
    /// Index of its lot.
    pub lot: usize,
    /// Part; `None` where not stated.
    pub part: Option<String>,
    /// Name; `None` where not stated (the class then stands in for it in the key).
    pub name: Option<String>,
    /// Class of its readings; unknown where they differ.
    pub class: MaterialClass,
    /// Its readings, as indices over all sources.
    pub readings: Vec<u32>,
    /// What they add up to.
    pub tally: MaterialTally,
    /// What is claimed of it, and what may be.
    pub claims: MaterialClaims,
    /// The disposition.
    pub disposition: Disposition,
    /// Why, worst first.
    pub reasons: Vec<LotReason>,
}

/// One part of a lot.
#[derive(Clone, Debug)]
pub struct PartFinding {
    /// Index of its lot.
    pub lot: usize,
    /// Part; `None` where not stated.
    pub part: Option<String>,
    /// The disposition.
    pub disposition: Disposition,
    /// Why, worst first.
    pub reasons: Vec<LotReason>,
}

/// One lot.
#[derive(Clone, Debug)]
pub struct LotFinding {
    /// Lot; `None` where not stated, then one a source.
    pub lot: Option<String>,
    /// Supplier; `None` where not stated.
    pub supplier: Option<String>,
    /// The source of a lot that is not stated.
    pub source: Option<usize>,
    /// How many readings it has.
    pub readings: u64,
    /// How many physical units its least sampled material was measured on; counted only where a plan is given.
    pub units: u64,
    /// How many materials it has.
    pub materials: u64,
    /// The disposition.
    pub disposition: Disposition,
    /// Why, worst first.
    pub reasons: Vec<LotReason>,
}

impl LotFinding {
    /// The lot as an act names it.
    pub fn target(&self) -> Target {
        Target::Lot(self.supplier.clone().unwrap_or_default(), self.lot.clone().unwrap_or_default())
    }
}

/// What a review found.
#[derive(Clone, Debug, Default)]
pub struct Findings {
    /// Index of the first reading of each source, and one past the last.
    pub first_reading: Vec<usize>,
    /// The verdicts of every reading, source after source, in file order.
    pub verdicts: Vec<Verdicts>,
    /// Check readings per source.
    pub checks: Vec<u64>,
    /// Rows of the check readings per source.
    pub check_rows: Vec<u64>,
    /// Per source: an earlier source with the same bytes, whose readings stand for it.
    pub same_as: Vec<Option<usize>>,
    /// The materials, sorted by lot, part, name and class.
    pub materials: Vec<MaterialFinding>,
    /// The parts, in the same order.
    pub parts: Vec<PartFinding>,
    /// The lots, sorted by supplier, lot and source.
    pub lots: Vec<LotFinding>,
    /// What falls out of conformity, and when.
    pub expiries: Vec<Expiry>,
    /// Check readings, and the trust of every reading.
    pub trust: TrustFindings,
}

impl Findings {
    /// The source and row of a reading.
    pub fn place(&self, reading: usize) -> Option<(usize, usize)> {
        if reading >= self.verdicts.len() {
            return None;
        }
        let source = self.first_reading.partition_point(|first| *first <= reading).checked_sub(1)?;
        Some((source, reading - self.first_reading.get(source)?))
    }

    /// Where the rows of a source ended.
    pub fn counts(&self, inspection: &Inspection, source_index: usize) -> RowCounts {
        let Some(source) = inspection.sources.get(source_index) else { return RowCounts::default() };
        let (readings, rows) = (source.readings.len() as u64, source.rows_in_readings());
        let checks = self.check_rows.get(source_index).copied().unwrap_or(0);
        let duplicate = self.same_as.get(source_index).copied().flatten().is_some();
        RowCounts {
            rows_in: source.rows_in,
            used: if duplicate { 0 } else { rows - checks },
            check: checks,
            duplicate: source.rows_duplicate
                + if duplicate { rows } else { 0 }
                + if source.readings.is_empty() { source.rows_turned } else { 0 },
            set_aside: source.rows_set_aside(),
            refused: source.rows_refused,
            readings: if duplicate { 0 } else { readings },
        }
    }

    /// The lot of every reading at once; `u32::MAX` for a check.
    pub fn lots_of_readings(&self) -> Vec<u32> {
        let mut lots = vec![u32::MAX; self.verdicts.len()];
        for material in &self.materials {
            for reading in &material.readings {
                if let Some(lot) = lots.get_mut(*reading as usize) {
                    *lot = material.lot as u32;
                }
            }
        }
        lots
    }
}

/// The fates of the rows of a source. Every row has exactly one.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct RowCounts {
    /// Rows in.
    pub rows_in: u64,
    /// Used in a reading.
    pub used: u64,
    /// Used in a check reading.
    pub check: u64,
    /// Merged as duplicates.
    pub duplicate: u64,
    /// Set aside by intake (blank, heading, units).
    pub set_aside: u64,
    /// Refused with a reason.
    pub refused: u64,
    /// Readings made of the used and check rows.
    pub readings: u64,
}

impl RowCounts {
    /// True where the fates add up to the rows that came in.
    pub const fn adds_up(&self) -> bool {
        self.rows_in == self.used + self.check + self.duplicate + self.set_aside + self.refused
    }

    /// The counts of two sources together.
    #[must_use]
    pub const fn plus(self, other: RowCounts) -> RowCounts {
        RowCounts {
            rows_in: self.rows_in + other.rows_in,
            used: self.used + other.used,
            check: self.check + other.check,
            duplicate: self.duplicate + other.duplicate,
            set_aside: self.set_aside + other.set_aside,
            refused: self.refused + other.refused,
            readings: self.readings + other.readings,
        }
    }
}

type LotKey = (Option<String>, Option<String>, Option<usize>);
type MaterialKey = (LotKey, Option<String>, Option<String>, Option<MaterialClass>);
type LocalKey = (TextId, TextId, TextId, TextId, Option<MaterialClass>);

#[derive(Default)]
struct Gathered {
    readings: Vec<u32>,
    tally: MaterialTally,
    /// Per limit of the books in force.
    limits: Vec<LimitTally>,
    claims: MaterialClaims,
    classes: Vec<MaterialClass>,
    units: BTreeSet<String>,
    without_unit: u64,
}

/// Reviews an inspection: every reading judged, every material, part and lot disposed of.
///
/// # Decision
/// Outcomes are per reading; a material's outcome of a substance is its worst reading's, a part is its worst
/// material, a lot its worst part, its trust and its sampling. Missing evidence holds unless set advisory.
pub fn review(inspection: &Inspection) -> Findings {
    let settings = inspection.settings();
    let mut findings = Findings { first_reading: vec![0], ..Findings::default() };
    let mut gathered: BTreeMap<MaterialKey, Gathered> = BTreeMap::new();
    let counts_units = settings.all().any(|(kind, _, _)| kind == ActKind::UnitsToTake);
    let mut sources_of: BTreeMap<LotKey, BTreeSet<usize>> = BTreeMap::new();

    let certificates = settings.certificates();
    let names = trust::Names::new(&settings, &certificates);
    let (mut check_readings, mut marks_not_taken) = (Vec::new(), Vec::new());
    let reviewers: Vec<SourceReview<'_>> = inspection
        .sources
        .iter()
        .map(|source| SourceReview::new(source, &inspection.books, &settings))
        .collect();
    for (source_index, (source, reviewer)) in inspection.sources.iter().zip(&reviewers).enumerate() {
        let same_as = inspection
            .sources
            .get(..source_index)
            .and_then(|before| before.iter().position(|one| one.same_bytes_as(source)));
        findings.same_as.push(same_as);
        if same_as.is_some() {
            findings.checks.push(0);
            findings.check_rows.push(0);
            findings.first_reading.push(findings.verdicts.len());
            continue;
        }
        let named = names.of_source(source);
        // Grouping runs on the source's own small numbers; texts are compared once for each group.
        let mut local: BTreeMap<LocalKey, Gathered> = BTreeMap::new();
        let mut pooled: BTreeMap<usize, GroupAssessed> = BTreeMap::new();
        let (mut checks, mut check_rows) = (0, 0);
        let base = findings.verdicts.len();
        for row in 0..source.readings.len() {
            let assessed = reviewer.assess(row);
            let id = |identity| source.readings.identity_id(identity, row);
            let taken = named.taken(row, || {
                let counted = settings.halogen_book(&inspection.books).is_some();
                let halogens =
                    Halogen::ALL.map(|of| counted && assessed.halogen(of).outcome == Outcome::Over);
                assessed.substances.iter().any(|one| one.outcome == Outcome::Over) || halogens.contains(&true)
            });
            match taken {
                Taken::Product => {}
                Taken::Check(kind) => check_readings.push(((base + row) as u32, kind)),
                Taken::MarkNotTaken => marks_not_taken.push((base + row) as u32),
            }
            let check = matches!(taken, Taken::Check(_));
            findings.verdicts.push(Verdicts {
                substances: assessed.substances.map(|judged| judged.outcome),
                halogens: Halogen::ALL.map(|of| assessed.halogen(of).outcome),
                class: assessed.class,
                class_from: assessed.class_from,
                check,
            });
            if check {
                checks += 1;
                check_rows += u64::from(source.readings.rows_of(row));
                continue;
            }
            let counted = match reviewer.repeats().group_of(row) {
                None => assessed,
                Some(group) => {
                    let together = pooled
                        .entry(group)
                        .or_insert_with(|| reviewer.assess_group(group, assessed.class, assessed.class_from));
                    let counted = together.counted(&assessed);
                    if reviewer.repeats().is_last(group, row) {
                        pooled.remove(&group);
                    }
                    counted
                }
            };
            let name = id(Identity::Material);
            let stand_in = if name.is_some() { None } else { Some(assessed.class) };
            let key = (id(Identity::Supplier), id(Identity::Lot), id(Identity::Part), name, stand_in);
            let group = local.entry(key).or_default();
            group.add((base + row) as u32, &counted);
            group.add_limits(reviewer, assessed.class, row);
            if counts_units {
                match source.readings.identity(Identity::Unit, row) {
                    Some(unit) => {
                        // One piece written two ways is one piece: counting it twice would fill a plan.
                        group.units.insert(unit.to_lowercase());
                    }
                    None => group.without_unit += 1,
                }
            }
        }
        findings.checks.push(checks);
        findings.check_rows.push(check_rows);
        findings.first_reading.push(findings.verdicts.len());
        for ((supplier, lot, part, name, stand_in), group) in local {
            let owned = |id| source.readings.pool.get(id).map(str::to_owned);
            let lot_key = lot_key(source, source_index, supplier, lot);
            sources_of.entry(lot_key.clone()).or_default().insert(source_index);
            gathered.entry((lot_key, owned(part), owned(name), stand_in)).or_default().merge(group);
        }
    }

    // A row that a file lost may be of any lot it speaks of, even where its readings of that lot stand elsewhere too.
    for (source_index, source) in inspection.sources.iter().enumerate() {
        for (supplier, lot, stays_in) in &source.duplicates.lots {
            let of_source = if lot.is_none() { Some(*stays_in) } else { None };
            if let Some(sources) = sources_of.get_mut(&(supplier.clone(), lot.clone(), of_source)) {
                sources.insert(source_index);
            }
        }
    }

    let halogens_named = settings.halogen_book(&inspection.books);
    let in_force = inspection.books.in_force(&settings.books);
    let limits: Vec<String> = in_force.limit_names().collect();
    let halogen_loaded =
        halogens_named.is_some_and(|id| inspection.books.halogens().is_some_and(|(book, _)| book.id == id));
    let unread: Vec<String> = inspection.sources.iter().flat_map(not_read_of).collect();
    let judged = {
        let verdicts = &findings.verdicts;
        let reviewed = trust::Reviewed {
            settings: &settings,
            certificates: certificates.clone(),
            sources: &inspection.sources,
            reviewers: &reviewers,
            first_reading: &findings.first_reading,
            checks: &check_readings,
            marks_not_taken,
        };
        trust::judge(reviewed, &|reading| Some(verdicts.get(reading)?.subject(halogen_loaded)))
    };
    let mut lots: BTreeMap<LotKey, LotGather> = BTreeMap::new();
    let said = Claims::new(&settings, &inspection.books);
    let compositions: Vec<OnceCell<CompositionReview<'_>>> =
        inspection.sources.iter().map(|_| OnceCell::new()).collect();
    for (key, mut group) in gathered {
        if group.classes.len() > 1 {
            group.contest(&findings, &reviewers);
        }
        group.claim(&said, &key, |reading| {
            let (index, row) = findings.place(reading as usize)?;
            let (source, composition) = (inspection.sources.get(index)?, compositions.get(index)?);
            let composition = composition.get_or_init(|| CompositionReview::new(&source.readings));
            Some(Place { index, source, reviewer: reviewers.get(index)?, composition, row })
        });
        lots.entry(key.0.clone()).or_default().materials.push((key, group));
    }
    for (lot_index, (key, lot)) in lots.into_iter().enumerate() {
        let of_sources = |count: &dyn Fn(usize) -> u64| {
            sources_of.get(&key).map_or(0, |sources| sources.iter().map(|at| count(*at)).sum())
        };
        let refused = of_sources(&|at| inspection.sources.get(at).map_or(0, |source| source.rows_refused));
        let place = |reading| findings.place(reading);
        let mut readings = lot.materials.iter().flat_map(|(_, group)| group.readings.iter().copied());
        let trust = trust::Lots::new(&judged, &inspection.sources, &place)
            .reasons(&mut readings, missing(&settings, ActKind::Trust));
        dispose_lot(
            &mut findings,
            &LotContext {
                settings: &settings,
                key: &key,
                index: lot_index,
                halogens_count: halogen_loaded,
                halogen_book_missing: halogens_named.filter(|_| !halogen_loaded),
                refused,
                trust,
                unread: &unread,
                limits: &limits,
                in_force: &in_force,
            },
            lot,
        );
    }
    findings.trust = judged.findings;
    findings.expiries = claims::expiries(
        &settings,
        &inspection.books,
        findings.materials.iter().map(|material| &material.claims),
    );
    findings
}

/// One reading of a material with all that is known of it.
#[derive(Clone, Copy)]
struct Place<'r> {
    index: usize,
    source: &'r Source,
    reviewer: &'r SourceReview<'r>,
    composition: &'r CompositionReview<'r>,
    row: usize,
}

impl Place<'_> {
    /// What the reading shows the material to be, and whether it surely does.
    fn group(&self) -> (Option<Group>, bool) {
        let word = self.source.readings.identity(Identity::Class, self.row).unwrap_or("");
        if let Some(group) = claims::group_of_word(word) {
            return (Some(group), true);
        }
        let sigma = |element, cell: &Cell| self.reviewer.printed_sigma(element, cell, self.row);
        let found = self.composition.describe(self.row, false, sigma).and_then(|described| described.group);
        (
            found.and_then(|found| Group::from_code(found.group.code())),
            found.is_some_and(|found| found.surely),
        )
    }
}

impl Gathered {
    fn add(&mut self, reading: u32, assessed: &Assessed) {
        self.readings.push(reading);
        let tally = &mut self.tally;
        tally.readings += 1;
        for (at, judged) in assessed.substances.iter().enumerate() {
            tally.counts[at][judged.outcome as usize] += 1;
            tally.firm_over[at] += u64::from(assessed.firm_over[at]);
        }
        for of in Halogen::ALL {
            let outcome = assessed.halogen(of).outcome;
            tally.halogen_counts[of as usize][outcome as usize] += 1;
            tally.halogen_firm_over[of as usize] +=
                u64::from(outcome == Outcome::Over && assessed.class != MaterialClass::Unknown);
        }
        let contested = assessed.class_from == ClassFrom::Contested;
        tally.class_contested += u64::from(contested);
        tally.class_unknown += u64::from(assessed.class == MaterialClass::Unknown && !contested);
        tally.calibration_doubtful += u64::from(assessed.calibration.is_some());
        for (at, (judged, cautions)) in assessed.substances.iter().zip(&assessed.cautions).enumerate() {
            tally.doubtful[at].count(judged.outcome, cautions.strong);
        }
        for (of, cautions) in Halogen::ALL.into_iter().zip(&assessed.halogen_cautions) {
            tally.halogen_doubtful[of as usize].count(assessed.halogen(of).outcome, cautions.strong);
        }
        tally.thickness_missing += u64::from(assessed.thickness_missing);
        tally.multiple_unknown += u64::from(assessed.multiple_unknown);
        if !self.classes.contains(&assessed.class) {
            self.classes.push(assessed.class);
        }
    }

    /// A material whose readings have different classes is contested: each reading counts as of unknown class.
    fn contest(&mut self, findings: &Findings, reviewers: &[SourceReview<'_>]) {
        let readings = std::mem::take(&mut self.readings);
        self.tally = MaterialTally::default();
        self.limits.clear();
        for reading in readings {
            let Some((source, row)) = findings.place(reading as usize) else { continue };
            let Some(reviewer) = reviewers.get(source) else { continue };
            let class_from = reviewer.class(row).1;
            let contested = reviewer.assess_as(MaterialClass::Unknown, class_from, row);
            let counted = match reviewer.repeats().group_of(row) {
                None => contested,
                Some(group) => {
                    reviewer.assess_group(group, MaterialClass::Unknown, class_from).counted(&contested)
                }
            };
            self.add(reading, &counted);
            self.add_limits(reviewer, MaterialClass::Unknown, row);
        }
    }

    fn add_limits(&mut self, reviewer: &SourceReview<'_>, class: MaterialClass, row: usize) {
        if !reviewer.has_limits() {
            return;
        }
        let judged = reviewer.limits_as(class, row);
        self.limits.resize(judged.len(), LimitTally::default());
        for (tally, one) in self.limits.iter_mut().zip(&judged) {
            tally.add(one.judged.judgement.outcome, one.judged.firm_over);
        }
    }

    /// The class its readings agree on; unknown where they differ.
    fn class(&self) -> MaterialClass {
        match self.classes[..] {
            [class] => class,
            _ => MaterialClass::Unknown,
        }
    }

    /// Judges what is claimed of the material by its measurements that are over limit or undecided.
    fn claim<'r>(
        &mut self,
        said: &Claims<'_>,
        (_, part, name, _): &MaterialKey,
        at: impl Fn(u32) -> Option<Place<'r>>,
    ) {
        if !said.concern(&self.tally) {
            return;
        }
        let places: Vec<_> = self.readings.iter().filter_map(|reading| at(*reading)).collect();
        let class = self.class();
        let (mut groups, mut perhaps) = (Vec::new(), Vec::new());
        for place in &places {
            let (group, surely) = place.group();
            let list = if surely { &mut groups } else { &mut perhaps };
            if let Some(group) = group.filter(|group| !list.contains(group)) {
                list.push(group);
            }
        }
        let together: OnceCell<BTreeMap<(usize, usize), GroupAssessed>> = OnceCell::new();
        let assess_groups = || {
            let of_group = |place: &Place<'r>| {
                Some(((place.index, place.reviewer.repeats().group_of(place.row)?), *place))
            };
            let groups: BTreeMap<_, _> = places.iter().filter_map(of_group).collect();
            let assessed = groups.into_iter().map(|(key, place)| {
                (key, place.reviewer.assess_group(key.1, class, place.reviewer.class(place.row).1))
            });
            assessed.collect()
        };
        let looks = |substance: Substance| {
            let at = substance as usize;
            let look = |&Place { index, reviewer, row, .. }: &Place<'_>| {
                // Repeats of a spot that are judged together are one measurement, as they are for the outcome.
                let pooled = reviewer
                    .repeats()
                    .group_of(row)
                    .and_then(|group| together.get_or_init(assess_groups).get(&(index, group)));
                let pooled = pooled.filter(|pooled| pooled.substances.get(at).copied().unwrap_or(false));
                let own = pooled.is_none().then(|| reviewer.assess_as(class, reviewer.class(row).1, row));
                let judged = own.as_ref().or(pooled.map(|pooled| &pooled.together))?.substances.get(at)?;
                if !matches!(judged.outcome, Outcome::Over | Outcome::Undecided) {
                    return None;
                }
                let cell = match pooled {
                    Some(pooled) => pooled.elements.get(at).and_then(|one| one.judged).map(|(cell, _)| cell),
                    None => Some(reviewer.cell(at, row)),
                };
                let number = cell.filter(|cell| cell.state == CellState::Number);
                Some(Look { value: number.map(|cell| cell.value), sigma: judged.used.sigma })
            };
            places.iter().filter_map(look).collect()
        };
        let material = Material {
            part: part.as_deref().unwrap_or(""),
            name: name.as_deref().unwrap_or(""),
            seen: Seen { class, groups: &groups, perhaps: &perhaps },
            tally: &self.tally,
        };
        self.claims = said.judge(material, &looks);
    }

    fn merge(&mut self, other: Gathered) {
        self.readings.extend(other.readings);
        let (tally, more) = (&mut self.tally, other.tally);
        tally.readings += more.readings;
        for at in 0..5 {
            for outcome in 0..8 {
                tally.counts[at][outcome] += more.counts[at][outcome];
            }
            tally.firm_over[at] += more.firm_over[at];
            tally.doubtful[at].add(more.doubtful[at]);
        }
        for at in 0..3 {
            for outcome in 0..8 {
                tally.halogen_counts[at][outcome] += more.halogen_counts[at][outcome];
            }
            tally.halogen_firm_over[at] += more.halogen_firm_over[at];
            tally.halogen_doubtful[at].add(more.halogen_doubtful[at]);
        }
        tally.class_contested += more.class_contested;
        tally.class_unknown += more.class_unknown;
        tally.calibration_doubtful += more.calibration_doubtful;
        tally.thickness_missing += more.thickness_missing;
        tally.multiple_unknown += more.multiple_unknown;
        LimitTally::add_all(&mut self.limits, &other.limits);
        self.units.extend(other.units);
        self.without_unit += other.without_unit;
        for class in other.classes {
            if !self.classes.contains(&class) {
                self.classes.push(class);
            }
        }
    }
}

/// True for a source that may hold readings nobody has seen: a table that could not be read, or one with no row that
/// could. Its lots are unknown, so it concerns all of them.
fn hides_readings(source: &Source) -> bool {
    match source.problem {
        // Readings that stand in another file too were read.
        None => source.readings.is_empty() && source.rows_refused > 0 && source.rows_duplicate == 0,
        Some(
            NoticeCode::Unreadable
            | NoticeCode::WorkbookBroken
            | NoticeCode::WorkbookNotRead
            | NoticeCode::WorkbookTooLarge
            | NoticeCode::SheetNotThere
            | NoticeCode::ArchiveBroken
            | NoticeCode::ArchiveTooLarge
            | NoticeCode::EntryNotRead
            | NoticeCode::ArchiveInArchive
            | NoticeCode::TooManyColumns,
        ) => true,
        Some(NoticeCode::NoElementColumn) => source.rows_refused > 0,
        Some(_) => false,
    }
}

/// What of a source may hold readings nobody has seen: itself, or sheets that promise a table and were passed over.
fn not_read_of(source: &Source) -> Vec<String> {
    if hides_readings(source) {
        return vec![source.name.clone()];
    }
    let passed_over = source.sheets.iter().filter(|sheet| !sheet.read && sheet.passed_over);
    passed_over.map(|sheet| format!("{} ({})", source.name, sheet.name)).collect()
}

fn lot_key(source: &Source, source_index: usize, supplier: TextId, lot: TextId) -> LotKey {
    let owned = |id| source.readings.pool.get(id).map(str::to_owned);
    let lot_text = owned(lot);
    let of_source = if lot_text.is_none() { Some(source_index) } else { None };
    (owned(supplier), lot_text, of_source)
}

#[derive(Default)]
struct LotGather {
    materials: Vec<(MaterialKey, Gathered)>,
}

struct LotContext<'a> {
    settings: &'a Settings,
    key: &'a LotKey,
    index: usize,
    halogens_count: bool,
    halogen_book_missing: Option<&'a str>,
    refused: u64,
    trust: Vec<LotReason>,
    unread: &'a [String],
    /// The names of the limits in force.
    limits: &'a [String],
    in_force: &'a InForce<'a>,
}

/// What missing evidence of a kind does.
fn missing(settings: &Settings, kind: ActKind) -> Disposition {
    match settings.weight(kind) {
        Weight::Holding => Disposition::Hold,
        Weight::Advisory => Disposition::Accept,
    }
}

fn dispose_lot(findings: &mut Findings, lot: &LotContext<'_>, gathered: LotGather) {
    let settings = lot.settings;
    let holding = |kind| missing(settings, kind);
    let mut lot_reasons = Reasons::default();
    let (mut readings, mut materials) = (0, 0);
    // Every material of the lot has to be measured on as many units as the plan asks for.
    let (mut fewest_units, mut without_unit) = (u64::MAX, 0);
    let mut parts: BTreeMap<Option<String>, (Reasons, Vec<String>, u64)> = BTreeMap::new();
    for ((_, part, name, _), mut group) in gathered.materials {
        let class = group.class();
        let mut reasons = group.tally.reasons(lot.halogens_count);
        LimitTally::reasons(&group.limits, lot.limits, group.tally.readings, &mut reasons);
        let (disposition, reasons) = group.claims.apply(&group.tally, reasons).close();
        readings += group.tally.readings;
        materials += 1;
        fewest_units = fewest_units.min(group.units.len() as u64);
        without_unit += group.without_unit;
        let (part_reasons, measured, part_readings) = parts.entry(part.clone()).or_default();
        part_reasons.add_all(&reasons);
        *part_readings += group.tally.readings;
        measured.extend(name.clone());
        group.readings.sort_unstable();
        findings.materials.push(MaterialFinding {
            lot: lot.index,
            part,
            name,
            class,
            readings: group.readings,
            tally: group.tally,
            claims: group.claims,
            disposition,
            reasons,
        });
    }
    for (part, (mut reasons, measured, part_readings)) in parts {
        reasons.set_readings(part_readings);
        match settings.bill_of_materials(part.as_deref().unwrap_or("")) {
            None => reasons.add(LotReason {
                code: LotReasonCode::BillOfMaterialsNone,
                effect: holding(ActKind::Materials),
                about: String::new(),
                count: 1,
                of: 1,
            }),
            Some(bill) => {
                let listed = bill.len() as u64;
                let mut extra: Vec<&String> = measured.iter().filter(|name| !bill.contains(name)).collect();
                extra.sort_unstable();
                extra.dedup();
                for name in extra {
                    reasons.add(LotReason {
                        code: LotReasonCode::MaterialNotListed,
                        effect: Disposition::Hold,
                        about: name.clone(),
                        count: 1,
                        of: listed,
                    });
                }
                for missing in bill.into_iter().filter(|name| !measured.contains(name)) {
                    reasons.add(LotReason {
                        code: LotReasonCode::MaterialNotMeasured,
                        effect: Disposition::Hold,
                        about: missing,
                        count: 1,
                        of: listed,
                    });
                }
            }
        }
        let (disposition, reasons) = reasons.close();
        lot_reasons.add_all(&reasons);
        findings.parts.push(PartFinding { lot: lot.index, part, disposition, reasons });
    }
    lot_reasons.add_all(&lot.trust);
    let mut evidence = |code, effect, about: &str, count, of| {
        lot_reasons.add(LotReason { code, effect, about: about.to_owned(), count, of });
    };
    for name in lot.unread {
        evidence(LotReasonCode::FileNotRead, Disposition::Hold, name, 1, 1);
    }
    if lot.refused > 0 {
        evidence(LotReasonCode::RowsRefused, Disposition::Hold, "", lot.refused, lot.refused);
    }
    if let Some(book) = lot.halogen_book_missing {
        evidence(LotReasonCode::HalogenBookNotLoaded, Disposition::Hold, book, 1, 1);
    }
    for (code, names) in [
        (LotReasonCode::BookNotLoaded, &lot.in_force.not_loaded),
        (LotReasonCode::BookDiffers, &lot.in_force.differing),
    ] {
        for name in names {
            evidence(code, Disposition::Hold, name, 1, 1);
        }
    }
    let of_lot =
        |kind| settings.of_lot(kind, lot.key.0.as_deref().unwrap_or(""), lot.key.1.as_deref().unwrap_or(""));
    match (of_lot(ActKind::LotSize), of_lot(ActKind::UnitsToTake)) {
        (Some(size), Some(take)) => {
            let wanted = take.min(size);
            if without_unit > 0 {
                evidence(LotReasonCode::UnitsNotStated, Disposition::Hold, "", without_unit, readings);
            }
            if fewest_units < wanted {
                evidence(LotReasonCode::SamplingTooFew, Disposition::Hold, "", fewest_units, wanted);
            }
        }
        _ => evidence(LotReasonCode::SamplingNone, holding(ActKind::Sampling), "", 1, 1),
    }
    lot_reasons.set_readings(readings);
    let (disposition, reasons) = lot_reasons.close();
    findings.lots.push(LotFinding {
        lot: lot.key.1.clone(),
        supplier: lot.key.0.clone(),
        source: lot.key.2,
        readings,
        units: if fewest_units == u64::MAX { 0 } else { fewest_units },
        materials,
        disposition,
        reasons,
    });
}
