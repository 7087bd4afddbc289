// SHA-256 as 64 digits.

export function hexadecimal(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

export async function bytesDigest(bytes: Uint8Array<ArrayBuffer> | ArrayBuffer): Promise<string> {
  return hexadecimal(new Uint8Array(await crypto.subtle.digest("SHA-256", bytes)));
}

export async function fileDigest(file: Blob): Promise<string> {
  return bytesDigest(await file.arrayBuffer());
}
