//! One invented lot, drawn so that a disposition is likely: its table, its settings, and the facts a trainee is told beside them.

use plumbline_core::exempt::Bound;
use plumbline_core::quantity::MassFraction;
use plumbline_core::rules::RuleBooks;
use plumbline_core::substance::Substance;

use crate::draw::Draw;
use crate::files::{Delivery, Table};

/// How a lot is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LotKind {
    /// Two materials, both measured and clean.
    TwoMaterials,
    /// One of two materials is over limit.
    OneMaterialOver,
    /// One of two listed materials was not measured.
    MaterialMissing,
    /// Leaded brass that a claim covers.
    ClaimCovers,
    /// Leaded brass without a claim.
    NoClaim,
    /// More lead than the entry allows.
    ClaimExceeded,
    /// About as much lead as the entry allows.
    ClaimAround,
    /// Placed on the market after the entry's last day, and nobody asked for its renewal.
    ClaimExpired,
    /// Nobody said when it is placed on the market.
    ClaimUndated,
    /// The claim carries one person's initials.
    ClaimOneInitial,
    /// Good checks before and after.
    ChecksGood,
    /// Good checks, and a reading over limit.
    ChecksGoodAndOver,
    /// The check after the readings is off.
    CheckFailed,
    /// The same, and a reading over limit.
    CheckFailedAndOver,
    /// No check readings.
    NoChecks,
    /// A check before, none after.
    CheckNotAfter,
    /// Measured for a few seconds.
    TooShort,
    /// As many units as set, all clean.
    EnoughUnits,
    /// Fewer units than set.
    TooFewUnits,
    /// Enough readings, all on one unit.
    OneUnitManySpots,
    /// Nobody said how large the lot is.
    LotSizeMissing,
    /// One unit over limit.
    OneOver,
    /// One unit undecided.
    OneUndecided,
    /// One substance of one unit not measured.
    OneNotMeasured,
}

impl LotKind {
    /// All kinds.
    pub const ALL: [LotKind; 24] = [
        LotKind::TwoMaterials,
        LotKind::OneMaterialOver,
        LotKind::MaterialMissing,
        LotKind::ClaimCovers,
        LotKind::NoClaim,
        LotKind::ClaimExceeded,
        LotKind::ClaimAround,
        LotKind::ClaimExpired,
        LotKind::ClaimUndated,
        LotKind::ClaimOneInitial,
        LotKind::ChecksGood,
        LotKind::ChecksGoodAndOver,
        LotKind::CheckFailed,
        LotKind::CheckFailedAndOver,
        LotKind::NoChecks,
        LotKind::CheckNotAfter,
        LotKind::TooShort,
        LotKind::EnoughUnits,
        LotKind::TooFewUnits,
        LotKind::OneUnitManySpots,
        LotKind::LotSizeMissing,
        LotKind::OneOver,
        LotKind::OneUndecided,
        LotKind::OneNotMeasured,
    ];

    const fn is_about_brass(self) -> bool {
        matches!(
            self,
            LotKind::ClaimCovers
                | LotKind::NoClaim
                | LotKind::ClaimExceeded
                | LotKind::ClaimAround
                | LotKind::ClaimExpired
                | LotKind::ClaimUndated
                | LotKind::ClaimOneInitial
        )
    }

    const fn has_checks(self) -> bool {
        matches!(
            self,
            LotKind::ChecksGood
                | LotKind::ChecksGoodAndOver
                | LotKind::CheckFailed
                | LotKind::CheckFailedAndOver
                | LotKind::CheckNotAfter
                | LotKind::TooShort
        )
    }

    /// Whether trust holds in the settings: where an exercise is about something else, it is only told.
    const fn is_about_trust(self) -> bool {
        self.has_checks() || matches!(self, LotKind::NoChecks)
    }

    const fn is_over(self) -> bool {
        matches!(
            self,
            LotKind::OneOver
                | LotKind::ChecksGoodAndOver
                | LotKind::CheckFailedAndOver
                | LotKind::OneMaterialOver
        )
    }
}

/// A fact told beside the readings: a code with its arguments, worded by the page.
pub type Facts = Vec<(&'static str, Vec<(&'static str, String)>)>;

/// A lot as it is shown: the readings, and what else is known.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Lot {
    pub(crate) delivery: Delivery,
    pub(crate) facts: Facts,
    pub(crate) headings: Vec<String>,
    pub(crate) rows: Vec<Vec<String>>,
}

/// Part, its first material and another. Invented.
const PLASTIC_PARTS: [(&str, &str, &str); 5] = [
    ("KN-7 knob", "POM black", "TPE grey"),
    ("CG-18 gland", "PA66 grey", "NBR black"),
    ("LV-5 lever", "PP green", "TPE black"),
    ("HB-3 hub", "ABS white", "PP natural"),
    ("CL-9 clip", "PBT blue", "PE natural"),
];
const BRASS_PARTS: [&str; 3] = ["BV-22 valve", "NP-6 nipple", "SN-4 stem nut"];
const BRASS: &str = "leaded brass";
const WORKS: [&str; 7] = ["Alder", "Birch", "Cedar", "Dogwood", "Elm", "Fir", "Gorse"];
const CHECK: &str = "CHK-1000";
/// The invented certificate of the check disc: value and expanded uncertainty (k = 2) in mg/kg, in the order of
/// [`Substance::ALL`].
const CERTIFICATE: [(i64, i64); 5] = [(100, 4), (1000, 20), (1000, 20), (1000, 24), (1000, 16)];
/// The entry the brass exercises claim. Its limit and last day come from the rule book.
const ENTRY: &str = "6(c)";

const MG: i64 = 1_000_000;

/// Value, uncertainty.
type Cell = (String, String);

struct Row {
    sample: String,
    unit: String,
    spot: String,
    material: String,
    class: &'static str,
    part: bool,
    cells: [Cell; 5],
    copper: [Cell; 2],
}

struct Making<'a> {
    draw: &'a mut Draw,
    kind: LotKind,
    rows: Vec<Row>,
    facts: Facts,
    settings: String,
}

fn mg(units: i64) -> String {
    MassFraction::from_units(units).to_string()
}

fn number(value: i64, sigma: i64) -> Cell {
    (mg(value), mg(sigma))
}

/// Draws a lot of `units` units. `None` where the rule book has no entry that the exercise is about.
pub(crate) fn lot(books: &RuleBooks, kind: LotKind, draw: &mut Draw, name: &str, units: i64) -> Option<Lot> {
    let works = draw.pick(&WORKS)?;
    let lot_name = format!("{}-{}", works.get(..2)?.to_uppercase(), draw.between(1000, 9999));
    let mut making = Making { draw, kind, rows: Vec::new(), facts: Vec::new(), settings: String::new() };
    let part = if kind.is_about_brass() { making.brass(books, units)? } else { making.plastic(units)? };
    making.lot(works, &lot_name, units);
    if kind.has_checks() {
        making.checks();
    }
    if !kind.is_about_trust() {
        making.settings.insert_str(0, "trust = \"advisory\"\n");
        making.tell("trust_advisory", &[]);
    }
    Some(making.finish(name, part, &lot_name, works))
}

impl Making<'_> {
    fn tell(&mut self, code: &'static str, arguments: &[(&'static str, &str)]) {
        let arguments = arguments.iter().map(|(name, value)| (*name, (*value).to_owned())).collect();
        self.facts.push((code, arguments));
    }

    fn say(&mut self, line: &str) {
        self.settings.push_str(line);
        self.settings.push('\n');
    }

    /// What a clean plastic shows: mostly a detection limit, sometimes a small number.
    fn clean(&mut self, at: usize) -> Cell {
        let tenth = MG / 10;
        if self.draw.between(0, 2) > 0 {
            let limit = if at == 3 { self.draw.between(90, 160) } else { self.draw.between(35, 60) };
            (format!("< {}", mg(limit * tenth)), String::new())
        } else {
            number(self.draw.between(40, 140) * tenth, self.draw.between(10, 20) * tenth)
        }
    }

    fn plastic(&mut self, units: i64) -> Option<&'static str> {
        let (part, first, second) = self.draw.pick(&PLASTIC_PARTS)?;
        let kind = self.kind;
        let two = matches!(kind, LotKind::TwoMaterials | LotKind::OneMaterialOver | LotKind::MaterialMissing);
        let measured: &[&str] =
            if two && kind != LotKind::MaterialMissing { &[first, second] } else { &[first] };
        let taken = match kind {
            LotKind::TooFewUnits => units - self.draw.between(1, units - 1),
            _ => units,
        };
        for unit in 1..=taken {
            for material in measured {
                let cells = std::array::from_fn(|at| self.clean(at));
                self.row(unit, material, "polymer", cells);
            }
        }
        let last = i64::try_from(self.rows.len()).ok()? - 1;
        let odd = usize::try_from(self.draw.between(0, last)).ok()?;
        let which = usize::from(self.draw.between(0, 1) != 0);
        let row = self.rows.get_mut(odd)?;
        if kind.is_over() {
            let (low, high) = if which == 0 { (190, 900) } else { (1600, 9000) };
            let value = self.draw.between(low, high);
            row.cells[which] = number(value * MG, value * MG / 60);
        } else if kind == LotKind::OneUndecided {
            let (low, high, sigma) = if which == 0 { (75, 125, 4) } else { (720, 1280, 20) };
            row.cells[which] = number(self.draw.between(low, high) * MG, sigma * MG);
        } else if kind == LotKind::OneNotMeasured {
            row.cells[which + 1] = ("-".to_owned(), String::new());
        } else if kind == LotKind::TooShort {
            for row in &mut self.rows {
                let sigma = self.draw.between(26, 40);
                row.cells[0] = number(self.draw.between(-20, 20) * MG, sigma * MG);
            }
            self.tell("seconds", &[("seconds", "5")]);
        } else if kind == LotKind::OneUnitManySpots {
            for (at, row) in self.rows.iter_mut().enumerate() {
                "unit 1".clone_into(&mut row.unit);
                row.spot = format!("spot {}", at + 1);
            }
        }
        let listed: Vec<&str> = if two { vec![first, second] } else { vec![first] };
        self.say(&format!("\n[[part]]\npart = \"{part}\"\nmaterials = [\"{}\"]", listed.join("\", \"")));
        for material in &listed {
            self.say(&format!(
                "\n[[material]]\npart = \"{part}\"\nmaterial = \"{material}\"\nthickness_mm = 30"
            ));
        }
        self.tell("materials", &[("list", &listed.join(", "))]);
        Some(part)
    }

    fn brass(&mut self, books: &RuleBooks, units: i64) -> Option<&'static str> {
        let part = self.draw.pick(&BRASS_PARTS)?;
        let entry = books.exemptions().iter().find(|one| one.entry == ENTRY)?;
        let Bound::AtMost(limit) = entry.bound else { return None };
        let (limit, expires) = (limit.units(), entry.expires?);
        let kind = self.kind;
        // Free-machining brass holds 2.5 to 3.5 % of lead (CW614N, published table of EN copper alloys); the rest of the range is ours.
        let lead = match kind {
            LotKind::ClaimExceeded => self.draw.stepped(limit * 115 / 100, limit * 140 / 100, MG),
            LotKind::ClaimAround => self.draw.stepped(limit - 300 * MG, limit + 300 * MG, MG),
            _ => self.draw.stepped(limit * 4 / 10, limit * 85 / 100, MG),
        };
        for unit in 1..=units {
            let none = |draw: &mut Draw, low, high| (format!("< {}", draw.between(low, high)), String::new());
            let cells = [
                none(self.draw, 20, 28),
                number(lead + self.draw.between(-150, 150) * MG, self.draw.between(170, 210) * MG),
                none(self.draw, 28, 38),
                none(self.draw, 40, 50),
                ("-".to_owned(), String::new()),
            ];
            self.row(unit, BRASS, "metal", cells);
            let (copper, zinc) = (self.draw.between(5750, 5850), self.draw.between(3800, 3880));
            if let Some(row) = self.rows.last_mut() {
                row.copper = [number(copper * MG / 100, MG / 10), number(zinc * MG / 100, MG / 10)];
            }
        }
        let year = if kind == LotKind::ClaimExpired { 1 } else { -1 };
        let [y, m, d]: [i64; 3] = expires
            .to_string()
            .split('-')
            .map(|piece| piece.parse().ok())
            .collect::<Option<Vec<i64>>>()?
            .try_into()
            .ok()?;
        let placed = format!("{:04}-{m:02}-{d:02}", y + year);
        let mut top = "category = \"9\"\nmouthing = \"cannot\"\n".to_owned();
        self.tell("category", &[("category", "9")]);
        if kind == LotKind::ClaimUndated {
            self.tell("placed_none", &[]);
        } else {
            top = format!("{top}placing_date = {placed}\n");
            self.tell("placed", &[("day", &placed)]);
        }
        self.settings.insert_str(0, &top);
        self.say(&format!("\n[[part]]\npart = \"{part}\"\nmaterials = [\"{BRASS}\"]"));
        self.tell("materials", &[("list", BRASS)]);
        let percent = mg(limit / 10_000);
        if kind == LotKind::NoClaim {
            self.tell("claim_none", &[]);
        } else {
            let second = if kind == LotKind::ClaimOneInitial { "" } else { "second = \"TS\"\n" };
            self.say(&format!(
                "\n[[claim]]\npart = \"{part}\"\nmaterial = \"{BRASS}\"\nentry = \"{ENTRY}\"\nsubstance = \"Pb\"\n\
                 evidence = \"the supplier's letter (invented)\"\nby = \"MK\"\n{second}"
            ));
            let code = if second.is_empty() { "claim_one" } else { "claim" };
            self.tell(code, &[("entry", ENTRY), ("percent", &percent), ("day", &expires.to_string())]);
        }
        if kind == LotKind::ClaimExpired {
            // In this invented story nobody asked for a renewal in time.
            self.say(&format!(
                "\n[[renewal]]\nentry = \"{ENTRY}\"\nstate = \"not_filed\"\nsource = \"invented\"\ndate = 2026-11-18"
            ));
            self.tell("renewal_none", &[("entry", ENTRY)]);
        }
        Some(part)
    }

    fn row(&mut self, unit: i64, material: &str, class: &'static str, cells: [Cell; 5]) {
        self.rows.push(Row {
            sample: format!("T-{:03}", self.rows.len() + 1),
            unit: format!("unit {unit}"),
            spot: "face".to_owned(),
            material: material.to_owned(),
            class,
            part: true,
            cells,
            copper: Default::default(),
        });
    }

    fn lot(&mut self, works: &str, lot: &str, units: i64) {
        let size = self.draw.between(4, 60) * 10;
        let mut text = format!("\n[[lot]]\nsupplier = \"{works} Works\"\nlot = \"{lot}\"\n");
        if self.kind == LotKind::LotSizeMissing {
            self.tell("size_none", &[]);
        } else {
            text = format!("{text}lot_size = {size}\n");
            self.tell("size", &[("n", &size.to_string())]);
        }
        self.say(&format!("{text}units_to_take = {units}"));
        self.tell("take", &[("n", &units.to_string())]);
    }

    /// Check readings before and after: within their uncertainty, or off by a quarter.
    fn checks(&mut self) {
        for (substance, (value, u)) in Substance::ALL.iter().zip(CERTIFICATE) {
            self.say(&format!(
                "\n[[certificate]]\nsample = \"{CHECK}\"\nelement = \"{}\"\nvalue = \"{value} mg/kg\"\nu = \"{u} mg/kg\"\nk = \"2\"\n\
                 id = \"FC-0007, invented\"\nexpires = \"2028-01-31\"\nclass = \"polymer\"",
                substance.symbol()
            ));
        }
        self.settings.insert_str(0, &format!("check_samples = [\"{CHECK}\"]\n"));
        let [(cadmium, _), (others, _), ..] = CERTIFICATE;
        let values = [cadmium, others].map(|value| value.to_string());
        self.tell("certificate", &[("sample", CHECK), ("cadmium", &values[0]), ("others", &values[1])]);
        let off = matches!(self.kind, LotKind::CheckFailed | LotKind::CheckFailedAndOver);
        let before = self.check(false);
        self.rows.insert(0, before);
        if self.kind != LotKind::CheckNotAfter {
            let after = self.check(off);
            self.rows.push(after);
        }
    }

    fn check(&mut self, off: bool) -> Row {
        let cells = CERTIFICATE.map(|(value, _)| {
            // One sigma of one to three hundredths of the value, and within one sigma of it.
            let sigma = if value < 500 { 3 * MG } else { value * MG / 100 };
            let place = self.draw.stepped(-sigma, sigma, MG / 10);
            let true_value = if off { value * MG * 3 / 4 } else { value * MG };
            number(true_value + place, sigma)
        });
        Row {
            sample: CHECK.to_owned(),
            unit: "check disc".to_owned(),
            spot: "centre".to_owned(),
            material: "PE disc".to_owned(),
            class: "polymer",
            part: false,
            cells,
            copper: Default::default(),
        }
    }

    fn finish(self, name: &str, part: &str, lot: &str, works: &str) -> Lot {
        let brass = self.kind.is_about_brass();
        let seconds = if self.kind == LotKind::TooShort { "5" } else { "120" };
        let mut headings: Vec<String> = [
            "Sample",
            "Unit",
            "Spot",
            "Part",
            "Material",
            "Class",
            "Lot",
            "Supplier",
            "Date",
            "Seconds",
            "Instrument",
        ]
        .map(str::to_owned)
        .to_vec();
        for substance in Substance::ALL {
            headings.push(format!("{} mg/kg", substance.symbol()));
            headings.push(format!("{} u (1s)", substance.symbol()));
        }
        if brass {
            headings.extend(["Cu %", "Cu u (1s)", "Zn %", "Zn u (1s)"].map(str::to_owned));
        }
        let mut table = Table { headings, rows: Vec::new() };
        let mut shown = Vec::new();
        for (at, row) in self.rows.iter().enumerate() {
            let minutes = 8 * 60 + 5 * at;
            let time = format!("2026-11-25 {:02}:{:02}", minutes / 60, minutes % 60);
            let of_part = |text: &str| if row.part { text.to_owned() } else { String::new() };
            let mut cells = vec![
                row.sample.clone(),
                row.unit.clone(),
                row.spot.clone(),
                of_part(part),
                row.material.clone(),
                row.class.to_owned(),
                of_part(lot),
                of_part(&format!("{works} Works")),
                time,
                seconds.to_owned(),
                "XRF-A".to_owned(),
            ];
            for (value, sigma) in row.cells.iter().chain(row.copper.iter().filter(|_| brass)) {
                cells.extend([value.clone(), sigma.clone()]);
            }
            table.rows.push(cells);
            let mut seen = vec![row.sample.clone(), row.unit.clone(), row.material.clone()];
            seen.extend(row.cells.iter().map(|(value, sigma)| {
                if sigma.is_empty() { value.clone() } else { format!("{value} ± {sigma}") }
            }));
            shown.push(seen);
        }
        let mut headings: Vec<String> = ["sample", "unit", "material"].map(str::to_owned).to_vec();
        headings.extend(Substance::ALL.map(|substance| substance.symbol().to_owned()));
        let delivery = Delivery::new(name, &table, &self.settings);
        Lot { delivery, facts: self.facts, headings, rows: shown }
    }
}
