/** The frame is handed over to the screen meanwhile, ms: a tablet's cores are busy with it. */
const HANDED_OVER = 16;

/**
 * Calls back once what has just changed is on the glass: a press is answered before what its answer
 * does not show is done. On a page that is not seen it waits until it is. Gives what calls it off.
 */
export function afterPaint(then: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const frame = requestAnimationFrame(() => {
    timer = setTimeout(then, HANDED_OVER);
  });
  return () => {
    cancelAnimationFrame(frame);
    clearTimeout(timer);
  };
}
