// The languages of the page. English is in the script; each other stands packed in the page until a person wants it.

import { change, state } from "./state";
import { store, stored } from "./browser-store";
import { byId, el } from "./elements";
import { inflatedText } from "./inert";
import { inTurn, running, teach, told } from "./instance";
import { ENGLISH, say, sayMarkup, useLanguage } from "./words";

const LANGUAGE = "plumbline.language";
const PACKED = "plumbline-words-";

export interface Language {
  tag: string;
  /** Its own name for itself. */
  name: string;
}

/** English first, then those that travel in the page. */
export function languages(): Language[] {
  const packed = [...document.querySelectorAll<HTMLElement>(`script[id^="${PACKED}"]`)];
  return [{ tag: ENGLISH, name: "English" }, ...packed.map((node) => ({ tag: node.id.slice(PACKED.length), name: node.dataset["name"] ?? "" }))];
}

/** What the core and the page say, in Project Fluent. */
interface Texts {
  core: string;
  page: string;
}

const unpacked = new Map<string, Promise<Texts>>([[ENGLISH, Promise.resolve({ core: "", page: "" })]]);

function textsOf(tag: string): Promise<Texts> {
  let texts = unpacked.get(tag);
  if (texts === undefined) {
    texts = inflatedText(`${PACKED}${tag}`).then((text) => JSON.parse(text) as Texts);
    unpacked.set(tag, texts);
  }
  return texts;
}

/** The core can say this language from here on. */
export async function taught(tag: string): Promise<void> {
  if (tag === ENGLISH || told.languages.has(tag)) return;
  await teach(tag, (await textsOf(tag)).core);
}

/** The language of the last visit, else the first of the browser's that there is, else English. */
export function firstLanguage(): string {
  const tags = languages().map((language) => language.tag);
  const last = stored(LANGUAGE);
  if (tags.includes(last)) return last;
  for (const wanted of navigator.languages) {
    const found = tags.find((tag) => fits(wanted, tag));
    if (found !== undefined) return found;
  }
  return ENGLISH;
}

/** Whether who asks for `wanted` is served by `tag`: the same language, in the same script where either names one. */
function fits(wanted: string, tag: string): boolean {
  const [mine, yours] = [wanted, tag].map(localeOf);
  return mine != null && yours != null && mine.language === yours.language && mine.script === yours.script;
}

// A browser may name what is no language: WebKit on a machine without one asks for "c".
function localeOf(tag: string): Intl.Locale | null {
  try {
    return new Intl.Locale(tag).maximize();
  } catch {
    return null;
  }
}

/** Before anything is drawn or asked. */
export async function beginWith(tag: string): Promise<void> {
  const texts = await textsOf(tag);
  told.languages.set(tag, texts.core);
  told.spoken = tag;
  useLanguage(tag, texts.page);
  change({ language: tag });
}

/** Says everything in another language. What is loaded, recorded, typed and chosen stays. */
function speak(tag: string): Promise<void> {
  return inTurn(async () => {
    const texts = await textsOf(tag);
    const machine = await running();
    await taught(tag);
    await machine.ask("speak", { tag });
    told.spoken = tag;
    const { choices } = await machine.ask("choices", {});
    const summary = state.summary === null ? null : (await machine.ask("summary", {})).summary;
    const offers = state.offers === null ? null : (await machine.ask("offers", {})).offers;
    useLanguage(tag, texts.page);
    sayMarkup(document);
    // Everything that is drawn from the state is drawn again.
    change({ ...state, language: tag, choices, summary, offers, event: say("page-event-language") });
  });
}

/** Keeps the choice for another day, or forgets it. */
export function keepLanguage(wanted: boolean): void {
  store(LANGUAGE, wanted ? state.language : "");
}

export function languageOptions(chosen: string): HTMLOptionElement[] {
  return languages().map(({ tag, name }) => el("option", { value: tag, lang: tag, selected: tag === chosen }, name));
}

/** The list of languages in the head of the page; where there is only one, there is nothing to choose. */
export function beginLanguages(): void {
  const list = byId<HTMLSelectElement>("language");
  list.replaceChildren(...languageOptions(state.language));
  byId("language-choice").hidden = languages().length === 1;
  list.addEventListener("change", () => {
    void speak(list.value).then(() => {
      if (state.kept !== "nothing") keepLanguage(true);
    });
  });
}
