import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { CIRCLE, type Order } from '../../../../src/core/circle/circle.ts';
import { ordersOn } from '../../../../src/core/circle/orders.ts';
import { ANY_POT } from '../../../../src/core/kitchen/equipment.ts';
import { DayOrders } from '../../../../src/screens/circle/orders/DayOrders.tsx';
import { roomSays } from '../../../../src/screens/circle/oven/room-says.ts';
import { openBaking, serveFormulas } from '../../../fakes/baking.ts';
import { fakeCircle } from '../../../fakes/circle.ts';
import { makeFakeWorld } from '../../../fakes/world.ts';
import { tap, turnedClock } from '../../parts/touching.ts';
import { showFace } from './show-face.tsx';

const clock = turnedClock();
const DAY = '2031-05-10';

beforeEach(() => serveFormulas());
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const order = (count: number, at: number | null = 780): Order => ({
  id: 'o',
  who: 'm',
  day: DAY,
  at,
  lines: [{ bread: 'lane-wheat', count, grams: null, cut: false }],
  paid: false,
  handed: null,
  made: 1,
  standing: null,
});

/** Three pots from eight until eleven: twelve loaves, and the last of them cool at 13:02. */
const open = async (first: Order) => {
  const { house } = await openBaking(makeFakeWorld());
  house.equip({ pots: [ANY_POT, ANY_POT, ANY_POT] });
  const circle = fakeCircle({
    neighbours: [{ id: 'm', name: 'M', watch: [] }],
    orders: [first],
    ways: { ...CIRCLE.ways, oven: { from: 480, to: 662 } },
  });
  showFace(
    () => (
      <DayOrders
        house={house}
        circle={circle}
        day={DAY}
        cap={roomSays(house, circle)}
        onOpen={() => undefined}
        onBack={() => undefined}
      />
    ),
    clock,
  );
  return () => ordersOn(circle.circle(), DAY)[0]!;
};
const press = async (...names: readonly RegExp[]): Promise<void> => {
  for (const name of names) {
    clock.at += 1_100;
    tap(screen.getByRole('button', { name }));
    for (let i = 0; i < 3; i += 1) await Promise.resolve();
  }
};
const text = () => document.body.textContent.replaceAll('\u00a0', ' ');

describe('the room of a day, on the pages of orders', { timeout: 30_000 }, () => {
  it('is said before it is passed, asked about when it is, and taken all the same', async () => {
    const now = await open(order(11));
    expect(text()).toContain('Lane wheat: room for 1 loaf more.');
    await press(/M11 Lane wheat/, /^11 Lane wheat/, /^One more/);
    expect(now().lines[0]!.count).toBe(12);
    await press(/^One more/);
    expect(now().lines[0]!.count).toBe(12);
    expect(text()).toContain(
      'The oven’s hours are too short. There is room for 12 loaves of Lane wheat. With the oven on until 11:50 it can be fetched from 13:50. No bake day ahead takes all of it.',
    );
    await press(/^Take it anyway/);
    expect(text()).toContain('Still warm at 13:00. Cool from 13:50.');
    await press(/^Take it anyway/);
    expect(now().lines[0]!.count).toBe(13);
  });

  it('asks of an hour at which its bread is still warm, and takes it all the same', async () => {
    const now = await open(order(3, null));
    await press(/^M3 Lane wheat/, /^Fetched/, /^10:00/);
    expect(now().at).toBeNull();
    expect(text()).toContain(
      'Still warm at 10:00. Cool from 10:38. Fetched warm, its bag stays open.',
    );
    await press(/^Take it anyway/);
    expect(now().at).toBe(600);
  });
});
