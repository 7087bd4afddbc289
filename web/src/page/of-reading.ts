// What a person says of one reading: that it is a check, a blank or goods after all, or that it counts for nothing.

import type { DetailView } from "../shared/door";
import { choice, entry } from "./acts-given";
import { MARK, readingTarget } from "./act-kinds";
import { standing } from "./acts-in-force";
import { el, type Child } from "./elements";
import { say } from "./words";

/**
 * Only a reading that names neither lot nor part may be a check: nobody takes goods out of a lot by a name. A check is set aside by
 * nobody: what it says of the analyser stays.
 */
export function ofReading(detail: DetailView): Child {
  const { row } = detail;
  const target = readingTarget(row.source, row.line);
  const given = ["mark", "set_aside"].some((kind) => standing(kind, target) !== null);
  return el(
    "details",
    { id: "of-reading", class: "fold", open: given },
    el("summary", {}, say("page-of-reading")),
    row.lot === null && row.part === null ? choice({ kind: MARK.kind, target, where: "reading" }, MARK.values) : null,
    row.trust === "check" ? null : entry({ kind: "set_aside", target, where: "reading" }, "text"),
  );
}
