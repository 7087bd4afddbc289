// The built page, timed from outside: it has no marks of its own, so its worker's answers and what it shows are watched.

import { freshPage, marksWith } from "./fresh-page.mjs";

const WATCH = `
  const marks = (window.plumblineMarks = {});
  const now = () => performance.now();
  const RealWorker = Worker;
  window.Worker = class extends RealWorker {
    constructor(...all) {
      super(...all);
      this.addEventListener("message", ({ data }) => {
        if (data.kind === "ready") marks.usable ??= now();
        if (data.kind === "sources") marks.read = now();
        if (data.kind === "crashed") marks.failed = data.text;
        if (data.kind === "summary") {
          marks.reviewed = now();
          const { readings, adds_up, outcome_counts, sources } = data.summary;
          marks.result = { readings, adds_up, outcome_counts, sha256: sources.map((source) => source.sha256) };
        }
      });
    }
  };
  addEventListener("change", ({ target }) => {
    if (target.id === "result-files") marks.chosen = now();
  }, true);
  document.addEventListener("DOMContentLoaded", () => {
    const stands = () => {
      if (marks.stands !== undefined || document.getElementById("summary-says").textContent === "") return;
      marks.stands = 0;
      requestAnimationFrame(() => setTimeout(() => (marks.stood = now())));
    };
    new MutationObserver(stands).observe(document.getElementById("summary"), { childList: true, characterData: true, subtree: true });
  });
  new PerformanceObserver((seen) => {
    for (const paint of seen.getEntriesByName("first-contentful-paint")) marks.shown = paint.startTime;
  }).observe({ type: "paint", buffered: true });
`;

/** From asking for the page to its first picture, and to its engine's first answer: from then on files are read. */
export async function coldStart(url) {
  const opened = await freshPage(url, { before: WATCH });
  try {
    await marksWith(opened.page, "plumblineMarks", "shown", 60_000);
    const { shown, usable } = await marksWith(opened.page, "plumblineMarks", "usable", 60_000);
    return { shown, usable };
  } finally {
    await opened.close();
  }
}

/** From choosing the file to the summary. */
export async function reviewInPage(url, file) {
  const opened = await freshPage(url, { before: WATCH });
  try {
    await marksWith(opened.page, "plumblineMarks", "usable", 60_000);
    const before = await opened.cost();
    await opened.page.getByLabel("Result files", { exact: true }).setInputFiles(file);
    const marks = await marksWith(opened.page, "plumblineMarks", "stood");
    const cost = await opened.cost();
    const { readings, adds_up, outcome_counts, sha256 } = marks.result;
    if (!adds_up || sha256.length !== 1 || opened.complaints.length > 0) throw new Error(`the page's rows do not add up or it complained: ${opened.complaints}`);
    const counts = Object.fromEntries(outcome_counts.map((row) => [row.substance, Object.fromEntries(row.counts.map(({ outcome, count }) => [outcome, count]))]));
    return {
      total: marks.stood - marks.chosen,
      steps: { "read and parsed": marks.read - marks.chosen, reviewed: marks.reviewed - marks.read, shown: marks.stood - marks.reviewed },
      processor: cost.processor - before.processor,
      peakBytes: cost.peakBytes,
      readings,
      sha256: sha256[0],
      counts,
    };
  } finally {
    await opened.close();
  }
}
