//! The whole state of an inspection, and the whole program: [`review`].

use std::cell::OnceCell;
use std::collections::{BTreeMap, BTreeSet};

use crate::acts::{self, Act, ActKind, Settings, Target, Weight};
use crate::change::{self, Accepted, Change, Compared};
use crate::claims::{self, Claims, Expiry, Look, Material, MaterialClaims};
use crate::exempt::{Group, Seen};
use crate::history::History;
use crate::judging::{Assessed, GroupAssessed, SourceReview};
use crate::lot::{Disposition, LimitTally, LotReason, LotReasonCode, MaterialTally, Reasons};
use crate::lot_sampling::{self, LotSampling};
use crate::material::{ClassFrom, MaterialClass};
use crate::opened::{Opened, OpenedFile};
use crate::outcome::{Outcome, Reason};
use crate::photo::{self, Photo};
use crate::reading::{Cell, CellState, Identity, NoticeCode, Source};
use crate::rules::{InForce, Problem, RuleBooks};
use crate::sampling::{UnitState, Units};
use crate::settling::{self, LabFinding, SetAside, Settling};
use crate::substance::{Halogen, Substance};
use crate::text_pool::TextId;
use crate::trust::{self, CheckKind, Taken, TrustFindings};
use crate::undertaking::HoldEnds;

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
    /// The files the sources are from.
    pub opened: Opened,
    /// The photographs given, sorted by the bytes of their names, then by digest. Only those that an act names are evidence.
    pub photos: Vec<Photo>,
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
            opened: Opened::default(),
            photos: Vec::new(),
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

    /// Adds a file that was opened, with its sources.
    pub fn add_file(&mut self, file: OpenedFile, sources: impl IntoIterator<Item = Source>) {
        self.opened.add(file);
        self.add_sources(sources);
    }

    /// Forgets all files and their sources.
    pub fn clear_files(&mut self) {
        self.opened = Opened::default();
        self.sources.clear();
    }

    /// The photographs that acts may mean, by name or digest: no other is evidence.
    pub fn named_photos(&self) -> Vec<&Photo> {
        let settings = self.settings();
        let said = settings.photos();
        self.photos.iter().filter(|photo| said.iter().any(|(_, said)| said.may_mean(photo))).collect()
    }

    /// Adds a photograph in its place; see [`photo::add`] for what goes beyond the bounds.
    pub fn add_photo(&mut self, photo: Photo) {
        photo::add(&mut self.photos, photo);
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
    /// Its readings that a person set aside, as indices over all sources; they count for nothing above.
    pub set_aside: Vec<u32>,
    /// What laboratories found in it.
    pub laboratory: Vec<LabFinding>,
    /// Beside the part's accepted lots; `None` where the history has no lots.
    pub change: Option<Change>,
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
    /// How many physical units its least sampled material was measured on; counted only where lot size, units or a plan are
    /// given.
    pub units: u64,
    /// Its sampling; `None` where nothing is said of it.
    pub sampling: Option<LotSampling>,
    /// How many materials it has.
    pub materials: u64,
    /// Who ends its hold, by when, and how much waits; `None` where nobody said.
    pub hold_ends: Option<HoldEnds>,
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
    /// The readings that a person set aside, with why.
    pub set_aside: BTreeMap<u32, String>,
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
            readings_set_aside: match (
                self.first_reading.get(source_index),
                self.first_reading.get(source_index + 1),
            ) {
                (Some(first), Some(past)) => self.set_aside.range(*first as u32..*past as u32).count() as u64,
                _ => 0,
            },
        }
    }

    /// The lot of every reading at once; `u32::MAX` for a check.
    pub fn lots_of_readings(&self) -> Vec<u32> {
        let mut lots = vec![u32::MAX; self.verdicts.len()];
        for material in &self.materials {
            for reading in material.readings.iter().chain(&material.set_aside) {
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
    /// How many of them a person set aside; their rows stay used.
    pub readings_set_aside: u64,
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
            readings_set_aside: self.readings_set_aside + other.readings_set_aside,
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
    change: Option<Change>,
    classes: Vec<MaterialClass>,
    units: Units,
    without_unit: u64,
    /// What a person set aside, with the repeats it was judged with.
    aside: Option<Box<Gathered>>,
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
    let counts_units = lot_sampling::counts_units(&settings);
    let halogens_named = settings.halogen_book(&inspection.books);
    let halogen_loaded =
        halogens_named.is_some_and(|id| inspection.books.halogens().is_some_and(|(book, _)| book.id == id));
    let mut sources_of: BTreeMap<LotKey, BTreeSet<usize>> = BTreeMap::new();

    let certificates = settings.certificates();
    let names = trust::Names::new(&settings, &certificates);
    let (mut check_readings, mut marks_not_taken) = (Vec::new(), Vec::new());
    let mut by_name_alone: BTreeMap<usize, u64> = BTreeMap::new();
    // What is set aside is judged as if it weren't, to tell what it would have been.
    let as_measured = settings.without(ActKind::SetAside);
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
        let lines_aside = settling::lines_set_aside(&settings, &source.name);
        let whole = OnceCell::new();
        for row in 0..source.readings.len() {
            let assessed = reviewer.assess(row);
            let id = |identity| source.readings.identity_id(identity, row);
            let taken = named.taken(row, || {
                let counted = settings.halogen_book(&inspection.books).is_some();
                let halogens = Halogen::ALL.map(|of| assessed.halogen(of).outcome);
                let limits = reviewer.limits_as(assessed.class, row);
                let substances = assessed.substances.iter().map(|one| one.outcome);
                let limits = limits.iter().map(|one| one.judged.judgement.outcome);
                let all: Vec<Outcome> =
                    substances.chain(limits).chain(halogens.into_iter().filter(|_| counted)).collect();
                let worst = [Outcome::Over, Outcome::Undecided].into_iter().find(|one| all.contains(one));
                worst.unwrap_or(Outcome::Below)
            });
            match taken {
                Taken::Product => {}
                Taken::Check(kind) => check_readings.push(((base + row) as u32, kind)),
                Taken::CheckByNameAlone => {
                    check_readings.push(((base + row) as u32, CheckKind::Standard));
                    *by_name_alone.entry(source_index).or_default() += 1;
                }
                Taken::MarkNotTaken => marks_not_taken.push((base + row) as u32),
            }
            let check = matches!(taken, Taken::Check(_) | Taken::CheckByNameAlone);
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
            if let Some(why) = lines_aside.get(&source.readings.line(row)) {
                let whole = whole.get_or_init(|| SourceReview::new(source, &inspection.books, &as_measured));
                group.put_aside((base + row) as u32, whole, row);
                findings.set_aside.insert((base + row) as u32, why.clone());
                continue;
            }
            group.add((base + row) as u32, &counted);
            let by_limits = group.add_limits(reviewer, assessed.class, row);
            if counts_units {
                let seen = by_limits.max(lot_sampling::seen(&counted, halogen_loaded));
                group.add_unit(source.readings.identity(Identity::Unit, row), seen);
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

    let in_force = inspection.books.in_force(&settings.books);
    let limits: Vec<String> = in_force.limit_names().collect();
    let not_in_use = not_in_use(inspection, &settings, halogen_loaded);
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
    let accepted = Accepted::new(&inspection.history, change::inspection_name(&inspection.sources));
    let said = Claims::new(&settings, &inspection.books);
    for (key, mut group) in gathered {
        if group.is_contested() {
            group.contest(&findings, &reviewers, |reading| {
                if !counts_units {
                    return None;
                }
                let (index, row) = findings.place(reading as usize)?;
                Some((inspection.sources.get(index)?.readings.identity(Identity::Unit, row), halogen_loaded))
            });
        }
        group.claim(&said, &key, |reading| {
            let (index, row) = findings.place(reading as usize)?;
            let verdicts = findings.verdicts.get(reading as usize)?;
            Some(Place {
                index,
                source: inspection.sources.get(index)?,
                reviewer: reviewers.get(index)?,
                verdicts,
                row,
            })
        });
        group.change = accepted.as_ref().map(|accepted| {
            let places = group.readings.iter().filter_map(|reading| {
                let (index, row) = findings.place(*reading as usize)?;
                Some((inspection.sources.get(index)?, reviewers.get(index)?, row))
            });
            let composition = change::compose(places);
            let ((supplier, lot, _), part, material, _) = &key;
            accepted.compare(Compared {
                supplier: supplier.as_deref().unwrap_or_default(),
                part: part.as_deref().unwrap_or_default(),
                material: material.as_deref().unwrap_or_default(),
                lot: lot.as_deref().unwrap_or_default(),
                class: group.class(),
                composition: &composition,
            })
        });
        lots.entry(key.0.clone()).or_default().materials.push((key, group));
    }
    let mut settling = Settling::new(&settings, &inspection.books, &in_force, halogen_loaded);
    for ((supplier, name, _), lot) in &lots {
        let materials: Vec<[String; 4]> = lot.materials.iter().map(|(key, _)| names_of(key)).collect();
        settling.count((supplier.as_deref().unwrap_or(""), name.as_deref().unwrap_or("")), &materials);
    }
    for (lot_index, (key, lot)) in lots.into_iter().enumerate() {
        let of_sources = |count: &dyn Fn(usize) -> u64| {
            sources_of.get(&key).map_or(0, |sources| sources.iter().map(|at| count(*at)).sum())
        };
        let refused = of_sources(&|at| inspection.sources.get(at).map_or(0, |source| source.rows_refused));
        let place = |reading| findings.place(reading);
        let mut readings = lot.materials.iter().flat_map(|(_, group)| group.readings.iter().copied());
        let mut trust = trust::Lots::new(&judged, &inspection.sources, &place)
            .reasons(&mut readings, missing(&settings, ActKind::Trust));
        // Where no check could be judged at all, that is said already.
        let of_source = key.2.filter(|_| judged.findings.any_judged());
        if let Some((source, count)) =
            of_source.and_then(|at| Some((inspection.sources.get(at)?, *by_name_alone.get(&at)?)))
        {
            let effect = missing(&settings, ActKind::Trust);
            let (code, about) = (LotReasonCode::TrustNotJudged, source.name.clone());
            trust.push(LotReason { code, effect, about, count, of: count });
        }
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
                not_in_use: &not_in_use,
                settling: &settling,
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
    /// What was judged of it in its own class, by itself.
    verdicts: &'r Verdicts,
    row: usize,
}

impl Place<'_> {
    /// What the reading shows the material to be, and whether it surely does.
    fn group(&self) -> (Option<Group>, bool) {
        let word = self.source.readings.identity(Identity::Class, self.row).unwrap_or("");
        if let Some(group) = claims::group_of_word(word) {
            return (Some(group), true);
        }
        let found = self.reviewer.alloy(self.row);
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
        tally.layers += u64::from(assessed.class == MaterialClass::Plated);
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

    /// A material whose readings have different classes is contested: each reading counts as of unknown class, but for a
    /// layer, which stays one.
    ///
    /// `unit` gives the unit of a reading and whether halogens count, where units are counted.
    fn contest<'u>(
        &mut self,
        findings: &Findings,
        reviewers: &[SourceReview<'_>],
        unit: impl Fn(u32) -> Option<(Option<&'u str>, bool)>,
    ) {
        let readings = std::mem::take(&mut self.readings);
        self.tally = MaterialTally::default();
        self.limits.clear();
        (self.units, self.without_unit) = (Units::default(), 0);
        for reading in readings {
            let Some((source, row)) = findings.place(reading as usize) else { continue };
            let Some(reviewer) = reviewers.get(source) else { continue };
            // What is measured through a layer stays undecided, whatever others say the material is.
            let (own, class_from) = reviewer.class(row);
            let class = self.judged_in(own);
            let contested = reviewer.assess_as(class, class_from, row);
            let counted = match reviewer.repeats().group_of(row) {
                None => contested,
                Some(group) => reviewer.assess_group(group, class, class_from).counted(&contested),
            };
            self.add(reading, &counted);
            let by_limits = self.add_limits(reviewer, class, row);
            if let Some((unit, halogens_count)) = unit(reading) {
                self.add_unit(unit, by_limits.max(lot_sampling::seen(&counted, halogens_count)));
            }
        }
    }

    /// A reading that a person set aside, with the repeats it was judged with: taking one of them away may make another
    /// look better.
    fn put_aside(&mut self, reading: u32, reviewer: &SourceReview<'_>, row: usize) {
        let aside = self.aside.get_or_insert_default();
        let group = reviewer.repeats().group_of(row);
        let rows = group.and_then(|group| reviewer.repeats().groups().get(group));
        for row in rows.map_or(vec![row], |rows| rows.iter().map(|row| *row as usize).collect()) {
            let own = reviewer.assess(row);
            let counted = match group {
                None => own,
                Some(group) => reviewer.assess_group(group, own.class, own.class_from).counted(&own),
            };
            aside.add(reading, &counted);
            aside.add_limits(reviewer, own.class, row);
        }
        aside.readings.sort_unstable();
        aside.readings.dedup();
    }

    /// Adds what the limits of the books say of a reading; returns what that is for its unit.
    fn add_limits(&mut self, reviewer: &SourceReview<'_>, class: MaterialClass, row: usize) -> UnitState {
        let mut seen = UnitState::Conforming;
        if !reviewer.has_limits() {
            return seen;
        }
        let judged = reviewer.limits_as(class, row);
        self.limits.resize(judged.len(), LimitTally::default());
        for (tally, one) in self.limits.iter_mut().zip(&judged) {
            tally.add(one.judged.judgement.outcome, one.judged.firm_over);
            seen = seen.max(match one.judged.judgement.outcome {
                Outcome::Over if one.judged.firm_over => UnitState::Over,
                outcome if outcome.is_settled() && outcome != Outcome::Over => UnitState::Conforming,
                _ => UnitState::Undecided,
            });
        }
        seen
    }

    fn add_unit(&mut self, unit: Option<&str>, seen: UnitState) {
        match unit {
            Some(unit) => self.units.add(unit, seen),
            None => self.without_unit += 1,
        }
    }

    /// The class its readings agree on; unknown where they differ.
    fn class(&self) -> MaterialClass {
        match self.classes[..] {
            [class] => class,
            _ => MaterialClass::Unknown,
        }
    }

    /// The class that claims and results speak of: a layer among other classes is still a layer.
    fn class_of_claims(&self) -> MaterialClass {
        if self.tally.layers > 0 { MaterialClass::Plated } else { self.class() }
    }

    /// True where readings differ on what the bare material is. A layer beside one other class: nobody doubts what either is.
    fn is_contested(&self) -> bool {
        self.classes.iter().filter(|class| **class != MaterialClass::Plated).count() > 1
    }

    /// The class that a reading was judged in for the material, `own` being its own.
    fn judged_in(&self, own: MaterialClass) -> MaterialClass {
        if own != MaterialClass::Plated && self.is_contested() { MaterialClass::Unknown } else { own }
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
        let class = self.class_of_claims();
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
                let (own, from) = place.reviewer.class(place.row);
                (key, place.reviewer.assess_group(key.1, self.judged_in(own), from))
            });
            assessed.collect()
        };
        let looks = |substance: Substance| {
            let at = substance as usize;
            let look = |&Place { index, reviewer, verdicts, row, .. }: &Place<'_>| {
                let class = self.judged_in(verdicts.class);
                // Repeats of a spot that are judged together are one measurement, as they are for the outcome.
                let pooled = reviewer
                    .repeats()
                    .group_of(row)
                    .and_then(|group| together.get_or_init(assess_groups).get(&(index, group)));
                let pooled = pooled.filter(|pooled| pooled.substances.get(at).copied().unwrap_or(false));
                let is_open = |outcome| matches!(outcome, Outcome::Over | Outcome::Undecided);
                // The readings of a material lie far apart: where one was judged in this class before, what came of it
                // tells whether its cells are worth fetching once more.
                let known =
                    verdicts.substances.get(at).filter(|_| pooled.is_none() && verdicts.class == class);
                if known.is_some_and(|outcome| !is_open(*outcome)) {
                    return None;
                }
                let judged = match pooled {
                    Some(pooled) => *pooled.together.substances.get(at)?,
                    None => reviewer.judge_alone(substance, class, row),
                };
                if !is_open(judged.outcome) {
                    return None;
                }
                let cell = match pooled {
                    Some(pooled) => pooled.elements.get(at).and_then(|one| one.judged).map(|(cell, _)| cell),
                    None => Some(reviewer.cell(at, row)),
                };
                let says = |cell: &Cell| cell.state == CellState::Number && !judged.is_shifted();
                let number = cell.filter(says);
                // Where repeats disagree, what they show counts here, and not what one of them states.
                let shown =
                    (judged.reason == Some(Reason::RepeatsDisagree)).then(|| reviewer.shown_sigma(at, row));
                Some(Look { value: number.map(|cell| cell.value), sigma: shown.unwrap_or(judged.used.sigma) })
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

    /// What was set aside leaves its reasons behind; a material of which nothing is left was not measured.
    fn leave_behind(&self, aside: &Gathered, lot: &LotContext<'_>, key: &MaterialKey, reasons: &mut Reasons) {
        if aside.readings.is_empty() {
            return;
        }
        let set_aside = SetAside {
            readings: aside.readings.len() as u64,
            left: self.tally.readings,
            tally: &aside.tally,
            limits: &aside.limits,
            classes: &aside.classes,
            classes_left: &self.classes,
        };
        set_aside.reasons(lot.halogens_count, lot.limits, reasons);
        if self.readings.is_empty() {
            let name = key.2.clone().or_else(|| key.3.map(|class| class.code().to_owned()));
            reasons.add(LotReason {
                code: LotReasonCode::MaterialNotMeasured,
                effect: Disposition::Hold,
                about: name.unwrap_or_default(),
                count: 1,
                of: 1,
            });
        }
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
        tally.layers += more.layers;
        tally.class_unknown += more.class_unknown;
        tally.calibration_doubtful += more.calibration_doubtful;
        tally.thickness_missing += more.thickness_missing;
        tally.multiple_unknown += more.multiple_unknown;
        LimitTally::add_all(&mut self.limits, &other.limits);
        if let Some(aside) = other.aside {
            self.aside.get_or_insert_default().merge(*aside);
        }
        self.units.merge(other.units);
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
    /// The books whose bands or halogen limits count and that don't hold on the day that counts.
    not_in_use: &'a [String],
    settling: &'a Settling<'a>,
}

/// The books of bands, and of halogens where they count, that don't hold on the day of placing on the market; where that is
/// not stated, on the day of the review. One that ends some day does not hold on a day that nobody states.
fn not_in_use(inspection: &Inspection, settings: &Settings, halogens_count: bool) -> Vec<String> {
    let books = &inspection.books;
    let day = settings.placed().or(settings.reviewed());
    let used = books.screening().map(|(book, _)| book).into_iter();
    let used = used.chain(books.halogens().map(|(book, _)| book).filter(|_| halogens_count));
    let out = used.filter(|book| match day {
        Some(day) => !book.validity.holds_on(day),
        None => book.validity.until.is_some(),
    });
    out.map(|book| book.id.clone()).collect()
}

/// Supplier, lot, part and material as an act names them: empty where not stated.
fn names_of(((supplier, lot, _), part, name, _): &MaterialKey) -> [String; 4] {
    [supplier, lot, part, name].map(|text| text.clone().unwrap_or_default())
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
    let mut sampled = lot_sampling::Gathered::default();
    let mut parts: BTreeMap<Option<String>, (Reasons, Vec<String>, u64)> = BTreeMap::new();
    let (of_supplier, of_lot) = (lot.key.0.as_deref().unwrap_or(""), lot.key.1.as_deref().unwrap_or(""));
    let mut lifts = lot.settling.lifts(of_supplier, of_lot);
    let mut known: Vec<[String; 2]> = Vec::new();
    for (key, mut group) in gathered.materials {
        let class = group.class();
        let mut reasons = group.tally.reasons(lot.halogens_count);
        LimitTally::reasons(&group.limits, lot.limits, group.tally.readings, &mut reasons);
        let mut reasons = group.claims.apply(&group.tally, reasons);
        let aside = group.aside.take().unwrap_or_default();
        group.leave_behind(&aside, lot, &key, &mut reasons);
        let names = names_of(&key);
        let [_, _, of_part, of_name] = &names;
        let laboratory =
            lot.settling.results_of(names.each_ref().map(String::as_str), &[&group.tally, &aside.tally]);
        let seen =
            settling::Material { class: group.class_of_claims(), tally: &group.tally, claims: &group.claims };
        lot.settling.apply_results(seen, &laboratory, &mut reasons);
        let about = key.2.as_deref().unwrap_or(class.code());
        if let Some(reason) = group.change.as_ref().and_then(|change| change.reason(about)) {
            reasons.add(reason);
        }
        lifts.apply(Some((of_part, of_name)), &mut reasons);
        known.push([of_part.clone(), of_name.clone()]);
        let (_, part, name, _) = key;
        let (disposition, reasons) = reasons.close();
        readings += group.tally.readings;
        materials += 1;
        sampled.add(part.as_deref(), group.units, group.without_unit);
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
            set_aside: aside.readings,
            laboratory,
            change: group.change,
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
                let mut extra: Vec<&String> = measured
                    .iter()
                    .filter(|name| !bill.iter().any(|listed| acts::same_name(listed, name)))
                    .collect();
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
                let is_measured = |name: &String| measured.iter().any(|one| acts::same_name(one, name));
                for missing in bill.into_iter().filter(|name| !is_measured(name)) {
                    let of_part = part.as_deref().unwrap_or("");
                    known.push([of_part.to_owned(), missing.clone()]);
                    if lot.settling.unmeasured([of_supplier, of_lot, of_part, &missing], &mut reasons) {
                        continue;
                    }
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
    ]
    .into_iter()
    .map(|(code, names)| (code, &names[..]))
    .chain([(LotReasonCode::BookNotInUse, lot.not_in_use)])
    {
        for name in names {
            evidence(code, Disposition::Hold, name, 1, 1);
        }
    }
    let named = (lot.key.0.as_deref().unwrap_or(""), lot.key.1.as_deref().unwrap_or(""));
    let (sampling, reasons) = lot_sampling::judge(settings, named, &sampled, readings);
    lot_reasons.add_all(&reasons);
    lot_reasons.set_readings(readings);
    let is_known = |part: &str, name: &str| known.iter().any(|one| one[0] == part && one[1] == name);
    lot.settling.not_placed(of_supplier, of_lot, &is_known, &mut lot_reasons);
    lifts.apply(None, &mut lot_reasons);
    lifts.close(&mut lot_reasons);
    let hold_ends = lot.settling.hold_ends(of_supplier, of_lot, &mut lot_reasons);
    let (disposition, reasons) = lot_reasons.close();
    findings.lots.push(LotFinding {
        lot: lot.key.1.clone(),
        supplier: lot.key.0.clone(),
        source: lot.key.2,
        readings,
        units: sampling.as_ref().map_or(0, |sampling| sampling.measured),
        sampling,
        materials,
        hold_ends,
        disposition,
        reasons,
    });
}
