import { expect, it } from 'vitest';
import { longestWord } from '../../src/parts/longest-word.ts';
import { gate } from '../../src/core/speech/words/gate.ts';
import { Baker } from './harness/baker.ts';
import { beginBread } from './harness/begin-bread.ts';
import { captionCovers } from './harness/caption.ts';
import { expectNoFaults } from './harness/faults.ts';
import { openApp, VIEWPORTS, type App, type ViewportName } from './harness/open-app.ts';
import { settled } from './harness/settled.ts';
import { slabWords, type SlabWords } from './harness/slab-words.ts';
import { WHOLE_BAKE } from './harness/whole-bake.ts';

/** Whether words are longer than their place, and what reaches out of what may be pressed. */
const clipped = async (app: App) => {
  await settled(app.page);
  return app.page.evaluate(() => {
    const out = [...document.querySelectorAll('.control, .tile, .slab, .ear')].filter((el) => {
      const range = document.createRange();
      range.selectNodeContents(el);
      const [text, box] = [range.getBoundingClientRect(), el.getBoundingClientRect()];
      // A line's box reaches a little past its letters.
      return text.right > box.right + 0.5 || text.bottom > box.bottom + 3;
    });
    return {
      long: document.querySelector('.bench-words')!.hasAttribute('data-long'),
      page: document.documentElement.scrollHeight - innerHeight,
      out: out.map((el) => el.textContent),
    };
  });
};

/** Each in turn in the slab that stands there: what would run below the screen. */
const below = (app: App, words: readonly SlabWords[]) =>
  app.page.evaluate(
    (all) => {
      const slab = document.querySelector<HTMLElement>('.slab')!;
      const [label, then] = [slab.querySelector('.slab-label')!, slab.querySelector('.slab-then')!];
      return all.flatMap((said) => {
        label.textContent = said.label;
        then.textContent = said.then;
        slab.parentElement!.style.setProperty('--longest', String(said.longest));
        const page = document.documentElement.scrollHeight - innerHeight;
        const { bottom } = slab.getBoundingClientRect();
        return page > 0 || bottom > innerHeight ? [`${said.label}, ${said.then}`] : [];
      });
    },
    words.map((said) => ({ ...said, longest: longestWord(said.label) })),
  );

/** The call that rings, in bigger words on each of the tablets. */
const expectWhole = async (app: App, name: string): Promise<void> => {
  await app.page.locator('.call').waitFor();
  for (const view of Object.keys(VIEWPORTS) as ViewportName[]) {
    await app.setViewport(view);
    await app.page.evaluate(() => (document.documentElement.dataset['text'] = 'bigger'));
    await app.turn(50);
    await app.screenshot(`bigger-${name}-${view}`);
    expect.soft(await clipped(app), view).toEqual({ long: false, page: 0, out: [] });
    expect.soft(await captionCovers(app.page), view).toEqual([]);
  }
  expectNoFaults(app.faults);
};

it('shows a call among three bakes whole in bigger words', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await app.page.locator('.start-grid').waitFor();
  await beginBread(baker, 'Cherry and hazelnut', 'My dough is in the bowl');
  await baker.toStart();
  await beginBread(baker, 'Lane wheat', 'My loaves are in the fridge');
  await baker.toStart();
  await beginBread(baker, 'Olive and seed', 'Feed now');
  await app.turn(9 * 3_600_000);
  await expectWhole(app, 'several');
});

it('shows a hot call and its caution whole in bigger words', async () => {
  const app = await openApp();
  const baker = new Baker(app);
  await app.page.locator('.start-grid').waitFor();
  await beginBread(baker, 'Cherry and hazelnut', 'My loaves are ready to bake');
  const from = WHOLE_BAKE.findIndex(({ name }) => name === 'oven-on');
  const to = WHOLE_BAKE.findIndex(({ name }) => name === 'load1-lidded');
  for (const { go } of WHOLE_BAKE.slice(from, to)) await go(baker);
  await app.turn(18 * 60_000);
  await expectWhole(app, 'hot');
  expect(await app.page.locator('.act-care').isVisible()).toBe(true);
});

it.each([1, 2])('has every slab and gate beside %i bakes whole in bigger words', async (beside) => {
  const { slabs, headlines } = slabWords(
    Object.values(import.meta.glob('../../src/core/speech/words/*.ts', { eager: true })),
  );
  expect(slabs.length).toBeGreaterThan(100);
  const app = await openApp();
  const baker = new Baker(app);
  await app.page.locator('.start-grid').waitFor();
  await beginBread(baker, 'Lane wheat', 'Feed now');
  await baker.toStart();
  if (beside > 1) {
    await beginBread(baker, 'Cherry and hazelnut', 'My dough is in the bowl');
    await baker.toStart();
  }
  await beginBread(baker, 'Olive and seed', 'My loaves are ready to bake');
  const expectAll = async (words: readonly SlabWords[]): Promise<void> => {
    for (const view of Object.keys(VIEWPORTS) as ViewportName[]) {
      await app.setViewport(view);
      await app.page.evaluate(() => (document.documentElement.dataset['text'] = 'bigger'));
      await app.turn(50);
      await app.screenshot(`bigger-beside-${beside}-${words.length}-${view}`);
      expect.soft(await below(app, words), view).toEqual([]);
    }
    await app.setViewport('wide');
  };
  await app.page.locator('.hold').waitFor();
  const { hold: label } = gate;
  await expectAll(headlines.map((then) => ({ label, then })));
  await baker.openGate();
  await app.page.locator('.hold').waitFor({ state: 'detached' });
  await expectAll(slabs);
  expectNoFaults(app.faults);
});
