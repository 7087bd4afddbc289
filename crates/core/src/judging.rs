//! The judgements of one source's readings: class, sigma and thickness of each row, then every substance and halogen.

use std::collections::BTreeMap;

use crate::acts::{self, ActKind, Settings, SiteSigma, Target};
use crate::attenuation::Matrix;
use crate::caution::{Cautions, Surroundings};
use crate::composition::{CalibrationDoubt, CompositionReview, Contradiction, Described, GroupFound};
use crate::conformity::{self, Conformity};
use crate::day::Day;
use crate::halogen::{self, Total};
use crate::limit;
use crate::lines::{Caution, Overlap, Overlaps};
use crate::longer::{self, Longer, Never, Timed};
use crate::material::{ClassFrom, MaterialClass};
use crate::next_step;
use crate::outcome::{Judgement, Outcome, Reason, SigmaFrom, UsedSigma};
use crate::pool::{self, Pooled, PooledFrom, Repeat};
use crate::quantity::{Coverage, MassFraction, Sigma, SigmaMultiple};
use crate::reading::{Block, Cell, CellState, ElementColumn, Identity, Source, codes};
use crate::repeats::Repeats;
pub use crate::rules::JUDGED;
use crate::rules::{self, Band, Edges, Halogens, Limit, LowEdge, RuleBook, RuleBooks, Screening};
use crate::screen::{self, Measured};
use crate::substance::{Element, Halogen, Substance};
use crate::text_pool::TextId;
use crate::thickness::{self, Base, Matrices};

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
    /// BL of Cd or Pb in plastic or light alloy of unstated thickness.
    pub thickness_missing: bool,
    /// A printed uncertainty with an unknown multiple was used.
    pub multiple_unknown: bool,
    /// Why the calibration it was made with is doubtful. Changes no outcome.
    pub calibration: Option<CalibrationDoubt>,
    /// Per substance: what physics makes doubtful.
    pub cautions: [Cautions; 5],
    /// The same for chlorine, bromine and their total.
    pub halogen_cautions: [Cautions; 3],
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

/// What repeats show of the sigma of one of them.
#[derive(Clone, Copy)]
struct ShownByRepeats {
    sigma: Sigma,
    /// They scatter beyond what they state.
    disagree: bool,
    /// Some were not detected: then the numbers among them are no uncertainty for one that states none.
    mixed: bool,
}

/// What is known of a cell: as it is judged, and, where repeats raised its sigma, as it is stated.
struct Known {
    measured: Measured,
    /// The sigma as stated, where repeats raised it.
    as_stated: Option<UsedSigma>,
    disagree: bool,
}

impl Known {
    const fn of(measured: Measured) -> Known {
        Known { measured, as_stated: None, disagree: false }
    }

    /// Without the correction for thickness: the halogens' limits know none.
    fn of_any_thickness(mut self) -> Known {
        self.measured.thickness_share = None;
        self
    }

    fn stated(&self) -> Measured {
        Measured { used: self.as_stated.unwrap_or(self.measured.used), ..self.measured }
    }

    /// A reading that is over limit by its own stated sigma stays over: no repeat clears it. One whose repeats disagree,
    /// and that no longer is what it was, is undecided for that reason.
    fn settle(&self, judged: Judgement, judge: impl Fn(&Measured) -> Judgement) -> Judgement {
        if self.as_stated.is_none() {
            return judged;
        }
        let as_stated = judge(&self.stated());
        if as_stated.outcome == Outcome::Over {
            return as_stated;
        }
        let open = judged.outcome != Outcome::Below && as_stated.outcome != Outcome::NotCapable;
        if self.disagree && open && judged.outcome != Outcome::Over {
            // What few repeats show comes with the factor for few in it: no uncertainty of this reading, so none is said.
            return Judgement::new(Outcome::Undecided, Some(Reason::RepeatsDisagree), as_stated.used);
        }
        judged
    }
}

codes! {
    /// How the repeats of one spot were put together for one element.
    PooledHow {
        /// All numbers that agree: their mean is judged.
        Pooled => "pooled",
        /// All not detected with a limit: the largest limit is judged.
        LargestLimit => "largest_limit",
        /// Numbers that disagree: each stands for itself.
        Disagree => "disagree",
        /// Some numbers, some not: each stands for itself.
        Mixed => "mixed",
    }
}

/// The repeats of one spot, put together for one element.
#[derive(Clone, Debug)]
pub struct PooledElement {
    /// How.
    pub how: PooledHow,
    /// The cell and sigma that are judged; `None` where each repeat stands for itself.
    pub judged: Option<(Cell, UsedSigma)>,
    /// The statistics, of numbers.
    pub pooled: Option<Pooled>,
}

impl PooledElement {
    const fn of(how: PooledHow, judged: Option<(Cell, UsedSigma)>, pooled: Option<Pooled>) -> PooledElement {
        PooledElement { how, judged, pooled }
    }
}

/// The repeats of one spot judged together.
#[derive(Clone, Debug)]
pub struct GroupAssessed {
    /// The judgements of the pooled values; only those marked below count.
    pub together: Assessed,
    /// How each of the judged elements was put together.
    pub elements: [PooledElement; 6],
    /// Per substance: the pooled judgement stands for every repeat.
    pub substances: [bool; 5],
    /// The same for Cl, Br and their total.
    pub halogens: [bool; 3],
}

impl GroupAssessed {
    /// A repeat's own judgements, with the pooled ones in place of those that were made together.
    pub fn counted(&self, own: &Assessed) -> Assessed {
        let mut counted = *own;
        for at in 0..5 {
            if self.substances[at] {
                counted.substances[at] = self.together.substances[at];
                counted.firm_over[at] = self.together.firm_over[at];
                counted.cautions[at] = self.together.cautions[at];
            }
        }
        for at in 0..2 {
            if self.halogens[at] {
                counted.halogens[at] = self.together.halogens[at];
                counted.halogen_cautions[at] = self.together.halogen_cautions[at];
            }
        }
        if self.halogens[2] {
            counted.total = self.together.total;
            counted.halogen_cautions[2] = self.together.halogen_cautions[2];
        }
        // A Cd or Pb that only the pooled value clears needs its thickness as any other.
        counted.thickness_missing |= self.together.thickness_missing;
        counted.multiple_unknown |= self.together.multiple_unknown;
        counted
    }
}

/// A limit of a book that the inspection goes by, judged for one reading.
#[derive(Clone, Copy, Debug)]
pub struct LimitAssessed<'a> {
    /// The book.
    pub book: &'a RuleBook,
    /// The row.
    pub row: &'a Limit,
    /// What was judged.
    pub judged: limit::Judged,
}

const BROMINE: usize = 4;
const CHLORINE: usize = 5;

/// Judges the readings of one source.
pub struct SourceReview<'a> {
    source: &'a Source,
    screening: Option<&'a Screening>,
    halogens: Option<&'a Halogens>,
    /// By class and substance, so that no judgement looks a band up.
    bands: [[Option<&'a Band>; 5]; MaterialClass::ALL.len()],
    settings: &'a Settings,
    columns: [Option<&'a ElementColumn>; 6],
    multiples: Vec<[(SigmaMultiple, SigmaFrom); 6]>,
    class_words: BTreeMap<TextId, Option<MaterialClass>>,
    class_of_source: Option<MaterialClass>,
    class_of_file: Option<MaterialClass>,
    thickness_in_mm: bool,
    thickness_matters: bool,
    classes_by_part: bool,
    matrices: Matrices,
    /// The plastic nothing is known of.
    plastic: Option<Matrix>,
    /// The anode of the X-ray tube, where somebody named it.
    tube: Option<Element>,
    overlaps: Overlaps,
    /// Per judged element: a line of the named tube may lie on its line.
    by_tube: [bool; 6],
    /// What the source has that may lie on the line of a judged element.
    watched: Vec<Watched<'a>>,
    /// The column of each overlap's partner.
    partners: Vec<Option<&'a ElementColumn>>,
    /// Columns of the elements metals are based on.
    bases: Vec<&'a ElementColumn>,
    /// The books whose limits count.
    limits: Vec<&'a RuleBook>,
    placed: Option<Day>,
    composition: CompositionReview<'a>,
    repeats: Repeats,
    /// Per group of repeats: how one of them contradicts the class they share.
    contradictions: Vec<Option<Contradiction>>,
    /// The extra relative uncertainty in hundredths of a percent.
    relative: u32,
    /// Per group of repeats and judged element: what the repeats show of one reading's sigma.
    shown: Vec<[Option<ShownByRepeats>; 6]>,
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
        let matrices = Matrices::built_in();
        let overlaps = Overlaps::built_in();
        let tube = settings.tube_anode(&source.name);
        let screening = books.screening().map(|(_, rule)| rule);
        let mut review = SourceReview {
            source,
            screening,
            halogens: books.halogens().map(|(_, rule)| rule),
            bands: MaterialClass::ALL
                .map(|class| Substance::ALL.map(|substance| screening?.band(substance, class))),
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
            partners: overlaps.rows().iter().map(|row| source.readings.column_of(row.partner)).collect(),
            tube,
            watched: watched(source, books, &overlaps),
            by_tube: JUDGED.map(|analyte| {
                let mut rows = overlaps.rows().iter().filter(|row| row.analyte == analyte);
                rows.any(|row| tube.is_some() && tube == Some(row.partner))
            }),
            overlaps,
            plastic: matrices.plastic(false, None),
            bases: source
                .readings
                .elements()
                .iter()
                .filter(|column| matrices.is_base_of_metal(column.element))
                .collect(),
            matrices,
            limits: books.in_force(&settings.books).limits,
            placed: settings.inspection(ActKind::PlacingDate).and_then(Day::parse),
            relative: settings.relative_sigma(),
            composition: CompositionReview::new(&source.readings),
            repeats: Repeats::find(
                source,
                settings.repeats(),
                &settings
                    .set_aside()
                    .filter(|(name, _, _)| *name == source.name)
                    .map(|(_, line, _)| line)
                    .collect(),
            ),
            contradictions: Vec::new(),
            shown: Vec::new(),
        };
        // One spot has one class: what one of its repeats contradicts is contested for all of them.
        review.contradictions = review
            .repeats
            .groups()
            .iter()
            .map(|rows| {
                rows.iter().find_map(|row| {
                    let row = *row as usize;
                    review.composition.contradiction(review.stated_class(row).0, row)
                })
            })
            .collect();
        review.shown = review
            .repeats
            .groups()
            .iter()
            .map(|rows| std::array::from_fn(|at| review.shown_by_repeats(at, rows)))
            .collect();
        review
    }

    /// The repeats of the source.
    pub const fn repeats(&self) -> &Repeats {
        &self.repeats
    }

    /// The cell of a judged element.
    pub fn cell(&self, at: usize, row: usize) -> Cell {
        self.columns.get(at).copied().flatten().map_or(Cell::NO_COLUMN, |column| column.cell(row))
    }

    /// One reading of an element as its printed error states it; `None` where it is no number.
    pub fn repeat(&self, element: Element, row: usize) -> Option<Repeat> {
        let at = JUDGED.iter().position(|judged| *judged == element)?;
        let row = u32::try_from(row).ok()?;
        self.repeats_of(at, &[row], |cell, row| self.printed(at, cell, row))?.pop()
    }

    /// What repeats show of the sigma of one of them; `None` where fewer than two are numbers.
    ///
    /// A repeat that was not detected takes nothing away from what the numbers beside it show: with it the spot must not
    /// look better than without.
    fn shown_by_repeats(&self, at: usize, rows: &[u32]) -> Option<ShownByRepeats> {
        let rows = self.counted_once(rows);
        let is_number = |row: &u32| self.cell(at, *row as usize).state == CellState::Number;
        let numbers: Vec<u32> = rows.iter().copied().filter(is_number).collect();
        let mixed = numbers.len() < rows.len();
        let repeats = self.repeats_of(at, &numbers, |cell, row| self.printed(at, cell, row))?;
        let disagree = pool::agreement(&repeats).is_some_and(|agreement| !agreement.agrees());
        pool::repeatability(&repeats, self.factor()).map(|shown| ShownByRepeats {
            sigma: shown.sigma,
            disagree,
            mixed,
        })
    }

    /// Repeats without those that say the same as an earlier one in every element and state no other time.
    ///
    /// The same row once more (with another remark, or written 655.0 for 655) is no second measurement, and must not make
    /// a mean surer.
    fn counted_once(&self, rows: &[u32]) -> Vec<u32> {
        let same = |one: usize, other: usize| {
            // No time, or 08:01 beside 08:01:00, is no other time.
            let (one_time, other_time) = (self.text(Identity::Time, one), self.text(Identity::Time, other));
            let same_time = one_time.starts_with(other_time) || other_time.starts_with(one_time);
            let mut elements = self.source.readings.elements().iter();
            same_time && elements.all(|column| column.cell(one) == column.cell(other))
        };
        let mut kept: Vec<u32> = Vec::with_capacity(rows.len());
        for &row in rows {
            // Only what is near can be a copy of many: a spot measured thousands of times must not take a square of looks.
            let recent = kept.iter().rev().take(64);
            if !recent.into_iter().any(|known| same(*known as usize, row as usize)) {
                kept.push(row);
            }
        }
        kept
    }

    /// The repeats of an element with a sigma each; `None` where they are not all numbers.
    fn repeats_of(
        &self,
        at: usize,
        rows: &[u32],
        sigma: impl Fn(&Cell, usize) -> Option<UsedSigma>,
    ) -> Option<Vec<Repeat>> {
        rows.iter()
            .map(|row| {
                let cell = self.cell(at, *row as usize);
                (cell.state == CellState::Number).then(|| {
                    let used = sigma(&cell, *row as usize).filter(|used| used.sigma.is_some());
                    let mut repeat = Repeat::new(cell.value, used.and_then(|used| used.sigma));
                    if used.is_some_and(|used| used.from == SigmaFrom::PrintedMultipleUnknown) {
                        // Whether repeats agree is asked of the small sigma, which is the strict one there.
                        repeat.sigma_for_tests = cell
                            .printed_error
                            .and_then(|error| Sigma::from_printed(error, SigmaMultiple::THREE));
                    }
                    repeat
                })
            })
            .collect()
    }

    /// The extra relative uncertainty (one sigma) in hundredths of a percent of the value; 0 where none is set.
    pub const fn relative(&self) -> u32 {
        self.relative
    }

    /// The factor of sigma of the screening book.
    fn factor(&self) -> Coverage {
        self.screening.map_or(Coverage::THREE, |rule| rule.sigma_factor)
    }

    fn band(&self, substance: Substance, class: MaterialClass) -> Option<&'a Band> {
        *self.bands.get(class as usize)?.get(substance as usize)?
    }

    fn text(&self, identity: Identity, row: usize) -> &'a str {
        self.source.readings.identity(identity, row).unwrap_or("")
    }

    /// The class of a reading and where it came from: the one that was stated, unless the composition flatly
    /// contradicts it.
    pub fn class(&self, row: usize) -> (MaterialClass, ClassFrom) {
        self.class_of(self.stated_class(row), row)
    }

    fn class_of(&self, stated: (MaterialClass, ClassFrom), row: usize) -> (MaterialClass, ClassFrom) {
        match self.contradiction_of(stated.0, row) {
            Some(_) => (MaterialClass::Unknown, ClassFrom::Contested),
            None => stated,
        }
    }

    /// How the composition of a reading contradicts the class that was stated.
    ///
    /// # Decision
    /// Whoever stated it: a contested class is judged as an unknown one, under every class, and holds. It never
    /// makes an outcome better, and what a composition suggests is never taken for the class.
    pub fn contradiction(&self, row: usize) -> Option<Contradiction> {
        self.contradiction_of(self.stated_class(row).0, row)
    }

    fn contradiction_of(&self, stated: MaterialClass, row: usize) -> Option<Contradiction> {
        match self.repeats.group_of(row) {
            Some(group) => self.contradictions.get(group).copied().flatten(),
            None => self.composition.contradiction(stated, row),
        }
    }

    /// What the composition of a reading suggests; `None` where it says nothing.
    pub fn composition(&self, row: usize) -> Option<Described> {
        let anyway = self.contradiction(row).is_some() || self.calibration(row).is_some();
        self.composition.describe(row, anyway, |element, cell| self.printed_sigma(element, cell, row))
    }

    /// The alloy group that the composition of a reading shows; `None` where it shows none.
    pub fn alloy(&self, row: usize) -> Option<GroupFound> {
        self.composition.group(row, |element, cell| self.printed_sigma(element, cell, row))
    }

    fn calibration(&self, row: usize) -> Option<CalibrationDoubt> {
        self.composition.knows_modes().then(|| self.composition.doubt(self.stated_class(row).0, row))?
    }

    /// The class that was stated for a reading and who stated it.
    ///
    /// A setting for a part or material stands above the file's word, one for a file above a word that is no class,
    /// one for everything only where the file is silent. A declared layer stays a layer whatever is set: setting it
    /// to a bare class would clear what the beam can't separate.
    fn stated_class(&self, row: usize) -> (MaterialClass, ClassFrom) {
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

    /// The share of a thick piece's signal that a reading gives, in millionths; `None` where nobody stated a thickness
    /// or nothing is known of what the piece is made of.
    pub fn thickness_share(&self, substance: Substance, row: usize) -> Option<u32> {
        share_at(substance as usize, self.depth(self.class(row).0, row, self.thickness_micrometres(row)))
    }

    /// What the signal of a reading comes through, and how thick it is.
    fn depth(&self, class: MaterialClass, row: usize, micrometres: Option<u32>) -> Option<(Matrix, u32)> {
        let micrometres = micrometres?;
        let matrix = match class {
            MaterialClass::Polymer => match self.cell(CHLORINE, row) {
                Cell { state: CellState::Number, value, .. } => self.matrices.plastic(false, Some(value)),
                _ => self.plastic,
            },
            MaterialClass::Metal => self.metal_base(row).map(|base| base.matrix),
            _ => None,
        };
        matrix.map(|matrix| (matrix, micrometres))
    }

    /// How much a reading has of the partner of a row of the overlap table, as the analyser states it.
    ///
    /// One that was not detected is no strong partner; above a stated upper end there is at least that much.
    fn partner(&self, overlap: usize, row: usize) -> Option<MassFraction> {
        let cell = self.partners.get(overlap).copied().flatten()?.cell(row);
        matches!(cell.state, CellState::Number | CellState::AboveRange).then_some(cell.value)
    }

    /// Per judged element: the reading has so much of some partner, or such a tube, that a full look may find a caution.
    fn strong_partners(&self, row: usize) -> [bool; 6] {
        let mut strong = self.by_tube;
        for one in &self.watched {
            if let Some(strong) = strong.get_mut(one.analyte)
                && !*strong
            {
                *strong = one.column.cell(row).value >= one.least;
            }
        }
        strong
    }

    /// Cautions of a reading written out, each with its row of the overlap table.
    pub fn cautions(&self, cautions: &Cautions, row: usize) -> Vec<(&Overlap, Caution)> {
        let rows = self.overlaps.rows().iter().enumerate().filter(|(at, _)| cautions.shown.has(*at));
        rows.map(|(at, overlap)| {
            let present = self.partner(at, row).unwrap_or(MassFraction::ZERO);
            let apparent = overlap.apparent(present);
            (overlap, Caution { code: overlap.code, partner: overlap.partner, apparent })
        })
        .collect()
    }

    fn metal_base(&self, row: usize) -> Option<Base> {
        if self.bases.is_empty() {
            return None;
        }
        self.matrices.metal(|element| {
            let cell = self.bases.iter().find(|column| column.element == element)?.cell(row);
            (cell.state == CellState::Number).then_some(cell.value)
        })
    }

    /// True where X-rays go so deep into a reading's material that its thickness must be known.
    fn is_light(&self, class: MaterialClass, row: usize) -> bool {
        match class {
            MaterialClass::Polymer => true,
            MaterialClass::Metal => self.metal_base(row).is_some_and(|base| base.is_light),
            _ => false,
        }
    }

    /// How long a reading took, in tenths of a second.
    pub fn deciseconds(&self, row: usize) -> Option<u16> {
        acts::parse_seconds(self.text(Identity::Seconds, row))
    }

    /// The printed sigma of a cell under its multiple.
    fn printed(&self, at: usize, cell: &Cell, row: usize) -> Option<UsedSigma> {
        let (multiple, from) = self.multiple(at, row);
        cell.printed_error
            .filter(|error| *error > MassFraction::ZERO)
            .and_then(|error| Sigma::from_printed(error, multiple))
            .map(|sigma| UsedSigma { sigma: Some(sigma), from })
    }

    fn site_row(&self, at: usize, class: MaterialClass) -> Option<&'a SiteSigma> {
        let element = JUDGED.get(at).copied();
        self.settings
            .site_sigmas
            .iter()
            .rev()
            .find(|site| Some(site.element) == element && site.class == class)
    }

    /// The sigma of one reading before repeats and extra terms: the printed one or the site's, whichever is larger.
    ///
    /// The site's table is the repeatability at the action level, which is what the standard's 3 s means; a printed
    /// error above it (a shorter measurement) is not hidden by it.
    fn stated_sigma(&self, at: usize, cell: &Cell, class: MaterialClass, row: usize) -> UsedSigma {
        self.or_site(self.printed(at, cell, row), at, class, row)
    }

    /// The larger of a printed sigma and the site's.
    fn or_site(&self, printed: Option<UsedSigma>, at: usize, class: MaterialClass, row: usize) -> UsedSigma {
        if self.settings.site_sigmas.is_empty() {
            return printed.unwrap_or(UsedSigma::NONE);
        }
        let Some(site) = self.site_row(at, class) else { return printed.unwrap_or(UsedSigma::NONE) };
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

    /// What repeats of the spot show of a reading, where that is more than its stated sigma.
    fn raised_by_repeats(&self, at: usize, row: usize, stated: UsedSigma) -> Option<ShownByRepeats> {
        let group = self.repeats.group_of(row)?;
        let shown = (*self.shown.get(group)?.get(at)?)?;
        let raises = match stated.sigma {
            Some(stated) => shown.sigma.compare(stated).is_gt(),
            None => !shown.mixed,
        };
        raises.then_some(shown)
    }

    /// What repeats show of the sigma of one of them, with the factor for few and the extra relative term.
    pub fn shown_sigma(&self, at: usize, row: usize) -> Option<Sigma> {
        let shown =
            self.raised_by_repeats(at, row, UsedSigma { sigma: Some(Sigma::ZERO), from: SigmaFrom::None })?;
        let used = UsedSigma { sigma: Some(shown.sigma), from: SigmaFrom::Repeats };
        self.with_relative(used, self.cell(at, row).value).sigma
    }

    /// The extra relative uncertainty of a value, rounded up; `None` where it is larger than any sigma can be.
    fn relative_term(&self, value: MassFraction) -> Option<Sigma> {
        let whole = u64::from(self.relative) * value.units().unsigned_abs() / 10_000;
        let rounds = !(u64::from(self.relative) * value.units().unsigned_abs()).is_multiple_of(10_000);
        let units = i64::try_from(whole + u64::from(rounds)).ok()?;
        Sigma::from_one_sigma(MassFraction::from_units(units))
    }

    /// Adds the extra relative uncertainty; where nothing else is known it is no uncertainty by itself.
    fn with_relative(&self, used: UsedSigma, value: MassFraction) -> UsedSigma {
        let Some(sigma) = used.sigma.filter(|sigma| self.relative > 0 && !sigma.is_zero()) else {
            return used;
        };
        // A term too large for any sigma leaves no sigma at all, never the smaller one.
        let whole = self.relative_term(value).map(|term| sigma.in_quadrature(term));
        UsedSigma { sigma: whole, from: used.from }
    }

    /// The standard uncertainty of one check reading: printed or the site's, whichever is larger, with the extra relative
    /// term; `None` for what is no number or has none.
    ///
    /// # Decision
    /// A printed error of unknown multiple counts as three sigma: a check must not pass by an uncertainty that nobody
    /// vouches for. What repeats show does not count: a check that scatters would excuse itself.
    pub fn check_sigma(
        &self,
        element: Element,
        cell: &Cell,
        class: MaterialClass,
        row: usize,
    ) -> Option<Sigma> {
        let error = cell.printed_error.filter(|error| *error > MassFraction::ZERO);
        let (multiple, from) = self.multiple_of(element, row);
        let strict = if from == SigmaFrom::PrintedMultipleUnknown { SigmaMultiple::THREE } else { multiple };
        let printed = error.and_then(|error| Sigma::from_printed(error, strict));
        let printed = printed.map(|sigma| UsedSigma { sigma: Some(sigma), from });
        let used = match JUDGED.iter().position(|judged| *judged == element) {
            Some(at) => self.or_site(printed, at, class, row),
            None => printed.unwrap_or(UsedSigma::NONE),
        };
        let whole = self.with_relative(used, cell.value).sigma;
        whole.filter(|sigma| cell.state == CellState::Number && !sigma.is_zero())
    }

    /// One sigma as printed beside a cell, under its stated, set or assumed multiple.
    pub fn printed_sigma(&self, element: Element, cell: &Cell, row: usize) -> Option<Sigma> {
        let error = cell.printed_error.filter(|error| *error > MassFraction::ZERO)?;
        let (multiple, _) = self.multiple_of(element, row);
        Sigma::from_printed(error, multiple)
    }

    /// The multiple that the printed error of any element stands for, and who said so.
    pub fn multiple_of(&self, element: Element, row: usize) -> (SigmaMultiple, SigmaFrom) {
        match JUDGED.iter().position(|judged| *judged == element) {
            Some(at) => self.multiple(at, row),
            None => self.source.block_of(row).map_or(
                (SigmaMultiple::ONE, SigmaFrom::PrintedMultipleUnknown),
                |block| {
                    let set = self.settings.sigma_multiple(&self.source.name, &block.fingerprint);
                    multiple_of(block, element, set)
                },
            ),
        }
    }

    /// The multiple that the printed error of a judged element stands for, and who said so.
    pub fn multiple(&self, at: usize, row: usize) -> (SigmaMultiple, SigmaFrom) {
        let block = self.source.blocks.partition_point(|block| block.first_reading <= row).saturating_sub(1);
        self.multiples
            .get(block)
            .and_then(|multiples| multiples.get(at))
            .copied()
            .unwrap_or((SigmaMultiple::ONE, SigmaFrom::PrintedMultipleUnknown))
    }

    /// What is known of one cell before it is judged in a class: its sigma is never less than what is printed, what the
    /// site's table says and what repeats of the spot show; then the extra relative term in quadrature.
    fn known(&self, at: usize, class: MaterialClass, row: usize, depth: Option<(Matrix, u32)>) -> Known {
        let cell = self.cell(at, row);
        let thickness_share = share_at(at, depth);
        if cell.state != CellState::Number {
            return Known::of(Measured { cell, used: UsedSigma::NONE, thickness_share });
        }
        let stated = self.stated_sigma(at, &cell, class, row);
        let with = |used| Measured { cell, used: self.with_relative(used, cell.value), thickness_share };
        match self.raised_by_repeats(at, row, stated) {
            None => Known::of(with(stated)),
            Some(shown) => Known {
                measured: with(UsedSigma { sigma: Some(shown.sigma), from: SigmaFrom::Repeats }),
                as_stated: stated.sigma.is_some().then(|| with(stated).used),
                disagree: shown.disagree,
            },
        }
    }

    /// The judgement of a substance under one class.
    pub fn judge_as(&self, substance: Substance, class: MaterialClass, row: usize) -> Judgement {
        let depth = self.depth(class, row, self.thickness_micrometres(row));
        self.judge_known(substance, class, &self.known(substance as usize, class, row, depth))
    }

    /// One substance of one reading by itself, taken as of this class: what [`SourceReview::assess_as`] says of it.
    pub fn judge_alone(&self, substance: Substance, class: MaterialClass, row: usize) -> Judgement {
        if class != MaterialClass::Unknown {
            return self.judge_as(substance, class, row);
        }
        worst(&MaterialClass::BANDED.map(|class| self.judge_as(substance, class, row)))
    }

    /// Judges with the raised sigma, and lets it clear nothing that is over limit as stated.
    fn judge_known(&self, substance: Substance, class: MaterialClass, known: &Known) -> Judgement {
        let judged = self.judge_measured(substance, class, &known.measured);
        known.settle(judged, |stated| self.judge_measured(substance, class, stated))
    }

    fn judge_measured(&self, substance: Substance, class: MaterialClass, measured: &Measured) -> Judgement {
        match self.screening {
            Some(rule) => screen::screen(rule, self.band(substance, class), class, measured),
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
        let depth = self.depth(class, row, micrometres);
        let thickness_missing = || micrometres.is_none() && self.is_light(class, row);
        let known = |at, judged_as| {
            // An unknown class is judged under each, and each has a depth of its own.
            let depth = if judged_as == class { depth } else { self.depth(judged_as, row, micrometres) };
            self.known(at, judged_as, row, depth)
        };
        let partner = |overlap: usize, _: &Overlap| self.partner(overlap, row);
        let near = Near { strong: self.strong_partners(row), partner };
        let assessed = self.assess_measured(class, class_from, thickness_missing, known, near);
        Assessed { calibration: self.calibration(row), ..assessed }
    }

    fn assess_measured(
        &self,
        class: MaterialClass,
        class_from: ClassFrom,
        thickness_missing: impl FnOnce() -> bool,
        known: impl Fn(usize, MaterialClass) -> Known,
        near: Near<impl Fn(usize, &Overlap) -> Option<MassFraction>>,
    ) -> Assessed {
        let Near { strong, partner } = near;
        let surroundings = Surroundings { overlaps: &self.overlaps, partner, tube: self.tube };
        let mut cautions = [Cautions::default(); 5];
        let mut firm_over = [false; 5];
        let mut judge = |substance: Substance, class: MaterialClass| {
            let known = known(substance as usize, class);
            let judged = self.judge_known(substance, class, &known);
            let look = strong.get(substance as usize).is_none_or(|strong| *strong)
                || known.measured.thickness_share.is_some();
            if look && let Some(rule) = self.screening {
                let more = surroundings.of_substance(rule, substance, class, &known.measured, &judged);
                cautions[substance as usize] = cautions[substance as usize].or(more);
            }
            judged
        };
        let substances = Substance::ALL.map(|substance| {
            let at = substance as usize;
            if class != MaterialClass::Unknown {
                let judged = judge(substance, class);
                firm_over[at] = judged.outcome == Outcome::Over;
                return judged;
            }
            let each = MaterialClass::BANDED.map(|class| judge(substance, class));
            firm_over[at] = each.iter().all(|judged| judged.outcome == Outcome::Over);
            worst(&each)
        });
        let chlorine = known(CHLORINE, class).of_any_thickness();
        let bromine = known(BROMINE, class).of_any_thickness();
        let mut halogen_cautions = [Cautions::default(); 3];
        let (halogens, total) = if let Some(rule) = self.halogens {
            let judge = |of, known: &Known| {
                let judged = halogen::judge_element(rule, of, class, &known.measured);
                known.settle(judged, |stated| halogen::judge_element(rule, of, class, stated))
            };
            let alone = [judge(Halogen::Cl, &chlorine), judge(Halogen::Br, &bromine)];
            let mut total = halogen::judge_total(rule, class, &chlorine.measured, &bromine.measured);
            if chlorine.as_stated.is_some() || bromine.as_stated.is_some() {
                let stated = halogen::judge_total(rule, class, &chlorine.stated(), &bromine.stated());
                if stated.judgement.outcome == Outcome::Over {
                    total = stated;
                }
            }
            if strong[CHLORINE] || strong[BROMINE] {
                let doubt = |of, element, known: &Known, judged| {
                    surroundings.of_halogen(rule, of, element, &known.measured, judged)
                };
                let doubts = [
                    doubt(Halogen::Cl, Element::CL, &chlorine, &alone[0]),
                    doubt(Halogen::Br, Element::BR, &bromine, &alone[1]),
                ];
                halogen_cautions = [doubts[0], doubts[1], surroundings.of_total(rule, &total, doubts)];
            }
            (alone, total)
        } else {
            let none = Judgement::new(Outcome::NotMeasured, None, UsedSigma::NONE);
            ([none; 2], Total { judgement: none, low: None, high: None, sigma: None, low_sigma: None })
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
            thickness_missing: (clear(Substance::Cd) || clear(Substance::Pb)) && thickness_missing(),
            multiple_unknown: substances
                .iter()
                .chain(&halogens)
                .any(|judged| judged.used.from == SigmaFrom::PrintedMultipleUnknown),
            calibration: None,
            cautions,
            halogen_cautions,
        }
    }

    /// The part of an element's sigma that no measuring time and no repeating removes, from the site's table.
    pub fn constant(&self, at: usize, class: MaterialClass) -> MassFraction {
        self.site_row(at, class).map_or(MassFraction::ZERO, |site| site.constant)
    }

    /// How the repeats of a group are put together for one element, judged in a class.
    fn pooled(&self, at: usize, class: MaterialClass, rows: &[u32]) -> PooledElement {
        let rows = &self.counted_once(rows)[..];
        let cells: Vec<Cell> = rows.iter().map(|row| self.cell(at, *row as usize)).collect();
        let limits = cells.iter().map(|cell| match cell.state {
            CellState::BelowDetection => Some(cell.value),
            CellState::NotDetected => cell.detection_limit,
            _ => None,
        });
        if let Some(largest) = limits.collect::<Option<Vec<_>>>().and_then(|limits| limits.into_iter().max())
        {
            let cell = Cell { state: CellState::BelowDetection, value: largest, ..Cell::NO_COLUMN };
            return PooledElement::of(PooledHow::LargestLimit, Some((cell, UsedSigma::NONE)), None);
        }
        if cells.iter().any(|cell| cell.state != CellState::Number) {
            return PooledElement::of(PooledHow::Mixed, None, None);
        }
        let constant = self.constant(at, class);
        let used = |cell: &Cell, row: usize| {
            let used = self.stated_sigma(at, cell, class, row);
            // The part that repeating does not remove is added once, to the pooled value.
            let sigma = if used.from == SigmaFrom::SiteTable {
                used.sigma.and_then(|sigma| sigma.without(constant))
            } else {
                used.sigma
            };
            Some(UsedSigma { sigma, from: used.from })
        };
        let pooled =
            self.repeats_of(at, rows, used).and_then(|repeats| pool::pool(&repeats, constant, self.factor()));
        let Some(pooled) = pooled else { return PooledElement::of(PooledHow::Mixed, None, None) };
        if pooled.agree() == Some(false) {
            return PooledElement::of(PooledHow::Disagree, None, Some(pooled));
        }
        let from = if pooled.from == PooledFrom::Stated {
            // The least certain of them speaks for all.
            let sources = cells
                .iter()
                .zip(rows)
                .map(|(cell, row)| self.stated_sigma(at, cell, class, *row as usize).from);
            sources.max_by_key(|from| *from == SigmaFrom::PrintedMultipleUnknown).unwrap_or(SigmaFrom::None)
        } else {
            SigmaFrom::Repeats
        };
        let detection_limit = cells
            .iter()
            .map(|cell| cell.detection_limit)
            .collect::<Option<Vec<_>>>()
            .and_then(|limits| limits.into_iter().max());
        let cell =
            Cell { state: CellState::Number, value: pooled.mean, printed_error: None, detection_limit };
        let sigma = self.with_relative(UsedSigma { sigma: pooled.sigma, from }, pooled.mean);
        PooledElement::of(PooledHow::Pooled, Some((cell, sigma)), Some(pooled))
    }

    /// The repeats of a group judged together.
    ///
    /// # Decision
    /// A substance is judged on the pooled value where the repeats agree and none of them is over limit by itself: only
    /// a laboratory clears that. Where they disagree, or are partly not detected, each stands for itself and the worst
    /// governs.
    pub fn assess_group(&self, group: usize, class: MaterialClass, class_from: ClassFrom) -> GroupAssessed {
        let rows = self.repeats.groups().get(group).map_or(&[][..], Vec::as_slice);
        let micrometres = rows
            .iter()
            .map(|row| self.thickness_micrometres(*row as usize))
            .collect::<Option<Vec<_>>>()
            .and_then(|thicknesses| thicknesses.into_iter().min());
        let own: Vec<Assessed> =
            rows.iter().map(|row| self.assess_as(class, class_from, *row as usize)).collect();
        let thickness_missing =
            || micrometres.is_none() && rows.iter().any(|row| self.is_light(class, *row as usize));
        let known = |at, class| {
            let (cell, used) =
                self.pooled(at, class, rows).judged.unwrap_or((Cell::NO_COLUMN, UsedSigma::NONE));
            // The most transparent of the repeats speaks for all.
            let shares =
                rows.iter().filter_map(|row| share_at(at, self.depth(class, *row as usize, micrometres)));
            Known::of(Measured { cell, used, thickness_share: shares.min() })
        };
        // The strongest partner of the repeats speaks for all.
        let partner = |overlap: usize, _: &Overlap| {
            rows.iter().filter_map(|row| self.partner(overlap, *row as usize)).max()
        };
        let mut strong = [false; 6];
        for row in rows {
            for (any, one) in strong.iter_mut().zip(self.strong_partners(*row as usize)) {
                *any |= one;
            }
        }
        let near = Near { strong, partner };
        let together = self.assess_measured(class, class_from, thickness_missing, known, near);
        let shown_as = if class == MaterialClass::Unknown { MaterialClass::Polymer } else { class };
        let elements: [PooledElement; 6] = std::array::from_fn(|at| self.pooled(at, shown_as, rows));
        let over = |of: &dyn Fn(&Assessed) -> Outcome| own.iter().any(|one| of(one) == Outcome::Over);
        let pools = |at: usize| elements.get(at).is_some_and(|element| element.judged.is_some());
        let substances = std::array::from_fn(|at| {
            pools(at) && !over(&|one| one.substances.get(at).map_or(Outcome::Over, |judged| judged.outcome))
        });
        let halogens = Halogen::ALL.map(|of| {
            let together = match of {
                Halogen::Cl => pools(CHLORINE),
                Halogen::Br => pools(BROMINE),
                Halogen::Total => pools(CHLORINE) && pools(BROMINE),
            };
            together && !over(&|one| one.halogen(of).outcome)
        });
        GroupAssessed { together, elements, substances, halogens }
    }

    /// What is known of how a judgement's uncertainty shrinks with time; `None` where it doesn't: a sigma that repeats show
    /// or that the detection limit stands for, or a time nobody stated.
    ///
    /// A site's table is a floor that a longer measurement does not lower, so all of it counts as constant here.
    fn timed(&self, at: usize, judged: &Judgement, class: MaterialClass, row: usize) -> Option<Timed> {
        let value = self.cell(at, row).value;
        let stated = matches!(
            judged.used.from,
            SigmaFrom::Printed | SigmaFrom::PrintedMultipleSet | SigmaFrom::PrintedMultipleUnknown
        );
        let whole = judged.used.sigma.filter(|_| stated && judged.is_measure())?;
        let relative = self.relative_term(value)?;
        let floor = self.site_row(at, class).map_or(MassFraction::ZERO, |site| site.sigma);
        let constant = relative.in_quadrature(Sigma::from_one_sigma(floor)?).to_mass_fraction();
        // The printed part is what is left of the whole once the relative term is out again.
        let counting = whole.without(relative.to_mass_fraction())?;
        Some(Timed { value, counting, constant, deciseconds: self.deciseconds(row)? })
    }

    /// True where the inspection goes by a book of limits.
    pub const fn has_limits(&self) -> bool {
        !self.limits.is_empty()
    }

    /// Every limit of the books that the inspection goes by, for a reading taken as of this class.
    ///
    /// Each repeat of a spot stands for itself here, and one that is over by its own stated sigma stays over.
    pub fn limits_as(&self, class: MaterialClass, row: usize) -> Vec<LimitAssessed<'a>> {
        let micrometres = if self.limits.is_empty() { None } else { self.thickness_micrometres(row) };
        let known = |limit: &Limit, class, stated: bool| -> Vec<Measured> {
            let places = limit.of.iter().filter_map(|of| JUDGED.iter().position(|judged| judged == of));
            let one = |at| {
                let known = self.known(at, class, row, self.depth(class, row, micrometres));
                if stated { known.stated() } else { known.measured }
            };
            places.map(one).collect()
        };
        let rows = self.limits.iter().flat_map(|book| book.limits.iter().map(|row| (*book, row)));
        let part = self.source.readings.identity(Identity::Part, row).unwrap_or("");
        let judge = |limit: &Limit, answer, stated| {
            limit::judge(limit, class, self.placed, answer, &|class| known(limit, class, stated))
        };
        rows.map(|(book, row)| {
            let asks = !row.question.is_empty();
            let answer = if asks { self.settings.limit_answer(part, &book.id, &row.id) } else { None };
            let stated = judge(row, answer, true);
            let over = stated.judgement.outcome == Outcome::Over;
            LimitAssessed { book, row, judged: if over { stated } else { judge(row, answer, false) } }
        })
        .collect()
    }

    /// How long a reading would have to take for an open substance to be decided.
    pub fn longer(&self, substance: Substance, judged: &Judgement, row: usize) -> Longer {
        let (class, _) = self.class(row);
        let edges = self.band(substance, class).and_then(|band| band.edges);
        let Some(Edges { low: LowEdge::Fixed(low), high }) = edges else {
            return Longer::Never(Never::NotKnown);
        };
        match self.timed(substance as usize, judged, class, row) {
            Some(timed) => longer::for_band(timed, low, high, self.factor(), next_step::LONGEST_SECONDS),
            None => Longer::Never(Never::NotKnown),
        }
    }

    /// The same for chlorine or bromine against its halogen limit; their total has two times and is not asked.
    pub fn longer_halogen(&self, of: Halogen, judged: &Judgement, row: usize) -> Longer {
        let (class, _) = self.class(row);
        let at = match of {
            Halogen::Cl => CHLORINE,
            Halogen::Br => BROMINE,
            Halogen::Total => return Longer::Never(Never::NotKnown),
        };
        match (self.halogens, self.timed(at, judged, class, row)) {
            (Some(rule), Some(timed)) if judged.reason == Some(Reason::AroundLimit) => {
                longer::for_limit(timed, rule.limit(of), rule.sigma_factor, next_step::LONGEST_SECONDS)
            }
            _ => Longer::Never(Never::NotKnown),
        }
    }

    /// The probability that the true value lies within the legal limit, and what other decision rules would say; `None`
    /// where the limit is not on the element in this material (Cr, Br, composites, layers) and where nothing was measured
    /// as a number with an uncertainty.
    ///
    /// # Source
    /// JCGM 106:2012; the limit from the book of Directive 2011/65/EU, Annex II.
    pub fn conformity(&self, substance: Substance, judged: &Judgement, row: usize) -> Option<Conformity> {
        let (class, _) = self.class(row);
        let limit = rules::legal_limit(substance, class)?;
        let cell = self.cell(substance as usize, row);
        let says = cell.state == CellState::Number && judged.is_measure();
        let sigma = judged.used.sigma.filter(|_| says)?;
        conformity::conformity(cell.value, sigma, limit.limit, limit.equal_is_within, conformity::GUARD)
    }
}

/// Of an unknown class: the worst over the classes it may have, the last of those that are as bad.
fn worst(each: &[Judgement; 3]) -> Judgement {
    each.iter().max_by_key(|judged| judged.outcome).copied().unwrap_or(each[0])
}

/// The share of a thick piece's signal for a judged element; none for chlorine, which is read at the surface.
fn share_at(at: usize, depth: Option<(Matrix, u32)>) -> Option<u32> {
    let (matrix, micrometres) = depth?;
    Substance::ALL.get(at).map(|substance| thickness::share(&matrix, substance.element(), micrometres))
}

/// A partner that a source has a column of.
#[derive(Clone, Copy, Debug)]
struct Watched<'a> {
    /// The place of the analyte among the judged elements.
    analyte: usize,
    column: &'a ElementColumn,
    /// Less of it is never worth a caution, whatever the class.
    least: MassFraction,
}

/// What lies near the lines of a reading.
struct Near<P> {
    /// Per judged element: whether a full look is worth it.
    strong: [bool; 6],
    /// How much there is of the partner of a row of the overlap table.
    partner: P,
}

fn watched<'a>(source: &'a Source, books: &RuleBooks, overlaps: &Overlaps) -> Vec<Watched<'a>> {
    let lows = JUDGED.map(|analyte| lowest_edge(books, analyte));
    let rows = overlaps.rows().iter().filter_map(|row| {
        let analyte = JUDGED.iter().position(|judged| *judged == row.analyte)?;
        let least = row.least((*lows.get(analyte)?)?);
        Some(Watched { analyte, column: source.readings.column_of(row.partner)?, least })
    });
    // Several lines of a partner on those of one analyte take one look: the least of all tells.
    let mut watched: Vec<Watched<'a>> = Vec::new();
    for row in rows {
        let same = |known: &&mut Watched<'_>| {
            known.analyte == row.analyte && known.column.element == row.column.element
        };
        match watched.iter_mut().find(same) {
            Some(known) => known.least = known.least.min(row.least),
            None => watched.push(row),
        }
    }
    watched
}

/// The lowest edge or limit of an element over all classes of the books.
fn lowest_edge(books: &RuleBooks, element: Element) -> Option<MassFraction> {
    let bands = books.screening().into_iter().flat_map(|(_, rule)| rule.bands());
    let lows = bands.filter(|(substance, ..)| substance.element() == element).filter_map(|(_, _, band)| {
        Some(match band.edges?.low {
            LowEdge::Fixed(low) => low,
            LowEdge::DetectionLimit { at_most } => at_most,
        })
    });
    let limits = books.halogens().into_iter().flat_map(|(_, rule)| {
        [(Element::CL, Halogen::Cl), (Element::BR, Halogen::Br)]
            .into_iter()
            .filter(|(of, _)| *of == element)
            .flat_map(|(_, of)| [rule.limit(of), rule.limit(Halogen::Total)])
    });
    lows.chain(limits).min()
}

fn multiple_of(block: &Block, element: Element, set: Option<SigmaMultiple>) -> (SigmaMultiple, SigmaFrom) {
    match (block.stated_multiple(element), set) {
        (Some(stated), _) => (stated, SigmaFrom::Printed),
        (None, Some(set)) => (set, SigmaFrom::PrintedMultipleSet),
        (None, None) => (SigmaMultiple::ONE, SigmaFrom::PrintedMultipleUnknown),
    }
}
