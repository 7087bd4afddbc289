//! What a person does: an append-only list of acts, and the settings they add up to.
//!
//! Undo is an act; the list only grows.

use crate::certificate::Certificate;
use crate::column::ColumnRole;
use crate::control::ChartRule;
use crate::date_order::DateOrder;
use crate::day::Day;
use crate::exempt::{AreaSaid, Categories, Claim, Mouthing, Renewal};
use crate::fields;
use crate::id_template::IdTemplate;
use crate::laboratory::LabResult;
use crate::material::MaterialClass;
use crate::photo::PhotoSaid;
use crate::quantity::{self, MassFraction, SigmaMultiple, Unit};
use crate::reading::{TEXT_ENCODINGS, codes};
use crate::rules::{Named, ProblemCode, RuleBooks};
use crate::sampling::PlanSaid;
use crate::stated;
use crate::substance::Element;
use crate::undertaking::{HoldEnds, Lift, LimitAnswer};

codes! {
    /// Kinds of act.
    ActKind {
        /// Class of readings that don't declare one (or of a named part or material).
        Class => "class",
        /// How many sigmas the printed uncertainties stand for, where the source doesn't say.
        SigmaMultiple => "sigma_multiple",
        /// Unit of values whose unit the source doesn't state.
        UnitOfMeasure => "unit_of_measure",
        /// Decimal mark of the source's numbers.
        DecimalMark => "decimal_mark",
        /// What a number in the error column of a non-detect is: its limit, or one error.
        DetectionInErrorColumn => "detection_in_error_column",
        /// What one column holds: its number, `|`, its role in words.
        ColumnRole => "column_role",
        /// The line the table's heading stands on.
        HeaderLine => "header_line",
        /// The encoding of the text.
        TextEncoding => "text_encoding",
        /// The sheet of a workbook that is read.
        Sheet => "sheet",
        /// Order of day, month and year in dates.
        DateOrder => "date_order",
        /// How a combined sample id is made up: `{part}-{lot}-{spot}`.
        IdPattern => "id_pattern",
        /// The halogen book that moves dispositions.
        HalogenBook => "halogen_book",
        /// Missing trust evidence holds or is advisory.
        Trust => "trust",
        /// Missing sampling evidence holds or is advisory.
        Sampling => "sampling",
        /// A missing bill of materials holds or is advisory.
        Materials => "materials",
        /// Thickness in millimetres.
        ThicknessMm => "thickness_mm",
        /// How many units the lot has.
        LotSize => "lot_size",
        /// How many units the sampling plan asks for.
        UnitsToTake => "units_to_take",
        /// The homogeneous materials of a part, separated by `|`.
        BillOfMaterials => "bill_of_materials",
        /// Product category of Directive 2011/65/EU.
        Category => "category",
        /// Date of placing on the market.
        PlacingDate => "placing_date",
        /// When the review was made.
        ReviewedAt => "reviewed_at",
        /// Who inspected.
        Inspector => "inspector",
        /// Where.
        Place => "place",
        /// Title of the report.
        Title => "title",
        /// Sample ids that are checks, separated by `|`; they are no product.
        CheckSamples => "check_samples",
        /// Rule books that the inspection goes by, separated by `|`.
        Books => "books",
        /// One row of the site's table of repeatability.
        SiteSigma => "site_sigma",
        /// An extra relative uncertainty (one sigma, in percent of the value) added in quadrature.
        RelativeSigma => "relative_sigma",
        /// Which readings count as repeats of one spot.
        Repeats => "repeats",
        /// What the uncertainties hold: repeatability only, or all there is.
        UncertaintyHolds => "uncertainty_holds",
        /// A claim that an exemption covers a material or part.
        Claim => "claim",
        /// Where the renewal of an exemption stands.
        Renewal => "renewal",
        /// Whether a child could mouth a part, for the exemptions that ask.
        Mouthing => "mouthing",
        /// A laboratory's result for hexavalent chromium by area.
        Cr6Area => "cr6_area",
        /// The anode of the analyser's X-ray tube.
        TubeAnode => "tube_anode",
        /// The answer to the question of a limit.
        LimitAnswer => "limit_answer",
        /// A certified value of a check standard.
        Certificate => "certificate",
        /// Sample ids that are blanks, separated by `|`.
        BlankSamples => "blank_samples",
        /// Which checks a reading must lie between.
        Bracket => "bracket",
        /// When shifts start, separated by `|`: `06:00|14:00|22:00`.
        ShiftStarts => "shift_starts",
        /// By which score a check reading is good.
        CheckRule => "check_rule",
        /// How control charts are made: what limits rest on, points of the baseline, run rules.
        ControlChart => "control_chart",
        /// The sampling plan of a lot, or of all.
        SamplingPlan => "sampling_plan",
        /// What a reading is: check, blank or product.
        Mark => "mark",
        /// Sets one reading aside, with the reason; an open or over one leaves its lot on hold.
        SetAside => "set_aside",
        /// A laboratory's confirmatory result.
        Laboratory => "laboratory",
        /// Two people lift a hold.
        Lift => "lift",
        /// Who ends a hold, by when, and how much waits.
        HoldEnds => "hold_ends",
        /// A photograph that shows a reading or a material, and the spot on it.
        Photo => "photo",
        /// By which day a supplier is asked to answer.
        ReplyBy => "reply_by",
        /// What a supplier is asked to do, in place of what the reasons of its lots ask for.
        RequestedAction => "requested_action",
        /// Who answers questions about the papers that go out.
        Contact => "contact",
        /// Who issues the report.
        Issuer => "issuer",
        /// For whom it is.
        Customer => "customer",
        /// The day the items came in, of a lot or of all.
        Received => "received",
        /// How the items were taken, of a lot or of all.
        Sampled => "sampled",
        /// What the items are and how they looked, of a lot or of all.
        Item => "item",
        /// The day the report is issued.
        IssuedOn => "issued_on",
        /// What it was like where the readings were made.
        Environment => "environment",
        /// What was added to the method, left out of it or done otherwise.
        Deviations => "deviations",
        /// The instrument, where no file names it.
        Instrument => "instrument",
        /// Who authorises the report, and the second person.
        Authorised => "authorised",
        /// How long the records are kept.
        RecordsKept => "records_kept",
        /// Whether the data are invented, for training.
        Invented => "invented",
        /// Takes back an earlier act (or an earlier undo).
        Undo => "undo",
    }
}

impl ActKind {
    /// The kind of a code.
    pub fn from_code(code: &str) -> Option<ActKind> {
        ActKind::ALL.iter().copied().find(|kind| kind.code() == code)
    }

    /// True where the source has to be read again for the act to take effect.
    pub const fn needs_reading_again(self) -> bool {
        matches!(
            self,
            ActKind::UnitOfMeasure
                | ActKind::DecimalMark
                | ActKind::DetectionInErrorColumn
                | ActKind::SigmaMultiple
                | ActKind::ColumnRole
                | ActKind::HeaderLine
                | ActKind::TextEncoding
                | ActKind::Sheet
                | ActKind::DateOrder
                | ActKind::IdPattern
        )
    }
}

/// What an act speaks about.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Target {
    /// The whole inspection.
    Inspection,
    /// One source by name.
    Source(String),
    /// Every table with these headings, by their fingerprint.
    Header(String),
    /// One lot by supplier and lot; empty text is "not stated".
    Lot(String, String),
    /// One part.
    Part(String),
    /// One material of a part.
    Material(String, String),
    /// One material of a part in one lot: supplier, lot, part, material.
    LotMaterial([String; 4]),
    /// One reading: source and the line it stands on.
    Reading(String, u32),
}

impl Target {
    /// Reads a target as findings write it: empty, `source:NAME`, `header:FINGERPRINT`,
    /// `lot:SUPPLIER|LOT`, `part:PART`,
    /// `material:PART|MATERIAL`, `lot_material:SUPPLIER|LOT|PART|MATERIAL`, `reading:SOURCE|LINE`. A `|` or `\` in a name
    /// stands behind a `\`.
    pub fn parse(text: &str) -> Option<Target> {
        if text.is_empty() {
            return Some(Target::Inspection);
        }
        let (kind, rest) = text.split_once(':')?;
        let all = split_escaped(rest);
        if kind == "lot_material" {
            return all.try_into().ok().map(Target::LotMaterial);
        }
        let mut parts = all.into_iter();
        let (first, second) = (parts.next()?, parts.next());
        match (kind, second, parts.next()) {
            ("source", None, None) => Some(Target::Source(first)),
            ("header", None, None) => Some(Target::Header(first)),
            ("part", None, None) => Some(Target::Part(first)),
            ("lot", Some(lot), None) => Some(Target::Lot(first, lot)),
            ("material", Some(material), None) => Some(Target::Material(first, material)),
            ("reading", Some(line), None) => Some(Target::Reading(first, line.parse().ok()?)),
            _ => None,
        }
    }

    /// The text of a target.
    pub fn to_text(&self) -> String {
        match self {
            Target::Inspection => String::new(),
            Target::Source(name) => format!("source:{}", escape(name)),
            Target::Header(fingerprint) => format!("header:{}", escape(fingerprint)),
            Target::Lot(supplier, lot) => format!("lot:{}|{}", escape(supplier), escape(lot)),
            Target::Part(part) => format!("part:{}", escape(part)),
            Target::Material(part, material) => format!("material:{}|{}", escape(part), escape(material)),
            Target::LotMaterial(names) => {
                format!("lot_material:{}", names.each_ref().map(|name| escape(name)).join("|"))
            }
            Target::Reading(source, line) => format!("reading:{}|{line}", escape(source)),
        }
    }
}

/// Puts a `\` before every `|` and `\`.
pub fn escape(text: &str) -> String {
    text.replace('\\', "\\\\").replace('|', "\\|")
}

/// True for two spellings of one name: capitals, and spaces at the ends or more than one between words, make no other part
/// or material. (Common practice, no source: people type bills, and analysers' files are typed by others.)
pub fn same_name(one: &str, other: &str) -> bool {
    one == other || folded_name(one) == folded_name(other)
}

/// A name as all its spellings have it.
pub fn folded_name(name: &str) -> String {
    name.split_whitespace().map(str::to_lowercase).collect::<Vec<_>>().join(" ")
}

/// Splits at `|` that no `\` stands before.
pub fn split_escaped(text: &str) -> Vec<String> {
    let mut parts = vec![String::new()];
    let mut characters = text.chars();
    while let Some(character) = characters.next() {
        let next = match character {
            '|' => {
                parts.push(String::new());
                continue;
            }
            '\\' => characters.next().unwrap_or('\\'),
            other => other,
        };
        if let Some(last) = parts.last_mut() {
            last.push(next);
        }
    }
    parts
}

/// One recorded human step.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Act {
    /// What kind.
    pub kind: ActKind,
    /// What it speaks about.
    pub target: Target,
    /// Its value, as text.
    pub value: String,
    /// Initials of who did it; empty for a settings file.
    pub by: String,
    /// When, as the person's computer said; empty where nobody said.
    pub at: String,
    /// A remark, or the name of the settings file.
    pub note: String,
}

/// Whether missing evidence holds a lot.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Weight {
    /// It holds.
    #[default]
    Holding,
    /// It is printed and holds nothing.
    Advisory,
}

/// What a number in the error column of a non-detect is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum DetectionInError {
    /// The detection limit itself.
    #[default]
    Limit,
    /// One printed error of nothing: three sigma of it are the limit.
    OneError,
}

/// Which readings are repeats of one spot and may be judged together.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum RepeatsRule {
    /// The same sample id on the same stated spot.
    #[default]
    SameSpot,
    /// The same sample id; a spot nobody stated counts as the same one.
    SameId,
    /// None: every reading stands for itself.
    Never,
}

/// Which checks a reading must lie between to be trusted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Bracket {
    /// A good check before it and a good one after it.
    #[default]
    BeforeAndAfter,
    /// A good check before it.
    Before,
    /// A good check in the same shift, and no bad one.
    PerShift,
}

/// By which score a check reading of a certified value is good (ISO 13528).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum CheckRule {
    /// |zeta| at most 3, the action signal; above 2 warns.
    #[default]
    Zeta,
    /// |`E_n`| at most 1.
    En,
}

/// A row of the site's table: one sigma at the action level.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SiteSigma {
    /// The element.
    pub element: Element,
    /// The class.
    pub class: MaterialClass,
    /// One sigma in mg/kg.
    pub sigma: MassFraction,
    /// The seconds it holds for, in tenths; `None` where it isn't said.
    pub deciseconds: Option<u16>,
    /// The part of it that no measuring time removes, in mg/kg.
    pub constant: MassFraction,
}

/// What the acts add up to.
#[derive(Clone, Debug, Default)]
pub struct Settings {
    scoped: Vec<(ActKind, Target, String)>,
    /// The site's table of repeatability.
    pub site_sigmas: Vec<SiteSigma>,
    /// Sample ids that are checks.
    pub check_samples: Vec<String>,
    /// Sample ids that are blanks.
    pub blank_samples: Vec<String>,
    /// The rule books named, each by its id or by `id@` and digits of its digest.
    pub books: Vec<String>,
}

impl Settings {
    /// Adds up acts in order, leaving out those that are undone.
    pub fn from_acts(acts: &[Act]) -> Settings {
        let mut settings = Settings::default();
        for act in in_force(acts) {
            match act.kind {
                ActKind::SiteSigma => {
                    if let Ok(row) = parse_site_sigma(&act.value) {
                        let other = |one: &SiteSigma| (one.element, one.class) != (row.element, row.class);
                        settings.site_sigmas.retain(other);
                        settings.site_sigmas.push(row);
                    }
                }
                ActKind::CheckSamples => settings.check_samples = split_escaped(&act.value),
                ActKind::BlankSamples => settings.blank_samples = split_escaped(&act.value),
                ActKind::Books => settings.books = split_escaped(&act.value),
                _ => {
                    let about = about_of(act.kind, &act.value);
                    settings.scoped.retain(|(kind, target, value)| {
                        !(*kind == act.kind && *target == act.target && about_of(*kind, value) == about)
                    });
                    if act.kind == ActKind::Claim
                        && let Ok(mut claim) = Claim::parse(&act.value)
                    {
                        // Who did it is known better than what a file says of it.
                        if !act.by.is_empty() {
                            claim.by.clone_from(&act.by);
                        }
                        settings.scoped.push((act.kind, act.target.clone(), claim.to_text()));
                        continue;
                    }
                    if act.kind == ActKind::Lift
                        && let Ok(mut lift) = Lift::parse(&act.value)
                    {
                        if !act.by.is_empty() {
                            lift.by.clone_from(&act.by);
                        }
                        settings.scoped.push((act.kind, act.target.clone(), lift.to_text()));
                        continue;
                    }
                    settings.scoped.push((act.kind, act.target.clone(), act.value.clone()));
                }
            }
        }
        settings
    }

    /// The same without all that one kind of act says.
    #[must_use]
    pub fn without(&self, left_out: ActKind) -> Settings {
        let mut settings = self.clone();
        settings.scoped.retain(|(kind, _, _)| *kind != left_out);
        settings
    }

    fn exact(&self, kind: ActKind, target: &Target) -> Option<&str> {
        self.scoped
            .iter()
            .find(|(at, to, _)| *at == kind && to == target)
            .map(|(_, _, value)| value.as_str())
            .filter(|value| !value.is_empty())
    }

    /// A setting of the whole inspection, as text.
    pub fn inspection(&self, kind: ActKind) -> Option<&str> {
        self.exact(kind, &Target::Inspection)
    }

    /// What is stated of a lot, else of the whole inspection, as text.
    pub fn stated_of(&self, kind: ActKind, supplier: &str, lot: &str) -> Option<&str> {
        let own = self.exact(kind, &Target::Lot(supplier.to_owned(), lot.to_owned()));
        own.or_else(|| self.inspection(kind))
    }

    /// True where a person said that the data are invented.
    pub fn is_invented(&self) -> bool {
        self.inspection(ActKind::Invented) == Some("yes")
    }

    fn of_source(&self, kind: ActKind, source: &str) -> Option<&str> {
        self.exact(kind, &Target::Source(source.to_owned())).or_else(|| self.inspection(kind))
    }

    /// What is set for a table: for its file, else for its headings, else for everything.
    pub fn of_table(&self, kind: ActKind, source: &str, fingerprint: &str) -> Option<&str> {
        self.exact(kind, &Target::Source(source.to_owned()))
            .or_else(|| self.exact(kind, &Target::Header(fingerprint.to_owned())))
            .or_else(|| self.inspection(kind))
    }

    /// The multiple a person set for a table that doesn't state it.
    pub fn sigma_multiple(&self, source: &str, fingerprint: &str) -> Option<SigmaMultiple> {
        self.of_table(ActKind::SigmaMultiple, source, fingerprint).and_then(SigmaMultiple::from_text)
    }

    /// The unit a person set for a table that doesn't state it.
    pub fn unit_of_measure(&self, source: &str, fingerprint: &str) -> Option<Unit> {
        self.of_table(ActKind::UnitOfMeasure, source, fingerprint).and_then(Unit::from_word)
    }

    /// The decimal mark a person set for a table.
    pub fn decimal_mark(&self, source: &str, fingerprint: &str) -> Option<quantity::DecimalMark> {
        match self.of_table(ActKind::DecimalMark, source, fingerprint)? {
            "," => Some(quantity::DecimalMark::Comma),
            _ => Some(quantity::DecimalMark::Point),
        }
    }

    /// What a number in the error column of a non-detect is, for a table.
    pub fn detection_in_error(&self, source: &str, fingerprint: &str) -> DetectionInError {
        match self.of_table(ActKind::DetectionInErrorColumn, source, fingerprint) {
            Some("one_error") => DetectionInError::OneError,
            _ => DetectionInError::Limit,
        }
    }

    /// The encoding a person set for a file.
    pub fn text_encoding(&self, source: &str) -> Option<&str> {
        self.of_source(ActKind::TextEncoding, source)
    }

    /// The sheet a person chose for a workbook.
    pub fn sheet(&self, source: &str) -> Option<&str> {
        self.of_source(ActKind::Sheet, source)
    }

    /// The line a person said the heading stands on; 0 for a table without one.
    pub fn header_line(&self, source: &str) -> Option<u32> {
        self.exact(ActKind::HeaderLine, &Target::Source(source.to_owned())).and_then(|line| line.parse().ok())
    }

    /// The roles a person gave to columns under these headings, by column number.
    pub fn column_roles(&self, fingerprint: &str) -> Vec<(u32, ColumnRole)> {
        self.scoped
            .iter()
            .filter(|(kind, target, _)| {
                *kind == ActKind::ColumnRole
                    && matches!(target, Target::Header(known) if known == fingerprint)
            })
            .filter_map(|(_, _, value)| parse_column_role(value))
            .collect()
    }

    /// The class set for exactly this part or material; it stands above the file's own word.
    pub fn class_of_part(&self, part: &str, material: &str) -> Option<MaterialClass> {
        if self.scoped.iter().all(|(kind, target, _)| {
            *kind != ActKind::Class || matches!(target, Target::Inspection | Target::Source(_))
        }) {
            return None;
        }
        self.exact(ActKind::Class, &Target::Material(part.to_owned(), material.to_owned()))
            .or_else(|| self.exact(ActKind::Class, &Target::Part(part.to_owned())))
            .and_then(MaterialClass::from_code)
    }

    /// The class set for readings of a source that declare none.
    pub fn class_of_source(&self, source: &str) -> Option<MaterialClass> {
        self.of_source(ActKind::Class, source).and_then(MaterialClass::from_code)
    }

    /// The class set for exactly this file.
    pub fn class_of_exactly(&self, source: &str) -> Option<MaterialClass> {
        self.exact(ActKind::Class, &Target::Source(source.to_owned())).and_then(MaterialClass::from_code)
    }

    /// Thickness in micrometres set for a material, its part or everything.
    pub fn thickness_micrometres(&self, part: &str, material: &str) -> Option<u32> {
        self.exact(ActKind::ThicknessMm, &Target::Material(part.to_owned(), material.to_owned()))
            .or_else(|| self.exact(ActKind::ThicknessMm, &Target::Part(part.to_owned())))
            .or_else(|| self.inspection(ActKind::ThicknessMm))
            .and_then(parse_millimetres)
    }

    /// True where any thickness is set, so that a hot loop may skip the look-up.
    pub fn has_thickness(&self) -> bool {
        self.scoped.iter().any(|(kind, _, _)| *kind == ActKind::ThicknessMm)
    }

    /// The extra relative uncertainty (one sigma) in hundredths of a percent of the value; 0 where none is set.
    pub fn relative_sigma(&self) -> u32 {
        self.inspection(ActKind::RelativeSigma).and_then(parse_percent).unwrap_or(0)
    }

    /// Which readings count as repeats.
    pub fn repeats(&self) -> RepeatsRule {
        match self.inspection(ActKind::Repeats) {
            Some("same_id") => RepeatsRule::SameId,
            Some("never") => RepeatsRule::Never,
            _ => RepeatsRule::SameSpot,
        }
    }

    /// True where a person said that the uncertainties hold all there is, not only repeatability.
    pub fn uncertainty_is_full(&self) -> bool {
        self.inspection(ActKind::UncertaintyHolds) == Some("everything")
    }

    /// Whether a kind of missing evidence holds.
    pub fn weight(&self, kind: ActKind) -> Weight {
        match self.inspection(kind) {
            Some("advisory") => Weight::Advisory,
            _ => Weight::Holding,
        }
    }

    /// A whole number set for a lot.
    pub fn of_lot(&self, kind: ActKind, supplier: &str, lot: &str) -> Option<u64> {
        self.exact(kind, &Target::Lot(supplier.to_owned(), lot.to_owned()))
            .or_else(|| self.inspection(kind))
            .and_then(|value| value.parse().ok())
    }

    /// A text set for a lot, else for everything.
    pub fn text_of_lot(&self, kind: ActKind, supplier: &str, lot: &str) -> Option<&str> {
        self.exact(kind, &Target::Lot(supplier.to_owned(), lot.to_owned())).or_else(|| self.inspection(kind))
    }

    /// The halogen book by which halogens move dispositions: the one named for that, else one among the books.
    pub fn halogen_book<'a>(&'a self, books: &'a RuleBooks) -> Option<&'a str> {
        self.inspection(ActKind::HalogenBook)
            .or_else(|| books.in_force(&self.books).halogens.map(|book| book.id.as_str()))
    }

    /// The bill of materials given for a part; one for another spelling of its name, where only one is.
    pub fn bill_of_materials(&self, part: &str) -> Option<Vec<String>> {
        let own = self.exact(ActKind::BillOfMaterials, &Target::Part(part.to_owned()));
        let respelled = || {
            let mut bills = self.of_kind(ActKind::BillOfMaterials).filter(
                |(target, _)| matches!(target, Target::Part(known) if !known.is_empty() && same_name(known, part)),
            );
            let (_, bill) = bills.next()?;
            bills.next().is_none().then_some(bill)
        };
        own.or_else(respelled).map(split_escaped)
    }

    /// The product's category.
    pub fn category(&self) -> Option<Categories> {
        self.inspection(ActKind::Category).and_then(Categories::from_code)
    }

    /// The day of placing on the market.
    pub fn placed(&self) -> Option<Day> {
        self.inspection(ActKind::PlacingDate).and_then(Day::parse)
    }

    /// The day of the review.
    pub fn reviewed(&self) -> Option<Day> {
        self.inspection(ActKind::ReviewedAt).and_then(|at| Day::parse(at.get(..10)?))
    }

    /// Whether a child could mouth a part: the part's own answer, else that for everything.
    pub fn mouthing(&self, part: &str) -> Option<Mouthing> {
        self.exact(ActKind::Mouthing, &Target::Part(part.to_owned()))
            .or_else(|| self.inspection(ActKind::Mouthing))
            .and_then(Mouthing::from_code)
    }

    /// What is said of the renewals of entries.
    pub fn renewals(&self) -> Vec<Renewal> {
        self.of_kind(ActKind::Renewal).filter_map(|(_, value)| Renewal::parse(value).ok()).collect()
    }

    /// Every claim with what it is made for.
    pub fn claims(&self) -> Vec<(&Target, Claim)> {
        let claims = self.of_kind(ActKind::Claim);
        claims.filter_map(|(target, value)| Some((target, Claim::parse(value).ok()?))).collect()
    }

    /// Every result for hexavalent chromium by area with the material it was found on.
    pub fn cr6_areas(&self) -> Vec<(&Target, AreaSaid)> {
        let areas = self.of_kind(ActKind::Cr6Area);
        areas.filter_map(|(target, value)| Some((target, AreaSaid::parse(value).ok()?))).collect()
    }

    /// The anode of the analyser's tube: the file's own, else that for everything.
    pub fn tube_anode(&self, source: &str) -> Option<Element> {
        self.of_source(ActKind::TubeAnode, source).and_then(Element::from_symbol)
    }

    /// What a person answered to the question of a limit: for the part, else for everything.
    pub fn limit_answer(&self, part: &str, book: &str, row: &str) -> Option<bool> {
        let answer = |wanted: &Target| {
            self.of_kind(ActKind::LimitAnswer).filter(|(target, _)| *target == wanted).find_map(
                |(_, value)| {
                    let answer = LimitAnswer::parse(value).ok()?;
                    (answer.book == book && answer.row == row).then_some(answer.applies)
                },
            )
        };
        answer(&Target::Part(part.to_owned())).or_else(|| answer(&Target::Inspection))
    }

    /// Every certified value.
    pub fn certificates(&self) -> Vec<Certificate> {
        self.of_kind(ActKind::Certificate).filter_map(|(_, value)| Certificate::parse(value).ok()).collect()
    }

    /// Which checks a reading must lie between.
    pub fn bracket(&self) -> Bracket {
        match self.inspection(ActKind::Bracket) {
            Some("before") => Bracket::Before,
            Some("per_shift") => Bracket::PerShift,
            _ => Bracket::BeforeAndAfter,
        }
    }

    /// By which score a check reading is good.
    pub fn check_rule(&self) -> CheckRule {
        match self.inspection(ActKind::CheckRule) {
            Some("en") => CheckRule::En,
            _ => CheckRule::Zeta,
        }
    }

    /// How control charts are made.
    pub fn control_chart(&self) -> ChartRule {
        self.inspection(ActKind::ControlChart)
            .and_then(|value| ChartRule::parse(value).ok())
            .unwrap_or_default()
    }

    /// When shifts start, in minutes after midnight, in order; one shift a day where nobody said.
    pub fn shift_starts(&self) -> Vec<u16> {
        let said = self.inspection(ActKind::ShiftStarts).map(split_escaped).unwrap_or_default();
        let mut starts: Vec<u16> = said.iter().filter_map(|text| parse_time_of_day(text)).collect();
        starts.sort_unstable();
        starts.dedup();
        if starts.is_empty() { vec![0] } else { starts }
    }

    /// The sampling plan of a lot: its own, else that for everything.
    pub fn sampling_plan(&self, supplier: &str, lot: &str) -> Option<PlanSaid> {
        self.exact(ActKind::SamplingPlan, &Target::Lot(supplier.to_owned(), lot.to_owned()))
            .or_else(|| self.inspection(ActKind::SamplingPlan))
            .and_then(|value| PlanSaid::parse(value).ok())
    }

    /// What single readings were marked as: source, line, `check`, `blank` or `product`.
    pub fn marks(&self) -> impl Iterator<Item = (&str, u32, &str)> {
        self.of_readings(ActKind::Mark)
    }

    /// The readings a person set aside: source, line, why.
    pub fn set_aside(&self) -> impl Iterator<Item = (&str, u32, &str)> {
        self.of_readings(ActKind::SetAside)
    }

    fn of_readings(&self, kind: ActKind) -> impl Iterator<Item = (&str, u32, &str)> {
        self.of_kind(kind).filter_map(|(target, value)| match target {
            Target::Reading(source, line) if !value.is_empty() => Some((source.as_str(), *line, value)),
            _ => None,
        })
    }

    /// Every laboratory result with the material of the lot it was found in.
    pub fn laboratory(&self) -> Vec<(&Target, LabResult)> {
        let results = self.of_kind(ActKind::Laboratory);
        results.filter_map(|(target, value)| Some((target, LabResult::parse(value).ok()?))).collect()
    }

    /// Every lift with the lot, or the material of a lot, it is for.
    pub fn lifts(&self) -> Vec<(&Target, Lift)> {
        let lifts = self.of_kind(ActKind::Lift);
        lifts.filter_map(|(target, value)| Some((target, Lift::parse(value).ok()?))).collect()
    }

    /// Who ends the hold of a lot, by when, and how much waits.
    pub fn hold_ends(&self, supplier: &str, lot: &str) -> Option<HoldEnds> {
        self.exact(ActKind::HoldEnds, &Target::Lot(supplier.to_owned(), lot.to_owned()))
            .and_then(|value| HoldEnds::parse(value).ok())
    }

    /// Every photograph that was named, with what it shows.
    pub fn photos(&self) -> Vec<(&Target, PhotoSaid)> {
        let photos = self.of_kind(ActKind::Photo);
        photos.filter_map(|(target, value)| Some((target, PhotoSaid::parse(value).ok()?))).collect()
    }

    fn of_kind(&self, wanted: ActKind) -> impl Iterator<Item = (&Target, &str)> {
        self.all().filter(move |(kind, _, _)| *kind == wanted).map(|(_, target, value)| (target, value))
    }

    /// Every setting with its target and value, in the order of the acts.
    pub fn all(&self) -> impl Iterator<Item = (ActKind, &Target, &str)> {
        self.scoped.iter().map(|(kind, target, value)| (*kind, target, value.as_str()))
    }
}

/// What a value is about where one target may have several of a kind: each column of a header has a role of its own, a
/// material a claim for each entry and substance, an inspection a renewal for each entry.
pub(crate) fn about_of(kind: ActKind, value: &str) -> Option<String> {
    match kind {
        ActKind::SiteSigma => {
            parse_site_sigma(value).ok().map(|row| format!("{} {}", row.element.symbol(), row.class.code()))
        }
        ActKind::ColumnRole => value.split('|').next().map(str::to_owned),
        ActKind::Claim => {
            Claim::parse(value).ok().map(|claim| format!("{} {}", claim.substance.symbol(), claim.entry))
        }
        ActKind::Renewal => Renewal::parse(value).ok().map(|renewal| renewal.entry),
        ActKind::LimitAnswer => {
            LimitAnswer::parse(value).ok().map(|answer| format!("{} {}", answer.book, answer.row))
        }
        ActKind::Certificate => Certificate::parse(value)
            .ok()
            .map(|certified| format!("{} {}", certified.element.symbol(), certified.sample)),
        // Two laboratories may number their reports alike.
        ActKind::Laboratory => LabResult::parse(value)
            .ok()
            .map(|one| format!("{} {} {}", one.analyte.code(), one.laboratory, one.report)),
        // A second act about the same file moves its spot.
        ActKind::Photo => PhotoSaid::parse(value).ok().map(|said| said.file),
        ActKind::Lift => Lift::parse(value).ok().map(|lift| format!("{} {}", lift.reason, lift.about)),
        _ => None,
    }
}

/// The acts that are not undone, undo acts left out.
pub fn in_force(acts: &[Act]) -> impl Iterator<Item = &Act> {
    acts.iter()
        .zip(undone(acts))
        .filter(|(act, undone)| !undone && act.kind != ActKind::Undo)
        .map(|(act, _)| act)
}

/// Which acts are undone: an undo counts unless a later undo takes it back.
pub fn undone(acts: &[Act]) -> Vec<bool> {
    let mut undone = vec![false; acts.len()];
    for at in (0..acts.len()).rev() {
        if let Some(act) = acts.get(at)
            && act.kind == ActKind::Undo
            && !undone[at]
            && let Some(earlier) = act.value.parse::<usize>().ok().and_then(|number| number.checked_sub(1))
            && earlier < at
        {
            undone[earlier] = true;
        }
    }
    undone
}

/// Millimetres as text, in whole micrometres; up to one metre.
pub fn parse_millimetres(text: &str) -> Option<u32> {
    let mark = if text.contains(',') { quantity::DecimalMark::Comma } else { quantity::DecimalMark::Point };
    let number = quantity::Number::parse(text.trim().trim_end_matches("mm").as_bytes(), mark).ok()?;
    let micrometres = number.scaled(3, quantity::Rounding::Nearest)?;
    u32::try_from(micrometres).ok().filter(|micrometres| (1..=1_000_000).contains(micrometres))
}

/// Seconds as text (`30`, `30.5`, `30 s`), in tenths of a second; up to an hour.
pub fn parse_seconds(text: &str) -> Option<u16> {
    let mark = if text.contains(',') { quantity::DecimalMark::Comma } else { quantity::DecimalMark::Point };
    let number = quantity::Number::parse(text.trim().trim_end_matches('s').as_bytes(), mark).ok()?;
    let tenths = number.scaled(1, quantity::Rounding::Nearest)?;
    u16::try_from(tenths).ok().filter(|tenths| (1..=36_000).contains(tenths))
}

/// A time of day as text (`06:00`), in minutes after midnight.
pub fn parse_time_of_day(text: &str) -> Option<u16> {
    let (hours, minutes) = text.trim().split_once(':')?;
    let (hours, minutes): (u16, u16) = (hours.parse().ok()?, minutes.parse().ok()?);
    (hours < 24 && minutes < 60).then_some(hours * 60 + minutes)
}

/// Percent as text (`2`, `2.5 %`), in hundredths of a percent; above 0 and up to 50 %.
pub fn parse_percent(text: &str) -> Option<u32> {
    let mark = if text.contains(',') { quantity::DecimalMark::Comma } else { quantity::DecimalMark::Point };
    let number =
        quantity::Number::parse(text.trim().trim_end_matches('%').trim_end().as_bytes(), mark).ok()?;
    let hundredths = number.scaled(2, quantity::Rounding::Up)?;
    u32::try_from(hundredths).ok().filter(|hundredths| (1..=5_000).contains(hundredths))
}

fn parse_site_sigma(text: &str) -> Result<SiteSigma, ProblemCode> {
    let field = |name: &str| {
        text.split(';')
            .find_map(|part| part.trim().strip_prefix(name)?.trim_start().strip_prefix('='))
            .map(str::trim)
    };
    let quantity_of = |name: &str| {
        field(name).map(|text| quantity::parse_with_unit(text).map_err(|_| ProblemCode::NotAQuantity))
    };
    let element = field("element").and_then(Element::from_symbol).ok_or(ProblemCode::UnknownName)?;
    let class = field("class").and_then(MaterialClass::from_code).ok_or(ProblemCode::UnknownName)?;
    let sigma = quantity_of("s").ok_or(ProblemCode::Missing)??;
    let constant = quantity_of("constant").transpose()?.unwrap_or(MassFraction::ZERO);
    let deciseconds = match field("seconds") {
        None | Some("") => None,
        Some(text) => Some(parse_seconds(text).ok_or(ProblemCode::OutOfRange)?),
    };
    let possible = sigma > MassFraction::ZERO
        && constant >= MassFraction::ZERO
        && constant <= sigma
        && sigma.units() <= quantity::LARGEST_SIGMA_UNITS;
    if !possible {
        return Err(ProblemCode::OutOfRange);
    }
    Ok(SiteSigma { element, class, sigma, deciseconds, constant })
}

/// Reads `3|value Pb mg/kg`.
pub fn parse_column_role(text: &str) -> Option<(u32, ColumnRole)> {
    let (column, role) = text.split_once('|')?;
    let column = column.trim().parse().ok().filter(|column| (1..=100_000).contains(column))?;
    Some((column, ColumnRole::from_words(role)?))
}

/// Checks the value of an act before it is recorded.
///
/// # Errors
/// What is wrong with it.
pub fn check_value(kind: ActKind, value: &str) -> Result<(), ProblemCode> {
    let one_of = |known: &[&str]| {
        if known.contains(&value) { Ok(()) } else { Err(ProblemCode::UnknownName) }
    };
    match kind {
        ActKind::Class => MaterialClass::from_code(value).map(|_| ()).ok_or(ProblemCode::UnknownName),
        ActKind::SigmaMultiple => SigmaMultiple::from_text(value).map(|_| ()).ok_or(ProblemCode::OutOfRange),
        ActKind::UnitOfMeasure => Unit::from_word(value).map(|_| ()).ok_or(ProblemCode::UnknownUnit),
        ActKind::DecimalMark => one_of(&[",", "."]),
        ActKind::DetectionInErrorColumn => one_of(&["limit", "one_error"]),
        ActKind::ColumnRole => parse_column_role(value).map(|_| ()).ok_or(ProblemCode::UnknownName),
        ActKind::HeaderLine => value.parse::<u32>().map(|_| ()).map_err(|_| ProblemCode::OutOfRange),
        ActKind::TextEncoding => one_of(&TEXT_ENCODINGS),
        ActKind::Sheet => (!value.is_empty()).then_some(()).ok_or(ProblemCode::Missing),
        ActKind::DateOrder => DateOrder::from_code(value).map(|_| ()).ok_or(ProblemCode::UnknownName),
        ActKind::IdPattern => IdTemplate::parse(value).map(|_| ()).map_err(|_| ProblemCode::Malformed),
        ActKind::Trust | ActKind::Sampling | ActKind::Materials => one_of(&["holding", "advisory"]),
        ActKind::ThicknessMm => parse_millimetres(value).map(|_| ()).ok_or(ProblemCode::OutOfRange),
        ActKind::LotSize | ActKind::UnitsToTake => match value.parse::<u64>() {
            Ok(1..=1_000_000_000) => Ok(()),
            _ => Err(ProblemCode::OutOfRange),
        },
        ActKind::Category => Categories::from_code(value).map(|_| ()).ok_or(ProblemCode::OutOfRange),
        ActKind::Claim => Claim::parse(value).map(|_| ()),
        ActKind::Renewal => Renewal::parse(value).map(|_| ()),
        ActKind::Mouthing => Mouthing::from_code(value).map(|_| ()).ok_or(ProblemCode::UnknownName),
        ActKind::Cr6Area => AreaSaid::parse(value).map(|_| ()),
        ActKind::PlacingDate | ActKind::ReplyBy | ActKind::Received | ActKind::IssuedOn => {
            Day::parse(value).map(|_| ()).ok_or(ProblemCode::OutOfRange)
        }
        ActKind::SiteSigma => parse_site_sigma(value).map(|_| ()),
        ActKind::RelativeSigma => parse_percent(value).map(|_| ()).ok_or(ProblemCode::OutOfRange),
        ActKind::Repeats => one_of(&["same_spot", "same_id", "never"]),
        ActKind::TubeAnode => Element::from_symbol(value).map(|_| ()).ok_or(ProblemCode::UnknownName),
        ActKind::LimitAnswer => LimitAnswer::parse(value).map(|_| ()),
        ActKind::Certificate => Certificate::parse(value).map(|_| ()),
        ActKind::Bracket => one_of(&["before_and_after", "before", "per_shift"]),
        ActKind::ShiftStarts => {
            let read = split_escaped(value).iter().all(|text| parse_time_of_day(text).is_some());
            read.then_some(()).ok_or(ProblemCode::OutOfRange)
        }
        ActKind::CheckRule => one_of(&["zeta", "en"]),
        ActKind::ControlChart => ChartRule::parse(value).map(|_| ()),
        ActKind::SamplingPlan => PlanSaid::parse(value).map(|_| ()),
        ActKind::Mark => one_of(&["check", "blank", "product"]),
        ActKind::SetAside => (!fields::says_nothing(value)).then_some(()).ok_or(ProblemCode::Missing),
        ActKind::Laboratory => LabResult::parse(value).map(|_| ()),
        ActKind::Lift => Lift::parse(value).map(|_| ()),
        ActKind::HoldEnds => HoldEnds::parse(value).map(|_| ()),
        ActKind::Photo => PhotoSaid::parse(value).map(|_| ()),
        ActKind::Issuer => stated::ISSUER.check(value),
        ActKind::Customer => stated::CUSTOMER.check(value),
        ActKind::Sampled => stated::SAMPLED.check(value),
        ActKind::Item => stated::ITEM.check(value),
        ActKind::Authorised => stated::AUTHORISED.check(value),
        ActKind::Invented => one_of(&["yes", "no"]),
        ActKind::UncertaintyHolds => one_of(&["repeatability", "everything"]),
        ActKind::Undo => value.parse::<usize>().map(|_| ()).map_err(|_| ProblemCode::OutOfRange),
        ActKind::Books => {
            let sound = split_escaped(value).iter().all(|name| Named::parse(name).is_some());
            if sound { Ok(()) } else { Err(ProblemCode::UnknownName) }
        }
        ActKind::BillOfMaterials | ActKind::CheckSamples | ActKind::BlankSamples => {
            let named = split_escaped(value).iter().all(|name| !name.trim().is_empty());
            if named { Ok(()) } else { Err(ProblemCode::Missing) }
        }
        ActKind::HalogenBook
        | ActKind::ReviewedAt
        | ActKind::Inspector
        | ActKind::Place
        | ActKind::Title
        | ActKind::RequestedAction
        | ActKind::Contact
        | ActKind::Environment
        | ActKind::Deviations
        | ActKind::Instrument
        | ActKind::RecordsKept => Ok(()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn undo_is_an_act_and_can_be_undone() {
        let act = |kind, value: &str| Act {
            kind,
            target: Target::Inspection,
            value: value.into(),
            by: String::new(),
            at: String::new(),
            note: String::new(),
        };
        let mut acts = vec![act(ActKind::Class, "polymer"), act(ActKind::Undo, "1")];
        assert_eq!(Settings::from_acts(&acts).class_of_source("x"), None);
        acts.push(act(ActKind::Undo, "2"));
        assert_eq!(Settings::from_acts(&acts).class_of_source("x"), Some(MaterialClass::Polymer));
    }

    #[test]
    fn a_material_has_a_claim_for_each_entry_and_substance() {
        let act = |kind, value: &str, by: &str| Act {
            kind,
            target: Target::Material("P-1".into(), "body".into()),
            value: value.into(),
            by: by.into(),
            at: String::new(),
            note: String::new(),
        };
        let claim = |value, by| act(ActKind::Claim, value, by);
        let acts = [
            claim("entry=6(c);substance=Pb;evidence=old", ""),
            claim("entry=6(b);substance=Pb", ""),
            claim("entry=6(c);substance=Cd", ""),
            claim("entry=6(c);substance=Pb;evidence=new;by=EF;second=AB", "CD"),
            act(ActKind::Renewal, "entry=6(c);state=pending", ""),
            act(ActKind::Renewal, "entry=7(a);state=refused", ""),
            act(ActKind::Renewal, "entry=6(c);state=not_filed", ""),
        ];
        let settings = Settings::from_acts(&acts);
        let claims: Vec<_> = settings.claims().into_iter().map(|(_, claim)| claim).collect();
        let said: Vec<_> =
            claims.iter().map(|one| format!("{} {}", one.entry, one.substance.symbol())).collect();
        assert_eq!(said, ["6(b) Pb", "6(c) Cd", "6(c) Pb"]);
        assert_eq!((claims[2].evidence.as_str(), claims[2].by.as_str()), ("new", "CD"));
        assert_eq!((claims[0].by.as_str(), claims[2].second.as_str()), ("", "AB"));
        let states: Vec<_> =
            settings.renewals().iter().map(|one| (one.entry.clone(), one.state.code())).collect();
        assert_eq!(states, [("7(a)".to_owned(), "refused"), ("6(c)".to_owned(), "not_filed")]);
    }

    #[test]
    fn a_parts_own_answer_stands_above_the_one_for_everything() {
        let act = |kind, target, value: &str| Act {
            kind,
            target,
            value: value.into(),
            by: String::new(),
            at: String::new(),
            note: String::new(),
        };
        let part = || Target::Part("P-1".into());
        let acts = [
            act(ActKind::Mouthing, Target::Inspection, "cannot"),
            act(ActKind::Mouthing, part(), "can"),
            act(ActKind::Category, Target::Inspection, "9i"),
            act(ActKind::PlacingDate, Target::Inspection, "2026-12-01"),
            act(ActKind::Cr6Area, part(), "area=0.08 ug/cm2"),
        ];
        let settings = Settings::from_acts(&acts);
        assert_eq!(settings.mouthing("P-1"), Some(Mouthing::Can));
        assert_eq!(settings.mouthing("P-2"), Some(Mouthing::Cannot));
        assert_eq!(settings.category(), Categories::from_code("9i"));
        assert_eq!(settings.placed(), Day::new(2026, 12, 1));
        assert_eq!(settings.cr6_areas().len(), 1);
        let none = Settings::from_acts(&[]);
        assert!(none.mouthing("P-1").is_none() && none.category().is_none() && none.placed().is_none());
        assert!(none.claims().is_empty() && none.cr6_areas().is_empty() && none.renewals().is_empty());
    }

    #[test]
    fn what_is_said_of_exemptions_is_checked_before_it_is_recorded() {
        for (kind, good, bad) in [
            (ActKind::Category, "8ivd", "12"),
            (ActKind::Claim, "entry=6(c);substance=Pb", "entry=6(c)"),
            (ActKind::Renewal, "entry=6(c);state=refused", "entry=6(c);state=lost"),
            (ActKind::Mouthing, "release_shown", "perhaps"),
            (ActKind::Cr6Area, "area=0.08 ug/cm2", "area=0.08 mg/kg"),
            (ActKind::PlacingDate, "2026-12-01", "2026-12-32"),
        ] {
            assert!(check_value(kind, good).is_ok() && check_value(kind, bad).is_err(), "{}", kind.code());
        }
    }

    #[test]
    fn targets_keep_odd_names() {
        let target = Target::Lot("Elm | Sons".into(), "a\\b".into());
        assert_eq!(Target::parse(&target.to_text()), Some(target));
        assert_eq!(Target::parse("lot:only-one"), None);
        assert_eq!(Target::parse("house:x"), None);
    }
}
