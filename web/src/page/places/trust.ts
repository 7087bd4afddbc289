// Can we trust it? What was not given, what that does to the lots, and the control that gives it.

import type { LotView, OffersView, Summary } from "../../shared/door";
import { choice, controlId, entry, type ControlWishes } from "../acts-given";
import { EVIDENCE, fieldsIn, listedNames, lotTarget, materialTarget, partTarget, sourceTarget, type Choosable, type Evidence, type Typed } from "../act-kinds";
import { inForce, standing } from "../acts-in-force";
import { el, redraw, type Child } from "../elements";
import { lotName, namesOf } from "../outcomes";
import { term } from "../help/term";
import { TERM_OF_EVIDENCE } from "../help/terms";
import { showOrder } from "../looking";
import { goTo } from "../place";
import { rowForm, rowsGiven } from "../row-form";
import { CERTIFICATE, CONTROL_CHART, SAMPLING_PLAN } from "../rows";
import { ANY_READING, state } from "../state";
import { between, inRow, say } from "../words";
import { booksGiven } from "./books-given";
import { claimsGiven } from "./claims";
import { checksShown, suppliersShown } from "./checks";
import { cr6Given } from "./cr6";
import { holdsGiven } from "./holds";
import { laboratoryGiven } from "./laboratory";
import { lazyFold } from "./lazy-fold";
import { TRUST_OF, gatherReasons, isOpen, worstFirst, type GatheredReason } from "./reasons";
import { nothingRead } from "./nothing-read";
import { partsGiven } from "./parts-given";
import { lotSampling } from "./says-ahead";
import { siteTable } from "./site-table";

const MOST_LOTS = 100;
const FEW = 6;

/** Cards that nothing has to be given on: "nothing missing" would be said of a lot on hold. */
const SHOWS_ONLY: Evidence["id"][] = ["laboratory", "holds"];

const SECOND_COLUMN = EVIDENCE.findIndex((one) => one.id === "sigma");

/** How many kinds of evidence are missing. */
export function trustNeeds(summary: Summary): string {
  const n = new Set(gatherReasons(summary, "evidence").filter(isOpen).map((reason) => reason.code)).size;
  return n === 0 ? "" : say("page-needs-trust", { n });
}

export function drawTrust(host: HTMLElement): void {
  const { summary, offers } = state;
  if (summary === null || offers === null) {
    redraw(host, el("p", { class: "empty" }, say("page-nothing-yet")));
    return;
  }
  const nothing = nothingRead(summary);
  if (nothing !== null) {
    redraw(host, nothing, books(summary));
    return;
  }
  const missing = gatherReasons(summary, "evidence");
  const told = new Set<string>();
  // A supplier decides about no hold of its customer; what was decided elsewhere is still shown.
  const shown = EVIDENCE.filter((one) => one.id !== "holds" || state.door !== "ship" || summary.acts.some((act) => !act.undone && ["lift", "hold_ends"].includes(act.kind)));
  const cards = shown.map((evidence) => {
    const reasons = missing.filter((reason) => evidence.reasons.includes(reason.code));
    for (const reason of reasons) told.add(reason.code);
    return card(evidence, reasons, summary, offers);
  });
  const others = missing.filter((reason) => !told.has(reason.code));
  redraw(
    host,
    el("p", { class: "quiet" }, say("page-evidence-advisory-hint")),
    // Two columns of their own: in columns that even themselves out, a card changes sides while somebody fills it in.
    el("div", { class: "cards" }, el("div", {}, ...cards.slice(0, SECOND_COLUMN)), el("div", {}, ...cards.slice(SECOND_COLUMN))),
    others.length === 0 ? null : el("section", { class: "card card-open" }, el("h2", {}, say("page-trust-others")), el("ul", { class: "reasons" }, ...others.map(effect))),
    suppliersShown(),
    books(summary),
  );
}

function effect(reason: GatheredReason): HTMLElement {
  return el(
    "li",
    {},
    el("p", {}, ...[...new Set(reason.said.map((one) => one.text))].slice(0, 3).map((text) => el("span", { class: "sentence" }, text))),
    el("p", { class: "quiet" }, reason.remedy, between("gap"), say("page-trust-lots", { n: reason.lots.length, names: namesOf(reason.lots) })),
    showOf(reason),
  );
}

/** The readings beside a check that failed or is missing: there they are selected, and set aside once they were measured again. */
function showOf(reason: GatheredReason): Child {
  const trust = TRUST_OF[reason.code];
  if (trust === undefined) return null;
  const show = (): void => {
    void showOrder({ ...ANY_READING, trust });
    goTo("says", "readings-heading");
  };
  return el("button", { type: "button", id: `trust-show-${trust}`, class: "tool", on: { click: show } }, say("page-trust-show"));
}

function card(evidence: Evidence, reasons: GatheredReason[], summary: Summary, offers: OffersView): HTMLElement {
  const open = reasons.some(isOpen);
  const id = `evidence-${evidence.id}`;
  return el(
    "section",
    { class: open ? "card card-open" : "card", id, "aria-labelledby": `${id}-heading` },
    el(
      "header",
      {},
      el("h2", { id: `${id}-heading`, tabindex: -1 }, say(`page-evidence-${evidence.id}`)),
      SHOWS_ONLY.includes(evidence.id) && reasons.length === 0 ? null : el("span", { class: open ? "flag flag-strong" : "flag flag-quiet" }, say(open ? "page-evidence-missing" : reasons.length > 0 ? "page-evidence-advisory" : "page-evidence-nothing-missing")),
    ),
    el("p", { class: "quiet" }, say(`page-evidence-${evidence.id}-why`, { check: summary.totals.rows_check }), termOf(evidence)),
    reasons.length > 0 ? el("ul", { class: "reasons" }, ...reasons.map(effect)) : null,
    evidence.perLot.length > 0 ? perLot(evidence, summary) : null,
    evidence.id === "thickness" && summary.sources.some((source) => source.blocks.some((block) => block.columns.some((column) => column.role === "thickness"))) ? el("p", { class: "hint" }, say("page-thickness-column")) : null,
    evidence.perMaterial === null ? null : perMaterial(evidence.perMaterial, evidence, summary),
    evidence.perFile === null ? null : perFile(evidence.perFile, summary),
    evidence.acts.length === 0 ? null : el("div", { class: "controls" }, ...evidence.acts.map((act) => control(act, "now" in act ? { kind: act.kind, now: act.now } : { kind: act.kind }))),
    evidence.id === "trust" ? [checksShown(), certificates(), chartRules()] : null,
    evidence.id === "materials" ? partsGiven(summary, offers) : null,
    evidence.id === "sigma" ? siteTable(summary, offers) : null,
    evidence.id === "claims" ? claimsGiven(offers) : null,
    evidence.id === "cr6" ? cr6Given(offers) : null,
    evidence.id === "doubtful" && reasons.length > 0 ? measureAgain(reasons) : null,
    evidence.id === "books" ? booksGiven(offers) : null,
    evidence.id === "halogens" ? halogenBook(summary) : null,
    evidence.id === "laboratory" ? laboratoryGiven(summary) : null,
    evidence.id === "holds" ? holdsGiven(summary) : null,
    evidence.id === "files" && reasons.length > 0 ? el("div", {}, el("button", { type: "button", class: "second", on: { click: () => goTo("came-in") } }, say("page-next-files"))) : null,
  );
}

function termOf(evidence: Evidence): Child {
  const id = TERM_OF_EVIDENCE[evidence.id];
  return id === undefined ? null : [" ", term(id, `evidence-${evidence.id}`)];
}

function control(act: Choosable | Typed, wishes: ControlWishes): HTMLElement {
  return "values" in act ? choice(wishes, act.values) : entry(wishes, act.type);
}

/** Certified values of check standards: without them a check reading is set apart and proves nothing. */
function certificates(): HTMLElement {
  return lazyFold("certificates", "fold fold-inner", false, [say("page-certificates")], () => [
    el("p", { class: "hint" }, say("page-certificates-hint")),
    rowsGiven(CERTIFICATE, "", "certificates"),
    el("div", { id: "certificates-new" }, rowForm(CERTIFICATE, { target: "", about: say("page-certificates"), now: lastCertificate() })),
  ]);
}

/** A certificate states several elements: what is the same for all of them is typed once. */
function lastCertificate(): Record<string, string> {
  const last = (state.summary?.acts ?? []).filter((act) => act.kind === "certificate" && !act.undone).at(-1);
  const [sample = "", ...others] = listedNames(standing("check_samples", "")?.value ?? "");
  if (last === undefined) return others.length === 0 ? { sample } : {};
  const { element: _element, value: _value, u: _u, ...same } = fieldsIn(last.value);
  return same;
}

/** From what a chart takes its limits, and by which rules it signals. */
function chartRules(): HTMLElement {
  return lazyFold("chart-rules", "fold fold-inner", false, [say("page-chart-rules")], () => [rowsGiven(CONTROL_CHART, "", "chart-rules"), rowForm(CONTROL_CHART, { target: "", about: say("page-chart-rules") })]);
}

/** The plan of one lot, or the one for all that have none of their own. */
function plan(target: string, about: string, lot: LotView | null = null): Child {
  return [
    rowsGiven(SAMPLING_PLAN, target, controlId("sampling_plan", target, "new")),
    lazyFold(controlId("sampling_plan", target, "new"), "fold fold-inner", false, [say("page-plan-new")], () => [rowForm(SAMPLING_PLAN, { target, about })]),
    lot === null || inForce("sampling_plan", [target, ""]) === null
      ? null
      : lazyFold(controlId("sampling_plan", target, "shown"), "fold fold-inner", false, [say("page-plan-shown"), el("span", { class: "heard" }, ` ${about}`)], () => [lotSampling(lot.index)]),
  ];
}

/** No answer settles what physics makes doubtful: other readings do. */
function measureAgain(reasons: GatheredReason[]): HTMLElement {
  const lots = [...new Set(reasons.flatMap((reason) => reason.lots))].slice(0, FEW);
  const show = (lot: LotView): void => {
    void showOrder({ ...ANY_READING, lot: lot.index });
    goTo("says", "readings-heading");
  };
  return el(
    "div",
    { class: "form-send" },
    el("button", { type: "button", id: "doubtful-bring", class: "second", on: { click: () => goTo("came-in", "result-files") } }, say("page-doubtful-bring")),
    ...lots.map((lot) => el("button", { type: "button", class: "tool", on: { click: () => show(lot) } }, say("page-next-show", { lot: lotName(lot) }))),
  );
}

function halogenBook(summary: Summary): HTMLElement {
  const names = Object.fromEntries(summary.rule_books.filter((book) => book.has_halogens).map((book) => [book.id, book.title]));
  return choice({ kind: "halogen_book", names }, Object.keys(names));
}

/** One for the whole inspection, where several lots, files or materials may share it. */
function forAll(acts: (Choosable | Typed)[]): HTMLElement {
  return el("div", { class: "per-lot" }, el("h3", {}, say("page-evidence-for-all")), el("div", { class: "controls" }, ...acts.map((act) => control(act, { kind: act.kind, about: say("page-evidence-for-all"), bare: true }))));
}

/** Each lot has its own size: it is given for the lot, so that it stands above whatever a settings file says of it. */
function perLot(evidence: Evidence, summary: Summary): Child {
  // Lots that nobody named share one target, so they share one control.
  const targets = new Set<string>();
  const all = worstFirst(summary.lots).filter((lot) => !targets.has(lotTarget(lot)) && targets.add(lotTarget(lot)));
  const lots = all.slice(0, MOST_LOTS);
  const missing = (lot: LotView): boolean => evidence.perLot.some((act) => inForce(act.kind, [lotTarget(lot), ""]) === null);
  // What stands for several files is not called by the first of them.
  const shared = (lot: LotView): boolean => lot.lot === null && summary.lots.filter((one) => lotTarget(one) === lotTarget(lot)).length > 1;
  const called = (lot: LotView): string => (shared(lot) ? say(lot.supplier === null ? "page-target-lot-unnamed" : "page-lot-unnamed") : lotName(lot));
  const block = (lot: LotView): HTMLElement =>
    el(
      "div",
      { class: "per-lot", "data-missing": missing(lot) ? "yes" : undefined },
      el("h3", {}, called(lot), lot.supplier === null ? null : el("span", { class: "quiet" }, ` ${lot.supplier}`)),
      el(
        "div",
        { class: "controls" },
        ...evidence.perLot.map((act) => entry({ kind: act.kind, target: lotTarget(lot), wider: [""], about: called(lot), bare: all.length > 1 }, act.type)),
      ),
      evidence.id === "sampling" ? plan(lotTarget(lot), called(lot), lot) : null,
    );
  const [only] = lots;
  if (only !== undefined && all.length === 1) return block(only);
  return [
    el(
      "details",
      { id: `evidence-${evidence.id}-lots`, class: "fold fold-inner", open: all.length <= FEW },
      el("summary", {}, say("page-evidence-per-lot", { n: all.length })),
      ...lots.map(block),
      all.length > lots.length ? el("p", { class: "quiet" }, say("page-evidence-lots-left", { n: all.length - lots.length })) : null,
    ),
    forAll(evidence.perLot),
    evidence.id === "sampling" ? plan("", say("page-evidence-for-all")) : null,
  ];
}

interface OneMaterial {
  part: string | null;
  material: string | null;
  classes: string[];
  missing: boolean;
}

/** Those that lack it, and those for which somebody gave it, whether on their own or with their part. */
function materialsFor(kind: string, evidence: Evidence, summary: Summary): OneMaterial[] {
  const found = new Map<string, OneMaterial>();
  for (const material of summary.materials) {
    const target = materialTarget(material);
    const missing = material.reasons.some((reason) => evidence.reasons.includes(reason.code));
    const given = inForce(kind, [target, partTarget(material.part ?? "")]) !== null;
    if (!missing && !given) continue;
    const one = found.get(target) ?? { part: material.part, material: material.material, classes: [], missing: false };
    if (!one.classes.includes(material.class_text)) one.classes.push(material.class_text);
    one.missing ||= missing;
    found.set(target, one);
  }
  return [...found.values()].sort((a, b) => Number(b.missing) - Number(a.missing));
}

function perMaterial(act: Choosable | Typed, evidence: Evidence, summary: Summary): Child {
  const all = materialsFor(act.kind, evidence, summary);
  const block = (one: OneMaterial): HTMLElement => {
    const name = one.material ?? say("page-material-unnamed");
    const target = materialTarget(one);
    return el(
      "div",
      { class: "per-lot", "data-missing": one.missing ? "yes" : undefined },
      el("h3", {}, name, el("span", { class: "quiet" }, ` ${one.part ?? say("page-part-unnamed")}`)),
      evidence.id === "class" ? el("p", { class: "quiet" }, say("page-class-now", { classes: inRow(one.classes) })) : null,
      control(act, { kind: act.kind, target, wider: [partTarget(one.part ?? ""), ...(evidence.id === "class" ? [] : [""])], about: inRow([name, one.part ?? say("page-part-unnamed")]), bare: all.length > 1 || evidence.id === "class" }),
    );
  };
  const shown = all.slice(0, MOST_LOTS);
  const [only] = shown;
  if (only !== undefined && all.length === 1) return block(only);
  return [
    shown.length === 0
      ? null
      : el(
          "details",
          { id: `evidence-${evidence.id}-materials`, class: "fold fold-inner", open: shown.length <= FEW },
          el("summary", {}, say("page-evidence-per-material", { n: all.length })),
          ...shown.map(block),
          all.length > shown.length ? el("p", { class: "quiet" }, say("page-evidence-materials-left", { n: all.length - shown.length })) : null,
        ),
    forAll([act]),
  ];
}

function perFile(act: Choosable, summary: Summary): Child {
  const [only] = summary.sources;
  if (only !== undefined && summary.sources.length === 1) return choice({ kind: act.kind, target: sourceTarget(only.name), wider: [""], where: "trust" }, act.values);
  const own = summary.sources.filter((source) => standing(act.kind, sourceTarget(source.name)) !== null);
  return [
    choice({ kind: act.kind, where: "trust" }, act.values),
    own.length === 0
      ? null
      : el("div", { class: "per-lot" }, ...own.map((source) => choice({ kind: act.kind, target: sourceTarget(source.name), about: source.name, bare: true, where: "trust" }, act.values))),
  ];
}

function books(summary: Summary): Child {
  return el(
    "section",
    { class: "books", "aria-labelledby": "books-heading" },
    el("h2", { id: "books-heading" }, say("page-books-heading", { n: summary.rule_books.length })),
    ...summary.rule_books.map((book) =>
      el(
        "details",
        { id: controlId("book", book.id), class: "fold" },
        el("summary", {}, el("span", { class: "source-name" }, book.title), el("span", { class: "quiet" }, book.edition)),
        el(
          "dl",
          { class: "facts" },
          el("dt", {}, say("page-book-source")), el("dd", {}, book.source),
          el("dt", {}, say("page-book-confidence")), el("dd", {}, book.confidence),
          el("dt", {}, say("page-book-id")), el("dd", {}, el("code", {}, book.id)),
          el("dt", {}, say("page-source-digest")), el("dd", { class: "digest" }, el("code", {}, book.sha256)),
        ),
      ),
    ),
  );
}
