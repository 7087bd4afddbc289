// The invented deliveries that travel inside the page.

import { inflatedText } from "./inert";
import { hasWords, say } from "./words";

interface TextFile {
  name: string;
  text: string;
}

export interface Delivery {
  folder: string;
  readonly title: string;
  /** What happened, and what the review should show; a paragraph each, in English. */
  story: string[];
  settings: TextFile | null;
  history: TextFile | null;
  results: TextFile[];
  /** Drawn from a seed, and none of those that follow each other. */
  fresh?: boolean;
}

let deliveries: Promise<Delivery[]> | null = null;

export function demoDeliveries(): Promise<Delivery[]> {
  deliveries ??= unpack();
  return deliveries;
}

async function unpack(): Promise<Delivery[]> {
  const packed = JSON.parse(await inflatedText("plumbline-demo")) as Record<string, Record<string, string>>;
  return Object.entries(packed).map(([folder, files]) => {
    const named = Object.entries(files).map(([name, text]) => ({ name, text }));
    const told = named.find((file) => file.name === NOTE)?.text ?? "";
    return {
      folder,
      // As the language of the page has it when it is shown.
      get title() {
        const key = `page-delivery-${folder.slice(0, 2)}`;
        return hasWords(key) ? say(key) : titleOf(told, folder);
      },
      story: paragraphsOf(told),
      settings: named.find((file) => file.name === SETTINGS) ?? null,
      history: named.find((file) => file.name === HISTORY) ?? null,
      results: named.filter((file) => ![NOTE, SETTINGS, HISTORY].includes(file.name)),
    };
  });
}

const NOTE = "README.md";
const SETTINGS = "settings.toml";
const HISTORY = "history.txt";

// A leading number only puts the deliveries in order.
function titleOf(told: string, folder: string): string {
  const heading = /^#\s+(?:\d+\s+)?(.+)$/m.exec(told)?.[1];
  return heading ?? folder.replace(/^\d+[-_]/, "").replace(/[-_]+/g, " ");
}

// The note is written for readers of the folder; its few marks of emphasis are dropped.
function paragraphsOf(told: string): string[] {
  return told
    .split(/\n\s*\n/)
    .map((paragraph) => paragraph.replace(/[*`]/g, "").replace(/\s+/g, " ").trim())
    .filter((paragraph) => paragraph !== "" && !paragraph.startsWith("#"));
}
