import type { JSX } from 'solid-js';
import { render } from 'solid-js/web';
import './PrintedPage.css';

/** Lets go of what was laid beside the page for the last print. */
let last: (() => void) | null = null;

/**
 * Prints one page of paper. It is laid beside the program and shown to the printer alone; some devices
 * print only after this has come back, so it stays until they say that they have, or until the next one.
 */
export function printPage(content: () => JSX.Element): void {
  last?.();
  const page = document.createElement('div');
  page.className = 'printed-page';
  document.body.append(page);
  const undo = render(content, page);
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
