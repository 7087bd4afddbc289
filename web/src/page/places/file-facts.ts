// How a file was read before its columns came into question: archive, sheet, encoding, heading line, lines above the table.

import type { SourceView } from "../../shared/door";
import { choice, entry, listed } from "../acts-given";
import { sourceTarget } from "../act-kinds";
import { el, type Child } from "../elements";
import { state } from "../state";
import { between, bracketed, byteCount, count, hasWords, say } from "../words";

export function fileFacts(source: SourceView): Child {
  const facts: Child[] = [];
  const fact = (key: string, ...what: Child[]): void => void facts.push(el("dt", {}, say(key)), el("dd", {}, ...what));
  if (source.container !== null) fact("page-fact-archive", source.container.name, bracketed(byteCount(source.container.bytes)));
  const read = source.sheets.find((sheet) => sheet.read);
  if (read !== undefined) fact("page-fact-sheet", el("strong", {}, read.name), source.sheets.length > 1 ? ` ${say("page-fact-sheets", { n: source.sheets.length })}` : null);
  if (source.encoding !== "") fact("page-fact-encoding", el("strong", {}, encodingName(source.encoding)), between("colon"), source.encoding_text);
  const used = source.stated.filter((line) => line.used_as !== null);
  if (used.length > 0) {
    fact(
      "page-fact-stated",
      el("ul", {}, ...used.map((line) => el("li", {}, say("page-fact-stated-line", { line: count(line.line), key: line.key, value: line.value, use: line.used_text })))),
    );
  }
  return facts.length === 0 ? null : el("dl", { class: "facts" }, ...facts);
}

function encodingName(label: string): string {
  const key = `page-encoding-${label.toLowerCase().replaceAll("_", "-")}`;
  return hasWords(key) ? say(key) : label;
}

/** All sheets of a workbook, the one that was read picked. */
export function sheetChoice(source: SourceView): Child {
  if (source.sheets.length < 2) return null;
  const names: Record<string, string> = {};
  for (const sheet of source.sheets) {
    names[sheet.name] = [
      say("page-sheet", { name: sheet.name, rows: sheet.rows, columns: sheet.columns, elements: sheet.element_columns }),
      sheet.hidden ? say("page-sheet-hidden") : "",
      sheet.read ? say("page-sheet-read") : sheet.passed_over ? say("page-sheet-passed-over") : "",
    ]
      .filter((part) => part !== "")
      .join(between("list"));
  }
  const read = source.sheets.find((sheet) => sheet.read)?.name;
  return choice({ kind: "sheet", target: sourceTarget(source.name), about: source.name, names, ...(read === undefined ? {} : { now: read }) }, source.sheets.map((sheet) => sheet.name));
}

/** What a person can say about a text file as a whole. */
export function textControls(source: SourceView): Child[] {
  const target = sourceTarget(source.name);
  const encodings = state.choices?.encodings ?? [];
  const names = Object.fromEntries(encodings.map((label) => [label, encodingName(label)]));
  return [
    source.encoding === "" ? null : listed({ kind: "text_encoding", target, about: source.name, names, now: source.encoding }, encodings),
    source.blocks.length === 0 && source.problem_code === "no_element_column" ? null : headingLine(source),
  ];
}

export function headingLine(source: SourceView): Child {
  return entry({ kind: "header_line", target: sourceTarget(source.name), about: source.name }, "whole");
}

/** Whether a person had better look at how the file was read before looking at its columns. */
export function needsLook(source: SourceView): boolean {
  return source.problem_code === "no_element_column" || source.encoding_known_by === "guess" || (source.sheets.length > 1 && source.problem !== null);
}
