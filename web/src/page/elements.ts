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
    } else if (name === "selected") {
      (node as unknown as HTMLOptionElement).selected = true;
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

// The words of a term explain a field and are none.
const FIELDS = "input:not([type=file]), select, button:not(.term-word), a[href], summary";

/** The thing in `root` that a person would use next: what is missing before the rest, the picked one of several choices. */
function firstField(root: ParentNode): HTMLElement | null {
  const missing = root.querySelector("[data-missing]");
  for (const within of missing === null ? [root] : [missing, root]) {
    const all = [...within.querySelectorAll<HTMLElement>(FIELDS)].filter((one) => !one.hidden && one.tagName !== "SUMMARY");
    const [first] = all;
    if (first === undefined) continue;
    if (first instanceof HTMLInputElement && first.type === "radio") return all.find((one) => one instanceof HTMLInputElement && one.name === first.name && one.checked) ?? first;
    return first;
  }
  return root.querySelector<HTMLElement>("summary");
}

/** The first field in the element of this id, or the element itself where it can have the focus. */
export function fieldIn(id: string): HTMLElement | null {
  const root = document.getElementById(id);
  if (root === null) return null;
  return root.matches(`${FIELDS}, input, [tabindex]`) ? root : firstField(root);
}

/** Gives the focus to that field. */
export function focusIn(id: string): boolean {
  const field = fieldIn(id);
  if (field === null) return false;
  for (let fold = field.parentElement?.closest("details"); fold != null; fold = fold.parentElement?.closest("details")) fold.open = true;
  field.focus({ preventScroll: true });
  const box = field.getBoundingClientRect();
  // What stays at the head of the window covers what lies beneath it.
  const covered = parseFloat(getComputedStyle(document.documentElement).scrollPaddingTop) || 0;
  if (box.top < covered || box.bottom > innerHeight) field.scrollIntoView({ block: "center" });
  return document.activeElement === field;
}

interface Missed {
  focused: HTMLElement | null;
  /** Elements round the focus, from near to far, by their ids. */
  round: string[];
  typed: Map<string, string>;
  /** Where what slides sideways or down within itself has been slid to. */
  slid: Map<string, { left: number; top: number }>;
  folds: Map<string, boolean>;
}

function whatWouldBeMissed(host: HTMLElement): Missed {
  const active = document.activeElement;
  const focused = active instanceof HTMLElement && active !== host && host.contains(active) ? active : null;
  const round: string[] = [];
  for (let node = focused; node !== null && node !== host; node = node.parentElement) if (node.id !== "") round.push(node.id);
  const typed = new Map<string, string>();
  for (const input of host.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input[id][data-dirty="yes"], select[id][data-dirty="yes"]')) typed.set(input.id, input instanceof HTMLInputElement && input.type === "checkbox" ? String(input.checked) : input.value);
  const slid = new Map<string, { left: number; top: number }>();
  for (const box of host.querySelectorAll<HTMLElement>(".table-scroll[id]")) {
    if (box.scrollLeft !== 0 || box.scrollTop !== 0) slid.set(box.id, { left: box.scrollLeft, top: box.scrollTop });
  }
  const folds = new Map<string, boolean>();
  for (const fold of host.querySelectorAll<HTMLDetailsElement>("details[id]")) folds.set(fold.id, fold.open);
  return { focused, round, typed, slid, folds };
}

/** Builds a host's content anew, and gives back what a person would miss: focus, half-typed text, open folds, scroll. */
export function redraw(host: HTMLElement, ...children: Child[]): void {
  const missed = whatWouldBeMissed(host);
  const next = document.createElement(host.tagName);
  append(next, children);
  for (const fold of next.querySelectorAll<HTMLDetailsElement>("details[id]")) {
    const was = missed.folds.get(fold.id);
    if (was !== undefined) fold.open = was;
  }
  host.replaceChildren(...next.childNodes);

  for (const [id, { left, top }] of missed.slid) {
    const again = document.getElementById(id);
    if (again !== null && host.contains(again)) again.scrollTo({ left, top, behavior: "instant" });
  }
  for (const [id, value] of missed.typed) {
    const again = document.getElementById(id);
    if (!(again instanceof HTMLInputElement || again instanceof HTMLSelectElement) || !host.contains(again)) continue;
    if (again instanceof HTMLInputElement && again.type === "checkbox") again.checked = value === "true";
    else if (again instanceof HTMLInputElement && again.type === "radio") again.checked = true;
    else again.value = value;
    again.dataset["dirty"] = "yes";
  }
  if (missed.focused === null) return;
  // Where the control that was used is gone (a question was answered), what stood round it is the nearest thing.
  for (const id of missed.round) {
    const again = document.getElementById(id);
    if (again === null || !host.contains(again) || again.closest("[hidden]") !== null) continue;
    if (id === missed.focused.id) {
      again.focus({ preventScroll: true });
      return;
    }
    if (focusIn(id)) return;
  }
  host.closest<HTMLElement>("[data-place]")?.querySelector<HTMLElement>("h1")?.focus({ preventScroll: true });
}
