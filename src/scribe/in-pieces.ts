/** So long a page may be kept from a touch without its being felt, even on a phone far slower. */
const PIECE_MS = 4;

/**
 * Does a long work step by step, and lets the page do what else it has to between pieces of it.
 * @param step does a little; false once all is done
 * @param now milliseconds of a clock that never goes back
 */
export async function inPieces(
  step: () => boolean,
  now: () => number = () => performance.now(),
): Promise<void> {
  let isMore = true;
  while (isMore) {
    const until = now() + PIECE_MS;
    do isMore = step();
    while (isMore && now() < until);
    await new Promise((goOn) => setTimeout(goOn));
  }
}
