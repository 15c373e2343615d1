/** What lies on top: a dialog over the page, else the page. */
const scopeOf = (page: Document): ParentNode =>
  [...page.querySelectorAll('[aria-modal="true"]')].at(-1) ?? page;

const shows = (el: Element): boolean => !el.closest('[hidden]') && el.getClientRects().length > 0;

const pressables = (page: Document): HTMLElement[] => {
  const all = [...scopeOf(page).querySelectorAll<HTMLElement>('.pressable:not([aria-disabled])')];
  // Answers and keys first, then the slab that takes them, then what stands at the rim.
  const rank = (el: Element): number => {
    if (el.closest('.bench-words, .sheet-inner')) return 0;
    return el.matches('.slab') ? 1 : 2;
  };
  return all.filter(shows).sort((a, b) => rank(a) - rank(b));
};

/**
 * Presses as a key would: what arms late, is dead for a moment or asks for a hand (a gate) keeps to that.
 * `byHand` is called where only a hand may.
 */
export function pressFor(el: HTMLElement, byHand: () => void): void {
  if (el.matches('.hold, [data-by-hand]')) return byHand();
  el.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true }));
}

/** What a pedal's press is for: what was chosen with the other one, else the slab. */
export function slabOrChosen(page: Document, chosen: HTMLElement | null): HTMLElement | null {
  const scope = scopeOf(page);
  if (chosen?.isConnected && chosen === page.activeElement && scope.contains(chosen)) return chosen;
  return [...scope.querySelectorAll<HTMLElement>('.slab')].find(shows) ?? null;
}

/** The next thing that may be pressed, round and round. */
export function nextOf(page: Document, chosen: HTMLElement | null): HTMLElement | null {
  const round = pressables(page);
  const at = chosen ? round.indexOf(chosen) : -1;
  return round[(at + 1) % round.length] ?? null;
}

/** What a voice finds on the page; null while all of it is locked. */
export interface OnPage {
  /** What may be pressed there, by what is said for it. */
  readonly does: ReadonlySet<string>;
  /** It lies over the page. */
  readonly over: boolean;
  /** Something is to be held: nothing there is done by a voice. */
  readonly held: boolean;
  /** What stands on a keypad; empty where there is none. */
  readonly typed: string;
}

export function onPage(page: Document): OnPage | null {
  if (page.querySelector('[role="alertdialog"]')) return null;
  const scope = scopeOf(page);
  const all = (which: string): HTMLElement[] =>
    [...scope.querySelectorAll<HTMLElement>(which)].filter(shows);
  return {
    does: new Set(all('[data-does]:not([aria-disabled])').map((el) => el.dataset['does']!)),
    over: scope !== page,
    held: all('.hold').length > 0,
    typed: all('.pad-value:not([data-blank]) > .pad-typed')[0]?.textContent ?? '',
  };
}

/** A press as it is read out: what it stands for, not what it is called. */
export const readOut = (el: HTMLElement): string =>
  [...el.querySelectorAll('.slab-then, .control-ask, .control-value')]
    .map(({ textContent }) => textContent)
    .join(': ')
    .replace(/[\s\u00ad]+/g, ' ');

/** The control of one deed, where the page on show has it. */
export const controlFor = (page: Document, does: string): HTMLElement | null =>
  [...scopeOf(page).querySelectorAll<HTMLElement>(`[data-does="${does}"]`)].find(shows) ?? null;
