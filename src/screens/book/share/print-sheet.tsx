import { render } from 'solid-js/web';
import { BenchSheet } from './BenchSheet.tsx';
import type { BenchView } from './sheet-view.ts';

/** Lets go of what was laid beside the page for the last print. */
let last: (() => void) | null = null;

/**
 * One page of paper, laid beside the program and shown to the printer alone. Some devices print only
 * after this has come back: it stays until they say that they have, or until the next one.
 */
export function printSheet(view: BenchView): void {
  last?.();
  const page = document.createElement('div');
  page.className = 'printed-page';
  document.body.append(page);
  const undo = render(() => <BenchSheet view={view} />, page);
  const gone = (): void => {
    last = null;
    window.removeEventListener('afterprint', gone);
    undo();
    page.remove();
  };
  last = gone;
  window.addEventListener('afterprint', gone);
  window.print();
}
