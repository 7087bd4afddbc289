// What stands about keeping: in the head of the page where the inspection is saved, and a panel with the recovery code, the
// inspection file, closing, and what the copy is against and what not.

import { byId, el, redraw, type Child } from "../elements";
import { inTurn } from "../instance";
import { closeAndRemove } from "../inspection";
import { goTo } from "../place";
import { save } from "../save";
import { change, state, watch } from "../state";
import { byteCount, say } from "../words";
import { waitNoMore } from "./awaited";
import { LARGEST_FILE } from "./copy";
import { grouped } from "./code";
import { fileDigest } from "../digest";
import { inspectionFile } from "./file";
import { removeAllFound } from "./found";
import { timeNow } from "./opening";

const FILE = "inspection.plumbline";
const CODE_FILE = "recovery-code.txt";

interface SaveHandle {
  createWritable(): Promise<{ write(bytes: Blob): Promise<void>; close(): Promise<void> }>;
}
type SavePicker = (wishes: { suggestedName: string; types: { description: string; accept: Record<string, string[]> }[] }) => Promise<SaveHandle>;

function picker(): SavePicker | null {
  const found = (globalThis as { showSaveFilePicker?: SavePicker }).showSaveFilePicker;
  return typeof found === "function" ? found.bind(globalThis) : null;
}

export function beginPanel(): void {
  watch(["summary", "files", "steps", "copy", "written", "savedAt", "language", "door", "kept", "awaited"], drawWritten);
  watch(["keepOpen", "code", "codeNoted", "copy", "copyFault", "kept", "door", "awaited", "savedAt", "leftovers", "files", "steps", "summary", "language"], drawPanel);
  watch(["place"], moveLeave);
  byId("keep-open").addEventListener("click", () => {
    change({ keepOpen: !state.keepOpen });
    if (state.keepOpen) byId("keep-heading").focus({ preventScroll: false });
  });
  moveLeave();
  drawWritten();
  drawPanel();
}

/** The one control of leaving nothing stands on the first screen, and in the panel everywhere else. */
function moveLeave(): void {
  const home = byId(state.place === "start" ? "leave-home-start" : "leave-home-keep");
  if (byId("leave").parentElement !== home) home.append(byId("leave"));
}

function anythingGiven(): boolean {
  return state.summary !== null || state.files.length > 0 || state.steps.length > 0 || state.awaited.length > 0;
}

function drawWritten(): void {
  const note = byId("written");
  const open = byId("keep-open");
  const there = anythingGiven();
  // An exercise is not work that could be lost.
  note.hidden = !there || state.door === "train";
  open.hidden = !there;
  if (!there) return;
  const where = state.savedAt !== "" ? say("page-keep-state-file", { time: state.savedAt }) : state.copy === "saved" ? say("page-keep-state-copy") : say("page-keep-state-none");
  const none = state.savedAt === "" && state.copy !== "saved";
  note.replaceChildren(...(state.written && state.summary !== null ? [el("span", {}, say("page-written")), " · "] : []), el("span", { class: none ? "written-not" : "" }, where));
}

function drawPanel(): void {
  const panel = byId("keep");
  const shown = state.keepOpen && anythingGiven();
  const comes = shown && panel.hidden && !state.codeNoted;
  panel.hidden = !shown;
  byId("keep-open").setAttribute("aria-expanded", String(shown));
  if (!shown) return;
  redraw(byId("keep-body"), standing(), missing(), code());
  redraw(byId("keep-more"), tools(), others(), threats());
  // A new code must be seen, wherever the page has been scrolled to meanwhile.
  if (comes) document.getElementById("keep-code")?.scrollIntoView({ block: "center" });
}

/** How it stands where it stands badly: no copy, or none wanted. */
function standing(): Child {
  if (state.door === "train") return el("p", { class: "quiet" }, say("page-keep-training"));
  if (state.kept === "nothing") return el("p", {}, say("page-keep-off"));
  if (state.copy === "unsaved") return el("p", { class: "problem", id: "keep-unsaved" }, say(state.copyFault === "full" ? "page-keep-unsaved-full" : "page-keep-unsaved-refused"));
  return null;
}

function missing(): Child {
  if (state.awaited.length === 0) return null;
  return el(
    "div",
    { class: "keep-missing" },
    el("p", {}, el("strong", {}, say("page-keep-awaited", { n: state.awaited.length }))),
    el(
      "ul",
      { class: "keep-list" },
      ...state.awaited.map(({ file, size }) =>
        el(
          "li",
          {},
          el("span", {}, el("strong", {}, file.name), " ", el("span", { class: "quiet" }, byteCount(size))),
          el("button", { type: "button", id: `keep-again-${file.key}`, class: "tool", on: { click: () => byId<HTMLInputElement>("result-files").click() } }, say("page-keep-choose-again"), el("span", { class: "heard" }, ` ${file.name}`)),
          el("button", { type: "button", id: `keep-without-${file.key}`, class: "tool", on: { click: () => void inTurn(async () => waitNoMore(file)) } }, say("page-keep-without"), el("span", { class: "heard" }, ` ${file.name}`)),
        ),
      ),
    ),
  );
}

function code(): Child {
  if (state.code === "" || state.copy !== "saved") return null;
  return el(
    "div",
    { class: state.codeNoted ? "keep-code-box" : "keep-code-box keep-code-new" },
    el("p", {}, say(state.codeNoted ? "page-keep-code-again" : "page-keep-code-new")),
    el("p", { class: "keep-code" }, el("span", { class: "heard" }, say("page-keep-code-name")), el("code", { id: "keep-code" }, grouped(state.code))),
    el(
      "div",
      { class: "keep-buttons" },
      state.codeNoted ? null : el("button", { type: "button", id: "keep-noted", class: "primary", on: { click: noted } }, say("page-keep-noted")),
      el("button", { type: "button", id: "keep-copy-code", class: "tool", on: { click: () => void copyCode() } }, say("page-keep-copy-code")),
      el("button", { type: "button", id: "keep-save-code", class: "tool", on: { click: () => void saveCode() } }, say("page-keep-save-code")),
    ),
    el("p", { class: "hint" }, say("page-keep-code-hint")),
  );
}

function noted(): void {
  change({ codeNoted: true, keepOpen: false, event: say("page-keep-event-noted") });
  byId("keep-open").focus({ preventScroll: true });
}

async function copyCode(): Promise<void> {
  try {
    await navigator.clipboard.writeText(grouped(state.code));
    change({ event: say("page-keep-event-code-copied") });
  } catch {
    // Some browsers give a page that was opened from a disk no clipboard: what is marked can be copied by keys.
    getSelection()?.selectAllChildren(byId("keep-code"));
    change({ event: say("page-keep-event-code-marked") });
  }
}

/** Where the person wants it: on the stick, and not beside the copy. */
async function saveCode(): Promise<void> {
  const blob = new Blob([`${say("page-keep-code-file")}\r\n\r\n${grouped(state.code)}\r\n`], { type: "text/plain" });
  const where = await chosenPlace(CODE_FILE, say("page-keep-code-name"), "text/plain", ".txt");
  if (where === "left") return;
  const wrote = where !== null && (await wroteInto(where, blob));
  if (!wrote) save(CODE_FILE, blob);
  change({ event: say(wrote ? "page-keep-event-saved" : "page-event-written", { file: CODE_FILE }) });
}

/** Where a person wants a file; null where the browser asks nobody, so that it goes to the downloads. */
async function chosenPlace(suggestedName: string, description: string, type: string, ending: string): Promise<SaveHandle | "left" | null> {
  const choose = picker();
  if (choose === null) return null;
  try {
    return await choose({ suggestedName, types: [{ description, accept: { [type]: [ending] } }] });
  } catch (error) {
    // An organisation may have switched it off while it still seems to be there: the download is.
    return error instanceof DOMException && error.name === "AbortError" ? "left" : null;
  }
}

function tools(): Child {
  return el(
    "div",
    { class: "keep-tools" },
    el("p", {}, say("page-keep-file-what")),
    el(
      "div",
      { class: "keep-buttons" },
      picker() === null ? null : el("button", { type: "button", id: "keep-save-as", class: "second", on: { click: () => void saveInspection(true) } }, say("page-keep-save-as")),
      el("button", { type: "button", id: "keep-download", class: picker() === null ? "second" : "tool", on: { click: () => void saveInspection(false) } }, say("page-keep-download")),
      el("button", { type: "button", id: "keep-close", class: "tool", on: { click: () => void closeAndRemove().then(() => goTo("start")) } }, say("page-keep-close")),
    ),
    el("p", { class: "hint" }, say("page-keep-close-hint")),
  );
}

/** Writes the inspection file, where the person wants it or to the downloads. */
async function saveInspection(asks: boolean): Promise<void> {
  // First of all: the browser takes a press for this only while it is fresh.
  let handle = asks ? await chosenPlace(FILE, say("page-keep-file-kind"), "application/octet-stream", ".plumbline") : null;
  if (handle === "left") return;
  await inTurn(async () => {
    change({ work: { text: say("page-work-writing", { file: FILE }), done: 0, total: null, cancel: () => undefined } });
    try {
      const blob = await inspectionFile((file) => fileDigest(file.bytes));
      if (handle !== null && handle !== "left" && !(await wroteInto(handle, blob))) handle = null;
      if (handle === null) save(FILE, blob);
      change({ savedAt: timeNow(), event: say(handle === null ? "page-event-written" : "page-keep-event-saved", { file: FILE }) });
    } finally {
      change({ work: null });
    }
  });
}

async function wroteInto(handle: SaveHandle, blob: Blob): Promise<boolean> {
  try {
    const into = await handle.createWritable();
    await into.write(blob);
    await into.close();
    return true;
  } catch {
    return false;
  }
}

/** Copies of other inspections that lie in this browser. */
function others(): Child {
  const n = state.leftovers.length;
  if (n === 0) return null;
  return el("p", { class: "keep-others" }, el("span", {}, say("page-keep-others", { n })), el("button", { type: "button", id: "keep-remove-others", class: "tool", on: { click: () => void removeAllFound() } }, say("page-keep-remove-others", { n })));
}

function threats(): Child {
  return el(
    "details",
    { id: "keep-threats", class: "fold fold-inner" },
    el("summary", {}, say("page-keep-threats")),
    el("ul", { class: "keep-threats" }, ...["copied", "where", "against", "not-against", "code", "size", "closed"].map((part) => el("li", {}, say(`page-keep-threat-${part}`, { size: byteCount(LARGEST_FILE) })))),
  );
}

