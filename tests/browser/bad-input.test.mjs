// What is broken is told as what, where, why and what to do; everything else still loads.

import assert from "node:assert/strict";
import { truncateSync, unlinkSync } from "node:fs";
import { test } from "node:test";
import { browsers, visitChromium, writtenFiles } from "./drive.mjs";

const GOOD = "Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s)\r\nS-1,P-1,housing,A-1,Alder Works,polymer,12,5\r\nS-2,P-1,housing,A-1,Alder Works,polymer,14,5\r\n";

for (const { name, visit: open } of browsers) {
  test(`in ${name} a file that is no table says why, and the others load`, async () => {
    const visit = await open();
    try {
      await visit.choose("Result files", writtenFiles({ "good.csv": GOOD, "picture.csv": Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 3, 0, 0, 255, 254]), "nothing.csv": "" }));
      await visit.reviewed();
      await visit.event(/1 of 3 files read/);
      await visit.goTo("came-in");
      const sources = await visit.evaluate(() => [...document.querySelectorAll(".source")].map((source) => source.innerText));
      assert.equal(sources.length, 3);
      for (const text of sources.filter((source) => !source.startsWith("good.csv"))) assert.match(text, /not read/);
      await visit.goTo("says");
      assert.match(await visit.text("#readings-shown"), /^2 of 2/);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}

for (const { name, visit: open } of browsers) {
  // With a recovery copy nothing of this is lost (keep.test.mjs).
  test(`in ${name} files that vanish or are cut short after they were chosen, with no copy kept, are refused with the reason, and the others stand`, async () => {
    const visit = await open();
    try {
      await visit.click("#keep-nothing");
      await visit.event(/^Nothing is kept/);
      const table = (id) => GOOD.replaceAll("S-", `${id}-`);
      const [good, gone, shorter] = writtenFiles({ "good.csv": table("A"), "gone.csv": table("B"), "shorter.csv": table("C") });
      await visit.choose("Result files", [good, gone, shorter]);
      await visit.event(/3 of 3 files read/);
      unlinkSync(gone);
      truncateSync(shorter, 90);
      // Any answer about how files are read has them read again.
      await visit.goTo("came-in");
      await visit.evaluate(() => {
        const fold = [...document.querySelectorAll("details.source")].find((one) => one.textContent.includes("good.csv"));
        fold.open = true;
      });
      await visit.until("the file's controls", () => document.querySelector("details[id^='act-correct']") !== null);
      await visit.evaluate(() => {
        document.querySelector("details[id^='act-correct']").open = true;
      });
      await visit.until("the decimal mark", () => document.querySelector("form[id*=decimal_mark] input") !== null);
      await visit.click("form[id*=decimal_mark] input");
      await visit.click("form[id*=decimal_mark] button");
      await visit.until("both troubles", () => document.querySelectorAll("#troubles .trouble").length === 2);
      assert.match(await visit.text("#troubles"), /gone\.csv[\s\S]*shorter\.csv/);
      await visit.reviewed();
      await visit.goTo("says");
      assert.match(await visit.text("#readings-shown"), /^2 of 2/);
      await visit.goTo("came-in");
      const sources = await visit.evaluate(() => [...document.querySelectorAll("details.source > summary")].map((source) => source.innerText));
      assert.equal(sources.filter((source) => /not read/.test(source)).length, 2);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}

test("a settings file with a wrong key changes nothing and names its line and column", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "good.csv": GOOD }));
    await visit.reviewed();
    const before = await visit.text("#summary-says");
    await visit.choose("Settings file", writtenFiles({ "settings.toml": 'schema = "plumbline.settings/1"\nsigma_multple = 2\n' }));
    await visit.until("the trouble", () => document.querySelectorAll("#troubles .trouble").length === 1);
    assert.match(await visit.text("#troubles"), /settings\.toml, line 2, column 1/);
    assert.equal(await visit.text("#summary-says"), before);
    await visit.goTo("write");
    assert.equal(await visit.count(".act"), 0);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a file's own name and cells never become markup", async () => {
  const visit = await visitChromium();
  try {
    const hostile = '<img src=x onerror="document.title=1">';
    const table = `Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s)\r\n"${hostile.replaceAll('"', '""')}",P-1,"<b>bold</b>",A-1,"<script>document.title=2</script>",polymer,12,5\r\n`;
    await visit.choose("Result files", writtenFiles({ "<i>name.csv": table }));
    await visit.reviewed();
    for (const place of ["came-in", "trust", "says", "next", "write"]) await visit.goTo(place);
    await visit.goTo("says");
    await visit.click(".grid-body [role=gridcell]");
    await visit.until("the detail", () => !document.getElementById("detail").hidden);
    assert.equal(await visit.text("#detail-heading"), `${hostile} · P-1 · <b>bold</b>`);
    assert.equal(await visit.count("#page img, #page script, #page b, #page i"), 0);
    assert.equal(await visit.evaluate(() => document.title), "Plumbline");
  } finally {
    await visit.close();
  }
});

test("the same file dropped twice is counted once, and two files of one name both stay", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "good.csv": GOOD }));
    await visit.reviewed();
    await visit.choose("Result files", writtenFiles({ "good.csv": GOOD }));
    await visit.event(/already/);
    await visit.goTo("came-in");
    assert.equal(await visit.count(".source"), 1);
    await visit.choose("Result files", writtenFiles({ "good.csv": GOOD.replaceAll("S-", "T-") }));
    await visit.until("two files", () => document.querySelectorAll(".source").length === 2);
    await visit.goTo("says");
    assert.match(await visit.text("#readings-shown"), /^4 of 4/);
  } finally {
    await visit.close();
  }
});

test("with no readable file every place says so once and points to What came in", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "nothing.csv": "" }));
    await visit.event(/0 of 1/);
    for (const place of ["trust", "says", "next", "write"]) {
      await visit.goTo(place);
      assert.match(await visit.text(`#place-${place}`), /No file could be read\. Look at What came in\./);
      assert.doesNotMatch(await visit.text(`#place-${place}`), /Nothing is open|0 lots|No reading fits/);
    }
    assert.match(await visit.text("#summary"), /^No file could be read\.\s+0 of 1 file read\. A recovery code is shown: write it down\.$/);
    await visit.goTo("next");
    await visit.click("#next .nothing-read a");
    await visit.until("What came in", () => !document.getElementById("place-came-in").hidden);
  } finally {
    await visit.close();
  }
});

test("a trouble gets the focus, and the next settings file that is taken ends it", async () => {
  const visit = await visitChromium();
  try {
    await visit.choose("Result files", writtenFiles({ "good.csv": GOOD }));
    await visit.reviewed();
    await visit.choose("Settings file", writtenFiles({ "good.csv": GOOD }));
    await visit.until("the trouble to have the focus", () => document.activeElement.closest("#troubles .trouble") !== null);
    assert.match(await visit.text("#troubles"), /This looks like results, not settings/);
    await visit.choose("Settings file", writtenFiles({ "settings.toml": 'schema = "plumbline.settings/1"\nsigma_multiple = 2\n' }));
    await visit.event(/Settings taken/);
    assert.equal(await visit.count("#troubles .trouble"), 0);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});
