import { cleanup, render, screen } from '@solidjs/testing-library';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import Book from '../../../src/screens/book/Book.tsx';
import type { House } from '../../../src/screens/house.ts';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { loadedLater } from '../../fakes/loaded-later.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
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

const press = (name: RegExp): void => {
  clock.at += 1_100;
  tap(screen.getByRole('button', { name }));
};
const open = async (bread: RegExp): Promise<House> => {
  const { house } = await openBaking(makeFakeWorld());
  render(() => (
    <PressGround now={clock}>
      <Book house={house} onHome={() => undefined} />
    </PressGround>
  ));
  press(bread);
  return house;
};
const WHEAT = /^Lane wheat\s*76/;
const CHERRY = /^Cherry and hazelnut/;
const key = (text: string): void => {
  for (const digit of text) press(digit === '.' ? /^\.$/ : new RegExp(`^${digit}$`));
};
const type = (text: string): void => {
  const box = screen.getByRole<HTMLInputElement>('textbox');
  box.value = text;
  box.dispatchEvent(new InputEvent('input', { bubbles: true }));
};
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;
const text = () => document.body.textContent.replaceAll('\u00a0', ' ');
const has = (name: RegExp): boolean => screen.queryByRole('button', { name }) !== null;
const draftOf = (house: House, id: string) => house.drafts()[id]!;
const round = (parts: readonly { readonly id: string; readonly pct: number }[]) =>
  parts.map(({ id, pct }) => [id, Number(pct.toFixed(2))]);
/** Salt is asked for first: how percent is counted is asked once of each bread. */
const toLine = (name: RegExp): void => {
  press(name);
  if (has(/^Of all flour/)) press(/^Of all flour/);
};

// The first of them waits for the chunks.
describe('the lines of a formula', { timeout: 30_000 }, () => {
  it('get another flour by two presses, the others giving way, and lose it again', async () => {
    const house = await open(CHERRY);
    press(/^Add a flour/);
    expect(text()).toContain('It takes a tenth; the others share the rest.');
    // What the bread has of the list is not offered once more.
    expect(has(/^strong wheat flour/)).toBe(false);
    press(/^spelt flour/);
    expect(round(draftOf(house, 'cherry-hazelnut').flours)).toEqual([
      ['wheat', 76.5],
      ['rye', 13.5],
      ['spelt-flour', 10],
    ]);
    toLine(/^Spelt flour/);
    expect(text()).toMatch(/Now 10 % · \d+ g\. Others adapt\./);
    press(/^Take it out/);
    expect(round(draftOf(house, 'cherry-hazelnut').flours)).toEqual([
      ['wheat', 85],
      ['rye', 15],
    ]);
  });

  it('take a flour of any name and its grain, and another name and grain for it', async () => {
    const house = await open(CHERRY);
    press(/^Add a flour/);
    press(/^Another one/);
    type('  mill flour ');
    press(/^That’s it/);
    expect(headline()).toBe('Which grain is it from?');
    press(/^rye$/);
    const own = () => draftOf(house, 'cherry-hazelnut').flours.at(-1)!;
    expect(own()).toMatchObject({ id: 'mill-flour', name: 'mill flour', grain: 'rye', pct: 10 });
    toLine(/^Mill flour/);
    press(/^About it/);
    press(/^Its grain/);
    press(/^spelt$/);
    expect(own()).toMatchObject({ grain: 'spelt' });
    press(/^Its name/);
    type('dark flour');
    press(/^That’s it/);
    expect(own()).toMatchObject({ id: 'mill-flour', name: 'dark flour', grain: 'spelt', pct: 10 });
    expect(headline()).toBe('Dark flour');
  });

  it('keep their last flour, and what every dough has', async () => {
    const house = await open(CHERRY);
    toLine(/^Whole rye flour/);
    press(/^Take it out/);
    expect(round(draftOf(house, 'cherry-hazelnut').flours)).toEqual([['wheat', 100]]);
    press(/^Strong wheat flour/);
    expect(has(/^Take it out/)).toBe(false);
    expect(text()).not.toContain('The others share');
    press(/^That’s it/);
    for (const line of [/^Salt/, /^All water/, /^Levain\s*\d/]) {
      press(line);
      expect(has(/^Take it out/)).toBe(false);
      press(/^That’s it/);
    }
  });

  it('have water in one stage or in two', async () => {
    const house = await open(WHEAT);
    expect(has(/^Add second water/)).toBe(false);
    toLine(/^Second water/);
    press(/^Take it out/);
    expect(draftOf(house, 'lane-wheat').secondWater).toBe(0);
    expect(has(/^Second water/)).toBe(false);
    press(/^Add second water/);
    expect(headline()).toBe('Second water, of all water, %');
    expect(has(/^Take it out/)).toBe(false);
    key('8');
    press(/^That’s it/);
    expect(draftOf(house, 'lane-wheat').secondWater).toBe(0.08);
    expect(has(/^Second water/)).toBe(true);
  });

  it('count fillings of the flour or of the dough, the weight staying as it is', async () => {
    const house = await open(CHERRY);
    const weight = () =>
      / · (.*)$/.exec(screen.getByRole('button', { name: /^Dried cherries/ }).textContent)?.[1];
    const before = weight();
    expect(before).toMatch(/\d/);
    toLine(/^Dried cherries/);
    expect(headline()).toBe('Dried cherries, %');
    press(/^About it/);
    press(/^Percent of what\?\s*Of the flour/);
    press(/^Of the dough/);
    expect(has(/^Percent of what\?\s*Of the dough/)).toBe(true);
    press(/^That’s it/);
    expect(headline()).toBe('Dried cherries, %');
    expect(text()).toMatch(/Now 9 % of dough · \d+ g/);
    key('10');
    press(/^That’s it/);
    const { fillings, fillingsOf } = draftOf(house, 'cherry-hazelnut');
    expect(fillingsOf).toBe('dough');
    // The dough is 100 + 75 + 1.9 of its flour before the fillings go in.
    expect(fillings.map(({ pct }) => pct)).toEqual([expect.closeTo(17.69, 9), 12]);
    const told = screen.getByRole('button', { name: /^Dried cherries/ }).textContent;
    expect(told.replaceAll('\u00a0', ' ')).toMatch(/10 % of dough · /);
    expect(weight()).not.toBe(before);
  });

  it('give a filling water of its own to soak in, and take it away', async () => {
    const house = await open(CHERRY);
    toLine(/^Dried cherries/);
    press(/^About it/);
    const cold = 'Soak it in the fridge if it takes over 2 hours.';
    expect(text()).not.toContain(cold);
    press(/^Water to soak in\s*none/);
    key('50');
    // Two loaves of 900 g, 2 % loss of dough: 862 g of flour, 135 g of cherries, half of it.
    expect(text()).toContain('That is 68 g');
    press(/^That’s it/);
    const cherries = () => draftOf(house, 'cherry-hazelnut').fillings[0]!;
    expect(cherries().soak).toEqual({ water: 50 });
    expect(text()).toContain(cold);
    press(/^Water to soak in\s*50\s%/);
    key('0');
    press(/^That’s it/);
    expect(cherries()).not.toHaveProperty('soak');
  });
});

it('a filling is taken out on its page, and the others stay as they are', async () => {
  const house = await open(CHERRY);
  toLine(/^Dried cherries/);
  press(/^About it/);
  press(/^Take it out/);
  expect(headline()).toBe('Cherry and hazelnut');
  expect(round(draftOf(house, 'cherry-hazelnut').fillings)).toEqual([['hazelnut', 12]]);
  expect(has(/^Dried cherries/)).toBe(false);
});

describe('what a packet names', { timeout: 30_000 }, () => {
  const mixed = async (): Promise<House> => {
    const house = await open(WHEAT);
    press(/^Add a filling/);
    press(/^Another one/);
    type('spice mix');
    press(/^That’s it/);
    press(/^none of these/);
    press(/^On the shelf/);
    expect(headline()).toBe('Allergens of spice mix');
    return house;
  };
  const mix = (house: House) => draftOf(house, 'lane-wheat').fillings[0]!;

  it('of a filling that nobody knows is asked, and unanswered it is told so, never none', async () => {
    const house = await mixed();
    expect(text()).toContain('Read the packet: labels change.');
    expect(text()).toContain('Not answered yet.');
    press(/^That’s it/);
    expect(mix(house)).toMatchObject({ name: 'spice mix', allergens: [] });
    expect(mix(house)).not.toHaveProperty('packet');
    expect(text()).toContain('Allergens in it: gluten (wheat');
    expect(text()).toContain('Not answered yet: spice mix.');
    toLine(/^Spice mix/);
    press(/^About it/);
    expect(has(/^Allergens\s*not answered/)).toBe(true);
  });

  it('is none once that was said, and no more when it is taken back', async () => {
    const house = await mixed();
    press(/^None of them/);
    expect(mix(house)).toMatchObject({ allergens: [], packet: 'read' });
    expect(text()).toContain('None, packet read.');
    press(/^None of them/);
    expect(mix(house)).not.toHaveProperty('packet');
    press(/^None of them/);
    press(/^That’s it/);
    expect(text()).not.toContain('Not answered yet');
    await house.keepFormula(draftOf(house, 'lane-wheat'));
    expect(house.book().find(({ id }) => id === 'lane-wheat')!.latest.fillings[0]).toMatchObject({
      packet: 'read',
    });
  });

  it('is named press by press, a nut by its own name, and taken out by another press', async () => {
    const house = await mixed();
    press(/^milk/);
    press(/^tree nuts/);
    expect(headline()).toBe('Which nuts?');
    press(/^almond/);
    press(/^cashew/);
    press(/^That’s it/);
    press(/^The other names/);
    press(/^mustard/);
    expect(mix(house)).toMatchObject({
      allergens: ['milk', 'tree nuts (almond)', 'tree nuts (cashew)', 'mustard'],
      packet: 'read',
    });
    expect(screen.getByRole('button', { name: /^mustard/ }).ariaPressed).toBe('true');
    press(/^The first names/);
    press(/^milk/);
    press(/^That’s it/);
    expect(text()).toContain('tree nuts (almond, cashew), mustard.');
    expect(text()).not.toContain('milk');
  });

  it('is from memory until the packet was read, and to be looked up where it may be so', async () => {
    const house = await open(CHERRY);
    toLine(/^Toasted hazelnuts/);
    press(/^About it/);
    expect(text()).toContain('From what we know: tree nuts (hazelnut).');
    press(/^Allergens\s*from memory/);
    press(/^The packet says so/);
    const nuts = () => draftOf(house, 'cherry-hazelnut').fillings[1]!;
    expect(nuts()).toMatchObject({ allergens: ['tree nuts (hazelnut)'], packet: 'read' });
    press(/^The packet says so/);
    expect(nuts()).not.toHaveProperty('packet');
    press(/^The packet says so/);
    press(/^That’s it/);
    expect(has(/^Allergens\s*packet read/)).toBe(true);
    // Another name is another thing.
    press(/^Its name/);
    type('pecans');
    press(/^That’s it/);
    expect(nuts()).toMatchObject({ name: 'pecans', allergens: ['tree nuts (hazelnut)'] });
    expect(has(/^Allergens\s*from memory/)).toBe(true);
  });

  it('of a kind that may bring it is settled name by name', async () => {
    const house = await open(WHEAT);
    press(/^Add a filling/);
    press(/^Another one/);
    press(/^That’s it/);
    press(/^chocolate/);
    toLine(/^Chocolate/);
    press(/^About it/);
    press(/^Allergens/);
    const chocolate = () => draftOf(house, 'lane-wheat').fillings[0]!;
    expect(screen.getByRole('button', { name: /^The packet says so/ }).ariaDisabled).toBe('true');
    press(/^milk\s*look it up/);
    expect(chocolate()).not.toHaveProperty('packet');
    press(/^soya\s*look it up/);
    press(/^soya\s*named/);
    expect(chocolate()).toMatchObject({ allergens: ['milk'], packet: 'read' });
  });

  it('of a flour is asked as well, its grain’s gluten being there anyway', async () => {
    const house = await open(WHEAT);
    toLine(/^Strong wheat flour/);
    press(/^About it/);
    expect(text()).toContain('Its grain: gluten (wheat). The rest: not answered.');
    press(/^Allergens\s*not answered/);
    press(/^gluten\s*wheat/);
    expect(has(/^wheat/)).toBe(false);
    press(/^barley/);
    press(/^That’s it/);
    press(/^soya/);
    expect(draftOf(house, 'lane-wheat').flours[0]).toMatchObject({
      allergens: ['gluten (barley)', 'soya'],
      packet: 'read',
    });
    press(/^That’s it/);
    press(/^That’s it/);
    press(/^That’s it/);
    expect(text()).toContain('Allergens in it: gluten (wheat');
    expect(text()).toContain('soya');
  });
});
