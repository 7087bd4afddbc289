// A page in a browser of its own, so that no measurement warms up the next, and what it cost.

import { readFileSync } from "node:fs";
import { visitChromium } from "../drive.mjs";

export async function freshPage(url, { before = null } = {}) {
  const visit = await visitChromium();
  // The visit's own page idles; another context has a process of its own, and nothing of the first page in it.
  const browser = visit.page.context().browser();
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  const page = await context.newPage();
  const complaints = [];
  page.on("pageerror", (error) => complaints.push(String(error)));
  if (before !== null) await page.addInitScript(before);
  await page.goto(url);
  return {
    page,
    complaints,
    cost: () => costOf(browser),
    close: () => visit.close(),
  };
}

/**
 * What the page's process, workers included, has had so far: of the processor in ms, which other programs' work doesn't
 * lengthen, and the most memory it has held at once. The idle page of the visit has a process too; it is the smaller.
 */
async function costOf(browser) {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send("SystemInfo.getProcessInfo");
  const costs = processInfo.filter(({ type }) => type === "renderer").map(({ id, cpuTime }) => ({ processor: cpuTime * 1000, peakBytes: peakOf(id) }));
  const most = (figures) => (figures.includes(null) || figures.length === 0 ? null : Math.max(...figures));
  return { processor: most(costs.map((cost) => cost.processor)), peakBytes: most(costs.map((cost) => cost.peakBytes)) };
}

function peakOf(pid) {
  try {
    const line = /^VmHWM:\s*(\d+) kB$/m.exec(readFileSync(`/proc/${pid}/status`, "utf8"));
    return line === null ? null : Number(line[1]) * 1024;
  } catch {
    return null;
  }
}

/** Waits in the page until `marks` has what is wanted, or something failed. */
export async function marksWith(page, marks, wanted, patience = 600_000) {
  await page.waitForFunction(([name, key]) => window[name] !== undefined && (window[name][key] !== undefined || window[name].failed !== undefined), [marks, wanted], { timeout: patience, polling: 100 });
  const found = await page.evaluate((name) => window[name], marks);
  if (found.failed !== undefined) throw new Error(`the page failed: ${found.failed}`);
  return found;
}
