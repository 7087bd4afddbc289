// The same core without a browser.

import { execFileSync } from "node:child_process";
import { mkdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { top } from "../drive.mjs";

const target = process.env.CARGO_TARGET_DIR || join(top, "target");
const tool = join(target, "release", process.platform === "win32" ? "plumbline-tool.exe" : "plumbline-tool");

export function buildTool() {
  execFileSync("cargo", ["build", "--locked", "--release", "-p", "plumbline-tool"], { cwd: top, stdio: "inherit" });
}

export function inventTable(rows, out) {
  mkdirSync(dirname(out), { recursive: true });
  execFileSync(tool, ["invent-table", "--rows", String(rows), "--out", out], { stdio: "inherit" });
}

export function reviewNatively(file) {
  const report = JSON.parse(execFileSync(tool, ["measure", file], { encoding: "utf8" }));
  const { read_ms, intake_ms, review_ms, digest_alone_ms, processor_ms } = report.median;
  return {
    // The digest taken alone is a figure beside the others; intake has its own.
    total: read_ms + intake_ms + review_ms,
    steps: { "file read": read_ms, "parsed, hashed": intake_ms, reviewed: review_ms, "hash alone": digest_alone_ms },
    processor: processor_ms,
    peakBytes: report.peak_bytes,
    readings: report.readings,
    sha256: report.sha256,
    counts: { substances: report.substances, halogens: report.halogens },
  };
}
