// The worker: the only place that calls the wasm module. It keeps nothing that the page could not give it again.

import type { Session } from "../shared/door";
import type { FromWorker, ToWorker } from "../shared/messages";

// The no-modules glue stands in front of this script in the same worker text.
declare const wasm_bindgen: {
  initSync(from: { module: WebAssembly.Module | BufferSource }): unknown;
  Session: new () => Session;
};

declare function postMessage(message: FromWorker, transfer: Transferable[]): void;
declare let onmessage: ((event: MessageEvent<ToWorker>) => void) | null;

let session: Session | null = null;
let reading = false;
let dead = false;
let lastWords = "";

// A panic prints its text before the instance traps; the trap itself says only "unreachable".
const printError = console.error.bind(console);
console.error = (...words: unknown[]) => {
  lastWords = words.map(String).join(" ");
  printError(...words);
};

type Reply<T = FromWorker> = T extends { gen: number; id: number } ? Omit<T, "gen" | "id"> : never;

onmessage = (event) => {
  const asked = event.data;
  // A module that has trapped holds broken state: it may still answer, and wrongly.
  if (dead) return;
  const send = (reply: Reply, transfer: Transferable[] = []): void => {
    postMessage({ ...reply, gen: asked.gen, id: asked.id } as FromWorker, transfer);
  };
  try {
    answer(asked, send);
  } catch (error) {
    dead = true;
    const said = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
    send({ kind: "crashed", step: asked.kind, text: lastWords === "" ? said : `${lastWords.split("\n\n")[0] ?? ""} (${said})` });
  }
};

function answer(asked: ToWorker, send: (reply: Reply, transfer?: Transferable[]) => void): void {
  if (asked.kind === "start") {
    wasm_bindgen.initSync({ module: "module" in asked ? asked.module : asked.bytes as BufferSource });
    session = new wasm_bindgen.Session();
    send({ kind: "ready", version: session.version() });
    return;
  }
  if (session === null) throw new Error("asked before start");
  switch (asked.kind) {
    case "open":
      session.open(asked.name, asked.inFolder);
      reading = true;
      return send({ kind: "ack" });
    case "chunk":
      // After a cancel the chunks already under way still arrive.
      if (reading) session.push(new Uint8Array(asked.bytes));
      return send({ kind: "ack" });
    case "finish":
      reading = false;
      return send({ kind: "sources", views: session.finish() });
    case "unreadable":
      reading = false;
      session.unreadable(asked.name, asked.text);
      return send({ kind: "ack" });
    case "cancel":
      reading = false;
      return send({ kind: "ack" });
    case "clear":
      reading = false;
      session.clear_sources();
      return send({ kind: "ack" });
    case "settings":
      return send({ kind: "problems", problems: session.settings(asked.name, asked.text) });
    case "rule_book":
      return send({ kind: "problems", problems: session.rule_book(asked.name, asked.text) });
    case "mapping":
      return send({ kind: "problems", problems: session.mapping(asked.name, asked.text) });
    case "history":
      return send({ kind: "problems", problems: session.history(asked.name, asked.text) });
    case "bill":
      return send({ kind: "problems", problems: session.bill(asked.name, asked.bytes) });
    case "photo":
      return send({ kind: "photo", refused: session.photo(asked.name, asked.sha256, asked.mediaType, asked.width, asked.height, asked.copy) });
    case "remove_photo":
      session.remove_photo(asked.name, asked.sha256);
      return send({ kind: "ack" });
    case "photos":
      return send({ kind: "photos", photos: session.photos() });
    case "mapping_acts":
      return send({ kind: "mapping_acts", found: session.mapping_acts(asked.name, asked.text) });
    case "mapping_text":
      return send({ kind: "mapping_text", text: session.mapping_text() });
    case "kept_mapping":
      return send({ kind: "mapping_text", text: session.kept_mapping(asked.before) });
    case "choices":
      return send({ kind: "choices", choices: session.choices() });
    case "id_template":
      return send({ kind: "id_template", template: session.id_template(asked.example, asked.named, asked.ids) });
    case "preview":
      return send({ kind: "preview", preview: session.preview(asked.source, asked.block, asked.rows) });
    case "act":
      return send({ kind: "acted", answer: session.act(asked.act) });
    case "review":
      return send({ kind: "summary", summary: session.review() });
    case "summary":
      return send({ kind: "summary", summary: session.summary() });
    case "teach":
      session.teach(asked.tag, asked.texts);
      return send({ kind: "ack" });
    case "speak":
      session.speak(asked.tag);
      return send({ kind: "ack" });
    case "offers":
      return send({ kind: "offers", offers: session.offers() });
    case "order": {
      const found = session.order(asked.query);
      return send({ kind: "order", found }, [found.indices.buffer, found.starts.buffer, found.worst.buffer, found.keys.buffer]);
    }
    case "window":
      return send({ kind: "window", rows: session.rows(asked.indices, asked.others) });
    case "copied": {
      const bytes: Uint8Array[] = [];
      session.copied(asked.indices, asked.columns, asked.heads, (piece) => bytes.push(piece.slice()));
      return send({ kind: "copied", bytes }, bytes.map((piece) => piece.buffer));
    }
    case "detail":
      return send({ kind: "detail", detail: session.detail(asked.index) });
    case "worst":
      return send({ kind: "worst", worst: session.worst(asked.lot) });
    case "ahead":
      return send({ kind: "ahead", ahead: session.ahead(asked.lot) });
    case "checks":
      return send({ kind: "checks", checks: session.checks() });
    case "papers":
      return send({ kind: "papers", papers: session.papers() });
    case "shelf":
      return send({ kind: "shelf", books: session.shelf() });
    case "explained":
      return send({ kind: "explained", lines: session.explained(asked.book) });
    case "export": {
      const { file, tag } = asked;
      session.write(file, tag, (bytes) => {
        // The bytes may be a view of wasm memory, which the next part overwrites: only a copy may leave.
        const copy = bytes.slice();
        send({ kind: "part", file, bytes: copy }, [copy.buffer]);
      });
      return send({ kind: "exported", file });
    }
    case "settings_text":
      return send({ kind: "settings_text", text: session.settings_text() });
    case "what_if":
      return send({ kind: "what_if", view: session.what_if(asked.asked) });
    case "exercises":
      return send({ kind: "exercises", list: session.exercises(asked.lesson, asked.seed, asked.count) });
    case "solved":
      return send({ kind: "solved", view: session.solved(asked.lesson, asked.seed, asked.number, asked.answer) });
    case "invented_delivery":
      return send({ kind: "invented_delivery", delivery: session.invented_delivery(asked.seed) });
    case "clean_sample":
      return send({ kind: "clean_sample", most: session.clean_sample(asked.lotSize, asked.taken) });
    case "prove_begin":
      session.prove_begin();
      return send({ kind: "ack" });
    case "prove_beside":
      session.prove_beside(asked.name);
      return send({ kind: "ack" });
    case "prove_push":
      session.prove_push(new Uint8Array(asked.bytes));
      return send({ kind: "ack" });
    case "prove_end":
      return send({ kind: "proof", proof: session.prove_end(asked.digest ?? undefined) });
  }
}
