// A browser without WebAssembly gets plain words instead of a blank page.

import assert from "node:assert/strict";
import { test } from "node:test";
import { visitChromium } from "./drive.mjs";

test("without WebAssembly the page says what is missing and whom to ask", async () => {
  const visit = await visitChromium({ before: "delete globalThis.WebAssembly;" });
  try {
    assert.match(await visit.text("#no-webassembly"), /WebAssembly switched off/);
    assert.equal(await visit.evaluate(() => document.getElementById("page").hidden), true);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});
