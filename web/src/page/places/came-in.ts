// What came in? For each file: do its rows add up, how was it understood, and what did it leave open.

import type { NeedView, NoticeView, SourceView, Summary } from "../../shared/door";
import { choice, controlId } from "../acts-given";
import { ACTS_ABOUT_A_FILE, ANSWERS_TO, sourceTarget } from "../act-kinds";
import { el, redraw, type Child } from "../elements";
import { removeFile } from "../inspection";
import { inFile } from "../outcomes";
import { state } from "../state";
import { byteCount, count, say } from "../words";

const MOST_ROWS = 200;

/** How many things here want a person. */
export function cameInNeeds(summary: Summary): number {
  const questions = new Set(summary.sources.flatMap((source) => source.needs.map((need) => need.code))).size;
  return questions + summary.sources.filter((source) => !source.read || source.rows_refused > 0).length;
}

export function drawCameIn(host: HTMLElement): void {
  const { summary } = state;
  if (summary === null) {
    redraw(host, el("p", { class: "empty" }, say("page-nothing-yet")));
    return;
  }
  redraw(
    host,
    equation(summary.totals, "equation equation-total"),
    el("p", { class: summary.adds_up ? "adds-up" : "adds-up adds-wrong" }, say(summary.adds_up ? "page-adds-up" : "page-adds-wrong"), " ", say("page-readings-made", { n: summary.readings })),
    questions(summary),
    el("h2", {}, say("page-files-heading", { n: summary.sources.length })),
    ...summary.sources.map((source) => sourceCard(source, summary.sources.length === 1)),
  );
}

interface Rows {
  rows_in: number;
  rows_used: number;
  rows_check: number;
  rows_duplicate: number;
  rows_set_aside: number;
  rows_refused: number;
}

function equation(rows: Rows, name: string): HTMLElement {
  const term = (n: number, key: string): Child =>
    el("span", { class: n === 0 ? "term term-none" : "term" }, el("strong", {}, count(n)), el("span", {}, say(key)));
  const sign = (text: string): Child => el("span", { class: "sign" }, text);
  return el(
    "p",
    { class: name },
    term(rows.rows_in, "page-rows-in"),
    sign("="),
    term(rows.rows_used, "page-rows-used"),
    sign("+"),
    term(rows.rows_check, "page-rows-check"),
    sign("+"),
    term(rows.rows_duplicate, "page-rows-duplicate"),
    sign("+"),
    term(rows.rows_set_aside, "page-rows-set-aside"),
    sign("+"),
    term(rows.rows_refused, "page-rows-refused"),
  );
}

/** The same question of many files is put once; whoever must can still answer file by file. */
function questions(summary: Summary): Child {
  const asked = new Map<string, { source: SourceView; need: NeedView }[]>();
  for (const source of summary.sources) {
    for (const need of source.needs) asked.set(need.code, [...(asked.get(need.code) ?? []), { source, need }]);
  }
  if (asked.size === 0) return null;
  return el(
    "section",
    { class: "questions", "aria-labelledby": "questions-heading" },
    el("h2", { id: "questions-heading" }, say("page-questions-heading", { n: asked.size })),
    el("p", { class: "quiet" }, say("page-questions-lead")),
    ...[...asked].map(([code, list]) => question(code, list)),
  );
}

function question(code: string, asked: { source: SourceView; need: NeedView }[]): HTMLElement {
  const answer = ANSWERS_TO[code];
  const one = ({ source, need }: { source: SourceView; need: NeedView }): Child => [
    el("p", {}, el("strong", {}, source.name), " ", need.text),
    answer === undefined ? null : choice({ kind: answer.kind, target: sourceTarget(source.name), about: source.name, bare: asked.length > 1 }, answer.values),
  ];
  const [first] = asked;
  if (first === undefined || answer === undefined || asked.length === 1) return el("div", { class: "question" }, ...asked.map(one));
  return el(
    "div",
    { class: "question" },
    el("p", {}, el("strong", {}, say("page-questions-all", { n: asked.length })), " ", first.need.text),
    choice({ kind: answer.kind, about: say("page-questions-all", { n: asked.length }) }, answer.values),
    el(
      "details",
      { id: `question-each-${code}`, class: "fold fold-inner" },
      el("summary", {}, say("page-questions-each")),
      ...asked.map((each) => el("div", { class: "question" }, one(each))),
    ),
  );
}

function sourceCard(source: SourceView, only: boolean): HTMLElement {
  const flags: Child[] = [];
  if (!source.read) flags.push(el("span", { class: "flag flag-strong" }, say("page-source-unread")));
  if (source.needs.length > 0) flags.push(el("span", { class: "flag" }, say("page-source-questions", { n: source.needs.length })));
  if (source.rows_refused > 0) flags.push(el("span", { class: "flag" }, say("page-source-refused", { n: source.rows_refused })));
  if (source.notices.length > 0) flags.push(el("span", { class: "flag flag-quiet" }, say("page-source-notices", { n: source.notices.length + source.notices_left_out })));
  const file = state.files[source.index];
  return el(
    "details",
    { id: controlId("source", source.name, String(source.index)), class: "fold source", open: only || !source.read || source.rows_refused > 0 },
    el(
      "summary",
      {},
      el("span", { class: "source-name" }, source.name),
      file?.invented === true ? el("span", { class: "flag flag-quiet" }, say("page-invented")) : null,
      el("span", { class: "quiet" }, say("page-source-size", { size: byteCount(source.bytes), n: source.readings })),
      ...flags,
    ),
    source.problem === null ? null : el("p", { class: "problem" }, source.problem),
    source.read && !only ? equation(source, "equation") : null,
    source.set_aside.length === 0
      ? null
      : el("p", { class: "quiet" }, say("page-set-aside-heading"), " ", source.set_aside.map((one) => `${one.reason} (${count(one.rows)})`).join("; ")),
    noticeTable(say("page-refusals-heading", { n: source.rows_refused }), source.refusals, source.refusals_left_out),
    noticeTable(say("page-notices-heading", { n: source.notices.length + source.notices_left_out }), source.notices, source.notices_left_out),
    columnTable(source),
    el(
      "details",
      { id: controlId("correct", source.name, String(source.index)), class: "fold fold-inner" },
      el("summary", {}, say("page-correct-heading")),
      el("p", { class: "quiet" }, say("page-correct-lead")),
      el("div", { class: "controls" }, ...ACTS_ABOUT_A_FILE.map((act) => choice({ kind: act.kind, target: sourceTarget(source.name), about: source.name }, act.values))),
    ),
    el("p", { class: "quiet digest" }, say("page-source-digest"), " ", el("code", {}, source.sha256)),
    file === undefined
      ? null
      : el("button", { type: "button", class: "tool", on: { click: () => void removeFile(file.key) } }, say("page-source-remove"), el("span", { class: "heard" }, ` ${source.name}`)),
  );
}

function table(caption: string, headings: string[], rows: Child[][]): HTMLElement {
  return el(
    "div",
    { class: "table-scroll", tabindex: 0, role: "group", "aria-label": caption },
    el(
      "table",
      {},
      el("caption", {}, caption),
      el("thead", {}, el("tr", {}, ...headings.map((heading) => el("th", { scope: "col" }, heading)))),
      el("tbody", {}, ...rows.map((cells) => el("tr", {}, ...cells.map((cell) => el("td", {}, cell))))),
    ),
  );
}

function noticeTable(caption: string, notices: NoticeView[], leftOut: number): Child {
  if (notices.length === 0) return null;
  const shown = notices.slice(0, MOST_ROWS);
  const hidden = leftOut + notices.length - shown.length;
  return [
    table(
      caption,
      [say("page-table-where"), say("page-table-why"), say("page-table-remedy"), say("page-table-rows")],
      shown.map((notice) => [inFile(notice.line, notice.column, notice.heading), notice.text, notice.remedy, count(notice.rows)]),
    ),
    hidden > 0 ? el("p", { class: "quiet" }, say("page-table-left-out", { n: hidden })) : null,
  ];
}

function columnTable(source: SourceView): Child {
  if (source.columns.length === 0) return null;
  return el(
    "details",
    { id: controlId("columns", source.name, String(source.index)), class: "fold fold-inner" },
    el("summary", {}, say("page-columns-heading", { n: source.columns.length })),
    table(
      say("page-columns-caption", { name: source.name }),
      [say("page-columns-column"), say("page-columns-as"), say("page-columns-element"), say("page-columns-unit"), say("page-columns-sigma"), say("page-columns-why")],
      source.columns.map((column) => [
        el("span", {}, `${column.column} `, el("strong", {}, column.heading)),
        column.role_text,
        column.element ?? "",
        column.unit ?? "",
        column.sigma_multiple ?? "",
        column.why,
      ]),
    ),
  );
}
