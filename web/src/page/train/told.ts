// What the tool says, told: the outcome with its steps, as in a reading's detail.

import type { FindingView } from "../../shared/door";
import { el, type Child } from "../elements";
import { cautionTag } from "../outcomes";
import { between, say } from "../words";

/** Every step of the working, open: whoever trains wants to see it. */
export function workingOf(finding: FindingView): Child {
  return [
    ...finding.cautions.map((text) => el("p", { class: "doubt" }, cautionTag(), " ", text)),
    finding.steps.length === 0
      ? null
      : el("dl", { class: "steps-told" }, ...finding.steps.map((step) => [el("dt", {}, say(`page-step-${step.kind.replaceAll("_", "-")}`)), el("dd", {}, step.text)])),
    finding.next_step === "" ? null : el("p", { class: "next-step" }, el("strong", {}, say("page-detail-next")), between("gap"), finding.next_step),
  ];
}
