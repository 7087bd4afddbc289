// The compiled core, which the browser compiles while it inflates it.

import { inflatedBytes, inflating } from "./inert";

const CORE = "plumbline-wasm";

export async function compiledCore(): Promise<WebAssembly.Module> {
  // What a person can already read stands first.
  await new Promise<void>((settle) => {
    setTimeout(settle, 0);
  });
  return WebAssembly.compileStreaming(new Response(inflating(CORE), { headers: { "Content-Type": "application/wasm" } }));
}

/** Its bytes, for the engines that refuse to hand a compiled module to a worker. */
export function coreBytes(): Promise<Uint8Array> {
  return inflatedBytes(CORE);
}
