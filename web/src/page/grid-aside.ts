// Selected readings set aside with one reason: after a failed check there are many, and each is to be measured again.

import { readingTarget } from "./act-kinds";
import { refusalLine, showRefusal } from "./acts-given";
import { el } from "./elements";
import { stillHere } from "./hand";
import { doActs } from "./inspection";
import { fetchRows } from "./looking";
import { state } from "./state";
import { say } from "./words";

/** Each is an act of its own that the report prints: more than these is hardly a decision about readings. */
const MOST = 1000;

export class SettingAside {
  readonly root: HTMLFormElement;
  private readonly why = el("input", { id: "selection-why", type: "text", autocomplete: "off", "aria-describedby": "selection-why-hint selection-why-refusal" });
  private readonly refusal = refusalLine("selection-why");
  private sending = false;

  /** `chosen` gives the readings that are meant, `done` hears that they were set aside. */
  constructor(
    private readonly chosen: () => Uint32Array,
    private readonly done: () => void,
  ) {
    this.root = el(
      "form",
      {
        id: "selection-aside",
        class: "control",
        hidden: true,
        on: {
          submit: (event) => {
            event.preventDefault();
            void this.send();
          },
        },
      },
      el("label", { for: "selection-why", "data-say": "page-grid-set-aside" }),
      el("div", { class: "entry" }, this.why, el("button", { type: "submit", id: "selection-aside-give", class: "tool", "data-say": "page-act-give" })),
      this.refusal,
      el("p", { class: "hint", id: "selection-why-hint", "data-say": "page-act-set-aside-hint" }),
    );
  }

  /** Shown while something is selected. */
  offer(shown: boolean): void {
    this.root.hidden = !shown;
    this.refuse("");
  }

  private refuse(why: string): void {
    this.why.setAttribute("aria-invalid", String(why !== ""));
    showRefusal(this.refusal, why);
  }

  private async send(): Promise<void> {
    const readings = this.chosen();
    if (this.sending || readings.length === 0) return;
    const value = this.why.value.trim();
    const most = readings.length > MOST;
    if (most || value === "") {
      this.refuse(most ? say("page-grid-set-aside-most", { most: MOST }) : say("page-grid-set-aside-why"));
      if (!most) this.why.focus();
      return;
    }
    this.sending = true;
    await this.setAside(readings, value).finally(() => {
      this.sending = false;
    });
  }

  private async setAside(readings: Uint32Array, value: string): Promise<void> {
    const here = stillHere();
    const about = state.summary;
    const rows = await fetchRows(readings, []);
    // Numbers of readings belong to the findings they were taken from.
    if (rows === null || state.summary !== about) return;
    const goods = rows.filter((row) => row.trust !== "check");
    if (goods.length === 0) {
      this.refuse(say("page-grid-set-aside-checks"));
      return;
    }
    const problem = await doActs("set_aside", goods.map((row) => ({ target: readingTarget(row.source, row.line), value })), { key: "page-keep-step-set-aside", given: { n: goods.length } });
    if (problem !== null) {
      this.refuse(`${problem.text} ${problem.remedy}`);
      if (here()) this.why.focus();
      return;
    }
    this.why.value = "";
    if (here()) this.done();
  }
}
