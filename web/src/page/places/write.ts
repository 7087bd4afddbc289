// Write it down: who reviewed what and where, the acts so far, and the files to take away.

import type { Summary } from "../../shared/door";
import { CATEGORY } from "../act-kinds";
import { controlId, entry, listed } from "../acts-given";
import { actText, signature, standing } from "../acts-in-force";
import { el, redraw, type Child } from "../elements";
import { doAct, undo } from "../inspection";
import { state } from "../state";
import { say } from "../words";
import { customerStated, statedForReport } from "./for-report";
import { nothingRead } from "./nothing-read";
import { takeAway } from "./take";
import { today } from "./who";

const FIELDS = ["title", "inspector", "place", "reviewed_at"] as const;
/** What the self-check sheet leaves a line for besides. */
const SHEET_FIELDS = ["contact", "customer"] as const;

/** What the report's head still lacks, by the acts that give it. */
export function emptyFields(): string[] {
  return [...FIELDS, ...(state.door === "ship" ? SHEET_FIELDS : [])].filter((kind) => standing(kind, "") === null);
}

export function writeNeeds(_summary: Summary): string {
  const n = emptyFields().length;
  return n === 0 ? "" : say("page-needs-write", { n });
}

export function drawWrite(host: HTMLElement): void {
  const { summary } = state;
  if (summary === null) {
    redraw(host, el("p", { class: "empty" }, say("page-nothing-yet")));
    return;
  }
  const ships = state.door === "ship";
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
        ships ? entry({ kind: "contact" }, "text") : null,
      ),
      ships ? customerStated() : null,
      statedForReport(summary),
    ),
    // Who ships asks no supplier for anything.
    ships ? null : papersStated(),
    takeAway(summary),
    el(
      "section",
      { class: "card", "aria-labelledby": "write-acts" },
      el("h2", { id: "write-acts" }, say("page-write-acts", { n: summary.acts.length })),
      el("p", { class: "quiet" }, say("page-write-acts-why")),
      acts(summary),
    ),
  );
}

function papersStated(): HTMLElement {
  return el(
    "section",
    { class: "card", "aria-labelledby": "write-papers" },
    el("h2", { id: "write-papers" }, say("page-write-papers")),
    el("p", { class: "quiet" }, say("page-write-papers-why")),
    el("div", { class: "controls" }, entry({ kind: "contact" }, "text"), entry({ kind: "reply_by" }, "date"), entry({ kind: "requested_action" }, "text")),
  );
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
