// A report checked on the page: alone, with its files, with the digest from signed paper; changed in any of its parts; beside an
// inspection that it must not touch.

import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { before, test } from "node:test";
import { browsers, deliveries, oneDigitOther, ownFolder, reportOf, visitChromium, writtenByCommandLine, writtenFiles } from "./drive.mjs";

const delivery = deliveries().find((one) => one.name.startsWith("03-"));
const FILE = "cedar-brass-valve.csv";

let report;
let digest;
before(() => {
  report = reportOf(delivery.results, delivery.settings);
  // The findings' digest as it is printed beside the signatures.
  digest = /class="mono">([^<]*: )?([0-9a-f]{64})</.exec(report)[2];
});

/** What the page says of the first report. */
const said = () => {
  const card = document.querySelector("#prove-results .proved");
  const lines = (part) => [...(card?.querySelectorAll(`[data-part="page-prove-${part}"] li`) ?? [])].map((line) => line.innerText.replace(/\s+/g, " "));
  return { name: card?.querySelector("h2").innerText, verdict: card?.dataset.verdict, word: card?.dataset.word, line: card?.querySelector(".proved-verdict").innerText.replace(/\s+/g, " "), differs: lines("differs"), shows: lines("shows"), next: lines("next"), files: lines("files") };
};

async function proved(visit, doing) {
  // A verdict of before must not be taken for the one that is waited for.
  await visit.evaluate(() => document.querySelector("#summary-event").replaceChildren());
  await visit.evaluate(() => document.querySelector("#prove-results .proved")?.setAttribute("data-old", "yes"));
  await doing();
  await visit.until("a verdict", () => document.querySelector("#prove-results .proved:not([data-old])") !== null && document.querySelector("#work").hidden);
  return visit.evaluate(said);
}

const choosing = (visit, files) => () => visit.choose("Report to check", files);

async function atThePlace(visit) {
  await visit.click("#enter-prove");
  await visit.until("the place", () => location.hash === "#prove" && !document.getElementById("place-prove").hidden);
}

/** What stands in front of the first digit of the title. */
const titled = () => /<h1[^>]*>Valve BV-/.exec(report)[0];

const sha256 = (text) => createHash("sha256").update(text).digest("hex");

/** The same report as if it were in another language, its records' checks made again. */
function inAnotherLanguage(text, tag) {
  const start = text.indexOf("\n", text.indexOf('id="plumbline-evidence"')) + 1;
  const end = text.indexOf("\nend\t", start) + 1;
  const checked = (fields) => [...fields, sha256(`${fields.join("\t")}\n`).slice(0, 16)].join("\t");
  const above = text.slice(start, end).replace(/^report\t.*$/m, (line) => {
    const fields = line.split("\t").slice(0, -1);
    fields[1] = tag;
    return checked(fields);
  });
  const last = text.slice(end, text.indexOf("\n", end)).split("\t").slice(0, -1);
  last[2] = sha256(above);
  return text.slice(0, start) + above + checked(last) + text.slice(text.indexOf("\n", end));
}

for (const { name, visit: open } of browsers) {
  test(`in ${name} an untouched report agrees: alone with itself, with its file, and with the digest however it is typed`, async () => {
    const visit = await open();
    try {
      await atThePlace(visit);
      const [path] = writtenFiles({ "report.html": report });
      const alone = await proved(visit, choosing(visit, [path]));
      assert.deepEqual([alone.verdict, alone.word, alone.differs], ["agrees", "self", []]);
      assert.match(alone.line, /^Agrees with itself .*byte for byte/);
      assert.ok(alone.shows.some((line) => /whoever changes the data can make a report again/.test(line)), alone.shows.join("\n"));
      assert.deepEqual(alone.next.length, 2, alone.next.join("\n"));
      assert.ok(alone.files.some((line) => line.includes(`${FILE}: not given`)), alone.files.join("\n"));

      const typed = `${digest.slice(0, 32).toUpperCase().replace(/(.{8})/g, "$1 ")}\n  ${digest.slice(32)} `;
      const signed = await proved(visit, async () => {
        await visit.page.focus("#prove-digest");
        await visit.evaluate((text) => {
          document.querySelector("#prove-digest").value = text;
        }, typed);
        await visit.press("Enter");
      });
      assert.deepEqual([signed.verdict, signed.word], ["agrees", "digest"]);

      const whole = await proved(visit, () => visit.choose("Files it was made from", delivery.results));
      assert.deepEqual([whole.verdict, whole.word], ["agrees", "both"]);
      assert.ok(whole.files.some((line) => line.includes(`${FILE}: given, and the same bytes`)), whole.files.join("\n"));
      assert.match(await visit.text("#summary-event"), /report\.html: Agrees with files and digest\. The report is, byte for byte/);
      assert.deepEqual(whole.next, ["Nothing is left to check. Keep the report and its files together."]);

      await visit.click("#prove-another");
      assert.deepEqual(await visit.evaluate(() => [document.querySelectorAll(".proved").length, document.querySelector("#prove-digest").value, document.activeElement.id]), [0, "", "prove-report"]);
      const again = await proved(visit, choosing(visit, [path]));
      assert.deepEqual([again.verdict, again.word], ["agrees", "self"]);
      assert.deepEqual(visit.complaints, []);
      assert.deepEqual(visit.strangers(), []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} one changed digit is named by its place: in a text, in a cell, in the data that are carried`, async () => {
    const visit = await open();
    try {
      await visit.page.goto(`${visit.page.url().split("#")[0]}#prove`);
      await visit.until("the place by its address", () => !document.getElementById("place-prove").hidden);

      const inText = await proved(visit, choosing(visit, writtenFiles({ "text.html": oneDigitOther(report, titled()) })));
      assert.deepEqual([inText.verdict, inText.word, inText.differs.length], ["differs", "differs", 1]);
      assert.match(inText.differs[0], /Above the first section.*The report says .*BV-30.*Its data give .*BV-20/);
      assert.ok(inText.next.some((line) => /^Do not rely on this copy/.test(line)));

      const cell = /<td class="n">([0-9][^<]*)</.exec(report.slice(report.indexOf("<h2>")));
      const inCell = await proved(visit, choosing(visit, writtenFiles({ "cell.html": oneDigitOther(report, report.slice(report.indexOf(cell[0]), report.indexOf(cell[0]) + '<td class="n">'.length)) })));
      assert.deepEqual([inCell.verdict, inCell.differs.length], ["differs", 1]);
      assert.match(inCell.differs[0], /^Section “.*”, row “.*”, column “.*” The report says “?.*Its data give/);

      const carried = report.indexOf("\nfile\t");
      const packed = carried + report.slice(carried).indexOf("\n ") + 12;
      const other = report[packed] === "A" ? "B" : "A";
      const inData = await proved(visit, choosing(visit, writtenFiles({ "data.html": report.slice(0, packed) + other + report.slice(packed + 1) })));
      assert.equal(inData.verdict, "differs");
      assert.ok(inData.differs.some((line) => line.includes(`file ${FILE}: changed after it was written`)), inData.differs.join("\n"));
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} a consistent forgery agrees with itself, and the file and the digest catch it`, async () => {
    const visit = await open();
    try {
      const folder = ownFolder();
      const forged = join(folder, FILE);
      const truth = readFileSync(delivery.results[0], "utf8");
      const lines = truth.split("\n");
      const at = lines.findLastIndex((line) => /[0-9]{3}/.test(line));
      // A figure of the last reading, made lower.
      lines[at] = lines[at].replace(/([0-9]{3,})(?!.*[0-9]{3})/, "7");
      assert.notEqual(lines.join("\n"), truth);
      writeFileSync(forged, lines.join("\n"));
      const forgery = reportOf([forged], delivery.settings);
      assert.notEqual(forgery, report);

      await atThePlace(visit);
      const alone = await proved(visit, choosing(visit, writtenFiles({ "forgery.html": forgery })));
      assert.deepEqual([alone.verdict, alone.word], ["agrees", "self"]);

      const withFile = await proved(visit, () => visit.choose("Files it was made from", delivery.results));
      assert.deepEqual([withFile.verdict, withFile.word], ["agrees", "contradicted"]);
      assert.ok(withFile.files.some((line) => /other bytes/.test(line)), withFile.files.join("\n"));
      assert.ok(withFile.next.some((line) => /which file is the right one/.test(line)));

      await visit.click("#prove-another");
      await proved(visit, choosing(visit, writtenFiles({ "forgery.html": forgery })));
      const withDigest = await proved(visit, async () => {
        await visit.type("#prove-digest", digest);
        await visit.click("#prove-with-digest");
      });
      assert.deepEqual([withDigest.verdict, withDigest.word], ["agrees", "contradicted"]);
      assert.ok(withDigest.next.some((line) => /not the report that was signed/.test(line)));
      assert.ok((await visit.count(".proved-digests mark")) >= 8);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} what is no report, and a report without its data, are told as that, and a digest that is none is refused`, async () => {
    const visit = await open();
    try {
      await atThePlace(visit);
      const none = await proved(visit, choosing(visit, writtenFiles({ "letter.html": "<!DOCTYPE html><title>A letter</title><p>Dear customer" })));
      assert.deepEqual([none.verdict, none.word], ["not_a_report", "open"]);
      const bare = report.slice(0, report.indexOf('<script type="text/plain"')) + report.slice(report.lastIndexOf("</script>") + 9);
      const missing = await proved(visit, choosing(visit, writtenFiles({ "bare.html": bare })));
      assert.deepEqual([missing.verdict, missing.word], ["evidence_missing", "open"]);
      assert.ok(missing.next.some((line) => /Ask for the report as the file that Plumbline wrote/.test(line)));

      await visit.type("#prove-digest", digest.slice(1));
      await visit.click("#prove-with-digest");
      assert.match(await visit.text("#prove-digest-refusal"), /64 digits\. These are 63/);
      await visit.type("#prove-digest", `O${digest.slice(1)}`);
      await visit.click("#prove-with-digest");
      assert.match(await visit.text("#prove-digest-refusal"), /“o” is no digit/);
      assert.equal(await visit.evaluate(() => document.activeElement.id), "prove-digest");
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });

  test(`in ${name} a report among result files is checked with them beside it, and an open inspection stays as it is`, async () => {
    const visit = await open();
    try {
      const other = deliveries().find((one) => one.name.startsWith("05-"));
      await visit.choose("Settings file", [other.settings]);
      await visit.event(/settings/i);
      await visit.choose("Result files", other.results);
      await visit.reviewed();
      const open = () => [...["counts", "says", "evidence"].map((line) => document.querySelector(`#summary-${line}`).textContent), document.querySelector("#undo").title];
      const before = await visit.evaluate(open);
      await visit.goTo("came-in");
      const [path] = writtenFiles({ "some name.txt": report });
      const found = await proved(visit, () => visit.choose("Result files", [path, ...delivery.results]));
      assert.deepEqual([found.verdict, found.word], ["agrees", "files"]);
      assert.equal(await visit.evaluate(() => location.hash), "#prove");
      assert.equal(await visit.evaluate(() => document.activeElement.id), "prove-result-0");
      assert.deepEqual(await visit.evaluate(open), before);
      await visit.goTo("came-in");
      const names = await visit.evaluate(() => [...document.querySelectorAll(".source-name")].map((one) => one.textContent));
      assert.deepEqual(names, other.results.map((one) => one.split(/[\\/]/).at(-1)).sort());

      // They may have been meant as results all the same.
      await visit.page.goBack();
      await visit.until("the place", () => !document.getElementById("place-prove").hidden);
      await visit.click("#prove-inspect");
      await visit.until("the file in the inspection", (file) => [...document.querySelectorAll(".source-name")].some((one) => one.textContent === file) && document.querySelector("#work").hidden, FILE);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}

test("a report and files dropped together, and a folder that holds one, are checked", async () => {
  const visit = await visitChromium();
  try {
    const file = readFileSync(delivery.results[0], "utf8");
    const dropped = await proved(visit, () =>
      visit.evaluate(
        ([html, csv, name]) => {
          const carried = new DataTransfer();
          carried.items.add(new File([`\uFEFF${html.replaceAll("\n", "\r\n")}`], "mailed.htm"));
          carried.items.add(new File([csv], name));
          document.body.dispatchEvent(new DragEvent("drop", { dataTransfer: carried, bubbles: true, cancelable: true }));
        },
        [report, file, FILE],
      ),
    );
    assert.deepEqual([dropped.verdict, dropped.word], ["line_ends", "files"]);

    await visit.click("#prove-another");
    await visit.click(".wordmark");
    const [path] = writtenFiles({ "a folder/papers/report.html": report, [`a folder/${FILE}`]: file, "a folder/note.txt": "No table.\n" });
    const walked = await proved(visit, () => visit.choose("Result folder", join(path, "../..")));
    assert.deepEqual([walked.verdict, walked.word], ["agrees", "files"]);
    assert.ok(walked.files.some((line) => /note\.txt: given, and not a file this report names/.test(line)), walked.files.join("\n"));
    assert.equal(await visit.evaluate(() => document.querySelector("#summary-counts").textContent), "", "nothing was read into an inspection");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a digest and files that are laid ready first count for the report that comes then, and not for the next one", async () => {
  const visit = await visitChromium();
  try {
    await atThePlace(visit);
    await visit.type("#prove-digest", digest);
    await visit.click("#prove-with-digest");
    assert.match(await visit.text("#prove-digest-refusal"), /Choose the report/);
    await visit.choose("Files it was made from", delivery.results);
    await visit.event(/1 file lies ready/);
    const first = await proved(visit, choosing(visit, writtenFiles({ "report.html": report })));
    assert.equal(first.word, "both");
    const second = await proved(visit, choosing(visit, writtenFiles({ "copy.html": report })));
    assert.deepEqual([second.word, await visit.evaluate(() => document.querySelector("#prove-digest").value)], ["self", ""]);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a verdict is said again in the language of the page, and a report in another language is held word for word where the page has its words", async () => {
  const visit = await visitChromium();
  try {
    const tags = await visit.evaluate(() => [...document.querySelectorAll("#language option")].map((one) => one.value));
    await atThePlace(visit);
    for (const tag of tags) {
      const { "report.html": theirs } = writtenByCommandLine(delivery.results, delivery.settings, "--report-language", tag);
      const found = await proved(visit, choosing(visit, writtenFiles({ [`${tag}.html`]: theirs })));
      assert.deepEqual([found.verdict, found.word], ["agrees", "self"], tag);
    }
    // With one language there is nothing to pick.
    const last = tags.at(-1);
    if (tags.length > 1) await visit.pick("#language", last);
    await visit.until("the language", (tag) => document.documentElement.lang === tag && document.querySelector("#work").hidden, last);
    await visit.until("the verdict", () => document.querySelector('.proved[data-word="self"]') !== null);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a report in a language that is not here is held by its findings, and that is said", async () => {
  const visit = await visitChromium();
  try {
    await atThePlace(visit);
    // The record names its language and is checked by a digest of its own, which is made again here.
    const changed = inAnotherLanguage(report, "xx");
    const found = await proved(visit, choosing(visit, writtenFiles({ "strange.html": changed })));
    assert.deepEqual([found.verdict, found.word], ["findings_agree", "findings"], found.differs.join("\n"));
    assert.ok(found.next.some((line) => /a copy of Plumbline that has its language/.test(line)), found.next.join("\n"));
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("several reports of one delivery are checked one by one, and a changed one among them stands out", async () => {
  const visit = await visitChromium();
  try {
    const paths = writtenFiles({ "good.html": report, "bad.html": oneDigitOther(report, titled()) });
    await proved(visit, () => visit.choose("Result files", paths));
    await visit.event(/2 reports checked\. Reports that agree: 1\./);
    const verdicts = await visit.evaluate(() => Object.fromEntries([...document.querySelectorAll(".proved")].map((card) => [card.querySelector("h2").firstChild.textContent, card.dataset.verdict])));
    assert.deepEqual(verdicts, { "good.html": "agrees", "bad.html": "differs" });
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("a check under way shows progress, can be cancelled, and leaves the page able to check again", async () => {
  const visit = await visitChromium();
  try {
    const rows = Array.from({ length: 120_000 }, (_, at) => `S-${at},P-1,housing,A-1,Alder Works,polymer,${(at % 90) + 10},5,10,3`);
    const [table, settings] = writtenFiles({ "long.csv": `Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s),Cd mg/kg,Cd u (1s)\r\n${rows.join("\r\n")}\r\n`, "settings.toml": 'schema = "plumbline.settings/1"\n' });
    const [path] = writtenFiles({ "long.html": reportOf([table], settings) });
    await atThePlace(visit);
    await visit.choose("Report to check", [path]);
    await visit.until("the bar", () => !document.querySelector("#work").hidden && /Checking long\.html/.test(document.querySelector("#work-text").textContent));
    assert.equal(await visit.evaluate(() => document.querySelector("#work [role=progressbar]") !== null), true);
    await visit.click("#work-cancel");
    await visit.event(/check was cancelled/);
    assert.match(await visit.text("#prove-results"), /Not checked yet/);
    const small = await proved(visit, choosing(visit, writtenFiles({ "report.html": report })));
    assert.equal(small.verdict, "agrees");
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});

test("the result prints without the controls", async () => {
  const visit = await visitChromium();
  try {
    await atThePlace(visit);
    await proved(visit, choosing(visit, writtenFiles({ "text.html": oneDigitOther(report, titled()) })));
    await visit.page.emulateMedia({ media: "print" });
    const shown = await visit.evaluate(() => Object.fromEntries([".proved", ".proved-places", "#prove-form", ".prove-after", ".masthead"].map((wanted) => [wanted, document.querySelector(wanted).checkVisibility()])));
    assert.deepEqual(shown, { ".proved": true, ".proved-places": true, "#prove-form": false, ".prove-after": false, ".masthead": false });
    assert.ok((await visit.page.pdf({ format: "A4" })).length > 1000);
    assert.deepEqual(visit.complaints, []);
  } finally {
    await visit.close();
  }
});
