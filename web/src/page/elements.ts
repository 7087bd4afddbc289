// Making elements without ever passing data through an HTML parser.

export type Child = Node | string | number | null | undefined | false | Child[];

type Listeners = { [E in keyof HTMLElementEventMap]?: (event: HTMLElementEventMap[E]) => void };

export interface Traits {
  id?: string | undefined;
  class?: string | undefined;
  on?: Listeners;
  hidden?: boolean;
  [attribute: string]: string | number | boolean | Listeners | null | undefined;
}

export function el<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  traits: Traits = {},
  ...children: Child[]
): HTMLElementTagNameMap[K] {
  const node = document.createElement(tag);
  for (const [name, value] of Object.entries(traits)) {
    if (value === null || value === undefined || value === false) continue;
    if (name === "on") {
      for (const [event, listener] of Object.entries(value as Listeners)) {
        node.addEventListener(event, listener as EventListener);
      }
    } else if (name === "value" && "value" in node) {
      (node as unknown as { value: string }).value = String(value);
    } else if (name === "checked") {
      (node as unknown as HTMLInputElement).checked = true;
    } else {
      node.setAttribute(name, value === true ? "" : String(value));
    }
  }
  append(node, children);
  return node;
}

export function append(node: Element, children: Child[]): void {
  for (const child of children) {
    if (child === null || child === undefined || child === false) continue;
    if (Array.isArray(child)) append(node, child);
    else node.append(typeof child === "number" ? String(child) : child);
  }
}

export function byId<T extends HTMLElement = HTMLElement>(id: string): T {
  const node = document.getElementById(id);
  if (node === null) throw new Error(`index.html has no #${id}`);
  return node as T;
}

/** Builds a host's content anew, and gives back what a person would miss: focus, half-typed text, open folds, scroll. */
export function redraw(host: HTMLElement, ...children: Child[]): void {
  const focused = document.activeElement;
  const within = focused instanceof HTMLElement && host.contains(focused) && focused.id !== "" ? focused : null;
  const hadFocus = focused instanceof HTMLElement && host.contains(focused);
  const typed = within instanceof HTMLInputElement && within.dataset["dirty"] === "yes" ? within.value : null;
  const folds = new Map<string, boolean>();
  for (const fold of host.querySelectorAll<HTMLDetailsElement>("details[id]")) folds.set(fold.id, fold.open);

  const next = document.createElement(host.tagName);
  append(next, children);
  for (const fold of next.querySelectorAll<HTMLDetailsElement>("details[id]")) {
    const was = folds.get(fold.id);
    if (was !== undefined) fold.open = was;
  }
  host.replaceChildren(...next.childNodes);

  if (within !== null) {
    const again = document.getElementById(within.id);
    if (again instanceof HTMLElement && host.contains(again)) {
      if (typed !== null && again instanceof HTMLInputElement) {
        again.value = typed;
        again.dataset["dirty"] = "yes";
      }
      again.focus({ preventScroll: true });
      return;
    }
  }
  if (hadFocus) {
    // The control that was used is gone (a question was answered): the place's heading is the nearest thing that stays.
    host.closest<HTMLElement>("[data-place]")?.querySelector<HTMLElement>("h1")?.focus({ preventScroll: true });
  }
}
