// Drives the built page in WebKitGTK, the engine of GNOME's browser and kin to Safari's, by Debian's WebKitWebDriver.
// No library is between: the W3C's WebDriver protocol is plain HTTP with JSON.
//
// Its driver cannot hand over downloads, so `downloaded` reads what the page gave to the browser to save: URL.createObjectURL
// is wrapped ahead of the press that saves, and the bytes of the blob that was handed to it are read back.

import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { createServer } from "node:net";
import { after } from "node:test";
import { pathToFileURL } from "node:url";
import { AnyVisit, broughtOutAndAtRest, builtPage, until } from "./drive.mjs";

const pageUrl = pathToFileURL(builtPage).href;
const ELEMENT = "element-6066-11e4-a52e-4f735466cecf";
const START_MS = 60_000;
// Once in some hundred starts the browser comes up but never greets its driver, which then waits for it without end.
const SESSION_TRIES = 3;

const driverPath = () => process.env.PLUMBLINE_WEBKIT_DRIVER || "/usr/bin/WebKitWebDriver";
const displayPath = () => process.env.PLUMBLINE_XVFB || "/usr/bin/Xvfb";
const FOLDERS = ["/usr/lib/x86_64-linux-gnu", "/usr/lib/aarch64-linux-gnu", "/usr/lib64", "/usr/lib"].flatMap((lib) => ["webkit2gtk-4.1", "webkitgtk-6.0", "webkit2gtk-4.0"].map((version) => `${lib}/${version}/MiniBrowser`));
const browserPath = () => process.env.PLUMBLINE_WEBKIT || FOLDERS.find((path) => existsSync(path)) || FOLDERS[0];

/** Why WebKit cannot be driven here; null where it can. */
export function whyNoWebKit() {
  const missing = [driverPath(), browserPath(), displayPath()].filter((path) => !existsSync(path));
  return missing.length === 0 ? null : `WebKit was not driven: ${missing.join(", ")} missing here (Debian's packages webkit2gtk-driver and xvfb bring them)`;
}

// ---- what runs for it: a display without a screen, and the driver ----

const running = [];

function freePort() {
  return new Promise((found, failed) => {
    const server = createServer();
    server.on("error", failed);
    server.listen(0, "127.0.0.1", () => {
      const { port } = server.address();
      server.close(() => found(port));
    });
  });
}

function started(program, args, options) {
  const child = spawn(program, args, options);
  running.push(child);
  return child;
}

/** Xvfb chooses a free display by itself and writes its number down. */
async function display() {
  const child = started(displayPath(), ["-displayfd", "3", "-screen", "0", "1600x1200x24", "-nolisten", "tcp"], { stdio: ["ignore", "ignore", "ignore", "pipe"] });
  let said = "";
  child.stdio[3].on("data", (bytes) => (said += bytes));
  return `:${(await until("a display", () => /^(\d+)\n/.exec(said), START_MS))[1]}`;
}

let driver = null;

async function driverAddress() {
  driver ??= (async () => {
    const [port, shown] = [await freePort(), await display()];
    // As root its sandbox cannot be set up; what is opened here is our own page.
    const environment = { ...process.env, DISPLAY: shown, WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: "1", GDK_BACKEND: "x11", NO_AT_BRIDGE: "1" };
    started(driverPath(), [`--port=${port}`], { stdio: "ignore", env: environment });
    const address = `http://127.0.0.1:${port}`;
    await until("WebKit's driver", () => fetch(`${address}/status`).then((answer) => answer.ok, () => false), START_MS);
    return address;
  })();
  return driver;
}

function endAll() {
  for (const child of running.splice(0).reverse()) child.kill();
  driver = null;
}
process.on("exit", endAll);
if (process.env.NODE_TEST_CONTEXT !== undefined) after(endAll);

async function ask(method, path, body, limit = undefined) {
  const answer = await fetch(`${await driverAddress()}${path}`, { method, signal: limit === undefined ? null : AbortSignal.timeout(limit), ...(body === undefined ? {} : { body: JSON.stringify(body), headers: { "content-type": "application/json" } }) });
  const { value } = await answer.json();
  if (!answer.ok) throw new Error(`WebKit: ${value.error}: ${value.message}`);
  return value;
}

// ---- keys ----

// Numbers of the WebDriver standard, section 17.4.2 "Keyboard actions".
const KEYS = { Enter: "\uE007", Tab: "\uE004", Shift: "\uE008", Control: "\uE009", Alt: "\uE00A", Delete: "\uE017", Backspace: "\uE003", Escape: "\uE00C", ArrowLeft: "\uE012", ArrowUp: "\uE013", ArrowRight: "\uE014", ArrowDown: "\uE015", Home: "\uE011", End: "\uE010", PageUp: "\uE00E", PageDown: "\uE00F", Space: " " };
const keyOf = (name) => KEYS[name] ?? name;

/** "Shift+Tab" as a row of keys going down and up. */
function strokes(chord) {
  const names = chord === "+" ? ["+"] : chord.split("+");
  return [...names.map((name) => ({ type: "keyDown", value: keyOf(name) })), ...names.reverse().map((name) => ({ type: "keyUp", value: keyOf(name) }))];
}

// ---- one visit ----

const WRAPPED = `
  if (window.handedOut === undefined) {
    window.handedOut = [];
    const makeAddress = URL.createObjectURL.bind(URL);
    URL.createObjectURL = (thing) => {
      const address = makeAddress(thing);
      window.handedOut.push({ address, thing });
      return address;
    };
    addEventListener("click", (event) => {
      const link = event.target instanceof Element ? event.target.closest("a[download]") : null;
      const given = link === null ? undefined : window.handedOut.find((one) => one.address === link.href);
      if (given !== undefined) given.name = link.download;
    }, true);
  }`;

class WebKitVisit extends AnyVisit {
  /** A list takes the arrow keys in a window of its own, which its driver has no hold of. */
  opensLists = true;

  constructor(session) {
    super();
    this.session = session;
  }

  ask(method, path, body) {
    return ask(method, `/session/${this.session}${path}`, body);
  }

  /** As the other drivers do: a function, or a text, run in the page; what it gives may take its time. */
  async evaluate(work, argument = null) {
    const script =
      typeof work === "string"
        ? "const done = arguments[arguments.length - 1]; try { (0, eval)(arguments[0]); done({ gave: null }); } catch (error) { done({ failed: String(error) }); }"
        : `const done = arguments[arguments.length - 1]; Promise.resolve().then(() => (${work})(arguments[0])).then((gave) => done({ gave: gave === undefined ? null : gave }), (error) => done({ failed: String(error) }));`;
    const { gave, failed } = await this.ask("POST", "/execute/async", { script, args: [typeof work === "string" ? work : argument] });
    if (failed !== undefined) throw new Error(`in WebKit: ${failed}`);
    return gave;
  }

  /** The page's own policy forbids eval; a script of a file's text is put in the way the driver itself may. */
  async put(text) {
    await this.ask("POST", "/execute/sync", { script: text, args: [] });
  }

  async element(selector) {
    const found = await until(selector, () => this.ask("POST", "/element", { using: "css selector", value: selector }).catch(() => null));
    return found[ELEMENT];
  }

  /** What is drawn anew or still moving is pressed once it stands still; its driver presses where it stood when it was found. */
  async click(selector) {
    let refused = "";
    await until(selector, async () => {
      await this.evaluate(broughtOutAndAtRest, selector);
      try {
        await this.ask("POST", `/element/${await this.element(selector)}/click`, {});
        return true;
      } catch (error) {
        if (!/not interactable|stale/.test(error.message)) throw error;
        refused = error.message;
        return false;
      }
    }).catch((error) => {
      throw new Error(`${error.message}, which WebKit would not press: ${refused}`);
    });
  }

  async press(chord) {
    await this.ask("POST", "/actions", { actions: [{ type: "key", id: "keys", actions: strokes(chord) }] });
  }

  async keys(text) {
    await this.ask("POST", "/actions", { actions: [{ type: "key", id: "keys", actions: [...text].flatMap(strokesOf) }] });
  }

  async type(selector, text) {
    await this.evaluate((wanted) => {
      const field = document.querySelector(wanted);
      field.focus();
      field.select?.();
    }, selector);
    await this.press("Delete");
    await this.keys(text);
  }

  async opens(address) {
    await this.ask("POST", "/url", { url: address });
    await this.standing();
    await this.put(WRAPPED);
  }

  async reload() {
    await this.ask("POST", "/refresh", {});
    await this.standing();
    await this.put(WRAPPED);
  }

  async choose(label, files) {
    const id = await this.until(`the label ${label}`, (wanted) => [...document.querySelectorAll("label")].find((one) => one.textContent === wanted)?.htmlFor, label);
    await this.ask("POST", `/element/${await this.element(`#${id}`)}/value`, { text: [files].flat().join("\n") });
  }

  /** Picks from a list as a hand does: the value is there, and the page is told. */
  async pick(selector, value) {
    await this.ask("POST", `/element/${await this.element(`${selector} option[value="${value}"]`)}/click`, {});
  }

  async downloaded(name, doing) {
    await this.evaluate(() => (window.handedOut.length = 0));
    await doing();
    const at = await this.until(`the download ${name}`, (wanted) => {
      const found = window.handedOut.findIndex((one) => one.name === wanted);
      return found < 0 ? null : found + 1;
    }, name);
    const base64 = await this.evaluate(async (index) => {
      const bytes = new Uint8Array(await window.handedOut[index - 1].thing.arrayBuffer());
      let text = "";
      for (let from = 0; from < bytes.length; from += 0x8000) text += String.fromCharCode(...bytes.subarray(from, from + 0x8000));
      return btoa(text);
    }, at);
    return Buffer.from(base64, "base64");
  }

  async close() {
    // A page with acts that are not kept asks before it is left; nobody is there to answer.
    await this.ask("DELETE", "").catch(() => {});
  }
}

function strokesOf(letter) {
  return [{ type: "keyDown", value: letter }, { type: "keyUp", value: letter }];
}

/** A browser that did not greet its driver is ended with it, and both are begun anew; that it happened is said. */
async function newSession() {
  const wanted = { alwaysMatch: { "webkitgtk:browserOptions": { binary: browserPath(), args: ["--automation"] }, timeouts: { script: 120_000 }, unhandledPromptBehavior: "accept" } };
  for (let tries = 1; ; tries += 1) {
    try {
      return (await ask("POST", "/session", { capabilities: wanted }, START_MS)).sessionId;
    } catch (error) {
      if (error.name !== "TimeoutError" || tries === SESSION_TRIES) throw error;
      console.log(`WebKit did not start within ${START_MS / 1000} s; its driver is begun anew`);
      endAll();
    }
  }
}

/** Opens the page in WebKit. */
export async function visitWebKit({ width = 1280, height = 900, start = pageUrl } = {}) {
  const visit = new WebKitVisit(await newSession());
  await visit.ask("POST", "/window/rect", { width, height });
  await visit.opens(start);
  return visit;
}
