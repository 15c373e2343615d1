import { cleanup, render, screen } from '@solidjs/testing-library';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import Book from '../../../src/screens/book/Book.tsx';
import type { House } from '../../../src/screens/house.ts';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { loadedLater } from '../../fakes/loaded-later.ts';
import { makeFakeWorld, type FakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';

const clock = turnedClock();

beforeEach(() => serveFormulas());
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});
afterAll(async () => {
  await loadedLater();
});

const open = async (world: FakeWorld = makeFakeWorld()): Promise<House> => {
  const { house } = await openBaking(world);
  render(() => (
    <PressGround now={clock}>
      <Book house={house} onHome={() => undefined} />
    </PressGround>
  ));
  return house;
};
const press = (name: RegExp): void => {
  clock.at += 1_100;
  tap(screen.getByRole('button', { name }));
};
const key = (text: string): void => {
  for (const digit of text) press(digit === '.' ? /^\.$/ : new RegExp(`^${digit}$`));
};
/** What the first press that is written waits for, the judge's chunk, is long in coming on a busy machine. */
const until = (holds: () => void) => vi.waitFor(holds, { timeout: 20_000 });
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;
const wheatOf = (house: House) => house.book().find(({ id }) => id === 'lane-wheat')!;

// The first of them waits for the chunks.
describe('a formula of the Book', { timeout: 30_000 }, () => {
  it('is changed by taps: how percent is counted is asked once, and kept with it', async () => {
    const house = await open();
    press(/^Lane wheat\s*76/);
    press(/^Salt/);
    expect(headline()).toBe('How do you count percent?');
    press(/^Of the bowl’s flour/);
    expect(headline()).toBe('Salt, %');
    key('2');
    press(/^That’s it/);
    press(/^Levain\s*\d/);
    expect(headline()).toBe('Levain, %');
    press(/^That’s it/);
    expect(house.records()).toEqual([]);
    press(/^Keep it/);
    await until(() => expect(wheatOf(house).versions).toHaveLength(2));
    const { latest } = wheatOf(house);
    expect(latest.convention).toBe('bowl');
    // 2 % of the bowl's flour; what the levain has of flour is counted besides.
    expect(latest.salt).toBeCloseTo(2 * (1 - latest.levain.pff), 9);
    expect(house.drafts()).toEqual({});
  });

  it('has what is half changed again after a reload, and lets it be undone', async () => {
    const world = makeFakeWorld();
    await open(world);
    press(/^Lane wheat\s*76/);
    press(/^Salt/);
    press(/^Of all flour/);
    key('2.8');
    expect(screen.getByText(/^2\d(\.\d)?\sg\. Usual: 1\.5 to 2\.5\s%$/)).toBeTruthy();
    press(/^That’s it/);
    cleanup();
    const house = await open(world);
    expect(screen.getByText(/Changed, not kept yet/)).toBeTruthy();
    press(/^Lane wheat\s*76/);
    expect(screen.getByRole('status').textContent).toContain('Salt is 2.8');
    press(/^More$/);
    press(/^Undo what I changed/);
    expect(screen.queryByRole('status')).toBeNull();
    expect(house.drafts()).toEqual({});
    expect(house.records()).toEqual([]);
  });

  it('is keyed by weight as well, and refuses a dough that cannot be', async () => {
    const house = await open();
    press(/^Lane wheat\s*76/);
    press(/^Salt/);
    press(/^Of all flour/);
    press(/^By weight/);
    key('20');
    expect(screen.getByText(/^That is 1\.9\d?\s%|^That is 2(\.\d+)?\s%/)).toBeTruthy();
    press(/^Clear/);
    key('900');
    expect(screen.getByText('That cannot be a dough.')).toBeTruthy();
    expect(screen.getByRole('button', { name: /^That’s it/ }).ariaDisabled).toBe('true');
    expect(Object.values(house.drafts()).map(({ salt }) => salt)).toEqual([1.9]);
  });

  it('brings an older version back as the next one', async () => {
    const house = await open();
    const first = wheatOf(house).latest;
    await house.keepFormula({ ...first, salt: 2.8 });
    await house.keepFormula({ ...first, salt: 1.7 });
    press(/^Lane wheat\s*76/);
    press(/^More$/);
    press(/^Versions/);
    press(/^Version 2/);
    expect(screen.getByRole('status').textContent).toContain('Salt is 2.8');
    press(/^That’s it/);
    press(/^Version 1/);
    expect(headline()).toBe('Lane wheat, version 1');
    press(/^Bring it back/);
    await until(() => expect(wheatOf(house).versions).toHaveLength(4));
    expect(wheatOf(house).latest).toEqual({ ...first, version: 4 });
    expect(wheatOf(house).versions[2]!.formula.salt).toBe(1.7);
  });

  it('takes a filling from the list, and tells what is unusual of its weight', async () => {
    const house = await open();
    press(/^Lane wheat\s*76/);
    press(/^Add a filling/);
    press(/^walnuts/);
    expect(house.drafts()['lane-wheat']!.fillings).toMatchObject([
      { id: 'walnut', name: 'walnuts', pct: 10, keeps: 'shelf', prepare: ['toast', 'cut'] },
    ]);
    expect(screen.getByRole('status').textContent).toContain('Filling is');
  });

  it('knows what a filling of the list brings: the salt of olives counts, and none of brine is on it', async () => {
    const house = await open();
    press(/^Lane wheat\s*76/);
    press(/^Add a filling/);
    expect(screen.queryByRole('button', { name: /brine/ })).toBeNull();
    press(/olives/);
    const [olives] = house.drafts()['lane-wheat']!.fillings;
    expect(olives).toMatchObject({ id: 'olive', pct: 10, brings: { salt: 7, water: 40 } });
    expect(olives).toMatchObject({ keeps: 'shelf', from: 'shelf', prepare: ['cut'] });
  });

  it('takes a filling of no list by what it is most like, with nothing typed', async () => {
    const house = await open();
    press(/^Lane wheat\s*76/);
    press(/^Add a filling/);
    press(/^Another one/);
    press(/^That’s it/);
    expect(headline()).toBe('What is it most like?');
    expect(screen.queryByRole('button', { name: /^none of these/ })).toBeNull();
    press(/^fresh or soft cheese/);
    expect(house.drafts()['lane-wheat']!.fillings).toMatchObject([
      { name: 'fresh or soft cheese', keeps: 'perishable', allergens: ['milk'] },
    ]);
    expect(screen.getByRole('status').textContent).toContain('fresh or soft cheese');
  });

  it('swaps a filling for another by one press, told with what it changes, and undoes it as any change', async () => {
    const house = await open();
    press(/^Cherry and hazelnut/);
    press(/^Salt/);
    press(/^Of all flour/);
    press(/^That’s it/);
    press(/^Toasted hazelnuts/);
    press(/^Swap it/);
    expect(headline()).toBe('Swap the toasted hazelnuts');
    expect(screen.getByText(/The label has to name: tree nuts \(walnut\)/)).toBeTruthy();
    expect(screen.getByText(/common practice, no source/)).toBeTruthy();
    press(/^walnuts instead/);
    expect(headline()).toBe('Cherry and hazelnut');
    const swapped = () => house.drafts()['cherry-hazelnut']?.fillings.map(({ id }) => id);
    expect(swapped()).toEqual(['cherry', 'walnut']);
    press(/^Walnuts/);
    press(/^Swap it/);
    press(/^That’s it/);
    expect(headline()).toBe('Walnuts, %');
    press(/^That’s it/);
    press(/^More$/);
    press(/^Undo what I changed/);
    expect(swapped()).toBeUndefined();
    expect(screen.getByRole('button', { name: /^Toasted hazelnuts/ })).toBeTruthy();
  });

  it('offers no swap of what nobody knows, and none of a line that is no filling', async () => {
    await open();
    press(/^Cherry and hazelnut/);
    press(/^Salt/);
    press(/^Of all flour/);
    expect(screen.queryByRole('button', { name: /^Swap it/ })).toBeNull();
  });

  it('tells how a large dough is shared, and shows it bowl by bowl', async () => {
    await open();
    press(/^Lane wheat\s*76/);
    press(/^How much/);
    expect(screen.queryByRole('button', { name: /^Bowl by bowl/ })).toBeNull();
    for (let n = 0; n < 4; n += 1) press(/^One more/);
    expect(screen.getByText(/5510\sg of dough\. 2 bowls, (about )?275\d\sg each\.$/)).toBeTruthy();
    press(/^Bowl by bowl/);
    expect(headline()).toMatch(/^2 bowls, /);
    expect(screen.getByText(/^Bowl 2: 6\smin later\.$/)).toBeTruthy();
    const rows = screen.getAllByRole('row').slice(1);
    const grams = rows.map((row) =>
      [...row.querySelectorAll('td')].map((cell) => parseFloat(cell.textContent!)),
    );
    const all = grams.at(-1)!;
    expect(all).toHaveLength(2);
    for (const at of [0, 1])
      expect(grams.slice(0, -1).reduce((sum, row) => sum + row[at]!, 0)).toBeCloseTo(all[at]!, 6);
    expect(all[0]! + all[1]!).toBeCloseTo(5510, 0);
    press(/^That’s it/);
    press(/^All the dough/);
    key('9000');
    press(/^That’s it/);
    expect(screen.getByText(/3 bowls, (about )?3000\sg each/)).toBeTruthy();
  });

  it('tells beside the steps what is unusual of them, and nothing of the dough', async () => {
    await open();
    press(/^Lane wheat\s*76/);
    press(/^Salt/);
    press(/^Of all flour/);
    key('2.8');
    press(/^That’s it/);
    expect(screen.getByRole('status').textContent).toContain('Salt is');
    press(/^Its steps/);
    expect(screen.queryByRole('status')).toBeNull();
    press(/^Shaping/);
    press(/^Bench rest/);
    key('50');
    press(/^That’s it/);
    press(/^That’s it/);
    expect(screen.getByRole('status').textContent).toMatch(/^Bench rest: 50\smin; 10\sto/);
  });

  it('goes off the list and comes back to it, its versions kept', async () => {
    const house = await open();
    press(/^Lane wheat\s*76/);
    press(/^More$/);
    press(/^Off the list/);
    press(/^Yes, off the list/);
    await until(() => expect(wheatOf(house).off).toBe(true));
    await until(() => expect(headline()).toBe('Book'));
    expect(screen.queryByRole('button', { name: /^Lane wheat\s*76/ })).toBeNull();
    press(/^Off the list/);
    press(/^Lane wheat\s*76/);
    await until(() => expect(wheatOf(house).off).toBe(false));
    expect(wheatOf(house).versions).toHaveLength(2);
  });
});
