// What the check readings showed, the control charts, and what is known of the suppliers: asked for when it is looked at.

import type { ChartView, ChecksView, CheckView, SupplierView } from "../../shared/door";
import { el, type Child } from "../elements";
import { figure } from "../figures";
import { fetchChecks } from "../looking";
import { count, say } from "../words";
import { askedFor, lazyFold } from "./lazy-fold";

export function checksShown(): Child {
  return [
    lazyFold("checks-shown", "fold fold-inner", false, [say("page-checks-shown")], () => [askedFor(fetchChecks, checks)]),
    lazyFold("charts-shown", "fold fold-inner", false, [say("page-charts-shown")], () => [askedFor(fetchChecks, charts)]),
  ];
}

export function suppliersShown(): HTMLElement {
  return el(
    "section",
    { class: "card", id: "suppliers", "aria-labelledby": "suppliers-heading" },
    el("h2", { id: "suppliers-heading" }, say("page-suppliers-heading")),
    el("p", { class: "quiet" }, say("page-suppliers-why")),
    lazyFold("suppliers-shown", "fold fold-inner", false, [say("page-suppliers-shown")], () => [askedFor(fetchChecks, suppliers)]),
  );
}

function checks(of: ChecksView): Child[] {
  if (of.checks.length === 0) return [el("p", { class: "quiet" }, say("page-checks-none"))];
  return [...of.checks.map(check), of.checks_left_out === 0 ? null : el("p", { class: "quiet" }, say("page-checks-left", { n: of.checks_left_out }))];
}

function check(of: CheckView): HTMLElement {
  const title = [of.sample, of.when, of.instrument].filter((one) => one !== null && one !== "").join(" \u00b7 ");
  return el(
    "div",
    { class: "per-lot", "data-missing": of.elements.every((one) => one.good) ? undefined : "yes" },
    el("h3", {}, title, el("span", { class: "quiet" }, ` ${of.kind}`)),
    el(
      "div",
      { class: "table-scroll", tabindex: 0, role: "group", "aria-label": title },
      el(
        "table",
        { class: "checks-say" },
        el("caption", { class: "heard" }, title),
        el("thead", {}, el("tr", {}, ...["element", "verdict", "found", "certified", "score"].map((column) => el("th", { scope: "col" }, say(`page-checks-${column}`))))),
        el(
          "tbody",
          {},
          ...of.elements.map((one) =>
            el(
              "tr",
              {},
              el("th", { scope: "row" }, one.element),
              el("td", {}, el("span", { class: one.good ? "flag flag-good" : "flag flag-strong" }, one.verdict_text)),
              el("td", {}, one.found),
              el("td", {}, one.certified),
              el("td", {}, one.score),
            ),
          ),
        ),
      ),
    ),
  );
}

function charts(of: ChecksView): Child[] {
  return [
    of.history === "" ? null : el("p", { class: "quiet" }, of.history),
    of.charts.length === 0 ? el("p", { class: "quiet" }, say("page-charts-none")) : null,
    ...of.charts.map(chart),
    of.charts_left_out === 0 ? null : el("p", { class: "quiet" }, say("page-charts-left", { n: of.charts_left_out })),
  ];
}

function chart(of: ChartView): HTMLElement {
  return el("figure", { class: "chart" }, el("figcaption", {}, el("strong", {}, of.title)), el("div", { class: "table-scroll", tabindex: 0, role: "group", "aria-label": of.title }, figure(of.svg)), ...of.text.map((sentence) => el("p", {}, sentence)));
}

function suppliers(of: ChecksView): Child[] {
  if (of.suppliers.length === 0) return [el("p", { class: "quiet" }, say("page-suppliers-none"))];
  return [
    el("p", { class: "quiet" }, say("page-suppliers-count", { n: count(of.suppliers.length) })),
    ...of.suppliers.map(supplier),
    of.suppliers_left_out === 0 ? null : el("p", { class: "quiet" }, say("page-suppliers-left", { n: of.suppliers_left_out })),
  ];
}

function supplier(of: SupplierView): HTMLElement {
  return el(
    "div",
    { class: "per-lot" },
    el("h3", {}, of.supplier ?? say("page-target-unnamed"), el("span", { class: "quiet" }, ` ${of.part ?? say("page-part-unnamed")}`)),
    ...of.text.map((sentence) => el("p", {}, sentence)),
  );
}
