// What lies ahead of one lot: what other decision rules would say of its readings, what measuring longer would settle, how
// the spots of its materials differ, and which exemptions nobody claimed may cover them.

import type { AheadView, CandidateView, MaterialAhead, RulesTable } from "../../shared/door";
import { ofBook } from "../book-words";
import { el, type Child } from "../elements";
import { figure } from "../figures";
import { fetchAhead } from "../looking";
import { cautionTag } from "../outcomes";
import { between, count, say } from "../words";
import { askedFor } from "./lazy-fold";

export function lotAhead(lot: number): HTMLElement {
  return askedFor(() => fetchAhead(lot), (ahead) => [sampling(ahead), longer(ahead), rules(ahead), ...ahead.materials.map(material), leftOut(ahead)]);
}

/** What the plan of one lot asks for and proves, where the plan is given. */
export function lotSampling(lot: number): HTMLElement {
  return askedFor(() => fetchAhead(lot), (ahead) => [sampling(ahead)]);
}

function sampling({ sampling: of }: AheadView): Child {
  if (of === null) return null;
  return el("div", { class: "ahead" }, el("h4", {}, say("page-ahead-sampling")), ...of.text.map((sentence) => el("p", {}, sentence)), of.list === "" ? null : el("p", { class: "unit-list" }, of.list), el("div", { class: "oc-frame" }, figure(of.svg)));
}

function longer(ahead: AheadView): Child {
  return el("div", { class: "ahead" }, el("h4", {}, say("page-ahead-longer")), ...ahead.plan.map((sentence) => el("p", {}, sentence)));
}

function rules(ahead: AheadView): Child {
  return el("div", { class: "ahead" }, el("h4", {}, say("page-ahead-rules")), el("p", { class: "quiet" }, say("page-ahead-rules-why")), ...ahead.rules.map(table));
}

/** Every count with its word: a bare 0 in a row of columns is read in the wrong one soon enough. */
function table(of: RulesTable): HTMLElement {
  const title = say("page-ahead-limit", { name: of.name, limit: of.limit });
  if (of.rows.every((row) => row.within + row.beyond + row.between.length === 0)) {
    return el("p", { class: "quiet" }, title, between("colon"), say("page-ahead-rules-none", { n: of.not_applicable }));
  }
  const number = (n: number): HTMLElement => el("td", { class: n === 0 ? "count-none" : "" }, count(n));
  const table = el(
    "table",
    { class: "rules-say" },
    el("caption", {}, title, of.not_applicable === 0 ? null : el("span", { class: "quiet" }, ` ${say("page-ahead-not-applicable", { n: of.not_applicable })}`)),
    el("thead", {}, el("tr", {}, ...["rule", "within", "between", "beyond"].map((column) => el("th", { scope: "col" }, say(`page-rules-${column}`))))),
    el(
      "tbody",
      {},
      ...of.rows.map((row) =>
        el(
          "tr",
          {},
          el("th", { scope: "row" }, row.rule),
          number(row.within),
          row.between.length === 0 ? number(0) : el("td", {}, ...row.between.map((one) => el("div", {}, say("page-ahead-count", { n: one.readings, text: one.text })))),
          number(row.beyond),
        ),
      ),
    ),
  );
  return el("div", { class: "table-scroll", tabindex: 0, role: "group", "aria-label": title }, table);
}

function material(of: MaterialAhead): HTMLElement {
  const name = [of.part, of.material ?? of.class_text].filter((one) => one !== null && one !== "").join(" \u00b7 ");
  return el(
    "div",
    { class: "ahead" },
    el("h4", {}, name),
    of.spots.length === 0
      ? null
      : el(
          "dl",
          { class: "facts" },
          ...of.spots.map((one) => [el("dt", {}, one.element), el("dd", {}, one.differ ? [cautionTag(), " "] : null, one.text)]),
        ),
    of.candidates.length === 0
      ? null
      : el("details", { class: "fold fold-inner" }, el("summary", {}, say("page-ahead-candidates", { n: of.candidates.length }), el("span", { class: "heard" }, ` ${name}`)), el("ul", { class: "reasons" }, ...of.candidates.map(candidate))),
  );
}

function candidate(of: CandidateView): HTMLElement {
  return el(
    "li",
    { class: "reason" },
    el("p", {}, el("strong", {}, say("page-ahead-candidate", { entry: of.entry, substance: of.substance })), " ", ofBook(of.scope), between("series"), of.bound, between("stop"), el("span", { class: "quiet" }, of.confidence)),
    el("p", {}, say("page-ahead-candidate-number", { number: of.number })),
    of.questions.length === 0 ? null : el("ul", { class: "by-class" }, ...of.questions.map((question) => el("li", {}, question))),
  );
}

function leftOut(ahead: AheadView): Child {
  return ahead.materials_left_out === 0 ? null : el("p", { class: "quiet" }, say("page-ahead-left-out", { n: ahead.materials_left_out }));
}
