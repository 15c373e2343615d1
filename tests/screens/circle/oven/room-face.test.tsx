import { cleanup, screen, within } from '@solidjs/testing-library';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { CIRCLE, type Circle, type Order } from '../../../../src/core/circle/circle.ts';
import type { Face } from '../../../../src/screens/circle/face.ts';
import { RoomFace } from '../../../../src/screens/circle/oven/RoomFace.tsx';
import { roomSays } from '../../../../src/screens/circle/oven/room-says.ts';
import { ANY_POT } from '../../../../src/core/kitchen/equipment.ts';
import { openBaking, serveFormulas } from '../../../fakes/baking.ts';
import { fakeCircle } from '../../../fakes/circle.ts';
import { makeFakeWorld } from '../../../fakes/world.ts';
import { tap, turnedClock } from '../../parts/touching.ts';
import { showFace } from './show-face.tsx';

const clock = turnedClock();
const SATURDAY = '2031-05-03';

beforeEach(() => serveFormulas());
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const press = (name: RegExp): void => {
  clock.at += 1_100;
  tap(screen.getByRole('button', { name }));
};
const headline = () => screen.getByRole('heading', { level: 1 }).textContent;
const barsTold = () =>
  screen
    .getByRole('img', { name: /^What of/ })
    .getAttribute('aria-label')!
    .replaceAll('\u00a0', ' ');
const text = () => document.body.textContent.replaceAll('\u00a0', ' ');
const order = (count: number, more: Partial<Order> = {}): Order => ({
  id: `order-${count}`,
  who: 'a',
  day: SATURDAY,
  at: null,
  lines: [{ bread: 'lane-wheat', count, grams: null, cut: false }],
  paid: false,
  handed: null,
  made: 1,
  standing: null,
  ...more,
});
const rows = (): string[][] =>
  screen
    .getAllByRole('row')
    .slice(1)
    .map((row) =>
      [...row.querySelectorAll('td, th')].map((cell) =>
        (cell.textContent ?? '').replaceAll('\u00a0', ' '),
      ),
    );

/** Three pots; of the oven's hours what is said. */
const open = async (orders: readonly Order[], oven: Circle['ways']['oven']) => {
  const { house } = await openBaking(makeFakeWorld());
  house.equip({ pots: [ANY_POT, ANY_POT, ANY_POT], fridge: { celsius: null, holds: 8 } });
  const circle = fakeCircle({ orders, ways: { ...CIRCLE.ways, oven } });
  const opened: Face[] = [];
  showFace(
    () => (
      <RoomFace
        house={house}
        circle={circle}
        day={SATURDAY}
        back="Circle"
        onOpen={(face) => opened.push(face)}
        onBack={() => undefined}
      />
    ),
    clock,
  );
  return { house, circle, opened };
};
const EIGHT_TO_TWELVE = { from: 480, to: 720 };

describe('the room a day has left', { timeout: 30_000 }, () => {
  it('is shown in bars whose words say it, and as a table of the same values', async () => {
    await open([order(7)], EIGHT_TO_TWELVE);
    expect(headline()).toBe('See room left on Sat 3 May');
    // Three loads: 3 × 38 + 2 × 10 min.
    expect(barsTold()).toBe(
      'What of Sat 3 May is taken. Oven: 2 h 14 of 4 h, free. Fridge: 7 of 8 places, free. Bowls: 3, bowls not said.',
    );
    press(/^As a table/);
    expect(rows()).toEqual([
      ['Oven', '2 h 14', '4 h', '1 h 46', 'free'],
      ['Fridge', '7', '8', '1', 'free'],
      ['Bowls', '3', '–', '–', '–'],
    ]);
    press(/^As bars/);
    expect(screen.queryByRole('table')).toBeNull();
  });

  it('says what is full and what is too much in words', async () => {
    await open([order(9)], EIGHT_TO_TWELVE);
    expect(barsTold()).toContain('Fridge: 9 of 8 places, too much.');
    cleanup();
    // The last load takes it to the minute: no other bread is done so fast.
    await open([order(6)], { from: 480, to: 566 });
    expect(barsTold()).toContain('Oven: 1 h 26 of 1 h 26, full.');
  });

  it('asks for the oven’s hours where nobody said them', async () => {
    const { opened } = await open([order(7)], null);
    expect(text()).toContain('Say when the oven bakes, and it counts too.');
    expect(barsTold()).toContain('Oven: 2 h 14, hours not said.');
    press(/^Load by load/);
    expect(text()).toContain('7 loaves in 2 h 14. Say when the oven bakes to see hours.');
    press(/^Oven hours/);
    expect(opened).toEqual([{ at: 'oven hours', from: 'Room left' }]);
  });

  it('has bread by bread what is ordered, how many more go, and what ends then', async () => {
    await open([order(7)], EIGHT_TO_TWELVE);
    press(/^Bread by bread/);
    expect(rows()[0]).toEqual(['Lane wheat', '7', '1', 'the fridge']);
    expect(rows().find(([name]) => name === 'Barley tin')).toEqual([
      'Barley tin',
      '0',
      '4',
      'the oven',
    ]);
    press(/^That’s it/);
    expect(headline()).toBe('See room left on Sat 3 May');
  });

  it('has its loads with hours and the hour of fetching, and who comes too early', async () => {
    const tin = order(1, {
      id: 'tin',
      at: 600,
      lines: [{ bread: 'barley-tin', count: 1, grams: null, cut: false }],
    });
    await open([order(4, { at: 780 }), tin], EIGHT_TO_TWELVE);
    press(/^Load by load/);
    expect(rows()).toEqual([
      ['08:00', '08:40', '1 Barley tin', '10:40'],
      ['08:50', '09:28', '3 Lane wheat', '11:28'],
      ['09:38', '10:16', '1 Lane wheat', '12:16'],
    ]);
    expect(text()).toContain('Last out 10:16. All can be fetched from 12:16.');
    expect(text()).toContain('Fetched before it is cool: 1 of the orders.');
  });

  it('tells of hours that end before the last load, and of bread the Book has no more', async () => {
    const gone = order(2, {
      id: 'gone',
      lines: [{ bread: 'gone', count: 2, grams: null, cut: false }],
    });
    await open([order(7), gone], { from: 480, to: 540 });
    expect(text()).toContain('Not counted, no longer in the Book: 2 of the loaves.');
    press(/^Load by load/);
    expect(text()).toContain('But the oven’s hours end at 09:00.');
  });

  it('has nothing on an empty day', async () => {
    await open([], EIGHT_TO_TWELVE);
    expect(text()).toContain('Nobody has ordered for this day yet.');
    press(/^Load by load/);
    expect(text()).toContain('Nothing to bake on this day yet.');
    expect(screen.queryByRole('table')).toBeNull();
  });

  it('has four presses beside its slab', async () => {
    await open([order(7)], EIGHT_TO_TWELVE);
    expect(
      within(document.body)
        .getAllByRole('button')
        .map((b) => b.textContent),
    ).toHaveLength(5);
  });
});

describe('what the pages of orders are told', { timeout: 30_000 }, () => {
  it('is the room of the day’s breads, then why it is full, and nothing where nothing limits', async () => {
    const { house } = await open([], null);
    const says = (orders: readonly Order[], oven: Circle['ways']['oven']) =>
      roomSays(house, fakeCircle({ orders, ways: { ...CIRCLE.ways, oven } }));
    expect(says([order(7)], EIGHT_TO_TWELVE).line(SATURDAY)).toBe(
      'Lane wheat: room for 1 loaf more.',
    );
    expect(says([order(8)], EIGHT_TO_TWELVE).line(SATURDAY)).toBe(
      'No room left. The fridge has too few places.',
    );
    house.equip({ fridge: { celsius: null, holds: null } });
    expect(says([order(7)], null).line(SATURDAY)).toBeNull();
  });

  it('is why an order does not go, and that it is fetched warm; an order as it was is counted once', async () => {
    const { house } = await open([], null);
    const one = order(7);
    const says = roomSays(
      house,
      fakeCircle({ orders: [one], ways: { ...CIRCLE.ways, oven: EIGHT_TO_TWELVE } }),
    );
    expect(says.asks({ ...one, lines: order(8).lines })).toEqual([]);
    expect(says.asks(order(2, { at: 630 }))).toEqual([
      'The fridge has too few places. There is room for 1 loaf of Lane wheat. All of it fits on Sat 10 May.',
      'Still warm at 10:30. Cool from 12:14. Fetched warm, its bag stays open.',
    ]);
  });
});
