// The digest as a person types it from signed paper: forgiving in how it is written, strict in what it is.

import { showRefusal } from "./acts-given";
import { byId } from "./elements";
import { say } from "./words";

const DIGITS = 64;

function field(): HTMLTextAreaElement {
  return byId<HTMLTextAreaElement>("prove-digest");
}

function tell(why: string): void {
  showRefusal(byId("prove-digest-refusal"), why);
  if (why === "") field().removeAttribute("aria-invalid");
  else field().setAttribute("aria-invalid", "true");
}

/** One run of digits, or empty where nothing is typed; null, and why is said, where what is typed is no digest. */
export function typedDigest(): string | null {
  // Between groups of digits stand spaces and line ends, and sometimes points, colons or dashes.
  const signs = field().value.replace(/[\s\u200b\ufeff.:\u00b7\u2010-\u2013-]/g, "").toLowerCase();
  const odd = /[^0-9a-f]/u.exec(signs)?.[0];
  const length = signs.length;
  tell(odd !== undefined ? say("page-prove-digest-odd", { sign: odd }) : length === 0 || length === DIGITS ? "" : say("page-prove-digest-length", { n: length }));
  return odd === undefined && (length === 0 || length === DIGITS) ? signs : null;
}

/** The digest belongs to the paper of one report. */
export function clearDigest(): void {
  field().value = "";
  tell("");
}

export function digestWaits(): void {
  showRefusal(byId("prove-digest-refusal"), say("page-prove-report-first"));
}

export function focusDigest(): void {
  field().focus();
}

/** Line breaks mean nothing in a digest, so Enter takes it; those of a text that is pasted stay. */
export function onDigestEnter(take: () => void): void {
  field().addEventListener("keydown", (event) => {
    if (event.key !== "Enter" || event.isComposing) return;
    event.preventDefault();
    take();
  });
}
