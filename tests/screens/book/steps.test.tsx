import { cleanup, render, screen } from '@solidjs/testing-library';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Process } from '../../../src/core/formula/formula.ts';
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

const button = (name: RegExp): HTMLElement => screen.getByRole('button', { name });
const press = (name: RegExp): void => {
  clock.at += 1_100;
  tap(button(name));
};
const key = (text: string): void => {
  for (const digit of text) press(new RegExp(`^${digit}$`));
};
const text = (): string => document.body.textContent.replaceAll('\u00a0', ' ');
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;
/** The steps of one bread of the Book. */
const steps = async (bread: RegExp): Promise<House> => {
  const { house } = await openBaking(makeFakeWorld());
  render(() => (
    <PressGround now={clock}>
      <Book house={house} onHome={() => undefined} />
    </PressGround>
  ));
  press(bread);
  press(/^Its steps/);
  return house;
};
const draft = (house: House, id: string): Process => house.drafts()[id]!.process;

// The first of them waits for the chunks.
describe('the steps of a formula', { timeout: 30_000 }, () => {
  it('turn a pot loaf into a tin loaf of the same day without folds, by presses alone', async () => {
    const house = await steps(/^Lane wheat\s*76/);
    press(/^Baked in/);
    press(/^Tin/);
    press(/^That’s it/);
    press(/^Last rise/);
    press(/^Warm/);
    press(/^That’s it/);
    press(/^Folds/);
    for (let n = 0; n < 3; n += 1) press(/^One fold less/);
    expect(button(/^One fold less/).ariaDisabled).toBe('true');
    press(/^That’s it/);
    expect(draft(house, 'lane-wheat')).toMatchObject({
      ...{ vessel: 'tin', preheat: 30, lidded: 0, open: 41 },
      ...{ retard: 0, counter: 0, warm: 155, touches: [] },
    });
    expect(button(/^Folds/).textContent).toContain('none');
    expect(button(/^Last rise/).textContent).toMatch(/Warm, 2\sh\s35/);
    expect(screen.queryByRole('status')).toBeNull();
    expect(house.records()).toEqual([]);
  });

  it('show the caution of what is hot, and the oven’s heat, where it is chosen', async () => {
    await steps(/^Lane wheat\s*76/);
    press(/^Baked in/);
    const care = () => document.querySelector('.act-care')!.textContent.replaceAll('\u00a0', ' ');
    expect(care()).toContain('Hot iron: dry mitts');
    expect(care()).toContain('Cold dough only into bare iron');
    expect(button(/^Pot with lid/).textContent).toMatch(/oven at 260\s°C, then 230 to 250\s°C/);
    expect(button(/^Tin/).textContent).toMatch(/oven at 230\s°C, then 200 to 230\s°C/);
    press(/^Hot stone/);
    expect(care()).toContain('Steam burns');
    expect(care()).not.toContain('bare iron');
    press(/^Tin/);
    expect(care()).toContain('dry mitts');
    expect(screen.queryByRole('button', { name: /^Lid or steam/ })).toBeNull();
    expect(button(/^Open baking/).textContent).toMatch(/41\smin/);
  });

  it('say in a sentence why another is not on offer, and take no press of it', async () => {
    const house = await steps(/^Harbour rye/);
    press(/^Baked in/);
    expect(text()).toContain('Spooned dough runs: it needs a tin to hold it.');
    expect(button(/^Pot with lid/).ariaDisabled).toBe('true');
    press(/^Hot stone/);
    expect(house.drafts()).toEqual({});
    press(/^That’s it/);
    press(/^Folds/);
    press(/^The filling goes in/);
    expect(text()).toContain('A sheet is there to take a filling. Add one first.');
    expect(button(/^On a sheet/).ariaDisabled).toBe('true');
  });

  it('move the minutes between two folds, take one out, and turn the sheet into a fold', async () => {
    const house = await steps(/^Cherry and hazelnut/);
    press(/^Folds/);
    press(/^Wait for the sheet/);
    expect(headline()).toBe('Minutes to the sheet');
    expect(text()).toMatch(/Usual: 0 to 60 min/);
    key('45');
    press(/^That’s it/);
    expect(draft(house, 'cherry-hazelnut').touches.map((one) => one.after)).toEqual([30, 45, 30]);
    press(/^Wait for fold 1/);
    press(/^Take it out/);
    expect(headline()).toBe('Folds');
    expect(draft(house, 'cherry-hazelnut').touches).toEqual([
      { kind: 'laminate', after: 75 },
      { kind: 'fold', after: 30 },
    ]);
    press(/^The filling goes in/);
    press(/^At the shaping/);
    press(/^That’s it/);
    expect(button(/^The filling goes in/).textContent).toContain('At the shaping');
    press(/^One fold more/);
    expect(draft(house, 'cherry-hazelnut').touches.map(({ kind }) => kind)).toEqual(
      Array.from({ length: 3 }, () => 'fold'),
    );
  });

  it('have the cold rise not on offer over what spoils, and tell its two hours', async () => {
    const house = await steps(/^Barley tin/);
    const kept = house.book().find(({ id }) => id === 'barley-tin')!.latest;
    const cheese = { id: 'c', name: 'fresh cheese', pct: 20, keeps: 'perishable' } as const;
    house.keepDraft('barley-tin', { ...kept, fillings: [{ ...cheese, allergens: ['milk'] }] });
    press(/^Last rise/);
    expect(text()).toContain('fresh cheese spoils in a long rise.');
    expect(text()).toContain('in the oven within 2 hours');
    expect(button(/^In the fridge/).ariaDisabled).toBe('true');
  });

  it('are keyed in the baker’s degrees: the fridge, and the dough after the mix', async () => {
    const house = await steps(/^Lane wheat\s*76/);
    house.choose({ heat: 'F' });
    press(/^Last rise/);
    press(/^Fridge/);
    expect(text()).toContain('Usual: 37 °F to 41 °F');
    key('39');
    press(/^That’s it/);
    expect(draft(house, 'lane-wheat').fridge).toBe(3.89);
    press(/^That’s it/);
    press(/^Dough after the mix/);
    key('77');
    press(/^That’s it/);
    expect(house.drafts()['lane-wheat']!.doughCelsius).toBe(25);
  });
});
