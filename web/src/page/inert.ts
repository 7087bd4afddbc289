// Reads what the build put into the page as inert text: packed bytes, seven bits a character.

/** The values of seven bits that do not stand for themselves: U+0080 to U+0082 stand for them, as HTML would change them. */
const NOT_THEMSELVES = [0x00, 0x0d, 0x3c];

function inert(id: string): string {
  return document.getElementById(id)?.textContent ?? "";
}

function bytesOf(text: string): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(Math.floor((text.length * 7) / 8));
  let held = 0;
  let bits = 0;
  let at = 0;
  for (let i = 0; i < text.length; i += 1) {
    const code = text.charCodeAt(i);
    held = ((held << 7) | (code < 0x80 ? code : (NOT_THEMSELVES[code - 0x80] ?? 0))) & 0x7fff;
    bits += 7;
    if (bits >= 8) {
      bits -= 8;
      bytes[at] = (held >> bits) & 0xff;
      at += 1;
    }
  }
  return bytes;
}

function packedBytes(id: string): Uint8Array<ArrayBuffer> {
  return bytesOf(inert(id));
}

/** What stands under this id, as it is inflated by the browser's own code, beside the page's script. */
export function inflating(id: string): ReadableStream<Uint8Array<ArrayBuffer>> {
  return new Blob([packedBytes(id)]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
}

export async function inflatedBytes(id: string): Promise<Uint8Array<ArrayBuffer>> {
  return new Uint8Array(await new Response(inflating(id)).arrayBuffer());
}

export async function inflatedText(id: string): Promise<string> {
  return new TextDecoder().decode(await inflatedBytes(id));
}
