// The first screen: three doors, each of which does something at once.

import { el } from "../elements";
import { demoDeliveries, type Delivery } from "../demo";
import { takeDoor } from "../door-taken";
import { addFiles, startAgain, takeText } from "../inspection";
import { goTo } from "../place";
import { change, type Door } from "../state";
import { say } from "../words";

export function drawStart(host: HTMLElement, chooseFiles: () => void): void {
  const deliveries = el("div", { class: "deliveries" });
  const door = (name: Door, ...content: HTMLElement[]): HTMLElement =>
    el("section", { class: `door door-${name}`, "aria-labelledby": `door-${name}` }, el("h2", { id: `door-${name}` }, say(`page-door-${name}`)), el("p", {}, say(`page-door-${name}-what`)), ...content);
  const enter = (name: Door, primary: boolean): HTMLElement =>
    el(
      "button",
      {
        type: "button",
        id: `enter-${name}`,
        class: primary ? "primary" : "second",
        on: {
          click: () => {
            void takeDoor(name);
            chooseFiles();
          },
        },
      },
      say(`page-door-${name}-enter`),
    );
  host.replaceChildren(
    door("inspect", enter("inspect", true)),
    door("ship", el("p", { class: "caution-line" }, say("page-not-a-declaration")), enter("ship", false)),
    door("train", el("p", { class: "hint" }, say("page-door-train-invented")), deliveries),
  );
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
}

async function openDelivery(delivery: Delivery): Promise<void> {
  await startAgain();
  change({ door: "train", lesson: delivery });
  if (delivery.settings !== null) await takeText("settings", delivery.settings.name, delivery.settings.text);
  await addFiles(delivery.results.map((file) => ({ name: file.name, bytes: new Blob([file.text]), invented: true })));
  goTo("says");
}
