// A press holds on to what it was made on. Leaving a field can record an act, and what is drawn anew for it may take the
// place of a button or a link between the finger's going down and coming up: the browser then drops the click.

const PRESSABLE = "button[id], a[href][id], summary[id], label[for]";

/** What would be pressed here, and a name for it that outlives its being drawn anew. */
function pressable(target: EventTarget | null): { node: HTMLElement; name: string } | null {
  const node = target instanceof Element ? target.closest<HTMLElement>(PRESSABLE) : null;
  if (node === null) return null;
  return { node, name: node instanceof HTMLLabelElement ? `label ${node.htmlFor}` : node.id };
}

export function beginPresses(): void {
  let down: ReturnType<typeof pressable> = null;
  let clicked = false;
  addEventListener("pointerdown", (event) => {
    down = event.isPrimary && event.button === 0 ? pressable(event.target) : null;
    clicked = false;
  }, true);
  addEventListener("pointercancel", () => {
    down = null;
  }, true);
  addEventListener("click", () => {
    clicked = true;
  }, true);
  addEventListener("pointerup", (event) => {
    const was = down;
    down = null;
    const up = pressable(event.target);
    if (was === null || up === null || up.node === was.node || up.name !== was.name || was.node.isConnected) return;
    // The browser's own click, where it makes one after all, comes before this.
    setTimeout(() => {
      if (!clicked && up.node.isConnected) up.node.click();
    });
  }, true);
}
