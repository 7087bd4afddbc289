// Reads what the build put into the page as inert text: base64, partly deflated.

function inert(id: string): string {
  return document.getElementById(id)?.textContent ?? "";
}

function fromBase64(text: string): Uint8Array<ArrayBuffer> {
  const native = (Uint8Array as unknown as { fromBase64?: (text: string) => Uint8Array<ArrayBuffer> }).fromBase64;
  if (native !== undefined) return native.call(Uint8Array, text);
  const binary = atob(text);
  const bytes = new Uint8Array(binary.length);
  for (let i = 0; i < binary.length; i += 1) bytes[i] = binary.charCodeAt(i);
  return bytes;
}

export async function inflatedBytes(id: string): Promise<Uint8Array<ArrayBuffer>> {
  const stream = new Blob([fromBase64(inert(id))]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

export async function inflatedText(id: string): Promise<string> {
  return new TextDecoder().decode(await inflatedBytes(id));
}

export function plainText(id: string): string {
  return new TextDecoder().decode(fromBase64(inert(id)));
}
