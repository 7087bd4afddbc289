//! Check readings over time: a control chart for each stream, and the history they rest on.

use maud::{Markup, PreEscaped, html};

use super::Report;
use crate::report::charts;
use crate::streams::{self, Stream};

/// Most charts that are printed: those with signals first.
const CHARTS: usize = 40;
/// Most signals of a chart that are listed.
const SIGNALS: usize = 20;

impl Report<'_> {
    pub(super) fn charts(&self) -> Markup {
        let all = streams::streams(self.inspection, self.findings);
        let (mut streams, others): (Vec<Stream>, Vec<Stream>) = all.into_iter().partition(Stream::is_of_now);
        let history = &self.inspection.history;
        if streams.is_empty() && history.is_empty() {
            return html! {};
        }
        let total = streams.len();
        // A chart that says something is not the one to be left out.
        streams.sort_by_key(|stream| !(stream.signals_now() || drifts(stream)));
        html! {
            section {
                h2 { (self.say("report-charts")) }
                p class="sub" { (self.say("report-charts_text")) }
                p {
                    @if history.is_empty() {
                        (self.say("report-history_none"))
                    } @else {
                        (self.with("report-history", &[
                            ("checks", &history.checks.len().to_string()),
                            ("records", &history.lots.len().to_string()),
                        ])) (self.words.gap()) span class="mono" { (history.sha256()) }
                    }
                }
                @if !others.is_empty() {
                    p { (self.with("report-charts_others", &[("count", &others.len().to_string())])) }
                }
                (self.capped("report-charts_capped", CHARTS, total))
                @for stream in streams.iter().take(CHARTS) { (self.chart(stream)) }
            }
        }
    }

    fn chart(&self, stream: &Stream) -> Markup {
        let runs = charts::runs(stream);
        let left_out = charts::not_drawn(stream);
        html! {
            div class="whole" {
                h3 { (charts::name(self.words, stream)) }
                figure { (PreEscaped(charts::draw(self.words, &self.settings, stream))) }
                @if left_out > 0 {
                    p class="sub" { (self.with("chart-not_drawn", &[("count", &left_out.to_string())])) }
                }
                @for text in charts::told(self.words, &self.settings, stream) { p { (text) } }
                @if !runs.is_empty() {
                    ol {
                        @for run in runs.iter().take(SIGNALS) { li { (charts::run_told(self.words, stream, run)) } }
                    }
                    (self.capped("report-signals_capped", SIGNALS, runs.len()))
                }
            }
        }
    }
}

fn drifts(stream: &Stream) -> bool {
    stream.chart.drift.is_some_and(|drift| drift.drifts)
}
