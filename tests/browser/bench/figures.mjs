// Medians of one run, side by side.

export function median(numbers) {
  const sorted = [...numbers].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}

/** One runner's rounds, put together. */
export function summed(name, rounds, { bytes, rows }) {
  const totals = rounds.map((round) => round.total);
  const total = median(totals);
  const told = (figure) => {
    const figures = rounds.map(figure).filter((one) => one !== null);
    return figures.length === 0 ? null : median(figures);
  };
  return {
    name,
    ms: total,
    least: Math.min(...totals),
    most: Math.max(...totals),
    megabytesPerSecond: bytes / 1000 / total,
    rowsPerSecond: (rows * 1000) / total,
    processor: told((round) => round.processor),
    peakMegabytes: told((round) => (round.peakBytes === null ? null : round.peakBytes / 1e6)),
    steps: Object.fromEntries(Object.keys(rounds[0].steps).map((step) => [step, median(rounds.map((round) => round.steps[step]))])),
  };
}

const whole = (number) => Math.round(number).toLocaleString("en");

/** One table: the first line is what the others are held against. */
export function asTable(lines) {
  const head = ["", "ms", "least to most", "MB/s", "rows/s", "time against the page's", "processor ms", "peak MB", "of which (ms)"];
  const rows = lines.map((line) => [
    line.name,
    whole(line.ms),
    `${whole(line.least)} to ${whole(line.most)}`,
    whole(line.megabytesPerSecond),
    whole(line.rowsPerSecond),
    (line.ms / lines[0].ms).toFixed(2),
    ...[line.processor, line.peakMegabytes].map((figure) => (figure === null ? "not told" : whole(figure))),
    Object.entries(line.steps).map(([step, ms]) => `${step} ${whole(ms)}`).join(", "),
  ]);
  const widths = head.map((_, column) => Math.max(...[head, ...rows].map((row) => row[column].length)));
  const isText = (column) => column === 0 || column === head.length - 1;
  return [head, ...rows].map((row) => row.map((cell, column) => (isText(column) ? cell.padEnd(widths[column]) : cell.padStart(widths[column]))).join("  ").trimEnd()).join("\n");
}
