import { onCleanup, onMount } from 'solid-js';
import { LINK_MARK } from '../core/sheets/link-form.ts';

/** A formula that this page was opened with; null: none. */
export const linkHere = (): string | null =>
  location.hash.startsWith(LINK_MARK) ? location.hash : null;

/** It was answered: the next time the page is opened nobody is asked again. */
export const leaveLink = (): void =>
  history.replaceState(null, '', `${location.pathname}${location.search}`);

/**
 * Calls back where the page was opened with a formula, or is while this is on show. Where a bake runs
 * its bench is: nobody is interrupted for a formula.
 */
export function onLink(then: () => void): void {
  const look = (): void => {
    if (linkHere() !== null) then();
  };
  onMount(() => {
    look();
    window.addEventListener('hashchange', look);
  });
  onCleanup(() => window.removeEventListener('hashchange', look));
}
