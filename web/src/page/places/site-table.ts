// The site's own table of repeatability at the action level, a row at a time.

import type { OffersView, SiteOffer, Summary } from "../../shared/door";
import { controlId, record, refusalLine, showRefusal } from "../acts-given";
import { signature, valueName } from "../acts-in-force";
import { CLASSES } from "../act-kinds";
import { el, type Child } from "../elements";
import { undo } from "../inspection";
import { typedNumber } from "../numbers";
import { say } from "../words";

const ELEMENTS = ["Cd", "Pb", "Hg", "Cr", "Br", "Cl"];

/** Fewer readings than this say little of how readings scatter: common practice, no source. */
const FEW_READINGS = 10;

function offered(offers: OffersView, standing: string[]): Child {
  if (offers.site_rows.length === 0) return el("p", { class: "hint" }, say("page-site-no-offers"));
  return [
    el("h3", {}, say("page-site-offers", { n: offers.site_rows.length })),
    el("p", { class: "hint" }, say("page-site-offers-hint")),
    el("ul", { class: "acts" }, ...offers.site_rows.map((row) => offeredRow(row, standing.includes(row.value)))),
  ];
}

function offeredRow(row: SiteOffer, taken: boolean): HTMLElement {
  const id = controlId("site-offer", `${row.sample} ${row.instrument ?? ""}`, row.value);
  const refusal = refusalLine(id);
  const what = say("page-site-offer", { element: row.element, class: row.class_text, sigma: row.sigma });
  const few = row.readings < FEW_READINGS;
  return el(
    "li",
    { class: "act site-offer" },
    el(
      "span",
      { class: "act-text" },
      el("strong", {}, what),
      el("span", { class: "quiet" }, ` ${say("page-site-offer-from", { n: row.readings, sample: row.sample === "" ? say("page-target-unnamed") : row.sample, mean: row.mean })}${row.earlier === 0 ? "" : ` ${say("page-site-offer-earlier", { n: row.earlier })}`}${row.seconds === null ? "" : ` ${say("page-site-offer-seconds", { seconds: row.seconds })}`}${row.instrument === null ? "" : ` ${row.instrument}.`}`),
      row.near ? null : el("span", { class: "caveat" }, say("page-site-offer-far")),
      few ? el("span", { class: "caveat" }, say("page-site-offer-few", { n: row.readings })) : null,
    ),
    taken
      ? el("span", { class: "flag flag-quiet" }, say("page-site-offer-taken"))
      : el("button", { type: "button", id, class: "tool", on: { click: () => void record({ kind: "site_sigma", value: row.value }, refusal) } }, say("page-site-offer-take"), el("span", { class: "heard" }, ` ${what}`)),
    refusal,
  );
}

export function siteTable(summary: Summary, offers: OffersView): Child {
  const rows = summary.acts.filter((act) => act.kind === "site_sigma" && !act.undone);
  const element = el("select", { id: "site-element" }, ...ELEMENTS.map((symbol) => el("option", {}, symbol)));
  const kind = el("select", { id: "site-class" }, ...CLASSES.map((value) => el("option", { value }, valueName("class", value))));
  const sigma = el("input", { id: "site-sigma", type: "text", inputmode: "decimal", autocomplete: "off", "aria-describedby": "site-refusal" });
  const seconds = el("input", { id: "site-seconds", type: "text", inputmode: "decimal", autocomplete: "off", "aria-describedby": "site-refusal" });
  const constant = el("input", { id: "site-constant", type: "text", inputmode: "decimal", autocomplete: "off", "aria-describedby": "site-refusal" });
  const refusal = refusalLine("site");
  const field = (key: string, control: HTMLElement): Child => el("div", { class: "field" }, el("label", { for: control.id }, say(key)), control);
  const submit = (event: Event): void => {
    event.preventDefault();
    const numbers = new Map<HTMLInputElement, string>();
    for (const input of [sigma, seconds, constant]) {
      const typed = input.value.trim();
      const value = typed === "" && input !== sigma ? "" : typedNumber(typed, "decimal");
      input.removeAttribute("aria-invalid");
      if (value === null) {
        input.setAttribute("aria-invalid", "true");
        showRefusal(refusal, say("page-act-no-number", { typed }));
        input.focus();
        return;
      }
      numbers.set(input, value);
    }
    const parts = [`element=${element.value}`, `class=${kind.value}`, `s=${numbers.get(sigma) ?? ""} mg/kg`];
    if (numbers.get(seconds) !== "") parts.push(`seconds=${numbers.get(seconds) ?? ""}`);
    if (numbers.get(constant) !== "") parts.push(`constant=${numbers.get(constant) ?? ""} mg/kg`);
    void record({ kind: "site_sigma", value: parts.join(";") }, refusal);
  };
  return el(
    "details",
    { id: "site-table", class: "fold fold-inner" },
    el("summary", {}, say("page-site-heading", { n: rows.length }), offers.site_rows.length === 0 ? null : el("span", { class: "quiet" }, say("page-site-offers", { n: offers.site_rows.length }))),
    el("p", { class: "hint" }, say("page-site-hint")),
    rows.length === 0
      ? null
      : el(
          "ul",
          { class: "acts" },
          ...rows.map((act) =>
            el(
              "li",
              { class: "act" },
              el("span", { class: "act-text" }, act.text),
              el("span", { class: "quiet" }, signature(act)),
              el("button", { type: "button", id: controlId("site", "", String(act.number)), class: "tool", on: { click: () => void undo(act.number) } }, say("page-act-take-back"), el("span", { class: "heard" }, ` ${act.text}`)),
            ),
          ),
        ),
    offered(offers, rows.map((act) => act.value)),
    el(
      "form",
      { class: "filters", on: { submit } },
      field("page-site-element", element),
      field("page-site-class", kind),
      field("page-site-sigma", sigma),
      field("page-site-seconds", seconds),
      field("page-site-constant", constant),
      el("button", { type: "submit", id: "site-add", class: "second" }, say("page-site-add")),
    ),
    refusal,
  );
}
