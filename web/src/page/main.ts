// Where the page begins.

import { beginAddresses } from "./address";
import { beginBringing } from "./bring";
import { byId } from "./elements";
import { beginDoors } from "./door-taken";
import { Engine } from "./engine";
import { beginHelp } from "./help/begin";
import { rawOf } from "./help/plain";
import { beginKeeping } from "./keep/begin";
import { inflatedText } from "./inert";
import { compiledCore, coreBytes } from "./packed";
import { begin } from "./instance";
import { beginLanguages, beginWith, firstLanguage } from "./languages";
import { tellTrouble } from "./troubles";
import { beginNextBar } from "./next-bar";
import { beginPlaces } from "./place";
import { drawCameIn } from "./places/came-in";
import { drawNext } from "./places/next";
import { drawSaysLots } from "./places/says-lots";
import { makeSaysTable } from "./places/says-table";
import { beginProve, drawProve } from "./places/prove";
import { beginStart, drawStart } from "./places/start";
import { drawTrust } from "./places/trust";
import { beginTraining } from "./train/room";
import { beginWho } from "./places/who";
import { drawWrite } from "./places/write";
import { beginHand } from "./hand";
import { useLaterStyles } from "./later-style";
import { beginPresses } from "./pressed";
import { beginProving } from "./proving";
import { beginRemembering } from "./remembered";
import { beginShell } from "./shell";
import { state, watch, type PlaceName } from "./state";
import { beginTheme, useKeptTheme } from "./theme";
import { ENGLISH, say, sayMarkup } from "./words";

/** Draws a place while it is shown, and again whenever its findings change. */
function keepDrawn(place: typeof state.place, host: HTMLElement, draw: (host: HTMLElement) => void, alsoWith: (keyof typeof state)[] = []): void {
  let stale = true;
  const now = (): void => {
    if (state.place !== place || !stale) return;
    stale = false;
    draw(host);
  };
  watch(["summary", "files", ...alsoWith], () => {
    stale = true;
    now();
  });
  watch(["place"], now);
  now();
}

// Some things belong to several places. There is one of each, so that it keeps its name and what was typed, and it moves.
const SHARED: { id: string; places: PlaceName[] }[] = [
  { id: "bring", places: ["start", "came-in"] },
  { id: "who", places: ["trust", "write"] },
];

function moveShared(): void {
  for (const { id, places } of SHARED) {
    if (!places.includes(state.place)) continue;
    const home = byId(`${id}-home-${state.place}`);
    if (byId(id).parentElement !== home) home.append(byId(id));
  }
}

// A fault of our own must not pass for a quiet page.
function tellOwnFaults(): void {
  const tell = (why: unknown): void =>
    tellTrouble({
      key: "page",
      about: "",
      what: say("page-trouble-page-what"),
      where: say("page-trouble-page-where"),
      why: say("page-trouble-page-why"),
      todo: say("page-trouble-page-todo"),
      code: "page",
      raw: rawOf(why),
      fault: true,
    });
  addEventListener("error", (event) => tell(event.error ?? event.message));
  addEventListener("unhandledrejection", (event) => tell(event.reason));
}

/** Draws what is drawn once, again for each language. */
function drawOnce(): void {
  drawStart(byId("doors"));
}

function start(): void {
  useLaterStyles();
  sayMarkup(document);
  byId("page").hidden = false;
  const parts = Promise.all([inflatedText("plumbline-worker"), compiledCore()]);
  const engine = (): Promise<Engine> => parts.then(([worker, core]) => new Engine(worker, core, coreBytes));
  void begin(engine());
  beginProving(engine());
  beginHand();
  beginPresses();
  beginShell();
  beginNextBar();
  tellOwnFaults();
  beginBringing();
  beginRemembering();
  beginKeeping();
  beginLanguages();
  beginTheme();
  beginDoors();
  drawOnce();
  beginStart();
  watch(["language"], drawOnce);
  makeSaysTable(byId("says-table"));
  beginWho();
  beginProve();
  beginHelp();
  watch(["place"], moveShared);
  beginTraining(byId("train"));
  beginAddresses();
  beginPlaces();
  moveShared();
  keepDrawn("came-in", byId("came-in"), drawCameIn, ["kept", "forgotten", "choices"]);
  keepDrawn("trust", byId("trust"), drawTrust);
  keepDrawn("says", byId("says-lots"), drawSaysLots);
  keepDrawn("next", byId("next"), drawNext);
  keepDrawn("prove", byId("prove-results"), drawProve, ["proving"]);
  keepDrawn("write", byId("write"), drawWrite, ["papers", "door"]);
}

function startInItsLanguage(): void {
  useKeptTheme();
  if (document.documentElement.dataset["cannotRun"] === "yes") return;
  const language = firstLanguage();
  // English is here already; another is unpacked before anything is said.
  if (language === ENGLISH) start();
  else void beginWith(language).catch(console.error).then(start);
}

startInItsLanguage();
// Read by the script that unpacked this one: an error up to here would leave an empty page without a word.
document.documentElement.dataset["began"] = "yes";
