/**
 * Work in small pieces: a page on a slow phone answers its reader between two of them. Each piece is one step of an iterator;
 * pieces are done until the time is up, then the browser gets a turn.
 */
const PIECE = 12; // milliseconds

/** Runs `pieces` to the end, calling `pause` after every stretch. Stops without a word once `goOn` says so. */
export async function inPieces(pieces: Iterator<unknown>, goOn: () => boolean, pause: () => void): Promise<void> {
  // What has just been drawn is shown first.
  await new Promise((done) => requestAnimationFrame(() => setTimeout(done, 0)));
  for (;;) {
    const until = performance.now() + PIECE;
    do {
      if (!goOn()) return;
      if (pieces.next().done) {
        pause();
        return;
      }
    } while (performance.now() < until);
    pause();
    await new Promise((done) => setTimeout(done, 0));
  }
}
