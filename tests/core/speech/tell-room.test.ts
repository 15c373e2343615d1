import { describe, expect, it } from 'vitest';
import { CIRCLE, type Circle, type Order } from '../../../src/core/circle/circle.ts';
import { askRoom, breadRoom, dayRoom, type RoomAsk } from '../../../src/core/circle/day-room.ts';
import { ANY_POT } from '../../../src/core/kitchen/equipment.ts';
import { showDay } from '../../../src/core/speech/show-day.ts';
import {
  tellBreadRoom,
  tellEarly,
  tellMinute,
  tellRefusal,
} from '../../../src/core/speech/tell-room.ts';
import { shippedFormula } from '../formula/shipped.ts';

const SATURDAY = '2031-05-03';
const BREADS = [shippedFormula('lane-wheat'), shippedFormula('harbour-rye')];
const nameOf = (id: string): string => BREADS.find((one) => one.id === id)!.name;
const line = (count: number, bread = 'lane-wheat') => ({ bread, count, grams: null, cut: false });
const order = (count: number, more: Partial<Order> = {}): Order => ({
  id: `order-${count}`,
  who: 'a',
  day: SATURDAY,
  at: null,
  lines: [line(count)],
  paid: false,
  handed: null,
  made: 1,
  standing: null,
  ...more,
});
/** Four loads of three: 38 minutes and ten, from eight until eleven. */
const ask = (orders: readonly Order[], more: Partial<RoomAsk> = {}): RoomAsk => ({
  circle: {
    ...CIRCLE,
    orders,
    ways: { ...CIRCLE.ways, oven: { from: 480, to: 662 } },
  } satisfies Circle,
  day: SATURDAY,
  breads: BREADS,
  weighIns: [],
  kitchen: {
    pots: [ANY_POT, ANY_POT, ANY_POT],
    tins: 2,
    stones: 1,
    fridge: { celsius: null, holds: null },
    bowls: { count: null, kilos: 3, litres: null },
  },
  ...more,
});
const refusal = (asked: RoomAsk, count: number) =>
  tellRefusal(askRoom(asked, [line(count)]), asked.day, nameOf, '24');

describe('the room of a day, told at an order', () => {
  it('is said of a bread before it is passed', () => {
    const room = (orders: readonly Order[]) => breadRoom(ask(orders), 'lane-wheat', null)!;
    expect(tellBreadRoom('Lane wheat', room([order(7)]))).toBe(
      'Lane wheat: room for 5 loaves more.',
    );
    expect(tellBreadRoom('Lane wheat', room([order(12)]))).toBe(
      'Lane wheat: no room left. The oven’s hours are too short.',
    );
    const unsaid = ask([], { circle: CIRCLE });
    expect(tellBreadRoom('Lane wheat', breadRoom(unsaid, 'lane-wheat', null)!)).toBe(
      'Lane wheat: no limit.',
    );
    expect(breadRoom(ask([]), 'gone', null)).toBeNull();
  });

  it('refuses with what binds, what still goes, the hour that would do and the next day', () => {
    const asked = ask([order(7)]);
    expect(refusal(asked, 5)).toBeNull();
    expect(refusal(asked, 6)).toEqual([
      'The oven’s hours are too short.',
      'There is room for 5 loaves of Lane wheat.',
      // Thirteen are five loads: 5 × 38 + 4 × 10 min.
      'With the oven on until 11:50 it can be fetched from 13:50.',
      'All of it fits on Sat 10 May.',
    ]);
  });

  it('names a bake day in between that has room, and no day where none takes so many', () => {
    const tuesday = order(7, { id: 'b', day: '2031-05-06' });
    const full = order(12, { id: 'c', day: '2031-05-05' });
    expect(refusal(ask([order(12), tuesday, full]), 5)!.at(-1)).toBe(
      'All of it fits on Tue 6 May.',
    );
    expect(refusal(ask([order(12), tuesday, full]), 5)![1]).toBe('There is room for none of it.');
    expect(refusal(ask([]), 13)!.at(-1)).toBe('No bake day ahead takes all of it.');
  });

  it('counts the order that is being changed once', () => {
    const mine = order(7);
    const asked = ask([mine], { but: mine.id });
    expect(dayRoom(asked).taken).toEqual([]);
    expect(refusal(asked, 12)).toBeNull();
  });

  it('answers for two thousand orders and ten thousand loaves in a blink', () => {
    const orders = Array.from({ length: 2000 }, (_, i) =>
      order(1, { id: `o-${i}`, day: i % 2 ? SATURDAY : '2031-05-10' }),
    );
    const begun = performance.now();
    const told = refusal(ask(orders), 10_000)!;
    expect(performance.now() - begun).toBeLessThan(250);
    expect(told.slice(0, 2)).toEqual([
      'The oven’s hours are too short.',
      'There is room for none of it.',
    ]);
  });

  it('says when bread that is wanted warm is cool', () => {
    const answer = askRoom(ask([]), [line(3)]);
    expect(tellEarly(answer, 630, SATURDAY, '24')).toBe(
      'Still warm at 10:30. Cool from 10:38. Fetched warm, its bag stays open.',
    );
    expect(tellEarly(answer, 638, SATURDAY, '24')).toBeNull();
    expect(tellEarly(answer, null, SATURDAY, '24')).toBeNull();
    const rye = askRoom(ask([]), [line(1, 'harbour-rye')]);
    expect(tellEarly(rye, 1080, SATURDAY, '12')).toBe(
      'Not ready to cut at 6:00\u00a0pm. Ready from 12:55\u00a0am on Sun 4 May.',
    );
  });

  it('shows an hour past midnight with its day', () => {
    expect(showDay(SATURDAY)).toBe('Sat 3 May');
    expect(tellMinute(SATURDAY, 2 * 1440 + 60, '24')).toBe('01:00 on Mon 5 May');
  });
});
