// After what it was asked to do the page takes the focus along: to the next question, to where an answer can be taken back.
// Recording takes a moment. Who has moved on meanwhile, by key or finger, is not fetched back.

let moves = 0;

export function beginHand(): void {
  for (const kind of ["keydown", "pointerdown"]) {
    addEventListener(kind, () => {
      moves += 1;
    }, true);
  }
}

/** Whether the person has pressed nothing since this was asked for. */
export function stillHere(): () => boolean {
  const then = moves;
  return () => moves === then;
}
