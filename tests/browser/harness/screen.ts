import type { Page } from 'playwright-core';

/** What a baker takes in at a glance. */
export interface Screen {
  readonly headline: string;
  /** Where the bake on show stands, its name first where more than one runs: 'Olive · Bulk, fold 1 of 2'. */
  readonly place: string;
  /** The kind of the call that rings. */
  readonly call: string | null;
  /** "While you were away" lies over the words. */
  readonly card: boolean;
  /** The gate before something hot, sharp or powered. */
  readonly gate: boolean;
  /** The keypad stands open. */
  readonly pad: boolean;
  /** Milliseconds that the running time still counts down; null where none does. */
  readonly left: number | null;
  /** The page's clock. */
  readonly now: number;
  /** The bakes beside the one on show: the time they stand at ('13:25', '+0:20'), or null. */
  readonly others: readonly {
    readonly name: string;
    readonly waits: string;
    readonly time: string | null;
    readonly late: boolean;
  }[];
}

/** Reads the screen as it stands. */
export const readScreen = (page: Page): Promise<Screen> =>
  page.evaluate(() => {
    const find = (selector: string) => document.querySelector<HTMLElement>(selector);
    const text = (selector: string) => (find(selector)?.innerText ?? '').replace(/\s/g, ' ').trim();
    const length = find('.times-row:not([data-past]) .times-number')?.getAttribute('datetime');
    const [, hours, minutes, seconds] = /^PT(\d+)H(\d+)M(\d+)S$/.exec(length ?? '') ?? [];
    const left = length
      ? ((Number(hours) * 60 + Number(minutes)) * 60 + Number(seconds)) * 1_000
      : null;
    return {
      headline: text('.act-headline'),
      place: text('.times-name') || text('.act-place'),
      call: find('.call')?.dataset['kind'] ?? null,
      card: find('.return') !== null,
      gate: find('.hold') !== null,
      pad: find('.pad') !== null,
      left,
      now: Date.now(),
      others: [...document.querySelectorAll<HTMLElement>('.bake-control')].map((control) => ({
        name: control.querySelector<HTMLElement>('.bake-name')!.innerText,
        waits: control.querySelector<HTMLElement>('.bake-waits')!.innerText,
        time: control.querySelector<HTMLElement>('.bake-time')!.innerText.trim() || null,
        late: 'late' in control.dataset,
      })),
    };
  });
