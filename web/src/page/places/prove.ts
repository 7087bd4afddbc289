// Check a report: whether it is what its data give, what that shows and what it does not, and what to do next. It works
// without an inspection, and leaves one that is open as it stands.

import type { ProofFile, ProofPlace, ProofView } from "../../shared/door";
import { inspectBeside } from "../bring";
import { digestWaits, focusDigest, onDigestEnter, typedDigest } from "../digest-field";
import { byId, el, redraw, type Child } from "../elements";
import { dispositionMark } from "../marks";
import { proveAnother, standing, takeDigest } from "../proving";
import { state, type GivenFile, type ProvedReport } from "../state";
import { between, byteCount, say } from "../words";
import { lazyFold } from "./lazy-fold";

/** Digits between two spaces, so that an eye finds its way through sixty-four. */
const GROUP = 8;
/** Files named one by one before the rest is folded away. */
const MOST_FILES = 20;

export function beginProve(): void {
  const take = (): void => {
    const digest = typedDigest();
    if (digest === null) return focusDigest();
    if (state.proving.reports.length === 0) return digestWaits();
    void takeDigest(digest);
  };
  byId<HTMLFormElement>("prove-form").addEventListener("submit", (event) => {
    event.preventDefault();
    take();
  });
  onDigestEnter(take);
}

/** Empties the place for the next report. */
function another(): void {
  proveAnother();
  byId("prove-report").focus();
}

export function drawProve(host: HTMLElement): void {
  const { reports, beside, cameAsResults } = state.proving;
  if (reports.length === 0) {
    redraw(host, beside.length === 0 ? null : [el("p", { class: "quiet" }, say("page-prove-waiting", { n: beside.length })), held(beside)]);
    return;
  }
  redraw(
    host,
    ...reports.map(card),
    el(
      "div",
      { class: "prove-after" },
      el("button", { type: "button", id: "prove-another", class: "second", on: { click: another } }, say("page-prove-another")),
      el("button", { type: "button", id: "prove-print", class: "tool", on: { click: () => print() } }, say("page-prove-print")),
      cameAsResults && beside.length > 0
        ? el("button", { type: "button", id: "prove-inspect", class: "tool", on: { click: () => void inspectBeside() } }, say("page-prove-inspect", { n: beside.length }))
        : null,
    ),
    el("p", { class: "quiet" }, say("page-prove-by", { version: state.version }), between("gap"), say("page-prove-untouched")),
  );
}

function held(beside: GivenFile[]): Child {
  return el("ul", { class: "prove-files" }, ...beside.slice(0, MOST_FILES).map((file) => el("li", {}, file.name)));
}

function card(report: ProvedReport, at: number): HTMLElement {
  const { proof } = report;
  const id = `prove-result-${at}`;
  const heading = el("h2", { id, tabindex: -1 }, report.name, el("span", { class: "quiet" }, ` ${byteCount(report.bytes.size)}`));
  if (proof === null) return el("article", { class: "card", "aria-labelledby": id }, heading, el("p", { class: "quiet" }, say("page-prove-not-yet")));
  const { wall, word } = standing(proof);
  return el(
    "article",
    { class: `card proved proved-${wall}`, "aria-labelledby": id, "data-verdict": proof.verdict, "data-word": word },
    heading,
    el("p", { class: "proved-verdict" }, el("span", { class: `disposition disposition-${wall}` }, dispositionMark(wall), el("strong", {}, say(`page-prove-word-${word}`))), " ", el("span", {}, proof.text)),
    part("page-prove-differs", proof.places.length === 0 ? null : [el("ol", { class: "proved-places" }, ...proof.places.map(place)), proof.more === "" ? null : el("p", {}, proof.more)]),
    part("page-prove-shows", proof.shows.length === 0 && state.proving.digest === "" ? null : el("ul", { class: "proved-list" }, ...proof.shows.map((line) => el("li", {}, line)), digestNotCompared(proof))),
    sideBySide(proof),
    part("page-prove-next", el("ul", { class: "proved-list proved-next" }, ...next(proof).map((line) => el("li", {}, line)))),
    part("page-prove-files", files(proof, at)),
  );
}

function part(title: string, content: Child): Child {
  return content === null ? null : el("section", { "data-part": title }, el("h3", {}, say(title)), content);
}

function place(one: ProofPlace): HTMLElement {
  const where = one.kind === "finding" ? say("page-prove-finding", { line: one.place }) : one.place;
  const sides = ["text", "missing", "extra", "finding"].includes(one.kind);
  if (!sides) return el("li", { "data-kind": one.kind }, one.text);
  const side = (text: string): Child => (text === "" ? el("em", {}, say("page-prove-nothing-there")) : el("q", {}, text));
  return el(
    "li",
    { "data-kind": one.kind },
    el("strong", {}, where),
    el("dl", { class: "facts" }, el("dt", {}, say("page-prove-says")), el("dd", {}, side(one.says)), el("dt", {}, say("page-prove-gives")), el("dd", {}, side(one.gives))),
  );
}

function digestNotCompared(proof: ProofView): Child {
  return state.proving.digest !== "" && proof.given_digest === null ? el("li", {}, say("page-prove-digest-not-compared")) : null;
}

/** Two digests one below the other; where a person may have mistyped a digit, the eye finds it. */
function sideBySide(proof: ProofView): Child {
  const { digest } = state.proving;
  if (proof.given_digest !== false || proof.digest === null) return null;
  const groups = (text: string): string[] => text.match(new RegExp(`.{1,${GROUP}}`, "g")) ?? [];
  const [given, computed] = [groups(digest), groups(proof.digest)];
  const line = (mine: string[], other: string[]): HTMLElement => el("dd", { class: "digest" }, ...mine.flatMap((group, at) => [el(group === other[at] ? "span" : "mark", {}, group), " "]));
  return el(
    "div",
    { class: "proved-digests" },
    el("dl", { class: "facts" }, el("dt", {}, say("page-prove-digest-typed")), line(given, computed), el("dt", {}, say("page-prove-digest-computed")), line(computed, given)),
    el("p", { class: "hint" }, say("page-prove-digest-groups", { n: given.filter((group, at) => group !== computed[at]).length, of: computed.length })),
  );
}

function next(proof: ProofView): string[] {
  if (!proof.could_be_proved) return [say(`page-prove-next-${proof.verdict.replaceAll("_", "-")}`)];
  const steps: string[] = [];
  const inState = (wanted: ProofFile["state"]): number => proof.files.filter((file) => file.state === wanted).length;
  if (proof.verdict === "differs") steps.push(say("page-prove-next-differs"));
  if (inState("other_bytes") > 0) steps.push(say("page-prove-next-other-bytes"));
  if (proof.given_digest === false) steps.push(say("page-prove-next-digest-other"));
  if (proof.only_findings !== null) steps.push(say(`page-prove-next-${proof.only_findings.replaceAll("_", "-")}`, { program: proof.program }));
  if (proof.nothing_differs) {
    if (inState("not_given") > 0) steps.push(say("page-prove-next-files", { n: inState("not_given") }));
    if (proof.given_digest === null) steps.push(say("page-prove-next-digest"));
    if (steps.length === 0) steps.push(say("page-prove-next-nothing"));
  }
  return steps;
}

const FILE_MARKS: Record<ProofFile["state"], string> = { matched: "\u2713", other_bytes: "\u2717", not_given: "\u25cb", nothing_read: "\u2013", stranger: "?" };

function files(proof: ProofView, at: number): Child {
  if (proof.files.length === 0) return null;
  const line = (file: ProofFile): HTMLElement => el("li", { "data-state": file.state }, el("span", { class: "prove-file-mark", "aria-hidden": "true" }, FILE_MARKS[file.state]), el("span", {}, file.text));
  const named = proof.files.filter((file) => file.state !== "stranger");
  const strangers = proof.files.filter((file) => file.state === "stranger");
  const shown = named.slice(0, MOST_FILES);
  const rest = named.slice(MOST_FILES);
  return [
    el("ul", { class: "prove-files" }, ...shown.map(line)),
    rest.length === 0 ? null : lazyFold(`prove-more-files-${at}`, "fold fold-inner", false, [say("page-prove-files-more", { n: rest.length })], () => [el("ul", { class: "prove-files" }, ...rest.map(line))]),
    strangers.length === 0
      ? null
      : lazyFold(`prove-strangers-${at}`, "fold fold-inner", strangers.length <= 3, [say("page-prove-strangers", { n: strangers.length })], () => [el("ul", { class: "prove-files" }, ...strangers.map(line))]),
  ];
}
