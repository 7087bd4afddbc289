// Where help begins: the words of each place, the guide, the picture above the table, the tour, the keys.

import { byId } from "../elements";
import { PLACES, state, watch, type PlaceName } from "../state";
import { openGuide } from "./guide";
import { beginKept } from "./kept";
import { beginKeys } from "./keys";
import { legendFold } from "./legend";
import { noteStep } from "./steps";
import { beginTerms, wordsHere } from "./term";
import type { TermId } from "./terms";
import { beginTour } from "./tour";

/** What a newcomer would stumble over in each place, where it has no heading or tag of its own to stand at. */
const WORDS: Partial<Record<PlaceName, TermId[]>> = {
  start: ["screening", "xrf", "lot", "limit"],
  "came-in": ["reading", "sigma", "detection-limit", "book"],
  trust: ["evidence", "hold", "act"],
  says: ["lot", "homogeneous", "limit", "decision-rule"],
  next: ["next-step", "reference", "probability"],
  write: ["act", "digest", "declaration"],
  prove: ["digest"],
};

function drawWords(): void {
  for (const place of PLACES) {
    const words = WORDS[place];
    if (words === undefined) continue;
    const line = wordsHere(place, words);
    line.id = `words-${place}`;
    const old = document.getElementById(line.id);
    if (old !== null) old.replaceWith(line);
    // Behind the heading, or behind the sentence that explains it.
    else (byId(`place-${place}`).querySelector(":scope > .lead") ?? byId(`heading-${place}`)).after(line);
  }
}

function drawLegend(): void {
  byId("legend-home").replaceChildren(legendFold());
}

export function beginHelp(): void {
  beginKept();
  beginTerms(openGuide);
  beginKeys(() => openGuide());
  beginTour();
  byId("open-guide").addEventListener("click", () => openGuide());
  const again = (): void => {
    drawWords();
    drawLegend();
  };
  again();
  watch(["language"], again);
  watch(["place"], () => noteStep(`place ${state.place}`));
}
