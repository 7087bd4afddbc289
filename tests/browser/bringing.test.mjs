// How files come in: chosen, chosen as a folder, or dropped anywhere.

import assert from "node:assert/strict";
import { dirname } from "node:path";
import { test } from "node:test";
import { visitChromium, writtenFiles } from "./drive.mjs";

const table = (sample, lot) => `Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s)\r\n${sample},P-1,housing,${lot},Alder Works,polymer,12,5\r\n`;
const names = () => [...document.querySelectorAll(".source-name")].map((name) => name.textContent);

test("a folder's files go by their path inside it, in the order of their bytes", async () => {
  const visit = await visitChromium();
  try {
    const [first] = writtenFiles({ "b.csv": table("S-1", "A-1"), "a/z.csv": table("S-2", "A-1"), "Z.csv": table("S-3", "A-1") });
    await visit.choose("Result folder", dirname(first));
    await visit.reviewed();
    await visit.goTo("came-in");
    assert.deepEqual(await visit.evaluate(names), ["Z.csv", "a/z.csv", "b.csv"]);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("files brought one after the other make the same review as all at once", async () => {
  const files = { "c.csv": table("S-1", "A-1"), "b.csv": table("S-2", "B-1"), "a.csv": table("S-3", "C-1") };
  const saved = [];
  for (const steps of [[[0, 1, 2]], [[0], [2], [1]]]) {
    const visit = await visitChromium();
    try {
      const paths = writtenFiles(files);
      let had = 0;
      for (const step of steps) {
        await visit.choose("Result files", step.map((at) => paths[at]));
        had += step.length;
        await visit.until("the files", (wanted) => document.querySelector("#readings-shown").textContent.startsWith(`${wanted} of`), had);
      }
      await visit.goTo("write");
      saved.push(await visit.downloaded("findings.json", () => visit.click("#save-findings-json")));
    } finally {
      await visit.close();
    }
  }
  assert.ok(saved[0].equals(saved[1]));
});

test("results and settings dropped together are told apart, and a row of the one obeys the other", async () => {
  const visit = await visitChromium();
  try {
    await visit.evaluate(
      ([result, settings]) => {
        const carried = new DataTransfer();
        carried.items.add(new File([result], "r.csv"));
        carried.items.add(new File([settings], "mine.toml"));
        document.body.dispatchEvent(new DragEvent("drop", { dataTransfer: carried, bubbles: true, cancelable: true }));
      },
      [table("S-1", "A-1"), 'schema = "plumbline.settings/1"\ntitle = "Dropped settings"\n'],
    );
    await visit.reviewed();
    await visit.goTo("came-in");
    assert.deepEqual(await visit.evaluate(names), ["r.csv"]);
    await visit.goTo("write");
    assert.equal(await visit.evaluate(() => document.getElementById("act-title--").value), "Dropped settings");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a file taken out is gone from the review, and the others stand", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "a.csv": table("S-1", "A-1"), "b.csv": table("S-2", "B-1") }));
    await visit.reviewed();
    await visit.goTo("came-in");
    await visit.evaluate(() => {
      for (const fold of document.querySelectorAll("details.source")) fold.open = true;
    });
    await visit.page.getByRole("button", { name: /Take this file out.*a\.csv/ }).click();
    await visit.event(/taken out/);
    assert.deepEqual(await visit.evaluate(names), ["b.csv"]);
    await visit.goTo("says");
    assert.match(await visit.text("#readings-shown"), /^1 of 1/);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});
