// The core is packed tighter than a browser can unpack by itself: a sixth less to carry, for a moment's work after the page
// is on the screen.

import { decompress } from "fzstd";
import { packedBytes } from "./inert";

export async function unpackedBytes(id: string): Promise<Uint8Array<ArrayBuffer>> {
  // What a person can already read stands first.
  await new Promise<void>((settle) => {
    setTimeout(settle, 0);
  });
  return decompress(packedBytes(id)) as Uint8Array<ArrayBuffer>;
}
