// One reading in full: each substance with its figure, its outcome in words, the reason, the working, and what comes next.

import type { DetailView, FindingView } from "../shared/door";
import { el, type Child } from "./elements";
import { figure } from "./figures";
import { outcomeTone } from "./marks";
import { outcomeTag, substanceName } from "./outcomes";
import { count, say } from "./words";

function fact(term: string, value: string | null): Child {
  return value === null || value === "" ? null : [el("dt", {}, term), el("dd", {}, value)];
}

function finding(of: FindingView): HTMLElement {
  const drawing = figure(of.ruler);
  return el(
    "section",
    { class: "finding" },
    el(
      "header",
      { class: "finding-head" },
      el("h3", {}, el("abbr", { title: of.name }, substanceName(of.substance)), " ", el("span", { class: "quiet" }, of.name)),
      outcomeTag(of),
    ),
    drawing === null ? null : el("div", { class: "figure-frame" }, drawing),
    of.reason_text === "" ? null : el("p", {}, of.reason_text),
    of.next_step === "" ? null : el("p", { class: "next-step" }, el("strong", {}, say("page-detail-next")), " ", of.next_step),
    of.by_class.length === 0
      ? null
      : el("ul", { class: "by-class" }, ...of.by_class.map((one) => el("li", {}, `${one.class}: ${one.text}`))),
    el(
      "dl",
      { class: "facts" },
      fact(say("page-detail-written"), of.as_written),
      fact(say("page-detail-sigma"), of.sigma_text),
      fact(say("page-detail-working"), of.working),
      fact(say("page-detail-rule"), [of.book, of.clause].filter((part) => part !== "").join(", ")),
    ),
  );
}

/** What is open or over stands before what is settled, each in the order given. */
function openFirst(findings: FindingView[]): FindingView[] {
  const settled = (one: FindingView): boolean => ["below", "apart"].includes(outcomeTone(one.outcome));
  return [...findings.filter((one) => !settled(one)), ...findings.filter(settled)];
}

export function readingTitle(detail: DetailView): string {
  const { id, line, part, material } = detail.row;
  return [id ?? say("page-line-name", { line: count(line) }), part, material].filter((name) => name !== null && name !== "").join(" \u00b7 ");
}

export function detailContent(detail: DetailView): Child[] {
  const { row } = detail;
  return [
    el(
      "dl",
      { class: "facts" },
      fact(say("page-column-file"), `${row.source}, ${say("page-at-line", { line: count(row.line) })}`),
      fact(say("page-detail-unit"), row.unit),
      fact(say("page-detail-spot"), row.spot),
      fact(say("page-detail-part"), row.part),
      fact(say("page-detail-material"), row.material),
      fact(say("page-detail-lot"), row.lot),
      fact(say("page-detail-supplier"), row.supplier),
      fact(say("page-column-class"), `${row.class_text} (${say(`page-class-from-${row.class_from.replaceAll("_", "-")}`)})`),
      fact(say("page-column-trust"), row.trust_text),
      fact(say("page-detail-instrument"), detail.instrument),
      fact(say("page-detail-time"), detail.time),
      fact(say("page-detail-seconds"), detail.seconds),
    ),
    ...openFirst(detail.findings).map(finding),
    detail.other_elements.length === 0
      ? null
      : el(
          "details",
          { id: "detail-others", class: "fold" },
          el("summary", {}, say("page-detail-others", { n: detail.other_elements.length })),
          el("dl", { class: "facts" }, ...detail.other_elements.map((one) => fact(one.symbol, one.text))),
        ),
  ];
}
