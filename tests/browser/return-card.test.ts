import { expect, it } from 'vitest';
import { BAKE_STAGES, OVEN_STAGES } from '../../src/core/records/stage.ts';
import { returnCard } from '../../src/core/speech/words/running.ts';
import { timerWords } from '../../src/core/speech/words/timers.ts';
import { shown } from '../../src/core/speech/facts.ts';
import { fill } from '../../src/core/speech/fill.ts';
import { nameOf } from '../../src/screens/stage-names.ts';
import { MM } from './harness/look.ts';
import { VIEWPORTS, type ViewportName } from './harness/open-app.ts';
import { openParts } from './harness/open-parts.ts';

const longest = (names: readonly string[]): string =>
  names.reduce((a, b) => (b.length > a.length ? b : a));
const NAME = longest([
  ...BAKE_STAGES.map((stage) => nameOf('a', stage)),
  ...OVEN_STAGES.map((stage) => nameOf('oven', stage)),
]);
const CALLED = longest([NAME, ...Object.values(timerWords).map(({ name }) => name)]);
const LINES = [
  fill(returnCard.overdue, shown({ minutes: 24 * 60 - 1, name: CALLED })),
  fill(returnCard.last, { name: NAME, time: '12:59 pm' }),
  fill(returnCard.next, { name: NAME, time: '12:59 pm' }),
];

it('keeps the return card’s longest lines above the controls, in bigger words too', async () => {
  const parts = await openParts();
  for (const view of Object.keys(VIEWPORTS) as ViewportName[])
    for (const ways of ['text=plain', 'text=bigger']) {
      await parts.show('away', view, ways);
      const found = await parts.page.evaluate((lines) => {
        const all = [...document.querySelectorAll('.return li')];
        all.forEach((li, i) => (li.textContent = lines[i]!));
        const box = (el: string | Element) =>
          (typeof el === 'string' ? document.querySelector(el)! : el).getBoundingClientRect();
        const seen = all.filter((li) => getComputedStyle(li).clipPath === 'none');
        const press = box('.return .control');
        return {
          all: all.length,
          seen: seen.length,
          // Px from the last line to the controls, and from the press to the first line.
          left: box('.bench-controls').top - Math.max(...seen.map((li) => box(li).bottom)),
          between: box(all[0]!).top - press.bottom,
          // From what may be pressed beside the running time.
          above: press.top - box('.countdown .control').bottom,
          mm: Math.min(press.width, press.height),
          page: document.documentElement.scrollHeight - innerHeight,
        };
      }, LINES);
      const at = `${view}, ${ways}`;
      await parts.page.screenshot({ path: `tests/browser/out/return-${view}-${ways}.png` });
      expect.soft(found, at).toMatchObject({ all: 3, page: 0 });
      // Under a running time bigger words leave what comes next to it.
      expect.soft(found.seen, at).toBe(ways === 'text=bigger' ? 2 : 3);
      expect.soft(found.left, at).toBeGreaterThan(0);
      expect.soft(found.between, at).toBeGreaterThan(0);
      expect.soft(found.above * MM[view], at).toBeGreaterThanOrEqual(6);
      expect.soft(found.mm * MM[view], at).toBeGreaterThanOrEqual(22);
    }
});
