// Chromium(VI) in a coating on metal, by area: what a laboratory found, material by material.

import type { MaterialOffer, OffersView } from "../../shared/door";
import { controlId, takeBackButton } from "../acts-given";
import { fieldsIn, joinedFields, materialTarget, partTarget } from "../act-kinds";
import { actText, givenBy, inForce } from "../acts-in-force";
import { el, type Child } from "../elements";
import { actForm, field, textInput } from "../forms";
import { typedNumber } from "../numbers";
import { bracketed, say } from "../words";
import { materialHead, materialName } from "./claims";

const FEW = 4;
const UNIT = "ug/cm2";

export function cr6Given(offers: OffersView): Child {
  const all = offers.materials.filter((one) => one.cr6_open || one.cr6.length > 0);
  if (all.length === 0) return el("p", { class: "quiet" }, say("page-cr6-none"));
  return el(
    "details",
    { id: "cr6-materials", class: "fold fold-inner", open: all.length <= FEW },
    el("summary", {}, say("page-evidence-per-material", { n: all.length })),
    ...all.map(block),
  );
}

/** `0.08`, `0,08`, `<0.1`, with or without the unit; null where it is none of these. */
function areaTyped(typed: string): string | null {
  const bare = typed.replace(/\s*[uµμ]g\/cm[2²]\s*$/u, "").trim();
  const below = bare.startsWith("<");
  const number = typedNumber(below ? bare.slice(1) : bare, "decimal");
  return number === null ? null : `${below ? "<" : ""}${number} ${UNIT}`;
}

function block(of: MaterialOffer): HTMLElement {
  const target = materialTarget(of);
  const id = controlId("cr6_area", target);
  const act = inForce("cr6_area", [target, partTarget(of.part ?? "")]);
  const now = fieldsIn(act?.value ?? "");
  const area = textInput(`${id}-area`, (now["area"] ?? "").replace(` ${UNIT}`, ""));
  area.inputMode = "decimal";
  const laboratory = textInput(`${id}-laboratory`, now["laboratory"] ?? "");
  const report = textInput(`${id}-report`, now["report"] ?? "");
  const open = of.cr6.some((one) => one.result === "") || (act !== null && (now["laboratory"] === undefined || now["report"] === undefined));
  return el(
    "div",
    { class: "per-lot", "data-missing": open ? "yes" : undefined },
    materialHead(of),
    ...of.cr6.map((one) => el("p", {}, el("strong", {}, one.result === "" ? say("page-cr6-not-judged") : one.text))),
    actForm(
      {
        id,
        button: say("page-act-give"),
        heard: `${say("page-cr6-area")}${bracketed(materialName(of))}`,
        read: () => {
          const value = areaTyped(area.value);
          if (value === null) return { why: say("page-cr6-no-area", { typed: area.value }), field: area };
          return { kind: "cr6_area", target, value: joinedFields({ area: value, laboratory: laboratory.value.trim(), report: report.value.trim() }) };
        },
      },
      el("div", { class: "form-fields" }, field(say("page-cr6-area"), area, say("page-cr6-area-hint")), field(say("page-cr6-laboratory"), laboratory), field(say("page-cr6-report"), report)),
    ),
    act === null ? null : el("p", { class: "given" }, el("span", {}, actText(act), " ", givenBy(act)), takeBackButton(act, `${id}-back`, `${id}-area`)),
  );
}
