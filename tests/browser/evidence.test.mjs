// Every reason that speaks of missing evidence has a place where it can be given.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { pageWords, top } from "./drive.mjs";

const lot = readFileSync(join(top, "crates/core/src/lot.rs"), "utf8");
const declared = new Map([...lot.slice(lot.indexOf("LotReasonCode {")).split("\n    }\n")[0].matchAll(/^\s+(\w+) => "([a-z_]+)",/gm)].map((match) => [match[1], match[2]]));
const kind = lot.slice(lot.indexOf("pub const fn kind(self)")).split("ReasonKind::Outcome,")[0];
const outcomes = new Set([...kind.matchAll(/LotReasonCode::(\w+)/g)].map((match) => match[1]));
const evidence = [...declared].filter(([name]) => !outcomes.has(name)).map(([, code]) => code);

const kinds = readFileSync(join(top, "web/src/page/act-kinds.ts"), "utf8");
const placed = [...kinds.slice(kinds.indexOf("export const EVIDENCE")).matchAll(/reasons: \[([^\]]*)\]/g)].flatMap((match) => [...match[1].matchAll(/"([a-z_]+)"/g)].map((code) => code[1]));

test("every evidence reason of the core belongs to one card", () => {
  assert.ok(evidence.length >= 10, `the codes are read from lot.rs: ${evidence}`);
  assert.ok(outcomes.size >= 5 && evidence.includes("trust_none") && !evidence.includes("over_limit"));
  assert.deepEqual(evidence.filter((code) => placed.filter((one) => one === code).length !== 1), []);
});

test("no card waits for a reason that the core doesn't give", () => {
  assert.deepEqual(placed.filter((code) => !evidence.includes(code)), []);
});

const cards = [...kinds.slice(kinds.indexOf("export const EVIDENCE")).split("\n];")[0].matchAll(/id: "([a-z0-9]+)",([^]*?)(?=id: "|$)/g)].map((match) => ({ id: match[1], gives: /acts: \[\{|acts: \[[A-Z]|per(?:Lot|Material|File): [[{A-Z]/.test(match[2]) }));
const page = readFileSync(join(top, "web/src/page/places/trust.ts"), "utf8");
const words = pageWords();

test("every card says what it is about and has a control of its own", () => {
  assert.ok(cards.length >= 10, cards.map((card) => card.id).join(" "));
  assert.deepEqual(cards.filter(({ id }) => !words.includes(`\npage-evidence-${id} = `) || !words.includes(`\npage-evidence-${id}-why = `)), []);
  assert.deepEqual(cards.filter(({ id, gives }) => !gives && !page.includes(`evidence.id === "${id}"`)), []);
});

test("every act that a person can do has its control on the page", () => {
  const acts = readFileSync(join(top, "crates/core/src/acts.rs"), "utf8");
  const all = [...acts.slice(acts.indexOf("ActKind {")).split("\n    }\n")[0].matchAll(/^\s+\w+ => "([a-z0-9_]+)",/gm)].map((match) => match[1]);
  const code = readdirSync(join(top, "web/src/page"), { recursive: true })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => readFileSync(join(top, "web/src/page", name), "utf8"))
    .join("\n");
  assert.ok(all.length >= 30);
  assert.deepEqual(all.filter((one) => !code.includes(`kind: "${one}"`)), []);
});
