import { cleanup, fireEvent, screen } from '@solidjs/testing-library';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Circle, Ingredient } from '../../../src/core/circle/circle.ts';
import { put } from '../../../src/core/circle/row.ts';
import { usesOf } from '../../../src/core/circle/uses.ts';
import type { NotWritten } from '../../../src/screens/house-circle.ts';
import Cupboard from '../../../src/screens/circle/cupboard/Cupboard.tsx';
import { serveFormulas } from '../../fakes/baking.ts';
import { loadedLater } from '../../fakes/loaded-later.ts';
import { ingredient } from '../../core/circle/support.ts';
import { headline, key, openOver, press, shown } from './open-cupboard.tsx';

beforeEach(() => serveFormulas());
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});
afterAll(async () => {
  await loadedLater();
});

const open = async (first: Partial<Circle> = {}, fails?: () => NotWritten | null) => {
  const opened = await openOver(
    (house, circle) => <Cupboard house={house} circle={circle} onBack={() => undefined} />,
    first,
    fails,
  );
  expect(headline()).toBe('Store cupboard');
  press(/^What you have/);
  return opened;
};
/** It stands on the second page. */
const toWheat = (): void => {
  press(/^Next page/);
  press(/^Strong wheat flour/);
};
const AT = Date.UTC(2031, 4, 3, 5);
const wheat = (rest: Partial<Ingredient>): Ingredient => ingredient('strong wheat flour', rest);
const itsWheat = (circle: { circle(): Circle }) =>
  circle.circle().ingredients.find(({ id }) => id === 'strong wheat flour');

describe('the store cupboard', { timeout: 30_000 }, () => {
  it('has what the breads take before anybody counted, and nothing is made up', async () => {
    await open();
    expect(screen.getByRole('button', { name: /^Barley flour\s*not counted/ })).toBeTruthy();
    expect(headline()).toBe('What you have, 1 of 2');
    press(/^Next page/);
    press(/^Whole rye flour/);
    expect(shown()).toContain('Nobody has counted it yet.');
    press(/^That’s it/);
    expect(headline()).toBe('What you have, 2 of 2');
  });

  it('keeps a count, and takes off it what a bake begun since then uses', async () => {
    const { circle, house, begin, world } = await open({ ingredients: [wheat({})] });
    toWheat();
    press(/^On hand now/);
    key('5000');
    press(/^That’s it/);
    await vi.waitFor(() => expect(headline()).toBe('Strong wheat flour'));
    expect(itsWheat(circle)!.counted).toEqual({ grams: 5000, at: house.now() });
    expect(screen.getByRole('button', { name: /^On hand now\s*5000\sg on hand/ })).toBeTruthy();
    world.clock.turn(60_000);
    await begin('levain.feed', 3);
    const start = house.records().find(({ fact }) => fact.kind === 'start')!.fact;
    const [used] = usesOf((start as Extract<typeof start, { kind: 'start' }>).recipe);
    const left = Math.round(5000 - used!.grams);
    expect(
      screen.getByRole('button', { name: new RegExp(`^On hand now\\s*${left}\\sg on hand`) }),
    ).toBeTruthy();
    expect(shown()).toContain(`5000 g. Bakes since then used ${5000 - left} g.`);
  });

  it('tells that it was counted too long ago where bakes used more than there was', async () => {
    const counted = { grams: 100, at: AT };
    const { begin } = await open({ ingredients: [wheat({ counted })] });
    await begin('levain.feed', 3);
    press(/^Next page/);
    press(/^Strong wheat flour\s*counted too long ago/);
    expect(shown()).toContain('Bakes used more than was counted. Count it anew.');
    press(/^All gone/);
    await vi.waitFor(() => expect(shown()).toContain('nothing there'));
  });

  it('is put right by one press, which can be taken back', async () => {
    const pack = { grams: 1000, cost: 1.5, usable: 1 };
    const { circle } = await open({
      ingredients: [wheat({ pack, counted: { grams: 200, at: AT } })],
    });
    toWheat();
    press(/^One more full pack/);
    await vi.waitFor(() =>
      expect(screen.getByRole('button', { name: /^Take that back/ })).toBeTruthy(),
    );
    expect(itsWheat(circle)!.counted!.grams).toBe(1200);
    press(/^Take that back/);
    await vi.waitFor(() => expect(itsWheat(circle)!.counted).toEqual({ grams: 200, at: AT }));
    press(/^All gone/);
    await vi.waitFor(() => expect(itsWheat(circle)!.counted!.grams).toBe(0));
    expect(screen.getByRole('button', { name: /^All gone/ }).ariaDisabled).toBe('true');
  });

  it('asks for the pack and its price in the circle’s currency, and a price of nothing twice', async () => {
    const { circle } = await open({ ingredients: [wheat({})] });
    toWheat();
    expect(screen.queryByRole('button', { name: /^One more full pack/ })).toBeNull();
    press(/^A pack/);
    expect(screen.getByRole('button', { name: /^That’s it/ }).ariaDisabled).toBe('true');
    key('2500');
    press(/^That’s it/);
    expect(headline()).toBe('What does a pack cost?');
    expect(
      screen.getByLabelText('What does a pack cost?', { selector: 'output' }).textContent,
    ).toMatch(/€/);
    key('0');
    press(/^That’s it/);
    expect(headline()).toBe('Does it cost nothing?');
    expect(itsWheat(circle)!.pack).toBeNull();
    press(/^No, key it again/);
    key('4.25');
    press(/^That’s it/);
    await vi.waitFor(() => expect(headline()).toBe('Strong wheat flour'));
    expect(itsWheat(circle)!.pack).toEqual({ grams: 2500, cost: 4.25, usable: 1 });
    expect(shown()).toContain('€1.70 for 1000 g');
    press(/^A pack/);
    press(/^That’s it/);
    press(/^That’s it/);
    await vi.waitFor(() => expect(headline()).toBe('Strong wheat flour'));
    expect(itsWheat(circle)!.pack).toEqual({ grams: 2500, cost: 4.25, usable: 1 });
    press(/^A pack/);
    press(/^That’s it/);
    key('0');
    press(/^That’s it/);
    press(/^Yes, nothing/);
    await vi.waitFor(() => expect(itsWheat(circle)!.pack!.cost).toBe(0));
  });

  it('knows how much of it can be used, and what that makes of its price', async () => {
    const pack = { grams: 1000, cost: 3, usable: 1 };
    const { circle } = await open({ ingredients: [wheat({ pack })] });
    toWheat();
    press(/^You can use/);
    key('120');
    expect(
      screen.getByText('Only 1 to 100 %', { normalizer: (t) => t.replace(/\s/g, ' ') }),
    ).toBeTruthy();
    expect(screen.getByRole('button', { name: /^That’s it/ }).ariaDisabled).toBe('true');
    press(/^Clear/);
    key('75');
    press(/^That’s it/);
    await vi.waitFor(() => expect(headline()).toBe('Strong wheat flour'));
    expect(itsWheat(circle)!.pack!.usable).toBe(0.75);
    expect(shown()).toContain('€4.00 for 1000 g you can use');
  });

  it('finds by a part of a name, and adds a new one', async () => {
    const { circle } = await open();
    press(/^Find or add/);
    fireEvent.input(screen.getByRole('textbox'), { target: { value: 'rye' } });
    press(/^That’s it/);
    expect(headline()).toBe('With “rye”');
    expect(screen.getByRole('button', { name: /^Whole rye flour/ })).toBeTruthy();
    expect(screen.queryByRole('button', { name: /^Barley flour/ })).toBeNull();
    press(/^All of them/);
    press(/^Find or add/);
    fireEvent.input(screen.getByRole('textbox'), { target: { value: '  Rice   flour ' } });
    press(/^That’s it/);
    expect(shown()).toContain('No name has');
    press(/^Add it/);
    await vi.waitFor(() => expect(headline()).toBe('Rice flour'));
    expect(circle.circle().ingredients).toMatchObject([{ id: 'rice flour', name: 'Rice flour' }]);
  });

  it('takes back its own change only, and has what is half keyed of one ingredient for no other', async () => {
    const { circle } = await open({ ingredients: [wheat({})] });
    await circle.write({ puts: [put('neighbours', { id: 'a', name: 'B', watch: [] })] });
    press(/^Salt/);
    expect(screen.queryByRole('button', { name: /^Take that back/ })).toBeNull();
    press(/^On hand now/);
    key('7');
    press(/^Salt/);
    press(/^That’s it/);
    press(/^Barley flour/);
    press(/^On hand now/);
    expect(screen.queryByText(/^Keyed before/)).toBeNull();
    press(/^Barley flour/);
    press(/^That’s it/);
    press(/^Salt/);
    press(/^On hand now/);
    expect(screen.getByText(/^Keyed before/)).toBeTruthy();
    press(/^That’s it/);
    await vi.waitFor(() =>
      expect(screen.getByRole('button', { name: /^Take that back/ })).toBeTruthy(),
    );
    expect(circle.circle().neighbours).toHaveLength(1);
  });

  it('takes off its list what no bread has, and takes that back; what a bread has stays', async () => {
    const { circle } = await open({ ingredients: [ingredient('Aniseed')] });
    press(/^Barley flour/);
    expect(screen.queryByRole('button', { name: /^Off the list/ })).toBeNull();
    press(/^That’s it/);
    press(/^Aniseed/);
    press(/^Off the list/);
    await vi.waitFor(() =>
      expect(screen.getByRole('button', { name: /^Take that back/ })).toBeTruthy(),
    );
    expect(headline()).toMatch(/^What you have/);
    expect(screen.queryByRole('button', { name: /^Aniseed/ })).toBeNull();
    press(/^Take that back/);
    await vi.waitFor(() => expect(screen.getByRole('button', { name: /^Aniseed/ })).toBeTruthy());
    expect(circle.circle().ingredients).toEqual([ingredient('Aniseed')]);
  });

  it('shows nothing that could not be written, and says so', async () => {
    const { circle, house } = await open({ ingredients: [wheat({})] }, () => 'full');
    toWheat();
    press(/^On hand now/);
    key('500');
    press(/^That’s it/);
    await vi.waitFor(() => expect(house.told()).toMatchObject([{ id: 'circle' }]));
    expect(headline()).toBe('How much is there?');
    expect(itsWheat(circle)!.counted).toBeNull();
  });

  it('stays quick with hundreds of ingredients: one page of them is drawn', async () => {
    const ingredients = Array.from({ length: 500 }, (_, i) => ingredient(`Thing ${i}`));
    await open({ ingredients });
    expect(screen.getAllByRole('button', { name: /not counted/ })).toHaveLength(6);
  });
});
