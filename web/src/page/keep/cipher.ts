// How a recovery copy is encrypted: AES-GCM under a key that is made from the recovery code.
//
// What it is against: another page, or another person, that reads what this browser keeps later on. All pages opened from a
// disk share one storage in Chromium, so any of them can open our database. Therefore no key is kept either: a key object that
// can't be exported could still be used by each of those pages, and it lies on the disk beside what it locks.
// What it is not against: someone who watches, a program that runs on this computer now, what stands in memory or what the
// system writes of memory to the disk, and whoever finds the code that was written down. Who can write to the storage can
// remove a copy, or put back the whole of an earlier state of it; a changed, moved, doubled or missing record is noticed.

/** OWASP Password Storage Cheat Sheet (2023): at least 600 000 for PBKDF2 with HMAC-SHA-256. */
export const ITERATIONS = 600_000;
const SALT_BYTES = 16;
/** 96 bits, fresh for each record (NIST SP 800-38D, 8.2.2; far fewer records than its bound of 2^32 under one key). */
const IV_BYTES = 12;

const utf8 = new TextEncoder();

export function freshSalt(): Uint8Array<ArrayBuffer> {
  return crypto.getRandomValues(new Uint8Array(SALT_BYTES));
}

export async function keyOf(code: string, salt: Uint8Array<ArrayBuffer>, iterations: number): Promise<CryptoKey> {
  const material = await crypto.subtle.importKey("raw", utf8.encode(code), "PBKDF2", false, ["deriveKey"]);
  return crypto.subtle.deriveKey({ name: "PBKDF2", hash: "SHA-256", salt, iterations }, material, { name: "AES-GCM", length: 256 }, false, ["encrypt", "decrypt"]);
}

/** Encrypts what belongs at this place, and nowhere else: elsewhere it does not open. */
export async function seal(key: CryptoKey, place: string, bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> {
  const iv = crypto.getRandomValues(new Uint8Array(IV_BYTES));
  const closed = new Uint8Array(await crypto.subtle.encrypt({ name: "AES-GCM", iv, additionalData: utf8.encode(place) }, key, bytes));
  const sealed = new Uint8Array(IV_BYTES + closed.length);
  sealed.set(iv);
  sealed.set(closed, IV_BYTES);
  return sealed;
}

/** Null where the key is another, the bytes were changed, or they belong to another place. */
export async function unseal(key: CryptoKey, place: string, sealed: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer> | null> {
  try {
    const iv = sealed.subarray(0, IV_BYTES);
    return new Uint8Array(await crypto.subtle.decrypt({ name: "AES-GCM", iv, additionalData: utf8.encode(place) }, key, sealed.subarray(IV_BYTES)));
  } catch {
    return null;
  }
}
