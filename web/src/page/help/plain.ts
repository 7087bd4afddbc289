// Why something could not be done, for people: what a browser says of it is for programmers, and stands apart.

import { say } from "../words";
import { placesIn } from "./scrub";

export function rawOf(error: unknown): string {
  if (!(error instanceof Error) && !(error instanceof DOMException)) return String(error);
  const places = placesIn(error.stack ?? "");
  return `${error.name}: ${error.message}${places === "" ? "" : ` (${places})`}`;
}

/** Why the bytes of a file could not be had. */
export function unreadableWhy(error: unknown): string {
  const name = error instanceof DOMException ? error.name : "";
  if (name === "NotFoundError") return say("page-trouble-gone-why");
  if (name === "NotReadableError" || name === "SecurityError") return say("page-trouble-locked-why");
  return say("page-trouble-reading-why");
}

/** Whether a text could not be read because its bytes are none. */
export function isNoText(error: unknown): boolean {
  return error instanceof TypeError;
}
