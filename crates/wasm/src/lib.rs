//! The thin door to the browser: bytes in, copied arrays and small objects out. It decides nothing.
//!
//! Exported methods take `&self` and keep their state in one cell, so that a panic leaves no borrow behind that would
//! hide the real fault; after a panic the page starts a new instance and never calls this one again.

mod ahead;
mod checks;
mod detail;
mod mapping;
mod near;
mod offers;
mod order;
mod papers_view;
mod photos;
mod proving;
mod shelf;
mod sink;
mod training;
mod views;
mod worst;

use std::cell::RefCell;

use plumbline_core::acts::{self, Act, ActKind, Target};
use plumbline_core::duplicates;
use plumbline_core::history::{self, History};
use plumbline_core::inspection::{self, Findings, Inspection};
use plumbline_core::papers;
use plumbline_core::photo::{MediaType, Photo, PhotoState, Size};
use plumbline_core::report::evidence::Pinned;
use plumbline_core::report::{self, Length, PROGRAM, copied, csv, html, json};
use plumbline_core::rules::{self, ProblemCode, RuleBook};
use plumbline_core::sampling;
use plumbline_core::settings_file;
use plumbline_core::words::{ENGLISH_TAG, Words};
use plumbline_intake::{SourceReader, bill, unreadable};
use proving::Proving;
use serde::Serialize;
use wasm_bindgen::prelude::*;

/// One inspection, as the page's worker holds it.
#[wasm_bindgen]
pub struct Session {
    state: RefCell<State>,
}

struct State {
    inspection: Inspection,
    reader: Option<(SourceReader, bool)>,
    findings: Findings,
    /// What is said now.
    words: Words,
    /// The texts of every language that was taught, by tag. English is built in.
    taught: Vec<(String, String)>,
    /// The lot of every reading, found once a review.
    lots: Vec<u32>,
    /// A report that is being held against what it carries; no part of the inspection.
    proving: Option<Proving>,
    /// The trainer's own inspection, of invented readings alone; made when it is first asked of.
    training: Option<Inspection>,
}

#[wasm_bindgen]
impl Session {
    /// An inspection with the built-in rule books and no sources.
    ///
    /// # Errors
    /// A built-in rule book that can't be read; a test keeps this from happening.
    #[wasm_bindgen(constructor)]
    pub fn new() -> Result<Session, JsError> {
        std::panic::set_hook(Box::new(|info| {
            web_sys::console::error_1(&JsValue::from_str(&info.to_string()));
        }));
        let inspection = Inspection::new().map_err(|problems| JsError::new(&format!("{problems:?}")))?;
        Ok(Session {
            state: RefCell::new(State {
                inspection,
                reader: None,
                findings: Findings::default(),
                words: Words::english(),
                taught: Vec::new(),
                lots: Vec::new(),
                proving: None,
                training: None,
            }),
        })
    }

    /// The program's version.
    pub fn version(&self) -> String {
        PROGRAM.version.to_owned()
    }

    /// Takes the texts of a language (Project Fluent), which the page keeps packed until a person wants them.
    pub fn teach(&self, tag: &str, texts: &str) {
        let mut state = self.state.borrow_mut();
        state.taught.retain(|(known, _)| known != tag);
        state.taught.push((tag.to_owned(), texts.to_owned()));
    }

    /// Says everything in this language from now on; nothing that was read or decided changes.
    ///
    /// # Errors
    /// A language that was not taught.
    pub fn speak(&self, tag: &str) -> Result<(), JsError> {
        let mut state = self.state.borrow_mut();
        state.words = state.language(tag)?;
        Ok(())
    }

    /// Begins a source; one that was begun and not finished is dropped. `in_folder`: found by walking a folder, so a
    /// file that is no table is only skipped.
    pub fn open(&self, name: &str, in_folder: Option<bool>) {
        let mut state = self.state.borrow_mut();
        let room = state.inspection.opened.room();
        let reader = SourceReader::new(name, &state.inspection.settings()).keeping(room);
        state.reader = Some((reader, in_folder.unwrap_or(false)));
    }

    /// Takes the next bytes of the source begun last.
    ///
    /// # Errors
    /// No source was begun.
    pub fn push(&self, bytes: &[u8]) -> Result<(), JsError> {
        let mut state = self.state.borrow_mut();
        let (reader, _) = state.reader.as_mut().ok_or_else(no_source)?;
        reader.push(bytes);
        Ok(())
    }

    /// Ends the source begun last and gives the view of each table found in it.
    ///
    /// # Errors
    /// No source was begun.
    pub fn finish(&self) -> Result<JsValue, JsError> {
        let mut state = self.state.borrow_mut();
        let (reader, in_folder) = state.reader.take().ok_or_else(no_source)?;
        let (file, read) = reader.finish_opened(in_folder);
        let names: Vec<_> = read.iter().map(|source| (source.name.clone(), source.sha256.clone())).collect();
        state.inspection.add_file(file, read);
        let sources = &state.inspection.sources;
        let place = |(name, sha256): &(String, String)| {
            sources.iter().position(|one| one.name == *name && one.sha256 == *sha256)
        };
        let views: Vec<_> = names
            .iter()
            .filter_map(place)
            .map(|at| views::source(&state.inspection, None, &state.words, at))
            .collect();
        to_js(&views)
    }

    /// Records a file that the page could not read.
    pub fn unreadable(&self, name: &str, text: &str) {
        let mut state = self.state.borrow_mut();
        state.reader = None;
        let (file, sources) = unreadable(name, false, text);
        state.inspection.add_file(file, sources);
    }

    /// Forgets all sources; acts and rule books stay.
    pub fn clear_sources(&self) {
        let mut state = self.state.borrow_mut();
        state.reader = None;
        state.inspection.clear_files();
        state.findings = Findings::default();
        state.lots.clear();
    }

    /// Takes a settings file: each of its values becomes an act. A file with a problem changes nothing.
    ///
    /// # Errors
    /// Only where the view can't cross; problems of the file are the value returned.
    pub fn settings(&self, name: &str, text: &str) -> Result<JsValue, JsError> {
        let mut state = self.state.borrow_mut();
        let problems = match settings_file::parse_settings(text, name) {
            Ok(acts) => {
                state.inspection.acts.extend(acts);
                Vec::new()
            }
            Err(problems) => views::problems(&state.words, name, &problems, settings_file::SCHEMA),
        };
        to_js(&problems)
    }

    /// Takes a rule book in place of the one of its kind. A file with a problem changes nothing.
    ///
    /// # Errors
    /// Only where the view can't cross; problems of the file are the value returned.
    pub fn rule_book(&self, name: &str, text: &str) -> Result<JsValue, JsError> {
        let mut state = self.state.borrow_mut();
        let problems = match RuleBook::parse(text) {
            Ok(book) => {
                state.inspection.books.add(book);
                Vec::new()
            }
            Err(problems) => views::problems(&state.words, name, &problems, rules::SCHEMA),
        };
        to_js(&problems)
    }

    /// Takes a mapping file: each of its values becomes an act. A file with a problem changes nothing.
    ///
    /// # Errors
    /// Only where the view can't cross; problems of the file are the value returned.
    pub fn mapping(&self, name: &str, text: &str) -> Result<JsValue, JsError> {
        let mut state = self.state.borrow_mut();
        let problems = match settings_file::parse_mapping(text, name) {
            Ok(acts) => {
                state.inspection.acts.extend(acts);
                Vec::new()
            }
            Err(problems) => views::problems(&state.words, name, &problems, settings_file::MAPPING_SCHEMA),
        };
        to_js(&problems)
    }

    /// Takes a history, united with what was given before. A file with a problem changes nothing.
    ///
    /// # Errors
    /// Only where the view can't cross; problems of the file are the value returned.
    pub fn history(&self, name: &str, text: &str) -> Result<JsValue, JsError> {
        let mut state = self.state.borrow_mut();
        let problems = match History::parse(text) {
            Ok(history) => {
                state.inspection.history.merge(history);
                Vec::new()
            }
            Err(problems) => views::problems(&state.words, name, &problems, history::SCHEMA),
        };
        to_js(&problems)
    }

    /// Takes a bill of materials: each part becomes an act, which may stand above an earlier one. A file with a problem
    /// changes nothing.
    ///
    /// # Errors
    /// Only where the view can't cross; problems of the file are the value returned.
    pub fn bill(&self, name: &str, bytes: &[u8]) -> Result<JsValue, JsError> {
        let mut state = self.state.borrow_mut();
        let problems = match bill::read(name, bytes) {
            Ok(found) => {
                state.inspection.acts.extend(found.acts);
                Vec::new()
            }
            Err(problems) => views::problems(&state.words, name, &problems, ""),
        };
        to_js(&problems)
    }

    /// Takes a photograph as the copy that the page made of it: digest, kind and size are those of the file as it was
    /// given. One that can't be shown changes nothing.
    ///
    /// # Errors
    /// Only where the view can't cross; why it can't be shown is the value returned, `null` where it can.
    pub fn photo(
        &self,
        name: &str,
        sha256: &str,
        media_type: &str,
        width: u32,
        height: u32,
        copy: &[u8],
    ) -> Result<JsValue, JsError> {
        let mut state = self.state.borrow_mut();
        let size = Size { width, height };
        let refused = match MediaType::from_code(media_type) {
            None => Some(PhotoState::NoPhoto),
            Some(kind) => photos::take(&mut state.inspection, Photo::of_copy(name, sha256, kind, size, copy)),
        };
        to_js(&refused.map(|why| photos::refusal(&state.words, name, why)))
    }

    /// Forgets a photograph; what acts say of it stays.
    pub fn remove_photo(&self, name: &str, sha256: &str) {
        let mut state = self.state.borrow_mut();
        state.inspection.photos.retain(|one| one.name != name || one.sha256 != sha256);
    }

    /// The photographs given, what each is said to show, and what it may be offered for.
    ///
    /// # Errors
    /// Only where the view can't cross.
    pub fn photos(&self) -> Result<JsValue, JsError> {
        let state = self.state.borrow();
        to_js(&photos::photos(&state.inspection, &state.findings, &state.words))
    }

    /// The acts a mapping file holds; nothing is recorded.
    ///
    /// # Errors
    /// Only where the view can't cross; problems of the file are part of the value returned.
    pub fn mapping_acts(&self, name: &str, text: &str) -> Result<JsValue, JsError> {
        to_js(&mapping::acts_of(&self.state.borrow().words, name, text))
    }

    /// What the acts say of tables by their headings, as a mapping file.
    pub fn mapping_text(&self) -> String {
        let state = self.state.borrow();
        settings_file::mapping_text(&state.inspection.acts, &state.inspection.sources)
    }

    /// What a browser keeps for another day: what it kept `before`, brought up to date. Empty for nothing.
    pub fn kept_mapping(&self, before: &str) -> String {
        mapping::kept(&self.state.borrow().inspection, before)
    }

    /// What a person may say a column, a file or a table is.
    ///
    /// # Errors
    /// Only where the view can't cross.
    pub fn choices(&self) -> Result<JsValue, JsError> {
        to_js(&mapping::choices(&self.state.borrow().words))
    }

    /// The template of a combined id that an example shows, and how it cuts other ids.
    ///
    /// # Errors
    /// Only where the view can't cross.
    #[allow(clippy::needless_pass_by_value, reason = "lists of text cross the door by value")]
    pub fn id_template(
        &self,
        example: &str,
        named: Vec<String>,
        ids: Vec<String>,
    ) -> Result<JsValue, JsError> {
        to_js(&mapping::id_template(&self.state.borrow().words, example, &named, &ids))
    }

    /// The first raw rows of one table of a source, and what stands in each of its columns.
    ///
    /// # Errors
    /// There is no such table.
    pub fn preview(&self, source: usize, block: usize, rows: usize) -> Result<JsValue, JsError> {
        let state = self.state.borrow();
        let found = state.inspection.sources.get(source).and_then(|one| mapping::preview(one, block, rows));
        to_js(&found.ok_or_else(|| JsError::new("no such table"))?)
    }

    /// Records an act, if its kind, target and value can be read.
    ///
    /// # Errors
    /// An act that is not of the expected shape.
    pub fn act(&self, act: JsValue) -> Result<JsValue, JsError> {
        let input: views::ActInput = serde_wasm_bindgen::from_value(act)?;
        let mut state = self.state.borrow_mut();
        let answer = match read_act(&input, &state.inspection.acts) {
            Ok(act) => {
                let undone = (act.kind == ActKind::Undo)
                    .then(|| act.value.parse::<usize>().ok().and_then(|number| number.checked_sub(1)))
                    .flatten()
                    .and_then(|at| state.inspection.acts.get(at))
                    .map(|earlier| earlier.kind);
                // Taking back an undo, or anything behind it, may bring back an act that needs the files again.
                let reread = act.kind.needs_reading_again()
                    || undone.is_some_and(|kind| kind.needs_reading_again() || kind == ActKind::Undo)
                    || (act.kind == ActKind::SigmaMultiple || undone == Some(ActKind::SigmaMultiple))
                        && one_error_is_limit(&state.inspection);
                state.inspection.acts.push(act);
                views::ActAnswer { reread, problem: None }
            }
            Err((code, found)) => views::ActAnswer {
                reread: false,
                problem: Some(views::act_problem(&state.words, code, &found)),
            },
        };
        to_js(&answer)
    }

    /// Reviews everything and gives the summary.
    ///
    /// # Errors
    /// Only where the view can't cross.
    pub fn review(&self) -> Result<JsValue, JsError> {
        let mut state = self.state.borrow_mut();
        duplicates::set_duplicates_aside(&mut state.inspection.sources);
        let findings = inspection::review(&state.inspection);
        state.lots = findings.lots_of_readings();
        state.findings = findings;
        to_js(&views::summary(&state.inspection, &state.findings, &state.words))
    }

    /// The summary of the last review again, in the language spoken now.
    ///
    /// # Errors
    /// Only where the view can't cross.
    pub fn summary(&self) -> Result<JsValue, JsError> {
        let state = self.state.borrow();
        to_js(&views::summary(&state.inspection, &state.findings, &state.words))
    }

    /// What the last review lets a person be offered: rule books, exemptions with what became of claims, rows for the
    /// site's table.
    ///
    /// # Errors
    /// Only where the view can't cross.
    pub fn offers(&self) -> Result<JsValue, JsError> {
        let state = self.state.borrow();
        to_js(&offers::offers(&state.inspection, &state.findings, &state.words))
    }

    /// The readings that answer a query, in its order, as `indices`. Where they stand in groups: where each begins, its worst
    /// outcome by its place in `outcomes`, and what tells it from the others (its lot, where the groups are lots).
    ///
    /// # Errors
    /// A query that is not of the expected shape.
    pub fn order(&self, query: JsValue) -> Result<JsValue, JsError> {
        let query: order::Query = serde_wasm_bindgen::from_value(query)?;
        let state = self.state.borrow();
        let found = order::order(&state.inspection, &state.findings, &state.lots, &query);
        let groups = found.groups.unwrap_or_default();
        let answer = js_sys::Object::new();
        let set = |key: &str, value: &JsValue| {
            // A plain object takes every key.
            let _ = js_sys::Reflect::set(&answer, &JsValue::from_str(key), value);
        };
        // Copies: a view of wasm memory would dangle at the next growth.
        set("indices", &js_sys::Uint32Array::from(found.indices.as_slice()));
        set("starts", &js_sys::Uint32Array::from(groups.starts.as_slice()));
        set("worst", &js_sys::Uint8Array::from(groups.worst.as_slice()));
        set("keys", &js_sys::Uint32Array::from(groups.keys.as_slice()));
        set("outcomes", &to_js(&views::outcomes(&state.words))?);
        Ok(answer.into())
    }

    /// The rows of these readings, for the visible part of a table, with what stands under these other elements.
    ///
    /// # Errors
    /// Only where the view can't cross.
    #[allow(clippy::needless_pass_by_value, reason = "lists of text cross the door by value")]
    pub fn rows(&self, indices: &[u32], others: Vec<String>) -> Result<JsValue, JsError> {
        let state = self.state.borrow();
        to_js(&views::rows(&state.inspection, &state.findings, &state.words, indices, &others))
    }

    /// Writes these readings as text between tabs, with the columns of `findings.csv` that belong to `columns` of the table, and
    /// their heads where `heads` is set.
    ///
    /// # Errors
    /// A sink that throws.
    #[allow(clippy::needless_pass_by_value, reason = "lists of text cross the door by value")]
    pub fn copied(
        &self,
        indices: &[u32],
        columns: Vec<String>,
        heads: bool,
        sink: &js_sys::Function,
    ) -> Result<(), JsError> {
        let state = self.state.borrow();
        let mut out = sink::FunctionSink::new(sink);
        copied::write(&state.inspection, &state.findings, indices, &columns, heads, &mut out)
            .and_then(|()| std::io::Write::flush(&mut out))
            .map_err(|error| JsError::new(&error.to_string()))
    }

    /// Everything about one reading.
    ///
    /// # Errors
    /// There is no such reading.
    pub fn detail(&self, index: u32) -> Result<JsValue, JsError> {
        let state = self.state.borrow();
        let lot = state.lots.get(index as usize).copied().unwrap_or(u32::MAX);
        let detail = detail::detail(&state.inspection, &state.findings, &state.words, index as usize, lot)
            .ok_or_else(|| JsError::new("no such reading"))?;
        to_js(&detail)
    }

    /// What lies ahead of one lot: what measuring longer would settle, what other decision rules say, how the spots of
    /// its materials differ, and which exemptions may cover them.
    ///
    /// # Errors
    /// There is no such lot.
    pub fn ahead(&self, lot: usize) -> Result<JsValue, JsError> {
        let state = self.state.borrow();
        let ahead = ahead::ahead(&state.inspection, &state.findings, &state.words, lot);
        to_js(&ahead.ok_or_else(|| JsError::new("no such lot"))?)
    }

    /// The readings that show the worst of each material of a lot, with their rulers; empty where there is no such lot.
    ///
    /// # Errors
    /// None that a caller could cause.
    pub fn worst(&self, lot: usize) -> Result<JsValue, JsError> {
        let state = self.state.borrow();
        to_js(&worst::worst(&state.inspection, &state.findings, &state.words, lot))
    }

    /// Check readings, control charts, and what is known of the suppliers.
    ///
    /// # Errors
    /// Only where the view can't cross.
    pub fn checks(&self) -> Result<JsValue, JsError> {
        let state = self.state.borrow();
        to_js(&checks::checks(&state.inspection, &state.findings, &state.words))
    }

    /// The rule books there are: those in force first.
    ///
    /// # Errors
    /// Only where the view can't cross.
    pub fn shelf(&self) -> Result<JsValue, JsError> {
        let state = self.state.borrow();
        to_js(&shelf::shelf(&state.inspection, &state.words))
    }

    /// A rule book in plain words, row by row; empty where there is no such book.
    ///
    /// # Errors
    /// Only where the view can't cross.
    pub fn explained(&self, book: &str) -> Result<JsValue, JsError> {
        let state = self.state.borrow();
        to_js(&shelf::explained(&state.inspection, &state.words, book))
    }

    /// Which papers there are for these findings, each under the name that `write` takes.
    ///
    /// # Errors
    /// Only where the view can't cross.
    pub fn papers(&self) -> Result<JsValue, JsError> {
        let state = self.state.borrow();
        to_js(&papers_view::papers(papers::offer(&state.inspection, &state.findings)))
    }

    /// Writes `findings.json`, `findings.csv`, `findings.xlsx`, `history.txt`, a length of the report (`report.html`,
    /// `report-one-page.html`, `report-annex.html`), or a paper that `papers` lists, to `sink`, a function that takes pieces of
    /// bytes; what people read in the language `tag`.
    ///
    /// # Errors
    /// Another kind, a language that was not taught, or a sink that throws.
    pub fn write(&self, kind: &str, tag: &str, sink: &js_sys::Function) -> Result<(), JsError> {
        let state = self.state.borrow();
        let others = if tag == state.words.tag() { None } else { Some(state.language(tag)?) };
        let words = others.as_ref().unwrap_or(&state.words);
        let (inspection, findings) = (&state.inspection, &state.findings);
        let mut out = sink::FunctionSink::new(sink);
        let written = match kind {
            "findings.json" => json::write(inspection, findings, words, &mut out),
            "findings.csv" => csv::write(inspection, findings, &mut out),
            "history.txt" => report::history::write(inspection, findings, &mut out),
            "findings.xlsx" => plumbline_workbook::write(
                inspection,
                findings,
                words,
                &Pinned::of(inspection, findings),
                &mut out,
            ),
            _ => match Length::ALL.iter().find(|length| length.file() == kind) {
                Some(length) => html::write(inspection, findings, words, *length, &mut out),
                None => match write_paper(inspection, findings, words, kind, &mut out) {
                    Some(written) => written,
                    None => return Err(JsError::new("no such file")),
                },
            },
        };
        written
            .and_then(|()| std::io::Write::flush(&mut out))
            .map_err(|error| JsError::new(&error.to_string()))
    }

    /// Begins a report that is to be proved; the inspection is not touched. Its bytes come by [`Session::prove_push`].
    pub fn prove_begin(&self) {
        self.state.borrow_mut().proving = Some(Proving::new());
    }

    /// Begins a source file beside the report: the bytes that come from now on are its.
    ///
    /// # Errors
    /// No report was begun.
    pub fn prove_beside(&self, name: &str) -> Result<(), JsError> {
        let mut state = self.state.borrow_mut();
        state.proving.as_mut().ok_or_else(no_report)?.beside(name);
        Ok(())
    }

    /// Takes the next bytes of the report, or of the file beside it that was begun last.
    ///
    /// # Errors
    /// No report was begun.
    pub fn prove_push(&self, bytes: &[u8]) -> Result<(), JsError> {
        let mut state = self.state.borrow_mut();
        state.proving.as_mut().ok_or_else(no_report)?.push(bytes);
        Ok(())
    }

    /// Holds the report against what it carries, against the files beside it, and against a digest from signed paper. May be
    /// asked again: after more files, with a digest, or when the report's language was taught.
    ///
    /// # Errors
    /// No report was begun.
    #[allow(clippy::needless_pass_by_value, reason = "text that may be missing crosses the door by value")]
    pub fn prove_end(&self, digest: Option<String>) -> Result<JsValue, JsError> {
        let state = self.state.borrow();
        let proving = state.proving.as_ref().ok_or_else(no_report)?;
        to_js(&proving.end(digest.as_deref(), &state.words, &state.taught))
    }

    /// Forgets the report and the files beside it.
    pub fn prove_clear(&self) {
        self.state.borrow_mut().proving = None;
    }

    /// What one invented reading would say. The inspection is not touched.
    ///
    /// # Errors
    /// A question that is not of the expected shape, or names no class or substance.
    pub fn what_if(&self, asked: JsValue) -> Result<JsValue, JsError> {
        let asked: training::WhatIfInput = serde_wasm_bindgen::from_value(asked)?;
        self.train(|inspection, words| training::what_if(inspection, words, &asked))
    }

    /// The first `count` exercises of a lesson, from a seed; `null` where the seed is no whole number that fits 64 bits.
    ///
    /// # Errors
    /// There is no such lesson.
    pub fn exercises(&self, lesson: &str, seed: &str, count: u32) -> Result<JsValue, JsError> {
        self.train(|inspection, words| training::exercises(inspection, words, lesson, seed, count))
    }

    /// Whether an answer to an exercise is right, with the working of the review that says so.
    ///
    /// # Errors
    /// There is no such exercise.
    pub fn solved(&self, lesson: &str, seed: &str, number: u32, answer: &str) -> Result<JsValue, JsError> {
        self.train(|inspection, words| training::solved(inspection, words, lesson, seed, number, answer))
    }

    /// A whole invented delivery from a seed; `null` where the seed is no whole number that fits 64 bits.
    ///
    /// # Errors
    /// Only where the view can't cross.
    pub fn invented_delivery(&self, seed: &str) -> Result<JsValue, JsError> {
        self.train(|inspection, _| Some(training::delivery(inspection, seed)))
    }

    /// How many pieces of a lot may be over a limit, at 95 % confidence, when `taken` of them were measured and none was; `null`
    /// where more were taken than there are.
    ///
    /// # Errors
    /// Only where the view can't cross.
    pub fn clean_sample(&self, lot_size: u32, taken: u32) -> Result<JsValue, JsError> {
        let most = sampling::at_most_nonconforming(
            u64::from(lot_size),
            u64::from(taken),
            0,
            sampling::BOUND_CONFIDENCE,
        );
        to_js(&most.and_then(|most| u32::try_from(most).ok()))
    }

    fn train<T: Serialize>(
        &self,
        ask: impl FnOnce(&mut Inspection, &Words) -> Option<T>,
    ) -> Result<JsValue, JsError> {
        let mut state = self.state.borrow_mut();
        if state.training.is_none() {
            let made = Inspection::new().map_err(|problems| JsError::new(&format!("{problems:?}")))?;
            state.training = Some(made);
        }
        let State { training, words, .. } = &mut *state;
        let answer = training.as_mut().and_then(|inspection| ask(inspection, words));
        to_js(&answer.ok_or_else(|| JsError::new("no such question of the trainer"))?)
    }

    /// What the acts add up to, as a settings file for the command line or another day.
    pub fn settings_text(&self) -> String {
        settings_file::settings_text(&self.state.borrow().inspection.acts)
    }
}

impl State {
    fn language(&self, tag: &str) -> Result<Words, JsError> {
        if tag == ENGLISH_TAG {
            return Ok(Words::english());
        }
        let found = self.taught.iter().find(|(known, _)| known == tag);
        let (tag, texts) = found.ok_or_else(|| JsError::new("no such language"))?;
        Ok(Words::of_texts(tag, [texts.as_str()]))
    }
}

/// Writes a paper by the name of its file; nothing where these findings have no such paper.
fn write_paper(
    inspection: &Inspection,
    findings: &Findings,
    words: &Words,
    file: &str,
    out: &mut sink::FunctionSink<'_>,
) -> Option<std::io::Result<()>> {
    let offer = papers::offer(inspection, findings);
    let notice = offer.notices.iter().find(|notice| notice.file == file);
    let there = match file {
        papers::SELF_CHECK => offer.self_check > 0,
        papers::LABORATORY_REQUEST => offer.samples > 0,
        papers::LABELS => offer.labels > 0,
        _ => notice.is_some(),
    };
    if !there {
        return None;
    }
    let settings = inspection.settings();
    let made = papers::Papers::new(inspection, findings, words, &settings, &Pinned::of(inspection, findings));
    Some(match (file, notice) {
        (papers::SELF_CHECK, _) => made.self_check(out),
        (papers::LABORATORY_REQUEST, _) => made.laboratory_request(out),
        (_, Some(notice)) => made.notice(notice, out),
        _ => made.labels(out),
    })
}

/// Where a printed error of nothing makes the limit, the multiple changes what was read.
fn one_error_is_limit(inspection: &Inspection) -> bool {
    inspection.sources.iter().flat_map(|source| &source.blocks).any(|block| !block.limit_in_error_column)
}

fn read_act(input: &views::ActInput, acts: &[Act]) -> Result<Act, (ProblemCode, String)> {
    let kind = ActKind::from_code(&input.kind).ok_or((ProblemCode::UnknownName, input.kind.clone()))?;
    let target = Target::parse(&input.target).ok_or((ProblemCode::UnknownName, input.target.clone()))?;
    acts::check_value(kind, &input.value).map_err(|code| (code, input.value.clone()))?;
    if kind == ActKind::Undo {
        let number: usize = input.value.parse().unwrap_or(0);
        if number == 0 || number > acts.len() {
            return Err((ProblemCode::OutOfRange, input.value.clone()));
        }
    }
    Ok(Act {
        kind,
        target,
        value: input.value.clone(),
        by: input.by.clone(),
        at: input.at.clone(),
        note: input.note.clone(),
    })
}

fn no_report() -> JsError {
    JsError::new("no report was begun")
}

fn no_source() -> JsError {
    JsError::new("no source was begun")
}

fn to_js<T: Serialize>(view: &T) -> Result<JsValue, JsError> {
    let serializer = serde_wasm_bindgen::Serializer::new()
        .serialize_missing_as_null(true)
        .serialize_maps_as_objects(true)
        .serialize_large_number_types_as_bigints(false);
    Ok(view.serialize(&serializer)?)
}
