// Write it down: who reviewed what and where, the acts so far, and the files to take away.

import type { Summary, WrittenFile } from "../../shared/door";
import { CATEGORY } from "../act-kinds";
import { controlId, entry, listed } from "../acts-given";
import { actText, signature, standing } from "../acts-in-force";
import { el, redraw, type Child } from "../elements";
import { doAct, undo } from "../inspection";
import { inTurn } from "../instance";
import { languageOptions, languages, taught } from "../languages";
import { settingsText, writeFile } from "../looking";
import { openInTab, save } from "../save";
import { change, state } from "../state";
import { say } from "../words";
import { statedForReport } from "./for-report";
import { nothingRead } from "./nothing-read";
import { today } from "./who";

const FIELDS = ["title", "inspector", "place", "reviewed_at"] as const;

export function writeNeeds(_summary: Summary): string {
  const n = FIELDS.filter((kind) => standing(kind, "") === null).length;
  return n === 0 ? "" : say("page-needs-write", { n });
}

export function drawWrite(host: HTMLElement): void {
  const { summary } = state;
  if (summary === null) {
    redraw(host, el("p", { class: "empty" }, say("page-nothing-yet")));
    return;
  }
  redraw(
    host,
    el("p", { class: "lead" }, say("page-not-a-declaration")),
    nothingRead(summary),
    el(
      "section",
      { class: "card", "aria-labelledby": "write-who" },
      el("h2", { id: "write-who" }, say("page-write-identification")),
      el(
        "div",
        { class: "controls" },
        entry({ kind: "title" }, "text"),
        entry({ kind: "inspector" }, "text"),
        entry({ kind: "place" }, "text"),
        el(
          "div",
          { class: "with-today" },
          entry({ kind: "reviewed_at" }, "date"),
          el("button", { type: "button", id: "reviewed-today", class: "tool", on: { click: () => void doAct({ kind: "reviewed_at", value: today() }) } }, say("page-write-reviewed-today")),
        ),
        listed({ kind: "category", none: say("page-category-none") }, CATEGORY.values),
        entry({ kind: "placing_date" }, "date"),
      ),
      statedForReport(summary),
    ),
    el(
      "section",
      { class: "card", "aria-labelledby": "write-files" },
      el("h2", { id: "write-files" }, say("page-write-files")),
      el(
        "div",
        { class: "takeaways" },
        takeaway("report.html", "report", "primary", reportLanguage(), el("button", { type: "button", class: "tool", id: "open-report", on: { click: () => void openReport() } }, say("page-write-open"))),
        takeaway("report-one-page.html", "one-page", "tool"),
        takeaway("report-annex.html", "annex", "tool"),
        takeaway("findings.csv", "csv", "tool"),
        takeaway("findings.json", "json", "tool"),
        takeaway("history.txt", "history", "tool"),
        el(
          "div",
          { class: "takeaway" },
          el("div", { class: "takeaway-buttons" }, el("button", { type: "button", id: "save-settings", class: "tool", on: { click: () => void saveSettings() } }, say("page-write-settings"))),
          el("p", { class: "quiet" }, say("page-write-settings-why")),
        ),
      ),
    ),
    el(
      "section",
      { class: "card", "aria-labelledby": "write-papers" },
      el("h2", { id: "write-papers" }, say("page-write-papers")),
      el("p", { class: "quiet" }, say("page-write-papers-why")),
      el(
        "div",
        { class: "controls" },
        entry({ kind: "contact" }, "text"),
        entry({ kind: "reply_by" }, "date"),
        entry({ kind: "requested_action" }, "text"),
      ),
    ),
    el(
      "section",
      { class: "card", "aria-labelledby": "write-acts" },
      el("h2", { id: "write-acts" }, say("page-write-acts", { n: summary.acts.length })),
      el("p", { class: "quiet" }, say("page-write-acts-why")),
      acts(summary),
    ),
  );
}

function takeaway(file: WrittenFile, name: "report" | "one-page" | "annex" | "csv" | "json" | "history", look: string, ...more: Child[]): HTMLElement {
  return el(
    "div",
    { class: "takeaway" },
    el("div", { class: "takeaway-buttons" }, el("button", { type: "button", id: `save-${file.replace(".", "-")}`, class: look, on: { click: () => void saveFile(file) } }, say(`page-write-${name}`)), ...more),
    el("p", { class: "quiet" }, say(`page-write-${name}-why`)),
  );
}

const TYPES: Record<WrittenFile, string> = {
  "report.html": "text/html",
  "report-one-page.html": "text/html",
  "report-annex.html": "text/html",
  "findings.csv": "text/csv",
  "findings.json": "application/json",
  "history.txt": "text/plain",
};

/** The bytes of a file; a report in the language chosen for reports. */
async function written(file: WrittenFile): Promise<Uint8Array[] | null> {
  const tag = state.reportLanguage === "" ? state.language : state.reportLanguage;
  // After a step that is under way, and not in the middle of it.
  await inTurn(() => taught(tag));
  return writeFile(file, tag);
}

/** The language a report is written in: that of the page, until another is chosen for a reader elsewhere. */
function reportLanguage(): Child {
  if (languages().length === 1) return null;
  const list = el("select", { id: "report-language", on: { change: () => change({ reportLanguage: list.value }) } }, ...languageOptions(state.reportLanguage === "" ? state.language : state.reportLanguage));
  return el("span", { class: "language" }, el("label", { for: "report-language" }, say("page-write-report-language")), list);
}

async function saveFile(file: WrittenFile): Promise<void> {
  const parts = await written(file);
  if (parts === null) return;
  save(file, new Blob(parts as BlobPart[], { type: TYPES[file] }));
  change({ written: true, event: say("page-event-written", { file }) });
}

async function openReport(): Promise<void> {
  const parts = await written("report.html");
  if (parts === null) return;
  openInTab(new Blob(parts as BlobPart[], { type: TYPES["report.html"] }));
}

async function saveSettings(): Promise<void> {
  const text = await settingsText();
  if (text === null) return;
  save("settings.toml", new Blob([text], { type: "application/toml" }));
  change({ event: say("page-event-written", { file: "settings.toml" }) });
}

function acts(summary: Summary): Child {
  if (summary.acts.length === 0) return el("p", { class: "empty" }, say("page-write-no-acts"));
  return el(
    "ol",
    { class: "acts" },
    ...summary.acts.map((act) =>
      el(
        "li",
        { class: act.undone ? "act act-undone" : "act", id: controlId("recorded", "", String(act.number)), value: act.number },
        el("span", { class: "act-text" }, actText(act), act.undone ? el("em", {}, ` ${say("page-act-undone")}`) : null),
        el("span", { class: "quiet" }, signature(act)),
        act.undone || act.kind === "undo"
          ? null
          : el("button", { type: "button", id: controlId("undo", "", String(act.number)), class: "tool", on: { click: () => void undo(act.number) } }, say("page-act-take-back"), el("span", { class: "heard" }, ` ${actText(act)}`)),
      ),
    ),
  );
}
