// Exemptions claimed for a material: what may be claimed, what was, and what is still missing until it covers.

import type { ActView, ClaimView, ExemptionView, MaterialOffer, OffersView, SubstanceOffer } from "../../shared/door";
import { choice, controlId, entry, listed } from "../acts-given";
import { CATEGORY, MOUTHING, RENEWALS, fieldsIn, joinedFields, materialTarget, partTarget } from "../act-kinds";
import { actText, givenBy, valueName } from "../acts-in-force";
import { bookLanguage, ofBook } from "../book-words";
import { el, focusIn, type Child } from "../elements";
import { actForm, field, initialsInput, noInitials, textInput } from "../forms";
import { stillHere } from "../hand";
import { undoAll } from "../inspection";
import { change, state } from "../state";
import { between, inRow, say } from "../words";
import { closeFold, lazyFold, openFold } from "./lazy-fold";

const FEW = 4;

export function claimsGiven(offers: OffersView): Child {
  const all = offers.materials.filter((one) => one.substances.length > 0 || one.claims.length > 0);
  if (all.length === 0) return el("p", { class: "quiet" }, say("page-claims-none"));
  return [
    el("p", { class: "hint" }, offers.guard),
    el(
      "div",
      { class: "controls" },
      listed({ kind: "category", where: "trust", none: say("page-category-none") }, CATEGORY.values),
      entry({ kind: "placing_date", where: "trust" }, "date"),
    ),
    el(
      "details",
      { id: "claims-materials", class: "fold fold-inner", open: all.length <= FEW || all.some((one) => one.claims.length > 0) },
      el("summary", {}, say("page-claims-materials", { n: all.length })),
      ...all.map((one) => materialBlock(one, offers)),
      offers.materials_left_out > 0 ? el("p", { class: "quiet" }, say("page-evidence-materials-left", { n: offers.materials_left_out })) : null,
    ),
  ];
}

export function materialName(of: MaterialOffer): string {
  return inRow([of.material ?? say("page-material-unnamed"), of.part ?? say("page-part-unnamed")]);
}

export function materialHead(of: MaterialOffer): HTMLElement {
  return el("h3", {}, of.material ?? say("page-material-unnamed"), el("span", { class: "quiet" }, ` ${of.part ?? say("page-part-unnamed")} · ${inRow(of.classes)}`));
}

function materialBlock(of: MaterialOffer, offers: OffersView): HTMLElement {
  const open = of.claims.some((claim) => claim.state === "open");
  const covered = (substance: string): boolean => of.claims.some((claim) => claim.substance === substance && claim.state === "covered");
  return el(
    "div",
    { id: controlId("claims", materialTarget(of)), class: "per-lot", "data-missing": open ? "yes" : undefined },
    materialHead(of),
    ...of.claims.map((claim) => claimed(of, claim, offers)),
    ...of.substances.filter((one) => !covered(one.substance)).map((one) => claimable(of, one, offers)),
  );
}

// ---- what was claimed ----

function claimId(of: MaterialOffer, claim: ClaimView): string {
  return controlId("claimed", materialTarget(of), `${claim.substance} ${claim.entry}`);
}

/** The acts that make up a claim, oldest first: one that was changed was made more than once. */
function actsOf(of: MaterialOffer, claim: ClaimView): ActView[] {
  const targets = [materialTarget(of), partTarget(of.part ?? "")];
  return (state.summary?.acts ?? []).filter((act) => {
    if (act.kind !== "claim" || act.undone || !targets.includes(act.target)) return false;
    const fields = fieldsIn(act.value);
    return fields["entry"] === claim.entry && fields["substance"] === claim.substance;
  });
}

const LOOKS: Record<ClaimView["state"], string> = {
  covered: "flag flag-good",
  open: "flag",
  exceeded: "flag flag-strong",
  expired: "flag flag-strong",
  not_covered: "flag flag-strong",
  not_needed: "flag flag-quiet",
};

function claimed(of: MaterialOffer, claim: ClaimView, offers: OffersView): HTMLElement {
  const id = claimId(of, claim);
  const row = claim.row === null ? null : (offers.exemptions[claim.row] ?? null);
  const acts = actsOf(of, claim);
  const act = acts.at(-1) ?? null;
  const asks = (...codes: string[]): boolean => claim.why.some((one) => codes.includes(one.code));
  const renewalSaid = (state.summary?.acts ?? []).filter((one) => one.kind === "renewal" && !one.undone && fieldsIn(one.value)["entry"] === claim.entry);
  const incomplete = asks("evidence_missing", "second_missing", "group_not_known");
  return el(
    "div",
    { id, class: `claimed claimed-${claim.state}`, tabindex: "-1" },
    el("h4", {}, el("span", {}, say("page-claim-of", { entry: claim.entry, substance: claim.substance })), el("span", { class: LOOKS[claim.state] }, claim.state_text)),
    row === null ? null : el("p", {}, ofBook(row.scope), between("colon"), row.limit, between("stop"), lastDay(row)),
    claim.number === "" ? null : el("p", { class: "quiet" }, say("page-claim-number", { number: claim.number })),
    el(
      "p",
      { class: "quiet" },
      say("page-claim-by", { evidence: claim.evidence === "" ? say("page-claim-nothing") : claim.evidence, by: claim.by === "" ? say("page-claim-nobody") : claim.by, second: claim.second === "" ? say("page-claim-nobody") : claim.second }),
    ),
    claim.why.length === 0
      ? null
      : el("div", { class: "claim-why" }, el("p", {}, el("strong", {}, say(claim.state === "open" ? "page-claim-missing" : "page-claim-refused"))), el("ul", {}, ...claim.why.map((one) => el("li", {}, one.text)))),
    row?.starred === true
      ? choice({ kind: "mouthing", target: of.part === null ? "" : partTarget(of.part), wider: of.part === null ? [] : [""], about: of.part ?? "", where: id }, MOUTHING.values)
      : null,
    renewalSaid.length > 0 || asks("renewal_unknown", "renewal_not_sourced", "day_of_expiry") || claim.state === "expired" ? renewalForm(id, claim.entry, renewalSaid) : null,
    row === null ? null : lazyFold(`${id}-book`, "fold fold-inner", false, [say("page-claim-book")], () => rowsOf(claim.entry, claim.substance, offers).map((one) => exemptionFacts(one, of, offers))),
    lazyFold(`${id}-change`, "fold fold-inner", incomplete, [say("page-claim-change")], () => [claimForm(`${id}-form`, of, claim.substance, claim, offers, act?.target)]),
    act === null
      ? null
      : el(
          "p",
          { class: "given" },
          el("span", {}, givenBy(act)),
          el(
            "button",
            { type: "button", id: `${id}-back`, class: "tool", on: { click: () => void takeBack(acts, controlId("claims", materialTarget(of))) } },
            say("page-claim-take-back"),
            el("span", { class: "heard" }, ` ${actText(act)}`),
          ),
        ),
  );
}

/** Takes back every act that made up one thing, and leaves the focus where it stood. */
async function takeBack(acts: ActView[], focusAfter: string): Promise<void> {
  const newest = acts.at(-1);
  if (newest === undefined) return;
  const here = stillHere();
  if ((await undoAll(acts.map((act) => act.number))).length === 0) return;
  change({ event: say("page-event-undone", { act: actText(newest) }) });
  if (here()) focusIn(focusAfter);
}

function renewalForm(within: string, of: string, said: ActView[]): HTMLElement {
  const id = `${within}-renewal`;
  const newest = said.at(-1) ?? null;
  const now = fieldsIn(newest?.value ?? "");
  const where = el(
    "select",
    { id: `${id}-state` },
    el("option", { value: "" }, say("page-renewal-none")),
    ...RENEWALS.map((value) => el("option", { value, selected: now["state"] === value }, valueName("renewal", value))),
  );
  const source = textInput(`${id}-source`, now["source"] ?? "");
  const day = textInput(`${id}-day`, now["date"] ?? "", "date");
  return el(
    "fieldset",
    { class: "sub-form" },
    el("legend", {}, say("page-renewal-heading", { entry: of })),
    actForm(
      {
        id,
        button: say("page-act-give"),
        heard: say("page-renewal-heading", { entry: of }),
        read: () =>
          where.value === ""
            ? { why: say("page-renewal-pick"), field: where }
            : { kind: "renewal", value: joinedFields({ entry: of, state: where.value, source: source.value.trim(), date: day.value }) },
      },
      el("div", { class: "form-fields" }, field(say("page-renewal-state"), where), field(say("page-renewal-source"), source, say("page-renewal-source-hint")), field(say("page-renewal-day"), day)),
    ),
    newest === null
      ? null
      : el(
          "p",
          { class: "given" },
          el("span", {}, newest.text, " ", givenBy(newest)),
          el("button", { type: "button", id: `${id}-back`, class: "tool", on: { click: () => void takeBack(said, `${id}-state`) } }, say("page-act-take-back"), el("span", { class: "heard" }, ` ${newest.text}`)),
        ),
  );
}

// ---- what may be claimed ----

function claimable(of: MaterialOffer, substance: SubstanceOffer, offers: OffersView): HTMLElement {
  const id = controlId("claim", materialTarget(of), substance.substance);
  const some = new Set(substance.entries.filter((one) => !one.exceeded).map((one) => offers.exemptions[one.row]?.entry)).size;
  return lazyFold(
    `${id}-fold`,
    "fold fold-inner",
    false,
    [el("span", {}, say("page-claim-new", { substance: substance.substance, n: of.claims.filter((one) => one.substance === substance.substance).length }), " ", el("span", { class: "quiet" }, substance.text, between("stop"), say("page-claim-some", { n: some })))],
    () => [some === 0 ? el("p", { class: "hint" }, say("page-claim-none-fits")) : null, claimForm(`${id}-form`, of, substance.substance, null, offers)],
  );
}

// Which entry was picked in a form that was not sent yet.
const picked = new Map<string, string>();

/** Rows by entry, in the order of the book; those in `first` before the rest. */
function entriesFor(of: MaterialOffer, substance: string, offers: OffersView): { fitting: string[]; others: string[] } {
  const offered = of.substances.find((one) => one.substance === substance)?.entries ?? [];
  const taken = of.claims.filter((one) => one.substance === substance).map((one) => one.entry);
  const fitting = new Set(offered.filter((one) => !one.exceeded).map((one) => offers.exemptions[one.row]?.entry ?? ""));
  const rest = new Set(offers.exemptions.filter((row) => row.substance === substance && !fitting.has(row.entry)).map((row) => row.entry));
  const free = (entries: Set<string>): string[] => [...entries].filter((one) => one !== "" && !taken.includes(one));
  return { fitting: free(fitting), others: free(rest) };
}

function rowsOf(name: string, substance: string, offers: OffersView): ExemptionView[] {
  return offers.exemptions.filter((row) => row.entry === name && row.substance === substance);
}

function claimForm(id: string, of: MaterialOffer, substance: string, claim: ClaimView | null, offers: OffersView, target?: string): HTMLElement {
  const { fitting, others } = claim === null ? entriesFor(of, substance, offers) : { fitting: [], others: [] };
  const label = (name: string): string => `${name}${between("colon")}${rowsOf(name, substance, offers)[0]?.scope ?? ""}`;
  const option = (name: string): HTMLOptionElement => el("option", { value: name, lang: bookLanguage(), selected: picked.get(id) === name }, label(name));
  const list = el(
    "select",
    { id: `${id}-entry` },
    el("option", { value: "" }, say("page-claim-pick")),
    fitting.length === 0 ? null : el("optgroup", { label: say("page-claim-fitting") }, ...fitting.map(option)),
    others.length === 0 ? null : el("optgroup", { label: say("page-claim-others") }, ...others.map(option)),
  );
  const about = el("div", { class: "exemption-rows" });
  const group = el("select", { id: `${id}-group` });
  const groupField = field(say("page-claim-group"), group, say("page-claim-group-hint"));
  const evidence = textInput(`${id}-evidence`, claim?.evidence ?? "");
  const own = initialsInput(`${id}-own`);
  const second = textInput(`${id}-second`, claim?.second ?? "");
  second.maxLength = 12;
  const nameNow = (): string => claim?.entry ?? list.value;
  const show = (): void => {
    const rows = rowsOf(nameNow(), substance, offers);
    about.replaceChildren(...rows.map((row) => exemptionFacts(row, of, offers)));
    const groups = new Map(rows.flatMap((row) => row.groups.filter((one) => one.code !== "any").map((one) => [one.code, one.text])));
    const now = group.options.length > 0 ? group.value : (claim?.group ?? "");
    group.replaceChildren(el("option", { value: "" }, say("page-claim-group-none")), ...[...groups].map(([code, text]) => el("option", { value: code, selected: code === now }, text)));
    groupField.hidden = groups.size === 0;
  };
  list.addEventListener("change", () => {
    picked.set(id, list.value);
    show();
  });
  show();
  const read = (): ReturnType<Parameters<typeof actForm>[0]["read"]> => {
    const name = nameNow();
    if (name === "") return { why: say("page-claim-pick-first"), field: list };
    const unsigned = noInitials(own);
    if (unsigned !== null) return unsigned;
    if (second.value.trim().toLowerCase() === state.initials.toLowerCase()) return { why: say("page-claim-same-person"), field: second };
    return {
      kind: "claim",
      target: target ?? materialTarget(of),
      value: joinedFields({ entry: name, substance, group: group.value, evidence: evidence.value.trim(), second: second.value.trim() }),
    };
  };
  const heard = inRow([substance, materialName(of)]);
  return actForm(
    {
      id,
      button: say(claim === null ? "page-claim-make" : "page-claim-change-send"),
      heard,
      read,
      after: (here) => {
        const name = claim?.entry ?? picked.get(id) ?? "";
        picked.delete(id);
        closeFold(id.replace(/-form$/, claim === null ? "-fold" : "-change"));
        const box = controlId("claimed", materialTarget(of), `${substance} ${name}`);
        openFold("claims-materials");
        if (here) focusIn(box);
      },
    },
    claim === null ? [field(say("page-claim-entry"), list), about] : null,
    el(
      "div",
      { class: "form-fields" },
      groupField,
      field(say("page-claim-evidence"), evidence, say("page-claim-evidence-hint")),
      field(say("page-who-initials"), own),
      field(say("page-claim-second"), second, say("page-claim-second-hint")),
    ),
  );
}

function lastDay(row: ExemptionView): string {
  if (!row.found) return say("page-exemption-not-found");
  return row.expires === null ? "" : say("page-exemption-expires", { day: row.expires });
}

function exemptionFacts(row: ExemptionView, of: MaterialOffer, offers: OffersView): HTMLElement {
  const offered = of.substances.flatMap((one) => one.entries).find((one) => offers.exemptions[one.row] === row);
  const marks = [
    row.found ? null : say("page-exemption-not-found"),
    row.from_memory ? say("page-exemption-from-memory") : null,
    row.not_filed ? say("page-exemption-not-filed") : null,
    row.starred ? say("page-exemption-starred") : null,
  ].filter((mark) => mark !== null);
  const fact = (key: string, value: Child): Child => (value === "" || value === null ? null : [el("dt", {}, say(key)), el("dd", {}, value)]);
  return el(
    "div",
    { class: "exemption" },
    el("p", {}, el("strong", {}, row.entry), " ", ofBook(row.scope), ...marks.map((mark) => [" ", el("span", { class: "flag flag-long" }, mark)])),
    el(
      "dl",
      { class: "facts" },
      fact("page-exemption-number", row.limit),
      fact("page-exemption-reading", offered?.number ?? ""),
      fact("page-exemption-categories", row.categories === "" ? say("page-exemption-categories-unknown") : row.categories === "all" ? say("page-exemption-categories-all") : row.categories),
      fact("page-exemption-days", row.from === null && row.expires === null ? "" : say("page-exemption-from-until", { from: row.from ?? "…", until: row.expires ?? "…" })),
      fact("page-book-source", ofBook(row.source)),
      fact("page-book-confidence", row.confidence),
      fact("page-exemption-note", row.note === "" ? null : ofBook(row.note)),
    ),
    offered === undefined || offered.questions.length === 0 ? null : el("div", { class: "claim-why" }, el("p", {}, say("page-exemption-asks")), el("ul", {}, ...offered.questions.map((question) => el("li", {}, question)))),
  );
}
