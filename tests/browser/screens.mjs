// Pictures of every place and state, for eyes: node tests/browser/screens.mjs [--states says,next] [--widths 1280,360]
// [--themes light,dark,forced,print] [--languages en,ja] [--from 0] [--tall 2000] [--out target/screens]. None is ever committed.
// --from and --tall cut a strip out of a long page.

import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { top, visitChromium } from "./drive.mjs";
import { STATES } from "./states.mjs";

const { values } = parseArgs({
  options: {
    states: { type: "string", default: STATES.map(([name]) => name).join(",") },
    widths: { type: "string", default: "1280,768,360" },
    themes: { type: "string", default: "light,dark" },
    languages: { type: "string", default: "en,de,ja,zh-Hans" },
    from: { type: "string", default: "0" },
    tall: { type: "string", default: "0" },
    out: { type: "string", default: join(top, "target/screens") },
  },
});
const [states, widths, themes, languages] = ["states", "widths", "themes", "languages"].map((name) => values[name].split(","));
const MEDIA = {
  light: { colorScheme: "light", forcedColors: "none", media: null },
  dark: { colorScheme: "dark", forcedColors: "none", media: null },
  forced: { colorScheme: "dark", forcedColors: "active", media: null },
  print: { colorScheme: "light", forcedColors: "none", media: "print" },
};
mkdirSync(values.out, { recursive: true });

for (const language of languages) {
  const visit = await visitChromium({ reducedMotion: "reduce" });
  try {
    if (language !== "en") {
      await visit.pick("#language", language);
      await visit.until(language, (wanted) => document.documentElement.lang === wanted, language);
    }
    for (const [name, come] of STATES) {
      await visit.page.setViewportSize({ width: 1280, height: 900 });
      await come(visit);
      if (!states.includes(name)) continue;
      for (const width of widths) {
        await visit.page.setViewportSize({ width: Number(width), height: 900 });
        for (const theme of themes) {
          await visit.page.emulateMedia(MEDIA[theme]);
          const [from, tall] = [Number(values.from), Number(values.tall)];
          const high = await visit.evaluate(() => document.documentElement.scrollHeight);
          const clip = tall === 0 ? undefined : { x: 0, y: Math.min(from, high - 1), width: Number(width), height: Math.min(tall, high - Math.min(from, high - 1)) };
          await visit.page.screenshot({ path: join(values.out, `${name}-${width}-${theme}-${language}${from === 0 ? "" : `-${from}`}.png`), fullPage: true, animations: "disabled", ...(clip === undefined ? {} : { clip }) });
        }
        // On paper nothing can be pressed.
        await visit.page.emulateMedia(MEDIA[themes[0] === "print" ? "light" : themes[0]]);
      }
      console.log(`${language} ${name}`);
    }
    for (const complaint of visit.complaints) console.error(`the page complained: ${complaint}`);
  } finally {
    await visit.close();
  }
}
