//! The files, what became of their rows and columns, and what people did.

use maud::{Markup, html};

use super::Report;
use crate::acts::Target;
use crate::reading::{ColumnRole, Source};
use crate::report::{json, phrases};

/// Most refused rows of a source that are printed.
const REFUSED_ROWS: usize = 100;

impl Report<'_> {
    pub(super) fn sources(&self) -> Markup {
        let total = json::totals(self.inspection, self.findings);
        let row = |name: &str, counts: &crate::inspection::RowCounts| {
            html! {
                td class="long" { (name) }
                td {
                    (counts.rows_in) " = " (counts.used) " + " (counts.check) " + " (counts.duplicate) " + "
                    (counts.set_aside) " + " (counts.refused)
                }
                td class="n" { (counts.readings) }
            }
        };
        html! {
            section data-element="2019/1020-sources" {
                h2 { (self.say("report-sources")) }
                table {
                    thead { tr {
                        th { (self.say("report-file")) } th { (self.say("report-rows")) }
                        th class="n" { (self.say("report-readings")) } th { (self.say("report-digest")) }
                    } }
                    tbody {
                        @for (at, source) in self.inspection.sources.iter().enumerate() {
                            tr {
                                (row(&source.name, &self.findings.counts(self.inspection, at)))
                                td class="mono" {
                                    (source.sha256)
                                    @if let Some(packed) = &source.container {
                                        " "
                                        (self.words.with("report-packed_in", &[("name", &packed.name)]))
                                        " " (packed.sha256)
                                    }
                                }
                            }
                        }
                        tr { (row(&self.say("report-total_rows"), &total)) td {} }
                    }
                }
                h3 { (self.say("report-refused")) }
                @if self.inspection.sources.iter().all(|source| source.refusals.kept.is_empty()) {
                    p { (self.say("report-refused_none")) }
                } @else {
                    table {
                        thead { tr {
                            th { (self.say("report-file")) } th class="n" { (self.say("report-line")) }
                            th { (self.say("report-column")) } th { (self.say("report-why")) }
                            th { (self.say("report-remedy")) }
                        } }
                        tbody { @for source in &self.inspection.sources { (self.refused(source)) } }
                    }
                }
                h3 { (self.say("report-columns_used")) }
                @for source in &self.inspection.sources {
                    @if let Some(how) = self.how_it_was_read(source) {
                        p { b { (source.name) } (self.words.colon()) (how) }
                    }
                    @for block in &source.blocks {
                        p {
                            b { (source.name) } (self.words.comma()) (phrases::line_name(self.words, block.header_line)) (self.words.colon())
                            (self.columns_used(source, block))
                        }
                    }
                }
                h3 { (self.say("report-notices")) }
                @if self.inspection.sources.iter().all(|source| source.notices.kept.is_empty()) {
                    p { (self.say("report-notices_none")) }
                } @else {
                    table {
                        thead { tr {
                            th { (self.say("report-file")) } th class="n" { (self.say("report-line")) }
                            th { (self.say("report-column")) } th { (self.say("report-why")) }
                        } }
                        tbody {
                            @for source in &self.inspection.sources {
                                @for notice in source.notices.kept.iter().take(REFUSED_ROWS) {
                                    tr {
                                        td { (source.name) }
                                        td class="n" { @if notice.line > 0 { (notice.line) } }
                                        td { @if notice.column > 0 { (notice.column) " " (notice.heading) } }
                                        td { (phrases::notice(self.words, notice, Some(source))) }
                                    }
                                }
                            }
                        }
                    }
                }
            }
        }
    }

    /// What stands between a source's bytes and its table, where that is more than a text in UTF-8.
    fn how_it_was_read(&self, source: &Source) -> Option<String> {
        let mut parts = Vec::new();
        if let Some(sheet) = source.sheets.iter().find(|sheet| sheet.read) {
            let others = (source.sheets.len() - 1).to_string();
            parts.push(self.words.with("report-sheet_read", &[("name", &sheet.name), ("others", &others)]));
        }
        if !matches!(source.encoding, "" | "UTF-8") {
            let known = self.say(&format!("encoding-by-{}", source.encoding_known_by.code()));
            parts.push(format!("{}{}{known}", source.encoding, self.words.colon()));
        }
        parts.extend(source.stated.iter().filter(|stated| stated.used_as.is_some()).map(|stated| {
            self.words.with(
                "report-stated_above",
                &[("line", &stated.line.to_string()), ("text", &format!("{}: {}", stated.key, stated.value))],
            )
        }));
        (!parts.is_empty()).then(|| self.words.series(&parts))
    }

    /// What the columns of a block were taken for, in one line.
    fn columns_used(&self, source: &Source, block: &crate::reading::Block) -> String {
        let used = block.columns.iter().filter(|column| column.role != ColumnRole::Unused);
        let texts: Vec<String> = used
            .map(|column| {
                let role = self.say(&format!("role-{}", column.role.code()));
                let of = column.role.of().map_or_else(String::new, |(element, oxide)| match oxide {
                    Some(oxide) => format!(" {element} ({oxide})"),
                    None => format!(" {element}"),
                });
                let detail = match &column.role {
                    ColumnRole::Value { unit, .. } | ColumnRole::AnyValue { unit } => {
                        format!(" {}", unit.or(block.set_unit).map_or("?", crate::quantity::Unit::sign))
                    }
                    ColumnRole::Error { error, .. } | ColumnRole::AnyError { error } => {
                        let set = || self.settings.sigma_multiple(&source.name, &block.fingerprint);
                        let stated = error.multiple.or(block.stated_above);
                        let by = if stated.is_none() && set().is_some() {
                            self.words.bracketed(&self.say("class-from-setting"))
                        } else {
                            String::new()
                        };
                        let multiple =
                            stated.or_else(set).map_or_else(|| "?".to_owned(), |one| self.words.number(&one));
                        format!(" {multiple}s{}{by}", if error.relative { " %" } else { "" })
                    }
                    _ => String::new(),
                };
                format!("{} = {role}{of}{detail}", column.heading)
            })
            .collect();
        self.words.series(&texts)
    }

    fn refused(&self, source: &Source) -> Markup {
        let list = &source.refusals;
        let left = list.left_out + list.kept.len().saturating_sub(REFUSED_ROWS) as u64;
        html! {
            @for notice in list.kept.iter().take(REFUSED_ROWS) {
                tr {
                    td { (source.name) }
                    td class="n" { @if notice.line > 0 { (notice.line) } }
                    td { @if notice.column > 0 { (notice.column) " " (notice.heading) } }
                    td { (phrases::notice(self.words, notice, Some(source))) }
                    td { (phrases::notice_remedy(self.words, notice.code)) }
                }
            }
            @if left > 0 {
                tr { td { (source.name) } td colspan="4" {
                    (self.words.with("report-refused_capped", &[("left", &left.to_string())]))
                } }
            }
        }
    }

    pub(super) fn acts(&self) -> Markup {
        let undone = crate::acts::undone(&self.inspection.acts);
        html! {
            section data-element="2019/1020-acts" {
                h2 { (self.say("report-acts")) }
                @if self.inspection.acts.is_empty() {
                    p { (self.say("report-acts_none")) }
                } @else {
                    table {
                        thead { tr {
                            th class="n" { "#" } th { (self.say("report-act")) } th { (self.say("report-target")) }
                            th { (self.say("report-by")) } th { (self.say("report-at")) } th { (self.say("report-note")) }
                        } }
                        tbody {
                            @for (at, (act, undone)) in self.inspection.acts.iter().zip(undone).enumerate() {
                                tr {
                                    td class="n" { (at + 1) }
                                    td class="long" {
                                        @if undone { s { (phrases::act_of(self.inspection, self.words, act)) } }
                                        @else { (phrases::act_of(self.inspection, self.words, act)) }
                                    }
                                    td class="long" { @if act.target != Target::Inspection { (phrases::target(self.words, &act.target)) } }
                                    td class="long" { @if act.by.is_empty() { (self.say("report-unsigned")) } @else { (act.by) } } td { (self.words.moment(&act.at)) } td class="long" { (act.note) }
                                }
                            }
                        }
                    }
                }
            }
        }
    }
}
