// Knowing a report of this program by its first bytes, whatever it is called.

/** Where its first words say that it is one. Mail and editors put a byte order mark or a blank line in front. */
const MARK = /^\uFEFF?\s*<!DOCTYPE html>\s*<!--\s*plumbline\.report\//i;
const HEAD = 512;
/** Files looked into at a time, when a folder holds thousands. */
const AT_A_TIME = 100;

function head(file: Blob): Promise<string> {
  return file.slice(0, HEAD).text();
}

/** Parts what came into reports and the rest. A file that can't be read is no report. */
export async function reportsAmong<F extends { file: File }>(found: F[]): Promise<{ reports: F[]; others: F[] }> {
  const reports: F[] = [];
  const others: F[] = [];
  for (let from = 0; from < found.length; from += AT_A_TIME) {
    const some = found.slice(from, from + AT_A_TIME);
    const marked = await Promise.all(some.map(({ file }) => head(file).then((text) => MARK.test(text)).catch(() => false)));
    for (const [at, one] of some.entries()) (marked[at] === true ? reports : others).push(one);
  }
  return { reports, others };
}
