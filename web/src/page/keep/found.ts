// The first screen, when recovery copies lie in this browser: what is known of them without their code, and what can be done.

import { byId, el, focusIn, redraw, type Child } from "../elements";
import { inTurn } from "../instance";
import { inspectionsPutBy } from "../inspection";
import { goTo } from "../place";
import { change, state, watch } from "../state";
import { rawOf } from "../help/plain";
import { tellTrouble } from "../troubles";
import { say } from "../words";
import { CODE_SIGNS, typedCode } from "./code";
import { copyAtHand, copyId } from "./copy";
import { putBack, readCopy, removeCopies, type CopyHead, type StoredCopy } from "./copy-store";
import { bringBackCopies, lookForCopies, whenSaved } from "./opening";

/** More than this are too many to tell apart; the oldest are offered for removal (our choice). */
const MANY = 3;

/** What was removed on this page and can still be put back. */
let removed: StoredCopy[] = [];
let refusal = "";

export function beginFound(): void {
  watch(["leftovers", "language"], draw);
  void look().then(() => {
    // Whoever comes back after a crash stands where there is nothing yet; what can be brought back is told on the first screen.
    if (state.leftovers.length > 0 && state.files.length === 0 && state.place !== "prove") goTo("start");
  });
}

function ownIds(): string[] {
  return [copyAtHand(), ...inspectionsPutBy().map((one) => one.copy)].map((one) => copyId(one)).filter((id) => id !== null);
}

export function look(): Promise<void> {
  return lookForCopies(ownIds);
}

function draw(): void {
  const host = byId("found");
  const heads = state.leftovers;
  host.hidden = heads.length === 0 && removed.length === 0;
  redraw(host, heads.length === 0 ? null : copies(heads), removed.length === 0 ? null : gone());
}

function copies(heads: CopyHead[]): Child {
  const input = el("input", { id: "found-code", type: "text", autocomplete: "off", autocapitalize: "characters", spellcheck: "false", "aria-describedby": "found-hint found-refusal", "aria-invalid": refusal === "" ? undefined : "true" });
  input.addEventListener("input", () => {
    input.dataset["dirty"] = "yes";
  });
  return el(
    "section",
    { class: "found", "aria-labelledby": "found-heading" },
    el("h2", { id: "found-heading", tabindex: -1 }, say("page-keep-found", { n: heads.length })),
    el("p", {}, say("page-keep-found-what", { n: heads.length })),
    el(
      "form",
      {
        class: "found-form",
        id: "found-form",
        on: {
          submit: (event) => {
            event.preventDefault();
            void bringBackWith(input.value);
          },
        },
      },
      el("label", { for: "found-code" }, say("page-keep-code-name")),
      el("div", { class: "entry" }, input, el("button", { type: "submit", id: "found-bring-back", class: "primary" }, say("page-keep-bring-back"))),
      el("p", { id: "found-refusal", class: "refusal", role: "alert", hidden: refusal === "" }, refusal),
      el("p", { id: "found-hint", class: "hint" }, say("page-keep-code-typed-hint")),
    ),
    el(
      "ul",
      { class: "keep-list", id: "found-list" },
      ...heads.map((head) => {
        const told = say("page-keep-found-one", { when: whenSaved(head), records: head.records, files: head.files });
        return el("li", {}, el("span", {}, told), el("button", { type: "button", id: `found-remove-${head.id}`, class: "tool", on: { click: () => void remove([head]) } }, say("page-keep-remove"), el("span", { class: "heard" }, ` ${told}`)));
      }),
    ),
    heads.length <= MANY ? null : el("p", { class: "keep-others" }, el("span", {}, say("page-keep-found-many")), el("button", { type: "button", id: "found-remove-older", class: "tool", on: { click: () => void remove(heads.slice(1)) } }, say("page-keep-remove-older", { n: heads.length - 1 }))),
  );
}

function gone(): Child {
  return el("p", { class: "keep-others", id: "found-gone" }, el("span", {}, say("page-keep-removed", { n: removed.length })), el("button", { type: "button", id: "found-put-back", class: "tool", on: { click: () => void putBackRemoved() } }, say("page-keep-put-back")));
}

function refuse(why: string): void {
  refusal = why;
  draw();
  focusIn("found-code");
}

async function bringBackWith(typed: string): Promise<void> {
  const read = typedCode(typed);
  if ("odd" in read) return refuse(say("page-keep-code-odd", { sign: read.odd }));
  if ("signs" in read) return refuse(say("page-keep-code-length", { n: read.signs, of: CODE_SIGNS }));
  refusal = "";
  change({ work: { text: say("page-keep-work-opening"), done: 0, total: null, cancel: () => undefined } });
  try {
    const n = await bringBackCopies(read.code);
    if (n === 0) return refuse(say("page-keep-code-wrong"));
  } catch (error) {
    tellTrouble({ key: "recover", about: "recover", what: say("page-keep-not-back-what"), where: say("page-keep-found-where"), why: say("page-keep-browser-why"), raw: rawOf(error), todo: say("page-keep-not-back-todo") });
  } finally {
    change({ work: null });
  }
  await look();
}

async function remove(heads: CopyHead[]): Promise<void> {
  await inTurn(async () => {
    try {
      const taken = (await Promise.all(heads.map((head) => readCopy(head.id)))).filter((one) => one !== null);
      await removeCopies(heads.map((head) => head.id));
      removed = [...removed, ...taken];
      refusal = "";
      await look();
      change({ event: say("page-keep-removed", { n: heads.length }) });
      focusIn("found-put-back");
    } catch (error) {
      tellTrouble({ key: "remove", about: "remove", what: say("page-keep-not-removed-what"), where: say("page-keep-found-where"), why: say("page-keep-browser-why"), raw: rawOf(error), todo: say("page-keep-not-removed-todo") });
    }
  });
}

export function removeAllFound(): Promise<void> {
  return remove(state.leftovers);
}

async function putBackRemoved(): Promise<void> {
  await inTurn(async () => {
    await putBack(removed);
    removed = [];
    await look();
    change({ event: say("page-keep-event-copies-back") });
    focusIn("found-code");
  });
}
