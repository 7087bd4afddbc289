// How files come in: the four inputs, and dropping anything anywhere.

import { goThroughDoor, recordDoor } from "./door-taken";
import { byId } from "./elements";
import { isNoText, rawOf, unreadableWhy } from "./help/plain";
import { addFiles, takeBill, takePhotos, takeText, type Brought, type TextKind } from "./inspection";
import { inspectionsAmong, openInspectionFile } from "./keep/opening";
import { mediaTypeOf } from "./photo-copy";
import { takeBeside, takeReports } from "./proving";
import { reportsAmong } from "./report-file";
import { tellTrouble, troublesOver } from "./troubles";
import { goTo } from "./place";
import { change, state } from "./state";
import { say } from "./words";

const SETTINGS_SCHEMA = "plumbline.settings/";
const RULES_SCHEMA = "plumbline.rules/";
const MAPPING_SCHEMA = "plumbline.mapping/";
const HISTORY_SCHEMA = "plumbline.history/";
const PICTURE = /\.(jpe?g|jfif|png)$/i;
const LARGEST_TEXT = 4 * 1024 * 1024;

/** A settings file, a rule book, a mapping or a history says what it is in its own schema line. */
async function ownKind(file: File): Promise<TextKind | null> {
  if (/\.txt$/i.test(file.name)) return (await file.slice(0, 64).text()).replace(/^\uFEFF/, "").startsWith(HISTORY_SCHEMA) ? "history" : null;
  if (!/\.toml$/i.test(file.name) || file.size > LARGEST_TEXT) return null;
  const schema = /^\s*schema\s*=\s*"([^"]*)"/m.exec(await file.text())?.[1] ?? "";
  if (schema.startsWith(SETTINGS_SCHEMA)) return "settings";
  if (schema.startsWith(MAPPING_SCHEMA)) return "mapping";
  return schema.startsWith(RULES_SCHEMA) ? "rule_book" : null;
}

/** Only for saying more than "not TOML": whether a table was given where settings were asked for. */
function looksLikeResults(name: string, text: string): boolean {
  return /\.(csv|tsv|txt|xlsx?|ods|zip)$/i.test(name) || /^[^=\n]*[,;\t][^=\n]*$/m.test(text.split("\n", 1)[0] ?? "");
}

async function takeTextFile(kind: TextKind, file: File): Promise<void> {
  try {
    // Not file.text(): it drops a byte order mark, which is part of the digest, and replaces bytes that are no UTF-8,
    // where the command line refuses the file.
    const text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(await file.arrayBuffer());
    if (kind === "settings" && !text.includes(SETTINGS_SCHEMA) && looksLikeResults(file.name, text)) {
      tellTrouble({
        key: `settings|${file.name}`,
        about: kind,
        what: say("page-trouble-settings-what"),
        where: file.name,
        why: say("page-trouble-settings-results-why"),
        todo: say("page-trouble-settings-results-todo"),
        code: "settings results",
      });
      return;
    }
    await takeText(kind, file.name, text);
    troublesOver(`file:${file.name}`);
  } catch (error) {
    tellTrouble({
      key: `unreadable|${file.name}`,
      about: `file:${file.name}`,
      what: say("page-trouble-unreadable-what"),
      where: file.name,
      why: isNoText(error) ? say("page-trouble-not-text-why") : unreadableWhy(error),
      todo: say(isNoText(error) ? "page-trouble-not-text-todo" : "page-trouble-unreadable-todo"),
      code: "unreadable",
      raw: rawOf(error),
    });
  }
}

interface Found {
  name: string;
  file: File;
  inFolder: boolean;
}

/** Takes what a person brought. Where a report is among it, that is to be proved, and the rest is held beside it: nothing goes into the inspection. */
async function bring(found: Found[]): Promise<void> {
  if (found.length === 0) return;
  const { reports, others } = await reportsAmong(found);
  const beside = others.map(({ name, file, inFolder }) => ({ name, bytes: file, inFolder }));
  if (reports.length > 0) await takeReports(reports, beside, true);
  else if (state.place === "prove" && (await inspectionsAmong(found)).inspections.length === 0) await takeBeside(beside);
  else await inspect(found);
}

/** Takes what came in with a report as results after all. */
export function inspectBeside(): Promise<void> {
  return inspect(state.proving.beside.map(({ name, bytes, inFolder }) => ({ name, file: bytes, inFolder })));
}

/**
 * Takes what is to be inspected. Settings and rule books go first, so that nothing is read twice; only those named one by
 * one are taken, since what else lies in a folder is nobody's word.
 */
async function inspect(all: Found[]): Promise<void> {
  // An inspection that was saved: what came with it is held against its files. Of several, the last stays at hand.
  const { inspections, others } = await inspectionsAmong(all);
  let found = others;
  for (const one of inspections) found = await openInspectionFile(one, found);
  if (found.length === 0) return;
  const results: Brought[] = [];
  const photos: Brought[] = [];
  const texts: { kind: TextKind; file: File }[] = [];
  for (const { name, file, inFolder } of found) {
    // Settled by the first bytes: a table under the name of a picture is read as a table.
    if (PICTURE.test(file.name) && (await mediaTypeOf(file).catch(() => null)) !== null) {
      photos.push({ name, bytes: file, inFolder });
      continue;
    }
    const kind = inFolder ? null : await ownKind(file).catch(() => null);
    if (kind === null) results.push({ name, bytes: file, inFolder });
    else texts.push({ kind, file });
  }
  await goThroughDoor(results.length > 0);
  for (const { kind, file } of texts) await takeTextFile(kind, file);
  if (results.length > 0) {
    const reading = addFiles(results);
    const more = state.place === "came-in";
    if (state.place === "start" || state.place === "prove") goTo("came-in");
    await reading;
    // The chooser stands below everything; what came of it stands at the head.
    if (more && state.place === "came-in") goTo("came-in", "heading-came-in");
  }
  const listed = await takePhotos(photos);
  if (results.length + listed > 0) await recordDoor();
}

/** The path inside the chosen folder: the folder's own name is where it happened to lie. */
function insideFolder(file: File): string {
  const path = file.webkitRelativePath;
  return path.includes("/") ? path.slice(path.indexOf("/") + 1) : file.name;
}

function chosen(input: HTMLInputElement): File[] {
  const files = [...(input.files ?? [])];
  // Emptied, so that choosing the same file again is a change again.
  input.value = "";
  return files;
}

export function beginBringing(): void {
  const files = byId<HTMLInputElement>("result-files");
  files.addEventListener("change", () => void bring(chosen(files).map((file) => ({ name: file.name, file, inFolder: false }))));

  const folder = byId<HTMLInputElement>("result-folder");
  folder.addEventListener("change", () => {
    troublesOver("folder");
    void bring(chosen(folder).map((file) => ({ name: insideFolder(file), file, inFolder: true })));
  });

  for (const [id, kind] of [["settings-file", "settings"], ["mapping-file", "mapping"], ["rule-book-file", "rule_book"], ["history-file", "history"]] as const) {
    const input = byId<HTMLInputElement>(id);
    input.addEventListener("change", () => {
      const texts = chosen(input);
      void (async () => {
        await goThroughDoor(false);
        for (const file of texts) await takeTextFile(kind, file);
      })();
    });
  }
  const bill = byId<HTMLInputElement>("bill-file");
  bill.addEventListener("change", () => {
    const [file] = chosen(bill);
    if (file === undefined) return;
    void (async () => {
      await goThroughDoor(false);
      await takeBill(file.name, new Uint8Array(await file.arrayBuffer()));
    })();
  });
  // Whoever closes the chooser without choosing has gone through no door.
  for (const input of document.querySelectorAll<HTMLInputElement>("#bring input")) {
    input.addEventListener("cancel", () => change({ doorWanted: null }));
  }

  const reports = byId<HTMLInputElement>("prove-report");
  reports.addEventListener("change", () => {
    const files = chosen(reports).map((file) => ({ name: file.name, file, inFolder: false }));
    void (async () => {
      const sorted = await reportsAmong(files);
      // Whatever is chosen here is said to be a report, and is told what it is instead.
      if (sorted.reports.length === 0) await takeReports(files, [], false);
      else await takeReports(sorted.reports, sorted.others.map(({ name, file, inFolder }) => ({ name, bytes: file, inFolder })), false);
    })();
  });
  const beside = byId<HTMLInputElement>("prove-beside");
  beside.addEventListener("change", () => void takeBeside(chosen(beside).map((file) => ({ name: file.name, bytes: file, inFolder: false }))));

  beginDropping();
}

export function chooseFiles(): void {
  byId<HTMLInputElement>("result-files").click();
}

export function chooseRuleBook(): void {
  byId<HTMLInputElement>("rule-book-file").click();
}

// ---- dropping ----

function beginDropping(): void {
  const cover = byId("drop-cover");
  let depth = 0;
  const carriesFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes("Files") ?? false;
  addEventListener("dragenter", (event) => {
    if (!carriesFiles(event)) return;
    depth += 1;
    cover.hidden = false;
  });
  addEventListener("dragleave", (event) => {
    if (!carriesFiles(event)) return;
    depth = Math.max(0, depth - 1);
    cover.hidden = depth === 0;
  });
  addEventListener("dragover", (event) => {
    if (carriesFiles(event)) event.preventDefault();
  });
  addEventListener("drop", (event) => {
    if (!carriesFiles(event) || event.dataTransfer === null) return;
    event.preventDefault();
    depth = 0;
    cover.hidden = true;
    void dropped(event.dataTransfer);
  });
}

async function dropped(carried: DataTransfer): Promise<void> {
  const files: Found[] = [];
  const walk = { stopped: false };
  const folders: FileSystemDirectoryEntry[] = [];
  // The items are gone once this event has been answered, so all are taken before anything is awaited.
  for (const item of [...carried.items]) {
    if (item.kind !== "file") continue;
    const entry = item.webkitGetAsEntry();
    const file = item.getAsFile();
    if (entry?.isDirectory === true) folders.push(entry as FileSystemDirectoryEntry);
    else if (file !== null) files.push({ name: file.name, file, inFolder: false });
  }
  for (const folder of folders) {
    try {
      await gather(folder, "", files, walk);
    } catch (error) {
      // Some browsers show a dropped folder and then refuse to read it for a page opened from a disk.
      tellTrouble({
        key: `folder|${folder.name}`,
        about: "folder",
        what: say("page-trouble-folder-what"),
        where: folder.name,
        why: unreadableWhy(error),
        todo: say("page-trouble-folder-todo"),
        code: "folder",
        raw: rawOf(error),
      });
    }
  }
  change({ work: null });
  if (walk.stopped) change({ event: say("page-event-cancelled") });
  else await bring(files);
}

/** Gathers what lies in a folder and the folders in it; of thousands of files a person sees how many were found so far. */
async function gather(folder: FileSystemDirectoryEntry, inside: string, found: Found[], walk: { stopped: boolean }): Promise<void> {
  const reader = folder.createReader();
  while (!walk.stopped) {
    const some = await new Promise<FileSystemEntry[]>((settle, fail) => reader.readEntries(settle, fail));
    // The reader hands out a hundred or so at a time, and nothing once all were handed out.
    if (some.length === 0) return;
    for (const entry of some) {
      if (walk.stopped) return;
      if (entry.isDirectory) await gather(entry as FileSystemDirectoryEntry, `${inside}${entry.name}/`, found, walk);
      else {
        const file = await new Promise<File>((settle, fail) => (entry as FileSystemFileEntry).file(settle, fail));
        found.push({ name: `${inside}${entry.name}`, file, inFolder: true });
      }
    }
    change({
      work: {
        text: say("page-work-folder", { n: found.length }),
        done: 0,
        total: null,
        cancel: () => {
          walk.stopped = true;
        },
      },
    });
  }
}
