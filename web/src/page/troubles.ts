// What went wrong, as what, where, why and what to do; and the work that is under way.

import type { Problem } from "../shared/door";
import { NO_ANSWER, type EngineCrashed } from "./engine";
import { noteFault } from "./help/steps";
import { change, state, type Trouble } from "./state";
import { count, inRow, say } from "./words";

export function tellTrouble(trouble: Trouble): void {
  noteFault(trouble.code ?? "other", trouble.raw ?? "");
  change({
    troubles: [...state.troubles.filter((old) => old.key !== trouble.key), trouble],
    event: `${trouble.what} ${trouble.where}`,
  });
}

/** What went wrong with this before is over: it went well now. */
export function troublesOver(about: string): void {
  const troubles = state.troubles.filter((trouble) => trouble.about !== about);
  if (troubles.length !== state.troubles.length) change({ troubles });
}

export function forgetTrouble(key: string): void {
  change({ troubles: state.troubles.filter((trouble) => trouble.key !== key) });
}

export function troubleFrom(about: string, problem: Problem, what: string, where: string): Trouble {
  const place: string[] = [where];
  if (problem.place !== "" && problem.place !== where) place.push(problem.place);
  if (problem.line !== null) place.push(say("page-at-line", { line: count(problem.line) }));
  if (problem.column !== null) place.push(say("page-at-column", { column: count(problem.column) }));
  return {
    key: `${what}|${place.join("|")}|${problem.code}`,
    about,
    what,
    where: inRow(place),
    why: problem.text,
    todo: problem.remedy,
    code: `${about} ${problem.code}`,
  };
}

export function crashTrouble(crash: EngineCrashed, where: string, todo: string): Trouble {
  return {
    key: `crash|${where}|${crash.step}`,
    about: "",
    what: say("page-trouble-crash-what", { step: say(`page-step-${crash.step.replaceAll("_", "-")}`) }),
    where,
    why: say(crash.said === NO_ANSWER ? "page-trouble-crash-no-answer-why" : "page-trouble-crash-why"),
    todo,
    code: `crash ${crash.step}`,
    raw: crash.said,
    fault: true,
  };
}
