//! What a person does: an append-only list of acts, and the settings they add up to.
//!
//! A settings file is the same acts written down beforehand. Undo is an act; the list only grows.

use serde::Deserialize;
use toml::Spanned;

use crate::material::MaterialClass;
use crate::quantity::{self, MassFraction, SigmaMultiple, Unit};
use crate::reading::codes;
use crate::rules::{Problem, ProblemCode, check_schema, malformed, place_of};
use crate::substance::Element;

/// The schema name a settings file must carry.
pub const SCHEMA: &str = "plumbline.settings/1";

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
        /// One row of the site's table of repeatability.
        SiteSigma => "site_sigma",
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
    /// One lot by supplier and lot; empty text is "not stated".
    Lot(String, String),
    /// One part.
    Part(String),
    /// One material of a part.
    Material(String, String),
}

impl Target {
    /// Reads a target as findings write it: empty, `source:NAME`, `lot:SUPPLIER|LOT`, `part:PART`,
    /// `material:PART|MATERIAL`. A `|` or `\` in a name stands behind a `\`.
    pub fn parse(text: &str) -> Option<Target> {
        if text.is_empty() {
            return Some(Target::Inspection);
        }
        let (kind, rest) = text.split_once(':')?;
        let mut parts = split_escaped(rest).into_iter();
        let (first, second) = (parts.next()?, parts.next());
        match (kind, second, parts.next()) {
            ("source", None, None) => Some(Target::Source(first)),
            ("part", None, None) => Some(Target::Part(first)),
            ("lot", Some(lot), None) => Some(Target::Lot(first, lot)),
            ("material", Some(material), None) => Some(Target::Material(first, material)),
            _ => None,
        }
    }

    /// The text of a target.
    pub fn to_text(&self) -> String {
        match self {
            Target::Inspection => String::new(),
            Target::Source(name) => format!("source:{}", escape(name)),
            Target::Lot(supplier, lot) => format!("lot:{}|{}", escape(supplier), escape(lot)),
            Target::Part(part) => format!("part:{}", escape(part)),
            Target::Material(part, material) => format!("material:{}|{}", escape(part), escape(material)),
        }
    }
}

fn escape(text: &str) -> String {
    text.replace('\\', "\\\\").replace('|', "\\|")
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
}

impl Settings {
    /// Adds up acts in order, leaving out those that are undone.
    pub fn from_acts(acts: &[Act]) -> Settings {
        let mut settings = Settings::default();
        for (act, undone) in acts.iter().zip(undone(acts)) {
            if undone || act.kind == ActKind::Undo {
                continue;
            }
            match act.kind {
                ActKind::SiteSigma => settings.site_sigmas.extend(parse_site_sigma(&act.value).ok()),
                ActKind::CheckSamples => settings.check_samples = split_escaped(&act.value),
                _ => {
                    settings.scoped.retain(|(kind, target, _)| !(*kind == act.kind && *target == act.target));
                    settings.scoped.push((act.kind, act.target.clone(), act.value.clone()));
                }
            }
        }
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

    fn of_source(&self, kind: ActKind, source: &str) -> Option<&str> {
        self.exact(kind, &Target::Source(source.to_owned())).or_else(|| self.inspection(kind))
    }

    /// The multiple a person set for a source that doesn't state it.
    pub fn sigma_multiple(&self, source: &str) -> Option<SigmaMultiple> {
        self.of_source(ActKind::SigmaMultiple, source).and_then(SigmaMultiple::from_text)
    }

    /// The unit a person set for a source that doesn't state it.
    pub fn unit_of_measure(&self, source: &str) -> Option<Unit> {
        self.of_source(ActKind::UnitOfMeasure, source).and_then(Unit::from_word)
    }

    /// The decimal mark a person set for a source.
    pub fn decimal_mark(&self, source: &str) -> Option<quantity::DecimalMark> {
        match self.of_source(ActKind::DecimalMark, source)? {
            "," => Some(quantity::DecimalMark::Comma),
            _ => Some(quantity::DecimalMark::Point),
        }
    }

    /// What a number in the error column of a non-detect is, for a source.
    pub fn detection_in_error(&self, source: &str) -> DetectionInError {
        match self.of_source(ActKind::DetectionInErrorColumn, source) {
            Some("one_error") => DetectionInError::OneError,
            _ => DetectionInError::Limit,
        }
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

    /// The bill of materials given for a part.
    pub fn bill_of_materials(&self, part: &str) -> Option<Vec<String>> {
        self.exact(ActKind::BillOfMaterials, &Target::Part(part.to_owned())).map(split_escaped)
    }

    /// Every setting with its target and value, in the order of the acts.
    pub fn all(&self) -> impl Iterator<Item = (ActKind, &Target, &str)> {
        self.scoped.iter().map(|(kind, target, value)| (*kind, target, value.as_str()))
    }
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
        ActKind::Trust | ActKind::Sampling | ActKind::Materials => one_of(&["holding", "advisory"]),
        ActKind::ThicknessMm => parse_millimetres(value).map(|_| ()).ok_or(ProblemCode::OutOfRange),
        ActKind::LotSize | ActKind::UnitsToTake => match value.parse::<u64>() {
            Ok(1..=1_000_000_000) => Ok(()),
            _ => Err(ProblemCode::OutOfRange),
        },
        ActKind::Category => match value.parse::<u8>() {
            Ok(1..=11) => Ok(()),
            _ => Err(ProblemCode::OutOfRange),
        },
        ActKind::PlacingDate => is_date(value).then_some(()).ok_or(ProblemCode::OutOfRange),
        ActKind::SiteSigma => parse_site_sigma(value).map(|_| ()),
        ActKind::Undo => value.parse::<usize>().map(|_| ()).map_err(|_| ProblemCode::OutOfRange),
        ActKind::BillOfMaterials | ActKind::CheckSamples => {
            let named = split_escaped(value).iter().all(|name| !name.trim().is_empty());
            if named { Ok(()) } else { Err(ProblemCode::Missing) }
        }
        ActKind::HalogenBook | ActKind::ReviewedAt | ActKind::Inspector | ActKind::Place | ActKind::Title => {
            Ok(())
        }
    }
}

/// True for a calendar date `YYYY-MM-DD`.
fn is_date(text: &str) -> bool {
    let parts: Vec<&str> = text.split('-').collect();
    let [year, month, day] = parts[..] else { return false };
    let (Ok(year_number), Ok(month), Ok(day)) =
        (year.parse::<u32>(), month.parse::<u32>(), day.parse::<u32>())
    else {
        return false;
    };
    let leap = year_number.is_multiple_of(4)
        && (!year_number.is_multiple_of(100) || year_number.is_multiple_of(400));
    let days = match month {
        2 if leap => 29,
        2 => 28,
        4 | 6 | 9 | 11 => 30,
        1..=12 => 31,
        _ => 0,
    };
    year.len() == 4 && text.len() == 10 && (1..=days).contains(&day)
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct SettingsFile {
    #[serde(rename = "schema")]
    _schema: String,
    reviewed_at: Option<Spanned<toml::Value>>,
    inspector: Option<Spanned<toml::Value>>,
    place: Option<Spanned<toml::Value>>,
    title: Option<Spanned<toml::Value>>,
    class: Option<Spanned<toml::Value>>,
    sigma_multiple: Option<Spanned<toml::Value>>,
    unit_of_measure: Option<Spanned<toml::Value>>,
    decimal_mark: Option<Spanned<toml::Value>>,
    detection_in_error_column: Option<Spanned<toml::Value>>,
    halogen_book: Option<Spanned<toml::Value>>,
    trust: Option<Spanned<toml::Value>>,
    sampling: Option<Spanned<toml::Value>>,
    materials: Option<Spanned<toml::Value>>,
    thickness_mm: Option<Spanned<toml::Value>>,
    category: Option<Spanned<toml::Value>>,
    placing_date: Option<Spanned<toml::Value>>,
    lot_size: Option<Spanned<toml::Value>>,
    units_to_take: Option<Spanned<toml::Value>>,
    check_samples: Option<Spanned<Vec<String>>>,
    #[serde(default)]
    source: Vec<SourceSettings>,
    #[serde(default)]
    lot: Vec<LotSettings>,
    #[serde(default)]
    part: Vec<PartSettings>,
    #[serde(default)]
    material: Vec<MaterialSettings>,
    #[serde(default)]
    site_sigma: Vec<SiteSigmaSettings>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct SourceSettings {
    name: String,
    class: Option<Spanned<toml::Value>>,
    sigma_multiple: Option<Spanned<toml::Value>>,
    unit_of_measure: Option<Spanned<toml::Value>>,
    decimal_mark: Option<Spanned<toml::Value>>,
    detection_in_error_column: Option<Spanned<toml::Value>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct LotSettings {
    #[serde(default)]
    supplier: String,
    #[serde(default)]
    lot: String,
    lot_size: Option<Spanned<toml::Value>>,
    units_to_take: Option<Spanned<toml::Value>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct PartSettings {
    part: String,
    materials: Option<Spanned<Vec<String>>>,
    class: Option<Spanned<toml::Value>>,
    thickness_mm: Option<Spanned<toml::Value>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct MaterialSettings {
    #[serde(default)]
    part: String,
    material: String,
    class: Option<Spanned<toml::Value>>,
    thickness_mm: Option<Spanned<toml::Value>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct SiteSigmaSettings {
    element: Spanned<String>,
    class: Spanned<String>,
    s: Spanned<String>,
    seconds: Option<Spanned<toml::Value>>,
    constant: Option<Spanned<String>>,
}

fn text_of(value: &toml::Value) -> Option<String> {
    match value {
        toml::Value::String(text) => Some(text.clone()),
        toml::Value::Integer(number) => Some(number.to_string()),
        toml::Value::Float(number) => Some(number.to_string()),
        toml::Value::Datetime(date) => Some(date.to_string()),
        _ => None,
    }
}

struct ActsReader<'a> {
    text: &'a str,
    note: &'a str,
    acts: Vec<Act>,
    problems: Vec<Problem>,
}

impl ActsReader<'_> {
    fn add(&mut self, kind: ActKind, target: &Target, value: String, byte: usize) {
        match check_value(kind, &value) {
            Ok(()) => self.acts.push(Act {
                kind,
                target: target.clone(),
                value,
                by: String::new(),
                at: String::new(),
                note: self.note.to_owned(),
            }),
            Err(code) => {
                let (line, column) = place_of(self.text, byte);
                self.problems.push(Problem { line, column, code, found: value });
            }
        }
    }

    fn value(&mut self, kind: ActKind, target: &Target, value: Option<&Spanned<toml::Value>>) {
        let Some(value) = value else { return };
        if let Some(text) = text_of(value.get_ref()) {
            self.add(kind, target, text, value.span().start);
        } else {
            let (line, column) = place_of(self.text, value.span().start);
            let found = value.get_ref().to_string();
            self.problems.push(Problem { line, column, code: ProblemCode::Malformed, found });
        }
    }

    fn list(&mut self, kind: ActKind, target: &Target, list: Option<&Spanned<Vec<String>>>) {
        let Some(list) = list else { return };
        let joined = list.get_ref().iter().map(|name| escape(name)).collect::<Vec<_>>().join("|");
        self.add(kind, target, joined, list.span().start);
    }
}

/// Reads a settings file into acts.
///
/// # Errors
/// Every problem with its place; nothing of a file with a problem is used.
pub fn parse_settings(text: &str, name: &str) -> Result<Vec<Act>, Vec<Problem>> {
    check_schema(text, SCHEMA)?;
    let file: SettingsFile = toml::from_str(text).map_err(|error| vec![malformed(text, &error)])?;
    let mut reader = ActsReader { text, note: name, acts: Vec::new(), problems: Vec::new() };
    let all = Target::Inspection;
    for (kind, value) in [
        (ActKind::ReviewedAt, &file.reviewed_at),
        (ActKind::Inspector, &file.inspector),
        (ActKind::Place, &file.place),
        (ActKind::Title, &file.title),
        (ActKind::Class, &file.class),
        (ActKind::SigmaMultiple, &file.sigma_multiple),
        (ActKind::UnitOfMeasure, &file.unit_of_measure),
        (ActKind::DecimalMark, &file.decimal_mark),
        (ActKind::DetectionInErrorColumn, &file.detection_in_error_column),
        (ActKind::HalogenBook, &file.halogen_book),
        (ActKind::Trust, &file.trust),
        (ActKind::Sampling, &file.sampling),
        (ActKind::Materials, &file.materials),
        (ActKind::ThicknessMm, &file.thickness_mm),
        (ActKind::Category, &file.category),
        (ActKind::PlacingDate, &file.placing_date),
        (ActKind::LotSize, &file.lot_size),
        (ActKind::UnitsToTake, &file.units_to_take),
    ] {
        reader.value(kind, &all, value.as_ref());
    }
    reader.list(ActKind::CheckSamples, &all, file.check_samples.as_ref());
    for source in &file.source {
        let target = Target::Source(source.name.clone());
        reader.value(ActKind::Class, &target, source.class.as_ref());
        reader.value(ActKind::SigmaMultiple, &target, source.sigma_multiple.as_ref());
        reader.value(ActKind::UnitOfMeasure, &target, source.unit_of_measure.as_ref());
        reader.value(ActKind::DecimalMark, &target, source.decimal_mark.as_ref());
        reader.value(ActKind::DetectionInErrorColumn, &target, source.detection_in_error_column.as_ref());
    }
    for lot in &file.lot {
        let target = Target::Lot(lot.supplier.clone(), lot.lot.clone());
        reader.value(ActKind::LotSize, &target, lot.lot_size.as_ref());
        reader.value(ActKind::UnitsToTake, &target, lot.units_to_take.as_ref());
    }
    for part in &file.part {
        let target = Target::Part(part.part.clone());
        reader.list(ActKind::BillOfMaterials, &target, part.materials.as_ref());
        reader.value(ActKind::Class, &target, part.class.as_ref());
        reader.value(ActKind::ThicknessMm, &target, part.thickness_mm.as_ref());
    }
    for material in &file.material {
        let target = Target::Material(material.part.clone(), material.material.clone());
        reader.value(ActKind::Class, &target, material.class.as_ref());
        reader.value(ActKind::ThicknessMm, &target, material.thickness_mm.as_ref());
    }
    for row in &file.site_sigma {
        let mut value =
            format!("element={};class={};s={}", row.element.get_ref(), row.class.get_ref(), row.s.get_ref());
        if let Some(seconds) = row.seconds.as_ref().and_then(|seconds| text_of(seconds.get_ref())) {
            value.push_str(";seconds=");
            value.push_str(&seconds);
        }
        if let Some(constant) = &row.constant {
            value.push_str(";constant=");
            value.push_str(constant.get_ref());
        }
        reader.add(ActKind::SiteSigma, &all, value, row.element.span().start);
    }
    if reader.problems.is_empty() { Ok(reader.acts) } else { Err(reader.problems) }
}

/// Writes what the acts add up to as a settings file, so that the same review can be made again.
pub fn settings_text(acts: &[Act]) -> String {
    let settings = Settings::from_acts(acts);
    let mut file = toml::Table::new();
    let text = |value: &str| toml::Value::String(value.to_owned());
    let list = |values: &[String]| toml::Value::Array(values.iter().map(|value| text(value)).collect());
    file.insert("schema".into(), text(SCHEMA));
    if !settings.check_samples.is_empty() {
        file.insert("check_samples".into(), list(&settings.check_samples));
    }
    for (kind, target, value) in settings.all() {
        let (table, names): (&str, Vec<(&str, &str)>) = match target {
            Target::Inspection => {
                file.insert(kind.code().into(), text(value));
                continue;
            }
            Target::Source(name) => ("source", vec![("name", name)]),
            Target::Lot(supplier, lot) => ("lot", vec![("supplier", supplier), ("lot", lot)]),
            Target::Part(part) => ("part", vec![("part", part)]),
            Target::Material(part, material) => ("material", vec![("part", part), ("material", material)]),
        };
        let (key, value) = match kind {
            ActKind::BillOfMaterials => ("materials", list(&split_escaped(value))),
            _ => (kind.code(), text(value)),
        };
        add_row(&mut file, table, &names, key, value);
    }
    for row in &settings.site_sigmas {
        let mut entry = toml::Table::new();
        entry.insert("element".into(), text(row.element.symbol()));
        entry.insert("class".into(), text(row.class.code()));
        entry.insert("s".into(), text(&format!("{} mg/kg", row.sigma)));
        if let Some(tenths) = row.deciseconds {
            entry.insert("seconds".into(), text(&format!("{}.{}", tenths / 10, tenths % 10)));
        }
        entry.insert("constant".into(), text(&format!("{} mg/kg", row.constant)));
        push_row(&mut file, "site_sigma", entry);
    }
    toml::to_string(&file).unwrap_or_default()
}

fn add_row(file: &mut toml::Table, table: &str, names: &[(&str, &str)], key: &str, value: toml::Value) {
    if let Some(toml::Value::Array(rows)) = file.get_mut(table) {
        let same = rows.iter_mut().filter_map(toml::Value::as_table_mut).find(|row| {
            names
                .iter()
                .all(|(name, expected)| row.get(*name).and_then(toml::Value::as_str) == Some(expected))
        });
        if let Some(row) = same {
            row.insert(key.into(), value);
            return;
        }
    }
    let mut row = toml::Table::new();
    for (name, text) in names {
        row.insert((*name).into(), toml::Value::String((*text).to_owned()));
    }
    row.insert(key.into(), value);
    push_row(file, table, row);
}

fn push_row(file: &mut toml::Table, table: &str, row: toml::Table) {
    let rows = file.entry(table).or_insert_with(|| toml::Value::Array(Vec::new()));
    if let toml::Value::Array(rows) = rows {
        rows.push(toml::Value::Table(row));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const FILE: &str = r#"
schema = "plumbline.settings/1"
reviewed_at = 2026-11-25
sigma_multiple = 2
trust = "advisory"
check_samples = ["CHK|1"]

[[lot]]
supplier = "Alder Works"
lot = "A-1"
lot_size = 500
units_to_take = 3

[[part]]
part = "P-1"
materials = ["housing", "label"]
thickness_mm = 2.5

[[site_sigma]]
element = "Pb"
class = "polymer"
s = "20 mg/kg"
seconds = 60
"#;

    #[test]
    fn a_settings_file_becomes_acts_and_comes_back_the_same() {
        let acts = parse_settings(FILE, "settings.toml").unwrap();
        let settings = Settings::from_acts(&acts);
        assert_eq!(settings.inspection(ActKind::ReviewedAt), Some("2026-11-25"));
        assert_eq!(settings.sigma_multiple("any.csv").unwrap().to_string(), "2");
        assert_eq!(settings.weight(ActKind::Trust), Weight::Advisory);
        assert_eq!(settings.weight(ActKind::Sampling), Weight::Holding);
        assert_eq!(settings.of_lot(ActKind::LotSize, "Alder Works", "A-1"), Some(500));
        assert_eq!(settings.of_lot(ActKind::LotSize, "Birch Works", "A-1"), None);
        assert_eq!(settings.bill_of_materials("P-1").unwrap(), ["housing", "label"]);
        assert_eq!(settings.thickness_micrometres("P-1", "housing"), Some(2_500));
        assert_eq!(settings.check_samples, ["CHK|1"]);
        assert_eq!(settings.site_sigmas[0].deciseconds, Some(600));
        let again = Settings::from_acts(&parse_settings(&settings_text(&acts), "again").unwrap());
        assert_eq!(again.site_sigmas, settings.site_sigmas);
        assert_eq!(again.check_samples, settings.check_samples);
        let sorted = |settings: &Settings| {
            let mut all: Vec<_> =
                settings.all().map(|(k, t, v)| (k.code(), t.to_text(), v.to_owned())).collect();
            all.sort();
            all
        };
        assert_eq!(sorted(&again), sorted(&settings));
    }

    #[test]
    fn a_bad_value_is_refused_with_its_place() {
        let problems = parse_settings(&FILE.replace("\"advisory\"", "\"maybe\""), "s").unwrap_err();
        assert_eq!((problems[0].line, problems[0].code), (5, ProblemCode::UnknownName));
        let problems = parse_settings(&FILE.replace("= 2\n", "= 7\n"), "s").unwrap_err();
        assert_eq!((problems[0].line, problems[0].code), (4, ProblemCode::OutOfRange));
        let problems = parse_settings(&FILE.replace("trust", "trusts"), "s").unwrap_err();
        assert_eq!(problems[0].code, ProblemCode::Malformed);
    }

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
    fn targets_keep_odd_names() {
        let target = Target::Lot("Elm | Sons".into(), "a\\b".into());
        assert_eq!(Target::parse(&target.to_text()), Some(target));
        assert_eq!(Target::parse("lot:only-one"), None);
        assert_eq!(Target::parse("house:x"), None);
    }

    #[test]
    fn dates_are_calendar_dates() {
        assert!(is_date("2028-02-29") && is_date("2026-12-31"));
        for wrong in ["2027-02-29", "2026-13-01", "26-01-01", "2026-1-01", "tomorrow"] {
            assert!(!is_date(wrong), "{wrong}");
        }
    }
}
