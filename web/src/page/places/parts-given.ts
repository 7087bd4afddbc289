// Which homogeneous materials each part has. Where the measured ones are all of them, one press says so.

import type { BillOffer, OffersView, Summary } from "../../shared/door";
import { controlId, entry } from "../acts-given";
import { standing } from "../acts-in-force";
import { escaped, partTarget } from "../act-kinds";
import { el, type Child } from "../elements";
import { doAct } from "../inspection";
import { inRow, say, sayForTheRecord } from "../words";

const MOST_PARTS = 60;

export function partsGiven(summary: Summary, offers: OffersView): Child {
  const measured = new Map<string, string[]>();
  for (const material of summary.materials) {
    if (material.part === null) continue;
    const names = measured.get(material.part) ?? [];
    // A material without a name goes by its class, as it does in the findings.
    const name = material.material ?? material.class;
    if (!names.includes(name)) names.push(name);
    measured.set(material.part, names);
  }
  if (measured.size === 0) return el("p", { class: "quiet" }, say("page-parts-unnamed"));
  const parts = [...measured];
  const open = parts.filter(([part]) => standing("bill_of_materials", partTarget(part)) === null);
  return el(
    "details",
    { id: "parts-given", class: "fold fold-inner", open: parts.length <= 3 },
    el("summary", {}, say("page-parts-heading", { n: parts.length, open: open.length })),
    el("p", { class: "hint" }, say("page-parts-hint")),
    ...parts.slice(0, MOST_PARTS).map(([part, names]) => onePart(part, names, offers.bills.filter((bill) => bill.part === part))),
    parts.length > MOST_PARTS ? el("p", { class: "quiet" }, say("page-parts-left", { n: parts.length - MOST_PARTS })) : null,
  );
}

function onePart(part: string, names: string[], learned: BillOffer[]): HTMLElement {
  const target = partTarget(part);
  const given = standing("bill_of_materials", target) !== null;
  return el(
    "div",
    { id: controlId("part", target), class: "per-lot per-part", "data-missing": given ? undefined : "yes" },
    el("h3", {}, part, " ", el("span", { class: "quiet" }, say("page-parts-measured", { names: inRow(names) }))),
    given
      ? null
      : el(
          "button",
          {
            type: "button",
            class: "second",
            id: controlId("whole", target),
            on: { click: () => void doAct({ kind: "bill_of_materials", target, value: names.map(escaped).join("|") }) },
          },
          say("page-parts-all", { n: names.length }),
          el("span", { class: "heard" }, ` ${part}`),
        ),
    ...(given ? [] : learned.map(takeLearned)),
    entry({ kind: "bill_of_materials", target, about: part, bare: true }, "text"),
  );
}

/** What an earlier accepted lot of this part was made of: taken over by one press, never by itself. */
function takeLearned(bill: BillOffer): HTMLElement {
  return el(
    "button",
    { type: "button", class: "tool", id: controlId("learned", bill.target, bill.lot), on: { click: () => void doAct({ kind: "bill_of_materials", target: bill.target, value: bill.value, note: sayForTheRecord("page-parts-learned-from", { lot: bill.lot, day: bill.day }) }) } },
    say("page-parts-learned", { names: inRow(bill.materials), lot: bill.lot, day: bill.day }),
  );
}
