// The first screen: three doors, each of which does something at once, and a quiet way to prove a report.

import { el } from "../elements";
import { demoDeliveries, type Delivery } from "../demo";
import { changeDoor, wantDoor } from "../door-taken";
import { chooseFiles, chooseRuleBook } from "../bring";
import { addFiles, startAgain, takeText } from "../inspection";
import { goTo } from "../place";
import { change, state, watch, type Door } from "../state";
import { say } from "../words";

export function drawStart(host: HTMLElement): void {
  const deliveries = deliveryButtons();
  const door = (name: Door, ...content: HTMLElement[]): HTMLElement =>
    el("section", { class: `door door-${name}`, "aria-labelledby": `door-${name}` }, el("h2", { id: `door-${name}` }, say(`page-door-${name}`)), el("p", {}, say(`page-door-${name}-what`)), ...content);
  const press = (name: Door, id: string, look: string, key: string, choose: () => void): HTMLElement =>
    el(
      "button",
      {
        type: "button",
        id,
        class: look,
        on: {
          click: () => {
            wantDoor(name);
            choose();
          },
        },
      },
      say(key),
    );
  // What is open can go on behind the other door: whoever came through the wrong one loses nothing.
  const goOn = (name: "inspect" | "ship"): HTMLElement =>
    el(
      "button",
      {
        type: "button",
        id: `go-on-${name}`,
        class: "second",
        hidden: true,
        on: {
          click: () => void changeDoor(name).then(() => goTo("came-in")),
        },
      },
      say(`page-door-${name}-go-on`),
    );
  host.replaceChildren(
    door("inspect", goOn("inspect"), press("inspect", "enter-inspect", "primary", "page-door-inspect-enter", chooseFiles)),
    door(
      "ship",
      el("p", { class: "caution-line" }, say("page-not-a-declaration")),
      goOn("ship"),
      el(
        "div",
        { class: "door-steps" },
        press("ship", "enter-ship-rules", "tool", "page-door-ship-rules", chooseRuleBook),
        press("ship", "enter-ship", "second", "page-door-ship-enter", chooseFiles),
      ),
    ),
    door(
      "train",
      el("button", { type: "button", id: "enter-train", class: "second", on: { click: () => goTo("train") } }, say("page-train-enter")),
      el("h3", {}, say("page-train-deliveries")),
      el("p", { class: "hint" }, say("page-door-train-invented")),
      deliveries,
    ),
    el(
      "section",
      { class: "door door-prove", "aria-labelledby": "door-prove" },
      el("div", {}, el("h2", { id: "door-prove" }, say("page-prove-heading")), el("p", {}, say("page-prove-door-what"))),
      el("a", { id: "enter-prove", class: "tool", href: "#prove" }, say("page-prove-door-enter")),
    ),
  );
  showGoOn();
}

/** A button for each delivery that travels inside the page; filled as soon as they are unpacked. */
export function deliveryButtons(): HTMLElement {
  const deliveries = el("div", { class: "deliveries" });
  void demoDeliveries().then((found) => {
    deliveries.replaceChildren(
      ...(found.length === 0
        ? [el("p", { class: "empty" }, say("page-demo-none"))]
        : found.map((delivery) =>
            el(
              "button",
              { type: "button", class: "delivery", "data-delivery": delivery.folder, on: { click: () => void openDelivery(delivery) } },
              delivery.title,
            ),
          )),
    );
  });
  return deliveries;
}

function showGoOn(): void {
  const real = state.files.length > 0 && state.door !== "train" && !state.files.some((file) => file.invented);
  for (const name of ["inspect", "ship"] as const) {
    const button = document.getElementById(`go-on-${name}`);
    if (button !== null) button.hidden = !real || (state.door ?? "inspect") === name;
  }
}

export function beginStart(): void {
  watch(["files", "door"], showGoOn);
}

export async function openDelivery(delivery: Delivery): Promise<void> {
  await startAgain();
  change({ door: "train", doorWanted: null, lesson: delivery });
  // Every page printed of an exercise says that it is one.
  const { name, text } = delivery.settings ?? { name: delivery.folder, text: 'schema = "plumbline.settings/1"\ninvented = "yes"\n' };
  await takeText("settings", name, text);
  if (delivery.history !== null) await takeText("history", delivery.history.name, delivery.history.text);
  await addFiles(delivery.results.map((file) => ({ name: file.name, bytes: new Blob([file.text]), invented: true })));
  goTo("says");
}

/** The lesson so many steps on from the one that is open, or null past either end. */
export async function lessonFrom(steps: number): Promise<Delivery | null> {
  const all = await demoDeliveries();
  const at = all.findIndex((one) => one.folder === state.lesson?.folder);
  return at < 0 ? null : (all[at + steps] ?? null);
}
