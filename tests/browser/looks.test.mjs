// The tokens: every pair of colours has the contrast it needs, the verdicts are told apart without any one kind of cone,
// the type follows its ratio, and no other file states a colour or a size of its own.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { top, visitChromium } from "./drive.mjs";

const tokensText = readFileSync(join(top, "web/src/tokens.css"), "utf8");

/** The declarations of the block that `opening` begins. */
function block(opening) {
  const at = tokensText.indexOf(opening);
  assert.ok(at >= 0, opening);
  const inside = tokensText.slice(at + opening.length, tokensText.indexOf("}", at)).replace(/\/\*[^]*?\*\//g, "");
  return Object.fromEntries([...inside.matchAll(/([a-z-]+[a-z0-9-]*):\s*([^;]+);/g)].map((found) => [found[1], found[2].trim()]));
}

const light = block("\n:root {");
const darkOfSystem = block(':root:not([data-theme="light"]) {');
const darkChosen = block(':root[data-theme="dark"] {');
const themes = { light, dark: { ...light, ...darkChosen } };

const channels = (hex) => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255);
// IEC 61966-2-1, as WCAG 2.2 uses it for relative luminance.
const linear = (value) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
const luminance = (hex) => {
  const [red, green, blue] = channels(hex).map(linear);
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};
/** WCAG 2.2, "contrast ratio". */
function contrast(one, other) {
  const [more, less] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (more + 0.05) / (less + 0.05);
}

test("the contrast is computed as the standard defines it", () => {
  assert.equal(contrast("#000000", "#ffffff"), 21);
  assert.ok(Math.abs(contrast("#777777", "#ffffff") - 4.48) < 0.005);
});

const GROUNDS = ["paper", "surface", "surface-sunk", "chosen"];
const TINTS = ["below-tint", "undecided-tint", "over-tint", "open-tint"];
// Words on every ground they stand on: WCAG 2.2, 1.4.3. Bright light asks more of what is read most: 7, our own choice.
const WORDS = [
  ...[...GROUNDS, ...TINTS].map((ground) => ["ink", ground, 7]),
  ...[...GROUNDS, ...TINTS].map((ground) => ["ink-soft", ground, 4.5]),
  ["accent-ink", "accent", 7],
  ["surface", "ink", 7],
  ...GROUNDS.map((ground) => ["accent", ground, 4.5]),
];
// What is seen and not read: WCAG 2.2, 1.4.11 and 2.4.13.
const SHAPES = [
  ...["paper", "surface", "surface-sunk"].map((ground) => ["line-strong", ground, 3]),
  ...[...GROUNDS, ...TINTS].map((ground) => ["focus", ground, 3]),
  ...[...GROUNDS, ...TINTS].map((ground) => ["mark-ink", ground, 3]),
  ...["below", "undecided", "over"].map((verdict) => [verdict, "surface", 3]),
];

for (const [name, colours] of Object.entries(themes)) {
  test(`every pair of colours is told apart in bad light: ${name}`, () => {
    const faint = [...WORDS, ...SHAPES]
      .map(([one, other, least]) => ({ pair: `${one} on ${other}`, got: contrast(colours[`--${one}`] ?? colours[one], colours[`--${other}`] ?? colours[other]), least }))
      .filter(({ got, least }) => !(got >= least));
    assert.deepEqual(faint, []);
  });
}

test("both ways to the dark theme give the same colours", () => {
  assert.deepEqual(darkChosen, darkOfSystem);
  assert.ok(Object.keys(darkChosen).length > 12);
});

// G. M. Machado, M. M. Oliveira, L. A. F. Fernandes: "A Physiologically-based Model for Simulation of Color Vision
// Deficiency", IEEE Transactions on Visualization and Computer Graphics 15 (6), 2009: severity 1.0, on linear RGB.
const SEEN_BY = {
  "all cones": [[1, 0, 0], [0, 1, 0], [0, 0, 1]],
  protanopia: [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998]],
  deuteranopia: [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.01182, 0.04294, 0.968881]],
  tritanopia: [[1.255528, -0.076749, -0.178779], [-0.078411, 0.930809, 0.147602], [0.004733, 0.691367, 0.3039]],
};

/** CIE 1976 L*a*b* of linear sRGB, white point D65. */
function lab([red, green, blue]) {
  const f = (t) => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);
  const x = f((0.4124564 * red + 0.3575761 * green + 0.1804375 * blue) / 0.95047);
  const y = f(0.2126729 * red + 0.7151522 * green + 0.072175 * blue);
  const z = f((0.0193339 * red + 0.119192 * green + 0.9503041 * blue) / 1.08883);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

const seen = (hex, matrix) => {
  const colour = channels(hex).map(linear);
  return lab(matrix.map((row) => Math.min(1, Math.max(0, row[0] * colour[0] + row[1] * colour[1] + row[2] * colour[2]))));
};

// Of differences in CIE L*a*b* (1976) about 2.3 is one that is just noticed; eight of them, our own choice.
const APART = 8 * 2.3;

for (const [name, colours] of Object.entries(themes)) {
  for (const [eyes, matrix] of Object.entries(SEEN_BY)) {
    test(`the three verdicts' colours are apart for eyes with ${eyes}: ${name}`, () => {
      const verdicts = ["--below", "--undecided", "--over"];
      for (const one of verdicts) {
        for (const other of verdicts.filter((later) => later > one)) {
          const [a, b] = [seen(colours[one], matrix), seen(colours[other], matrix)];
          const distance = Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
          assert.ok(distance >= APART, `${one} and ${other} are ${distance.toFixed(1)} apart, ${APART.toFixed(1)} is asked`);
        }
      }
    });
  }
}

test("type follows its ratio and distances their unit", () => {
  const rem = (name) => Number(/^([0-9.]+)rem$/.exec(light[name])[1]);
  for (const [name, power] of [["--text-1", -2], ["--text-2", -1], ["--text-3", 0], ["--text-4", 1], ["--text-5", 3], ["--text-6", 5]]) {
    assert.ok(Math.abs(rem(name) - (9 / 8) ** power) < 0.001, `${name} is ${rem(name)}`);
  }
  for (const [name, times] of [["--gap-0", 0.5], ["--gap-1", 1], ["--gap-2", 2], ["--gap-3", 3], ["--gap-4", 4], ["--gap-5", 6], ["--gap-6", 10]]) {
    assert.equal(rem(name), times * 0.25, name);
  }
  assert.ok(rem("--target") * 16 >= 44);
});

const stylesHome = join(top, "web/src/styles");
const NAMED = "black|white|gray|grey|red|green|blue|yellow|orange|purple|pink|brown|silver|navy|teal|maroon|olive|lime|aqua|fuchsia";
// What gives the page its rhythm. Measures of layout (widths, columns, positions) belong to the thing they lay out.
const RHYTHM = /^(font|font-size|letter-spacing|padding.*|margin.*|gap|row-gap|column-gap|border.*|outline.*|box-shadow|text-underline-offset|text-decoration-thickness|min-height|stroke-width)$/;

function statedApart(name) {
  const faults = [];
  for (const [at, line] of readFileSync(join(stylesHome, name), "utf8").split("\n").entries()) {
    if (/\/\* raw\b/.test(line)) continue;
    const bare = line.replace(/\/\*[^]*?\*\//g, "").replace(/^\s*@.*\{\s*$/, "");
    for (const [, property, value] of bare.matchAll(/(?:^|[{;\s])(--?[a-z-]+|[a-z-]+):\s*([^;{}]+)[;}]/g)) {
      if (/#[0-9a-fA-F]{3,8}\b|\b(rgb|hsl|lab|oklch)a?\(/.test(value) || new RegExp(`(?<![-\\w"])(${NAMED})(?![-\\w"])`, "i").test(value)) faults.push(`${name}:${at + 1}: ${property}: ${value}`);
      else if (RHYTHM.test(property) && /(?<![\w-])(?:\d*\.)?\d*[1-9]\d*(?:\.\d+)?(px|rem|pt)\b/.test(value)) faults.push(`${name}:${at + 1}: ${property}: ${value}`);
    }
  }
  return faults;
}

test("no style but the tokens states a colour or a size of its own, unless it says why", () => {
  const files = readdirSync(stylesHome).filter((name) => name.endsWith(".css"));
  assert.ok(files.includes("base.css"));
  assert.deepEqual(files.flatMap(statedApart), []);
});

test("every token that is used is there, and no font comes from anywhere else", () => {
  const all = readdirSync(stylesHome).map((name) => readFileSync(join(stylesHome, name), "utf8")).join("\n");
  const used = new Set([...`${all}${tokensText}`.matchAll(/var\((--[a-z0-9-]+)/g)].map((found) => found[1]));
  // Put on an element by the page's own script.
  const placed = new Set(["--done", "--grid-columns", "--grid-width", "--paper-columns"]);
  assert.deepEqual([...used].filter((name) => !(name in light) && !placed.has(name) && !all.includes(`${name}:`)), []);
  assert.doesNotMatch(`${all}${tokensText}`, /@font-face|url\((?!["']?data:)/);
});

test("light and dark are chosen at the foot of the page, kept, and paper stays light", async () => {
  const visit = await visitChromium({ scheme: "dark" });
  const ground = () => visit.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const scheme = () => visit.evaluate(() => getComputedStyle(document.documentElement).colorScheme);
  const inColour = (name) => `rgb(${channels(name).map((value) => Math.round(value * 255)).join(", ")})`;
  try {
    assert.equal(await ground(), inColour(themes.dark["--paper"]), "as the system");
    assert.equal(await scheme(), "dark");
    await visit.pick("#theme", "light");
    assert.equal(await ground(), inColour(light["--paper"]));
    assert.equal(await scheme(), "light");
    await visit.page.reload();
    await visit.until("the page", () => !document.getElementById("page").hidden);
    assert.equal(await ground(), inColour(light["--paper"]), "kept");
    assert.equal(await visit.evaluate(() => document.getElementById("theme").value), "light");
    await visit.page.emulateMedia({ colorScheme: "light" });
    await visit.pick("#theme", "dark");
    assert.equal(await ground(), inColour(themes.dark["--paper"]));
    await visit.page.emulateMedia({ media: "print" });
    assert.equal(await visit.evaluate(() => getComputedStyle(document.body).color), inColour(light["--ink"]), "ink on paper");
    assert.equal(await scheme(), "light");
    await visit.page.emulateMedia({ media: "screen" });
    await visit.goTo("came-in");
    await visit.pick("#theme", "system");
    assert.equal(await ground(), inColour(light["--paper"]));
    assert.equal(await visit.evaluate(() => localStorage.getItem("plumbline.theme")), null, "what is the system's need not be kept");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("with little motion asked for, nothing moves", async () => {
  const visit = await visitChromium({ reducedMotion: "reduce" });
  try {
    const moving = await visit.evaluate(() => {
      document.getElementById("work").hidden = false;
      document.getElementById("work-bar").classList.add("work-unknown");
      return document.getAnimations().length;
    });
    assert.equal(moving, 0);
    assert.equal(await visit.evaluate(() => [...document.querySelectorAll("*")].filter((one) => getComputedStyle(one).scrollBehavior === "smooth").length), 0);
    await visit.page.emulateMedia({ reducedMotion: "no-preference" });
    assert.equal(await visit.evaluate(() => document.getAnimations().length), 1, "the bar sways where motion is welcome");
  } finally {
    await visit.close();
  }
});
