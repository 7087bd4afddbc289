// Where recovery copies lie: IndexedDB, which works for a page opened from a disk in Chromium and Firefox. Here are only
// sealed bytes and what stands beside them in clear: salt, when it was saved, how many records and files. Never a name.

const DATABASE = "plumbline.recovery";
const VERSION = 1;
const HEADS = "copies";
const RECORDS = "records";
/** A database that another page holds shut must not hold up the work. */
const PATIENCE_MS = 10_000;

/** What stands beside a copy in clear. */
export interface CopyHead {
  id: string;
  salt: Uint8Array<ArrayBuffer>;
  iterations: number;
  /** Milliseconds since 1970, by the clock of this computer. */
  saved: number;
  records: number;
  files: number;
  /** Sealed: how many records there are, so that missing last ones are noticed. */
  tally: Uint8Array<ArrayBuffer>;
}

/** A copy as it lies there: records with their numbers, in order. */
export interface StoredCopy {
  head: CopyHead;
  numbers: number[];
  records: Uint8Array<ArrayBuffer>[];
}

/** full: no room; gone: removed by another page; taken: another page goes on with the same copy; refused: anything else. */
export type StoreFault = "refused" | "full" | "gone" | "taken";

export class StoreFailed extends Error {
  constructor(
    readonly fault: StoreFault,
    readonly said: string,
  ) {
    super(said);
  }
}

function failed(error: unknown): StoreFailed {
  if (error instanceof StoreFailed) return error;
  const name = error instanceof Error || error instanceof DOMException ? error.name : "";
  const said = error instanceof Error || error instanceof DOMException ? `${error.name}: ${error.message}` : String(error);
  return new StoreFailed(name === "QuotaExceededError" ? "full" : name === "ConstraintError" ? "taken" : "refused", said);
}

let held: IDBDatabase | null = null;

/** The database; null where there is none and none is to be made. */
async function database(make: boolean): Promise<IDBDatabase | null> {
  if (held !== null) return held;
  try {
    held = await new Promise<IDBDatabase | null>((settle, fail) => {
      let nothingThere = false;
      const request = indexedDB.open(DATABASE, VERSION);
      const patience = setTimeout(() => fail(new StoreFailed("refused", "the browser did not open its storage")), PATIENCE_MS);
      request.onupgradeneeded = () => {
        if (!make) {
          // Looking must leave nothing behind, not even an empty database.
          nothingThere = true;
          request.transaction?.abort();
          return;
        }
        request.result.createObjectStore(HEADS, { keyPath: "id" });
        request.result.createObjectStore(RECORDS);
      };
      request.onsuccess = () => {
        clearTimeout(patience);
        settle(request.result);
      };
      request.onerror = (event) => {
        event.preventDefault();
        clearTimeout(patience);
        if (nothingThere) settle(null);
        else fail(request.error ?? new Error("indexedDB"));
      };
    });
  } catch (error) {
    throw failed(error);
  }
  if (held !== null) {
    held.onclose = () => {
      held = null;
    };
    held.onversionchange = () => {
      held?.close();
      held = null;
    };
  }
  return held;
}

function done(transaction: IDBTransaction): Promise<void> {
  return new Promise((settle, fail) => {
    let why: DOMException | null = null;
    transaction.oncomplete = () => settle();
    transaction.onerror = (event) => {
      why ??= event.target instanceof IDBRequest ? event.target.error : null;
      // One record that can't be written ends them all: a copy with a hole is none.
      event.preventDefault();
      end(transaction);
    };
    transaction.onabort = () => fail(failed(why ?? transaction.error ?? new Error("the transaction was ended")));
  });
}

function end(transaction: IDBTransaction): void {
  try {
    transaction.abort();
  } catch {
    // It has ended already.
  }
}

function answered<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((settle, fail) => {
    request.onsuccess = () => settle(request.result);
    request.onerror = () => fail(failed(request.error));
  });
}

function writing(base: IDBDatabase): IDBTransaction {
  // strict: the browser says that it is done when the disk has it, not when the system has promised it.
  return base.transaction([HEADS, RECORDS], "readwrite", { durability: "strict" });
}

function recordsOf(id: string): IDBKeyRange {
  return IDBKeyRange.bound([id], [id, []]);
}

/** Appends records to a copy, and brings its head up to date, as one. */
export async function append(head: CopyHead, first: number, records: Uint8Array<ArrayBuffer>[]): Promise<void> {
  let transaction: IDBTransaction | null = null;
  try {
    const base = await database(true);
    if (base === null) throw new StoreFailed("refused", "indexedDB");
    transaction = writing(base);
    const finished = done(transaction);
    finished.catch(() => undefined);
    const heads = transaction.objectStore(HEADS);
    if (first > 0 && (await answered(heads.get(head.id))) === undefined) throw new StoreFailed("gone", "the copy was removed");
    const into = transaction.objectStore(RECORDS);
    // add, not put: where another page has written a record of this number, neither must overwrite the other's.
    for (const [at, record] of records.entries()) into.add(record, [head.id, first + at]);
    heads.put(head);
    await finished;
  } catch (error) {
    if (transaction !== null) end(transaction);
    throw failed(error);
  }
}

/** The heads of all copies, newest first. */
export async function copiesFound(): Promise<CopyHead[]> {
  const base = await database(false);
  if (base === null) return [];
  const heads = await answered<CopyHead[]>(base.transaction(HEADS).objectStore(HEADS).getAll());
  return heads.sort((a, b) => b.saved - a.saved);
}

export async function readCopy(id: string): Promise<StoredCopy | null> {
  const base = await database(false);
  if (base === null) return null;
  const transaction = base.transaction([HEADS, RECORDS]);
  const store = transaction.objectStore(RECORDS);
  const [head, keys, records] = await Promise.all([
    answered<CopyHead | undefined>(transaction.objectStore(HEADS).get(id)),
    answered(store.getAllKeys(recordsOf(id))),
    answered<Uint8Array<ArrayBuffer>[]>(store.getAll(recordsOf(id))),
  ]);
  if (head === undefined) return null;
  return { head, numbers: keys.map((key) => (Array.isArray(key) ? Number(key[1]) : -1)), records };
}

/** Removes copies; with the last one the database goes too. */
export async function removeCopies(ids: string[]): Promise<void> {
  try {
    const base = await database(false);
    if (base === null) return;
    const transaction = writing(base);
    const finished = done(transaction);
    for (const id of ids) {
      transaction.objectStore(HEADS).delete(id);
      transaction.objectStore(RECORDS).delete(recordsOf(id));
    }
    await finished;
    if ((await copiesFound()).length > 0) return;
    base.close();
    held = null;
    await answered(indexedDB.deleteDatabase(DATABASE));
  } catch (error) {
    throw failed(error);
  }
}

/** Puts back copies that were removed. */
export async function putBack(copies: StoredCopy[]): Promise<void> {
  try {
    const base = await database(true);
    if (base === null) return;
    const transaction = writing(base);
    const finished = done(transaction);
    for (const { head, numbers, records } of copies) {
      transaction.objectStore(HEADS).put(head);
      for (const [at, record] of records.entries()) transaction.objectStore(RECORDS).put(record, [head.id, numbers[at] ?? at]);
    }
    await finished;
  } catch (error) {
    throw failed(error);
  }
}
