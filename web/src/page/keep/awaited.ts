// Files whose bytes were too many to be kept with the inspection: asked for by name, and held against their digest.

import type { Brought } from "../inspection";
import { change, state, type AwaitedFile, type HeldFile } from "../state";
import { tellTrouble, troublesOver } from "../troubles";
import { byteCount, say } from "../words";
import { fileDigest } from "../digest";

/** Whether these are the bytes that were meant. Where no digest could be made, the size is all there is to go by. */
export async function isThatFile(bytes: Blob, meant: { size: number; sha256: string }): Promise<boolean> {
  if (bytes.size !== meant.size) return false;
  return meant.sha256 === "" || (await fileDigest(bytes)) === meant.sha256;
}

function baseName(name: string): string {
  return name.slice(name.lastIndexOf("/") + 1);
}

/** Parts what came into files that were waited for and others. One that only bears the name of such a file is not taken: acts speak of the other. */
export async function settledAwaited(brought: Brought[]): Promise<{ returned: HeldFile[]; others: Brought[] }> {
  const returned: HeldFile[] = [];
  const others: Brought[] = [];
  for (const one of brought) {
    const meant = state.awaited.filter((waiting) => waiting.file.name === one.name || baseName(waiting.file.name) === baseName(one.name));
    let taken: AwaitedFile | null = null;
    for (const waiting of meant) if (taken === null && (await isThatFile(one.bytes, waiting).catch(() => false))) taken = waiting;
    const about = `awaited:${one.name}`;
    if (taken !== null) {
      const { file } = taken;
      file.bytes = one.bytes;
      change({ awaited: state.awaited.filter((waiting) => waiting.file !== file) });
      troublesOver(about);
      returned.push(file);
    } else if (meant.length > 0 && meant.every((waiting) => waiting.file.name === one.name)) {
      tellTrouble({
        key: about,
        about,
        what: say("page-keep-other-file-what"),
        where: one.name,
        why: say("page-keep-other-file-why", { size: byteCount(one.bytes.size), meant: byteCount(meant[0]?.size ?? 0) }),
        todo: say("page-keep-other-file-todo"),
      });
    } else others.push(one);
  }
  return { returned, others };
}

/** Goes on without a file that was waited for. */
export function waitNoMore(file: HeldFile): void {
  change({ awaited: state.awaited.filter((waiting) => waiting.file !== file) });
  troublesOver(`awaited:${file.name}`);
}
