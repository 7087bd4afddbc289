// What can be taken away: one list in the order a person needs it, each with what it is for and who gets it. What these
// findings give no cause for is not offered, and why stands in its place.

import type { PaperFile, PapersView, Summary, WrittenFile } from "../../shared/door";
import { el, type Child } from "../elements";
import { inTurn } from "../instance";
import { languageOptions, languages, taught } from "../languages";
import { fetchPapers, settingsText, writeFile } from "../looking";
import { openInTab, save } from "../save";
import { change, state } from "../state";
import { between, say } from "../words";

/** Notices shown one by one before the rest is a matter for the command line (our choice: more than anybody sends in a day). */
const MOST_NOTICES = 60;
const SETTINGS = "settings.toml";
const SELF_CHECK = "self-check.html";

type Taken = WrittenFile | PaperFile;

export function takeAway(summary: Summary): HTMLElement {
  const papers = papersOf(summary);
  const ships = state.door === "ship";
  return el(
    "section",
    { class: "card", "aria-labelledby": "write-files" },
    el("h2", { id: "write-files" }, say("page-write-files")),
    language(),
    // Chromium lets no page that was opened from a disk print another, so printing is left to the tab.
    el("p", { class: "quiet" }, say("page-take-print")),
    el(
      "ol",
      { class: "takes" },
      // A supplier came for the sheet; to anybody else it is one paper for others among the rest.
      ships ? selfCheck(papers, "primary") : null,
      item("one-page", "report-one-page.html"),
      item("report", "report.html", ships ? "second" : "primary"),
      item("annex", "report-annex.html"),
      ...forOthers(papers, ships),
      ships ? null : selfCheck(papers, "tool"),
      item("xlsx", "findings.xlsx"),
      item("csv", "findings.csv"),
      item("json", "findings.json"),
      item("history", "history.txt"),
      take(say("page-take-settings"), SETTINGS, say("page-take-settings-why"), [button("save-settings", "tool", say("page-take-download"), say("page-take-settings"), saveSettings)]),
    ),
  );
}

/** The language of reports and papers: that of the page, until another is chosen for a reader elsewhere. */
function language(): Child {
  if (languages().length === 1) return null;
  const list = el("select", { id: "report-language", on: { change: () => change({ reportLanguage: list.value }) } }, ...languageOptions(tag()));
  return el("p", { class: "language" }, el("label", { for: "report-language" }, say("page-write-report-language")), list);
}

function tag(): string {
  return state.reportLanguage === "" ? state.language : state.reportLanguage;
}

// ---- papers for others ----

function forOthers(papers: PapersView | null, ships: boolean): Child[] {
  if (papers === null) return [el("li", { class: "take", "aria-busy": "true" }, el("p", { class: "quiet" }, say("page-take-looking")))];
  const { samples, labels } = papers;
  return [
    samples === 0 ? none("laboratory", say("page-take-laboratory-none")) : item("laboratory", "laboratory-request.html", "tool", say("page-take-laboratory-count", { n: samples })),
    // Who ships would write the notices to itself.
    ...(ships ? [] : supplierNotices(papers)),
    labels === 0 ? none("labels", say("page-take-labels-none")) : item("labels", "labels.html", "tool", say("page-take-labels-count", { n: labels })),
  ];
}

function supplierNotices({ notices, without_supplier }: PapersView): Child[] {
  const shown = notices.slice(0, MOST_NOTICES);
  return [
    ...shown.map((notice) => take(say("page-take-notice", { supplier: notice.supplier }), notice.file, `${say("page-take-notice-count", { n: notice.lots })}${between("gap")}${say("page-take-notice-why")}`, both(notice.file, "tool", say("page-take-notice", { supplier: notice.supplier })))),
    notices.length > shown.length ? none("notices", say("page-take-notices-more", { n: notices.length - shown.length })) : null,
    notices.length === 0 && without_supplier === 0 ? none("notices", say("page-take-notices-none")) : null,
    without_supplier === 0 ? null : none("notices", say("page-take-notices-nameless", { n: without_supplier })),
  ];
}

function selfCheck(papers: PapersView | null, look: string): Child {
  if (papers === null) return null;
  return papers.self_check === 0 ? none("self-check", say("page-take-self-check-none")) : item("self-check", SELF_CHECK, look, say("page-take-self-check-count", { n: papers.self_check }));
}

/** What there is not, and why. */
function none(name: "self-check" | "laboratory" | "notices" | "labels", why: string): HTMLElement {
  return el("li", { class: "take take-none", "data-none": name }, el("div", { class: "take-what" }, el("h3", {}, say(`page-take-${name}`)), el("p", { class: "quiet" }, why)));
}

let askedOf: Summary | null = null;

/** Which papers there are for these findings; asked once for each summary, and nothing is offered on their account before. */
function papersOf(summary: Summary): PapersView | null {
  if (state.papers?.of === summary) return state.papers.view;
  if (askedOf !== summary) {
    askedOf = summary;
    void fetchPapers().then((view) => {
      if (view !== null && state.summary === summary) change({ papers: { of: summary, view } });
    });
  }
  return null;
}

// ---- one thing to take ----

type Name = "self-check" | "one-page" | "report" | "annex" | "laboratory" | "labels" | "xlsx" | "csv" | "json" | "history";

function item(name: Name, file: Taken, look = "tool", counted = ""): HTMLElement {
  const title = say(`page-take-${name}`);
  const why = say(`page-take-${name}-why`);
  return take(title, file, counted === "" ? why : `${counted} ${why}`, both(file, look, title));
}

function take(title: string, file: string, why: string, buttons: Child): HTMLElement {
  return el(
    "li",
    { class: "take", "data-file": file },
    el("div", { class: "take-what" }, el("h3", {}, title, " ", el("code", { class: "quiet" }, file)), el("p", { class: "quiet" }, why)),
    el("div", { class: "take-buttons" }, buttons),
  );
}

/** A page can be looked at and printed in a tab of its own; everything can be downloaded. */
function both(file: Taken, look: string, title: string): Child {
  const id = file.replace(".", "-");
  return [
    button(`save-${id}`, look, say("page-take-download"), title, () => saveFile(file)),
    file.endsWith(".html") ? button(`open-${id}`, "tool", say("page-take-open"), title, () => openFile(file)) : null,
  ];
}

function button(id: string, look: string, text: string, title: string, press: () => Promise<void>): HTMLElement {
  return el("button", { type: "button", id, class: look, on: { click: () => void press() } }, text, el("span", { class: "heard" }, ` ${title}`));
}

function typeOf(file: Taken): string {
  if (file.endsWith(".html")) return "text/html";
  if (file === "findings.csv") return "text/csv";
  if (file === "findings.json") return "application/json";
  return file === "findings.xlsx" ? "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet" : "text/plain";
}

/** Whether it holds what was found; a paper for others holds a part of it. */
function isRecord(file: Taken): boolean {
  return /^(report|findings|history)/.test(file);
}

/** A file's bytes, in the language chosen for what is taken away. */
async function written(file: Taken): Promise<Blob | null> {
  // After a step that is under way, and not in the middle of it.
  await inTurn(() => taught(tag()));
  const parts = await writeFile(file, tag());
  return parts === null ? null : new Blob(parts as BlobPart[], { type: typeOf(file) });
}

async function saveFile(file: Taken): Promise<void> {
  const blob = await written(file);
  if (blob === null) return;
  save(file, blob);
  if (file === SELF_CHECK) change({ sheetOf: state.summary });
  change({ written: state.written || isRecord(file), event: say("page-event-written", { file }) });
}

async function openFile(file: Taken): Promise<void> {
  const blob = await written(file);
  if (blob === null) return;
  openInTab(blob);
  if (file === SELF_CHECK) change({ sheetOf: state.summary });
}

async function saveSettings(): Promise<void> {
  const text = await settingsText();
  if (text === null) return;
  save(SETTINGS, new Blob([text], { type: "application/toml" }));
  change({ event: say("page-event-written", { file: SETTINGS }) });
}
