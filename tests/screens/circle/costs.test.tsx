import { cleanup, screen } from '@solidjs/testing-library';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { CIRCLE, type Circle } from '../../../src/core/circle/circle.ts';
import { costOf } from '../../../src/core/circle/cost.ts';
import { makeRecipe } from '../../../src/core/formula/make-recipe.ts';
import { de } from '../../../src/core/speech/de.ts';
import { speakIn } from '../../../src/core/speech/tongue.ts';
import { bench } from '../../../src/core/speech/words/bench.ts';
import { costPage } from '../../../src/core/speech/words/cupboard.ts';
import Cupboard from '../../../src/screens/circle/cupboard/Cupboard.tsx';
import { serveFormulas } from '../../fakes/baking.ts';
import { loadedLater } from '../../fakes/loaded-later.ts';
import { ingredient } from '../../core/circle/support.ts';
import { headline, key, openOver, press, shown } from './open-cupboard.tsx';

beforeEach(() => serveFormulas());
afterEach(() => {
  cleanup();
  speakIn('en');
  vi.unstubAllGlobals();
});
afterAll(async () => {
  await loadedLater();
});

const pack = (cost: number) => ({ grams: 1000, cost, usable: 1 });
const PRICED = [
  ingredient('strong wheat flour', { pack: pack(1.2) }),
  ingredient('wholemeal wheat flour', { pack: pack(1.6) }),
  ingredient('salt', { pack: pack(0.8) }),
];
const open = async (first: Partial<Circle>) => {
  const opened = await openOver(
    (house, circle) => <Cupboard house={house} circle={circle} onBack={() => undefined} />,
    first,
  );
  press(/^Cost of a loaf/);
  return opened;
};

describe('what a loaf costs', { timeout: 30_000 }, () => {
  it('is told for each bread, and that it is at least so much where a price is missing', async () => {
    await open({ ingredients: PRICED });
    expect(screen.getByRole('button', { name: /^Lane wheat\s*€\d+\.\d\d a loaf/ })).toBeTruthy();
    expect(
      screen.getByRole('button', { name: /^Barley tin\s*at least €\d+\.\d\d a loaf/ }),
    ).toBeTruthy();
    expect(screen.queryByText(/no price yet/)).toBeNull();
  });

  it('stands as a table whose rows come to what is told', async () => {
    const { house } = await open({ ingredients: PRICED });
    press(/^Lane wheat\s*€/);
    expect(headline()).toBe('Lane wheat');
    const formula = house.formulas().find((one) => one.formula?.id === 'lane-wheat')!.formula!;
    const { recipe } = makeRecipe(formula, { loaves: 4, piece: formula.piece });
    const cost = costOf(recipe!, PRICED, { besides: null });
    expect(shown()).toContain(`€${cost.loaf.toFixed(2)} a loaf`);
    const rows = screen.getAllByRole('row').map((row) => row.textContent.replace(/\s/g, ' '));
    expect(rows[0]).toBe('WhatIn the bake1000 g costComes to');
    expect(rows).toHaveLength(1 + 3 + 2);
    expect(rows[1]).toMatch(/^Strong wheat flour\d+ g€1\.20€\d\.\d{3}$/);
    expect(rows[4]).toMatch(/^All of 4 loaves€/);
    press(/^Loaves\s*4$/);
    press(/^One more/);
    press(/^That’s it/);
    expect(shown()).toContain('All of 5 loaves');
  });

  it('is led back to from its other pages by the bread’s name in the tongue that stands', async () => {
    await open({ ingredients: PRICED });
    speakIn('de', de);
    press(/^Lane wheat\s*€/);
    expect(headline()).toBe('Gassenbrot');
    for (const page of [costPage.loaves, costPage.counts]) {
      press(new RegExp(`^${page}`));
      expect(shown().replaceAll('\u00ad', '')).toContain('Gassenbrot');
      expect(shown()).not.toContain('Lane wheat');
      press(new RegExp(`^${bench.thatsIt}`));
    }
  });

  it('has a price only by the baker’s own number, shown as the sum it is', async () => {
    const { circle } = await open({ ingredients: PRICED });
    press(/^Lane wheat\s*€/);
    expect(shown()).not.toContain('Your numbers, our sum.');
    press(/^What counts/);
    press(/^Times the cost/);
    key('3');
    press(/^That’s it/);
    await vi.waitFor(() => expect(headline()).toBe('What counts'));
    press(/^That’s it/);
    expect(circle.circle().ways.times).toBe(3);
    const [, cost, sum] = /3 × €([\d.]+) = €([\d.]+)\. Your numbers, our sum\./.exec(shown())!;
    expect(Math.abs(3 * Number(cost) - Number(sum))).toBeLessThanOrEqual(0.005 + 1e-9);
    press(/^What counts/);
    press(/^Besides/);
    key('0.3');
    press(/^That’s it/);
    await vi.waitFor(() => expect(headline()).toBe('What counts'));
    expect(circle.circle().ways.besides).toBe(0.3);
    press(/^That’s it/);
    expect(shown()).toContain('One loaf, with that');
    press(/^What counts/);
    press(/^Times the cost/);
    press(/^Leave it out/);
    await vi.waitFor(() => expect(headline()).toBe('What counts'));
    expect(circle.circle().ways.times).toBeNull();
    press(/^That’s it/);
    expect(shown()).not.toContain('Your numbers, our sum.');
  });

  it('names what has no price, asks for it, and says that the price is at least so much', async () => {
    const { circle } = await open({ ingredients: PRICED, ways: { ...CIRCLE.ways, times: 2 } });
    press(/^Barley tin/);
    expect(shown()).toContain('At least this much: no price yet for barley flour.');
    expect(shown()).toMatch(/2 × €[\d.]+ = €[\d.]+, at least\./);
    press(/^Key in a price/);
    key('500');
    press(/^That’s it/);
    key('2.4');
    press(/^That’s it/);
    await vi.waitFor(() => expect(headline()).toBe('Barley tin'));
    expect(circle.circle().ingredients.find(({ id }) => id === 'barley flour')!.pack).toEqual({
      grams: 500,
      cost: 2.4,
      usable: 1,
    });
    expect(shown()).not.toContain('At least this much');
  });

  it('is counted in the currency that is chosen; numbers stay', async () => {
    const { circle } = await open({ ingredients: PRICED });
    press(/^Lane wheat\s*€/);
    press(/^What counts/);
    press(/^Currency/);
    press(/^GBP/);
    await vi.waitFor(() => expect(headline()).toBe('What counts'));
    expect(circle.circle().ways.currency).toBe('GBP');
    press(/^That’s it/);
    expect(shown()).toMatch(/£\d\.\d\d a loaf/);
    press(/^What counts/);
    press(/^Currency/);
    press(/^Another one/);
    expect(headline()).toMatch(/^Choose the currency, 1 of \d\d/);
    expect(screen.getAllByRole('button').length).toBeLessThan(16);
  });
});
