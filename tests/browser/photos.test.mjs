// Photographs on the page: brought with the results, joined to readings, the spot marked, and all of it in the report.

import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { test } from "node:test";
import { crc32, deflateSync } from "node:zlib";
import { browsers, visitChromium, writtenFiles } from "./drive.mjs";

const TABLE = `Sample,Supplier,Lot,Part,Material,Class,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s)
A-1,Alder Works,L-1,P-1,sheath,polymer,2,1,5400,40
A-2,Alder Works,L-1,P-1,core,metal,1,0.5,20,4
A-2,Alder Works,L-1,P-1,core,metal,1,0.5,22,4
A-3,Alder Works,L-1,P-2,clip,metal,1,0.5,20,4
`;

/** An invented picture: red on the left, blue on the right. */
function png(width, height, remark = "secret place and person") {
  const rows = Buffer.alloc((width * 3 + 1) * height);
  for (let y = 0; y < height; y += 1) for (let x = 0; x < width; x += 1) rows.set(x < width / 2 ? [200, 30, 30] : [30, 30, 200], y * (width * 3 + 1) + 1 + x * 3);
  const chunk = (name, body) => {
    const named = Buffer.concat([Buffer.from(name), body]);
    const number = (value) => {
      const four = Buffer.alloc(4);
      four.writeUInt32BE(value);
      return four;
    };
    return Buffer.concat([number(body.length), named, number(crc32(named))]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 2], 8);
  return Buffer.concat([Buffer.from("\x89PNG\r\n\x1a\n", "latin1"), chunk("IHDR", head), chunk("tEXt", Buffer.from(`Author\0${remark}`)), chunk("IDAT", deflateSync(rows)), chunk("IEND", Buffer.alloc(0))]);
}

/** A JPEG as a camera writes it that was held on its side: Exif with a place, and the picture to be turned to the right. */
async function jpegOnItsSide(visit, width, height) {
  const made = await visit.evaluate(
    async ([wide, high]) => {
      const canvas = document.createElement("canvas");
      canvas.width = wide;
      canvas.height = high;
      const paint = canvas.getContext("2d");
      paint.fillStyle = "#c81e1e";
      paint.fillRect(0, 0, wide, high);
      return canvas.toDataURL("image/jpeg").split(",")[1];
    },
    [width, height],
  );
  const bytes = Buffer.from(made, "base64");
  const tiff = Buffer.concat([Buffer.from("MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0\x06\0\0\0\0\0\0", "latin1"), Buffer.from("GPS 48 N 11 E, secret")]);
  const body = Buffer.concat([Buffer.from("Exif\0\0", "latin1"), tiff]);
  const head = Buffer.from([0xff, 0xe1, (body.length + 2) >> 8, (body.length + 2) & 255]);
  return Buffer.concat([bytes.subarray(0, 2), head, body, bytes.subarray(2)]);
}

const sha256 = (bytes) => createHash("sha256").update(bytes).digest("hex");

async function bring(visit, files) {
  await visit.choose("Result files", writtenFiles(files));
}

async function openReading(visit, id) {
  await visit.goTo("says");
  await visit.until("the table", () => document.querySelector(".grid-body [role=row] strong") !== null);
  const row = await visit.until(`the row of ${id}`, (wanted) => [...document.querySelectorAll(".grid-body [role=row]")].find((one) => one.textContent.includes(wanted))?.getAttribute("aria-rowindex"), id);
  await visit.click(`.grid-body [role=row][aria-rowindex="${row}"] [role=gridcell]`);
  await visit.until("its detail", (wanted) => document.getElementById("detail-heading")?.textContent.startsWith(wanted), id);
}

/** Presses a button in the detail by what it says. */
function press(visit, words) {
  return visit.evaluate((wanted) => {
    const button = [...document.querySelectorAll(".photos button")].find((one) => one.textContent.includes(wanted));
    if (button === undefined) throw new Error(`no button ${wanted}`);
    button.click();
  }, words);
}

/** Taps the photograph at these parts of its width and height. */
async function tap(visit, x, y) {
  const at = await visit.evaluate(
    ([across, down]) => {
      const pad = document.querySelector(".shot-pad");
      pad.scrollIntoView({ block: "center" });
      const box = pad.getBoundingClientRect();
      return [box.left + box.width * across, box.top + box.height * down];
    },
    [x, y],
  );
  await visit.page.mouse.click(...at);
}

async function json(visit) {
  await visit.goTo("write");
  return JSON.parse(await visit.downloaded("findings.json", () => visit.click("#save-findings-json")));
}

const spotText = () => document.querySelector(".shot [aria-live]")?.textContent ?? "";
const padName = () => document.querySelector(".shot-pad")?.getAttribute("aria-label") ?? "";

for (const kind of browsers) {
  test(`a photograph comes in, is joined, marked, undone and written: ${kind.name}`, async () => {
    const visit = await kind.visit();
    try {
      const upright = png(1600, 1200);
      const turned = await jpegOnItsSide(visit, 60, 40);
      await bring(visit, { "r.csv": TABLE, "A-1.png": upright, "IMG_A-3 side.jpg": turned, "A-2.png": png(30, 30), "odd.png": png(20, 20), "cut.jpg": turned.subarray(0, 90) });
      await visit.event(/4 of 5 photographs/);
      assert.match(await visit.text("#troubles"), /cut\.jpg/);

      await visit.goTo("came-in");
      assert.equal(await visit.count(".photo-card"), 4);
      assert.doesNotMatch(await visit.text("#came-in"), /A-1\.png.*no table/s, "a photograph is no table that failed");
      assert.match(await visit.text("#photos-in"), /fits 2 readings/, "two readings of A-2: nobody picks one");
      assert.match(await visit.text("#photos-in"), /fits no reading/);
      assert.match(await visit.text("#photos-take-all"), /2 photographs/);
      await visit.click("#photos-take-all");
      await visit.until("both to be joined", () => document.querySelector("#photos-take-all") === null && document.querySelectorAll(".photo-card li").length >= 2);

      await openReading(visit, "A-1");
      await visit.until("the photograph", () => document.querySelector(".shot-pad img")?.naturalWidth > 0);
      assert.deepEqual(await visit.evaluate(() => [document.querySelector(".shot-pad img").naturalWidth, document.querySelector(".shot-pad img").naturalHeight]), [1024, 768], "the copy is small");
      assert.match(await visit.evaluate(padName), /No spot/);

      await tap(visit, 0.25, 0.5);
      await visit.until("the spot", () => /Spot at 2[45](\.\d)? %/.test(document.querySelector(".shot-pad")?.getAttribute("aria-label") ?? ""));
      await visit.until("the focus on the photograph", () => document.activeElement?.classList.contains("shot-pad"));
      const first = await visit.evaluate(padName);

      for (const key of ["ArrowRight", "ArrowRight", "ArrowDown"]) await visit.press(key);
      assert.match(await visit.evaluate(spotText), /2[67](\.\d)? % .*Press Enter/, "what the arrow keys do is told");
      assert.equal(await visit.evaluate(padName), first, "nothing is recorded by moving");
      await visit.press("Escape");
      assert.doesNotMatch(await visit.evaluate(spotText), /Press Enter/);
      for (const key of ["ArrowRight", "ArrowRight", "ArrowDown"]) await visit.press(key);
      await visit.press("Enter");
      await visit.until("the moved spot", () => /Spot at 2[67](\.\d)? %/.test(document.querySelector(".shot-pad")?.getAttribute("aria-label") ?? ""));
      await visit.click("#undo");
      await visit.until("the spot before", (wanted) => document.querySelector(".shot-pad")?.getAttribute("aria-label") === wanted, first);

      const findings = await json(visit);
      assert.deepEqual(findings.photos.map((one) => one.name), ["A-1.png", "IMG_A-3 side.jpg"], "only what was joined");
      const [one, other] = findings.photos;
      assert.deepEqual([one.sha256, one.media_type, one.width, one.height], [sha256(upright), "image/png", 1600, 1200]);
      assert.deepEqual([other.sha256, other.media_type, other.width, other.height], [sha256(turned), "image/jpeg", 40, 60], "the right way up");
      assert.ok(Math.abs(one.shows[0].spot.x_permille - 250) <= 4 && Math.abs(one.shows[0].spot.y_permille - 500) <= 4, JSON.stringify(one.shows));
      assert.equal(other.shows[0].spot, null);

      const report = (await visit.downloaded("report.html", () => visit.click("#save-report-html"))).toString("utf8");
      const pictures = [...report.matchAll(/src="data:image\/jpeg;base64,([^"]+)"/g)].map((found) => Buffer.from(found[1], "base64"));
      assert.equal(pictures.length, 2);
      assert.deepEqual(pictures.map(sha256), findings.photos.map((photo) => photo.print_sha256), "the picture printed is the one whose digest stands beside it");
      for (const picture of pictures) assert.doesNotMatch(picture.toString("latin1"), /secret|Exif|GPS/);
      assert.match(report, /viewBox="0 0 10000 7500"/);

      await openReading(visit, "A-1");
      await press(visit, "Remove the spot");
      await visit.until("no spot", () => /No spot/.test(document.querySelector(".shot-pad")?.getAttribute("aria-label") ?? ""));
      await press(visit, "Not this photograph");
      await visit.until("the offer again", () => document.querySelector(".shot-pad") === null && document.querySelector(".photo-offer") !== null);
      assert.equal(await visit.evaluate(() => document.activeElement.id), "detail-heading", "the focus stays with the reading");

      // Any other photograph can be chosen.
      const choice = await visit.evaluate(() => document.querySelector(".photos select").id);
      const value = await visit.evaluate(() => [...document.querySelectorAll(".photos select option")].find((option) => option.textContent === "odd.png").value);
      await visit.pick(`#${choice}`, value);
      await visit.evaluate(() => document.querySelector(".photos form").requestSubmit());
      await visit.until("the other photograph", () => /odd\.png/.test(document.querySelector(".shot-pad")?.getAttribute("aria-label") ?? ""));
      assert.deepEqual(visit.strangers(), []);
      assert.deepEqual(visit.complaints, []);
    } finally {
      await visit.close();
    }
  });
}

test("a photograph that the settings name and nobody brought is said, and is joined as soon as it comes", async () => {
  const visit = await visitChromium();
  try {
    const picture = png(40, 30);
    const settings = `schema = "plumbline.settings/1"\n[[photo]]\nsource = "r.csv"\nline = 2\nfile = "late.png"\nsha256 = "${sha256(picture)}"\nx = 100\ny = 900\n`;
    await visit.choose("Settings file", writtenFiles({ "settings.toml": settings }));
    await visit.event(/settings/i);
    await bring(visit, { "r.csv": TABLE });
    await visit.reviewed();
    await visit.goTo("came-in");
    assert.match(await visit.text("#photos-in"), /late\.png was named and is not at hand/);
    await bring(visit, { "late.png": picture });
    await visit.event(/photograph came in/);
    await openReading(visit, "A-1");
    assert.match(await visit.evaluate(padName), /Spot at 10 % from the left, 90 % from the top/);
  } finally {
    await visit.close();
  }
});

test("photographs are clean for axe-core, fit 360 pixels and can be pressed with a glove", async () => {
  const visit = await visitChromium({ width: 360, height: 800, reducedMotion: "reduce" });
  try {
    await bring(visit, { "r.csv": TABLE, "A-1.png": png(300, 900), "A-1 wide.png": png(900, 200), "A-2.png": png(30, 30) });
    await visit.event(/photographs came in/);
    const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
    const look = async (where) => {
      await visit.evaluate(axe);
      const found = await visit.evaluate(async () => (await window.axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa", "best-practice"] })).violations.map((one) => `${one.id}: ${one.nodes[0].target.join(" ")}`));
      assert.deepEqual(found, [], where);
      assert.ok((await visit.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)) <= 0, `${where} sticks out`);
      const small = await visit.evaluate(() => [...document.querySelectorAll(".photos button, .photos select, #photos-in button")].filter((one) => one.checkVisibility()).filter((one) => one.getBoundingClientRect().height < 43.5).map((one) => one.textContent));
      assert.deepEqual(small, [], where);
    };
    await visit.goTo("came-in");
    await look("the list");
    await visit.click("#photos-take-all");
    await visit.until("both to be joined", () => document.querySelector("#photos-take-all") === null);
    await openReading(visit, "A-1");
    await tap(visit, 0.5, 0.5);
    await visit.until("the spot", () => /Spot at/.test(document.querySelector(".shot-pad")?.getAttribute("aria-label") ?? ""));
    await look("the reading");
    const out = process.env.PLUMBLINE_PICTURES;
    if (out) await visit.page.screenshot({ path: `${out}/photos-360.png`, fullPage: true });
  } finally {
    await visit.close();
  }
});
