// The page's words: each key that is asked for stands in the catalogue, and none stands there for nothing.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { deliveries, pageWords, top } from "./drive.mjs";

const catalogue = pageWords();
const keys = [...catalogue.matchAll(/^([a-z][a-z0-9-]*) =/gm)].map((match) => match[1]);

const sources = [join(top, "web/index.html")];
for (const entry of readdirSync(join(top, "web/src"), { recursive: true })) if (entry.endsWith(".ts")) sources.push(join(top, "web/src", entry));
const code = sources.map((file) => readFileSync(file, "utf8")).join("\n");

const whole = new Set([...code.matchAll(/["`](page-[a-z0-9-]+)["`]/g)].map((match) => match[1]));
// `page-place-${...}`: the part in braces may be anything.
const made = [...code.matchAll(/`(page-[^`]*\$\{[^`]*)`/g)].map((match) => new RegExp(`^${match[1].replace(/\$\{[^}]*\}+/g, "[a-z0-9-]+").replace(/[)}"]+$/g, "")}$`));

test("every key of the page's words starts with page- and stands once", () => {
  assert.deepEqual(keys.filter((key) => !key.startsWith("page-")), []);
  assert.equal(new Set(keys).size, keys.length);
});

test("every word the page asks for by its whole key is in the catalogue", () => {
  assert.deepEqual([...whole].filter((key) => !keys.includes(key)), []);
});

test("no word of the catalogue is asked for nowhere", () => {
  const asked = (key) => whole.has(key) || made.some((pattern) => pattern.test(key));
  assert.deepEqual(keys.filter((key) => !asked(key)), []);
});

test("every invented delivery has its title in the catalogue, the one of its folder's note", () => {
  for (const { name, folder } of deliveries()) {
    const heading = /^# \d+ (.+)$/m.exec(readFileSync(join(folder, "README.md"), "utf8"))[1];
    assert.ok(catalogue.includes(`page-delivery-${name.slice(0, 2)} = ${heading}\n`), name);
  }
});
