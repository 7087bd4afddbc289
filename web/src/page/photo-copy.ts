// A photograph as a camera wrote it, made into the small copy that a report prints. Painting it anew leaves behind whatever
// stood beside the picture: place, time, owner.

import { bytesDigest } from "./digest";

/** The longer side of a copy: a spot of a millimetre on a hand-sized part is still several pixels wide. */
const LONGER_SIDE = 1024;
const QUALITY = 0.8;
const LARGEST_FILE = 64 * 1024 * 1024;

export interface PhotoCopy {
  sha256: string;
  mediaType: string;
  /** Pixels of the original, as it is shown. */
  width: number;
  height: number;
  bytes: Uint8Array;
}

/** Why no copy could be made: the last part of the words that say so. */
export class NoCopy extends Error {
  constructor(
    readonly why: "large" | "broken" | "canvas",
    readonly said = "",
  ) {
    super(why);
  }
}

const STARTS: [string, number[]][] = [
  ["image/jpeg", [0xff, 0xd8, 0xff]],
  ["image/png", [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]],
];

/** The kind of a picture by its first bytes; null for anything else, whatever its name says. */
export async function mediaTypeOf(file: Blob): Promise<string | null> {
  const head = new Uint8Array(await file.slice(0, 8).arrayBuffer());
  return STARTS.find(([, start]) => start.every((byte, at) => head[at] === byte))?.[0] ?? null;
}

function canvasOf(width: number, height: number): { canvas: HTMLCanvasElement; paint: CanvasRenderingContext2D } {
  const canvas = document.createElement("canvas");
  canvas.width = width;
  canvas.height = height;
  const paint = canvas.getContext("2d", { alpha: false });
  if (paint === null) throw new NoCopy("canvas");
  return { canvas, paint };
}

let honest: boolean | null = null;

/** Some browsers, set to give away nothing, hand out noise in place of what was painted. That must not become evidence. */
function canvasIsHonest(): boolean {
  if (honest === null) {
    const { canvas, paint } = canvasOf(8, 8);
    paint.fillStyle = "rgb(12, 120, 200)";
    paint.fillRect(0, 0, canvas.width, canvas.height);
    const { data } = paint.getImageData(0, 0, 8, 8);
    honest = data.every((byte, at) => Math.abs(byte - ([12, 120, 200, 255][at % 4] ?? 0)) <= 2);
  }
  return honest;
}

/** Makes the copy, the right way up as the browser shows the original. */
export async function copyOf(file: Blob, mediaType: string): Promise<PhotoCopy> {
  if (file.size > LARGEST_FILE) throw new NoCopy("large");
  if (!canvasIsHonest()) throw new NoCopy("canvas");
  const original = await file.arrayBuffer();
  const sha256 = await bytesDigest(original);
  let picture: ImageBitmap;
  try {
    picture = await createImageBitmap(new Blob([original], { type: mediaType }));
  } catch (error) {
    throw new NoCopy("broken", error instanceof Error ? error.message : String(error));
  }
  const { width, height } = picture;
  try {
    const scale = Math.min(1, LONGER_SIDE / Math.max(width, height));
    const { canvas, paint } = canvasOf(Math.max(1, Math.round(width * scale)), Math.max(1, Math.round(height * scale)));
    // What is seen through becomes white, as on paper.
    paint.fillStyle = "#fff";
    paint.fillRect(0, 0, canvas.width, canvas.height);
    paint.imageSmoothingQuality = "high";
    paint.drawImage(picture, 0, 0, canvas.width, canvas.height);
    const copy = await new Promise<Blob | null>((settle) => canvas.toBlob(settle, "image/jpeg", QUALITY));
    if (copy === null) throw new NoCopy("canvas");
    return {
      sha256,
      mediaType,
      width,
      height,
      bytes: new Uint8Array(await copy.arrayBuffer()),
    };
  } finally {
    picture.close();
  }
}
