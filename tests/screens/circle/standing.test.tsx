import { cleanup, render, screen } from '@solidjs/testing-library';
import { afterAll, afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { Circle, Standing } from '../../../src/core/circle/circle.ts';
import { ordersOn } from '../../../src/core/circle/orders.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import { StandingFaces } from '../../../src/screens/circle/orders/StandingFaces.tsx';
import { openBaking, serveFormulas } from '../../fakes/baking.ts';
import { fakeCircle } from '../../fakes/circle.ts';
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

/** The world's clock begins on Saturday, 3 May 2031. */
const weekly: Standing = {
  id: 's',
  who: 'm',
  weekday: 6,
  at: 600,
  lines: [{ bread: 'lane-wheat', count: 2, grams: null, cut: false }],
  from: '2031-04-01',
  until: null,
  skips: [],
};
const open = async (standing: readonly Standing[], more: Partial<Circle> = {}) => {
  const { house } = await openBaking(makeFakeWorld());
  const circle = fakeCircle({
    neighbours: [{ id: 'm', name: 'M of the mill', watch: [] }],
    standing,
    ...more,
  });
  const onOpen = vi.fn();
  render(() => (
    <PressGround now={clock}>
      <StandingFaces house={house} circle={circle} onOpen={onOpen} onBack={() => undefined} />
    </PressGround>
  ));
  const days = (...which: readonly string[]) =>
    which.map((day) => ordersOn(circle.circle(), day).length);
  return { circle, onOpen, days };
};
const press = async (...names: readonly RegExp[]): Promise<void> => {
  for (const name of names) {
    clock.at += 1_100;
    tap(screen.getByRole('button', { name }));
    await Promise.resolve();
    await Promise.resolve();
    await Promise.resolve();
  }
};
const shows = (text: RegExp) => expect(document.body.textContent).toMatch(text);

it(
  'lists what stands by name and weekday, and nothing that is over',
  { timeout: 30_000 },
  async () => {
    await open([weekly, { ...weekly, id: 'over', weekday: 2, until: '2031-05-01' }]);
    shows(/M of the millEvery Sat, 2 Lane wheat/);
    expect(document.body.textContent).not.toMatch(/Every Tue/);
  },
);

it('ends on a day, on and on again, and moves to another weekday from today on', async () => {
  const { circle, days } = await open([weekly]);
  await press(/M of the mill/, /^Until/);
  await press(/^Sat17 May/);
  expect(circle.circle().standing[0]!.until).toBe('2031-05-17');
  shows(/Until\s*Sat 17 May/);
  await press(/^Until/, /^no end/);
  expect(circle.circle().standing[0]!.until).toBeNull();
  await press(/^Weekday/, /^Sun$/);
  expect(days('2031-04-26', '2031-05-03', '2031-05-04', '2031-05-11')).toEqual([1, 0, 1, 1]);
  expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('M of the mill');
  await press(/^Take that back/);
  expect(days('2031-04-26', '2031-05-03', '2031-05-04', '2031-05-11')).toEqual([1, 1, 0, 0]);
});

it('brings back a day that was left out by one press, and begins later while it has not begun', async () => {
  const { circle, days } = await open([
    { ...weekly, from: '2031-05-05', skips: ['2031-05-10', '2031-05-17'] },
  ]);
  await press(/M of the mill/, /^Left out\s*Sat 10 May/);
  expect(days('2031-05-10', '2031-05-17')).toEqual([1, 0]);
  await press(/^From/, /^Later days/, /^Mon12 May/);
  expect(circle.circle().standing[0]!.from).toBe('2031-05-12');
  expect(days('2031-05-10', '2031-05-24')).toEqual([0, 1]);
});

it('opens its next order, and is taken off by one press', async () => {
  const { onOpen, days } = await open([{ ...weekly, skips: ['2031-05-03'] }]);
  await press(/M of the mill/, /^What and when/);
  expect(onOpen).toHaveBeenCalledWith({
    at: 'day',
    day: '2031-05-10',
    order: 's@2031-05-10',
    scope: 'all',
  });
  await press(/^Take it off/);
  expect(days('2031-04-26', '2031-05-10')).toEqual([1, 0]);
  shows(/None yet\. Open an order/);
  await press(/^Take that back/);
  expect(days('2031-05-10')).toEqual([1]);
});
