//! The whole state of an inspection, and the whole program: [`review`].

use std::collections::{BTreeMap, BTreeSet};

use crate::acts::{self, Act, ActKind, Settings, Target, Weight};
use crate::halogen::{self, Total};
use crate::lot::{Disposition, LotReason, LotReasonCode, MaterialTally, Reasons};
use crate::material::{ClassFrom, MaterialClass};
use crate::next_step::Duration;
use crate::outcome::{Judgement, Outcome, SigmaFrom, UsedSigma};
use crate::quantity::{MassFraction, Sigma, SigmaMultiple};
use crate::reading::{Block, Cell, CellState, ElementColumn, Identity, NoticeCode, Source};
use crate::rules::{Problem, RuleBooks};
use crate::screen::{self, Measured};
use crate::substance::{Element, Halogen, Substance};
use crate::text_pool::TextId;
use crate::thickness;

/// Sources, rule books and acts: everything a review rests on.
#[derive(Clone, Debug)]
pub struct Inspection {
    /// The sources, sorted by the bytes of their names, then by digest.
    pub sources: Vec<Source>,
    /// The rule books.
    pub books: RuleBooks,
    /// What people did, in order.
    pub acts: Vec<Act>,
}

impl Inspection {
    /// An inspection with the built-in rule books and nothing else.
    ///
    /// # Errors
    /// The problems of a built-in book; a test keeps this from happening.
    pub fn new() -> Result<Inspection, Vec<Problem>> {
        Ok(Inspection { sources: Vec::new(), books: RuleBooks::built_in()?, acts: Vec::new() })
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

/// Everything decided about one reading.
#[derive(Clone, Copy, Debug)]
pub struct Assessed {
    /// Its class.
    pub class: MaterialClass,
    /// Where the class came from.
    pub class_from: ClassFrom,
    /// The judgement of each substance; of an unknown class, the worst over the classes.
    pub substances: [Judgement; 5],
    /// Per substance: OL under every class the reading may have.
    pub firm_over: [bool; 5],
    /// The judgement of chlorine and bromine.
    pub halogens: [Judgement; 2],
    /// The judgement of their total.
    pub total: Total,
    /// Per substance: BL of Cd or Pb in plastic of unstated thickness.
    pub thickness_missing: bool,
    /// A printed uncertainty with an unknown multiple was used.
    pub multiple_unknown: bool,
}

impl Assessed {
    /// The judgement of a halogen or the total.
    pub const fn halogen(&self, of: Halogen) -> Judgement {
        match of {
            Halogen::Cl => self.halogens[0],
            Halogen::Br => self.halogens[1],
            Halogen::Total => self.total.judgement,
        }
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

/// The elements the judgements look at.
const JUDGED: [Element; 6] = [Element::CD, Element::PB, Element::HG, Element::CR, Element::BR, Element::CL];
const BROMINE: usize = 4;
const CHLORINE: usize = 5;

/// Judges the readings of one source.
pub struct SourceReview<'a> {
    source: &'a Source,
    books: &'a RuleBooks,
    settings: &'a Settings,
    columns: [Option<&'a ElementColumn>; 6],
    multiples: Vec<[(SigmaMultiple, SigmaFrom); 6]>,
    class_words: BTreeMap<TextId, Option<MaterialClass>>,
    class_of_source: Option<MaterialClass>,
    class_of_file: Option<MaterialClass>,
    thickness_in_mm: bool,
    thickness_matters: bool,
    classes_by_part: bool,
}

impl<'a> SourceReview<'a> {
    /// Prepares what is the same for all readings of a source.
    pub fn new(source: &'a Source, books: &'a RuleBooks, settings: &'a Settings) -> SourceReview<'a> {
        let multiples = source
            .blocks
            .iter()
            .map(|block| {
                let set = settings.sigma_multiple(&source.name, &block.fingerprint);
                JUDGED.map(|element| multiple_of(block, element, set))
            })
            .collect();
        let mut class_words = BTreeMap::new();
        for row in 0..source.readings.len() {
            let id = source.readings.identity_id(Identity::Class, row);
            if id.is_some() {
                class_words
                    .entry(id)
                    .or_insert_with(|| source.readings.pool.get(id).and_then(MaterialClass::from_word));
            }
        }
        let has_thickness_column = (0..source.readings.len())
            .any(|row| source.readings.identity_id(Identity::Thickness, row).is_some());
        SourceReview {
            source,
            books,
            settings,
            columns: JUDGED.map(|element| source.readings.column_of(element)),
            multiples,
            class_words,
            class_of_source: settings.class_of_source(&source.name),
            class_of_file: settings.class_of_exactly(&source.name),
            thickness_in_mm: source.blocks.iter().flat_map(|block| &block.columns).any(|column| {
                column.role == crate::reading::ColumnRole::Identity(Identity::Thickness)
                    && column.heading.to_lowercase().contains("mm")
            }),
            thickness_matters: has_thickness_column || settings.has_thickness(),
            classes_by_part: settings.all().any(|(kind, target, _)| {
                kind == ActKind::Class && matches!(target, Target::Part(_) | Target::Material(..))
            }),
        }
    }

    fn text(&self, identity: Identity, row: usize) -> &'a str {
        self.source.readings.identity(identity, row).unwrap_or("")
    }

    /// The class of a reading and where it came from.
    ///
    /// A setting for a part or material stands above the file's word, one for a file above a word that is no class,
    /// one for everything only where the file is silent. A declared layer stays a layer whatever is set: setting it
    /// to a bare class would clear what the beam can't separate.
    pub fn class(&self, row: usize) -> (MaterialClass, ClassFrom) {
        let word = self.source.readings.identity_id(Identity::Class, row);
        let declared = self.class_words.get(&word).copied();
        if declared == Some(Some(MaterialClass::Plated)) {
            return (MaterialClass::Plated, ClassFrom::Declared);
        }
        if self.classes_by_part
            && let Some(class) = self
                .settings
                .class_of_part(self.text(Identity::Part, row), self.text(Identity::Material, row))
        {
            return (class, ClassFrom::Setting);
        }
        let (set, otherwise) = match declared {
            // A class the book has no bands for stays unknown whatever the default for the rest is.
            Some(Some(MaterialClass::Unknown)) => (None, ClassFrom::NotInBook),
            Some(Some(class)) => return (class, ClassFrom::Declared),
            Some(None) => (self.class_of_file, ClassFrom::NotUnderstood),
            None => (self.class_of_source, ClassFrom::NotStated),
        };
        set.map_or((MaterialClass::Unknown, otherwise), |class| (class, ClassFrom::Setting))
    }

    /// Thickness of a reading in micrometres, from its row or a setting.
    pub fn thickness_micrometres(&self, row: usize) -> Option<u32> {
        if !self.thickness_matters {
            return None;
        }
        let stated = self.text(Identity::Thickness, row);
        if !stated.is_empty() {
            // A number without its unit may be micrometres; what stands there and can't be read is not overruled.
            let in_mm = self.thickness_in_mm || stated.trim_end().ends_with("mm");
            return in_mm.then(|| acts::parse_millimetres(stated)).flatten();
        }
        self.settings
            .thickness_micrometres(self.text(Identity::Part, row), self.text(Identity::Material, row))
    }

    /// The share of a thick piece's signal that a reading of plastic gives, in millionths; `None` where the class needs
    /// none or nobody stated a thickness.
    pub fn thickness_share(&self, substance: Substance, row: usize) -> Option<u32> {
        match (self.class(row).0, self.thickness_micrometres(row)) {
            (MaterialClass::Polymer, Some(micrometres)) => {
                Some(thickness::share_in_plastic(substance, micrometres))
            }
            _ => None,
        }
    }

    /// How long a reading took, in tenths of a second.
    pub fn deciseconds(&self, row: usize) -> Option<u16> {
        acts::parse_seconds(self.text(Identity::Seconds, row))
    }

    /// The sigma a judgement of this element uses in a class: the printed one or the site's, whichever is larger.
    ///
    /// The site's table is the repeatability at the action level, which is what the standard's 3 s means; a printed
    /// error above it (a shorter measurement) is not hidden by it.
    fn used_sigma(&self, at: usize, cell: &Cell, class: MaterialClass, row: usize) -> UsedSigma {
        let (multiple, from) = self.multiple(at, row);
        let printed = cell
            .printed_error
            .filter(|error| *error > MassFraction::ZERO)
            .and_then(|error| Sigma::from_printed(error, multiple))
            .map(|sigma| UsedSigma { sigma: Some(sigma), from });
        if self.settings.site_sigmas.is_empty() {
            return printed.unwrap_or(UsedSigma::NONE);
        }
        let element = JUDGED.get(at).copied();
        let site = self
            .settings
            .site_sigmas
            .iter()
            .rev()
            .find(|site| Some(site.element) == element && site.class == class);
        let Some(site) = site else { return printed.unwrap_or(UsedSigma::NONE) };
        let at_time = match (site.deciseconds, self.deciseconds(row)) {
            // Never less than the table: a longer measurement is not known to be better than what was shown.
            (Some(held_for), Some(measured_for)) => {
                Sigma::at_time(site.sigma, site.constant, held_for, measured_for.min(held_for))
            }
            // The table holds for a measuring time and nobody says how long this took: alone it says nothing, and
            // beside a printed error it is still the floor.
            (Some(_), None) if printed.is_none() => return UsedSigma::NONE,
            _ => Sigma::from_one_sigma(site.sigma),
        };
        let table = UsedSigma { sigma: at_time, from: SigmaFrom::SiteTable };
        match (printed.and_then(|one| one.sigma), table.sigma) {
            (Some(one), Some(other)) if one.compare(other).is_gt() => printed.unwrap_or(table),
            (Some(_), None) => printed.unwrap_or(table),
            _ => table,
        }
    }

    /// One sigma as printed beside a cell, under its stated, set or assumed multiple.
    pub fn printed_sigma(&self, element: Element, cell: &Cell, row: usize) -> Option<Sigma> {
        let error = cell.printed_error.filter(|error| *error > MassFraction::ZERO)?;
        let multiple = match JUDGED.iter().position(|judged| *judged == element) {
            Some(at) => self.multiple(at, row).0,
            None => self.source.block_of(row).map_or(SigmaMultiple::ONE, |block| {
                let set = self.settings.sigma_multiple(&self.source.name, &block.fingerprint);
                multiple_of(block, element, set).0
            }),
        };
        Sigma::from_printed(error, multiple)
    }

    fn multiple(&self, at: usize, row: usize) -> (SigmaMultiple, SigmaFrom) {
        let block = self.source.blocks.partition_point(|block| block.first_reading <= row).saturating_sub(1);
        self.multiples
            .get(block)
            .and_then(|multiples| multiples.get(at))
            .copied()
            .unwrap_or((SigmaMultiple::ONE, SigmaFrom::PrintedMultipleUnknown))
    }

    /// What is known of one cell before it is judged in a class.
    fn measured(&self, at: usize, class: MaterialClass, row: usize, micrometres: Option<u32>) -> Measured {
        let cell = self.columns.get(at).copied().flatten().map_or(Cell::NO_COLUMN, |column| column.cell(row));
        let used = if cell.state == CellState::Number {
            self.used_sigma(at, &cell, class, row)
        } else {
            UsedSigma::NONE
        };
        let thickness_share = match (class, micrometres, Substance::ALL.get(at)) {
            (MaterialClass::Polymer, Some(micrometres), Some(substance)) => {
                Some(thickness::share_in_plastic(*substance, micrometres))
            }
            _ => None,
        };
        Measured { cell, used, thickness_share }
    }

    /// The judgement of a substance under one class.
    pub fn judge_as(&self, substance: Substance, class: MaterialClass, row: usize) -> Judgement {
        self.judge_measured(
            substance,
            class,
            &self.measured(substance as usize, class, row, self.thickness_micrometres(row)),
        )
    }

    fn judge_measured(&self, substance: Substance, class: MaterialClass, measured: &Measured) -> Judgement {
        match self.books.screening() {
            Some((_, rule)) => screen::screen(rule, rule.band(substance, class), class, measured),
            None => Judgement::new(Outcome::NotMeasured, None, UsedSigma::NONE),
        }
    }

    /// Everything decided about one reading.
    pub fn assess(&self, row: usize) -> Assessed {
        let (class, class_from) = self.class(row);
        self.assess_as(class, class_from, row)
    }

    /// Everything decided about one reading, taken as of this class.
    pub fn assess_as(&self, class: MaterialClass, class_from: ClassFrom, row: usize) -> Assessed {
        let micrometres = self.thickness_micrometres(row);
        let mut firm_over = [false; 5];
        let substances = Substance::ALL.map(|substance| {
            let at = substance as usize;
            if class != MaterialClass::Unknown {
                let judged =
                    self.judge_measured(substance, class, &self.measured(at, class, row, micrometres));
                firm_over[at] = judged.outcome == Outcome::Over;
                return judged;
            }
            let each = MaterialClass::BANDED.map(|class| {
                self.judge_measured(substance, class, &self.measured(at, class, row, micrometres))
            });
            firm_over[at] = each.iter().all(|judged| judged.outcome == Outcome::Over);
            each.into_iter().max_by_key(|judged| judged.outcome).unwrap_or(each[0])
        });
        let chlorine = self.measured(CHLORINE, class, row, None);
        let bromine = self.measured(BROMINE, class, row, None);
        let (halogens, total) = if let Some((_, rule)) = self.books.halogens() {
            (
                [
                    halogen::judge_element(rule, Halogen::Cl, class, &chlorine),
                    halogen::judge_element(rule, Halogen::Br, class, &bromine),
                ],
                halogen::judge_total(rule, class, &chlorine, &bromine),
            )
        } else {
            let none = Judgement::new(Outcome::NotMeasured, None, UsedSigma::NONE);
            ([none; 2], Total { judgement: none, low: None, high: None, sigma: None })
        };
        let clear = |substance: Substance| {
            substances.get(substance as usize).is_some_and(|judged| judged.outcome == Outcome::Below)
        };
        Assessed {
            class,
            class_from,
            substances,
            firm_over,
            halogens,
            total,
            thickness_missing: class == MaterialClass::Polymer
                && micrometres.is_none()
                && (clear(Substance::Cd) || clear(Substance::Pb)),
            multiple_unknown: substances
                .iter()
                .chain(&halogens)
                .any(|judged| judged.used.from == SigmaFrom::PrintedMultipleUnknown),
        }
    }

    /// What is known about how long a measurement took, for the advice to measure longer.
    pub fn duration(&self, substance: Substance, judged: &Judgement, row: usize) -> Option<Duration> {
        let cell = self.columns.get(substance as usize).copied().flatten()?.cell(row);
        Some(Duration { value: cell.value, sigma: judged.used.sigma?, deciseconds: self.deciseconds(row)? })
    }
}

fn multiple_of(block: &Block, element: Element, set: Option<SigmaMultiple>) -> (SigmaMultiple, SigmaFrom) {
    match (block.stated_multiple(element), set) {
        (Some(stated), _) => (stated, SigmaFrom::Printed),
        (None, Some(set)) => (set, SigmaFrom::PrintedMultipleSet),
        (None, None) => (SigmaMultiple::ONE, SigmaFrom::PrintedMultipleUnknown),
    }
}

type LotKey = (Option<String>, Option<String>, Option<usize>);
type MaterialKey = (LotKey, Option<String>, Option<String>, Option<MaterialClass>);
type LocalKey = (TextId, TextId, TextId, TextId, Option<MaterialClass>);

#[derive(Default)]
struct Gathered {
    readings: Vec<u32>,
    tally: MaterialTally,
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
        let check_ids: Vec<&str> = settings.check_samples.iter().map(String::as_str).collect();
        // Grouping runs on the source's own small numbers; texts are compared once for each group.
        let mut local: BTreeMap<LocalKey, Gathered> = BTreeMap::new();
        let (mut checks, mut check_rows) = (0, 0);
        let base = findings.verdicts.len();
        for row in 0..source.readings.len() {
            let assessed = reviewer.assess(row);
            let id = |identity| source.readings.identity_id(identity, row);
            // A named id that belongs to a lot is product all the same: naming it must not take a lot's reading away.
            let check = !check_ids.is_empty()
                && source.readings.identity(Identity::Lot, row).is_none()
                && source.readings.identity(Identity::Id, row).is_some_and(|name| check_ids.contains(&name));
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
            let name = id(Identity::Material);
            let stand_in = if name.is_some() { None } else { Some(assessed.class) };
            let key = (id(Identity::Supplier), id(Identity::Lot), id(Identity::Part), name, stand_in);
            let group = local.entry(key).or_default();
            group.add((base + row) as u32, &assessed);
            if counts_units {
                match source.readings.identity(Identity::Unit, row) {
                    Some(unit) => {
                        group.units.insert(unit.to_owned());
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

    let halogens_named = settings.inspection(ActKind::HalogenBook);
    let halogen_loaded =
        halogens_named.is_some_and(|id| inspection.books.halogens().is_some_and(|(book, _)| book.id == id));
    let unread: Vec<String> = inspection.sources.iter().flat_map(not_read_of).collect();
    let mut lots: BTreeMap<LotKey, LotGather> = BTreeMap::new();
    for (key, mut group) in gathered {
        if group.classes.len() > 1 {
            group.contest(&findings, &reviewers);
        }
        lots.entry(key.0.clone()).or_default().materials.push((key, group));
    }
    for (lot_index, (key, lot)) in lots.into_iter().enumerate() {
        let of_sources = |count: &dyn Fn(usize) -> u64| {
            sources_of.get(&key).map_or(0, |sources| sources.iter().map(|at| count(*at)).sum())
        };
        let refused = of_sources(&|at| inspection.sources.get(at).map_or(0, |source| source.rows_refused));
        let checks = of_sources(&|at| findings.checks.get(at).copied().unwrap_or(0));
        dispose_lot(
            &mut findings,
            &LotContext {
                settings: &settings,
                key: &key,
                index: lot_index,
                halogens_count: halogen_loaded,
                halogen_book_missing: halogens_named.filter(|_| !halogen_loaded),
                refused,
                checks,
                unread: &unread,
            },
            lot,
        );
    }
    findings
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
        tally.class_unknown += u64::from(assessed.class == MaterialClass::Unknown);
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
        for reading in readings {
            let Some((source, row)) = findings.place(reading as usize) else { continue };
            let Some(reviewer) = reviewers.get(source) else { continue };
            let contested = reviewer.assess_as(MaterialClass::Unknown, reviewer.class(row).1, row);
            self.add(reading, &contested);
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
        }
        for at in 0..3 {
            for outcome in 0..8 {
                tally.halogen_counts[at][outcome] += more.halogen_counts[at][outcome];
            }
            tally.halogen_firm_over[at] += more.halogen_firm_over[at];
        }
        tally.class_unknown += more.class_unknown;
        tally.thickness_missing += more.thickness_missing;
        tally.multiple_unknown += more.multiple_unknown;
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
    checks: u64,
    unread: &'a [String],
}

fn dispose_lot(findings: &mut Findings, lot: &LotContext<'_>, gathered: LotGather) {
    let settings = lot.settings;
    let holding = |kind| match settings.weight(kind) {
        Weight::Holding => Disposition::Hold,
        Weight::Advisory => Disposition::Accept,
    };
    let mut lot_reasons = Reasons::default();
    let (mut readings, mut materials) = (0, 0);
    // Every material of the lot has to be measured on as many units as the plan asks for.
    let (mut fewest_units, mut without_unit) = (u64::MAX, 0);
    let mut parts: BTreeMap<Option<String>, (Reasons, Vec<String>, u64)> = BTreeMap::new();
    for ((_, part, name, _), mut group) in gathered.materials {
        let class = match group.classes[..] {
            [class] => class,
            _ => MaterialClass::Unknown,
        };
        let (disposition, reasons) = group.tally.reasons(lot.halogens_count).close();
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
    let trust = if lot.checks > 0 { LotReasonCode::TrustNotJudged } else { LotReasonCode::TrustNone };
    evidence(trust, holding(ActKind::Trust), "", lot.checks, readings);
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
