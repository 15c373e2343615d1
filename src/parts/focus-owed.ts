import { afterPaint } from './after-paint.ts';

/** What is owed the focus that a closed sheet had, the latest last. */
let owed: readonly Element[] = [];
let callOff = (): void => {};

/** Who had the focus, asked as a sheet opens: of one that opens in another's place, who had it before that. */
export function focusBefore(): readonly Element[] {
  const before = document.activeElement;
  const all = before === null ? owed : [...owed, before];
  callOff();
  owed = [];
  return all;
}

/**
 * A sheet that is about to close gives up its focus while the page still lies as it was laid out: one that
 * is taken away with the focus in it has everything that changed meanwhile laid out at once, before it goes.
 */
export function letGo(): void {
  const at = document.activeElement;
  if (at instanceof HTMLElement && at.closest('[aria-modal="true"]')) at.blur();
}

/**
 * Gives the focus back to the latest of them that still stands, after the paint: asking for it has the
 * whole page laid out at once. Where something else has come to the focus meanwhile it stays there.
 */
export function giveBack(before: readonly Element[]): void {
  owed = [...owed, ...before];
  callOff();
  // By then the page may be gone, and its names with it.
  const page = document;
  callOff = afterPaint(() => {
    const to = owed.findLast((el) => el.isConnected && el !== page.body);
    owed = [];
    const at = page.activeElement;
    if (to && 'focus' in to && (at === null || at === page.body)) (to as HTMLElement).focus();
  });
}
