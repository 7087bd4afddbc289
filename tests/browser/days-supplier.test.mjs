// The supplier's whole day before shipping, by keys: one story from the first look to the file that is opened again another day.
// Everything is invented.

import assert from "node:assert/strict";
import { test } from "node:test";
import { Person, everywhere, onTheStick } from "./days/person.mjs";
import { writtenFiles } from "./drive.mjs";

const BRASS = "#act-claimed-material_3a_BV-20_20_valve_7c_leaded_20_brass-Pb_20_6_28_c_29_";
const SOLDER = "#act-claimed-material_3a_DR-4_20_driver_7c_die_20_solder-Pb_20_7_28_a_29_-I";

const digestOn = (sheet) => /SHA-256 of the findings[\s\S]*?([0-9a-f]{64})/.exec(String(sheet))[1];

const plain = (html) => html.replace(/<[^>]*>/g, "").replace(/\s+/g, " ");

/** Claims an entry in the form that has the focus, field by field. */
async function claims(person, visit, entry, evidence) {
  const form = await visit.evaluate(() => `#${document.activeElement.closest("form").id}`);
  await person.picksByKey(`${form}-entry`, entry);
  await person.sees(new RegExp(entry.replace(/[()]/g, "\\$&")), `${form} .exemption-rows`);
  await person.focuses(`${form}-evidence`);
  await visit.keys(evidence);
  await person.focuses(`${form}-second`);
  await person.types("TT");
  await person.hears(/^Taken: exemption claimed/);
}

for (const { name, visit: open, why = null } of everywhere) {
  test(`in ${name} a supplier's day: own readings are settled, an exemption would run out before shipping, the sheet is taken and nothing is left behind`, { skip: why ?? false }, async () => {
    const taken = {};
    const first = await open();
    const supplier = new Person(first);
    const stands = (claim) => first.evaluate((id) => document.querySelector(`${id} > h4 .flag`)?.textContent ?? "", claim);
    try {
      // Dispatch, the first time with this page: a look round, left after two stops, and the page is as empty as before.
      await supplier.walksTo("#tour-start");
      await first.press("Enter");
      await supplier.sees(/1 of 6/, "#tour");
      await supplier.walksTo("#tour-next");
      await first.press("Enter");
      await supplier.sees(/2 of 6/, "#tour");
      await first.press("Escape");
      await first.until("the end of the tour", () => document.getElementById("tour") === null && !document.getElementById("place-start").hidden && document.getElementById("summary-counts").textContent === "");
      await supplier.doesNotSee(/First time here/, "#place-start");

      // The second door. The customer gave no rule book; that is put off, and the sheet will say so.
      await supplier.entersBy("#enter-ship");
      await supplier.brings("Result files", writtenFiles({ "cedar-outgoing.csv": onTheStick("cedar-outgoing.csv") }));
      await supplier.hears(/^1 of 1 file read/);
      await supplier.sees(/Self-check/, "#door-label");
      await supplier.pressesByKey("I have written it down");
      await supplier.putsOff(/^book$/);

      // No unit stands in the file, and this analyser never writes one: said once, for later files too.
      const unit = await supplier.goesOn(/^question:unit_not_stated$/);
      assert.match(unit.id, /mg_2f_kg$/);
      await supplier.focuses("#question-unit_not_stated input[type=checkbox]");
      await supplier.pressesOnce(" ", "the tick", () => document.activeElement.checked);
      await supplier.chooses("#question-unit_not_stated", "mg/kg");
      await supplier.sees(/Answered: mg\/kg/, "#question-unit_not_stated");

      // Brass, rubber, solder, plastic: one class for all would be wrong, and the page says so before anybody sets one.
      assert.match(await first.until("the next question", () => (document.activeElement.closest("#question-class_not_stated") === null ? null : document.activeElement.textContent)), /each material/, "the answer leads on to the next question");
      await supplier.sees(/5 materials have no class yet: .*leaded brass/, "#question-class_not_stated");
      await first.press("Enter");
      await first.until("the card", () => document.activeElement.closest("#evidence-class") !== null);
      await supplier.writesByKey("#who-initials", "LK");
      for (const [part, material, value] of [["", "PE_20_disc", "polymer"], ["BV-20_20_valve", "EPDM_20_black", "polymer"], ["BV-20_20_valve", "leaded_20_brass", "metal"], ["DR-4_20_driver", "cover_20_grey", "polymer"], ["DR-4_20_driver", "die_20_solder", "metal"]]) {
        await supplier.chooses(`#act-class-material_3a_${part}_7c_${material}--control`, value);
        await supplier.hears(new RegExp(`^Taken: material class set to ${value} .*${material.replace("_20_", " ")}`));
      }

      // Which sample is the check, how thick the plastic is, what each part is made of, how large the lots are: press by press.
      assert.equal((await supplier.goesOn(/^evidence:trust_none$/)).id, "act-check_samples--");
      await supplier.types("CHK-2");
      await supplier.hears(/^Taken: check samples: CHK-2/);
      for (const mm of ["4", "3"]) {
        await supplier.goesOn(/^evidence:thickness_not_stated$/);
        await supplier.types(mm);
        await supplier.hears(new RegExp(`^Taken: thickness set to ${mm} mm`));
      }
      for (const part of ["BV-20 valve", "DR-4 driver"]) {
        assert.match((await supplier.goesOn(/^evidence:bill_of_materials_none$/)).text, /The 2 measured are all its materials/);
        await first.press("Enter");
        await supplier.hears(new RegExp(`^Taken: homogeneous materials listed: .*${part}`));
      }
      // What can be said comes first, lot after lot; that another seal has to be measured comes after it.
      for (const [lot, size, pieces] of [["CE-1101", "90", "2"], ["CE-1102", "40", "1"]]) {
        for (const number of [size, pieces]) {
          assert.match((await supplier.goesOn(/^evidence:sampling_none$/)).id, new RegExp(lot));
          await supplier.types(number);
          await supplier.hears(new RegExp(`^Taken: (lot size|units the plan asks for):? ${number} .*${lot}`));
        }
      }

      // The disc's certificate: its number and the disc's own are typed once.
      assert.match((await supplier.goesOn(/^evidence:trust_not_judged$/)).id, /-element$/);
      await supplier.givesCertificate("CHK-2", "C-7", { Cd: ["100", "4"], Pb: ["1000", "20"], Hg: ["1000", "20"], Cr: ["1000", "20"], Br: ["1000", "20"] });

      // Lead over its limit, twice. An entry is claimed for the brass; the page asks what only a person can say.
      assert.match((await supplier.goesOn(/^claim:.*leaded/)).id, /leaded_20_brass-Pb-form-entry$/);
      await claims(supplier, first, "6(c)", "mill certificate M-12");
      assert.equal(await stands(BRASS), "open");
      assert.equal((await supplier.goesOn(/^evidence:claim_open$/)).id, "trust-act-category--");
      await supplier.picksByKey("#trust-act-category--", "9i");
      await first.press("Enter");
      await supplier.hears(/^Taken: product category 9/);
      assert.equal((await supplier.goesOn(/^evidence:claim_open$/)).id, "trust-act-placing_date--");
      await supplier.setsDay("#trust-act-placing_date--", "2027-08-01");
      await supplier.hears(/^Taken: .*2027-08-01/);
      await supplier.chooses(`${BRASS} .choice`, "cannot");
      await supplier.hears(/^Taken: could a child/);
      await supplier.sees(/Expires 2027-06-30[\s\S]*placed on the market after the day of expiry/, BRASS);
      await supplier.picksByKey(`${BRASS}-renewal-state`, "not_filed");
      await supplier.focuses(`${BRASS}-renewal-source`);
      await supplier.types("asked our customer");
      await supplier.hears(/^Taken: renewal of 6\(c\): not asked for/);
      assert.equal(await stands(BRASS), "expired", "shipped in August it covers nothing");

      // The solder's own entry ends later: claimed, it holds on that day. And a day in June is one for both.
      assert.match((await supplier.goesOn(/^claim:.*solder/)).id, /die_20_solder-Pb-form-entry$/);
      await claims(supplier, first, "7(a)-I", "data sheet S-3");
      assert.deepEqual([await stands(BRASS), await stands(SOLDER)], ["expired", "covers"]);
      assert.match((await supplier.lots())["CE-1101"].is, /not accept/i);
      await supplier.goesByKeyTo("trust");
      await supplier.setsDay("#trust-act-placing_date--", "2027-06-01");
      await supplier.hears(/^Taken: .*2027-06-01/);
      assert.deepEqual([await stands(BRASS), await stands(SOLDER)], ["covers", "covers"]);

      // One seal more was asked for. It is measured and brought; its file asks nothing, and the page is seen from its head.
      assert.equal((await supplier.goesOn(/^evidence:sampling_too_few$/)).id, "result-files");
      await supplier.brings("Result files", writtenFiles({ "cedar-seal-2.csv": onTheStick("cedar-seal-2.csv") }));
      await supplier.hears(/^1 of 1 file read/);
      await first.until("the head of the place", () => document.activeElement.id === "heading-came-in");
      assert.deepEqual(await supplier.addsUp(), { came: 8, used: 6, check: 2, duplicate: 0, "set aside": 0, refused: 0 });
      await supplier.doesNotSee(/left open/, "#came-in");

      // The disc is plastic: for metal no check was measured, and no certificate can help. That stays open today.
      assert.equal((await supplier.goesOn(/^evidence:trust_none$/)).id, "result-files");
      await supplier.putsOff(/^evidence:trust_none$/);

      // What is open, and what goes to the laboratory.
      const lots = await supplier.lots();
      assert.deepEqual(Object.keys(lots).sort(), ["CE-1101", "CE-1102"]);
      assert.match(lots["CE-1102"].text, /hold[\s\S]*Br is undecided in 1 of 2 readings/i);
      await supplier.goesByKeyTo("next");
      await supplier.sees(/Follow the next step of each reading[\s\S]*CE-1102/, "#next");

      // The head of the sheet, field by field; nobody is asked who ends the customer's holds.
      for (const [field, text] of [["inspector", "L. K., outgoing inspection"], ["place", "Cedar Works, dispatch"]]) {
        assert.equal((await supplier.goesOn(new RegExp(`^field:${field}$`))).id, `act-${field}--`);
        await supplier.types(text);
        await supplier.hears(new RegExp(`^Taken: ${field}`));
      }
      await supplier.goesOn(/^field:reviewed_at$/);
      await supplier.setsDay("#act-reviewed_at--", "2026-11-26");
      await supplier.hears(/^Taken: reviewed on 2026-11-26/);
      await supplier.goesOn(/^field:contact$/);
      await supplier.types("dispatch desk");
      await supplier.hears(/^Taken: .*dispatch desk/);
      await supplier.goesOn(/^field:customer$/);
      await supplier.types("Fernbrook Controls");
      await supplier.hears(/^Taken: .*Fernbrook Controls/);
      await supplier.doesNotSee(/Notice to|Suppliers reply by/, "#write");

      // The sheet, the laboratory's request, the report.
      assert.equal((await supplier.goesOn(/^sheet$/)).id, "save-self-check-html");
      taken.sheet = String(await first.downloaded("self-check.html", () => first.press("Enter")));
      for (const text of ["not a declaration of conformity", "No rule book of a customer was used", "Fernbrook Controls", "dispatch desk", "Lot CE-1101", "would be held", "yes, on 2027-06-01", "No check covers Cd"]) assert.ok(plain(taken.sheet).includes(text), text);
      const request = String(await supplier.takesAway("laboratory-request.html"));
      assert.match(request, /cover grey[\s\S]*PBB and PBDE/);
      assert.equal((await supplier.goesOn(/^report$/)).id, "save-report-html");
      taken.report = String(await first.downloaded("report.html", () => first.press("Enter")));
      assert.equal(digestOn(taken.report), digestOn(taken.sheet));
      taken.findings = String(await supplier.takesAway("findings.json"));

      // The inspection goes onto the stick, and nothing stays on this computer.
      await supplier.pressesByKey("Saving", ".masthead");
      await supplier.focuses("#keep-download");
      taken.inspection = await first.downloaded("inspection.plumbline", () => first.press("Enter"));
      await supplier.sees(/Saved to a file/, "#written");
      await supplier.focuses("#keep-nothing");
      await supplier.pressesOnce(" ", "the tick", () => document.activeElement.checked);
      await supplier.hears(/^Nothing is kept in this browser any more/);
      await supplier.focuses("#keep-close");
      await first.press("Enter");
      await supplier.hears(/^Closed/);
      await first.until("the first screen", () => !document.getElementById("place-start").hidden && document.getElementById("keep").hidden);
      const left = await first.evaluate(async () => [Object.keys(localStorage), Object.keys(sessionStorage), (await indexedDB.databases()).map((one) => one.name)]);
      assert.deepEqual(left, [["plumbline.keep-nothing"], [], []]);
      supplier.isContent();
    } finally {
      await first.close();
    }

    // Another day, another computer: the inspection is opened with the files beside it, of which one was changed meanwhile.
    const second = await open();
    const colleague = new Person(second);
    try {
      const changed = String(onTheStick("cedar-seal-2.csv")).replace("12.9", "12.8");
      await colleague.brings("Result files", writtenFiles({ "inspection.plumbline": taken.inspection, "cedar-outgoing.csv": onTheStick("cedar-outgoing.csv"), "cedar-seal-2.csv": changed }));
      await colleague.sees(/A file was changed since the inspection was saved\.[\s\S]*cedar-seal-2\.csv/, "#troubles");
      await colleague.doesNotSee(/cedar-outgoing/, "#troubles");
      await colleague.sees(/Self-check/, "#door-label");
      await colleague.goesByKeyTo("write");
      const again = String(await colleague.takesAway("self-check.html"));
      assert.equal(digestOn(again), digestOn(taken.sheet), "the same findings, whatever lies beside");
      assert.equal(String(await colleague.takesAway("findings.json")), taken.findings);
      colleague.isContent();
    } finally {
      await second.close();
    }
  });
}
