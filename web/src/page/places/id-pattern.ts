// Sample ids that hold several things at once: a person shows by one example what each piece is.

import type { BlockView, IdTemplateView, PreviewView, SourceView } from "../../shared/door";
import { controlId, pickList, record, refusalLine, takeBackButton } from "../acts-given";
import { headerTarget } from "../act-kinds";
import { givenBy, standing } from "../acts-in-force";
import { el, type Child } from "../elements";
import { fetchIdTemplate } from "../looking";
import { state, watch } from "../state";
import { between, say } from "../words";
import { lazyFold } from "./lazy-fold";

/** What the pieces were said to be, kept while the place is drawn anew. */
const named = new Map<string, string[]>();
watch(["summary"], () => {
  if (state.summary === null) named.clear();
});

export function idPattern(source: SourceView, block: BlockView, preview: PreviewView): Child {
  const at = block.columns.findIndex((column) => column.role === "id");
  const ids = preview.columns[at]?.examples ?? [];
  const [example] = ids;
  if (example === undefined) return null;
  const target = headerTarget(block.fingerprint);
  const id = controlId("id_pattern", `${source.index}-${block.index}`);
  const act = standing("id_pattern", target);
  return lazyFold(
    `${id}-fold`,
    "fold fold-inner",
    act !== null,
    [say("page-id-heading"), act === null ? null : el("span", { class: "flag" }, act.value)],
    () => {
      const host = el("div", { id, class: "id-pattern" });
      void draw(host, example, ids.slice(1), target);
      return [
        el("p", { class: "quiet" }, say("page-id-lead", { example })),
        host,
        act === null ? null : el("p", { class: "given" }, el("span", {}, say("page-act-in-force", { value: act.value }), " ", givenBy(act)), takeBackButton(act, `${id}-back`, `${id}-fold`)),
      ];
    },
  );
}

async function draw(host: HTMLElement, example: string, others: string[], target: string): Promise<void> {
  const { id } = host;
  const said = named.get(`${id}|${example}`) ?? [];
  const template = await fetchIdTemplate(example, said, [example, ...others]);
  const { choices } = state;
  if (template === null || choices === null) return;
  const focused = host.contains(document.activeElement) ? document.activeElement?.id : undefined;
  const refusal = refusalLine(id);
  const roles = choices.roles.filter((role) => role.group === "identity" && role.code !== "id" && role.code !== "time_of_day");
  const values = [{ value: "", text: say("page-id-ignore") }, ...roles.map((role) => ({ value: role.code, text: role.text }))];
  host.replaceChildren(
    el(
      "div",
      { class: "pieces" },
      ...template.pieces.map((piece, at) =>
        el(
          "div",
          { class: "piece" },
          el("label", { for: `${id}-piece-${at}` }, el("span", { class: "heard" }, say("page-id-piece"), " "), el("code", {}, piece)),
          pickList({ id: `${id}-piece-${at}` }, values, said[at] ?? "", (value) => {
            named.set(
              `${id}|${example}`,
              template.pieces.map((_, other) => (other === at ? value : (said[other] ?? ""))),
            );
            void draw(host, example, others, target);
          }),
        ),
      ),
    ),
    cuts(template),
    refusal,
    el(
      "button",
      {
        type: "button",
        id: `${id}-set`,
        class: "tool",
        "aria-disabled": template.pattern === "" ? "true" : undefined,
        on: { click: () => void (template.pattern === "" ? undefined : record({ kind: "id_pattern", target, value: template.pattern }, refusal)) },
      },
      say("page-id-set"),
    ),
  );
  if (focused !== undefined) document.getElementById(focused)?.focus({ preventScroll: true });
}

function cuts(template: IdTemplateView): HTMLElement {
  if (template.pattern === "") return el("p", { class: "hint" }, template.problem);
  return el(
    "div",
    {},
    el("p", {}, say("page-id-pattern"), " ", el("code", {}, template.pattern)),
    el(
      "ul",
      { class: "evidence-list" },
      ...template.cuts.map((cut) =>
        el("li", {}, el("code", {}, cut.id), " \u2192 ", cut.pieces === null ? el("strong", {}, say("page-id-no-fit")) : cut.pieces.map((one) => `${one.role_text}${between("colon")}${one.piece}`).join(" \u00b7 ")),
      ),
    ),
  );
}
