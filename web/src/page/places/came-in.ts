// What came in? For each file: do its rows add up, how was it understood, and what did it leave open.

import type { ActView, NoticeView, SourceView, Summary } from "../../shared/door";
import { choice, controlId, takeBackButton, type ControlWishes } from "../acts-given";
import { ACTS_ABOUT_A_FILE, ANSWERS_TO, SETTLES_NOTICE, headerTarget, sourceTarget } from "../act-kinds";
import { givenBy, inForce, standing, valueName } from "../acts-in-force";
import { byId, el, focusIn, redraw, type Child } from "../elements";
import { doAct, filesTakenOut, putFileBack, removeFile } from "../inspection";
import { inFile } from "../outcomes";
import { goTo } from "../place";
import { showPreview } from "../previews";
import { fileOf } from "../reading";
import { state, watch, type HeldFile } from "../state";
import { between, bracketed, byteCount, count, inRow, say } from "../words";
import { fileFacts, headingLine, needsLook, sheetChoice, textControls } from "./file-facts";
import { lazyFold, openFold } from "./lazy-fold";
import { photosCameIn } from "./photos-came-in";
import { keptColumns, rememberedColumns } from "./remembered-columns";
import { columnsToLookAt, evidenceFor, tablesOf } from "./table-columns";

const MOST_ROWS = 200;
// More cards than this at once only make the page slow; those that want a look come first.
const MOST_CARDS = 200;

/** How many things here want a person: questions without an answer, files with columns to look at, files not read or with rows refused. */
export function cameInNeeds(summary: Summary): string {
  const open = openQuestions(summary).length;
  const n = open + summary.sources.filter((source) => columnsToLookAt(source).length > 0).length + summary.sources.filter((source) => (!source.read && !isSkipped(source)) || source.rows_refused > 0).length;
  return n === 0 ? "" : say("page-needs-came-in", { n });
}

/** What lay in a folder and is no table was not meant to be read. */
export function isSkipped(source: SourceView): boolean {
  return !source.read && [...source.refusals, ...source.notices].some((notice) => notice.code === "skipped");
}

export function drawCameIn(host: HTMLElement): void {
  const { summary } = state;
  if (summary === null) {
    redraw(host, el("p", { class: "empty" }, say("page-nothing-yet")), el("div", { id: TAKEN_OUT }, takenOut()));
    return;
  }
  redraw(
    host,
    equation(summary.totals, "equation equation-total"),
    el("p", { class: summary.adds_up ? "adds-up" : "adds-up adds-wrong" }, say(summary.adds_up ? "page-adds-up" : "page-adds-wrong"), between("gap"), say("page-readings-made", { n: summary.readings })),
    rememberedColumns(summary),
    questions(summary),
    el("h2", {}, say("page-files-heading", { n: summary.sources.length })),
    ...cards(summary),
    el("div", { id: TAKEN_OUT }, takenOut()),
    photosCameIn(),
    keptColumns(summary),
  );
}

const TAKEN_OUT = "taken-out-home";

/** Files that were taken out, each with its way back. */
function takenOut(): Child {
  const files = filesTakenOut();
  if (files.length === 0) return null;
  const one = (file: HeldFile): Child =>
    el("li", {}, el("span", {}, say("page-keep-taken-out", { name: file.name })), el("button", { type: "button", id: `put-back-${file.key}`, class: "tool", on: { click: () => void putFileBack(file) } }, say("page-keep-put-back"), el("span", { class: "heard" }, ` ${file.name}`)));
  return el("ul", { id: "taken-out", class: "keep-list" }, ...files.map(one));
}

// A step is noted after its effect is drawn.
watch(["steps"], () => {
  const home = document.getElementById(TAKEN_OUT);
  if (home !== null) redraw(home, takenOut());
});

let allCards = false;

function cards(summary: Summary): Child[] {
  const { sources } = summary;
  const only = sources.length === 1;
  if (sources.length <= MOST_CARDS || allCards) return sources.map((source) => sourceCard(source, only));
  const wants = (source: SourceView): boolean => !isSkipped(source) && (!source.read || source.rows_refused > 0 || source.needs.length > 0);
  const first = [...sources.filter(wants), ...sources.filter((source) => !wants(source))].slice(0, MOST_CARDS);
  return [
    ...first.map((source) => sourceCard(source, false)),
    el(
      "button",
      {
        type: "button",
        id: "all-files",
        class: "tool",
        on: {
          click: () => {
            allCards = true;
            drawCameIn(byId("came-in"));
          },
        },
      },
      say("page-files-all", { n: sources.length }),
    ),
  ];
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
  // A sign goes with what follows it, so that no line ends on one.
  const more = (sign: string, n: number, key: string): Child => el("span", { class: "signed" }, el("span", { class: "sign" }, sign), term(n, key));
  return el(
    "p",
    { class: name },
    term(rows.rows_in, "page-rows-in"),
    more("=", rows.rows_used, "page-rows-used"),
    more("+", rows.rows_check, "page-rows-check"),
    more("+", rows.rows_duplicate, "page-rows-duplicate"),
    more("+", rows.rows_set_aside, "page-rows-set-aside"),
    more("+", rows.rows_refused, "page-rows-refused"),
  );
}

/** One thing a file left open, and the act that answers it, if there is one. */
interface Asked {
  source: SourceView;
  /** The question in words; empty where it was asked before this page was opened. */
  text: string;
  /** Whether the file still asks it. */
  still: boolean;
  act: ActView | null;
}

interface Question {
  code: string;
  asked: Asked[];
  /** Those without an answer. */
  open: Asked[];
}

// What was asked once stays in sight with its answer, though the file no longer asks it.
const asked = new Map<string, string>();
watch(["summary"], () => {
  if (state.summary === null) asked.clear();
});

/** What an answer about a file may stand on: the file, and the headings of its tables. */
function targetsOf(source: SourceView): string[] {
  return [sourceTarget(source.name), ...source.blocks.map((block) => headerTarget(block.fingerprint))];
}

/** The same question of many files is put once; whoever must can still answer file by file. */
function questionsOf(summary: Summary): Question[] {
  const questions = new Map<string, Asked[]>();
  for (const source of summary.sources) {
    for (const need of source.needs) asked.set(`${need.code}|${source.name}`, need.text);
    for (const [code, answer] of Object.entries(ANSWERS_TO)) {
      const still = source.needs.some((need) => need.code === code);
      const act = inForce(answer.kind, [...targetsOf(source), ""]);
      const text = asked.get(`${code}|${source.name}`) ?? "";
      // An act from a settings file answered before anybody asked.
      if (!still && (act === null || (text === "" && (act.note !== "" || act.target === "")))) continue;
      questions.set(code, [...(questions.get(code) ?? []), { source, text, still, act }]);
    }
    for (const need of source.needs) {
      if (ANSWERS_TO[need.code] === undefined) questions.set(need.code, [...(questions.get(need.code) ?? []), { source, text: need.text, still: true, act: null }]);
    }
  }
  return [...questions].map(([code, list]) => ({ code, asked: list, open: list.filter((one) => one.act === null) }));
}

/** The questions without an answer, in the order they are put. */
export function openQuestions(summary: Summary): { code: string; files: number; text: string }[] {
  return questionsOf(summary)
    .filter((question) => question.open.length > 0)
    .map((question) => ({ code: question.code, files: question.open.length, text: question.open[0]?.text ?? "" }));
}

function questions(summary: Summary): Child {
  const all = questionsOf(summary);
  if (all.length === 0) return null;
  const open = all.filter((question) => question.open.length > 0).length;
  return el(
    "section",
    { class: open > 0 ? "questions" : "questions questions-answered", "aria-labelledby": "questions-heading" },
    el("h2", { id: "questions-heading", tabindex: -1 }, say(open > 0 ? "page-questions-heading" : "page-questions-answered", { n: open > 0 ? open : all.length })),
    open > 0 ? el("p", { class: "quiet" }, say("page-questions-lead")) : null,
    ...all.map(question),
  );
}

/** To the next question without an answer; with none left, to where this answer can be taken back. */
function goOn(id: string): void {
  const next = document.querySelector(".questions .question[data-missing]");
  if (next !== null && focusIn(next.id)) return;
  focusIn(id);
}

function question({ code, asked: list, open }: Question): HTMLElement {
  const answer = ANSWERS_TO[code];
  const id = `question-${code}`;
  const missing = open.length > 0 ? "yes" : undefined;
  const one = (each: Asked): Child => {
    const own = `${id}-${each.source.index}`;
    return [
      el("p", {}, el("strong", {}, each.source.name), " ", each.text),
      evidenceFor(code, each.source, say("page-evidence-stands")),
      each.act === null ? severalMaterials(code) : null,
      each.act !== null
        ? answered(answer?.kind ?? "", each, own)
        : answer === undefined
          ? null
          : choice({ kind: answer.kind, target: sourceTarget(each.source.name), about: each.source.name, bare: list.length > 1, where: "question", after: () => goOn(`${own}-back`), ...rememberedFor(each.source, answer.kind) }, answer.values),
    ];
  };
  const [first] = open.length > 0 ? open : list;
  if (first === undefined || answer === undefined || list.length === 1) return el("div", { id, class: "question", "data-missing": missing }, ...list.map(one));
  const whole = standing(answer.kind, "");
  const counted = list.flatMap((each) => each.source.needs.filter((need) => need.code === code)).reduce((sum, need) => sum + need.count, 0);
  const text = counted > 0 ? say("page-need-class-of-all", { count: counted }) : first.text;
  return el(
    "div",
    { id, class: "question", "data-missing": missing },
    el("p", {}, el("strong", {}, say("page-questions-all", { n: list.length })), " ", text),
    // The first file's numbers stand for the others; each file's own stand below.
    evidenceFor(code, first.source, say("page-evidence-of-file", { name: first.source.name })),
    open.length === 0 ? null : severalMaterials(code),
    whole !== null
      ? answered(answer.kind, { ...first, act: whole, still: list.some((each) => each.still) }, `${id}-all`)
      : open.length === 0
        ? null
        : choice({ kind: answer.kind, about: say("page-questions-all", { n: list.length }), where: "question", after: () => goOn(`${id}-all-back`) }, answer.values),
    lazyFold(`question-each-${code}`, "fold fold-inner", false, [say("page-questions-each")], () => [
      ...list.slice(0, MOST_CARDS).map((each) => el("div", { class: "question" }, one(each))),
      list.length > MOST_CARDS ? el("p", { class: "quiet" }, say("page-questions-left", { n: list.length - MOST_CARDS })) : null,
    ]),
  );
}

const NAMED = 5;

/** One class for all is quickly set and wrong for some: where several materials have none, that is told, and where each has its own. */
function severalMaterials(code: string): Child {
  const without = (state.summary?.materials ?? []).filter((one) => one.class === "unknown");
  const names = [...new Set(without.flatMap((one) => one.material ?? one.part ?? []))];
  if (code !== "class_not_stated" || names.length < 2) return null;
  const first = inRow(names.slice(0, NAMED));
  return el(
    "div",
    { class: "class-each" },
    el("p", {}, say("page-class-several", { n: names.length, names: names.length > NAMED ? say("page-and-more", { names: first, n: names.length - NAMED }) : first })),
    el("button", { type: "button", class: "second", on: { click: () => goTo("trust", "evidence-class") } }, say("page-class-each")),
  );
}

/** An answer about the one table of a file may be given for its headings, and then counts another day too. A class can't: it is not a matter of headings. */
function rememberedFor(source: SourceView, kind: string): Partial<ControlWishes> {
  const [block, ...others] = source.blocks;
  return block === undefined || others.length > 0 || kind === "class" ? {} : { remember: headerTarget(block.fingerprint) };
}

function answered(kind: string, { act, still, text }: Asked, id: string): Child {
  if (act === null) return null;
  return [
    el(
      "p",
      { class: "given" },
      el("span", {}, el("strong", {}, say("page-question-answered", { value: valueName(kind, act.value) })), " ", act.target === "" ? `${say("page-act-for-all")} ` : null, givenBy(act)),
      takeBackButton(act, `${id}-back`, id.replace(/-(?:all|\d+)$/, "")),
    ),
    still ? el("p", { class: "hint" }, say("page-question-still", { text })) : null,
  ];
}

function sourceCard(source: SourceView, only: boolean): HTMLElement {
  const flags: Child[] = [];
  const skipped = isSkipped(source);
  if (!source.read) flags.push(el("span", { class: skipped ? "flag flag-quiet" : "flag flag-strong" }, say(skipped ? "page-source-skipped" : "page-source-unread")));
  const open = source.needs.filter((need) => !isAnswered(source, ANSWERS_TO[need.code]?.kind)).length;
  if (open > 0) flags.push(el("span", { class: "flag" }, say("page-source-questions", { n: open })));
  if (source.rows_refused > 0) flags.push(el("span", { class: "flag" }, say("page-source-refused", { n: source.rows_refused })));
  if (source.notices.length > 0) flags.push(el("span", { class: "flag flag-quiet" }, say("page-source-notices", { n: source.notices.length + source.notices_left_out })));
  const columns = source.blocks.flatMap((block) => block.columns);
  const unused = columns.filter((column) => column.role === "unused" && column.heading.trim() !== "").map((column) => column.heading);
  if (unused.length > 0) flags.push(el("span", { class: "flag flag-long" }, unusedText(unused)));
  const file = fileOf(source);
  return lazyFold(
    controlId("source", source.name, String(source.index)),
    "fold source",
    only || (!source.read && !skipped) || source.rows_refused > 0,
    [
      el("span", { class: "source-name" }, source.name),
      file?.invented === true ? el("span", { class: "flag flag-quiet" }, say("page-invented")) : null,
      el("span", { class: "quiet" }, say("page-source-size", { size: byteCount(source.bytes), n: source.readings })),
      ...flags,
    ],
    () => sourceContent(source, only),
  );
}

function sourceContent(source: SourceView, only: boolean): Child[] {
  const skipped = isSkipped(source);
  const file = fileOf(source);
  return [
    source.problem === null ? null : el("p", { class: skipped ? "quiet" : "problem" }, source.problem),
    source.read && !only ? equation(source, "equation") : null,
    source.set_aside.length === 0
      ? null
      : el("p", { class: "quiet" }, say("page-set-aside-heading"), between("gap"), source.set_aside.map((one) => `${one.reason}${bracketed(count(one.rows))}`).join(between("series"))),
    noticeTable(say("page-refusals-heading", { n: source.rows_refused }), source, source.refusals, source.refusals_left_out),
    noticeTable(say("page-notices-heading", { n: source.notices.length + source.notices_left_out }), source, source.notices, source.notices_left_out),
    fileFacts(source),
    sheetChoice(source),
    headingToFind(source),
    columnsFold(source, only),
    lazyFold(controlId("correct", source.name, String(source.index)), "fold fold-inner", needsLook(source), [say("page-correct-heading")], () => [
      el("p", { class: "quiet" }, say("page-correct-lead")),
      el("div", { class: "controls" }, ...textControls(source), ...ACTS_ABOUT_A_FILE.map((act) => choice({ kind: act.kind, target: sourceTarget(source.name), about: source.name, wider: [""], where: "correct" }, act.values))),
    ]),
    el("p", { class: "quiet digest" }, say("page-source-digest"), " ", el("code", {}, source.sha256)),
    file === null
      ? null
      : el("button", { type: "button", id: controlId("remove", source.name, String(source.index)), class: "tool", on: { click: () => void removeFile(file.key) } }, source.container === null ? say("page-source-remove") : say("page-source-remove-archive", { name: source.container.name }), el("span", { class: "heard" }, ` ${source.name}`)),
  ];
}

function unusedText(headings: string[]): string {
  const names = inRow(headings.slice(0, 3));
  return say("page-columns-unused", { n: headings.length, names: headings.length > 3 ? say("page-and-more", { names, n: headings.length - 3 }) : names });
}

function isAnswered(source: SourceView, kind: string | undefined): boolean {
  return kind !== undefined && inForce(kind, [...targetsOf(source), ""]) !== null;
}

/** What a person has said since about the thing a notice speaks of. */
function noticeAnswer(source: SourceView, notice: NoticeView): Child {
  const kind = SETTLES_NOTICE[notice.code];
  const act = kind === undefined ? null : inForce(kind, [...targetsOf(source), ""]);
  if (kind === undefined || act === null) return null;
  return [el("span", { class: "flag flag-quiet" }, say("page-question-answered", { value: valueName(kind, act.value) })), " "];
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

function noticeTable(caption: string, source: SourceView, notices: NoticeView[], leftOut: number): Child {
  if (notices.length === 0) return null;
  const shown = notices.slice(0, MOST_ROWS);
  const hidden = leftOut + notices.length - shown.length;
  return [
    table(
      caption,
      [say("page-table-where"), say("page-table-why"), say("page-table-remedy"), say("page-table-rows")],
      shown.map((notice) => [inFile(notice.line, notice.column, notice.heading), [noticeAnswer(source, notice), notice.text], notice.remedy, count(notice.rows)]),
    ),
    hidden > 0 ? el("p", { class: "quiet" }, say("page-table-left-out", { n: hidden })) : null,
  ];
}

function columnsFold(source: SourceView, only: boolean): Child {
  const n = source.blocks.reduce((sum, block) => sum + block.columns.length, 0);
  if (n === 0) return null;
  const look = columnsToLookAt(source).length;
  return lazyFold(
    columnsId(source),
    "fold fold-inner",
    only && look > 0,
    [say("page-columns-heading", { n }), look === 0 ? null : el("span", { class: "flag" }, say("page-columns-look", { n: look }))],
    () => [el("p", { class: "quiet" }, say("page-columns-lead")), ...tablesOf(source)],
  );
}

export function columnsId(source: SourceView): string {
  return controlId("columns", source.name, String(source.index));
}

const ROWS_TO_POINT_AT = 12;

/** Where no headings were found, a person points at them. */
function headingToFind(source: SourceView): Child {
  if (source.problem_code !== "no_element_column" || source.blocks.length > 0) return null;
  const target = sourceTarget(source.name);
  const point = (line: number): void => {
    openFold(columnsId(source));
    void doAct({ kind: "header_line", target, value: String(line) });
  };
  const rows = el("tbody");
  showPreview(source, { index: 0, fingerprint: "" }, ROWS_TO_POINT_AT, rows, (preview) =>
    redraw(
      rows,
      ...preview.rows.map((row) =>
        el(
          "tr",
          {},
          el("th", { scope: "row" }, row.line === null ? "" : el("button", { type: "button", class: "tool", on: { click: () => point(row.line ?? 1) } }, say("page-heading-here"), el("span", { class: "heard" }, ` ${say("page-at-line", { line: count(row.line) })}`))),
          ...row.cells.map((cell) => el("td", {}, cell)),
        ),
      ),
    ),
  );
  return el(
    "section",
    { class: "question", "aria-label": say("page-heading-where") },
    el("p", {}, el("strong", {}, say("page-heading-where")), between("gap"), say("page-heading-where-why")),
    el(
      "div",
      { class: "table-scroll", id: controlId("pointed", source.name, String(source.index)), tabindex: 0, role: "group", "aria-label": say("page-heading-rows", { name: source.name }) },
      el("table", {}, el("caption", {}, say("page-heading-rows", { name: source.name })), rows),
    ),
    headingLine(source),
  );
}
