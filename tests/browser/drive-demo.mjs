// Reviews the clean demo delivery in a headless browser, as a person would, and leaves its report in dist/.

import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { cleanDelivery, top, visitChromium } from "./drive.mjs";

const delivery = cleanDelivery();
const visit = await visitChromium();
try {
  await visit.choose("Settings file", [delivery.settings]);
  await visit.event(/settings/i);
  await visit.choose("Result files", delivery.results);
  console.log(`demo-data/${delivery.name} (invented), reviewed by dist/plumbline.html in Chromium:`);
  console.log(await visit.reviewed());
  await visit.goTo("says");
  const lots = await visit.evaluate(() => [...document.querySelectorAll("#says-lots .lot")].map((lot) => `${lot.querySelector("h3").innerText}: ${lot.querySelector(".disposition").innerText}`));
  for (const lot of lots) console.log(`  ${lot}`);
  console.log(await visit.text("#readings-shown"));
  await visit.goTo("write");
  const report = join(top, "dist/demo-report.html");
  writeFileSync(report, await visit.downloaded("report.html", () => visit.click("#save-report-html")));
  console.log(`Report: ${report}`);
  if (visit.complaints.length > 0 || visit.strangers().length > 0) {
    console.error("The page complained:", visit.complaints, "or asked for:", visit.strangers());
    process.exitCode = 1;
  }
} finally {
  await visit.close();
}
