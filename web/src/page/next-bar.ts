// The bar under the summary that always shows the one next action, leads to the very control, and can put it off.

import { controlId } from "./acts-given";
import { byId, fieldIn, focusIn } from "./elements";
import { told } from "./instance";
import { nextAction, type FileAsked, type NextAction, type PutOff, type Said, type Situation } from "./next-action";
import { goTo } from "./place";
import { stillHere } from "./hand";
import { columnsId, isSkipped, openQuestions } from "./places/came-in";
import { openFold } from "./places/lazy-fold";
import { lessonFrom } from "./places/start";
import { columnId, columnsToLookAt } from "./places/table-columns";
import { emptyFields } from "./places/write";
import { change, state, watch } from "./state";
import type { SourceView, Summary } from "../shared/door";
import { say } from "./words";

let putOff = new Map<string, number>();
let lessonAfter: { of: unknown; more: boolean } = { of: null, more: true };

function fileAsked(source: SourceView, focus: string): FileAsked {
  return { name: source.name, rows: source.rows_refused, fold: controlId("source", source.name, String(source.index)), focus };
}

function columnsAsked(source: SourceView): Situation["columns"] {
  const look = columnsToLookAt(source);
  const block = source.blocks.find((one) => one.columns.some((column) => look.includes(column)));
  const column = block?.columns.find((one) => look.includes(one));
  if (block === undefined || column === undefined) return [];
  return [{ name: source.name, columns: look.length, folds: [controlId("source", source.name, String(source.index)), columnsId(source)], focus: `${columnId(source, block, column)}-role` }];
}

function cameIn(summary: Summary): Pick<Situation, "unread" | "refused" | "questions" | "columns"> {
  const removed = (source: SourceView): string => controlId("remove", source.name, String(source.index));
  return {
    unread: summary.sources
      .filter((source) => !source.read && !isSkipped(source))
      .map((source) => fileAsked(source, source.problem_code === "no_element_column" ? controlId("header_line", `source:${source.name}`) : removed(source))),
    refused: summary.sources.filter((source) => source.read && source.rows_refused > 0).map((source) => fileAsked(source, removed(source))),
    questions: openQuestions(summary),
    columns: summary.sources.flatMap(columnsAsked),
  };
}

export function situation(): Situation {
  const { summary } = state;
  const asked = summary === null ? { unread: [], refused: [], questions: [], columns: [] } : cameIn(summary);
  return {
    ...asked,
    door: state.door,
    summary,
    offers: state.offers,
    bookGiven: told.given.some((given) => given.kind === "rule_book"),
    fields: summary === null ? [] : emptyFields(),
    written: state.written,
    sheetTaken: summary !== null && state.sheetOf === summary,
    lesson: state.lesson === null ? "none" : state.lesson.fresh === true ? "fresh" : lessonAfter.of === state.lesson && !lessonAfter.more ? "last" : "more",
    found: state.leftovers.length,
    room: state.place === "train" ? state.room : null,
  };
}

function now(): { action: NextAction; waiting: number } {
  return nextAction(situation(), putOff as PutOff, controlId);
}

function words(of: Said | string): string {
  return typeof of === "string" ? of : say(of.key, of.with);
}

function draw(): void {
  const { action, waiting } = now();
  const put = (id: string, text: string): void => {
    const node = byId(id);
    if (node.textContent !== text) node.textContent = text;
    node.hidden = text === "";
  };
  byId("next-action").dataset["action"] = action.id;
  put("next-go", words(action.text));
  put("next-why", words(action.why));
  put("next-waiting", waiting === 0 ? "" : say("page-do-waiting", { n: waiting }));
  byId("next-later").hidden = !action.mayWait;
  byId("next-put-off").hidden = waiting === 0;
}

// A list of papers is asked for, a fold makes what it holds when it is opened: a moment's patience, then what tells why.
const LEADING_MS = 1500;

/** Leads to the control: goes to its place, opens what it stands in, and gives it the focus. */
async function lead(action: NextAction): Promise<void> {
  // Gone to anew, a place is drawn anew: what one was led to would move away.
  if (action.place !== null && action.place !== state.place) goTo(action.place);
  const end = Date.now() + LEADING_MS;
  const here = stillHere();
  for (const fold of action.folds) openFold(fold);
  // Nothing has the focus before it is there to stay: it would be read out on the way.
  while (isEmptyFold(fieldIn(action.focus), action) || !focusIn(action.focus)) {
    if (Date.now() > end) {
      focusIn(action.otherwise);
      break;
    }
    for (const fold of action.folds) openFold(fold);
    await new Promise((go) => setTimeout(go, 30));
    if (!here()) return;
  }
  document.activeElement?.scrollIntoView({ block: "center", inline: "nearest" });
}

/** A fold that has not yet made what it holds has nothing but its own head to give the focus to. */
function isEmptyFold(head: HTMLElement | null, action: NextAction): boolean {
  return head?.tagName === "SUMMARY" && action.folds.includes(head.parentElement?.id ?? "");
}

function later(): void {
  const { action } = now();
  if (!action.mayWait) return;
  putOff = new Map(putOff).set(action.id, (putOff.get(action.id) ?? 0) + 1);
  change({ event: say("page-do-later-done", { what: words(action.text) }) });
  draw();
  byId("next-go").focus({ preventScroll: true });
}

function learnLesson(): void {
  const { lesson } = state;
  if (lesson === null) return;
  void lessonFrom(1).then((after) => {
    if (state.lesson !== lesson) return;
    lessonAfter = { of: lesson, more: after !== null };
    draw();
  });
}

export function beginNextBar(): void {
  byId("next-go").addEventListener("click", () => void lead(now().action));
  byId("next-later").addEventListener("click", later);
  byId("next-put-off").addEventListener("click", () => {
    putOff = new Map();
    draw();
    byId("next-go").focus({ preventScroll: true });
  });
  watch(["summary"], () => {
    // What was put off belongs to the inspection that was left.
    if (state.summary === null) putOff = new Map();
  });
  watch(["lesson"], learnLesson);
  watch(["summary", "place", "files", "door", "lesson", "written", "sheetOf", "leftovers", "offers", "room", "language"], draw);
  draw();
}
