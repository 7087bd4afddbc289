//! The sheets: lots, materials, readings, checks, and what the workbook is.

use std::io::{self, Write};

use plumbline_core::acts::ActKind;
use plumbline_core::certificate::Certificate;
use plumbline_core::day::Day;
use plumbline_core::inspection::{Findings, Inspection};
use plumbline_core::lot::{Disposition, LotReason};
use plumbline_core::quantity::{MassFraction, Sigma};
use plumbline_core::reading::CellState;
use plumbline_core::report::evidence::Pinned;
use plumbline_core::report::{PROGRAM, csv, phrases};
use plumbline_core::substance::{Halogen, Substance};
use plumbline_core::words::Words;

use crate::package::Package;
use crate::sheet::{Sheet, Style, Texts};

/// Most readings of a workbook; the rest stand in the CSV, and the workbook says so.
pub const READINGS: usize = 100_000;

/// Width of a column of codes or amounts, of one of names, and of one of sentences, in characters.
const NARROW: u32 = 14;
const NAMES: u32 = 22;
const SENTENCES: u32 = 80;

/// The column heads of each sheet that has them: lots, materials, readings, checks.
pub fn columns() -> [Vec<String>; 4] {
    let named = |names: &[&str]| names.iter().map(|name| (*name).to_owned()).collect::<Vec<_>>();
    let mut materials = named(&["part", "material", "lot", "supplier", "class", "disposition"]);
    materials.extend(Substance::ALL.iter().map(|substance| format!("{}_outcome", substance.symbol())));
    materials.extend(Halogen::ALL.iter().map(|halogen| format!("halogen_{}_outcome", halogen.name())));
    materials.extend(named(&["readings", "set_aside", "reason_codes", "reasons"]));
    [
        named(&[
            "lot",
            "supplier",
            "source",
            "disposition",
            "readings",
            "materials",
            "hold_ends_who",
            "hold_ends_until",
            "hold_ends_quarantined",
            "hold_ends_place",
            "reason_codes",
            "reasons",
        ]),
        materials,
        csv::columns(),
        named(&[
            "source",
            "line",
            "sample",
            "kind",
            "element",
            "class",
            "state",
            "value_mg_kg",
            "sigma_mg_kg",
            "certificate",
            "certified_mg_kg",
            "certified_sigma_mg_kg",
            "bias_mg_kg",
            "zeta",
            "en",
            "recovery_percent",
            "verdict",
        ]),
    ]
}

fn widths(columns: Vec<String>) -> Vec<(String, u32)> {
    let width = |name: &str| match name {
        "reasons" => SENTENCES,
        "source" | "id" | "part" | "material" | "lot" | "supplier" | "time" | "sample" | "reason_codes" => {
            NAMES
        }
        _ => NARROW.max(name.len() as u32 + 3),
    };
    columns.into_iter().map(|name| (name.clone(), width(&name))).collect()
}

/// Writes the workbook, with at most [`READINGS`] readings.
///
/// # Units
/// Mass fractions in mg/kg, uncertainties one sigma; a missing number is an empty cell.
///
/// # Errors
/// Those of the sink.
pub fn write(
    inspection: &Inspection,
    findings: &Findings,
    words: &Words,
    pinned: &Pinned,
    sink: &mut dyn Write,
) -> io::Result<()> {
    write_up_to(READINGS, inspection, findings, words, pinned, sink)
}

/// The same with another cap.
///
/// # Errors
/// Those of the sink.
pub fn write_up_to(
    cap: usize,
    inspection: &Inspection,
    findings: &Findings,
    words: &Words,
    pinned: &Pinned,
    sink: &mut dyn Write,
) -> io::Result<()> {
    let book = Book { inspection, findings, words, pinned, cap };
    let [lots, materials, readings, checks] = columns();
    let (mut package, mut texts) = (Package::new(sink), Texts::default());
    package.part("xl/worksheets/sheet1.xml", |out| {
        book.lots(Sheet::begin(out, &mut texts, &widths(lots), true)?)
    })?;
    package.part("xl/worksheets/sheet2.xml", |out| {
        book.materials(Sheet::begin(out, &mut texts, &widths(materials), false)?)
    })?;
    package.part("xl/worksheets/sheet3.xml", |out| {
        let sheet = Sheet::begin(out, &mut texts, &widths(readings), false)?;
        let mut cells = Readings { sheet, begun: false, cap };
        csv::rows(inspection, findings, &mut cells)?;
        cells.sheet.finish(true)
    })?;
    package.part("xl/worksheets/sheet4.xml", |out| {
        book.checks(Sheet::begin(out, &mut texts, &widths(checks), false)?)
    })?;
    // Last, because it says what was left out of the others.
    let cut = texts.cut;
    package.part("xl/worksheets/sheet5.xml", |out| {
        let columns = [(String::new(), NAMES), (String::new(), SENTENCES)];
        book.about(Sheet::begin(out, &mut texts, &columns, false)?, cut)
    })?;
    package.part("xl/sharedStrings.xml", |out| texts.write(out))?;
    let sheets = ["lots", "materials", "readings", "checks", "about"];
    package.finish(&sheets.map(|name| words.say(&format!("workbook-{name}"))))
}

/// The table of readings, as far as it goes.
struct Readings<'a> {
    sheet: Sheet<'a>,
    begun: bool,
    cap: usize,
}

impl<'a> Readings<'a> {
    fn next(&mut self) -> io::Result<&mut Sheet<'a>> {
        if !self.begun {
            self.begun = true;
            self.sheet.begin_row()?;
        }
        Ok(&mut self.sheet)
    }
}

impl csv::Cells for Readings<'_> {
    fn text(&mut self, text: &str) -> io::Result<()> {
        self.next()?.text(text)
    }
    fn code(&mut self, code: &'static str) -> io::Result<()> {
        self.next()?.styled(code, Style::Text)
    }
    fn moment(&mut self, text: &str) -> io::Result<()> {
        self.next()?.moment(text)
    }
    fn count(&mut self, count: u64) -> io::Result<()> {
        self.next()?.count(count)
    }
    fn amount(&mut self, amount: Option<MassFraction>) -> io::Result<()> {
        self.next()?.amount(amount)
    }
    fn end_row(&mut self) -> io::Result<bool> {
        self.next()?.end_row()?;
        self.begun = false;
        // The head is a row too.
        Ok((self.sheet.rows() as usize) <= self.cap)
    }
}

struct Book<'a> {
    inspection: &'a Inspection,
    findings: &'a Findings,
    words: &'a Words,
    pinned: &'a Pinned,
    cap: usize,
}

impl Book<'_> {
    /// The codes of the reasons that hold, and every reason in words, a line each.
    fn reasons(&self, sheet: &mut Sheet<'_>, reasons: &[LotReason]) -> io::Result<()> {
        let holding = reasons.iter().filter(|reason| reason.effect != Disposition::Accept);
        let codes: Vec<&str> = holding.map(|reason| reason.code.code()).collect();
        sheet.styled(&codes.join(" "), Style::Text)?;
        let said: Vec<String> =
            reasons.iter().map(|reason| phrases::lot_reason(self.words, reason)).collect();
        // A reason may begin with a name.
        sheet.styled(&csv::guarded(&said.join("\n")), Style::Wrapped)
    }

    fn lots(&self, mut sheet: Sheet<'_>) -> io::Result<()> {
        for lot in &self.findings.lots {
            sheet.begin_row()?;
            sheet.text(lot.lot.as_deref().unwrap_or(""))?;
            sheet.text(lot.supplier.as_deref().unwrap_or(""))?;
            let source = lot.source.and_then(|at| self.inspection.sources.get(at));
            sheet.text(source.map_or("", |source| source.name.as_str()))?;
            sheet.styled(lot.disposition.code(), Style::Text)?;
            sheet.count(lot.readings)?;
            sheet.count(lot.materials)?;
            let ends = lot.hold_ends.clone().unwrap_or_default();
            sheet.text(&ends.who)?;
            sheet.moment(&ends.until.as_ref().map(Day::to_string).unwrap_or_default())?;
            match ends.quarantined {
                Some(units) => sheet.count(units)?,
                None => sheet.blank(),
            }
            sheet.text(&ends.place)?;
            self.reasons(&mut sheet, &lot.reasons)?;
            sheet.end_row()?;
        }
        sheet.finish(true)
    }

    fn materials(&self, mut sheet: Sheet<'_>) -> io::Result<()> {
        for material in &self.findings.materials {
            let lot = self.findings.lots.get(material.lot);
            sheet.begin_row()?;
            sheet.text(material.part.as_deref().unwrap_or(""))?;
            sheet.text(material.name.as_deref().unwrap_or(""))?;
            sheet.text(lot.and_then(|lot| lot.lot.as_deref()).unwrap_or(""))?;
            sheet.text(lot.and_then(|lot| lot.supplier.as_deref()).unwrap_or(""))?;
            sheet.styled(material.class.code(), Style::Text)?;
            sheet.styled(material.disposition.code(), Style::Text)?;
            for substance in Substance::ALL {
                sheet.styled(material.tally.worst(substance).code(), Style::Text)?;
            }
            for halogen in Halogen::ALL {
                sheet.styled(material.tally.worst_halogen(halogen).code(), Style::Text)?;
            }
            sheet.count(material.readings.len() as u64)?;
            sheet.count(material.set_aside.len() as u64)?;
            self.reasons(&mut sheet, &material.reasons)?;
            sheet.end_row()?;
        }
        sheet.finish(true)
    }

    fn checks(&self, mut sheet: Sheet<'_>) -> io::Result<()> {
        let trust = &self.findings.trust;
        let mass = |sigma: Option<Sigma>| sigma.map(Sigma::to_mass_fraction);
        for check in &trust.checks {
            let place = self.findings.place(check.reading as usize);
            let source = place.and_then(|(at, row)| Some((self.inspection.sources.get(at)?, row)));
            for one in &check.elements {
                let certified = one.certificate.and_then(|at| trust.certificates.get(at));
                sheet.begin_row()?;
                if let Some((source, row)) = source {
                    sheet.text(&source.name)?;
                    sheet.count(u64::from(source.readings.line(row)))?;
                } else {
                    sheet.blank();
                    sheet.blank();
                }
                sheet.text(&check.sample)?;
                sheet.styled(check.kind.code(), Style::Text)?;
                sheet.styled(one.element.symbol(), Style::Text)?;
                sheet.styled(one.class.code(), Style::Text)?;
                sheet.styled(one.cell.state.code(), Style::Text)?;
                sheet.amount((one.cell.state == CellState::Number).then_some(one.cell.value))?;
                sheet.amount(mass(one.sigma))?;
                sheet.text(certified.map_or("", |one| one.id.as_str()))?;
                sheet.amount(certified.map(|one| one.value))?;
                sheet.amount(mass(certified.and_then(Certificate::sigma)))?;
                sheet.amount(one.scores.map(|scores| scores.bias))?;
                sheet.number(one.scores.map(|scores| scores.zeta))?;
                sheet.number(one.scores.map(|scores| scores.en))?;
                sheet.number(one.scores.and_then(|scores| scores.recovery_percent))?;
                sheet.styled(one.verdict.code(), Style::Text)?;
                sheet.end_row()?;
            }
        }
        sheet.finish(true)
    }

    fn about(&self, mut sheet: Sheet<'_>, cut: u64) -> io::Result<()> {
        let Pinned { number, digest, .. } = self.pinned;
        let settings = self.inspection.settings();
        let say = |id: &str| self.words.say(id);
        let mut line = |label: &str, text: &str| {
            sheet.begin_row()?;
            sheet.styled(label, Style::Head)?;
            sheet.styled(&csv::guarded(text), Style::Wrapped)?;
            sheet.end_row()
        };
        if settings.is_invented() {
            line("", &say("paper-invented"))?;
        }
        line(&say("report-number"), number)?;
        line(&say("report-findings_digest"), digest)?;
        line(&say("workbook-program"), &format!("{} {}", PROGRAM.name, PROGRAM.version))?;
        for (id, kind) in [
            ("report-reviewed", ActKind::ReviewedAt),
            ("report-inspector", ActKind::Inspector),
            ("report-place", ActKind::Place),
        ] {
            line(&say(id), settings.inspection(kind).unwrap_or(""))?;
        }
        for book in self.inspection.books.used(&settings.books) {
            line(&say("workbook-rule_book"), &format!("{} ({}) {}", book.id, book.edition, book.sha256))?;
        }
        for source in &self.inspection.sources {
            line(&say("report-source"), &format!("{} {}", source.name, source.sha256))?;
        }
        line("", &say("workbook-columns"))?;
        let total = self.findings.verdicts.len();
        let told = if total > self.cap {
            let (shown, total) = (self.cap.to_string(), total.to_string());
            self.words.with("workbook-readings_capped", &[("shown", &shown), ("total", &total)])
        } else {
            self.words.with("workbook-readings_all", &[("count", &total.to_string())])
        };
        line("", &told)?;
        if cut > 0 {
            line("", &self.words.with("workbook-cut", &[("count", &cut.to_string())]))?;
        }
        for caution in phrases::cautions(self.words) {
            line("", &caution)?;
        }
        sheet.finish(false)
    }
}
