// Somebody in front of the page: brings files, sees, presses, types, takes things away. Half of it goes by keys alone.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { visitWebKit, whyNoWebKit } from "../drive-webkit.mjs";
import { browsers, fillDay, top, until } from "../drive.mjs";

/** Where a day can be had; each browser says by itself why not. */
export const everywhere = [...browsers, { name: "WebKit", visit: visitWebKit, why: whyNoWebKit() }];

export const onTheStick = (name) => readFileSync(join(top, "tests/browser/days/stick", name));

export class Person {
  constructor(visit) {
    this.visit = visit;
  }

  async brings(what, files) {
    await this.visit.evaluate(() => (document.getElementById("summary-event").textContent = ""));
    await this.visit.choose(what, files);
    await this.visit.until(`an answer to ${what}`, () => (document.getElementById("summary-event").textContent !== "" || document.querySelector("#troubles .trouble") !== null) && document.getElementById("work").hidden);
  }

  /** Sees words anywhere in a part of the page, sooner or later. */
  async sees(pattern, where = "#page") {
    let said = "";
    await until(`${pattern} in ${where}`, async () => pattern.test((said = await this.visit.text(where)))).catch(async (error) => {
      throw new Error(`${error.message}; there stands:\n${said.slice(0, 4000)}${await this.visit.troubles()}`);
    });
    return said;
  }

  async hears(pattern) {
    return this.visit.event(pattern);
  }

  async doesNotSee(pattern, where = "#page") {
    assert.doesNotMatch(await this.visit.text(where), pattern);
  }

  /** Presses a button or link by what it says, with the finger. */
  async presses(words, within = "#page") {
    await this.visit.click(await this.named(words, within));
  }

  /** The same by keys: it gets the focus, as Tab would give it, and Enter. */
  async pressesByKey(words, within = "#page", key = "Enter") {
    const selector = await this.named(words, within);
    await this.focuses(selector);
    await this.visit.press(key);
  }

  async focuses(selector) {
    await this.visit.until(selector, (wanted) => document.querySelector(wanted) !== null, selector);
    const takes = await this.visit.evaluate((wanted) => {
      const one = document.querySelector(wanted);
      one.focus();
      return document.activeElement === one && one.tabIndex >= 0;
    }, selector);
    assert.ok(takes, `${selector} can be come to by Tab`);
  }

  /** Walks with Tab alone until the focus stands there. */
  async walksTo(selector, most = 150) {
    for (let steps = 0; steps < most; steps += 1) {
      if (await this.visit.evaluate((wanted) => document.activeElement?.matches(wanted) ?? false, selector)) return;
      await this.visit.press("Tab");
    }
    assert.fail(`Tab does not come to ${selector} in ${most} steps`);
  }

  /** A button, link or fold by its words, as something that a selector finds. */
  async named(words, within) {
    const pattern = typeof words === "string" ? `^${words.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}` : words.source;
    const mark = await this.visit.until(`something to press that says ${words}`, ([source, home]) => {
      const found = [...document.querySelectorAll(`${home} :is(button, a[href], summary)`)].filter((one) => one.checkVisibility({ visibilityProperty: true }) && new RegExp(source).test(one.textContent.replace(/\s+/g, " ").trim()));
      if (found.length === 0) return null;
      for (const one of document.querySelectorAll("[data-pressed-next]")) delete one.dataset.pressedNext;
      // What has an id is found again when it is drawn anew in between.
      if (found[0].id !== "") return `#${CSS.escape(found[0].id)}`;
      found[0].dataset.pressedNext = "yes";
      return "[data-pressed-next]";
    }, [pattern, within]);
    return mark;
  }

  /** Opens a fold; what lies in it is made then. */
  async opensFold(selector) {
    await this.unfolds(selector);
    await this.visit.evaluate((wanted) => (document.querySelector(wanted).open = true), selector);
  }

  async unfolds(selector) {
    await this.visit.until(selector, (wanted) => document.querySelector(wanted) !== null, selector);
    await this.visit.evaluate((wanted) => {
      for (let fold = document.querySelector(wanted).closest("details"); fold !== null; fold = fold.parentElement?.closest("details") ?? null) fold.open = true;
    }, selector);
  }

  async goesTo(place) {
    await this.visit.goTo(place);
  }

  async goesByKeyTo(place) {
    await this.focuses(`#step-${place}`);
    await this.pressesOnce("Enter", place, (wanted) => !document.getElementById(`place-${wanted}`).hidden, place);
  }

  async writes(selector, text) {
    await this.unfolds(selector);
    await this.visit.type(selector, text);
    await this.visit.press("Enter");
  }

  /** The same without a finger: the field is come to, what stands in it is selected, and Enter takes what was typed. */
  async writesByKey(selector, text) {
    await this.unfolds(selector);
    await this.focuses(selector);
    await this.writes(selector, text);
  }

  // ---- by keys alone ----

  /** Goes through a door. The chooser it opens is the system's; without a screen it closes at once, as if nothing had been chosen. */
  async entersBy(door) {
    await this.visit.evaluate(() => document.addEventListener("click", (event) => event.target.matches("input[type=file]") && event.preventDefault(), true));
    await this.walksTo(door);
    await this.visit.press("Enter");
  }

  /** What the page would have done next. */
  wanted() {
    return this.visit.evaluate(() => document.getElementById("next-action").dataset.action);
  }

  /** Goes to the next thing to do by its key, wherever one is, presses it, and says which control has the focus then. */
  async goesOn(wanted) {
    let now = "";
    await until(`${wanted} to be the next thing to do`, async () => wanted.test((now = await this.wanted()))).catch((error) => {
      throw new Error(`${error.message}; it is ${now}`);
    });
    await this.pressesOnce("Alt+Shift+0", "the next thing to do", () => document.activeElement.id === "next-go");
    await this.pressesOnce("Enter", "where that leads", () => document.activeElement.id !== "next-go");
    // It says where the focus has gone, and the focus is to be seen.
    const at = await this.visit.until(`what ${now} leads to`, () => {
      const one = document.activeElement;
      if (one.id === "next-go" || one === document.body || /^heading-/.test(one.id)) return null;
      const box = one.getBoundingClientRect();
      const there = document.elementFromPoint(box.x + box.width / 2, box.y + Math.min(box.height, innerHeight) / 2);
      return there !== null && (one.contains(there) || there.contains(one)) ? { id: one.id, text: one.textContent } : null;
    }).catch(async (error) => {
      const at = await this.visit.evaluate(() => `${document.activeElement.outerHTML.slice(0, 200)} at ${JSON.stringify(document.activeElement.getBoundingClientRect())}`);
      throw new Error(`${error.message}; the focus is on ${at}`);
    });
    return at;
  }

  async putsOff(wanted) {
    await until(`${wanted} to be the next thing to do`, async () => wanted.test(await this.wanted()));
    await this.focuses("#next-later");
    await this.visit.press("Enter");
    await this.hears(/^Put off/);
  }

  /** One press of a key, and what it leads to. A key that is lost is a fault of the page: it is not pressed again. */
  async pressesOnce(key, what, done, argument) {
    await this.visit.press(key);
    await this.visit.until(what, done, argument).catch(async (error) => {
      const focus = await this.visit.evaluate(() => document.activeElement.outerHTML.slice(0, 200));
      throw new Error(`${key} does not lead to ${what}: ${error.message}; the focus is on ${focus}`);
    });
  }

  /** Types into the field that has the focus, and Enter. */
  async types(text) {
    await this.visit.keys(text);
    await this.visit.press("Enter");
  }

  /** One of a few: the arrow keys pass over them, Enter takes the one they stand on. */
  async chooses(within, value) {
    await this.focuses(`${within} input[type=radio]`);
    await this.pressesOnce(" ", "the first of them", () => document.activeElement.checked);
    for (let presses = 0; presses < 12; presses += 1) {
      if (await this.visit.evaluate((wanted) => document.activeElement.value === wanted && document.activeElement.checked, value)) break;
      await this.visit.press("ArrowDown");
    }
    assert.equal(await this.visit.evaluate(() => document.activeElement.value), value);
    await this.visit.press("Enter");
  }

  /** One of a list, by the arrow keys where the list has the keys to itself; some systems open it over the page instead. */
  async picksByKey(selector, value) {
    await this.focuses(selector);
    const stands = () => this.visit.evaluate((wanted) => document.querySelector(wanted).value, selector);
    for (let presses = 0; presses < 40 && (await stands()) !== value; presses += 1) {
      const before = await stands();
      if (this.visit.opensLists !== true) await this.visit.press("ArrowDown");
      if ((await stands()) === before) return this.visit.pick(selector, value);
    }
    assert.equal(await stands(), value);
  }

  async opensColumnsOf(file) {
    await this.visit.until(`the columns of ${file}`, (wanted) => {
      const card = [...document.querySelectorAll("details.source")].find((one) => one.textContent.includes(wanted));
      if (card === undefined) return false;
      for (const fold of [card, ...card.querySelectorAll("details[id^=act-columns]")]) fold.open = true;
      return card.querySelector(".mapping tbody tr") !== null;
    }, file);
  }

  /** The list of what a column may be, by its heading. */
  columnHeaded(heading) {
    return this.visit.until(`the column ${heading}`, (wanted) => [...document.querySelectorAll(".meaning-form")].find((one) => (one.closest("li, tr, div[id]") ?? one).textContent.includes(wanted))?.querySelector("select[id$='-role']")?.id, heading);
  }

  async picks(selector, value) {
    await this.unfolds(selector);
    await this.visit.pick(selector, value);
  }

  /** Fills a form field by field and sends it. */
  async fills(form, fields) {
    await this.visit.until(form, (wanted) => document.querySelector(wanted) !== null, form);
    await this.unfolds(form);
    for (const [name, value] of Object.entries(fields)) {
      const control = `${form} [id$="-${name}"]`;
      const kind = await this.visit.until(control, (wanted) => document.querySelector(wanted)?.type, control);
      if (kind === "select-one") await this.visit.pick(control, value);
      else if (kind === "date") await this.setsDay(control, value);
      else await this.visit.type(control, value);
    }
    await this.visit.click(`${form} button[type=submit]`);
  }

  setsDay(selector, day) {
    return fillDay(this.visit, selector, day);
  }

  async takesAway(file) {
    await this.focuses(`#save-${file.replace(".", "-")}`);
    return this.visit.downloaded(file, () => this.visit.press("Enter"));
  }

  async findings() {
    return JSON.parse(String(await this.takesAway("findings.json")));
  }

  /** What the page says of its rows: each number by its word. */
  async rows() {
    return this.visit.evaluate(() => Object.fromEntries([...document.querySelectorAll(".equation-total .term")].map((term) => [term.querySelector("span").textContent, Number(term.querySelector("strong").textContent.replace(/\D/g, ""))])));
  }

  /** The rows on screen add up, and so does every file. */
  async addsUp() {
    await this.goesTo("came-in");
    await this.sees(/The rows add up: each one has exactly one fate/, "#came-in");
    const { "rows came in": came, ...fates } = await this.rows();
    assert.equal(Object.values(fates).reduce((sum, n) => sum + n, 0), came, JSON.stringify({ came, ...fates }));
    return { came, ...fates };
  }

  /** Each lot by its name: what became of it, and all that is said of it. */
  async lots() {
    await this.goesTo("says");
    return this.visit.evaluate(() => Object.fromEntries([...document.querySelectorAll("#says-lots .lot")].map((lot) => [lot.querySelector("h3").innerText.split(" ")[0], { is: lot.querySelector(".disposition").innerText, text: lot.innerText }])));
  }

  /** The certificate of a check standard, element by element, in the open form: what is the same for all is typed once. */
  async givesCertificate(sample, number, elements) {
    const form = await this.visit.until("the form", () => document.querySelector("#certificates-new form")?.id);
    for (const [at, [element, [value, u]]] of Object.entries(elements).entries()) {
      assert.equal(await this.visit.evaluate((id) => document.getElementById(`${id}-sample`).value, form), sample, "which sample it is stands there already");
      await this.picksByKey(`#${form}-element`, element);
      for (const [field, text] of [["value", value], ["u", u], ...(at === 0 ? [["id", number]] : [])]) {
        await this.focuses(`#${form}-${field}`);
        await this.visit.keys(text);
      }
      await this.visit.press("Enter");
      await this.hears(new RegExp(`^Taken: check standard ${sample}: ${element} ${value} mg/kg, U ${u} mg/kg \\(k = 2\\), certificate ${number}`));
      await this.visit.until("the form for the next element", (id) => document.activeElement.id === `${id}-element` && document.activeElement.value === "", form);
    }
  }

  /** Opens one reading in the table by its id. */
  async opensReading(id) {
    await this.goesTo("says");
    await this.visit.until(`the row ${id}`, (wanted) => [...document.querySelectorAll(".grid-body [role=row]")].some((row) => row.innerText.includes(wanted)), id);
    const row = await this.visit.evaluate((wanted) => [...document.querySelectorAll(".grid-body [role=row]")].find((one) => one.innerText.includes(wanted)).getAttribute("aria-rowindex"), id);
    await this.focuses('.grid-body [role=gridcell][tabindex="0"]');
    for (let presses = 0; presses < 60; presses += 1) {
      const now = await this.visit.evaluate(() => document.activeElement.closest("[role=row]")?.getAttribute("aria-rowindex") ?? null);
      if (now === row) break;
      await this.visit.press(Number(now ?? 0) < Number(row) ? "ArrowDown" : "ArrowUp");
    }
    await this.visit.press("Enter");
    await this.visit.until("the detail", (wanted) => !document.getElementById("detail").hidden && document.getElementById("detail-heading").textContent.includes(wanted), id);
  }

  /** Nothing went wrong that nobody was told of, and nothing was fetched. */
  isContent() {
    assert.deepEqual(this.visit.complaints, []);
    if (this.visit.strangers !== undefined) assert.deepEqual(this.visit.strangers(), []);
  }
}

