import type { Page } from 'playwright-core';

/** Words with a bar beside them whose bar is in sight and whose first line is not. */
export const barsAlone = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.bench-words .barred')].flatMap((one) => {
      const inner = one.closest<HTMLElement>('.bench-inner');
      const below = /^inset\(\S+ \S+ (-?[\d.]+)px/.exec(inner?.style.clipPath ?? '');
      if (!inner || !below) return [];
      const edge = inner.getBoundingClientRect().bottom - Number(below[1]);
      const { top } = one.getBoundingClientRect();
      const line = parseFloat(getComputedStyle(one).lineHeight);
      return top < edge - 0.5 && top + line / 2 > edge ? [one.innerText] : [];
    }),
  );
