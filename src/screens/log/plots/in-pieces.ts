/** The longest that a piece of work takes, ms: less than a frame, so that no press waits for it. Judgement. */
const PIECE = 10;

/**
 * Goes through the steps of a long work, a piece at a time with the page free between: the first piece comes
 * once what has just changed may be painted. Gives what calls it off. `now` in ms, on a clock that never runs back.
 */
export function inPieces(
  steps: Iterator<unknown>,
  now: () => number = () => performance.now(),
): () => void {
  let timer: ReturnType<typeof setTimeout>;
  const go = (): void => {
    const until = now() + PIECE;
    do {
      if (steps.next().done) return;
    } while (now() < until);
    timer = setTimeout(go, 0);
  };
  timer = setTimeout(go, 0);
  return () => clearTimeout(timer);
}
