/**
 * Work in small pieces: a page on a slow phone answers its reader between two of them. Each piece is one step of an iterator;
 * pieces are done until the time is up, then the browser gets a turn.
 */
const PIECE = 12; // milliseconds
/** What was found is shown so often: drawing takes time too. */
const SHOW = 100; // milliseconds

/** Runs `pieces` to the end, calling `show` now and then and at the end. Stops without a word once `goOn` says so. */
export async function inPieces(pieces: Iterator<unknown>, goOn: () => boolean, show: () => void): Promise<void> {
  // What has just been drawn is shown first.
  await new Promise((done) => requestAnimationFrame(() => setTimeout(done, 0)));
  let shown = performance.now();
  for (;;) {
    const until = performance.now() + PIECE;
    do {
      if (!goOn()) return;
      if (pieces.next().done) {
        show();
        return;
      }
    } while (performance.now() < until);
    if (performance.now() - shown > SHOW) {
      show();
      shown = performance.now();
    }
    await new Promise((done) => setTimeout(done, 0));
  }
}
