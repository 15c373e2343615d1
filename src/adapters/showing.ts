/** Which showing of the page this is, counted from 1; null while it is hidden. */
export type Showing = () => number | null;

/**
 * Tells one showing of the page from the next. A tablet hides its pages before it sleeps, so within
 * one showing it did not.
 */
export function makeShowing(): Showing {
  let showing = 1;
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') showing += 1;
  });
  return () => (document.visibilityState === 'hidden' ? null : showing);
}
