// The yardstick: Papa Parse and plain JavaScript, in a classic worker of a page at file://, like the built page.

import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { freshPage, marksWith } from "./fresh-page.mjs";

const here = join(dirname(fileURLToPath(import.meta.url)), "yardstick");

/** Puts the yardstick's parts into one page and gives its address. */
export function makeYardstick(out) {
  const papa = readFileSync(createRequire(import.meta.url).resolve("papaparse/papaparse.min.js"), "utf8");
  const worker = `${papa}\n${readFileSync(join(here, "pipeline.js"), "utf8")}`;
  const script = readFileSync(join(here, "page.js"), "utf8");
  for (const text of [worker, script]) if (/<\/script/i.test(text)) throw new Error("a script of the yardstick would end itself");
  const page = readFileSync(join(here, "page.html"), "utf8")
    .replace("<!-- worker -->", () => worker)
    .replace("<!-- page -->", () => script);
  mkdirSync(dirname(out), { recursive: true });
  writeFileSync(out, page);
  return pathToFileURL(out).href;
}

export async function reviewInYardstick(url, file) {
  const opened = await freshPage(url);
  try {
    const before = await opened.cost();
    await opened.page.getByLabel("Result files", { exact: true }).setInputFiles(file);
    const marks = await marksWith(opened.page, "yardstickMarks", "stood");
    const cost = await opened.cost();
    if (opened.complaints.length > 0) throw new Error(`the yardstick complained: ${opened.complaints}`);
    return {
      total: marks.stood - marks.chosen,
      steps: { "parsed and decided": marks.parsed - marks.chosen, "hashed meanwhile": marks.digested - marks.chosen },
      processor: cost.processor - before.processor,
      peakBytes: cost.peakBytes,
      readings: marks.result.rows,
      sha256: marks.result.sha256,
      counts: marks.result.counts,
    };
  } finally {
    await opened.close();
  }
}
