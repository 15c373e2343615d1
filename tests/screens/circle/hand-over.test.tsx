import { cleanup, render, screen } from '@solidjs/testing-library';
import { createRoot } from 'solid-js';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { openHouse } from '../../../src/app/open-house.ts';
import type { Circle, Order } from '../../../src/core/circle/circle.ts';
import { CIRCLE } from '../../../src/core/circle/circle.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import { HandOver } from '../../../src/screens/circle/handover/HandOver.tsx';
import { todayOf } from '../../../src/screens/circle/today.ts';
import type { House } from '../../../src/screens/house.ts';
import type { NotWritten } from '../../../src/screens/house-circle.ts';
import { serveFormulas } from '../../fakes/baking.ts';
import { fakeCircle } from '../../fakes/circle.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { tap, turnedClock } from '../parts/touching.ts';

vi.setConfig({ testTimeout: 30_000 });
const until = (holds: () => void) => vi.waitFor(holds, { timeout: 20_000 });

beforeEach(() => serveFormulas());
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const order = (id: string, who: string, more: Partial<Order> = {}): Order => ({
  ...{ id, who, day: '', at: 960, paid: false, handed: null, made: 1, standing: null },
  lines: [{ bread: 'lane-wheat', count: 2, grams: null, cut: true }],
  ...more,
});

async function opened(
  of: (day: string) => Partial<Circle>,
  parts: { fails?: () => NotWritten | null; house?: Partial<House> } = {},
) {
  const clock = turnedClock();
  const world = makeFakeWorld({});
  const house: House = await createRoot(() => openHouse(world));
  Object.assign(house, parts.house);
  await until(() => expect(house.book().length).toBeGreaterThan(3));
  const day = todayOf(house);
  const circle = fakeCircle(of(day), parts.fails);
  render(() => (
    <PressGround now={clock} firstTouch={() => house.hush()}>
      <HandOver
        {...{ house, circle, day }}
        back="Bake day"
        onOpen={() => undefined}
        onBack={() => undefined}
      />
    </PressGround>
  ));
  const press = async (name: RegExp): Promise<void> => {
    const found = await screen.findByRole('button', { name }, { timeout: 20_000 });
    clock.at += 1_100;
    tap(found);
    await Promise.resolve();
  };
  const button = (name: RegExp): HTMLElement => screen.getByRole('button', { name });
  const text = (): string => document.body.textContent.replaceAll('\u00a0', ' ');
  return { world, house, circle, day, press, button, text };
}

const lane = (day: string): Partial<Circle> => ({
  neighbours: [
    { id: 'k', name: 'K', watch: [] },
    { id: 'm', name: 'M', watch: ['tree nuts'] },
  ],
  orders: [
    order('o', 'k', { day }),
    order('p', 'm', {
      day,
      at: null,
      lines: [{ bread: 'cherry-hazelnut', count: 1, grams: null, cut: false }],
    }),
  ],
});

it('one press hands over at its instant, and a second one takes it back', async () => {
  const { house, circle, press, button, text } = await opened(lane);
  expect(text()).toContain('Hand over: 2 to come');
  const at = house.now();
  await press(/16:00 K/);
  expect(circle.circle().orders[0]).toMatchObject({ id: 'o', handed: at, paid: false });
  expect(text()).toContain(`Gone ${house.hour(at)}`);
  expect(text()).toContain('Hand over: 1 to come');
  expect(button(/16:00 K/).getAttribute('aria-pressed')).toBe('true');
  await press(/16:00 K/);
  expect(circle.circle().orders[0]).toMatchObject({ handed: null });
  expect(text()).not.toContain('Gone');
  expect(circle.written).toHaveLength(2);
});

it('paid is a press of its own', async () => {
  const { circle, press, button } = await opened(lane);
  await press(/^Paid: K/);
  expect(circle.circle().orders.map(({ paid, handed }) => [paid, handed])).toEqual([
    [true, null],
    [false, null],
  ]);
  expect(button(/^Paid: K/).getAttribute('aria-pressed')).toBe('true');
  expect(button(/^Paid: M/).getAttribute('aria-pressed')).toBe('false');
  await press(/^Paid: K/);
  expect(circle.circle().orders[0]!.paid).toBe(false);
});

it('what one must not eat stands beside the name, with the bread that holds it', async () => {
  const { text, button } = await opened(lane);
  const row = button(/any time M/).textContent.replaceAll('\u00a0', ' ');
  expect(row).toContain('Must not eat: tree nuts.');
  expect(row).toMatch(/Cherry and hazelnut has tree nuts \(hazelnut\)\./);
  expect(button(/16:00 K/).textContent).not.toContain('Must');
  expect(text()).toContain('2 × Lane wheat, sliced');
});

it('the first press on a standing order’s day writes it as its own order', async () => {
  const { house, circle, day, press } = await opened((today) => ({
    ...lane(today),
    orders: [],
    standing: [
      {
        ...{ id: 's', who: 'k', weekday: new Date(`${today}T12:00:00Z`).getUTCDay(), at: 960 },
        lines: [{ bread: 'lane-wheat', count: 1, grams: null, cut: false }],
        ...{ from: '2031-01-01', until: null, skips: [] },
      },
    ],
  }));
  await press(/16:00 K/);
  expect(circle.circle().orders).toEqual([
    expect.objectContaining({ id: `s@${day}`, day, standing: 's', handed: house.now() }),
  ]);
  expect(circle.circle().orders[0]!.made).toBe(house.now());
  await press(/16:00 K/);
  expect(circle.circle().orders).toHaveLength(1);
  expect(circle.circle().orders[0]!.handed).toBeNull();
});

it('those still to come are shown alone, and stay when they are ticked', async () => {
  const { press, text } = await opened(lane);
  await press(/16:00 K/);
  await press(/^Still to come/);
  expect(screen.queryByRole('button', { name: /16:00 K/ })).toBeNull();
  await press(/any time M/);
  expect(screen.getByRole('button', { name: /any time M/ })).toBeTruthy();
  await press(/^Show all/);
  expect(text()).toContain('16:00 K');
});

it('what was not written is told, and not shown as done', async () => {
  const { house, press, button } = await opened(lane, { fails: () => 'full' });
  await press(/16:00 K/);
  expect(button(/16:00 K/).getAttribute('aria-pressed')).toBe('false');
  expect(
    house
      .told()
      .map(({ text }) => text)
      .join(' '),
  ).toMatch(/full/i);
  expect(
    house
      .told()
      .map(({ text }) => text)
      .join(' '),
  ).not.toMatch(/\bK\b/);
});

it('counts the loaves by bread', async () => {
  const { press } = await opened(lane);
  await press(/16:00 K/);
  await press(/^All loaves/);
  const rows = [...document.querySelectorAll('tr')].map((row) =>
    [...row.children].map((cell) => cell.textContent),
  );
  expect(rows.slice(1)).toEqual([
    ['Lane wheat', '2', '2', '2', '0'],
    ['Cherry and hazelnut', '1', '', '0', '1'],
  ]);
});

it('says before it prints that names are on it, and prints what stands on the list', async () => {
  const { press, text } = await opened(lane);
  const print = vi.spyOn(window, 'print').mockImplementation(() => undefined);
  await press(/16:00 K/);
  await press(/^All loaves/);
  await press(/^Print the list/);
  expect(text()).toContain('Names are on it.');
  expect(print).not.toHaveBeenCalled();
  await press(/^Print it/);
  expect(print).toHaveBeenCalledOnce();
  const page = document.querySelector('.pick-sheet')!;
  const rows = [...page.querySelectorAll('table:first-of-type tbody tr')].map((row) =>
    [...row.children].map((cell) => cell.textContent),
  );
  expect(rows).toEqual([
    ['16:00', 'K', '2 × Lane wheat, sliced', '✓', ''],
    [
      'any time',
      'M',
      expect.stringMatching(/^1 × Cherry and hazelnutMust not eat: tree nuts\.Cherry/),
      '',
      '',
    ],
  ]);
  expect(page.textContent).toContain('Names are on it.');
  window.dispatchEvent(new Event('afterprint'));
  expect(document.querySelector('.pick-sheet')).toBeNull();
});

it('copies a text for one or for all, and shows it to be marked where it cannot', async () => {
  const copied: string[] = [];
  let lets = true;
  const sheets = () =>
    Promise.resolve({
      copy: (text: string) => Promise.resolve(lets && Boolean(copied.push(text))),
    });
  const { press, text } = await opened(lane, {
    house: { sheets: sheets as unknown as House['sheets'] },
  });
  await press(/^Tell them/);
  expect(text()).toContain('This tablet sends nothing.');
  await press(/^K16:00/);
  await press(/^Copy it/);
  await until(() => expect(text()).toContain('It is copied.'));
  expect(copied[0]).toMatch(/^Your bread on .*, at 16:00:\n2 × Lane wheat, sliced\nIf the loaf/);
  await press(/^For another/);
  await press(/^For all/);
  expect(text()).toContain('Names are in it.');
  lets = false;
  await press(/^Copy it/);
  await until(() => expect(text()).toContain('It could not be copied. Mark the text by hand.'));
  expect(copied).toHaveLength(1);
  expect(window.getSelection()?.toString()).toContain('K: 2 × Lane wheat, sliced');
});

it('says what is to pay where all prices are set, and nothing where one is not', async () => {
  const pack = { grams: 1000, cost: 2, usable: 1 };
  const { circle, text, press } = await opened((day) => ({
    ...lane(day),
    ways: { ...CIRCLE.ways, times: 2 },
  }));
  expect(text()).not.toContain('To pay');
  // Each thing that goes into a lane wheat, by the name it has in the cupboard.
  const { costOf } = await import('../../../src/core/circle/cost.ts');
  const { makeRecipe } = await import('../../../src/core/formula/make-recipe.ts');
  const FILES = import.meta.glob<unknown>('../../../assets/formulas/lane-wheat.json', {
    eager: true,
    import: 'default',
  });
  const formula = Object.values(FILES)[0] as Parameters<typeof makeRecipe>[0];
  const { recipe } = makeRecipe(formula, { loaves: 2, piece: formula.piece });
  const things = costOf(recipe!, [], { besides: null }).lines.map(({ id, name }) => ({
    ...{ id, name, pack, counted: null, madeOf: null },
  }));
  await circle.write({
    puts: things.map((thing) => ({ list: 'ingredients' as const, id: thing.id, thing })),
  });
  const cost = costOf(recipe!, things, { besides: null });
  const each = Number((2 * cost.loaf).toFixed(2));
  const shown = new Intl.NumberFormat(undefined, { style: 'currency', currency: 'EUR' });
  expect(text()).toContain(`To pay: ${shown.format(2 * each)}.`);
  expect(text().match(/To pay/g)).toHaveLength(1);
  await press(/^Paid: K/);
  expect(text()).not.toContain('To pay');
});

it('says that bread is warm, and until when, of today’s bake alone', async () => {
  const { world, house, button, circle } = await opened(lane);
  expect(button(/16:00 K/).textContent).not.toContain('warm');
  const { formula } = house.formulas().find((one) => one.formula?.id === 'lane-wheat')!;
  const bake = await house.begin({
    formula: formula!,
    loaves: 1,
    kitchen: 22,
    from: 'cool.cooling',
  });
  expect(bake).not.toBeNull();
  const cool = house.hour(world.clock.now() + 120 * 60_000);
  await until(() => {
    const row = button(/16:00 K/).textContent.replaceAll('\u00a0', ' ');
    expect(row).toContain('Still warm: leave the bag open.');
    expect(row).toContain(`Cool at ${cool}.`);
  });
  expect(button(/any time M/).textContent).not.toContain('warm');
  expect(circle.written).toEqual([]);
});
