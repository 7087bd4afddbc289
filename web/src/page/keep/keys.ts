// Back and forth by keys: Ctrl+Z, Ctrl+Shift+Z and Ctrl+Y, and with the command key. In a field they belong to the field.

import { redo, undo } from "../inspection";

const TYPED_IN = 'textarea, [contenteditable], input:not([type="checkbox"], [type="radio"], [type="file"], [type="button"])';

export function beginKeys(): void {
  addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || event.defaultPrevented) return;
    if (event.target instanceof Element && event.target.closest(TYPED_IN) !== null) return;
    const key = event.key.toLowerCase();
    if (key === "z" && !event.shiftKey) void undo();
    else if (key === "y" || key === "z") void redo();
    else return;
    event.preventDefault();
  });
}
